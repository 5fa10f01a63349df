/**
 */
package org.flexwright.curing.data;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EReference;

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
 * @see org.flexwright.curing.data.CuringDataFactory
 * @model kind="package"
 * @generated
 */
public interface CuringDataPackage extends EPackage {
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
	String eNS_URI = "urn:flexwright:curing:1";

	/**
	 * The package namespace name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_PREFIX = "curing";

	/**
	 * The singleton instance of the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	CuringDataPackage eINSTANCE = org.flexwright.curing.data.impl.CuringDataPackageImpl.init();

	/**
	 * The meta object id for the '{@link org.flexwright.curing.data.impl.CureStageImpl <em>Cure Stage</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.curing.data.impl.CureStageImpl
	 * @see org.flexwright.curing.data.impl.CuringDataPackageImpl#getCureStage()
	 * @generated
	 */
	int CURE_STAGE = 0;

	/**
	 * The feature id for the '<em><b>Minutes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CURE_STAGE__MINUTES = 0;

	/**
	 * The feature id for the '<em><b>Celsius</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CURE_STAGE__CELSIUS = 1;

	/**
	 * The feature id for the '<em><b>Ramp</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CURE_STAGE__RAMP = 2;

	/**
	 * The number of structural features of the '<em>Cure Stage</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CURE_STAGE_FEATURE_COUNT = 3;

	/**
	 * The number of operations of the '<em>Cure Stage</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CURE_STAGE_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.flexwright.curing.data.impl.CureDetailsImpl <em>Cure Details</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.curing.data.impl.CureDetailsImpl
	 * @see org.flexwright.curing.data.impl.CuringDataPackageImpl#getCureDetails()
	 * @generated
	 */
	int CURE_DETAILS = 1;

	/**
	 * The feature id for the '<em><b>By</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CURE_DETAILS__BY = 0;

	/**
	 * The feature id for the '<em><b>Planned Hours</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CURE_DETAILS__PLANNED_HOURS = 1;

	/**
	 * The feature id for the '<em><b>Hours</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CURE_DETAILS__HOURS = 2;

	/**
	 * The feature id for the '<em><b>Planned C</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CURE_DETAILS__PLANNED_C = 3;

	/**
	 * The feature id for the '<em><b>Celsius</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CURE_DETAILS__CELSIUS = 4;

	/**
	 * The feature id for the '<em><b>Planned Stages</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CURE_DETAILS__PLANNED_STAGES = 5;

	/**
	 * The feature id for the '<em><b>Stages</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CURE_DETAILS__STAGES = 6;

	/**
	 * The feature id for the '<em><b>Lamp</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CURE_DETAILS__LAMP = 7;

	/**
	 * The feature id for the '<em><b>Activation Energy</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CURE_DETAILS__ACTIVATION_ENERGY = 8;

	/**
	 * The number of structural features of the '<em>Cure Details</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CURE_DETAILS_FEATURE_COUNT = 9;

	/**
	 * The number of operations of the '<em>Cure Details</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CURE_DETAILS_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.flexwright.curing.data.impl.DemouldDetailsImpl <em>Demould Details</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.curing.data.impl.DemouldDetailsImpl
	 * @see org.flexwright.curing.data.impl.CuringDataPackageImpl#getDemouldDetails()
	 * @generated
	 */
	int DEMOULD_DETAILS = 2;

	/**
	 * The feature id for the '<em><b>Planned Age</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEMOULD_DETAILS__PLANNED_AGE = 0;

	/**
	 * The feature id for the '<em><b>Age</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEMOULD_DETAILS__AGE = 1;

	/**
	 * The feature id for the '<em><b>Mould C</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEMOULD_DETAILS__MOULD_C = 2;

	/**
	 * The feature id for the '<em><b>Leftover Firm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEMOULD_DETAILS__LEFTOVER_FIRM = 3;

	/**
	 * The feature id for the '<em><b>Torn</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEMOULD_DETAILS__TORN = 4;

	/**
	 * The number of structural features of the '<em>Demould Details</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEMOULD_DETAILS_FEATURE_COUNT = 5;

	/**
	 * The number of operations of the '<em>Demould Details</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEMOULD_DETAILS_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.flexwright.curing.data.CureBy <em>Cure By</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.flexwright.curing.data.CureBy
	 * @see org.flexwright.curing.data.impl.CuringDataPackageImpl#getCureBy()
	 * @generated
	 */
	int CURE_BY = 3;


	/**
	 * Returns the meta object for class '{@link org.flexwright.curing.data.CureStage <em>Cure Stage</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Cure Stage</em>'.
	 * @see org.flexwright.curing.data.CureStage
	 * @generated
	 */
	EClass getCureStage();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.curing.data.CureStage#getMinutes <em>Minutes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Minutes</em>'.
	 * @see org.flexwright.curing.data.CureStage#getMinutes()
	 * @see #getCureStage()
	 * @generated
	 */
	EAttribute getCureStage_Minutes();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.curing.data.CureStage#getCelsius <em>Celsius</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Celsius</em>'.
	 * @see org.flexwright.curing.data.CureStage#getCelsius()
	 * @see #getCureStage()
	 * @generated
	 */
	EAttribute getCureStage_Celsius();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.curing.data.CureStage#isRamp <em>Ramp</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Ramp</em>'.
	 * @see org.flexwright.curing.data.CureStage#isRamp()
	 * @see #getCureStage()
	 * @generated
	 */
	EAttribute getCureStage_Ramp();

