/**
 */
package org.flexwright.model;

import java.time.Instant;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Bench Note</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Something put aside with one touch while the hands were full; the words are in note.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.BenchNote#getKind <em>Kind</em>}</li>
 *   <li>{@link org.flexwright.model.BenchNote#getAt <em>At</em>}</li>
 *   <li>{@link org.flexwright.model.BenchNote#getStep <em>Step</em>}</li>
 *   <li>{@link org.flexwright.model.BenchNote#getAttachment <em>Attachment</em>}</li>
 *   <li>{@link org.flexwright.model.BenchNote#getSortedAt <em>Sorted At</em>}</li>
 *   <li>{@link org.flexwright.model.BenchNote#getSortedAs <em>Sorted As</em>}</li>
 * </ul>
 *
 * @see org.flexwright.model.ModelPackage#getBenchNote()
 * @model
 * @generated
 */
public interface BenchNote extends Entry {
	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * The literals are from the enumeration {@link org.flexwright.model.NoteKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see org.flexwright.model.NoteKind
	 * @see #setKind(NoteKind)
	 * @see org.flexwright.model.ModelPackage#getBenchNote_Kind()
	 * @model annotation="urn:flexwright:field label='Kind'"
	 * @generated
	 */
	NoteKind getKind();

	/**
	 * Sets the value of the '{@link org.flexwright.model.BenchNote#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see org.flexwright.model.NoteKind
	 * @see #getKind()
	 * @generated
	 */
	void setKind(NoteKind value);

	/**
	 * Returns the value of the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>At</em>' attribute.
	 * @see #setAt(Instant)
	 * @see org.flexwright.model.ModelPackage#getBenchNote_At()
	 * @model dataType="org.flexwright.model.Instant"
	 *        annotation="urn:flexwright:field label='At'"
	 * @generated
	 */
	Instant getAt();

	/**
	 * Sets the value of the '{@link org.flexwright.model.BenchNote#getAt <em>At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>At</em>' attribute.
	 * @see #getAt()
	 * @generated
	 */
	void setAt(Instant value);

	/**
	 * Returns the value of the '<em><b>Step</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Step</em>' reference.
	 * @see #setStep(Step)
	 * @see org.flexwright.model.ModelPackage#getBenchNote_Step()
	 * @model
	 * @generated
	 */
	Step getStep();

	/**
	 * Sets the value of the '{@link org.flexwright.model.BenchNote#getStep <em>Step</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Step</em>' reference.
	 * @see #getStep()
	 * @generated
	 */
	void setStep(Step value);

	/**
	 * Returns the value of the '<em><b>Attachment</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Attachment</em>' reference.
	 * @see #setAttachment(Attachment)
	 * @see org.flexwright.model.ModelPackage#getBenchNote_Attachment()
	 * @model
	 * @generated
	 */
	Attachment getAttachment();

	/**
	 * Sets the value of the '{@link org.flexwright.model.BenchNote#getAttachment <em>Attachment</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Attachment</em>' reference.
	 * @see #getAttachment()
	 * @generated
	 */
	void setAttachment(Attachment value);

	/**
	 * Returns the value of the '<em><b>Sorted At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * When it was looked at again; empty while it waits.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Sorted At</em>' attribute.
	 * @see #setSortedAt(Instant)
	 * @see org.flexwright.model.ModelPackage#getBenchNote_SortedAt()
	 * @model dataType="org.flexwright.model.Instant"
	 *        annotation="urn:flexwright:field label='Sorted out at' help='When it was looked at again; empty while it waits.'"
	 * @generated
	 */
	Instant getSortedAt();

	/**
	 * Sets the value of the '{@link org.flexwright.model.BenchNote#getSortedAt <em>Sorted At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sorted At</em>' attribute.
	 * @see #getSortedAt()
	 * @generated
	 */
	void setSortedAt(Instant value);

	/**
	 * Returns the value of the '<em><b>Sorted As</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What it was, in words.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Sorted As</em>' attribute.
	 * @see #setSortedAs(String)
	 * @see org.flexwright.model.ModelPackage#getBenchNote_SortedAs()
	 * @model annotation="urn:flexwright:field label='Turned out to be' help='What it was, in words.'"
	 * @generated
	 */
	String getSortedAs();

	/**
	 * Sets the value of the '{@link org.flexwright.model.BenchNote#getSortedAs <em>Sorted As</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sorted As</em>' attribute.
	 * @see #getSortedAs()
	 * @generated
	 */
	void setSortedAs(String value);

} // BenchNote
