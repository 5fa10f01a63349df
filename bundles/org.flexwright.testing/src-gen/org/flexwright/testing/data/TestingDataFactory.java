/**
 */
package org.flexwright.testing.data;

import org.eclipse.emf.ecore.EFactory;

/**
 * <!-- begin-user-doc -->
 * The <b>Factory</b> for the model.
 * It provides a create method for each non-abstract class of the model.
 * <!-- end-user-doc -->
 * @see org.flexwright.testing.data.TestingDataPackage
 * @generated
 */
public interface TestingDataFactory extends EFactory {
	/**
	 * The singleton instance of the factory.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	TestingDataFactory eINSTANCE = org.flexwright.testing.data.impl.TestingDataFactoryImpl.init();

	/**
	 * Returns a new object of class '<em>Hardness Details</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Hardness Details</em>'.
	 * @generated
	 */
	HardnessDetails createHardnessDetails();

	/**
	 * Returns a new object of class '<em>Stretch Details</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Stretch Details</em>'.
	 * @generated
	 */
	StretchDetails createStretchDetails();

	/**
	 * Returns a new object of class '<em>Press Details</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Press Details</em>'.
	 * @generated
	 */
	PressDetails createPressDetails();

	/**
	 * Returns a new object of class '<em>Hold Details</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Hold Details</em>'.
	 * @generated
	 */
	HoldDetails createHoldDetails();

	/**
	 * Returns a new object of class '<em>Bounce Details</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Bounce Details</em>'.
	 * @generated
	 */
	BounceDetails createBounceDetails();

	/**
	 * Returns a new object of class '<em>Film Details</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Film Details</em>'.
	 * @generated
	 */
	FilmDetails createFilmDetails();

	/**
	 * Returns a new object of class '<em>Soak Details</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Soak Details</em>'.
	 * @generated
	 */
	SoakDetails createSoakDetails();

	/**
	 * Returns the package supported by this factory.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the package supported by this factory.
	 * @generated
	 */
	TestingDataPackage getTestingDataPackage();

} //TestingDataFactory
