/**
 */
package org.flexwright.model;

import java.time.Instant;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Decision</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Go, hold or dump at a gate, with what stood against it.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.Decision#getWord <em>Word</em>}</li>
 *   <li>{@link org.flexwright.model.Decision#getAt <em>At</em>}</li>
 *   <li>{@link org.flexwright.model.Decision#getWho <em>Who</em>}</li>
 *   <li>{@link org.flexwright.model.Decision#getReason <em>Reason</em>}</li>
 *   <li>{@link org.flexwright.model.Decision#getOpen <em>Open</em>}</li>
 *   <li>{@link org.flexwright.model.Decision#getStep <em>Step</em>}</li>
 * </ul>
 *
 * @see org.flexwright.model.ModelPackage#getDecision()
 * @model
 * @generated
 */
public interface Decision extends Entry {
	/**
	 * Returns the value of the '<em><b>Word</b></em>' attribute.
	 * The literals are from the enumeration {@link org.flexwright.model.GateWord}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Word</em>' attribute.
	 * @see org.flexwright.model.GateWord
	 * @see #setWord(GateWord)
	 * @see org.flexwright.model.ModelPackage#getDecision_Word()
	 * @model annotation="urn:flexwright:field label='Decision'"
	 * @generated
	 */
	GateWord getWord();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Decision#getWord <em>Word</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Word</em>' attribute.
	 * @see org.flexwright.model.GateWord
	 * @see #getWord()
	 * @generated
	 */
	void setWord(GateWord value);

	/**
	 * Returns the value of the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>At</em>' attribute.
	 * @see #setAt(Instant)
	 * @see org.flexwright.model.ModelPackage#getDecision_At()
	 * @model dataType="org.flexwright.model.Instant"
	 *        annotation="urn:flexwright:field label='At'"
	 * @generated
	 */
	Instant getAt();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Decision#getAt <em>At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>At</em>' attribute.
	 * @see #getAt()
	 * @generated
	 */
	void setAt(Instant value);

	/**
	 * Returns the value of the '<em><b>Who</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Who</em>' attribute.
	 * @see #setWho(String)
	 * @see org.flexwright.model.ModelPackage#getDecision_Who()
	 * @model annotation="urn:flexwright:field label='Who'"
	 * @generated
	 */
	String getWho();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Decision#getWho <em>Who</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Who</em>' attribute.
	 * @see #getWho()
	 * @generated
	 */
	void setWho(String value);

	/**
	 * Returns the value of the '<em><b>Reason</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Needed for dump, and for go against an open point.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Reason</em>' attribute.
	 * @see #setReason(String)
	 * @see org.flexwright.model.ModelPackage#getDecision_Reason()
	 * @model annotation="urn:flexwright:field label='Reason' help='Needed for dump, and for go against an open point.'"
	 * @generated
	 */
	String getReason();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Decision#getReason <em>Reason</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Reason</em>' attribute.
	 * @see #getReason()
	 * @generated
	 */
	void setReason(String value);

	/**
	 * Returns the value of the '<em><b>Open</b></em>' attribute list.
	 * The list contents are of type {@link java.lang.String}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What stood against going on, in words.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Open</em>' attribute list.
	 * @see org.flexwright.model.ModelPackage#getDecision_Open()
	 * @model annotation="urn:flexwright:field label='Open points' help='What stood against going on, in words.'"
	 * @generated
	 */
	EList<String> getOpen();

	/**
	 * Returns the value of the '<em><b>Step</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Step</em>' reference.
	 * @see #setStep(Step)
	 * @see org.flexwright.model.ModelPackage#getDecision_Step()
	 * @model
	 * @generated
	 */
	Step getStep();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Decision#getStep <em>Step</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Step</em>' reference.
	 * @see #getStep()
	 * @generated
	 */
	void setStep(Step value);

} // Decision
