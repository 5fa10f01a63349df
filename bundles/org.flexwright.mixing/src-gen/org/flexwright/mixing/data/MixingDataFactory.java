/**
 */
package org.flexwright.mixing.data;

import org.eclipse.emf.ecore.EFactory;

/**
 * <!-- begin-user-doc -->
 * The <b>Factory</b> for the model.
 * It provides a create method for each non-abstract class of the model.
 * <!-- end-user-doc -->
 * @see org.flexwright.mixing.data.MixingDataPackage
 * @generated
 */
public interface MixingDataFactory extends EFactory {
	/**
	 * The singleton instance of the factory.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	MixingDataFactory eINSTANCE = org.flexwright.mixing.data.impl.MixingDataFactoryImpl.init();

	/**
	 * Returns a new object of class '<em>Weigh Details</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Weigh Details</em>'.
	 * @generated
	 */
	WeighDetails createWeighDetails();

	/**
	 * Returns a new object of class '<em>Mix Details</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Mix Details</em>'.
	 * @generated
	 */
	MixDetails createMixDetails();

	/**
	 * Returns a new object of class '<em>Degas Details</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Degas Details</em>'.
	 * @generated
	 */
	DegasDetails createDegasDetails();

	/**
	 * Returns the package supported by this factory.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the package supported by this factory.
	 * @generated
	 */
	MixingDataPackage getMixingDataPackage();

} //MixingDataFactory
