/**
 */
package org.flexwright.model;

import java.time.LocalDate;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Instrument</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A gauge, balance or other means of measuring.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.Instrument#getName <em>Name</em>}</li>
 *   <li>{@link org.flexwright.model.Instrument#getKind <em>Kind</em>}</li>
 *   <li>{@link org.flexwright.model.Instrument#getUnit <em>Unit</em>}</li>
 *   <li>{@link org.flexwright.model.Instrument#getResolution <em>Resolution</em>}</li>
 *   <li>{@link org.flexwright.model.Instrument#getAccuracy <em>Accuracy</em>}</li>
 *   <li>{@link org.flexwright.model.Instrument#getScale <em>Scale</em>}</li>
 *   <li>{@link org.flexwright.model.Instrument#getSpread <em>Spread</em>}</li>
 *   <li>{@link org.flexwright.model.Instrument#getSpreadFrom <em>Spread From</em>}</li>
 *   <li>{@link org.flexwright.model.Instrument#getCheckedOn <em>Checked On</em>}</li>
 *   <li>{@link org.flexwright.model.Instrument#getCheckEveryDays <em>Check Every Days</em>}</li>
 *   <li>{@link org.flexwright.model.Instrument#getCheckNote <em>Check Note</em>}</li>
 *   <li>{@link org.flexwright.model.Instrument#getStudy <em>Study</em>}</li>
 * </ul>
 *
 * @see org.flexwright.model.ModelPackage#getInstrument()
 * @model
 * @generated
 */
public interface Instrument extends Entry {
	/**
	 * Returns the value of the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Name</em>' attribute.
	 * @see #setName(String)
	 * @see org.flexwright.model.ModelPackage#getInstrument_Name()
	 * @model annotation="urn:flexwright:field label='Name'"
	 * @generated
	 */
	String getName();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Instrument#getName <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Name</em>' attribute.
	 * @see #getName()
	 * @generated
	 */
	void setName(String value);

	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * durometer, balance, force gauge, calliper, stopwatch, camera...
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see #setKind(String)
	 * @see org.flexwright.model.ModelPackage#getInstrument_Kind()
	 * @model annotation="urn:flexwright:field label='Kind' help='durometer, balance, force gauge, calliper, stopwatch, camera...'"
	 * @generated
	 */
	String getKind();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Instrument#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see #getKind()
	 * @generated
	 */
	void setKind(String value);

	/**
	 * Returns the value of the '<em><b>Unit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Unit symbol of resolution and accuracy.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Unit</em>' attribute.
	 * @see #setUnit(String)
	 * @see org.flexwright.model.ModelPackage#getInstrument_Unit()
	 * @model
	 * @generated
	 */
	String getUnit();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Instrument#getUnit <em>Unit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Unit</em>' attribute.
	 * @see #getUnit()
	 * @generated
	 */
	void setUnit(String value);

	/**
	 * Returns the value of the '<em><b>Resolution</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * One step of the display.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Resolution</em>' attribute.
	 * @see #setResolution(Double)
	 * @see org.flexwright.model.ModelPackage#getInstrument_Resolution()
	 * @model annotation="urn:flexwright:field min='0' label='Resolution' help='One step of the display.'"
	 * @generated
	 */
	Double getResolution();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Instrument#getResolution <em>Resolution</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Resolution</em>' attribute.
	 * @see #getResolution()
	 * @generated
	 */
	void setResolution(Double value);

	/**
	 * Returns the value of the '<em><b>Accuracy</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Half width given by its maker or check, in its unit.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Accuracy</em>' attribute.
	 * @see #setAccuracy(Double)
	 * @see org.flexwright.model.ModelPackage#getInstrument_Accuracy()
	 * @model annotation="urn:flexwright:field min='0' label='Accuracy' help='Half width given by its maker or check, in its unit.'"
	 * @generated
	 */
	Double getAccuracy();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Instrument#getAccuracy <em>Accuracy</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Accuracy</em>' attribute.
	 * @see #getAccuracy()
	 * @generated
	 */
	void setAccuracy(Double value);

	/**
	 * Returns the value of the '<em><b>Scale</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Which scale it reads, such as Shore A, D or 00; empty when it has none.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Scale</em>' attribute.
	 * @see #setScale(String)
	 * @see org.flexwright.model.ModelPackage#getInstrument_Scale()
	 * @model annotation="urn:flexwright:field label='Scale' help='Which scale it reads, such as Shore A, D or 00; empty when it has none.'"
	 * @generated
	 */
	String getScale();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Instrument#getScale <em>Scale</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Scale</em>' attribute.
	 * @see #getScale()
	 * @generated
	 */
	void setScale(String value);

	/**
	 * Returns the value of the '<em><b>Spread</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Standard deviation of its readings on one piece by one person, in its unit.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Spread</em>' attribute.
	 * @see #setSpread(Double)
	 * @see org.flexwright.model.ModelPackage#getInstrument_Spread()
	 * @model annotation="urn:flexwright:field min='0' label='Own spread' help='Standard deviation of its readings on one piece by one person, in its unit.'"
	 * @generated
	 */
	Double getSpread();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Instrument#getSpread <em>Spread</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Spread</em>' attribute.
	 * @see #getSpread()
	 * @generated
	 */
	void setSpread(Double value);

	/**
	 * Returns the value of the '<em><b>Spread From</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Where the spread comes from: a gauge study, a certificate, experience.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Spread From</em>' attribute.
	 * @see #setSpreadFrom(String)
	 * @see org.flexwright.model.ModelPackage#getInstrument_SpreadFrom()
	 * @model annotation="urn:flexwright:field label='Spread known from' help='Where the spread comes from: a gauge study, a certificate, experience.'"
	 * @generated
	 */
	String getSpreadFrom();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Instrument#getSpreadFrom <em>Spread From</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Spread From</em>' attribute.
	 * @see #getSpreadFrom()
	 * @generated
	 */
	void setSpreadFrom(String value);

	/**
	 * Returns the value of the '<em><b>Checked On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Date of the last check against something known.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Checked On</em>' attribute.
	 * @see #setCheckedOn(LocalDate)
	 * @see org.flexwright.model.ModelPackage#getInstrument_CheckedOn()
	 * @model dataType="org.flexwright.model.LocalDate"
	 *        annotation="urn:flexwright:field label='Last checked' help='Date of the last check against something known.'"
	 * @generated
	 */
	LocalDate getCheckedOn();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Instrument#getCheckedOn <em>Checked On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Checked On</em>' attribute.
	 * @see #getCheckedOn()
	 * @generated
	 */
	void setCheckedOn(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Check Every Days</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How long a check holds.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Check Every Days</em>' attribute.
	 * @see #setCheckEveryDays(Double)
	 * @see org.flexwright.model.ModelPackage#getInstrument_CheckEveryDays()
	 * @model annotation="urn:flexwright:field kind='DURATION' unit='d' min='0' max='36500' label='Check every' help='How long a check holds.'"
	 * @generated
	 */
	Double getCheckEveryDays();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Instrument#getCheckEveryDays <em>Check Every Days</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Check Every Days</em>' attribute.
	 * @see #getCheckEveryDays()
	 * @generated
	 */
	void setCheckEveryDays(Double value);

	/**
	 * Returns the value of the '<em><b>Check Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Against what it was checked and what it read.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Check Note</em>' attribute.
	 * @see #setCheckNote(String)
	 * @see org.flexwright.model.ModelPackage#getInstrument_CheckNote()
	 * @model annotation="urn:flexwright:field label='Check' help='Against what it was checked and what it read.'"
	 * @generated
	 */
	String getCheckNote();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Instrument#getCheckNote <em>Check Note</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Check Note</em>' attribute.
	 * @see #getCheckNote()
	 * @generated
	 */
	void setCheckNote(String value);

	/**
	 * Returns the value of the '<em><b>Study</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The gauge study its spread comes from.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Study</em>' reference.
	 * @see #setStudy(GaugeStudy)
	 * @see org.flexwright.model.ModelPackage#getInstrument_Study()
	 * @model
	 * @generated
	 */
	GaugeStudy getStudy();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Instrument#getStudy <em>Study</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Study</em>' reference.
	 * @see #getStudy()
	 * @generated
	 */
	void setStudy(GaugeStudy value);

} // Instrument
