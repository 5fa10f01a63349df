/**
 */
package org.flexwright.moulding.data.impl;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EPackage;

import org.eclipse.emf.ecore.impl.EPackageImpl;

import org.flexwright.model.ModelPackage;

import org.flexwright.moulding.data.FillMethod;
import org.flexwright.moulding.data.Filling;
import org.flexwright.moulding.data.MouldMaterial;
import org.flexwright.moulding.data.MouldTreatment;
import org.flexwright.moulding.data.MouldingDataFactory;
import org.flexwright.moulding.data.MouldingDataPackage;
import org.flexwright.moulding.data.Preparation;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model <b>Package</b>.
 * <!-- end-user-doc -->
 * @generated
 */
public class MouldingDataPackageImpl extends EPackageImpl implements MouldingDataPackage {
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass preparationEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass fillingEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum mouldMaterialEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum mouldTreatmentEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum fillMethodEEnum = null;

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
	 * @see org.flexwright.moulding.data.MouldingDataPackage#eNS_URI
	 * @see #init()
	 * @generated
	 */
	private MouldingDataPackageImpl() {
		super(eNS_URI, MouldingDataFactory.eINSTANCE);
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
	 * <p>This method is used to initialize {@link MouldingDataPackage#eINSTANCE} when that field is accessed.
	 * Clients should not invoke it directly. Instead, they should simply access that field to obtain the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #eNS_URI
	 * @see #createPackageContents()
	 * @see #initializePackageContents()
	 * @generated
	 */
	public static MouldingDataPackage init() {
		if (isInited) return (MouldingDataPackage)EPackage.Registry.INSTANCE.getEPackage(MouldingDataPackage.eNS_URI);

		// Obtain or create and register package
		Object registeredMouldingDataPackage = EPackage.Registry.INSTANCE.get(eNS_URI);
		MouldingDataPackageImpl theMouldingDataPackage = registeredMouldingDataPackage instanceof MouldingDataPackageImpl ? (MouldingDataPackageImpl)registeredMouldingDataPackage : new MouldingDataPackageImpl();

		isInited = true;

		// Initialize simple dependencies
		ModelPackage.eINSTANCE.eClass();

		// Create package meta-data objects
		theMouldingDataPackage.createPackageContents();

		// Initialize created meta-data
		theMouldingDataPackage.initializePackageContents();

		// Mark meta-data to indicate it can't be changed
		theMouldingDataPackage.freeze();

		// Update the registry and return the package
		EPackage.Registry.INSTANCE.put(MouldingDataPackage.eNS_URI, theMouldingDataPackage);
		return theMouldingDataPackage;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getPreparation() {
		return preparationEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPreparation_MouldMaterial() {
		return (EAttribute)preparationEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPreparation_PlannedTreatment() {
		return (EAttribute)preparationEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPreparation_ActualTreatment() {
		return (EAttribute)preparationEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPreparation_PlannedDryHours() {
		return (EAttribute)preparationEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPreparation_ActualDryHours() {
		return (EAttribute)preparationEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPreparation_PlannedTemperature() {
		return (EAttribute)preparationEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPreparation_ActualTemperature() {
		return (EAttribute)preparationEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPreparation_Release() {
		return (EAttribute)preparationEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPreparation_CastsSoFar() {
		return (EAttribute)preparationEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPreparation_CastsLimit() {
		return (EAttribute)preparationEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getFilling() {
		return fillingEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFilling_Method() {
		return (EAttribute)fillingEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFilling_PlannedFillMinutes() {
		return (EAttribute)fillingEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFilling_ActualFillMinutes() {
		return (EAttribute)fillingEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFilling_WorkingMinutes() {
		return (EAttribute)fillingEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFilling_WorkingDefinition() {
		return (EAttribute)fillingEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFilling_WorkingGrowth() {
		return (EAttribute)fillingEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFilling_Viscosity() {
		return (EAttribute)fillingEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFilling_GateRadius() {
		return (EAttribute)fillingEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFilling_GateLength() {
		return (EAttribute)fillingEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFilling_PlannedPressure() {
		return (EAttribute)fillingEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFilling_ActualPressure() {
		return (EAttribute)fillingEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFilling_PartVolume() {
		return (EAttribute)fillingEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getMouldMaterial() {
		return mouldMaterialEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getMouldTreatment() {
		return mouldTreatmentEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getFillMethod() {
		return fillMethodEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public MouldingDataFactory getMouldingDataFactory() {
		return (MouldingDataFactory)getEFactoryInstance();
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
		preparationEClass = createEClass(PREPARATION);
		createEAttribute(preparationEClass, PREPARATION__MOULD_MATERIAL);
		createEAttribute(preparationEClass, PREPARATION__PLANNED_TREATMENT);
		createEAttribute(preparationEClass, PREPARATION__ACTUAL_TREATMENT);
		createEAttribute(preparationEClass, PREPARATION__PLANNED_DRY_HOURS);
		createEAttribute(preparationEClass, PREPARATION__ACTUAL_DRY_HOURS);
		createEAttribute(preparationEClass, PREPARATION__PLANNED_TEMPERATURE);
		createEAttribute(preparationEClass, PREPARATION__ACTUAL_TEMPERATURE);
		createEAttribute(preparationEClass, PREPARATION__RELEASE);
		createEAttribute(preparationEClass, PREPARATION__CASTS_SO_FAR);
		createEAttribute(preparationEClass, PREPARATION__CASTS_LIMIT);

		fillingEClass = createEClass(FILLING);
		createEAttribute(fillingEClass, FILLING__METHOD);
		createEAttribute(fillingEClass, FILLING__PLANNED_FILL_MINUTES);
		createEAttribute(fillingEClass, FILLING__ACTUAL_FILL_MINUTES);
		createEAttribute(fillingEClass, FILLING__WORKING_MINUTES);
		createEAttribute(fillingEClass, FILLING__WORKING_DEFINITION);
		createEAttribute(fillingEClass, FILLING__WORKING_GROWTH);
		createEAttribute(fillingEClass, FILLING__VISCOSITY);
		createEAttribute(fillingEClass, FILLING__GATE_RADIUS);
		createEAttribute(fillingEClass, FILLING__GATE_LENGTH);
		createEAttribute(fillingEClass, FILLING__PLANNED_PRESSURE);
		createEAttribute(fillingEClass, FILLING__ACTUAL_PRESSURE);
		createEAttribute(fillingEClass, FILLING__PART_VOLUME);

		// Create enums
		mouldMaterialEEnum = createEEnum(MOULD_MATERIAL);
		mouldTreatmentEEnum = createEEnum(MOULD_TREATMENT);
		fillMethodEEnum = createEEnum(FILL_METHOD);
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
		initEClass(preparationEClass, Preparation.class, "Preparation", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getPreparation_MouldMaterial(), this.getMouldMaterial(), "mouldMaterial", null, 0, 1, Preparation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPreparation_PlannedTreatment(), this.getMouldTreatment(), "plannedTreatment", null, 0, 1, Preparation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPreparation_ActualTreatment(), this.getMouldTreatment(), "actualTreatment", null, 0, 1, Preparation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPreparation_PlannedDryHours(), ecorePackage.getEDoubleObject(), "plannedDryHours", null, 0, 1, Preparation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPreparation_ActualDryHours(), ecorePackage.getEDoubleObject(), "actualDryHours", null, 0, 1, Preparation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPreparation_PlannedTemperature(), ecorePackage.getEDoubleObject(), "plannedTemperature", null, 0, 1, Preparation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPreparation_ActualTemperature(), ecorePackage.getEDoubleObject(), "actualTemperature", null, 0, 1, Preparation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPreparation_Release(), ecorePackage.getEString(), "release", null, 0, 1, Preparation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPreparation_CastsSoFar(), ecorePackage.getEIntegerObject(), "castsSoFar", null, 0, 1, Preparation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPreparation_CastsLimit(), ecorePackage.getEIntegerObject(), "castsLimit", null, 0, 1, Preparation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(fillingEClass, Filling.class, "Filling", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getFilling_Method(), this.getFillMethod(), "method", null, 0, 1, Filling.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFilling_PlannedFillMinutes(), ecorePackage.getEDoubleObject(), "plannedFillMinutes", null, 0, 1, Filling.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFilling_ActualFillMinutes(), ecorePackage.getEDoubleObject(), "actualFillMinutes", null, 0, 1, Filling.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFilling_WorkingMinutes(), ecorePackage.getEDoubleObject(), "workingMinutes", null, 0, 1, Filling.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFilling_WorkingDefinition(), ecorePackage.getEString(), "workingDefinition", null, 0, 1, Filling.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFilling_WorkingGrowth(), ecorePackage.getEDoubleObject(), "workingGrowth", null, 0, 1, Filling.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFilling_Viscosity(), ecorePackage.getEDoubleObject(), "viscosity", null, 0, 1, Filling.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFilling_GateRadius(), ecorePackage.getEDoubleObject(), "gateRadius", null, 0, 1, Filling.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFilling_GateLength(), ecorePackage.getEDoubleObject(), "gateLength", null, 0, 1, Filling.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFilling_PlannedPressure(), ecorePackage.getEDoubleObject(), "plannedPressure", null, 0, 1, Filling.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFilling_ActualPressure(), ecorePackage.getEDoubleObject(), "actualPressure", null, 0, 1, Filling.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFilling_PartVolume(), ecorePackage.getEDoubleObject(), "partVolume", null, 0, 1, Filling.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		// Initialize enums and add enum literals
		initEEnum(mouldMaterialEEnum, MouldMaterial.class, "MouldMaterial");
		addEEnumLiteral(mouldMaterialEEnum, MouldMaterial.UNKNOWN);
		addEEnumLiteral(mouldMaterialEEnum, MouldMaterial.VAT_PRINT);
		addEEnumLiteral(mouldMaterialEEnum, MouldMaterial.FILAMENT_PRINT);
		addEEnumLiteral(mouldMaterialEEnum, MouldMaterial.METAL);
		addEEnumLiteral(mouldMaterialEEnum, MouldMaterial.SILICONE);
		addEEnumLiteral(mouldMaterialEEnum, MouldMaterial.PLASTER);
		addEEnumLiteral(mouldMaterialEEnum, MouldMaterial.OTHER);

		initEEnum(mouldTreatmentEEnum, MouldTreatment.class, "MouldTreatment");
		addEEnumLiteral(mouldTreatmentEEnum, MouldTreatment.UNKNOWN);
		addEEnumLiteral(mouldTreatmentEEnum, MouldTreatment.NONE);
		addEEnumLiteral(mouldTreatmentEEnum, MouldTreatment.WASHED);
		addEEnumLiteral(mouldTreatmentEEnum, MouldTreatment.BAKED);
		addEEnumLiteral(mouldTreatmentEEnum, MouldTreatment.BARRIER_COAT);
		addEEnumLiteral(mouldTreatmentEEnum, MouldTreatment.BAKED_AND_COATED);

		initEEnum(fillMethodEEnum, FillMethod.class, "FillMethod");
		addEEnumLiteral(fillMethodEEnum, FillMethod.UNKNOWN);
		addEEnumLiteral(fillMethodEEnum, FillMethod.POURED);
		addEEnumLiteral(fillMethodEEnum, FillMethod.INJECTED);

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
		  (getPreparation_MouldMaterial(),
		   source,
		   new String[] {
			   "label", "Mould made of",
			   "role", "planned",
			   "help", "Decides what the mould may do to the cure."
		   });
		addAnnotation
		  (getPreparation_PlannedTreatment(),
		   source,
		   new String[] {
			   "label", "Treatment",
			   "role", "planned",
			   "help", "Washed, baked, coated with a barrier, or nothing."
		   });
		addAnnotation
		  (getPreparation_ActualTreatment(),
		   source,
		   new String[] {
			   "label", "Treatment done",
			   "role", "actual",
			   "of", "plannedTreatment",
			   "help", "What was really done to the mould face."
		   });
		addAnnotation
		  (getPreparation_PlannedDryHours(),
		   source,
		   new String[] {
			   "kind", "DURATION",
			   "unit", "h",
			   "min", "0",
			   "max", "1000",
			   "label", "Drying",
			   "role", "planned",
			   "help", "Hours the mould is to dry warm before casting."
		   });
		addAnnotation
		  (getPreparation_ActualDryHours(),
		   source,
		   new String[] {
			   "kind", "DURATION",
			   "unit", "h",
			   "min", "0",
			   "max", "1000",
			   "label", "Dried for",
			   "role", "actual",
			   "of", "plannedDryHours",
			   "limit", "25%",
			   "help", "Hours the mould really dried."
		   });
		addAnnotation
		  (getPreparation_PlannedTemperature(),
		   source,
		   new String[] {
			   "kind", "TEMPERATURE",
			   "unit", "degC",
			   "min", "-20",
			   "max", "200",
			   "label", "Mould temperature",
			   "role", "planned",
			   "help", "Of the mould itself when it is filled, not of the room."
		   });
		addAnnotation
		  (getPreparation_ActualTemperature(),
		   source,
		   new String[] {
			   "kind", "TEMPERATURE",
			   "unit", "degC",
			   "min", "-20",
			   "max", "200",
			   "label", "Mould temperature read",
			   "role", "actual",
			   "of", "plannedTemperature",
			   "limit", "3 K",
			   "help", "Read on the mould just before filling."
		   });
		addAnnotation
		  (getPreparation_Release(),
		   source,
		   new String[] {
			   "label", "Release",
			   "role", "planned",
			   "help", "Release agent and how it was put on; empty when none."
		   });
		addAnnotation
		  (getPreparation_CastsSoFar(),
		   source,
		   new String[] {
			   "min", "0",
			   "max", "1000000",
			   "label", "Casts so far",
			   "help", "How often this mould was filled before."
		   });
		addAnnotation
		  (getPreparation_CastsLimit(),
		   source,
		   new String[] {
			   "min", "1",
			   "max", "1000000",
			   "label", "Own limit of casts",
			   "role", "planned",
			   "help", "After how many casts you want to look at the mould again."
		   });
		addAnnotation
		  (getFilling_Method(),
		   source,
		   new String[] {
			   "label", "Filled by",
			   "role", "planned",
			   "help", "Poured under its own weight, or pressed in."
		   });
		addAnnotation
		  (getFilling_PlannedFillMinutes(),
		   source,
		   new String[] {
			   "kind", "DURATION",
			   "unit", "min",
			   "min", "0",
			   "max", "1440",
			   "label", "Fill time",
			   "role", "planned",
			   "help", "From the first drop into the mould to full."
		   });
		addAnnotation
		  (getFilling_ActualFillMinutes(),
		   source,
		   new String[] {
			   "kind", "DURATION",
			   "unit", "min",
			   "min", "0",
			   "max", "1440",
			   "label", "Fill time taken",
			   "role", "actual",
			   "of", "plannedFillMinutes",
			   "limit", "25%",
			   "help", "As timed."
		   });
		addAnnotation
		  (getFilling_WorkingMinutes(),
		   source,
		   new String[] {
			   "kind", "DURATION",
			   "unit", "min",
			   "min", "0",
			   "max", "1440",
			   "label", "Working time of the mix",
			   "role", "planned",
			   "help", "Time in which the mix can still be poured, for this amount and temperature."
		   });
		addAnnotation
		  (getFilling_WorkingDefinition(),
		   source,
		   new String[] {
			   "label", "Working time means",
			   "role", "planned",
			   "help", "How the sheet defines it: amount, temperature, what has changed by then. Definitions differ."
		   });
		addAnnotation
		  (getFilling_WorkingGrowth(),
		   source,
		   new String[] {
			   "kind", "NUMBER",
			   "min", "1",
			   "max", "1000",
			   "label", "Thickens by then",
			   "role", "planned",
			   "help", "How many times thicker the mix is at the end of the working time; 2 when it means doubling.",
			   "def", "2"
		   });
		addAnnotation
		  (getFilling_Viscosity(),
		   source,
		   new String[] {
			   "kind", "VISCOSITY",
			   "unit", "Pa s",
			   "min", "0",
			   "max", "10000",
			   "label", "Viscosity, fresh",
			   "role", "planned",
			   "help", "Of the mix right after mixing, at its temperature."
		   });
		addAnnotation
		  (getFilling_GateRadius(),
		   source,
		   new String[] {
			   "kind", "LENGTH",
			   "unit", "mm",
			   "min", "0",
			   "max", "100",
			   "label", "Gate radius",
			   "role", "planned",
			   "help", "Half the bore of the round channel the mix flows through."
		   });
		addAnnotation
		  (getFilling_GateLength(),
		   source,
		   new String[] {
			   "kind", "LENGTH",
			   "unit", "mm",
			   "min", "0",
			   "max", "2000",
			   "label", "Gate length",
			   "role", "planned",
			   "help", "Length of that channel."
		   });
		addAnnotation
		  (getFilling_PlannedPressure(),
		   source,
		   new String[] {
			   "kind", "PRESSURE_GAUGE",
			   "unit", "kPa gauge",
			   "min", "0",
			   "max", "1000",
			   "label", "Pressure",
			   "role", "planned",
			   "help", "Above the surrounding air: plunger, pot or the head of liquid."
		   });
		addAnnotation
		  (getFilling_ActualPressure(),
		   source,
		   new String[] {
			   "kind", "PRESSURE_GAUGE",
			   "unit", "kPa gauge",
			   "min", "0",
			   "max", "1000",
			   "label", "Pressure used",
			   "role", "actual",
			   "of", "plannedPressure",
			   "limit", "20%",
			   "help", "Above the surrounding air."
		   });
		addAnnotation
		  (getFilling_PartVolume(),
		   source,
		   new String[] {
			   "kind", "VOLUME",
			   "unit", "cm3",
			   "min", "0",
			   "max", "100000",
			   "label", "Volume to fill",
			   "role", "planned",
			   "help", "All cavities with gate and sprue."
		   });
	}

} //MouldingDataPackageImpl
