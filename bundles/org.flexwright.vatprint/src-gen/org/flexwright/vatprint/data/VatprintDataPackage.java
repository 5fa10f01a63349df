/**
 */
package org.flexwright.vatprint.data;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EPackage;

/**
 * <!-- begin-user-doc -->
 * The <b>Package</b> for the model.
 * It contains accessors for the meta objects to represent
 * <ul>
 *   <li>each class,</li>
 *   <li>each feature of each class,</li>
 *   <li>each operation of each class,</li>
 *   <li>each enum,</li>
 *   <li>and each data type</li>
 * </ul>
 * <!-- end-user-doc -->
 * @see org.flexwright.vatprint.data.VatprintDataFactory
 * @model kind="package"
 * @generated
 */
public interface VatprintDataPackage extends EPackage {
	/**
	 * The package name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNAME = "data";

	/**
	 * The package namespace URI.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_URI = "urn:flexwright:vatprint:1";

	/**
	 * The package namespace name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_PREFIX = "vatprint";

	/**
	 * The singleton instance of the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	VatprintDataPackage eINSTANCE = org.flexwright.vatprint.data.impl.VatprintDataPackageImpl.init();

	/**
	 * The meta object id for the '{@link org.flexwright.vatprint.data.impl.PrintingImpl <em>Printing</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.vatprint.data.impl.PrintingImpl
	 * @see org.flexwright.vatprint.data.impl.VatprintDataPackageImpl#getPrinting()
	 * @generated
	 */
	int PRINTING = 0;

	/**
	 * The feature id for the '<em><b>Layer Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINTING__LAYER_HEIGHT = 0;

	/**
	 * The feature id for the '<em><b>Planned Exposure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINTING__PLANNED_EXPOSURE = 1;

	/**
	 * The feature id for the '<em><b>Actual Exposure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINTING__ACTUAL_EXPOSURE = 2;

	/**
	 * The feature id for the '<em><b>Exposure For Layer</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINTING__EXPOSURE_FOR_LAYER = 3;

	/**
	 * The feature id for the '<em><b>Irradiance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINTING__IRRADIANCE = 4;

	/**
	 * The feature id for the '<em><b>Penetration Depth</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINTING__PENETRATION_DEPTH = 5;

	/**
	 * The feature id for the '<em><b>Critical Dose</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINTING__CRITICAL_DOSE = 6;

	/**
	 * The feature id for the '<em><b>Over Cure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINTING__OVER_CURE = 7;

	/**
	 * The feature id for the '<em><b>Part Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINTING__PART_HEIGHT = 8;

	/**
	 * The feature id for the '<em><b>Base Layers</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINTING__BASE_LAYERS = 9;

	/**
	 * The feature id for the '<em><b>Base Exposure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINTING__BASE_EXPOSURE = 10;

	/**
	 * The feature id for the '<em><b>Move Time</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINTING__MOVE_TIME = 11;

	/**
	 * The feature id for the '<em><b>Printed Volume</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINTING__PRINTED_VOLUME = 12;

	/**
	 * The number of structural features of the '<em>Printing</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINTING_FEATURE_COUNT = 13;

	/**
	 * The number of operations of the '<em>Printing</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINTING_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.flexwright.vatprint.data.impl.WashingImpl <em>Washing</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.vatprint.data.impl.WashingImpl
	 * @see org.flexwright.vatprint.data.impl.VatprintDataPackageImpl#getWashing()
	 * @generated
	 */
	int WASHING = 1;

