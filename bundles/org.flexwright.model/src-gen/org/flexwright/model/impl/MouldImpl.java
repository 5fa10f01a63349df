/**
 */
package org.flexwright.model.impl;

import java.time.LocalDate;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

import org.flexwright.model.ModelPackage;
import org.flexwright.model.Mould;
import org.flexwright.model.MouldCast;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Mould</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.impl.MouldImpl#getCode <em>Code</em>}</li>
 *   <li>{@link org.flexwright.model.impl.MouldImpl#getName <em>Name</em>}</li>
 *   <li>{@link org.flexwright.model.impl.MouldImpl#getMaterial <em>Material</em>}</li>
 *   <li>{@link org.flexwright.model.impl.MouldImpl#getMadeOn <em>Made On</em>}</li>
 *   <li>{@link org.flexwright.model.impl.MouldImpl#getCavities <em>Cavities</em>}</li>
 *   <li>{@link org.flexwright.model.impl.MouldImpl#getCastsBefore <em>Casts Before</em>}</li>
 *   <li>{@link org.flexwright.model.impl.MouldImpl#getCastsLimit <em>Casts Limit</em>}</li>
 *   <li>{@link org.flexwright.model.impl.MouldImpl#getTurnMinutes <em>Turn Minutes</em>}</li>
 *   <li>{@link org.flexwright.model.impl.MouldImpl#getPrice <em>Price</em>}</li>
 *   <li>{@link org.flexwright.model.impl.MouldImpl#getCasts <em>Casts</em>}</li>
 * </ul>
 *
 * @generated
 */
public class MouldImpl extends EntryImpl implements Mould {
	/**
	 * The default value of the '{@link #getCode() <em>Code</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCode()
	 * @generated
	 * @ordered
	 */
	protected static final String CODE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCode() <em>Code</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCode()
	 * @generated
	 * @ordered
	 */
	protected String code = CODE_EDEFAULT;

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
	 * The default value of the '{@link #getMaterial() <em>Material</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaterial()
	 * @generated
	 * @ordered
	 */
	protected static final String MATERIAL_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMaterial() <em>Material</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaterial()
	 * @generated
	 * @ordered
	 */
	protected String material = MATERIAL_EDEFAULT;

	/**
	 * The default value of the '{@link #getMadeOn() <em>Made On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMadeOn()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate MADE_ON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMadeOn() <em>Made On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMadeOn()
	 * @generated
	 * @ordered
	 */
	protected LocalDate madeOn = MADE_ON_EDEFAULT;

	/**
	 * The default value of the '{@link #getCavities() <em>Cavities</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCavities()
	 * @generated
	 * @ordered
	 */
	protected static final Integer CAVITIES_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCavities() <em>Cavities</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCavities()
	 * @generated
	 * @ordered
	 */
	protected Integer cavities = CAVITIES_EDEFAULT;

	/**
	 * The default value of the '{@link #getCastsBefore() <em>Casts Before</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCastsBefore()
	 * @generated
	 * @ordered
	 */
	protected static final Integer CASTS_BEFORE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCastsBefore() <em>Casts Before</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCastsBefore()
	 * @generated
	 * @ordered
	 */
	protected Integer castsBefore = CASTS_BEFORE_EDEFAULT;

	/**
	 * The default value of the '{@link #getCastsLimit() <em>Casts Limit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCastsLimit()
	 * @generated
	 * @ordered
	 */
	protected static final Integer CASTS_LIMIT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCastsLimit() <em>Casts Limit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCastsLimit()
	 * @generated
	 * @ordered
	 */
	protected Integer castsLimit = CASTS_LIMIT_EDEFAULT;

	/**
	 * The default value of the '{@link #getTurnMinutes() <em>Turn Minutes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTurnMinutes()
	 * @generated
	 * @ordered
	 */
	protected static final Double TURN_MINUTES_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTurnMinutes() <em>Turn Minutes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTurnMinutes()
	 * @generated
	 * @ordered
	 */
	protected Double turnMinutes = TURN_MINUTES_EDEFAULT;

	/**
	 * The default value of the '{@link #getPrice() <em>Price</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPrice()
	 * @generated
	 * @ordered
	 */
	protected static final Double PRICE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPrice() <em>Price</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPrice()
	 * @generated
	 * @ordered
	 */
	protected Double price = PRICE_EDEFAULT;

	/**
	 * The cached value of the '{@link #getCasts() <em>Casts</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCasts()
	 * @generated
	 * @ordered
	 */
	protected EList<MouldCast> casts;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected MouldImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.MOULD;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getCode() {
		return code;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCode(String newCode) {
		String oldCode = code;
		code = newCode;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MOULD__CODE, oldCode, code));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MOULD__NAME, oldName, name));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getMaterial() {
		return material;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMaterial(String newMaterial) {
		String oldMaterial = material;
		material = newMaterial;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MOULD__MATERIAL, oldMaterial, material));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getMadeOn() {
		return madeOn;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMadeOn(LocalDate newMadeOn) {
		LocalDate oldMadeOn = madeOn;
		madeOn = newMadeOn;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MOULD__MADE_ON, oldMadeOn, madeOn));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getCavities() {
		return cavities;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCavities(Integer newCavities) {
		Integer oldCavities = cavities;
		cavities = newCavities;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MOULD__CAVITIES, oldCavities, cavities));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getCastsBefore() {
		return castsBefore;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCastsBefore(Integer newCastsBefore) {
		Integer oldCastsBefore = castsBefore;
		castsBefore = newCastsBefore;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MOULD__CASTS_BEFORE, oldCastsBefore, castsBefore));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getCastsLimit() {
		return castsLimit;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCastsLimit(Integer newCastsLimit) {
		Integer oldCastsLimit = castsLimit;
		castsLimit = newCastsLimit;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MOULD__CASTS_LIMIT, oldCastsLimit, castsLimit));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getTurnMinutes() {
		return turnMinutes;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTurnMinutes(Double newTurnMinutes) {
		Double oldTurnMinutes = turnMinutes;
		turnMinutes = newTurnMinutes;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MOULD__TURN_MINUTES, oldTurnMinutes, turnMinutes));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getPrice() {
		return price;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPrice(Double newPrice) {
		Double oldPrice = price;
		price = newPrice;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MOULD__PRICE, oldPrice, price));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<MouldCast> getCasts() {
		if (casts == null) {
			casts = new EObjectContainmentEList<MouldCast>(MouldCast.class, this, ModelPackage.MOULD__CASTS);
		}
		return casts;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case ModelPackage.MOULD__CASTS:
				return ((InternalEList<?>)getCasts()).basicRemove(otherEnd, msgs);
		}
		return super.eInverseRemove(otherEnd, featureID, msgs);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case ModelPackage.MOULD__CODE:
				return getCode();
			case ModelPackage.MOULD__NAME:
				return getName();
			case ModelPackage.MOULD__MATERIAL:
				return getMaterial();
			case ModelPackage.MOULD__MADE_ON:
				return getMadeOn();
			case ModelPackage.MOULD__CAVITIES:
				return getCavities();
			case ModelPackage.MOULD__CASTS_BEFORE:
				return getCastsBefore();
			case ModelPackage.MOULD__CASTS_LIMIT:
				return getCastsLimit();
			case ModelPackage.MOULD__TURN_MINUTES:
				return getTurnMinutes();
			case ModelPackage.MOULD__PRICE:
				return getPrice();
			case ModelPackage.MOULD__CASTS:
				return getCasts();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case ModelPackage.MOULD__CODE:
				setCode((String)newValue);
				return;
			case ModelPackage.MOULD__NAME:
				setName((String)newValue);
				return;
			case ModelPackage.MOULD__MATERIAL:
				setMaterial((String)newValue);
				return;
			case ModelPackage.MOULD__MADE_ON:
				setMadeOn((LocalDate)newValue);
				return;
			case ModelPackage.MOULD__CAVITIES:
				setCavities((Integer)newValue);
				return;
			case ModelPackage.MOULD__CASTS_BEFORE:
				setCastsBefore((Integer)newValue);
				return;
			case ModelPackage.MOULD__CASTS_LIMIT:
				setCastsLimit((Integer)newValue);
				return;
			case ModelPackage.MOULD__TURN_MINUTES:
				setTurnMinutes((Double)newValue);
				return;
			case ModelPackage.MOULD__PRICE:
				setPrice((Double)newValue);
				return;
			case ModelPackage.MOULD__CASTS:
				getCasts().clear();
				getCasts().addAll((Collection<? extends MouldCast>)newValue);
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
			case ModelPackage.MOULD__CODE:
				setCode(CODE_EDEFAULT);
				return;
			case ModelPackage.MOULD__NAME:
				setName(NAME_EDEFAULT);
				return;
			case ModelPackage.MOULD__MATERIAL:
				setMaterial(MATERIAL_EDEFAULT);
				return;
			case ModelPackage.MOULD__MADE_ON:
				setMadeOn(MADE_ON_EDEFAULT);
				return;
			case ModelPackage.MOULD__CAVITIES:
				setCavities(CAVITIES_EDEFAULT);
				return;
			case ModelPackage.MOULD__CASTS_BEFORE:
				setCastsBefore(CASTS_BEFORE_EDEFAULT);
				return;
			case ModelPackage.MOULD__CASTS_LIMIT:
				setCastsLimit(CASTS_LIMIT_EDEFAULT);
				return;
			case ModelPackage.MOULD__TURN_MINUTES:
				setTurnMinutes(TURN_MINUTES_EDEFAULT);
				return;
			case ModelPackage.MOULD__PRICE:
				setPrice(PRICE_EDEFAULT);
				return;
			case ModelPackage.MOULD__CASTS:
				getCasts().clear();
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
			case ModelPackage.MOULD__CODE:
				return CODE_EDEFAULT == null ? code != null : !CODE_EDEFAULT.equals(code);
			case ModelPackage.MOULD__NAME:
				return NAME_EDEFAULT == null ? name != null : !NAME_EDEFAULT.equals(name);
			case ModelPackage.MOULD__MATERIAL:
				return MATERIAL_EDEFAULT == null ? material != null : !MATERIAL_EDEFAULT.equals(material);
			case ModelPackage.MOULD__MADE_ON:
				return MADE_ON_EDEFAULT == null ? madeOn != null : !MADE_ON_EDEFAULT.equals(madeOn);
			case ModelPackage.MOULD__CAVITIES:
				return CAVITIES_EDEFAULT == null ? cavities != null : !CAVITIES_EDEFAULT.equals(cavities);
			case ModelPackage.MOULD__CASTS_BEFORE:
				return CASTS_BEFORE_EDEFAULT == null ? castsBefore != null : !CASTS_BEFORE_EDEFAULT.equals(castsBefore);
			case ModelPackage.MOULD__CASTS_LIMIT:
				return CASTS_LIMIT_EDEFAULT == null ? castsLimit != null : !CASTS_LIMIT_EDEFAULT.equals(castsLimit);
			case ModelPackage.MOULD__TURN_MINUTES:
				return TURN_MINUTES_EDEFAULT == null ? turnMinutes != null : !TURN_MINUTES_EDEFAULT.equals(turnMinutes);
			case ModelPackage.MOULD__PRICE:
				return PRICE_EDEFAULT == null ? price != null : !PRICE_EDEFAULT.equals(price);
			case ModelPackage.MOULD__CASTS:
				return casts != null && !casts.isEmpty();
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
		result.append(" (code: ");
		result.append(code);
		result.append(", name: ");
		result.append(name);
		result.append(", material: ");
		result.append(material);
		result.append(", madeOn: ");
		result.append(madeOn);
		result.append(", cavities: ");
		result.append(cavities);
		result.append(", castsBefore: ");
		result.append(castsBefore);
		result.append(", castsLimit: ");
		result.append(castsLimit);
		result.append(", turnMinutes: ");
		result.append(turnMinutes);
		result.append(", price: ");
		result.append(price);
		result.append(')');
		return result.toString();
	}

} //MouldImpl
