/**
 */
package org.flexwright.curing.data.impl;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

import org.flexwright.curing.data.CureBy;
import org.flexwright.curing.data.CureDetails;
import org.flexwright.curing.data.CureStage;
import org.flexwright.curing.data.CuringDataPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Cure Details</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.curing.data.impl.CureDetailsImpl#getBy <em>By</em>}</li>
 *   <li>{@link org.flexwright.curing.data.impl.CureDetailsImpl#getPlannedHours <em>Planned Hours</em>}</li>
 *   <li>{@link org.flexwright.curing.data.impl.CureDetailsImpl#getHours <em>Hours</em>}</li>
 *   <li>{@link org.flexwright.curing.data.impl.CureDetailsImpl#getPlannedC <em>Planned C</em>}</li>
 *   <li>{@link org.flexwright.curing.data.impl.CureDetailsImpl#getCelsius <em>Celsius</em>}</li>
 *   <li>{@link org.flexwright.curing.data.impl.CureDetailsImpl#getPlannedStages <em>Planned Stages</em>}</li>
 *   <li>{@link org.flexwright.curing.data.impl.CureDetailsImpl#getStages <em>Stages</em>}</li>
 *   <li>{@link org.flexwright.curing.data.impl.CureDetailsImpl#getLamp <em>Lamp</em>}</li>
 *   <li>{@link org.flexwright.curing.data.impl.CureDetailsImpl#getActivationEnergy <em>Activation Energy</em>}</li>
 * </ul>
 *
 * @generated
 */
public class CureDetailsImpl extends MinimalEObjectImpl.Container implements CureDetails {
	/**
	 * The default value of the '{@link #getBy() <em>By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBy()
	 * @generated
	 * @ordered
	 */
	protected static final CureBy BY_EDEFAULT = CureBy.ROOM;

	/**
	 * The cached value of the '{@link #getBy() <em>By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBy()
	 * @generated
	 * @ordered
	 */
	protected CureBy by = BY_EDEFAULT;

	/**
	 * The default value of the '{@link #getPlannedHours() <em>Planned Hours</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlannedHours()
	 * @generated
	 * @ordered
	 */
	protected static final Double PLANNED_HOURS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPlannedHours() <em>Planned Hours</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlannedHours()
	 * @generated
	 * @ordered
	 */
	protected Double plannedHours = PLANNED_HOURS_EDEFAULT;

	/**
	 * The default value of the '{@link #getHours() <em>Hours</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHours()
	 * @generated
	 * @ordered
	 */
	protected static final Double HOURS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getHours() <em>Hours</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHours()
	 * @generated
	 * @ordered
	 */
	protected Double hours = HOURS_EDEFAULT;

	/**
	 * The default value of the '{@link #getPlannedC() <em>Planned C</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlannedC()
	 * @generated
	 * @ordered
	 */
	protected static final Double PLANNED_C_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPlannedC() <em>Planned C</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlannedC()
	 * @generated
	 * @ordered
	 */
	protected Double plannedC = PLANNED_C_EDEFAULT;

	/**
	 * The default value of the '{@link #getCelsius() <em>Celsius</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCelsius()
	 * @generated
	 * @ordered
	 */
	protected static final Double CELSIUS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCelsius() <em>Celsius</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCelsius()
	 * @generated
	 * @ordered
	 */
	protected Double celsius = CELSIUS_EDEFAULT;

	/**
	 * The cached value of the '{@link #getPlannedStages() <em>Planned Stages</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlannedStages()
	 * @generated
	 * @ordered
	 */
	protected EList<CureStage> plannedStages;

	/**
	 * The cached value of the '{@link #getStages() <em>Stages</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStages()
	 * @generated
	 * @ordered
	 */
	protected EList<CureStage> stages;

	/**
	 * The default value of the '{@link #getLamp() <em>Lamp</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLamp()
	 * @generated
	 * @ordered
	 */
	protected static final String LAMP_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLamp() <em>Lamp</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLamp()
	 * @generated
	 * @ordered
	 */
	protected String lamp = LAMP_EDEFAULT;

	/**
	 * The default value of the '{@link #getActivationEnergy() <em>Activation Energy</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getActivationEnergy()
	 * @generated
	 * @ordered
	 */
	protected static final Double ACTIVATION_ENERGY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getActivationEnergy() <em>Activation Energy</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getActivationEnergy()
	 * @generated
	 * @ordered
	 */
	protected Double activationEnergy = ACTIVATION_ENERGY_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected CureDetailsImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CuringDataPackage.Literals.CURE_DETAILS;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public CureBy getBy() {
		return by;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBy(CureBy newBy) {
		CureBy oldBy = by;
		by = newBy == null ? BY_EDEFAULT : newBy;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CuringDataPackage.CURE_DETAILS__BY, oldBy, by));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getPlannedHours() {
		return plannedHours;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPlannedHours(Double newPlannedHours) {
		Double oldPlannedHours = plannedHours;
		plannedHours = newPlannedHours;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CuringDataPackage.CURE_DETAILS__PLANNED_HOURS, oldPlannedHours, plannedHours));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getHours() {
		return hours;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHours(Double newHours) {
		Double oldHours = hours;
		hours = newHours;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CuringDataPackage.CURE_DETAILS__HOURS, oldHours, hours));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getPlannedC() {
		return plannedC;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPlannedC(Double newPlannedC) {
		Double oldPlannedC = plannedC;
		plannedC = newPlannedC;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CuringDataPackage.CURE_DETAILS__PLANNED_C, oldPlannedC, plannedC));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getCelsius() {
		return celsius;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCelsius(Double newCelsius) {
		Double oldCelsius = celsius;
		celsius = newCelsius;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CuringDataPackage.CURE_DETAILS__CELSIUS, oldCelsius, celsius));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<CureStage> getPlannedStages() {
		if (plannedStages == null) {
			plannedStages = new EObjectContainmentEList<CureStage>(CureStage.class, this, CuringDataPackage.CURE_DETAILS__PLANNED_STAGES);
		}
		return plannedStages;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<CureStage> getStages() {
		if (stages == null) {
			stages = new EObjectContainmentEList<CureStage>(CureStage.class, this, CuringDataPackage.CURE_DETAILS__STAGES);
		}
		return stages;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getLamp() {
		return lamp;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLamp(String newLamp) {
		String oldLamp = lamp;
		lamp = newLamp;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CuringDataPackage.CURE_DETAILS__LAMP, oldLamp, lamp));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getActivationEnergy() {
		return activationEnergy;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setActivationEnergy(Double newActivationEnergy) {
		Double oldActivationEnergy = activationEnergy;
		activationEnergy = newActivationEnergy;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CuringDataPackage.CURE_DETAILS__ACTIVATION_ENERGY, oldActivationEnergy, activationEnergy));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case CuringDataPackage.CURE_DETAILS__PLANNED_STAGES:
				return ((InternalEList<?>)getPlannedStages()).basicRemove(otherEnd, msgs);
			case CuringDataPackage.CURE_DETAILS__STAGES:
				return ((InternalEList<?>)getStages()).basicRemove(otherEnd, msgs);
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
			case CuringDataPackage.CURE_DETAILS__BY:
				return getBy();
			case CuringDataPackage.CURE_DETAILS__PLANNED_HOURS:
				return getPlannedHours();
			case CuringDataPackage.CURE_DETAILS__HOURS:
				return getHours();
			case CuringDataPackage.CURE_DETAILS__PLANNED_C:
				return getPlannedC();
			case CuringDataPackage.CURE_DETAILS__CELSIUS:
				return getCelsius();
			case CuringDataPackage.CURE_DETAILS__PLANNED_STAGES:
				return getPlannedStages();
			case CuringDataPackage.CURE_DETAILS__STAGES:
				return getStages();
			case CuringDataPackage.CURE_DETAILS__LAMP:
				return getLamp();
			case CuringDataPackage.CURE_DETAILS__ACTIVATION_ENERGY:
				return getActivationEnergy();
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
			case CuringDataPackage.CURE_DETAILS__BY:
				setBy((CureBy)newValue);
				return;
			case CuringDataPackage.CURE_DETAILS__PLANNED_HOURS:
				setPlannedHours((Double)newValue);
				return;
			case CuringDataPackage.CURE_DETAILS__HOURS:
				setHours((Double)newValue);
				return;
			case CuringDataPackage.CURE_DETAILS__PLANNED_C:
				setPlannedC((Double)newValue);
				return;
			case CuringDataPackage.CURE_DETAILS__CELSIUS:
				setCelsius((Double)newValue);
				return;
			case CuringDataPackage.CURE_DETAILS__PLANNED_STAGES:
				getPlannedStages().clear();
				getPlannedStages().addAll((Collection<? extends CureStage>)newValue);
				return;
			case CuringDataPackage.CURE_DETAILS__STAGES:
				getStages().clear();
				getStages().addAll((Collection<? extends CureStage>)newValue);
				return;
			case CuringDataPackage.CURE_DETAILS__LAMP:
				setLamp((String)newValue);
				return;
			case CuringDataPackage.CURE_DETAILS__ACTIVATION_ENERGY:
				setActivationEnergy((Double)newValue);
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
			case CuringDataPackage.CURE_DETAILS__BY:
				setBy(BY_EDEFAULT);
				return;
			case CuringDataPackage.CURE_DETAILS__PLANNED_HOURS:
				setPlannedHours(PLANNED_HOURS_EDEFAULT);
				return;
			case CuringDataPackage.CURE_DETAILS__HOURS:
				setHours(HOURS_EDEFAULT);
				return;
			case CuringDataPackage.CURE_DETAILS__PLANNED_C:
				setPlannedC(PLANNED_C_EDEFAULT);
				return;
			case CuringDataPackage.CURE_DETAILS__CELSIUS:
				setCelsius(CELSIUS_EDEFAULT);
				return;
			case CuringDataPackage.CURE_DETAILS__PLANNED_STAGES:
				getPlannedStages().clear();
				return;
			case CuringDataPackage.CURE_DETAILS__STAGES:
				getStages().clear();
				return;
			case CuringDataPackage.CURE_DETAILS__LAMP:
				setLamp(LAMP_EDEFAULT);
				return;
			case CuringDataPackage.CURE_DETAILS__ACTIVATION_ENERGY:
				setActivationEnergy(ACTIVATION_ENERGY_EDEFAULT);
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
			case CuringDataPackage.CURE_DETAILS__BY:
				return by != BY_EDEFAULT;
			case CuringDataPackage.CURE_DETAILS__PLANNED_HOURS:
				return PLANNED_HOURS_EDEFAULT == null ? plannedHours != null : !PLANNED_HOURS_EDEFAULT.equals(plannedHours);
			case CuringDataPackage.CURE_DETAILS__HOURS:
				return HOURS_EDEFAULT == null ? hours != null : !HOURS_EDEFAULT.equals(hours);
			case CuringDataPackage.CURE_DETAILS__PLANNED_C:
				return PLANNED_C_EDEFAULT == null ? plannedC != null : !PLANNED_C_EDEFAULT.equals(plannedC);
			case CuringDataPackage.CURE_DETAILS__CELSIUS:
				return CELSIUS_EDEFAULT == null ? celsius != null : !CELSIUS_EDEFAULT.equals(celsius);
			case CuringDataPackage.CURE_DETAILS__PLANNED_STAGES:
				return plannedStages != null && !plannedStages.isEmpty();
			case CuringDataPackage.CURE_DETAILS__STAGES:
				return stages != null && !stages.isEmpty();
			case CuringDataPackage.CURE_DETAILS__LAMP:
				return LAMP_EDEFAULT == null ? lamp != null : !LAMP_EDEFAULT.equals(lamp);
			case CuringDataPackage.CURE_DETAILS__ACTIVATION_ENERGY:
				return ACTIVATION_ENERGY_EDEFAULT == null ? activationEnergy != null : !ACTIVATION_ENERGY_EDEFAULT.equals(activationEnergy);
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
		result.append(" (by: ");
		result.append(by);
		result.append(", plannedHours: ");
		result.append(plannedHours);
		result.append(", hours: ");
		result.append(hours);
		result.append(", plannedC: ");
		result.append(plannedC);
		result.append(", celsius: ");
		result.append(celsius);
		result.append(", lamp: ");
		result.append(lamp);
		result.append(", activationEnergy: ");
		result.append(activationEnergy);
		result.append(')');
		return result.toString();
	}

} //CureDetailsImpl
