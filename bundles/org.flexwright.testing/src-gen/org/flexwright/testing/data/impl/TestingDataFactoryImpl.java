/**
 */
package org.flexwright.testing.data.impl;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EPackage;

import org.eclipse.emf.ecore.impl.EFactoryImpl;

import org.eclipse.emf.ecore.plugin.EcorePlugin;

import org.flexwright.testing.data.*;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model <b>Factory</b>.
 * <!-- end-user-doc -->
 * @generated
 */
public class TestingDataFactoryImpl extends EFactoryImpl implements TestingDataFactory {
	/**
	 * Creates the default factory implementation.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static TestingDataFactory init() {
		try {
			TestingDataFactory theTestingDataFactory = (TestingDataFactory)EPackage.Registry.INSTANCE.getEFactory(TestingDataPackage.eNS_URI);
			if (theTestingDataFactory != null) {
				return theTestingDataFactory;
			}
		}
		catch (Exception exception) {
			EcorePlugin.INSTANCE.log(exception);
		}
		return new TestingDataFactoryImpl();
	}

	/**
	 * Creates an instance of the factory.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public TestingDataFactoryImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EObject create(EClass eClass) {
		switch (eClass.getClassifierID()) {
			case TestingDataPackage.HARDNESS_DETAILS: return createHardnessDetails();
			case TestingDataPackage.STRETCH_DETAILS: return createStretchDetails();
			case TestingDataPackage.PRESS_DETAILS: return createPressDetails();
			case TestingDataPackage.HOLD_DETAILS: return createHoldDetails();
			case TestingDataPackage.BOUNCE_DETAILS: return createBounceDetails();
			case TestingDataPackage.FILM_DETAILS: return createFilmDetails();
			case TestingDataPackage.SOAK_DETAILS: return createSoakDetails();
			default:
				throw new IllegalArgumentException("The class '" + eClass.getName() + "' is not a valid classifier");
		}
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object createFromString(EDataType eDataType, String initialValue) {
		switch (eDataType.getClassifierID()) {
			case TestingDataPackage.HARDNESS_RULE:
				return createHardnessRuleFromString(eDataType, initialValue);
			case TestingDataPackage.RUBBER_SORT:
				return createRubberSortFromString(eDataType, initialValue);
			case TestingDataPackage.STRETCH_LOADING:
				return createStretchLoadingFromString(eDataType, initialValue);
			case TestingDataPackage.SLACK:
				return createSlackFromString(eDataType, initialValue);
			default:
				throw new IllegalArgumentException("The datatype '" + eDataType.getName() + "' is not a valid classifier");
		}
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String convertToString(EDataType eDataType, Object instanceValue) {
		switch (eDataType.getClassifierID()) {
			case TestingDataPackage.HARDNESS_RULE:
				return convertHardnessRuleToString(eDataType, instanceValue);
			case TestingDataPackage.RUBBER_SORT:
				return convertRubberSortToString(eDataType, instanceValue);
			case TestingDataPackage.STRETCH_LOADING:
				return convertStretchLoadingToString(eDataType, instanceValue);
			case TestingDataPackage.SLACK:
				return convertSlackToString(eDataType, instanceValue);
			default:
				throw new IllegalArgumentException("The datatype '" + eDataType.getName() + "' is not a valid classifier");
		}
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public HardnessDetails createHardnessDetails() {
		HardnessDetailsImpl hardnessDetails = new HardnessDetailsImpl();
		return hardnessDetails;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public StretchDetails createStretchDetails() {
		StretchDetailsImpl stretchDetails = new StretchDetailsImpl();
		return stretchDetails;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PressDetails createPressDetails() {
		PressDetailsImpl pressDetails = new PressDetailsImpl();
		return pressDetails;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public HoldDetails createHoldDetails() {
		HoldDetailsImpl holdDetails = new HoldDetailsImpl();
		return holdDetails;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BounceDetails createBounceDetails() {
		BounceDetailsImpl bounceDetails = new BounceDetailsImpl();
		return bounceDetails;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public FilmDetails createFilmDetails() {
		FilmDetailsImpl filmDetails = new FilmDetailsImpl();
		return filmDetails;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SoakDetails createSoakDetails() {
		SoakDetailsImpl soakDetails = new SoakDetailsImpl();
		return soakDetails;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public HardnessRule createHardnessRuleFromString(EDataType eDataType, String initialValue) {
		HardnessRule result = HardnessRule.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertHardnessRuleToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public RubberSort createRubberSortFromString(EDataType eDataType, String initialValue) {
		RubberSort result = RubberSort.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertRubberSortToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public StretchLoading createStretchLoadingFromString(EDataType eDataType, String initialValue) {
		StretchLoading result = StretchLoading.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertStretchLoadingToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Slack createSlackFromString(EDataType eDataType, String initialValue) {
		Slack result = Slack.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertSlackToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TestingDataPackage getTestingDataPackage() {
		return (TestingDataPackage)getEPackage();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @deprecated
	 * @generated
	 */
	@Deprecated
	public static TestingDataPackage getPackage() {
		return TestingDataPackage.eINSTANCE;
	}

} //TestingDataFactoryImpl
