/**
 */
package org.flexwright.testing.data.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.flexwright.testing.data.HoldDetails;
import org.flexwright.testing.data.TestingDataPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Hold Details</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.testing.data.impl.HoldDetailsImpl#getTerms <em>Terms</em>}</li>
 *   <li>{@link org.flexwright.testing.data.impl.HoldDetailsImpl#getZeroForce <em>Zero Force</em>}</li>
 *   <li>{@link org.flexwright.testing.data.impl.HoldDetailsImpl#getSqueeze <em>Squeeze</em>}</li>
 * </ul>
 *
 * @generated
 */
public class HoldDetailsImpl extends MinimalEObjectImpl.Container implements HoldDetails {
	/**
	 * The default value of the '{@link #getTerms() <em>Terms</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTerms()
	 * @generated
	 * @ordered
	 */
	protected static final Integer TERMS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTerms() <em>Terms</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTerms()
	 * @generated
	 * @ordered
	 */
	protected Integer terms = TERMS_EDEFAULT;

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
	 * The default value of the '{@link #getSqueeze() <em>Squeeze</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSqueeze()
	 * @generated
	 * @ordered
	 */
	protected static final Double SQUEEZE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSqueeze() <em>Squeeze</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSqueeze()
	 * @generated
	 * @ordered
	 */
	protected Double squeeze = SQUEEZE_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected HoldDetailsImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return TestingDataPackage.Literals.HOLD_DETAILS;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getTerms() {
		return terms;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTerms(Integer newTerms) {
		Integer oldTerms = terms;
		terms = newTerms;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, TestingDataPackage.HOLD_DETAILS__TERMS, oldTerms, terms));
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
			eNotify(new ENotificationImpl(this, Notification.SET, TestingDataPackage.HOLD_DETAILS__ZERO_FORCE, oldZeroForce, zeroForce));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getSqueeze() {
		return squeeze;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSqueeze(Double newSqueeze) {
		Double oldSqueeze = squeeze;
		squeeze = newSqueeze;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, TestingDataPackage.HOLD_DETAILS__SQUEEZE, oldSqueeze, squeeze));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case TestingDataPackage.HOLD_DETAILS__TERMS:
				return getTerms();
			case TestingDataPackage.HOLD_DETAILS__ZERO_FORCE:
				return getZeroForce();
			case TestingDataPackage.HOLD_DETAILS__SQUEEZE:
				return getSqueeze();
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
			case TestingDataPackage.HOLD_DETAILS__TERMS:
				setTerms((Integer)newValue);
				return;
			case TestingDataPackage.HOLD_DETAILS__ZERO_FORCE:
				setZeroForce((Double)newValue);
				return;
			case TestingDataPackage.HOLD_DETAILS__SQUEEZE:
				setSqueeze((Double)newValue);
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
			case TestingDataPackage.HOLD_DETAILS__TERMS:
				setTerms(TERMS_EDEFAULT);
				return;
			case TestingDataPackage.HOLD_DETAILS__ZERO_FORCE:
				setZeroForce(ZERO_FORCE_EDEFAULT);
				return;
			case TestingDataPackage.HOLD_DETAILS__SQUEEZE:
				setSqueeze(SQUEEZE_EDEFAULT);
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
			case TestingDataPackage.HOLD_DETAILS__TERMS:
				return TERMS_EDEFAULT == null ? terms != null : !TERMS_EDEFAULT.equals(terms);
			case TestingDataPackage.HOLD_DETAILS__ZERO_FORCE:
				return ZERO_FORCE_EDEFAULT == null ? zeroForce != null : !ZERO_FORCE_EDEFAULT.equals(zeroForce);
			case TestingDataPackage.HOLD_DETAILS__SQUEEZE:
				return SQUEEZE_EDEFAULT == null ? squeeze != null : !SQUEEZE_EDEFAULT.equals(squeeze);
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
		result.append(" (terms: ");
		result.append(terms);
		result.append(", zeroForce: ");
		result.append(zeroForce);
		result.append(", squeeze: ");
		result.append(squeeze);
		result.append(')');
		return result.toString();
	}

} //HoldDetailsImpl
