/**
 */
package org.flexwright.testing.data.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.flexwright.testing.data.BounceDetails;
import org.flexwright.testing.data.TestingDataPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Bounce Details</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.testing.data.impl.BounceDetailsImpl#getChannel <em>Channel</em>}</li>
 *   <li>{@link org.flexwright.testing.data.impl.BounceDetailsImpl#getDrop <em>Drop</em>}</li>
 *   <li>{@link org.flexwright.testing.data.impl.BounceDetailsImpl#getWhat <em>What</em>}</li>
 *   <li>{@link org.flexwright.testing.data.impl.BounceDetailsImpl#getThreshold <em>Threshold</em>}</li>
 *   <li>{@link org.flexwright.testing.data.impl.BounceDetailsImpl#getQuiet <em>Quiet</em>}</li>
 * </ul>
 *
 * @generated
 */
public class BounceDetailsImpl extends MinimalEObjectImpl.Container implements BounceDetails {
	/**
	 * The default value of the '{@link #getChannel() <em>Channel</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getChannel()
	 * @generated
	 * @ordered
	 */
	protected static final Integer CHANNEL_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getChannel() <em>Channel</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getChannel()
	 * @generated
	 * @ordered
	 */
	protected Integer channel = CHANNEL_EDEFAULT;

	/**
	 * The default value of the '{@link #getDrop() <em>Drop</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDrop()
	 * @generated
	 * @ordered
	 */
	protected static final Double DROP_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDrop() <em>Drop</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDrop()
	 * @generated
	 * @ordered
	 */
	protected Double drop = DROP_EDEFAULT;

	/**
	 * The default value of the '{@link #getWhat() <em>What</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWhat()
	 * @generated
	 * @ordered
	 */
	protected static final String WHAT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWhat() <em>What</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWhat()
	 * @generated
	 * @ordered
	 */
	protected String what = WHAT_EDEFAULT;

	/**
	 * The default value of the '{@link #getThreshold() <em>Threshold</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getThreshold()
	 * @generated
	 * @ordered
	 */
	protected static final Double THRESHOLD_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getThreshold() <em>Threshold</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getThreshold()
	 * @generated
	 * @ordered
	 */
	protected Double threshold = THRESHOLD_EDEFAULT;

	/**
	 * The default value of the '{@link #getQuiet() <em>Quiet</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getQuiet()
	 * @generated
	 * @ordered
	 */
	protected static final Double QUIET_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getQuiet() <em>Quiet</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getQuiet()
	 * @generated
	 * @ordered
	 */
	protected Double quiet = QUIET_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected BounceDetailsImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return TestingDataPackage.Literals.BOUNCE_DETAILS;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getChannel() {
		return channel;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setChannel(Integer newChannel) {
		Integer oldChannel = channel;
		channel = newChannel;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, TestingDataPackage.BOUNCE_DETAILS__CHANNEL, oldChannel, channel));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getDrop() {
		return drop;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDrop(Double newDrop) {
		Double oldDrop = drop;
		drop = newDrop;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, TestingDataPackage.BOUNCE_DETAILS__DROP, oldDrop, drop));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getWhat() {
		return what;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWhat(String newWhat) {
		String oldWhat = what;
		what = newWhat;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, TestingDataPackage.BOUNCE_DETAILS__WHAT, oldWhat, what));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getThreshold() {
		return threshold;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setThreshold(Double newThreshold) {
		Double oldThreshold = threshold;
		threshold = newThreshold;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, TestingDataPackage.BOUNCE_DETAILS__THRESHOLD, oldThreshold, threshold));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getQuiet() {
		return quiet;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setQuiet(Double newQuiet) {
		Double oldQuiet = quiet;
		quiet = newQuiet;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, TestingDataPackage.BOUNCE_DETAILS__QUIET, oldQuiet, quiet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case TestingDataPackage.BOUNCE_DETAILS__CHANNEL:
				return getChannel();
			case TestingDataPackage.BOUNCE_DETAILS__DROP:
				return getDrop();
			case TestingDataPackage.BOUNCE_DETAILS__WHAT:
				return getWhat();
			case TestingDataPackage.BOUNCE_DETAILS__THRESHOLD:
				return getThreshold();
			case TestingDataPackage.BOUNCE_DETAILS__QUIET:
				return getQuiet();
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
			case TestingDataPackage.BOUNCE_DETAILS__CHANNEL:
				setChannel((Integer)newValue);
				return;
			case TestingDataPackage.BOUNCE_DETAILS__DROP:
				setDrop((Double)newValue);
				return;
			case TestingDataPackage.BOUNCE_DETAILS__WHAT:
				setWhat((String)newValue);
				return;
			case TestingDataPackage.BOUNCE_DETAILS__THRESHOLD:
				setThreshold((Double)newValue);
				return;
			case TestingDataPackage.BOUNCE_DETAILS__QUIET:
				setQuiet((Double)newValue);
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
			case TestingDataPackage.BOUNCE_DETAILS__CHANNEL:
				setChannel(CHANNEL_EDEFAULT);
				return;
			case TestingDataPackage.BOUNCE_DETAILS__DROP:
				setDrop(DROP_EDEFAULT);
				return;
			case TestingDataPackage.BOUNCE_DETAILS__WHAT:
				setWhat(WHAT_EDEFAULT);
				return;
			case TestingDataPackage.BOUNCE_DETAILS__THRESHOLD:
				setThreshold(THRESHOLD_EDEFAULT);
				return;
			case TestingDataPackage.BOUNCE_DETAILS__QUIET:
				setQuiet(QUIET_EDEFAULT);
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
			case TestingDataPackage.BOUNCE_DETAILS__CHANNEL:
				return CHANNEL_EDEFAULT == null ? channel != null : !CHANNEL_EDEFAULT.equals(channel);
			case TestingDataPackage.BOUNCE_DETAILS__DROP:
				return DROP_EDEFAULT == null ? drop != null : !DROP_EDEFAULT.equals(drop);
			case TestingDataPackage.BOUNCE_DETAILS__WHAT:
				return WHAT_EDEFAULT == null ? what != null : !WHAT_EDEFAULT.equals(what);
			case TestingDataPackage.BOUNCE_DETAILS__THRESHOLD:
				return THRESHOLD_EDEFAULT == null ? threshold != null : !THRESHOLD_EDEFAULT.equals(threshold);
			case TestingDataPackage.BOUNCE_DETAILS__QUIET:
				return QUIET_EDEFAULT == null ? quiet != null : !QUIET_EDEFAULT.equals(quiet);
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
		result.append(" (channel: ");
		result.append(channel);
		result.append(", drop: ");
		result.append(drop);
		result.append(", what: ");
		result.append(what);
		result.append(", threshold: ");
		result.append(threshold);
		result.append(", quiet: ");
		result.append(quiet);
		result.append(')');
		return result.toString();
	}

} //BounceDetailsImpl