	/**
	 * The feature id for the '<em><b>Solvent</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WASHING__SOLVENT = 0;

	/**
	 * The feature id for the '<em><b>Planned Minutes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WASHING__PLANNED_MINUTES = 1;

	/**
	 * The feature id for the '<em><b>Actual Minutes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WASHING__ACTUAL_MINUTES = 2;

	/**
	 * The feature id for the '<em><b>Baths</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WASHING__BATHS = 3;

	/**
	 * The feature id for the '<em><b>Bath Volume</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WASHING__BATH_VOLUME = 4;

	/**
	 * The feature id for the '<em><b>Carried Volume</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WASHING__CARRIED_VOLUME = 5;

	/**
	 * The number of structural features of the '<em>Washing</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WASHING_FEATURE_COUNT = 6;

	/**
	 * The number of operations of the '<em>Washing</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WASHING_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.flexwright.vatprint.data.impl.PostCuringImpl <em>Post Curing</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.vatprint.data.impl.PostCuringImpl
	 * @see org.flexwright.vatprint.data.impl.VatprintDataPackageImpl#getPostCuring()
	 * @generated
	 */
	int POST_CURING = 2;

	/**
	 * The feature id for the '<em><b>Planned Dry Minutes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int POST_CURING__PLANNED_DRY_MINUTES = 0;

	/**
	 * The feature id for the '<em><b>Actual Dry Minutes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int POST_CURING__ACTUAL_DRY_MINUTES = 1;

	/**
	 * The feature id for the '<em><b>Mass Steady</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int POST_CURING__MASS_STEADY = 2;

	/**
	 * The feature id for the '<em><b>Planned Minutes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int POST_CURING__PLANNED_MINUTES = 3;

	/**
	 * The feature id for the '<em><b>Actual Minutes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int POST_CURING__ACTUAL_MINUTES = 4;

	/**
	 * The feature id for the '<em><b>Planned Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int POST_CURING__PLANNED_TEMPERATURE = 5;

	/**
	 * The feature id for the '<em><b>Actual Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int POST_CURING__ACTUAL_TEMPERATURE = 6;

	/**
	 * The feature id for the '<em><b>Medium</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int POST_CURING__MEDIUM = 7;

	/**
	 * The number of structural features of the '<em>Post Curing</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int POST_CURING_FEATURE_COUNT = 8;

	/**
	 * The number of operations of the '<em>Post Curing</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int POST_CURING_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.flexwright.vatprint.data.WashSolvent <em>Wash Solvent</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.vatprint.data.WashSolvent
	 * @see org.flexwright.vatprint.data.impl.VatprintDataPackageImpl#getWashSolvent()
	 * @generated
	 */
	int WASH_SOLVENT = 3;

	/**
	 * The meta object id for the '{@link org.flexwright.vatprint.data.PostCureMedium <em>Post Cure Medium</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.vatprint.data.PostCureMedium
	 * @see org.flexwright.vatprint.data.impl.VatprintDataPackageImpl#getPostCureMedium()
	 * @generated
	 */
	int POST_CURE_MEDIUM = 4;


