/**
 */
package org.flexwright.testing.data;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Soak Details</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A piece in a liquid, or drying.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.testing.data.SoakDetails#getLiquid <em>Liquid</em>}</li>
 *   <li>{@link org.flexwright.testing.data.SoakDetails#getDrying <em>Drying</em>}</li>
 *   <li>{@link org.flexwright.testing.data.SoakDetails#getCelsius <em>Celsius</em>}</li>
 * </ul>
 *
 * @see org.flexwright.testing.data.TestingDataPackage#getSoakDetails()
 * @model
 * @generated
 */
public interface SoakDetails extends EObject {
	/**
	 * Returns the value of the '<em><b>Liquid</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What it lies in; empty when it dries.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Liquid</em>' attribute.
	 * @see #setLiquid(String)
	 * @see org.flexwright.testing.data.TestingDataPackage#getSoakDetails_Liquid()
	 * @model annotation="urn:flexwright:field label='Liquid' help='What it lies in; empty when it dries.'"
	 * @generated
	 */
	String getLiquid();

	/**
	 * Sets the value of the '{@link org.flexwright.testing.data.SoakDetails#getLiquid <em>Liquid</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Liquid</em>' attribute.
	 * @see #getLiquid()
	 * @generated
	 */
	void setLiquid(String value);

	/**
	 * Returns the value of the '<em><b>Drying</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Drying</em>' attribute.
	 * @see #setDrying(Boolean)
	 * @see org.flexwright.testing.data.TestingDataPackage#getSoakDetails_Drying()
	 * @model annotation="urn:flexwright:field label='Drying'"
	 * @generated
	 */
	Boolean getDrying();

	/**
	 * Sets the value of the '{@link org.flexwright.testing.data.SoakDetails#getDrying <em>Drying</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Drying</em>' attribute.
	 * @see #getDrying()
	 * @generated
	 */
	void setDrying(Boolean value);

	/**
	 * Returns the value of the '<em><b>Celsius</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of the liquid or the oven.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Celsius</em>' attribute.
	 * @see #setCelsius(Double)
	 * @see org.flexwright.testing.data.TestingDataPackage#getSoakDetails_Celsius()
	 * @model annotation="urn:flexwright:field kind='TEMPERATURE' unit='degC' min='-40' max='300' label='Temperature' help='Of the liquid or the oven.'"
	 * @generated
	 */
	Double getCelsius();

	/**
	 * Sets the value of the '{@link org.flexwright.testing.data.SoakDetails#getCelsius <em>Celsius</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Celsius</em>' attribute.
	 * @see #getCelsius()
	 * @generated
	 */
	void setCelsius(Double value);

} // SoakDetails
