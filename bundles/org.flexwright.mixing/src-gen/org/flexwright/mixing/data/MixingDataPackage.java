/**
 */
package org.flexwright.mixing.data;

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
 * @see org.flexwright.mixing.data.MixingDataFactory
 * @model kind="package"
 * @generated
 */
public interface MixingDataPackage extends EPackage {
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
	String eNS_URI = "urn:flexwright:mixing:1";

	/**
	 * The package namespace name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_PREFIX = "mixing";

	/**
	 * The singleton instance of the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	MixingDataPackage eINSTANCE = org.flexwright.mixing.data.impl.MixingDataPackageImpl.init();

	/**
	 * The meta object id for the '{@link org.flexwright.mixing.data.impl.WeighDetailsImpl <em>Weigh Details</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.mixing.data.impl.WeighDetailsImpl
	 * @see org.flexwright.mixing.data.impl.MixingDataPackageImpl#getWeighDetails()
	 * @generated
	 */
	int WEIGH_DETAILS = 0;

	/**
	 * The feature id for the '<em><b>Ratio A</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WEIGH_DETAILS__RATIO_A = 0;

	/**
	 * The feature id for the '<em><b>Ratio B</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WEIGH_DETAILS__RATIO_B = 1;

	/**
	 * The feature id for the '<em><b>Basis</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WEIGH_DETAILS__BASIS = 2;

	/**
	 * The feature id for the '<em><b>Density A</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WEIGH_DETAILS__DENSITY_A = 3;

	/**
	 * The feature id for the '<em><b>Density B</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WEIGH_DETAILS__DENSITY_B = 4;

	/**
	 * The feature id for the '<em><b>Own Limit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WEIGH_DETAILS__OWN_LIMIT = 5;

	/**
	 * The feature id for the '<em><b>Part Count</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WEIGH_DETAILS__PART_COUNT = 6;

	/**
	 * The feature id for the '<em><b>Part Volume</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WEIGH_DETAILS__PART_VOLUME = 7;

	/**
	 * The feature id for the '<em><b>Runner Volume</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WEIGH_DETAILS__RUNNER_VOLUME = 8;

	/**
	 * The feature id for the '<em><b>Dead Volume</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WEIGH_DETAILS__DEAD_VOLUME = 9;

	/**
	 * The feature id for the '<em><b>Extra</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WEIGH_DETAILS__EXTRA = 10;

	/**
	 * The feature id for the '<em><b>Extra Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WEIGH_DETAILS__EXTRA_KIND = 11;

	/**
	 * The feature id for the '<em><b>Filler</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WEIGH_DETAILS__FILLER = 12;

	/**
	 * The feature id for the '<em><b>Filler Basis</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WEIGH_DETAILS__FILLER_BASIS = 13;

	/**
	 * The feature id for the '<em><b>Batch Mass</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WEIGH_DETAILS__BATCH_MASS = 14;

	/**
	 * The feature id for the '<em><b>Index</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WEIGH_DETAILS__INDEX = 15;

	/**
	 * The feature id for the '<em><b>Measured Volume</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WEIGH_DETAILS__MEASURED_VOLUME = 16;

	/**
	 * The feature id for the '<em><b>Cup Volume</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WEIGH_DETAILS__CUP_VOLUME = 17;

	/**
	 * The number of structural features of the '<em>Weigh Details</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WEIGH_DETAILS_FEATURE_COUNT = 18;

	/**
	 * The number of operations of the '<em>Weigh Details</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WEIGH_DETAILS_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.flexwright.mixing.data.impl.MixDetailsImpl <em>Mix Details</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.mixing.data.impl.MixDetailsImpl
	 * @see org.flexwright.mixing.data.impl.MixingDataPackageImpl#getMixDetails()
	 * @generated
	 */
	int MIX_DETAILS = 1;