	/**
	 * Returns the meta object for class '{@link org.flexwright.vatprint.data.Printing <em>Printing</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Printing</em>'.
	 * @see org.flexwright.vatprint.data.Printing
	 * @generated
	 */
	EClass getPrinting();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.vatprint.data.Printing#getLayerHeight <em>Layer Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Layer Height</em>'.
	 * @see org.flexwright.vatprint.data.Printing#getLayerHeight()
	 * @see #getPrinting()
	 * @generated
	 */
	EAttribute getPrinting_LayerHeight();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.vatprint.data.Printing#getPlannedExposure <em>Planned Exposure</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Planned Exposure</em>'.
	 * @see org.flexwright.vatprint.data.Printing#getPlannedExposure()
	 * @see #getPrinting()
	 * @generated
	 */
	EAttribute getPrinting_PlannedExposure();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.vatprint.data.Printing#getActualExposure <em>Actual Exposure</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Actual Exposure</em>'.
	 * @see org.flexwright.vatprint.data.Printing#getActualExposure()
	 * @see #getPrinting()
	 * @generated
	 */
	EAttribute getPrinting_ActualExposure();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.vatprint.data.Printing#getExposureForLayer <em>Exposure For Layer</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Exposure For Layer</em>'.
	 * @see org.flexwright.vatprint.data.Printing#getExposureForLayer()
	 * @see #getPrinting()
	 * @generated
	 */
	EAttribute getPrinting_ExposureForLayer();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.vatprint.data.Printing#getIrradiance <em>Irradiance</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Irradiance</em>'.
	 * @see org.flexwright.vatprint.data.Printing#getIrradiance()
	 * @see #getPrinting()
	 * @generated
	 */
	EAttribute getPrinting_Irradiance();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.vatprint.data.Printing#getPenetrationDepth <em>Penetration Depth</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Penetration Depth</em>'.
	 * @see org.flexwright.vatprint.data.Printing#getPenetrationDepth()
	 * @see #getPrinting()
	 * @generated
	 */
	EAttribute getPrinting_PenetrationDepth();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.vatprint.data.Printing#getCriticalDose <em>Critical Dose</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Critical Dose</em>'.
	 * @see org.flexwright.vatprint.data.Printing#getCriticalDose()
	 * @see #getPrinting()
	 * @generated
	 */
	EAttribute getPrinting_CriticalDose();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.vatprint.data.Printing#getOverCure <em>Over Cure</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Over Cure</em>'.
	 * @see org.flexwright.vatprint.data.Printing#getOverCure()
	 * @see #getPrinting()
	 * @generated
	 */
	EAttribute getPrinting_OverCure();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.vatprint.data.Printing#getPartHeight <em>Part Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Part Height</em>'.
	 * @see org.flexwright.vatprint.data.Printing#getPartHeight()
	 * @see #getPrinting()
	 * @generated
	 */
	EAttribute getPrinting_PartHeight();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.vatprint.data.Printing#getBaseLayers <em>Base Layers</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Base Layers</em>'.
	 * @see org.flexwright.vatprint.data.Printing#getBaseLayers()
	 * @see #getPrinting()
	 * @generated
	 */
	EAttribute getPrinting_BaseLayers();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.vatprint.data.Printing#getBaseExposure <em>Base Exposure</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Base Exposure</em>'.
	 * @see org.flexwright.vatprint.data.Printing#getBaseExposure()
	 * @see #getPrinting()
	 * @generated
	 */
	EAttribute getPrinting_BaseExposure();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.vatprint.data.Printing#getMoveTime <em>Move Time</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Move Time</em>'.
	 * @see org.flexwright.vatprint.data.Printing#getMoveTime()
	 * @see #getPrinting()
	 * @generated
	 */
	EAttribute getPrinting_MoveTime();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.vatprint.data.Printing#getPrintedVolume <em>Printed Volume</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Printed Volume</em>'.
	 * @see org.flexwright.vatprint.data.Printing#getPrintedVolume()
	 * @see #getPrinting()
	 * @generated
	 */
	EAttribute getPrinting_PrintedVolume();

	/**
	 * Returns the meta object for class '{@link org.flexwright.vatprint.data.Washing <em>Washing</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Washing</em>'.
	 * @see org.flexwright.vatprint.data.Washing
	 * @generated
	 */
	EClass getWashing();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.vatprint.data.Washing#getSolvent <em>Solvent</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Solvent</em>'.
	 * @see org.flexwright.vatprint.data.Washing#getSolvent()
	 * @see #getWashing()
	 * @generated
	 */
	EAttribute getWashing_Solvent();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.vatprint.data.Washing#getPlannedMinutes <em>Planned Minutes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Planned Minutes</em>'.
	 * @see org.flexwright.vatprint.data.Washing#getPlannedMinutes()
	 * @see #getWashing()
	 * @generated
	 */
	EAttribute getWashing_PlannedMinutes();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.vatprint.data.Washing#getActualMinutes <em>Actual Minutes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Actual Minutes</em>'.
	 * @see org.flexwright.vatprint.data.Washing#getActualMinutes()
	 * @see #getWashing()
	 * @generated
	 */
	EAttribute getWashing_ActualMinutes();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.vatprint.data.Washing#getBaths <em>Baths</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Baths</em>'.
	 * @see org.flexwright.vatprint.data.Washing#getBaths()
	 * @see #getWashing()
	 * @generated
	 */
	EAttribute getWashing_Baths();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.vatprint.data.Washing#getBathVolume <em>Bath Volume</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Bath Volume</em>'.
	 * @see org.flexwright.vatprint.data.Washing#getBathVolume()
	 * @see #getWashing()
	 * @generated
	 */
	EAttribute getWashing_BathVolume();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.vatprint.data.Washing#getCarriedVolume <em>Carried Volume</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Carried Volume</em>'.
	 * @see org.flexwright.vatprint.data.Washing#getCarriedVolume()
	 * @see #getWashing()
	 * @generated
	 */
	EAttribute getWashing_CarriedVolume();