	/**
	 * Returns the meta object for class '{@link org.flexwright.curing.data.CureDetails <em>Cure Details</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Cure Details</em>'.
	 * @see org.flexwright.curing.data.CureDetails
	 * @generated
	 */
	EClass getCureDetails();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.curing.data.CureDetails#getBy <em>By</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>By</em>'.
	 * @see org.flexwright.curing.data.CureDetails#getBy()
	 * @see #getCureDetails()
	 * @generated
	 */
	EAttribute getCureDetails_By();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.curing.data.CureDetails#getPlannedHours <em>Planned Hours</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Planned Hours</em>'.
	 * @see org.flexwright.curing.data.CureDetails#getPlannedHours()
	 * @see #getCureDetails()
	 * @generated
	 */
	EAttribute getCureDetails_PlannedHours();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.curing.data.CureDetails#getHours <em>Hours</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Hours</em>'.
	 * @see org.flexwright.curing.data.CureDetails#getHours()
	 * @see #getCureDetails()
	 * @generated
	 */
	EAttribute getCureDetails_Hours();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.curing.data.CureDetails#getPlannedC <em>Planned C</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Planned C</em>'.
	 * @see org.flexwright.curing.data.CureDetails#getPlannedC()
	 * @see #getCureDetails()
	 * @generated
	 */
	EAttribute getCureDetails_PlannedC();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.curing.data.CureDetails#getCelsius <em>Celsius</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Celsius</em>'.
	 * @see org.flexwright.curing.data.CureDetails#getCelsius()
	 * @see #getCureDetails()
	 * @generated
	 */
	EAttribute getCureDetails_Celsius();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.curing.data.CureDetails#getPlannedStages <em>Planned Stages</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Planned Stages</em>'.
	 * @see org.flexwright.curing.data.CureDetails#getPlannedStages()
	 * @see #getCureDetails()
	 * @generated
	 */
	EReference getCureDetails_PlannedStages();

	/**
	 * Returns the meta object for the containment reference list '{@link org.flexwright.curing.data.CureDetails#getStages <em>Stages</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Stages</em>'.
	 * @see org.flexwright.curing.data.CureDetails#getStages()
	 * @see #getCureDetails()
	 * @generated
	 */
	EReference getCureDetails_Stages();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.curing.data.CureDetails#getLamp <em>Lamp</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Lamp</em>'.
	 * @see org.flexwright.curing.data.CureDetails#getLamp()
	 * @see #getCureDetails()
	 * @generated
	 */
	EAttribute getCureDetails_Lamp();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.curing.data.CureDetails#getActivationEnergy <em>Activation Energy</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Activation Energy</em>'.
	 * @see org.flexwright.curing.data.CureDetails#getActivationEnergy()
	 * @see #getCureDetails()
	 * @generated
	 */
	EAttribute getCureDetails_ActivationEnergy();

	/**
	 * Returns the meta object for class '{@link org.flexwright.curing.data.DemouldDetails <em>Demould Details</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Demould Details</em>'.
	 * @see org.flexwright.curing.data.DemouldDetails
	 * @generated
	 */
	EClass getDemouldDetails();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.curing.data.DemouldDetails#getPlannedAge <em>Planned Age</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Planned Age</em>'.
	 * @see org.flexwright.curing.data.DemouldDetails#getPlannedAge()
	 * @see #getDemouldDetails()
	 * @generated
	 */
	EAttribute getDemouldDetails_PlannedAge();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.curing.data.DemouldDetails#getAge <em>Age</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Age</em>'.
	 * @see org.flexwright.curing.data.DemouldDetails#getAge()
	 * @see #getDemouldDetails()
	 * @generated
	 */
	EAttribute getDemouldDetails_Age();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.curing.data.DemouldDetails#getMouldC <em>Mould C</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Mould C</em>'.
	 * @see org.flexwright.curing.data.DemouldDetails#getMouldC()
	 * @see #getDemouldDetails()
	 * @generated
	 */
	EAttribute getDemouldDetails_MouldC();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.curing.data.DemouldDetails#getLeftoverFirm <em>Leftover Firm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Leftover Firm</em>'.
	 * @see org.flexwright.curing.data.DemouldDetails#getLeftoverFirm()
	 * @see #getDemouldDetails()
	 * @generated
	 */
	EAttribute getDemouldDetails_LeftoverFirm();

	/**
	 * Returns the meta object for the attribute '{@link org.flexwright.curing.data.DemouldDetails#getTorn <em>Torn</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Torn</em>'.
	 * @see org.flexwright.curing.data.DemouldDetails#getTorn()
	 * @see #getDemouldDetails()
	 * @generated
	 */
	EAttribute getDemouldDetails_Torn();

