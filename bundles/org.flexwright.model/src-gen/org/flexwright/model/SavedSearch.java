/**
 */
package org.flexwright.model;

import java.time.Instant;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Saved Search</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Words to search by, kept under a name.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.SavedSearch#getName <em>Name</em>}</li>
 *   <li>{@link org.flexwright.model.SavedSearch#getQuery <em>Query</em>}</li>
 *   <li>{@link org.flexwright.model.SavedSearch#getSavedAt <em>Saved At</em>}</li>
 * </ul>
 *
 * @see org.flexwright.model.ModelPackage#getSavedSearch()
 * @model
 * @generated
 */
public interface SavedSearch extends Entry {
	/**
	 * Returns the value of the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Name</em>' attribute.
	 * @see #setName(String)
	 * @see org.flexwright.model.ModelPackage#getSavedSearch_Name()
	 * @model annotation="urn:flexwright:field label='Name'"
	 * @generated
	 */
	String getName();

	/**
	 * Sets the value of the '{@link org.flexwright.model.SavedSearch#getName <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Name</em>' attribute.
	 * @see #getName()
	 * @generated
	 */
	void setName(String value);

	/**
	 * Returns the value of the '<em><b>Query</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Query</em>' attribute.
	 * @see #setQuery(String)
	 * @see org.flexwright.model.ModelPackage#getSavedSearch_Query()
	 * @model annotation="urn:flexwright:field label='Search'"
	 * @generated
	 */
	String getQuery();

	/**
	 * Sets the value of the '{@link org.flexwright.model.SavedSearch#getQuery <em>Query</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Query</em>' attribute.
	 * @see #getQuery()
	 * @generated
	 */
	void setQuery(String value);

	/**
	 * Returns the value of the '<em><b>Saved At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Saved At</em>' attribute.
	 * @see #setSavedAt(Instant)
	 * @see org.flexwright.model.ModelPackage#getSavedSearch_SavedAt()
	 * @model dataType="org.flexwright.model.Instant"
	 *        annotation="urn:flexwright:field label='Saved at'"
	 * @generated
	 */
	Instant getSavedAt();

	/**
	 * Sets the value of the '{@link org.flexwright.model.SavedSearch#getSavedAt <em>Saved At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Saved At</em>' attribute.
	 * @see #getSavedAt()
	 * @generated
	 */
	void setSavedAt(Instant value);

} // SavedSearch
