/**
 */
package org.flexwright.testing.data.util;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EPackage;

import org.eclipse.emf.ecore.util.Switch;

import org.flexwright.testing.data.*;

/**
 * <!-- begin-user-doc -->
 * The <b>Switch</b> for the model's inheritance hierarchy.
 * It supports the call {@link #doSwitch(EObject) doSwitch(object)}
 * to invoke the <code>caseXXX</code> method for each class of the model,
 * starting with the actual class of the object
 * and proceeding up the inheritance hierarchy
 * until a non-null result is returned,
 * which is the result of the switch.
 * <!-- end-user-doc -->
 * @see org.flexwright.testing.data.TestingDataPackage
 * @generated
 */
public class TestingDataSwitch<T> extends Switch<T> {
	/**
	 * The cached model package
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected static TestingDataPackage modelPackage;

	/**
	 * Creates an instance of the switch.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public TestingDataSwitch() {
		if (modelPackage == null) {
			modelPackage = TestingDataPackage.eINSTANCE;
		}
	}

	/**
	 * Checks whether this is a switch for the given package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param ePackage the package in question.
	 * @return whether this is a switch for the given package.
	 * @generated
	 */
	@Override
	protected boolean isSwitchFor(EPackage ePackage) {
		return ePackage == modelPackage;
	}

	/**
	 * Calls <code>caseXXX</code> for each class of the model until one returns a non null result; it yields that result.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the first non-null result returned by a <code>caseXXX</code> call.
	 * @generated
	 */
	@Override
	protected T doSwitch(int classifierID, EObject theEObject) {
		switch (classifierID) {
			case TestingDataPackage.HARDNESS_DETAILS: {
				HardnessDetails hardnessDetails = (HardnessDetails)theEObject;
				T result = caseHardnessDetails(hardnessDetails);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case TestingDataPackage.STRETCH_DETAILS: {
				StretchDetails stretchDetails = (StretchDetails)theEObject;
				T result = caseStretchDetails(stretchDetails);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case TestingDataPackage.PRESS_DETAILS: {
				PressDetails pressDetails = (PressDetails)theEObject;
				T result = casePressDetails(pressDetails);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case TestingDataPackage.HOLD_DETAILS: {
				HoldDetails holdDetails = (HoldDetails)theEObject;
				T result = caseHoldDetails(holdDetails);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case TestingDataPackage.BOUNCE_DETAILS: {
				BounceDetails bounceDetails = (BounceDetails)theEObject;
				T result = caseBounceDetails(bounceDetails);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case TestingDataPackage.FILM_DETAILS: {
				FilmDetails filmDetails = (FilmDetails)theEObject;
				T result = caseFilmDetails(filmDetails);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case TestingDataPackage.SOAK_DETAILS: {
				SoakDetails soakDetails = (SoakDetails)theEObject;
				T result = caseSoakDetails(soakDetails);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			default: return defaultCase(theEObject);
		}
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Hardness Details</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Hardness Details</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseHardnessDetails(HardnessDetails object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Stretch Details</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Stretch Details</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseStretchDetails(StretchDetails object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Press Details</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Press Details</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T casePressDetails(PressDetails object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Hold Details</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Hold Details</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseHoldDetails(HoldDetails object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Bounce Details</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Bounce Details</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseBounceDetails(BounceDetails object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Film Details</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Film Details</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseFilmDetails(FilmDetails object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Soak Details</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Soak Details</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseSoakDetails(SoakDetails object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>EObject</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch, but this is the last case anyway.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>EObject</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject)
	 * @generated
	 */
	@Override
	public T defaultCase(EObject object) {
		return null;
	}

} //TestingDataSwitch
