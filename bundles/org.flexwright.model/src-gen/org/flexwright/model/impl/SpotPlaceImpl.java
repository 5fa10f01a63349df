/**
 */
package org.flexwright.model.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.flexwright.model.ModelPackage;
import org.flexwright.model.SpotPlace;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Spot Place</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.impl.SpotPlaceImpl#getSpot <em>Spot</em>}</li>
 *   <li>{@link org.flexwright.model.impl.SpotPlaceImpl#getAcross <em>Across</em>}</li>
 *   <li>{@link org.flexwright.model.impl.SpotPlaceImpl#getDown <em>Down</em>}</li>
 * </ul>
 *
 * @generated
 */
public class SpotPlaceImpl extends EntryImpl implements SpotPlace {
	/**
	 * The default value of the '{@link #getSpot() <em>Spot</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSpot()
	 * @generated
	 * @ordered
	 */
	protected static final String SPOT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSpot() <em>Spot</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSpot()
	 * @generated
	 * @ordered
	 */
	protected String spot = SPOT_EDEFAULT;

	/**
	 * The default value of the '{@link #getAcross() <em>Across</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAcross()
	 * @generated
	 * @ordered
	 */
	protected static final Double ACROSS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAcross() <em>Across</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAcross()
	 * @generated
	 * @ordered
	 */
	protected Double across = ACROSS_EDEFAULT;

	/**
	 * The default value of the '{@link #getDown() <em>Down</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDown()
	 * @generated
	 * @ordered
	 */
	protected static final Double DOWN_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDown() <em>Down</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDown()
	 * @generated
	 * @ordered
	 */
	protected Double down = DOWN_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected SpotPlaceImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.SPOT_PLACE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSpot() {
		return spot;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSpot(String newSpot) {
		String oldSpot = spot;
		spot = newSpot;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SPOT_PLACE__SPOT, oldSpot, spot));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getAcross() {
		return across;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAcross(Double newAcross) {
		Double oldAcross = across;
		across = newAcross;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SPOT_PLACE__ACROSS, oldAcross, across));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getDown() {
		return down;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDown(Double newDown) {
		Double oldDown = down;
		down = newDown;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SPOT_PLACE__DOWN, oldDown, down));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case ModelPackage.SPOT_PLACE__SPOT:
				return getSpot();
			case ModelPackage.SPOT_PLACE__ACROSS:
				return getAcross();
			case ModelPackage.SPOT_PLACE__DOWN:
				return getDown();
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
			case ModelPackage.SPOT_PLACE__SPOT:
				setSpot((String)newValue);
				return;
			case ModelPackage.SPOT_PLACE__ACROSS:
				setAcross((Double)newValue);
				return;
			case ModelPackage.SPOT_PLACE__DOWN:
				setDown((Double)newValue);
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
			case ModelPackage.SPOT_PLACE__SPOT:
				setSpot(SPOT_EDEFAULT);
				return;
			case ModelPackage.SPOT_PLACE__ACROSS:
				setAcross(ACROSS_EDEFAULT);
				return;
			case ModelPackage.SPOT_PLACE__DOWN:
				setDown(DOWN_EDEFAULT);
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
			case ModelPackage.SPOT_PLACE__SPOT:
				return SPOT_EDEFAULT == null ? spot != null : !SPOT_EDEFAULT.equals(spot);
			case ModelPackage.SPOT_PLACE__ACROSS:
				return ACROSS_EDEFAULT == null ? across != null : !ACROSS_EDEFAULT.equals(across);
			case ModelPackage.SPOT_PLACE__DOWN:
				return DOWN_EDEFAULT == null ? down != null : !DOWN_EDEFAULT.equals(down);
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
		result.append(" (spot: ");
		result.append(spot);
		result.append(", across: ");
		result.append(across);
		result.append(", down: ");
		result.append(down);
		result.append(')');
		return result.toString();
	}

} //SpotPlaceImpl
