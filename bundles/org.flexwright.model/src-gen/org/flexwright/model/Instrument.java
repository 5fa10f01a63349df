/**
 */
package org.flexwright.model;


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

} // Instrument