	/**
	 * The feature id for the '<em><b>Planned Minutes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_DETAILS__PLANNED_MINUTES = 0;

	/**
	 * The feature id for the '<em><b>Minutes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_DETAILS__MINUTES = 1;

	/**
	 * The feature id for the '<em><b>Planned Order</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_DETAILS__PLANNED_ORDER = 2;

	/**
	 * The feature id for the '<em><b>Order</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_DETAILS__ORDER = 3;

	/**
	 * The feature id for the '<em><b>Tool</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_DETAILS__TOOL = 4;

	/**
	 * The feature id for the '<em><b>Scraped</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_DETAILS__SCRAPED = 5;

	/**
	 * The feature id for the '<em><b>Working Time</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_DETAILS__WORKING_TIME = 6;

	/**
	 * The feature id for the '<em><b>Working Time Rule</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_DETAILS__WORKING_TIME_RULE = 7;

	/**
	 * The feature id for the '<em><b>Working Time Mass</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_DETAILS__WORKING_TIME_MASS = 8;

	/**
	 * The feature id for the '<em><b>Working Time C</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_DETAILS__WORKING_TIME_C = 9;

	/**
	 * The feature id for the '<em><b>Working Time Growth</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_DETAILS__WORKING_TIME_GROWTH = 10;

	/**
	 * The feature id for the '<em><b>Working Time Energy</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_DETAILS__WORKING_TIME_ENERGY = 11;

	/**
	 * The number of structural features of the '<em>Mix Details</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_DETAILS_FEATURE_COUNT = 12;

	/**
	 * The number of operations of the '<em>Mix Details</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_DETAILS_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.flexwright.mixing.data.impl.DegasDetailsImpl <em>Degas Details</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.mixing.data.impl.DegasDetailsImpl
	 * @see org.flexwright.mixing.data.impl.MixingDataPackageImpl#getDegasDetails()
	 * @generated
	 */
	int DEGAS_DETAILS = 2;

	/**
	 * The feature id for the '<em><b>Planned Minutes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEGAS_DETAILS__PLANNED_MINUTES = 0;

	/**
	 * The feature id for the '<em><b>Minutes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEGAS_DETAILS__MINUTES = 1;

	/**
	 * The feature id for the '<em><b>Planned Pressure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEGAS_DETAILS__PLANNED_PRESSURE = 2;

	/**
	 * The feature id for the '<em><b>Pressure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEGAS_DETAILS__PRESSURE = 3;

	/**
	 * The feature id for the '<em><b>Cup Volume</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEGAS_DETAILS__CUP_VOLUME = 4;

	/**
	 * The feature id for the '<em><b>Mix Volume</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEGAS_DETAILS__MIX_VOLUME = 5;

	/**
	 * The number of structural features of the '<em>Degas Details</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEGAS_DETAILS_FEATURE_COUNT = 6;

	/**
	 * The number of operations of the '<em>Degas Details</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEGAS_DETAILS_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.flexwright.mixing.data.Basis <em>Basis</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.mixing.data.Basis
	 * @see org.flexwright.mixing.data.impl.MixingDataPackageImpl#getBasis()
	 * @generated
	 */
	int BASIS = 3;

	/**
	 * The meta object id for the '{@link org.flexwright.mixing.data.Extra <em>Extra</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.mixing.data.Extra
	 * @see org.flexwright.mixing.data.impl.MixingDataPackageImpl#getExtra()
	 * @generated
	 */
	int EXTRA = 4;

	/**
	 * The meta object id for the '{@link org.flexwright.mixing.data.FillerBasis <em>Filler Basis</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.mixing.data.FillerBasis
	 * @see org.flexwright.mixing.data.impl.MixingDataPackageImpl#getFillerBasis()
	 * @generated
	 */
	int FILLER_BASIS = 5;

	/**
	 * The meta object id for the '{@link org.flexwright.mixing.data.WorkingTimeRule <em>Working Time Rule</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.mixing.data.WorkingTimeRule
	 * @see org.flexwright.mixing.data.impl.MixingDataPackageImpl#getWorkingTimeRule()
	 * @generated
	 */
	int WORKING_TIME_RULE = 6;


