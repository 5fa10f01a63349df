/**
 */
package org.flexwright.model;

import java.time.Instant;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Weighing</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One reading of the balance.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.Weighing#getGross <em>Gross</em>}</li>
 *   <li>{@link org.flexwright.model.Weighing#getTare <em>Tare</em>}</li>
 *   <li>{@link org.flexwright.model.Weighing#getNet <em>Net</em>}</li>
 *   <li>{@link org.flexwright.model.Weighing#getAt <em>At</em>}</li>
 *   <li>{@link org.flexwright.model.Weighing#isCorrection <em>Correction</em>}</li>
 *   <li>{@link org.flexwright.model.Weighing#getInstrument <em>Instrument</em>}</li>
 * </ul>
 *
 * @see org.flexwright.model.ModelPackage#getWeighing()
 * @model
 * @generated
 */
public interface Weighing extends Entry {
	/**
	 * Returns the value of the '<em><b>Gross</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Gross</em>' attribute.
	 * @see #setGross(Double)
	 * @see org.flexwright.model.ModelPackage#getWeighing_Gross()
	 * @model annotation="urn:flexwright:field kind='MASS' unit='g' min='0' max='100000' label='Gross'"
	 * @generated
	 */
	Double getGross();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Weighing#getGross <em>Gross</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Gross</em>' attribute.
	 * @see #getGross()
	 * @generated
	 */
	void setGross(Double value);

	/**
	 * Returns the value of the '<em><b>Tare</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Tare</em>' attribute.
	 * @see #setTare(Double)
	 * @see org.flexwright.model.ModelPackage#getWeighing_Tare()
	 * @model annotation="urn:flexwright:field kind='MASS' unit='g' min='0' max='100000' label='Tare'"
	 * @generated
	 */
	Double getTare();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Weighing#getTare <em>Tare</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Tare</em>' attribute.
	 * @see #getTare()
	 * @generated
	 */
	void setTare(Double value);

	/**
	 * Returns the value of the '<em><b>Net</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Gross less tare when both are given.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Net</em>' attribute.
	 * @see #setNet(Double)
	 * @see org.flexwright.model.ModelPackage#getWeighing_Net()
	 * @model annotation="urn:flexwright:field kind='MASS' unit='g' min='0' max='100000' label='Net' help='Gross less tare when both are given.'"
	 * @generated
	 */
	Double getNet();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Weighing#getNet <em>Net</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Net</em>' attribute.
	 * @see #getNet()
	 * @generated
	 */
	void setNet(Double value);

	/**
	 * Returns the value of the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>At</em>' attribute.
	 * @see #setAt(Instant)
	 * @see org.flexwright.model.ModelPackage#getWeighing_At()
	 * @model dataType="org.flexwright.model.Instant"
	 * @generated
	 */
	Instant getAt();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Weighing#getAt <em>At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>At</em>' attribute.
	 * @see #getAt()
	 * @generated
	 */
	void setAt(Instant value);

	/**
	 * Returns the value of the '<em><b>Correction</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Added to mend the ratio.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Correction</em>' attribute.
	 * @see #setCorrection(boolean)
	 * @see org.flexwright.model.ModelPackage#getWeighing_Correction()
	 * @model
	 * @generated
	 */
	boolean isCorrection();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Weighing#isCorrection <em>Correction</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Correction</em>' attribute.
	 * @see #isCorrection()
	 * @generated
	 */
	void setCorrection(boolean value);

	/**
	 * Returns the value of the '<em><b>Instrument</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Instrument</em>' reference.
	 * @see #setInstrument(Instrument)
	 * @see org.flexwright.model.ModelPackage#getWeighing_Instrument()
	 * @model
	 * @generated
	 */
	Instrument getInstrument();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Weighing#getInstrument <em>Instrument</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Instrument</em>' reference.
	 * @see #getInstrument()
	 * @generated
	 */
	void setInstrument(Instrument value);

} // Weighing
