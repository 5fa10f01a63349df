/**
 */
package org.flexwright.model.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.flexwright.model.MaterialValue;
import org.flexwright.model.ModelPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Material Value</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.impl.MaterialValueImpl#getProperty <em>Property</em>}</li>
 *   <li>{@link org.flexwright.model.impl.MaterialValueImpl#getUnit <em>Unit</em>}</li>
 *   <li>{@link org.flexwright.model.impl.MaterialValueImpl#getSheetValue <em>Sheet Value</em>}</li>
 *   <li>{@link org.flexwright.model.impl.MaterialValueImpl#getSheetSource <em>Sheet Source</em>}</li>
 *   <li>{@link org.flexwright.model.impl.MaterialValueImpl#getOwnValue <em>Own Value</em>}</li>
 *   <li>{@link org.flexwright.model.impl.MaterialValueImpl#getOwnUncertainty <em>Own Uncertainty</em>}</li>
 *   <li>{@link org.flexwright.model.impl.MaterialValueImpl#getOwnSource <em>Own Source</em>}</li>
 * </ul>
 *
 * @generated
 */
public class MaterialValueImpl extends EntryImpl implements MaterialValue {
	/**
	 * The default value of the '{@link #getProperty() <em>Property</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getProperty()
	 * @generated
	 * @ordered
	 */
	protected static final String PROPERTY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getProperty() <em>Property</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getProperty()
	 * @generated
	 * @ordered
	 */
	protected String property = PROPERTY_EDEFAULT;

	/**
	 * The default value of the '{@link #getUnit() <em>Unit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUnit()
	 * @generated
	 * @ordered
	 */
	protected static final String UNIT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getUnit() <em>Unit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUnit()
	 * @generated
	 * @ordered
	 */
	protected String unit = UNIT_EDEFAULT;

	/**
	 * The default value of the '{@link #getSheetValue() <em>Sheet Value</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSheetValue()
	 * @generated
	 * @ordered
	 */
	protected static final Double SHEET_VALUE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSheetValue() <em>Sheet Value</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSheetValue()
	 * @generated
	 * @ordered
	 */
	protected Double sheetValue = SHEET_VALUE_EDEFAULT;

	/**
	 * The default value of the '{@link #getSheetSource() <em>Sheet Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSheetSource()
	 * @generated
	 * @ordered
	 */
	protected static final String SHEET_SOURCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSheetSource() <em>Sheet Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSheetSource()
	 * @generated
	 * @ordered
	 */
	protected String sheetSource = SHEET_SOURCE_EDEFAULT;

	/**
	 * The default value of the '{@link #getOwnValue() <em>Own Value</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOwnValue()
	 * @generated
	 * @ordered
	 */
	protected static final Double OWN_VALUE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOwnValue() <em>Own Value</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOwnValue()
	 * @generated
	 * @ordered
	 */
	protected Double ownValue = OWN_VALUE_EDEFAULT;

	/**
	 * The default value of the '{@link #getOwnUncertainty() <em>Own Uncertainty</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOwnUncertainty()
	 * @generated
	 * @ordered
	 */
	protected static final Double OWN_UNCERTAINTY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOwnUncertainty() <em>Own Uncertainty</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOwnUncertainty()
	 * @generated
	 * @ordered
	 */
	protected Double ownUncertainty = OWN_UNCERTAINTY_EDEFAULT;

	/**
	 * The default value of the '{@link #getOwnSource() <em>Own Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOwnSource()
	 * @generated
	 * @ordered
	 */
	protected static final String OWN_SOURCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOwnSource() <em>Own Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOwnSource()
	 * @generated
	 * @ordered
	 */
	protected String ownSource = OWN_SOURCE_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected MaterialValueImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.MATERIAL_VALUE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getProperty() {
		return property;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setProperty(String newProperty) {
		String oldProperty = property;
		property = newProperty;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MATERIAL_VALUE__PROPERTY, oldProperty, property));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getUnit() {
		return unit;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setUnit(String newUnit) {
		String oldUnit = unit;
		unit = newUnit;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MATERIAL_VALUE__UNIT, oldUnit, unit));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getSheetValue() {
		return sheetValue;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSheetValue(Double newSheetValue) {
		Double oldSheetValue = sheetValue;
		sheetValue = newSheetValue;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MATERIAL_VALUE__SHEET_VALUE, oldSheetValue, sheetValue));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSheetSource() {
		return sheetSource;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSheetSource(String newSheetSource) {
		String oldSheetSource = sheetSource;
		sheetSource = newSheetSource;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MATERIAL_VALUE__SHEET_SOURCE, oldSheetSource, sheetSource));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getOwnValue() {
		return ownValue;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOwnValue(Double newOwnValue) {
		Double oldOwnValue = ownValue;
		ownValue = newOwnValue;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MATERIAL_VALUE__OWN_VALUE, oldOwnValue, ownValue));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getOwnUncertainty() {
		return ownUncertainty;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOwnUncertainty(Double newOwnUncertainty) {
		Double oldOwnUncertainty = ownUncertainty;
		ownUncertainty = newOwnUncertainty;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MATERIAL_VALUE__OWN_UNCERTAINTY, oldOwnUncertainty, ownUncertainty));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getOwnSource() {
		return ownSource;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOwnSource(String newOwnSource) {
		String oldOwnSource = ownSource;
		ownSource = newOwnSource;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MATERIAL_VALUE__OWN_SOURCE, oldOwnSource, ownSource));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case ModelPackage.MATERIAL_VALUE__PROPERTY:
				return getProperty();
			case ModelPackage.MATERIAL_VALUE__UNIT:
				return getUnit();
			case ModelPackage.MATERIAL_VALUE__SHEET_VALUE:
				return getSheetValue();
			case ModelPackage.MATERIAL_VALUE__SHEET_SOURCE:
				return getSheetSource();
			case ModelPackage.MATERIAL_VALUE__OWN_VALUE:
				return getOwnValue();
			case ModelPackage.MATERIAL_VALUE__OWN_UNCERTAINTY:
				return getOwnUncertainty();
			case ModelPackage.MATERIAL_VALUE__OWN_SOURCE:
				return getOwnSource();
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
			case ModelPackage.MATERIAL_VALUE__PROPERTY:
				setProperty((String)newValue);
				return;
			case ModelPackage.MATERIAL_VALUE__UNIT:
				setUnit((String)newValue);
				return;
			case ModelPackage.MATERIAL_VALUE__SHEET_VALUE:
				setSheetValue((Double)newValue);
				return;
			case ModelPackage.MATERIAL_VALUE__SHEET_SOURCE:
				setSheetSource((String)newValue);
				return;
			case ModelPackage.MATERIAL_VALUE__OWN_VALUE:
				setOwnValue((Double)newValue);
				return;
			case ModelPackage.MATERIAL_VALUE__OWN_UNCERTAINTY:
				setOwnUncertainty((Double)newValue);
				return;
			case ModelPackage.MATERIAL_VALUE__OWN_SOURCE:
				setOwnSource((String)newValue);
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
			case ModelPackage.MATERIAL_VALUE__PROPERTY:
				setProperty(PROPERTY_EDEFAULT);
				return;
			case ModelPackage.MATERIAL_VALUE__UNIT:
				setUnit(UNIT_EDEFAULT);
				return;
			case ModelPackage.MATERIAL_VALUE__SHEET_VALUE:
				setSheetValue(SHEET_VALUE_EDEFAULT);
				return;
			case ModelPackage.MATERIAL_VALUE__SHEET_SOURCE:
				setSheetSource(SHEET_SOURCE_EDEFAULT);
				return;
			case ModelPackage.MATERIAL_VALUE__OWN_VALUE:
				setOwnValue(OWN_VALUE_EDEFAULT);
				return;
			case ModelPackage.MATERIAL_VALUE__OWN_UNCERTAINTY:
				setOwnUncertainty(OWN_UNCERTAINTY_EDEFAULT);
				return;
			case ModelPackage.MATERIAL_VALUE__OWN_SOURCE:
				setOwnSource(OWN_SOURCE_EDEFAULT);
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
			case ModelPackage.MATERIAL_VALUE__PROPERTY:
				return PROPERTY_EDEFAULT == null ? property != null : !PROPERTY_EDEFAULT.equals(property);
			case ModelPackage.MATERIAL_VALUE__UNIT:
				return UNIT_EDEFAULT == null ? unit != null : !UNIT_EDEFAULT.equals(unit);
			case ModelPackage.MATERIAL_VALUE__SHEET_VALUE:
				return SHEET_VALUE_EDEFAULT == null ? sheetValue != null : !SHEET_VALUE_EDEFAULT.equals(sheetValue);
			case ModelPackage.MATERIAL_VALUE__SHEET_SOURCE:
				return SHEET_SOURCE_EDEFAULT == null ? sheetSource != null : !SHEET_SOURCE_EDEFAULT.equals(sheetSource);
			case ModelPackage.MATERIAL_VALUE__OWN_VALUE:
				return OWN_VALUE_EDEFAULT == null ? ownValue != null : !OWN_VALUE_EDEFAULT.equals(ownValue);
			case ModelPackage.MATERIAL_VALUE__OWN_UNCERTAINTY:
				return OWN_UNCERTAINTY_EDEFAULT == null ? ownUncertainty != null : !OWN_UNCERTAINTY_EDEFAULT.equals(ownUncertainty);
			case ModelPackage.MATERIAL_VALUE__OWN_SOURCE:
				return OWN_SOURCE_EDEFAULT == null ? ownSource != null : !OWN_SOURCE_EDEFAULT.equals(ownSource);
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
		result.append(" (property: ");
		result.append(property);
		result.append(", unit: ");
		result.append(unit);
		result.append(", sheetValue: ");
		result.append(sheetValue);
		result.append(", sheetSource: ");
		result.append(sheetSource);
		result.append(", ownValue: ");
		result.append(ownValue);
		result.append(", ownUncertainty: ");
		result.append(ownUncertainty);
		result.append(", ownSource: ");
		result.append(ownSource);
		result.append(')');
		return result.toString();
	}

} //MaterialValueImpl
