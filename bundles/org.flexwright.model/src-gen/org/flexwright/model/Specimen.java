/**
 */
package org.flexwright.model;

import java.time.Instant;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Specimen</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A thing that can be measured.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.Specimen#getCode <em>Code</em>}</li>
 *   <li>{@link org.flexwright.model.Specimen#getPieceKind <em>Piece Kind</em>}</li>
 *   <li>{@link org.flexwright.model.Specimen#getThickness <em>Thickness</em>}</li>
 *   <li>{@link org.flexwright.model.Specimen#getMadeAt <em>Made At</em>}</li>
 *   <li>{@link org.flexwright.model.Specimen#isFailed <em>Failed</em>}</li>
 *   <li>{@link org.flexwright.model.Specimen#getFailReason <em>Fail Reason</em>}</li>
 *   <li>{@link org.flexwright.model.Specimen#getMeasurements <em>Measurements</em>}</li>
 *   <li>{@link org.flexwright.model.Specimen#getRecordings <em>Recordings</em>}</li>
 * </ul>
 *
 * @see org.flexwright.model.ModelPackage#getSpecimen()
 * @model abstract="true"
 * @generated
 */
public interface Specimen extends Entry {
	/**
	 * Returns the value of the '<em><b>Code</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Code</em>' attribute.
	 * @see #setCode(String)
	 * @see org.flexwright.model.ModelPackage#getSpecimen_Code()
	 * @model annotation="urn:flexwright:field label='Code'"
	 * @generated
	 */
	String getCode();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Specimen#getCode <em>Code</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Code</em>' attribute.
	 * @see #getCode()
	 * @generated
	 */
	void setCode(String value);

	/**
	 * Returns the value of the '<em><b>Piece Kind</b></em>' attribute.
	 * The literals are from the enumeration {@link org.flexwright.model.PieceKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Piece Kind</em>' attribute.
	 * @see org.flexwright.model.PieceKind
	 * @see #setPieceKind(PieceKind)
	 * @see org.flexwright.model.ModelPackage#getSpecimen_PieceKind()
	 * @model annotation="urn:flexwright:field label='Piece'"
	 * @generated
	 */
	PieceKind getPieceKind();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Specimen#getPieceKind <em>Piece Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Piece Kind</em>' attribute.
	 * @see org.flexwright.model.PieceKind
	 * @see #getPieceKind()
	 * @generated
	 */
	void setPieceKind(PieceKind value);

	/**
	 * Returns the value of the '<em><b>Thickness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Thickness</em>' attribute.
	 * @see #setThickness(Double)
	 * @see org.flexwright.model.ModelPackage#getSpecimen_Thickness()
	 * @model annotation="urn:flexwright:field kind='LENGTH' unit='mm' min='0' max='500' label='Thickness at the spot'"
	 * @generated
	 */
	Double getThickness();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Specimen#getThickness <em>Thickness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Thickness</em>' attribute.
	 * @see #getThickness()
	 * @generated
	 */
	void setThickness(Double value);

	/**
	 * Returns the value of the '<em><b>Made At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * End of the step its age counts from.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Made At</em>' attribute.
	 * @see #setMadeAt(Instant)
	 * @see org.flexwright.model.ModelPackage#getSpecimen_MadeAt()
	 * @model dataType="org.flexwright.model.Instant"
	 *        annotation="urn:flexwright:field label='Made at' help='End of the step its age counts from.'"
	 * @generated
	 */
	Instant getMadeAt();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Specimen#getMadeAt <em>Made At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Made At</em>' attribute.
	 * @see #getMadeAt()
	 * @generated
	 */
	void setMadeAt(Instant value);

	/**
	 * Returns the value of the '<em><b>Failed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Torn, split, not filled: counts as no, is absent from means.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Failed</em>' attribute.
	 * @see #setFailed(boolean)
	 * @see org.flexwright.model.ModelPackage#getSpecimen_Failed()
	 * @model annotation="urn:flexwright:field label='Failed' help='Torn, split, not filled: counts as no, is absent from means.'"
	 * @generated
	 */
	boolean isFailed();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Specimen#isFailed <em>Failed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Failed</em>' attribute.
	 * @see #isFailed()
	 * @generated
	 */
	void setFailed(boolean value);

	/**
	 * Returns the value of the '<em><b>Fail Reason</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Fail Reason</em>' attribute.
	 * @see #setFailReason(String)
	 * @see org.flexwright.model.ModelPackage#getSpecimen_FailReason()
	 * @model annotation="urn:flexwright:field label='Why it failed'"
	 * @generated
	 */
	String getFailReason();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Specimen#getFailReason <em>Fail Reason</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Fail Reason</em>' attribute.
	 * @see #getFailReason()
	 * @generated
	 */
	void setFailReason(String value);

	/**
	 * Returns the value of the '<em><b>Measurements</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.Measurement}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Measurements</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getSpecimen_Measurements()
	 * @model containment="true"
	 * @generated
	 */
	EList<Measurement> getMeasurements();

	/**
	 * Returns the value of the '<em><b>Recordings</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.Recording}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Recordings</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getSpecimen_Recordings()
	 * @model containment="true"
	 * @generated
	 */
	EList<Recording> getRecordings();

} // Specimen
