/**
 */
package org.flexwright.vatprint.data.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.flexwright.vatprint.data.VatprintDataPackage;
import org.flexwright.vatprint.data.WashSolvent;
import org.flexwright.vatprint.data.Washing;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Washing</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.vatprint.data.impl.WashingImpl#getSolvent <em>Solvent</em>}</li>
 *   <li>{@link org.flexwright.vatprint.data.impl.WashingImpl#getPlannedMinutes <em>Planned Minutes</em>}</li>
 *   <li>{@link org.flexwright.vatprint.data.impl.WashingImpl#getActualMinutes <em>Actual Minutes</em>}</li>
 *   <li>{@link org.flexwright.vatprint.data.impl.WashingImpl#getBaths <em>Baths</em>}</li>
 *   <li>{@link org.flexwright.vatprint.data.impl.WashingImpl#getBathVolume <em>Bath Volume</em>}</li>
 *   <li>{@link org.flexwright.vatprint.data.impl.WashingImpl#getCarriedVolume <em>Carried Volume</em>}</li>
 * </ul>
 *
 * @generated
 */
public class WashingImpl extends MinimalEObjectImpl.Container implements Washing {
	/**
	 * The default value of the '{@link #getSolvent() <em>Solvent</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSolvent()
	 * @generated
	 * @ordered
	 */
	protected static final WashSolvent SOLVENT_EDEFAULT = WashSolvent.UNKNOWN;

	/**
	 * The cached value of the '{@link #getSolvent() <em>Solvent</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSolvent()
	 * @generated
	 * @ordered
	 */
	protected WashSolvent solvent = SOLVENT_EDEFAULT;

	/**
	 * The default value of the '{@link #getPlannedMinutes() <em>Planned Minutes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlannedMinutes()
	 * @generated
	 * @ordered
	 */
	protected static final Double PLANNED_MINUTES_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPlannedMinutes() <em>Planned Minutes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlannedMinutes()
	 * @generated
	 * @ordered
	 */
	protected Double plannedMinutes = PLANNED_MINUTES_EDEFAULT;

	/**
	 * The default value of the '{@link #getActualMinutes() <em>Actual Minutes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getActualMinutes()
	 * @generated
	 * @ordered
	 */
	protected static final Double ACTUAL_MINUTES_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getActualMinutes() <em>Actual Minutes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getActualMinutes()
	 * @generated
	 * @ordered
	 */
	protected Double actualMinutes = ACTUAL_MINUTES_EDEFAULT;

	/**
	 * The default value of the '{@link #getBaths() <em>Baths</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBaths()
	 * @generated
	 * @ordered
	 */
	protected static final Integer BATHS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBaths() <em>Baths</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBaths()
	 * @generated
	 * @ordered
	 */
	protected Integer baths = BATHS_EDEFAULT;

	/**
	 * The default value of the '{@link #getBathVolume() <em>Bath Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBathVolume()
	 * @generated
	 * @ordered
	 */
	protected static final Double BATH_VOLUME_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBathVolume() <em>Bath Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBathVolume()
	 * @generated
	 * @ordered
	 */
	protected Double bathVolume = BATH_VOLUME_EDEFAULT;

	/**
	 * The default value of the '{@link #getCarriedVolume() <em>Carried Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCarriedVolume()
	 * @generated
	 * @ordered
	 */
	protected static final Double CARRIED_VOLUME_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCarriedVolume() <em>Carried Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCarriedVolume()
	 * @generated
	 * @ordered
	 */
	protected Double carriedVolume = CARRIED_VOLUME_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected WashingImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return VatprintDataPackage.Literals.WASHING;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public WashSolvent getSolvent() {
		return solvent;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSolvent(WashSolvent newSolvent) {
		WashSolvent oldSolvent = solvent;
		solvent = newSolvent == null ? SOLVENT_EDEFAULT : newSolvent;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, VatprintDataPackage.WASHING__SOLVENT, oldSolvent, solvent));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getPlannedMinutes() {
		return plannedMinutes;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPlannedMinutes(Double newPlannedMinutes) {
		Double oldPlannedMinutes = plannedMinutes;
		plannedMinutes = newPlannedMinutes;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, VatprintDataPackage.WASHING__PLANNED_MINUTES, oldPlannedMinutes, plannedMinutes));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getActualMinutes() {
		return actualMinutes;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setActualMinutes(Double newActualMinutes) {
		Double oldActualMinutes = actualMinutes;
		actualMinutes = newActualMinutes;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, VatprintDataPackage.WASHING__ACTUAL_MINUTES, oldActualMinutes, actualMinutes));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getBaths() {
		return baths;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBaths(Integer newBaths) {
		Integer oldBaths = baths;
		baths = newBaths;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, VatprintDataPackage.WASHING__BATHS, oldBaths, baths));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getBathVolume() {
		return bathVolume;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBathVolume(Double newBathVolume) {
		Double oldBathVolume = bathVolume;
		bathVolume = newBathVolume;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, VatprintDataPackage.WASHING__BATH_VOLUME, oldBathVolume, bathVolume));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getCarriedVolume() {
		return carriedVolume;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCarriedVolume(Double newCarriedVolume) {
		Double oldCarriedVolume = carriedVolume;
		carriedVolume = newCarriedVolume;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, VatprintDataPackage.WASHING__CARRIED_VOLUME, oldCarriedVolume, carriedVolume));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case VatprintDataPackage.WASHING__SOLVENT:
				return getSolvent();
			case VatprintDataPackage.WASHING__PLANNED_MINUTES:
				return getPlannedMinutes();
			case VatprintDataPackage.WASHING__ACTUAL_MINUTES:
				return getActualMinutes();
			case VatprintDataPackage.WASHING__BATHS:
				return getBaths();
			case VatprintDataPackage.WASHING__BATH_VOLUME:
				return getBathVolume();
			case VatprintDataPackage.WASHING__CARRIED_VOLUME:
				return getCarriedVolume();
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
			case VatprintDataPackage.WASHING__SOLVENT:
				setSolvent((WashSolvent)newValue);
				return;
			case VatprintDataPackage.WASHING__PLANNED_MINUTES:
				setPlannedMinutes((Double)newValue);
				return;
			case VatprintDataPackage.WASHING__ACTUAL_MINUTES:
				setActualMinutes((Double)newValue);
				return;
			case VatprintDataPackage.WASHING__BATHS:
				setBaths((Integer)newValue);
				return;
			case VatprintDataPackage.WASHING__BATH_VOLUME:
				setBathVolume((Double)newValue);
				return;
			case VatprintDataPackage.WASHING__CARRIED_VOLUME:
				setCarriedVolume((Double)newValue);
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
			case VatprintDataPackage.WASHING__SOLVENT:
				setSolvent(SOLVENT_EDEFAULT);
				return;
			case VatprintDataPackage.WASHING__PLANNED_MINUTES:
				setPlannedMinutes(PLANNED_MINUTES_EDEFAULT);
				return;
			case VatprintDataPackage.WASHING__ACTUAL_MINUTES:
				setActualMinutes(ACTUAL_MINUTES_EDEFAULT);
				return;
			case VatprintDataPackage.WASHING__BATHS:
				setBaths(BATHS_EDEFAULT);
				return;
			case VatprintDataPackage.WASHING__BATH_VOLUME:
				setBathVolume(BATH_VOLUME_EDEFAULT);
				return;
			case VatprintDataPackage.WASHING__CARRIED_VOLUME:
				setCarriedVolume(CARRIED_VOLUME_EDEFAULT);
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
			case VatprintDataPackage.WASHING__SOLVENT:
				return solvent != SOLVENT_EDEFAULT;
			case VatprintDataPackage.WASHING__PLANNED_MINUTES:
				return PLANNED_MINUTES_EDEFAULT == null ? plannedMinutes != null : !PLANNED_MINUTES_EDEFAULT.equals(plannedMinutes);
			case VatprintDataPackage.WASHING__ACTUAL_MINUTES:
				return ACTUAL_MINUTES_EDEFAULT == null ? actualMinutes != null : !ACTUAL_MINUTES_EDEFAULT.equals(actualMinutes);
			case VatprintDataPackage.WASHING__BATHS:
				return BATHS_EDEFAULT == null ? baths != null : !BATHS_EDEFAULT.equals(baths);
			case VatprintDataPackage.WASHING__BATH_VOLUME:
				return BATH_VOLUME_EDEFAULT == null ? bathVolume != null : !BATH_VOLUME_EDEFAULT.equals(bathVolume);
			case VatprintDataPackage.WASHING__CARRIED_VOLUME:
				return CARRIED_VOLUME_EDEFAULT == null ? carriedVolume != null : !CARRIED_VOLUME_EDEFAULT.equals(carriedVolume);
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
		result.append(" (solvent: ");
		result.append(solvent);
		result.append(", plannedMinutes: ");
		result.append(plannedMinutes);
		result.append(", actualMinutes: ");
		result.append(actualMinutes);
		result.append(", baths: ");
		result.append(baths);
		result.append(", bathVolume: ");
		result.append(bathVolume);
		result.append(", carriedVolume: ");
		result.append(carriedVolume);
		result.append(')');
		return result.toString();
	}

} //WashingImpl
