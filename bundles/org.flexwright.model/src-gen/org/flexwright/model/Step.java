/**
 */
package org.flexwright.model;

import java.time.Instant;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Step</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One thing done at the bench.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.Step#getKind <em>Kind</em>}</li>
 *   <li>{@link org.flexwright.model.Step#getTitle <em>Title</em>}</li>
 *   <li>{@link org.flexwright.model.Step#getState <em>State</em>}</li>
 *   <li>{@link org.flexwright.model.Step#isUnconfirmed <em>Unconfirmed</em>}</li>
 *   <li>{@link org.flexwright.model.Step#getConfirmedBy <em>Confirmed By</em>}</li>
 *   <li>{@link org.flexwright.model.Step#getConfirmedAt <em>Confirmed At</em>}</li>
 *   <li>{@link org.flexwright.model.Step#getPlannedStart <em>Planned Start</em>}</li>
 *   <li>{@link org.flexwright.model.Step#getPlannedDuration <em>Planned Duration</em>}</li>
 *   <li>{@link org.flexwright.model.Step#getStartedAt <em>Started At</em>}</li>
 *   <li>{@link org.flexwright.model.Step#getEndedAt <em>Ended At</em>}</li>
 *   <li>{@link org.flexwright.model.Step#getSession <em>Session</em>}</li>
 *   <li>{@link org.flexwright.model.Step#getUses <em>Uses</em>}</li>
 *   <li>{@link org.flexwright.model.Step#getDetails <em>Details</em>}</li>
 *   <li>{@link org.flexwright.model.Step#getAttachments <em>Attachments</em>}</li>
 * </ul>
 *
 * @see org.flexwright.model.ModelPackage#getStep()
 * @model
 * @generated
 */
public interface Step extends Entry {
	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Id of the step kind.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see #setKind(String)
	 * @see org.flexwright.model.ModelPackage#getStep_Kind()
	 * @model
	 * @generated
	 */
	String getKind();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Step#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see #getKind()
	 * @generated
	 */
	void setKind(String value);

	/**
	 * Returns the value of the '<em><b>Title</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Title</em>' attribute.
	 * @see #setTitle(String)
	 * @see org.flexwright.model.ModelPackage#getStep_Title()
	 * @model annotation="urn:flexwright:field label='Step'"
	 * @generated
	 */
	String getTitle();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Step#getTitle <em>Title</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Title</em>' attribute.
	 * @see #getTitle()
	 * @generated
	 */
	void setTitle(String value);

	/**
	 * Returns the value of the '<em><b>State</b></em>' attribute.
	 * The literals are from the enumeration {@link org.flexwright.model.StepState}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>State</em>' attribute.
	 * @see org.flexwright.model.StepState
	 * @see #setState(StepState)
	 * @see org.flexwright.model.ModelPackage#getStep_State()
	 * @model annotation="urn:flexwright:field label='State'"
	 * @generated
	 */
	StepState getState();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Step#getState <em>State</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>State</em>' attribute.
	 * @see org.flexwright.model.StepState
	 * @see #getState()
	 * @generated
	 */
	void setState(StepState value);

	/**
	 * Returns the value of the '<em><b>Unconfirmed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * True while planned values were copied and nobody confirmed them.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Unconfirmed</em>' attribute.
	 * @see #setUnconfirmed(boolean)
	 * @see org.flexwright.model.ModelPackage#getStep_Unconfirmed()
	 * @model
	 * @generated
	 */
	boolean isUnconfirmed();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Step#isUnconfirmed <em>Unconfirmed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Unconfirmed</em>' attribute.
	 * @see #isUnconfirmed()
	 * @generated
	 */
	void setUnconfirmed(boolean value);

	/**
	 * Returns the value of the '<em><b>Confirmed By</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Confirmed By</em>' attribute.
	 * @see #setConfirmedBy(String)
	 * @see org.flexwright.model.ModelPackage#getStep_ConfirmedBy()
	 * @model
	 * @generated
	 */
	String getConfirmedBy();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Step#getConfirmedBy <em>Confirmed By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Confirmed By</em>' attribute.
	 * @see #getConfirmedBy()
	 * @generated
	 */
	void setConfirmedBy(String value);

	/**
	 * Returns the value of the '<em><b>Confirmed At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Confirmed At</em>' attribute.
	 * @see #setConfirmedAt(Instant)
	 * @see org.flexwright.model.ModelPackage#getStep_ConfirmedAt()
	 * @model dataType="org.flexwright.model.Instant"
	 * @generated
	 */
	Instant getConfirmedAt();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Step#getConfirmedAt <em>Confirmed At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Confirmed At</em>' attribute.
	 * @see #getConfirmedAt()
	 * @generated
	 */
	void setConfirmedAt(Instant value);

	/**
	 * Returns the value of the '<em><b>Planned Start</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * From first contact of A and B.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Planned Start</em>' attribute.
	 * @see #setPlannedStart(Double)
	 * @see org.flexwright.model.ModelPackage#getStep_PlannedStart()
	 * @model annotation="urn:flexwright:field kind='DURATION' unit='min' label='Planned start' help='From first contact of A and B.'"
	 * @generated
	 */
	Double getPlannedStart();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Step#getPlannedStart <em>Planned Start</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Planned Start</em>' attribute.
	 * @see #getPlannedStart()
	 * @generated
	 */
	void setPlannedStart(Double value);

	/**
	 * Returns the value of the '<em><b>Planned Duration</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Planned Duration</em>' attribute.
	 * @see #setPlannedDuration(Double)
	 * @see org.flexwright.model.ModelPackage#getStep_PlannedDuration()
	 * @model annotation="urn:flexwright:field kind='DURATION' unit='min' min='0' label='Planned time'"
	 * @generated
	 */
	Double getPlannedDuration();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Step#getPlannedDuration <em>Planned Duration</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Planned Duration</em>' attribute.
	 * @see #getPlannedDuration()
	 * @generated
	 */
	void setPlannedDuration(Double value);

	/**
	 * Returns the value of the '<em><b>Started At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Started At</em>' attribute.
	 * @see #setStartedAt(Instant)
	 * @see org.flexwright.model.ModelPackage#getStep_StartedAt()
	 * @model dataType="org.flexwright.model.Instant"
	 *        annotation="urn:flexwright:field label='Started'"
	 * @generated
	 */
	Instant getStartedAt();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Step#getStartedAt <em>Started At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Started At</em>' attribute.
	 * @see #getStartedAt()
	 * @generated
	 */
	void setStartedAt(Instant value);

	/**
	 * Returns the value of the '<em><b>Ended At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Ended At</em>' attribute.
	 * @see #setEndedAt(Instant)
	 * @see org.flexwright.model.ModelPackage#getStep_EndedAt()
	 * @model dataType="org.flexwright.model.Instant"
	 *        annotation="urn:flexwright:field label='Ended'"
	 * @generated
	 */
	Instant getEndedAt();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Step#getEndedAt <em>Ended At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Ended At</em>' attribute.
	 * @see #getEndedAt()
	 * @generated
	 */
	void setEndedAt(Instant value);

	/**
	 * Returns the value of the '<em><b>Session</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Session</em>' reference.
	 * @see #setSession(Session)
	 * @see org.flexwright.model.ModelPackage#getStep_Session()
	 * @model
	 * @generated
	 */
	Session getSession();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Step#getSession <em>Session</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Session</em>' reference.
	 * @see #getSession()
	 * @generated
	 */
	void setSession(Session value);

	/**
	 * Returns the value of the '<em><b>Uses</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.MaterialUse}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Uses</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getStep_Uses()
	 * @model containment="true"
	 * @generated
	 */
	EList<MaterialUse> getUses();

	/**
	 * Returns the value of the '<em><b>Details</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Details</em>' containment reference.
	 * @see #setDetails(EObject)
	 * @see org.flexwright.model.ModelPackage#getStep_Details()
	 * @model containment="true"
	 * @generated
	 */
	EObject getDetails();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Step#getDetails <em>Details</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Details</em>' containment reference.
	 * @see #getDetails()
	 * @generated
	 */
	void setDetails(EObject value);

	/**
	 * Returns the value of the '<em><b>Attachments</b></em>' reference list.
	 * The list contents are of type {@link org.flexwright.model.Attachment}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Attachments</em>' reference list.
	 * @see org.flexwright.model.ModelPackage#getStep_Attachments()
	 * @model
	 * @generated
	 */
	EList<Attachment> getAttachments();

} // Step
