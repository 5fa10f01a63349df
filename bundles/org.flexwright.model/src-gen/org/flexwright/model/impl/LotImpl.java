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

import org.flexwright.model.Lot;
import org.flexwright.model.MaterialValue;
import org.flexwright.model.ModelPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Lot</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.impl.LotImpl#getCode <em>Code</em>}</li>
 *   <li>{@link org.flexwright.model.impl.LotImpl#getOpened <em>Opened</em>}</li>
 *   <li>{@link org.flexwright.model.impl.LotImpl#getExpires <em>Expires</em>}</li>
 *   <li>{@link org.flexwright.model.impl.LotImpl#getPrice <em>Price</em>}</li>
 *   <li>{@link org.flexwright.model.impl.LotImpl#getAmount <em>Amount</em>}</li>
 *   <li>{@link org.flexwright.model.impl.LotImpl#getSheetDate <em>Sheet Date</em>}</li>
 *   <li>{@link org.flexwright.model.impl.LotImpl#getSheetRevision <em>Sheet Revision</em>}</li>
 *   <li>{@link org.flexwright.model.impl.LotImpl#getValues <em>Values</em>}</li>
 * </ul>
 *
 * @generated
 */
public class LotImpl extends EntryImpl implements Lot {
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
	 * The default value of the '{@link #getOpened() <em>Opened</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOpened()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate OPENED_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOpened() <em>Opened</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOpened()
	 * @generated
	 * @ordered
	 */
	protected LocalDate opened = OPENED_EDEFAULT;

	/**
	 * The default value of the '{@link #getExpires() <em>Expires</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getExpires()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate EXPIRES_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getExpires() <em>Expires</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getExpires()
	 * @generated
	 * @ordered
	 */
	protected LocalDate expires = EXPIRES_EDEFAULT;

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
	 * The default value of the '{@link #getAmount() <em>Amount</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAmount()
	 * @generated
	 * @ordered
	 */
	protected static final Double AMOUNT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAmount() <em>Amount</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAmount()
	 * @generated
	 * @ordered
	 */
	protected Double amount = AMOUNT_EDEFAULT;

	/**
	 * The default value of the '{@link #getSheetDate() <em>Sheet Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSheetDate()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate SHEET_DATE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSheetDate() <em>Sheet Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSheetDate()
	 * @generated
	 * @ordered
	 */
	protected LocalDate sheetDate = SHEET_DATE_EDEFAULT;

	/**
	 * The default value of the '{@link #getSheetRevision() <em>Sheet Revision</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSheetRevision()
	 * @generated
	 * @ordered
	 */
	protected static final String SHEET_REVISION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSheetRevision() <em>Sheet Revision</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSheetRevision()
	 * @generated
	 * @ordered
	 */
	protected String sheetRevision = SHEET_REVISION_EDEFAULT;

	/**
	 * The cached value of the '{@link #getValues() <em>Values</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getValues()
	 * @generated
	 * @ordered
	 */
	protected EList<MaterialValue> values;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected LotImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.LOT;
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LOT__CODE, oldCode, code));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getOpened() {
		return opened;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOpened(LocalDate newOpened) {
		LocalDate oldOpened = opened;
		opened = newOpened;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LOT__OPENED, oldOpened, opened));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getExpires() {
		return expires;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setExpires(LocalDate newExpires) {
		LocalDate oldExpires = expires;
		expires = newExpires;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LOT__EXPIRES, oldExpires, expires));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LOT__PRICE, oldPrice, price));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getAmount() {
		return amount;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAmount(Double newAmount) {
		Double oldAmount = amount;
		amount = newAmount;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LOT__AMOUNT, oldAmount, amount));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getSheetDate() {
		return sheetDate;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSheetDate(LocalDate newSheetDate) {
		LocalDate oldSheetDate = sheetDate;
		sheetDate = newSheetDate;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LOT__SHEET_DATE, oldSheetDate, sheetDate));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSheetRevision() {
		return sheetRevision;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSheetRevision(String newSheetRevision) {
		String oldSheetRevision = sheetRevision;
		sheetRevision = newSheetRevision;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LOT__SHEET_REVISION, oldSheetRevision, sheetRevision));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<MaterialValue> getValues() {
		if (values == null) {
			values = new EObjectContainmentEList<MaterialValue>(MaterialValue.class, this, ModelPackage.LOT__VALUES);
		}
		return values;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case ModelPackage.LOT__VALUES:
				return ((InternalEList<?>)getValues()).basicRemove(otherEnd, msgs);
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
			case ModelPackage.LOT__CODE:
				return getCode();
			case ModelPackage.LOT__OPENED:
				return getOpened();
			case ModelPackage.LOT__EXPIRES:
				return getExpires();
			case ModelPackage.LOT__PRICE:
				return getPrice();
			case ModelPackage.LOT__AMOUNT:
				return getAmount();
			case ModelPackage.LOT__SHEET_DATE:
				return getSheetDate();
			case ModelPackage.LOT__SHEET_REVISION:
				return getSheetRevision();
			case ModelPackage.LOT__VALUES:
				return getValues();
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
			case ModelPackage.LOT__CODE:
				setCode((String)newValue);
				return;
			case ModelPackage.LOT__OPENED:
				setOpened((LocalDate)newValue);
				return;
			case ModelPackage.LOT__EXPIRES:
				setExpires((LocalDate)newValue);
				return;
			case ModelPackage.LOT__PRICE:
				setPrice((Double)newValue);
				return;
			case ModelPackage.LOT__AMOUNT:
				setAmount((Double)newValue);
				return;
			case ModelPackage.LOT__SHEET_DATE:
				setSheetDate((LocalDate)newValue);
				return;
			case ModelPackage.LOT__SHEET_REVISION:
				setSheetRevision((String)newValue);
				return;
			case ModelPackage.LOT__VALUES:
				getValues().clear();
				getValues().addAll((Collection<? extends MaterialValue>)newValue);
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
			case ModelPackage.LOT__CODE:
				setCode(CODE_EDEFAULT);
				return;
			case ModelPackage.LOT__OPENED:
				setOpened(OPENED_EDEFAULT);
				return;
			case ModelPackage.LOT__EXPIRES:
				setExpires(EXPIRES_EDEFAULT);
				return;
			case ModelPackage.LOT__PRICE:
				setPrice(PRICE_EDEFAULT);
				return;
			case ModelPackage.LOT__AMOUNT:
				setAmount(AMOUNT_EDEFAULT);
				return;
			case ModelPackage.LOT__SHEET_DATE:
				setSheetDate(SHEET_DATE_EDEFAULT);
				return;
			case ModelPackage.LOT__SHEET_REVISION:
				setSheetRevision(SHEET_REVISION_EDEFAULT);
				return;
			case ModelPackage.LOT__VALUES:
				getValues().clear();
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
			case ModelPackage.LOT__CODE:
				return CODE_EDEFAULT == null ? code != null : !CODE_EDEFAULT.equals(code);
			case ModelPackage.LOT__OPENED:
				return OPENED_EDEFAULT == null ? opened != null : !OPENED_EDEFAULT.equals(opened);
			case ModelPackage.LOT__EXPIRES:
				return EXPIRES_EDEFAULT == null ? expires != null : !EXPIRES_EDEFAULT.equals(expires);
			case ModelPackage.LOT__PRICE:
				return PRICE_EDEFAULT == null ? price != null : !PRICE_EDEFAULT.equals(price);
			case ModelPackage.LOT__AMOUNT:
				return AMOUNT_EDEFAULT == null ? amount != null : !AMOUNT_EDEFAULT.equals(amount);
			case ModelPackage.LOT__SHEET_DATE:
				return SHEET_DATE_EDEFAULT == null ? sheetDate != null : !SHEET_DATE_EDEFAULT.equals(sheetDate);
			case ModelPackage.LOT__SHEET_REVISION:
				return SHEET_REVISION_EDEFAULT == null ? sheetRevision != null : !SHEET_REVISION_EDEFAULT.equals(sheetRevision);
			case ModelPackage.LOT__VALUES:
				return values != null && !values.isEmpty();
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
		result.append(", opened: ");
		result.append(opened);
		result.append(", expires: ");
		result.append(expires);
		result.append(", price: ");
		result.append(price);
		result.append(", amount: ");
		result.append(amount);
		result.append(", sheetDate: ");
		result.append(sheetDate);
		result.append(", sheetRevision: ");
		result.append(sheetRevision);
		result.append(')');
		return result.toString();
	}

} //LotImpl
