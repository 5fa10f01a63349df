/**
 */
package org.flexwright.filament.data;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
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
 * @see org.flexwright.filament.data.FilamentDataFactory
 * @model kind="package"
 * @generated
 */
public interface FilamentDataPackage extends EPackage {
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
	String eNS_URI = "urn:flexwright:filament:1";

	/**
	 * The package namespace name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_PREFIX = "filament";

	/**
	 * The singleton instance of the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	FilamentDataPackage eINSTANCE = org.flexwright.filament.data.impl.FilamentDataPackageImpl.init();

	/**
	 * The meta object id for the '{@link org.flexwright.filament.data.impl.DryingImpl <em>Drying</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.filament.data.impl.DryingImpl
	 * @see org.flexwright.filament.data.impl.FilamentDataPackageImpl#getDrying()
	 * @generated
	 */
	int DRYING = 0;

	/**
	 * The feature id for the '<em><b>Planned Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DRYING__PLANNED_TEMPERATURE = 0;

	/**
	 * The feature id for the '<em><b>Actual Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DRYING__ACTUAL_TEMPERATURE = 1;

	/**
	 * The feature id for the '<em><b>Planned Hours</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DRYING__PLANNED_HOURS = 2;

	/**
	 * The feature id for the '<em><b>Actual Hours</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DRYING__ACTUAL_HOURS = 3;

	/**
	 * The feature id for the '<em><b>Softening</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DRYING__SOFTENING = 4;

	/**
	 * The feature id for the '<em><b>Diffusivity</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DRYING__DIFFUSIVITY = 5;

	/**
	 * The feature id for the '<em><b>Activation Energy</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DRYING__ACTIVATION_ENERGY = 6;

	/**
	 * The feature id for the '<em><b>Diffusion Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DRYING__DIFFUSION_SOURCE = 7;

	/**
	 * The number of structural features of the '<em>Drying</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DRYING_FEATURE_COUNT = 8;

	/**
	 * The number of operations of the '<em>Drying</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DRYING_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.flexwright.filament.data.impl.PrintingImpl <em>Printing</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.filament.data.impl.PrintingImpl
	 * @see org.flexwright.filament.data.impl.FilamentDataPackageImpl#getPrinting()
	 * @generated
	 */
	int PRINTING = 1;

