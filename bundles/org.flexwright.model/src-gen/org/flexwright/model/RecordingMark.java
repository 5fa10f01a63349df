/**
 */
package org.flexwright.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Recording Mark</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A place on a recording, found or set by hand.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.RecordingMark#getName <em>Name</em>}</li>
 *   <li>{@link org.flexwright.model.RecordingMark#getPosition <em>Position</em>}</li>
 *   <li>{@link org.flexwright.model.RecordingMark#getByHand <em>By Hand</em>}</li>
 *   <li>{@link org.flexwright.model.RecordingMark#getLeftOut <em>Left Out</em>}</li>
 * </ul>
 *
 * @see org.flexwright.model.ModelPackage#getRecordingMark()
 * @model
 * @generated
 */
public interface RecordingMark extends Entry {
	/**
	 * Returns the value of the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Name</em>' attribute.
	 * @see #setName(String)
	 * @see org.flexwright.model.ModelPackage#getRecordingMark_Name()
	 * @model annotation="urn:flexwright:field label='Mark'"
	 * @generated
	 */
	String getName();

	/**
	 * Sets the value of the '{@link org.flexwright.model.RecordingMark#getName <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Name</em>' attribute.
	 * @see #getName()
	 * @generated
	 */
	void setName(String value);

	/**
	 * Returns the value of the '<em><b>Position</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Along the recording, in the unit of its axis: seconds, millimetres.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Position</em>' attribute.
	 * @see #setPosition(Double)
	 * @see org.flexwright.model.ModelPackage#getRecordingMark_Position()
	 * @model annotation="urn:flexwright:field label='At' help='Along the recording, in the unit of its axis: seconds, millimetres.'"
	 * @generated
	 */
	Double getPosition();

	/**
	 * Sets the value of the '{@link org.flexwright.model.RecordingMark#getPosition <em>Position</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Position</em>' attribute.
	 * @see #getPosition()
	 * @generated
	 */
	void setPosition(Double value);

	/**
	 * Returns the value of the '<em><b>By Hand</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>By Hand</em>' attribute.
	 * @see #setByHand(Boolean)
	 * @see org.flexwright.model.ModelPackage#getRecordingMark_ByHand()
	 * @model annotation="urn:flexwright:field label='Set by hand'"
	 * @generated
	 */
	Boolean getByHand();

	/**
	 * Sets the value of the '{@link org.flexwright.model.RecordingMark#getByHand <em>By Hand</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>By Hand</em>' attribute.
	 * @see #getByHand()
	 * @generated
	 */
	void setByHand(Boolean value);

	/**
	 * Returns the value of the '<em><b>Left Out</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Why it does not count; empty when it counts.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Left Out</em>' attribute.
	 * @see #setLeftOut(String)
	 * @see org.flexwright.model.ModelPackage#getRecordingMark_LeftOut()
	 * @model annotation="urn:flexwright:field label='Left out because' help='Why it does not count; empty when it counts.'"
	 * @generated
	 */
	String getLeftOut();

	/**
	 * Sets the value of the '{@link org.flexwright.model.RecordingMark#getLeftOut <em>Left Out</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Left Out</em>' attribute.
	 * @see #getLeftOut()
	 * @generated
	 */
	void setLeftOut(String value);

} // RecordingMark
