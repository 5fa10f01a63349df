/**
 */
package org.flexwright.model.impl;

import java.time.Instant;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.flexwright.model.Attachment;
import org.flexwright.model.BenchNote;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.NoteKind;
import org.flexwright.model.Step;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Bench Note</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.impl.BenchNoteImpl#getKind <em>Kind</em>}</li>
 *   <li>{@link org.flexwright.model.impl.BenchNoteImpl#getAt <em>At</em>}</li>
 *   <li>{@link org.flexwright.model.impl.BenchNoteImpl#getStep <em>Step</em>}</li>
 *   <li>{@link org.flexwright.model.impl.BenchNoteImpl#getAttachment <em>Attachment</em>}</li>
 *   <li>{@link org.flexwright.model.impl.BenchNoteImpl#getSortedAt <em>Sorted At</em>}</li>
 *   <li>{@link org.flexwright.model.impl.BenchNoteImpl#getSortedAs <em>Sorted As</em>}</li>
 * </ul>
 *
 * @generated
 */
public class BenchNoteImpl extends EntryImpl implements BenchNote {
	/**
	 * The default value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected static final NoteKind KIND_EDEFAULT = NoteKind.NOTE;

	/**
	 * The cached value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected NoteKind kind = KIND_EDEFAULT;

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
	 * The cached value of the '{@link #getStep() <em>Step</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStep()
	 * @generated
	 * @ordered
	 */
	protected Step step;

	/**
	 * The cached value of the '{@link #getAttachment() <em>Attachment</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAttachment()
	 * @generated
	 * @ordered
	 */
	protected Attachment attachment;

	/**
	 * The default value of the '{@link #getSortedAt() <em>Sorted At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSortedAt()
	 * @generated
	 * @ordered
	 */
	protected static final Instant SORTED_AT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSortedAt() <em>Sorted At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSortedAt()
	 * @generated
	 * @ordered
	 */
	protected Instant sortedAt = SORTED_AT_EDEFAULT;

	/**
	 * The default value of the '{@link #getSortedAs() <em>Sorted As</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSortedAs()
	 * @generated
	 * @ordered
	 */
	protected static final String SORTED_AS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSortedAs() <em>Sorted As</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSortedAs()
	 * @generated
	 * @ordered
	 */
	protected String sortedAs = SORTED_AS_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected BenchNoteImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.BENCH_NOTE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NoteKind getKind() {
		return kind;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKind(NoteKind newKind) {
		NoteKind oldKind = kind;
		kind = newKind == null ? KIND_EDEFAULT : newKind;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.BENCH_NOTE__KIND, oldKind, kind));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.BENCH_NOTE__AT, oldAt, at));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Step getStep() {
		if (step != null && step.eIsProxy()) {
			InternalEObject oldStep = (InternalEObject)step;
			step = (Step)eResolveProxy(oldStep);
			if (step != oldStep) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.BENCH_NOTE__STEP, oldStep, step));
			}
		}
		return step;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Step basicGetStep() {
		return step;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStep(Step newStep) {
		Step oldStep = step;
		step = newStep;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.BENCH_NOTE__STEP, oldStep, step));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Attachment getAttachment() {
		if (attachment != null && attachment.eIsProxy()) {
			InternalEObject oldAttachment = (InternalEObject)attachment;
			attachment = (Attachment)eResolveProxy(oldAttachment);
			if (attachment != oldAttachment) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.BENCH_NOTE__ATTACHMENT, oldAttachment, attachment));
			}
		}
		return attachment;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Attachment basicGetAttachment() {
		return attachment;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAttachment(Attachment newAttachment) {
		Attachment oldAttachment = attachment;
		attachment = newAttachment;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.BENCH_NOTE__ATTACHMENT, oldAttachment, attachment));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Instant getSortedAt() {
		return sortedAt;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSortedAt(Instant newSortedAt) {
		Instant oldSortedAt = sortedAt;
		sortedAt = newSortedAt;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.BENCH_NOTE__SORTED_AT, oldSortedAt, sortedAt));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSortedAs() {
		return sortedAs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSortedAs(String newSortedAs) {
		String oldSortedAs = sortedAs;
		sortedAs = newSortedAs;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.BENCH_NOTE__SORTED_AS, oldSortedAs, sortedAs));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case ModelPackage.BENCH_NOTE__KIND:
				return getKind();
			case ModelPackage.BENCH_NOTE__AT:
				return getAt();
			case ModelPackage.BENCH_NOTE__STEP:
				if (resolve) return getStep();
				return basicGetStep();
			case ModelPackage.BENCH_NOTE__ATTACHMENT:
				if (resolve) return getAttachment();
				return basicGetAttachment();
			case ModelPackage.BENCH_NOTE__SORTED_AT:
				return getSortedAt();
			case ModelPackage.BENCH_NOTE__SORTED_AS:
				return getSortedAs();
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
			case ModelPackage.BENCH_NOTE__KIND:
				setKind((NoteKind)newValue);
				return;
			case ModelPackage.BENCH_NOTE__AT:
				setAt((Instant)newValue);
				return;
			case ModelPackage.BENCH_NOTE__STEP:
				setStep((Step)newValue);
				return;
			case ModelPackage.BENCH_NOTE__ATTACHMENT:
				setAttachment((Attachment)newValue);
				return;
			case ModelPackage.BENCH_NOTE__SORTED_AT:
				setSortedAt((Instant)newValue);
				return;
			case ModelPackage.BENCH_NOTE__SORTED_AS:
				setSortedAs((String)newValue);
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
			case ModelPackage.BENCH_NOTE__KIND:
				setKind(KIND_EDEFAULT);
				return;
			case ModelPackage.BENCH_NOTE__AT:
				setAt(AT_EDEFAULT);
				return;
			case ModelPackage.BENCH_NOTE__STEP:
				setStep((Step)null);
				return;
			case ModelPackage.BENCH_NOTE__ATTACHMENT:
				setAttachment((Attachment)null);
				return;
			case ModelPackage.BENCH_NOTE__SORTED_AT:
				setSortedAt(SORTED_AT_EDEFAULT);
				return;
			case ModelPackage.BENCH_NOTE__SORTED_AS:
				setSortedAs(SORTED_AS_EDEFAULT);
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
			case ModelPackage.BENCH_NOTE__KIND:
				return kind != KIND_EDEFAULT;
			case ModelPackage.BENCH_NOTE__AT:
				return AT_EDEFAULT == null ? at != null : !AT_EDEFAULT.equals(at);
			case ModelPackage.BENCH_NOTE__STEP:
				return step != null;
			case ModelPackage.BENCH_NOTE__ATTACHMENT:
				return attachment != null;
			case ModelPackage.BENCH_NOTE__SORTED_AT:
				return SORTED_AT_EDEFAULT == null ? sortedAt != null : !SORTED_AT_EDEFAULT.equals(sortedAt);
			case ModelPackage.BENCH_NOTE__SORTED_AS:
				return SORTED_AS_EDEFAULT == null ? sortedAs != null : !SORTED_AS_EDEFAULT.equals(sortedAs);
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
		result.append(" (kind: ");
		result.append(kind);
		result.append(", at: ");
		result.append(at);
		result.append(", sortedAt: ");
		result.append(sortedAt);
		result.append(", sortedAs: ");
		result.append(sortedAs);
		result.append(')');
		return result.toString();
	}

} //BenchNoteImpl
