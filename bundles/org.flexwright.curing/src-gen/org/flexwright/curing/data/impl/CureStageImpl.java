/**
 */
package org.flexwright.curing.data.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.flexwright.curing.data.CureStage;
import org.flexwright.curing.data.CuringDataPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Cure Stage</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.curing.data.impl.CureStageImpl#getMinutes <em>Minutes</em>}</li>
 *   <li>{@link org.flexwright.curing.data.impl.CureStageImpl#getCelsius <em>Celsius</em>}</li>
 *   <li>{@link org.flexwright.curing.data.impl.CureStageImpl#isRamp <em>Ramp</em>}</li>
 * </ul>
 *
 * @generated
 */
public class CureStageImpl extends MinimalEObjectImpl.Container implements CureStage {
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
	 * The default value of the '{@link #getCelsius() <em>Celsius</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCelsius()
	 * @generated
	 * @ordered
	 */
	protected static final Double CELSIUS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCelsius() <em>Celsius</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCelsius()
	 * @generated
	 * @ordered
	 */
	protected Double celsius = CELSIUS_EDEFAULT;

	/**
	 * The default value of the '{@link #isRamp() <em>Ramp</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isRamp()
	 * @generated
	 * @ordered
	 */
	protected static final boolean RAMP_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isRamp() <em>Ramp</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isRamp()
	 * @generated
	 * @ordered
	 */
	protected boolean ramp = RAMP_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected CureStageImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CuringDataPackage.Literals.CURE_STAGE;
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
			eNotify(new ENotificationImpl(this, Notification.SET, CuringDataPackage.CURE_STAGE__MINUTES, oldMinutes, minutes));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getCelsius() {
		return celsius;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCelsius(Double newCelsius) {
		Double oldCelsius = celsius;
		celsius = newCelsius;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CuringDataPackage.CURE_STAGE__CELSIUS, oldCelsius, celsius));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isRamp() {
		return ramp;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRamp(boolean newRamp) {
		boolean oldRamp = ramp;
		ramp = newRamp;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CuringDataPackage.CURE_STAGE__RAMP, oldRamp, ramp));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case CuringDataPackage.CURE_STAGE__MINUTES:
				return getMinutes();
			case CuringDataPackage.CURE_STAGE__CELSIUS:
				return getCelsius();
			case CuringDataPackage.CURE_STAGE__RAMP:
				return isRamp();
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
			case CuringDataPackage.CURE_STAGE__MINUTES:
				setMinutes((Double)newValue);
				return;
			case CuringDataPackage.CURE_STAGE__CELSIUS:
				setCelsius((Double)newValue);
				return;
			case CuringDataPackage.CURE_STAGE__RAMP:
				setRamp((Boolean)newValue);
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
			case CuringDataPackage.CURE_STAGE__MINUTES:
				setMinutes(MINUTES_EDEFAULT);
				return;
			case CuringDataPackage.CURE_STAGE__CELSIUS:
				setCelsius(CELSIUS_EDEFAULT);
				return;
			case CuringDataPackage.CURE_STAGE__RAMP:
				setRamp(RAMP_EDEFAULT);
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
			case CuringDataPackage.CURE_STAGE__MINUTES:
				return MINUTES_EDEFAULT == null ? minutes != null : !MINUTES_EDEFAULT.equals(minutes);
			case CuringDataPackage.CURE_STAGE__CELSIUS:
				return CELSIUS_EDEFAULT == null ? celsius != null : !CELSIUS_EDEFAULT.equals(celsius);
			case CuringDataPackage.CURE_STAGE__RAMP:
				return ramp != RAMP_EDEFAULT;
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
		result.append(" (minutes: ");
		result.append(minutes);
		result.append(", celsius: ");
		result.append(celsius);
		result.append(", ramp: ");
		result.append(ramp);
		result.append(')');
		return result.toString();
	}

} //CureStageImpl
