/**
 */
package org.flexwright.model;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Entry</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A record made by a person; knows where each of its numbers came from.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.Entry#getProvenance <em>Provenance</em>}</li>
 *   <li>{@link org.flexwright.model.Entry#getNote <em>Note</em>}</li>
 * </ul>
 *
 * @see org.flexwright.model.ModelPackage#getEntry()
 * @model abstract="true"
 * @generated
 */
public interface Entry extends Identified {
	/**
	 * Returns the value of the '<em><b>Provenance</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.Provenance}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Origin of single features; a number without one was typed.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Provenance</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getEntry_Provenance()
	 * @model containment="true"
	 * @generated
	 */
	EList<Provenance> getProvenance();

	/**
	 * Returns the value of the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Free words.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Note</em>' attribute.
	 * @see #setNote(String)
	 * @see org.flexwright.model.ModelPackage#getEntry_Note()
	 * @model
	 * @generated
	 */
	String getNote();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Entry#getNote <em>Note</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Note</em>' attribute.
	 * @see #getNote()
	 * @generated
	 */
	void setNote(String value);

} // Entry
