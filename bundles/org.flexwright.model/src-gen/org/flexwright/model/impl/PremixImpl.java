/**
 */
package org.flexwright.model.impl;

import java.time.Instant;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

import org.flexwright.model.MaterialUse;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Premix;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Premix</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.impl.PremixImpl#getCode <em>Code</em>}</li>
 *   <li>{@link org.flexwright.model.impl.PremixImpl#getTitle <em>Title</em>}</li>
 *   <li>{@link org.flexwright.model.impl.PremixImpl#getMadeAt <em>Made At</em>}</li>
 *   <li>{@link org.flexwright.model.impl.PremixImpl#getRestedHours <em>Rested Hours</em>}</li>
 *   <li>{@link org.flexwright.model.impl.PremixImpl#getDriedC <em>Dried C</em>}</li>
 *   <li>{@link org.flexwright.model.impl.PremixImpl#getDriedHours <em>Dried Hours</em>}</li>
 *   <li>{@link org.flexwright.model.impl.PremixImpl#getIngredients <em>Ingredients</em>}</li>
 * </ul>
 *
 * @generated
 */
public class PremixImpl extends EntryImpl implements Premix {
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
	 * The default value of the '{@link #getTitle() <em>Title</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTitle()
	 * @generated
	 * @ordered
	 */
	protected static final String TITLE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTitle() <em>Title</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTitle()
	 * @generated
	 * @ordered
	 */
	protected String title = TITLE_EDEFAULT;

	/**
	 * The default value of the '{@link #getMadeAt() <em>Made At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMadeAt()
	 * @generated
	 * @ordered
	 */
	protected static final Instant MADE_AT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMadeAt() <em>Made At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMadeAt()
	 * @generated
	 * @ordered
	 */
	protected Instant madeAt = MADE_AT_EDEFAULT;

	/**
	 * The default value of the '{@link #getRestedHours() <em>Rested Hours</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRestedHours()
	 * @generated
	 * @ordered
	 */
	protected static final Double RESTED_HOURS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRestedHours() <em>Rested Hours</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRestedHours()
	 * @generated
	 * @ordered
	 */
	protected Double restedHours = RESTED_HOURS_EDEFAULT;

	/**
	 * The default value of the '{@link #getDriedC() <em>Dried C</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDriedC()
	 * @generated
	 * @ordered
	 */
	protected static final Double DRIED_C_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDriedC() <em>Dried C</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDriedC()
	 * @generated
	 * @ordered
	 */
	protected Double driedC = DRIED_C_EDEFAULT;

	/**
	 * The default value of the '{@link #getDriedHours() <em>Dried Hours</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDriedHours()
	 * @generated
	 * @ordered
	 */
	protected static final Double DRIED_HOURS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDriedHours() <em>Dried Hours</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDriedHours()
	 * @generated
	 * @ordered
	 */
	protected Double driedHours = DRIED_HOURS_EDEFAULT;

	/**
	 * The cached value of the '{@link #getIngredients() <em>Ingredients</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getIngredients()
	 * @generated
	 * @ordered
	 */
	protected EList<MaterialUse> ingredients;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected PremixImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.PREMIX;
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PREMIX__CODE, oldCode, code));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getTitle() {
		return title;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTitle(String newTitle) {
		String oldTitle = title;
		title = newTitle;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PREMIX__TITLE, oldTitle, title));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Instant getMadeAt() {
		return madeAt;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMadeAt(Instant newMadeAt) {
		Instant oldMadeAt = madeAt;
		madeAt = newMadeAt;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PREMIX__MADE_AT, oldMadeAt, madeAt));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getRestedHours() {
		return restedHours;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRestedHours(Double newRestedHours) {
		Double oldRestedHours = restedHours;
		restedHours = newRestedHours;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PREMIX__RESTED_HOURS, oldRestedHours, restedHours));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getDriedC() {
		return driedC;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDriedC(Double newDriedC) {
		Double oldDriedC = driedC;
		driedC = newDriedC;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PREMIX__DRIED_C, oldDriedC, driedC));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getDriedHours() {
		return driedHours;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDriedHours(Double newDriedHours) {
		Double oldDriedHours = driedHours;
		driedHours = newDriedHours;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PREMIX__DRIED_HOURS, oldDriedHours, driedHours));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<MaterialUse> getIngredients() {
		if (ingredients == null) {
			ingredients = new EObjectContainmentEList<MaterialUse>(MaterialUse.class, this, ModelPackage.PREMIX__INGREDIENTS);
		}
		return ingredients;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case ModelPackage.PREMIX__INGREDIENTS:
				return ((InternalEList<?>)getIngredients()).basicRemove(otherEnd, msgs);
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
			case ModelPackage.PREMIX__CODE:
				return getCode();
			case ModelPackage.PREMIX__TITLE:
				return getTitle();
			case ModelPackage.PREMIX__MADE_AT:
				return getMadeAt();
			case ModelPackage.PREMIX__RESTED_HOURS:
				return getRestedHours();
			case ModelPackage.PREMIX__DRIED_C:
				return getDriedC();
			case ModelPackage.PREMIX__DRIED_HOURS:
				return getDriedHours();
			case ModelPackage.PREMIX__INGREDIENTS:
				return getIngredients();
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
			case ModelPackage.PREMIX__CODE:
				setCode((String)newValue);
				return;
			case ModelPackage.PREMIX__TITLE:
				setTitle((String)newValue);
				return;
			case ModelPackage.PREMIX__MADE_AT:
				setMadeAt((Instant)newValue);
				return;
			case ModelPackage.PREMIX__RESTED_HOURS:
				setRestedHours((Double)newValue);
				return;
			case ModelPackage.PREMIX__DRIED_C:
				setDriedC((Double)newValue);
				return;
			case ModelPackage.PREMIX__DRIED_HOURS:
				setDriedHours((Double)newValue);
				return;
			case ModelPackage.PREMIX__INGREDIENTS:
				getIngredients().clear();
				getIngredients().addAll((Collection<? extends MaterialUse>)newValue);
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
			case ModelPackage.PREMIX__CODE:
				setCode(CODE_EDEFAULT);
				return;
			case ModelPackage.PREMIX__TITLE:
				setTitle(TITLE_EDEFAULT);
				return;
			case ModelPackage.PREMIX__MADE_AT:
				setMadeAt(MADE_AT_EDEFAULT);
				return;
			case ModelPackage.PREMIX__RESTED_HOURS:
				setRestedHours(RESTED_HOURS_EDEFAULT);
				return;
			case ModelPackage.PREMIX__DRIED_C:
				setDriedC(DRIED_C_EDEFAULT);
				return;
			case ModelPackage.PREMIX__DRIED_HOURS:
				setDriedHours(DRIED_HOURS_EDEFAULT);
				return;
			case ModelPackage.PREMIX__INGREDIENTS:
				getIngredients().clear();
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
			case ModelPackage.PREMIX__CODE:
				return CODE_EDEFAULT == null ? code != null : !CODE_EDEFAULT.equals(code);
			case ModelPackage.PREMIX__TITLE:
				return TITLE_EDEFAULT == null ? title != null : !TITLE_EDEFAULT.equals(title);
			case ModelPackage.PREMIX__MADE_AT:
				return MADE_AT_EDEFAULT == null ? madeAt != null : !MADE_AT_EDEFAULT.equals(madeAt);
			case ModelPackage.PREMIX__RESTED_HOURS:
				return RESTED_HOURS_EDEFAULT == null ? restedHours != null : !RESTED_HOURS_EDEFAULT.equals(restedHours);
			case ModelPackage.PREMIX__DRIED_C:
				return DRIED_C_EDEFAULT == null ? driedC != null : !DRIED_C_EDEFAULT.equals(driedC);
			case ModelPackage.PREMIX__DRIED_HOURS:
				return DRIED_HOURS_EDEFAULT == null ? driedHours != null : !DRIED_HOURS_EDEFAULT.equals(driedHours);
			case ModelPackage.PREMIX__INGREDIENTS:
				return ingredients != null && !ingredients.isEmpty();
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
		result.append(", title: ");
		result.append(title);
		result.append(", madeAt: ");
		result.append(madeAt);
		result.append(", restedHours: ");
		result.append(restedHours);
		result.append(", driedC: ");
		result.append(driedC);
		result.append(", driedHours: ");
		result.append(driedHours);
		result.append(')');
		return result.toString();
	}

} //PremixImpl
