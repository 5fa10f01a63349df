/**
 */
package org.flexwright.model;

import java.time.Instant;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Recipe</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A plan frozen from a confirmed trial.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.Recipe#getCode <em>Code</em>}</li>
 *   <li>{@link org.flexwright.model.Recipe#getVersion <em>Version</em>}</li>
 *   <li>{@link org.flexwright.model.Recipe#getFrozenAt <em>Frozen At</em>}</li>
 *   <li>{@link org.flexwright.model.Recipe#getFrozenBy <em>Frozen By</em>}</li>
 *   <li>{@link org.flexwright.model.Recipe#getLimits <em>Limits</em>}</li>
 *   <li>{@link org.flexwright.model.Recipe#getFrom <em>From</em>}</li>
 *   <li>{@link org.flexwright.model.Recipe#getPlan <em>Plan</em>}</li>
 *   <li>{@link org.flexwright.model.Recipe#getMaterials <em>Materials</em>}</li>
 *   <li>{@link org.flexwright.model.Recipe#getAsMade <em>As Made</em>}</li>
 *   <li>{@link org.flexwright.model.Recipe#getTargets <em>Targets</em>}</li>
 *   <li>{@link org.flexwright.model.Recipe#getChanges <em>Changes</em>}</li>
 *   <li>{@link org.flexwright.model.Recipe#getSessions <em>Sessions</em>}</li>
 *   <li>{@link org.flexwright.model.Recipe#getInstruments <em>Instruments</em>}</li>
 *   <li>{@link org.flexwright.model.Recipe#getPremixes <em>Premixes</em>}</li>
 *   <li>{@link org.flexwright.model.Recipe#getAttachments <em>Attachments</em>}</li>
 *   <li>{@link org.flexwright.model.Recipe#getMould <em>Mould</em>}</li>
 *   <li>{@link org.flexwright.model.Recipe#getTitle <em>Title</em>}</li>
 *   <li>{@link org.flexwright.model.Recipe#getJob <em>Job</em>}</li>
 *   <li>{@link org.flexwright.model.Recipe#isInvented <em>Invented</em>}</li>
 *   <li>{@link org.flexwright.model.Recipe#getNeeds <em>Needs</em>}</li>
 *   <li>{@link org.flexwright.model.Recipe#getReferences <em>References</em>}</li>
 *   <li>{@link org.flexwright.model.Recipe#getOverrides <em>Overrides</em>}</li>
 *   <li>{@link org.flexwright.model.Recipe#getAcknowledgements <em>Acknowledgements</em>}</li>
 * </ul>
 *
 * @see org.flexwright.model.ModelPackage#getRecipe()
 * @model
 * @generated
 */
public interface Recipe extends Entry {
	/**
	 * Returns the value of the '<em><b>Code</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Code</em>' attribute.
	 * @see #setCode(String)
	 * @see org.flexwright.model.ModelPackage#getRecipe_Code()
	 * @model annotation="urn:flexwright:field label='Recipe'"
	 * @generated
	 */
	String getCode();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Recipe#getCode <em>Code</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Code</em>' attribute.
	 * @see #getCode()
	 * @generated
	 */
	void setCode(String value);

	/**
	 * Returns the value of the '<em><b>Version</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Version</em>' attribute.
	 * @see #setVersion(int)
	 * @see org.flexwright.model.ModelPackage#getRecipe_Version()
	 * @model
	 * @generated
	 */
	int getVersion();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Recipe#getVersion <em>Version</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Version</em>' attribute.
	 * @see #getVersion()
	 * @generated
	 */
	void setVersion(int value);

	/**
	 * Returns the value of the '<em><b>Frozen At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Frozen At</em>' attribute.
	 * @see #setFrozenAt(Instant)
	 * @see org.flexwright.model.ModelPackage#getRecipe_FrozenAt()
	 * @model dataType="org.flexwright.model.Instant"
	 * @generated
	 */
	Instant getFrozenAt();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Recipe#getFrozenAt <em>Frozen At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Frozen At</em>' attribute.
	 * @see #getFrozenAt()
	 * @generated
	 */
	void setFrozenAt(Instant value);

	/**
	 * Returns the value of the '<em><b>Frozen By</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Frozen By</em>' attribute.
	 * @see #setFrozenBy(String)
	 * @see org.flexwright.model.ModelPackage#getRecipe_FrozenBy()
	 * @model
	 * @generated
	 */
	String getFrozenBy();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Recipe#getFrozenBy <em>Frozen By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Frozen By</em>' attribute.
	 * @see #getFrozenBy()
	 * @generated
	 */
	void setFrozenBy(String value);

	/**
	 * Returns the value of the '<em><b>Limits</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Limits</em>' attribute.
	 * @see #setLimits(String)
	 * @see org.flexwright.model.ModelPackage#getRecipe_Limits()
	 * @model annotation="urn:flexwright:field label='Acceptance limits in words'"
	 * @generated
	 */
	String getLimits();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Recipe#getLimits <em>Limits</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Limits</em>' attribute.
	 * @see #getLimits()
	 * @generated
	 */
	void setLimits(String value);

	/**
	 * Returns the value of the '<em><b>From</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>From</em>' reference.
	 * @see #setFrom(Trial)
	 * @see org.flexwright.model.ModelPackage#getRecipe_From()
	 * @model
	 * @generated
	 */
	Trial getFrom();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Recipe#getFrom <em>From</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>From</em>' reference.
	 * @see #getFrom()
	 * @generated
	 */
	void setFrom(Trial value);

	/**
	 * Returns the value of the '<em><b>Plan</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Plan</em>' containment reference.
	 * @see #setPlan(Trial)
	 * @see org.flexwright.model.ModelPackage#getRecipe_Plan()
	 * @model containment="true"
	 * @generated
	 */
	Trial getPlan();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Recipe#getPlan <em>Plan</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Plan</em>' containment reference.
	 * @see #getPlan()
	 * @generated
	 */
	void setPlan(Trial value);

	/**
	 * Returns the value of the '<em><b>Materials</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.MaterialGrade}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The materials as they were known when the recipe was frozen: copies, so that an old print stays as it was.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Materials</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getRecipe_Materials()
	 * @model containment="true"
	 * @generated
	 */
	EList<MaterialGrade> getMaterials();

	/**
	 * Returns the value of the '<em><b>As Made</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What was done and weighed in the trial it comes from: a copy.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>As Made</em>' containment reference.
	 * @see #setAsMade(Trial)
	 * @see org.flexwright.model.ModelPackage#getRecipe_AsMade()
	 * @model containment="true"
	 * @generated
	 */
	Trial getAsMade();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Recipe#getAsMade <em>As Made</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>As Made</em>' containment reference.
	 * @see #getAsMade()
	 * @generated
	 */
	void setAsMade(Trial value);

	/**
	 * Returns the value of the '<em><b>Targets</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The frozen target sheet it met.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Targets</em>' reference.
	 * @see #setTargets(TargetSheet)
	 * @see org.flexwright.model.ModelPackage#getRecipe_Targets()
	 * @model
	 * @generated
	 */
	TargetSheet getTargets();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Recipe#getTargets <em>Targets</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Targets</em>' reference.
	 * @see #getTargets()
	 * @generated
	 */
	void setTargets(TargetSheet value);

	/**
	 * Returns the value of the '<em><b>Changes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Difference from the version before, in words.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Changes</em>' attribute.
	 * @see #setChanges(String)
	 * @see org.flexwright.model.ModelPackage#getRecipe_Changes()
	 * @model annotation="urn:flexwright:field label='What changed' help='Difference from the version before, in words.'"
	 * @generated
	 */
	String getChanges();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Recipe#getChanges <em>Changes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Changes</em>' attribute.
	 * @see #getChanges()
	 * @generated
	 */
	void setChanges(String value);

	/**
	 * Returns the value of the '<em><b>Sessions</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.Session}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The sessions it was made and read in: copies.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Sessions</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getRecipe_Sessions()
	 * @model containment="true"
	 * @generated
	 */
	EList<Session> getSessions();

	/**
	 * Returns the value of the '<em><b>Instruments</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.Instrument}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The balances and gauges it was made and read with: copies.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Instruments</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getRecipe_Instruments()
	 * @model containment="true"
	 * @generated
	 */
	EList<Instrument> getInstruments();

	/**
	 * Returns the value of the '<em><b>Premixes</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.Premix}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The blends that went in: copies.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Premixes</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getRecipe_Premixes()
	 * @model containment="true"
	 * @generated
	 */
	EList<Premix> getPremixes();

	/**
	 * Returns the value of the '<em><b>Attachments</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.Attachment}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Photos and files of the trial it comes from: copies of their entries, the files are the same.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Attachments</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getRecipe_Attachments()
	 * @model containment="true"
	 * @generated
	 */
	EList<Attachment> getAttachments();

	/**
	 * Returns the value of the '<em><b>Mould</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The mould it was cast in, with its casts counted: a copy.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Mould</em>' containment reference.
	 * @see #setMould(Mould)
	 * @see org.flexwright.model.ModelPackage#getRecipe_Mould()
	 * @model containment="true"
	 * @generated
	 */
	Mould getMould();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Recipe#getMould <em>Mould</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Mould</em>' containment reference.
	 * @see #getMould()
	 * @generated
	 */
	void setMould(Mould value);

	/**
	 * Returns the value of the '<em><b>Title</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What is made, as the project was called when the recipe was frozen.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Title</em>' attribute.
	 * @see #setTitle(String)
	 * @see org.flexwright.model.ModelPackage#getRecipe_Title()
	 * @model
	 * @generated
	 */
	String getTitle();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Recipe#getTitle <em>Title</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Title</em>' attribute.
	 * @see #getTitle()
	 * @generated
	 */
	void setTitle(String value);

	/**
	 * Returns the value of the '<em><b>Job</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The job in the maker's words, as it was then.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Job</em>' attribute.
	 * @see #setJob(String)
	 * @see org.flexwright.model.ModelPackage#getRecipe_Job()
	 * @model
	 * @generated
	 */
	String getJob();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Recipe#getJob <em>Job</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Job</em>' attribute.
	 * @see #getJob()
	 * @generated
	 */
	void setJob(String value);

	/**
	 * Returns the value of the '<em><b>Invented</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * True when the project was demonstration data.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Invented</em>' attribute.
	 * @see #setInvented(boolean)
	 * @see org.flexwright.model.ModelPackage#getRecipe_Invented()
	 * @model
	 * @generated
	 */
	boolean isInvented();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Recipe#isInvented <em>Invented</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Invented</em>' attribute.
	 * @see #isInvented()
	 * @generated
	 */
	void setInvented(boolean value);

	/**
	 * Returns the value of the '<em><b>Needs</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.Need}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What is needed, in the words of the person who needs it: copies.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Needs</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getRecipe_Needs()
	 * @model containment="true"
	 * @generated
	 */
	EList<Need> getNeeds();

	/**
	 * Returns the value of the '<em><b>References</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.ReferencePart}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The reference parts with their readings: copies.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>References</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getRecipe_References()
	 * @model containment="true"
	 * @generated
	 */
	EList<ReferencePart> getReferences();

	/**
	 * Returns the value of the '<em><b>Overrides</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.StopOverride}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Findings about the trial that were gone against, with the reason: copies; the note says what each is about.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Overrides</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getRecipe_Overrides()
	 * @model containment="true"
	 * @generated
	 */
	EList<StopOverride> getOverrides();

	/**
	 * Returns the value of the '<em><b>Acknowledgements</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.Acknowledgement}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Cautions and data sheets read before its steps: copies.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Acknowledgements</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getRecipe_Acknowledgements()
	 * @model containment="true"
	 * @generated
	 */
	EList<Acknowledgement> getAcknowledgements();

} // Recipe
