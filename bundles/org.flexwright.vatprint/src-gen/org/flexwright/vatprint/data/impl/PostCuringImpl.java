/**
 */
package org.flexwright.vatprint.data.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.flexwright.vatprint.data.PostCureMedium;
import org.flexwright.vatprint.data.PostCuring;
import org.flexwright.vatprint.data.VatprintDataPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Post Curing</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.vatprint.data.impl.PostCuringImpl#getPlannedDryMinutes <em>Planned Dry Minutes</em>}</li>
 *   <li>{@link org.flexwright.vatprint.data.impl.PostCuringImpl#getActualDryMinutes <em>Actual Dry Minutes</em>}</li>
 *   <li>{@link org.flexwright.vatprint.data.impl.PostCuringImpl#getMassSteady <em>Mass Steady</em>}</li>
 *   <li>{@link org.flexwright.vatprint.data.impl.PostCuringImpl#getPlannedMinutes <em>Planned Minutes</em>}</li>
 *   <li>{@link org.flexwright.vatprint.data.impl.PostCuringImpl#getActualMinutes <em>Actual Minutes</em>}</li>
 *   <li>{@link org.flexwright.vatprint.data.impl.PostCuringImpl#getPlannedTemperature <em>Planned Temperature</em>}</li>
 *   <li>{@link org.flexwright.vatprint.data.impl.PostCuringImpl#getActualTemperature <em>Actual Temperature</em>}</li>
 *   <li>{@link org.flexwright.vatprint.data.impl.PostCuringImpl#getMedium <em>Medium</em>}</li>
 * </ul>
 *
 * @generated
 */
public class PostCuringImpl extends MinimalEObjectImpl.Container implements PostCuring {
	/**
	 * The default value of the '{@link #getPlannedDryMinutes() <em>Planned Dry Minutes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlannedDryMinutes()
	 * @generated
	 * @ordered
	 */
	protected static final Double PLANNED_DRY_MINUTES_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPlannedDryMinutes() <em>Planned Dry Minutes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlannedDryMinutes()
	 * @generated
	 * @ordered
	 */
	protected Double plannedDryMinutes = PLANNED_DRY_MINUTES_EDEFAULT;

	/**
	 * The default value of the '{@link #getActualDryMinutes() <em>Actual Dry Minutes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getActualDryMinutes()
	 * @generated
	 * @ordered
	 */
	protected static final Double ACTUAL_DRY_MINUTES_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getActualDryMinutes() <em>Actual Dry Minutes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getActualDryMinutes()
	 * @generated
	 * @ordered
	 */
	protected Double actualDryMinutes = ACTUAL_DRY_MINUTES_EDEFAULT;

	/**
	 * The default value of the '{@link #getMassSteady() <em>Mass Steady</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMassSteady()
	 * @generated
	 * @ordered
	 */
	protected static final Boolean MASS_STEADY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMassSteady() <em>Mass Steady</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMassSteady()
	 * @generated
	 * @ordered
	 */
	protected Boolean massSteady = MASS_STEADY_EDEFAULT;

	/**
	 * The default value of the '{@link #getPlannedMinutes() <em>Planned Minutes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlannedMinutes()
	 * @generated
	 * @ordered
	 */
	protected static final Double PLANNED_MINUTES_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPlannedMinutes() <em>Planned Minutes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlannedMinutes()
	 * @generated
	 * @ordered
	 */
	protected Double plannedMinutes = PLANNED_MINUTES_EDEFAULT;

	/**
	 * The default value of the '{@link #getActualMinutes() <em>Actual Minutes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getActualMinutes()
	 * @generated
	 * @ordered
	 */
	protected static final Double ACTUAL_MINUTES_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getActualMinutes() <em>Actual Minutes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getActualMinutes()
	 * @generated
	 * @ordered
	 */
	protected Double actualMinutes = ACTUAL_MINUTES_EDEFAULT;

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
	 * The default value of the '{@link #getMedium() <em>Medium</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMedium()
	 * @generated
	 * @ordered
	 */
	protected static final PostCureMedium MEDIUM_EDEFAULT = PostCureMedium.UNKNOWN;

	/**
	 * The cached value of the '{@link #getMedium() <em>Medium</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMedium()
	 * @generated
	 * @ordered
	 */
	protected PostCureMedium medium = MEDIUM_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected PostCuringImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return VatprintDataPackage.Literals.POST_CURING;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getPlannedDryMinutes() {
		return plannedDryMinutes;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPlannedDryMinutes(Double newPlannedDryMinutes) {
		Double oldPlannedDryMinutes = plannedDryMinutes;
		plannedDryMinutes = newPlannedDryMinutes;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, VatprintDataPackage.POST_CURING__PLANNED_DRY_MINUTES, oldPlannedDryMinutes, plannedDryMinutes));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getActualDryMinutes() {
		return actualDryMinutes;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setActualDryMinutes(Double newActualDryMinutes) {
		Double oldActualDryMinutes = actualDryMinutes;
		actualDryMinutes = newActualDryMinutes;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, VatprintDataPackage.POST_CURING__ACTUAL_DRY_MINUTES, oldActualDryMinutes, actualDryMinutes));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Boolean getMassSteady() {
		return massSteady;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMassSteady(Boolean newMassSteady) {
		Boolean oldMassSteady = massSteady;
		massSteady = newMassSteady;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, VatprintDataPackage.POST_CURING__MASS_STEADY, oldMassSteady, massSteady));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getPlannedMinutes() {
		return plannedMinutes;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPlannedMinutes(Double newPlannedMinutes) {
		Double oldPlannedMinutes = plannedMinutes;
		plannedMinutes = newPlannedMinutes;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, VatprintDataPackage.POST_CURING__PLANNED_MINUTES, oldPlannedMinutes, plannedMinutes));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getActualMinutes() {
		return actualMinutes;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setActualMinutes(Double newActualMinutes) {
		Double oldActualMinutes = actualMinutes;
		actualMinutes = newActualMinutes;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, VatprintDataPackage.POST_CURING__ACTUAL_MINUTES, oldActualMinutes, actualMinutes));
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
			eNotify(new ENotificationImpl(this, Notification.SET, VatprintDataPackage.POST_CURING__PLANNED_TEMPERATURE, oldPlannedTemperature, plannedTemperature));
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
			eNotify(new ENotificationImpl(this, Notification.SET, VatprintDataPackage.POST_CURING__ACTUAL_TEMPERATURE, oldActualTemperature, actualTemperature));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PostCureMedium getMedium() {
		return medium;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMedium(PostCureMedium newMedium) {
		PostCureMedium oldMedium = medium;
		medium = newMedium == null ? MEDIUM_EDEFAULT : newMedium;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, VatprintDataPackage.POST_CURING__MEDIUM, oldMedium, medium));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case VatprintDataPackage.POST_CURING__PLANNED_DRY_MINUTES:
				return getPlannedDryMinutes();
			case VatprintDataPackage.POST_CURING__ACTUAL_DRY_MINUTES:
				return getActualDryMinutes();
			case VatprintDataPackage.POST_CURING__MASS_STEADY:
				return getMassSteady();
			case VatprintDataPackage.POST_CURING__PLANNED_MINUTES:
				return getPlannedMinutes();
			case VatprintDataPackage.POST_CURING__ACTUAL_MINUTES:
				return getActualMinutes();
			case VatprintDataPackage.POST_CURING__PLANNED_TEMPERATURE:
				return getPlannedTemperature();
			case VatprintDataPackage.POST_CURING__ACTUAL_TEMPERATURE:
				return getActualTemperature();
			case VatprintDataPackage.POST_CURING__MEDIUM:
				return getMedium();
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
			case VatprintDataPackage.POST_CURING__PLANNED_DRY_MINUTES:
				setPlannedDryMinutes((Double)newValue);
				return;
			case VatprintDataPackage.POST_CURING__ACTUAL_DRY_MINUTES:
				setActualDryMinutes((Double)newValue);
				return;
			case VatprintDataPackage.POST_CURING__MASS_STEADY:
				setMassSteady((Boolean)newValue);
				return;
			case VatprintDataPackage.POST_CURING__PLANNED_MINUTES:
				setPlannedMinutes((Double)newValue);
				return;
			case VatprintDataPackage.POST_CURING__ACTUAL_MINUTES:
				setActualMinutes((Double)newValue);
				return;
			case VatprintDataPackage.POST_CURING__PLANNED_TEMPERATURE:
				setPlannedTemperature((Double)newValue);
				return;
			case VatprintDataPackage.POST_CURING__ACTUAL_TEMPERATURE:
				setActualTemperature((Double)newValue);
				return;
			case VatprintDataPackage.POST_CURING__MEDIUM:
				setMedium((PostCureMedium)newValue);
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
			case VatprintDataPackage.POST_CURING__PLANNED_DRY_MINUTES:
				setPlannedDryMinutes(PLANNED_DRY_MINUTES_EDEFAULT);
				return;
			case VatprintDataPackage.POST_CURING__ACTUAL_DRY_MINUTES:
				setActualDryMinutes(ACTUAL_DRY_MINUTES_EDEFAULT);
				return;
			case VatprintDataPackage.POST_CURING__MASS_STEADY:
				setMassSteady(MASS_STEADY_EDEFAULT);
				return;
			case VatprintDataPackage.POST_CURING__PLANNED_MINUTES:
				setPlannedMinutes(PLANNED_MINUTES_EDEFAULT);
				return;
			case VatprintDataPackage.POST_CURING__ACTUAL_MINUTES:
				setActualMinutes(ACTUAL_MINUTES_EDEFAULT);
				return;
			case VatprintDataPackage.POST_CURING__PLANNED_TEMPERATURE:
				setPlannedTemperature(PLANNED_TEMPERATURE_EDEFAULT);
				return;
			case VatprintDataPackage.POST_CURING__ACTUAL_TEMPERATURE:
				setActualTemperature(ACTUAL_TEMPERATURE_EDEFAULT);
				return;
			case VatprintDataPackage.POST_CURING__MEDIUM:
				setMedium(MEDIUM_EDEFAULT);
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
			case VatprintDataPackage.POST_CURING__PLANNED_DRY_MINUTES:
				return PLANNED_DRY_MINUTES_EDEFAULT == null ? plannedDryMinutes != null : !PLANNED_DRY_MINUTES_EDEFAULT.equals(plannedDryMinutes);
			case VatprintDataPackage.POST_CURING__ACTUAL_DRY_MINUTES:
				return ACTUAL_DRY_MINUTES_EDEFAULT == null ? actualDryMinutes != null : !ACTUAL_DRY_MINUTES_EDEFAULT.equals(actualDryMinutes);
			case VatprintDataPackage.POST_CURING__MASS_STEADY:
				return MASS_STEADY_EDEFAULT == null ? massSteady != null : !MASS_STEADY_EDEFAULT.equals(massSteady);
			case VatprintDataPackage.POST_CURING__PLANNED_MINUTES:
				return PLANNED_MINUTES_EDEFAULT == null ? plannedMinutes != null : !PLANNED_MINUTES_EDEFAULT.equals(plannedMinutes);
			case VatprintDataPackage.POST_CURING__ACTUAL_MINUTES:
				return ACTUAL_MINUTES_EDEFAULT == null ? actualMinutes != null : !ACTUAL_MINUTES_EDEFAULT.equals(actualMinutes);
			case VatprintDataPackage.POST_CURING__PLANNED_TEMPERATURE:
				return PLANNED_TEMPERATURE_EDEFAULT == null ? plannedTemperature != null : !PLANNED_TEMPERATURE_EDEFAULT.equals(plannedTemperature);
			case VatprintDataPackage.POST_CURING__ACTUAL_TEMPERATURE:
				return ACTUAL_TEMPERATURE_EDEFAULT == null ? actualTemperature != null : !ACTUAL_TEMPERATURE_EDEFAULT.equals(actualTemperature);
			case VatprintDataPackage.POST_CURING__MEDIUM:
				return medium != MEDIUM_EDEFAULT;
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
		result.append(" (plannedDryMinutes: ");
		result.append(plannedDryMinutes);
		result.append(", actualDryMinutes: ");
		result.append(actualDryMinutes);
		result.append(", massSteady: ");
		result.append(massSteady);
		result.append(", plannedMinutes: ");
		result.append(plannedMinutes);
		result.append(", actualMinutes: ");
		result.append(actualMinutes);
		result.append(", plannedTemperature: ");
		result.append(plannedTemperature);
		result.append(", actualTemperature: ");
		result.append(actualTemperature);
		result.append(", medium: ");
		result.append(medium);
		result.append(')');
		return result.toString();
	}

} //PostCuringImpl
