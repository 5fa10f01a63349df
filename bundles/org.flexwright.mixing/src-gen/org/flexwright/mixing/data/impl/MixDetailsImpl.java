/**
 */
package org.flexwright.mixing.data.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.flexwright.mixing.data.MixDetails;
import org.flexwright.mixing.data.MixingDataPackage;
import org.flexwright.mixing.data.WorkingTimeRule;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Mix Details</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.mixing.data.impl.MixDetailsImpl#getPlannedMinutes <em>Planned Minutes</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.impl.MixDetailsImpl#getMinutes <em>Minutes</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.impl.MixDetailsImpl#getPlannedOrder <em>Planned Order</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.impl.MixDetailsImpl#getOrder <em>Order</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.impl.MixDetailsImpl#getTool <em>Tool</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.impl.MixDetailsImpl#getScraped <em>Scraped</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.impl.MixDetailsImpl#getWorkingTime <em>Working Time</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.impl.MixDetailsImpl#getWorkingTimeRule <em>Working Time Rule</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.impl.MixDetailsImpl#getWorkingTimeMass <em>Working Time Mass</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.impl.MixDetailsImpl#getWorkingTimeC <em>Working Time C</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.impl.MixDetailsImpl#getWorkingTimeGrowth <em>Working Time Growth</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.impl.MixDetailsImpl#getWorkingTimeEnergy <em>Working Time Energy</em>}</li>
 * </ul>
 *
 * @generated
 */
public class MixDetailsImpl extends MinimalEObjectImpl.Container implements MixDetails {
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
	 * The default value of the '{@link #getMinutes() <em>Minutes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMinutes()
	 * @generated
	 * @ordered
	 */
	protected static final Double MINUTES_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMinutes() <em>Minutes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMinutes()
	 * @generated
	 * @ordered
	 */
	protected Double minutes = MINUTES_EDEFAULT;

	/**
	 * The default value of the '{@link #getPlannedOrder() <em>Planned Order</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlannedOrder()
	 * @generated
	 * @ordered
	 */
	protected static final String PLANNED_ORDER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPlannedOrder() <em>Planned Order</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlannedOrder()
	 * @generated
	 * @ordered
	 */
	protected String plannedOrder = PLANNED_ORDER_EDEFAULT;

	/**
	 * The default value of the '{@link #getOrder() <em>Order</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOrder()
	 * @generated
	 * @ordered
	 */
	protected static final String ORDER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOrder() <em>Order</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOrder()
	 * @generated
	 * @ordered
	 */
	protected String order = ORDER_EDEFAULT;

	/**
	 * The default value of the '{@link #getTool() <em>Tool</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTool()
	 * @generated
	 * @ordered
	 */
	protected static final String TOOL_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTool() <em>Tool</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTool()
	 * @generated
	 * @ordered
	 */
	protected String tool = TOOL_EDEFAULT;

	/**
	 * The default value of the '{@link #getScraped() <em>Scraped</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getScraped()
	 * @generated
	 * @ordered
	 */
	protected static final Boolean SCRAPED_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getScraped() <em>Scraped</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getScraped()
	 * @generated
	 * @ordered
	 */
	protected Boolean scraped = SCRAPED_EDEFAULT;

	/**
	 * The default value of the '{@link #getWorkingTime() <em>Working Time</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWorkingTime()
	 * @generated
	 * @ordered
	 */
	protected static final Double WORKING_TIME_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWorkingTime() <em>Working Time</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWorkingTime()
	 * @generated
	 * @ordered
	 */
	protected Double workingTime = WORKING_TIME_EDEFAULT;

	/**
	 * The default value of the '{@link #getWorkingTimeRule() <em>Working Time Rule</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWorkingTimeRule()
	 * @generated
	 * @ordered
	 */
	protected static final WorkingTimeRule WORKING_TIME_RULE_EDEFAULT = WorkingTimeRule.UNSTATED;

	/**
	 * The cached value of the '{@link #getWorkingTimeRule() <em>Working Time Rule</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWorkingTimeRule()
	 * @generated
	 * @ordered
	 */
	protected WorkingTimeRule workingTimeRule = WORKING_TIME_RULE_EDEFAULT;

	/**
	 * The default value of the '{@link #getWorkingTimeMass() <em>Working Time Mass</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWorkingTimeMass()
	 * @generated
	 * @ordered
	 */
	protected static final Double WORKING_TIME_MASS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWorkingTimeMass() <em>Working Time Mass</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWorkingTimeMass()
	 * @generated
	 * @ordered
	 */
	protected Double workingTimeMass = WORKING_TIME_MASS_EDEFAULT;

