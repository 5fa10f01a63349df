/**
 */
package org.flexwright.model.impl;

import java.time.Instant;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

import org.flexwright.model.Acknowledgement;
import org.flexwright.model.AgeingPlan;
import org.flexwright.model.Attachment;
import org.flexwright.model.Batch;
import org.flexwright.model.ControlPiece;
import org.flexwright.model.GaugeStudy;
import org.flexwright.model.Instrument;
import org.flexwright.model.LawFit;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Mould;
import org.flexwright.model.Need;
import org.flexwright.model.PluginUse;
import org.flexwright.model.Premix;
import org.flexwright.model.Project;
import org.flexwright.model.Ranking;
import org.flexwright.model.Recipe;
import org.flexwright.model.ReferencePart;
import org.flexwright.model.SavedSearch;
import org.flexwright.model.Session;
import org.flexwright.model.SpotMap;
import org.flexwright.model.StopOverride;
import org.flexwright.model.TargetSheet;
import org.flexwright.model.Trial;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Project</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.impl.ProjectImpl#getTitle <em>Title</em>}</li>
 *   <li>{@link org.flexwright.model.impl.ProjectImpl#getJob <em>Job</em>}</li>
 *   <li>{@link org.flexwright.model.impl.ProjectImpl#isInvented <em>Invented</em>}</li>
 *   <li>{@link org.flexwright.model.impl.ProjectImpl#getCreatedAt <em>Created At</em>}</li>
 *   <li>{@link org.flexwright.model.impl.ProjectImpl#getWrittenBy <em>Written By</em>}</li>
 *   <li>{@link org.flexwright.model.impl.ProjectImpl#getFormatVersion <em>Format Version</em>}</li>
 *   <li>{@link org.flexwright.model.impl.ProjectImpl#getJournalSeq <em>Journal Seq</em>}</li>
 *   <li>{@link org.flexwright.model.impl.ProjectImpl#getNeeds <em>Needs</em>}</li>
 *   <li>{@link org.flexwright.model.impl.ProjectImpl#getReferenceParts <em>Reference Parts</em>}</li>
 *   <li>{@link org.flexwright.model.impl.ProjectImpl#getTargetSheets <em>Target Sheets</em>}</li>
 *   <li>{@link org.flexwright.model.impl.ProjectImpl#getGrades <em>Grades</em>}</li>
 *   <li>{@link org.flexwright.model.impl.ProjectImpl#getInstruments <em>Instruments</em>}</li>
 *   <li>{@link org.flexwright.model.impl.ProjectImpl#getControlPieces <em>Control Pieces</em>}</li>
 *   <li>{@link org.flexwright.model.impl.ProjectImpl#getSessions <em>Sessions</em>}</li>
 *   <li>{@link org.flexwright.model.impl.ProjectImpl#getTrials <em>Trials</em>}</li>
 *   <li>{@link org.flexwright.model.impl.ProjectImpl#getRecipes <em>Recipes</em>}</li>
 *   <li>{@link org.flexwright.model.impl.ProjectImpl#getAttachments <em>Attachments</em>}</li>
 *   <li>{@link org.flexwright.model.impl.ProjectImpl#getAcknowledgements <em>Acknowledgements</em>}</li>
 *   <li>{@link org.flexwright.model.impl.ProjectImpl#getOverrides <em>Overrides</em>}</li>
 *   <li>{@link org.flexwright.model.impl.ProjectImpl#getPlugins <em>Plugins</em>}</li>
 *   <li>{@link org.flexwright.model.impl.ProjectImpl#getMoulds <em>Moulds</em>}</li>
 *   <li>{@link org.flexwright.model.impl.ProjectImpl#getPremixes <em>Premixes</em>}</li>
 *   <li>{@link org.flexwright.model.impl.ProjectImpl#getBatches <em>Batches</em>}</li>
 *   <li>{@link org.flexwright.model.impl.ProjectImpl#getSearches <em>Searches</em>}</li>
 *   <li>{@link org.flexwright.model.impl.ProjectImpl#getHourlyRate <em>Hourly Rate</em>}</li>
 *   <li>{@link org.flexwright.model.impl.ProjectImpl#getCupPrice <em>Cup Price</em>}</li>
 *   <li>{@link org.flexwright.model.impl.ProjectImpl#getGaugeStudies <em>Gauge Studies</em>}</li>
 *   <li>{@link org.flexwright.model.impl.ProjectImpl#getSpotMaps <em>Spot Maps</em>}</li>
 *   <li>{@link org.flexwright.model.impl.ProjectImpl#getLawFits <em>Law Fits</em>}</li>
 *   <li>{@link org.flexwright.model.impl.ProjectImpl#getRankings <em>Rankings</em>}</li>
 *   <li>{@link org.flexwright.model.impl.ProjectImpl#getAgeingPlans <em>Ageing Plans</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ProjectImpl extends EntryImpl implements Project {
	/**
	 * The default value of the '{@link #getTitle() <em>Title</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTitle()
	 * @generated
	 * @ordered
	 */
	protected static final String TITLE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTitle() <em>Title</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTitle()
	 * @generated
	 * @ordered
	 */
	protected String title = TITLE_EDEFAULT;

	/**
	 * The default value of the '{@link #getJob() <em>Job</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getJob()
	 * @generated
	 * @ordered
	 */
	protected static final String JOB_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getJob() <em>Job</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getJob()
	 * @generated
	 * @ordered
	 */
	protected String job = JOB_EDEFAULT;

	/**
	 * The default value of the '{@link #isInvented() <em>Invented</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isInvented()
	 * @generated
	 * @ordered
	 */
	protected static final boolean INVENTED_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isInvented() <em>Invented</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isInvented()
	 * @generated
	 * @ordered
	 */
	protected boolean invented = INVENTED_EDEFAULT;

	/**
	 * The default value of the '{@link #getCreatedAt() <em>Created At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCreatedAt()
	 * @generated
	 * @ordered
	 */
	protected static final Instant CREATED_AT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCreatedAt() <em>Created At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCreatedAt()
	 * @generated
	 * @ordered
	 */
	protected Instant createdAt = CREATED_AT_EDEFAULT;

	/**
	 * The default value of the '{@link #getWrittenBy() <em>Written By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWrittenBy()
	 * @generated
	 * @ordered
	 */
	protected static final String WRITTEN_BY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWrittenBy() <em>Written By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWrittenBy()
	 * @generated
	 * @ordered
	 */
	protected String writtenBy = WRITTEN_BY_EDEFAULT;

	/**
	 * The default value of the '{@link #getFormatVersion() <em>Format Version</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFormatVersion()
	 * @generated
	 * @ordered
	 */
	protected static final int FORMAT_VERSION_EDEFAULT = 0;

	/**
	 * The cached value of the '{@link #getFormatVersion() <em>Format Version</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFormatVersion()
	 * @generated
	 * @ordered
	 */
	protected int formatVersion = FORMAT_VERSION_EDEFAULT;

	/**
	 * The default value of the '{@link #getJournalSeq() <em>Journal Seq</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getJournalSeq()
	 * @generated
	 * @ordered
	 */
	protected static final long JOURNAL_SEQ_EDEFAULT = 0L;

	/**
	 * The cached value of the '{@link #getJournalSeq() <em>Journal Seq</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getJournalSeq()
	 * @generated
	 * @ordered
	 */
	protected long journalSeq = JOURNAL_SEQ_EDEFAULT;

	/**
	 * The cached value of the '{@link #getNeeds() <em>Needs</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNeeds()
	 * @generated
	 * @ordered
	 */
	protected EList<Need> needs;

	/**
	 * The cached value of the '{@link #getReferenceParts() <em>Reference Parts</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReferenceParts()
	 * @generated
	 * @ordered
	 */
	protected EList<ReferencePart> referenceParts;

	/**
	 * The cached value of the '{@link #getTargetSheets() <em>Target Sheets</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTargetSheets()
	 * @generated
	 * @ordered
	 */
	protected EList<TargetSheet> targetSheets;

	/**
	 * The cached value of the '{@link #getGrades() <em>Grades</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGrades()
	 * @generated
	 * @ordered
	 */
	protected EList<MaterialGrade> grades;

	/**
	 * The cached value of the '{@link #getInstruments() <em>Instruments</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInstruments()
	 * @generated
	 * @ordered
	 */
	protected EList<Instrument> instruments;

	/**
	 * The cached value of the '{@link #getControlPieces() <em>Control Pieces</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getControlPieces()
	 * @generated
	 * @ordered
	 */
	protected EList<ControlPiece> controlPieces;

	/**
	 * The cached value of the '{@link #getSessions() <em>Sessions</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSessions()
	 * @generated
	 * @ordered
	 */
	protected EList<Session> sessions;

	/**
	 * The cached value of the '{@link #getTrials() <em>Trials</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTrials()
	 * @generated
	 * @ordered
	 */
	protected EList<Trial> trials;

	/**
	 * The cached value of the '{@link #getRecipes() <em>Recipes</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRecipes()
	 * @generated
	 * @ordered
	 */
	protected EList<Recipe> recipes;

	/**
	 * The cached value of the '{@link #getAttachments() <em>Attachments</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAttachments()
	 * @generated
	 * @ordered
	 */
	protected EList<Attachment> attachments;

	/**
	 * The cached value of the '{@link #getAcknowledgements() <em>Acknowledgements</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAcknowledgements()
	 * @generated
	 * @ordered
	 */
	protected EList<Acknowledgement> acknowledgements;

	/**
	 * The cached value of the '{@link #getOverrides() <em>Overrides</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOverrides()
	 * @generated
	 * @ordered
	 */
	protected EList<StopOverride> overrides;

	/**
	 * The cached value of the '{@link #getPlugins() <em>Plugins</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlugins()
	 * @generated
	 * @ordered
	 */
	protected EList<PluginUse> plugins;

	/**
	 * The cached value of the '{@link #getMoulds() <em>Moulds</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMoulds()
	 * @generated
	 * @ordered
	 */
	protected EList<Mould> moulds;

	/**
	 * The cached value of the '{@link #getPremixes() <em>Premixes</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPremixes()
	 * @generated
	 * @ordered
	 */
	protected EList<Premix> premixes;

	/**
	 * The cached value of the '{@link #getBatches() <em>Batches</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBatches()
	 * @generated
	 * @ordered
	 */
	protected EList<Batch> batches;

	/**
	 * The cached value of the '{@link #getSearches() <em>Searches</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSearches()
	 * @generated
	 * @ordered
	 */
	protected EList<SavedSearch> searches;

	/**
	 * The default value of the '{@link #getHourlyRate() <em>Hourly Rate</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHourlyRate()
	 * @generated
	 * @ordered
	 */
	protected static final Double HOURLY_RATE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getHourlyRate() <em>Hourly Rate</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHourlyRate()
	 * @generated
	 * @ordered
	 */
	protected Double hourlyRate = HOURLY_RATE_EDEFAULT;

	/**
	 * The default value of the '{@link #getCupPrice() <em>Cup Price</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCupPrice()
	 * @generated
	 * @ordered
	 */
	protected static final Double CUP_PRICE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCupPrice() <em>Cup Price</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCupPrice()
	 * @generated
	 * @ordered
	 */
	protected Double cupPrice = CUP_PRICE_EDEFAULT;

	/**
	 * The cached value of the '{@link #getGaugeStudies() <em>Gauge Studies</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGaugeStudies()
	 * @generated
	 * @ordered
	 */
	protected EList<GaugeStudy> gaugeStudies;

	/**
	 * The cached value of the '{@link #getSpotMaps() <em>Spot Maps</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSpotMaps()
	 * @generated
	 * @ordered
	 */
	protected EList<SpotMap> spotMaps;

	/**
	 * The cached value of the '{@link #getLawFits() <em>Law Fits</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLawFits()
	 * @generated
	 * @ordered
	 */
	protected EList<LawFit> lawFits;

	/**
	 * The cached value of the '{@link #getRankings() <em>Rankings</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRankings()
	 * @generated
	 * @ordered
	 */
	protected EList<Ranking> rankings;

	/**
	 * The cached value of the '{@link #getAgeingPlans() <em>Ageing Plans</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAgeingPlans()
	 * @generated
	 * @ordered
	 */
	protected EList<AgeingPlan> ageingPlans;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ProjectImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.PROJECT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getTitle() {
		return title;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTitle(String newTitle) {
		String oldTitle = title;
		title = newTitle;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PROJECT__TITLE, oldTitle, title));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getJob() {
		return job;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setJob(String newJob) {
		String oldJob = job;
		job = newJob;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PROJECT__JOB, oldJob, job));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isInvented() {
		return invented;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setInvented(boolean newInvented) {
		boolean oldInvented = invented;
		invented = newInvented;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PROJECT__INVENTED, oldInvented, invented));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Instant getCreatedAt() {
		return createdAt;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCreatedAt(Instant newCreatedAt) {
		Instant oldCreatedAt = createdAt;
		createdAt = newCreatedAt;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PROJECT__CREATED_AT, oldCreatedAt, createdAt));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getWrittenBy() {
		return writtenBy;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWrittenBy(String newWrittenBy) {
		String oldWrittenBy = writtenBy;
		writtenBy = newWrittenBy;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PROJECT__WRITTEN_BY, oldWrittenBy, writtenBy));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getFormatVersion() {
		return formatVersion;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFormatVersion(int newFormatVersion) {
		int oldFormatVersion = formatVersion;
		formatVersion = newFormatVersion;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PROJECT__FORMAT_VERSION, oldFormatVersion, formatVersion));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public long getJournalSeq() {
		return journalSeq;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setJournalSeq(long newJournalSeq) {
		long oldJournalSeq = journalSeq;
		journalSeq = newJournalSeq;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PROJECT__JOURNAL_SEQ, oldJournalSeq, journalSeq));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Need> getNeeds() {
		if (needs == null) {
			needs = new EObjectContainmentEList<Need>(Need.class, this, ModelPackage.PROJECT__NEEDS);
		}
		return needs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<ReferencePart> getReferenceParts() {
		if (referenceParts == null) {
			referenceParts = new EObjectContainmentEList<ReferencePart>(ReferencePart.class, this, ModelPackage.PROJECT__REFERENCE_PARTS);
		}
		return referenceParts;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<TargetSheet> getTargetSheets() {
		if (targetSheets == null) {
			targetSheets = new EObjectContainmentEList<TargetSheet>(TargetSheet.class, this, ModelPackage.PROJECT__TARGET_SHEETS);
		}
		return targetSheets;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<MaterialGrade> getGrades() {
		if (grades == null) {
			grades = new EObjectContainmentEList<MaterialGrade>(MaterialGrade.class, this, ModelPackage.PROJECT__GRADES);
		}
		return grades;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Instrument> getInstruments() {
		if (instruments == null) {
			instruments = new EObjectContainmentEList<Instrument>(Instrument.class, this, ModelPackage.PROJECT__INSTRUMENTS);
		}
		return instruments;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<ControlPiece> getControlPieces() {
		if (controlPieces == null) {
			controlPieces = new EObjectContainmentEList<ControlPiece>(ControlPiece.class, this, ModelPackage.PROJECT__CONTROL_PIECES);
		}
		return controlPieces;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Session> getSessions() {
		if (sessions == null) {
			sessions = new EObjectContainmentEList<Session>(Session.class, this, ModelPackage.PROJECT__SESSIONS);
		}
		return sessions;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Trial> getTrials() {
		if (trials == null) {
			trials = new EObjectContainmentEList<Trial>(Trial.class, this, ModelPackage.PROJECT__TRIALS);
		}
		return trials;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Recipe> getRecipes() {
		if (recipes == null) {
			recipes = new EObjectContainmentEList<Recipe>(Recipe.class, this, ModelPackage.PROJECT__RECIPES);
		}
		return recipes;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Attachment> getAttachments() {
		if (attachments == null) {
			attachments = new EObjectContainmentEList<Attachment>(Attachment.class, this, ModelPackage.PROJECT__ATTACHMENTS);
		}
		return attachments;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Acknowledgement> getAcknowledgements() {
		if (acknowledgements == null) {
			acknowledgements = new EObjectContainmentEList<Acknowledgement>(Acknowledgement.class, this, ModelPackage.PROJECT__ACKNOWLEDGEMENTS);
		}
		return acknowledgements;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<StopOverride> getOverrides() {
		if (overrides == null) {
			overrides = new EObjectContainmentEList<StopOverride>(StopOverride.class, this, ModelPackage.PROJECT__OVERRIDES);
		}
		return overrides;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<PluginUse> getPlugins() {
		if (plugins == null) {
			plugins = new EObjectContainmentEList<PluginUse>(PluginUse.class, this, ModelPackage.PROJECT__PLUGINS);
		}
		return plugins;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Mould> getMoulds() {
		if (moulds == null) {
			moulds = new EObjectContainmentEList<Mould>(Mould.class, this, ModelPackage.PROJECT__MOULDS);
		}
		return moulds;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Premix> getPremixes() {
		if (premixes == null) {
			premixes = new EObjectContainmentEList<Premix>(Premix.class, this, ModelPackage.PROJECT__PREMIXES);
		}
		return premixes;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Batch> getBatches() {
		if (batches == null) {
			batches = new EObjectContainmentEList<Batch>(Batch.class, this, ModelPackage.PROJECT__BATCHES);
		}
		return batches;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<SavedSearch> getSearches() {
		if (searches == null) {
			searches = new EObjectContainmentEList<SavedSearch>(SavedSearch.class, this, ModelPackage.PROJECT__SEARCHES);
		}
		return searches;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getHourlyRate() {
		return hourlyRate;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHourlyRate(Double newHourlyRate) {
		Double oldHourlyRate = hourlyRate;
		hourlyRate = newHourlyRate;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PROJECT__HOURLY_RATE, oldHourlyRate, hourlyRate));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getCupPrice() {
		return cupPrice;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCupPrice(Double newCupPrice) {
		Double oldCupPrice = cupPrice;
		cupPrice = newCupPrice;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PROJECT__CUP_PRICE, oldCupPrice, cupPrice));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<GaugeStudy> getGaugeStudies() {
		if (gaugeStudies == null) {
			gaugeStudies = new EObjectContainmentEList<GaugeStudy>(GaugeStudy.class, this, ModelPackage.PROJECT__GAUGE_STUDIES);
		}
		return gaugeStudies;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<SpotMap> getSpotMaps() {
		if (spotMaps == null) {
			spotMaps = new EObjectContainmentEList<SpotMap>(SpotMap.class, this, ModelPackage.PROJECT__SPOT_MAPS);
		}
		return spotMaps;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<LawFit> getLawFits() {
		if (lawFits == null) {
			lawFits = new EObjectContainmentEList<LawFit>(LawFit.class, this, ModelPackage.PROJECT__LAW_FITS);
		}
		return lawFits;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Ranking> getRankings() {
		if (rankings == null) {
			rankings = new EObjectContainmentEList<Ranking>(Ranking.class, this, ModelPackage.PROJECT__RANKINGS);
		}
		return rankings;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<AgeingPlan> getAgeingPlans() {
		if (ageingPlans == null) {
			ageingPlans = new EObjectContainmentEList<AgeingPlan>(AgeingPlan.class, this, ModelPackage.PROJECT__AGEING_PLANS);
		}
		return ageingPlans;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case ModelPackage.PROJECT__NEEDS:
				return ((InternalEList<?>)getNeeds()).basicRemove(otherEnd, msgs);
			case ModelPackage.PROJECT__REFERENCE_PARTS:
				return ((InternalEList<?>)getReferenceParts()).basicRemove(otherEnd, msgs);
			case ModelPackage.PROJECT__TARGET_SHEETS:
				return ((InternalEList<?>)getTargetSheets()).basicRemove(otherEnd, msgs);
			case ModelPackage.PROJECT__GRADES:
				return ((InternalEList<?>)getGrades()).basicRemove(otherEnd, msgs);
			case ModelPackage.PROJECT__INSTRUMENTS:
				return ((InternalEList<?>)getInstruments()).basicRemove(otherEnd, msgs);
			case ModelPackage.PROJECT__CONTROL_PIECES:
				return ((InternalEList<?>)getControlPieces()).basicRemove(otherEnd, msgs);
			case ModelPackage.PROJECT__SESSIONS:
				return ((InternalEList<?>)getSessions()).basicRemove(otherEnd, msgs);
			case ModelPackage.PROJECT__TRIALS:
				return ((InternalEList<?>)getTrials()).basicRemove(otherEnd, msgs);
			case ModelPackage.PROJECT__RECIPES:
				return ((InternalEList<?>)getRecipes()).basicRemove(otherEnd, msgs);
			case ModelPackage.PROJECT__ATTACHMENTS:
				return ((InternalEList<?>)getAttachments()).basicRemove(otherEnd, msgs);
			case ModelPackage.PROJECT__ACKNOWLEDGEMENTS:
				return ((InternalEList<?>)getAcknowledgements()).basicRemove(otherEnd, msgs);
			case ModelPackage.PROJECT__OVERRIDES:
				return ((InternalEList<?>)getOverrides()).basicRemove(otherEnd, msgs);
			case ModelPackage.PROJECT__PLUGINS:
				return ((InternalEList<?>)getPlugins()).basicRemove(otherEnd, msgs);
			case ModelPackage.PROJECT__MOULDS:
				return ((InternalEList<?>)getMoulds()).basicRemove(otherEnd, msgs);
			case ModelPackage.PROJECT__PREMIXES:
				return ((InternalEList<?>)getPremixes()).basicRemove(otherEnd, msgs);
			case ModelPackage.PROJECT__BATCHES:
				return ((InternalEList<?>)getBatches()).basicRemove(otherEnd, msgs);
			case ModelPackage.PROJECT__SEARCHES:
				return ((InternalEList<?>)getSearches()).basicRemove(otherEnd, msgs);
			case ModelPackage.PROJECT__GAUGE_STUDIES:
				return ((InternalEList<?>)getGaugeStudies()).basicRemove(otherEnd, msgs);
			case ModelPackage.PROJECT__SPOT_MAPS:
				return ((InternalEList<?>)getSpotMaps()).basicRemove(otherEnd, msgs);
			case ModelPackage.PROJECT__LAW_FITS:
				return ((InternalEList<?>)getLawFits()).basicRemove(otherEnd, msgs);
			case ModelPackage.PROJECT__RANKINGS:
				return ((InternalEList<?>)getRankings()).basicRemove(otherEnd, msgs);
			case ModelPackage.PROJECT__AGEING_PLANS:
				return ((InternalEList<?>)getAgeingPlans()).basicRemove(otherEnd, msgs);
		}
		return super.eInverseRemove(otherEnd, featureID, msgs);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case ModelPackage.PROJECT__TITLE:
				return getTitle();
			case ModelPackage.PROJECT__JOB:
				return getJob();
			case ModelPackage.PROJECT__INVENTED:
				return isInvented();
			case ModelPackage.PROJECT__CREATED_AT:
				return getCreatedAt();
			case ModelPackage.PROJECT__WRITTEN_BY:
				return getWrittenBy();
			case ModelPackage.PROJECT__FORMAT_VERSION:
				return getFormatVersion();
			case ModelPackage.PROJECT__JOURNAL_SEQ:
				return getJournalSeq();
			case ModelPackage.PROJECT__NEEDS:
				return getNeeds();
			case ModelPackage.PROJECT__REFERENCE_PARTS:
				return getReferenceParts();
			case ModelPackage.PROJECT__TARGET_SHEETS:
				return getTargetSheets();
			case ModelPackage.PROJECT__GRADES:
				return getGrades();
			case ModelPackage.PROJECT__INSTRUMENTS:
				return getInstruments();
			case ModelPackage.PROJECT__CONTROL_PIECES:
				return getControlPieces();
			case ModelPackage.PROJECT__SESSIONS:
				return getSessions();
			case ModelPackage.PROJECT__TRIALS:
				return getTrials();
			case ModelPackage.PROJECT__RECIPES:
				return getRecipes();
			case ModelPackage.PROJECT__ATTACHMENTS:
				return getAttachments();
			case ModelPackage.PROJECT__ACKNOWLEDGEMENTS:
				return getAcknowledgements();
			case ModelPackage.PROJECT__OVERRIDES:
				return getOverrides();
			case ModelPackage.PROJECT__PLUGINS:
				return getPlugins();
			case ModelPackage.PROJECT__MOULDS:
				return getMoulds();
			case ModelPackage.PROJECT__PREMIXES:
				return getPremixes();
			case ModelPackage.PROJECT__BATCHES:
				return getBatches();
			case ModelPackage.PROJECT__SEARCHES:
				return getSearches();
			case ModelPackage.PROJECT__HOURLY_RATE:
				return getHourlyRate();
			case ModelPackage.PROJECT__CUP_PRICE:
				return getCupPrice();
			case ModelPackage.PROJECT__GAUGE_STUDIES:
				return getGaugeStudies();
			case ModelPackage.PROJECT__SPOT_MAPS:
				return getSpotMaps();
			case ModelPackage.PROJECT__LAW_FITS:
				return getLawFits();
			case ModelPackage.PROJECT__RANKINGS:
				return getRankings();
			case ModelPackage.PROJECT__AGEING_PLANS:
				return getAgeingPlans();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case ModelPackage.PROJECT__TITLE:
				setTitle((String)newValue);
				return;
			case ModelPackage.PROJECT__JOB:
				setJob((String)newValue);
				return;
			case ModelPackage.PROJECT__INVENTED:
				setInvented((Boolean)newValue);
				return;
			case ModelPackage.PROJECT__CREATED_AT:
				setCreatedAt((Instant)newValue);
				return;
			case ModelPackage.PROJECT__WRITTEN_BY:
				setWrittenBy((String)newValue);
				return;
			case ModelPackage.PROJECT__FORMAT_VERSION:
				setFormatVersion((Integer)newValue);
				return;
			case ModelPackage.PROJECT__JOURNAL_SEQ:
				setJournalSeq((Long)newValue);
				return;
			case ModelPackage.PROJECT__NEEDS:
				getNeeds().clear();
				getNeeds().addAll((Collection<? extends Need>)newValue);
				return;
			case ModelPackage.PROJECT__REFERENCE_PARTS:
				getReferenceParts().clear();
				getReferenceParts().addAll((Collection<? extends ReferencePart>)newValue);
				return;
			case ModelPackage.PROJECT__TARGET_SHEETS:
				getTargetSheets().clear();
				getTargetSheets().addAll((Collection<? extends TargetSheet>)newValue);
				return;
			case ModelPackage.PROJECT__GRADES:
				getGrades().clear();
				getGrades().addAll((Collection<? extends MaterialGrade>)newValue);
				return;
			case ModelPackage.PROJECT__INSTRUMENTS:
				getInstruments().clear();
				getInstruments().addAll((Collection<? extends Instrument>)newValue);
				return;
			case ModelPackage.PROJECT__CONTROL_PIECES:
				getControlPieces().clear();
				getControlPieces().addAll((Collection<? extends ControlPiece>)newValue);
				return;
			case ModelPackage.PROJECT__SESSIONS:
				getSessions().clear();
				getSessions().addAll((Collection<? extends Session>)newValue);
				return;
			case ModelPackage.PROJECT__TRIALS:
				getTrials().clear();
				getTrials().addAll((Collection<? extends Trial>)newValue);
				return;
			case ModelPackage.PROJECT__RECIPES:
				getRecipes().clear();
				getRecipes().addAll((Collection<? extends Recipe>)newValue);
				return;
			case ModelPackage.PROJECT__ATTACHMENTS:
				getAttachments().clear();
				getAttachments().addAll((Collection<? extends Attachment>)newValue);
				return;
			case ModelPackage.PROJECT__ACKNOWLEDGEMENTS:
				getAcknowledgements().clear();
				getAcknowledgements().addAll((Collection<? extends Acknowledgement>)newValue);
				return;
			case ModelPackage.PROJECT__OVERRIDES:
				getOverrides().clear();
				getOverrides().addAll((Collection<? extends StopOverride>)newValue);
				return;
			case ModelPackage.PROJECT__PLUGINS:
				getPlugins().clear();
				getPlugins().addAll((Collection<? extends PluginUse>)newValue);
				return;
			case ModelPackage.PROJECT__MOULDS:
				getMoulds().clear();
				getMoulds().addAll((Collection<? extends Mould>)newValue);
				return;
			case ModelPackage.PROJECT__PREMIXES:
				getPremixes().clear();
				getPremixes().addAll((Collection<? extends Premix>)newValue);
				return;
			case ModelPackage.PROJECT__BATCHES:
				getBatches().clear();
				getBatches().addAll((Collection<? extends Batch>)newValue);
				return;
			case ModelPackage.PROJECT__SEARCHES:
				getSearches().clear();
				getSearches().addAll((Collection<? extends SavedSearch>)newValue);
				return;
			case ModelPackage.PROJECT__HOURLY_RATE:
				setHourlyRate((Double)newValue);
				return;
			case ModelPackage.PROJECT__CUP_PRICE:
				setCupPrice((Double)newValue);
				return;
			case ModelPackage.PROJECT__GAUGE_STUDIES:
				getGaugeStudies().clear();
				getGaugeStudies().addAll((Collection<? extends GaugeStudy>)newValue);
				return;
			case ModelPackage.PROJECT__SPOT_MAPS:
				getSpotMaps().clear();
				getSpotMaps().addAll((Collection<? extends SpotMap>)newValue);
				return;
			case ModelPackage.PROJECT__LAW_FITS:
				getLawFits().clear();
				getLawFits().addAll((Collection<? extends LawFit>)newValue);
				return;
			case ModelPackage.PROJECT__RANKINGS:
				getRankings().clear();
				getRankings().addAll((Collection<? extends Ranking>)newValue);
				return;
			case ModelPackage.PROJECT__AGEING_PLANS:
				getAgeingPlans().clear();
				getAgeingPlans().addAll((Collection<? extends AgeingPlan>)newValue);
				return;
		}
		super.eSet(featureID, newValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eUnset(int featureID) {
		switch (featureID) {
			case ModelPackage.PROJECT__TITLE:
				setTitle(TITLE_EDEFAULT);
				return;
			case ModelPackage.PROJECT__JOB:
				setJob(JOB_EDEFAULT);
				return;
			case ModelPackage.PROJECT__INVENTED:
				setInvented(INVENTED_EDEFAULT);
				return;
			case ModelPackage.PROJECT__CREATED_AT:
				setCreatedAt(CREATED_AT_EDEFAULT);
				return;
			case ModelPackage.PROJECT__WRITTEN_BY:
				setWrittenBy(WRITTEN_BY_EDEFAULT);
				return;
			case ModelPackage.PROJECT__FORMAT_VERSION:
				setFormatVersion(FORMAT_VERSION_EDEFAULT);
				return;
			case ModelPackage.PROJECT__JOURNAL_SEQ:
				setJournalSeq(JOURNAL_SEQ_EDEFAULT);
				return;
			case ModelPackage.PROJECT__NEEDS:
				getNeeds().clear();
				return;
			case ModelPackage.PROJECT__REFERENCE_PARTS:
				getReferenceParts().clear();
				return;
			case ModelPackage.PROJECT__TARGET_SHEETS:
				getTargetSheets().clear();
				return;
			case ModelPackage.PROJECT__GRADES:
				getGrades().clear();
				return;
			case ModelPackage.PROJECT__INSTRUMENTS:
				getInstruments().clear();
				return;
			case ModelPackage.PROJECT__CONTROL_PIECES:
				getControlPieces().clear();
				return;
			case ModelPackage.PROJECT__SESSIONS:
				getSessions().clear();
				return;
			case ModelPackage.PROJECT__TRIALS:
				getTrials().clear();
				return;
			case ModelPackage.PROJECT__RECIPES:
				getRecipes().clear();
				return;
			case ModelPackage.PROJECT__ATTACHMENTS:
				getAttachments().clear();
				return;
			case ModelPackage.PROJECT__ACKNOWLEDGEMENTS:
				getAcknowledgements().clear();
				return;
			case ModelPackage.PROJECT__OVERRIDES:
				getOverrides().clear();
				return;
			case ModelPackage.PROJECT__PLUGINS:
				getPlugins().clear();
				return;
			case ModelPackage.PROJECT__MOULDS:
				getMoulds().clear();
				return;
			case ModelPackage.PROJECT__PREMIXES:
				getPremixes().clear();
				return;
			case ModelPackage.PROJECT__BATCHES:
				getBatches().clear();
				return;
			case ModelPackage.PROJECT__SEARCHES:
				getSearches().clear();
				return;
			case ModelPackage.PROJECT__HOURLY_RATE:
				setHourlyRate(HOURLY_RATE_EDEFAULT);
				return;
			case ModelPackage.PROJECT__CUP_PRICE:
				setCupPrice(CUP_PRICE_EDEFAULT);
				return;
			case ModelPackage.PROJECT__GAUGE_STUDIES:
				getGaugeStudies().clear();
				return;
			case ModelPackage.PROJECT__SPOT_MAPS:
				getSpotMaps().clear();
				return;
			case ModelPackage.PROJECT__LAW_FITS:
				getLawFits().clear();
				return;
			case ModelPackage.PROJECT__RANKINGS:
				getRankings().clear();
				return;
			case ModelPackage.PROJECT__AGEING_PLANS:
				getAgeingPlans().clear();
				return;
		}
		super.eUnset(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean eIsSet(int featureID) {
		switch (featureID) {
			case ModelPackage.PROJECT__TITLE:
				return TITLE_EDEFAULT == null ? title != null : !TITLE_EDEFAULT.equals(title);
			case ModelPackage.PROJECT__JOB:
				return JOB_EDEFAULT == null ? job != null : !JOB_EDEFAULT.equals(job);
			case ModelPackage.PROJECT__INVENTED:
				return invented != INVENTED_EDEFAULT;
			case ModelPackage.PROJECT__CREATED_AT:
				return CREATED_AT_EDEFAULT == null ? createdAt != null : !CREATED_AT_EDEFAULT.equals(createdAt);
			case ModelPackage.PROJECT__WRITTEN_BY:
				return WRITTEN_BY_EDEFAULT == null ? writtenBy != null : !WRITTEN_BY_EDEFAULT.equals(writtenBy);
			case ModelPackage.PROJECT__FORMAT_VERSION:
				return formatVersion != FORMAT_VERSION_EDEFAULT;
			case ModelPackage.PROJECT__JOURNAL_SEQ:
				return journalSeq != JOURNAL_SEQ_EDEFAULT;
			case ModelPackage.PROJECT__NEEDS:
				return needs != null && !needs.isEmpty();
			case ModelPackage.PROJECT__REFERENCE_PARTS:
				return referenceParts != null && !referenceParts.isEmpty();
			case ModelPackage.PROJECT__TARGET_SHEETS:
				return targetSheets != null && !targetSheets.isEmpty();
			case ModelPackage.PROJECT__GRADES:
				return grades != null && !grades.isEmpty();
			case ModelPackage.PROJECT__INSTRUMENTS:
				return instruments != null && !instruments.isEmpty();
			case ModelPackage.PROJECT__CONTROL_PIECES:
				return controlPieces != null && !controlPieces.isEmpty();
			case ModelPackage.PROJECT__SESSIONS:
				return sessions != null && !sessions.isEmpty();
			case ModelPackage.PROJECT__TRIALS:
				return trials != null && !trials.isEmpty();
			case ModelPackage.PROJECT__RECIPES:
				return recipes != null && !recipes.isEmpty();
			case ModelPackage.PROJECT__ATTACHMENTS:
				return attachments != null && !attachments.isEmpty();
			case ModelPackage.PROJECT__ACKNOWLEDGEMENTS:
				return acknowledgements != null && !acknowledgements.isEmpty();
			case ModelPackage.PROJECT__OVERRIDES:
				return overrides != null && !overrides.isEmpty();
			case ModelPackage.PROJECT__PLUGINS:
				return plugins != null && !plugins.isEmpty();
			case ModelPackage.PROJECT__MOULDS:
				return moulds != null && !moulds.isEmpty();
			case ModelPackage.PROJECT__PREMIXES:
				return premixes != null && !premixes.isEmpty();
			case ModelPackage.PROJECT__BATCHES:
				return batches != null && !batches.isEmpty();
			case ModelPackage.PROJECT__SEARCHES:
				return searches != null && !searches.isEmpty();
			case ModelPackage.PROJECT__HOURLY_RATE:
				return HOURLY_RATE_EDEFAULT == null ? hourlyRate != null : !HOURLY_RATE_EDEFAULT.equals(hourlyRate);
			case ModelPackage.PROJECT__CUP_PRICE:
				return CUP_PRICE_EDEFAULT == null ? cupPrice != null : !CUP_PRICE_EDEFAULT.equals(cupPrice);
			case ModelPackage.PROJECT__GAUGE_STUDIES:
				return gaugeStudies != null && !gaugeStudies.isEmpty();
			case ModelPackage.PROJECT__SPOT_MAPS:
				return spotMaps != null && !spotMaps.isEmpty();
			case ModelPackage.PROJECT__LAW_FITS:
				return lawFits != null && !lawFits.isEmpty();
			case ModelPackage.PROJECT__RANKINGS:
				return rankings != null && !rankings.isEmpty();
			case ModelPackage.PROJECT__AGEING_PLANS:
				return ageingPlans != null && !ageingPlans.isEmpty();
		}
		return super.eIsSet(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString() {
		if (eIsProxy()) return super.toString();

		StringBuilder result = new StringBuilder(super.toString());
		result.append(" (title: ");
		result.append(title);
		result.append(", job: ");
		result.append(job);
		result.append(", invented: ");
		result.append(invented);
		result.append(", createdAt: ");
		result.append(createdAt);
		result.append(", writtenBy: ");
		result.append(writtenBy);
		result.append(", formatVersion: ");
		result.append(formatVersion);
		result.append(", journalSeq: ");
		result.append(journalSeq);
		result.append(", hourlyRate: ");
		result.append(hourlyRate);
		result.append(", cupPrice: ");
		result.append(cupPrice);
		result.append(')');
		return result.toString();
	}

} //ProjectImpl
