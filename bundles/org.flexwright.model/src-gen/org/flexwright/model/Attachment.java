/**
 */
package org.flexwright.model;

import java.time.Instant;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Attachment</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A file copied into the project.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.Attachment#getKind <em>Kind</em>}</li>
 *   <li>{@link org.flexwright.model.Attachment#getFileName <em>File Name</em>}</li>
 *   <li>{@link org.flexwright.model.Attachment#getPath <em>Path</em>}</li>
 *   <li>{@link org.flexwright.model.Attachment#getSha256 <em>Sha256</em>}</li>
 *   <li>{@link org.flexwright.model.Attachment#getCaption <em>Caption</em>}</li>
 *   <li>{@link org.flexwright.model.Attachment#getAddedAt <em>Added At</em>}</li>
 * </ul>
 *
 * @see org.flexwright.model.ModelPackage#getAttachment()
 * @model
 * @generated
 */
public interface Attachment extends Entry {
	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * The literals are from the enumeration {@link org.flexwright.model.AttachmentKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see org.flexwright.model.AttachmentKind
	 * @see #setKind(AttachmentKind)
	 * @see org.flexwright.model.ModelPackage#getAttachment_Kind()
	 * @model annotation="urn:flexwright:field label='Kind'"
	 * @generated
	 */
	AttachmentKind getKind();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Attachment#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see org.flexwright.model.AttachmentKind
	 * @see #getKind()
	 * @generated
	 */
	void setKind(AttachmentKind value);

	/**
	 * Returns the value of the '<em><b>File Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>File Name</em>' attribute.
	 * @see #setFileName(String)
	 * @see org.flexwright.model.ModelPackage#getAttachment_FileName()
	 * @model annotation="urn:flexwright:field label='File'"
	 * @generated
	 */
	String getFileName();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Attachment#getFileName <em>File Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>File Name</em>' attribute.
	 * @see #getFileName()
	 * @generated
	 */
	void setFileName(String value);

	/**
	 * Returns the value of the '<em><b>Path</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Inside the project folder.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Path</em>' attribute.
	 * @see #setPath(String)
	 * @see org.flexwright.model.ModelPackage#getAttachment_Path()
	 * @model
	 * @generated
	 */
	String getPath();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Attachment#getPath <em>Path</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Path</em>' attribute.
	 * @see #getPath()
	 * @generated
	 */
	void setPath(String value);

	/**
	 * Returns the value of the '<em><b>Sha256</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Sha256</em>' attribute.
	 * @see #setSha256(String)
	 * @see org.flexwright.model.ModelPackage#getAttachment_Sha256()
	 * @model
	 * @generated
	 */
	String getSha256();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Attachment#getSha256 <em>Sha256</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sha256</em>' attribute.
	 * @see #getSha256()
	 * @generated
	 */
	void setSha256(String value);

	/**
	 * Returns the value of the '<em><b>Caption</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Caption</em>' attribute.
	 * @see #setCaption(String)
	 * @see org.flexwright.model.ModelPackage#getAttachment_Caption()
	 * @model annotation="urn:flexwright:field label='Caption'"
	 * @generated
	 */
	String getCaption();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Attachment#getCaption <em>Caption</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Caption</em>' attribute.
	 * @see #getCaption()
	 * @generated
	 */
	void setCaption(String value);

	/**
	 * Returns the value of the '<em><b>Added At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Added At</em>' attribute.
	 * @see #setAddedAt(Instant)
	 * @see org.flexwright.model.ModelPackage#getAttachment_AddedAt()
	 * @model dataType="org.flexwright.model.Instant"
	 * @generated
	 */
	Instant getAddedAt();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Attachment#getAddedAt <em>Added At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Added At</em>' attribute.
	 * @see #getAddedAt()
	 * @generated
	 */
	void setAddedAt(Instant value);

} // Attachment
