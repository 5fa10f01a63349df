/**
 */
package org.flexwright.testing.data.impl;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EPackage;

import org.eclipse.emf.ecore.impl.EPackageImpl;

import org.flexwright.model.ModelPackage;

import org.flexwright.testing.data.BounceDetails;
import org.flexwright.testing.data.FilmDetails;
import org.flexwright.testing.data.HardnessDetails;
import org.flexwright.testing.data.HardnessRule;
import org.flexwright.testing.data.HoldDetails;
import org.flexwright.testing.data.PressDetails;
import org.flexwright.testing.data.RubberSort;
import org.flexwright.testing.data.Slack;
import org.flexwright.testing.data.SoakDetails;
import org.flexwright.testing.data.StretchDetails;
import org.flexwright.testing.data.StretchLoading;
import org.flexwright.testing.data.TestingDataFactory;
import org.flexwright.testing.data.TestingDataPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model <b>Package</b>.
 * <!-- end-user-doc -->
 * @generated
 */
public class TestingDataPackageImpl extends EPackageImpl implements TestingDataPackage {
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass hardnessDetailsEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass stretchDetailsEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass pressDetailsEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass holdDetailsEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass bounceDetailsEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass filmDetailsEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass soakDetailsEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum hardnessRuleEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum rubberSortEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum stretchLoadingEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum slackEEnum = null;

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
	 * @see org.flexwright.testing.data.TestingDataPackage#eNS_URI
	 * @see #init()
	 * @generated
	 */
	private TestingDataPackageImpl() {
		super(eNS_URI, TestingDataFactory.eINSTANCE);
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
	 * <p>This method is used to initialize {@link TestingDataPackage#eINSTANCE} when that field is accessed.
	 * Clients should not invoke it directly. Instead, they should simply access that field to obtain the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #eNS_URI
	 * @see #createPackageContents()
	 * @see #initializePackageContents()
	 * @generated
	 */
	public static TestingDataPackage init() {
		if (isInited) return (TestingDataPackage)EPackage.Registry.INSTANCE.getEPackage(TestingDataPackage.eNS_URI);

		// Obtain or create and register package
		Object registeredTestingDataPackage = EPackage.Registry.INSTANCE.get(eNS_URI);
		TestingDataPackageImpl theTestingDataPackage = registeredTestingDataPackage instanceof TestingDataPackageImpl ? (TestingDataPackageImpl)registeredTestingDataPackage : new TestingDataPackageImpl();

		isInited = true;

		// Initialize simple dependencies
		ModelPackage.eINSTANCE.eClass();

		// Create package meta-data objects
		theTestingDataPackage.createPackageContents();

		// Initialize created meta-data
		theTestingDataPackage.initializePackageContents();

		// Mark meta-data to indicate it can't be changed
		theTestingDataPackage.freeze();

		// Update the registry and return the package
		EPackage.Registry.INSTANCE.put(TestingDataPackage.eNS_URI, theTestingDataPackage);
		return theTestingDataPackage;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getHardnessDetails() {
		return hardnessDetailsEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getHardnessDetails_Rule() {
		return (EAttribute)hardnessDetailsEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getHardnessDetails_Sort() {
		return (EAttribute)hardnessDetailsEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getHardnessDetails_Plies() {
		return (EAttribute)hardnessDetailsEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getHardnessDetails_Edge() {
		return (EAttribute)hardnessDetailsEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getHardnessDetails_Spacing() {
		return (EAttribute)hardnessDetailsEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getHardnessDetails_OnStand() {
		return (EAttribute)hardnessDetailsEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getHardnessDetails_Curved() {
		return (EAttribute)hardnessDetailsEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getHardnessDetails_PlySmooth() {
		return (EAttribute)hardnessDetailsEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getStretchDetails() {
		return stretchDetailsEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStretchDetails_Loading() {
		return (EAttribute)stretchDetailsEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStretchDetails_Piece() {
		return (EAttribute)stretchDetailsEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStretchDetails_GaugeLength() {
		return (EAttribute)stretchDetailsEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStretchDetails_Width() {
		return (EAttribute)stretchDetailsEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStretchDetails_Thickness() {
		return (EAttribute)stretchDetailsEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStretchDetails_Speed() {
		return (EAttribute)stretchDetailsEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStretchDetails_Slack() {
		return (EAttribute)stretchDetailsEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStretchDetails_ZeroForce() {
		return (EAttribute)stretchDetailsEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStretchDetails_Broke() {
		return (EAttribute)stretchDetailsEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStretchDetails_BrokeInGrip() {
		return (EAttribute)stretchDetailsEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getPressDetails() {
		return pressDetailsEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPressDetails_Slack() {
		return (EAttribute)pressDetailsEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPressDetails_ZeroForce() {
		return (EAttribute)pressDetailsEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPressDetails_Speed() {
		return (EAttribute)pressDetailsEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPressDetails_Stop() {
		return (EAttribute)pressDetailsEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPressDetails_Tip() {
		return (EAttribute)pressDetailsEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getHoldDetails() {
		return holdDetailsEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getHoldDetails_Terms() {
		return (EAttribute)holdDetailsEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getHoldDetails_ZeroForce() {
		return (EAttribute)holdDetailsEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getHoldDetails_Squeeze() {
		return (EAttribute)holdDetailsEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getBounceDetails() {
		return bounceDetailsEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBounceDetails_Channel() {
		return (EAttribute)bounceDetailsEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBounceDetails_Drop() {
		return (EAttribute)bounceDetailsEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBounceDetails_What() {
		return (EAttribute)bounceDetailsEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBounceDetails_Threshold() {
		return (EAttribute)bounceDetailsEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBounceDetails_Quiet() {
		return (EAttribute)bounceDetailsEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getFilmDetails() {
		return filmDetailsEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFilmDetails_FrameRate() {
		return (EAttribute)filmDetailsEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFilmDetails_PixelsPerMm() {
		return (EAttribute)filmDetailsEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFilmDetails_HeightDown() {
		return (EAttribute)filmDetailsEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getSoakDetails() {
		return soakDetailsEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSoakDetails_Liquid() {
		return (EAttribute)soakDetailsEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSoakDetails_Drying() {
		return (EAttribute)soakDetailsEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSoakDetails_Celsius() {
		return (EAttribute)soakDetailsEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getHardnessRule() {
		return hardnessRuleEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getRubberSort() {
		return rubberSortEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getStretchLoading() {
		return stretchLoadingEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getSlack() {
		return slackEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TestingDataFactory getTestingDataFactory() {
		return (TestingDataFactory)getEFactoryInstance();
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
		hardnessDetailsEClass = createEClass(HARDNESS_DETAILS);
		createEAttribute(hardnessDetailsEClass, HARDNESS_DETAILS__RULE);
		createEAttribute(hardnessDetailsEClass, HARDNESS_DETAILS__SORT);
		createEAttribute(hardnessDetailsEClass, HARDNESS_DETAILS__PLIES);
		createEAttribute(hardnessDetailsEClass, HARDNESS_DETAILS__EDGE);
		createEAttribute(hardnessDetailsEClass, HARDNESS_DETAILS__SPACING);
		createEAttribute(hardnessDetailsEClass, HARDNESS_DETAILS__ON_STAND);
		createEAttribute(hardnessDetailsEClass, HARDNESS_DETAILS__CURVED);
		createEAttribute(hardnessDetailsEClass, HARDNESS_DETAILS__PLY_SMOOTH);

		stretchDetailsEClass = createEClass(STRETCH_DETAILS);
		createEAttribute(stretchDetailsEClass, STRETCH_DETAILS__LOADING);
		createEAttribute(stretchDetailsEClass, STRETCH_DETAILS__PIECE);
		createEAttribute(stretchDetailsEClass, STRETCH_DETAILS__GAUGE_LENGTH);
		createEAttribute(stretchDetailsEClass, STRETCH_DETAILS__WIDTH);
		createEAttribute(stretchDetailsEClass, STRETCH_DETAILS__THICKNESS);
		createEAttribute(stretchDetailsEClass, STRETCH_DETAILS__SPEED);
		createEAttribute(stretchDetailsEClass, STRETCH_DETAILS__SLACK);
		createEAttribute(stretchDetailsEClass, STRETCH_DETAILS__ZERO_FORCE);
		createEAttribute(stretchDetailsEClass, STRETCH_DETAILS__BROKE);
		createEAttribute(stretchDetailsEClass, STRETCH_DETAILS__BROKE_IN_GRIP);

		pressDetailsEClass = createEClass(PRESS_DETAILS);
		createEAttribute(pressDetailsEClass, PRESS_DETAILS__SLACK);
		createEAttribute(pressDetailsEClass, PRESS_DETAILS__ZERO_FORCE);
		createEAttribute(pressDetailsEClass, PRESS_DETAILS__SPEED);
		createEAttribute(pressDetailsEClass, PRESS_DETAILS__STOP);
		createEAttribute(pressDetailsEClass, PRESS_DETAILS__TIP);

		holdDetailsEClass = createEClass(HOLD_DETAILS);
		createEAttribute(holdDetailsEClass, HOLD_DETAILS__TERMS);
		createEAttribute(holdDetailsEClass, HOLD_DETAILS__ZERO_FORCE);
		createEAttribute(holdDetailsEClass, HOLD_DETAILS__SQUEEZE);

		bounceDetailsEClass = createEClass(BOUNCE_DETAILS);
		createEAttribute(bounceDetailsEClass, BOUNCE_DETAILS__CHANNEL);
		createEAttribute(bounceDetailsEClass, BOUNCE_DETAILS__DROP);
		createEAttribute(bounceDetailsEClass, BOUNCE_DETAILS__WHAT);
		createEAttribute(bounceDetailsEClass, BOUNCE_DETAILS__THRESHOLD);
		createEAttribute(bounceDetailsEClass, BOUNCE_DETAILS__QUIET);

		filmDetailsEClass = createEClass(FILM_DETAILS);
		createEAttribute(filmDetailsEClass, FILM_DETAILS__FRAME_RATE);
		createEAttribute(filmDetailsEClass, FILM_DETAILS__PIXELS_PER_MM);
		createEAttribute(filmDetailsEClass, FILM_DETAILS__HEIGHT_DOWN);

		soakDetailsEClass = createEClass(SOAK_DETAILS);
		createEAttribute(soakDetailsEClass, SOAK_DETAILS__LIQUID);
		createEAttribute(soakDetailsEClass, SOAK_DETAILS__DRYING);
		createEAttribute(soakDetailsEClass, SOAK_DETAILS__CELSIUS);

		// Create enums
		hardnessRuleEEnum = createEEnum(HARDNESS_RULE);
		rubberSortEEnum = createEEnum(RUBBER_SORT);
		stretchLoadingEEnum = createEEnum(STRETCH_LOADING);
		slackEEnum = createEEnum(SLACK);
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
		initEClass(hardnessDetailsEClass, HardnessDetails.class, "HardnessDetails", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getHardnessDetails_Rule(), this.getHardnessRule(), "rule", null, 0, 1, HardnessDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getHardnessDetails_Sort(), this.getRubberSort(), "sort", null, 0, 1, HardnessDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getHardnessDetails_Plies(), ecorePackage.getEIntegerObject(), "plies", null, 0, 1, HardnessDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getHardnessDetails_Edge(), ecorePackage.getEDoubleObject(), "edge", null, 0, 1, HardnessDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getHardnessDetails_Spacing(), ecorePackage.getEDoubleObject(), "spacing", null, 0, 1, HardnessDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getHardnessDetails_OnStand(), ecorePackage.getEBooleanObject(), "onStand", null, 0, 1, HardnessDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getHardnessDetails_Curved(), ecorePackage.getEBooleanObject(), "curved", null, 0, 1, HardnessDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getHardnessDetails_PlySmooth(), ecorePackage.getEBooleanObject(), "plySmooth", null, 0, 1, HardnessDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(stretchDetailsEClass, StretchDetails.class, "StretchDetails", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getStretchDetails_Loading(), this.getStretchLoading(), "loading", null, 0, 1, StretchDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStretchDetails_Piece(), ecorePackage.getEString(), "piece", null, 0, 1, StretchDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStretchDetails_GaugeLength(), ecorePackage.getEDoubleObject(), "gaugeLength", null, 0, 1, StretchDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStretchDetails_Width(), ecorePackage.getEDoubleObject(), "width", null, 0, 1, StretchDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStretchDetails_Thickness(), ecorePackage.getEDoubleObject(), "thickness", null, 0, 1, StretchDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStretchDetails_Speed(), ecorePackage.getEDoubleObject(), "speed", null, 0, 1, StretchDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStretchDetails_Slack(), this.getSlack(), "slack", null, 0, 1, StretchDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStretchDetails_ZeroForce(), ecorePackage.getEDoubleObject(), "zeroForce", null, 0, 1, StretchDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStretchDetails_Broke(), ecorePackage.getEBooleanObject(), "broke", null, 0, 1, StretchDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStretchDetails_BrokeInGrip(), ecorePackage.getEBooleanObject(), "brokeInGrip", null, 0, 1, StretchDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(pressDetailsEClass, PressDetails.class, "PressDetails", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getPressDetails_Slack(), this.getSlack(), "slack", null, 0, 1, PressDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPressDetails_ZeroForce(), ecorePackage.getEDoubleObject(), "zeroForce", null, 0, 1, PressDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPressDetails_Speed(), ecorePackage.getEDoubleObject(), "speed", null, 0, 1, PressDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPressDetails_Stop(), ecorePackage.getEDoubleObject(), "stop", null, 0, 1, PressDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPressDetails_Tip(), ecorePackage.getEString(), "tip", null, 0, 1, PressDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(holdDetailsEClass, HoldDetails.class, "HoldDetails", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getHoldDetails_Terms(), ecorePackage.getEIntegerObject(), "terms", null, 0, 1, HoldDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getHoldDetails_ZeroForce(), ecorePackage.getEDoubleObject(), "zeroForce", null, 0, 1, HoldDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getHoldDetails_Squeeze(), ecorePackage.getEDoubleObject(), "squeeze", null, 0, 1, HoldDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(bounceDetailsEClass, BounceDetails.class, "BounceDetails", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getBounceDetails_Channel(), ecorePackage.getEIntegerObject(), "channel", null, 0, 1, BounceDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBounceDetails_Drop(), ecorePackage.getEDoubleObject(), "drop", null, 0, 1, BounceDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBounceDetails_What(), ecorePackage.getEString(), "what", null, 0, 1, BounceDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBounceDetails_Threshold(), ecorePackage.getEDoubleObject(), "threshold", null, 0, 1, BounceDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBounceDetails_Quiet(), ecorePackage.getEDoubleObject(), "quiet", null, 0, 1, BounceDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(filmDetailsEClass, FilmDetails.class, "FilmDetails", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getFilmDetails_FrameRate(), ecorePackage.getEDoubleObject(), "frameRate", null, 0, 1, FilmDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFilmDetails_PixelsPerMm(), ecorePackage.getEDoubleObject(), "pixelsPerMm", null, 0, 1, FilmDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFilmDetails_HeightDown(), ecorePackage.getEBooleanObject(), "heightDown", null, 0, 1, FilmDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(soakDetailsEClass, SoakDetails.class, "SoakDetails", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getSoakDetails_Liquid(), ecorePackage.getEString(), "liquid", null, 0, 1, SoakDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSoakDetails_Drying(), ecorePackage.getEBooleanObject(), "drying", null, 0, 1, SoakDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSoakDetails_Celsius(), ecorePackage.getEDoubleObject(), "celsius", null, 0, 1, SoakDetails.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		// Initialize enums and add enum literals
		initEEnum(hardnessRuleEEnum, HardnessRule.class, "HardnessRule");
		addEEnumLiteral(hardnessRuleEEnum, HardnessRule.UNKNOWN);
		addEEnumLiteral(hardnessRuleEEnum, HardnessRule.ISO_48_4);
		addEEnumLiteral(hardnessRuleEEnum, HardnessRule.ISO_868);
		addEEnumLiteral(hardnessRuleEEnum, HardnessRule.ASTM_D2240);

		initEEnum(rubberSortEEnum, RubberSort.class, "RubberSort");
		addEEnumLiteral(rubberSortEEnum, RubberSort.UNKNOWN);
		addEEnumLiteral(rubberSortEEnum, RubberSort.VULCANISED);
		addEEnumLiteral(rubberSortEEnum, RubberSort.THERMOPLASTIC);

		initEEnum(stretchLoadingEEnum, StretchLoading.class, "StretchLoading");
		addEEnumLiteral(stretchLoadingEEnum, StretchLoading.UNKNOWN);
		addEEnumLiteral(stretchLoadingEEnum, StretchLoading.UNIAXIAL);
		addEEnumLiteral(stretchLoadingEEnum, StretchLoading.EQUIBIAXIAL);
		addEEnumLiteral(stretchLoadingEEnum, StretchLoading.PLANAR);

		initEEnum(slackEEnum, Slack.class, "Slack");
		addEEnumLiteral(slackEEnum, Slack.UNKNOWN);
		addEEnumLiteral(slackEEnum, Slack.NONE);
		addEEnumLiteral(slackEEnum, Slack.FORCE_STEP);
		addEEnumLiteral(slackEEnum, Slack.TANGENT);

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
		  (hardnessRuleEEnum.getELiterals().get(1),
		   source,
		   new String[] {
			   "label", "ISO 48-4"
		   });
		addAnnotation
		  (hardnessRuleEEnum.getELiterals().get(2),
		   source,
		   new String[] {
			   "label", "ISO 868"
		   });
		addAnnotation
		  (hardnessRuleEEnum.getELiterals().get(3),
		   source,
		   new String[] {
			   "label", "ASTM D2240"
		   });
		addAnnotation
		  (getHardnessDetails_Rule(),
		   source,
		   new String[] {
			   "label", "Read by",
			   "help", "Which standard the readings follow."
		   });
		addAnnotation
		  (getHardnessDetails_Sort(),
		   source,
		   new String[] {
			   "label", "Sort",
			   "help", "Vulcanised or thermoplastic, for the dwell."
		   });
		addAnnotation
		  (getHardnessDetails_Plies(),
		   source,
		   new String[] {
			   "min", "1",
			   "max", "20",
			   "label", "Plies",
			   "help", "How many layers lay on each other."
		   });
		addAnnotation
		  (getHardnessDetails_Edge(),
		   source,
		   new String[] {
			   "kind", "LENGTH",
			   "unit", "mm",
			   "min", "0",
			   "max", "1000",
			   "label", "Distance to edge",
			   "help", "From the tip to the nearest edge."
		   });
		addAnnotation
		  (getHardnessDetails_Spacing(),
		   source,
		   new String[] {
			   "kind", "LENGTH",
			   "unit", "mm",
			   "min", "0",
			   "max", "1000",
			   "label", "Spacing",
			   "help", "Between two readings."
		   });
		addAnnotation
		  (getHardnessDetails_OnStand(),
		   source,
		   new String[] {
			   "label", "On a stand",
			   "help", "Whether a stand with its mass pressed the gauge, not the hand."
		   });
		addAnnotation
		  (getHardnessDetails_Curved(),
		   source,
		   new String[] {
			   "label", "Curved",
			   "help", "Whether the place is curved."
		   });
		addAnnotation
		  (getHardnessDetails_PlySmooth(),
		   source,
		   new String[] {
			   "label", "Plies smooth",
			   "help", "Whether the faces between plies are smooth and flat."
		   });
		addAnnotation
		  (getStretchDetails_Loading(),
		   source,
		   new String[] {
			   "label", "Loading",
			   "help", "Uniaxial, equibiaxial or planar."
		   });
		addAnnotation
		  (getStretchDetails_Piece(),
		   source,
		   new String[] {
			   "label", "Piece",
			   "help", "Type of the dumbbell or strip, such as ISO 37 type 2."
		   });
		addAnnotation
		  (getStretchDetails_GaugeLength(),
		   source,
		   new String[] {
			   "kind", "LENGTH",
			   "unit", "mm",
			   "min", "0",
			   "max", "1000",
			   "minOpen", "true",
			   "label", "Gauge length",
			   "help", "Undeformed length between the marks, or between the grips when there are none."
		   });
		addAnnotation
		  (getStretchDetails_Width(),
		   source,
		   new String[] {
			   "kind", "LENGTH",
			   "unit", "mm",
			   "min", "0",
			   "max", "1000",
			   "minOpen", "true",
			   "label", "Width",
			   "help", "Undeformed."
		   });
		addAnnotation
		  (getStretchDetails_Thickness(),
		   source,
		   new String[] {
			   "kind", "LENGTH",
			   "unit", "mm",
			   "min", "0",
			   "max", "1000",
			   "minOpen", "true",
			   "label", "Thickness",
			   "help", "Undeformed."
		   });
		addAnnotation
		  (getStretchDetails_Speed(),
		   source,
		   new String[] {
			   "kind", "SPEED",
			   "unit", "mm/min",
			   "min", "0",
			   "max", "100000",
			   "label", "Speed",
			   "help", "Of the grips."
		   });
		addAnnotation
		  (getStretchDetails_Slack(),
		   source,
		   new String[] {
			   "label", "Slack",
			   "help", "How the place where the force begins is found."
		   });
		addAnnotation
		  (getStretchDetails_ZeroForce(),
		   source,
		   new String[] {
			   "kind", "FORCE",
			   "unit", "N",
			   "min", "-10000",
			   "max", "10000",
			   "label", "Force at rest",
			   "help", "What the gauge showed with nothing on it; taken off."
		   });
		addAnnotation
		  (getStretchDetails_Broke(),
		   source,
		   new String[] {
			   "label", "Broke",
			   "help", "Whether the piece broke at the end."
		   });
		addAnnotation
		  (getStretchDetails_BrokeInGrip(),
		   source,
		   new String[] {
			   "label", "Broke in the grip",
			   "help", "Then strength and stretch at break are not valid."
		   });
		addAnnotation
		  (getPressDetails_Slack(),
		   source,
		   new String[] {
			   "label", "Contact",
			   "help", "How the place where the force begins is found."
		   });
		addAnnotation
		  (getPressDetails_ZeroForce(),
		   source,
		   new String[] {
			   "kind", "FORCE",
			   "unit", "N",
			   "min", "-10000",
			   "max", "10000",
			   "label", "Force at rest",
			   "help", "What the gauge showed with nothing on it; taken off."
		   });
		addAnnotation
		  (getPressDetails_Speed(),
		   source,
		   new String[] {
			   "kind", "SPEED",
			   "unit", "mm/min",
			   "min", "0",
			   "max", "100000",
			   "label", "Speed",
			   "help", "Of the tip."
		   });
		addAnnotation
		  (getPressDetails_Stop(),
		   source,
		   new String[] {
			   "kind", "LENGTH",
			   "unit", "mm",
			   "min", "0",
			   "max", "1000",
			   "label", "Stop",
			   "help", "Travel at which the press was stopped."
		   });
		addAnnotation
		  (getPressDetails_Tip(),
		   source,
		   new String[] {
			   "label", "Tip",
			   "help", "Shape and size of what pressed."
		   });
		addAnnotation
		  (getHoldDetails_Terms(),
		   source,
		   new String[] {
			   "min", "1",
			   "max", "6",
			   "label", "Terms",
			   "help", "How many exponentials describe the fall."
		   });
		addAnnotation
		  (getHoldDetails_ZeroForce(),
		   source,
		   new String[] {
			   "kind", "FORCE",
			   "unit", "N",
			   "min", "-10000",
			   "max", "10000",
			   "label", "Force at rest",
			   "help", "What the gauge showed with nothing on it; taken off."
		   });
		addAnnotation
		  (getHoldDetails_Squeeze(),
		   source,
		   new String[] {
			   "kind", "FRACTION",
			   "unit", "%",
			   "min", "0",
			   "max", "1000",
			   "label", "Deformation",
			   "help", "Held at, share of the undeformed height or length."
		   });
		addAnnotation
		  (getBounceDetails_Channel(),
		   source,
		   new String[] {
			   "min", "1",
			   "max", "64",
			   "label", "Channel",
			   "help", "Counted from 1; empty: all mixed."
		   });
		addAnnotation
		  (getBounceDetails_Drop(),
		   source,
		   new String[] {
			   "kind", "LENGTH",
			   "unit", "mm",
			   "min", "0",
			   "max", "100000",
			   "minOpen", "true",
			   "label", "Drop height",
			   "help", "From the lower side of what fell to the surface, for comparison with the sounds."
		   });
		addAnnotation
		  (getBounceDetails_What(),
		   source,
		   new String[] {
			   "label", "What fell",
			   "help", "The part on a hard plate, or a ball on the part."
		   });
		addAnnotation
		  (getBounceDetails_Threshold(),
		   source,
		   new String[] {
			   "min", "1",
			   "max", "10000",
			   "label", "Loudness of an impact",
			   "help", "How many times the background an impact stands out."
		   });
		addAnnotation
		  (getBounceDetails_Quiet(),
		   source,
		   new String[] {
			   "kind", "DURATION",
			   "unit", "ms",
			   "min", "0",
			   "max", "10000",
			   "label", "Not twice within",
			   "help", "Two impacts are at least so far apart."
		   });
		addAnnotation
		  (getFilmDetails_FrameRate(),
		   source,
		   new String[] {
			   "kind", "FREQUENCY",
			   "unit", "Hz",
			   "min", "0",
			   "max", "1000000",
			   "minOpen", "true",
			   "label", "Pictures a second",
			   "help", "As it was recorded, not as it is played."
		   });
		addAnnotation
		  (getFilmDetails_PixelsPerMm(),
		   source,
		   new String[] {
			   "min", "0",
			   "max", "100000",
			   "minOpen", "true",
			   "label", "Pixels a millimetre",
			   "help", "Read on something of known length in the plane of the motion."
		   });
		addAnnotation
		  (getFilmDetails_HeightDown(),
		   source,
		   new String[] {
			   "label", "Counted from the top",
			   "help", "Whether pixels are counted downwards."
		   });
		addAnnotation
		  (getSoakDetails_Liquid(),
		   source,
		   new String[] {
			   "label", "Liquid",
			   "help", "What it lies in; empty when it dries."
		   });
		addAnnotation
		  (getSoakDetails_Drying(),
		   source,
		   new String[] {
			   "label", "Drying"
		   });
		addAnnotation
		  (getSoakDetails_Celsius(),
		   source,
		   new String[] {
			   "kind", "TEMPERATURE",
			   "unit", "degC",
			   "min", "-40",
			   "max", "300",
			   "label", "Temperature",
			   "help", "Of the liquid or the oven."
		   });
	}

} //TestingDataPackageImpl
