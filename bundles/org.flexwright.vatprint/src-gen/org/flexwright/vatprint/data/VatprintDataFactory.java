/**
 */
package org.flexwright.vatprint.data;

import org.eclipse.emf.ecore.EFactory;

/**
 * <!-- begin-user-doc -->
 * The <b>Factory</b> for the model.
 * It provides a create method for each non-abstract class of the model.
 * <!-- end-user-doc -->
 * @see org.flexwright.vatprint.data.VatprintDataPackage
 * @generated
 */
public interface VatprintDataFactory extends EFactory {
	/**
	 * The singleton instance of the factory.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	VatprintDataFactory eINSTANCE = org.flexwright.vatprint.data.impl.VatprintDataFactoryImpl.init();

	/**
	 * Returns a new object of class '<em>Printing</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Printing</em>'.
	 * @generated
	 */
	Printing createPrinting();

	/**
	 * Returns a new object of class '<em>Washing</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Washing</em>'.
	 * @generated
	 */
	Washing createWashing();

	/**
	 * Returns a new object of class '<em>Post Curing</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Post Curing</em>'.
	 * @generated
	 */
	PostCuring createPostCuring();

	/**
	 * Returns the package supported by this factory.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the package supported by this factory.
	 * @generated
	 */
	VatprintDataPackage getVatprintDataPackage();

} //VatprintDataFactory
