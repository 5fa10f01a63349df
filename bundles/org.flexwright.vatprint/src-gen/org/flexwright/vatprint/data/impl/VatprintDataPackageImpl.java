/**
 */
package org.flexwright.vatprint.data.impl;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EPackage;

import org.eclipse.emf.ecore.impl.EPackageImpl;

import org.flexwright.model.ModelPackage;

import org.flexwright.vatprint.data.PostCureMedium;
import org.flexwright.vatprint.data.PostCuring;
import org.flexwright.vatprint.data.Printing;
import org.flexwright.vatprint.data.VatprintDataFactory;
import org.flexwright.vatprint.data.VatprintDataPackage;
import org.flexwright.vatprint.data.WashSolvent;
import org.flexwright.vatprint.data.Washing;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model <b>Package</b>.
 * <!-- end-user-doc -->
 * @generated
 */
public class VatprintDataPackageImpl extends EPackageImpl implements VatprintDataPackage {
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass printingEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass washingEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass postCuringEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum washSolventEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum postCureMediumEEnum = null;

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
	 * @see org.flexwright.vatprint.data.VatprintDataPackage#eNS_URI
	 * @see #init()
	 * @generated
	 */
	private VatprintDataPackageImpl() {
		super(eNS_URI, VatprintDataFactory.eINSTANCE);
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
	 * <p>This method is used to initialize {@link VatprintDataPackage#eINSTANCE} when that field is accessed.
	 * Clients should not invoke it directly. Instead, they should simply access that field to obtain the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #eNS_URI
	 * @see #createPackageContents()
	 * @see #initializePackageContents()
	 * @generated
	 */
	public static VatprintDataPackage init() {
		if (isInited) return (VatprintDataPackage)EPackage.Registry.INSTANCE.getEPackage(VatprintDataPackage.eNS_URI);

		// Obtain or create and register package
		Object registeredVatprintDataPackage = EPackage.Registry.INSTANCE.get(eNS_URI);
		VatprintDataPackageImpl theVatprintDataPackage = registeredVatprintDataPackage instanceof VatprintDataPackageImpl ? (VatprintDataPackageImpl)registeredVatprintDataPackage : new VatprintDataPackageImpl();

		isInited = true;

		// Initialize simple dependencies
		ModelPackage.eINSTANCE.eClass();

		// Create package meta-data objects
		theVatprintDataPackage.createPackageContents();

		// Initialize created meta-data
		theVatprintDataPackage.initializePackageContents();

		// Mark meta-data to indicate it can't be changed
		theVatprintDataPackage.freeze();

		// Update the registry and return the package
		EPackage.Registry.INSTANCE.put(VatprintDataPackage.eNS_URI, theVatprintDataPackage);
		return theVatprintDataPackage;
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
	public EAttribute getPrinting_LayerHeight() {
		return (EAttribute)printingEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrinting_PlannedExposure() {
		return (EAttribute)printingEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrinting_ActualExposure() {
		return (EAttribute)printingEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrinting_ExposureForLayer() {
		return (EAttribute)printingEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrinting_Irradiance() {
		return (EAttribute)printingEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrinting_PenetrationDepth() {
		return (EAttribute)printingEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrinting_CriticalDose() {
		return (EAttribute)printingEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrinting_OverCure() {
		return (EAttribute)printingEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrinting_PartHeight() {
		return (EAttribute)printingEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrinting_BaseLayers() {
		return (EAttribute)printingEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrinting_BaseExposure() {
		return (EAttribute)printingEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrinting_MoveTime() {
		return (EAttribute)printingEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrinting_PrintedVolume() {
		return (EAttribute)printingEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getWashing() {
		return washingEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWashing_Solvent() {
		return (EAttribute)washingEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWashing_PlannedMinutes() {
		return (EAttribute)washingEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWashing_ActualMinutes() {
		return (EAttribute)washingEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWashing_Baths() {
		return (EAttribute)washingEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWashing_BathVolume() {
		return (EAttribute)washingEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWashing_CarriedVolume() {
		return (EAttribute)washingEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getPostCuring() {
		return postCuringEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPostCuring_PlannedDryMinutes() {
		return (EAttribute)postCuringEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPostCuring_ActualDryMinutes() {
		return (EAttribute)postCuringEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPostCuring_MassSteady() {
		return (EAttribute)postCuringEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPostCuring_PlannedMinutes() {
		return (EAttribute)postCuringEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPostCuring_ActualMinutes() {
		return (EAttribute)postCuringEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPostCuring_PlannedTemperature() {
		return (EAttribute)postCuringEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPostCuring_ActualTemperature() {
		return (EAttribute)postCuringEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPostCuring_Medium() {
		return (EAttribute)postCuringEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getWashSolvent() {
		return washSolventEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getPostCureMedium() {
		return postCureMediumEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public VatprintDataFactory getVatprintDataFactory() {
		return (VatprintDataFactory)getEFactoryInstance();
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
		printingEClass = createEClass(PRINTING);
		createEAttribute(printingEClass, PRINTING__LAYER_HEIGHT);
		createEAttribute(printingEClass, PRINTING__PLANNED_EXPOSURE);
		createEAttribute(printingEClass, PRINTING__ACTUAL_EXPOSURE);
		createEAttribute(printingEClass, PRINTING__EXPOSURE_FOR_LAYER);
		createEAttribute(printingEClass, PRINTING__IRRADIANCE);
		createEAttribute(printingEClass, PRINTING__PENETRATION_DEPTH);
		createEAttribute(printingEClass, PRINTING__CRITICAL_DOSE);
		createEAttribute(printingEClass, PRINTING__OVER_CURE);
		createEAttribute(printingEClass, PRINTING__PART_HEIGHT);
		createEAttribute(printingEClass, PRINTING__BASE_LAYERS);
		createEAttribute(printingEClass, PRINTING__BASE_EXPOSURE);
		createEAttribute(printingEClass, PRINTING__MOVE_TIME);
		createEAttribute(printingEClass, PRINTING__PRINTED_VOLUME);

		washingEClass = createEClass(WASHING);
		createEAttribute(washingEClass, WASHING__SOLVENT);
		createEAttribute(washingEClass, WASHING__PLANNED_MINUTES);
		createEAttribute(washingEClass, WASHING__ACTUAL_MINUTES);
		createEAttribute(washingEClass, WASHING__BATHS);
		createEAttribute(washingEClass, WASHING__BATH_VOLUME);
		createEAttribute(washingEClass, WASHING__CARRIED_VOLUME);

		postCuringEClass = createEClass(POST_CURING);
		createEAttribute(postCuringEClass, POST_CURING__PLANNED_DRY_MINUTES);
		createEAttribute(postCuringEClass, POST_CURING__ACTUAL_DRY_MINUTES);
		createEAttribute(postCuringEClass, POST_CURING__MASS_STEADY);
		createEAttribute(postCuringEClass, POST_CURING__PLANNED_MINUTES);
		createEAttribute(postCuringEClass, POST_CURING__ACTUAL_MINUTES);
		createEAttribute(postCuringEClass, POST_CURING__PLANNED_TEMPERATURE);
		createEAttribute(postCuringEClass, POST_CURING__ACTUAL_TEMPERATURE);
		createEAttribute(postCuringEClass, POST_CURING__MEDIUM);

		// Create enums
		washSolventEEnum = createEEnum(WASH_SOLVENT);
		postCureMediumEEnum = createEEnum(POST_CURE_MEDIUM);
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
		initEClass(printingEClass, Printing.class, "Printing", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getPrinting_LayerHeight(), ecorePackage.getEDoubleObject(), "layerHeight", null, 0, 1, Printing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPrinting_PlannedExposure(), ecorePackage.getEDoubleObject(), "plannedExposure", null, 0, 1, Printing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPrinting_ActualExposure(), ecorePackage.getEDoubleObject(), "actualExposure", null, 0, 1, Printing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPrinting_ExposureForLayer(), ecorePackage.getEDoubleObject(), "exposureForLayer", null, 0, 1, Printing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPrinting_Irradiance(), ecorePackage.getEDoubleObject(), "irradiance", null, 0, 1, Printing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPrinting_PenetrationDepth(), ecorePackage.getEDoubleObject(), "penetrationDepth", null, 0, 1, Printing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPrinting_CriticalDose(), ecorePackage.getEDoubleObject(), "criticalDose", null, 0, 1, Printing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPrinting_OverCure(), ecorePackage.getEDoubleObject(), "overCure", null, 0, 1, Printing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPrinting_PartHeight(), ecorePackage.getEDoubleObject(), "partHeight", null, 0, 1, Printing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPrinting_BaseLayers(), ecorePackage.getEIntegerObject(), "baseLayers", null, 0, 1, Printing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPrinting_BaseExposure(), ecorePackage.getEDoubleObject(), "baseExposure", null, 0, 1, Printing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPrinting_MoveTime(), ecorePackage.getEDoubleObject(), "moveTime", null, 0, 1, Printing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPrinting_PrintedVolume(), ecorePackage.getEDoubleObject(), "printedVolume", null, 0, 1, Printing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(washingEClass, Washing.class, "Washing", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getWashing_Solvent(), this.getWashSolvent(), "solvent", null, 0, 1, Washing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWashing_PlannedMinutes(), ecorePackage.getEDoubleObject(), "plannedMinutes", null, 0, 1, Washing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWashing_ActualMinutes(), ecorePackage.getEDoubleObject(), "actualMinutes", null, 0, 1, Washing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWashing_Baths(), ecorePackage.getEIntegerObject(), "baths", null, 0, 1, Washing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWashing_BathVolume(), ecorePackage.getEDoubleObject(), "bathVolume", null, 0, 1, Washing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWashing_CarriedVolume(), ecorePackage.getEDoubleObject(), "carriedVolume", null, 0, 1, Washing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(postCuringEClass, PostCuring.class, "PostCuring", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getPostCuring_PlannedDryMinutes(), ecorePackage.getEDoubleObject(), "plannedDryMinutes", null, 0, 1, PostCuring.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPostCuring_ActualDryMinutes(), ecorePackage.getEDoubleObject(), "actualDryMinutes", null, 0, 1, PostCuring.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPostCuring_MassSteady(), ecorePackage.getEBooleanObject(), "massSteady", null, 0, 1, PostCuring.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPostCuring_PlannedMinutes(), ecorePackage.getEDoubleObject(), "plannedMinutes", null, 0, 1, PostCuring.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPostCuring_ActualMinutes(), ecorePackage.getEDoubleObject(), "actualMinutes", null, 0, 1, PostCuring.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPostCuring_PlannedTemperature(), ecorePackage.getEDoubleObject(), "plannedTemperature", null, 0, 1, PostCuring.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPostCuring_ActualTemperature(), ecorePackage.getEDoubleObject(), "actualTemperature", null, 0, 1, PostCuring.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPostCuring_Medium(), this.getPostCureMedium(), "medium", null, 0, 1, PostCuring.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		// Initialize enums and add enum literals
		initEEnum(washSolventEEnum, WashSolvent.class, "WashSolvent");
		addEEnumLiteral(washSolventEEnum, WashSolvent.UNKNOWN);
		addEEnumLiteral(washSolventEEnum, WashSolvent.ISOPROPANOL);
		addEEnumLiteral(washSolventEEnum, WashSolvent.ETHANOL);
		addEEnumLiteral(washSolventEEnum, WashSolvent.WATER);
		addEEnumLiteral(washSolventEEnum, WashSolvent.OTHER);

		initEEnum(postCureMediumEEnum, PostCureMedium.class, "PostCureMedium");
		addEEnumLiteral(postCureMediumEEnum, PostCureMedium.UNKNOWN);
		addEEnumLiteral(postCureMediumEEnum, PostCureMedium.AIR);
		addEEnumLiteral(postCureMediumEEnum, PostCureMedium.WATER);
		addEEnumLiteral(postCureMediumEEnum, PostCureMedium.GLYCERINE);
		addEEnumLiteral(postCureMediumEEnum, PostCureMedium.INERT_GAS);

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
		  (getPrinting_LayerHeight(),
		   source,
		   new String[] {
			   "kind", "LENGTH",
			   "unit", "um",
			   "min", "5",
			   "max", "500",
			   "label", "Layer height",
			   "role", "planned",
			   "help", "Thickness of one layer."
		   });
		addAnnotation
		  (getPrinting_PlannedExposure(),
		   source,
		   new String[] {
			   "kind", "DURATION",
			   "unit", "s",
			   "min", "0",
			   "max", "600",
			   "label", "Exposure",
			   "role", "planned",
			   "help", "Of a normal layer."
		   });
		addAnnotation
		  (getPrinting_ActualExposure(),
		   source,
		   new String[] {
			   "kind", "DURATION",
			   "unit", "s",
			   "min", "0",
			   "max", "600",
			   "label", "Exposure used",
			   "role", "actual",
			   "of", "plannedExposure",
			   "limit", "2%",
			   "help", "As set on the machine."
		   });
		addAnnotation
		  (getPrinting_ExposureForLayer(),
		   source,
		   new String[] {
			   "kind", "LENGTH",
			   "unit", "um",
			   "min", "5",
			   "max", "500",
			   "label", "Exposure is for layers of",
			   "role", "planned",
			   "help", "The layer height for which that exposure was found; it does not hold for another one."
		   });
		addAnnotation
		  (getPrinting_Irradiance(),
		   source,
		   new String[] {
			   "kind", "IRRADIANCE",
			   "unit", "mW/cm2",
			   "min", "0",
			   "max", "1000",
			   "label", "Irradiance",
			   "role", "planned",
			   "help", "Read at the vat floor with a meter for the lamp\'s wavelength."
		   });
		addAnnotation
		  (getPrinting_PenetrationDepth(),
		   source,
		   new String[] {
			   "kind", "LENGTH",
			   "unit", "um",
			   "min", "1",
			   "max", "5000",
			   "label", "Penetration depth Dp",
			   "role", "planned",
			   "help", "Slope of your own working curve."
		   });
		addAnnotation
		  (getPrinting_CriticalDose(),
		   source,
		   new String[] {
			   "kind", "DOSE",
			   "unit", "mJ/cm2",
			   "min", "0",
			   "max", "10000",
			   "label", "Critical dose Ec",
			   "role", "planned",
			   "help", "Where your own working curve meets zero depth."
		   });
		addAnnotation
		  (getPrinting_OverCure(),
		   source,
		   new String[] {
			   "kind", "LENGTH",
			   "unit", "um",
			   "min", "0",
			   "max", "1000",
			   "label", "Over-cure wanted",
			   "role", "planned",
			   "help", "How far a layer shall cure into the one below it."
		   });
		addAnnotation
		  (getPrinting_PartHeight(),
		   source,
		   new String[] {
			   "kind", "LENGTH",
			   "unit", "mm",
			   "min", "0",
			   "max", "1000",
			   "label", "Height of the print",
			   "role", "planned",
			   "help", "From the plate to the top, supports included."
		   });
		addAnnotation
		  (getPrinting_BaseLayers(),
		   source,
		   new String[] {
			   "min", "0",
			   "max", "200",
			   "label", "Base layers",
			   "role", "planned",
			   "help", "First layers with a longer exposure."
		   });
		addAnnotation
		  (getPrinting_BaseExposure(),
		   source,
		   new String[] {
			   "kind", "DURATION",
			   "unit", "s",
			   "min", "0",
			   "max", "600",
			   "label", "Base exposure",
			   "role", "planned",
			   "help", "Of each base layer."
		   });
		addAnnotation
		  (getPrinting_MoveTime(),
		   source,
		   new String[] {
			   "kind", "DURATION",
			   "unit", "s",
			   "min", "0",
			   "max", "120",
			   "label", "Move per layer",
			   "role", "planned",
			   "help", "Lift, lower and wait between two exposures."
		   });
		addAnnotation
		  (getPrinting_PrintedVolume(),
		   source,
		   new String[] {
			   "kind", "VOLUME",
			   "unit", "cm3",
			   "min", "0",
			   "max", "100000",
			   "label", "Volume with supports",
			   "role", "planned",
			   "help", "Of everything that is printed."
		   });
		addAnnotation
		  (getWashing_Solvent(),
		   source,
		   new String[] {
			   "label", "Solvent",
			   "role", "planned",
			   "help", "What the bath is."
		   });
		addAnnotation
		  (getWashing_PlannedMinutes(),
		   source,
		   new String[] {
			   "kind", "DURATION",
			   "unit", "min",
			   "min", "0",
			   "max", "600",
			   "label", "Wash, all baths",
			   "role", "planned",
			   "help", "Time in the solvent, all baths together."
		   });
		addAnnotation
		  (getWashing_ActualMinutes(),
		   source,
		   new String[] {
			   "kind", "DURATION",
			   "unit", "min",
			   "min", "0",
			   "max", "600",
			   "label", "Washed for",
			   "role", "actual",
			   "of", "plannedMinutes",
			   "limit", "25%",
			   "help", "Time in the solvent, all baths together."
		   });
		addAnnotation
		  (getWashing_Baths(),
		   source,
		   new String[] {
			   "min", "1",
			   "max", "20",
			   "label", "Baths",
			   "role", "planned",
			   "help", "Baths one after another, the last one the cleanest."
		   });
		addAnnotation
		  (getWashing_BathVolume(),
		   source,
		   new String[] {
			   "kind", "VOLUME",
			   "unit", "ml",
			   "min", "0",
			   "max", "100000",
			   "label", "Solvent in a bath",
			   "role", "planned",
			   "help", "In each bath."
		   });
		addAnnotation
		  (getWashing_CarriedVolume(),
		   source,
		   new String[] {
			   "kind", "VOLUME",
			   "unit", "ml",
			   "min", "0",
			   "max", "10000",
			   "label", "Liquid carried over",
			   "role", "planned",
			   "help", "What clings to the parts from one bath to the next."
		   });
		addAnnotation
		  (getPostCuring_PlannedDryMinutes(),
		   source,
		   new String[] {
			   "kind", "DURATION",
			   "unit", "min",
			   "min", "0",
			   "max", "10000",
			   "label", "Drying before light",
			   "role", "planned",
			   "help", "Until the solvent is out of the part."
		   });
		addAnnotation
		  (getPostCuring_ActualDryMinutes(),
		   source,
		   new String[] {
			   "kind", "DURATION",
			   "unit", "min",
			   "min", "0",
			   "max", "10000",
			   "label", "Dried for",
			   "role", "actual",
			   "of", "plannedDryMinutes",
			   "limit", "25%",
			   "help", "Before the lamp was switched on."
		   });
		addAnnotation
		  (getPostCuring_MassSteady(),
		   source,
		   new String[] {
			   "label", "Mass had stopped falling",
			   "help", "Weighed twice, some minutes apart, without a difference."
		   });
		addAnnotation
		  (getPostCuring_PlannedMinutes(),
		   source,
		   new String[] {
			   "kind", "DURATION",
			   "unit", "min",
			   "min", "0",
			   "max", "10000",
			   "label", "Light",
			   "role", "planned",
			   "help", "Minutes under the lamp, all sides together."
		   });
		addAnnotation
		  (getPostCuring_ActualMinutes(),
		   source,
		   new String[] {
			   "kind", "DURATION",
			   "unit", "min",
			   "min", "0",
			   "max", "10000",
			   "label", "Light given",
			   "role", "actual",
			   "of", "plannedMinutes",
			   "limit", "10%",
			   "help", "Minutes under the lamp, all sides together."
		   });
		addAnnotation
		  (getPostCuring_PlannedTemperature(),
		   source,
		   new String[] {
			   "kind", "TEMPERATURE",
			   "unit", "degC",
			   "min", "0",
			   "max", "150",
			   "label", "Temperature",
			   "role", "planned",
			   "help", "Of the part while it is post-cured."
		   });
		addAnnotation
		  (getPostCuring_ActualTemperature(),
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
			   "help", "Read beside the part."
		   });
		addAnnotation
		  (getPostCuring_Medium(),
		   source,
		   new String[] {
			   "label", "Around the part",
			   "role", "planned",
			   "help", "Air leaves some resins with a tacky skin."
		   });
	}

} //VatprintDataPackageImpl
