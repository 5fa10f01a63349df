/**
 */
package org.flexwright.model.impl;

import java.time.Instant;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.flexwright.model.Censoring;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Reading;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Reading</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.impl.ReadingImpl#getValue <em>Value</em>}</li>
 *   <li>{@link org.flexwright.model.impl.ReadingImpl#getCensoring <em>Censoring</em>}</li>
 *   <li>{@link org.flexwright.model.impl.ReadingImpl#getYes <em>Yes</em>}</li>
 *   <li>{@link org.flexwright.model.impl.ReadingImpl#getAt <em>At</em>}</li>
 *   <li>{@link org.flexwright.model.impl.ReadingImpl#getTypedAs <em>Typed As</em>}</li>
 *   <li>{@link org.flexwright.model.impl.ReadingImpl#getLeftOut <em>Left Out</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ReadingImpl extends MinimalEObjectImpl.Container implements Reading {
	/**
	 * The default value of the '{@link #getValue() <em>Value</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getValue()
	 * @generated
	 * @ordered
	 */
	protected static final Double VALUE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getValue() <em>Value</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getValue()
	 * @generated
	 * @ordered
	 */
	protected Double value = VALUE_EDEFAULT;

	/**
	 * The default value of the '{@link #getCensoring() <em>Censoring</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCensoring()
	 * @generated
	 * @ordered
	 */
	protected static final Censoring CENSORING_EDEFAULT = Censoring.NONE;

	/**
	 * The cached value of the '{@link #getCensoring() <em>Censoring</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCensoring()
	 * @generated
	 * @ordered
	 */
	protected Censoring censoring = CENSORING_EDEFAULT;

	/**
	 * The default value of the '{@link #getYes() <em>Yes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getYes()
	 * @generated
	 * @ordered
	 */
	protected static final Boolean YES_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getYes() <em>Yes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getYes()
	 * @generated
	 * @ordered
	 */
	protected Boolean yes = YES_EDEFAULT;

	/**
	 * The default value of the '{@link #getAt() <em>At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAt()
	 * @generated
	 * @ordered
	 */
	protected static final Instant AT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAt() <em>At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAt()
	 * @generated
	 * @ordered
	 */
	protected Instant at = AT_EDEFAULT;

	/**
	 * The default value of the '{@link #getTypedAs() <em>Typed As</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTypedAs()
	 * @generated
	 * @ordered
	 */
	protected static final String TYPED_AS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTypedAs() <em>Typed As</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTypedAs()
	 * @generated
	 * @ordered
	 */
	protected String typedAs = TYPED_AS_EDEFAULT;

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
	protected ReadingImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.READING;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getValue() {
		return value;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setValue(Double newValue) {
		Double oldValue = value;
		value = newValue;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.READING__VALUE, oldValue, value));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Censoring getCensoring() {
		return censoring;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCensoring(Censoring newCensoring) {
		Censoring oldCensoring = censoring;
		censoring = newCensoring == null ? CENSORING_EDEFAULT : newCensoring;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.READING__CENSORING, oldCensoring, censoring));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Boolean getYes() {
		return yes;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setYes(Boolean newYes) {
		Boolean oldYes = yes;
		yes = newYes;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.READING__YES, oldYes, yes));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Instant getAt() {
		return at;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAt(Instant newAt) {
		Instant oldAt = at;
		at = newAt;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.READING__AT, oldAt, at));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getTypedAs() {
		return typedAs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTypedAs(String newTypedAs) {
		String oldTypedAs = typedAs;
		typedAs = newTypedAs;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.READING__TYPED_AS, oldTypedAs, typedAs));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.READING__LEFT_OUT, oldLeftOut, leftOut));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case ModelPackage.READING__VALUE:
				return getValue();
			case ModelPackage.READING__CENSORING:
				return getCensoring();
			case ModelPackage.READING__YES:
				return getYes();
			case ModelPackage.READING__AT:
				return getAt();
			case ModelPackage.READING__TYPED_AS:
				return getTypedAs();
			case ModelPackage.READING__LEFT_OUT:
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
			case ModelPackage.READING__VALUE:
				setValue((Double)newValue);
				return;
			case ModelPackage.READING__CENSORING:
				setCensoring((Censoring)newValue);
				return;
			case ModelPackage.READING__YES:
				setYes((Boolean)newValue);
				return;
			case ModelPackage.READING__AT:
				setAt((Instant)newValue);
				return;
			case ModelPackage.READING__TYPED_AS:
				setTypedAs((String)newValue);
				return;
			case ModelPackage.READING__LEFT_OUT:
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
			case ModelPackage.READING__VALUE:
				setValue(VALUE_EDEFAULT);
				return;
			case ModelPackage.READING__CENSORING:
				setCensoring(CENSORING_EDEFAULT);
				return;
			case ModelPackage.READING__YES:
				setYes(YES_EDEFAULT);
				return;
			case ModelPackage.READING__AT:
				setAt(AT_EDEFAULT);
				return;
			case ModelPackage.READING__TYPED_AS:
				setTypedAs(TYPED_AS_EDEFAULT);
				return;
			case ModelPackage.READING__LEFT_OUT:
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
			case ModelPackage.READING__VALUE:
				return VALUE_EDEFAULT == null ? value != null : !VALUE_EDEFAULT.equals(value);
			case ModelPackage.READING__CENSORING:
				return censoring != CENSORING_EDEFAULT;
			case ModelPackage.READING__YES:
				return YES_EDEFAULT == null ? yes != null : !YES_EDEFAULT.equals(yes);
			case ModelPackage.READING__AT:
				return AT_EDEFAULT == null ? at != null : !AT_EDEFAULT.equals(at);
			case ModelPackage.READING__TYPED_AS:
				return TYPED_AS_EDEFAULT == null ? typedAs != null : !TYPED_AS_EDEFAULT.equals(typedAs);
			case ModelPackage.READING__LEFT_OUT:
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
		result.append(" (value: ");
		result.append(value);
		result.append(", censoring: ");
		result.append(censoring);
		result.append(", yes: ");
		result.append(yes);
		result.append(", at: ");
		result.append(at);
		result.append(", typedAs: ");
		result.append(typedAs);
		result.append(", leftOut: ");
		result.append(leftOut);
		result.append(')');
		return result.toString();
	}

} //ReadingImpl
