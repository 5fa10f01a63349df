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
import org.eclipse.emf.ecore.util.EObjectResolvingEList;
import org.eclipse.emf.ecore.util.InternalEList;

import org.flexwright.model.Attachment;
import org.flexwright.model.BenchNote;
import org.flexwright.model.CalculationRun;
import org.flexwright.model.Decision;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Mould;
import org.flexwright.model.Part;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.flexwright.model.TrialState;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Trial</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.impl.TrialImpl#getCode <em>Code</em>}</li>
 *   <li>{@link org.flexwright.model.impl.TrialImpl#getTitle <em>Title</em>}</li>
 *   <li>{@link org.flexwright.model.impl.TrialImpl#getIdea <em>Idea</em>}</li>
 *   <li>{@link org.flexwright.model.impl.TrialImpl#getRoute <em>Route</em>}</li>
 *   <li>{@link org.flexwright.model.impl.TrialImpl#getBasedOn <em>Based On</em>}</li>
 *   <li>{@link org.flexwright.model.impl.TrialImpl#getState <em>State</em>}</li>
 *   <li>{@link org.flexwright.model.impl.TrialImpl#getStateReason <em>State Reason</em>}</li>
 *   <li>{@link org.flexwright.model.impl.TrialImpl#getCreatedAt <em>Created At</em>}</li>
 *   <li>{@link org.flexwright.model.impl.TrialImpl#getMadeAt <em>Made At</em>}</li>
 *   <li>{@link org.flexwright.model.impl.TrialImpl#getConclusion <em>Conclusion</em>}</li>
 *   <li>{@link org.flexwright.model.impl.TrialImpl#getCost <em>Cost</em>}</li>
 *   <li>{@link org.flexwright.model.impl.TrialImpl#getHours <em>Hours</em>}</li>
 *   <li>{@link org.flexwright.model.impl.TrialImpl#getSteps <em>Steps</em>}</li>
 *   <li>{@link org.flexwright.model.impl.TrialImpl#getParts <em>Parts</em>}</li>
 *   <li>{@link org.flexwright.model.impl.TrialImpl#getCalculations <em>Calculations</em>}</li>
 *   <li>{@link org.flexwright.model.impl.TrialImpl#getAttachments <em>Attachments</em>}</li>
 *   <li>{@link org.flexwright.model.impl.TrialImpl#getContactAt <em>Contact At</em>}</li>
 *   <li>{@link org.flexwright.model.impl.TrialImpl#getCupLabel <em>Cup Label</em>}</li>
 *   <li>{@link org.flexwright.model.impl.TrialImpl#getMould <em>Mould</em>}</li>
 *   <li>{@link org.flexwright.model.impl.TrialImpl#getNotes <em>Notes</em>}</li>
 *   <li>{@link org.flexwright.model.impl.TrialImpl#getDecisions <em>Decisions</em>}</li>
 *   <li>{@link org.flexwright.model.impl.TrialImpl#getPartsWanted <em>Parts Wanted</em>}</li>
 * </ul>
 *
 * @generated
 */
public class TrialImpl extends EntryImpl implements Trial {
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
	 * The default value of the '{@link #getIdea() <em>Idea</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getIdea()
	 * @generated
	 * @ordered
	 */
	protected static final String IDEA_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getIdea() <em>Idea</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getIdea()
	 * @generated
	 * @ordered
	 */
	protected String idea = IDEA_EDEFAULT;

	/**
	 * The default value of the '{@link #getRoute() <em>Route</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRoute()
	 * @generated
	 * @ordered
	 */
	protected static final String ROUTE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRoute() <em>Route</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRoute()
	 * @generated
	 * @ordered
	 */
	protected String route = ROUTE_EDEFAULT;

	/**
	 * The cached value of the '{@link #getBasedOn() <em>Based On</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBasedOn()
	 * @generated
	 * @ordered
	 */
	protected Trial basedOn;

	/**
	 * The default value of the '{@link #getState() <em>State</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getState()
	 * @generated
	 * @ordered
	 */
	protected static final TrialState STATE_EDEFAULT = TrialState.PLANNED;

	/**
	 * The cached value of the '{@link #getState() <em>State</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getState()
	 * @generated
	 * @ordered
	 */
	protected TrialState state = STATE_EDEFAULT;

	/**
	 * The default value of the '{@link #getStateReason() <em>State Reason</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStateReason()
	 * @generated
	 * @ordered
	 */
	protected static final String STATE_REASON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getStateReason() <em>State Reason</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStateReason()
	 * @generated
	 * @ordered
	 */
	protected String stateReason = STATE_REASON_EDEFAULT;

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
	 * The default value of the '{@link #getMadeAt() <em>Made At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMadeAt()
	 * @generated
	 * @ordered
	 */
	protected static final Instant MADE_AT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMadeAt() <em>Made At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMadeAt()
	 * @generated
	 * @ordered
	 */
	protected Instant madeAt = MADE_AT_EDEFAULT;

	/**
	 * The default value of the '{@link #getConclusion() <em>Conclusion</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getConclusion()
	 * @generated
	 * @ordered
	 */
	protected static final String CONCLUSION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getConclusion() <em>Conclusion</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getConclusion()
	 * @generated
	 * @ordered
	 */
	protected String conclusion = CONCLUSION_EDEFAULT;

	/**
	 * The default value of the '{@link #getCost() <em>Cost</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCost()
	 * @generated
	 * @ordered
	 */
	protected static final Double COST_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCost() <em>Cost</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCost()
	 * @generated
	 * @ordered
	 */
	protected Double cost = COST_EDEFAULT;

	/**
	 * The default value of the '{@link #getHours() <em>Hours</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHours()
	 * @generated
	 * @ordered
	 */
	protected static final Double HOURS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getHours() <em>Hours</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHours()
	 * @generated
	 * @ordered
	 */
	protected Double hours = HOURS_EDEFAULT;

	/**
	 * The cached value of the '{@link #getSteps() <em>Steps</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSteps()
	 * @generated
	 * @ordered
	 */
	protected EList<Step> steps;

	/**
	 * The cached value of the '{@link #getParts() <em>Parts</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getParts()
	 * @generated
	 * @ordered
	 */
	protected EList<Part> parts;

	/**
	 * The cached value of the '{@link #getCalculations() <em>Calculations</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCalculations()
	 * @generated
	 * @ordered
	 */
	protected EList<CalculationRun> calculations;

	/**
	 * The cached value of the '{@link #getAttachments() <em>Attachments</em>}' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAttachments()
	 * @generated
	 * @ordered
	 */
	protected EList<Attachment> attachments;

	/**
	 * The default value of the '{@link #getContactAt() <em>Contact At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getContactAt()
	 * @generated
	 * @ordered
	 */
	protected static final Instant CONTACT_AT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getContactAt() <em>Contact At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getContactAt()
	 * @generated
	 * @ordered
	 */
	protected Instant contactAt = CONTACT_AT_EDEFAULT;

	/**
	 * The default value of the '{@link #getCupLabel() <em>Cup Label</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCupLabel()
	 * @generated
	 * @ordered
	 */
	protected static final String CUP_LABEL_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCupLabel() <em>Cup Label</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCupLabel()
	 * @generated
	 * @ordered
	 */
	protected String cupLabel = CUP_LABEL_EDEFAULT;

	/**
	 * The cached value of the '{@link #getMould() <em>Mould</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMould()
	 * @generated
	 * @ordered
	 */
	protected Mould mould;

	/**
	 * The cached value of the '{@link #getNotes() <em>Notes</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNotes()
	 * @generated
	 * @ordered
	 */
	protected EList<BenchNote> notes;

	/**
	 * The cached value of the '{@link #getDecisions() <em>Decisions</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDecisions()
	 * @generated
	 * @ordered
	 */
	protected EList<Decision> decisions;

	/**
	 * The default value of the '{@link #getPartsWanted() <em>Parts Wanted</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPartsWanted()
	 * @generated
	 * @ordered
	 */
	protected static final Integer PARTS_WANTED_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPartsWanted() <em>Parts Wanted</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPartsWanted()
	 * @generated
	 * @ordered
	 */
	protected Integer partsWanted = PARTS_WANTED_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected TrialImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.TRIAL;
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.TRIAL__CODE, oldCode, code));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.TRIAL__TITLE, oldTitle, title));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getIdea() {
		return idea;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setIdea(String newIdea) {
		String oldIdea = idea;
		idea = newIdea;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.TRIAL__IDEA, oldIdea, idea));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getRoute() {
		return route;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRoute(String newRoute) {
		String oldRoute = route;
		route = newRoute;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.TRIAL__ROUTE, oldRoute, route));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Trial getBasedOn() {
		if (basedOn != null && basedOn.eIsProxy()) {
			InternalEObject oldBasedOn = (InternalEObject)basedOn;
			basedOn = (Trial)eResolveProxy(oldBasedOn);
			if (basedOn != oldBasedOn) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.TRIAL__BASED_ON, oldBasedOn, basedOn));
			}
		}
		return basedOn;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Trial basicGetBasedOn() {
		return basedOn;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBasedOn(Trial newBasedOn) {
		Trial oldBasedOn = basedOn;
		basedOn = newBasedOn;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.TRIAL__BASED_ON, oldBasedOn, basedOn));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TrialState getState() {
		return state;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setState(TrialState newState) {
		TrialState oldState = state;
		state = newState == null ? STATE_EDEFAULT : newState;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.TRIAL__STATE, oldState, state));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getStateReason() {
		return stateReason;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStateReason(String newStateReason) {
		String oldStateReason = stateReason;
		stateReason = newStateReason;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.TRIAL__STATE_REASON, oldStateReason, stateReason));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.TRIAL__CREATED_AT, oldCreatedAt, createdAt));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Instant getMadeAt() {
		return madeAt;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMadeAt(Instant newMadeAt) {
		Instant oldMadeAt = madeAt;
		madeAt = newMadeAt;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.TRIAL__MADE_AT, oldMadeAt, madeAt));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getConclusion() {
		return conclusion;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setConclusion(String newConclusion) {
		String oldConclusion = conclusion;
		conclusion = newConclusion;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.TRIAL__CONCLUSION, oldConclusion, conclusion));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getCost() {
		return cost;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCost(Double newCost) {
		Double oldCost = cost;
		cost = newCost;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.TRIAL__COST, oldCost, cost));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getHours() {
		return hours;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHours(Double newHours) {
		Double oldHours = hours;
		hours = newHours;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.TRIAL__HOURS, oldHours, hours));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Step> getSteps() {
		if (steps == null) {
			steps = new EObjectContainmentEList<Step>(Step.class, this, ModelPackage.TRIAL__STEPS);
		}
		return steps;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Part> getParts() {
		if (parts == null) {
			parts = new EObjectContainmentEList<Part>(Part.class, this, ModelPackage.TRIAL__PARTS);
		}
		return parts;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<CalculationRun> getCalculations() {
		if (calculations == null) {
			calculations = new EObjectContainmentEList<CalculationRun>(CalculationRun.class, this, ModelPackage.TRIAL__CALCULATIONS);
		}
		return calculations;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Attachment> getAttachments() {
		if (attachments == null) {
			attachments = new EObjectResolvingEList<Attachment>(Attachment.class, this, ModelPackage.TRIAL__ATTACHMENTS);
		}
		return attachments;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Instant getContactAt() {
		return contactAt;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setContactAt(Instant newContactAt) {
		Instant oldContactAt = contactAt;
		contactAt = newContactAt;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.TRIAL__CONTACT_AT, oldContactAt, contactAt));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getCupLabel() {
		return cupLabel;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCupLabel(String newCupLabel) {
		String oldCupLabel = cupLabel;
		cupLabel = newCupLabel;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.TRIAL__CUP_LABEL, oldCupLabel, cupLabel));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Mould getMould() {
		if (mould != null && mould.eIsProxy()) {
			InternalEObject oldMould = (InternalEObject)mould;
			mould = (Mould)eResolveProxy(oldMould);
			if (mould != oldMould) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.TRIAL__MOULD, oldMould, mould));
			}
		}
		return mould;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Mould basicGetMould() {
		return mould;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMould(Mould newMould) {
		Mould oldMould = mould;
		mould = newMould;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.TRIAL__MOULD, oldMould, mould));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<BenchNote> getNotes() {
		if (notes == null) {
			notes = new EObjectContainmentEList<BenchNote>(BenchNote.class, this, ModelPackage.TRIAL__NOTES);
		}
		return notes;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Decision> getDecisions() {
		if (decisions == null) {
			decisions = new EObjectContainmentEList<Decision>(Decision.class, this, ModelPackage.TRIAL__DECISIONS);
		}
		return decisions;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getPartsWanted() {
		return partsWanted;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPartsWanted(Integer newPartsWanted) {
		Integer oldPartsWanted = partsWanted;
		partsWanted = newPartsWanted;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.TRIAL__PARTS_WANTED, oldPartsWanted, partsWanted));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case ModelPackage.TRIAL__STEPS:
				return ((InternalEList<?>)getSteps()).basicRemove(otherEnd, msgs);
			case ModelPackage.TRIAL__PARTS:
				return ((InternalEList<?>)getParts()).basicRemove(otherEnd, msgs);
			case ModelPackage.TRIAL__CALCULATIONS:
				return ((InternalEList<?>)getCalculations()).basicRemove(otherEnd, msgs);
			case ModelPackage.TRIAL__NOTES:
				return ((InternalEList<?>)getNotes()).basicRemove(otherEnd, msgs);
			case ModelPackage.TRIAL__DECISIONS:
				return ((InternalEList<?>)getDecisions()).basicRemove(otherEnd, msgs);
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
			case ModelPackage.TRIAL__CODE:
				return getCode();
			case ModelPackage.TRIAL__TITLE:
				return getTitle();
			case ModelPackage.TRIAL__IDEA:
				return getIdea();
			case ModelPackage.TRIAL__ROUTE:
				return getRoute();
			case ModelPackage.TRIAL__BASED_ON:
				if (resolve) return getBasedOn();
				return basicGetBasedOn();
			case ModelPackage.TRIAL__STATE:
				return getState();
			case ModelPackage.TRIAL__STATE_REASON:
				return getStateReason();
			case ModelPackage.TRIAL__CREATED_AT:
				return getCreatedAt();
			case ModelPackage.TRIAL__MADE_AT:
				return getMadeAt();
			case ModelPackage.TRIAL__CONCLUSION:
				return getConclusion();
			case ModelPackage.TRIAL__COST:
				return getCost();
			case ModelPackage.TRIAL__HOURS:
				return getHours();
			case ModelPackage.TRIAL__STEPS:
				return getSteps();
			case ModelPackage.TRIAL__PARTS:
				return getParts();
			case ModelPackage.TRIAL__CALCULATIONS:
				return getCalculations();
			case ModelPackage.TRIAL__ATTACHMENTS:
				return getAttachments();
			case ModelPackage.TRIAL__CONTACT_AT:
				return getContactAt();
			case ModelPackage.TRIAL__CUP_LABEL:
				return getCupLabel();
			case ModelPackage.TRIAL__MOULD:
				if (resolve) return getMould();
				return basicGetMould();
			case ModelPackage.TRIAL__NOTES:
				return getNotes();
			case ModelPackage.TRIAL__DECISIONS:
				return getDecisions();
			case ModelPackage.TRIAL__PARTS_WANTED:
				return getPartsWanted();
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
			case ModelPackage.TRIAL__CODE:
				setCode((String)newValue);
				return;
			case ModelPackage.TRIAL__TITLE:
				setTitle((String)newValue);
				return;
			case ModelPackage.TRIAL__IDEA:
				setIdea((String)newValue);
				return;
			case ModelPackage.TRIAL__ROUTE:
				setRoute((String)newValue);
				return;
			case ModelPackage.TRIAL__BASED_ON:
				setBasedOn((Trial)newValue);
				return;
			case ModelPackage.TRIAL__STATE:
				setState((TrialState)newValue);
				return;
			case ModelPackage.TRIAL__STATE_REASON:
				setStateReason((String)newValue);
				return;
			case ModelPackage.TRIAL__CREATED_AT:
				setCreatedAt((Instant)newValue);
				return;
			case ModelPackage.TRIAL__MADE_AT:
				setMadeAt((Instant)newValue);
				return;
			case ModelPackage.TRIAL__CONCLUSION:
				setConclusion((String)newValue);
				return;
			case ModelPackage.TRIAL__COST:
				setCost((Double)newValue);
				return;
			case ModelPackage.TRIAL__HOURS:
				setHours((Double)newValue);
				return;
			case ModelPackage.TRIAL__STEPS:
				getSteps().clear();
				getSteps().addAll((Collection<? extends Step>)newValue);
				return;
			case ModelPackage.TRIAL__PARTS:
				getParts().clear();
				getParts().addAll((Collection<? extends Part>)newValue);
				return;
			case ModelPackage.TRIAL__CALCULATIONS:
				getCalculations().clear();
				getCalculations().addAll((Collection<? extends CalculationRun>)newValue);
				return;
			case ModelPackage.TRIAL__ATTACHMENTS:
				getAttachments().clear();
				getAttachments().addAll((Collection<? extends Attachment>)newValue);
				return;
			case ModelPackage.TRIAL__CONTACT_AT:
				setContactAt((Instant)newValue);
				return;
			case ModelPackage.TRIAL__CUP_LABEL:
				setCupLabel((String)newValue);
				return;
			case ModelPackage.TRIAL__MOULD:
				setMould((Mould)newValue);
				return;
			case ModelPackage.TRIAL__NOTES:
				getNotes().clear();
				getNotes().addAll((Collection<? extends BenchNote>)newValue);
				return;
			case ModelPackage.TRIAL__DECISIONS:
				getDecisions().clear();
				getDecisions().addAll((Collection<? extends Decision>)newValue);
				return;
			case ModelPackage.TRIAL__PARTS_WANTED:
				setPartsWanted((Integer)newValue);
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
			case ModelPackage.TRIAL__CODE:
				setCode(CODE_EDEFAULT);
				return;
			case ModelPackage.TRIAL__TITLE:
				setTitle(TITLE_EDEFAULT);
				return;
			case ModelPackage.TRIAL__IDEA:
				setIdea(IDEA_EDEFAULT);
				return;
			case ModelPackage.TRIAL__ROUTE:
				setRoute(ROUTE_EDEFAULT);
				return;
			case ModelPackage.TRIAL__BASED_ON:
				setBasedOn((Trial)null);
				return;
			case ModelPackage.TRIAL__STATE:
				setState(STATE_EDEFAULT);
				return;
			case ModelPackage.TRIAL__STATE_REASON:
				setStateReason(STATE_REASON_EDEFAULT);
				return;
			case ModelPackage.TRIAL__CREATED_AT:
				setCreatedAt(CREATED_AT_EDEFAULT);
				return;
			case ModelPackage.TRIAL__MADE_AT:
				setMadeAt(MADE_AT_EDEFAULT);
				return;
			case ModelPackage.TRIAL__CONCLUSION:
				setConclusion(CONCLUSION_EDEFAULT);
				return;
			case ModelPackage.TRIAL__COST:
				setCost(COST_EDEFAULT);
				return;
			case ModelPackage.TRIAL__HOURS:
				setHours(HOURS_EDEFAULT);
				return;
			case ModelPackage.TRIAL__STEPS:
				getSteps().clear();
				return;
			case ModelPackage.TRIAL__PARTS:
				getParts().clear();
				return;
			case ModelPackage.TRIAL__CALCULATIONS:
				getCalculations().clear();
				return;
			case ModelPackage.TRIAL__ATTACHMENTS:
				getAttachments().clear();
				return;
			case ModelPackage.TRIAL__CONTACT_AT:
				setContactAt(CONTACT_AT_EDEFAULT);
				return;
			case ModelPackage.TRIAL__CUP_LABEL:
				setCupLabel(CUP_LABEL_EDEFAULT);
				return;
			case ModelPackage.TRIAL__MOULD:
				setMould((Mould)null);
				return;
			case ModelPackage.TRIAL__NOTES:
				getNotes().clear();
				return;
			case ModelPackage.TRIAL__DECISIONS:
				getDecisions().clear();
				return;
			case ModelPackage.TRIAL__PARTS_WANTED:
				setPartsWanted(PARTS_WANTED_EDEFAULT);
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
			case ModelPackage.TRIAL__CODE:
				return CODE_EDEFAULT == null ? code != null : !CODE_EDEFAULT.equals(code);
			case ModelPackage.TRIAL__TITLE:
				return TITLE_EDEFAULT == null ? title != null : !TITLE_EDEFAULT.equals(title);
			case ModelPackage.TRIAL__IDEA:
				return IDEA_EDEFAULT == null ? idea != null : !IDEA_EDEFAULT.equals(idea);
			case ModelPackage.TRIAL__ROUTE:
				return ROUTE_EDEFAULT == null ? route != null : !ROUTE_EDEFAULT.equals(route);
			case ModelPackage.TRIAL__BASED_ON:
				return basedOn != null;
			case ModelPackage.TRIAL__STATE:
				return state != STATE_EDEFAULT;
			case ModelPackage.TRIAL__STATE_REASON:
				return STATE_REASON_EDEFAULT == null ? stateReason != null : !STATE_REASON_EDEFAULT.equals(stateReason);
			case ModelPackage.TRIAL__CREATED_AT:
				return CREATED_AT_EDEFAULT == null ? createdAt != null : !CREATED_AT_EDEFAULT.equals(createdAt);
			case ModelPackage.TRIAL__MADE_AT:
				return MADE_AT_EDEFAULT == null ? madeAt != null : !MADE_AT_EDEFAULT.equals(madeAt);
			case ModelPackage.TRIAL__CONCLUSION:
				return CONCLUSION_EDEFAULT == null ? conclusion != null : !CONCLUSION_EDEFAULT.equals(conclusion);
			case ModelPackage.TRIAL__COST:
				return COST_EDEFAULT == null ? cost != null : !COST_EDEFAULT.equals(cost);
			case ModelPackage.TRIAL__HOURS:
				return HOURS_EDEFAULT == null ? hours != null : !HOURS_EDEFAULT.equals(hours);
			case ModelPackage.TRIAL__STEPS:
				return steps != null && !steps.isEmpty();
			case ModelPackage.TRIAL__PARTS:
				return parts != null && !parts.isEmpty();
			case ModelPackage.TRIAL__CALCULATIONS:
				return calculations != null && !calculations.isEmpty();
			case ModelPackage.TRIAL__ATTACHMENTS:
				return attachments != null && !attachments.isEmpty();
			case ModelPackage.TRIAL__CONTACT_AT:
				return CONTACT_AT_EDEFAULT == null ? contactAt != null : !CONTACT_AT_EDEFAULT.equals(contactAt);
			case ModelPackage.TRIAL__CUP_LABEL:
				return CUP_LABEL_EDEFAULT == null ? cupLabel != null : !CUP_LABEL_EDEFAULT.equals(cupLabel);
			case ModelPackage.TRIAL__MOULD:
				return mould != null;
			case ModelPackage.TRIAL__NOTES:
				return notes != null && !notes.isEmpty();
			case ModelPackage.TRIAL__DECISIONS:
				return decisions != null && !decisions.isEmpty();
			case ModelPackage.TRIAL__PARTS_WANTED:
				return PARTS_WANTED_EDEFAULT == null ? partsWanted != null : !PARTS_WANTED_EDEFAULT.equals(partsWanted);
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
		result.append(", title: ");
		result.append(title);
		result.append(", idea: ");
		result.append(idea);
		result.append(", route: ");
		result.append(route);
		result.append(", state: ");
		result.append(state);
		result.append(", stateReason: ");
		result.append(stateReason);
		result.append(", createdAt: ");
		result.append(createdAt);
		result.append(", madeAt: ");
		result.append(madeAt);
		result.append(", conclusion: ");
		result.append(conclusion);
		result.append(", cost: ");
		result.append(cost);
		result.append(", hours: ");
		result.append(hours);
		result.append(", contactAt: ");
		result.append(contactAt);
		result.append(", cupLabel: ");
		result.append(cupLabel);
		result.append(", partsWanted: ");
		result.append(partsWanted);
		result.append(')');
		return result.toString();
	}

} //TrialImpl
