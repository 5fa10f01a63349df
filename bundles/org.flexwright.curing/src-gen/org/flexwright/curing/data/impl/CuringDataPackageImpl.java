/**
 */
package org.flexwright.curing.data.impl;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EReference;

import org.eclipse.emf.ecore.impl.EPackageImpl;

import org.flexwright.curing.data.CureBy;
import org.flexwright.curing.data.CureDetails;
import org.flexwright.curing.data.CureStage;
import org.flexwright.curing.data.CuringDataFactory;
import org.flexwright.curing.data.CuringDataPackage;
import org.flexwright.curing.data.DemouldDetails;

import org.flexwright.model.ModelPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model <b>Package</b>.
 * <!-- end-user-doc -->
 * @generated
 */
public class CuringDataPackageImpl extends EPackageImpl implements CuringDataPackage {
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass cureStageEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass cureDetailsEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass demouldDetailsEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum cureByEEnum = null;

	/**
	 * Creates an instance of the model <b>Package</b>, registered with
	 * {@link org.eclipse.emf.ecore.EPackage.Registry EPackage.Registry} by the package
	 * package URI value.
	 * <p>Note: the correct way to create the package is via the static
	 * factory method {@link #init init()}, which also performs
	 * initialization of the package, or returns the registered package,
	 * if one already exists.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.eclipse.emf.ecore.EPackage.Registry
	 * @see org.flexwright.curing.data.CuringDataPackage#eNS_URI
	 * @see #init()
	 * @generated
	 */
	private CuringDataPackageImpl() {
		super(eNS_URI, CuringDataFactory.eINSTANCE);
	}
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static boolean isInited = false;

