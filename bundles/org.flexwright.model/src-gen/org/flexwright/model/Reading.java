/**
 */
package org.flexwright.model;

import java.time.Instant;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Reading</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One single reading, never averaged away.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.Reading#getValue <em>Value</em>}</li>
 *   <li>{@link org.flexwright.model.Reading#getCensoring <em>Censoring</em>}</li>
 *   <li>{@link org.flexwright.model.Reading#getYes <em>Yes</em>}</li>
 *   <li>{@link org.flexwright.model.Reading#getAt <em>At</em>}</li>
 *   <li>{@link org.flexwright.model.Reading#getTypedAs <em>Typed As</em>}</li>
 *   <li>{@link org.flexwright.model.Reading#getLeftOut <em>Left Out</em>}</li>
 * </ul>
 *
 * @see org.flexwright.model.ModelPackage#getReading()
 * @model
 * @generated
 */
public interface Reading extends EObject {
	/**
	 * Returns the value of the '<em><b>Value</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * In the property's canonical unit.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Value</em>' attribute.
	 * @see #setValue(Double)
	 * @see org.flexwright.model.ModelPackage#getReading_Value()
	 * @model annotation="urn:flexwright:field label='Reading' help='In the property\'s canonical unit.'"
	 * @generated
	 */
	Double getValue();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Reading#getValue <em>Value</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Value</em>' attribute.
	 * @see #getValue()
	 * @generated
	 */
	void setValue(Double value);

	/**
	 * Returns the value of the '<em><b>Censoring</b></em>' attribute.
	 * The literals are from the enumeration {@link org.flexwright.model.Censoring}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Censoring</em>' attribute.
	 * @see org.flexwright.model.Censoring
	 * @see #setCensoring(Censoring)
	 * @see org.flexwright.model.ModelPackage#getReading_Censoring()
	 * @model
	 * @generated
	 */
	Censoring getCensoring();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Reading#getCensoring <em>Censoring</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Censoring</em>' attribute.
	 * @see org.flexwright.model.Censoring
	 * @see #getCensoring()
	 * @generated
	 */
	void setCensoring(Censoring value);

	/**
	 * Returns the value of the '<em><b>Yes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * For yes/no properties.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Yes</em>' attribute.
	 * @see #setYes(Boolean)
	 * @see org.flexwright.model.ModelPackage#getReading_Yes()
	 * @model annotation="urn:flexwright:field label='Yes' help='For yes/no properties.'"
	 * @generated
	 */
	Boolean getYes();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Reading#getYes <em>Yes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Yes</em>' attribute.
	 * @see #getYes()
	 * @generated
	 */
	void setYes(Boolean value);

	/**
	 * Returns the value of the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>At</em>' attribute.
	 * @see #setAt(Instant)
	 * @see org.flexwright.model.ModelPackage#getReading_At()
	 * @model dataType="org.flexwright.model.Instant"
	 * @generated
	 */
	Instant getAt();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Reading#getAt <em>At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>At</em>' attribute.
	 * @see #getAt()
	 * @generated
	 */
	void setAt(Instant value);

	/**
	 * Returns the value of the '<em><b>Typed As</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Typed As</em>' attribute.
	 * @see #setTypedAs(String)
	 * @see org.flexwright.model.ModelPackage#getReading_TypedAs()
	 * @model
	 * @generated
	 */
	String getTypedAs();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Reading#getTypedAs <em>Typed As</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Typed As</em>' attribute.
	 * @see #getTypedAs()
	 * @generated
	 */
	void setTypedAs(String value);

	/**
	 * Returns the value of the '<em><b>Left Out</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A reading left out stays, with its reason.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Left Out</em>' attribute.
	 * @see #setLeftOut(String)
	 * @see org.flexwright.model.ModelPackage#getReading_LeftOut()
	 * @model annotation="urn:flexwright:field label='Left out because' help='A reading left out stays, with its reason.'"
	 * @generated
	 */
	String getLeftOut();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Reading#getLeftOut <em>Left Out</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Left Out</em>' attribute.
	 * @see #getLeftOut()
	 * @generated
	 */
	void setLeftOut(String value);

} // Reading