	/**
	 * Returns the meta object for class '{@link org.flexwright.vatprint.data.PostCuring <em>Post Curing</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Post Curing</em>'.
	 * @see org.flexwright.vatprint.data.PostCuring
	 * @generated
	 */
	EClass getPostCuring();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.vatprint.data.PostCuring#getPlannedDryMinutes <em>Planned Dry Minutes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Planned Dry Minutes</em>'.
	 * @see org.flexwright.vatprint.data.PostCuring#getPlannedDryMinutes()
	 * @see #getPostCuring()
	 * @generated
	 */
	EAttribute getPostCuring_PlannedDryMinutes();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.vatprint.data.PostCuring#getActualDryMinutes <em>Actual Dry Minutes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Actual Dry Minutes</em>'.
	 * @see org.flexwright.vatprint.data.PostCuring#getActualDryMinutes()
	 * @see #getPostCuring()
	 * @generated
	 */
	EAttribute getPostCuring_ActualDryMinutes();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.vatprint.data.PostCuring#getMassSteady <em>Mass Steady</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Mass Steady</em>'.
	 * @see org.flexwright.vatprint.data.PostCuring#getMassSteady()
	 * @see #getPostCuring()
	 * @generated
	 */
	EAttribute getPostCuring_MassSteady();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.vatprint.data.PostCuring#getPlannedMinutes <em>Planned Minutes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Planned Minutes</em>'.
	 * @see org.flexwright.vatprint.data.PostCuring#getPlannedMinutes()
	 * @see #getPostCuring()
	 * @generated
	 */
	EAttribute getPostCuring_PlannedMinutes();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.vatprint.data.PostCuring#getActualMinutes <em>Actual Minutes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Actual Minutes</em>'.
	 * @see org.flexwright.vatprint.data.PostCuring#getActualMinutes()
	 * @see #getPostCuring()
	 * @generated
	 */
	EAttribute getPostCuring_ActualMinutes();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.vatprint.data.PostCuring#getPlannedTemperature <em>Planned Temperature</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Planned Temperature</em>'.
	 * @see org.flexwright.vatprint.data.PostCuring#getPlannedTemperature()
	 * @see #getPostCuring()
	 * @generated
	 */
	EAttribute getPostCuring_PlannedTemperature();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.vatprint.data.PostCuring#getActualTemperature <em>Actual Temperature</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Actual Temperature</em>'.
	 * @see org.flexwright.vatprint.data.PostCuring#getActualTemperature()
	 * @see #getPostCuring()
	 * @generated
	 */
	EAttribute getPostCuring_ActualTemperature();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.vatprint.data.PostCuring#getMedium <em>Medium</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Medium</em>'.
	 * @see org.flexwright.vatprint.data.PostCuring#getMedium()
	 * @see #getPostCuring()
	 * @generated
	 */
	EAttribute getPostCuring_Medium();

