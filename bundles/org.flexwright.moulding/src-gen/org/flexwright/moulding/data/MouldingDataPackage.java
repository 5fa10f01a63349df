/**
 */
package org.flexwright.moulding.data;

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
 * @see org.flexwright.moulding.data.MouldingDataFactory
 * @model kind="package"
 * @generated
 */
public interface MouldingDataPackage extends EPackage {
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
	String eNS_URI = "urn:flexwright:moulding:1";

	/**
	 * The package namespace name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_PREFIX = "moulding";

	/**
	 * The singleton instance of the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	MouldingDataPackage eINSTANCE = org.flexwright.moulding.data.impl.MouldingDataPackageImpl.init();

	/**
	 * The meta object id for the '{@link org.flexwright.moulding.data.impl.PreparationImpl <em>Preparation</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.moulding.data.impl.PreparationImpl
	 * @see org.flexwright.moulding.data.impl.MouldingDataPackageImpl#getPreparation()
	 * @generated
	 */
	int PREPARATION = 0;

	/**
	 * The feature id for the '<em><b>Mould Material</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PREPARATION__MOULD_MATERIAL = 0;

	/**
	 * The feature id for the '<em><b>Planned Treatment</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PREPARATION__PLANNED_TREATMENT = 1;

	/**
	 * The feature id for the '<em><b>Actual Treatment</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PREPARATION__ACTUAL_TREATMENT = 2;

	/**
	 * The feature id for the '<em><b>Planned Dry Hours</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PREPARATION__PLANNED_DRY_HOURS = 3;

	/**
	 * The feature id for the '<em><b>Actual Dry Hours</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PREPARATION__ACTUAL_DRY_HOURS = 4;

	/**
	 * The feature id for the '<em><b>Planned Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PREPARATION__PLANNED_TEMPERATURE = 5;

	/**
	 * The feature id for the '<em><b>Actual Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PREPARATION__ACTUAL_TEMPERATURE = 6;

	/**
	 * The feature id for the '<em><b>Release</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PREPARATION__RELEASE = 7;

	/**
	 * The feature id for the '<em><b>Casts So Far</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PREPARATION__CASTS_SO_FAR = 8;

	/**
	 * The feature id for the '<em><b>Casts Limit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PREPARATION__CASTS_LIMIT = 9;

	/**
	 * The number of structural features of the '<em>Preparation</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PREPARATION_FEATURE_COUNT = 10;

	/**
	 * The number of operations of the '<em>Preparation</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PREPARATION_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.flexwright.moulding.data.impl.FillingImpl <em>Filling</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.moulding.data.impl.FillingImpl
	 * @see org.flexwright.moulding.data.impl.MouldingDataPackageImpl#getFilling()
	 * @generated
	 */
	int FILLING = 1;

	/**
	 * The feature id for the '<em><b>Method</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FILLING__METHOD = 0;

	/**
	 * The feature id for the '<em><b>Planned Fill Minutes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FILLING__PLANNED_FILL_MINUTES = 1;

	/**
	 * The feature id for the '<em><b>Actual Fill Minutes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FILLING__ACTUAL_FILL_MINUTES = 2;

	/**
	 * The feature id for the '<em><b>Working Minutes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FILLING__WORKING_MINUTES = 3;

	/**
	 * The feature id for the '<em><b>Working Definition</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FILLING__WORKING_DEFINITION = 4;

	/**
	 * The feature id for the '<em><b>Working Growth</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FILLING__WORKING_GROWTH = 5;

	/**
	 * The feature id for the '<em><b>Viscosity</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FILLING__VISCOSITY = 6;

	/**
	 * The feature id for the '<em><b>Gate Radius</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FILLING__GATE_RADIUS = 7;

	/**
	 * The feature id for the '<em><b>Gate Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FILLING__GATE_LENGTH = 8;

	/**
	 * The feature id for the '<em><b>Planned Pressure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FILLING__PLANNED_PRESSURE = 9;

	/**
	 * The feature id for the '<em><b>Actual Pressure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FILLING__ACTUAL_PRESSURE = 10;

	/**
	 * The feature id for the '<em><b>Part Volume</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FILLING__PART_VOLUME = 11;

	/**
	 * The number of structural features of the '<em>Filling</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FILLING_FEATURE_COUNT = 12;

	/**
	 * The number of operations of the '<em>Filling</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FILLING_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.flexwright.moulding.data.MouldMaterial <em>Mould Material</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.moulding.data.MouldMaterial
	 * @see org.flexwright.moulding.data.impl.MouldingDataPackageImpl#getMouldMaterial()
	 * @generated
	 */
	int MOULD_MATERIAL = 2;