	/**
	 * Returns the meta object for class '{@link org.flexwright.mixing.data.WeighDetails <em>Weigh Details</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Weigh Details</em>'.
	 * @see org.flexwright.mixing.data.WeighDetails
	 * @generated
	 */
	EClass getWeighDetails();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.mixing.data.WeighDetails#getRatioA <em>Ratio A</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Ratio A</em>'.
	 * @see org.flexwright.mixing.data.WeighDetails#getRatioA()
	 * @see #getWeighDetails()
	 * @generated
	 */
	EAttribute getWeighDetails_RatioA();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.mixing.data.WeighDetails#getRatioB <em>Ratio B</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Ratio B</em>'.
	 * @see org.flexwright.mixing.data.WeighDetails#getRatioB()
	 * @see #getWeighDetails()
	 * @generated
	 */
	EAttribute getWeighDetails_RatioB();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.mixing.data.WeighDetails#getBasis <em>Basis</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Basis</em>'.
	 * @see org.flexwright.mixing.data.WeighDetails#getBasis()
	 * @see #getWeighDetails()
	 * @generated
	 */
	EAttribute getWeighDetails_Basis();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.mixing.data.WeighDetails#getDensityA <em>Density A</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Density A</em>'.
	 * @see org.flexwright.mixing.data.WeighDetails#getDensityA()
	 * @see #getWeighDetails()
	 * @generated
	 */
	EAttribute getWeighDetails_DensityA();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.mixing.data.WeighDetails#getDensityB <em>Density B</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Density B</em>'.
	 * @see org.flexwright.mixing.data.WeighDetails#getDensityB()
	 * @see #getWeighDetails()
	 * @generated
	 */
	EAttribute getWeighDetails_DensityB();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.mixing.data.WeighDetails#getOwnLimit <em>Own Limit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Own Limit</em>'.
	 * @see org.flexwright.mixing.data.WeighDetails#getOwnLimit()
	 * @see #getWeighDetails()
	 * @generated
	 */
	EAttribute getWeighDetails_OwnLimit();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.mixing.data.WeighDetails#getPartCount <em>Part Count</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Part Count</em>'.
	 * @see org.flexwright.mixing.data.WeighDetails#getPartCount()
	 * @see #getWeighDetails()
	 * @generated
	 */
	EAttribute getWeighDetails_PartCount();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.mixing.data.WeighDetails#getPartVolume <em>Part Volume</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Part Volume</em>'.
	 * @see org.flexwright.mixing.data.WeighDetails#getPartVolume()
	 * @see #getWeighDetails()
	 * @generated
	 */
	EAttribute getWeighDetails_PartVolume();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.mixing.data.WeighDetails#getRunnerVolume <em>Runner Volume</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Runner Volume</em>'.
	 * @see org.flexwright.mixing.data.WeighDetails#getRunnerVolume()
	 * @see #getWeighDetails()
	 * @generated
	 */
	EAttribute getWeighDetails_RunnerVolume();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.mixing.data.WeighDetails#getDeadVolume <em>Dead Volume</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Dead Volume</em>'.
	 * @see org.flexwright.mixing.data.WeighDetails#getDeadVolume()
	 * @see #getWeighDetails()
	 * @generated
	 */
	EAttribute getWeighDetails_DeadVolume();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.mixing.data.WeighDetails#getExtra <em>Extra</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Extra</em>'.
	 * @see org.flexwright.mixing.data.WeighDetails#getExtra()
	 * @see #getWeighDetails()
	 * @generated
	 */
	EAttribute getWeighDetails_Extra();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.mixing.data.WeighDetails#getExtraKind <em>Extra Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Extra Kind</em>'.
	 * @see org.flexwright.mixing.data.WeighDetails#getExtraKind()
	 * @see #getWeighDetails()
	 * @generated
	 */
	EAttribute getWeighDetails_ExtraKind();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.mixing.data.WeighDetails#getFiller <em>Filler</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Filler</em>'.
	 * @see org.flexwright.mixing.data.WeighDetails#getFiller()
	 * @see #getWeighDetails()
	 * @generated
	 */
	EAttribute getWeighDetails_Filler();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.mixing.data.WeighDetails#getFillerBasis <em>Filler Basis</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Filler Basis</em>'.
	 * @see org.flexwright.mixing.data.WeighDetails#getFillerBasis()
	 * @see #getWeighDetails()
	 * @generated
	 */
	EAttribute getWeighDetails_FillerBasis();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.mixing.data.WeighDetails#getBatchMass <em>Batch Mass</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Batch Mass</em>'.
	 * @see org.flexwright.mixing.data.WeighDetails#getBatchMass()
	 * @see #getWeighDetails()
	 * @generated
	 */
	EAttribute getWeighDetails_BatchMass();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.mixing.data.WeighDetails#getIndex <em>Index</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Index</em>'.
	 * @see org.flexwright.mixing.data.WeighDetails#getIndex()
	 * @see #getWeighDetails()
	 * @generated
	 */
	EAttribute getWeighDetails_Index();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.mixing.data.WeighDetails#getMeasuredVolume <em>Measured Volume</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Measured Volume</em>'.
	 * @see org.flexwright.mixing.data.WeighDetails#getMeasuredVolume()
	 * @see #getWeighDetails()
	 * @generated
	 */
	EAttribute getWeighDetails_MeasuredVolume();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.mixing.data.WeighDetails#getCupVolume <em>Cup Volume</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Cup Volume</em>'.
	 * @see org.flexwright.mixing.data.WeighDetails#getCupVolume()
	 * @see #getWeighDetails()
	 * @generated
	 */
	EAttribute getWeighDetails_CupVolume();

