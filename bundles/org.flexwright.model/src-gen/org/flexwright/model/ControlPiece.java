/**
 */
package org.flexwright.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Control Piece</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A kept piece read at the start of each session.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.ControlPiece#getUsual <em>Usual</em>}</li>
 *   <li>{@link org.flexwright.model.ControlPiece#getUsualSpread <em>Usual Spread</em>}</li>
 *   <li>{@link org.flexwright.model.ControlPiece#getUsualFrom <em>Usual From</em>}</li>
 * </ul>
 *
 * @see org.flexwright.model.ModelPackage#getControlPiece()
 * @model
 * @generated
 */
public interface ControlPiece extends Specimen {
	/**
	 * Returns the value of the '<em><b>Usual</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What it reads when all is well, in the unit of its gauge.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Usual</em>' attribute.
	 * @see #setUsual(Double)
	 * @see org.flexwright.model.ModelPackage#getControlPiece_Usual()
	 * @model annotation="urn:flexwright:field label='Usual reading' help='What it reads when all is well, in the unit of its gauge.'"
	 * @generated
	 */
	Double getUsual();

	/**
	 * Sets the value of the '{@link org.flexwright.model.ControlPiece#getUsual <em>Usual</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Usual</em>' attribute.
	 * @see #getUsual()
	 * @generated
	 */
	void setUsual(Double value);

	/**
	 * Returns the value of the '<em><b>Usual Spread</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Standard deviation of its reading from session to session, in the unit of its gauge.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Usual Spread</em>' attribute.
	 * @see #setUsualSpread(Double)
	 * @see org.flexwright.model.ModelPackage#getControlPiece_UsualSpread()
	 * @model annotation="urn:flexwright:field min='0' label='Usual spread' help='Standard deviation of its reading from session to session, in the unit of its gauge.'"
	 * @generated
	 */
	Double getUsualSpread();

	/**
	 * Sets the value of the '{@link org.flexwright.model.ControlPiece#getUsualSpread <em>Usual Spread</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Usual Spread</em>' attribute.
	 * @see #getUsualSpread()
	 * @generated
	 */
	void setUsualSpread(Double value);

	/**
	 * Returns the value of the '<em><b>Usual From</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A certificate, its marking, or own sessions.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Usual From</em>' attribute.
	 * @see #setUsualFrom(String)
	 * @see org.flexwright.model.ModelPackage#getControlPiece_UsualFrom()
	 * @model annotation="urn:flexwright:field label='Usual reading known from' help='A certificate, its marking, or own sessions.'"
	 * @generated
	 */
	String getUsualFrom();

	/**
	 * Sets the value of the '{@link org.flexwright.model.ControlPiece#getUsualFrom <em>Usual From</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Usual From</em>' attribute.
	 * @see #getUsualFrom()
	 * @generated
	 */
	void setUsualFrom(String value);

} // ControlPiece
