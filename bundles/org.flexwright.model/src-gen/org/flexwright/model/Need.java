/**
 */
package org.flexwright.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Need</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What the part must do, in the user's words.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.Need#getText <em>Text</em>}</li>
 *   <li>{@link org.flexwright.model.Need#getImportance <em>Importance</em>}</li>
 * </ul>
 *
 * @see org.flexwright.model.ModelPackage#getNeed()
 * @model
 * @generated
 */
public interface Need extends Entry {
	/**
	 * Returns the value of the '<em><b>Text</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Text</em>' attribute.
	 * @see #setText(String)
	 * @see org.flexwright.model.ModelPackage#getNeed_Text()
	 * @model annotation="urn:flexwright:field label='Need'"
	 * @generated
	 */
	String getText();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Need#getText <em>Text</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Text</em>' attribute.
	 * @see #getText()
	 * @generated
	 */
	void setText(String value);

	/**
	 * Returns the value of the '<em><b>Importance</b></em>' attribute.
	 * The literals are from the enumeration {@link org.flexwright.model.Importance}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Importance</em>' attribute.
	 * @see org.flexwright.model.Importance
	 * @see #setImportance(Importance)
	 * @see org.flexwright.model.ModelPackage#getNeed_Importance()
	 * @model annotation="urn:flexwright:field label='How much it matters'"
	 * @generated
	 */
	Importance getImportance();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Need#getImportance <em>Importance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Importance</em>' attribute.
	 * @see org.flexwright.model.Importance
	 * @see #getImportance()
	 * @generated
	 */
	void setImportance(Importance value);

} // Need
