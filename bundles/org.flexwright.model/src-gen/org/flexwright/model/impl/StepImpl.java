/**
 */
package org.flexwright.model.impl;

import java.time.Instant;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.EObjectResolvingEList;
import org.eclipse.emf.ecore.util.InternalEList;

import org.flexwright.model.Attachment;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Session;
import org.flexwright.model.Step;
import org.flexwright.model.StepState;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Step</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.impl.StepImpl#getKind <em>Kind</em>}</li>
 *   <li>{@link org.flexwright.model.impl.StepImpl#getTitle <em>Title</em>}</li>
 *   <li>{@link org.flexwright.model.impl.StepImpl#getState <em>State</em>}</li>
 *   <li>{@link org.flexwright.model.impl.StepImpl#isUnconfirmed <em>Unconfirmed</em>}</li>
 *   <li>{@link org.flexwright.model.impl.StepImpl#getConfirmedBy <em>Confirmed By</em>}</li>
 *   <li>{@link org.flexwright.model.impl.StepImpl#getConfirmedAt <em>Confirmed At</em>}</li>
 *   <li>{@link org.flexwright.model.impl.StepImpl#getPlannedStart <em>Planned Start</em>}</li>
 *   <li>{@link org.flexwright.model.impl.StepImpl#getPlannedDuration <em>Planned Duration</em>}</li>
 *   <li>{@link org.flexwright.model.impl.StepImpl#getStartedAt <em>Started At</em>}</li>
 *   <li>{@link org.flexwright.model.impl.StepImpl#getEndedAt <em>Ended At</em>}</li>
 *   <li>{@link org.flexwright.model.impl.StepImpl#getSession <em>Session</em>}</li>
 *   <li>{@link org.flexwright.model.impl.StepImpl#getUses <em>Uses</em>}</li>
 *   <li>{@link org.flexwright.model.impl.StepImpl#getDetails <em>Details</em>}</li>
 *   <li>{@link org.flexwright.model.impl.StepImpl#getAttachments <em>Attachments</em>}</li>
 * </ul>
 *
 * @generated
 */
public class StepImpl extends EntryImpl implements Step {
	/**
	 * The default value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected static final String KIND_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected String kind = KIND_EDEFAULT;

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
	 * The default value of the '{@link #getState() <em>State</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getState()
	 * @generated
	 * @ordered
	 */
	protected static final StepState STATE_EDEFAULT = StepState.PLANNED;

	/**
	 * The cached value of the '{@link #getState() <em>State</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getState()
	 * @generated
	 * @ordered
	 */
	protected StepState state = STATE_EDEFAULT;

	/**
	 * The default value of the '{@link #isUnconfirmed() <em>Unconfirmed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isUnconfirmed()
	 * @generated
	 * @ordered
	 */
	protected static final boolean UNCONFIRMED_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isUnconfirmed() <em>Unconfirmed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isUnconfirmed()
	 * @generated
	 * @ordered
	 */
	protected boolean unconfirmed = UNCONFIRMED_EDEFAULT;

	/**
	 * The default value of the '{@link #getConfirmedBy() <em>Confirmed By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getConfirmedBy()
	 * @generated
	 * @ordered
	 */
	protected static final String CONFIRMED_BY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getConfirmedBy() <em>Confirmed By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getConfirmedBy()
	 * @generated
	 * @ordered
	 */
	protected String confirmedBy = CONFIRMED_BY_EDEFAULT;

	/**
	 * The default value of the '{@link #getConfirmedAt() <em>Confirmed At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getConfirmedAt()
	 * @generated
	 * @ordered
	 */
	protected static final Instant CONFIRMED_AT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getConfirmedAt() <em>Confirmed At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getConfirmedAt()
	 * @generated
	 * @ordered
	 */
	protected Instant confirmedAt = CONFIRMED_AT_EDEFAULT;

	/**
	 * The default value of the '{@link #getPlannedStart() <em>Planned Start</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlannedStart()
	 * @generated
	 * @ordered
	 */
	protected static final Double PLANNED_START_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPlannedStart() <em>Planned Start</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlannedStart()
	 * @generated
	 * @ordered
	 */
	protected Double plannedStart = PLANNED_START_EDEFAULT;

	/**
	 * The default value of the '{@link #getPlannedDuration() <em>Planned Duration</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlannedDuration()
	 * @generated
	 * @ordered
	 */
	protected static final Double PLANNED_DURATION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPlannedDuration() <em>Planned Duration</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlannedDuration()
	 * @generated
	 * @ordered
	 */
	protected Double plannedDuration = PLANNED_DURATION_EDEFAULT;

	/**
	 * The default value of the '{@link #getStartedAt() <em>Started At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStartedAt()
	 * @generated
	 * @ordered
	 */
	protected static final Instant STARTED_AT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getStartedAt() <em>Started At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStartedAt()
	 * @generated
	 * @ordered
	 */
	protected Instant startedAt = STARTED_AT_EDEFAULT;

	/**
	 * The default value of the '{@link #getEndedAt() <em>Ended At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEndedAt()
	 * @generated
	 * @ordered
	 */
	protected static final Instant ENDED_AT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getEndedAt() <em>Ended At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEndedAt()
	 * @generated
	 * @ordered
	 */
	protected Instant endedAt = ENDED_AT_EDEFAULT;

	/**
	 * The cached value of the '{@link #getSession() <em>Session</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSession()
	 * @generated
	 * @ordered
	 */
	protected Session session;

	/**
	 * The cached value of the '{@link #getUses() <em>Uses</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUses()
	 * @generated
	 * @ordered
	 */
	protected EList<MaterialUse> uses;

	/**
	 * The cached value of the '{@link #getDetails() <em>Details</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDetails()
	 * @generated
	 * @ordered
	 */
	protected EObject details;

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
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected StepImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.STEP;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getKind() {
		return kind;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKind(String newKind) {
		String oldKind = kind;
		kind = newKind;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.STEP__KIND, oldKind, kind));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.STEP__TITLE, oldTitle, title));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public StepState getState() {
		return state;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setState(StepState newState) {
		StepState oldState = state;
		state = newState == null ? STATE_EDEFAULT : newState;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.STEP__STATE, oldState, state));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isUnconfirmed() {
		return unconfirmed;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setUnconfirmed(boolean newUnconfirmed) {
		boolean oldUnconfirmed = unconfirmed;
		unconfirmed = newUnconfirmed;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.STEP__UNCONFIRMED, oldUnconfirmed, unconfirmed));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getConfirmedBy() {
		return confirmedBy;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setConfirmedBy(String newConfirmedBy) {
		String oldConfirmedBy = confirmedBy;
		confirmedBy = newConfirmedBy;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.STEP__CONFIRMED_BY, oldConfirmedBy, confirmedBy));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Instant getConfirmedAt() {
		return confirmedAt;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setConfirmedAt(Instant newConfirmedAt) {
		Instant oldConfirmedAt = confirmedAt;
		confirmedAt = newConfirmedAt;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.STEP__CONFIRMED_AT, oldConfirmedAt, confirmedAt));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getPlannedStart() {
		return plannedStart;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPlannedStart(Double newPlannedStart) {
		Double oldPlannedStart = plannedStart;
		plannedStart = newPlannedStart;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.STEP__PLANNED_START, oldPlannedStart, plannedStart));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getPlannedDuration() {
		return plannedDuration;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPlannedDuration(Double newPlannedDuration) {
		Double oldPlannedDuration = plannedDuration;
		plannedDuration = newPlannedDuration;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.STEP__PLANNED_DURATION, oldPlannedDuration, plannedDuration));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Instant getStartedAt() {
		return startedAt;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStartedAt(Instant newStartedAt) {
		Instant oldStartedAt = startedAt;
		startedAt = newStartedAt;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.STEP__STARTED_AT, oldStartedAt, startedAt));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Instant getEndedAt() {
		return endedAt;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEndedAt(Instant newEndedAt) {
		Instant oldEndedAt = endedAt;
		endedAt = newEndedAt;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.STEP__ENDED_AT, oldEndedAt, endedAt));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Session getSession() {
		if (session != null && session.eIsProxy()) {
			InternalEObject oldSession = (InternalEObject)session;
			session = (Session)eResolveProxy(oldSession);
			if (session != oldSession) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.STEP__SESSION, oldSession, session));
			}
		}
		return session;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Session basicGetSession() {
		return session;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSession(Session newSession) {
		Session oldSession = session;
		session = newSession;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.STEP__SESSION, oldSession, session));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<MaterialUse> getUses() {
		if (uses == null) {
			uses = new EObjectContainmentEList<MaterialUse>(MaterialUse.class, this, ModelPackage.STEP__USES);
		}
		return uses;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EObject getDetails() {
		return details;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetDetails(EObject newDetails, NotificationChain msgs) {
		EObject oldDetails = details;
		details = newDetails;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, ModelPackage.STEP__DETAILS, oldDetails, newDetails);
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
	public void setDetails(EObject newDetails) {
		if (newDetails != details) {
			NotificationChain msgs = null;
			if (details != null)
				msgs = ((InternalEObject)details).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - ModelPackage.STEP__DETAILS, null, msgs);
			if (newDetails != null)
				msgs = ((InternalEObject)newDetails).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - ModelPackage.STEP__DETAILS, null, msgs);
			msgs = basicSetDetails(newDetails, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.STEP__DETAILS, newDetails, newDetails));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Attachment> getAttachments() {
		if (attachments == null) {
			attachments = new EObjectResolvingEList<Attachment>(Attachment.class, this, ModelPackage.STEP__ATTACHMENTS);
		}
		return attachments;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case ModelPackage.STEP__USES:
				return ((InternalEList<?>)getUses()).basicRemove(otherEnd, msgs);
			case ModelPackage.STEP__DETAILS:
				return basicSetDetails(null, msgs);
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
			case ModelPackage.STEP__KIND:
				return getKind();
			case ModelPackage.STEP__TITLE:
				return getTitle();
			case ModelPackage.STEP__STATE:
				return getState();
			case ModelPackage.STEP__UNCONFIRMED:
				return isUnconfirmed();
			case ModelPackage.STEP__CONFIRMED_BY:
				return getConfirmedBy();
			case ModelPackage.STEP__CONFIRMED_AT:
				return getConfirmedAt();
			case ModelPackage.STEP__PLANNED_START:
				return getPlannedStart();
			case ModelPackage.STEP__PLANNED_DURATION:
				return getPlannedDuration();
			case ModelPackage.STEP__STARTED_AT:
				return getStartedAt();
			case ModelPackage.STEP__ENDED_AT:
				return getEndedAt();
			case ModelPackage.STEP__SESSION:
				if (resolve) return getSession();
				return basicGetSession();
			case ModelPackage.STEP__USES:
				return getUses();
			case ModelPackage.STEP__DETAILS:
				return getDetails();
			case ModelPackage.STEP__ATTACHMENTS:
				return getAttachments();
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
			case ModelPackage.STEP__KIND:
				setKind((String)newValue);
				return;
			case ModelPackage.STEP__TITLE:
				setTitle((String)newValue);
				return;
			case ModelPackage.STEP__STATE:
				setState((StepState)newValue);
				return;
			case ModelPackage.STEP__UNCONFIRMED:
				setUnconfirmed((Boolean)newValue);
				return;
			case ModelPackage.STEP__CONFIRMED_BY:
				setConfirmedBy((String)newValue);
				return;
			case ModelPackage.STEP__CONFIRMED_AT:
				setConfirmedAt((Instant)newValue);
				return;
			case ModelPackage.STEP__PLANNED_START:
				setPlannedStart((Double)newValue);
				return;
			case ModelPackage.STEP__PLANNED_DURATION:
				setPlannedDuration((Double)newValue);
				return;
			case ModelPackage.STEP__STARTED_AT:
				setStartedAt((Instant)newValue);
				return;
			case ModelPackage.STEP__ENDED_AT:
				setEndedAt((Instant)newValue);
				return;
			case ModelPackage.STEP__SESSION:
				setSession((Session)newValue);
				return;
			case ModelPackage.STEP__USES:
				getUses().clear();
				getUses().addAll((Collection<? extends MaterialUse>)newValue);
				return;
			case ModelPackage.STEP__DETAILS:
				setDetails((EObject)newValue);
				return;
			case ModelPackage.STEP__ATTACHMENTS:
				getAttachments().clear();
				getAttachments().addAll((Collection<? extends Attachment>)newValue);
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
			case ModelPackage.STEP__KIND:
				setKind(KIND_EDEFAULT);
				return;
			case ModelPackage.STEP__TITLE:
				setTitle(TITLE_EDEFAULT);
				return;
			case ModelPackage.STEP__STATE:
				setState(STATE_EDEFAULT);
				return;
			case ModelPackage.STEP__UNCONFIRMED:
				setUnconfirmed(UNCONFIRMED_EDEFAULT);
				return;
			case ModelPackage.STEP__CONFIRMED_BY:
				setConfirmedBy(CONFIRMED_BY_EDEFAULT);
				return;
			case ModelPackage.STEP__CONFIRMED_AT:
				setConfirmedAt(CONFIRMED_AT_EDEFAULT);
				return;
			case ModelPackage.STEP__PLANNED_START:
				setPlannedStart(PLANNED_START_EDEFAULT);
				return;
			case ModelPackage.STEP__PLANNED_DURATION:
				setPlannedDuration(PLANNED_DURATION_EDEFAULT);
				return;
			case ModelPackage.STEP__STARTED_AT:
				setStartedAt(STARTED_AT_EDEFAULT);
				return;
			case ModelPackage.STEP__ENDED_AT:
				setEndedAt(ENDED_AT_EDEFAULT);
				return;
			case ModelPackage.STEP__SESSION:
				setSession((Session)null);
				return;
			case ModelPackage.STEP__USES:
				getUses().clear();
				return;
			case ModelPackage.STEP__DETAILS:
				setDetails((EObject)null);
				return;
			case ModelPackage.STEP__ATTACHMENTS:
				getAttachments().clear();
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
			case ModelPackage.STEP__KIND:
				return KIND_EDEFAULT == null ? kind != null : !KIND_EDEFAULT.equals(kind);
			case ModelPackage.STEP__TITLE:
				return TITLE_EDEFAULT == null ? title != null : !TITLE_EDEFAULT.equals(title);
			case ModelPackage.STEP__STATE:
				return state != STATE_EDEFAULT;
			case ModelPackage.STEP__UNCONFIRMED:
				return unconfirmed != UNCONFIRMED_EDEFAULT;
			case ModelPackage.STEP__CONFIRMED_BY:
				return CONFIRMED_BY_EDEFAULT == null ? confirmedBy != null : !CONFIRMED_BY_EDEFAULT.equals(confirmedBy);
			case ModelPackage.STEP__CONFIRMED_AT:
				return CONFIRMED_AT_EDEFAULT == null ? confirmedAt != null : !CONFIRMED_AT_EDEFAULT.equals(confirmedAt);
			case ModelPackage.STEP__PLANNED_START:
				return PLANNED_START_EDEFAULT == null ? plannedStart != null : !PLANNED_START_EDEFAULT.equals(plannedStart);
			case ModelPackage.STEP__PLANNED_DURATION:
				return PLANNED_DURATION_EDEFAULT == null ? plannedDuration != null : !PLANNED_DURATION_EDEFAULT.equals(plannedDuration);
			case ModelPackage.STEP__STARTED_AT:
				return STARTED_AT_EDEFAULT == null ? startedAt != null : !STARTED_AT_EDEFAULT.equals(startedAt);
			case ModelPackage.STEP__ENDED_AT:
				return ENDED_AT_EDEFAULT == null ? endedAt != null : !ENDED_AT_EDEFAULT.equals(endedAt);
			case ModelPackage.STEP__SESSION:
				return session != null;
			case ModelPackage.STEP__USES:
				return uses != null && !uses.isEmpty();
			case ModelPackage.STEP__DETAILS:
				return details != null;
			case ModelPackage.STEP__ATTACHMENTS:
				return attachments != null && !attachments.isEmpty();
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
		result.append(" (kind: ");
		result.append(kind);
		result.append(", title: ");
		result.append(title);
		result.append(", state: ");
		result.append(state);
		result.append(", unconfirmed: ");
		result.append(unconfirmed);
		result.append(", confirmedBy: ");
		result.append(confirmedBy);
		result.append(", confirmedAt: ");
		result.append(confirmedAt);
		result.append(", plannedStart: ");
		result.append(plannedStart);
		result.append(", plannedDuration: ");
		result.append(plannedDuration);
		result.append(", startedAt: ");
		result.append(startedAt);
		result.append(", endedAt: ");
		result.append(endedAt);
		result.append(')');
		return result.toString();
	}

} //StepImpl
