/**
 */
package org.flexwright.filament.data;

import org.eclipse.emf.ecore.EFactory;

/**
 * <!-- begin-user-doc -->
 * The <b>Factory</b> for the model.
 * It provides a create method for each non-abstract class of the model.
 * <!-- end-user-doc -->
 * @see org.flexwright.filament.data.FilamentDataPackage
 * @generated
 */
public interface FilamentDataFactory extends EFactory {
	/**
	 * The singleton instance of the factory.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	FilamentDataFactory eINSTANCE = org.flexwright.filament.data.impl.FilamentDataFactoryImpl.init();

	/**
	 * Returns a new object of class '<em>Drying</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Drying</em>'.
	 * @generated
	 */
	Drying createDrying();

	/**
	 * Returns a new object of class '<em>Printing</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Printing</em>'.
	 * @generated
	 */
	Printing createPrinting();

	/**
	 * Returns the package supported by this factory.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the package supported by this factory.
	 * @generated
	 */
	FilamentDataPackage getFilamentDataPackage();

} //FilamentDataFactory