	/**
	 * Returns the meta object for class '{@link org.flexwright.mixing.data.MixDetails <em>Mix Details</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Mix Details</em>'.
	 * @see org.flexwright.mixing.data.MixDetails
	 * @generated
	 */
	EClass getMixDetails();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.mixing.data.MixDetails#getPlannedMinutes <em>Planned Minutes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Planned Minutes</em>'.
	 * @see org.flexwright.mixing.data.MixDetails#getPlannedMinutes()
	 * @see #getMixDetails()
	 * @generated
	 */
	EAttribute getMixDetails_PlannedMinutes();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.mixing.data.MixDetails#getMinutes <em>Minutes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Minutes</em>'.
	 * @see org.flexwright.mixing.data.MixDetails#getMinutes()
	 * @see #getMixDetails()
	 * @generated
	 */
	EAttribute getMixDetails_Minutes();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.mixing.data.MixDetails#getPlannedOrder <em>Planned Order</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Planned Order</em>'.
	 * @see org.flexwright.mixing.data.MixDetails#getPlannedOrder()
	 * @see #getMixDetails()
	 * @generated
	 */
	EAttribute getMixDetails_PlannedOrder();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.mixing.data.MixDetails#getOrder <em>Order</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Order</em>'.
	 * @see org.flexwright.mixing.data.MixDetails#getOrder()
	 * @see #getMixDetails()
	 * @generated
	 */
	EAttribute getMixDetails_Order();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.mixing.data.MixDetails#getTool <em>Tool</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Tool</em>'.
	 * @see org.flexwright.mixing.data.MixDetails#getTool()
	 * @see #getMixDetails()
	 * @generated
	 */
	EAttribute getMixDetails_Tool();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.mixing.data.MixDetails#getScraped <em>Scraped</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Scraped</em>'.
	 * @see org.flexwright.mixing.data.MixDetails#getScraped()
	 * @see #getMixDetails()
	 * @generated
	 */
	EAttribute getMixDetails_Scraped();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.mixing.data.MixDetails#getWorkingTime <em>Working Time</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Working Time</em>'.
	 * @see org.flexwright.mixing.data.MixDetails#getWorkingTime()
	 * @see #getMixDetails()
	 * @generated
	 */
	EAttribute getMixDetails_WorkingTime();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.mixing.data.MixDetails#getWorkingTimeRule <em>Working Time Rule</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Working Time Rule</em>'.
	 * @see org.flexwright.mixing.data.MixDetails#getWorkingTimeRule()
	 * @see #getMixDetails()
	 * @generated
	 */
	EAttribute getMixDetails_WorkingTimeRule();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.mixing.data.MixDetails#getWorkingTimeMass <em>Working Time Mass</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Working Time Mass</em>'.
	 * @see org.flexwright.mixing.data.MixDetails#getWorkingTimeMass()
	 * @see #getMixDetails()
	 * @generated
	 */
	EAttribute getMixDetails_WorkingTimeMass();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.mixing.data.MixDetails#getWorkingTimeC <em>Working Time C</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Working Time C</em>'.
	 * @see org.flexwright.mixing.data.MixDetails#getWorkingTimeC()
	 * @see #getMixDetails()
	 * @generated
	 */
	EAttribute getMixDetails_WorkingTimeC();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.mixing.data.MixDetails#getWorkingTimeGrowth <em>Working Time Growth</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Working Time Growth</em>'.
	 * @see org.flexwright.mixing.data.MixDetails#getWorkingTimeGrowth()
	 * @see #getMixDetails()
	 * @generated
	 */
	EAttribute getMixDetails_WorkingTimeGrowth();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.mixing.data.MixDetails#getWorkingTimeEnergy <em>Working Time Energy</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Working Time Energy</em>'.
	 * @see org.flexwright.mixing.data.MixDetails#getWorkingTimeEnergy()
	 * @see #getMixDetails()
	 * @generated
	 */
	EAttribute getMixDetails_WorkingTimeEnergy();

