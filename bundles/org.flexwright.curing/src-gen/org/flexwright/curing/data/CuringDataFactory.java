/**
 */
package org.flexwright.curing.data;

import org.eclipse.emf.ecore.EFactory;

/**
 * <!-- begin-user-doc -->
 * The <b>Factory</b> for the model.
 * It provides a create method for each non-abstract class of the model.
 * <!-- end-user-doc -->
 * @see org.flexwright.curing.data.CuringDataPackage
 * @generated
 */
public interface CuringDataFactory extends EFactory {
	/**
	 * The singleton instance of the factory.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	CuringDataFactory eINSTANCE = org.flexwright.curing.data.impl.CuringDataFactoryImpl.init();

	/**
	 * Returns a new object of class '<em>Cure Stage</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Cure Stage</em>'.
	 * @generated
	 */
	CureStage createCureStage();

	/**
	 * Returns a new object of class '<em>Cure Details</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Cure Details</em>'.
	 * @generated
	 */
	CureDetails createCureDetails();

	/**
	 * Returns a new object of class '<em>Demould Details</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Demould Details</em>'.
	 * @generated
	 */
	DemouldDetails createDemouldDetails();

	/**
	 * Returns the package supported by this factory.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the package supported by this factory.
	 * @generated
	 */
	CuringDataPackage getCuringDataPackage();

} //CuringDataFactory