	/**
	 * The meta object id for the '{@link org.flexwright.moulding.data.MouldTreatment <em>Mould Treatment</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.moulding.data.MouldTreatment
	 * @see org.flexwright.moulding.data.impl.MouldingDataPackageImpl#getMouldTreatment()
	 * @generated
	 */
	int MOULD_TREATMENT = 3;

	/**
	 * The meta object id for the '{@link org.flexwright.moulding.data.FillMethod <em>Fill Method</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.moulding.data.FillMethod
	 * @see org.flexwright.moulding.data.impl.MouldingDataPackageImpl#getFillMethod()
	 * @generated
	 */
	int FILL_METHOD = 4;


	/**
	 * Returns the meta object for class '{@link org.flexwright.moulding.data.Preparation <em>Preparation</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Preparation</em>'.
	 * @see org.flexwright.moulding.data.Preparation
	 * @generated
	 */
	EClass getPreparation();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.moulding.data.Preparation#getMouldMaterial <em>Mould Material</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Mould Material</em>'.
	 * @see org.flexwright.moulding.data.Preparation#getMouldMaterial()
	 * @see #getPreparation()
	 * @generated
	 */
	EAttribute getPreparation_MouldMaterial();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.moulding.data.Preparation#getPlannedTreatment <em>Planned Treatment</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Planned Treatment</em>'.
	 * @see org.flexwright.moulding.data.Preparation#getPlannedTreatment()
	 * @see #getPreparation()
	 * @generated
	 */
	EAttribute getPreparation_PlannedTreatment();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.moulding.data.Preparation#getActualTreatment <em>Actual Treatment</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Actual Treatment</em>'.
	 * @see org.flexwright.moulding.data.Preparation#getActualTreatment()
	 * @see #getPreparation()
	 * @generated
	 */
	EAttribute getPreparation_ActualTreatment();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.moulding.data.Preparation#getPlannedDryHours <em>Planned Dry Hours</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Planned Dry Hours</em>'.
	 * @see org.flexwright.moulding.data.Preparation#getPlannedDryHours()
	 * @see #getPreparation()
	 * @generated
	 */
	EAttribute getPreparation_PlannedDryHours();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.moulding.data.Preparation#getActualDryHours <em>Actual Dry Hours</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Actual Dry Hours</em>'.
	 * @see org.flexwright.moulding.data.Preparation#getActualDryHours()
	 * @see #getPreparation()
	 * @generated
	 */
	EAttribute getPreparation_ActualDryHours();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.moulding.data.Preparation#getPlannedTemperature <em>Planned Temperature</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Planned Temperature</em>'.
	 * @see org.flexwright.moulding.data.Preparation#getPlannedTemperature()
	 * @see #getPreparation()
	 * @generated
	 */
	EAttribute getPreparation_PlannedTemperature();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.moulding.data.Preparation#getActualTemperature <em>Actual Temperature</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Actual Temperature</em>'.
	 * @see org.flexwright.moulding.data.Preparation#getActualTemperature()
	 * @see #getPreparation()
	 * @generated
	 */
	EAttribute getPreparation_ActualTemperature();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.moulding.data.Preparation#getRelease <em>Release</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Release</em>'.
	 * @see org.flexwright.moulding.data.Preparation#getRelease()
	 * @see #getPreparation()
	 * @generated
	 */
	EAttribute getPreparation_Release();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.moulding.data.Preparation#getCastsSoFar <em>Casts So Far</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Casts So Far</em>'.
	 * @see org.flexwright.moulding.data.Preparation#getCastsSoFar()
	 * @see #getPreparation()
	 * @generated
	 */
	EAttribute getPreparation_CastsSoFar();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.moulding.data.Preparation#getCastsLimit <em>Casts Limit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Casts Limit</em>'.
	 * @see org.flexwright.moulding.data.Preparation#getCastsLimit()
	 * @see #getPreparation()
	 * @generated
	 */
	EAttribute getPreparation_CastsLimit();

