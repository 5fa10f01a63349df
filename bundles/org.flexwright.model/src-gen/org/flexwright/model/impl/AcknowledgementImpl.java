/**
 */
package org.flexwright.model.impl;

import java.time.Instant;
import java.time.LocalDate;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.flexwright.model.Acknowledgement;
import org.flexwright.model.Lot;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Session;
import org.flexwright.model.Step;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Acknowledgement</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.impl.AcknowledgementImpl#getPrompt <em>Prompt</em>}</li>
 *   <li>{@link org.flexwright.model.impl.AcknowledgementImpl#getSession <em>Session</em>}</li>
 *   <li>{@link org.flexwright.model.impl.AcknowledgementImpl#getLot <em>Lot</em>}</li>
 *   <li>{@link org.flexwright.model.impl.AcknowledgementImpl#getStep <em>Step</em>}</li>
 *   <li>{@link org.flexwright.model.impl.AcknowledgementImpl#getWho <em>Who</em>}</li>
 *   <li>{@link org.flexwright.model.impl.AcknowledgementImpl#getAt <em>At</em>}</li>
 *   <li>{@link org.flexwright.model.impl.AcknowledgementImpl#getSheetDate <em>Sheet Date</em>}</li>
 *   <li>{@link org.flexwright.model.impl.AcknowledgementImpl#getSheetRevision <em>Sheet Revision</em>}</li>
 * </ul>
 *
 * @generated
 */
public class AcknowledgementImpl extends EntryImpl implements Acknowledgement {
	/**
	 * The default value of the '{@link #getPrompt() <em>Prompt</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPrompt()
	 * @generated
	 * @ordered
	 */
	protected static final String PROMPT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPrompt() <em>Prompt</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPrompt()
	 * @generated
	 * @ordered
	 */
	protected String prompt = PROMPT_EDEFAULT;

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
	 * The cached value of the '{@link #getLot() <em>Lot</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLot()
	 * @generated
	 * @ordered
	 */
	protected Lot lot;

	/**
	 * The cached value of the '{@link #getStep() <em>Step</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStep()
	 * @generated
	 * @ordered
	 */
	protected Step step;

	/**
	 * The default value of the '{@link #getWho() <em>Who</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWho()
	 * @generated
	 * @ordered
	 */
	protected static final String WHO_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWho() <em>Who</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWho()
	 * @generated
	 * @ordered
	 */
	protected String who = WHO_EDEFAULT;

	/**
	 * The default value of the '{@link #getAt() <em>At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAt()
	 * @generated
	 * @ordered
	 */
	protected static final Instant AT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAt() <em>At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAt()
	 * @generated
	 * @ordered
	 */
	protected Instant at = AT_EDEFAULT;

	/**
	 * The default value of the '{@link #getSheetDate() <em>Sheet Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSheetDate()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate SHEET_DATE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSheetDate() <em>Sheet Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSheetDate()
	 * @generated
	 * @ordered
	 */
	protected LocalDate sheetDate = SHEET_DATE_EDEFAULT;

	/**
	 * The default value of the '{@link #getSheetRevision() <em>Sheet Revision</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSheetRevision()
	 * @generated
	 * @ordered
	 */
	protected static final String SHEET_REVISION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSheetRevision() <em>Sheet Revision</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSheetRevision()
	 * @generated
	 * @ordered
	 */
	protected String sheetRevision = SHEET_REVISION_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected AcknowledgementImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.ACKNOWLEDGEMENT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getPrompt() {
		return prompt;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPrompt(String newPrompt) {
		String oldPrompt = prompt;
		prompt = newPrompt;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.ACKNOWLEDGEMENT__PROMPT, oldPrompt, prompt));
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
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.ACKNOWLEDGEMENT__SESSION, oldSession, session));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.ACKNOWLEDGEMENT__SESSION, oldSession, session));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Lot getLot() {
		if (lot != null && lot.eIsProxy()) {
			InternalEObject oldLot = (InternalEObject)lot;
			lot = (Lot)eResolveProxy(oldLot);
			if (lot != oldLot) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.ACKNOWLEDGEMENT__LOT, oldLot, lot));
			}
		}
		return lot;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Lot basicGetLot() {
		return lot;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLot(Lot newLot) {
		Lot oldLot = lot;
		lot = newLot;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.ACKNOWLEDGEMENT__LOT, oldLot, lot));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Step getStep() {
		if (step != null && step.eIsProxy()) {
			InternalEObject oldStep = (InternalEObject)step;
			step = (Step)eResolveProxy(oldStep);
			if (step != oldStep) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.ACKNOWLEDGEMENT__STEP, oldStep, step));
			}
		}
		return step;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Step basicGetStep() {
		return step;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStep(Step newStep) {
		Step oldStep = step;
		step = newStep;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.ACKNOWLEDGEMENT__STEP, oldStep, step));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getWho() {
		return who;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWho(String newWho) {
		String oldWho = who;
		who = newWho;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.ACKNOWLEDGEMENT__WHO, oldWho, who));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Instant getAt() {
		return at;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAt(Instant newAt) {
		Instant oldAt = at;
		at = newAt;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.ACKNOWLEDGEMENT__AT, oldAt, at));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getSheetDate() {
		return sheetDate;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSheetDate(LocalDate newSheetDate) {
		LocalDate oldSheetDate = sheetDate;
		sheetDate = newSheetDate;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.ACKNOWLEDGEMENT__SHEET_DATE, oldSheetDate, sheetDate));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSheetRevision() {
		return sheetRevision;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSheetRevision(String newSheetRevision) {
		String oldSheetRevision = sheetRevision;
		sheetRevision = newSheetRevision;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.ACKNOWLEDGEMENT__SHEET_REVISION, oldSheetRevision, sheetRevision));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case ModelPackage.ACKNOWLEDGEMENT__PROMPT:
				return getPrompt();
			case ModelPackage.ACKNOWLEDGEMENT__SESSION:
				if (resolve) return getSession();
				return basicGetSession();
			case ModelPackage.ACKNOWLEDGEMENT__LOT:
				if (resolve) return getLot();
				return basicGetLot();
			case ModelPackage.ACKNOWLEDGEMENT__STEP:
				if (resolve) return getStep();
				return basicGetStep();
			case ModelPackage.ACKNOWLEDGEMENT__WHO:
				return getWho();
			case ModelPackage.ACKNOWLEDGEMENT__AT:
				return getAt();
			case ModelPackage.ACKNOWLEDGEMENT__SHEET_DATE:
				return getSheetDate();
			case ModelPackage.ACKNOWLEDGEMENT__SHEET_REVISION:
				return getSheetRevision();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case ModelPackage.ACKNOWLEDGEMENT__PROMPT:
				setPrompt((String)newValue);
				return;
			case ModelPackage.ACKNOWLEDGEMENT__SESSION:
				setSession((Session)newValue);
				return;
			case ModelPackage.ACKNOWLEDGEMENT__LOT:
				setLot((Lot)newValue);
				return;
			case ModelPackage.ACKNOWLEDGEMENT__STEP:
				setStep((Step)newValue);
				return;
			case ModelPackage.ACKNOWLEDGEMENT__WHO:
				setWho((String)newValue);
				return;
			case ModelPackage.ACKNOWLEDGEMENT__AT:
				setAt((Instant)newValue);
				return;
			case ModelPackage.ACKNOWLEDGEMENT__SHEET_DATE:
				setSheetDate((LocalDate)newValue);
				return;
			case ModelPackage.ACKNOWLEDGEMENT__SHEET_REVISION:
				setSheetRevision((String)newValue);
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
			case ModelPackage.ACKNOWLEDGEMENT__PROMPT:
				setPrompt(PROMPT_EDEFAULT);
				return;
			case ModelPackage.ACKNOWLEDGEMENT__SESSION:
				setSession((Session)null);
				return;
			case ModelPackage.ACKNOWLEDGEMENT__LOT:
				setLot((Lot)null);
				return;
			case ModelPackage.ACKNOWLEDGEMENT__STEP:
				setStep((Step)null);
				return;
			case ModelPackage.ACKNOWLEDGEMENT__WHO:
				setWho(WHO_EDEFAULT);
				return;
			case ModelPackage.ACKNOWLEDGEMENT__AT:
				setAt(AT_EDEFAULT);
				return;
			case ModelPackage.ACKNOWLEDGEMENT__SHEET_DATE:
				setSheetDate(SHEET_DATE_EDEFAULT);
				return;
			case ModelPackage.ACKNOWLEDGEMENT__SHEET_REVISION:
				setSheetRevision(SHEET_REVISION_EDEFAULT);
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
			case ModelPackage.ACKNOWLEDGEMENT__PROMPT:
				return PROMPT_EDEFAULT == null ? prompt != null : !PROMPT_EDEFAULT.equals(prompt);
			case ModelPackage.ACKNOWLEDGEMENT__SESSION:
				return session != null;
			case ModelPackage.ACKNOWLEDGEMENT__LOT:
				return lot != null;
			case ModelPackage.ACKNOWLEDGEMENT__STEP:
				return step != null;
			case ModelPackage.ACKNOWLEDGEMENT__WHO:
				return WHO_EDEFAULT == null ? who != null : !WHO_EDEFAULT.equals(who);
			case ModelPackage.ACKNOWLEDGEMENT__AT:
				return AT_EDEFAULT == null ? at != null : !AT_EDEFAULT.equals(at);
			case ModelPackage.ACKNOWLEDGEMENT__SHEET_DATE:
				return SHEET_DATE_EDEFAULT == null ? sheetDate != null : !SHEET_DATE_EDEFAULT.equals(sheetDate);
			case ModelPackage.ACKNOWLEDGEMENT__SHEET_REVISION:
				return SHEET_REVISION_EDEFAULT == null ? sheetRevision != null : !SHEET_REVISION_EDEFAULT.equals(sheetRevision);
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
		result.append(" (prompt: ");
		result.append(prompt);
		result.append(", who: ");
		result.append(who);
		result.append(", at: ");
		result.append(at);
		result.append(", sheetDate: ");
		result.append(sheetDate);
		result.append(", sheetRevision: ");
		result.append(sheetRevision);
		result.append(')');
		return result.toString();
	}

} //AcknowledgementImpl
