/**
 */
package org.flexwright.testing.data.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.flexwright.testing.data.FilmDetails;
import org.flexwright.testing.data.TestingDataPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Film Details</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.testing.data.impl.FilmDetailsImpl#getFrameRate <em>Frame Rate</em>}</li>
 *   <li>{@link org.flexwright.testing.data.impl.FilmDetailsImpl#getPixelsPerMm <em>Pixels Per Mm</em>}</li>
 *   <li>{@link org.flexwright.testing.data.impl.FilmDetailsImpl#getHeightDown <em>Height Down</em>}</li>
 * </ul>
 *
 * @generated
 */
public class FilmDetailsImpl extends MinimalEObjectImpl.Container implements FilmDetails {
	/**
	 * The default value of the '{@link #getFrameRate() <em>Frame Rate</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFrameRate()
	 * @generated
	 * @ordered
	 */
	protected static final Double FRAME_RATE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFrameRate() <em>Frame Rate</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFrameRate()
	 * @generated
	 * @ordered
	 */
	protected Double frameRate = FRAME_RATE_EDEFAULT;

	/**
	 * The default value of the '{@link #getPixelsPerMm() <em>Pixels Per Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPixelsPerMm()
	 * @generated
	 * @ordered
	 */
	protected static final Double PIXELS_PER_MM_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPixelsPerMm() <em>Pixels Per Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPixelsPerMm()
	 * @generated
	 * @ordered
	 */
	protected Double pixelsPerMm = PIXELS_PER_MM_EDEFAULT;

	/**
	 * The default value of the '{@link #getHeightDown() <em>Height Down</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeightDown()
	 * @generated
	 * @ordered
	 */
	protected static final Boolean HEIGHT_DOWN_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getHeightDown() <em>Height Down</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeightDown()
	 * @generated
	 * @ordered
	 */
	protected Boolean heightDown = HEIGHT_DOWN_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected FilmDetailsImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return TestingDataPackage.Literals.FILM_DETAILS;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getFrameRate() {
		return frameRate;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFrameRate(Double newFrameRate) {
		Double oldFrameRate = frameRate;
		frameRate = newFrameRate;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, TestingDataPackage.FILM_DETAILS__FRAME_RATE, oldFrameRate, frameRate));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getPixelsPerMm() {
		return pixelsPerMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPixelsPerMm(Double newPixelsPerMm) {
		Double oldPixelsPerMm = pixelsPerMm;
		pixelsPerMm = newPixelsPerMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, TestingDataPackage.FILM_DETAILS__PIXELS_PER_MM, oldPixelsPerMm, pixelsPerMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Boolean getHeightDown() {
		return heightDown;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHeightDown(Boolean newHeightDown) {
		Boolean oldHeightDown = heightDown;
		heightDown = newHeightDown;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, TestingDataPackage.FILM_DETAILS__HEIGHT_DOWN, oldHeightDown, heightDown));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case TestingDataPackage.FILM_DETAILS__FRAME_RATE:
				return getFrameRate();
			case TestingDataPackage.FILM_DETAILS__PIXELS_PER_MM:
				return getPixelsPerMm();
			case TestingDataPackage.FILM_DETAILS__HEIGHT_DOWN:
				return getHeightDown();
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
			case TestingDataPackage.FILM_DETAILS__FRAME_RATE:
				setFrameRate((Double)newValue);
				return;
			case TestingDataPackage.FILM_DETAILS__PIXELS_PER_MM:
				setPixelsPerMm((Double)newValue);
				return;
			case TestingDataPackage.FILM_DETAILS__HEIGHT_DOWN:
				setHeightDown((Boolean)newValue);
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
			case TestingDataPackage.FILM_DETAILS__FRAME_RATE:
				setFrameRate(FRAME_RATE_EDEFAULT);
				return;
			case TestingDataPackage.FILM_DETAILS__PIXELS_PER_MM:
				setPixelsPerMm(PIXELS_PER_MM_EDEFAULT);
				return;
			case TestingDataPackage.FILM_DETAILS__HEIGHT_DOWN:
				setHeightDown(HEIGHT_DOWN_EDEFAULT);
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
			case TestingDataPackage.FILM_DETAILS__FRAME_RATE:
				return FRAME_RATE_EDEFAULT == null ? frameRate != null : !FRAME_RATE_EDEFAULT.equals(frameRate);
			case TestingDataPackage.FILM_DETAILS__PIXELS_PER_MM:
				return PIXELS_PER_MM_EDEFAULT == null ? pixelsPerMm != null : !PIXELS_PER_MM_EDEFAULT.equals(pixelsPerMm);
			case TestingDataPackage.FILM_DETAILS__HEIGHT_DOWN:
				return HEIGHT_DOWN_EDEFAULT == null ? heightDown != null : !HEIGHT_DOWN_EDEFAULT.equals(heightDown);
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
		result.append(" (frameRate: ");
		result.append(frameRate);
		result.append(", pixelsPerMm: ");
		result.append(pixelsPerMm);
		result.append(", heightDown: ");
		result.append(heightDown);
		result.append(')');
		return result.toString();
	}

} //FilmDetailsImpl
