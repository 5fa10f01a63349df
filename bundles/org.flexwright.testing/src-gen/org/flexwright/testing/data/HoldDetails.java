/**
 */
package org.flexwright.testing.data;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Hold Details</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * How a piece was held at one deformation while its force fell.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.testing.data.HoldDetails#getTerms <em>Terms</em>}</li>
 *   <li>{@link org.flexwright.testing.data.HoldDetails#getZeroForce <em>Zero Force</em>}</li>
 *   <li>{@link org.flexwright.testing.data.HoldDetails#getSqueeze <em>Squeeze</em>}</li>
 * </ul>
 *
 * @see org.flexwright.testing.data.TestingDataPackage#getHoldDetails()
 * @model
 * @generated
 */
public interface HoldDetails extends EObject {
	/**
	 * Returns the value of the '<em><b>Terms</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How many exponentials describe the fall.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Terms</em>' attribute.
	 * @see #setTerms(Integer)
	 * @see org.flexwright.testing.data.TestingDataPackage#getHoldDetails_Terms()
	 * @model annotation="urn:flexwright:field min='1' max='6' label='Terms' help='How many exponentials describe the fall.'"
	 * @generated
	 */
	Integer getTerms();

	/**
	 * Sets the value of the '{@link org.flexwright.testing.data.HoldDetails#getTerms <em>Terms</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Terms</em>' attribute.
	 * @see #getTerms()
	 * @generated
	 */
	void setTerms(Integer value);

	/**
	 * Returns the value of the '<em><b>Zero Force</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What the gauge showed with nothing on it; taken off.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Zero Force</em>' attribute.
	 * @see #setZeroForce(Double)
	 * @see org.flexwright.testing.data.TestingDataPackage#getHoldDetails_ZeroForce()
	 * @model annotation="urn:flexwright:field kind='FORCE' unit='N' min='-10000' max='10000' label='Force at rest' help='What the gauge showed with nothing on it; taken off.'"
	 * @generated
	 */
	Double getZeroForce();

	/**
	 * Sets the value of the '{@link org.flexwright.testing.data.HoldDetails#getZeroForce <em>Zero Force</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Zero Force</em>' attribute.
	 * @see #getZeroForce()
	 * @generated
	 */
	void setZeroForce(Double value);

	/**
	 * Returns the value of the '<em><b>Squeeze</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Held at, share of the undeformed height or length.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Squeeze</em>' attribute.
	 * @see #setSqueeze(Double)
	 * @see org.flexwright.testing.data.TestingDataPackage#getHoldDetails_Squeeze()
	 * @model annotation="urn:flexwright:field kind='FRACTION' unit='%' min='0' max='1000' label='Deformation' help='Held at, share of the undeformed height or length.'"
	 * @generated
	 */
	Double getSqueeze();

	/**
	 * Sets the value of the '{@link org.flexwright.testing.data.HoldDetails#getSqueeze <em>Squeeze</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Squeeze</em>' attribute.
	 * @see #getSqueeze()
	 * @generated
	 */
	void setSqueeze(Double value);

} // HoldDetails
