/**
 */
package org.flexwright.model;

import java.time.Instant;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Session</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A time at the bench: room, person, gauge, control piece.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.Session#getCode <em>Code</em>}</li>
 *   <li>{@link org.flexwright.model.Session#getAt <em>At</em>}</li>
 *   <li>{@link org.flexwright.model.Session#getRoomC <em>Room C</em>}</li>
 *   <li>{@link org.flexwright.model.Session#getRoomRh <em>Room Rh</em>}</li>
 *   <li>{@link org.flexwright.model.Session#getWho <em>Who</em>}</li>
 *   <li>{@link org.flexwright.model.Session#getInstruments <em>Instruments</em>}</li>
 *   <li>{@link org.flexwright.model.Session#getControlPiece <em>Control Piece</em>}</li>
 *   <li>{@link org.flexwright.model.Session#getConditioningHours <em>Conditioning Hours</em>}</li>
 *   <li>{@link org.flexwright.model.Session#getRoom <em>Room</em>}</li>
 * </ul>
 *
 * @see org.flexwright.model.ModelPackage#getSession()
 * @model
 * @generated
 */
public interface Session extends Entry {
	/**
	 * Returns the value of the '<em><b>Code</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Code</em>' attribute.
	 * @see #setCode(String)
	 * @see org.flexwright.model.ModelPackage#getSession_Code()
	 * @model annotation="urn:flexwright:field label='Session'"
	 * @generated
	 */
	String getCode();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Session#getCode <em>Code</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Code</em>' attribute.
	 * @see #getCode()
	 * @generated
	 */
	void setCode(String value);

	/**
	 * Returns the value of the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>At</em>' attribute.
	 * @see #setAt(Instant)
	 * @see org.flexwright.model.ModelPackage#getSession_At()
	 * @model dataType="org.flexwright.model.Instant"
	 *        annotation="urn:flexwright:field label='Date'"
	 * @generated
	 */
	Instant getAt();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Session#getAt <em>At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>At</em>' attribute.
	 * @see #getAt()
	 * @generated
	 */
	void setAt(Instant value);

	/**
	 * Returns the value of the '<em><b>Room C</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Room C</em>' attribute.
	 * @see #setRoomC(Double)
	 * @see org.flexwright.model.ModelPackage#getSession_RoomC()
	 * @model annotation="urn:flexwright:field kind='TEMPERATURE' unit='degC' min='-20' max='60' label='Room temperature'"
	 * @generated
	 */
	Double getRoomC();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Session#getRoomC <em>Room C</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Room C</em>' attribute.
	 * @see #getRoomC()
	 * @generated
	 */
	void setRoomC(Double value);

	/**
	 * Returns the value of the '<em><b>Room Rh</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Room Rh</em>' attribute.
	 * @see #setRoomRh(Double)
	 * @see org.flexwright.model.ModelPackage#getSession_RoomRh()
	 * @model annotation="urn:flexwright:field kind='HUMIDITY' unit='%RH' min='0' max='100' label='Room humidity'"
	 * @generated
	 */
	Double getRoomRh();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Session#getRoomRh <em>Room Rh</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Room Rh</em>' attribute.
	 * @see #getRoomRh()
	 * @generated
	 */
	void setRoomRh(Double value);

	/**
	 * Returns the value of the '<em><b>Who</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Who</em>' attribute.
	 * @see #setWho(String)
	 * @see org.flexwright.model.ModelPackage#getSession_Who()
	 * @model annotation="urn:flexwright:field label='Who'"
	 * @generated
	 */
	String getWho();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Session#getWho <em>Who</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Who</em>' attribute.
	 * @see #getWho()
	 * @generated
	 */
	void setWho(String value);

	/**
	 * Returns the value of the '<em><b>Instruments</b></em>' reference list.
	 * The list contents are of type {@link org.flexwright.model.Instrument}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Instruments</em>' reference list.
	 * @see org.flexwright.model.ModelPackage#getSession_Instruments()
	 * @model
	 * @generated
	 */
	EList<Instrument> getInstruments();

	/**
	 * Returns the value of the '<em><b>Control Piece</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Control Piece</em>' reference.
	 * @see #setControlPiece(ControlPiece)
	 * @see org.flexwright.model.ModelPackage#getSession_ControlPiece()
	 * @model
	 * @generated
	 */
	ControlPiece getControlPiece();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Session#getControlPiece <em>Control Piece</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Control Piece</em>' reference.
	 * @see #getControlPiece()
	 * @generated
	 */
	void setControlPiece(ControlPiece value);

	/**
	 * Returns the value of the '<em><b>Conditioning Hours</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How long the pieces lay in this room before the first reading.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Conditioning Hours</em>' attribute.
	 * @see #setConditioningHours(Double)
	 * @see org.flexwright.model.ModelPackage#getSession_ConditioningHours()
	 * @model annotation="urn:flexwright:field kind='DURATION' unit='h' min='0' max='100000' label='Conditioned for' help='How long the pieces lay in this room before the first reading.'"
	 * @generated
	 */
	Double getConditioningHours();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Session#getConditioningHours <em>Conditioning Hours</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Conditioning Hours</em>' attribute.
	 * @see #getConditioningHours()
	 * @generated
	 */
	void setConditioningHours(Double value);

	/**
	 * Returns the value of the '<em><b>Room</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Room or bench.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Room</em>' attribute.
	 * @see #setRoom(String)
	 * @see org.flexwright.model.ModelPackage#getSession_Room()
	 * @model annotation="urn:flexwright:field label='Room' help='Room or bench.'"
	 * @generated
	 */
	String getRoom();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Session#getRoom <em>Room</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Room</em>' attribute.
	 * @see #getRoom()
	 * @generated
	 */
	void setRoom(String value);

} // Session
