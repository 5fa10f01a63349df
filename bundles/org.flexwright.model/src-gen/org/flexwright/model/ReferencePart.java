/**
 */
package org.flexwright.model;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Reference Part</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * The part to re-create.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.ReferencePart#getName <em>Name</em>}</li>
 *   <li>{@link org.flexwright.model.ReferencePart#getCondition <em>Condition</em>}</li>
 *   <li>{@link org.flexwright.model.ReferencePart#getAgeYears <em>Age Years</em>}</li>
 *   <li>{@link org.flexwright.model.ReferencePart#getPhotos <em>Photos</em>}</li>
 * </ul>
 *
 * @see org.flexwright.model.ModelPackage#getReferencePart()
 * @model
 * @generated
 */
public interface ReferencePart extends Specimen {
	/**
	 * Returns the value of the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Name</em>' attribute.
	 * @see #setName(String)
	 * @see org.flexwright.model.ModelPackage#getReferencePart_Name()
	 * @model annotation="urn:flexwright:field label='Name'"
	 * @generated
	 */
	String getName();

	/**
	 * Sets the value of the '{@link org.flexwright.model.ReferencePart#getName <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Name</em>' attribute.
	 * @see #getName()
	 * @generated
	 */
	void setName(String value);

	/**
	 * Returns the value of the '<em><b>Condition</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Worn, swollen, hardened, in which words.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Condition</em>' attribute.
	 * @see #setCondition(String)
	 * @see org.flexwright.model.ModelPackage#getReferencePart_Condition()
	 * @model annotation="urn:flexwright:field label='Condition' help='Worn, swollen, hardened, in which words.'"
	 * @generated
	 */
	String getCondition();

	/**
	 * Sets the value of the '{@link org.flexwright.model.ReferencePart#getCondition <em>Condition</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Condition</em>' attribute.
	 * @see #getCondition()
	 * @generated
	 */
	void setCondition(String value);

	/**
	 * Returns the value of the '<em><b>Age Years</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Age Years</em>' attribute.
	 * @see #setAgeYears(Double)
	 * @see org.flexwright.model.ModelPackage#getReferencePart_AgeYears()
	 * @model annotation="urn:flexwright:field kind='DURATION' unit='a' min='0' max='200' label='Age'"
	 * @generated
	 */
	Double getAgeYears();

	/**
	 * Sets the value of the '{@link org.flexwright.model.ReferencePart#getAgeYears <em>Age Years</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Age Years</em>' attribute.
	 * @see #getAgeYears()
	 * @generated
	 */
	void setAgeYears(Double value);

	/**
	 * Returns the value of the '<em><b>Photos</b></em>' reference list.
	 * The list contents are of type {@link org.flexwright.model.Attachment}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Photos</em>' reference list.
	 * @see org.flexwright.model.ModelPackage#getReferencePart_Photos()
	 * @model
	 * @generated
	 */
	EList<Attachment> getPhotos();

} // ReferencePart
