/**
 */
package org.flexwright.model.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.flexwright.model.ControlPiece;
import org.flexwright.model.ModelPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Control Piece</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.impl.ControlPieceImpl#getUsual <em>Usual</em>}</li>
 *   <li>{@link org.flexwright.model.impl.ControlPieceImpl#getUsualSpread <em>Usual Spread</em>}</li>
 *   <li>{@link org.flexwright.model.impl.ControlPieceImpl#getUsualFrom <em>Usual From</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ControlPieceImpl extends SpecimenImpl implements ControlPiece {
	/**
	 * The default value of the '{@link #getUsual() <em>Usual</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUsual()
	 * @generated
	 * @ordered
	 */
	protected static final Double USUAL_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getUsual() <em>Usual</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUsual()
	 * @generated
	 * @ordered
	 */
	protected Double usual = USUAL_EDEFAULT;

	/**
	 * The default value of the '{@link #getUsualSpread() <em>Usual Spread</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUsualSpread()
	 * @generated
	 * @ordered
	 */
	protected static final Double USUAL_SPREAD_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getUsualSpread() <em>Usual Spread</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUsualSpread()
	 * @generated
	 * @ordered
	 */
	protected Double usualSpread = USUAL_SPREAD_EDEFAULT;

	/**
	 * The default value of the '{@link #getUsualFrom() <em>Usual From</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUsualFrom()
	 * @generated
	 * @ordered
	 */
	protected static final String USUAL_FROM_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getUsualFrom() <em>Usual From</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUsualFrom()
	 * @generated
	 * @ordered
	 */
	protected String usualFrom = USUAL_FROM_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ControlPieceImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.CONTROL_PIECE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getUsual() {
		return usual;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setUsual(Double newUsual) {
		Double oldUsual = usual;
		usual = newUsual;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.CONTROL_PIECE__USUAL, oldUsual, usual));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getUsualSpread() {
		return usualSpread;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setUsualSpread(Double newUsualSpread) {
		Double oldUsualSpread = usualSpread;
		usualSpread = newUsualSpread;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.CONTROL_PIECE__USUAL_SPREAD, oldUsualSpread, usualSpread));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getUsualFrom() {
		return usualFrom;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setUsualFrom(String newUsualFrom) {
		String oldUsualFrom = usualFrom;
		usualFrom = newUsualFrom;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.CONTROL_PIECE__USUAL_FROM, oldUsualFrom, usualFrom));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case ModelPackage.CONTROL_PIECE__USUAL:
				return getUsual();
			case ModelPackage.CONTROL_PIECE__USUAL_SPREAD:
				return getUsualSpread();
			case ModelPackage.CONTROL_PIECE__USUAL_FROM:
				return getUsualFrom();
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
			case ModelPackage.CONTROL_PIECE__USUAL:
				setUsual((Double)newValue);
				return;
			case ModelPackage.CONTROL_PIECE__USUAL_SPREAD:
				setUsualSpread((Double)newValue);
				return;
			case ModelPackage.CONTROL_PIECE__USUAL_FROM:
				setUsualFrom((String)newValue);
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
			case ModelPackage.CONTROL_PIECE__USUAL:
				setUsual(USUAL_EDEFAULT);
				return;
			case ModelPackage.CONTROL_PIECE__USUAL_SPREAD:
				setUsualSpread(USUAL_SPREAD_EDEFAULT);
				return;
			case ModelPackage.CONTROL_PIECE__USUAL_FROM:
				setUsualFrom(USUAL_FROM_EDEFAULT);
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
			case ModelPackage.CONTROL_PIECE__USUAL:
				return USUAL_EDEFAULT == null ? usual != null : !USUAL_EDEFAULT.equals(usual);
			case ModelPackage.CONTROL_PIECE__USUAL_SPREAD:
				return USUAL_SPREAD_EDEFAULT == null ? usualSpread != null : !USUAL_SPREAD_EDEFAULT.equals(usualSpread);
			case ModelPackage.CONTROL_PIECE__USUAL_FROM:
				return USUAL_FROM_EDEFAULT == null ? usualFrom != null : !USUAL_FROM_EDEFAULT.equals(usualFrom);
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
		result.append(" (usual: ");
		result.append(usual);
		result.append(", usualSpread: ");
		result.append(usualSpread);
		result.append(", usualFrom: ");
		result.append(usualFrom);
		result.append(')');
		return result.toString();
	}

} //ControlPieceImpl