	/**
	 * Returns the meta object for class '{@link org.flexwright.moulding.data.Filling <em>Filling</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Filling</em>'.
	 * @see org.flexwright.moulding.data.Filling
	 * @generated
	 */
	EClass getFilling();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.moulding.data.Filling#getMethod <em>Method</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Method</em>'.
	 * @see org.flexwright.moulding.data.Filling#getMethod()
	 * @see #getFilling()
	 * @generated
	 */
	EAttribute getFilling_Method();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.moulding.data.Filling#getPlannedFillMinutes <em>Planned Fill Minutes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Planned Fill Minutes</em>'.
	 * @see org.flexwright.moulding.data.Filling#getPlannedFillMinutes()
	 * @see #getFilling()
	 * @generated
	 */
	EAttribute getFilling_PlannedFillMinutes();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.moulding.data.Filling#getActualFillMinutes <em>Actual Fill Minutes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Actual Fill Minutes</em>'.
	 * @see org.flexwright.moulding.data.Filling#getActualFillMinutes()
	 * @see #getFilling()
	 * @generated
	 */
	EAttribute getFilling_ActualFillMinutes();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.moulding.data.Filling#getWorkingMinutes <em>Working Minutes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Working Minutes</em>'.
	 * @see org.flexwright.moulding.data.Filling#getWorkingMinutes()
	 * @see #getFilling()
	 * @generated
	 */
	EAttribute getFilling_WorkingMinutes();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.moulding.data.Filling#getWorkingDefinition <em>Working Definition</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Working Definition</em>'.
	 * @see org.flexwright.moulding.data.Filling#getWorkingDefinition()
	 * @see #getFilling()
	 * @generated
	 */
	EAttribute getFilling_WorkingDefinition();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.moulding.data.Filling#getWorkingGrowth <em>Working Growth</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Working Growth</em>'.
	 * @see org.flexwright.moulding.data.Filling#getWorkingGrowth()
	 * @see #getFilling()
	 * @generated
	 */
	EAttribute getFilling_WorkingGrowth();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.moulding.data.Filling#getViscosity <em>Viscosity</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Viscosity</em>'.
	 * @see org.flexwright.moulding.data.Filling#getViscosity()
	 * @see #getFilling()
	 * @generated
	 */
	EAttribute getFilling_Viscosity();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.moulding.data.Filling#getGateRadius <em>Gate Radius</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Gate Radius</em>'.
	 * @see org.flexwright.moulding.data.Filling#getGateRadius()
	 * @see #getFilling()
	 * @generated
	 */
	EAttribute getFilling_GateRadius();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.moulding.data.Filling#getGateLength <em>Gate Length</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Gate Length</em>'.
	 * @see org.flexwright.moulding.data.Filling#getGateLength()
	 * @see #getFilling()
	 * @generated
	 */
	EAttribute getFilling_GateLength();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.moulding.data.Filling#getPlannedPressure <em>Planned Pressure</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Planned Pressure</em>'.
	 * @see org.flexwright.moulding.data.Filling#getPlannedPressure()
	 * @see #getFilling()
	 * @generated
	 */
	EAttribute getFilling_PlannedPressure();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.moulding.data.Filling#getActualPressure <em>Actual Pressure</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Actual Pressure</em>'.
	 * @see org.flexwright.moulding.data.Filling#getActualPressure()
	 * @see #getFilling()
	 * @generated
	 */
	EAttribute getFilling_ActualPressure();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.moulding.data.Filling#getPartVolume <em>Part Volume</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Part Volume</em>'.
	 * @see org.flexwright.moulding.data.Filling#getPartVolume()
	 * @see #getFilling()
	 * @generated
	 */
	EAttribute getFilling_PartVolume();

	/**
	 * Returns the meta object for enum '{@link org.flexwright.moulding.data.MouldMaterial <em>Mould Material</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Mould Material</em>'.
	 * @see org.flexwright.moulding.data.MouldMaterial
	 * @generated
	 */
	EEnum getMouldMaterial();

	/**
	 * Returns the meta object for enum '{@link org.flexwright.moulding.data.MouldTreatment <em>Mould Treatment</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Mould Treatment</em>'.
	 * @see org.flexwright.moulding.data.MouldTreatment
	 * @generated
	 */
	EEnum getMouldTreatment();

	/**
	 * Returns the meta object for enum '{@link org.flexwright.moulding.data.FillMethod <em>Fill Method</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Fill Method</em>'.
	 * @see org.flexwright.moulding.data.FillMethod
	 * @generated
	 */
	EEnum getFillMethod();

	/**
	 * Returns the factory that creates the instances of the model.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the factory that creates the instances of the model.
	 * @generated
	 */
	MouldingDataFactory getMouldingDataFactory();

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
		 * The meta object literal for the '{@link org.flexwright.moulding.data.impl.PreparationImpl <em>Preparation</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.moulding.data.impl.PreparationImpl
		 * @see org.flexwright.moulding.data.impl.MouldingDataPackageImpl#getPreparation()
		 * @generated
		 */
		EClass PREPARATION = eINSTANCE.getPreparation();

