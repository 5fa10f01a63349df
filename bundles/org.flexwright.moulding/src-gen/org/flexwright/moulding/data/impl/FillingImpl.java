/**
 */
package org.flexwright.moulding.data.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.flexwright.moulding.data.FillMethod;
import org.flexwright.moulding.data.Filling;
import org.flexwright.moulding.data.MouldingDataPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Filling</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.moulding.data.impl.FillingImpl#getMethod <em>Method</em>}</li>
 *   <li>{@link org.flexwright.moulding.data.impl.FillingImpl#getPlannedFillMinutes <em>Planned Fill Minutes</em>}</li>
 *   <li>{@link org.flexwright.moulding.data.impl.FillingImpl#getActualFillMinutes <em>Actual Fill Minutes</em>}</li>
 *   <li>{@link org.flexwright.moulding.data.impl.FillingImpl#getWorkingMinutes <em>Working Minutes</em>}</li>
 *   <li>{@link org.flexwright.moulding.data.impl.FillingImpl#getWorkingDefinition <em>Working Definition</em>}</li>
 *   <li>{@link org.flexwright.moulding.data.impl.FillingImpl#getWorkingGrowth <em>Working Growth</em>}</li>
 *   <li>{@link org.flexwright.moulding.data.impl.FillingImpl#getViscosity <em>Viscosity</em>}</li>
 *   <li>{@link org.flexwright.moulding.data.impl.FillingImpl#getGateRadius <em>Gate Radius</em>}</li>
 *   <li>{@link org.flexwright.moulding.data.impl.FillingImpl#getGateLength <em>Gate Length</em>}</li>
 *   <li>{@link org.flexwright.moulding.data.impl.FillingImpl#getPlannedPressure <em>Planned Pressure</em>}</li>
 *   <li>{@link org.flexwright.moulding.data.impl.FillingImpl#getActualPressure <em>Actual Pressure</em>}</li>
 *   <li>{@link org.flexwright.moulding.data.impl.FillingImpl#getPartVolume <em>Part Volume</em>}</li>
 * </ul>
 *
 * @generated
 */
public class FillingImpl extends MinimalEObjectImpl.Container implements Filling {
	/**
	 * The default value of the '{@link #getMethod() <em>Method</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMethod()
	 * @generated
	 * @ordered
	 */
	protected static final FillMethod METHOD_EDEFAULT = FillMethod.UNKNOWN;

	/**
	 * The cached value of the '{@link #getMethod() <em>Method</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMethod()
	 * @generated
	 * @ordered
	 */
	protected FillMethod method = METHOD_EDEFAULT;

	/**
	 * The default value of the '{@link #getPlannedFillMinutes() <em>Planned Fill Minutes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlannedFillMinutes()
	 * @generated
	 * @ordered
	 */
	protected static final Double PLANNED_FILL_MINUTES_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPlannedFillMinutes() <em>Planned Fill Minutes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlannedFillMinutes()
	 * @generated
	 * @ordered
	 */
	protected Double plannedFillMinutes = PLANNED_FILL_MINUTES_EDEFAULT;

	/**
	 * The default value of the '{@link #getActualFillMinutes() <em>Actual Fill Minutes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getActualFillMinutes()
	 * @generated
	 * @ordered
	 */
	protected static final Double ACTUAL_FILL_MINUTES_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getActualFillMinutes() <em>Actual Fill Minutes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getActualFillMinutes()
	 * @generated
	 * @ordered
	 */
	protected Double actualFillMinutes = ACTUAL_FILL_MINUTES_EDEFAULT;

	/**
	 * The default value of the '{@link #getWorkingMinutes() <em>Working Minutes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWorkingMinutes()
	 * @generated
	 * @ordered
	 */
	protected static final Double WORKING_MINUTES_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWorkingMinutes() <em>Working Minutes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWorkingMinutes()
	 * @generated
	 * @ordered
	 */
	protected Double workingMinutes = WORKING_MINUTES_EDEFAULT;

	/**
	 * The default value of the '{@link #getWorkingDefinition() <em>Working Definition</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWorkingDefinition()
	 * @generated
	 * @ordered
	 */
	protected static final String WORKING_DEFINITION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWorkingDefinition() <em>Working Definition</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWorkingDefinition()
	 * @generated
	 * @ordered
	 */
	protected String workingDefinition = WORKING_DEFINITION_EDEFAULT;

	/**
	 * The default value of the '{@link #getWorkingGrowth() <em>Working Growth</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWorkingGrowth()
	 * @generated
	 * @ordered
	 */
	protected static final Double WORKING_GROWTH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWorkingGrowth() <em>Working Growth</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWorkingGrowth()
	 * @generated
	 * @ordered
	 */
	protected Double workingGrowth = WORKING_GROWTH_EDEFAULT;

	/**
	 * The default value of the '{@link #getViscosity() <em>Viscosity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getViscosity()
	 * @generated
	 * @ordered
	 */
	protected static final Double VISCOSITY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getViscosity() <em>Viscosity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getViscosity()
	 * @generated
	 * @ordered
	 */
	protected Double viscosity = VISCOSITY_EDEFAULT;

	/**
	 * The default value of the '{@link #getGateRadius() <em>Gate Radius</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGateRadius()
	 * @generated
	 * @ordered
	 */
	protected static final Double GATE_RADIUS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getGateRadius() <em>Gate Radius</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGateRadius()
	 * @generated
	 * @ordered
	 */
	protected Double gateRadius = GATE_RADIUS_EDEFAULT;

	/**
	 * The default value of the '{@link #getGateLength() <em>Gate Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGateLength()
	 * @generated
	 * @ordered
	 */
	protected static final Double GATE_LENGTH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getGateLength() <em>Gate Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGateLength()
	 * @generated
	 * @ordered
	 */
	protected Double gateLength = GATE_LENGTH_EDEFAULT;

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
	 * The default value of the '{@link #getActualPressure() <em>Actual Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getActualPressure()
	 * @generated
	 * @ordered
	 */
	protected static final Double ACTUAL_PRESSURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getActualPressure() <em>Actual Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getActualPressure()
	 * @generated
	 * @ordered
	 */
	protected Double actualPressure = ACTUAL_PRESSURE_EDEFAULT;

	/**
	 * The default value of the '{@link #getPartVolume() <em>Part Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPartVolume()
	 * @generated
	 * @ordered
	 */
	protected static final Double PART_VOLUME_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPartVolume() <em>Part Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPartVolume()
	 * @generated
	 * @ordered
	 */
	protected Double partVolume = PART_VOLUME_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected FillingImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return MouldingDataPackage.Literals.FILLING;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public FillMethod getMethod() {
		return method;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMethod(FillMethod newMethod) {
		FillMethod oldMethod = method;
		method = newMethod == null ? METHOD_EDEFAULT : newMethod;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, MouldingDataPackage.FILLING__METHOD, oldMethod, method));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getPlannedFillMinutes() {
		return plannedFillMinutes;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPlannedFillMinutes(Double newPlannedFillMinutes) {
		Double oldPlannedFillMinutes = plannedFillMinutes;
		plannedFillMinutes = newPlannedFillMinutes;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, MouldingDataPackage.FILLING__PLANNED_FILL_MINUTES, oldPlannedFillMinutes, plannedFillMinutes));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getActualFillMinutes() {
		return actualFillMinutes;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setActualFillMinutes(Double newActualFillMinutes) {
		Double oldActualFillMinutes = actualFillMinutes;
		actualFillMinutes = newActualFillMinutes;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, MouldingDataPackage.FILLING__ACTUAL_FILL_MINUTES, oldActualFillMinutes, actualFillMinutes));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getWorkingMinutes() {
		return workingMinutes;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWorkingMinutes(Double newWorkingMinutes) {
		Double oldWorkingMinutes = workingMinutes;
		workingMinutes = newWorkingMinutes;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, MouldingDataPackage.FILLING__WORKING_MINUTES, oldWorkingMinutes, workingMinutes));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getWorkingDefinition() {
		return workingDefinition;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWorkingDefinition(String newWorkingDefinition) {
		String oldWorkingDefinition = workingDefinition;
		workingDefinition = newWorkingDefinition;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, MouldingDataPackage.FILLING__WORKING_DEFINITION, oldWorkingDefinition, workingDefinition));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getWorkingGrowth() {
		return workingGrowth;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWorkingGrowth(Double newWorkingGrowth) {
		Double oldWorkingGrowth = workingGrowth;
		workingGrowth = newWorkingGrowth;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, MouldingDataPackage.FILLING__WORKING_GROWTH, oldWorkingGrowth, workingGrowth));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getViscosity() {
		return viscosity;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setViscosity(Double newViscosity) {
		Double oldViscosity = viscosity;
		viscosity = newViscosity;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, MouldingDataPackage.FILLING__VISCOSITY, oldViscosity, viscosity));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getGateRadius() {
		return gateRadius;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGateRadius(Double newGateRadius) {
		Double oldGateRadius = gateRadius;
		gateRadius = newGateRadius;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, MouldingDataPackage.FILLING__GATE_RADIUS, oldGateRadius, gateRadius));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getGateLength() {
		return gateLength;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGateLength(Double newGateLength) {
		Double oldGateLength = gateLength;
		gateLength = newGateLength;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, MouldingDataPackage.FILLING__GATE_LENGTH, oldGateLength, gateLength));
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
			eNotify(new ENotificationImpl(this, Notification.SET, MouldingDataPackage.FILLING__PLANNED_PRESSURE, oldPlannedPressure, plannedPressure));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getActualPressure() {
		return actualPressure;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setActualPressure(Double newActualPressure) {
		Double oldActualPressure = actualPressure;
		actualPressure = newActualPressure;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, MouldingDataPackage.FILLING__ACTUAL_PRESSURE, oldActualPressure, actualPressure));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getPartVolume() {
		return partVolume;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPartVolume(Double newPartVolume) {
		Double oldPartVolume = partVolume;
		partVolume = newPartVolume;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, MouldingDataPackage.FILLING__PART_VOLUME, oldPartVolume, partVolume));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case MouldingDataPackage.FILLING__METHOD:
				return getMethod();
			case MouldingDataPackage.FILLING__PLANNED_FILL_MINUTES:
				return getPlannedFillMinutes();
			case MouldingDataPackage.FILLING__ACTUAL_FILL_MINUTES:
				return getActualFillMinutes();
			case MouldingDataPackage.FILLING__WORKING_MINUTES:
				return getWorkingMinutes();
			case MouldingDataPackage.FILLING__WORKING_DEFINITION:
				return getWorkingDefinition();
			case MouldingDataPackage.FILLING__WORKING_GROWTH:
				return getWorkingGrowth();
			case MouldingDataPackage.FILLING__VISCOSITY:
				return getViscosity();
			case MouldingDataPackage.FILLING__GATE_RADIUS:
				return getGateRadius();
			case MouldingDataPackage.FILLING__GATE_LENGTH:
				return getGateLength();
			case MouldingDataPackage.FILLING__PLANNED_PRESSURE:
				return getPlannedPressure();
			case MouldingDataPackage.FILLING__ACTUAL_PRESSURE:
				return getActualPressure();
			case MouldingDataPackage.FILLING__PART_VOLUME:
				return getPartVolume();
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
			case MouldingDataPackage.FILLING__METHOD:
				setMethod((FillMethod)newValue);
				return;
			case MouldingDataPackage.FILLING__PLANNED_FILL_MINUTES:
				setPlannedFillMinutes((Double)newValue);
				return;
			case MouldingDataPackage.FILLING__ACTUAL_FILL_MINUTES:
				setActualFillMinutes((Double)newValue);
				return;
			case MouldingDataPackage.FILLING__WORKING_MINUTES:
				setWorkingMinutes((Double)newValue);
				return;
			case MouldingDataPackage.FILLING__WORKING_DEFINITION:
				setWorkingDefinition((String)newValue);
				return;
			case MouldingDataPackage.FILLING__WORKING_GROWTH:
				setWorkingGrowth((Double)newValue);
				return;
			case MouldingDataPackage.FILLING__VISCOSITY:
				setViscosity((Double)newValue);
				return;
			case MouldingDataPackage.FILLING__GATE_RADIUS:
				setGateRadius((Double)newValue);
				return;
			case MouldingDataPackage.FILLING__GATE_LENGTH:
				setGateLength((Double)newValue);
				return;
			case MouldingDataPackage.FILLING__PLANNED_PRESSURE:
				setPlannedPressure((Double)newValue);
				return;
			case MouldingDataPackage.FILLING__ACTUAL_PRESSURE:
				setActualPressure((Double)newValue);
				return;
			case MouldingDataPackage.FILLING__PART_VOLUME:
				setPartVolume((Double)newValue);
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
			case MouldingDataPackage.FILLING__METHOD:
				setMethod(METHOD_EDEFAULT);
				return;
			case MouldingDataPackage.FILLING__PLANNED_FILL_MINUTES:
				setPlannedFillMinutes(PLANNED_FILL_MINUTES_EDEFAULT);
				return;
			case MouldingDataPackage.FILLING__ACTUAL_FILL_MINUTES:
				setActualFillMinutes(ACTUAL_FILL_MINUTES_EDEFAULT);
				return;
			case MouldingDataPackage.FILLING__WORKING_MINUTES:
				setWorkingMinutes(WORKING_MINUTES_EDEFAULT);
				return;
			case MouldingDataPackage.FILLING__WORKING_DEFINITION:
				setWorkingDefinition(WORKING_DEFINITION_EDEFAULT);
				return;
			case MouldingDataPackage.FILLING__WORKING_GROWTH:
				setWorkingGrowth(WORKING_GROWTH_EDEFAULT);
				return;
			case MouldingDataPackage.FILLING__VISCOSITY:
				setViscosity(VISCOSITY_EDEFAULT);
				return;
			case MouldingDataPackage.FILLING__GATE_RADIUS:
				setGateRadius(GATE_RADIUS_EDEFAULT);
				return;
			case MouldingDataPackage.FILLING__GATE_LENGTH:
				setGateLength(GATE_LENGTH_EDEFAULT);
				return;
			case MouldingDataPackage.FILLING__PLANNED_PRESSURE:
				setPlannedPressure(PLANNED_PRESSURE_EDEFAULT);
				return;
			case MouldingDataPackage.FILLING__ACTUAL_PRESSURE:
				setActualPressure(ACTUAL_PRESSURE_EDEFAULT);
				return;
			case MouldingDataPackage.FILLING__PART_VOLUME:
				setPartVolume(PART_VOLUME_EDEFAULT);
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
			case MouldingDataPackage.FILLING__METHOD:
				return method != METHOD_EDEFAULT;
			case MouldingDataPackage.FILLING__PLANNED_FILL_MINUTES:
				return PLANNED_FILL_MINUTES_EDEFAULT == null ? plannedFillMinutes != null : !PLANNED_FILL_MINUTES_EDEFAULT.equals(plannedFillMinutes);
			case MouldingDataPackage.FILLING__ACTUAL_FILL_MINUTES:
				return ACTUAL_FILL_MINUTES_EDEFAULT == null ? actualFillMinutes != null : !ACTUAL_FILL_MINUTES_EDEFAULT.equals(actualFillMinutes);
			case MouldingDataPackage.FILLING__WORKING_MINUTES:
				return WORKING_MINUTES_EDEFAULT == null ? workingMinutes != null : !WORKING_MINUTES_EDEFAULT.equals(workingMinutes);
			case MouldingDataPackage.FILLING__WORKING_DEFINITION:
				return WORKING_DEFINITION_EDEFAULT == null ? workingDefinition != null : !WORKING_DEFINITION_EDEFAULT.equals(workingDefinition);
			case MouldingDataPackage.FILLING__WORKING_GROWTH:
				return WORKING_GROWTH_EDEFAULT == null ? workingGrowth != null : !WORKING_GROWTH_EDEFAULT.equals(workingGrowth);
			case MouldingDataPackage.FILLING__VISCOSITY:
				return VISCOSITY_EDEFAULT == null ? viscosity != null : !VISCOSITY_EDEFAULT.equals(viscosity);
			case MouldingDataPackage.FILLING__GATE_RADIUS:
				return GATE_RADIUS_EDEFAULT == null ? gateRadius != null : !GATE_RADIUS_EDEFAULT.equals(gateRadius);
			case MouldingDataPackage.FILLING__GATE_LENGTH:
				return GATE_LENGTH_EDEFAULT == null ? gateLength != null : !GATE_LENGTH_EDEFAULT.equals(gateLength);
			case MouldingDataPackage.FILLING__PLANNED_PRESSURE:
				return PLANNED_PRESSURE_EDEFAULT == null ? plannedPressure != null : !PLANNED_PRESSURE_EDEFAULT.equals(plannedPressure);
			case MouldingDataPackage.FILLING__ACTUAL_PRESSURE:
				return ACTUAL_PRESSURE_EDEFAULT == null ? actualPressure != null : !ACTUAL_PRESSURE_EDEFAULT.equals(actualPressure);
			case MouldingDataPackage.FILLING__PART_VOLUME:
				return PART_VOLUME_EDEFAULT == null ? partVolume != null : !PART_VOLUME_EDEFAULT.equals(partVolume);
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
		result.append(" (method: ");
		result.append(method);
		result.append(", plannedFillMinutes: ");
		result.append(plannedFillMinutes);
		result.append(", actualFillMinutes: ");
		result.append(actualFillMinutes);
		result.append(", workingMinutes: ");
		result.append(workingMinutes);
		result.append(", workingDefinition: ");
		result.append(workingDefinition);
		result.append(", workingGrowth: ");
		result.append(workingGrowth);
		result.append(", viscosity: ");
		result.append(viscosity);
		result.append(", gateRadius: ");
		result.append(gateRadius);
		result.append(", gateLength: ");
		result.append(gateLength);
		result.append(", plannedPressure: ");
		result.append(plannedPressure);
		result.append(", actualPressure: ");
		result.append(actualPressure);
		result.append(", partVolume: ");
		result.append(partVolume);
		result.append(')');
		return result.toString();
	}

} //FillingImpl
