/**
 */
package org.flexwright.model;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Property Key</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What was or shall be measured, with all that makes two values comparable.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.PropertyKey#getProperty <em>Property</em>}</li>
 *   <li>{@link org.flexwright.model.PropertyKey#getPieceKind <em>Piece Kind</em>}</li>
 *   <li>{@link org.flexwright.model.PropertyKey#getSpot <em>Spot</em>}</li>
 *   <li>{@link org.flexwright.model.PropertyKey#getSupport <em>Support</em>}</li>
 *   <li>{@link org.flexwright.model.PropertyKey#getDwell <em>Dwell</em>}</li>
 * </ul>
 *
 * @see org.flexwright.model.ModelPackage#getPropertyKey()
 * @model
 * @generated
 */
public interface PropertyKey extends EObject {
	/**
	 * Returns the value of the '<em><b>Property</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Id of the property definition.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Property</em>' attribute.
	 * @see #setProperty(String)
	 * @see org.flexwright.model.ModelPackage#getPropertyKey_Property()
	 * @model annotation="urn:flexwright:field label='Property' help='Id of the property definition.'"
	 * @generated
	 */
	String getProperty();

	/**
	 * Sets the value of the '{@link org.flexwright.model.PropertyKey#getProperty <em>Property</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Property</em>' attribute.
	 * @see #getProperty()
	 * @generated
	 */
	void setProperty(String value);

	/**
	 * Returns the value of the '<em><b>Piece Kind</b></em>' attribute.
	 * The literals are from the enumeration {@link org.flexwright.model.PieceKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Piece Kind</em>' attribute.
	 * @see org.flexwright.model.PieceKind
	 * @see #setPieceKind(PieceKind)
	 * @see org.flexwright.model.ModelPackage#getPropertyKey_PieceKind()
	 * @model annotation="urn:flexwright:field label='Piece'"
	 * @generated
	 */
	PieceKind getPieceKind();

	/**
	 * Sets the value of the '{@link org.flexwright.model.PropertyKey#getPieceKind <em>Piece Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Piece Kind</em>' attribute.
	 * @see org.flexwright.model.PieceKind
	 * @see #getPieceKind()
	 * @generated
	 */
	void setPieceKind(PieceKind value);

	/**
	 * Returns the value of the '<em><b>Spot</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Where on the piece.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Spot</em>' attribute.
	 * @see #setSpot(String)
	 * @see org.flexwright.model.ModelPackage#getPropertyKey_Spot()
	 * @model annotation="urn:flexwright:field label='Spot' help='Where on the piece.'"
	 * @generated
	 */
	String getSpot();

	/**
	 * Sets the value of the '{@link org.flexwright.model.PropertyKey#getSpot <em>Spot</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Spot</em>' attribute.
	 * @see #getSpot()
	 * @generated
	 */
	void setSpot(String value);

	/**
	 * Returns the value of the '<em><b>Support</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What the piece rests on.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Support</em>' attribute.
	 * @see #setSupport(String)
	 * @see org.flexwright.model.ModelPackage#getPropertyKey_Support()
	 * @model annotation="urn:flexwright:field label='Support' help='What the piece rests on.'"
	 * @generated
	 */
	String getSupport();

	/**
	 * Sets the value of the '{@link org.flexwright.model.PropertyKey#getSupport <em>Support</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Support</em>' attribute.
	 * @see #getSupport()
	 * @generated
	 */
	void setSupport(String value);

	/**
	 * Returns the value of the '<em><b>Dwell</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Time from contact to reading.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Dwell</em>' attribute.
	 * @see #setDwell(Double)
	 * @see org.flexwright.model.ModelPackage#getPropertyKey_Dwell()
	 * @model annotation="urn:flexwright:field kind='DURATION' unit='s' min='0' max='3600' label='Dwell' help='Time from contact to reading.'"
	 * @generated
	 */
	Double getDwell();

	/**
	 * Sets the value of the '{@link org.flexwright.model.PropertyKey#getDwell <em>Dwell</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Dwell</em>' attribute.
	 * @see #getDwell()
	 * @generated
	 */
	void setDwell(Double value);

} // PropertyKey
