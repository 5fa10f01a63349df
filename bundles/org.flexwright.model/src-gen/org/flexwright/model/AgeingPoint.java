/**
 */
package org.flexwright.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Ageing Point</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * An age at which to read.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.AgeingPoint#getDays <em>Days</em>}</li>
 *   <li>{@link org.flexwright.model.AgeingPoint#getWindow <em>Window</em>}</li>
 *   <li>{@link org.flexwright.model.AgeingPoint#getSkipped <em>Skipped</em>}</li>
 * </ul>
 *
 * @see org.flexwright.model.ModelPackage#getAgeingPoint()
 * @model
 * @generated
 */
public interface AgeingPoint extends Entry {
	/**
	 * Returns the value of the '<em><b>Days</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Days</em>' attribute.
	 * @see #setDays(Double)
	 * @see org.flexwright.model.ModelPackage#getAgeingPoint_Days()
	 * @model annotation="urn:flexwright:field kind='DURATION' unit='d' min='0' max='36500' label='Age'"
	 * @generated
	 */
	Double getDays();

	/**
	 * Sets the value of the '{@link org.flexwright.model.AgeingPoint#getDays <em>Days</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Days</em>' attribute.
	 * @see #getDays()
	 * @generated
	 */
	void setDays(Double value);

	/**
	 * Returns the value of the '<em><b>Window</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How much earlier or later still counts.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Window</em>' attribute.
	 * @see #setWindow(Double)
	 * @see org.flexwright.model.ModelPackage#getAgeingPoint_Window()
	 * @model annotation="urn:flexwright:field kind='DURATION' unit='d' min='0' max='3650' label='Give or take' help='How much earlier or later still counts.'"
	 * @generated
	 */
	Double getWindow();

	/**
	 * Sets the value of the '{@link org.flexwright.model.AgeingPoint#getWindow <em>Window</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Window</em>' attribute.
	 * @see #getWindow()
	 * @generated
	 */
	void setWindow(Double value);

	/**
	 * Returns the value of the '<em><b>Skipped</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Skipped</em>' attribute.
	 * @see #setSkipped(String)
	 * @see org.flexwright.model.ModelPackage#getAgeingPoint_Skipped()
	 * @model annotation="urn:flexwright:field label='Skipped because'"
	 * @generated
	 */
	String getSkipped();

	/**
	 * Sets the value of the '{@link org.flexwright.model.AgeingPoint#getSkipped <em>Skipped</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Skipped</em>' attribute.
	 * @see #getSkipped()
	 * @generated
	 */
	void setSkipped(String value);

} // AgeingPoint