	/**
	 * Returns the meta object for enum '{@link org.flexwright.vatprint.data.WashSolvent <em>Wash Solvent</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Wash Solvent</em>'.
	 * @see org.flexwright.vatprint.data.WashSolvent
	 * @generated
	 */
	EEnum getWashSolvent();

	/**
	 * Returns the meta object for enum '{@link org.flexwright.vatprint.data.PostCureMedium <em>Post Cure Medium</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Post Cure Medium</em>'.
	 * @see org.flexwright.vatprint.data.PostCureMedium
	 * @generated
	 */
	EEnum getPostCureMedium();

	/**
	 * Returns the factory that creates the instances of the model.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the factory that creates the instances of the model.
	 * @generated
	 */
	VatprintDataFactory getVatprintDataFactory();

	/**
	 * <!-- begin-user-doc -->
	 * Defines literals for the meta objects that represent
	 * <ul>
	 *   <li>each class,</li>
	 *   <li>each feature of each class,</li>
	 *   <li>each operation of each class,</li>
	 *   <li>each enum,</li>
	 *   <li>and each data type</li>
	 * </ul>
	 * <!-- end-user-doc -->
	 * @generated
	 */
	interface Literals {
		/**
		 * The meta object literal for the '{@link org.flexwright.vatprint.data.impl.PrintingImpl <em>Printing</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.vatprint.data.impl.PrintingImpl
		 * @see org.flexwright.vatprint.data.impl.VatprintDataPackageImpl#getPrinting()
		 * @generated
		 */
		EClass PRINTING = eINSTANCE.getPrinting();

		/**
		 * The meta object literal for the '<em><b>Layer Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRINTING__LAYER_HEIGHT = eINSTANCE.getPrinting_LayerHeight();

		/**
		 * The meta object literal for the '<em><b>Planned Exposure</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRINTING__PLANNED_EXPOSURE = eINSTANCE.getPrinting_PlannedExposure();

		/**
		 * The meta object literal for the '<em><b>Actual Exposure</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRINTING__ACTUAL_EXPOSURE = eINSTANCE.getPrinting_ActualExposure();

		/**
		 * The meta object literal for the '<em><b>Exposure For Layer</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRINTING__EXPOSURE_FOR_LAYER = eINSTANCE.getPrinting_ExposureForLayer();

		/**
		 * The meta object literal for the '<em><b>Irradiance</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRINTING__IRRADIANCE = eINSTANCE.getPrinting_Irradiance();

		/**
		 * The meta object literal for the '<em><b>Penetration Depth</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRINTING__PENETRATION_DEPTH = eINSTANCE.getPrinting_PenetrationDepth();

		/**
		 * The meta object literal for the '<em><b>Critical Dose</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRINTING__CRITICAL_DOSE = eINSTANCE.getPrinting_CriticalDose();

		/**
		 * The meta object literal for the '<em><b>Over Cure</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRINTING__OVER_CURE = eINSTANCE.getPrinting_OverCure();

		/**
		 * The meta object literal for the '<em><b>Part Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRINTING__PART_HEIGHT = eINSTANCE.getPrinting_PartHeight();

		/**
		 * The meta object literal for the '<em><b>Base Layers</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRINTING__BASE_LAYERS = eINSTANCE.getPrinting_BaseLayers();

		/**
		 * The meta object literal for the '<em><b>Base Exposure</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRINTING__BASE_EXPOSURE = eINSTANCE.getPrinting_BaseExposure();

		/**
		 * The meta object literal for the '<em><b>Move Time</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRINTING__MOVE_TIME = eINSTANCE.getPrinting_MoveTime();

		/**
		 * The meta object literal for the '<em><b>Printed Volume</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRINTING__PRINTED_VOLUME = eINSTANCE.getPrinting_PrintedVolume();

		/**
		 * The meta object literal for the '{@link org.flexwright.vatprint.data.impl.WashingImpl <em>Washing</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.vatprint.data.impl.WashingImpl
		 * @see org.flexwright.vatprint.data.impl.VatprintDataPackageImpl#getWashing()
		 * @generated
		 */
		EClass WASHING = eINSTANCE.getWashing();

