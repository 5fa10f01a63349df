/**
 */
package org.flexwright.model;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Run Input</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One input as it was.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.RunInput#getName <em>Name</em>}</li>
 *   <li>{@link org.flexwright.model.RunInput#getValue <em>Value</em>}</li>
 *   <li>{@link org.flexwright.model.RunInput#getText <em>Text</em>}</li>
 *   <li>{@link org.flexwright.model.RunInput#getUnit <em>Unit</em>}</li>
 *   <li>{@link org.flexwright.model.RunInput#getOrigin <em>Origin</em>}</li>
 *   <li>{@link org.flexwright.model.RunInput#getBoundTo <em>Bound To</em>}</li>
 * </ul>
 *
 * @see org.flexwright.model.ModelPackage#getRunInput()
 * @model
 * @generated
 */
public interface RunInput extends EObject {
	/**
	 * Returns the value of the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Name</em>' attribute.
	 * @see #setName(String)
	 * @see org.flexwright.model.ModelPackage#getRunInput_Name()
	 * @model
	 * @generated
	 */
	String getName();

	/**
	 * Sets the value of the '{@link org.flexwright.model.RunInput#getName <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Name</em>' attribute.
	 * @see #getName()
	 * @generated
	 */
	void setName(String value);

	/**
	 * Returns the value of the '<em><b>Value</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Value</em>' attribute.
	 * @see #setValue(Double)
	 * @see org.flexwright.model.ModelPackage#getRunInput_Value()
	 * @model
	 * @generated
	 */
	Double getValue();

	/**
	 * Sets the value of the '{@link org.flexwright.model.RunInput#getValue <em>Value</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Value</em>' attribute.
	 * @see #getValue()
	 * @generated
	 */
	void setValue(Double value);

	/**
	 * Returns the value of the '<em><b>Text</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Text</em>' attribute.
	 * @see #setText(String)
	 * @see org.flexwright.model.ModelPackage#getRunInput_Text()
	 * @model
	 * @generated
	 */
	String getText();

	/**
	 * Sets the value of the '{@link org.flexwright.model.RunInput#getText <em>Text</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Text</em>' attribute.
	 * @see #getText()
	 * @generated
	 */
	void setText(String value);

	/**
	 * Returns the value of the '<em><b>Unit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Unit</em>' attribute.
	 * @see #setUnit(String)
	 * @see org.flexwright.model.ModelPackage#getRunInput_Unit()
	 * @model
	 * @generated
	 */
	String getUnit();

	/**
	 * Sets the value of the '{@link org.flexwright.model.RunInput#getUnit <em>Unit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Unit</em>' attribute.
	 * @see #getUnit()
	 * @generated
	 */
	void setUnit(String value);

	/**
	 * Returns the value of the '<em><b>Origin</b></em>' attribute.
	 * The literals are from the enumeration {@link org.flexwright.model.Origin}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Origin</em>' attribute.
	 * @see org.flexwright.model.Origin
	 * @see #setOrigin(Origin)
	 * @see org.flexwright.model.ModelPackage#getRunInput_Origin()
	 * @model
	 * @generated
	 */
	Origin getOrigin();

	/**
	 * Sets the value of the '{@link org.flexwright.model.RunInput#getOrigin <em>Origin</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Origin</em>' attribute.
	 * @see org.flexwright.model.Origin
	 * @see #getOrigin()
	 * @generated
	 */
	void setOrigin(Origin value);

	/**
	 * Returns the value of the '<em><b>Bound To</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Path of the model feature it was taken from.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Bound To</em>' attribute.
	 * @see #setBoundTo(String)
	 * @see org.flexwright.model.ModelPackage#getRunInput_BoundTo()
	 * @model
	 * @generated
	 */
	String getBoundTo();

	/**
	 * Sets the value of the '{@link org.flexwright.model.RunInput#getBoundTo <em>Bound To</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Bound To</em>' attribute.
	 * @see #getBoundTo()
	 * @generated
	 */
	void setBoundTo(String value);

} // RunInput
