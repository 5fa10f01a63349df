/**
 */
package org.flexwright.mixing.data.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.flexwright.mixing.data.DegasDetails;
import org.flexwright.mixing.data.MixingDataPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Degas Details</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.mixing.data.impl.DegasDetailsImpl#getPlannedMinutes <em>Planned Minutes</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.impl.DegasDetailsImpl#getMinutes <em>Minutes</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.impl.DegasDetailsImpl#getPlannedPressure <em>Planned Pressure</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.impl.DegasDetailsImpl#getPressure <em>Pressure</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.impl.DegasDetailsImpl#getCupVolume <em>Cup Volume</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.impl.DegasDetailsImpl#getMixVolume <em>Mix Volume</em>}</li>
 * </ul>
 *
 * @generated
 */
public class DegasDetailsImpl extends MinimalEObjectImpl.Container implements DegasDetails {
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
	 * The default value of the '{@link #getMinutes() <em>Minutes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMinutes()
	 * @generated
	 * @ordered
	 */
	protected static final Double MINUTES_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMinutes() <em>Minutes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMinutes()
	 * @generated
	 * @ordered
	 */
	protected Double minutes = MINUTES_EDEFAULT;

	/**
	 * The default value of the '{@link #getPlannedPressure() <em>Planned Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlannedPressure()
	 * @generated
	 * @ordered
	 */
	protected static final Double PLANNED_PRESSURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPlannedPressure() <em>Planned Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlannedPressure()
	 * @generated
	 * @ordered
	 */
	protected Double plannedPressure = PLANNED_PRESSURE_EDEFAULT;

	/**
	 * The default value of the '{@link #getPressure() <em>Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPressure()
	 * @generated
	 * @ordered
	 */
	protected static final Double PRESSURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPressure() <em>Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPressure()
	 * @generated
	 * @ordered
	 */
	protected Double pressure = PRESSURE_EDEFAULT;

	/**
	 * The default value of the '{@link #getCupVolume() <em>Cup Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCupVolume()
	 * @generated
	 * @ordered
	 */
	protected static final Double CUP_VOLUME_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCupVolume() <em>Cup Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCupVolume()
	 * @generated
	 * @ordered
	 */
	protected Double cupVolume = CUP_VOLUME_EDEFAULT;

