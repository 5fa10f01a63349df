/**
 */
package org.flexwright.model;

import java.time.Instant;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Trial</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One try: a plan, what happened, what came out.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.Trial#getCode <em>Code</em>}</li>
 *   <li>{@link org.flexwright.model.Trial#getTitle <em>Title</em>}</li>
 *   <li>{@link org.flexwright.model.Trial#getIdea <em>Idea</em>}</li>
 *   <li>{@link org.flexwright.model.Trial#getRoute <em>Route</em>}</li>
 *   <li>{@link org.flexwright.model.Trial#getBasedOn <em>Based On</em>}</li>
 *   <li>{@link org.flexwright.model.Trial#getState <em>State</em>}</li>
 *   <li>{@link org.flexwright.model.Trial#getStateReason <em>State Reason</em>}</li>
 *   <li>{@link org.flexwright.model.Trial#getCreatedAt <em>Created At</em>}</li>
 *   <li>{@link org.flexwright.model.Trial#getMadeAt <em>Made At</em>}</li>
 *   <li>{@link org.flexwright.model.Trial#getConclusion <em>Conclusion</em>}</li>
 *   <li>{@link org.flexwright.model.Trial#getCost <em>Cost</em>}</li>
 *   <li>{@link org.flexwright.model.Trial#getHours <em>Hours</em>}</li>
 *   <li>{@link org.flexwright.model.Trial#getSteps <em>Steps</em>}</li>
 *   <li>{@link org.flexwright.model.Trial#getParts <em>Parts</em>}</li>
 *   <li>{@link org.flexwright.model.Trial#getCalculations <em>Calculations</em>}</li>
 *   <li>{@link org.flexwright.model.Trial#getAttachments <em>Attachments</em>}</li>
 *   <li>{@link org.flexwright.model.Trial#getContactAt <em>Contact At</em>}</li>
 *   <li>{@link org.flexwright.model.Trial#getCupLabel <em>Cup Label</em>}</li>
 *   <li>{@link org.flexwright.model.Trial#getMould <em>Mould</em>}</li>
 *   <li>{@link org.flexwright.model.Trial#getNotes <em>Notes</em>}</li>
 *   <li>{@link org.flexwright.model.Trial#getDecisions <em>Decisions</em>}</li>
 *   <li>{@link org.flexwright.model.Trial#getPartsWanted <em>Parts Wanted</em>}</li>
 * </ul>
 *
 * @see org.flexwright.model.ModelPackage#getTrial()
 * @model
 * @generated
 */
public interface Trial extends Entry {
	/**
	 * Returns the value of the '<em><b>Code</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Code</em>' attribute.
	 * @see #setCode(String)
	 * @see org.flexwright.model.ModelPackage#getTrial_Code()
	 * @model annotation="urn:flexwright:field label='Trial'"
	 * @generated
	 */
	String getCode();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Trial#getCode <em>Code</em>}' attribute.
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
	 * @see org.flexwright.model.ModelPackage#getTrial_Title()
	 * @model annotation="urn:flexwright:field label='Title'"
	 * @generated
	 */
	String getTitle();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Trial#getTitle <em>Title</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Title</em>' attribute.
	 * @see #getTitle()
	 * @generated
	 */
	void setTitle(String value);

	/**
	 * Returns the value of the '<em><b>Idea</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What is changed and what is expected.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Idea</em>' attribute.
	 * @see #setIdea(String)
	 * @see org.flexwright.model.ModelPackage#getTrial_Idea()
	 * @model annotation="urn:flexwright:field label='Idea' help='What is changed and what is expected.'"
	 * @generated
	 */
	String getIdea();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Trial#getIdea <em>Idea</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Idea</em>' attribute.
	 * @see #getIdea()
	 * @generated
	 */
	void setIdea(String value);

	/**
	 * Returns the value of the '<em><b>Route</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Id of the process kind.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Route</em>' attribute.
	 * @see #setRoute(String)
	 * @see org.flexwright.model.ModelPackage#getTrial_Route()
	 * @model annotation="urn:flexwright:field label='Route' help='Id of the process kind.'"
	 * @generated
	 */
	String getRoute();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Trial#getRoute <em>Route</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Route</em>' attribute.
	 * @see #getRoute()
	 * @generated
	 */
	void setRoute(String value);

	/**
	 * Returns the value of the '<em><b>Based On</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Based On</em>' reference.
	 * @see #setBasedOn(Trial)
	 * @see org.flexwright.model.ModelPackage#getTrial_BasedOn()
	 * @model
	 * @generated
	 */
	Trial getBasedOn();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Trial#getBasedOn <em>Based On</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Based On</em>' reference.
	 * @see #getBasedOn()
	 * @generated
	 */
	void setBasedOn(Trial value);

	/**
	 * Returns the value of the '<em><b>State</b></em>' attribute.
	 * The literals are from the enumeration {@link org.flexwright.model.TrialState}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>State</em>' attribute.
	 * @see org.flexwright.model.TrialState
	 * @see #setState(TrialState)
	 * @see org.flexwright.model.ModelPackage#getTrial_State()
	 * @model annotation="urn:flexwright:field label='State'"
	 * @generated
	 */
	TrialState getState();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Trial#getState <em>State</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>State</em>' attribute.
	 * @see org.flexwright.model.TrialState
	 * @see #getState()
	 * @generated
	 */
	void setState(TrialState value);

	/**
	 * Returns the value of the '<em><b>State Reason</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * For failed or discarded.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>State Reason</em>' attribute.
	 * @see #setStateReason(String)
	 * @see org.flexwright.model.ModelPackage#getTrial_StateReason()
	 * @model annotation="urn:flexwright:field label='Why' help='For failed or discarded.'"
	 * @generated
	 */
	String getStateReason();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Trial#getStateReason <em>State Reason</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>State Reason</em>' attribute.
	 * @see #getStateReason()
	 * @generated
	 */
	void setStateReason(String value);

	/**
	 * Returns the value of the '<em><b>Created At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Created At</em>' attribute.
	 * @see #setCreatedAt(Instant)
	 * @see org.flexwright.model.ModelPackage#getTrial_CreatedAt()
	 * @model dataType="org.flexwright.model.Instant"
	 * @generated
	 */
	Instant getCreatedAt();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Trial#getCreatedAt <em>Created At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Created At</em>' attribute.
	 * @see #getCreatedAt()
	 * @generated
	 */
	void setCreatedAt(Instant value);

	/**
	 * Returns the value of the '<em><b>Made At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Made At</em>' attribute.
	 * @see #setMadeAt(Instant)
	 * @see org.flexwright.model.ModelPackage#getTrial_MadeAt()
	 * @model dataType="org.flexwright.model.Instant"
	 *        annotation="urn:flexwright:field label='Made at'"
	 * @generated
	 */
	Instant getMadeAt();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Trial#getMadeAt <em>Made At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Made At</em>' attribute.
	 * @see #getMadeAt()
	 * @generated
	 */
	void setMadeAt(Instant value);

	/**
	 * Returns the value of the '<em><b>Conclusion</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * One sentence.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Conclusion</em>' attribute.
	 * @see #setConclusion(String)
	 * @see org.flexwright.model.ModelPackage#getTrial_Conclusion()
	 * @model annotation="urn:flexwright:field label='Conclusion' help='One sentence.'"
	 * @generated
	 */
	String getConclusion();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Trial#getConclusion <em>Conclusion</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Conclusion</em>' attribute.
	 * @see #getConclusion()
	 * @generated
	 */
	void setConclusion(String value);

	/**
	 * Returns the value of the '<em><b>Cost</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Cost</em>' attribute.
	 * @see #setCost(Double)
	 * @see org.flexwright.model.ModelPackage#getTrial_Cost()
	 * @model annotation="urn:flexwright:field kind='MONEY' unit='EUR' min='0' label='Cost'"
	 * @generated
	 */
	Double getCost();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Trial#getCost <em>Cost</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Cost</em>' attribute.
	 * @see #getCost()
	 * @generated
	 */
	void setCost(Double value);

	/**
	 * Returns the value of the '<em><b>Hours</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Hours</em>' attribute.
	 * @see #setHours(Double)
	 * @see org.flexwright.model.ModelPackage#getTrial_Hours()
	 * @model annotation="urn:flexwright:field kind='NUMBER' unit='h' min='0' max='10000' label='Hours'"
	 * @generated
	 */
	Double getHours();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Trial#getHours <em>Hours</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Hours</em>' attribute.
	 * @see #getHours()
	 * @generated
	 */
	void setHours(Double value);

	/**
	 * Returns the value of the '<em><b>Steps</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.Step}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Steps</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getTrial_Steps()
	 * @model containment="true"
	 * @generated
	 */
	EList<Step> getSteps();

	/**
	 * Returns the value of the '<em><b>Parts</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.Part}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Parts</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getTrial_Parts()
	 * @model containment="true"
	 * @generated
	 */
	EList<Part> getParts();

	/**
	 * Returns the value of the '<em><b>Calculations</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.CalculationRun}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Calculations</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getTrial_Calculations()
	 * @model containment="true"
	 * @generated
	 */
	EList<CalculationRun> getCalculations();

	/**
	 * Returns the value of the '<em><b>Attachments</b></em>' reference list.
	 * The list contents are of type {@link org.flexwright.model.Attachment}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Attachments</em>' reference list.
	 * @see org.flexwright.model.ModelPackage#getTrial_Attachments()
	 * @model
	 * @generated
	 */
	EList<Attachment> getAttachments();

	/**
	 * Returns the value of the '<em><b>Contact At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * First contact of the components: zero of the clock.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Contact At</em>' attribute.
	 * @see #setContactAt(Instant)
	 * @see org.flexwright.model.ModelPackage#getTrial_ContactAt()
	 * @model dataType="org.flexwright.model.Instant"
	 *        annotation="urn:flexwright:field label='A met B at' help='First contact of the components: zero of the clock.'"
	 * @generated
	 */
	Instant getContactAt();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Trial#getContactAt <em>Contact At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Contact At</em>' attribute.
	 * @see #getContactAt()
	 * @generated
	 */
	void setContactAt(Instant value);

	/**
	 * Returns the value of the '<em><b>Cup Label</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What is written on the cup.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Cup Label</em>' attribute.
	 * @see #setCupLabel(String)
	 * @see org.flexwright.model.ModelPackage#getTrial_CupLabel()
	 * @model annotation="urn:flexwright:field label='Cup' help='What is written on the cup.'"
	 * @generated
	 */
	String getCupLabel();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Trial#getCupLabel <em>Cup Label</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Cup Label</em>' attribute.
	 * @see #getCupLabel()
	 * @generated
	 */
	void setCupLabel(String value);

	/**
	 * Returns the value of the '<em><b>Mould</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The mould it was cast in.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Mould</em>' reference.
	 * @see #setMould(Mould)
	 * @see org.flexwright.model.ModelPackage#getTrial_Mould()
	 * @model
	 * @generated
	 */
	Mould getMould();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Trial#getMould <em>Mould</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Mould</em>' reference.
	 * @see #getMould()
	 * @generated
	 */
	void setMould(Mould value);

	/**
	 * Returns the value of the '<em><b>Notes</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.BenchNote}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Notes</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getTrial_Notes()
	 * @model containment="true"
	 * @generated
	 */
	EList<BenchNote> getNotes();

	/**
	 * Returns the value of the '<em><b>Decisions</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.Decision}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Decisions</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getTrial_Decisions()
	 * @model containment="true"
	 * @generated
	 */
	EList<Decision> getDecisions();

	/**
	 * Returns the value of the '<em><b>Parts Wanted</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How many parts it is to give; empty when nobody said.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Parts Wanted</em>' attribute.
	 * @see #setPartsWanted(Integer)
	 * @see org.flexwright.model.ModelPackage#getTrial_PartsWanted()
	 * @model annotation="urn:flexwright:field min='1' max='10000' label='Parts wanted' help='How many parts it is to give; empty when nobody said.'"
	 * @generated
	 */
	Integer getPartsWanted();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Trial#getPartsWanted <em>Parts Wanted</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Parts Wanted</em>' attribute.
	 * @see #getPartsWanted()
	 * @generated
	 */
	void setPartsWanted(Integer value);

} // Trial