	/**
	 * Returns the meta object for enum '{@link org.flexwright.curing.data.CureBy <em>Cure By</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Cure By</em>'.
	 * @see org.flexwright.curing.data.CureBy
	 * @generated
	 */
	EEnum getCureBy();

	/**
	 * Returns the factory that creates the instances of the model.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the factory that creates the instances of the model.
	 * @generated
	 */
	CuringDataFactory getCuringDataFactory();

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
		 * The meta object literal for the '{@link org.flexwright.curing.data.impl.CureStageImpl <em>Cure Stage</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.curing.data.impl.CureStageImpl
		 * @see org.flexwright.curing.data.impl.CuringDataPackageImpl#getCureStage()
		 * @generated
		 */
		EClass CURE_STAGE = eINSTANCE.getCureStage();

		/**
		 * The meta object literal for the '<em><b>Minutes</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CURE_STAGE__MINUTES = eINSTANCE.getCureStage_Minutes();

		/**
		 * The meta object literal for the '<em><b>Celsius</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CURE_STAGE__CELSIUS = eINSTANCE.getCureStage_Celsius();

		/**
		 * The meta object literal for the '<em><b>Ramp</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CURE_STAGE__RAMP = eINSTANCE.getCureStage_Ramp();

		/**
		 * The meta object literal for the '{@link org.flexwright.curing.data.impl.CureDetailsImpl <em>Cure Details</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.curing.data.impl.CureDetailsImpl
		 * @see org.flexwright.curing.data.impl.CuringDataPackageImpl#getCureDetails()
		 * @generated
		 */
		EClass CURE_DETAILS = eINSTANCE.getCureDetails();

		/**
		 * The meta object literal for the '<em><b>By</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CURE_DETAILS__BY = eINSTANCE.getCureDetails_By();

		/**
		 * The meta object literal for the '<em><b>Planned Hours</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CURE_DETAILS__PLANNED_HOURS = eINSTANCE.getCureDetails_PlannedHours();

		/**
		 * The meta object literal for the '<em><b>Hours</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CURE_DETAILS__HOURS = eINSTANCE.getCureDetails_Hours();

		/**
		 * The meta object literal for the '<em><b>Planned C</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CURE_DETAILS__PLANNED_C = eINSTANCE.getCureDetails_PlannedC();

		/**
		 * The meta object literal for the '<em><b>Celsius</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CURE_DETAILS__CELSIUS = eINSTANCE.getCureDetails_Celsius();

		/**
		 * The meta object literal for the '<em><b>Planned Stages</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CURE_DETAILS__PLANNED_STAGES = eINSTANCE.getCureDetails_PlannedStages();

		/**
		 * The meta object literal for the '<em><b>Stages</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CURE_DETAILS__STAGES = eINSTANCE.getCureDetails_Stages();

		/**
		 * The meta object literal for the '<em><b>Lamp</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CURE_DETAILS__LAMP = eINSTANCE.getCureDetails_Lamp();

		/**
		 * The meta object literal for the '<em><b>Activation Energy</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CURE_DETAILS__ACTIVATION_ENERGY = eINSTANCE.getCureDetails_ActivationEnergy();

		/**
		 * The meta object literal for the '{@link org.flexwright.curing.data.impl.DemouldDetailsImpl <em>Demould Details</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.curing.data.impl.DemouldDetailsImpl
		 * @see org.flexwright.curing.data.impl.CuringDataPackageImpl#getDemouldDetails()
		 * @generated
		 */
		EClass DEMOULD_DETAILS = eINSTANCE.getDemouldDetails();

		/**
		 * The meta object literal for the '<em><b>Planned Age</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DEMOULD_DETAILS__PLANNED_AGE = eINSTANCE.getDemouldDetails_PlannedAge();

		/**
		 * The meta object literal for the '<em><b>Age</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DEMOULD_DETAILS__AGE = eINSTANCE.getDemouldDetails_Age();

		/**
		 * The meta object literal for the '<em><b>Mould C</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DEMOULD_DETAILS__MOULD_C = eINSTANCE.getDemouldDetails_MouldC();

		/**
		 * The meta object literal for the '<em><b>Leftover Firm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DEMOULD_DETAILS__LEFTOVER_FIRM = eINSTANCE.getDemouldDetails_LeftoverFirm();

		/**
		 * The meta object literal for the '<em><b>Torn</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DEMOULD_DETAILS__TORN = eINSTANCE.getDemouldDetails_Torn();

		/**
		 * The meta object literal for the '{@link org.flexwright.curing.data.CureBy <em>Cure By</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.flexwright.curing.data.CureBy
		 * @see org.flexwright.curing.data.impl.CuringDataPackageImpl#getCureBy()
		 * @generated
		 */
		EEnum CURE_BY = eINSTANCE.getCureBy();

	}

} //CuringDataPackage