	/**
	 * Returns the meta object for class '{@link org.flexwright.mixing.data.DegasDetails <em>Degas Details</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Degas Details</em>'.
	 * @see org.flexwright.mixing.data.DegasDetails
	 * @generated
	 */
	EClass getDegasDetails();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.mixing.data.DegasDetails#getPlannedMinutes <em>Planned Minutes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Planned Minutes</em>'.
	 * @see org.flexwright.mixing.data.DegasDetails#getPlannedMinutes()
	 * @see #getDegasDetails()
	 * @generated
	 */
	EAttribute getDegasDetails_PlannedMinutes();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.mixing.data.DegasDetails#getMinutes <em>Minutes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Minutes</em>'.
	 * @see org.flexwright.mixing.data.DegasDetails#getMinutes()
	 * @see #getDegasDetails()
	 * @generated
	 */
	EAttribute getDegasDetails_Minutes();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.mixing.data.DegasDetails#getPlannedPressure <em>Planned Pressure</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Planned Pressure</em>'.
	 * @see org.flexwright.mixing.data.DegasDetails#getPlannedPressure()
	 * @see #getDegasDetails()
	 * @generated
	 */
	EAttribute getDegasDetails_PlannedPressure();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.mixing.data.DegasDetails#getPressure <em>Pressure</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Pressure</em>'.
	 * @see org.flexwright.mixing.data.DegasDetails#getPressure()
	 * @see #getDegasDetails()
	 * @generated
	 */
	EAttribute getDegasDetails_Pressure();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.mixing.data.DegasDetails#getCupVolume <em>Cup Volume</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Cup Volume</em>'.
	 * @see org.flexwright.mixing.data.DegasDetails#getCupVolume()
	 * @see #getDegasDetails()
	 * @generated
	 */
	EAttribute getDegasDetails_CupVolume();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.mixing.data.DegasDetails#getMixVolume <em>Mix Volume</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Mix Volume</em>'.
	 * @see org.flexwright.mixing.data.DegasDetails#getMixVolume()
	 * @see #getDegasDetails()
	 * @generated
	 */
	EAttribute getDegasDetails_MixVolume();

	/**
	 * Returns the meta object for enum '{@link org.flexwright.mixing.data.Basis <em>Basis</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Basis</em>'.
	 * @see org.flexwright.mixing.data.Basis
	 * @generated
	 */
	EEnum getBasis();

	/**
	 * Returns the meta object for enum '{@link org.flexwright.mixing.data.Extra <em>Extra</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Extra</em>'.
	 * @see org.flexwright.mixing.data.Extra
	 * @generated
	 */
	EEnum getExtra();

	/**
	 * Returns the meta object for enum '{@link org.flexwright.mixing.data.FillerBasis <em>Filler Basis</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Filler Basis</em>'.
	 * @see org.flexwright.mixing.data.FillerBasis
	 * @generated
	 */
	EEnum getFillerBasis();

	/**
	 * Returns the meta object for enum '{@link org.flexwright.mixing.data.WorkingTimeRule <em>Working Time Rule</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Working Time Rule</em>'.
	 * @see org.flexwright.mixing.data.WorkingTimeRule
	 * @generated
	 */
	EEnum getWorkingTimeRule();

	/**
	 * Returns the factory that creates the instances of the model.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the factory that creates the instances of the model.
	 * @generated
	 */
	MixingDataFactory getMixingDataFactory();

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
		 * The meta object literal for the '{@link org.flexwright.mixing.data.impl.WeighDetailsImpl <em>Weigh Details</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.mixing.data.impl.WeighDetailsImpl
		 * @see org.flexwright.mixing.data.impl.MixingDataPackageImpl#getWeighDetails()
		 * @generated
		 */
		EClass WEIGH_DETAILS = eINSTANCE.getWeighDetails();

