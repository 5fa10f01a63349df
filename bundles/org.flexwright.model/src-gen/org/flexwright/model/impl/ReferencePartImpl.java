/**
 */
package org.flexwright.model.impl;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EObjectResolvingEList;

import org.flexwright.model.Attachment;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.ReferencePart;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Reference Part</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.impl.ReferencePartImpl#getName <em>Name</em>}</li>
 *   <li>{@link org.flexwright.model.impl.ReferencePartImpl#getCondition <em>Condition</em>}</li>
 *   <li>{@link org.flexwright.model.impl.ReferencePartImpl#getAgeYears <em>Age Years</em>}</li>
 *   <li>{@link org.flexwright.model.impl.ReferencePartImpl#getPhotos <em>Photos</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ReferencePartImpl extends SpecimenImpl implements ReferencePart {
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
	 * The default value of the '{@link #getCondition() <em>Condition</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCondition()
	 * @generated
	 * @ordered
	 */
	protected static final String CONDITION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCondition() <em>Condition</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCondition()
	 * @generated
	 * @ordered
	 */
	protected String condition = CONDITION_EDEFAULT;

	/**
	 * The default value of the '{@link #getAgeYears() <em>Age Years</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAgeYears()
	 * @generated
	 * @ordered
	 */
	protected static final Double AGE_YEARS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAgeYears() <em>Age Years</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAgeYears()
	 * @generated
	 * @ordered
	 */
	protected Double ageYears = AGE_YEARS_EDEFAULT;

	/**
	 * The cached value of the '{@link #getPhotos() <em>Photos</em>}' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPhotos()
	 * @generated
	 * @ordered
	 */
	protected EList<Attachment> photos;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ReferencePartImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.REFERENCE_PART;
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.REFERENCE_PART__NAME, oldName, name));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getCondition() {
		return condition;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCondition(String newCondition) {
		String oldCondition = condition;
		condition = newCondition;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.REFERENCE_PART__CONDITION, oldCondition, condition));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getAgeYears() {
		return ageYears;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAgeYears(Double newAgeYears) {
		Double oldAgeYears = ageYears;
		ageYears = newAgeYears;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.REFERENCE_PART__AGE_YEARS, oldAgeYears, ageYears));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Attachment> getPhotos() {
		if (photos == null) {
			photos = new EObjectResolvingEList<Attachment>(Attachment.class, this, ModelPackage.REFERENCE_PART__PHOTOS);
		}
		return photos;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case ModelPackage.REFERENCE_PART__NAME:
				return getName();
			case ModelPackage.REFERENCE_PART__CONDITION:
				return getCondition();
			case ModelPackage.REFERENCE_PART__AGE_YEARS:
				return getAgeYears();
			case ModelPackage.REFERENCE_PART__PHOTOS:
				return getPhotos();
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
			case ModelPackage.REFERENCE_PART__NAME:
				setName((String)newValue);
				return;
			case ModelPackage.REFERENCE_PART__CONDITION:
				setCondition((String)newValue);
				return;
			case ModelPackage.REFERENCE_PART__AGE_YEARS:
				setAgeYears((Double)newValue);
				return;
			case ModelPackage.REFERENCE_PART__PHOTOS:
				getPhotos().clear();
				getPhotos().addAll((Collection<? extends Attachment>)newValue);
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
			case ModelPackage.REFERENCE_PART__NAME:
				setName(NAME_EDEFAULT);
				return;
			case ModelPackage.REFERENCE_PART__CONDITION:
				setCondition(CONDITION_EDEFAULT);
				return;
			case ModelPackage.REFERENCE_PART__AGE_YEARS:
				setAgeYears(AGE_YEARS_EDEFAULT);
				return;
			case ModelPackage.REFERENCE_PART__PHOTOS:
				getPhotos().clear();
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
			case ModelPackage.REFERENCE_PART__NAME:
				return NAME_EDEFAULT == null ? name != null : !NAME_EDEFAULT.equals(name);
			case ModelPackage.REFERENCE_PART__CONDITION:
				return CONDITION_EDEFAULT == null ? condition != null : !CONDITION_EDEFAULT.equals(condition);
			case ModelPackage.REFERENCE_PART__AGE_YEARS:
				return AGE_YEARS_EDEFAULT == null ? ageYears != null : !AGE_YEARS_EDEFAULT.equals(ageYears);
			case ModelPackage.REFERENCE_PART__PHOTOS:
				return photos != null && !photos.isEmpty();
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
		result.append(", condition: ");
		result.append(condition);
		result.append(", ageYears: ");
		result.append(ageYears);
		result.append(')');
		return result.toString();
	}

} //ReferencePartImpl
