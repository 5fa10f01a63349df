/**
 */
package org.flexwright.filament.data.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.flexwright.filament.data.FilamentDataPackage;
import org.flexwright.filament.data.Printing;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Printing</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.filament.data.impl.PrintingImpl#getPlannedSpeed <em>Planned Speed</em>}</li>
 *   <li>{@link org.flexwright.filament.data.impl.PrintingImpl#getActualSpeed <em>Actual Speed</em>}</li>
 *   <li>{@link org.flexwright.filament.data.impl.PrintingImpl#getNozzleDiameter <em>Nozzle Diameter</em>}</li>
 *   <li>{@link org.flexwright.filament.data.impl.PrintingImpl#getNozzleLength <em>Nozzle Length</em>}</li>
 *   <li>{@link org.flexwright.filament.data.impl.PrintingImpl#getLayerHeight <em>Layer Height</em>}</li>
 *   <li>{@link org.flexwright.filament.data.impl.PrintingImpl#getLineWidth <em>Line Width</em>}</li>
 *   <li>{@link org.flexwright.filament.data.impl.PrintingImpl#getPlannedNozzleTemperature <em>Planned Nozzle Temperature</em>}</li>
 *   <li>{@link org.flexwright.filament.data.impl.PrintingImpl#getActualNozzleTemperature <em>Actual Nozzle Temperature</em>}</li>
 *   <li>{@link org.flexwright.filament.data.impl.PrintingImpl#getStrandDiameter <em>Strand Diameter</em>}</li>
 *   <li>{@link org.flexwright.filament.data.impl.PrintingImpl#getFreeLength <em>Free Length</em>}</li>
 *   <li>{@link org.flexwright.filament.data.impl.PrintingImpl#getStrandModulus <em>Strand Modulus</em>}</li>
 *   <li>{@link org.flexwright.filament.data.impl.PrintingImpl#getConsistency <em>Consistency</em>}</li>
 *   <li>{@link org.flexwright.filament.data.impl.PrintingImpl#getFlowIndex <em>Flow Index</em>}</li>
 *   <li>{@link org.flexwright.filament.data.impl.PrintingImpl#getPushForce <em>Push Force</em>}</li>
 *   <li>{@link org.flexwright.filament.data.impl.PrintingImpl#getHoursOut <em>Hours Out</em>}</li>
 *   <li>{@link org.flexwright.filament.data.impl.PrintingImpl#getPlannedMass <em>Planned Mass</em>}</li>
 *   <li>{@link org.flexwright.filament.data.impl.PrintingImpl#getActualMass <em>Actual Mass</em>}</li>
 * </ul>
 *
 * @generated
 */
public class PrintingImpl extends MinimalEObjectImpl.Container implements Printing {
	/**
	 * The default value of the '{@link #getPlannedSpeed() <em>Planned Speed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlannedSpeed()
	 * @generated
	 * @ordered
	 */
	protected static final Double PLANNED_SPEED_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPlannedSpeed() <em>Planned Speed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlannedSpeed()
	 * @generated
	 * @ordered
	 */
	protected Double plannedSpeed = PLANNED_SPEED_EDEFAULT;

	/**
	 * The default value of the '{@link #getActualSpeed() <em>Actual Speed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getActualSpeed()
	 * @generated
	 * @ordered
	 */
	protected static final Double ACTUAL_SPEED_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getActualSpeed() <em>Actual Speed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getActualSpeed()
	 * @generated
	 * @ordered
	 */
	protected Double actualSpeed = ACTUAL_SPEED_EDEFAULT;

	/**
	 * The default value of the '{@link #getNozzleDiameter() <em>Nozzle Diameter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNozzleDiameter()
	 * @generated
	 * @ordered
	 */
	protected static final Double NOZZLE_DIAMETER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getNozzleDiameter() <em>Nozzle Diameter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNozzleDiameter()
	 * @generated
	 * @ordered
	 */
	protected Double nozzleDiameter = NOZZLE_DIAMETER_EDEFAULT;

	/**
	 * The default value of the '{@link #getNozzleLength() <em>Nozzle Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNozzleLength()
	 * @generated
	 * @ordered
	 */
	protected static final Double NOZZLE_LENGTH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getNozzleLength() <em>Nozzle Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNozzleLength()
	 * @generated
	 * @ordered
	 */
	protected Double nozzleLength = NOZZLE_LENGTH_EDEFAULT;

	/**
	 * The default value of the '{@link #getLayerHeight() <em>Layer Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLayerHeight()
	 * @generated
	 * @ordered
	 */
	protected static final Double LAYER_HEIGHT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLayerHeight() <em>Layer Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLayerHeight()
	 * @generated
	 * @ordered
	 */
	protected Double layerHeight = LAYER_HEIGHT_EDEFAULT;

	/**
	 * The default value of the '{@link #getLineWidth() <em>Line Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLineWidth()
	 * @generated
	 * @ordered
	 */
	protected static final Double LINE_WIDTH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLineWidth() <em>Line Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLineWidth()
	 * @generated
	 * @ordered
	 */
	protected Double lineWidth = LINE_WIDTH_EDEFAULT;

	/**
	 * The default value of the '{@link #getPlannedNozzleTemperature() <em>Planned Nozzle Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlannedNozzleTemperature()
	 * @generated
	 * @ordered
	 */
	protected static final Double PLANNED_NOZZLE_TEMPERATURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPlannedNozzleTemperature() <em>Planned Nozzle Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlannedNozzleTemperature()
	 * @generated
	 * @ordered
	 */
	protected Double plannedNozzleTemperature = PLANNED_NOZZLE_TEMPERATURE_EDEFAULT;

	/**
	 * The default value of the '{@link #getActualNozzleTemperature() <em>Actual Nozzle Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getActualNozzleTemperature()
	 * @generated
	 * @ordered
	 */
	protected static final Double ACTUAL_NOZZLE_TEMPERATURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getActualNozzleTemperature() <em>Actual Nozzle Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getActualNozzleTemperature()
	 * @generated
	 * @ordered
	 */
	protected Double actualNozzleTemperature = ACTUAL_NOZZLE_TEMPERATURE_EDEFAULT;

	/**
	 * The default value of the '{@link #getStrandDiameter() <em>Strand Diameter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStrandDiameter()
	 * @generated
	 * @ordered
	 */
	protected static final Double STRAND_DIAMETER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getStrandDiameter() <em>Strand Diameter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStrandDiameter()
	 * @generated
	 * @ordered
	 */
	protected Double strandDiameter = STRAND_DIAMETER_EDEFAULT;

	/**
	 * The default value of the '{@link #getFreeLength() <em>Free Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFreeLength()
	 * @generated
	 * @ordered
	 */
	protected static final Double FREE_LENGTH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFreeLength() <em>Free Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFreeLength()
	 * @generated
	 * @ordered
	 */
	protected Double freeLength = FREE_LENGTH_EDEFAULT;

	/**
	 * The default value of the '{@link #getStrandModulus() <em>Strand Modulus</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStrandModulus()
	 * @generated
	 * @ordered
	 */
	protected static final Double STRAND_MODULUS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getStrandModulus() <em>Strand Modulus</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStrandModulus()
	 * @generated
	 * @ordered
	 */
	protected Double strandModulus = STRAND_MODULUS_EDEFAULT;

	/**
	 * The default value of the '{@link #getConsistency() <em>Consistency</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getConsistency()
	 * @generated
	 * @ordered
	 */
	protected static final Double CONSISTENCY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getConsistency() <em>Consistency</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getConsistency()
	 * @generated
	 * @ordered
	 */
	protected Double consistency = CONSISTENCY_EDEFAULT;

	/**
	 * The default value of the '{@link #getFlowIndex() <em>Flow Index</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFlowIndex()
	 * @generated
	 * @ordered
	 */
	protected static final Double FLOW_INDEX_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFlowIndex() <em>Flow Index</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFlowIndex()
	 * @generated
	 * @ordered
	 */
	protected Double flowIndex = FLOW_INDEX_EDEFAULT;

	/**
	 * The default value of the '{@link #getPushForce() <em>Push Force</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPushForce()
	 * @generated
	 * @ordered
	 */
	protected static final Double PUSH_FORCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPushForce() <em>Push Force</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPushForce()
	 * @generated
	 * @ordered
	 */
	protected Double pushForce = PUSH_FORCE_EDEFAULT;

	/**
	 * The default value of the '{@link #getHoursOut() <em>Hours Out</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHoursOut()
	 * @generated
	 * @ordered
	 */
	protected static final Double HOURS_OUT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getHoursOut() <em>Hours Out</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHoursOut()
	 * @generated
	 * @ordered
	 */
	protected Double hoursOut = HOURS_OUT_EDEFAULT;

	/**
	 * The default value of the '{@link #getPlannedMass() <em>Planned Mass</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlannedMass()
	 * @generated
	 * @ordered
	 */
	protected static final Double PLANNED_MASS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPlannedMass() <em>Planned Mass</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlannedMass()
	 * @generated
	 * @ordered
	 */
	protected Double plannedMass = PLANNED_MASS_EDEFAULT;

	/**
	 * The default value of the '{@link #getActualMass() <em>Actual Mass</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getActualMass()
	 * @generated
	 * @ordered
	 */
	protected static final Double ACTUAL_MASS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getActualMass() <em>Actual Mass</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getActualMass()
	 * @generated
	 * @ordered
	 */
	protected Double actualMass = ACTUAL_MASS_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected PrintingImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return FilamentDataPackage.Literals.PRINTING;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getPlannedSpeed() {
		return plannedSpeed;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPlannedSpeed(Double newPlannedSpeed) {
		Double oldPlannedSpeed = plannedSpeed;
		plannedSpeed = newPlannedSpeed;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FilamentDataPackage.PRINTING__PLANNED_SPEED, oldPlannedSpeed, plannedSpeed));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getActualSpeed() {
		return actualSpeed;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setActualSpeed(Double newActualSpeed) {
		Double oldActualSpeed = actualSpeed;
		actualSpeed = newActualSpeed;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FilamentDataPackage.PRINTING__ACTUAL_SPEED, oldActualSpeed, actualSpeed));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getNozzleDiameter() {
		return nozzleDiameter;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNozzleDiameter(Double newNozzleDiameter) {
		Double oldNozzleDiameter = nozzleDiameter;
		nozzleDiameter = newNozzleDiameter;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FilamentDataPackage.PRINTING__NOZZLE_DIAMETER, oldNozzleDiameter, nozzleDiameter));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getNozzleLength() {
		return nozzleLength;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNozzleLength(Double newNozzleLength) {
		Double oldNozzleLength = nozzleLength;
		nozzleLength = newNozzleLength;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FilamentDataPackage.PRINTING__NOZZLE_LENGTH, oldNozzleLength, nozzleLength));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getLayerHeight() {
		return layerHeight;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLayerHeight(Double newLayerHeight) {
		Double oldLayerHeight = layerHeight;
		layerHeight = newLayerHeight;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FilamentDataPackage.PRINTING__LAYER_HEIGHT, oldLayerHeight, layerHeight));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getLineWidth() {
		return lineWidth;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLineWidth(Double newLineWidth) {
		Double oldLineWidth = lineWidth;
		lineWidth = newLineWidth;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FilamentDataPackage.PRINTING__LINE_WIDTH, oldLineWidth, lineWidth));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getPlannedNozzleTemperature() {
		return plannedNozzleTemperature;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPlannedNozzleTemperature(Double newPlannedNozzleTemperature) {
		Double oldPlannedNozzleTemperature = plannedNozzleTemperature;
		plannedNozzleTemperature = newPlannedNozzleTemperature;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FilamentDataPackage.PRINTING__PLANNED_NOZZLE_TEMPERATURE, oldPlannedNozzleTemperature, plannedNozzleTemperature));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getActualNozzleTemperature() {
		return actualNozzleTemperature;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setActualNozzleTemperature(Double newActualNozzleTemperature) {
		Double oldActualNozzleTemperature = actualNozzleTemperature;
		actualNozzleTemperature = newActualNozzleTemperature;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FilamentDataPackage.PRINTING__ACTUAL_NOZZLE_TEMPERATURE, oldActualNozzleTemperature, actualNozzleTemperature));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getStrandDiameter() {
		return strandDiameter;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStrandDiameter(Double newStrandDiameter) {
		Double oldStrandDiameter = strandDiameter;
		strandDiameter = newStrandDiameter;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FilamentDataPackage.PRINTING__STRAND_DIAMETER, oldStrandDiameter, strandDiameter));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getFreeLength() {
		return freeLength;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFreeLength(Double newFreeLength) {
		Double oldFreeLength = freeLength;
		freeLength = newFreeLength;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FilamentDataPackage.PRINTING__FREE_LENGTH, oldFreeLength, freeLength));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getStrandModulus() {
		return strandModulus;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStrandModulus(Double newStrandModulus) {
		Double oldStrandModulus = strandModulus;
		strandModulus = newStrandModulus;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FilamentDataPackage.PRINTING__STRAND_MODULUS, oldStrandModulus, strandModulus));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getConsistency() {
		return consistency;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setConsistency(Double newConsistency) {
		Double oldConsistency = consistency;
		consistency = newConsistency;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FilamentDataPackage.PRINTING__CONSISTENCY, oldConsistency, consistency));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getFlowIndex() {
		return flowIndex;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFlowIndex(Double newFlowIndex) {
		Double oldFlowIndex = flowIndex;
		flowIndex = newFlowIndex;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FilamentDataPackage.PRINTING__FLOW_INDEX, oldFlowIndex, flowIndex));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getPushForce() {
		return pushForce;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPushForce(Double newPushForce) {
		Double oldPushForce = pushForce;
		pushForce = newPushForce;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FilamentDataPackage.PRINTING__PUSH_FORCE, oldPushForce, pushForce));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getHoursOut() {
		return hoursOut;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHoursOut(Double newHoursOut) {
		Double oldHoursOut = hoursOut;
		hoursOut = newHoursOut;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FilamentDataPackage.PRINTING__HOURS_OUT, oldHoursOut, hoursOut));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getPlannedMass() {
		return plannedMass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPlannedMass(Double newPlannedMass) {
		Double oldPlannedMass = plannedMass;
		plannedMass = newPlannedMass;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FilamentDataPackage.PRINTING__PLANNED_MASS, oldPlannedMass, plannedMass));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getActualMass() {
		return actualMass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setActualMass(Double newActualMass) {
		Double oldActualMass = actualMass;
		actualMass = newActualMass;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FilamentDataPackage.PRINTING__ACTUAL_MASS, oldActualMass, actualMass));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case FilamentDataPackage.PRINTING__PLANNED_SPEED:
				return getPlannedSpeed();
			case FilamentDataPackage.PRINTING__ACTUAL_SPEED:
				return getActualSpeed();
			case FilamentDataPackage.PRINTING__NOZZLE_DIAMETER:
				return getNozzleDiameter();
			case FilamentDataPackage.PRINTING__NOZZLE_LENGTH:
				return getNozzleLength();
			case FilamentDataPackage.PRINTING__LAYER_HEIGHT:
				return getLayerHeight();
			case FilamentDataPackage.PRINTING__LINE_WIDTH:
				return getLineWidth();
			case FilamentDataPackage.PRINTING__PLANNED_NOZZLE_TEMPERATURE:
				return getPlannedNozzleTemperature();
			case FilamentDataPackage.PRINTING__ACTUAL_NOZZLE_TEMPERATURE:
				return getActualNozzleTemperature();
			case FilamentDataPackage.PRINTING__STRAND_DIAMETER:
				return getStrandDiameter();
			case FilamentDataPackage.PRINTING__FREE_LENGTH:
				return getFreeLength();
			case FilamentDataPackage.PRINTING__STRAND_MODULUS:
				return getStrandModulus();
			case FilamentDataPackage.PRINTING__CONSISTENCY:
				return getConsistency();
			case FilamentDataPackage.PRINTING__FLOW_INDEX:
				return getFlowIndex();
			case FilamentDataPackage.PRINTING__PUSH_FORCE:
				return getPushForce();
			case FilamentDataPackage.PRINTING__HOURS_OUT:
				return getHoursOut();
			case FilamentDataPackage.PRINTING__PLANNED_MASS:
				return getPlannedMass();
			case FilamentDataPackage.PRINTING__ACTUAL_MASS:
				return getActualMass();
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
			case FilamentDataPackage.PRINTING__PLANNED_SPEED:
				setPlannedSpeed((Double)newValue);
				return;
			case FilamentDataPackage.PRINTING__ACTUAL_SPEED:
				setActualSpeed((Double)newValue);
				return;
			case FilamentDataPackage.PRINTING__NOZZLE_DIAMETER:
				setNozzleDiameter((Double)newValue);
				return;
			case FilamentDataPackage.PRINTING__NOZZLE_LENGTH:
				setNozzleLength((Double)newValue);
				return;
			case FilamentDataPackage.PRINTING__LAYER_HEIGHT:
				setLayerHeight((Double)newValue);
				return;
			case FilamentDataPackage.PRINTING__LINE_WIDTH:
				setLineWidth((Double)newValue);
				return;
			case FilamentDataPackage.PRINTING__PLANNED_NOZZLE_TEMPERATURE:
				setPlannedNozzleTemperature((Double)newValue);
				return;
			case FilamentDataPackage.PRINTING__ACTUAL_NOZZLE_TEMPERATURE:
				setActualNozzleTemperature((Double)newValue);
				return;
			case FilamentDataPackage.PRINTING__STRAND_DIAMETER:
				setStrandDiameter((Double)newValue);
				return;
			case FilamentDataPackage.PRINTING__FREE_LENGTH:
				setFreeLength((Double)newValue);
				return;
			case FilamentDataPackage.PRINTING__STRAND_MODULUS:
				setStrandModulus((Double)newValue);
				return;
			case FilamentDataPackage.PRINTING__CONSISTENCY:
				setConsistency((Double)newValue);
				return;
			case FilamentDataPackage.PRINTING__FLOW_INDEX:
				setFlowIndex((Double)newValue);
				return;
			case FilamentDataPackage.PRINTING__PUSH_FORCE:
				setPushForce((Double)newValue);
				return;
			case FilamentDataPackage.PRINTING__HOURS_OUT:
				setHoursOut((Double)newValue);
				return;
			case FilamentDataPackage.PRINTING__PLANNED_MASS:
				setPlannedMass((Double)newValue);
				return;
			case FilamentDataPackage.PRINTING__ACTUAL_MASS:
				setActualMass((Double)newValue);
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
			case FilamentDataPackage.PRINTING__PLANNED_SPEED:
				setPlannedSpeed(PLANNED_SPEED_EDEFAULT);
				return;
			case FilamentDataPackage.PRINTING__ACTUAL_SPEED:
				setActualSpeed(ACTUAL_SPEED_EDEFAULT);
				return;
			case FilamentDataPackage.PRINTING__NOZZLE_DIAMETER:
				setNozzleDiameter(NOZZLE_DIAMETER_EDEFAULT);
				return;
			case FilamentDataPackage.PRINTING__NOZZLE_LENGTH:
				setNozzleLength(NOZZLE_LENGTH_EDEFAULT);
				return;
			case FilamentDataPackage.PRINTING__LAYER_HEIGHT:
				setLayerHeight(LAYER_HEIGHT_EDEFAULT);
				return;
			case FilamentDataPackage.PRINTING__LINE_WIDTH:
				setLineWidth(LINE_WIDTH_EDEFAULT);
				return;
			case FilamentDataPackage.PRINTING__PLANNED_NOZZLE_TEMPERATURE:
				setPlannedNozzleTemperature(PLANNED_NOZZLE_TEMPERATURE_EDEFAULT);
				return;
			case FilamentDataPackage.PRINTING__ACTUAL_NOZZLE_TEMPERATURE:
				setActualNozzleTemperature(ACTUAL_NOZZLE_TEMPERATURE_EDEFAULT);
				return;
			case FilamentDataPackage.PRINTING__STRAND_DIAMETER:
				setStrandDiameter(STRAND_DIAMETER_EDEFAULT);
				return;
			case FilamentDataPackage.PRINTING__FREE_LENGTH:
				setFreeLength(FREE_LENGTH_EDEFAULT);
				return;
			case FilamentDataPackage.PRINTING__STRAND_MODULUS:
				setStrandModulus(STRAND_MODULUS_EDEFAULT);
				return;
			case FilamentDataPackage.PRINTING__CONSISTENCY:
				setConsistency(CONSISTENCY_EDEFAULT);
				return;
			case FilamentDataPackage.PRINTING__FLOW_INDEX:
				setFlowIndex(FLOW_INDEX_EDEFAULT);
				return;
			case FilamentDataPackage.PRINTING__PUSH_FORCE:
				setPushForce(PUSH_FORCE_EDEFAULT);
				return;
			case FilamentDataPackage.PRINTING__HOURS_OUT:
				setHoursOut(HOURS_OUT_EDEFAULT);
				return;
			case FilamentDataPackage.PRINTING__PLANNED_MASS:
				setPlannedMass(PLANNED_MASS_EDEFAULT);
				return;
			case FilamentDataPackage.PRINTING__ACTUAL_MASS:
				setActualMass(ACTUAL_MASS_EDEFAULT);
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
			case FilamentDataPackage.PRINTING__PLANNED_SPEED:
				return PLANNED_SPEED_EDEFAULT == null ? plannedSpeed != null : !PLANNED_SPEED_EDEFAULT.equals(plannedSpeed);
			case FilamentDataPackage.PRINTING__ACTUAL_SPEED:
				return ACTUAL_SPEED_EDEFAULT == null ? actualSpeed != null : !ACTUAL_SPEED_EDEFAULT.equals(actualSpeed);
			case FilamentDataPackage.PRINTING__NOZZLE_DIAMETER:
				return NOZZLE_DIAMETER_EDEFAULT == null ? nozzleDiameter != null : !NOZZLE_DIAMETER_EDEFAULT.equals(nozzleDiameter);
			case FilamentDataPackage.PRINTING__NOZZLE_LENGTH:
				return NOZZLE_LENGTH_EDEFAULT == null ? nozzleLength != null : !NOZZLE_LENGTH_EDEFAULT.equals(nozzleLength);
			case FilamentDataPackage.PRINTING__LAYER_HEIGHT:
				return LAYER_HEIGHT_EDEFAULT == null ? layerHeight != null : !LAYER_HEIGHT_EDEFAULT.equals(layerHeight);
			case FilamentDataPackage.PRINTING__LINE_WIDTH:
				return LINE_WIDTH_EDEFAULT == null ? lineWidth != null : !LINE_WIDTH_EDEFAULT.equals(lineWidth);
			case FilamentDataPackage.PRINTING__PLANNED_NOZZLE_TEMPERATURE:
				return PLANNED_NOZZLE_TEMPERATURE_EDEFAULT == null ? plannedNozzleTemperature != null : !PLANNED_NOZZLE_TEMPERATURE_EDEFAULT.equals(plannedNozzleTemperature);
			case FilamentDataPackage.PRINTING__ACTUAL_NOZZLE_TEMPERATURE:
				return ACTUAL_NOZZLE_TEMPERATURE_EDEFAULT == null ? actualNozzleTemperature != null : !ACTUAL_NOZZLE_TEMPERATURE_EDEFAULT.equals(actualNozzleTemperature);
			case FilamentDataPackage.PRINTING__STRAND_DIAMETER:
				return STRAND_DIAMETER_EDEFAULT == null ? strandDiameter != null : !STRAND_DIAMETER_EDEFAULT.equals(strandDiameter);
			case FilamentDataPackage.PRINTING__FREE_LENGTH:
				return FREE_LENGTH_EDEFAULT == null ? freeLength != null : !FREE_LENGTH_EDEFAULT.equals(freeLength);
			case FilamentDataPackage.PRINTING__STRAND_MODULUS:
				return STRAND_MODULUS_EDEFAULT == null ? strandModulus != null : !STRAND_MODULUS_EDEFAULT.equals(strandModulus);
			case FilamentDataPackage.PRINTING__CONSISTENCY:
				return CONSISTENCY_EDEFAULT == null ? consistency != null : !CONSISTENCY_EDEFAULT.equals(consistency);
			case FilamentDataPackage.PRINTING__FLOW_INDEX:
				return FLOW_INDEX_EDEFAULT == null ? flowIndex != null : !FLOW_INDEX_EDEFAULT.equals(flowIndex);
			case FilamentDataPackage.PRINTING__PUSH_FORCE:
				return PUSH_FORCE_EDEFAULT == null ? pushForce != null : !PUSH_FORCE_EDEFAULT.equals(pushForce);
			case FilamentDataPackage.PRINTING__HOURS_OUT:
				return HOURS_OUT_EDEFAULT == null ? hoursOut != null : !HOURS_OUT_EDEFAULT.equals(hoursOut);
			case FilamentDataPackage.PRINTING__PLANNED_MASS:
				return PLANNED_MASS_EDEFAULT == null ? plannedMass != null : !PLANNED_MASS_EDEFAULT.equals(plannedMass);
			case FilamentDataPackage.PRINTING__ACTUAL_MASS:
				return ACTUAL_MASS_EDEFAULT == null ? actualMass != null : !ACTUAL_MASS_EDEFAULT.equals(actualMass);
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
		result.append(" (plannedSpeed: ");
		result.append(plannedSpeed);
		result.append(", actualSpeed: ");
		result.append(actualSpeed);
		result.append(", nozzleDiameter: ");
		result.append(nozzleDiameter);
		result.append(", nozzleLength: ");
		result.append(nozzleLength);
		result.append(", layerHeight: ");
		result.append(layerHeight);
		result.append(", lineWidth: ");
		result.append(lineWidth);
		result.append(", plannedNozzleTemperature: ");
		result.append(plannedNozzleTemperature);
		result.append(", actualNozzleTemperature: ");
		result.append(actualNozzleTemperature);
		result.append(", strandDiameter: ");
		result.append(strandDiameter);
		result.append(", freeLength: ");
		result.append(freeLength);
		result.append(", strandModulus: ");
		result.append(strandModulus);
		result.append(", consistency: ");
		result.append(consistency);
		result.append(", flowIndex: ");
		result.append(flowIndex);
		result.append(", pushForce: ");
		result.append(pushForce);
		result.append(", hoursOut: ");
		result.append(hoursOut);
		result.append(", plannedMass: ");
		result.append(plannedMass);
		result.append(", actualMass: ");
		result.append(actualMass);
		result.append(')');
		return result.toString();
	}

} //PrintingImpl