		/**
		 * The meta object literal for the '<em><b>Solvent</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WASHING__SOLVENT = eINSTANCE.getWashing_Solvent();

		/**
		 * The meta object literal for the '<em><b>Planned Minutes</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WASHING__PLANNED_MINUTES = eINSTANCE.getWashing_PlannedMinutes();

		/**
		 * The meta object literal for the '<em><b>Actual Minutes</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WASHING__ACTUAL_MINUTES = eINSTANCE.getWashing_ActualMinutes();

		/**
		 * The meta object literal for the '<em><b>Baths</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WASHING__BATHS = eINSTANCE.getWashing_Baths();

		/**
		 * The meta object literal for the '<em><b>Bath Volume</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WASHING__BATH_VOLUME = eINSTANCE.getWashing_BathVolume();

		/**
		 * The meta object literal for the '<em><b>Carried Volume</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WASHING__CARRIED_VOLUME = eINSTANCE.getWashing_CarriedVolume();

		/**
		 * The meta object literal for the '{@link org.flexwright.vatprint.data.impl.PostCuringImpl <em>Post Curing</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.vatprint.data.impl.PostCuringImpl
		 * @see org.flexwright.vatprint.data.impl.VatprintDataPackageImpl#getPostCuring()
		 * @generated
		 */
		EClass POST_CURING = eINSTANCE.getPostCuring();

		/**
		 * The meta object literal for the '<em><b>Planned Dry Minutes</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute POST_CURING__PLANNED_DRY_MINUTES = eINSTANCE.getPostCuring_PlannedDryMinutes();

		/**
		 * The meta object literal for the '<em><b>Actual Dry Minutes</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute POST_CURING__ACTUAL_DRY_MINUTES = eINSTANCE.getPostCuring_ActualDryMinutes();

		/**
		 * The meta object literal for the '<em><b>Mass Steady</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute POST_CURING__MASS_STEADY = eINSTANCE.getPostCuring_MassSteady();

		/**
		 * The meta object literal for the '<em><b>Planned Minutes</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute POST_CURING__PLANNED_MINUTES = eINSTANCE.getPostCuring_PlannedMinutes();

		/**
		 * The meta object literal for the '<em><b>Actual Minutes</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute POST_CURING__ACTUAL_MINUTES = eINSTANCE.getPostCuring_ActualMinutes();

		/**
		 * The meta object literal for the '<em><b>Planned Temperature</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute POST_CURING__PLANNED_TEMPERATURE = eINSTANCE.getPostCuring_PlannedTemperature();

		/**
		 * The meta object literal for the '<em><b>Actual Temperature</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute POST_CURING__ACTUAL_TEMPERATURE = eINSTANCE.getPostCuring_ActualTemperature();

		/**
		 * The meta object literal for the '<em><b>Medium</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute POST_CURING__MEDIUM = eINSTANCE.getPostCuring_Medium();

		/**
		 * The meta object literal for the '{@link org.flexwright.vatprint.data.WashSolvent <em>Wash Solvent</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.vatprint.data.WashSolvent
		 * @see org.flexwright.vatprint.data.impl.VatprintDataPackageImpl#getWashSolvent()
		 * @generated
		 */
		EEnum WASH_SOLVENT = eINSTANCE.getWashSolvent();

		/**
		 * The meta object literal for the '{@link org.flexwright.vatprint.data.PostCureMedium <em>Post Cure Medium</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.vatprint.data.PostCureMedium
		 * @see org.flexwright.vatprint.data.impl.VatprintDataPackageImpl#getPostCureMedium()
		 * @generated
		 */
		EEnum POST_CURE_MEDIUM = eINSTANCE.getPostCureMedium();

	}

} //VatprintDataPackage