		/**
		 * The meta object literal for the '<em><b>Ratio A</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WEIGH_DETAILS__RATIO_A = eINSTANCE.getWeighDetails_RatioA();

		/**
		 * The meta object literal for the '<em><b>Ratio B</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WEIGH_DETAILS__RATIO_B = eINSTANCE.getWeighDetails_RatioB();

		/**
		 * The meta object literal for the '<em><b>Basis</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WEIGH_DETAILS__BASIS = eINSTANCE.getWeighDetails_Basis();

		/**
		 * The meta object literal for the '<em><b>Density A</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WEIGH_DETAILS__DENSITY_A = eINSTANCE.getWeighDetails_DensityA();

		/**
		 * The meta object literal for the '<em><b>Density B</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WEIGH_DETAILS__DENSITY_B = eINSTANCE.getWeighDetails_DensityB();

		/**
		 * The meta object literal for the '<em><b>Own Limit</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WEIGH_DETAILS__OWN_LIMIT = eINSTANCE.getWeighDetails_OwnLimit();

		/**
		 * The meta object literal for the '<em><b>Part Count</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WEIGH_DETAILS__PART_COUNT = eINSTANCE.getWeighDetails_PartCount();

		/**
		 * The meta object literal for the '<em><b>Part Volume</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WEIGH_DETAILS__PART_VOLUME = eINSTANCE.getWeighDetails_PartVolume();

		/**
		 * The meta object literal for the '<em><b>Runner Volume</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WEIGH_DETAILS__RUNNER_VOLUME = eINSTANCE.getWeighDetails_RunnerVolume();

		/**
		 * The meta object literal for the '<em><b>Dead Volume</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WEIGH_DETAILS__DEAD_VOLUME = eINSTANCE.getWeighDetails_DeadVolume();

		/**
		 * The meta object literal for the '<em><b>Extra</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WEIGH_DETAILS__EXTRA = eINSTANCE.getWeighDetails_Extra();

		/**
		 * The meta object literal for the '<em><b>Extra Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WEIGH_DETAILS__EXTRA_KIND = eINSTANCE.getWeighDetails_ExtraKind();

		/**
		 * The meta object literal for the '<em><b>Filler</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WEIGH_DETAILS__FILLER = eINSTANCE.getWeighDetails_Filler();

		/**
		 * The meta object literal for the '<em><b>Filler Basis</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WEIGH_DETAILS__FILLER_BASIS = eINSTANCE.getWeighDetails_FillerBasis();

		/**
		 * The meta object literal for the '<em><b>Batch Mass</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WEIGH_DETAILS__BATCH_MASS = eINSTANCE.getWeighDetails_BatchMass();

		/**
		 * The meta object literal for the '<em><b>Index</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WEIGH_DETAILS__INDEX = eINSTANCE.getWeighDetails_Index();

		/**
		 * The meta object literal for the '<em><b>Measured Volume</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WEIGH_DETAILS__MEASURED_VOLUME = eINSTANCE.getWeighDetails_MeasuredVolume();

		/**
		 * The meta object literal for the '<em><b>Cup Volume</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WEIGH_DETAILS__CUP_VOLUME = eINSTANCE.getWeighDetails_CupVolume();

		/**
		 * The meta object literal for the '{@link org.flexwright.mixing.data.impl.MixDetailsImpl <em>Mix Details</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.mixing.data.impl.MixDetailsImpl
		 * @see org.flexwright.mixing.data.impl.MixingDataPackageImpl#getMixDetails()
		 * @generated
		 */
		EClass MIX_DETAILS = eINSTANCE.getMixDetails();

