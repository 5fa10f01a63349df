/**
 */
package org.flexwright.model.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.flexwright.model.AgeingPoint;
import org.flexwright.model.ModelPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Ageing Point</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.impl.AgeingPointImpl#getDays <em>Days</em>}</li>
 *   <li>{@link org.flexwright.model.impl.AgeingPointImpl#getWindow <em>Window</em>}</li>
 *   <li>{@link org.flexwright.model.impl.AgeingPointImpl#getSkipped <em>Skipped</em>}</li>
 * </ul>
 *
 * @generated
 */
public class AgeingPointImpl extends EntryImpl implements AgeingPoint {
	/**
	 * The default value of the '{@link #getDays() <em>Days</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDays()
	 * @generated
	 * @ordered
	 */
	protected static final Double DAYS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDays() <em>Days</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDays()
	 * @generated
	 * @ordered
	 */
	protected Double days = DAYS_EDEFAULT;

	/**
	 * The default value of the '{@link #getWindow() <em>Window</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWindow()
	 * @generated
	 * @ordered
	 */
	protected static final Double WINDOW_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWindow() <em>Window</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWindow()
	 * @generated
	 * @ordered
	 */
	protected Double window = WINDOW_EDEFAULT;

	/**
	 * The default value of the '{@link #getSkipped() <em>Skipped</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSkipped()
	 * @generated
	 * @ordered
	 */
	protected static final String SKIPPED_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSkipped() <em>Skipped</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSkipped()
	 * @generated
	 * @ordered
	 */
	protected String skipped = SKIPPED_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected AgeingPointImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.AGEING_POINT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getDays() {
		return days;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDays(Double newDays) {
		Double oldDays = days;
		days = newDays;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.AGEING_POINT__DAYS, oldDays, days));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getWindow() {
		return window;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWindow(Double newWindow) {
		Double oldWindow = window;
		window = newWindow;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.AGEING_POINT__WINDOW, oldWindow, window));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSkipped() {
		return skipped;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSkipped(String newSkipped) {
		String oldSkipped = skipped;
		skipped = newSkipped;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.AGEING_POINT__SKIPPED, oldSkipped, skipped));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case ModelPackage.AGEING_POINT__DAYS:
				return getDays();
			case ModelPackage.AGEING_POINT__WINDOW:
				return getWindow();
			case ModelPackage.AGEING_POINT__SKIPPED:
				return getSkipped();
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
			case ModelPackage.AGEING_POINT__DAYS:
				setDays((Double)newValue);
				return;
			case ModelPackage.AGEING_POINT__WINDOW:
				setWindow((Double)newValue);
				return;
			case ModelPackage.AGEING_POINT__SKIPPED:
				setSkipped((String)newValue);
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
			case ModelPackage.AGEING_POINT__DAYS:
				setDays(DAYS_EDEFAULT);
				return;
			case ModelPackage.AGEING_POINT__WINDOW:
				setWindow(WINDOW_EDEFAULT);
				return;
			case ModelPackage.AGEING_POINT__SKIPPED:
				setSkipped(SKIPPED_EDEFAULT);
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
			case ModelPackage.AGEING_POINT__DAYS:
				return DAYS_EDEFAULT == null ? days != null : !DAYS_EDEFAULT.equals(days);
			case ModelPackage.AGEING_POINT__WINDOW:
				return WINDOW_EDEFAULT == null ? window != null : !WINDOW_EDEFAULT.equals(window);
			case ModelPackage.AGEING_POINT__SKIPPED:
				return SKIPPED_EDEFAULT == null ? skipped != null : !SKIPPED_EDEFAULT.equals(skipped);
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
		result.append(" (days: ");
		result.append(days);
		result.append(", window: ");
		result.append(window);
		result.append(", skipped: ");
		result.append(skipped);
		result.append(')');
		return result.toString();
	}

} //AgeingPointImpl
