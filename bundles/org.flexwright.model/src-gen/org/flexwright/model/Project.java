/**
 */
package org.flexwright.model;

import java.time.Instant;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Project</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One job: from need to recipe.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.Project#getTitle <em>Title</em>}</li>
 *   <li>{@link org.flexwright.model.Project#getJob <em>Job</em>}</li>
 *   <li>{@link org.flexwright.model.Project#isInvented <em>Invented</em>}</li>
 *   <li>{@link org.flexwright.model.Project#getCreatedAt <em>Created At</em>}</li>
 *   <li>{@link org.flexwright.model.Project#getWrittenBy <em>Written By</em>}</li>
 *   <li>{@link org.flexwright.model.Project#getFormatVersion <em>Format Version</em>}</li>
 *   <li>{@link org.flexwright.model.Project#getJournalSeq <em>Journal Seq</em>}</li>
 *   <li>{@link org.flexwright.model.Project#getNeeds <em>Needs</em>}</li>
 *   <li>{@link org.flexwright.model.Project#getReferenceParts <em>Reference Parts</em>}</li>
 *   <li>{@link org.flexwright.model.Project#getTargetSheets <em>Target Sheets</em>}</li>
 *   <li>{@link org.flexwright.model.Project#getGrades <em>Grades</em>}</li>
 *   <li>{@link org.flexwright.model.Project#getInstruments <em>Instruments</em>}</li>
 *   <li>{@link org.flexwright.model.Project#getControlPieces <em>Control Pieces</em>}</li>
 *   <li>{@link org.flexwright.model.Project#getSessions <em>Sessions</em>}</li>
 *   <li>{@link org.flexwright.model.Project#getTrials <em>Trials</em>}</li>
 *   <li>{@link org.flexwright.model.Project#getRecipes <em>Recipes</em>}</li>
 *   <li>{@link org.flexwright.model.Project#getAttachments <em>Attachments</em>}</li>
 *   <li>{@link org.flexwright.model.Project#getAcknowledgements <em>Acknowledgements</em>}</li>
 *   <li>{@link org.flexwright.model.Project#getOverrides <em>Overrides</em>}</li>
 *   <li>{@link org.flexwright.model.Project#getPlugins <em>Plugins</em>}</li>
 *   <li>{@link org.flexwright.model.Project#getMoulds <em>Moulds</em>}</li>
 *   <li>{@link org.flexwright.model.Project#getPremixes <em>Premixes</em>}</li>
 *   <li>{@link org.flexwright.model.Project#getBatches <em>Batches</em>}</li>
 *   <li>{@link org.flexwright.model.Project#getSearches <em>Searches</em>}</li>
 *   <li>{@link org.flexwright.model.Project#getHourlyRate <em>Hourly Rate</em>}</li>
 *   <li>{@link org.flexwright.model.Project#getCupPrice <em>Cup Price</em>}</li>
 *   <li>{@link org.flexwright.model.Project#getGaugeStudies <em>Gauge Studies</em>}</li>
 *   <li>{@link org.flexwright.model.Project#getSpotMaps <em>Spot Maps</em>}</li>
 *   <li>{@link org.flexwright.model.Project#getLawFits <em>Law Fits</em>}</li>
 *   <li>{@link org.flexwright.model.Project#getRankings <em>Rankings</em>}</li>
 *   <li>{@link org.flexwright.model.Project#getAgeingPlans <em>Ageing Plans</em>}</li>
 * </ul>
 *
 * @see org.flexwright.model.ModelPackage#getProject()
 * @model
 * @generated
 */
public interface Project extends Entry {
	/**
	 * Returns the value of the '<em><b>Title</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What is being made.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Title</em>' attribute.
	 * @see #setTitle(String)
	 * @see org.flexwright.model.ModelPackage#getProject_Title()
	 * @model annotation="urn:flexwright:field label='Title' help='What is being made.'"
	 * @generated
	 */
	String getTitle();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Project#getTitle <em>Title</em>}' attribute.
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
	 * The job in the maker's words.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Job</em>' attribute.
	 * @see #setJob(String)
	 * @see org.flexwright.model.ModelPackage#getProject_Job()
	 * @model annotation="urn:flexwright:field label='The job' help='The job in the maker\'s words.'"
	 * @generated
	 */
	String getJob();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Project#getJob <em>Job</em>}' attribute.
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
	 * True for demonstration data; every screen and report says so.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Invented</em>' attribute.
	 * @see #setInvented(boolean)
	 * @see org.flexwright.model.ModelPackage#getProject_Invented()
	 * @model
	 * @generated
	 */
	boolean isInvented();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Project#isInvented <em>Invented</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Invented</em>' attribute.
	 * @see #isInvented()
	 * @generated
	 */
	void setInvented(boolean value);

	/**
	 * Returns the value of the '<em><b>Created At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Created At</em>' attribute.
	 * @see #setCreatedAt(Instant)
	 * @see org.flexwright.model.ModelPackage#getProject_CreatedAt()
	 * @model dataType="org.flexwright.model.Instant"
	 * @generated
	 */
	Instant getCreatedAt();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Project#getCreatedAt <em>Created At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Created At</em>' attribute.
	 * @see #getCreatedAt()
	 * @generated
	 */
	void setCreatedAt(Instant value);

	/**
	 * Returns the value of the '<em><b>Written By</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Program version that wrote the file.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Written By</em>' attribute.
	 * @see #setWrittenBy(String)
	 * @see org.flexwright.model.ModelPackage#getProject_WrittenBy()
	 * @model
	 * @generated
	 */
	String getWrittenBy();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Project#getWrittenBy <em>Written By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Written By</em>' attribute.
	 * @see #getWrittenBy()
	 * @generated
	 */
	void setWrittenBy(String value);

	/**
	 * Returns the value of the '<em><b>Format Version</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Version of the file's layout; a program that knows only smaller ones opens the project read-only.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Format Version</em>' attribute.
	 * @see #setFormatVersion(int)
	 * @see org.flexwright.model.ModelPackage#getProject_FormatVersion()
	 * @model
	 * @generated
	 */
	int getFormatVersion();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Project#getFormatVersion <em>Format Version</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Format Version</em>' attribute.
	 * @see #getFormatVersion()
	 * @generated
	 */
	void setFormatVersion(int value);

	/**
	 * Returns the value of the '<em><b>Journal Seq</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Number of the last journal line this file contains.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Journal Seq</em>' attribute.
	 * @see #setJournalSeq(long)
	 * @see org.flexwright.model.ModelPackage#getProject_JournalSeq()
	 * @model
	 * @generated
	 */
	long getJournalSeq();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Project#getJournalSeq <em>Journal Seq</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Journal Seq</em>' attribute.
	 * @see #getJournalSeq()
	 * @generated
	 */
	void setJournalSeq(long value);

	/**
	 * Returns the value of the '<em><b>Needs</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.Need}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Needs</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getProject_Needs()
	 * @model containment="true"
	 * @generated
	 */
	EList<Need> getNeeds();

	/**
	 * Returns the value of the '<em><b>Reference Parts</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.ReferencePart}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Reference Parts</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getProject_ReferenceParts()
	 * @model containment="true"
	 * @generated
	 */
	EList<ReferencePart> getReferenceParts();

	/**
	 * Returns the value of the '<em><b>Target Sheets</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.TargetSheet}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Target Sheets</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getProject_TargetSheets()
	 * @model containment="true"
	 * @generated
	 */
	EList<TargetSheet> getTargetSheets();

	/**
	 * Returns the value of the '<em><b>Grades</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.MaterialGrade}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Grades</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getProject_Grades()
	 * @model containment="true"
	 * @generated
	 */
	EList<MaterialGrade> getGrades();

	/**
	 * Returns the value of the '<em><b>Instruments</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.Instrument}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Instruments</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getProject_Instruments()
	 * @model containment="true"
	 * @generated
	 */
	EList<Instrument> getInstruments();

	/**
	 * Returns the value of the '<em><b>Control Pieces</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.ControlPiece}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Control Pieces</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getProject_ControlPieces()
	 * @model containment="true"
	 * @generated
	 */
	EList<ControlPiece> getControlPieces();

	/**
	 * Returns the value of the '<em><b>Sessions</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.Session}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Sessions</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getProject_Sessions()
	 * @model containment="true"
	 * @generated
	 */
	EList<Session> getSessions();

	/**
	 * Returns the value of the '<em><b>Trials</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.Trial}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Trials</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getProject_Trials()
	 * @model containment="true"
	 * @generated
	 */
	EList<Trial> getTrials();

	/**
	 * Returns the value of the '<em><b>Recipes</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.Recipe}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Recipes</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getProject_Recipes()
	 * @model containment="true"
	 * @generated
	 */
	EList<Recipe> getRecipes();

	/**
	 * Returns the value of the '<em><b>Attachments</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.Attachment}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Attachments</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getProject_Attachments()
	 * @model containment="true"
	 * @generated
	 */
	EList<Attachment> getAttachments();

	/**
	 * Returns the value of the '<em><b>Acknowledgements</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.Acknowledgement}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Acknowledgements</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getProject_Acknowledgements()
	 * @model containment="true"
	 * @generated
	 */
	EList<Acknowledgement> getAcknowledgements();

	/**
	 * Returns the value of the '<em><b>Overrides</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.StopOverride}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Overrides</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getProject_Overrides()
	 * @model containment="true"
	 * @generated
	 */
	EList<StopOverride> getOverrides();

	/**
	 * Returns the value of the '<em><b>Plugins</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.PluginUse}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Which plugins wrote details into this file, with version.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Plugins</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getProject_Plugins()
	 * @model containment="true"
	 * @generated
	 */
	EList<PluginUse> getPlugins();

	/**
	 * Returns the value of the '<em><b>Moulds</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.Mould}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Moulds</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getProject_Moulds()
	 * @model containment="true"
	 * @generated
	 */
	EList<Mould> getMoulds();

	/**
	 * Returns the value of the '<em><b>Premixes</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.Premix}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Premixes</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getProject_Premixes()
	 * @model containment="true"
	 * @generated
	 */
	EList<Premix> getPremixes();

	/**
	 * Returns the value of the '<em><b>Batches</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.Batch}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Batches</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getProject_Batches()
	 * @model containment="true"
	 * @generated
	 */
	EList<Batch> getBatches();

	/**
	 * Returns the value of the '<em><b>Searches</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.SavedSearch}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Searches</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getProject_Searches()
	 * @model containment="true"
	 * @generated
	 */
	EList<SavedSearch> getSearches();

	/**
	 * Returns the value of the '<em><b>Hourly Rate</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What an hour at the bench counts, for the cost of a part.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Hourly Rate</em>' attribute.
	 * @see #setHourlyRate(Double)
	 * @see org.flexwright.model.ModelPackage#getProject_HourlyRate()
	 * @model annotation="urn:flexwright:field kind='MONEY' unit='EUR' min='0' max='100000' label='An hour of work' help='What an hour at the bench counts, for the cost of a part.'"
	 * @generated
	 */
	Double getHourlyRate();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Project#getHourlyRate <em>Hourly Rate</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Hourly Rate</em>' attribute.
	 * @see #getHourlyRate()
	 * @generated
	 */
	void setHourlyRate(Double value);

	/**
	 * Returns the value of the '<em><b>Cup Price</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What is thrown away with each pot: cup, stirrer, gloves.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Cup Price</em>' attribute.
	 * @see #setCupPrice(Double)
	 * @see org.flexwright.model.ModelPackage#getProject_CupPrice()
	 * @model annotation="urn:flexwright:field kind='MONEY' unit='EUR' min='0' max='100000' label='Cups and sticks, a pot' help='What is thrown away with each pot: cup, stirrer, gloves.'"
	 * @generated
	 */
	Double getCupPrice();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Project#getCupPrice <em>Cup Price</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Cup Price</em>' attribute.
	 * @see #getCupPrice()
	 * @generated
	 */
	void setCupPrice(Double value);

	/**
	 * Returns the value of the '<em><b>Gauge Studies</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.GaugeStudy}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Gauge Studies</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getProject_GaugeStudies()
	 * @model containment="true"
	 * @generated
	 */
	EList<GaugeStudy> getGaugeStudies();

	/**
	 * Returns the value of the '<em><b>Spot Maps</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.SpotMap}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Spot Maps</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getProject_SpotMaps()
	 * @model containment="true"
	 * @generated
	 */
	EList<SpotMap> getSpotMaps();

	/**
	 * Returns the value of the '<em><b>Law Fits</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.LawFit}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Law Fits</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getProject_LawFits()
	 * @model containment="true"
	 * @generated
	 */
	EList<LawFit> getLawFits();

	/**
	 * Returns the value of the '<em><b>Rankings</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.Ranking}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Rankings</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getProject_Rankings()
	 * @model containment="true"
	 * @generated
	 */
	EList<Ranking> getRankings();

	/**
	 * Returns the value of the '<em><b>Ageing Plans</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.AgeingPlan}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Ageing Plans</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getProject_AgeingPlans()
	 * @model containment="true"
	 * @generated
	 */
	EList<AgeingPlan> getAgeingPlans();

} // Project