	/**
	 * The feature id for the '<em><b>Planned Speed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINTING__PLANNED_SPEED = 0;

	/**
	 * The feature id for the '<em><b>Actual Speed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINTING__ACTUAL_SPEED = 1;

	/**
	 * The feature id for the '<em><b>Nozzle Diameter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINTING__NOZZLE_DIAMETER = 2;

	/**
	 * The feature id for the '<em><b>Nozzle Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINTING__NOZZLE_LENGTH = 3;

	/**
	 * The feature id for the '<em><b>Layer Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINTING__LAYER_HEIGHT = 4;

	/**
	 * The feature id for the '<em><b>Line Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINTING__LINE_WIDTH = 5;

	/**
	 * The feature id for the '<em><b>Planned Nozzle Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINTING__PLANNED_NOZZLE_TEMPERATURE = 6;

	/**
	 * The feature id for the '<em><b>Actual Nozzle Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINTING__ACTUAL_NOZZLE_TEMPERATURE = 7;

	/**
	 * The feature id for the '<em><b>Strand Diameter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINTING__STRAND_DIAMETER = 8;

	/**
	 * The feature id for the '<em><b>Free Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINTING__FREE_LENGTH = 9;

	/**
	 * The feature id for the '<em><b>Strand Modulus</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINTING__STRAND_MODULUS = 10;

	/**
	 * The feature id for the '<em><b>Consistency</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINTING__CONSISTENCY = 11;

	/**
	 * The feature id for the '<em><b>Flow Index</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINTING__FLOW_INDEX = 12;

	/**
	 * The feature id for the '<em><b>Push Force</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINTING__PUSH_FORCE = 13;

	/**
	 * The feature id for the '<em><b>Hours Out</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINTING__HOURS_OUT = 14;

	/**
	 * The feature id for the '<em><b>Planned Mass</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINTING__PLANNED_MASS = 15;

	/**
	 * The feature id for the '<em><b>Actual Mass</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINTING__ACTUAL_MASS = 16;

	/**
	 * The number of structural features of the '<em>Printing</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINTING_FEATURE_COUNT = 17;

	/**
	 * The number of operations of the '<em>Printing</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINTING_OPERATION_COUNT = 0;


	/**
	 * Returns the meta object for class '{@link org.flexwright.filament.data.Drying <em>Drying</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Drying</em>'.
	 * @see org.flexwright.filament.data.Drying
	 * @generated
	 */
	EClass getDrying();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.filament.data.Drying#getPlannedTemperature <em>Planned Temperature</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Planned Temperature</em>'.
	 * @see org.flexwright.filament.data.Drying#getPlannedTemperature()
	 * @see #getDrying()
	 * @generated
	 */
	EAttribute getDrying_PlannedTemperature();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.filament.data.Drying#getActualTemperature <em>Actual Temperature</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Actual Temperature</em>'.
	 * @see org.flexwright.filament.data.Drying#getActualTemperature()
	 * @see #getDrying()
	 * @generated
	 */
	EAttribute getDrying_ActualTemperature();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.filament.data.Drying#getPlannedHours <em>Planned Hours</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Planned Hours</em>'.
	 * @see org.flexwright.filament.data.Drying#getPlannedHours()
	 * @see #getDrying()
	 * @generated
	 */
	EAttribute getDrying_PlannedHours();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.filament.data.Drying#getActualHours <em>Actual Hours</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Actual Hours</em>'.
	 * @see org.flexwright.filament.data.Drying#getActualHours()
	 * @see #getDrying()
	 * @generated
	 */
	EAttribute getDrying_ActualHours();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.filament.data.Drying#getSoftening <em>Softening</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Softening</em>'.
	 * @see org.flexwright.filament.data.Drying#getSoftening()
	 * @see #getDrying()
	 * @generated
	 */
	EAttribute getDrying_Softening();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.filament.data.Drying#getDiffusivity <em>Diffusivity</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Diffusivity</em>'.
	 * @see org.flexwright.filament.data.Drying#getDiffusivity()
	 * @see #getDrying()
	 * @generated
	 */
	EAttribute getDrying_Diffusivity();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.filament.data.Drying#getActivationEnergy <em>Activation Energy</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Activation Energy</em>'.
	 * @see org.flexwright.filament.data.Drying#getActivationEnergy()
	 * @see #getDrying()
	 * @generated
	 */
	EAttribute getDrying_ActivationEnergy();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.filament.data.Drying#getDiffusionSource <em>Diffusion Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Diffusion Source</em>'.
	 * @see org.flexwright.filament.data.Drying#getDiffusionSource()
	 * @see #getDrying()
	 * @generated
	 */
	EAttribute getDrying_DiffusionSource();

