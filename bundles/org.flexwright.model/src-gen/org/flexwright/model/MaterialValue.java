/**
 */
package org.flexwright.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Material Value</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One property of a grade or lot: the sheet's value and the maker's own, side by side. Own wins.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.MaterialValue#getProperty <em>Property</em>}</li>
 *   <li>{@link org.flexwright.model.MaterialValue#getUnit <em>Unit</em>}</li>
 *   <li>{@link org.flexwright.model.MaterialValue#getSheetValue <em>Sheet Value</em>}</li>
 *   <li>{@link org.flexwright.model.MaterialValue#getSheetSource <em>Sheet Source</em>}</li>
 *   <li>{@link org.flexwright.model.MaterialValue#getOwnValue <em>Own Value</em>}</li>
 *   <li>{@link org.flexwright.model.MaterialValue#getOwnUncertainty <em>Own Uncertainty</em>}</li>
 *   <li>{@link org.flexwright.model.MaterialValue#getOwnSource <em>Own Source</em>}</li>
 * </ul>
 *
 * @see org.flexwright.model.ModelPackage#getMaterialValue()
 * @model
 * @generated
 */
public interface MaterialValue extends Entry {
	/**
	 * Returns the value of the '<em><b>Property</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Property</em>' attribute.
	 * @see #setProperty(String)
	 * @see org.flexwright.model.ModelPackage#getMaterialValue_Property()
	 * @model annotation="urn:flexwright:field label='Property'"
	 * @generated
	 */
	String getProperty();

	/**
	 * Sets the value of the '{@link org.flexwright.model.MaterialValue#getProperty <em>Property</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Property</em>' attribute.
	 * @see #getProperty()
	 * @generated
	 */
	void setProperty(String value);

	/**
	 * Returns the value of the '<em><b>Unit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Unit symbol both values are in.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Unit</em>' attribute.
	 * @see #setUnit(String)
	 * @see org.flexwright.model.ModelPackage#getMaterialValue_Unit()
	 * @model
	 * @generated
	 */
	String getUnit();

	/**
	 * Sets the value of the '{@link org.flexwright.model.MaterialValue#getUnit <em>Unit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Unit</em>' attribute.
	 * @see #getUnit()
	 * @generated
	 */
	void setUnit(String value);

	/**
	 * Returns the value of the '<em><b>Sheet Value</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Sheet Value</em>' attribute.
	 * @see #setSheetValue(Double)
	 * @see org.flexwright.model.ModelPackage#getMaterialValue_SheetValue()
	 * @model annotation="urn:flexwright:field label='Sheet value'"
	 * @generated
	 */
	Double getSheetValue();

	/**
	 * Sets the value of the '{@link org.flexwright.model.MaterialValue#getSheetValue <em>Sheet Value</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sheet Value</em>' attribute.
	 * @see #getSheetValue()
	 * @generated
	 */
	void setSheetValue(Double value);

	/**
	 * Returns the value of the '<em><b>Sheet Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Sheet Source</em>' attribute.
	 * @see #setSheetSource(String)
	 * @see org.flexwright.model.ModelPackage#getMaterialValue_SheetSource()
	 * @model annotation="urn:flexwright:field label='Source'"
	 * @generated
	 */
	String getSheetSource();

	/**
	 * Sets the value of the '{@link org.flexwright.model.MaterialValue#getSheetSource <em>Sheet Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sheet Source</em>' attribute.
	 * @see #getSheetSource()
	 * @generated
	 */
	void setSheetSource(String value);

	/**
	 * Returns the value of the '<em><b>Own Value</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Own Value</em>' attribute.
	 * @see #setOwnValue(Double)
	 * @see org.flexwright.model.ModelPackage#getMaterialValue_OwnValue()
	 * @model annotation="urn:flexwright:field label='Own value'"
	 * @generated
	 */
	Double getOwnValue();

	/**
	 * Sets the value of the '{@link org.flexwright.model.MaterialValue#getOwnValue <em>Own Value</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Own Value</em>' attribute.
	 * @see #getOwnValue()
	 * @generated
	 */
	void setOwnValue(Double value);

	/**
	 * Returns the value of the '<em><b>Own Uncertainty</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Own Uncertainty</em>' attribute.
	 * @see #setOwnUncertainty(Double)
	 * @see org.flexwright.model.ModelPackage#getMaterialValue_OwnUncertainty()
	 * @model annotation="urn:flexwright:field label='\261'"
	 * @generated
	 */
	Double getOwnUncertainty();

	/**
	 * Sets the value of the '{@link org.flexwright.model.MaterialValue#getOwnUncertainty <em>Own Uncertainty</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Own Uncertainty</em>' attribute.
	 * @see #getOwnUncertainty()
	 * @generated
	 */
	void setOwnUncertainty(Double value);

	/**
	 * Returns the value of the '<em><b>Own Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Own Source</em>' attribute.
	 * @see #setOwnSource(String)
	 * @see org.flexwright.model.ModelPackage#getMaterialValue_OwnSource()
	 * @model annotation="urn:flexwright:field label='How measured'"
	 * @generated
	 */
	String getOwnSource();

	/**
	 * Sets the value of the '{@link org.flexwright.model.MaterialValue#getOwnSource <em>Own Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Own Source</em>' attribute.
	 * @see #getOwnSource()
	 * @generated
	 */
	void setOwnSource(String value);

} // MaterialValue