		/**
		 * The meta object literal for the '<em><b>Mould Material</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PREPARATION__MOULD_MATERIAL = eINSTANCE.getPreparation_MouldMaterial();

		/**
		 * The meta object literal for the '<em><b>Planned Treatment</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PREPARATION__PLANNED_TREATMENT = eINSTANCE.getPreparation_PlannedTreatment();

		/**
		 * The meta object literal for the '<em><b>Actual Treatment</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PREPARATION__ACTUAL_TREATMENT = eINSTANCE.getPreparation_ActualTreatment();

		/**
		 * The meta object literal for the '<em><b>Planned Dry Hours</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PREPARATION__PLANNED_DRY_HOURS = eINSTANCE.getPreparation_PlannedDryHours();

		/**
		 * The meta object literal for the '<em><b>Actual Dry Hours</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PREPARATION__ACTUAL_DRY_HOURS = eINSTANCE.getPreparation_ActualDryHours();

		/**
		 * The meta object literal for the '<em><b>Planned Temperature</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PREPARATION__PLANNED_TEMPERATURE = eINSTANCE.getPreparation_PlannedTemperature();

		/**
		 * The meta object literal for the '<em><b>Actual Temperature</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PREPARATION__ACTUAL_TEMPERATURE = eINSTANCE.getPreparation_ActualTemperature();

		/**
		 * The meta object literal for the '<em><b>Release</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PREPARATION__RELEASE = eINSTANCE.getPreparation_Release();

		/**
		 * The meta object literal for the '<em><b>Casts So Far</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PREPARATION__CASTS_SO_FAR = eINSTANCE.getPreparation_CastsSoFar();

		/**
		 * The meta object literal for the '<em><b>Casts Limit</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PREPARATION__CASTS_LIMIT = eINSTANCE.getPreparation_CastsLimit();

		/**
		 * The meta object literal for the '{@link org.flexwright.moulding.data.impl.FillingImpl <em>Filling</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.moulding.data.impl.FillingImpl
		 * @see org.flexwright.moulding.data.impl.MouldingDataPackageImpl#getFilling()
		 * @generated
		 */
		EClass FILLING = eINSTANCE.getFilling();

		/**
		 * The meta object literal for the '<em><b>Method</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FILLING__METHOD = eINSTANCE.getFilling_Method();

		/**
		 * The meta object literal for the '<em><b>Planned Fill Minutes</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FILLING__PLANNED_FILL_MINUTES = eINSTANCE.getFilling_PlannedFillMinutes();

		/**
		 * The meta object literal for the '<em><b>Actual Fill Minutes</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FILLING__ACTUAL_FILL_MINUTES = eINSTANCE.getFilling_ActualFillMinutes();

		/**
		 * The meta object literal for the '<em><b>Working Minutes</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FILLING__WORKING_MINUTES = eINSTANCE.getFilling_WorkingMinutes();

		/**
		 * The meta object literal for the '<em><b>Working Definition</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FILLING__WORKING_DEFINITION = eINSTANCE.getFilling_WorkingDefinition();

		/**
		 * The meta object literal for the '<em><b>Working Growth</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FILLING__WORKING_GROWTH = eINSTANCE.getFilling_WorkingGrowth();

		/**
		 * The meta object literal for the '<em><b>Viscosity</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FILLING__VISCOSITY = eINSTANCE.getFilling_Viscosity();

		/**
		 * The meta object literal for the '<em><b>Gate Radius</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FILLING__GATE_RADIUS = eINSTANCE.getFilling_GateRadius();

		/**
		 * The meta object literal for the '<em><b>Gate Length</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FILLING__GATE_LENGTH = eINSTANCE.getFilling_GateLength();

		/**
		 * The meta object literal for the '<em><b>Planned Pressure</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FILLING__PLANNED_PRESSURE = eINSTANCE.getFilling_PlannedPressure();

		/**
		 * The meta object literal for the '<em><b>Actual Pressure</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FILLING__ACTUAL_PRESSURE = eINSTANCE.getFilling_ActualPressure();

		/**
		 * The meta object literal for the '<em><b>Part Volume</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FILLING__PART_VOLUME = eINSTANCE.getFilling_PartVolume();

		/**
		 * The meta object literal for the '{@link org.flexwright.moulding.data.MouldMaterial <em>Mould Material</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.moulding.data.MouldMaterial
		 * @see org.flexwright.moulding.data.impl.MouldingDataPackageImpl#getMouldMaterial()
		 * @generated
		 */
		EEnum MOULD_MATERIAL = eINSTANCE.getMouldMaterial();

		/**
		 * The meta object literal for the '{@link org.flexwright.moulding.data.MouldTreatment <em>Mould Treatment</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.moulding.data.MouldTreatment
		 * @see org.flexwright.moulding.data.impl.MouldingDataPackageImpl#getMouldTreatment()
		 * @generated
		 */
		EEnum MOULD_TREATMENT = eINSTANCE.getMouldTreatment();

		/**
		 * The meta object literal for the '{@link org.flexwright.moulding.data.FillMethod <em>Fill Method</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.moulding.data.FillMethod
		 * @see org.flexwright.moulding.data.impl.MouldingDataPackageImpl#getFillMethod()
		 * @generated
		 */
		EEnum FILL_METHOD = eINSTANCE.getFillMethod();

	}

} //MouldingDataPackage
