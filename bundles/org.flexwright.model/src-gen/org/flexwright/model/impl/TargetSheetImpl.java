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

import org.flexwright.model.ModelPackage;
import org.flexwright.model.Target;
import org.flexwright.model.TargetSheet;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Target Sheet</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.impl.TargetSheetImpl#getVersion <em>Version</em>}</li>
 *   <li>{@link org.flexwright.model.impl.TargetSheetImpl#getFrozenAt <em>Frozen At</em>}</li>
 *   <li>{@link org.flexwright.model.impl.TargetSheetImpl#getFrozenBy <em>Frozen By</em>}</li>
 *   <li>{@link org.flexwright.model.impl.TargetSheetImpl#getReason <em>Reason</em>}</li>
 *   <li>{@link org.flexwright.model.impl.TargetSheetImpl#getTargets <em>Targets</em>}</li>
 * </ul>
 *
 * @generated
 */
public class TargetSheetImpl extends EntryImpl implements TargetSheet {
	/**
	 * The default value of the '{@link #getVersion() <em>Version</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVersion()
	 * @generated
	 * @ordered
	 */
	protected static final int VERSION_EDEFAULT = 0;

	/**
	 * The cached value of the '{@link #getVersion() <em>Version</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVersion()
	 * @generated
	 * @ordered
	 */
	protected int version = VERSION_EDEFAULT;

	/**
	 * The default value of the '{@link #getFrozenAt() <em>Frozen At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFrozenAt()
	 * @generated
	 * @ordered
	 */
	protected static final Instant FROZEN_AT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFrozenAt() <em>Frozen At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFrozenAt()
	 * @generated
	 * @ordered
	 */
	protected Instant frozenAt = FROZEN_AT_EDEFAULT;

	/**
	 * The default value of the '{@link #getFrozenBy() <em>Frozen By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFrozenBy()
	 * @generated
	 * @ordered
	 */
	protected static final String FROZEN_BY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFrozenBy() <em>Frozen By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFrozenBy()
	 * @generated
	 * @ordered
	 */
	protected String frozenBy = FROZEN_BY_EDEFAULT;

	/**
	 * The default value of the '{@link #getReason() <em>Reason</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReason()
	 * @generated
	 * @ordered
	 */
	protected static final String REASON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getReason() <em>Reason</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReason()
	 * @generated
	 * @ordered
	 */
	protected String reason = REASON_EDEFAULT;

	/**
	 * The cached value of the '{@link #getTargets() <em>Targets</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTargets()
	 * @generated
	 * @ordered
	 */
	protected EList<Target> targets;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected TargetSheetImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.TARGET_SHEET;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getVersion() {
		return version;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setVersion(int newVersion) {
		int oldVersion = version;
		version = newVersion;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.TARGET_SHEET__VERSION, oldVersion, version));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Instant getFrozenAt() {
		return frozenAt;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFrozenAt(Instant newFrozenAt) {
		Instant oldFrozenAt = frozenAt;
		frozenAt = newFrozenAt;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.TARGET_SHEET__FROZEN_AT, oldFrozenAt, frozenAt));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getFrozenBy() {
		return frozenBy;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFrozenBy(String newFrozenBy) {
		String oldFrozenBy = frozenBy;
		frozenBy = newFrozenBy;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.TARGET_SHEET__FROZEN_BY, oldFrozenBy, frozenBy));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getReason() {
		return reason;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setReason(String newReason) {
		String oldReason = reason;
		reason = newReason;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.TARGET_SHEET__REASON, oldReason, reason));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Target> getTargets() {
		if (targets == null) {
			targets = new EObjectContainmentEList<Target>(Target.class, this, ModelPackage.TARGET_SHEET__TARGETS);
		}
		return targets;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case ModelPackage.TARGET_SHEET__TARGETS:
				return ((InternalEList<?>)getTargets()).basicRemove(otherEnd, msgs);
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
			case ModelPackage.TARGET_SHEET__VERSION:
				return getVersion();
			case ModelPackage.TARGET_SHEET__FROZEN_AT:
				return getFrozenAt();
			case ModelPackage.TARGET_SHEET__FROZEN_BY:
				return getFrozenBy();
			case ModelPackage.TARGET_SHEET__REASON:
				return getReason();
			case ModelPackage.TARGET_SHEET__TARGETS:
				return getTargets();
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
			case ModelPackage.TARGET_SHEET__VERSION:
				setVersion((Integer)newValue);
				return;
			case ModelPackage.TARGET_SHEET__FROZEN_AT:
				setFrozenAt((Instant)newValue);
				return;
			case ModelPackage.TARGET_SHEET__FROZEN_BY:
				setFrozenBy((String)newValue);
				return;
			case ModelPackage.TARGET_SHEET__REASON:
				setReason((String)newValue);
				return;
			case ModelPackage.TARGET_SHEET__TARGETS:
				getTargets().clear();
				getTargets().addAll((Collection<? extends Target>)newValue);
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
			case ModelPackage.TARGET_SHEET__VERSION:
				setVersion(VERSION_EDEFAULT);
				return;
			case ModelPackage.TARGET_SHEET__FROZEN_AT:
				setFrozenAt(FROZEN_AT_EDEFAULT);
				return;
			case ModelPackage.TARGET_SHEET__FROZEN_BY:
				setFrozenBy(FROZEN_BY_EDEFAULT);
				return;
			case ModelPackage.TARGET_SHEET__REASON:
				setReason(REASON_EDEFAULT);
				return;
			case ModelPackage.TARGET_SHEET__TARGETS:
				getTargets().clear();
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
			case ModelPackage.TARGET_SHEET__VERSION:
				return version != VERSION_EDEFAULT;
			case ModelPackage.TARGET_SHEET__FROZEN_AT:
				return FROZEN_AT_EDEFAULT == null ? frozenAt != null : !FROZEN_AT_EDEFAULT.equals(frozenAt);
			case ModelPackage.TARGET_SHEET__FROZEN_BY:
				return FROZEN_BY_EDEFAULT == null ? frozenBy != null : !FROZEN_BY_EDEFAULT.equals(frozenBy);
			case ModelPackage.TARGET_SHEET__REASON:
				return REASON_EDEFAULT == null ? reason != null : !REASON_EDEFAULT.equals(reason);
			case ModelPackage.TARGET_SHEET__TARGETS:
				return targets != null && !targets.isEmpty();
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
		result.append(" (version: ");
		result.append(version);
		result.append(", frozenAt: ");
		result.append(frozenAt);
		result.append(", frozenBy: ");
		result.append(frozenBy);
		result.append(", reason: ");
		result.append(reason);
		result.append(')');
		return result.toString();
	}

} //TargetSheetImpl
