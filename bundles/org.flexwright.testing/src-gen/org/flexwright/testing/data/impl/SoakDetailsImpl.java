/**
 */
package org.flexwright.testing.data.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.flexwright.testing.data.SoakDetails;
import org.flexwright.testing.data.TestingDataPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Soak Details</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.testing.data.impl.SoakDetailsImpl#getLiquid <em>Liquid</em>}</li>
 *   <li>{@link org.flexwright.testing.data.impl.SoakDetailsImpl#getDrying <em>Drying</em>}</li>
 *   <li>{@link org.flexwright.testing.data.impl.SoakDetailsImpl#getCelsius <em>Celsius</em>}</li>
 * </ul>
 *
 * @generated
 */
public class SoakDetailsImpl extends MinimalEObjectImpl.Container implements SoakDetails {
	/**
	 * The default value of the '{@link #getLiquid() <em>Liquid</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLiquid()
	 * @generated
	 * @ordered
	 */
	protected static final String LIQUID_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLiquid() <em>Liquid</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLiquid()
	 * @generated
	 * @ordered
	 */
	protected String liquid = LIQUID_EDEFAULT;

	/**
	 * The default value of the '{@link #getDrying() <em>Drying</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDrying()
	 * @generated
	 * @ordered
	 */
	protected static final Boolean DRYING_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDrying() <em>Drying</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDrying()
	 * @generated
	 * @ordered
	 */
	protected Boolean drying = DRYING_EDEFAULT;

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
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected SoakDetailsImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return TestingDataPackage.Literals.SOAK_DETAILS;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getLiquid() {
		return liquid;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLiquid(String newLiquid) {
		String oldLiquid = liquid;
		liquid = newLiquid;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, TestingDataPackage.SOAK_DETAILS__LIQUID, oldLiquid, liquid));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Boolean getDrying() {
		return drying;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDrying(Boolean newDrying) {
		Boolean oldDrying = drying;
		drying = newDrying;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, TestingDataPackage.SOAK_DETAILS__DRYING, oldDrying, drying));
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
			eNotify(new ENotificationImpl(this, Notification.SET, TestingDataPackage.SOAK_DETAILS__CELSIUS, oldCelsius, celsius));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case TestingDataPackage.SOAK_DETAILS__LIQUID:
				return getLiquid();
			case TestingDataPackage.SOAK_DETAILS__DRYING:
				return getDrying();
			case TestingDataPackage.SOAK_DETAILS__CELSIUS:
				return getCelsius();
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
			case TestingDataPackage.SOAK_DETAILS__LIQUID:
				setLiquid((String)newValue);
				return;
			case TestingDataPackage.SOAK_DETAILS__DRYING:
				setDrying((Boolean)newValue);
				return;
			case TestingDataPackage.SOAK_DETAILS__CELSIUS:
				setCelsius((Double)newValue);
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
			case TestingDataPackage.SOAK_DETAILS__LIQUID:
				setLiquid(LIQUID_EDEFAULT);
				return;
			case TestingDataPackage.SOAK_DETAILS__DRYING:
				setDrying(DRYING_EDEFAULT);
				return;
			case TestingDataPackage.SOAK_DETAILS__CELSIUS:
				setCelsius(CELSIUS_EDEFAULT);
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
			case TestingDataPackage.SOAK_DETAILS__LIQUID:
				return LIQUID_EDEFAULT == null ? liquid != null : !LIQUID_EDEFAULT.equals(liquid);
			case TestingDataPackage.SOAK_DETAILS__DRYING:
				return DRYING_EDEFAULT == null ? drying != null : !DRYING_EDEFAULT.equals(drying);
			case TestingDataPackage.SOAK_DETAILS__CELSIUS:
				return CELSIUS_EDEFAULT == null ? celsius != null : !CELSIUS_EDEFAULT.equals(celsius);
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
		result.append(" (liquid: ");
		result.append(liquid);
		result.append(", drying: ");
		result.append(drying);
		result.append(", celsius: ");
		result.append(celsius);
		result.append(')');
		return result.toString();
	}

} //SoakDetailsImpl
