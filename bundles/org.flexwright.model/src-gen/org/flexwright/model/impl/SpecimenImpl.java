/**
 */
package org.flexwright.model.impl;

import java.time.Instant;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

import org.flexwright.model.Measurement;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.PieceKind;
import org.flexwright.model.Recording;
import org.flexwright.model.Specimen;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Specimen</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.impl.SpecimenImpl#getCode <em>Code</em>}</li>
 *   <li>{@link org.flexwright.model.impl.SpecimenImpl#getPieceKind <em>Piece Kind</em>}</li>
 *   <li>{@link org.flexwright.model.impl.SpecimenImpl#getThickness <em>Thickness</em>}</li>
 *   <li>{@link org.flexwright.model.impl.SpecimenImpl#getMadeAt <em>Made At</em>}</li>
 *   <li>{@link org.flexwright.model.impl.SpecimenImpl#isFailed <em>Failed</em>}</li>
 *   <li>{@link org.flexwright.model.impl.SpecimenImpl#getFailReason <em>Fail Reason</em>}</li>
 *   <li>{@link org.flexwright.model.impl.SpecimenImpl#getMeasurements <em>Measurements</em>}</li>
 *   <li>{@link org.flexwright.model.impl.SpecimenImpl#getRecordings <em>Recordings</em>}</li>
 * </ul>
 *
 * @generated
 */
public abstract class SpecimenImpl extends EntryImpl implements Specimen {
	/**
	 * The default value of the '{@link #getCode() <em>Code</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCode()
	 * @generated
	 * @ordered
	 */
	protected static final String CODE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCode() <em>Code</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCode()
	 * @generated
	 * @ordered
	 */
	protected String code = CODE_EDEFAULT;

	/**
	 * The default value of the '{@link #getPieceKind() <em>Piece Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPieceKind()
	 * @generated
	 * @ordered
	 */
	protected static final PieceKind PIECE_KIND_EDEFAULT = PieceKind.PART;

	/**
	 * The cached value of the '{@link #getPieceKind() <em>Piece Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPieceKind()
	 * @generated
	 * @ordered
	 */
	protected PieceKind pieceKind = PIECE_KIND_EDEFAULT;

	/**
	 * The default value of the '{@link #getThickness() <em>Thickness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getThickness()
	 * @generated
	 * @ordered
	 */
	protected static final Double THICKNESS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getThickness() <em>Thickness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getThickness()
	 * @generated
	 * @ordered
	 */
	protected Double thickness = THICKNESS_EDEFAULT;

	/**
	 * The default value of the '{@link #getMadeAt() <em>Made At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMadeAt()
	 * @generated
	 * @ordered
	 */
	protected static final Instant MADE_AT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMadeAt() <em>Made At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMadeAt()
	 * @generated
	 * @ordered
	 */
	protected Instant madeAt = MADE_AT_EDEFAULT;

	/**
	 * The default value of the '{@link #isFailed() <em>Failed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isFailed()
	 * @generated
	 * @ordered
	 */
	protected static final boolean FAILED_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isFailed() <em>Failed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isFailed()
	 * @generated
	 * @ordered
	 */
	protected boolean failed = FAILED_EDEFAULT;

	/**
	 * The default value of the '{@link #getFailReason() <em>Fail Reason</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFailReason()
	 * @generated
	 * @ordered
	 */
	protected static final String FAIL_REASON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFailReason() <em>Fail Reason</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFailReason()
	 * @generated
	 * @ordered
	 */
	protected String failReason = FAIL_REASON_EDEFAULT;

	/**
	 * The cached value of the '{@link #getMeasurements() <em>Measurements</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMeasurements()
	 * @generated
	 * @ordered
	 */
	protected EList<Measurement> measurements;

	/**
	 * The cached value of the '{@link #getRecordings() <em>Recordings</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRecordings()
	 * @generated
	 * @ordered
	 */
	protected EList<Recording> recordings;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected SpecimenImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.SPECIMEN;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getCode() {
		return code;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCode(String newCode) {
		String oldCode = code;
		code = newCode;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SPECIMEN__CODE, oldCode, code));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PieceKind getPieceKind() {
		return pieceKind;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPieceKind(PieceKind newPieceKind) {
		PieceKind oldPieceKind = pieceKind;
		pieceKind = newPieceKind == null ? PIECE_KIND_EDEFAULT : newPieceKind;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SPECIMEN__PIECE_KIND, oldPieceKind, pieceKind));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getThickness() {
		return thickness;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setThickness(Double newThickness) {
		Double oldThickness = thickness;
		thickness = newThickness;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SPECIMEN__THICKNESS, oldThickness, thickness));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Instant getMadeAt() {
		return madeAt;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMadeAt(Instant newMadeAt) {
		Instant oldMadeAt = madeAt;
		madeAt = newMadeAt;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SPECIMEN__MADE_AT, oldMadeAt, madeAt));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isFailed() {
		return failed;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFailed(boolean newFailed) {
		boolean oldFailed = failed;
		failed = newFailed;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SPECIMEN__FAILED, oldFailed, failed));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getFailReason() {
		return failReason;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFailReason(String newFailReason) {
		String oldFailReason = failReason;
		failReason = newFailReason;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SPECIMEN__FAIL_REASON, oldFailReason, failReason));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Measurement> getMeasurements() {
		if (measurements == null) {
			measurements = new EObjectContainmentEList<Measurement>(Measurement.class, this, ModelPackage.SPECIMEN__MEASUREMENTS);
		}
		return measurements;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Recording> getRecordings() {
		if (recordings == null) {
			recordings = new EObjectContainmentEList<Recording>(Recording.class, this, ModelPackage.SPECIMEN__RECORDINGS);
		}
		return recordings;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case ModelPackage.SPECIMEN__MEASUREMENTS:
				return ((InternalEList<?>)getMeasurements()).basicRemove(otherEnd, msgs);
			case ModelPackage.SPECIMEN__RECORDINGS:
				return ((InternalEList<?>)getRecordings()).basicRemove(otherEnd, msgs);
		}
		return super.eInverseRemove(otherEnd, featureID, msgs);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case ModelPackage.SPECIMEN__CODE:
				return getCode();
			case ModelPackage.SPECIMEN__PIECE_KIND:
				return getPieceKind();
			case ModelPackage.SPECIMEN__THICKNESS:
				return getThickness();
			case ModelPackage.SPECIMEN__MADE_AT:
				return getMadeAt();
			case ModelPackage.SPECIMEN__FAILED:
				return isFailed();
			case ModelPackage.SPECIMEN__FAIL_REASON:
				return getFailReason();
			case ModelPackage.SPECIMEN__MEASUREMENTS:
				return getMeasurements();
			case ModelPackage.SPECIMEN__RECORDINGS:
				return getRecordings();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case ModelPackage.SPECIMEN__CODE:
				setCode((String)newValue);
				return;
			case ModelPackage.SPECIMEN__PIECE_KIND:
				setPieceKind((PieceKind)newValue);
				return;
			case ModelPackage.SPECIMEN__THICKNESS:
				setThickness((Double)newValue);
				return;
			case ModelPackage.SPECIMEN__MADE_AT:
				setMadeAt((Instant)newValue);
				return;
			case ModelPackage.SPECIMEN__FAILED:
				setFailed((Boolean)newValue);
				return;
			case ModelPackage.SPECIMEN__FAIL_REASON:
				setFailReason((String)newValue);
				return;
			case ModelPackage.SPECIMEN__MEASUREMENTS:
				getMeasurements().clear();
				getMeasurements().addAll((Collection<? extends Measurement>)newValue);
				return;
			case ModelPackage.SPECIMEN__RECORDINGS:
				getRecordings().clear();
				getRecordings().addAll((Collection<? extends Recording>)newValue);
				return;
		}
		super.eSet(featureID, newValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eUnset(int featureID) {
		switch (featureID) {
			case ModelPackage.SPECIMEN__CODE:
				setCode(CODE_EDEFAULT);
				return;
			case ModelPackage.SPECIMEN__PIECE_KIND:
				setPieceKind(PIECE_KIND_EDEFAULT);
				return;
			case ModelPackage.SPECIMEN__THICKNESS:
				setThickness(THICKNESS_EDEFAULT);
				return;
			case ModelPackage.SPECIMEN__MADE_AT:
				setMadeAt(MADE_AT_EDEFAULT);
				return;
			case ModelPackage.SPECIMEN__FAILED:
				setFailed(FAILED_EDEFAULT);
				return;
			case ModelPackage.SPECIMEN__FAIL_REASON:
				setFailReason(FAIL_REASON_EDEFAULT);
				return;
			case ModelPackage.SPECIMEN__MEASUREMENTS:
				getMeasurements().clear();
				return;
			case ModelPackage.SPECIMEN__RECORDINGS:
				getRecordings().clear();
				return;
		}
		super.eUnset(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean eIsSet(int featureID) {
		switch (featureID) {
			case ModelPackage.SPECIMEN__CODE:
				return CODE_EDEFAULT == null ? code != null : !CODE_EDEFAULT.equals(code);
			case ModelPackage.SPECIMEN__PIECE_KIND:
				return pieceKind != PIECE_KIND_EDEFAULT;
			case ModelPackage.SPECIMEN__THICKNESS:
				return THICKNESS_EDEFAULT == null ? thickness != null : !THICKNESS_EDEFAULT.equals(thickness);
			case ModelPackage.SPECIMEN__MADE_AT:
				return MADE_AT_EDEFAULT == null ? madeAt != null : !MADE_AT_EDEFAULT.equals(madeAt);
			case ModelPackage.SPECIMEN__FAILED:
				return failed != FAILED_EDEFAULT;
			case ModelPackage.SPECIMEN__FAIL_REASON:
				return FAIL_REASON_EDEFAULT == null ? failReason != null : !FAIL_REASON_EDEFAULT.equals(failReason);
			case ModelPackage.SPECIMEN__MEASUREMENTS:
				return measurements != null && !measurements.isEmpty();
			case ModelPackage.SPECIMEN__RECORDINGS:
				return recordings != null && !recordings.isEmpty();
		}
		return super.eIsSet(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString() {
		if (eIsProxy()) return super.toString();

		StringBuilder result = new StringBuilder(super.toString());
		result.append(" (code: ");
		result.append(code);
		result.append(", pieceKind: ");
		result.append(pieceKind);
		result.append(", thickness: ");
		result.append(thickness);
		result.append(", madeAt: ");
		result.append(madeAt);
		result.append(", failed: ");
		result.append(failed);
		result.append(", failReason: ");
		result.append(failReason);
		result.append(')');
		return result.toString();
	}

} //SpecimenImpl
