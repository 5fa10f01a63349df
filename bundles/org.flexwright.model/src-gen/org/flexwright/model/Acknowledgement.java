/**
 */
package org.flexwright.model;

import java.time.Instant;
import java.time.LocalDate;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Acknowledgement</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A prompt a person read and ticked, for one session and lot.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.Acknowledgement#getPrompt <em>Prompt</em>}</li>
 *   <li>{@link org.flexwright.model.Acknowledgement#getSession <em>Session</em>}</li>
 *   <li>{@link org.flexwright.model.Acknowledgement#getLot <em>Lot</em>}</li>
 *   <li>{@link org.flexwright.model.Acknowledgement#getStep <em>Step</em>}</li>
 *   <li>{@link org.flexwright.model.Acknowledgement#getWho <em>Who</em>}</li>
 *   <li>{@link org.flexwright.model.Acknowledgement#getAt <em>At</em>}</li>
 *   <li>{@link org.flexwright.model.Acknowledgement#getSheetDate <em>Sheet Date</em>}</li>
 *   <li>{@link org.flexwright.model.Acknowledgement#getSheetRevision <em>Sheet Revision</em>}</li>
 * </ul>
 *
 * @see org.flexwright.model.ModelPackage#getAcknowledgement()
 * @model
 * @generated
 */
public interface Acknowledgement extends Entry {
	/**
	 * Returns the value of the '<em><b>Prompt</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Prompt</em>' attribute.
	 * @see #setPrompt(String)
	 * @see org.flexwright.model.ModelPackage#getAcknowledgement_Prompt()
	 * @model
	 * @generated
	 */
	String getPrompt();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Acknowledgement#getPrompt <em>Prompt</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Prompt</em>' attribute.
	 * @see #getPrompt()
	 * @generated
	 */
	void setPrompt(String value);

	/**
	 * Returns the value of the '<em><b>Session</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Session</em>' reference.
	 * @see #setSession(Session)
	 * @see org.flexwright.model.ModelPackage#getAcknowledgement_Session()
	 * @model
	 * @generated
	 */
	Session getSession();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Acknowledgement#getSession <em>Session</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Session</em>' reference.
	 * @see #getSession()
	 * @generated
	 */
	void setSession(Session value);

	/**
	 * Returns the value of the '<em><b>Lot</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Lot</em>' reference.
	 * @see #setLot(Lot)
	 * @see org.flexwright.model.ModelPackage#getAcknowledgement_Lot()
	 * @model
	 * @generated
	 */
	Lot getLot();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Acknowledgement#getLot <em>Lot</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Lot</em>' reference.
	 * @see #getLot()
	 * @generated
	 */
	void setLot(Lot value);

	/**
	 * Returns the value of the '<em><b>Step</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Step</em>' reference.
	 * @see #setStep(Step)
	 * @see org.flexwright.model.ModelPackage#getAcknowledgement_Step()
	 * @model
	 * @generated
	 */
	Step getStep();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Acknowledgement#getStep <em>Step</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Step</em>' reference.
	 * @see #getStep()
	 * @generated
	 */
	void setStep(Step value);

	/**
	 * Returns the value of the '<em><b>Who</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Who</em>' attribute.
	 * @see #setWho(String)
	 * @see org.flexwright.model.ModelPackage#getAcknowledgement_Who()
	 * @model
	 * @generated
	 */
	String getWho();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Acknowledgement#getWho <em>Who</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Who</em>' attribute.
	 * @see #getWho()
	 * @generated
	 */
	void setWho(String value);

	/**
	 * Returns the value of the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>At</em>' attribute.
	 * @see #setAt(Instant)
	 * @see org.flexwright.model.ModelPackage#getAcknowledgement_At()
	 * @model dataType="org.flexwright.model.Instant"
	 * @generated
	 */
	Instant getAt();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Acknowledgement#getAt <em>At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>At</em>' attribute.
	 * @see #getAt()
	 * @generated
	 */
	void setAt(Instant value);

	/**
	 * Returns the value of the '<em><b>Sheet Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Sheet Date</em>' attribute.
	 * @see #setSheetDate(LocalDate)
	 * @see org.flexwright.model.ModelPackage#getAcknowledgement_SheetDate()
	 * @model dataType="org.flexwright.model.LocalDate"
	 *        annotation="urn:flexwright:field label='Data sheet dated'"
	 * @generated
	 */
	LocalDate getSheetDate();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Acknowledgement#getSheetDate <em>Sheet Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sheet Date</em>' attribute.
	 * @see #getSheetDate()
	 * @generated
	 */
	void setSheetDate(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Sheet Revision</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Sheet Revision</em>' attribute.
	 * @see #setSheetRevision(String)
	 * @see org.flexwright.model.ModelPackage#getAcknowledgement_SheetRevision()
	 * @model annotation="urn:flexwright:field label='Data sheet revision'"
	 * @generated
	 */
	String getSheetRevision();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Acknowledgement#getSheetRevision <em>Sheet Revision</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sheet Revision</em>' attribute.
	 * @see #getSheetRevision()
	 * @generated
	 */
	void setSheetRevision(String value);

} // Acknowledgement
