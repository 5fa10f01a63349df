/**
 */
package org.flexwright.model.impl;

import java.time.Instant;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.flexwright.model.ModelPackage;
import org.flexwright.model.MouldCast;
import org.flexwright.model.Trial;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Mould Cast</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.impl.MouldCastImpl#getAt <em>At</em>}</li>
 *   <li>{@link org.flexwright.model.impl.MouldCastImpl#getTrial <em>Trial</em>}</li>
 *   <li>{@link org.flexwright.model.impl.MouldCastImpl#getRelease <em>Release</em>}</li>
 *   <li>{@link org.flexwright.model.impl.MouldCastImpl#getReleasedWell <em>Released Well</em>}</li>
 *   <li>{@link org.flexwright.model.impl.MouldCastImpl#getParts <em>Parts</em>}</li>
 * </ul>
 *
 * @generated
 */
public class MouldCastImpl extends EntryImpl implements MouldCast {
	/**
	 * The default value of the '{@link #getAt() <em>At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAt()
	 * @generated
	 * @ordered
	 */
	protected static final Instant AT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAt() <em>At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAt()
	 * @generated
	 * @ordered
	 */
	protected Instant at = AT_EDEFAULT;

	/**
	 * The cached value of the '{@link #getTrial() <em>Trial</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTrial()
	 * @generated
	 * @ordered
	 */
	protected Trial trial;

	/**
	 * The default value of the '{@link #getRelease() <em>Release</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRelease()
	 * @generated
	 * @ordered
	 */
	protected static final String RELEASE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRelease() <em>Release</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRelease()
	 * @generated
	 * @ordered
	 */
	protected String release = RELEASE_EDEFAULT;

	/**
	 * The default value of the '{@link #getReleasedWell() <em>Released Well</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReleasedWell()
	 * @generated
	 * @ordered
	 */
	protected static final Boolean RELEASED_WELL_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getReleasedWell() <em>Released Well</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReleasedWell()
	 * @generated
	 * @ordered
	 */
	protected Boolean releasedWell = RELEASED_WELL_EDEFAULT;

	/**
	 * The default value of the '{@link #getParts() <em>Parts</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getParts()
	 * @generated
	 * @ordered
	 */
	protected static final Integer PARTS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getParts() <em>Parts</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getParts()
	 * @generated
	 * @ordered
	 */
	protected Integer parts = PARTS_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected MouldCastImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.MOULD_CAST;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Instant getAt() {
		return at;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAt(Instant newAt) {
		Instant oldAt = at;
		at = newAt;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MOULD_CAST__AT, oldAt, at));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Trial getTrial() {
		if (trial != null && trial.eIsProxy()) {
			InternalEObject oldTrial = (InternalEObject)trial;
			trial = (Trial)eResolveProxy(oldTrial);
			if (trial != oldTrial) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.MOULD_CAST__TRIAL, oldTrial, trial));
			}
		}
		return trial;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Trial basicGetTrial() {
		return trial;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTrial(Trial newTrial) {
		Trial oldTrial = trial;
		trial = newTrial;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MOULD_CAST__TRIAL, oldTrial, trial));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getRelease() {
		return release;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRelease(String newRelease) {
		String oldRelease = release;
		release = newRelease;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MOULD_CAST__RELEASE, oldRelease, release));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Boolean getReleasedWell() {
		return releasedWell;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setReleasedWell(Boolean newReleasedWell) {
		Boolean oldReleasedWell = releasedWell;
		releasedWell = newReleasedWell;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MOULD_CAST__RELEASED_WELL, oldReleasedWell, releasedWell));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getParts() {
		return parts;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setParts(Integer newParts) {
		Integer oldParts = parts;
		parts = newParts;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MOULD_CAST__PARTS, oldParts, parts));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case ModelPackage.MOULD_CAST__AT:
				return getAt();
			case ModelPackage.MOULD_CAST__TRIAL:
				if (resolve) return getTrial();
				return basicGetTrial();
			case ModelPackage.MOULD_CAST__RELEASE:
				return getRelease();
			case ModelPackage.MOULD_CAST__RELEASED_WELL:
				return getReleasedWell();
			case ModelPackage.MOULD_CAST__PARTS:
				return getParts();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case ModelPackage.MOULD_CAST__AT:
				setAt((Instant)newValue);
				return;
			case ModelPackage.MOULD_CAST__TRIAL:
				setTrial((Trial)newValue);
				return;
			case ModelPackage.MOULD_CAST__RELEASE:
				setRelease((String)newValue);
				return;
			case ModelPackage.MOULD_CAST__RELEASED_WELL:
				setReleasedWell((Boolean)newValue);
				return;
			case ModelPackage.MOULD_CAST__PARTS:
				setParts((Integer)newValue);
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
			case ModelPackage.MOULD_CAST__AT:
				setAt(AT_EDEFAULT);
				return;
			case ModelPackage.MOULD_CAST__TRIAL:
				setTrial((Trial)null);
				return;
			case ModelPackage.MOULD_CAST__RELEASE:
				setRelease(RELEASE_EDEFAULT);
				return;
			case ModelPackage.MOULD_CAST__RELEASED_WELL:
				setReleasedWell(RELEASED_WELL_EDEFAULT);
				return;
			case ModelPackage.MOULD_CAST__PARTS:
				setParts(PARTS_EDEFAULT);
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
			case ModelPackage.MOULD_CAST__AT:
				return AT_EDEFAULT == null ? at != null : !AT_EDEFAULT.equals(at);
			case ModelPackage.MOULD_CAST__TRIAL:
				return trial != null;
			case ModelPackage.MOULD_CAST__RELEASE:
				return RELEASE_EDEFAULT == null ? release != null : !RELEASE_EDEFAULT.equals(release);
			case ModelPackage.MOULD_CAST__RELEASED_WELL:
				return RELEASED_WELL_EDEFAULT == null ? releasedWell != null : !RELEASED_WELL_EDEFAULT.equals(releasedWell);
			case ModelPackage.MOULD_CAST__PARTS:
				return PARTS_EDEFAULT == null ? parts != null : !PARTS_EDEFAULT.equals(parts);
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
		result.append(" (at: ");
		result.append(at);
		result.append(", release: ");
		result.append(release);
		result.append(", releasedWell: ");
		result.append(releasedWell);
		result.append(", parts: ");
		result.append(parts);
		result.append(')');
		return result.toString();
	}

} //MouldCastImpl
