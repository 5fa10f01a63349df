/**
 */
package org.flexwright.vatprint.data.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.flexwright.vatprint.data.Printing;
import org.flexwright.vatprint.data.VatprintDataPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Printing</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.vatprint.data.impl.PrintingImpl#getLayerHeight <em>Layer Height</em>}</li>
 *   <li>{@link org.flexwright.vatprint.data.impl.PrintingImpl#getPlannedExposure <em>Planned Exposure</em>}</li>
 *   <li>{@link org.flexwright.vatprint.data.impl.PrintingImpl#getActualExposure <em>Actual Exposure</em>}</li>
 *   <li>{@link org.flexwright.vatprint.data.impl.PrintingImpl#getExposureForLayer <em>Exposure For Layer</em>}</li>
 *   <li>{@link org.flexwright.vatprint.data.impl.PrintingImpl#getIrradiance <em>Irradiance</em>}</li>
 *   <li>{@link org.flexwright.vatprint.data.impl.PrintingImpl#getPenetrationDepth <em>Penetration Depth</em>}</li>
 *   <li>{@link org.flexwright.vatprint.data.impl.PrintingImpl#getCriticalDose <em>Critical Dose</em>}</li>
 *   <li>{@link org.flexwright.vatprint.data.impl.PrintingImpl#getOverCure <em>Over Cure</em>}</li>
 *   <li>{@link org.flexwright.vatprint.data.impl.PrintingImpl#getPartHeight <em>Part Height</em>}</li>
 *   <li>{@link org.flexwright.vatprint.data.impl.PrintingImpl#getBaseLayers <em>Base Layers</em>}</li>
 *   <li>{@link org.flexwright.vatprint.data.impl.PrintingImpl#getBaseExposure <em>Base Exposure</em>}</li>
 *   <li>{@link org.flexwright.vatprint.data.impl.PrintingImpl#getMoveTime <em>Move Time</em>}</li>
 *   <li>{@link org.flexwright.vatprint.data.impl.PrintingImpl#getPrintedVolume <em>Printed Volume</em>}</li>
 * </ul>
 *
 * @generated
 */
public class PrintingImpl extends MinimalEObjectImpl.Container implements Printing {
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
	 * The default value of the '{@link #getPlannedExposure() <em>Planned Exposure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlannedExposure()
	 * @generated
	 * @ordered
	 */
	protected static final Double PLANNED_EXPOSURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPlannedExposure() <em>Planned Exposure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlannedExposure()
	 * @generated
	 * @ordered
	 */
	protected Double plannedExposure = PLANNED_EXPOSURE_EDEFAULT;

	/**
	 * The default value of the '{@link #getActualExposure() <em>Actual Exposure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getActualExposure()
	 * @generated
	 * @ordered
	 */
	protected static final Double ACTUAL_EXPOSURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getActualExposure() <em>Actual Exposure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getActualExposure()
	 * @generated
	 * @ordered
	 */
	protected Double actualExposure = ACTUAL_EXPOSURE_EDEFAULT;

	/**
	 * The default value of the '{@link #getExposureForLayer() <em>Exposure For Layer</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getExposureForLayer()
	 * @generated
	 * @ordered
	 */
	protected static final Double EXPOSURE_FOR_LAYER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getExposureForLayer() <em>Exposure For Layer</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getExposureForLayer()
	 * @generated
	 * @ordered
	 */
	protected Double exposureForLayer = EXPOSURE_FOR_LAYER_EDEFAULT;

	/**
	 * The default value of the '{@link #getIrradiance() <em>Irradiance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getIrradiance()
	 * @generated
	 * @ordered
	 */
	protected static final Double IRRADIANCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getIrradiance() <em>Irradiance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getIrradiance()
	 * @generated
	 * @ordered
	 */
	protected Double irradiance = IRRADIANCE_EDEFAULT;

	/**
	 * The default value of the '{@link #getPenetrationDepth() <em>Penetration Depth</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPenetrationDepth()
	 * @generated
	 * @ordered
	 */
	protected static final Double PENETRATION_DEPTH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPenetrationDepth() <em>Penetration Depth</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPenetrationDepth()
	 * @generated
	 * @ordered
	 */
	protected Double penetrationDepth = PENETRATION_DEPTH_EDEFAULT;

	/**
	 * The default value of the '{@link #getCriticalDose() <em>Critical Dose</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCriticalDose()
	 * @generated
	 * @ordered
	 */
	protected static final Double CRITICAL_DOSE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCriticalDose() <em>Critical Dose</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCriticalDose()
	 * @generated
	 * @ordered
	 */
	protected Double criticalDose = CRITICAL_DOSE_EDEFAULT;

	/**
	 * The default value of the '{@link #getOverCure() <em>Over Cure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOverCure()
	 * @generated
	 * @ordered
	 */
	protected static final Double OVER_CURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOverCure() <em>Over Cure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOverCure()
	 * @generated
	 * @ordered
	 */
	protected Double overCure = OVER_CURE_EDEFAULT;

	/**
	 * The default value of the '{@link #getPartHeight() <em>Part Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPartHeight()
	 * @generated
	 * @ordered
	 */
	protected static final Double PART_HEIGHT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPartHeight() <em>Part Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPartHeight()
	 * @generated
	 * @ordered
	 */
	protected Double partHeight = PART_HEIGHT_EDEFAULT;

	/**
	 * The default value of the '{@link #getBaseLayers() <em>Base Layers</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBaseLayers()
	 * @generated
	 * @ordered
	 */
	protected static final Integer BASE_LAYERS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBaseLayers() <em>Base Layers</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBaseLayers()
	 * @generated
	 * @ordered
	 */
	protected Integer baseLayers = BASE_LAYERS_EDEFAULT;

	/**
	 * The default value of the '{@link #getBaseExposure() <em>Base Exposure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBaseExposure()
	 * @generated
	 * @ordered
	 */
	protected static final Double BASE_EXPOSURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBaseExposure() <em>Base Exposure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBaseExposure()
	 * @generated
	 * @ordered
	 */
	protected Double baseExposure = BASE_EXPOSURE_EDEFAULT;

	/**
	 * The default value of the '{@link #getMoveTime() <em>Move Time</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMoveTime()
	 * @generated
	 * @ordered
	 */
	protected static final Double MOVE_TIME_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMoveTime() <em>Move Time</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMoveTime()
	 * @generated
	 * @ordered
	 */
	protected Double moveTime = MOVE_TIME_EDEFAULT;

	/**
	 * The default value of the '{@link #getPrintedVolume() <em>Printed Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPrintedVolume()
	 * @generated
	 * @ordered
	 */
	protected static final Double PRINTED_VOLUME_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPrintedVolume() <em>Printed Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPrintedVolume()
	 * @generated
	 * @ordered
	 */
	protected Double printedVolume = PRINTED_VOLUME_EDEFAULT;

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
		return VatprintDataPackage.Literals.PRINTING;
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
			eNotify(new ENotificationImpl(this, Notification.SET, VatprintDataPackage.PRINTING__LAYER_HEIGHT, oldLayerHeight, layerHeight));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getPlannedExposure() {
		return plannedExposure;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPlannedExposure(Double newPlannedExposure) {
		Double oldPlannedExposure = plannedExposure;
		plannedExposure = newPlannedExposure;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, VatprintDataPackage.PRINTING__PLANNED_EXPOSURE, oldPlannedExposure, plannedExposure));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getActualExposure() {
		return actualExposure;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setActualExposure(Double newActualExposure) {
		Double oldActualExposure = actualExposure;
		actualExposure = newActualExposure;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, VatprintDataPackage.PRINTING__ACTUAL_EXPOSURE, oldActualExposure, actualExposure));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getExposureForLayer() {
		return exposureForLayer;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setExposureForLayer(Double newExposureForLayer) {
		Double oldExposureForLayer = exposureForLayer;
		exposureForLayer = newExposureForLayer;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, VatprintDataPackage.PRINTING__EXPOSURE_FOR_LAYER, oldExposureForLayer, exposureForLayer));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getIrradiance() {
		return irradiance;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setIrradiance(Double newIrradiance) {
		Double oldIrradiance = irradiance;
		irradiance = newIrradiance;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, VatprintDataPackage.PRINTING__IRRADIANCE, oldIrradiance, irradiance));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getPenetrationDepth() {
		return penetrationDepth;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPenetrationDepth(Double newPenetrationDepth) {
		Double oldPenetrationDepth = penetrationDepth;
		penetrationDepth = newPenetrationDepth;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, VatprintDataPackage.PRINTING__PENETRATION_DEPTH, oldPenetrationDepth, penetrationDepth));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getCriticalDose() {
		return criticalDose;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCriticalDose(Double newCriticalDose) {
		Double oldCriticalDose = criticalDose;
		criticalDose = newCriticalDose;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, VatprintDataPackage.PRINTING__CRITICAL_DOSE, oldCriticalDose, criticalDose));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getOverCure() {
		return overCure;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOverCure(Double newOverCure) {
		Double oldOverCure = overCure;
		overCure = newOverCure;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, VatprintDataPackage.PRINTING__OVER_CURE, oldOverCure, overCure));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getPartHeight() {
		return partHeight;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPartHeight(Double newPartHeight) {
		Double oldPartHeight = partHeight;
		partHeight = newPartHeight;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, VatprintDataPackage.PRINTING__PART_HEIGHT, oldPartHeight, partHeight));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getBaseLayers() {
		return baseLayers;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBaseLayers(Integer newBaseLayers) {
		Integer oldBaseLayers = baseLayers;
		baseLayers = newBaseLayers;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, VatprintDataPackage.PRINTING__BASE_LAYERS, oldBaseLayers, baseLayers));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getBaseExposure() {
		return baseExposure;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBaseExposure(Double newBaseExposure) {
		Double oldBaseExposure = baseExposure;
		baseExposure = newBaseExposure;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, VatprintDataPackage.PRINTING__BASE_EXPOSURE, oldBaseExposure, baseExposure));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getMoveTime() {
		return moveTime;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMoveTime(Double newMoveTime) {
		Double oldMoveTime = moveTime;
		moveTime = newMoveTime;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, VatprintDataPackage.PRINTING__MOVE_TIME, oldMoveTime, moveTime));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getPrintedVolume() {
		return printedVolume;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPrintedVolume(Double newPrintedVolume) {
		Double oldPrintedVolume = printedVolume;
		printedVolume = newPrintedVolume;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, VatprintDataPackage.PRINTING__PRINTED_VOLUME, oldPrintedVolume, printedVolume));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case VatprintDataPackage.PRINTING__LAYER_HEIGHT:
				return getLayerHeight();
			case VatprintDataPackage.PRINTING__PLANNED_EXPOSURE:
				return getPlannedExposure();
			case VatprintDataPackage.PRINTING__ACTUAL_EXPOSURE:
				return getActualExposure();
			case VatprintDataPackage.PRINTING__EXPOSURE_FOR_LAYER:
				return getExposureForLayer();
			case VatprintDataPackage.PRINTING__IRRADIANCE:
				return getIrradiance();
			case VatprintDataPackage.PRINTING__PENETRATION_DEPTH:
				return getPenetrationDepth();
			case VatprintDataPackage.PRINTING__CRITICAL_DOSE:
				return getCriticalDose();
			case VatprintDataPackage.PRINTING__OVER_CURE:
				return getOverCure();
			case VatprintDataPackage.PRINTING__PART_HEIGHT:
				return getPartHeight();
			case VatprintDataPackage.PRINTING__BASE_LAYERS:
				return getBaseLayers();
			case VatprintDataPackage.PRINTING__BASE_EXPOSURE:
				return getBaseExposure();
			case VatprintDataPackage.PRINTING__MOVE_TIME:
				return getMoveTime();
			case VatprintDataPackage.PRINTING__PRINTED_VOLUME:
				return getPrintedVolume();
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
			case VatprintDataPackage.PRINTING__LAYER_HEIGHT:
				setLayerHeight((Double)newValue);
				return;
			case VatprintDataPackage.PRINTING__PLANNED_EXPOSURE:
				setPlannedExposure((Double)newValue);
				return;
			case VatprintDataPackage.PRINTING__ACTUAL_EXPOSURE:
				setActualExposure((Double)newValue);
				return;
			case VatprintDataPackage.PRINTING__EXPOSURE_FOR_LAYER:
				setExposureForLayer((Double)newValue);
				return;
			case VatprintDataPackage.PRINTING__IRRADIANCE:
				setIrradiance((Double)newValue);
				return;
			case VatprintDataPackage.PRINTING__PENETRATION_DEPTH:
				setPenetrationDepth((Double)newValue);
				return;
			case VatprintDataPackage.PRINTING__CRITICAL_DOSE:
				setCriticalDose((Double)newValue);
				return;
			case VatprintDataPackage.PRINTING__OVER_CURE:
				setOverCure((Double)newValue);
				return;
			case VatprintDataPackage.PRINTING__PART_HEIGHT:
				setPartHeight((Double)newValue);
				return;
			case VatprintDataPackage.PRINTING__BASE_LAYERS:
				setBaseLayers((Integer)newValue);
				return;
			case VatprintDataPackage.PRINTING__BASE_EXPOSURE:
				setBaseExposure((Double)newValue);
				return;
			case VatprintDataPackage.PRINTING__MOVE_TIME:
				setMoveTime((Double)newValue);
				return;
			case VatprintDataPackage.PRINTING__PRINTED_VOLUME:
				setPrintedVolume((Double)newValue);
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
			case VatprintDataPackage.PRINTING__LAYER_HEIGHT:
				setLayerHeight(LAYER_HEIGHT_EDEFAULT);
				return;
			case VatprintDataPackage.PRINTING__PLANNED_EXPOSURE:
				setPlannedExposure(PLANNED_EXPOSURE_EDEFAULT);
				return;
			case VatprintDataPackage.PRINTING__ACTUAL_EXPOSURE:
				setActualExposure(ACTUAL_EXPOSURE_EDEFAULT);
				return;
			case VatprintDataPackage.PRINTING__EXPOSURE_FOR_LAYER:
				setExposureForLayer(EXPOSURE_FOR_LAYER_EDEFAULT);
				return;
			case VatprintDataPackage.PRINTING__IRRADIANCE:
				setIrradiance(IRRADIANCE_EDEFAULT);
				return;
			case VatprintDataPackage.PRINTING__PENETRATION_DEPTH:
				setPenetrationDepth(PENETRATION_DEPTH_EDEFAULT);
				return;
			case VatprintDataPackage.PRINTING__CRITICAL_DOSE:
				setCriticalDose(CRITICAL_DOSE_EDEFAULT);
				return;
			case VatprintDataPackage.PRINTING__OVER_CURE:
				setOverCure(OVER_CURE_EDEFAULT);
				return;
			case VatprintDataPackage.PRINTING__PART_HEIGHT:
				setPartHeight(PART_HEIGHT_EDEFAULT);
				return;
			case VatprintDataPackage.PRINTING__BASE_LAYERS:
				setBaseLayers(BASE_LAYERS_EDEFAULT);
				return;
			case VatprintDataPackage.PRINTING__BASE_EXPOSURE:
				setBaseExposure(BASE_EXPOSURE_EDEFAULT);
				return;
			case VatprintDataPackage.PRINTING__MOVE_TIME:
				setMoveTime(MOVE_TIME_EDEFAULT);
				return;
			case VatprintDataPackage.PRINTING__PRINTED_VOLUME:
				setPrintedVolume(PRINTED_VOLUME_EDEFAULT);
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
			case VatprintDataPackage.PRINTING__LAYER_HEIGHT:
				return LAYER_HEIGHT_EDEFAULT == null ? layerHeight != null : !LAYER_HEIGHT_EDEFAULT.equals(layerHeight);
			case VatprintDataPackage.PRINTING__PLANNED_EXPOSURE:
				return PLANNED_EXPOSURE_EDEFAULT == null ? plannedExposure != null : !PLANNED_EXPOSURE_EDEFAULT.equals(plannedExposure);
			case VatprintDataPackage.PRINTING__ACTUAL_EXPOSURE:
				return ACTUAL_EXPOSURE_EDEFAULT == null ? actualExposure != null : !ACTUAL_EXPOSURE_EDEFAULT.equals(actualExposure);
			case VatprintDataPackage.PRINTING__EXPOSURE_FOR_LAYER:
				return EXPOSURE_FOR_LAYER_EDEFAULT == null ? exposureForLayer != null : !EXPOSURE_FOR_LAYER_EDEFAULT.equals(exposureForLayer);
			case VatprintDataPackage.PRINTING__IRRADIANCE:
				return IRRADIANCE_EDEFAULT == null ? irradiance != null : !IRRADIANCE_EDEFAULT.equals(irradiance);
			case VatprintDataPackage.PRINTING__PENETRATION_DEPTH:
				return PENETRATION_DEPTH_EDEFAULT == null ? penetrationDepth != null : !PENETRATION_DEPTH_EDEFAULT.equals(penetrationDepth);
			case VatprintDataPackage.PRINTING__CRITICAL_DOSE:
				return CRITICAL_DOSE_EDEFAULT == null ? criticalDose != null : !CRITICAL_DOSE_EDEFAULT.equals(criticalDose);
			case VatprintDataPackage.PRINTING__OVER_CURE:
				return OVER_CURE_EDEFAULT == null ? overCure != null : !OVER_CURE_EDEFAULT.equals(overCure);
			case VatprintDataPackage.PRINTING__PART_HEIGHT:
				return PART_HEIGHT_EDEFAULT == null ? partHeight != null : !PART_HEIGHT_EDEFAULT.equals(partHeight);
			case VatprintDataPackage.PRINTING__BASE_LAYERS:
				return BASE_LAYERS_EDEFAULT == null ? baseLayers != null : !BASE_LAYERS_EDEFAULT.equals(baseLayers);
			case VatprintDataPackage.PRINTING__BASE_EXPOSURE:
				return BASE_EXPOSURE_EDEFAULT == null ? baseExposure != null : !BASE_EXPOSURE_EDEFAULT.equals(baseExposure);
			case VatprintDataPackage.PRINTING__MOVE_TIME:
				return MOVE_TIME_EDEFAULT == null ? moveTime != null : !MOVE_TIME_EDEFAULT.equals(moveTime);
			case VatprintDataPackage.PRINTING__PRINTED_VOLUME:
				return PRINTED_VOLUME_EDEFAULT == null ? printedVolume != null : !PRINTED_VOLUME_EDEFAULT.equals(printedVolume);
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
		result.append(" (layerHeight: ");
		result.append(layerHeight);
		result.append(", plannedExposure: ");
		result.append(plannedExposure);
		result.append(", actualExposure: ");
		result.append(actualExposure);
		result.append(", exposureForLayer: ");
		result.append(exposureForLayer);
		result.append(", irradiance: ");
		result.append(irradiance);
		result.append(", penetrationDepth: ");
		result.append(penetrationDepth);
		result.append(", criticalDose: ");
		result.append(criticalDose);
		result.append(", overCure: ");
		result.append(overCure);
		result.append(", partHeight: ");
		result.append(partHeight);
		result.append(", baseLayers: ");
		result.append(baseLayers);
		result.append(", baseExposure: ");
		result.append(baseExposure);
		result.append(", moveTime: ");
		result.append(moveTime);
		result.append(", printedVolume: ");
		result.append(printedVolume);
		result.append(')');
		return result.toString();
	}

} //PrintingImpl