	/**
	 * Returns the meta object for class '{@link org.flexwright.filament.data.Printing <em>Printing</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Printing</em>'.
	 * @see org.flexwright.filament.data.Printing
	 * @generated
	 */
	EClass getPrinting();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.filament.data.Printing#getPlannedSpeed <em>Planned Speed</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Planned Speed</em>'.
	 * @see org.flexwright.filament.data.Printing#getPlannedSpeed()
	 * @see #getPrinting()
	 * @generated
	 */
	EAttribute getPrinting_PlannedSpeed();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.filament.data.Printing#getActualSpeed <em>Actual Speed</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Actual Speed</em>'.
	 * @see org.flexwright.filament.data.Printing#getActualSpeed()
	 * @see #getPrinting()
	 * @generated
	 */
	EAttribute getPrinting_ActualSpeed();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.filament.data.Printing#getNozzleDiameter <em>Nozzle Diameter</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Nozzle Diameter</em>'.
	 * @see org.flexwright.filament.data.Printing#getNozzleDiameter()
	 * @see #getPrinting()
	 * @generated
	 */
	EAttribute getPrinting_NozzleDiameter();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.filament.data.Printing#getNozzleLength <em>Nozzle Length</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Nozzle Length</em>'.
	 * @see org.flexwright.filament.data.Printing#getNozzleLength()
	 * @see #getPrinting()
	 * @generated
	 */
	EAttribute getPrinting_NozzleLength();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.filament.data.Printing#getLayerHeight <em>Layer Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Layer Height</em>'.
	 * @see org.flexwright.filament.data.Printing#getLayerHeight()
	 * @see #getPrinting()
	 * @generated
	 */
	EAttribute getPrinting_LayerHeight();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.filament.data.Printing#getLineWidth <em>Line Width</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Line Width</em>'.
	 * @see org.flexwright.filament.data.Printing#getLineWidth()
	 * @see #getPrinting()
	 * @generated
	 */
	EAttribute getPrinting_LineWidth();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.filament.data.Printing#getPlannedNozzleTemperature <em>Planned Nozzle Temperature</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Planned Nozzle Temperature</em>'.
	 * @see org.flexwright.filament.data.Printing#getPlannedNozzleTemperature()
	 * @see #getPrinting()
	 * @generated
	 */
	EAttribute getPrinting_PlannedNozzleTemperature();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.filament.data.Printing#getActualNozzleTemperature <em>Actual Nozzle Temperature</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Actual Nozzle Temperature</em>'.
	 * @see org.flexwright.filament.data.Printing#getActualNozzleTemperature()
	 * @see #getPrinting()
	 * @generated
	 */
	EAttribute getPrinting_ActualNozzleTemperature();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.filament.data.Printing#getStrandDiameter <em>Strand Diameter</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Strand Diameter</em>'.
	 * @see org.flexwright.filament.data.Printing#getStrandDiameter()
	 * @see #getPrinting()
	 * @generated
	 */
	EAttribute getPrinting_StrandDiameter();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.filament.data.Printing#getFreeLength <em>Free Length</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Free Length</em>'.
	 * @see org.flexwright.filament.data.Printing#getFreeLength()
	 * @see #getPrinting()
	 * @generated
	 */
	EAttribute getPrinting_FreeLength();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.filament.data.Printing#getStrandModulus <em>Strand Modulus</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Strand Modulus</em>'.
	 * @see org.flexwright.filament.data.Printing#getStrandModulus()
	 * @see #getPrinting()
	 * @generated
	 */
	EAttribute getPrinting_StrandModulus();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.filament.data.Printing#getConsistency <em>Consistency</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Consistency</em>'.
	 * @see org.flexwright.filament.data.Printing#getConsistency()
	 * @see #getPrinting()
	 * @generated
	 */
	EAttribute getPrinting_Consistency();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.filament.data.Printing#getFlowIndex <em>Flow Index</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Flow Index</em>'.
	 * @see org.flexwright.filament.data.Printing#getFlowIndex()
	 * @see #getPrinting()
	 * @generated
	 */
	EAttribute getPrinting_FlowIndex();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.filament.data.Printing#getPushForce <em>Push Force</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Push Force</em>'.
	 * @see org.flexwright.filament.data.Printing#getPushForce()
	 * @see #getPrinting()
	 * @generated
	 */
	EAttribute getPrinting_PushForce();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.filament.data.Printing#getHoursOut <em>Hours Out</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Hours Out</em>'.
	 * @see org.flexwright.filament.data.Printing#getHoursOut()
	 * @see #getPrinting()
	 * @generated
	 */
	EAttribute getPrinting_HoursOut();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.filament.data.Printing#getPlannedMass <em>Planned Mass</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Planned Mass</em>'.
	 * @see org.flexwright.filament.data.Printing#getPlannedMass()
	 * @see #getPrinting()
	 * @generated
	 */
	EAttribute getPrinting_PlannedMass();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.filament.data.Printing#getActualMass <em>Actual Mass</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Actual Mass</em>'.
	 * @see org.flexwright.filament.data.Printing#getActualMass()
	 * @see #getPrinting()
	 * @generated
	 */
	EAttribute getPrinting_ActualMass();

	/**
	 * Returns the factory that creates the instances of the model.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the factory that creates the instances of the model.
	 * @generated
	 */
	FilamentDataFactory getFilamentDataFactory();

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
		 * The meta object literal for the '{@link org.flexwright.filament.data.impl.DryingImpl <em>Drying</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.filament.data.impl.DryingImpl
		 * @see org.flexwright.filament.data.impl.FilamentDataPackageImpl#getDrying()
		 * @generated
		 */
		EClass DRYING = eINSTANCE.getDrying();

