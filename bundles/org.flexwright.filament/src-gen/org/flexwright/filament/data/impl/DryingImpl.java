/**
 */
package org.flexwright.filament.data.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.flexwright.filament.data.Drying;
import org.flexwright.filament.data.FilamentDataPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Drying</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.filament.data.impl.DryingImpl#getPlannedTemperature <em>Planned Temperature</em>}</li>
 *   <li>{@link org.flexwright.filament.data.impl.DryingImpl#getActualTemperature <em>Actual Temperature</em>}</li>
 *   <li>{@link org.flexwright.filament.data.impl.DryingImpl#getPlannedHours <em>Planned Hours</em>}</li>
 *   <li>{@link org.flexwright.filament.data.impl.DryingImpl#getActualHours <em>Actual Hours</em>}</li>
 *   <li>{@link org.flexwright.filament.data.impl.DryingImpl#getSoftening <em>Softening</em>}</li>
 *   <li>{@link org.flexwright.filament.data.impl.DryingImpl#getDiffusivity <em>Diffusivity</em>}</li>
 *   <li>{@link org.flexwright.filament.data.impl.DryingImpl#getActivationEnergy <em>Activation Energy</em>}</li>
 *   <li>{@link org.flexwright.filament.data.impl.DryingImpl#getDiffusionSource <em>Diffusion Source</em>}</li>
 * </ul>
 *
 * @generated
 */
public class DryingImpl extends MinimalEObjectImpl.Container implements Drying {
	/**
	 * The default value of the '{@link #getPlannedTemperature() <em>Planned Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlannedTemperature()
	 * @generated
	 * @ordered
	 */
	protected static final Double PLANNED_TEMPERATURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPlannedTemperature() <em>Planned Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlannedTemperature()
	 * @generated
	 * @ordered
	 */
	protected Double plannedTemperature = PLANNED_TEMPERATURE_EDEFAULT;

	/**
	 * The default value of the '{@link #getActualTemperature() <em>Actual Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getActualTemperature()
	 * @generated
	 * @ordered
	 */
	protected static final Double ACTUAL_TEMPERATURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getActualTemperature() <em>Actual Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getActualTemperature()
	 * @generated
	 * @ordered
	 */
	protected Double actualTemperature = ACTUAL_TEMPERATURE_EDEFAULT;

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
	 * The default value of the '{@link #getActualHours() <em>Actual Hours</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getActualHours()
	 * @generated
	 * @ordered
	 */
	protected static final Double ACTUAL_HOURS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getActualHours() <em>Actual Hours</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getActualHours()
	 * @generated
	 * @ordered
	 */
	protected Double actualHours = ACTUAL_HOURS_EDEFAULT;

	/**
	 * The default value of the '{@link #getSoftening() <em>Softening</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSoftening()
	 * @generated
	 * @ordered
	 */
	protected static final Double SOFTENING_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSoftening() <em>Softening</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSoftening()
	 * @generated
	 * @ordered
	 */
	protected Double softening = SOFTENING_EDEFAULT;

	/**
	 * The default value of the '{@link #getDiffusivity() <em>Diffusivity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDiffusivity()
	 * @generated
	 * @ordered
	 */
	protected static final Double DIFFUSIVITY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDiffusivity() <em>Diffusivity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDiffusivity()
	 * @generated
	 * @ordered
	 */
	protected Double diffusivity = DIFFUSIVITY_EDEFAULT;

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
	 * The default value of the '{@link #getDiffusionSource() <em>Diffusion Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDiffusionSource()
	 * @generated
	 * @ordered
	 */
	protected static final String DIFFUSION_SOURCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDiffusionSource() <em>Diffusion Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDiffusionSource()
	 * @generated
	 * @ordered
	 */
	protected String diffusionSource = DIFFUSION_SOURCE_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected DryingImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return FilamentDataPackage.Literals.DRYING;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getPlannedTemperature() {
		return plannedTemperature;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPlannedTemperature(Double newPlannedTemperature) {
		Double oldPlannedTemperature = plannedTemperature;
		plannedTemperature = newPlannedTemperature;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FilamentDataPackage.DRYING__PLANNED_TEMPERATURE, oldPlannedTemperature, plannedTemperature));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getActualTemperature() {
		return actualTemperature;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setActualTemperature(Double newActualTemperature) {
		Double oldActualTemperature = actualTemperature;
		actualTemperature = newActualTemperature;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FilamentDataPackage.DRYING__ACTUAL_TEMPERATURE, oldActualTemperature, actualTemperature));
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
			eNotify(new ENotificationImpl(this, Notification.SET, FilamentDataPackage.DRYING__PLANNED_HOURS, oldPlannedHours, plannedHours));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getActualHours() {
		return actualHours;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setActualHours(Double newActualHours) {
		Double oldActualHours = actualHours;
		actualHours = newActualHours;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FilamentDataPackage.DRYING__ACTUAL_HOURS, oldActualHours, actualHours));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getSoftening() {
		return softening;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSoftening(Double newSoftening) {
		Double oldSoftening = softening;
		softening = newSoftening;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FilamentDataPackage.DRYING__SOFTENING, oldSoftening, softening));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getDiffusivity() {
		return diffusivity;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDiffusivity(Double newDiffusivity) {
		Double oldDiffusivity = diffusivity;
		diffusivity = newDiffusivity;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FilamentDataPackage.DRYING__DIFFUSIVITY, oldDiffusivity, diffusivity));
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
			eNotify(new ENotificationImpl(this, Notification.SET, FilamentDataPackage.DRYING__ACTIVATION_ENERGY, oldActivationEnergy, activationEnergy));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getDiffusionSource() {
		return diffusionSource;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDiffusionSource(String newDiffusionSource) {
		String oldDiffusionSource = diffusionSource;
		diffusionSource = newDiffusionSource;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FilamentDataPackage.DRYING__DIFFUSION_SOURCE, oldDiffusionSource, diffusionSource));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case FilamentDataPackage.DRYING__PLANNED_TEMPERATURE:
				return getPlannedTemperature();
			case FilamentDataPackage.DRYING__ACTUAL_TEMPERATURE:
				return getActualTemperature();
			case FilamentDataPackage.DRYING__PLANNED_HOURS:
				return getPlannedHours();
			case FilamentDataPackage.DRYING__ACTUAL_HOURS:
				return getActualHours();
			case FilamentDataPackage.DRYING__SOFTENING:
				return getSoftening();
			case FilamentDataPackage.DRYING__DIFFUSIVITY:
				return getDiffusivity();
			case FilamentDataPackage.DRYING__ACTIVATION_ENERGY:
				return getActivationEnergy();
			case FilamentDataPackage.DRYING__DIFFUSION_SOURCE:
				return getDiffusionSource();
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
			case FilamentDataPackage.DRYING__PLANNED_TEMPERATURE:
				setPlannedTemperature((Double)newValue);
				return;
			case FilamentDataPackage.DRYING__ACTUAL_TEMPERATURE:
				setActualTemperature((Double)newValue);
				return;
			case FilamentDataPackage.DRYING__PLANNED_HOURS:
				setPlannedHours((Double)newValue);
				return;
			case FilamentDataPackage.DRYING__ACTUAL_HOURS:
				setActualHours((Double)newValue);
				return;
			case FilamentDataPackage.DRYING__SOFTENING:
				setSoftening((Double)newValue);
				return;
			case FilamentDataPackage.DRYING__DIFFUSIVITY:
				setDiffusivity((Double)newValue);
				return;
			case FilamentDataPackage.DRYING__ACTIVATION_ENERGY:
				setActivationEnergy((Double)newValue);
				return;
			case FilamentDataPackage.DRYING__DIFFUSION_SOURCE:
				setDiffusionSource((String)newValue);
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
			case FilamentDataPackage.DRYING__PLANNED_TEMPERATURE:
				setPlannedTemperature(PLANNED_TEMPERATURE_EDEFAULT);
				return;
			case FilamentDataPackage.DRYING__ACTUAL_TEMPERATURE:
				setActualTemperature(ACTUAL_TEMPERATURE_EDEFAULT);
				return;
			case FilamentDataPackage.DRYING__PLANNED_HOURS:
				setPlannedHours(PLANNED_HOURS_EDEFAULT);
				return;
			case FilamentDataPackage.DRYING__ACTUAL_HOURS:
				setActualHours(ACTUAL_HOURS_EDEFAULT);
				return;
			case FilamentDataPackage.DRYING__SOFTENING:
				setSoftening(SOFTENING_EDEFAULT);
				return;
			case FilamentDataPackage.DRYING__DIFFUSIVITY:
				setDiffusivity(DIFFUSIVITY_EDEFAULT);
				return;
			case FilamentDataPackage.DRYING__ACTIVATION_ENERGY:
				setActivationEnergy(ACTIVATION_ENERGY_EDEFAULT);
				return;
			case FilamentDataPackage.DRYING__DIFFUSION_SOURCE:
				setDiffusionSource(DIFFUSION_SOURCE_EDEFAULT);
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
			case FilamentDataPackage.DRYING__PLANNED_TEMPERATURE:
				return PLANNED_TEMPERATURE_EDEFAULT == null ? plannedTemperature != null : !PLANNED_TEMPERATURE_EDEFAULT.equals(plannedTemperature);
			case FilamentDataPackage.DRYING__ACTUAL_TEMPERATURE:
				return ACTUAL_TEMPERATURE_EDEFAULT == null ? actualTemperature != null : !ACTUAL_TEMPERATURE_EDEFAULT.equals(actualTemperature);
			case FilamentDataPackage.DRYING__PLANNED_HOURS:
				return PLANNED_HOURS_EDEFAULT == null ? plannedHours != null : !PLANNED_HOURS_EDEFAULT.equals(plannedHours);
			case FilamentDataPackage.DRYING__ACTUAL_HOURS:
				return ACTUAL_HOURS_EDEFAULT == null ? actualHours != null : !ACTUAL_HOURS_EDEFAULT.equals(actualHours);
			case FilamentDataPackage.DRYING__SOFTENING:
				return SOFTENING_EDEFAULT == null ? softening != null : !SOFTENING_EDEFAULT.equals(softening);
			case FilamentDataPackage.DRYING__DIFFUSIVITY:
				return DIFFUSIVITY_EDEFAULT == null ? diffusivity != null : !DIFFUSIVITY_EDEFAULT.equals(diffusivity);
			case FilamentDataPackage.DRYING__ACTIVATION_ENERGY:
				return ACTIVATION_ENERGY_EDEFAULT == null ? activationEnergy != null : !ACTIVATION_ENERGY_EDEFAULT.equals(activationEnergy);
			case FilamentDataPackage.DRYING__DIFFUSION_SOURCE:
				return DIFFUSION_SOURCE_EDEFAULT == null ? diffusionSource != null : !DIFFUSION_SOURCE_EDEFAULT.equals(diffusionSource);
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
		result.append(" (plannedTemperature: ");
		result.append(plannedTemperature);
		result.append(", actualTemperature: ");
		result.append(actualTemperature);
		result.append(", plannedHours: ");
		result.append(plannedHours);
		result.append(", actualHours: ");
		result.append(actualHours);
		result.append(", softening: ");
		result.append(softening);
		result.append(", diffusivity: ");
		result.append(diffusivity);
		result.append(", activationEnergy: ");
		result.append(activationEnergy);
		result.append(", diffusionSource: ");
		result.append(diffusionSource);
		result.append(')');
		return result.toString();
	}

} //DryingImpl
