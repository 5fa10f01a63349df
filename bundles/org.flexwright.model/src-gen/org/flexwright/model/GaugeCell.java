/**
 */
package org.flexwright.model;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Gauge Cell</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * The readings of one person on one piece.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.GaugeCell#getPiece <em>Piece</em>}</li>
 *   <li>{@link org.flexwright.model.GaugeCell#getWho <em>Who</em>}</li>
 *   <li>{@link org.flexwright.model.GaugeCell#getReadings <em>Readings</em>}</li>
 * </ul>
 *
 * @see org.flexwright.model.ModelPackage#getGaugeCell()
 * @model
 * @generated
 */
public interface GaugeCell extends Entry {
	/**
	 * Returns the value of the '<em><b>Piece</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Piece</em>' attribute.
	 * @see #setPiece(String)
	 * @see org.flexwright.model.ModelPackage#getGaugeCell_Piece()
	 * @model annotation="urn:flexwright:field label='Piece'"
	 * @generated
	 */
	String getPiece();

	/**
	 * Sets the value of the '{@link org.flexwright.model.GaugeCell#getPiece <em>Piece</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Piece</em>' attribute.
	 * @see #getPiece()
	 * @generated
	 */
	void setPiece(String value);

	/**
	 * Returns the value of the '<em><b>Who</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Who</em>' attribute.
	 * @see #setWho(String)
	 * @see org.flexwright.model.ModelPackage#getGaugeCell_Who()
	 * @model annotation="urn:flexwright:field label='Who'"
	 * @generated
	 */
	String getWho();

	/**
	 * Sets the value of the '{@link org.flexwright.model.GaugeCell#getWho <em>Who</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Who</em>' attribute.
	 * @see #getWho()
	 * @generated
	 */
	void setWho(String value);

	/**
	 * Returns the value of the '<em><b>Readings</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.Reading}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Readings</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getGaugeCell_Readings()
	 * @model containment="true"
	 * @generated
	 */
	EList<Reading> getReadings();

} // GaugeCell
