/**
 */
package org.flexwright.filament.data.impl;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EPackage;

import org.eclipse.emf.ecore.impl.EPackageImpl;

import org.flexwright.filament.data.Drying;
import org.flexwright.filament.data.FilamentDataFactory;
import org.flexwright.filament.data.FilamentDataPackage;
import org.flexwright.filament.data.Printing;

import org.flexwright.model.ModelPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model <b>Package</b>.
 * <!-- end-user-doc -->
 * @generated
 */
public class FilamentDataPackageImpl extends EPackageImpl implements FilamentDataPackage {
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass dryingEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass printingEClass = null;

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
	 * @see org.flexwright.filament.data.FilamentDataPackage#eNS_URI
	 * @see #init()
	 * @generated
	 */
	private FilamentDataPackageImpl() {
		super(eNS_URI, FilamentDataFactory.eINSTANCE);
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
	 * <p>This method is used to initialize {@link FilamentDataPackage#eINSTANCE} when that field is accessed.
	 * Clients should not invoke it directly. Instead, they should simply access that field to obtain the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #eNS_URI
	 * @see #createPackageContents()
	 * @see #initializePackageContents()
	 * @generated
	 */
	public static FilamentDataPackage init() {
		if (isInited) return (FilamentDataPackage)EPackage.Registry.INSTANCE.getEPackage(FilamentDataPackage.eNS_URI);

		// Obtain or create and register package
		Object registeredFilamentDataPackage = EPackage.Registry.INSTANCE.get(eNS_URI);
		FilamentDataPackageImpl theFilamentDataPackage = registeredFilamentDataPackage instanceof FilamentDataPackageImpl ? (FilamentDataPackageImpl)registeredFilamentDataPackage : new FilamentDataPackageImpl();

		isInited = true;

		// Initialize simple dependencies
		ModelPackage.eINSTANCE.eClass();

		// Create package meta-data objects
		theFilamentDataPackage.createPackageContents();

		// Initialize created meta-data
		theFilamentDataPackage.initializePackageContents();

		// Mark meta-data to indicate it can't be changed
		theFilamentDataPackage.freeze();

		// Update the registry and return the package
		EPackage.Registry.INSTANCE.put(FilamentDataPackage.eNS_URI, theFilamentDataPackage);
		return theFilamentDataPackage;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getDrying() {
		return dryingEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDrying_PlannedTemperature() {
		return (EAttribute)dryingEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDrying_ActualTemperature() {
		return (EAttribute)dryingEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDrying_PlannedHours() {
		return (EAttribute)dryingEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDrying_ActualHours() {
		return (EAttribute)dryingEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDrying_Softening() {
		return (EAttribute)dryingEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDrying_Diffusivity() {
		return (EAttribute)dryingEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDrying_ActivationEnergy() {
		return (EAttribute)dryingEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDrying_DiffusionSource() {
		return (EAttribute)dryingEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getPrinting() {
		return printingEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrinting_PlannedSpeed() {
		return (EAttribute)printingEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrinting_ActualSpeed() {
		return (EAttribute)printingEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrinting_NozzleDiameter() {
		return (EAttribute)printingEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrinting_NozzleLength() {
		return (EAttribute)printingEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrinting_LayerHeight() {
		return (EAttribute)printingEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrinting_LineWidth() {
		return (EAttribute)printingEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrinting_PlannedNozzleTemperature() {
		return (EAttribute)printingEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrinting_ActualNozzleTemperature() {
		return (EAttribute)printingEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrinting_StrandDiameter() {
		return (EAttribute)printingEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrinting_FreeLength() {
		return (EAttribute)printingEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrinting_StrandModulus() {
		return (EAttribute)printingEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrinting_Consistency() {
		return (EAttribute)printingEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrinting_FlowIndex() {
		return (EAttribute)printingEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrinting_PushForce() {
		return (EAttribute)printingEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrinting_HoursOut() {
		return (EAttribute)printingEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrinting_PlannedMass() {
		return (EAttribute)printingEClass.getEStructuralFeatures().get(15);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrinting_ActualMass() {
		return (EAttribute)printingEClass.getEStructuralFeatures().get(16);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public FilamentDataFactory getFilamentDataFactory() {
		return (FilamentDataFactory)getEFactoryInstance();
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
		dryingEClass = createEClass(DRYING);
		createEAttribute(dryingEClass, DRYING__PLANNED_TEMPERATURE);
		createEAttribute(dryingEClass, DRYING__ACTUAL_TEMPERATURE);
		createEAttribute(dryingEClass, DRYING__PLANNED_HOURS);
		createEAttribute(dryingEClass, DRYING__ACTUAL_HOURS);
		createEAttribute(dryingEClass, DRYING__SOFTENING);
		createEAttribute(dryingEClass, DRYING__DIFFUSIVITY);
		createEAttribute(dryingEClass, DRYING__ACTIVATION_ENERGY);
		createEAttribute(dryingEClass, DRYING__DIFFUSION_SOURCE);

		printingEClass = createEClass(PRINTING);
		createEAttribute(printingEClass, PRINTING__PLANNED_SPEED);
		createEAttribute(printingEClass, PRINTING__ACTUAL_SPEED);
		createEAttribute(printingEClass, PRINTING__NOZZLE_DIAMETER);
		createEAttribute(printingEClass, PRINTING__NOZZLE_LENGTH);
		createEAttribute(printingEClass, PRINTING__LAYER_HEIGHT);
		createEAttribute(printingEClass, PRINTING__LINE_WIDTH);
		createEAttribute(printingEClass, PRINTING__PLANNED_NOZZLE_TEMPERATURE);
		createEAttribute(printingEClass, PRINTING__ACTUAL_NOZZLE_TEMPERATURE);
		createEAttribute(printingEClass, PRINTING__STRAND_DIAMETER);
		createEAttribute(printingEClass, PRINTING__FREE_LENGTH);
		createEAttribute(printingEClass, PRINTING__STRAND_MODULUS);
		createEAttribute(printingEClass, PRINTING__CONSISTENCY);
		createEAttribute(printingEClass, PRINTING__FLOW_INDEX);
		createEAttribute(printingEClass, PRINTING__PUSH_FORCE);
		createEAttribute(printingEClass, PRINTING__HOURS_OUT);
		createEAttribute(printingEClass, PRINTING__PLANNED_MASS);
		createEAttribute(printingEClass, PRINTING__ACTUAL_MASS);
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
		initEClass(dryingEClass, Drying.class, "Drying", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getDrying_PlannedTemperature(), ecorePackage.getEDoubleObject(), "plannedTemperature", null, 0, 1, Drying.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDrying_ActualTemperature(), ecorePackage.getEDoubleObject(), "actualTemperature", null, 0, 1, Drying.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDrying_PlannedHours(), ecorePackage.getEDoubleObject(), "plannedHours", null, 0, 1, Drying.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDrying_ActualHours(), ecorePackage.getEDoubleObject(), "actualHours", null, 0, 1, Drying.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDrying_Softening(), ecorePackage.getEDoubleObject(), "softening", null, 0, 1, Drying.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDrying_Diffusivity(), ecorePackage.getEDoubleObject(), "diffusivity", null, 0, 1, Drying.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDrying_ActivationEnergy(), ecorePackage.getEDoubleObject(), "activationEnergy", null, 0, 1, Drying.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDrying_DiffusionSource(), ecorePackage.getEString(), "diffusionSource", null, 0, 1, Drying.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(printingEClass, Printing.class, "Printing", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getPrinting_PlannedSpeed(), ecorePackage.getEDoubleObject(), "plannedSpeed", null, 0, 1, Printing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPrinting_ActualSpeed(), ecorePackage.getEDoubleObject(), "actualSpeed", null, 0, 1, Printing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPrinting_NozzleDiameter(), ecorePackage.getEDoubleObject(), "nozzleDiameter", null, 0, 1, Printing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPrinting_NozzleLength(), ecorePackage.getEDoubleObject(), "nozzleLength", null, 0, 1, Printing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPrinting_LayerHeight(), ecorePackage.getEDoubleObject(), "layerHeight", null, 0, 1, Printing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPrinting_LineWidth(), ecorePackage.getEDoubleObject(), "lineWidth", null, 0, 1, Printing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPrinting_PlannedNozzleTemperature(), ecorePackage.getEDoubleObject(), "plannedNozzleTemperature", null, 0, 1, Printing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPrinting_ActualNozzleTemperature(), ecorePackage.getEDoubleObject(), "actualNozzleTemperature", null, 0, 1, Printing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPrinting_StrandDiameter(), ecorePackage.getEDoubleObject(), "strandDiameter", null, 0, 1, Printing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPrinting_FreeLength(), ecorePackage.getEDoubleObject(), "freeLength", null, 0, 1, Printing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPrinting_StrandModulus(), ecorePackage.getEDoubleObject(), "strandModulus", null, 0, 1, Printing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPrinting_Consistency(), ecorePackage.getEDoubleObject(), "consistency", null, 0, 1, Printing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPrinting_FlowIndex(), ecorePackage.getEDoubleObject(), "flowIndex", null, 0, 1, Printing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPrinting_PushForce(), ecorePackage.getEDoubleObject(), "pushForce", null, 0, 1, Printing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPrinting_HoursOut(), ecorePackage.getEDoubleObject(), "hoursOut", null, 0, 1, Printing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPrinting_PlannedMass(), ecorePackage.getEDoubleObject(), "plannedMass", null, 0, 1, Printing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPrinting_ActualMass(), ecorePackage.getEDoubleObject(), "actualMass", null, 0, 1, Printing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

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
		  (getDrying_PlannedTemperature(),
		   source,
		   new String[] {
			   "kind", "TEMPERATURE",
			   "unit", "degC",
			   "min", "0",
			   "max", "150",
			   "label", "Temperature",
			   "role", "planned",
			   "help", "Of the air in the dryer; below the softening of the strand."
		   });
		addAnnotation
		  (getDrying_ActualTemperature(),
		   source,
		   new String[] {
			   "kind", "TEMPERATURE",
			   "unit", "degC",
			   "min", "0",
			   "max", "150",
			   "label", "Temperature read",
			   "role", "actual",
			   "of", "plannedTemperature",
			   "limit", "5 K",
			   "help", "Read inside the dryer."
		   });
		addAnnotation
		  (getDrying_PlannedHours(),
		   source,
		   new String[] {
			   "kind", "DURATION",
			   "unit", "h",
			   "min", "0",
			   "max", "500",
			   "label", "Drying",
			   "role", "planned",
			   "help", "Hours at that temperature."
		   });
		addAnnotation
		  (getDrying_ActualHours(),
		   source,
		   new String[] {
			   "kind", "DURATION",
			   "unit", "h",
			   "min", "0",
			   "max", "500",
			   "label", "Dried for",
			   "role", "actual",
			   "of", "plannedHours",
			   "limit", "25%",
			   "help", "Hours at that temperature."
		   });
		addAnnotation
		  (getDrying_Softening(),
		   source,
		   new String[] {
			   "kind", "TEMPERATURE",
			   "unit", "degC",
			   "min", "0",
			   "max", "200",
			   "label", "Stay below",
			   "role", "planned",
			   "help", "Temperature at which turns of the strand stick together, from the sheet or own trial."
		   });
		addAnnotation
		  (getDrying_Diffusivity(),
		   source,
		   new String[] {
			   "kind", "DIFFUSIVITY",
			   "unit", "m2/s",
			   "min", "0",
			   "max", "1e-6",
			   "label", "Diffusivity at 23 degC",
			   "role", "planned",
			   "help", "Of water in the strand; left empty, a published spread is used."
		   });
		addAnnotation
		  (getDrying_ActivationEnergy(),
		   source,
		   new String[] {
			   "kind", "MOLAR_ENERGY",
			   "unit", "kJ/mol",
			   "min", "0",
			   "max", "200",
			   "label", "Activation energy",
			   "role", "planned",
			   "help", "Of that diffusivity; left empty, a published value is used."
		   });
		addAnnotation
		  (getDrying_DiffusionSource(),
		   source,
		   new String[] {
			   "label", "Where both come from",
			   "role", "planned",
			   "help", "Sheet, paper or own drying curve."
		   });
		addAnnotation
		  (getPrinting_PlannedSpeed(),
		   source,
		   new String[] {
			   "kind", "SPEED",
			   "unit", "mm/s",
			   "min", "0",
			   "max", "500",
			   "label", "Speed",
			   "role", "planned",
			   "help", "Of the nozzle over the part."
		   });
		addAnnotation
		  (getPrinting_ActualSpeed(),
		   source,
		   new String[] {
			   "kind", "SPEED",
			   "unit", "mm/s",
			   "min", "0",
			   "max", "500",
			   "label", "Speed used",
			   "role", "actual",
			   "of", "plannedSpeed",
			   "limit", "10%",
			   "help", "Of the nozzle over the part."
		   });
		addAnnotation
		  (getPrinting_NozzleDiameter(),
		   source,
		   new String[] {
			   "kind", "LENGTH",
			   "unit", "mm",
			   "min", "0.1",
			   "max", "3",
			   "label", "Nozzle",
			   "role", "planned",
			   "help", "Diameter of the hole."
		   });
		addAnnotation
		  (getPrinting_NozzleLength(),
		   source,
		   new String[] {
			   "kind", "LENGTH",
			   "unit", "mm",
			   "min", "0",
			   "max", "20",
			   "label", "Nozzle land",
			   "role", "planned",
			   "help", "Length of the narrow part of the hole."
		   });
		addAnnotation
		  (getPrinting_LayerHeight(),
		   source,
		   new String[] {
			   "kind", "LENGTH",
			   "unit", "mm",
			   "min", "0.02",
			   "max", "3",
			   "label", "Layer height",
			   "role", "planned",
			   "help", "Thickness of one layer."
		   });
		addAnnotation
		  (getPrinting_LineWidth(),
		   source,
		   new String[] {
			   "kind", "LENGTH",
			   "unit", "mm",
			   "min", "0.05",
			   "max", "10",
			   "label", "Line width",
			   "role", "planned",
			   "help", "Width of one laid strand."
		   });
		addAnnotation
		  (getPrinting_PlannedNozzleTemperature(),
		   source,
		   new String[] {
			   "kind", "TEMPERATURE",
			   "unit", "degC",
			   "min", "100",
			   "max", "350",
			   "label", "Nozzle temperature",
			   "role", "planned",
			   "help", "As set."
		   });
		addAnnotation
		  (getPrinting_ActualNozzleTemperature(),
		   source,
		   new String[] {
			   "kind", "TEMPERATURE",
			   "unit", "degC",
			   "min", "100",
			   "max", "350",
			   "label", "Nozzle temperature used",
			   "role", "actual",
			   "of", "plannedNozzleTemperature",
			   "limit", "5 K",
			   "help", "As set or read."
		   });
		addAnnotation
		  (getPrinting_StrandDiameter(),
		   source,
		   new String[] {
			   "kind", "LENGTH",
			   "unit", "mm",
			   "min", "0.5",
			   "max", "5",
			   "label", "Strand diameter",
			   "role", "planned",
			   "help", "Mean of several places."
		   });
		addAnnotation
		  (getPrinting_FreeLength(),
		   source,
		   new String[] {
			   "kind", "LENGTH",
			   "unit", "mm",
			   "min", "0",
			   "max", "2000",
			   "label", "Free length",
			   "role", "planned",
			   "help", "Between the drive wheel and the guide, where nothing holds the strand."
		   });
		addAnnotation
		  (getPrinting_StrandModulus(),
		   source,
		   new String[] {
			   "kind", "STRESS",
			   "unit", "MPa",
			   "min", "0",
			   "max", "5000",
			   "label", "Strand modulus",
			   "role", "planned",
			   "help", "At small strain, cold."
		   });
		addAnnotation
		  (getPrinting_Consistency(),
		   source,
		   new String[] {
			   "kind", "NUMBER",
			   "min", "0",
			   "max", "1e7",
			   "label", "Melt K (Pa s^n)",
			   "role", "planned",
			   "help", "Power law of the melt at the nozzle temperature; the viscosity in Pa s when n is 1."
		   });
		addAnnotation
		  (getPrinting_FlowIndex(),
		   source,
		   new String[] {
			   "kind", "NUMBER",
			   "min", "0.05",
			   "max", "1.5",
			   "label", "Melt n",
			   "role", "planned",
			   "help", "Power law index of the melt; 1 for a plain liquid."
		   });
		addAnnotation
		  (getPrinting_PushForce(),
		   source,
		   new String[] {
			   "kind", "FORCE",
			   "unit", "N",
			   "min", "0",
			   "max", "1000",
			   "label", "Push needed, measured",
			   "help", "Measured on the strand at the planned speed; it counts before the calculated one."
		   });
		addAnnotation
		  (getPrinting_HoursOut(),
		   source,
		   new String[] {
			   "kind", "DURATION",
			   "unit", "h",
			   "min", "0",
			   "max", "10000",
			   "label", "Strand out of the dry box",
			   "help", "Since it was last dry."
		   });
		addAnnotation
		  (getPrinting_PlannedMass(),
		   source,
		   new String[] {
			   "kind", "MASS",
			   "unit", "g",
			   "min", "0",
			   "max", "100000",
			   "label", "Expected mass",
			   "role", "planned",
			   "help", "Of the print: volume of the strands laid times density."
		   });
		addAnnotation
		  (getPrinting_ActualMass(),
		   source,
		   new String[] {
			   "kind", "MASS",
			   "unit", "g",
			   "min", "0",
			   "max", "100000",
			   "label", "Mass weighed",
			   "role", "actual",
			   "of", "plannedMass",
			   "limit", "5%",
			   "help", "Of the print without supports."
		   });
	}

} //FilamentDataPackageImpl
