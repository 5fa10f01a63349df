/**
 */
package org.flexwright.mixing.data.impl;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EPackage;

import org.eclipse.emf.ecore.impl.EPackageImpl;

import org.flexwright.mixing.data.Basis;
import org.flexwright.mixing.data.DegasDetails;
import org.flexwright.mixing.data.Extra;
import org.flexwright.mixing.data.FillerBasis;
import org.flexwright.mixing.data.MixDetails;
import org.flexwright.mixing.data.MixingDataFactory;
import org.flexwright.mixing.data.MixingDataPackage;
import org.flexwright.mixing.data.WeighDetails;
import org.flexwright.mixing.data.WorkingTimeRule;

import org.flexwright.model.ModelPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model <b>Package</b>.
 * <!-- end-user-doc -->
 * @generated
 */
public class MixingDataPackageImpl extends EPackageImpl implements MixingDataPackage {
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass weighDetailsEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass mixDetailsEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass degasDetailsEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum basisEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum extraEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum fillerBasisEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum workingTimeRuleEEnum = null;

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
	 * @see org.flexwright.mixing.data.MixingDataPackage#eNS_URI
	 * @see #init()
	 * @generated
	 */
	private MixingDataPackageImpl() {
		super(eNS_URI, MixingDataFactory.eINSTANCE);
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
	 * <p>This method is used to initialize {@link MixingDataPackage#eINSTANCE} when that field is accessed.
	 * Clients should not invoke it directly. Instead, they should simply access that field to obtain the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #eNS_URI
	 * @see #createPackageContents()
	 * @see #initializePackageContents()
	 * @generated
	 */
	public static MixingDataPackage init() {
		if (isInited) return (MixingDataPackage)EPackage.Registry.INSTANCE.getEPackage(MixingDataPackage.eNS_URI);

		// Obtain or create and register package
		Object registeredMixingDataPackage = EPackage.Registry.INSTANCE.get(eNS_URI);
		MixingDataPackageImpl theMixingDataPackage = registeredMixingDataPackage instanceof MixingDataPackageImpl ? (MixingDataPackageImpl)registeredMixingDataPackage : new MixingDataPackageImpl();

		isInited = true;

		// Initialize simple dependencies
		ModelPackage.eINSTANCE.eClass();

		// Create package meta-data objects
		theMixingDataPackage.createPackageContents();

		// Initialize created meta-data
		theMixingDataPackage.initializePackageContents();

		// Mark meta-data to indicate it can't be changed
		theMixingDataPackage.freeze();

		// Update the registry and return the package
		EPackage.Registry.INSTANCE.put(MixingDataPackage.eNS_URI, theMixingDataPackage);
		return theMixingDataPackage;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getWeighDetails() {
		return weighDetailsEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWeighDetails_RatioA() {
		return (EAttribute)weighDetailsEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWeighDetails_RatioB() {
		return (EAttribute)weighDetailsEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWeighDetails_Basis() {
		return (EAttribute)weighDetailsEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWeighDetails_DensityA() {
		return (EAttribute)weighDetailsEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWeighDetails_DensityB() {
		return (EAttribute)weighDetailsEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWeighDetails_OwnLimit() {
		return (EAttribute)weighDetailsEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWeighDetails_PartCount() {
		return (EAttribute)weighDetailsEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWeighDetails_PartVolume() {
		return (EAttribute)weighDetailsEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWeighDetails_RunnerVolume() {
		return (EAttribute)weighDetailsEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWeighDetails_DeadVolume() {
		return (EAttribute)weighDetailsEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWeighDetails_Extra() {
		return (EAttribute)weighDetailsEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWeighDetails_ExtraKind() {
		return (EAttribute)weighDetailsEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWeighDetails_Filler() {
		return (EAttribute)weighDetailsEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWeighDetails_FillerBasis() {
		return (EAttribute)weighDetailsEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWeighDetails_BatchMass() {
		return (EAttribute)weighDetailsEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWeighDetails_Index() {
		return (EAttribute)weighDetailsEClass.getEStructuralFeatures().get(15);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWeighDetails_MeasuredVolume() {
		return (EAttribute)weighDetailsEClass.getEStructuralFeatures().get(16);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWeighDetails_CupVolume() {
		return (EAttribute)weighDetailsEClass.getEStructuralFeatures().get(17);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getMixDetails() {
		return mixDetailsEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMixDetails_PlannedMinutes() {
		return (EAttribute)mixDetailsEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMixDetails_Minutes() {
		return (EAttribute)mixDetailsEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMixDetails_PlannedOrder() {
		return (EAttribute)mixDetailsEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMixDetails_Order() {
		return (EAttribute)mixDetailsEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMixDetails_Tool() {
		return (EAttribute)mixDetailsEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMixDetails_Scraped() {
		return (EAttribute)mixDetailsEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMixDetails_WorkingTime() {
		return (EAttribute)mixDetailsEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMixDetails_WorkingTimeRule() {
		return (EAttribute)mixDetailsEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMixDetails_WorkingTimeMass() {
		return (EAttribute)mixDetailsEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMixDetails_WorkingTimeC() {
		return (EAttribute)mixDetailsEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMixDetails_WorkingTimeGrowth() {
		return (EAttribute)mixDetailsEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMixDetails_WorkingTimeEnergy() {
		return (EAttribute)mixDetailsEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getDegasDetails() {
		return degasDetailsEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDegasDetails_PlannedMinutes() {
		return (EAttribute)degasDetailsEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDegasDetails_Minutes() {
		return (EAttribute)degasDetailsEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDegasDetails_PlannedPressure() {
		return (EAttribute)degasDetailsEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDegasDetails_Pressure() {
		return (EAttribute)degasDetailsEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDegasDetails_CupVolume() {
		return (EAttribute)degasDetailsEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDegasDetails_MixVolume() {
		return (EAttribute)degasDetailsEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getBasis() {
		return basisEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getExtra() {
		return extraEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getFillerBasis() {
		return fillerBasisEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getWorkingTimeRule() {
		return workingTimeRuleEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public MixingDataFactory getMixingDataFactory() {
		return (MixingDataFactory)getEFactoryInstance();
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
		weighDetailsEClass = createEClass(WEIGH_DETAILS);
		createEAttribute(weighDetailsEClass, WEIGH_DETAILS__RATIO_A);
		createEAttribute(weighDetailsEClass, WEIGH_DETAILS__RATIO_B);
		createEAttribute(weighDetailsEClass, WEIGH_DETAILS__BASIS);
		createEAttribute(weighDetailsEClass, WEIGH_DETAILS__DENSITY_A);
		createEAttribute(weighDetailsEClass, WEIGH_DETAILS__DENSITY_B);
		createEAttribute(weighDetailsEClass, WEIGH_DETAILS__OWN_LIMIT);
		createEAttribute(weighDetailsEClass, WEIGH_DETAILS__PART_COUNT);
		createEAttribute(weighDetailsEClass, WEIGH_DETAILS__PART_VOLUME);
		createEAttribute(weighDetailsEClass, WEIGH_DETAILS__RUNNER_VOLUME);
		createEAttribute(weighDetailsEClass, WEIGH_DETAILS__DEAD_VOLUME);
		createEAttribute(weighDetailsEClass, WEIGH_DETAILS__EXTRA);
		createEAttribute(weighDetailsEClass, WEIGH_DETAILS__EXTRA_KIND);
		createEAttribute(weighDetailsEClass, WEIGH_DETAILS__FILLER);
		createEAttribute(weighDetailsEClass, WEIGH_DETAILS__FILLER_BASIS);
		createEAttribute(weighDetailsEClass, WEIGH_DETAILS__BATCH_MASS);
		createEAttribute(weighDetailsEClass, WEIGH_DETAILS__INDEX);
		createEAttribute(weighDetailsEClass, WEIGH_DETAILS__MEASURED_VOLUME);
		createEAttribute(weighDetailsEClass, WEIGH_DETAILS__CUP_VOLUME);

		mixDetailsEClass = createEClass(MIX_DETAILS);
		createEAttribute(mixDetailsEClass, MIX_DETAILS__PLANNED_MINUTES);
		createEAttribute(mixDetailsEClass, MIX_DETAILS__MINUTES);
		createEAttribute(mixDetailsEClass, MIX_DETAILS__PLANNED_ORDER);
		createEAttribute(mixDetailsEClass, MIX_DETAILS__ORDER);
		createEAttribute(mixDetailsEClass, MIX_DETAILS__TOOL);
		createEAttribute(mixDetailsEClass, MIX_DETAILS__SCRAPED);
		createEAttribute(mixDetailsEClass, MIX_DETAILS__WORKING_TIME);
		createEAttribute(mixDetailsEClass, MIX_DETAILS__WORKING_TIME_RULE);
		createEAttribute(mixDetailsEClass, MIX_DETAILS__WORKING_TIME_MASS);
		createEAttribute(mixDetailsEClass, MIX_DETAILS__WORKING_TIME_C);
		createEAttribute(mixDetailsEClass, MIX_DETAILS__WORKING_TIME_GROWTH);
		createEAttribute(mixDetailsEClass, MIX_DETAILS__WORKING_TIME_ENERGY);

		degasDetailsEClass = createEClass(DEGAS_DETAILS);
		createEAttribute(degasDetailsEClass, DEGAS_DETAILS__PLANNED_MINUTES);
		createEAttribute(degasDetailsEClass, DEGAS_DETAILS__MINUTES);
		createEAttribute(degasDetailsEClass, DEGAS_DETAILS__PLANNED_PRESSURE);
		createEAttribute(degasDetailsEClass, DEGAS_DETAILS__PRESSURE);
		createEAttribute(degasDetailsEClass, DEGAS_DETAILS__CUP_VOLUME);
		createEAttribute(degasDetailsEClass, DEGAS_DETAILS__MIX_VOLUME);

		// Create enums
		basisEEnum = createEEnum(BASIS);
		extraEEnum = createEEnum(EXTRA);
		fillerBasisEEnum = createEEnum(FILLER_BASIS);
		workingTimeRuleEEnum = createEEnum(WORKING_TIME_RULE);
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
		initEClass(weighDetailsEClass, WeighDetails.class, "WeighDetails", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getWeighDetails_RatioA(), ecorePackage.getEDoubleObject(), "ratioA", null, 0, 1, WeighDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWeighDetails_RatioB(), ecorePackage.getEDoubleObject(), "ratioB", null, 0, 1, WeighDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWeighDetails_Basis(), this.getBasis(), "basis", null, 0, 1, WeighDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWeighDetails_DensityA(), ecorePackage.getEDoubleObject(), "densityA", null, 0, 1, WeighDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWeighDetails_DensityB(), ecorePackage.getEDoubleObject(), "densityB", null, 0, 1, WeighDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWeighDetails_OwnLimit(), ecorePackage.getEDoubleObject(), "ownLimit", null, 0, 1, WeighDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWeighDetails_PartCount(), ecorePackage.getEIntegerObject(), "partCount", null, 0, 1, WeighDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWeighDetails_PartVolume(), ecorePackage.getEDoubleObject(), "partVolume", null, 0, 1, WeighDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWeighDetails_RunnerVolume(), ecorePackage.getEDoubleObject(), "runnerVolume", null, 0, 1, WeighDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWeighDetails_DeadVolume(), ecorePackage.getEDoubleObject(), "deadVolume", null, 0, 1, WeighDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWeighDetails_Extra(), ecorePackage.getEDoubleObject(), "extra", null, 0, 1, WeighDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWeighDetails_ExtraKind(), this.getExtra(), "extraKind", null, 0, 1, WeighDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWeighDetails_Filler(), ecorePackage.getEDoubleObject(), "filler", null, 0, 1, WeighDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWeighDetails_FillerBasis(), this.getFillerBasis(), "fillerBasis", null, 0, 1, WeighDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWeighDetails_BatchMass(), ecorePackage.getEDoubleObject(), "batchMass", null, 0, 1, WeighDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWeighDetails_Index(), ecorePackage.getEDoubleObject(), "index", null, 0, 1, WeighDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWeighDetails_MeasuredVolume(), ecorePackage.getEDoubleObject(), "measuredVolume", null, 0, 1, WeighDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWeighDetails_CupVolume(), ecorePackage.getEDoubleObject(), "cupVolume", null, 0, 1, WeighDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(mixDetailsEClass, MixDetails.class, "MixDetails", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getMixDetails_PlannedMinutes(), ecorePackage.getEDoubleObject(), "plannedMinutes", null, 0, 1, MixDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMixDetails_Minutes(), ecorePackage.getEDoubleObject(), "minutes", null, 0, 1, MixDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMixDetails_PlannedOrder(), ecorePackage.getEString(), "plannedOrder", null, 0, 1, MixDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMixDetails_Order(), ecorePackage.getEString(), "order", null, 0, 1, MixDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMixDetails_Tool(), ecorePackage.getEString(), "tool", null, 0, 1, MixDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMixDetails_Scraped(), ecorePackage.getEBooleanObject(), "scraped", null, 0, 1, MixDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMixDetails_WorkingTime(), ecorePackage.getEDoubleObject(), "workingTime", null, 0, 1, MixDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMixDetails_WorkingTimeRule(), this.getWorkingTimeRule(), "workingTimeRule", null, 0, 1, MixDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMixDetails_WorkingTimeMass(), ecorePackage.getEDoubleObject(), "workingTimeMass", null, 0, 1, MixDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMixDetails_WorkingTimeC(), ecorePackage.getEDoubleObject(), "workingTimeC", null, 0, 1, MixDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMixDetails_WorkingTimeGrowth(), ecorePackage.getEDoubleObject(), "workingTimeGrowth", null, 0, 1, MixDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMixDetails_WorkingTimeEnergy(), ecorePackage.getEDoubleObject(), "workingTimeEnergy", null, 0, 1, MixDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(degasDetailsEClass, DegasDetails.class, "DegasDetails", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getDegasDetails_PlannedMinutes(), ecorePackage.getEDoubleObject(), "plannedMinutes", null, 0, 1, DegasDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDegasDetails_Minutes(), ecorePackage.getEDoubleObject(), "minutes", null, 0, 1, DegasDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDegasDetails_PlannedPressure(), ecorePackage.getEDoubleObject(), "plannedPressure", null, 0, 1, DegasDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDegasDetails_Pressure(), ecorePackage.getEDoubleObject(), "pressure", null, 0, 1, DegasDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDegasDetails_CupVolume(), ecorePackage.getEDoubleObject(), "cupVolume", null, 0, 1, DegasDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDegasDetails_MixVolume(), ecorePackage.getEDoubleObject(), "mixVolume", null, 0, 1, DegasDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		// Initialize enums and add enum literals
		initEEnum(basisEEnum, Basis.class, "Basis");
		addEEnumLiteral(basisEEnum, Basis.WEIGHT);
		addEEnumLiteral(basisEEnum, Basis.VOLUME);

		initEEnum(extraEEnum, Extra.class, "Extra");
		addEEnumLiteral(extraEEnum, Extra.ALLOWANCE);
		addEEnumLiteral(extraEEnum, Extra.LOSS);

		initEEnum(fillerBasisEEnum, FillerBasis.class, "FillerBasis");
		addEEnumLiteral(fillerBasisEEnum, FillerBasis.UNSTATED);
		addEEnumLiteral(fillerBasisEEnum, FillerBasis.PHR);
		addEEnumLiteral(fillerBasisEEnum, FillerBasis.OF_TOTAL);
		addEEnumLiteral(fillerBasisEEnum, FillerBasis.OF_A);
		addEEnumLiteral(fillerBasisEEnum, FillerBasis.OF_B);

		initEEnum(workingTimeRuleEEnum, WorkingTimeRule.class, "WorkingTimeRule");
		addEEnumLiteral(workingTimeRuleEEnum, WorkingTimeRule.UNSTATED);
		addEEnumLiteral(workingTimeRuleEEnum, WorkingTimeRule.VISCOSITY_DOUBLES);
		addEEnumLiteral(workingTimeRuleEEnum, WorkingTimeRule.VISCOSITY_LIMIT);
		addEEnumLiteral(workingTimeRuleEEnum, WorkingTimeRule.WARMING);
		addEEnumLiteral(workingTimeRuleEEnum, WorkingTimeRule.GELS);

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
		  (getWeighDetails_RatioA(),
		   source,
		   new String[] {
			   "kind", "NUMBER",
			   "min", "0",
			   "minOpen", "true",
			   "max", "1000000",
			   "label", "Parts of A",
			   "role", "planned",
			   "def", "100",
			   "help", "Parts of A as the sheet gives them."
		   });
		addAnnotation
		  (getWeighDetails_RatioB(),
		   source,
		   new String[] {
			   "kind", "NUMBER",
			   "min", "0",
			   "minOpen", "true",
			   "max", "1000000",
			   "label", "Parts of B",
			   "role", "planned",
			   "help", "Parts of B as the sheet gives them."
		   });
		addAnnotation
		  (getWeighDetails_Basis(),
		   source,
		   new String[] {
			   "label", "Parts by",
			   "role", "planned",
			   "help", "Whether the parts are grams or millilitres. A ratio by volume needs both densities before it can be weighed."
		   });
		addAnnotation
		  (getWeighDetails_DensityA(),
		   source,
		   new String[] {
			   "kind", "DENSITY",
			   "unit", "g/cm3",
			   "min", "0.3",
			   "max", "5",
			   "label", "Density of A",
			   "role", "planned",
			   "help", "From the sheet, or own measurement."
		   });
		addAnnotation
		  (getWeighDetails_DensityB(),
		   source,
		   new String[] {
			   "kind", "DENSITY",
			   "unit", "g/cm3",
			   "min", "0.3",
			   "max", "5",
			   "label", "Density of B",
			   "role", "planned",
			   "help", "From the sheet, or own measurement."
		   });
		addAnnotation
		  (getWeighDetails_OwnLimit(),
		   source,
		   new String[] {
			   "kind", "FRACTION",
			   "unit", "%",
			   "min", "0.05",
			   "max", "50",
			   "label", "Own limit",
			   "role", "planned",
			   "def", "2",
			   "help", "Largest deviation of the ratio you accept; common practice, no source."
		   });
		addAnnotation
		  (getWeighDetails_PartCount(),
		   source,
		   new String[] {
			   "min", "1",
			   "max", "10000",
			   "label", "Parts to make",
			   "role", "planned",
			   "help", "How many parts the batch is for."
		   });
		addAnnotation
		  (getWeighDetails_PartVolume(),
		   source,
		   new String[] {
			   "kind", "VOLUME",
			   "unit", "ml",
			   "min", "0",
			   "max", "100000",
			   "label", "Part volume",
			   "role", "planned",
			   "help", "Volume of one part."
		   });
		addAnnotation
		  (getWeighDetails_RunnerVolume(),
		   source,
		   new String[] {
			   "kind", "VOLUME",
			   "unit", "ml",
			   "min", "0",
			   "max", "100000",
			   "label", "Runner volume",
			   "role", "planned",
			   "help", "Sprue, runner and riser of one part."
		   });
		addAnnotation
		  (getWeighDetails_DeadVolume(),
		   source,
		   new String[] {
			   "kind", "VOLUME",
			   "unit", "ml",
			   "min", "0",
			   "max", "100000",
			   "label", "Dead volume",
			   "role", "planned",
			   "help", "What stays in syringe or hose, once a batch."
		   });
		addAnnotation
		  (getWeighDetails_Extra(),
		   source,
		   new String[] {
			   "kind", "FRACTION",
			   "unit", "%",
			   "min", "0",
			   "max", "90",
			   "label", "Extra",
			   "role", "planned",
			   "help", "Allowance or loss, see the next field."
		   });
		addAnnotation
		  (getWeighDetails_ExtraKind(),
		   source,
		   new String[] {
			   "label", "Extra is",
			   "role", "planned",
			   "help", "An allowance is added to the net; a loss is the share of the mixed amount that never reaches the mould. 15 % is not the same amount in both."
		   });
		addAnnotation
		  (getWeighDetails_Filler(),
		   source,
		   new String[] {
			   "kind", "NUMBER",
			   "min", "0",
			   "max", "1000",
			   "label", "Filler amount",
			   "role", "planned",
			   "help", "The number as the recipe gives it."
		   });
		addAnnotation
		  (getWeighDetails_FillerBasis(),
		   source,
		   new String[] {
			   "label", "Filler counted on",
			   "role", "planned",
			   "help", "10 on 100 g of polymer is 9.09 % of the total."
		   });
		addAnnotation
		  (getWeighDetails_BatchMass(),
		   source,
		   new String[] {
			   "kind", "MASS",
			   "unit", "g",
			   "min", "0",
			   "minOpen", "true",
			   "max", "100000",
			   "label", "Batch",
			   "role", "planned",
			   "help", "Everything in the cup together. Empty: it follows from the parts to make."
		   });
		addAnnotation
		  (getWeighDetails_Index(),
		   source,
		   new String[] {
			   "kind", "NUMBER",
			   "min", "80",
			   "max", "130",
			   "label", "Index wanted",
			   "role", "planned",
			   "help", "NCO groups to 100 groups that react with them, water included. Empty: the ratio says it."
		   });
		addAnnotation
		  (getWeighDetails_MeasuredVolume(),
		   source,
		   new String[] {
			   "kind", "VOLUME",
			   "unit", "ml",
			   "min", "0",
			   "minOpen", "true",
			   "max", "100000",
			   "label", "Volume of a part, measured",
			   "role", "planned",
			   "help", "Volume of one part as measured, by water pushed aside or by mass over density; the part volume is that of the drawing."
		   });
		addAnnotation
		  (getWeighDetails_CupVolume(),
		   source,
		   new String[] {
			   "kind", "VOLUME",
			   "unit", "ml",
			   "min", "0",
			   "minOpen", "true",
			   "max", "100000",
			   "label", "Cup holds",
			   "role", "planned",
			   "help", "Up to the brim."
		   });
		addAnnotation
		  (getMixDetails_PlannedMinutes(),
		   source,
		   new String[] {
			   "kind", "DURATION",
			   "unit", "min",
			   "min", "0",
			   "max", "1440",
			   "label", "Mixing time",
			   "role", "planned",
			   "help", "How long it shall be stirred."
		   });
		addAnnotation
		  (getMixDetails_Minutes(),
		   source,
		   new String[] {
			   "kind", "DURATION",
			   "unit", "min",
			   "min", "0",
			   "max", "1440",
			   "label", "Mixing time",
			   "role", "actual",
			   "of", "plannedMinutes",
			   "limit", "25%",
			   "help", "How long it was stirred."
		   });
		addAnnotation
		  (getMixDetails_PlannedOrder(),
		   source,
		   new String[] {
			   "label", "Order of adding",
			   "role", "planned",
			   "help", "What goes in first."
		   });
		addAnnotation
		  (getMixDetails_Order(),
		   source,
		   new String[] {
			   "label", "Order of adding",
			   "role", "actual",
			   "of", "plannedOrder",
			   "help", "What went in first."
		   });
		addAnnotation
		  (getMixDetails_Tool(),
		   source,
		   new String[] {
			   "label", "Tool",
			   "role", "planned",
			   "help", "What it is stirred with."
		   });
		addAnnotation
		  (getMixDetails_Scraped(),
		   source,
		   new String[] {
			   "label", "Walls and bottom scraped",
			   "role", "actual",
			   "help", "Unmixed resin at the wall gives tacky or soft spots."
		   });
		addAnnotation
		  (getMixDetails_WorkingTime(),
		   source,
		   new String[] {
			   "kind", "DURATION",
			   "unit", "min",
			   "min", "0",
			   "max", "10000",
			   "label", "Working time on the sheet",
			   "role", "planned",
			   "help", "Also called pot life."
		   });
		addAnnotation
		  (getMixDetails_WorkingTimeRule(),
		   source,
		   new String[] {
			   "label", "Working time ends when",
			   "role", "planned",
			   "help", "Sheets end it differently; without this two working times cannot be compared."
		   });
		addAnnotation
		  (getMixDetails_WorkingTimeMass(),
		   source,
		   new String[] {
			   "kind", "MASS",
			   "unit", "g",
			   "min", "0",
			   "max", "100000",
			   "label", "Working time holds for",
			   "role", "planned",
			   "help", "Amount in the cup it was measured with: a bigger cup runs hotter and shorter."
		   });
		addAnnotation
		  (getMixDetails_WorkingTimeC(),
		   source,
		   new String[] {
			   "kind", "TEMPERATURE",
			   "unit", "degC",
			   "min", "-20",
			   "max", "150",
			   "label", "Working time at",
			   "role", "planned",
			   "help", "Temperature it was measured at."
		   });
		addAnnotation
		  (getMixDetails_WorkingTimeGrowth(),
		   source,
		   new String[] {
			   "kind", "NUMBER",
			   "min", "1",
			   "minOpen", "true",
			   "max", "1000",
			   "label", "Thicker by then, times",
			   "role", "planned",
			   "help", "How many times thicker the mixture is by then, where a growth of viscosity ends it otherwise than by doubling."
		   });
		addAnnotation
		  (getMixDetails_WorkingTimeEnergy(),
		   source,
		   new String[] {
			   "kind", "MOLAR_ENERGY",
			   "unit", "kJ/mol",
			   "min", "10",
			   "max", "200",
			   "label", "Activation energy",
			   "role", "planned",
			   "help", "Own activation energy of this mixture; empty: 35 to 75 kJ/mol is taken, 50 as likely."
		   });
		addAnnotation
		  (getDegasDetails_PlannedMinutes(),
		   source,
		   new String[] {
			   "kind", "DURATION",
			   "unit", "min",
			   "min", "0",
			   "max", "1440",
			   "label", "Time under vacuum",
			   "role", "planned",
			   "help", "From reaching the pressure to letting air in."
		   });
		addAnnotation
		  (getDegasDetails_Minutes(),
		   source,
		   new String[] {
			   "kind", "DURATION",
			   "unit", "min",
			   "min", "0",
			   "max", "1440",
			   "label", "Time under vacuum",
			   "role", "actual",
			   "of", "plannedMinutes",
			   "limit", "25%",
			   "help", "From reaching the pressure to letting air in."
		   });
		addAnnotation
		  (getDegasDetails_PlannedPressure(),
		   source,
		   new String[] {
			   "kind", "PRESSURE_ABSOLUTE",
			   "unit", "kPa",
			   "min", "0",
			   "max", "110",
			   "label", "Absolute pressure",
			   "role", "planned",
			   "help", "Not the reading below the room: 0 is a perfect vacuum."
		   });
		addAnnotation
		  (getDegasDetails_Pressure(),
		   source,
		   new String[] {
			   "kind", "PRESSURE_ABSOLUTE",
			   "unit", "kPa",
			   "min", "0",
			   "max", "110",
			   "label", "Absolute pressure",
			   "role", "actual",
			   "of", "plannedPressure",
			   "limit", "20%",
			   "help", "Not the reading below the room: 0 is a perfect vacuum."
		   });
		addAnnotation
		  (getDegasDetails_CupVolume(),
		   source,
		   new String[] {
			   "kind", "VOLUME",
			   "unit", "ml",
			   "min", "0",
			   "max", "100000",
			   "label", "Cup holds",
			   "role", "planned",
			   "help", "Up to the brim."
		   });
		addAnnotation
		  (getDegasDetails_MixVolume(),
		   source,
		   new String[] {
			   "kind", "VOLUME",
			   "unit", "ml",
			   "min", "0",
			   "max", "100000",
			   "label", "Mixture in the cup",
			   "role", "planned",
			   "help", "Foam rises to several times this."
		   });
	}

} //MixingDataPackageImpl
