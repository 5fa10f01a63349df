/**
 */
package org.flexwright.testing.data.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.flexwright.testing.data.Slack;
import org.flexwright.testing.data.StretchDetails;
import org.flexwright.testing.data.StretchLoading;
import org.flexwright.testing.data.TestingDataPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Stretch Details</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.testing.data.impl.StretchDetailsImpl#getLoading <em>Loading</em>}</li>
 *   <li>{@link org.flexwright.testing.data.impl.StretchDetailsImpl#getPiece <em>Piece</em>}</li>
 *   <li>{@link org.flexwright.testing.data.impl.StretchDetailsImpl#getGaugeLength <em>Gauge Length</em>}</li>
 *   <li>{@link org.flexwright.testing.data.impl.StretchDetailsImpl#getWidth <em>Width</em>}</li>
 *   <li>{@link org.flexwright.testing.data.impl.StretchDetailsImpl#getThickness <em>Thickness</em>}</li>
 *   <li>{@link org.flexwright.testing.data.impl.StretchDetailsImpl#getSpeed <em>Speed</em>}</li>
 *   <li>{@link org.flexwright.testing.data.impl.StretchDetailsImpl#getSlack <em>Slack</em>}</li>
 *   <li>{@link org.flexwright.testing.data.impl.StretchDetailsImpl#getZeroForce <em>Zero Force</em>}</li>
 *   <li>{@link org.flexwright.testing.data.impl.StretchDetailsImpl#getBroke <em>Broke</em>}</li>
 *   <li>{@link org.flexwright.testing.data.impl.StretchDetailsImpl#getBrokeInGrip <em>Broke In Grip</em>}</li>
 * </ul>
 *
 * @generated
 */
public class StretchDetailsImpl extends MinimalEObjectImpl.Container implements StretchDetails {
	/**
	 * The default value of the '{@link #getLoading() <em>Loading</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLoading()
	 * @generated
	 * @ordered
	 */
	protected static final StretchLoading LOADING_EDEFAULT = StretchLoading.UNKNOWN;

	/**
	 * The cached value of the '{@link #getLoading() <em>Loading</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLoading()
	 * @generated
	 * @ordered
	 */
	protected StretchLoading loading = LOADING_EDEFAULT;

	/**
	 * The default value of the '{@link #getPiece() <em>Piece</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPiece()
	 * @generated
	 * @ordered
	 */
	protected static final String PIECE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPiece() <em>Piece</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPiece()
	 * @generated
	 * @ordered
	 */
	protected String piece = PIECE_EDEFAULT;

	/**
	 * The default value of the '{@link #getGaugeLength() <em>Gauge Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGaugeLength()
	 * @generated
	 * @ordered
	 */
	protected static final Double GAUGE_LENGTH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getGaugeLength() <em>Gauge Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGaugeLength()
	 * @generated
	 * @ordered
	 */
	protected Double gaugeLength = GAUGE_LENGTH_EDEFAULT;

	/**
	 * The default value of the '{@link #getWidth() <em>Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWidth()
	 * @generated
	 * @ordered
	 */
	protected static final Double WIDTH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWidth() <em>Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWidth()
	 * @generated
	 * @ordered
	 */
	protected Double width = WIDTH_EDEFAULT;

	/**
	 * The default value of the '{@link #getThickness() <em>Thickness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getThickness()
	 * @generated
	 * @ordered
	 */
	protected static final Double THICKNESS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getThickness() <em>Thickness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getThickness()
	 * @generated
	 * @ordered
	 */
	protected Double thickness = THICKNESS_EDEFAULT;

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
	 * The default value of the '{@link #getBroke() <em>Broke</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBroke()
	 * @generated
	 * @ordered
	 */
	protected static final Boolean BROKE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBroke() <em>Broke</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBroke()
	 * @generated
	 * @ordered
	 */
	protected Boolean broke = BROKE_EDEFAULT;

	/**
	 * The default value of the '{@link #getBrokeInGrip() <em>Broke In Grip</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBrokeInGrip()
	 * @generated
	 * @ordered
	 */
	protected static final Boolean BROKE_IN_GRIP_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBrokeInGrip() <em>Broke In Grip</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBrokeInGrip()
	 * @generated
	 * @ordered
	 */
	protected Boolean brokeInGrip = BROKE_IN_GRIP_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected StretchDetailsImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return TestingDataPackage.Literals.STRETCH_DETAILS;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public StretchLoading getLoading() {
		return loading;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLoading(StretchLoading newLoading) {
		StretchLoading oldLoading = loading;
		loading = newLoading == null ? LOADING_EDEFAULT : newLoading;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, TestingDataPackage.STRETCH_DETAILS__LOADING, oldLoading, loading));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getPiece() {
		return piece;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPiece(String newPiece) {
		String oldPiece = piece;
		piece = newPiece;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, TestingDataPackage.STRETCH_DETAILS__PIECE, oldPiece, piece));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getGaugeLength() {
		return gaugeLength;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGaugeLength(Double newGaugeLength) {
		Double oldGaugeLength = gaugeLength;
		gaugeLength = newGaugeLength;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, TestingDataPackage.STRETCH_DETAILS__GAUGE_LENGTH, oldGaugeLength, gaugeLength));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getWidth() {
		return width;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWidth(Double newWidth) {
		Double oldWidth = width;
		width = newWidth;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, TestingDataPackage.STRETCH_DETAILS__WIDTH, oldWidth, width));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getThickness() {
		return thickness;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setThickness(Double newThickness) {
		Double oldThickness = thickness;
		thickness = newThickness;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, TestingDataPackage.STRETCH_DETAILS__THICKNESS, oldThickness, thickness));
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
			eNotify(new ENotificationImpl(this, Notification.SET, TestingDataPackage.STRETCH_DETAILS__SPEED, oldSpeed, speed));
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
			eNotify(new ENotificationImpl(this, Notification.SET, TestingDataPackage.STRETCH_DETAILS__SLACK, oldSlack, slack));
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
			eNotify(new ENotificationImpl(this, Notification.SET, TestingDataPackage.STRETCH_DETAILS__ZERO_FORCE, oldZeroForce, zeroForce));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Boolean getBroke() {
		return broke;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBroke(Boolean newBroke) {
		Boolean oldBroke = broke;
		broke = newBroke;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, TestingDataPackage.STRETCH_DETAILS__BROKE, oldBroke, broke));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Boolean getBrokeInGrip() {
		return brokeInGrip;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBrokeInGrip(Boolean newBrokeInGrip) {
		Boolean oldBrokeInGrip = brokeInGrip;
		brokeInGrip = newBrokeInGrip;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, TestingDataPackage.STRETCH_DETAILS__BROKE_IN_GRIP, oldBrokeInGrip, brokeInGrip));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case TestingDataPackage.STRETCH_DETAILS__LOADING:
				return getLoading();
			case TestingDataPackage.STRETCH_DETAILS__PIECE:
				return getPiece();
			case TestingDataPackage.STRETCH_DETAILS__GAUGE_LENGTH:
				return getGaugeLength();
			case TestingDataPackage.STRETCH_DETAILS__WIDTH:
				return getWidth();
			case TestingDataPackage.STRETCH_DETAILS__THICKNESS:
				return getThickness();
			case TestingDataPackage.STRETCH_DETAILS__SPEED:
				return getSpeed();
			case TestingDataPackage.STRETCH_DETAILS__SLACK:
				return getSlack();
			case TestingDataPackage.STRETCH_DETAILS__ZERO_FORCE:
				return getZeroForce();
			case TestingDataPackage.STRETCH_DETAILS__BROKE:
				return getBroke();
			case TestingDataPackage.STRETCH_DETAILS__BROKE_IN_GRIP:
				return getBrokeInGrip();
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
			case TestingDataPackage.STRETCH_DETAILS__LOADING:
				setLoading((StretchLoading)newValue);
				return;
			case TestingDataPackage.STRETCH_DETAILS__PIECE:
				setPiece((String)newValue);
				return;
			case TestingDataPackage.STRETCH_DETAILS__GAUGE_LENGTH:
				setGaugeLength((Double)newValue);
				return;
			case TestingDataPackage.STRETCH_DETAILS__WIDTH:
				setWidth((Double)newValue);
				return;
			case TestingDataPackage.STRETCH_DETAILS__THICKNESS:
				setThickness((Double)newValue);
				return;
			case TestingDataPackage.STRETCH_DETAILS__SPEED:
				setSpeed((Double)newValue);
				return;
			case TestingDataPackage.STRETCH_DETAILS__SLACK:
				setSlack((Slack)newValue);
				return;
			case TestingDataPackage.STRETCH_DETAILS__ZERO_FORCE:
				setZeroForce((Double)newValue);
				return;
			case TestingDataPackage.STRETCH_DETAILS__BROKE:
				setBroke((Boolean)newValue);
				return;
			case TestingDataPackage.STRETCH_DETAILS__BROKE_IN_GRIP:
				setBrokeInGrip((Boolean)newValue);
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
			case TestingDataPackage.STRETCH_DETAILS__LOADING:
				setLoading(LOADING_EDEFAULT);
				return;
			case TestingDataPackage.STRETCH_DETAILS__PIECE:
				setPiece(PIECE_EDEFAULT);
				return;
			case TestingDataPackage.STRETCH_DETAILS__GAUGE_LENGTH:
				setGaugeLength(GAUGE_LENGTH_EDEFAULT);
				return;
			case TestingDataPackage.STRETCH_DETAILS__WIDTH:
				setWidth(WIDTH_EDEFAULT);
				return;
			case TestingDataPackage.STRETCH_DETAILS__THICKNESS:
				setThickness(THICKNESS_EDEFAULT);
				return;
			case TestingDataPackage.STRETCH_DETAILS__SPEED:
				setSpeed(SPEED_EDEFAULT);
				return;
			case TestingDataPackage.STRETCH_DETAILS__SLACK:
				setSlack(SLACK_EDEFAULT);
				return;
			case TestingDataPackage.STRETCH_DETAILS__ZERO_FORCE:
				setZeroForce(ZERO_FORCE_EDEFAULT);
				return;
			case TestingDataPackage.STRETCH_DETAILS__BROKE:
				setBroke(BROKE_EDEFAULT);
				return;
			case TestingDataPackage.STRETCH_DETAILS__BROKE_IN_GRIP:
				setBrokeInGrip(BROKE_IN_GRIP_EDEFAULT);
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
			case TestingDataPackage.STRETCH_DETAILS__LOADING:
				return loading != LOADING_EDEFAULT;
			case TestingDataPackage.STRETCH_DETAILS__PIECE:
				return PIECE_EDEFAULT == null ? piece != null : !PIECE_EDEFAULT.equals(piece);
			case TestingDataPackage.STRETCH_DETAILS__GAUGE_LENGTH:
				return GAUGE_LENGTH_EDEFAULT == null ? gaugeLength != null : !GAUGE_LENGTH_EDEFAULT.equals(gaugeLength);
			case TestingDataPackage.STRETCH_DETAILS__WIDTH:
				return WIDTH_EDEFAULT == null ? width != null : !WIDTH_EDEFAULT.equals(width);
			case TestingDataPackage.STRETCH_DETAILS__THICKNESS:
				return THICKNESS_EDEFAULT == null ? thickness != null : !THICKNESS_EDEFAULT.equals(thickness);
			case TestingDataPackage.STRETCH_DETAILS__SPEED:
				return SPEED_EDEFAULT == null ? speed != null : !SPEED_EDEFAULT.equals(speed);
			case TestingDataPackage.STRETCH_DETAILS__SLACK:
				return slack != SLACK_EDEFAULT;
			case TestingDataPackage.STRETCH_DETAILS__ZERO_FORCE:
				return ZERO_FORCE_EDEFAULT == null ? zeroForce != null : !ZERO_FORCE_EDEFAULT.equals(zeroForce);
			case TestingDataPackage.STRETCH_DETAILS__BROKE:
				return BROKE_EDEFAULT == null ? broke != null : !BROKE_EDEFAULT.equals(broke);
			case TestingDataPackage.STRETCH_DETAILS__BROKE_IN_GRIP:
				return BROKE_IN_GRIP_EDEFAULT == null ? brokeInGrip != null : !BROKE_IN_GRIP_EDEFAULT.equals(brokeInGrip);
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
		result.append(" (loading: ");
		result.append(loading);
		result.append(", piece: ");
		result.append(piece);
		result.append(", gaugeLength: ");
		result.append(gaugeLength);
		result.append(", width: ");
		result.append(width);
		result.append(", thickness: ");
		result.append(thickness);
		result.append(", speed: ");
		result.append(speed);
		result.append(", slack: ");
		result.append(slack);
		result.append(", zeroForce: ");
		result.append(zeroForce);
		result.append(", broke: ");
		result.append(broke);
		result.append(", brokeInGrip: ");
		result.append(brokeInGrip);
		result.append(')');
		return result.toString();
	}

} //StretchDetailsImpl
