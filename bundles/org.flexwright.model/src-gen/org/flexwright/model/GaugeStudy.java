/**
 */
package org.flexwright.model;

import java.time.Instant;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Gauge Study</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * The same pieces read several times by one or several persons, to learn how much of the spread is the reading.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.GaugeStudy#getCode <em>Code</em>}</li>
 *   <li>{@link org.flexwright.model.GaugeStudy#getTitle <em>Title</em>}</li>
 *   <li>{@link org.flexwright.model.GaugeStudy#getAt <em>At</em>}</li>
 *   <li>{@link org.flexwright.model.GaugeStudy#getKey <em>Key</em>}</li>
 *   <li>{@link org.flexwright.model.GaugeStudy#getInstrument <em>Instrument</em>}</li>
 *   <li>{@link org.flexwright.model.GaugeStudy#getTolerance <em>Tolerance</em>}</li>
 *   <li>{@link org.flexwright.model.GaugeStudy#getCells <em>Cells</em>}</li>
 * </ul>
 *
 * @see org.flexwright.model.ModelPackage#getGaugeStudy()
 * @model
 * @generated
 */
public interface GaugeStudy extends Entry {
	/**
	 * Returns the value of the '<em><b>Code</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Code</em>' attribute.
	 * @see #setCode(String)
	 * @see org.flexwright.model.ModelPackage#getGaugeStudy_Code()
	 * @model annotation="urn:flexwright:field label='Gauge study'"
	 * @generated
	 */
	String getCode();

	/**
	 * Sets the value of the '{@link org.flexwright.model.GaugeStudy#getCode <em>Code</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Code</em>' attribute.
	 * @see #getCode()
	 * @generated
	 */
	void setCode(String value);

	/**
	 * Returns the value of the '<em><b>Title</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Title</em>' attribute.
	 * @see #setTitle(String)
	 * @see org.flexwright.model.ModelPackage#getGaugeStudy_Title()
	 * @model annotation="urn:flexwright:field label='Title'"
	 * @generated
	 */
	String getTitle();

	/**
	 * Sets the value of the '{@link org.flexwright.model.GaugeStudy#getTitle <em>Title</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Title</em>' attribute.
	 * @see #getTitle()
	 * @generated
	 */
	void setTitle(String value);

	/**
	 * Returns the value of the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>At</em>' attribute.
	 * @see #setAt(Instant)
	 * @see org.flexwright.model.ModelPackage#getGaugeStudy_At()
	 * @model dataType="org.flexwright.model.Instant"
	 *        annotation="urn:flexwright:field label='At'"
	 * @generated
	 */
	Instant getAt();

	/**
	 * Sets the value of the '{@link org.flexwright.model.GaugeStudy#getAt <em>At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>At</em>' attribute.
	 * @see #getAt()
	 * @generated
	 */
	void setAt(Instant value);

	/**
	 * Returns the value of the '<em><b>Key</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Key</em>' containment reference.
	 * @see #setKey(PropertyKey)
	 * @see org.flexwright.model.ModelPackage#getGaugeStudy_Key()
	 * @model containment="true"
	 * @generated
	 */
	PropertyKey getKey();

	/**
	 * Sets the value of the '{@link org.flexwright.model.GaugeStudy#getKey <em>Key</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Key</em>' containment reference.
	 * @see #getKey()
	 * @generated
	 */
	void setKey(PropertyKey value);

	/**
	 * Returns the value of the '<em><b>Instrument</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Instrument</em>' reference.
	 * @see #setInstrument(Instrument)
	 * @see org.flexwright.model.ModelPackage#getGaugeStudy_Instrument()
	 * @model
	 * @generated
	 */
	Instrument getInstrument();

	/**
	 * Sets the value of the '{@link org.flexwright.model.GaugeStudy#getInstrument <em>Instrument</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Instrument</em>' reference.
	 * @see #getInstrument()
	 * @generated
	 */
	void setInstrument(Instrument value);

	/**
	 * Returns the value of the '<em><b>Tolerance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Upper less lower limit the readings are to tell apart, in the unit of the gauge.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Tolerance</em>' attribute.
	 * @see #setTolerance(Double)
	 * @see org.flexwright.model.ModelPackage#getGaugeStudy_Tolerance()
	 * @model annotation="urn:flexwright:field min='0' minOpen='true' label='Width of the target' help='Upper less lower limit the readings are to tell apart, in the unit of the gauge.'"
	 * @generated
	 */
	Double getTolerance();

	/**
	 * Sets the value of the '{@link org.flexwright.model.GaugeStudy#getTolerance <em>Tolerance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Tolerance</em>' attribute.
	 * @see #getTolerance()
	 * @generated
	 */
	void setTolerance(Double value);

	/**
	 * Returns the value of the '<em><b>Cells</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.GaugeCell}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Cells</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getGaugeStudy_Cells()
	 * @model containment="true"
	 * @generated
	 */
	EList<GaugeCell> getCells();

} // GaugeStudy