		/**
		 * The meta object literal for the '<em><b>Planned Temperature</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DRYING__PLANNED_TEMPERATURE = eINSTANCE.getDrying_PlannedTemperature();

		/**
		 * The meta object literal for the '<em><b>Actual Temperature</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DRYING__ACTUAL_TEMPERATURE = eINSTANCE.getDrying_ActualTemperature();

		/**
		 * The meta object literal for the '<em><b>Planned Hours</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DRYING__PLANNED_HOURS = eINSTANCE.getDrying_PlannedHours();

		/**
		 * The meta object literal for the '<em><b>Actual Hours</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DRYING__ACTUAL_HOURS = eINSTANCE.getDrying_ActualHours();

		/**
		 * The meta object literal for the '<em><b>Softening</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DRYING__SOFTENING = eINSTANCE.getDrying_Softening();

		/**
		 * The meta object literal for the '<em><b>Diffusivity</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DRYING__DIFFUSIVITY = eINSTANCE.getDrying_Diffusivity();

		/**
		 * The meta object literal for the '<em><b>Activation Energy</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DRYING__ACTIVATION_ENERGY = eINSTANCE.getDrying_ActivationEnergy();

		/**
		 * The meta object literal for the '<em><b>Diffusion Source</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DRYING__DIFFUSION_SOURCE = eINSTANCE.getDrying_DiffusionSource();

		/**
		 * The meta object literal for the '{@link org.flexwright.filament.data.impl.PrintingImpl <em>Printing</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.filament.data.impl.PrintingImpl
		 * @see org.flexwright.filament.data.impl.FilamentDataPackageImpl#getPrinting()
		 * @generated
		 */
		EClass PRINTING = eINSTANCE.getPrinting();

		/**
		 * The meta object literal for the '<em><b>Planned Speed</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRINTING__PLANNED_SPEED = eINSTANCE.getPrinting_PlannedSpeed();

		/**
		 * The meta object literal for the '<em><b>Actual Speed</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRINTING__ACTUAL_SPEED = eINSTANCE.getPrinting_ActualSpeed();

		/**
		 * The meta object literal for the '<em><b>Nozzle Diameter</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRINTING__NOZZLE_DIAMETER = eINSTANCE.getPrinting_NozzleDiameter();

		/**
		 * The meta object literal for the '<em><b>Nozzle Length</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRINTING__NOZZLE_LENGTH = eINSTANCE.getPrinting_NozzleLength();

		/**
		 * The meta object literal for the '<em><b>Layer Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRINTING__LAYER_HEIGHT = eINSTANCE.getPrinting_LayerHeight();

		/**
		 * The meta object literal for the '<em><b>Line Width</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRINTING__LINE_WIDTH = eINSTANCE.getPrinting_LineWidth();

		/**
		 * The meta object literal for the '<em><b>Planned Nozzle Temperature</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRINTING__PLANNED_NOZZLE_TEMPERATURE = eINSTANCE.getPrinting_PlannedNozzleTemperature();

		/**
		 * The meta object literal for the '<em><b>Actual Nozzle Temperature</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRINTING__ACTUAL_NOZZLE_TEMPERATURE = eINSTANCE.getPrinting_ActualNozzleTemperature();

		/**
		 * The meta object literal for the '<em><b>Strand Diameter</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRINTING__STRAND_DIAMETER = eINSTANCE.getPrinting_StrandDiameter();

		/**
		 * The meta object literal for the '<em><b>Free Length</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRINTING__FREE_LENGTH = eINSTANCE.getPrinting_FreeLength();

		/**
		 * The meta object literal for the '<em><b>Strand Modulus</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRINTING__STRAND_MODULUS = eINSTANCE.getPrinting_StrandModulus();

		/**
		 * The meta object literal for the '<em><b>Consistency</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRINTING__CONSISTENCY = eINSTANCE.getPrinting_Consistency();

		/**
		 * The meta object literal for the '<em><b>Flow Index</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRINTING__FLOW_INDEX = eINSTANCE.getPrinting_FlowIndex();

		/**
		 * The meta object literal for the '<em><b>Push Force</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRINTING__PUSH_FORCE = eINSTANCE.getPrinting_PushForce();

		/**
		 * The meta object literal for the '<em><b>Hours Out</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRINTING__HOURS_OUT = eINSTANCE.getPrinting_HoursOut();

		/**
		 * The meta object literal for the '<em><b>Planned Mass</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRINTING__PLANNED_MASS = eINSTANCE.getPrinting_PlannedMass();

		/**
		 * The meta object literal for the '<em><b>Actual Mass</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRINTING__ACTUAL_MASS = eINSTANCE.getPrinting_ActualMass();

	}

} //FilamentDataPackage
