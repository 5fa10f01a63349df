/**
 */
package org.flexwright.model;

import java.time.Instant;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Premix</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A blend weighed as one and counted as its ingredients: powder stirred into part B, rested, dried.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.Premix#getCode <em>Code</em>}</li>
 *   <li>{@link org.flexwright.model.Premix#getTitle <em>Title</em>}</li>
 *   <li>{@link org.flexwright.model.Premix#getMadeAt <em>Made At</em>}</li>
 *   <li>{@link org.flexwright.model.Premix#getRestedHours <em>Rested Hours</em>}</li>
 *   <li>{@link org.flexwright.model.Premix#getDriedC <em>Dried C</em>}</li>
 *   <li>{@link org.flexwright.model.Premix#getDriedHours <em>Dried Hours</em>}</li>
 *   <li>{@link org.flexwright.model.Premix#getIngredients <em>Ingredients</em>}</li>
 * </ul>
 *
 * @see org.flexwright.model.ModelPackage#getPremix()
 * @model
 * @generated
 */
public interface Premix extends Entry {
	/**
	 * Returns the value of the '<em><b>Code</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Code</em>' attribute.
	 * @see #setCode(String)
	 * @see org.flexwright.model.ModelPackage#getPremix_Code()
	 * @model annotation="urn:flexwright:field label='Premix'"
	 * @generated
	 */
	String getCode();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Premix#getCode <em>Code</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Code</em>' attribute.
	 * @see #getCode()
	 * @generated
	 */
	void setCode(String value);

	/**
	 * Returns the value of the '<em><b>Title</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Title</em>' attribute.
	 * @see #setTitle(String)
	 * @see org.flexwright.model.ModelPackage#getPremix_Title()
	 * @model annotation="urn:flexwright:field label='Title'"
	 * @generated
	 */
	String getTitle();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Premix#getTitle <em>Title</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Title</em>' attribute.
	 * @see #getTitle()
	 * @generated
	 */
	void setTitle(String value);

	/**
	 * Returns the value of the '<em><b>Made At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Made At</em>' attribute.
	 * @see #setMadeAt(Instant)
	 * @see org.flexwright.model.ModelPackage#getPremix_MadeAt()
	 * @model dataType="org.flexwright.model.Instant"
	 *        annotation="urn:flexwright:field label='Made at'"
	 * @generated
	 */
	Instant getMadeAt();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Premix#getMadeAt <em>Made At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Made At</em>' attribute.
	 * @see #getMadeAt()
	 * @generated
	 */
	void setMadeAt(Instant value);

	/**
	 * Returns the value of the '<em><b>Rested Hours</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Rested Hours</em>' attribute.
	 * @see #setRestedHours(Double)
	 * @see org.flexwright.model.ModelPackage#getPremix_RestedHours()
	 * @model annotation="urn:flexwright:field kind='DURATION' unit='h' min='0' max='10000' label='Rested'"
	 * @generated
	 */
	Double getRestedHours();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Premix#getRestedHours <em>Rested Hours</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rested Hours</em>' attribute.
	 * @see #getRestedHours()
	 * @generated
	 */
	void setRestedHours(Double value);

	/**
	 * Returns the value of the '<em><b>Dried C</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Dried C</em>' attribute.
	 * @see #setDriedC(Double)
	 * @see org.flexwright.model.ModelPackage#getPremix_DriedC()
	 * @model annotation="urn:flexwright:field kind='TEMPERATURE' unit='degC' min='0' max='300' label='Dried at'"
	 * @generated
	 */
	Double getDriedC();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Premix#getDriedC <em>Dried C</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Dried C</em>' attribute.
	 * @see #getDriedC()
	 * @generated
	 */
	void setDriedC(Double value);

	/**
	 * Returns the value of the '<em><b>Dried Hours</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Dried Hours</em>' attribute.
	 * @see #setDriedHours(Double)
	 * @see org.flexwright.model.ModelPackage#getPremix_DriedHours()
	 * @model annotation="urn:flexwright:field kind='DURATION' unit='h' min='0' max='1000' label='Dried for'"
	 * @generated
	 */
	Double getDriedHours();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Premix#getDriedHours <em>Dried Hours</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Dried Hours</em>' attribute.
	 * @see #getDriedHours()
	 * @generated
	 */
	void setDriedHours(Double value);

	/**
	 * Returns the value of the '<em><b>Ingredients</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.MaterialUse}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Ingredients</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getPremix_Ingredients()
	 * @model containment="true"
	 * @generated
	 */
	EList<MaterialUse> getIngredients();

} // Premix
