/**
 */
package org.flexwright.model;

import java.time.Instant;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Measurement</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Readings of one property on one piece at one time.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.Measurement#getKind <em>Kind</em>}</li>
 *   <li>{@link org.flexwright.model.Measurement#getKey <em>Key</em>}</li>
 *   <li>{@link org.flexwright.model.Measurement#getAt <em>At</em>}</li>
 *   <li>{@link org.flexwright.model.Measurement#getDelayHours <em>Delay Hours</em>}</li>
 *   <li>{@link org.flexwright.model.Measurement#getPieceC <em>Piece C</em>}</li>
 *   <li>{@link org.flexwright.model.Measurement#getKnowledge <em>Knowledge</em>}</li>
 *   <li>{@link org.flexwright.model.Measurement#getSession <em>Session</em>}</li>
 *   <li>{@link org.flexwright.model.Measurement#getInstrument <em>Instrument</em>}</li>
 *   <li>{@link org.flexwright.model.Measurement#getReadings <em>Readings</em>}</li>
 *   <li>{@link org.flexwright.model.Measurement#getDetails <em>Details</em>}</li>
 *   <li>{@link org.flexwright.model.Measurement#getRecording <em>Recording</em>}</li>
 * </ul>
 *
 * @see org.flexwright.model.ModelPackage#getMeasurement()
 * @model
 * @generated
 */
public interface Measurement extends Entry {
	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Id of the measurement kind whose details are kept, or empty.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see #setKind(String)
	 * @see org.flexwright.model.ModelPackage#getMeasurement_Kind()
	 * @model
	 * @generated
	 */
	String getKind();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Measurement#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see #getKind()
	 * @generated
	 */
	void setKind(String value);

	/**
	 * Returns the value of the '<em><b>Key</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Key</em>' containment reference.
	 * @see #setKey(PropertyKey)
	 * @see org.flexwright.model.ModelPackage#getMeasurement_Key()
	 * @model containment="true"
	 * @generated
	 */
	PropertyKey getKey();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Measurement#getKey <em>Key</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Key</em>' containment reference.
	 * @see #getKey()
	 * @generated
	 */
	void setKey(PropertyKey value);

	/**
	 * Returns the value of the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>At</em>' attribute.
	 * @see #setAt(Instant)
	 * @see org.flexwright.model.ModelPackage#getMeasurement_At()
	 * @model dataType="org.flexwright.model.Instant"
	 *        annotation="urn:flexwright:field label='When'"
	 * @generated
	 */
	Instant getAt();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Measurement#getAt <em>At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>At</em>' attribute.
	 * @see #getAt()
	 * @generated
	 */
	void setAt(Instant value);

	/**
	 * Returns the value of the '<em><b>Delay Hours</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Part age when read, when known otherwise than from its made time.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Delay Hours</em>' attribute.
	 * @see #setDelayHours(Double)
	 * @see org.flexwright.model.ModelPackage#getMeasurement_DelayHours()
	 * @model annotation="urn:flexwright:field kind='DURATION' unit='h' min='0' label='Age at test' help='Part age when read, when known otherwise than from its made time.'"
	 * @generated
	 */
	Double getDelayHours();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Measurement#getDelayHours <em>Delay Hours</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Delay Hours</em>' attribute.
	 * @see #getDelayHours()
	 * @generated
	 */
	void setDelayHours(Double value);

	/**
	 * Returns the value of the '<em><b>Piece C</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Piece C</em>' attribute.
	 * @see #setPieceC(Double)
	 * @see org.flexwright.model.ModelPackage#getMeasurement_PieceC()
	 * @model annotation="urn:flexwright:field kind='TEMPERATURE' unit='degC' min='-40' max='150' label='Piece temperature'"
	 * @generated
	 */
	Double getPieceC();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Measurement#getPieceC <em>Piece C</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Piece C</em>' attribute.
	 * @see #getPieceC()
	 * @generated
	 */
	void setPieceC(Double value);

	/**
	 * Returns the value of the '<em><b>Knowledge</b></em>' attribute.
	 * The literals are from the enumeration {@link org.flexwright.model.Knowledge}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Knowledge</em>' attribute.
	 * @see org.flexwright.model.Knowledge
	 * @see #setKnowledge(Knowledge)
	 * @see org.flexwright.model.ModelPackage#getMeasurement_Knowledge()
	 * @model annotation="urn:flexwright:field label='Known'"
	 * @generated
	 */
	Knowledge getKnowledge();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Measurement#getKnowledge <em>Knowledge</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Knowledge</em>' attribute.
	 * @see org.flexwright.model.Knowledge
	 * @see #getKnowledge()
	 * @generated
	 */
	void setKnowledge(Knowledge value);

	/**
	 * Returns the value of the '<em><b>Session</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Session</em>' reference.
	 * @see #setSession(Session)
	 * @see org.flexwright.model.ModelPackage#getMeasurement_Session()
	 * @model
	 * @generated
	 */
	Session getSession();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Measurement#getSession <em>Session</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Session</em>' reference.
	 * @see #getSession()
	 * @generated
	 */
	void setSession(Session value);

	/**
	 * Returns the value of the '<em><b>Instrument</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Instrument</em>' reference.
	 * @see #setInstrument(Instrument)
	 * @see org.flexwright.model.ModelPackage#getMeasurement_Instrument()
	 * @model
	 * @generated
	 */
	Instrument getInstrument();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Measurement#getInstrument <em>Instrument</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Instrument</em>' reference.
	 * @see #getInstrument()
	 * @generated
	 */
	void setInstrument(Instrument value);

	/**
	 * Returns the value of the '<em><b>Readings</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.Reading}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Readings</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getMeasurement_Readings()
	 * @model containment="true"
	 * @generated
	 */
	EList<Reading> getReadings();

	/**
	 * Returns the value of the '<em><b>Details</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Details</em>' containment reference.
	 * @see #setDetails(EObject)
	 * @see org.flexwright.model.ModelPackage#getMeasurement_Details()
	 * @model containment="true"
	 * @generated
	 */
	EObject getDetails();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Measurement#getDetails <em>Details</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Details</em>' containment reference.
	 * @see #getDetails()
	 * @generated
	 */
	void setDetails(EObject value);

	/**
	 * Returns the value of the '<em><b>Recording</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The recording its readings were taken from.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Recording</em>' reference.
	 * @see #setRecording(Recording)
	 * @see org.flexwright.model.ModelPackage#getMeasurement_Recording()
	 * @model
	 * @generated
	 */
	Recording getRecording();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Measurement#getRecording <em>Recording</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Recording</em>' reference.
	 * @see #getRecording()
	 * @generated
	 */
	void setRecording(Recording value);

} // Measurement
