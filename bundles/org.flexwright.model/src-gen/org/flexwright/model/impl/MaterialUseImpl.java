/**
 */
package org.flexwright.model.impl;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

import org.flexwright.model.AmountBasis;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.PartRole;
import org.flexwright.model.PartsOf;
import org.flexwright.model.Premix;
import org.flexwright.model.Weighing;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Material Use</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.impl.MaterialUseImpl#getRole <em>Role</em>}</li>
 *   <li>{@link org.flexwright.model.impl.MaterialUseImpl#getGrade <em>Grade</em>}</li>
 *   <li>{@link org.flexwright.model.impl.MaterialUseImpl#getLot <em>Lot</em>}</li>
 *   <li>{@link org.flexwright.model.impl.MaterialUseImpl#getPlanned <em>Planned</em>}</li>
 *   <li>{@link org.flexwright.model.impl.MaterialUseImpl#getWeighings <em>Weighings</em>}</li>
 *   <li>{@link org.flexwright.model.impl.MaterialUseImpl#getParts <em>Parts</em>}</li>
 *   <li>{@link org.flexwright.model.impl.MaterialUseImpl#getPartsBy <em>Parts By</em>}</li>
 *   <li>{@link org.flexwright.model.impl.MaterialUseImpl#getPartsOf <em>Parts Of</em>}</li>
 *   <li>{@link org.flexwright.model.impl.MaterialUseImpl#getMoisture <em>Moisture</em>}</li>
 *   <li>{@link org.flexwright.model.impl.MaterialUseImpl#getDried <em>Dried</em>}</li>
 *   <li>{@link org.flexwright.model.impl.MaterialUseImpl#getPremix <em>Premix</em>}</li>
 * </ul>
 *
 * @generated
 */
public class MaterialUseImpl extends EntryImpl implements MaterialUse {
	/**
	 * The default value of the '{@link #getRole() <em>Role</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRole()
	 * @generated
	 * @ordered
	 */
	protected static final PartRole ROLE_EDEFAULT = PartRole.COMPONENT_A;

	/**
	 * The cached value of the '{@link #getRole() <em>Role</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRole()
	 * @generated
	 * @ordered
	 */
	protected PartRole role = ROLE_EDEFAULT;

	/**
	 * The cached value of the '{@link #getGrade() <em>Grade</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGrade()
	 * @generated
	 * @ordered
	 */
	protected MaterialGrade grade;

	/**
	 * The cached value of the '{@link #getLot() <em>Lot</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLot()
	 * @generated
	 * @ordered
	 */
	protected Lot lot;

	/**
	 * The default value of the '{@link #getPlanned() <em>Planned</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlanned()
	 * @generated
	 * @ordered
	 */
	protected static final Double PLANNED_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPlanned() <em>Planned</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlanned()
	 * @generated
	 * @ordered
	 */
	protected Double planned = PLANNED_EDEFAULT;

	/**
	 * The cached value of the '{@link #getWeighings() <em>Weighings</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWeighings()
	 * @generated
	 * @ordered
	 */
	protected EList<Weighing> weighings;

	/**
	 * The default value of the '{@link #getParts() <em>Parts</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getParts()
	 * @generated
	 * @ordered
	 */
	protected static final Double PARTS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getParts() <em>Parts</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getParts()
	 * @generated
	 * @ordered
	 */
	protected Double parts = PARTS_EDEFAULT;

	/**
	 * The default value of the '{@link #getPartsBy() <em>Parts By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPartsBy()
	 * @generated
	 * @ordered
	 */
	protected static final AmountBasis PARTS_BY_EDEFAULT = AmountBasis.WEIGHT;

	/**
	 * The cached value of the '{@link #getPartsBy() <em>Parts By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPartsBy()
	 * @generated
	 * @ordered
	 */
	protected AmountBasis partsBy = PARTS_BY_EDEFAULT;

	/**
	 * The default value of the '{@link #getPartsOf() <em>Parts Of</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPartsOf()
	 * @generated
	 * @ordered
	 */
	protected static final PartsOf PARTS_OF_EDEFAULT = PartsOf.UNSTATED;

	/**
	 * The cached value of the '{@link #getPartsOf() <em>Parts Of</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPartsOf()
	 * @generated
	 * @ordered
	 */
	protected PartsOf partsOf = PARTS_OF_EDEFAULT;

	/**
	 * The default value of the '{@link #getMoisture() <em>Moisture</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMoisture()
	 * @generated
	 * @ordered
	 */
	protected static final Double MOISTURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMoisture() <em>Moisture</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMoisture()
	 * @generated
	 * @ordered
	 */
	protected Double moisture = MOISTURE_EDEFAULT;

	/**
	 * The default value of the '{@link #getDried() <em>Dried</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDried()
	 * @generated
	 * @ordered
	 */
	protected static final Boolean DRIED_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDried() <em>Dried</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDried()
	 * @generated
	 * @ordered
	 */
	protected Boolean dried = DRIED_EDEFAULT;

	/**
	 * The cached value of the '{@link #getPremix() <em>Premix</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPremix()
	 * @generated
	 * @ordered
	 */
	protected Premix premix;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected MaterialUseImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.MATERIAL_USE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PartRole getRole() {
		return role;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRole(PartRole newRole) {
		PartRole oldRole = role;
		role = newRole == null ? ROLE_EDEFAULT : newRole;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MATERIAL_USE__ROLE, oldRole, role));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public MaterialGrade getGrade() {
		if (grade != null && grade.eIsProxy()) {
			InternalEObject oldGrade = (InternalEObject)grade;
			grade = (MaterialGrade)eResolveProxy(oldGrade);
			if (grade != oldGrade) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.MATERIAL_USE__GRADE, oldGrade, grade));
			}
		}
		return grade;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public MaterialGrade basicGetGrade() {
		return grade;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGrade(MaterialGrade newGrade) {
		MaterialGrade oldGrade = grade;
		grade = newGrade;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MATERIAL_USE__GRADE, oldGrade, grade));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Lot getLot() {
		if (lot != null && lot.eIsProxy()) {
			InternalEObject oldLot = (InternalEObject)lot;
			lot = (Lot)eResolveProxy(oldLot);
			if (lot != oldLot) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.MATERIAL_USE__LOT, oldLot, lot));
			}
		}
		return lot;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Lot basicGetLot() {
		return lot;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLot(Lot newLot) {
		Lot oldLot = lot;
		lot = newLot;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MATERIAL_USE__LOT, oldLot, lot));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getPlanned() {
		return planned;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPlanned(Double newPlanned) {
		Double oldPlanned = planned;
		planned = newPlanned;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MATERIAL_USE__PLANNED, oldPlanned, planned));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Weighing> getWeighings() {
		if (weighings == null) {
			weighings = new EObjectContainmentEList<Weighing>(Weighing.class, this, ModelPackage.MATERIAL_USE__WEIGHINGS);
		}
		return weighings;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getParts() {
		return parts;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setParts(Double newParts) {
		Double oldParts = parts;
		parts = newParts;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MATERIAL_USE__PARTS, oldParts, parts));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public AmountBasis getPartsBy() {
		return partsBy;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPartsBy(AmountBasis newPartsBy) {
		AmountBasis oldPartsBy = partsBy;
		partsBy = newPartsBy == null ? PARTS_BY_EDEFAULT : newPartsBy;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MATERIAL_USE__PARTS_BY, oldPartsBy, partsBy));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PartsOf getPartsOf() {
		return partsOf;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPartsOf(PartsOf newPartsOf) {
		PartsOf oldPartsOf = partsOf;
		partsOf = newPartsOf == null ? PARTS_OF_EDEFAULT : newPartsOf;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MATERIAL_USE__PARTS_OF, oldPartsOf, partsOf));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getMoisture() {
		return moisture;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMoisture(Double newMoisture) {
		Double oldMoisture = moisture;
		moisture = newMoisture;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MATERIAL_USE__MOISTURE, oldMoisture, moisture));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Boolean getDried() {
		return dried;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDried(Boolean newDried) {
		Boolean oldDried = dried;
		dried = newDried;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MATERIAL_USE__DRIED, oldDried, dried));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Premix getPremix() {
		if (premix != null && premix.eIsProxy()) {
			InternalEObject oldPremix = (InternalEObject)premix;
			premix = (Premix)eResolveProxy(oldPremix);
			if (premix != oldPremix) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.MATERIAL_USE__PREMIX, oldPremix, premix));
			}
		}
		return premix;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Premix basicGetPremix() {
		return premix;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPremix(Premix newPremix) {
		Premix oldPremix = premix;
		premix = newPremix;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MATERIAL_USE__PREMIX, oldPremix, premix));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case ModelPackage.MATERIAL_USE__WEIGHINGS:
				return ((InternalEList<?>)getWeighings()).basicRemove(otherEnd, msgs);
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
			case ModelPackage.MATERIAL_USE__ROLE:
				return getRole();
			case ModelPackage.MATERIAL_USE__GRADE:
				if (resolve) return getGrade();
				return basicGetGrade();
			case ModelPackage.MATERIAL_USE__LOT:
				if (resolve) return getLot();
				return basicGetLot();
			case ModelPackage.MATERIAL_USE__PLANNED:
				return getPlanned();
			case ModelPackage.MATERIAL_USE__WEIGHINGS:
				return getWeighings();
			case ModelPackage.MATERIAL_USE__PARTS:
				return getParts();
			case ModelPackage.MATERIAL_USE__PARTS_BY:
				return getPartsBy();
			case ModelPackage.MATERIAL_USE__PARTS_OF:
				return getPartsOf();
			case ModelPackage.MATERIAL_USE__MOISTURE:
				return getMoisture();
			case ModelPackage.MATERIAL_USE__DRIED:
				return getDried();
			case ModelPackage.MATERIAL_USE__PREMIX:
				if (resolve) return getPremix();
				return basicGetPremix();
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
			case ModelPackage.MATERIAL_USE__ROLE:
				setRole((PartRole)newValue);
				return;
			case ModelPackage.MATERIAL_USE__GRADE:
				setGrade((MaterialGrade)newValue);
				return;
			case ModelPackage.MATERIAL_USE__LOT:
				setLot((Lot)newValue);
				return;
			case ModelPackage.MATERIAL_USE__PLANNED:
				setPlanned((Double)newValue);
				return;
			case ModelPackage.MATERIAL_USE__WEIGHINGS:
				getWeighings().clear();
				getWeighings().addAll((Collection<? extends Weighing>)newValue);
				return;
			case ModelPackage.MATERIAL_USE__PARTS:
				setParts((Double)newValue);
				return;
			case ModelPackage.MATERIAL_USE__PARTS_BY:
				setPartsBy((AmountBasis)newValue);
				return;
			case ModelPackage.MATERIAL_USE__PARTS_OF:
				setPartsOf((PartsOf)newValue);
				return;
			case ModelPackage.MATERIAL_USE__MOISTURE:
				setMoisture((Double)newValue);
				return;
			case ModelPackage.MATERIAL_USE__DRIED:
				setDried((Boolean)newValue);
				return;
			case ModelPackage.MATERIAL_USE__PREMIX:
				setPremix((Premix)newValue);
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
			case ModelPackage.MATERIAL_USE__ROLE:
				setRole(ROLE_EDEFAULT);
				return;
			case ModelPackage.MATERIAL_USE__GRADE:
				setGrade((MaterialGrade)null);
				return;
			case ModelPackage.MATERIAL_USE__LOT:
				setLot((Lot)null);
				return;
			case ModelPackage.MATERIAL_USE__PLANNED:
				setPlanned(PLANNED_EDEFAULT);
				return;
			case ModelPackage.MATERIAL_USE__WEIGHINGS:
				getWeighings().clear();
				return;
			case ModelPackage.MATERIAL_USE__PARTS:
				setParts(PARTS_EDEFAULT);
				return;
			case ModelPackage.MATERIAL_USE__PARTS_BY:
				setPartsBy(PARTS_BY_EDEFAULT);
				return;
			case ModelPackage.MATERIAL_USE__PARTS_OF:
				setPartsOf(PARTS_OF_EDEFAULT);
				return;
			case ModelPackage.MATERIAL_USE__MOISTURE:
				setMoisture(MOISTURE_EDEFAULT);
				return;
			case ModelPackage.MATERIAL_USE__DRIED:
				setDried(DRIED_EDEFAULT);
				return;
			case ModelPackage.MATERIAL_USE__PREMIX:
				setPremix((Premix)null);
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
			case ModelPackage.MATERIAL_USE__ROLE:
				return role != ROLE_EDEFAULT;
			case ModelPackage.MATERIAL_USE__GRADE:
				return grade != null;
			case ModelPackage.MATERIAL_USE__LOT:
				return lot != null;
			case ModelPackage.MATERIAL_USE__PLANNED:
				return PLANNED_EDEFAULT == null ? planned != null : !PLANNED_EDEFAULT.equals(planned);
			case ModelPackage.MATERIAL_USE__WEIGHINGS:
				return weighings != null && !weighings.isEmpty();
			case ModelPackage.MATERIAL_USE__PARTS:
				return PARTS_EDEFAULT == null ? parts != null : !PARTS_EDEFAULT.equals(parts);
			case ModelPackage.MATERIAL_USE__PARTS_BY:
				return partsBy != PARTS_BY_EDEFAULT;
			case ModelPackage.MATERIAL_USE__PARTS_OF:
				return partsOf != PARTS_OF_EDEFAULT;
			case ModelPackage.MATERIAL_USE__MOISTURE:
				return MOISTURE_EDEFAULT == null ? moisture != null : !MOISTURE_EDEFAULT.equals(moisture);
			case ModelPackage.MATERIAL_USE__DRIED:
				return DRIED_EDEFAULT == null ? dried != null : !DRIED_EDEFAULT.equals(dried);
			case ModelPackage.MATERIAL_USE__PREMIX:
				return premix != null;
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
		result.append(" (role: ");
		result.append(role);
		result.append(", planned: ");
		result.append(planned);
		result.append(", parts: ");
		result.append(parts);
		result.append(", partsBy: ");
		result.append(partsBy);
		result.append(", partsOf: ");
		result.append(partsOf);
		result.append(", moisture: ");
		result.append(moisture);
		result.append(", dried: ");
		result.append(dried);
		result.append(')');
		return result.toString();
	}

} //MaterialUseImpl
