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

import org.eclipse.emf.ecore.util.EDataTypeUniqueEList;
import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

import org.flexwright.model.Lot;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.MaterialValue;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.PartRole;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Material Grade</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.impl.MaterialGradeImpl#getCode <em>Code</em>}</li>
 *   <li>{@link org.flexwright.model.impl.MaterialGradeImpl#getName <em>Name</em>}</li>
 *   <li>{@link org.flexwright.model.impl.MaterialGradeImpl#getFamily <em>Family</em>}</li>
 *   <li>{@link org.flexwright.model.impl.MaterialGradeImpl#getRole <em>Role</em>}</li>
 *   <li>{@link org.flexwright.model.impl.MaterialGradeImpl#getHazards <em>Hazards</em>}</li>
 *   <li>{@link org.flexwright.model.impl.MaterialGradeImpl#getValues <em>Values</em>}</li>
 *   <li>{@link org.flexwright.model.impl.MaterialGradeImpl#getLots <em>Lots</em>}</li>
 *   <li>{@link org.flexwright.model.impl.MaterialGradeImpl#getPackSize <em>Pack Size</em>}</li>
 * </ul>
 *
 * @generated
 */
public class MaterialGradeImpl extends EntryImpl implements MaterialGrade {
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
	 * The default value of the '{@link #getFamily() <em>Family</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFamily()
	 * @generated
	 * @ordered
	 */
	protected static final String FAMILY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFamily() <em>Family</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFamily()
	 * @generated
	 * @ordered
	 */
	protected String family = FAMILY_EDEFAULT;

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
	 * The cached value of the '{@link #getHazards() <em>Hazards</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHazards()
	 * @generated
	 * @ordered
	 */
	protected EList<String> hazards;

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
	 * The cached value of the '{@link #getLots() <em>Lots</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLots()
	 * @generated
	 * @ordered
	 */
	protected EList<Lot> lots;

	/**
	 * The default value of the '{@link #getPackSize() <em>Pack Size</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPackSize()
	 * @generated
	 * @ordered
	 */
	protected static final Double PACK_SIZE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPackSize() <em>Pack Size</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPackSize()
	 * @generated
	 * @ordered
	 */
	protected Double packSize = PACK_SIZE_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected MaterialGradeImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.MATERIAL_GRADE;
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MATERIAL_GRADE__CODE, oldCode, code));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MATERIAL_GRADE__NAME, oldName, name));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getFamily() {
		return family;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFamily(String newFamily) {
		String oldFamily = family;
		family = newFamily;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MATERIAL_GRADE__FAMILY, oldFamily, family));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MATERIAL_GRADE__ROLE, oldRole, role));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<String> getHazards() {
		if (hazards == null) {
			hazards = new EDataTypeUniqueEList<String>(String.class, this, ModelPackage.MATERIAL_GRADE__HAZARDS);
		}
		return hazards;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<MaterialValue> getValues() {
		if (values == null) {
			values = new EObjectContainmentEList<MaterialValue>(MaterialValue.class, this, ModelPackage.MATERIAL_GRADE__VALUES);
		}
		return values;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Lot> getLots() {
		if (lots == null) {
			lots = new EObjectContainmentEList<Lot>(Lot.class, this, ModelPackage.MATERIAL_GRADE__LOTS);
		}
		return lots;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getPackSize() {
		return packSize;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPackSize(Double newPackSize) {
		Double oldPackSize = packSize;
		packSize = newPackSize;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MATERIAL_GRADE__PACK_SIZE, oldPackSize, packSize));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case ModelPackage.MATERIAL_GRADE__VALUES:
				return ((InternalEList<?>)getValues()).basicRemove(otherEnd, msgs);
			case ModelPackage.MATERIAL_GRADE__LOTS:
				return ((InternalEList<?>)getLots()).basicRemove(otherEnd, msgs);
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
			case ModelPackage.MATERIAL_GRADE__CODE:
				return getCode();
			case ModelPackage.MATERIAL_GRADE__NAME:
				return getName();
			case ModelPackage.MATERIAL_GRADE__FAMILY:
				return getFamily();
			case ModelPackage.MATERIAL_GRADE__ROLE:
				return getRole();
			case ModelPackage.MATERIAL_GRADE__HAZARDS:
				return getHazards();
			case ModelPackage.MATERIAL_GRADE__VALUES:
				return getValues();
			case ModelPackage.MATERIAL_GRADE__LOTS:
				return getLots();
			case ModelPackage.MATERIAL_GRADE__PACK_SIZE:
				return getPackSize();
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
			case ModelPackage.MATERIAL_GRADE__CODE:
				setCode((String)newValue);
				return;
			case ModelPackage.MATERIAL_GRADE__NAME:
				setName((String)newValue);
				return;
			case ModelPackage.MATERIAL_GRADE__FAMILY:
				setFamily((String)newValue);
				return;
			case ModelPackage.MATERIAL_GRADE__ROLE:
				setRole((PartRole)newValue);
				return;
			case ModelPackage.MATERIAL_GRADE__HAZARDS:
				getHazards().clear();
				getHazards().addAll((Collection<? extends String>)newValue);
				return;
			case ModelPackage.MATERIAL_GRADE__VALUES:
				getValues().clear();
				getValues().addAll((Collection<? extends MaterialValue>)newValue);
				return;
			case ModelPackage.MATERIAL_GRADE__LOTS:
				getLots().clear();
				getLots().addAll((Collection<? extends Lot>)newValue);
				return;
			case ModelPackage.MATERIAL_GRADE__PACK_SIZE:
				setPackSize((Double)newValue);
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
			case ModelPackage.MATERIAL_GRADE__CODE:
				setCode(CODE_EDEFAULT);
				return;
			case ModelPackage.MATERIAL_GRADE__NAME:
				setName(NAME_EDEFAULT);
				return;
			case ModelPackage.MATERIAL_GRADE__FAMILY:
				setFamily(FAMILY_EDEFAULT);
				return;
			case ModelPackage.MATERIAL_GRADE__ROLE:
				setRole(ROLE_EDEFAULT);
				return;
			case ModelPackage.MATERIAL_GRADE__HAZARDS:
				getHazards().clear();
				return;
			case ModelPackage.MATERIAL_GRADE__VALUES:
				getValues().clear();
				return;
			case ModelPackage.MATERIAL_GRADE__LOTS:
				getLots().clear();
				return;
			case ModelPackage.MATERIAL_GRADE__PACK_SIZE:
				setPackSize(PACK_SIZE_EDEFAULT);
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
			case ModelPackage.MATERIAL_GRADE__CODE:
				return CODE_EDEFAULT == null ? code != null : !CODE_EDEFAULT.equals(code);
			case ModelPackage.MATERIAL_GRADE__NAME:
				return NAME_EDEFAULT == null ? name != null : !NAME_EDEFAULT.equals(name);
			case ModelPackage.MATERIAL_GRADE__FAMILY:
				return FAMILY_EDEFAULT == null ? family != null : !FAMILY_EDEFAULT.equals(family);
			case ModelPackage.MATERIAL_GRADE__ROLE:
				return role != ROLE_EDEFAULT;
			case ModelPackage.MATERIAL_GRADE__HAZARDS:
				return hazards != null && !hazards.isEmpty();
			case ModelPackage.MATERIAL_GRADE__VALUES:
				return values != null && !values.isEmpty();
			case ModelPackage.MATERIAL_GRADE__LOTS:
				return lots != null && !lots.isEmpty();
			case ModelPackage.MATERIAL_GRADE__PACK_SIZE:
				return PACK_SIZE_EDEFAULT == null ? packSize != null : !PACK_SIZE_EDEFAULT.equals(packSize);
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
		result.append(", family: ");
		result.append(family);
		result.append(", role: ");
		result.append(role);
		result.append(", hazards: ");
		result.append(hazards);
		result.append(", packSize: ");
		result.append(packSize);
		result.append(')');
		return result.toString();
	}

} //MaterialGradeImpl