	/**
	 * Creates, registers, and initializes the <b>Package</b> for this model, and for any others upon which it depends.
	 *
	 * <p>This method is used to initialize {@link CuringDataPackage#eINSTANCE} when that field is accessed.
	 * Clients should not invoke it directly. Instead, they should simply access that field to obtain the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #eNS_URI
	 * @see #createPackageContents()
	 * @see #initializePackageContents()
	 * @generated
	 */
	public static CuringDataPackage init() {
		if (isInited) return (CuringDataPackage)EPackage.Registry.INSTANCE.getEPackage(CuringDataPackage.eNS_URI);

		// Obtain or create and register package
		Object registeredCuringDataPackage = EPackage.Registry.INSTANCE.get(eNS_URI);
		CuringDataPackageImpl theCuringDataPackage = registeredCuringDataPackage instanceof CuringDataPackageImpl ? (CuringDataPackageImpl)registeredCuringDataPackage : new CuringDataPackageImpl();

		isInited = true;

		// Initialize simple dependencies
		ModelPackage.eINSTANCE.eClass();

		// Create package meta-data objects
		theCuringDataPackage.createPackageContents();

		// Initialize created meta-data
		theCuringDataPackage.initializePackageContents();

		// Mark meta-data to indicate it can't be changed
		theCuringDataPackage.freeze();

		// Update the registry and return the package
		EPackage.Registry.INSTANCE.put(CuringDataPackage.eNS_URI, theCuringDataPackage);
		return theCuringDataPackage;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getCureStage() {
		return cureStageEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCureStage_Minutes() {
		return (EAttribute)cureStageEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCureStage_Celsius() {
		return (EAttribute)cureStageEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCureStage_Ramp() {
		return (EAttribute)cureStageEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getCureDetails() {
		return cureDetailsEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCureDetails_By() {
		return (EAttribute)cureDetailsEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCureDetails_PlannedHours() {
		return (EAttribute)cureDetailsEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCureDetails_Hours() {
		return (EAttribute)cureDetailsEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCureDetails_PlannedC() {
		return (EAttribute)cureDetailsEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCureDetails_Celsius() {
		return (EAttribute)cureDetailsEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCureDetails_PlannedStages() {
		return (EReference)cureDetailsEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCureDetails_Stages() {
		return (EReference)cureDetailsEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCureDetails_Lamp() {
		return (EAttribute)cureDetailsEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCureDetails_ActivationEnergy() {
		return (EAttribute)cureDetailsEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getDemouldDetails() {
		return demouldDetailsEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDemouldDetails_PlannedAge() {
		return (EAttribute)demouldDetailsEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDemouldDetails_Age() {
		return (EAttribute)demouldDetailsEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDemouldDetails_MouldC() {
		return (EAttribute)demouldDetailsEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDemouldDetails_LeftoverFirm() {
		return (EAttribute)demouldDetailsEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDemouldDetails_Torn() {
		return (EAttribute)demouldDetailsEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getCureBy() {
		return cureByEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public CuringDataFactory getCuringDataFactory() {
		return (CuringDataFactory)getEFactoryInstance();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private boolean isCreated = false;

	/**
	 * Creates the meta-model objects for the package.  This method is
	 * guarded to have no affect on any invocation but its first.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public void createPackageContents() {
		if (isCreated) return;
		isCreated = true;

		// Create classes and their features
		cureStageEClass = createEClass(CURE_STAGE);
		createEAttribute(cureStageEClass, CURE_STAGE__MINUTES);
		createEAttribute(cureStageEClass, CURE_STAGE__CELSIUS);
		createEAttribute(cureStageEClass, CURE_STAGE__RAMP);

		cureDetailsEClass = createEClass(CURE_DETAILS);
		createEAttribute(cureDetailsEClass, CURE_DETAILS__BY);
		createEAttribute(cureDetailsEClass, CURE_DETAILS__PLANNED_HOURS);
		createEAttribute(cureDetailsEClass, CURE_DETAILS__HOURS);
		createEAttribute(cureDetailsEClass, CURE_DETAILS__PLANNED_C);
		createEAttribute(cureDetailsEClass, CURE_DETAILS__CELSIUS);
		createEReference(cureDetailsEClass, CURE_DETAILS__PLANNED_STAGES);
		createEReference(cureDetailsEClass, CURE_DETAILS__STAGES);
		createEAttribute(cureDetailsEClass, CURE_DETAILS__LAMP);
		createEAttribute(cureDetailsEClass, CURE_DETAILS__ACTIVATION_ENERGY);

		demouldDetailsEClass = createEClass(DEMOULD_DETAILS);
		createEAttribute(demouldDetailsEClass, DEMOULD_DETAILS__PLANNED_AGE);
		createEAttribute(demouldDetailsEClass, DEMOULD_DETAILS__AGE);
		createEAttribute(demouldDetailsEClass, DEMOULD_DETAILS__MOULD_C);
		createEAttribute(demouldDetailsEClass, DEMOULD_DETAILS__LEFTOVER_FIRM);
		createEAttribute(demouldDetailsEClass, DEMOULD_DETAILS__TORN);

		// Create enums
		cureByEEnum = createEEnum(CURE_BY);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private boolean isInitialized = false;

	/**
	 * Complete the initialization of the package and its meta-model.  This
	 * method is guarded to have no affect on any invocation but its first.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public void initializePackageContents() {
		if (isInitialized) return;
		isInitialized = true;

		// Initialize package
		setName(eNAME);
		setNsPrefix(eNS_PREFIX);
		setNsURI(eNS_URI);

		// Create type parameters

		// Set bounds for type parameters

		// Add supertypes to classes

		// Initialize classes, features, and operations; add parameters
		initEClass(cureStageEClass, CureStage.class, "CureStage", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getCureStage_Minutes(), ecorePackage.getEDoubleObject(), "minutes", null, 0, 1, CureStage.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCureStage_Celsius(), ecorePackage.getEDoubleObject(), "celsius", null, 0, 1, CureStage.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCureStage_Ramp(), ecorePackage.getEBoolean(), "ramp", null, 0, 1, CureStage.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(cureDetailsEClass, CureDetails.class, "CureDetails", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getCureDetails_By(), this.getCureBy(), "by", null, 0, 1, CureDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCureDetails_PlannedHours(), ecorePackage.getEDoubleObject(), "plannedHours", null, 0, 1, CureDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCureDetails_Hours(), ecorePackage.getEDoubleObject(), "hours", null, 0, 1, CureDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCureDetails_PlannedC(), ecorePackage.getEDoubleObject(), "plannedC", null, 0, 1, CureDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCureDetails_Celsius(), ecorePackage.getEDoubleObject(), "celsius", null, 0, 1, CureDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCureDetails_PlannedStages(), this.getCureStage(), null, "plannedStages", null, 0, -1, CureDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCureDetails_Stages(), this.getCureStage(), null, "stages", null, 0, -1, CureDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCureDetails_Lamp(), ecorePackage.getEString(), "lamp", null, 0, 1, CureDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCureDetails_ActivationEnergy(), ecorePackage.getEDoubleObject(), "activationEnergy", null, 0, 1, CureDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(demouldDetailsEClass, DemouldDetails.class, "DemouldDetails", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getDemouldDetails_PlannedAge(), ecorePackage.getEDoubleObject(), "plannedAge", null, 0, 1, DemouldDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDemouldDetails_Age(), ecorePackage.getEDoubleObject(), "age", null, 0, 1, DemouldDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDemouldDetails_MouldC(), ecorePackage.getEDoubleObject(), "mouldC", null, 0, 1, DemouldDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDemouldDetails_LeftoverFirm(), ecorePackage.getEBooleanObject(), "leftoverFirm", null, 0, 1, DemouldDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDemouldDetails_Torn(), ecorePackage.getEBooleanObject(), "torn", null, 0, 1, DemouldDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		// Initialize enums and add enum literals
		initEEnum(cureByEEnum, CureBy.class, "CureBy");
		addEEnumLiteral(cureByEEnum, CureBy.ROOM);
		addEEnumLiteral(cureByEEnum, CureBy.HEAT);
		addEEnumLiteral(cureByEEnum, CureBy.LAMP);

		// Create resource
		createResource(eNS_URI);

		// Create annotations
		// urn:flexwright:field
		createUrnflexwrightfieldAnnotations();
	}

	/**
	 * Initializes the annotations for <b>urn:flexwright:field</b>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void createUrnflexwrightfieldAnnotations() {
		String source = "urn:flexwright:field";
		addAnnotation
		  (getCureStage_Minutes(),
		   source,
		   new String[] {
			   "kind", "DURATION",
			   "unit", "min",
			   "min", "0",
			   "max", "100000",
			   "label", "Time",
			   "help", "How long the stretch lasts."
		   });
		addAnnotation
		  (getCureStage_Celsius(),
		   source,
		   new String[] {
			   "kind", "TEMPERATURE",
			   "unit", "degC",
			   "min", "-40",
			   "max", "300",
			   "label", "Temperature",
			   "help", "Temperature at its end; all through when it is no ramp."
		   });
		addAnnotation
		  (getCureStage_Ramp(),
		   source,
		   new String[] {
			   "label", "Ramp",
			   "help", "True when the temperature runs evenly from the stretch before to this one."
		   });
		addAnnotation
		  (getCureDetails_By(),
		   source,
		   new String[] {
			   "label", "Cured by",
			   "role", "planned",
			   "help", "Room temperature, an oven, or a lamp."
		   });
		addAnnotation
		  (getCureDetails_PlannedHours(),
		   source,
		   new String[] {
			   "kind", "DURATION",
			   "unit", "h",
			   "min", "0",
			   "max", "10000",
			   "label", "Cure time",
			   "role", "planned",
			   "help", "For one temperature all through; leave empty when stretches are given."
		   });
		addAnnotation
		  (getCureDetails_Hours(),
		   source,
		   new String[] {
			   "kind", "DURATION",
			   "unit", "h",
			   "min", "0",
			   "max", "10000",
			   "label", "Cure time",
			   "role", "actual",
			   "of", "plannedHours",
			   "limit", "10%",
			   "help", "For one temperature all through."
		   });
		addAnnotation
		  (getCureDetails_PlannedC(),
		   source,
		   new String[] {
			   "kind", "TEMPERATURE",
			   "unit", "degC",
			   "min", "-40",
			   "max", "300",
			   "label", "Cure temperature",
			   "role", "planned",
			   "help", "In the part, not of the oven\'s dial."
		   });
		addAnnotation
		  (getCureDetails_Celsius(),
		   source,
		   new String[] {
			   "kind", "TEMPERATURE",
			   "unit", "degC",
			   "min", "-40",
			   "max", "300",
			   "label", "Cure temperature",
			   "role", "actual",
			   "of", "plannedC",
			   "limit", "3 K",
			   "help", "In the part, not of the oven\'s dial."
		   });
		addAnnotation
		  (getCureDetails_PlannedStages(),
		   source,
		   new String[] {
			   "label", "Stretches",
			   "role", "planned",
			   "help", "For a schedule of several temperatures."
		   });
		addAnnotation
		  (getCureDetails_Stages(),
		   source,
		   new String[] {
			   "label", "Stretches",
			   "role", "actual",
			   "of", "plannedStages",
			   "help", "What it really went through."
		   });
		addAnnotation
		  (getCureDetails_Lamp(),
		   source,
		   new String[] {
			   "label", "Lamp",
			   "role", "planned",
			   "help", "Wavelength and distance, for a lamp cure."
		   });
		addAnnotation
		  (getCureDetails_ActivationEnergy(),
		   source,
		   new String[] {
			   "kind", "MOLAR_ENERGY",
			   "unit", "kJ/mol",
			   "min", "10",
			   "max", "200",
			   "label", "Activation energy",
			   "role", "planned",
			   "help", "Own value, if known; 35 to 75 is usual for urethanes and 50 is assumed."
		   });
		addAnnotation
		  (getDemouldDetails_PlannedAge(),
		   source,
		   new String[] {
			   "kind", "DURATION",
			   "unit", "h",
			   "min", "0",
			   "max", "10000",
			   "label", "Age at demoulding",
			   "role", "planned",
			   "help", "From filling the mould."
		   });
		addAnnotation
		  (getDemouldDetails_Age(),
		   source,
		   new String[] {
			   "kind", "DURATION",
			   "unit", "h",
			   "min", "0",
			   "max", "10000",
			   "label", "Age at demoulding",
			   "role", "actual",
			   "of", "plannedAge",
			   "limit", "10%",
			   "help", "From filling the mould."
		   });
		addAnnotation
		  (getDemouldDetails_MouldC(),
		   source,
		   new String[] {
			   "kind", "TEMPERATURE",
			   "unit", "degC",
			   "min", "-40",
			   "max", "300",
			   "label", "Mould temperature",
			   "role", "actual",
			   "help", "When it was opened."
		   });
		addAnnotation
		  (getDemouldDetails_LeftoverFirm(),
		   source,
		   new String[] {
			   "label", "Leftover firm to the nail",
			   "role", "actual",
			   "help", "The rest in the cup tells before the part does."
		   });
		addAnnotation
		  (getDemouldDetails_Torn(),
		   source,
		   new String[] {
			   "label", "Torn",
			   "role", "actual",
			   "help", "Whether the part tore while coming out."
		   });
	}

} //CuringDataPackageImpl
