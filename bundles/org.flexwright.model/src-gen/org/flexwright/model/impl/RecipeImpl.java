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
import org.flexwright.model.Attachment;
import org.flexwright.model.Instrument;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Mould;
import org.flexwright.model.Need;
import org.flexwright.model.Premix;
import org.flexwright.model.Recipe;
import org.flexwright.model.ReferencePart;
import org.flexwright.model.Session;
import org.flexwright.model.StopOverride;
import org.flexwright.model.TargetSheet;
import org.flexwright.model.Trial;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Recipe</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.impl.RecipeImpl#getCode <em>Code</em>}</li>
 *   <li>{@link org.flexwright.model.impl.RecipeImpl#getVersion <em>Version</em>}</li>
 *   <li>{@link org.flexwright.model.impl.RecipeImpl#getFrozenAt <em>Frozen At</em>}</li>
 *   <li>{@link org.flexwright.model.impl.RecipeImpl#getFrozenBy <em>Frozen By</em>}</li>
 *   <li>{@link org.flexwright.model.impl.RecipeImpl#getLimits <em>Limits</em>}</li>
 *   <li>{@link org.flexwright.model.impl.RecipeImpl#getFrom <em>From</em>}</li>
 *   <li>{@link org.flexwright.model.impl.RecipeImpl#getPlan <em>Plan</em>}</li>
 *   <li>{@link org.flexwright.model.impl.RecipeImpl#getMaterials <em>Materials</em>}</li>
 *   <li>{@link org.flexwright.model.impl.RecipeImpl#getAsMade <em>As Made</em>}</li>
 *   <li>{@link org.flexwright.model.impl.RecipeImpl#getTargets <em>Targets</em>}</li>
 *   <li>{@link org.flexwright.model.impl.RecipeImpl#getChanges <em>Changes</em>}</li>
 *   <li>{@link org.flexwright.model.impl.RecipeImpl#getSessions <em>Sessions</em>}</li>
 *   <li>{@link org.flexwright.model.impl.RecipeImpl#getInstruments <em>Instruments</em>}</li>
 *   <li>{@link org.flexwright.model.impl.RecipeImpl#getPremixes <em>Premixes</em>}</li>
 *   <li>{@link org.flexwright.model.impl.RecipeImpl#getAttachments <em>Attachments</em>}</li>
 *   <li>{@link org.flexwright.model.impl.RecipeImpl#getMould <em>Mould</em>}</li>
 *   <li>{@link org.flexwright.model.impl.RecipeImpl#getTitle <em>Title</em>}</li>
 *   <li>{@link org.flexwright.model.impl.RecipeImpl#getJob <em>Job</em>}</li>
 *   <li>{@link org.flexwright.model.impl.RecipeImpl#isInvented <em>Invented</em>}</li>
 *   <li>{@link org.flexwright.model.impl.RecipeImpl#getNeeds <em>Needs</em>}</li>
 *   <li>{@link org.flexwright.model.impl.RecipeImpl#getReferences <em>References</em>}</li>
 *   <li>{@link org.flexwright.model.impl.RecipeImpl#getOverrides <em>Overrides</em>}</li>
 *   <li>{@link org.flexwright.model.impl.RecipeImpl#getAcknowledgements <em>Acknowledgements</em>}</li>
 * </ul>
 *
 * @generated
 */
public class RecipeImpl extends EntryImpl implements Recipe {
	/**
	 * The default value of the '{@link #getCode() <em>Code</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCode()
	 * @generated
	 * @ordered
	 */
	protected static final String CODE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCode() <em>Code</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCode()
	 * @generated
	 * @ordered
	 */
	protected String code = CODE_EDEFAULT;

	/**
	 * The default value of the '{@link #getVersion() <em>Version</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVersion()
	 * @generated
	 * @ordered
	 */
	protected static final int VERSION_EDEFAULT = 0;

	/**
	 * The cached value of the '{@link #getVersion() <em>Version</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVersion()
	 * @generated
	 * @ordered
	 */
	protected int version = VERSION_EDEFAULT;

	/**
	 * The default value of the '{@link #getFrozenAt() <em>Frozen At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFrozenAt()
	 * @generated
	 * @ordered
	 */
	protected static final Instant FROZEN_AT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFrozenAt() <em>Frozen At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFrozenAt()
	 * @generated
	 * @ordered
	 */
	protected Instant frozenAt = FROZEN_AT_EDEFAULT;

	/**
	 * The default value of the '{@link #getFrozenBy() <em>Frozen By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFrozenBy()
	 * @generated
	 * @ordered
	 */
	protected static final String FROZEN_BY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFrozenBy() <em>Frozen By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFrozenBy()
	 * @generated
	 * @ordered
	 */
	protected String frozenBy = FROZEN_BY_EDEFAULT;

	/**
	 * The default value of the '{@link #getLimits() <em>Limits</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLimits()
	 * @generated
	 * @ordered
	 */
	protected static final String LIMITS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLimits() <em>Limits</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLimits()
	 * @generated
	 * @ordered
	 */
	protected String limits = LIMITS_EDEFAULT;

	/**
	 * The cached value of the '{@link #getFrom() <em>From</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFrom()
	 * @generated
	 * @ordered
	 */
	protected Trial from;

	/**
	 * The cached value of the '{@link #getPlan() <em>Plan</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlan()
	 * @generated
	 * @ordered
	 */
	protected Trial plan;

	/**
	 * The cached value of the '{@link #getMaterials() <em>Materials</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaterials()
	 * @generated
	 * @ordered
	 */
	protected EList<MaterialGrade> materials;

	/**
	 * The cached value of the '{@link #getAsMade() <em>As Made</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAsMade()
	 * @generated
	 * @ordered
	 */
	protected Trial asMade;

	/**
	 * The cached value of the '{@link #getTargets() <em>Targets</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTargets()
	 * @generated
	 * @ordered
	 */
	protected TargetSheet targets;

	/**
	 * The default value of the '{@link #getChanges() <em>Changes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getChanges()
	 * @generated
	 * @ordered
	 */
	protected static final String CHANGES_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getChanges() <em>Changes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getChanges()
	 * @generated
	 * @ordered
	 */
	protected String changes = CHANGES_EDEFAULT;

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
	 * The cached value of the '{@link #getInstruments() <em>Instruments</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInstruments()
	 * @generated
	 * @ordered
	 */
	protected EList<Instrument> instruments;

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
	 * The cached value of the '{@link #getAttachments() <em>Attachments</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAttachments()
	 * @generated
	 * @ordered
	 */
	protected EList<Attachment> attachments;

	/**
	 * The cached value of the '{@link #getMould() <em>Mould</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMould()
	 * @generated
	 * @ordered
	 */
	protected Mould mould;

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
	 * The cached value of the '{@link #getNeeds() <em>Needs</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNeeds()
	 * @generated
	 * @ordered
	 */
	protected EList<Need> needs;

	/**
	 * The cached value of the '{@link #getReferences() <em>References</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReferences()
	 * @generated
	 * @ordered
	 */
	protected EList<ReferencePart> references;

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
	 * The cached value of the '{@link #getAcknowledgements() <em>Acknowledgements</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAcknowledgements()
	 * @generated
	 * @ordered
	 */
	protected EList<Acknowledgement> acknowledgements;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected RecipeImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.RECIPE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getCode() {
		return code;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCode(String newCode) {
		String oldCode = code;
		code = newCode;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.RECIPE__CODE, oldCode, code));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getVersion() {
		return version;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setVersion(int newVersion) {
		int oldVersion = version;
		version = newVersion;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.RECIPE__VERSION, oldVersion, version));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Instant getFrozenAt() {
		return frozenAt;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFrozenAt(Instant newFrozenAt) {
		Instant oldFrozenAt = frozenAt;
		frozenAt = newFrozenAt;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.RECIPE__FROZEN_AT, oldFrozenAt, frozenAt));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getFrozenBy() {
		return frozenBy;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFrozenBy(String newFrozenBy) {
		String oldFrozenBy = frozenBy;
		frozenBy = newFrozenBy;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.RECIPE__FROZEN_BY, oldFrozenBy, frozenBy));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getLimits() {
		return limits;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLimits(String newLimits) {
		String oldLimits = limits;
		limits = newLimits;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.RECIPE__LIMITS, oldLimits, limits));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Trial getFrom() {
		if (from != null && from.eIsProxy()) {
			InternalEObject oldFrom = (InternalEObject)from;
			from = (Trial)eResolveProxy(oldFrom);
			if (from != oldFrom) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.RECIPE__FROM, oldFrom, from));
			}
		}
		return from;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Trial basicGetFrom() {
		return from;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFrom(Trial newFrom) {
		Trial oldFrom = from;
		from = newFrom;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.RECIPE__FROM, oldFrom, from));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Trial getPlan() {
		return plan;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetPlan(Trial newPlan, NotificationChain msgs) {
		Trial oldPlan = plan;
		plan = newPlan;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, ModelPackage.RECIPE__PLAN, oldPlan, newPlan);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPlan(Trial newPlan) {
		if (newPlan != plan) {
			NotificationChain msgs = null;
			if (plan != null)
				msgs = ((InternalEObject)plan).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - ModelPackage.RECIPE__PLAN, null, msgs);
			if (newPlan != null)
				msgs = ((InternalEObject)newPlan).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - ModelPackage.RECIPE__PLAN, null, msgs);
			msgs = basicSetPlan(newPlan, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.RECIPE__PLAN, newPlan, newPlan));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<MaterialGrade> getMaterials() {
		if (materials == null) {
			materials = new EObjectContainmentEList<MaterialGrade>(MaterialGrade.class, this, ModelPackage.RECIPE__MATERIALS);
		}
		return materials;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Trial getAsMade() {
		return asMade;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetAsMade(Trial newAsMade, NotificationChain msgs) {
		Trial oldAsMade = asMade;
		asMade = newAsMade;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, ModelPackage.RECIPE__AS_MADE, oldAsMade, newAsMade);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAsMade(Trial newAsMade) {
		if (newAsMade != asMade) {
			NotificationChain msgs = null;
			if (asMade != null)
				msgs = ((InternalEObject)asMade).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - ModelPackage.RECIPE__AS_MADE, null, msgs);
			if (newAsMade != null)
				msgs = ((InternalEObject)newAsMade).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - ModelPackage.RECIPE__AS_MADE, null, msgs);
			msgs = basicSetAsMade(newAsMade, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.RECIPE__AS_MADE, newAsMade, newAsMade));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TargetSheet getTargets() {
		if (targets != null && targets.eIsProxy()) {
			InternalEObject oldTargets = (InternalEObject)targets;
			targets = (TargetSheet)eResolveProxy(oldTargets);
			if (targets != oldTargets) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.RECIPE__TARGETS, oldTargets, targets));
			}
		}
		return targets;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public TargetSheet basicGetTargets() {
		return targets;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTargets(TargetSheet newTargets) {
		TargetSheet oldTargets = targets;
		targets = newTargets;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.RECIPE__TARGETS, oldTargets, targets));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getChanges() {
		return changes;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setChanges(String newChanges) {
		String oldChanges = changes;
		changes = newChanges;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.RECIPE__CHANGES, oldChanges, changes));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Session> getSessions() {
		if (sessions == null) {
			sessions = new EObjectContainmentEList<Session>(Session.class, this, ModelPackage.RECIPE__SESSIONS);
		}
		return sessions;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Instrument> getInstruments() {
		if (instruments == null) {
			instruments = new EObjectContainmentEList<Instrument>(Instrument.class, this, ModelPackage.RECIPE__INSTRUMENTS);
		}
		return instruments;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Premix> getPremixes() {
		if (premixes == null) {
			premixes = new EObjectContainmentEList<Premix>(Premix.class, this, ModelPackage.RECIPE__PREMIXES);
		}
		return premixes;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Attachment> getAttachments() {
		if (attachments == null) {
			attachments = new EObjectContainmentEList<Attachment>(Attachment.class, this, ModelPackage.RECIPE__ATTACHMENTS);
		}
		return attachments;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Mould getMould() {
		return mould;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetMould(Mould newMould, NotificationChain msgs) {
		Mould oldMould = mould;
		mould = newMould;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, ModelPackage.RECIPE__MOULD, oldMould, newMould);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMould(Mould newMould) {
		if (newMould != mould) {
			NotificationChain msgs = null;
			if (mould != null)
				msgs = ((InternalEObject)mould).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - ModelPackage.RECIPE__MOULD, null, msgs);
			if (newMould != null)
				msgs = ((InternalEObject)newMould).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - ModelPackage.RECIPE__MOULD, null, msgs);
			msgs = basicSetMould(newMould, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.RECIPE__MOULD, newMould, newMould));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.RECIPE__TITLE, oldTitle, title));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.RECIPE__JOB, oldJob, job));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.RECIPE__INVENTED, oldInvented, invented));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Need> getNeeds() {
		if (needs == null) {
			needs = new EObjectContainmentEList<Need>(Need.class, this, ModelPackage.RECIPE__NEEDS);
		}
		return needs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<ReferencePart> getReferences() {
		if (references == null) {
			references = new EObjectContainmentEList<ReferencePart>(ReferencePart.class, this, ModelPackage.RECIPE__REFERENCES);
		}
		return references;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<StopOverride> getOverrides() {
		if (overrides == null) {
			overrides = new EObjectContainmentEList<StopOverride>(StopOverride.class, this, ModelPackage.RECIPE__OVERRIDES);
		}
		return overrides;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Acknowledgement> getAcknowledgements() {
		if (acknowledgements == null) {
			acknowledgements = new EObjectContainmentEList<Acknowledgement>(Acknowledgement.class, this, ModelPackage.RECIPE__ACKNOWLEDGEMENTS);
		}
		return acknowledgements;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case ModelPackage.RECIPE__PLAN:
				return basicSetPlan(null, msgs);
			case ModelPackage.RECIPE__MATERIALS:
				return ((InternalEList<?>)getMaterials()).basicRemove(otherEnd, msgs);
			case ModelPackage.RECIPE__AS_MADE:
				return basicSetAsMade(null, msgs);
			case ModelPackage.RECIPE__SESSIONS:
				return ((InternalEList<?>)getSessions()).basicRemove(otherEnd, msgs);
			case ModelPackage.RECIPE__INSTRUMENTS:
				return ((InternalEList<?>)getInstruments()).basicRemove(otherEnd, msgs);
			case ModelPackage.RECIPE__PREMIXES:
				return ((InternalEList<?>)getPremixes()).basicRemove(otherEnd, msgs);
			case ModelPackage.RECIPE__ATTACHMENTS:
				return ((InternalEList<?>)getAttachments()).basicRemove(otherEnd, msgs);
			case ModelPackage.RECIPE__MOULD:
				return basicSetMould(null, msgs);
			case ModelPackage.RECIPE__NEEDS:
				return ((InternalEList<?>)getNeeds()).basicRemove(otherEnd, msgs);
			case ModelPackage.RECIPE__REFERENCES:
				return ((InternalEList<?>)getReferences()).basicRemove(otherEnd, msgs);
			case ModelPackage.RECIPE__OVERRIDES:
				return ((InternalEList<?>)getOverrides()).basicRemove(otherEnd, msgs);
			case ModelPackage.RECIPE__ACKNOWLEDGEMENTS:
				return ((InternalEList<?>)getAcknowledgements()).basicRemove(otherEnd, msgs);
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
			case ModelPackage.RECIPE__CODE:
				return getCode();
			case ModelPackage.RECIPE__VERSION:
				return getVersion();
			case ModelPackage.RECIPE__FROZEN_AT:
				return getFrozenAt();
			case ModelPackage.RECIPE__FROZEN_BY:
				return getFrozenBy();
			case ModelPackage.RECIPE__LIMITS:
				return getLimits();
			case ModelPackage.RECIPE__FROM:
				if (resolve) return getFrom();
				return basicGetFrom();
			case ModelPackage.RECIPE__PLAN:
				return getPlan();
			case ModelPackage.RECIPE__MATERIALS:
				return getMaterials();
			case ModelPackage.RECIPE__AS_MADE:
				return getAsMade();
			case ModelPackage.RECIPE__TARGETS:
				if (resolve) return getTargets();
				return basicGetTargets();
			case ModelPackage.RECIPE__CHANGES:
				return getChanges();
			case ModelPackage.RECIPE__SESSIONS:
				return getSessions();
			case ModelPackage.RECIPE__INSTRUMENTS:
				return getInstruments();
			case ModelPackage.RECIPE__PREMIXES:
				return getPremixes();
			case ModelPackage.RECIPE__ATTACHMENTS:
				return getAttachments();
			case ModelPackage.RECIPE__MOULD:
				return getMould();
			case ModelPackage.RECIPE__TITLE:
				return getTitle();
			case ModelPackage.RECIPE__JOB:
				return getJob();
			case ModelPackage.RECIPE__INVENTED:
				return isInvented();
			case ModelPackage.RECIPE__NEEDS:
				return getNeeds();
			case ModelPackage.RECIPE__REFERENCES:
				return getReferences();
			case ModelPackage.RECIPE__OVERRIDES:
				return getOverrides();
			case ModelPackage.RECIPE__ACKNOWLEDGEMENTS:
				return getAcknowledgements();
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
			case ModelPackage.RECIPE__CODE:
				setCode((String)newValue);
				return;
			case ModelPackage.RECIPE__VERSION:
				setVersion((Integer)newValue);
				return;
			case ModelPackage.RECIPE__FROZEN_AT:
				setFrozenAt((Instant)newValue);
				return;
			case ModelPackage.RECIPE__FROZEN_BY:
				setFrozenBy((String)newValue);
				return;
			case ModelPackage.RECIPE__LIMITS:
				setLimits((String)newValue);
				return;
			case ModelPackage.RECIPE__FROM:
				setFrom((Trial)newValue);
				return;
			case ModelPackage.RECIPE__PLAN:
				setPlan((Trial)newValue);
				return;
			case ModelPackage.RECIPE__MATERIALS:
				getMaterials().clear();
				getMaterials().addAll((Collection<? extends MaterialGrade>)newValue);
				return;
			case ModelPackage.RECIPE__AS_MADE:
				setAsMade((Trial)newValue);
				return;
			case ModelPackage.RECIPE__TARGETS:
				setTargets((TargetSheet)newValue);
				return;
			case ModelPackage.RECIPE__CHANGES:
				setChanges((String)newValue);
				return;
			case ModelPackage.RECIPE__SESSIONS:
				getSessions().clear();
				getSessions().addAll((Collection<? extends Session>)newValue);
				return;
			case ModelPackage.RECIPE__INSTRUMENTS:
				getInstruments().clear();
				getInstruments().addAll((Collection<? extends Instrument>)newValue);
				return;
			case ModelPackage.RECIPE__PREMIXES:
				getPremixes().clear();
				getPremixes().addAll((Collection<? extends Premix>)newValue);
				return;
			case ModelPackage.RECIPE__ATTACHMENTS:
				getAttachments().clear();
				getAttachments().addAll((Collection<? extends Attachment>)newValue);
				return;
			case ModelPackage.RECIPE__MOULD:
				setMould((Mould)newValue);
				return;
			case ModelPackage.RECIPE__TITLE:
				setTitle((String)newValue);
				return;
			case ModelPackage.RECIPE__JOB:
				setJob((String)newValue);
				return;
			case ModelPackage.RECIPE__INVENTED:
				setInvented((Boolean)newValue);
				return;
			case ModelPackage.RECIPE__NEEDS:
				getNeeds().clear();
				getNeeds().addAll((Collection<? extends Need>)newValue);
				return;
			case ModelPackage.RECIPE__REFERENCES:
				getReferences().clear();
				getReferences().addAll((Collection<? extends ReferencePart>)newValue);
				return;
			case ModelPackage.RECIPE__OVERRIDES:
				getOverrides().clear();
				getOverrides().addAll((Collection<? extends StopOverride>)newValue);
				return;
			case ModelPackage.RECIPE__ACKNOWLEDGEMENTS:
				getAcknowledgements().clear();
				getAcknowledgements().addAll((Collection<? extends Acknowledgement>)newValue);
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
			case ModelPackage.RECIPE__CODE:
				setCode(CODE_EDEFAULT);
				return;
			case ModelPackage.RECIPE__VERSION:
				setVersion(VERSION_EDEFAULT);
				return;
			case ModelPackage.RECIPE__FROZEN_AT:
				setFrozenAt(FROZEN_AT_EDEFAULT);
				return;
			case ModelPackage.RECIPE__FROZEN_BY:
				setFrozenBy(FROZEN_BY_EDEFAULT);
				return;
			case ModelPackage.RECIPE__LIMITS:
				setLimits(LIMITS_EDEFAULT);
				return;
			case ModelPackage.RECIPE__FROM:
				setFrom((Trial)null);
				return;
			case ModelPackage.RECIPE__PLAN:
				setPlan((Trial)null);
				return;
			case ModelPackage.RECIPE__MATERIALS:
				getMaterials().clear();
				return;
			case ModelPackage.RECIPE__AS_MADE:
				setAsMade((Trial)null);
				return;
			case ModelPackage.RECIPE__TARGETS:
				setTargets((TargetSheet)null);
				return;
			case ModelPackage.RECIPE__CHANGES:
				setChanges(CHANGES_EDEFAULT);
				return;
			case ModelPackage.RECIPE__SESSIONS:
				getSessions().clear();
				return;
			case ModelPackage.RECIPE__INSTRUMENTS:
				getInstruments().clear();
				return;
			case ModelPackage.RECIPE__PREMIXES:
				getPremixes().clear();
				return;
			case ModelPackage.RECIPE__ATTACHMENTS:
				getAttachments().clear();
				return;
			case ModelPackage.RECIPE__MOULD:
				setMould((Mould)null);
				return;
			case ModelPackage.RECIPE__TITLE:
				setTitle(TITLE_EDEFAULT);
				return;
			case ModelPackage.RECIPE__JOB:
				setJob(JOB_EDEFAULT);
				return;
			case ModelPackage.RECIPE__INVENTED:
				setInvented(INVENTED_EDEFAULT);
				return;
			case ModelPackage.RECIPE__NEEDS:
				getNeeds().clear();
				return;
			case ModelPackage.RECIPE__REFERENCES:
				getReferences().clear();
				return;
			case ModelPackage.RECIPE__OVERRIDES:
				getOverrides().clear();
				return;
			case ModelPackage.RECIPE__ACKNOWLEDGEMENTS:
				getAcknowledgements().clear();
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
			case ModelPackage.RECIPE__CODE:
				return CODE_EDEFAULT == null ? code != null : !CODE_EDEFAULT.equals(code);
			case ModelPackage.RECIPE__VERSION:
				return version != VERSION_EDEFAULT;
			case ModelPackage.RECIPE__FROZEN_AT:
				return FROZEN_AT_EDEFAULT == null ? frozenAt != null : !FROZEN_AT_EDEFAULT.equals(frozenAt);
			case ModelPackage.RECIPE__FROZEN_BY:
				return FROZEN_BY_EDEFAULT == null ? frozenBy != null : !FROZEN_BY_EDEFAULT.equals(frozenBy);
			case ModelPackage.RECIPE__LIMITS:
				return LIMITS_EDEFAULT == null ? limits != null : !LIMITS_EDEFAULT.equals(limits);
			case ModelPackage.RECIPE__FROM:
				return from != null;
			case ModelPackage.RECIPE__PLAN:
				return plan != null;
			case ModelPackage.RECIPE__MATERIALS:
				return materials != null && !materials.isEmpty();
			case ModelPackage.RECIPE__AS_MADE:
				return asMade != null;
			case ModelPackage.RECIPE__TARGETS:
				return targets != null;
			case ModelPackage.RECIPE__CHANGES:
				return CHANGES_EDEFAULT == null ? changes != null : !CHANGES_EDEFAULT.equals(changes);
			case ModelPackage.RECIPE__SESSIONS:
				return sessions != null && !sessions.isEmpty();
			case ModelPackage.RECIPE__INSTRUMENTS:
				return instruments != null && !instruments.isEmpty();
			case ModelPackage.RECIPE__PREMIXES:
				return premixes != null && !premixes.isEmpty();
			case ModelPackage.RECIPE__ATTACHMENTS:
				return attachments != null && !attachments.isEmpty();
			case ModelPackage.RECIPE__MOULD:
				return mould != null;
			case ModelPackage.RECIPE__TITLE:
				return TITLE_EDEFAULT == null ? title != null : !TITLE_EDEFAULT.equals(title);
			case ModelPackage.RECIPE__JOB:
				return JOB_EDEFAULT == null ? job != null : !JOB_EDEFAULT.equals(job);
			case ModelPackage.RECIPE__INVENTED:
				return invented != INVENTED_EDEFAULT;
			case ModelPackage.RECIPE__NEEDS:
				return needs != null && !needs.isEmpty();
			case ModelPackage.RECIPE__REFERENCES:
				return references != null && !references.isEmpty();
			case ModelPackage.RECIPE__OVERRIDES:
				return overrides != null && !overrides.isEmpty();
			case ModelPackage.RECIPE__ACKNOWLEDGEMENTS:
				return acknowledgements != null && !acknowledgements.isEmpty();
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
		result.append(" (code: ");
		result.append(code);
		result.append(", version: ");
		result.append(version);
		result.append(", frozenAt: ");
		result.append(frozenAt);
		result.append(", frozenBy: ");
		result.append(frozenBy);
		result.append(", limits: ");
		result.append(limits);
		result.append(", changes: ");
		result.append(changes);
		result.append(", title: ");
		result.append(title);
		result.append(", job: ");
		result.append(job);
		result.append(", invented: ");
		result.append(invented);
		result.append(')');
		return result.toString();
	}

} //RecipeImpl
