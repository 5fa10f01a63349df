/**
 */
package org.flexwright.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Recording Channel</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What one column of the file means.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.RecordingChannel#getRole <em>Role</em>}</li>
 *   <li>{@link org.flexwright.model.RecordingChannel#getColumn <em>Column</em>}</li>
 *   <li>{@link org.flexwright.model.RecordingChannel#getName <em>Name</em>}</li>
 *   <li>{@link org.flexwright.model.RecordingChannel#getUnit <em>Unit</em>}</li>
 *   <li>{@link org.flexwright.model.RecordingChannel#getReversed <em>Reversed</em>}</li>
 * </ul>
 *
 * @see org.flexwright.model.ModelPackage#getRecordingChannel()
 * @model
 * @generated
 */
public interface RecordingChannel extends Entry {
	/**
	 * Returns the value of the '<em><b>Role</b></em>' attribute.
	 * The literals are from the enumeration {@link org.flexwright.model.ChannelRole}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Role</em>' attribute.
	 * @see org.flexwright.model.ChannelRole
	 * @see #setRole(ChannelRole)
	 * @see org.flexwright.model.ModelPackage#getRecordingChannel_Role()
	 * @model annotation="urn:flexwright:field label='Meaning'"
	 * @generated
	 */
	ChannelRole getRole();

	/**
	 * Sets the value of the '{@link org.flexwright.model.RecordingChannel#getRole <em>Role</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Role</em>' attribute.
	 * @see org.flexwright.model.ChannelRole
	 * @see #getRole()
	 * @generated
	 */
	void setRole(ChannelRole value);

	/**
	 * Returns the value of the '<em><b>Column</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Counted from 1.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Column</em>' attribute.
	 * @see #setColumn(Integer)
	 * @see org.flexwright.model.ModelPackage#getRecordingChannel_Column()
	 * @model annotation="urn:flexwright:field min='1' max='10000' label='Column' help='Counted from 1.'"
	 * @generated
	 */
	Integer getColumn();

	/**
	 * Sets the value of the '{@link org.flexwright.model.RecordingChannel#getColumn <em>Column</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Column</em>' attribute.
	 * @see #getColumn()
	 * @generated
	 */
	void setColumn(Integer value);

	/**
	 * Returns the value of the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * As it stands in the file.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Name</em>' attribute.
	 * @see #setName(String)
	 * @see org.flexwright.model.ModelPackage#getRecordingChannel_Name()
	 * @model annotation="urn:flexwright:field label='Heading' help='As it stands in the file.'"
	 * @generated
	 */
	String getName();

	/**
	 * Sets the value of the '{@link org.flexwright.model.RecordingChannel#getName <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Name</em>' attribute.
	 * @see #getName()
	 * @generated
	 */
	void setName(String value);

	/**
	 * Returns the value of the '<em><b>Unit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Unit of the figures in the file.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Unit</em>' attribute.
	 * @see #setUnit(String)
	 * @see org.flexwright.model.ModelPackage#getRecordingChannel_Unit()
	 * @model annotation="urn:flexwright:field label='Unit' help='Unit of the figures in the file.'"
	 * @generated
	 */
	String getUnit();

	/**
	 * Sets the value of the '{@link org.flexwright.model.RecordingChannel#getUnit <em>Unit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Unit</em>' attribute.
	 * @see #getUnit()
	 * @generated
	 */
	void setUnit(String value);

	/**
	 * Returns the value of the '<em><b>Reversed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether the sign is to be turned round.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Reversed</em>' attribute.
	 * @see #setReversed(Boolean)
	 * @see org.flexwright.model.ModelPackage#getRecordingChannel_Reversed()
	 * @model annotation="urn:flexwright:field label='Sign turned' help='Whether the sign is to be turned round.'"
	 * @generated
	 */
	Boolean getReversed();

	/**
	 * Sets the value of the '{@link org.flexwright.model.RecordingChannel#getReversed <em>Reversed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Reversed</em>' attribute.
	 * @see #getReversed()
	 * @generated
	 */
	void setReversed(Boolean value);

} // RecordingChannel
