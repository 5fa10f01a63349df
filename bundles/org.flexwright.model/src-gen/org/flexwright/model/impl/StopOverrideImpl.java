/**
 */
package org.flexwright.model.impl;

import java.time.Instant;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.flexwright.model.ModelPackage;
import org.flexwright.model.StopOverride;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Stop Override</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.impl.StopOverrideImpl#getRule <em>Rule</em>}</li>
 *   <li>{@link org.flexwright.model.impl.StopOverrideImpl#getSubject <em>Subject</em>}</li>
 *   <li>{@link org.flexwright.model.impl.StopOverrideImpl#getInputHash <em>Input Hash</em>}</li>
 *   <li>{@link org.flexwright.model.impl.StopOverrideImpl#getReason <em>Reason</em>}</li>
 *   <li>{@link org.flexwright.model.impl.StopOverrideImpl#getWho <em>Who</em>}</li>
 *   <li>{@link org.flexwright.model.impl.StopOverrideImpl#getAt <em>At</em>}</li>
 * </ul>
 *
 * @generated
 */
public class StopOverrideImpl extends EntryImpl implements StopOverride {
	/**
	 * The default value of the '{@link #getRule() <em>Rule</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRule()
	 * @generated
	 * @ordered
	 */
	protected static final String RULE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRule() <em>Rule</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRule()
	 * @generated
	 * @ordered
	 */
	protected String rule = RULE_EDEFAULT;

	/**
	 * The default value of the '{@link #getSubject() <em>Subject</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSubject()
	 * @generated
	 * @ordered
	 */
	protected static final String SUBJECT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSubject() <em>Subject</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSubject()
	 * @generated
	 * @ordered
	 */
	protected String subject = SUBJECT_EDEFAULT;

	/**
	 * The default value of the '{@link #getInputHash() <em>Input Hash</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInputHash()
	 * @generated
	 * @ordered
	 */
	protected static final String INPUT_HASH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getInputHash() <em>Input Hash</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInputHash()
	 * @generated
	 * @ordered
	 */
	protected String inputHash = INPUT_HASH_EDEFAULT;

	/**
	 * The default value of the '{@link #getReason() <em>Reason</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReason()
	 * @generated
	 * @ordered
	 */
	protected static final String REASON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getReason() <em>Reason</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReason()
	 * @generated
	 * @ordered
	 */
	protected String reason = REASON_EDEFAULT;

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
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected StopOverrideImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.STOP_OVERRIDE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getRule() {
		return rule;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRule(String newRule) {
		String oldRule = rule;
		rule = newRule;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.STOP_OVERRIDE__RULE, oldRule, rule));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSubject() {
		return subject;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSubject(String newSubject) {
		String oldSubject = subject;
		subject = newSubject;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.STOP_OVERRIDE__SUBJECT, oldSubject, subject));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getInputHash() {
		return inputHash;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setInputHash(String newInputHash) {
		String oldInputHash = inputHash;
		inputHash = newInputHash;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.STOP_OVERRIDE__INPUT_HASH, oldInputHash, inputHash));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getReason() {
		return reason;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setReason(String newReason) {
		String oldReason = reason;
		reason = newReason;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.STOP_OVERRIDE__REASON, oldReason, reason));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.STOP_OVERRIDE__WHO, oldWho, who));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.STOP_OVERRIDE__AT, oldAt, at));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case ModelPackage.STOP_OVERRIDE__RULE:
				return getRule();
			case ModelPackage.STOP_OVERRIDE__SUBJECT:
				return getSubject();
			case ModelPackage.STOP_OVERRIDE__INPUT_HASH:
				return getInputHash();
			case ModelPackage.STOP_OVERRIDE__REASON:
				return getReason();
			case ModelPackage.STOP_OVERRIDE__WHO:
				return getWho();
			case ModelPackage.STOP_OVERRIDE__AT:
				return getAt();
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
			case ModelPackage.STOP_OVERRIDE__RULE:
				setRule((String)newValue);
				return;
			case ModelPackage.STOP_OVERRIDE__SUBJECT:
				setSubject((String)newValue);
				return;
			case ModelPackage.STOP_OVERRIDE__INPUT_HASH:
				setInputHash((String)newValue);
				return;
			case ModelPackage.STOP_OVERRIDE__REASON:
				setReason((String)newValue);
				return;
			case ModelPackage.STOP_OVERRIDE__WHO:
				setWho((String)newValue);
				return;
			case ModelPackage.STOP_OVERRIDE__AT:
				setAt((Instant)newValue);
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
			case ModelPackage.STOP_OVERRIDE__RULE:
				setRule(RULE_EDEFAULT);
				return;
			case ModelPackage.STOP_OVERRIDE__SUBJECT:
				setSubject(SUBJECT_EDEFAULT);
				return;
			case ModelPackage.STOP_OVERRIDE__INPUT_HASH:
				setInputHash(INPUT_HASH_EDEFAULT);
				return;
			case ModelPackage.STOP_OVERRIDE__REASON:
				setReason(REASON_EDEFAULT);
				return;
			case ModelPackage.STOP_OVERRIDE__WHO:
				setWho(WHO_EDEFAULT);
				return;
			case ModelPackage.STOP_OVERRIDE__AT:
				setAt(AT_EDEFAULT);
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
			case ModelPackage.STOP_OVERRIDE__RULE:
				return RULE_EDEFAULT == null ? rule != null : !RULE_EDEFAULT.equals(rule);
			case ModelPackage.STOP_OVERRIDE__SUBJECT:
				return SUBJECT_EDEFAULT == null ? subject != null : !SUBJECT_EDEFAULT.equals(subject);
			case ModelPackage.STOP_OVERRIDE__INPUT_HASH:
				return INPUT_HASH_EDEFAULT == null ? inputHash != null : !INPUT_HASH_EDEFAULT.equals(inputHash);
			case ModelPackage.STOP_OVERRIDE__REASON:
				return REASON_EDEFAULT == null ? reason != null : !REASON_EDEFAULT.equals(reason);
			case ModelPackage.STOP_OVERRIDE__WHO:
				return WHO_EDEFAULT == null ? who != null : !WHO_EDEFAULT.equals(who);
			case ModelPackage.STOP_OVERRIDE__AT:
				return AT_EDEFAULT == null ? at != null : !AT_EDEFAULT.equals(at);
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
		result.append(" (rule: ");
		result.append(rule);
		result.append(", subject: ");
		result.append(subject);
		result.append(", inputHash: ");
		result.append(inputHash);
		result.append(", reason: ");
		result.append(reason);
		result.append(", who: ");
		result.append(who);
		result.append(", at: ");
		result.append(at);
		result.append(')');
		return result.toString();
	}

} //StopOverrideImpl
