/**
 */
package org.flexwright.moulding.data;

import org.eclipse.emf.ecore.EFactory;

/**
 * <!-- begin-user-doc -->
 * The <b>Factory</b> for the model.
 * It provides a create method for each non-abstract class of the model.
 * <!-- end-user-doc -->
 * @see org.flexwright.moulding.data.MouldingDataPackage
 * @generated
 */
public interface MouldingDataFactory extends EFactory {
	/**
	 * The singleton instance of the factory.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	MouldingDataFactory eINSTANCE = org.flexwright.moulding.data.impl.MouldingDataFactoryImpl.init();

	/**
	 * Returns a new object of class '<em>Preparation</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Preparation</em>'.
	 * @generated
	 */
	Preparation createPreparation();

	/**
	 * Returns a new object of class '<em>Filling</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Filling</em>'.
	 * @generated
	 */
	Filling createFilling();

	/**
	 * Returns the package supported by this factory.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the package supported by this factory.
	 * @generated
	 */
	MouldingDataPackage getMouldingDataPackage();

} //MouldingDataFactory
