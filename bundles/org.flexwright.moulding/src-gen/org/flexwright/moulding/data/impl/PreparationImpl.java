/**
 */
package org.flexwright.moulding.data.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.flexwright.moulding.data.MouldMaterial;
import org.flexwright.moulding.data.MouldTreatment;
import org.flexwright.moulding.data.MouldingDataPackage;
import org.flexwright.moulding.data.Preparation;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Preparation</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.moulding.data.impl.PreparationImpl#getMouldMaterial <em>Mould Material</em>}</li>
 *   <li>{@link org.flexwright.moulding.data.impl.PreparationImpl#getPlannedTreatment <em>Planned Treatment</em>}</li>
 *   <li>{@link org.flexwright.moulding.data.impl.PreparationImpl#getActualTreatment <em>Actual Treatment</em>}</li>
 *   <li>{@link org.flexwright.moulding.data.impl.PreparationImpl#getPlannedDryHours <em>Planned Dry Hours</em>}</li>
 *   <li>{@link org.flexwright.moulding.data.impl.PreparationImpl#getActualDryHours <em>Actual Dry Hours</em>}</li>
 *   <li>{@link org.flexwright.moulding.data.impl.PreparationImpl#getPlannedTemperature <em>Planned Temperature</em>}</li>
 *   <li>{@link org.flexwright.moulding.data.impl.PreparationImpl#getActualTemperature <em>Actual Temperature</em>}</li>
 *   <li>{@link org.flexwright.moulding.data.impl.PreparationImpl#getRelease <em>Release</em>}</li>
 *   <li>{@link org.flexwright.moulding.data.impl.PreparationImpl#getCastsSoFar <em>Casts So Far</em>}</li>
 *   <li>{@link org.flexwright.moulding.data.impl.PreparationImpl#getCastsLimit <em>Casts Limit</em>}</li>
 * </ul>
 *
 * @generated
 */
public class PreparationImpl extends MinimalEObjectImpl.Container implements Preparation {
	/**
	 * The default value of the '{@link #getMouldMaterial() <em>Mould Material</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMouldMaterial()
	 * @generated
	 * @ordered
	 */
	protected static final MouldMaterial MOULD_MATERIAL_EDEFAULT = MouldMaterial.UNKNOWN;

	/**
	 * The cached value of the '{@link #getMouldMaterial() <em>Mould Material</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMouldMaterial()
	 * @generated
	 * @ordered
	 */
	protected MouldMaterial mouldMaterial = MOULD_MATERIAL_EDEFAULT;

	/**
	 * The default value of the '{@link #getPlannedTreatment() <em>Planned Treatment</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlannedTreatment()
	 * @generated
	 * @ordered
	 */
	protected static final MouldTreatment PLANNED_TREATMENT_EDEFAULT = MouldTreatment.UNKNOWN;

	/**
	 * The cached value of the '{@link #getPlannedTreatment() <em>Planned Treatment</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlannedTreatment()
	 * @generated
	 * @ordered
	 */
	protected MouldTreatment plannedTreatment = PLANNED_TREATMENT_EDEFAULT;

	/**
	 * The default value of the '{@link #getActualTreatment() <em>Actual Treatment</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getActualTreatment()
	 * @generated
	 * @ordered
	 */
	protected static final MouldTreatment ACTUAL_TREATMENT_EDEFAULT = MouldTreatment.UNKNOWN;

	/**
	 * The cached value of the '{@link #getActualTreatment() <em>Actual Treatment</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getActualTreatment()
	 * @generated
	 * @ordered
	 */
	protected MouldTreatment actualTreatment = ACTUAL_TREATMENT_EDEFAULT;

	/**
	 * The default value of the '{@link #getPlannedDryHours() <em>Planned Dry Hours</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlannedDryHours()
	 * @generated
	 * @ordered
	 */
	protected static final Double PLANNED_DRY_HOURS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPlannedDryHours() <em>Planned Dry Hours</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlannedDryHours()
	 * @generated
	 * @ordered
	 */
	protected Double plannedDryHours = PLANNED_DRY_HOURS_EDEFAULT;

	/**
	 * The default value of the '{@link #getActualDryHours() <em>Actual Dry Hours</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getActualDryHours()
	 * @generated
	 * @ordered
	 */
	protected static final Double ACTUAL_DRY_HOURS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getActualDryHours() <em>Actual Dry Hours</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getActualDryHours()
	 * @generated
	 * @ordered
	 */
	protected Double actualDryHours = ACTUAL_DRY_HOURS_EDEFAULT;

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
	 * The default value of the '{@link #getRelease() <em>Release</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRelease()
	 * @generated
	 * @ordered
	 */
	protected static final String RELEASE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRelease() <em>Release</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRelease()
	 * @generated
	 * @ordered
	 */
	protected String release = RELEASE_EDEFAULT;

	/**
	 * The default value of the '{@link #getCastsSoFar() <em>Casts So Far</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCastsSoFar()
	 * @generated
	 * @ordered
	 */
	protected static final Integer CASTS_SO_FAR_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCastsSoFar() <em>Casts So Far</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCastsSoFar()
	 * @generated
	 * @ordered
	 */
	protected Integer castsSoFar = CASTS_SO_FAR_EDEFAULT;

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
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected PreparationImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return MouldingDataPackage.Literals.PREPARATION;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public MouldMaterial getMouldMaterial() {
		return mouldMaterial;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMouldMaterial(MouldMaterial newMouldMaterial) {
		MouldMaterial oldMouldMaterial = mouldMaterial;
		mouldMaterial = newMouldMaterial == null ? MOULD_MATERIAL_EDEFAULT : newMouldMaterial;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, MouldingDataPackage.PREPARATION__MOULD_MATERIAL, oldMouldMaterial, mouldMaterial));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public MouldTreatment getPlannedTreatment() {
		return plannedTreatment;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPlannedTreatment(MouldTreatment newPlannedTreatment) {
		MouldTreatment oldPlannedTreatment = plannedTreatment;
		plannedTreatment = newPlannedTreatment == null ? PLANNED_TREATMENT_EDEFAULT : newPlannedTreatment;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, MouldingDataPackage.PREPARATION__PLANNED_TREATMENT, oldPlannedTreatment, plannedTreatment));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public MouldTreatment getActualTreatment() {
		return actualTreatment;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setActualTreatment(MouldTreatment newActualTreatment) {
		MouldTreatment oldActualTreatment = actualTreatment;
		actualTreatment = newActualTreatment == null ? ACTUAL_TREATMENT_EDEFAULT : newActualTreatment;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, MouldingDataPackage.PREPARATION__ACTUAL_TREATMENT, oldActualTreatment, actualTreatment));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getPlannedDryHours() {
		return plannedDryHours;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPlannedDryHours(Double newPlannedDryHours) {
		Double oldPlannedDryHours = plannedDryHours;
		plannedDryHours = newPlannedDryHours;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, MouldingDataPackage.PREPARATION__PLANNED_DRY_HOURS, oldPlannedDryHours, plannedDryHours));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getActualDryHours() {
		return actualDryHours;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setActualDryHours(Double newActualDryHours) {
		Double oldActualDryHours = actualDryHours;
		actualDryHours = newActualDryHours;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, MouldingDataPackage.PREPARATION__ACTUAL_DRY_HOURS, oldActualDryHours, actualDryHours));
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
			eNotify(new ENotificationImpl(this, Notification.SET, MouldingDataPackage.PREPARATION__PLANNED_TEMPERATURE, oldPlannedTemperature, plannedTemperature));
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
			eNotify(new ENotificationImpl(this, Notification.SET, MouldingDataPackage.PREPARATION__ACTUAL_TEMPERATURE, oldActualTemperature, actualTemperature));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getRelease() {
		return release;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRelease(String newRelease) {
		String oldRelease = release;
		release = newRelease;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, MouldingDataPackage.PREPARATION__RELEASE, oldRelease, release));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getCastsSoFar() {
		return castsSoFar;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCastsSoFar(Integer newCastsSoFar) {
		Integer oldCastsSoFar = castsSoFar;
		castsSoFar = newCastsSoFar;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, MouldingDataPackage.PREPARATION__CASTS_SO_FAR, oldCastsSoFar, castsSoFar));
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
			eNotify(new ENotificationImpl(this, Notification.SET, MouldingDataPackage.PREPARATION__CASTS_LIMIT, oldCastsLimit, castsLimit));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case MouldingDataPackage.PREPARATION__MOULD_MATERIAL:
				return getMouldMaterial();
			case MouldingDataPackage.PREPARATION__PLANNED_TREATMENT:
				return getPlannedTreatment();
			case MouldingDataPackage.PREPARATION__ACTUAL_TREATMENT:
				return getActualTreatment();
			case MouldingDataPackage.PREPARATION__PLANNED_DRY_HOURS:
				return getPlannedDryHours();
			case MouldingDataPackage.PREPARATION__ACTUAL_DRY_HOURS:
				return getActualDryHours();
			case MouldingDataPackage.PREPARATION__PLANNED_TEMPERATURE:
				return getPlannedTemperature();
			case MouldingDataPackage.PREPARATION__ACTUAL_TEMPERATURE:
				return getActualTemperature();
			case MouldingDataPackage.PREPARATION__RELEASE:
				return getRelease();
			case MouldingDataPackage.PREPARATION__CASTS_SO_FAR:
				return getCastsSoFar();
			case MouldingDataPackage.PREPARATION__CASTS_LIMIT:
				return getCastsLimit();
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
			case MouldingDataPackage.PREPARATION__MOULD_MATERIAL:
				setMouldMaterial((MouldMaterial)newValue);
				return;
			case MouldingDataPackage.PREPARATION__PLANNED_TREATMENT:
				setPlannedTreatment((MouldTreatment)newValue);
				return;
			case MouldingDataPackage.PREPARATION__ACTUAL_TREATMENT:
				setActualTreatment((MouldTreatment)newValue);
				return;
			case MouldingDataPackage.PREPARATION__PLANNED_DRY_HOURS:
				setPlannedDryHours((Double)newValue);
				return;
			case MouldingDataPackage.PREPARATION__ACTUAL_DRY_HOURS:
				setActualDryHours((Double)newValue);
				return;
			case MouldingDataPackage.PREPARATION__PLANNED_TEMPERATURE:
				setPlannedTemperature((Double)newValue);
				return;
			case MouldingDataPackage.PREPARATION__ACTUAL_TEMPERATURE:
				setActualTemperature((Double)newValue);
				return;
			case MouldingDataPackage.PREPARATION__RELEASE:
				setRelease((String)newValue);
				return;
			case MouldingDataPackage.PREPARATION__CASTS_SO_FAR:
				setCastsSoFar((Integer)newValue);
				return;
			case MouldingDataPackage.PREPARATION__CASTS_LIMIT:
				setCastsLimit((Integer)newValue);
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
			case MouldingDataPackage.PREPARATION__MOULD_MATERIAL:
				setMouldMaterial(MOULD_MATERIAL_EDEFAULT);
				return;
			case MouldingDataPackage.PREPARATION__PLANNED_TREATMENT:
				setPlannedTreatment(PLANNED_TREATMENT_EDEFAULT);
				return;
			case MouldingDataPackage.PREPARATION__ACTUAL_TREATMENT:
				setActualTreatment(ACTUAL_TREATMENT_EDEFAULT);
				return;
			case MouldingDataPackage.PREPARATION__PLANNED_DRY_HOURS:
				setPlannedDryHours(PLANNED_DRY_HOURS_EDEFAULT);
				return;
			case MouldingDataPackage.PREPARATION__ACTUAL_DRY_HOURS:
				setActualDryHours(ACTUAL_DRY_HOURS_EDEFAULT);
				return;
			case MouldingDataPackage.PREPARATION__PLANNED_TEMPERATURE:
				setPlannedTemperature(PLANNED_TEMPERATURE_EDEFAULT);
				return;
			case MouldingDataPackage.PREPARATION__ACTUAL_TEMPERATURE:
				setActualTemperature(ACTUAL_TEMPERATURE_EDEFAULT);
				return;
			case MouldingDataPackage.PREPARATION__RELEASE:
				setRelease(RELEASE_EDEFAULT);
				return;
			case MouldingDataPackage.PREPARATION__CASTS_SO_FAR:
				setCastsSoFar(CASTS_SO_FAR_EDEFAULT);
				return;
			case MouldingDataPackage.PREPARATION__CASTS_LIMIT:
				setCastsLimit(CASTS_LIMIT_EDEFAULT);
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
			case MouldingDataPackage.PREPARATION__MOULD_MATERIAL:
				return mouldMaterial != MOULD_MATERIAL_EDEFAULT;
			case MouldingDataPackage.PREPARATION__PLANNED_TREATMENT:
				return plannedTreatment != PLANNED_TREATMENT_EDEFAULT;
			case MouldingDataPackage.PREPARATION__ACTUAL_TREATMENT:
				return actualTreatment != ACTUAL_TREATMENT_EDEFAULT;
			case MouldingDataPackage.PREPARATION__PLANNED_DRY_HOURS:
				return PLANNED_DRY_HOURS_EDEFAULT == null ? plannedDryHours != null : !PLANNED_DRY_HOURS_EDEFAULT.equals(plannedDryHours);
			case MouldingDataPackage.PREPARATION__ACTUAL_DRY_HOURS:
				return ACTUAL_DRY_HOURS_EDEFAULT == null ? actualDryHours != null : !ACTUAL_DRY_HOURS_EDEFAULT.equals(actualDryHours);
			case MouldingDataPackage.PREPARATION__PLANNED_TEMPERATURE:
				return PLANNED_TEMPERATURE_EDEFAULT == null ? plannedTemperature != null : !PLANNED_TEMPERATURE_EDEFAULT.equals(plannedTemperature);
			case MouldingDataPackage.PREPARATION__ACTUAL_TEMPERATURE:
				return ACTUAL_TEMPERATURE_EDEFAULT == null ? actualTemperature != null : !ACTUAL_TEMPERATURE_EDEFAULT.equals(actualTemperature);
			case MouldingDataPackage.PREPARATION__RELEASE:
				return RELEASE_EDEFAULT == null ? release != null : !RELEASE_EDEFAULT.equals(release);
			case MouldingDataPackage.PREPARATION__CASTS_SO_FAR:
				return CASTS_SO_FAR_EDEFAULT == null ? castsSoFar != null : !CASTS_SO_FAR_EDEFAULT.equals(castsSoFar);
			case MouldingDataPackage.PREPARATION__CASTS_LIMIT:
				return CASTS_LIMIT_EDEFAULT == null ? castsLimit != null : !CASTS_LIMIT_EDEFAULT.equals(castsLimit);
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
		result.append(" (mouldMaterial: ");
		result.append(mouldMaterial);
		result.append(", plannedTreatment: ");
		result.append(plannedTreatment);
		result.append(", actualTreatment: ");
		result.append(actualTreatment);
		result.append(", plannedDryHours: ");
		result.append(plannedDryHours);
		result.append(", actualDryHours: ");
		result.append(actualDryHours);
		result.append(", plannedTemperature: ");
		result.append(plannedTemperature);
		result.append(", actualTemperature: ");
		result.append(actualTemperature);
		result.append(", release: ");
		result.append(release);
		result.append(", castsSoFar: ");
		result.append(castsSoFar);
		result.append(", castsLimit: ");
		result.append(castsLimit);
		result.append(')');
		return result.toString();
	}

} //PreparationImpl
