/**
 */
package org.flexwright.model;

import java.time.LocalDate;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Lot</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A bottle, spool or can of a grade.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.Lot#getCode <em>Code</em>}</li>
 *   <li>{@link org.flexwright.model.Lot#getOpened <em>Opened</em>}</li>
 *   <li>{@link org.flexwright.model.Lot#getExpires <em>Expires</em>}</li>
 *   <li>{@link org.flexwright.model.Lot#getPrice <em>Price</em>}</li>
 *   <li>{@link org.flexwright.model.Lot#getAmount <em>Amount</em>}</li>
 *   <li>{@link org.flexwright.model.Lot#getSheetDate <em>Sheet Date</em>}</li>
 *   <li>{@link org.flexwright.model.Lot#getSheetRevision <em>Sheet Revision</em>}</li>
 *   <li>{@link org.flexwright.model.Lot#getValues <em>Values</em>}</li>
 * </ul>
 *
 * @see org.flexwright.model.ModelPackage#getLot()
 * @model
 * @generated
 */
public interface Lot extends Entry {
	/**
	 * Returns the value of the '<em><b>Code</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Code</em>' attribute.
	 * @see #setCode(String)
	 * @see org.flexwright.model.ModelPackage#getLot_Code()
	 * @model annotation="urn:flexwright:field label='Lot'"
	 * @generated
	 */
	String getCode();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Lot#getCode <em>Code</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Code</em>' attribute.
	 * @see #getCode()
	 * @generated
	 */
	void setCode(String value);

	/**
	 * Returns the value of the '<em><b>Opened</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Opened</em>' attribute.
	 * @see #setOpened(LocalDate)
	 * @see org.flexwright.model.ModelPackage#getLot_Opened()
	 * @model dataType="org.flexwright.model.LocalDate"
	 *        annotation="urn:flexwright:field label='Opened'"
	 * @generated
	 */
	LocalDate getOpened();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Lot#getOpened <em>Opened</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Opened</em>' attribute.
	 * @see #getOpened()
	 * @generated
	 */
	void setOpened(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Expires</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Expires</em>' attribute.
	 * @see #setExpires(LocalDate)
	 * @see org.flexwright.model.ModelPackage#getLot_Expires()
	 * @model dataType="org.flexwright.model.LocalDate"
	 *        annotation="urn:flexwright:field label='Expires'"
	 * @generated
	 */
	LocalDate getExpires();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Lot#getExpires <em>Expires</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Expires</em>' attribute.
	 * @see #getExpires()
	 * @generated
	 */
	void setExpires(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Price</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Price</em>' attribute.
	 * @see #setPrice(Double)
	 * @see org.flexwright.model.ModelPackage#getLot_Price()
	 * @model annotation="urn:flexwright:field kind='MONEY' unit='EUR' min='0' max='100000' label='Price'"
	 * @generated
	 */
	Double getPrice();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Lot#getPrice <em>Price</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Price</em>' attribute.
	 * @see #getPrice()
	 * @generated
	 */
	void setPrice(Double value);

	/**
	 * Returns the value of the '<em><b>Amount</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Amount</em>' attribute.
	 * @see #setAmount(Double)
	 * @see org.flexwright.model.ModelPackage#getLot_Amount()
	 * @model annotation="urn:flexwright:field kind='MASS' unit='g' min='0' max='1000000' label='Amount bought'"
	 * @generated
	 */
	Double getAmount();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Lot#getAmount <em>Amount</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Amount</em>' attribute.
	 * @see #getAmount()
	 * @generated
	 */
	void setAmount(Double value);

	/**
	 * Returns the value of the '<em><b>Sheet Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Sheet Date</em>' attribute.
	 * @see #setSheetDate(LocalDate)
	 * @see org.flexwright.model.ModelPackage#getLot_SheetDate()
	 * @model dataType="org.flexwright.model.LocalDate"
	 *        annotation="urn:flexwright:field label='Data sheet dated'"
	 * @generated
	 */
	LocalDate getSheetDate();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Lot#getSheetDate <em>Sheet Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sheet Date</em>' attribute.
	 * @see #getSheetDate()
	 * @generated
	 */
	void setSheetDate(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Sheet Revision</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Sheet Revision</em>' attribute.
	 * @see #setSheetRevision(String)
	 * @see org.flexwright.model.ModelPackage#getLot_SheetRevision()
	 * @model annotation="urn:flexwright:field label='Data sheet revision'"
	 * @generated
	 */
	String getSheetRevision();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Lot#getSheetRevision <em>Sheet Revision</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sheet Revision</em>' attribute.
	 * @see #getSheetRevision()
	 * @generated
	 */
	void setSheetRevision(String value);

	/**
	 * Returns the value of the '<em><b>Values</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.MaterialValue}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Values</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getLot_Values()
	 * @model containment="true"
	 * @generated
	 */
	EList<MaterialValue> getValues();

} // Lot
