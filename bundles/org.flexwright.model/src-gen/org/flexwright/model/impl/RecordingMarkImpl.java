/**
 */
package org.flexwright.model.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.flexwright.model.ModelPackage;
import org.flexwright.model.RecordingMark;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Recording Mark</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.impl.RecordingMarkImpl#getName <em>Name</em>}</li>
 *   <li>{@link org.flexwright.model.impl.RecordingMarkImpl#getPosition <em>Position</em>}</li>
 *   <li>{@link org.flexwright.model.impl.RecordingMarkImpl#getByHand <em>By Hand</em>}</li>
 *   <li>{@link org.flexwright.model.impl.RecordingMarkImpl#getLeftOut <em>Left Out</em>}</li>
 * </ul>
 *
 * @generated
 */
public class RecordingMarkImpl extends EntryImpl implements RecordingMark {
	/**
	 * The default value of the '{@link #getName() <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getName()
	 * @generated
	 * @ordered
	 */
	protected static final String NAME_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getName() <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getName()
	 * @generated
	 * @ordered
	 */
	protected String name = NAME_EDEFAULT;

	/**
	 * The default value of the '{@link #getPosition() <em>Position</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPosition()
	 * @generated
	 * @ordered
	 */
	protected static final Double POSITION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPosition() <em>Position</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPosition()
	 * @generated
	 * @ordered
	 */
	protected Double position = POSITION_EDEFAULT;

	/**
	 * The default value of the '{@link #getByHand() <em>By Hand</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getByHand()
	 * @generated
	 * @ordered
	 */
	protected static final Boolean BY_HAND_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getByHand() <em>By Hand</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getByHand()
	 * @generated
	 * @ordered
	 */
	protected Boolean byHand = BY_HAND_EDEFAULT;

	/**
	 * The default value of the '{@link #getLeftOut() <em>Left Out</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLeftOut()
	 * @generated
	 * @ordered
	 */
	protected static final String LEFT_OUT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLeftOut() <em>Left Out</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLeftOut()
	 * @generated
	 * @ordered
	 */
	protected String leftOut = LEFT_OUT_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected RecordingMarkImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.RECORDING_MARK;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getName() {
		return name;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setName(String newName) {
		String oldName = name;
		name = newName;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.RECORDING_MARK__NAME, oldName, name));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getPosition() {
		return position;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPosition(Double newPosition) {
		Double oldPosition = position;
		position = newPosition;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.RECORDING_MARK__POSITION, oldPosition, position));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Boolean getByHand() {
		return byHand;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setByHand(Boolean newByHand) {
		Boolean oldByHand = byHand;
		byHand = newByHand;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.RECORDING_MARK__BY_HAND, oldByHand, byHand));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getLeftOut() {
		return leftOut;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLeftOut(String newLeftOut) {
		String oldLeftOut = leftOut;
		leftOut = newLeftOut;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.RECORDING_MARK__LEFT_OUT, oldLeftOut, leftOut));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case ModelPackage.RECORDING_MARK__NAME:
				return getName();
			case ModelPackage.RECORDING_MARK__POSITION:
				return getPosition();
			case ModelPackage.RECORDING_MARK__BY_HAND:
				return getByHand();
			case ModelPackage.RECORDING_MARK__LEFT_OUT:
				return getLeftOut();
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
			case ModelPackage.RECORDING_MARK__NAME:
				setName((String)newValue);
				return;
			case ModelPackage.RECORDING_MARK__POSITION:
				setPosition((Double)newValue);
				return;
			case ModelPackage.RECORDING_MARK__BY_HAND:
				setByHand((Boolean)newValue);
				return;
			case ModelPackage.RECORDING_MARK__LEFT_OUT:
				setLeftOut((String)newValue);
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
			case ModelPackage.RECORDING_MARK__NAME:
				setName(NAME_EDEFAULT);
				return;
			case ModelPackage.RECORDING_MARK__POSITION:
				setPosition(POSITION_EDEFAULT);
				return;
			case ModelPackage.RECORDING_MARK__BY_HAND:
				setByHand(BY_HAND_EDEFAULT);
				return;
			case ModelPackage.RECORDING_MARK__LEFT_OUT:
				setLeftOut(LEFT_OUT_EDEFAULT);
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
			case ModelPackage.RECORDING_MARK__NAME:
				return NAME_EDEFAULT == null ? name != null : !NAME_EDEFAULT.equals(name);
			case ModelPackage.RECORDING_MARK__POSITION:
				return POSITION_EDEFAULT == null ? position != null : !POSITION_EDEFAULT.equals(position);
			case ModelPackage.RECORDING_MARK__BY_HAND:
				return BY_HAND_EDEFAULT == null ? byHand != null : !BY_HAND_EDEFAULT.equals(byHand);
			case ModelPackage.RECORDING_MARK__LEFT_OUT:
				return LEFT_OUT_EDEFAULT == null ? leftOut != null : !LEFT_OUT_EDEFAULT.equals(leftOut);
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
		result.append(" (name: ");
		result.append(name);
		result.append(", position: ");
		result.append(position);
		result.append(", byHand: ");
		result.append(byHand);
		result.append(", leftOut: ");
		result.append(leftOut);
		result.append(')');
		return result.toString();
	}

} //RecordingMarkImpl
