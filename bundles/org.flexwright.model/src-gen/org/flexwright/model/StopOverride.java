/**
 */
package org.flexwright.model;

import java.time.Instant;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Stop Override</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A stop finding gone against, with its reason.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.StopOverride#getRule <em>Rule</em>}</li>
 *   <li>{@link org.flexwright.model.StopOverride#getSubject <em>Subject</em>}</li>
 *   <li>{@link org.flexwright.model.StopOverride#getInputHash <em>Input Hash</em>}</li>
 *   <li>{@link org.flexwright.model.StopOverride#getReason <em>Reason</em>}</li>
 *   <li>{@link org.flexwright.model.StopOverride#getWho <em>Who</em>}</li>
 *   <li>{@link org.flexwright.model.StopOverride#getAt <em>At</em>}</li>
 * </ul>
 *
 * @see org.flexwright.model.ModelPackage#getStopOverride()
 * @model
 * @generated
 */
public interface StopOverride extends Entry {
	/**
	 * Returns the value of the '<em><b>Rule</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Rule</em>' attribute.
	 * @see #setRule(String)
	 * @see org.flexwright.model.ModelPackage#getStopOverride_Rule()
	 * @model
	 * @generated
	 */
	String getRule();

	/**
	 * Sets the value of the '{@link org.flexwright.model.StopOverride#getRule <em>Rule</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rule</em>' attribute.
	 * @see #getRule()
	 * @generated
	 */
	void setRule(String value);

	/**
	 * Returns the value of the '<em><b>Subject</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Subject</em>' attribute.
	 * @see #setSubject(String)
	 * @see org.flexwright.model.ModelPackage#getStopOverride_Subject()
	 * @model
	 * @generated
	 */
	String getSubject();

	/**
	 * Sets the value of the '{@link org.flexwright.model.StopOverride#getSubject <em>Subject</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Subject</em>' attribute.
	 * @see #getSubject()
	 * @generated
	 */
	void setSubject(String value);

	/**
	 * Returns the value of the '<em><b>Input Hash</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Input Hash</em>' attribute.
	 * @see #setInputHash(String)
	 * @see org.flexwright.model.ModelPackage#getStopOverride_InputHash()
	 * @model
	 * @generated
	 */
	String getInputHash();

	/**
	 * Sets the value of the '{@link org.flexwright.model.StopOverride#getInputHash <em>Input Hash</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Input Hash</em>' attribute.
	 * @see #getInputHash()
	 * @generated
	 */
	void setInputHash(String value);

	/**
	 * Returns the value of the '<em><b>Reason</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Reason</em>' attribute.
	 * @see #setReason(String)
	 * @see org.flexwright.model.ModelPackage#getStopOverride_Reason()
	 * @model
	 * @generated
	 */
	String getReason();

	/**
	 * Sets the value of the '{@link org.flexwright.model.StopOverride#getReason <em>Reason</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Reason</em>' attribute.
	 * @see #getReason()
	 * @generated
	 */
	void setReason(String value);

	/**
	 * Returns the value of the '<em><b>Who</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Who</em>' attribute.
	 * @see #setWho(String)
	 * @see org.flexwright.model.ModelPackage#getStopOverride_Who()
	 * @model
	 * @generated
	 */
	String getWho();

	/**
	 * Sets the value of the '{@link org.flexwright.model.StopOverride#getWho <em>Who</em>}' attribute.
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
	 * @see org.flexwright.model.ModelPackage#getStopOverride_At()
	 * @model dataType="org.flexwright.model.Instant"
	 * @generated
	 */
	Instant getAt();

	/**
	 * Sets the value of the '{@link org.flexwright.model.StopOverride#getAt <em>At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>At</em>' attribute.
	 * @see #getAt()
	 * @generated
	 */
	void setAt(Instant value);

} // StopOverride
