/**
 */
package org.flexwright.testing.data.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.flexwright.testing.data.PressDetails;
import org.flexwright.testing.data.Slack;
import org.flexwright.testing.data.TestingDataPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Press Details</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.testing.data.impl.PressDetailsImpl#getSlack <em>Slack</em>}</li>
 *   <li>{@link org.flexwright.testing.data.impl.PressDetailsImpl#getZeroForce <em>Zero Force</em>}</li>
 *   <li>{@link org.flexwright.testing.data.impl.PressDetailsImpl#getSpeed <em>Speed</em>}</li>
 *   <li>{@link org.flexwright.testing.data.impl.PressDetailsImpl#getStop <em>Stop</em>}</li>
 *   <li>{@link org.flexwright.testing.data.impl.PressDetailsImpl#getTip <em>Tip</em>}</li>
 * </ul>
 *
 * @generated
 */
public class PressDetailsImpl extends MinimalEObjectImpl.Container implements PressDetails {
	/**
	 * The default value of the '{@link #getSlack() <em>Slack</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSlack()
	 * @generated
	 * @ordered
	 */
	protected static final Slack SLACK_EDEFAULT = Slack.UNKNOWN;

	/**
	 * The cached value of the '{@link #getSlack() <em>Slack</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSlack()
	 * @generated
	 * @ordered
	 */
	protected Slack slack = SLACK_EDEFAULT;

	/**
	 * The default value of the '{@link #getZeroForce() <em>Zero Force</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getZeroForce()
	 * @generated
	 * @ordered
	 */
	protected static final Double ZERO_FORCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getZeroForce() <em>Zero Force</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getZeroForce()
	 * @generated
	 * @ordered
	 */
	protected Double zeroForce = ZERO_FORCE_EDEFAULT;

	/**
	 * The default value of the '{@link #getSpeed() <em>Speed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSpeed()
	 * @generated
	 * @ordered
	 */
	protected static final Double SPEED_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSpeed() <em>Speed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSpeed()
	 * @generated
	 * @ordered
	 */
	protected Double speed = SPEED_EDEFAULT;

	/**
	 * The default value of the '{@link #getStop() <em>Stop</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStop()
	 * @generated
	 * @ordered
	 */
	protected static final Double STOP_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getStop() <em>Stop</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStop()
	 * @generated
	 * @ordered
	 */
	protected Double stop = STOP_EDEFAULT;

	/**
	 * The default value of the '{@link #getTip() <em>Tip</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTip()
	 * @generated
	 * @ordered
	 */
	protected static final String TIP_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTip() <em>Tip</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTip()
	 * @generated
	 * @ordered
	 */
	protected String tip = TIP_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected PressDetailsImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return TestingDataPackage.Literals.PRESS_DETAILS;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Slack getSlack() {
		return slack;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSlack(Slack newSlack) {
		Slack oldSlack = slack;
		slack = newSlack == null ? SLACK_EDEFAULT : newSlack;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, TestingDataPackage.PRESS_DETAILS__SLACK, oldSlack, slack));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getZeroForce() {
		return zeroForce;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setZeroForce(Double newZeroForce) {
		Double oldZeroForce = zeroForce;
		zeroForce = newZeroForce;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, TestingDataPackage.PRESS_DETAILS__ZERO_FORCE, oldZeroForce, zeroForce));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getSpeed() {
		return speed;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSpeed(Double newSpeed) {
		Double oldSpeed = speed;
		speed = newSpeed;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, TestingDataPackage.PRESS_DETAILS__SPEED, oldSpeed, speed));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getStop() {
		return stop;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStop(Double newStop) {
		Double oldStop = stop;
		stop = newStop;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, TestingDataPackage.PRESS_DETAILS__STOP, oldStop, stop));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getTip() {
		return tip;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTip(String newTip) {
		String oldTip = tip;
		tip = newTip;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, TestingDataPackage.PRESS_DETAILS__TIP, oldTip, tip));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case TestingDataPackage.PRESS_DETAILS__SLACK:
				return getSlack();
			case TestingDataPackage.PRESS_DETAILS__ZERO_FORCE:
				return getZeroForce();
			case TestingDataPackage.PRESS_DETAILS__SPEED:
				return getSpeed();
			case TestingDataPackage.PRESS_DETAILS__STOP:
				return getStop();
			case TestingDataPackage.PRESS_DETAILS__TIP:
				return getTip();
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
			case TestingDataPackage.PRESS_DETAILS__SLACK:
				setSlack((Slack)newValue);
				return;
			case TestingDataPackage.PRESS_DETAILS__ZERO_FORCE:
				setZeroForce((Double)newValue);
				return;
			case TestingDataPackage.PRESS_DETAILS__SPEED:
				setSpeed((Double)newValue);
				return;
			case TestingDataPackage.PRESS_DETAILS__STOP:
				setStop((Double)newValue);
				return;
			case TestingDataPackage.PRESS_DETAILS__TIP:
				setTip((String)newValue);
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
			case TestingDataPackage.PRESS_DETAILS__SLACK:
				setSlack(SLACK_EDEFAULT);
				return;
			case TestingDataPackage.PRESS_DETAILS__ZERO_FORCE:
				setZeroForce(ZERO_FORCE_EDEFAULT);
				return;
			case TestingDataPackage.PRESS_DETAILS__SPEED:
				setSpeed(SPEED_EDEFAULT);
				return;
			case TestingDataPackage.PRESS_DETAILS__STOP:
				setStop(STOP_EDEFAULT);
				return;
			case TestingDataPackage.PRESS_DETAILS__TIP:
				setTip(TIP_EDEFAULT);
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
			case TestingDataPackage.PRESS_DETAILS__SLACK:
				return slack != SLACK_EDEFAULT;
			case TestingDataPackage.PRESS_DETAILS__ZERO_FORCE:
				return ZERO_FORCE_EDEFAULT == null ? zeroForce != null : !ZERO_FORCE_EDEFAULT.equals(zeroForce);
			case TestingDataPackage.PRESS_DETAILS__SPEED:
				return SPEED_EDEFAULT == null ? speed != null : !SPEED_EDEFAULT.equals(speed);
			case TestingDataPackage.PRESS_DETAILS__STOP:
				return STOP_EDEFAULT == null ? stop != null : !STOP_EDEFAULT.equals(stop);
			case TestingDataPackage.PRESS_DETAILS__TIP:
				return TIP_EDEFAULT == null ? tip != null : !TIP_EDEFAULT.equals(tip);
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
		result.append(" (slack: ");
		result.append(slack);
		result.append(", zeroForce: ");
		result.append(zeroForce);
		result.append(", speed: ");
		result.append(speed);
		result.append(", stop: ");
		result.append(stop);
		result.append(", tip: ");
		result.append(tip);
		result.append(')');
		return result.toString();
	}

} //PressDetailsImpl