	/**
	 * The default value of the '{@link #getMixVolume() <em>Mix Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMixVolume()
	 * @generated
	 * @ordered
	 */
	protected static final Double MIX_VOLUME_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMixVolume() <em>Mix Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMixVolume()
	 * @generated
	 * @ordered
	 */
	protected Double mixVolume = MIX_VOLUME_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected DegasDetailsImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return MixingDataPackage.Literals.DEGAS_DETAILS;
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
			eNotify(new ENotificationImpl(this, Notification.SET, MixingDataPackage.DEGAS_DETAILS__PLANNED_MINUTES, oldPlannedMinutes, plannedMinutes));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getMinutes() {
		return minutes;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMinutes(Double newMinutes) {
		Double oldMinutes = minutes;
		minutes = newMinutes;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, MixingDataPackage.DEGAS_DETAILS__MINUTES, oldMinutes, minutes));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getPlannedPressure() {
		return plannedPressure;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPlannedPressure(Double newPlannedPressure) {
		Double oldPlannedPressure = plannedPressure;
		plannedPressure = newPlannedPressure;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, MixingDataPackage.DEGAS_DETAILS__PLANNED_PRESSURE, oldPlannedPressure, plannedPressure));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getPressure() {
		return pressure;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPressure(Double newPressure) {
		Double oldPressure = pressure;
		pressure = newPressure;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, MixingDataPackage.DEGAS_DETAILS__PRESSURE, oldPressure, pressure));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getCupVolume() {
		return cupVolume;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCupVolume(Double newCupVolume) {
		Double oldCupVolume = cupVolume;
		cupVolume = newCupVolume;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, MixingDataPackage.DEGAS_DETAILS__CUP_VOLUME, oldCupVolume, cupVolume));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getMixVolume() {
		return mixVolume;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMixVolume(Double newMixVolume) {
		Double oldMixVolume = mixVolume;
		mixVolume = newMixVolume;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, MixingDataPackage.DEGAS_DETAILS__MIX_VOLUME, oldMixVolume, mixVolume));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case MixingDataPackage.DEGAS_DETAILS__PLANNED_MINUTES:
				return getPlannedMinutes();
			case MixingDataPackage.DEGAS_DETAILS__MINUTES:
				return getMinutes();
			case MixingDataPackage.DEGAS_DETAILS__PLANNED_PRESSURE:
				return getPlannedPressure();
			case MixingDataPackage.DEGAS_DETAILS__PRESSURE:
				return getPressure();
			case MixingDataPackage.DEGAS_DETAILS__CUP_VOLUME:
				return getCupVolume();
			case MixingDataPackage.DEGAS_DETAILS__MIX_VOLUME:
				return getMixVolume();
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
			case MixingDataPackage.DEGAS_DETAILS__PLANNED_MINUTES:
				setPlannedMinutes((Double)newValue);
				return;
			case MixingDataPackage.DEGAS_DETAILS__MINUTES:
				setMinutes((Double)newValue);
				return;
			case MixingDataPackage.DEGAS_DETAILS__PLANNED_PRESSURE:
				setPlannedPressure((Double)newValue);
				return;
			case MixingDataPackage.DEGAS_DETAILS__PRESSURE:
				setPressure((Double)newValue);
				return;
			case MixingDataPackage.DEGAS_DETAILS__CUP_VOLUME:
				setCupVolume((Double)newValue);
				return;
			case MixingDataPackage.DEGAS_DETAILS__MIX_VOLUME:
				setMixVolume((Double)newValue);
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
			case MixingDataPackage.DEGAS_DETAILS__PLANNED_MINUTES:
				setPlannedMinutes(PLANNED_MINUTES_EDEFAULT);
				return;
			case MixingDataPackage.DEGAS_DETAILS__MINUTES:
				setMinutes(MINUTES_EDEFAULT);
				return;
			case MixingDataPackage.DEGAS_DETAILS__PLANNED_PRESSURE:
				setPlannedPressure(PLANNED_PRESSURE_EDEFAULT);
				return;
			case MixingDataPackage.DEGAS_DETAILS__PRESSURE:
				setPressure(PRESSURE_EDEFAULT);
				return;
			case MixingDataPackage.DEGAS_DETAILS__CUP_VOLUME:
				setCupVolume(CUP_VOLUME_EDEFAULT);
				return;
			case MixingDataPackage.DEGAS_DETAILS__MIX_VOLUME:
				setMixVolume(MIX_VOLUME_EDEFAULT);
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
			case MixingDataPackage.DEGAS_DETAILS__PLANNED_MINUTES:
				return PLANNED_MINUTES_EDEFAULT == null ? plannedMinutes != null : !PLANNED_MINUTES_EDEFAULT.equals(plannedMinutes);
			case MixingDataPackage.DEGAS_DETAILS__MINUTES:
				return MINUTES_EDEFAULT == null ? minutes != null : !MINUTES_EDEFAULT.equals(minutes);
			case MixingDataPackage.DEGAS_DETAILS__PLANNED_PRESSURE:
				return PLANNED_PRESSURE_EDEFAULT == null ? plannedPressure != null : !PLANNED_PRESSURE_EDEFAULT.equals(plannedPressure);
			case MixingDataPackage.DEGAS_DETAILS__PRESSURE:
				return PRESSURE_EDEFAULT == null ? pressure != null : !PRESSURE_EDEFAULT.equals(pressure);
			case MixingDataPackage.DEGAS_DETAILS__CUP_VOLUME:
				return CUP_VOLUME_EDEFAULT == null ? cupVolume != null : !CUP_VOLUME_EDEFAULT.equals(cupVolume);
			case MixingDataPackage.DEGAS_DETAILS__MIX_VOLUME:
				return MIX_VOLUME_EDEFAULT == null ? mixVolume != null : !MIX_VOLUME_EDEFAULT.equals(mixVolume);
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
		result.append(" (plannedMinutes: ");
		result.append(plannedMinutes);
		result.append(", minutes: ");
		result.append(minutes);
		result.append(", plannedPressure: ");
		result.append(plannedPressure);
		result.append(", pressure: ");
		result.append(pressure);
		result.append(", cupVolume: ");
		result.append(cupVolume);
		result.append(", mixVolume: ");
		result.append(mixVolume);
		result.append(')');
		return result.toString();
	}

} //DegasDetailsImpl
