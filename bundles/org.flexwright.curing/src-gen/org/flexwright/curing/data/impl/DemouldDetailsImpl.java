/**
 */
package org.flexwright.curing.data.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.flexwright.curing.data.CuringDataPackage;
import org.flexwright.curing.data.DemouldDetails;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Demould Details</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.curing.data.impl.DemouldDetailsImpl#getPlannedAge <em>Planned Age</em>}</li>
 *   <li>{@link org.flexwright.curing.data.impl.DemouldDetailsImpl#getAge <em>Age</em>}</li>
 *   <li>{@link org.flexwright.curing.data.impl.DemouldDetailsImpl#getMouldC <em>Mould C</em>}</li>
 *   <li>{@link org.flexwright.curing.data.impl.DemouldDetailsImpl#getLeftoverFirm <em>Leftover Firm</em>}</li>
 *   <li>{@link org.flexwright.curing.data.impl.DemouldDetailsImpl#getTorn <em>Torn</em>}</li>
 * </ul>
 *
 * @generated
 */
public class DemouldDetailsImpl extends MinimalEObjectImpl.Container implements DemouldDetails {
	/**
	 * The default value of the '{@link #getPlannedAge() <em>Planned Age</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlannedAge()
	 * @generated
	 * @ordered
	 */
	protected static final Double PLANNED_AGE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPlannedAge() <em>Planned Age</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlannedAge()
	 * @generated
	 * @ordered
	 */
	protected Double plannedAge = PLANNED_AGE_EDEFAULT;

	/**
	 * The default value of the '{@link #getAge() <em>Age</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAge()
	 * @generated
	 * @ordered
	 */
	protected static final Double AGE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAge() <em>Age</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAge()
	 * @generated
	 * @ordered
	 */
	protected Double age = AGE_EDEFAULT;

	/**
	 * The default value of the '{@link #getMouldC() <em>Mould C</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMouldC()
	 * @generated
	 * @ordered
	 */
	protected static final Double MOULD_C_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMouldC() <em>Mould C</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMouldC()
	 * @generated
	 * @ordered
	 */
	protected Double mouldC = MOULD_C_EDEFAULT;

	/**
	 * The default value of the '{@link #getLeftoverFirm() <em>Leftover Firm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLeftoverFirm()
	 * @generated
	 * @ordered
	 */
	protected static final Boolean LEFTOVER_FIRM_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLeftoverFirm() <em>Leftover Firm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLeftoverFirm()
	 * @generated
	 * @ordered
	 */
	protected Boolean leftoverFirm = LEFTOVER_FIRM_EDEFAULT;

	/**
	 * The default value of the '{@link #getTorn() <em>Torn</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTorn()
	 * @generated
	 * @ordered
	 */
	protected static final Boolean TORN_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTorn() <em>Torn</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTorn()
	 * @generated
	 * @ordered
	 */
	protected Boolean torn = TORN_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected DemouldDetailsImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CuringDataPackage.Literals.DEMOULD_DETAILS;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getPlannedAge() {
		return plannedAge;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPlannedAge(Double newPlannedAge) {
		Double oldPlannedAge = plannedAge;
		plannedAge = newPlannedAge;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CuringDataPackage.DEMOULD_DETAILS__PLANNED_AGE, oldPlannedAge, plannedAge));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getAge() {
		return age;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAge(Double newAge) {
		Double oldAge = age;
		age = newAge;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CuringDataPackage.DEMOULD_DETAILS__AGE, oldAge, age));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getMouldC() {
		return mouldC;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMouldC(Double newMouldC) {
		Double oldMouldC = mouldC;
		mouldC = newMouldC;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CuringDataPackage.DEMOULD_DETAILS__MOULD_C, oldMouldC, mouldC));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Boolean getLeftoverFirm() {
		return leftoverFirm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLeftoverFirm(Boolean newLeftoverFirm) {
		Boolean oldLeftoverFirm = leftoverFirm;
		leftoverFirm = newLeftoverFirm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CuringDataPackage.DEMOULD_DETAILS__LEFTOVER_FIRM, oldLeftoverFirm, leftoverFirm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Boolean getTorn() {
		return torn;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTorn(Boolean newTorn) {
		Boolean oldTorn = torn;
		torn = newTorn;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CuringDataPackage.DEMOULD_DETAILS__TORN, oldTorn, torn));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case CuringDataPackage.DEMOULD_DETAILS__PLANNED_AGE:
				return getPlannedAge();
			case CuringDataPackage.DEMOULD_DETAILS__AGE:
				return getAge();
			case CuringDataPackage.DEMOULD_DETAILS__MOULD_C:
				return getMouldC();
			case CuringDataPackage.DEMOULD_DETAILS__LEFTOVER_FIRM:
				return getLeftoverFirm();
			case CuringDataPackage.DEMOULD_DETAILS__TORN:
				return getTorn();
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
			case CuringDataPackage.DEMOULD_DETAILS__PLANNED_AGE:
				setPlannedAge((Double)newValue);
				return;
			case CuringDataPackage.DEMOULD_DETAILS__AGE:
				setAge((Double)newValue);
				return;
			case CuringDataPackage.DEMOULD_DETAILS__MOULD_C:
				setMouldC((Double)newValue);
				return;
			case CuringDataPackage.DEMOULD_DETAILS__LEFTOVER_FIRM:
				setLeftoverFirm((Boolean)newValue);
				return;
			case CuringDataPackage.DEMOULD_DETAILS__TORN:
				setTorn((Boolean)newValue);
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
			case CuringDataPackage.DEMOULD_DETAILS__PLANNED_AGE:
				setPlannedAge(PLANNED_AGE_EDEFAULT);
				return;
			case CuringDataPackage.DEMOULD_DETAILS__AGE:
				setAge(AGE_EDEFAULT);
				return;
			case CuringDataPackage.DEMOULD_DETAILS__MOULD_C:
				setMouldC(MOULD_C_EDEFAULT);
				return;
			case CuringDataPackage.DEMOULD_DETAILS__LEFTOVER_FIRM:
				setLeftoverFirm(LEFTOVER_FIRM_EDEFAULT);
				return;
			case CuringDataPackage.DEMOULD_DETAILS__TORN:
				setTorn(TORN_EDEFAULT);
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
			case CuringDataPackage.DEMOULD_DETAILS__PLANNED_AGE:
				return PLANNED_AGE_EDEFAULT == null ? plannedAge != null : !PLANNED_AGE_EDEFAULT.equals(plannedAge);
			case CuringDataPackage.DEMOULD_DETAILS__AGE:
				return AGE_EDEFAULT == null ? age != null : !AGE_EDEFAULT.equals(age);
			case CuringDataPackage.DEMOULD_DETAILS__MOULD_C:
				return MOULD_C_EDEFAULT == null ? mouldC != null : !MOULD_C_EDEFAULT.equals(mouldC);
			case CuringDataPackage.DEMOULD_DETAILS__LEFTOVER_FIRM:
				return LEFTOVER_FIRM_EDEFAULT == null ? leftoverFirm != null : !LEFTOVER_FIRM_EDEFAULT.equals(leftoverFirm);
			case CuringDataPackage.DEMOULD_DETAILS__TORN:
				return TORN_EDEFAULT == null ? torn != null : !TORN_EDEFAULT.equals(torn);
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
		result.append(" (plannedAge: ");
		result.append(plannedAge);
		result.append(", age: ");
		result.append(age);
		result.append(", mouldC: ");
		result.append(mouldC);
		result.append(", leftoverFirm: ");
		result.append(leftoverFirm);
		result.append(", torn: ");
		result.append(torn);
		result.append(')');
		return result.toString();
	}

} //DemouldDetailsImpl