		/**
		 * The meta object literal for the '<em><b>Planned Minutes</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MIX_DETAILS__PLANNED_MINUTES = eINSTANCE.getMixDetails_PlannedMinutes();

		/**
		 * The meta object literal for the '<em><b>Minutes</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MIX_DETAILS__MINUTES = eINSTANCE.getMixDetails_Minutes();

		/**
		 * The meta object literal for the '<em><b>Planned Order</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MIX_DETAILS__PLANNED_ORDER = eINSTANCE.getMixDetails_PlannedOrder();

		/**
		 * The meta object literal for the '<em><b>Order</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MIX_DETAILS__ORDER = eINSTANCE.getMixDetails_Order();

		/**
		 * The meta object literal for the '<em><b>Tool</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MIX_DETAILS__TOOL = eINSTANCE.getMixDetails_Tool();

		/**
		 * The meta object literal for the '<em><b>Scraped</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MIX_DETAILS__SCRAPED = eINSTANCE.getMixDetails_Scraped();

		/**
		 * The meta object literal for the '<em><b>Working Time</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MIX_DETAILS__WORKING_TIME = eINSTANCE.getMixDetails_WorkingTime();

		/**
		 * The meta object literal for the '<em><b>Working Time Rule</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MIX_DETAILS__WORKING_TIME_RULE = eINSTANCE.getMixDetails_WorkingTimeRule();

		/**
		 * The meta object literal for the '<em><b>Working Time Mass</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MIX_DETAILS__WORKING_TIME_MASS = eINSTANCE.getMixDetails_WorkingTimeMass();

		/**
		 * The meta object literal for the '<em><b>Working Time C</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MIX_DETAILS__WORKING_TIME_C = eINSTANCE.getMixDetails_WorkingTimeC();

		/**
		 * The meta object literal for the '<em><b>Working Time Growth</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MIX_DETAILS__WORKING_TIME_GROWTH = eINSTANCE.getMixDetails_WorkingTimeGrowth();

		/**
		 * The meta object literal for the '<em><b>Working Time Energy</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MIX_DETAILS__WORKING_TIME_ENERGY = eINSTANCE.getMixDetails_WorkingTimeEnergy();

		/**
		 * The meta object literal for the '{@link org.flexwright.mixing.data.impl.DegasDetailsImpl <em>Degas Details</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.mixing.data.impl.DegasDetailsImpl
		 * @see org.flexwright.mixing.data.impl.MixingDataPackageImpl#getDegasDetails()
		 * @generated
		 */
		EClass DEGAS_DETAILS = eINSTANCE.getDegasDetails();

		/**
		 * The meta object literal for the '<em><b>Planned Minutes</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DEGAS_DETAILS__PLANNED_MINUTES = eINSTANCE.getDegasDetails_PlannedMinutes();

		/**
		 * The meta object literal for the '<em><b>Minutes</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DEGAS_DETAILS__MINUTES = eINSTANCE.getDegasDetails_Minutes();

		/**
		 * The meta object literal for the '<em><b>Planned Pressure</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DEGAS_DETAILS__PLANNED_PRESSURE = eINSTANCE.getDegasDetails_PlannedPressure();

		/**
		 * The meta object literal for the '<em><b>Pressure</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DEGAS_DETAILS__PRESSURE = eINSTANCE.getDegasDetails_Pressure();

		/**
		 * The meta object literal for the '<em><b>Cup Volume</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DEGAS_DETAILS__CUP_VOLUME = eINSTANCE.getDegasDetails_CupVolume();

		/**
		 * The meta object literal for the '<em><b>Mix Volume</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DEGAS_DETAILS__MIX_VOLUME = eINSTANCE.getDegasDetails_MixVolume();

		/**
		 * The meta object literal for the '{@link org.flexwright.mixing.data.Basis <em>Basis</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.mixing.data.Basis
		 * @see org.flexwright.mixing.data.impl.MixingDataPackageImpl#getBasis()
		 * @generated
		 */
		EEnum BASIS = eINSTANCE.getBasis();

		/**
		 * The meta object literal for the '{@link org.flexwright.mixing.data.Extra <em>Extra</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.mixing.data.Extra
		 * @see org.flexwright.mixing.data.impl.MixingDataPackageImpl#getExtra()
		 * @generated
		 */
		EEnum EXTRA = eINSTANCE.getExtra();

		/**
		 * The meta object literal for the '{@link org.flexwright.mixing.data.FillerBasis <em>Filler Basis</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.mixing.data.FillerBasis
		 * @see org.flexwright.mixing.data.impl.MixingDataPackageImpl#getFillerBasis()
		 * @generated
		 */
		EEnum FILLER_BASIS = eINSTANCE.getFillerBasis();

		/**
		 * The meta object literal for the '{@link org.flexwright.mixing.data.WorkingTimeRule <em>Working Time Rule</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.mixing.data.WorkingTimeRule
		 * @see org.flexwright.mixing.data.impl.MixingDataPackageImpl#getWorkingTimeRule()
		 * @generated
		 */
		EEnum WORKING_TIME_RULE = eINSTANCE.getWorkingTimeRule();

	}

} //MixingDataPackage
