/**
 */
package org.flexwright.model.impl;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.flexwright.model.ModelPackage;
import org.flexwright.model.PropertyKey;
import org.flexwright.model.Target;
import org.flexwright.model.TargetRule;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Target</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.impl.TargetImpl#getKey <em>Key</em>}</li>
 *   <li>{@link org.flexwright.model.impl.TargetImpl#getRule <em>Rule</em>}</li>
 *   <li>{@link org.flexwright.model.impl.TargetImpl#getLow <em>Low</em>}</li>
 *   <li>{@link org.flexwright.model.impl.TargetImpl#getHigh <em>High</em>}</li>
 *   <li>{@link org.flexwright.model.impl.TargetImpl#getNominal <em>Nominal</em>}</li>
 *   <li>{@link org.flexwright.model.impl.TargetImpl#getTolerance <em>Tolerance</em>}</li>
 *   <li>{@link org.flexwright.model.impl.TargetImpl#getWeight <em>Weight</em>}</li>
 *   <li>{@link org.flexwright.model.impl.TargetImpl#getRejectBelow <em>Reject Below</em>}</li>
 *   <li>{@link org.flexwright.model.impl.TargetImpl#getRejectAbove <em>Reject Above</em>}</li>
 *   <li>{@link org.flexwright.model.impl.TargetImpl#getAllowedShare <em>Allowed Share</em>}</li>
 * </ul>
 *
 * @generated
 */
public class TargetImpl extends EntryImpl implements Target {
	/**
	 * The cached value of the '{@link #getKey() <em>Key</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKey()
	 * @generated
	 * @ordered
	 */
	protected PropertyKey key;

	/**
	 * The default value of the '{@link #getRule() <em>Rule</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRule()
	 * @generated
	 * @ordered
	 */
	protected static final TargetRule RULE_EDEFAULT = TargetRule.AT_LEAST;

	/**
	 * The cached value of the '{@link #getRule() <em>Rule</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRule()
	 * @generated
	 * @ordered
	 */
	protected TargetRule rule = RULE_EDEFAULT;

	/**
	 * The default value of the '{@link #getLow() <em>Low</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLow()
	 * @generated
	 * @ordered
	 */
	protected static final Double LOW_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLow() <em>Low</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLow()
	 * @generated
	 * @ordered
	 */
	protected Double low = LOW_EDEFAULT;

	/**
	 * The default value of the '{@link #getHigh() <em>High</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHigh()
	 * @generated
	 * @ordered
	 */
	protected static final Double HIGH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getHigh() <em>High</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHigh()
	 * @generated
	 * @ordered
	 */
	protected Double high = HIGH_EDEFAULT;

	/**
	 * The default value of the '{@link #getNominal() <em>Nominal</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNominal()
	 * @generated
	 * @ordered
	 */
	protected static final Double NOMINAL_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getNominal() <em>Nominal</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNominal()
	 * @generated
	 * @ordered
	 */
	protected Double nominal = NOMINAL_EDEFAULT;

	/**
	 * The default value of the '{@link #getTolerance() <em>Tolerance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTolerance()
	 * @generated
	 * @ordered
	 */
	protected static final Double TOLERANCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTolerance() <em>Tolerance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTolerance()
	 * @generated
	 * @ordered
	 */
	protected Double tolerance = TOLERANCE_EDEFAULT;

	/**
	 * The default value of the '{@link #getWeight() <em>Weight</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWeight()
	 * @generated
	 * @ordered
	 */
	protected static final Double WEIGHT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWeight() <em>Weight</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWeight()
	 * @generated
	 * @ordered
	 */
	protected Double weight = WEIGHT_EDEFAULT;

	/**
	 * The default value of the '{@link #getRejectBelow() <em>Reject Below</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRejectBelow()
	 * @generated
	 * @ordered
	 */
	protected static final Double REJECT_BELOW_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRejectBelow() <em>Reject Below</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRejectBelow()
	 * @generated
	 * @ordered
	 */
	protected Double rejectBelow = REJECT_BELOW_EDEFAULT;

	/**
	 * The default value of the '{@link #getRejectAbove() <em>Reject Above</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRejectAbove()
	 * @generated
	 * @ordered
	 */
	protected static final Double REJECT_ABOVE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRejectAbove() <em>Reject Above</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRejectAbove()
	 * @generated
	 * @ordered
	 */
	protected Double rejectAbove = REJECT_ABOVE_EDEFAULT;

	/**
	 * The default value of the '{@link #getAllowedShare() <em>Allowed Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAllowedShare()
	 * @generated
	 * @ordered
	 */
	protected static final Double ALLOWED_SHARE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAllowedShare() <em>Allowed Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAllowedShare()
	 * @generated
	 * @ordered
	 */
	protected Double allowedShare = ALLOWED_SHARE_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected TargetImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.TARGET;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PropertyKey getKey() {
		return key;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetKey(PropertyKey newKey, NotificationChain msgs) {
		PropertyKey oldKey = key;
		key = newKey;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, ModelPackage.TARGET__KEY, oldKey, newKey);
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
	public void setKey(PropertyKey newKey) {
		if (newKey != key) {
			NotificationChain msgs = null;
			if (key != null)
				msgs = ((InternalEObject)key).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - ModelPackage.TARGET__KEY, null, msgs);
			if (newKey != null)
				msgs = ((InternalEObject)newKey).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - ModelPackage.TARGET__KEY, null, msgs);
			msgs = basicSetKey(newKey, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.TARGET__KEY, newKey, newKey));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TargetRule getRule() {
		return rule;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRule(TargetRule newRule) {
		TargetRule oldRule = rule;
		rule = newRule == null ? RULE_EDEFAULT : newRule;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.TARGET__RULE, oldRule, rule));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getLow() {
		return low;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLow(Double newLow) {
		Double oldLow = low;
		low = newLow;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.TARGET__LOW, oldLow, low));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getHigh() {
		return high;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHigh(Double newHigh) {
		Double oldHigh = high;
		high = newHigh;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.TARGET__HIGH, oldHigh, high));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getNominal() {
		return nominal;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNominal(Double newNominal) {
		Double oldNominal = nominal;
		nominal = newNominal;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.TARGET__NOMINAL, oldNominal, nominal));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getTolerance() {
		return tolerance;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTolerance(Double newTolerance) {
		Double oldTolerance = tolerance;
		tolerance = newTolerance;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.TARGET__TOLERANCE, oldTolerance, tolerance));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getWeight() {
		return weight;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWeight(Double newWeight) {
		Double oldWeight = weight;
		weight = newWeight;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.TARGET__WEIGHT, oldWeight, weight));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getRejectBelow() {
		return rejectBelow;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRejectBelow(Double newRejectBelow) {
		Double oldRejectBelow = rejectBelow;
		rejectBelow = newRejectBelow;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.TARGET__REJECT_BELOW, oldRejectBelow, rejectBelow));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getRejectAbove() {
		return rejectAbove;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRejectAbove(Double newRejectAbove) {
		Double oldRejectAbove = rejectAbove;
		rejectAbove = newRejectAbove;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.TARGET__REJECT_ABOVE, oldRejectAbove, rejectAbove));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getAllowedShare() {
		return allowedShare;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAllowedShare(Double newAllowedShare) {
		Double oldAllowedShare = allowedShare;
		allowedShare = newAllowedShare;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.TARGET__ALLOWED_SHARE, oldAllowedShare, allowedShare));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case ModelPackage.TARGET__KEY:
				return basicSetKey(null, msgs);
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
			case ModelPackage.TARGET__KEY:
				return getKey();
			case ModelPackage.TARGET__RULE:
				return getRule();
			case ModelPackage.TARGET__LOW:
				return getLow();
			case ModelPackage.TARGET__HIGH:
				return getHigh();
			case ModelPackage.TARGET__NOMINAL:
				return getNominal();
			case ModelPackage.TARGET__TOLERANCE:
				return getTolerance();
			case ModelPackage.TARGET__WEIGHT:
				return getWeight();
			case ModelPackage.TARGET__REJECT_BELOW:
				return getRejectBelow();
			case ModelPackage.TARGET__REJECT_ABOVE:
				return getRejectAbove();
			case ModelPackage.TARGET__ALLOWED_SHARE:
				return getAllowedShare();
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
			case ModelPackage.TARGET__KEY:
				setKey((PropertyKey)newValue);
				return;
			case ModelPackage.TARGET__RULE:
				setRule((TargetRule)newValue);
				return;
			case ModelPackage.TARGET__LOW:
				setLow((Double)newValue);
				return;
			case ModelPackage.TARGET__HIGH:
				setHigh((Double)newValue);
				return;
			case ModelPackage.TARGET__NOMINAL:
				setNominal((Double)newValue);
				return;
			case ModelPackage.TARGET__TOLERANCE:
				setTolerance((Double)newValue);
				return;
			case ModelPackage.TARGET__WEIGHT:
				setWeight((Double)newValue);
				return;
			case ModelPackage.TARGET__REJECT_BELOW:
				setRejectBelow((Double)newValue);
				return;
			case ModelPackage.TARGET__REJECT_ABOVE:
				setRejectAbove((Double)newValue);
				return;
			case ModelPackage.TARGET__ALLOWED_SHARE:
				setAllowedShare((Double)newValue);
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
			case ModelPackage.TARGET__KEY:
				setKey((PropertyKey)null);
				return;
			case ModelPackage.TARGET__RULE:
				setRule(RULE_EDEFAULT);
				return;
			case ModelPackage.TARGET__LOW:
				setLow(LOW_EDEFAULT);
				return;
			case ModelPackage.TARGET__HIGH:
				setHigh(HIGH_EDEFAULT);
				return;
			case ModelPackage.TARGET__NOMINAL:
				setNominal(NOMINAL_EDEFAULT);
				return;
			case ModelPackage.TARGET__TOLERANCE:
				setTolerance(TOLERANCE_EDEFAULT);
				return;
			case ModelPackage.TARGET__WEIGHT:
				setWeight(WEIGHT_EDEFAULT);
				return;
			case ModelPackage.TARGET__REJECT_BELOW:
				setRejectBelow(REJECT_BELOW_EDEFAULT);
				return;
			case ModelPackage.TARGET__REJECT_ABOVE:
				setRejectAbove(REJECT_ABOVE_EDEFAULT);
				return;
			case ModelPackage.TARGET__ALLOWED_SHARE:
				setAllowedShare(ALLOWED_SHARE_EDEFAULT);
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
			case ModelPackage.TARGET__KEY:
				return key != null;
			case ModelPackage.TARGET__RULE:
				return rule != RULE_EDEFAULT;
			case ModelPackage.TARGET__LOW:
				return LOW_EDEFAULT == null ? low != null : !LOW_EDEFAULT.equals(low);
			case ModelPackage.TARGET__HIGH:
				return HIGH_EDEFAULT == null ? high != null : !HIGH_EDEFAULT.equals(high);
			case ModelPackage.TARGET__NOMINAL:
				return NOMINAL_EDEFAULT == null ? nominal != null : !NOMINAL_EDEFAULT.equals(nominal);
			case ModelPackage.TARGET__TOLERANCE:
				return TOLERANCE_EDEFAULT == null ? tolerance != null : !TOLERANCE_EDEFAULT.equals(tolerance);
			case ModelPackage.TARGET__WEIGHT:
				return WEIGHT_EDEFAULT == null ? weight != null : !WEIGHT_EDEFAULT.equals(weight);
			case ModelPackage.TARGET__REJECT_BELOW:
				return REJECT_BELOW_EDEFAULT == null ? rejectBelow != null : !REJECT_BELOW_EDEFAULT.equals(rejectBelow);
			case ModelPackage.TARGET__REJECT_ABOVE:
				return REJECT_ABOVE_EDEFAULT == null ? rejectAbove != null : !REJECT_ABOVE_EDEFAULT.equals(rejectAbove);
			case ModelPackage.TARGET__ALLOWED_SHARE:
				return ALLOWED_SHARE_EDEFAULT == null ? allowedShare != null : !ALLOWED_SHARE_EDEFAULT.equals(allowedShare);
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
		result.append(", low: ");
		result.append(low);
		result.append(", high: ");
		result.append(high);
		result.append(", nominal: ");
		result.append(nominal);
		result.append(", tolerance: ");
		result.append(tolerance);
		result.append(", weight: ");
		result.append(weight);
		result.append(", rejectBelow: ");
		result.append(rejectBelow);
		result.append(", rejectAbove: ");
		result.append(rejectAbove);
		result.append(", allowedShare: ");
		result.append(allowedShare);
		result.append(')');
		return result.toString();
	}

} //TargetImpl