	/**
	 * The default value of the '{@link #getWorkingTimeC() <em>Working Time C</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWorkingTimeC()
	 * @generated
	 * @ordered
	 */
	protected static final Double WORKING_TIME_C_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWorkingTimeC() <em>Working Time C</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWorkingTimeC()
	 * @generated
	 * @ordered
	 */
	protected Double workingTimeC = WORKING_TIME_C_EDEFAULT;

	/**
	 * The default value of the '{@link #getWorkingTimeGrowth() <em>Working Time Growth</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWorkingTimeGrowth()
	 * @generated
	 * @ordered
	 */
	protected static final Double WORKING_TIME_GROWTH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWorkingTimeGrowth() <em>Working Time Growth</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWorkingTimeGrowth()
	 * @generated
	 * @ordered
	 */
	protected Double workingTimeGrowth = WORKING_TIME_GROWTH_EDEFAULT;

	/**
	 * The default value of the '{@link #getWorkingTimeEnergy() <em>Working Time Energy</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWorkingTimeEnergy()
	 * @generated
	 * @ordered
	 */
	protected static final Double WORKING_TIME_ENERGY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWorkingTimeEnergy() <em>Working Time Energy</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWorkingTimeEnergy()
	 * @generated
	 * @ordered
	 */
	protected Double workingTimeEnergy = WORKING_TIME_ENERGY_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected MixDetailsImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return MixingDataPackage.Literals.MIX_DETAILS;
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
			eNotify(new ENotificationImpl(this, Notification.SET, MixingDataPackage.MIX_DETAILS__PLANNED_MINUTES, oldPlannedMinutes, plannedMinutes));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getMinutes() {
		return minutes;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMinutes(Double newMinutes) {
		Double oldMinutes = minutes;
		minutes = newMinutes;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, MixingDataPackage.MIX_DETAILS__MINUTES, oldMinutes, minutes));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getPlannedOrder() {
		return plannedOrder;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPlannedOrder(String newPlannedOrder) {
		String oldPlannedOrder = plannedOrder;
		plannedOrder = newPlannedOrder;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, MixingDataPackage.MIX_DETAILS__PLANNED_ORDER, oldPlannedOrder, plannedOrder));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getOrder() {
		return order;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOrder(String newOrder) {
		String oldOrder = order;
		order = newOrder;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, MixingDataPackage.MIX_DETAILS__ORDER, oldOrder, order));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getTool() {
		return tool;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTool(String newTool) {
		String oldTool = tool;
		tool = newTool;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, MixingDataPackage.MIX_DETAILS__TOOL, oldTool, tool));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Boolean getScraped() {
		return scraped;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setScraped(Boolean newScraped) {
		Boolean oldScraped = scraped;
		scraped = newScraped;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, MixingDataPackage.MIX_DETAILS__SCRAPED, oldScraped, scraped));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getWorkingTime() {
		return workingTime;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWorkingTime(Double newWorkingTime) {
		Double oldWorkingTime = workingTime;
		workingTime = newWorkingTime;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, MixingDataPackage.MIX_DETAILS__WORKING_TIME, oldWorkingTime, workingTime));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public WorkingTimeRule getWorkingTimeRule() {
		return workingTimeRule;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWorkingTimeRule(WorkingTimeRule newWorkingTimeRule) {
		WorkingTimeRule oldWorkingTimeRule = workingTimeRule;
		workingTimeRule = newWorkingTimeRule == null ? WORKING_TIME_RULE_EDEFAULT : newWorkingTimeRule;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, MixingDataPackage.MIX_DETAILS__WORKING_TIME_RULE, oldWorkingTimeRule, workingTimeRule));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getWorkingTimeMass() {
		return workingTimeMass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWorkingTimeMass(Double newWorkingTimeMass) {
		Double oldWorkingTimeMass = workingTimeMass;
		workingTimeMass = newWorkingTimeMass;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, MixingDataPackage.MIX_DETAILS__WORKING_TIME_MASS, oldWorkingTimeMass, workingTimeMass));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getWorkingTimeC() {
		return workingTimeC;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWorkingTimeC(Double newWorkingTimeC) {
		Double oldWorkingTimeC = workingTimeC;
		workingTimeC = newWorkingTimeC;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, MixingDataPackage.MIX_DETAILS__WORKING_TIME_C, oldWorkingTimeC, workingTimeC));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getWorkingTimeGrowth() {
		return workingTimeGrowth;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWorkingTimeGrowth(Double newWorkingTimeGrowth) {
		Double oldWorkingTimeGrowth = workingTimeGrowth;
		workingTimeGrowth = newWorkingTimeGrowth;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, MixingDataPackage.MIX_DETAILS__WORKING_TIME_GROWTH, oldWorkingTimeGrowth, workingTimeGrowth));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getWorkingTimeEnergy() {
		return workingTimeEnergy;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWorkingTimeEnergy(Double newWorkingTimeEnergy) {
		Double oldWorkingTimeEnergy = workingTimeEnergy;
		workingTimeEnergy = newWorkingTimeEnergy;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, MixingDataPackage.MIX_DETAILS__WORKING_TIME_ENERGY, oldWorkingTimeEnergy, workingTimeEnergy));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case MixingDataPackage.MIX_DETAILS__PLANNED_MINUTES:
				return getPlannedMinutes();
			case MixingDataPackage.MIX_DETAILS__MINUTES:
				return getMinutes();
			case MixingDataPackage.MIX_DETAILS__PLANNED_ORDER:
				return getPlannedOrder();
			case MixingDataPackage.MIX_DETAILS__ORDER:
				return getOrder();
			case MixingDataPackage.MIX_DETAILS__TOOL:
				return getTool();
			case MixingDataPackage.MIX_DETAILS__SCRAPED:
				return getScraped();
			case MixingDataPackage.MIX_DETAILS__WORKING_TIME:
				return getWorkingTime();
			case MixingDataPackage.MIX_DETAILS__WORKING_TIME_RULE:
				return getWorkingTimeRule();
			case MixingDataPackage.MIX_DETAILS__WORKING_TIME_MASS:
				return getWorkingTimeMass();
			case MixingDataPackage.MIX_DETAILS__WORKING_TIME_C:
				return getWorkingTimeC();
			case MixingDataPackage.MIX_DETAILS__WORKING_TIME_GROWTH:
				return getWorkingTimeGrowth();
			case MixingDataPackage.MIX_DETAILS__WORKING_TIME_ENERGY:
				return getWorkingTimeEnergy();
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
			case MixingDataPackage.MIX_DETAILS__PLANNED_MINUTES:
				setPlannedMinutes((Double)newValue);
				return;
			case MixingDataPackage.MIX_DETAILS__MINUTES:
				setMinutes((Double)newValue);
				return;
			case MixingDataPackage.MIX_DETAILS__PLANNED_ORDER:
				setPlannedOrder((String)newValue);
				return;
			case MixingDataPackage.MIX_DETAILS__ORDER:
				setOrder((String)newValue);
				return;
			case MixingDataPackage.MIX_DETAILS__TOOL:
				setTool((String)newValue);
				return;
			case MixingDataPackage.MIX_DETAILS__SCRAPED:
				setScraped((Boolean)newValue);
				return;
			case MixingDataPackage.MIX_DETAILS__WORKING_TIME:
				setWorkingTime((Double)newValue);
				return;
			case MixingDataPackage.MIX_DETAILS__WORKING_TIME_RULE:
				setWorkingTimeRule((WorkingTimeRule)newValue);
				return;
			case MixingDataPackage.MIX_DETAILS__WORKING_TIME_MASS:
				setWorkingTimeMass((Double)newValue);
				return;
			case MixingDataPackage.MIX_DETAILS__WORKING_TIME_C:
				setWorkingTimeC((Double)newValue);
				return;
			case MixingDataPackage.MIX_DETAILS__WORKING_TIME_GROWTH:
				setWorkingTimeGrowth((Double)newValue);
				return;
			case MixingDataPackage.MIX_DETAILS__WORKING_TIME_ENERGY:
				setWorkingTimeEnergy((Double)newValue);
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
			case MixingDataPackage.MIX_DETAILS__PLANNED_MINUTES:
				setPlannedMinutes(PLANNED_MINUTES_EDEFAULT);
				return;
			case MixingDataPackage.MIX_DETAILS__MINUTES:
				setMinutes(MINUTES_EDEFAULT);
				return;
			case MixingDataPackage.MIX_DETAILS__PLANNED_ORDER:
				setPlannedOrder(PLANNED_ORDER_EDEFAULT);
				return;
			case MixingDataPackage.MIX_DETAILS__ORDER:
				setOrder(ORDER_EDEFAULT);
				return;
			case MixingDataPackage.MIX_DETAILS__TOOL:
				setTool(TOOL_EDEFAULT);
				return;
			case MixingDataPackage.MIX_DETAILS__SCRAPED:
				setScraped(SCRAPED_EDEFAULT);
				return;
			case MixingDataPackage.MIX_DETAILS__WORKING_TIME:
				setWorkingTime(WORKING_TIME_EDEFAULT);
				return;
			case MixingDataPackage.MIX_DETAILS__WORKING_TIME_RULE:
				setWorkingTimeRule(WORKING_TIME_RULE_EDEFAULT);
				return;
			case MixingDataPackage.MIX_DETAILS__WORKING_TIME_MASS:
				setWorkingTimeMass(WORKING_TIME_MASS_EDEFAULT);
				return;
			case MixingDataPackage.MIX_DETAILS__WORKING_TIME_C:
				setWorkingTimeC(WORKING_TIME_C_EDEFAULT);
				return;
			case MixingDataPackage.MIX_DETAILS__WORKING_TIME_GROWTH:
				setWorkingTimeGrowth(WORKING_TIME_GROWTH_EDEFAULT);
				return;
			case MixingDataPackage.MIX_DETAILS__WORKING_TIME_ENERGY:
				setWorkingTimeEnergy(WORKING_TIME_ENERGY_EDEFAULT);
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
			case MixingDataPackage.MIX_DETAILS__PLANNED_MINUTES:
				return PLANNED_MINUTES_EDEFAULT == null ? plannedMinutes != null : !PLANNED_MINUTES_EDEFAULT.equals(plannedMinutes);
			case MixingDataPackage.MIX_DETAILS__MINUTES:
				return MINUTES_EDEFAULT == null ? minutes != null : !MINUTES_EDEFAULT.equals(minutes);
			case MixingDataPackage.MIX_DETAILS__PLANNED_ORDER:
				return PLANNED_ORDER_EDEFAULT == null ? plannedOrder != null : !PLANNED_ORDER_EDEFAULT.equals(plannedOrder);
			case MixingDataPackage.MIX_DETAILS__ORDER:
				return ORDER_EDEFAULT == null ? order != null : !ORDER_EDEFAULT.equals(order);
			case MixingDataPackage.MIX_DETAILS__TOOL:
				return TOOL_EDEFAULT == null ? tool != null : !TOOL_EDEFAULT.equals(tool);
			case MixingDataPackage.MIX_DETAILS__SCRAPED:
				return SCRAPED_EDEFAULT == null ? scraped != null : !SCRAPED_EDEFAULT.equals(scraped);
			case MixingDataPackage.MIX_DETAILS__WORKING_TIME:
				return WORKING_TIME_EDEFAULT == null ? workingTime != null : !WORKING_TIME_EDEFAULT.equals(workingTime);
			case MixingDataPackage.MIX_DETAILS__WORKING_TIME_RULE:
				return workingTimeRule != WORKING_TIME_RULE_EDEFAULT;
			case MixingDataPackage.MIX_DETAILS__WORKING_TIME_MASS:
				return WORKING_TIME_MASS_EDEFAULT == null ? workingTimeMass != null : !WORKING_TIME_MASS_EDEFAULT.equals(workingTimeMass);
			case MixingDataPackage.MIX_DETAILS__WORKING_TIME_C:
				return WORKING_TIME_C_EDEFAULT == null ? workingTimeC != null : !WORKING_TIME_C_EDEFAULT.equals(workingTimeC);
			case MixingDataPackage.MIX_DETAILS__WORKING_TIME_GROWTH:
				return WORKING_TIME_GROWTH_EDEFAULT == null ? workingTimeGrowth != null : !WORKING_TIME_GROWTH_EDEFAULT.equals(workingTimeGrowth);
			case MixingDataPackage.MIX_DETAILS__WORKING_TIME_ENERGY:
				return WORKING_TIME_ENERGY_EDEFAULT == null ? workingTimeEnergy != null : !WORKING_TIME_ENERGY_EDEFAULT.equals(workingTimeEnergy);
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
		result.append(" (plannedMinutes: ");
		result.append(plannedMinutes);
		result.append(", minutes: ");
		result.append(minutes);
		result.append(", plannedOrder: ");
		result.append(plannedOrder);
		result.append(", order: ");
		result.append(order);
		result.append(", tool: ");
		result.append(tool);
		result.append(", scraped: ");
		result.append(scraped);
		result.append(", workingTime: ");
		result.append(workingTime);
		result.append(", workingTimeRule: ");
		result.append(workingTimeRule);
		result.append(", workingTimeMass: ");
		result.append(workingTimeMass);
		result.append(", workingTimeC: ");
		result.append(workingTimeC);
		result.append(", workingTimeGrowth: ");
		result.append(workingTimeGrowth);
		result.append(", workingTimeEnergy: ");
		result.append(workingTimeEnergy);
		result.append(')');
		return result.toString();
	}

} //MixDetailsImpl
