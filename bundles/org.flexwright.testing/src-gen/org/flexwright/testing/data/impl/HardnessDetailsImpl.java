/**
 */
package org.flexwright.testing.data.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.flexwright.testing.data.HardnessDetails;
import org.flexwright.testing.data.HardnessRule;
import org.flexwright.testing.data.RubberSort;
import org.flexwright.testing.data.TestingDataPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Hardness Details</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.testing.data.impl.HardnessDetailsImpl#getRule <em>Rule</em>}</li>
 *   <li>{@link org.flexwright.testing.data.impl.HardnessDetailsImpl#getSort <em>Sort</em>}</li>
 *   <li>{@link org.flexwright.testing.data.impl.HardnessDetailsImpl#getPlies <em>Plies</em>}</li>
 *   <li>{@link org.flexwright.testing.data.impl.HardnessDetailsImpl#getEdge <em>Edge</em>}</li>
 *   <li>{@link org.flexwright.testing.data.impl.HardnessDetailsImpl#getSpacing <em>Spacing</em>}</li>
 *   <li>{@link org.flexwright.testing.data.impl.HardnessDetailsImpl#getOnStand <em>On Stand</em>}</li>
 *   <li>{@link org.flexwright.testing.data.impl.HardnessDetailsImpl#getCurved <em>Curved</em>}</li>
 *   <li>{@link org.flexwright.testing.data.impl.HardnessDetailsImpl#getPlySmooth <em>Ply Smooth</em>}</li>
 * </ul>
 *
 * @generated
 */
public class HardnessDetailsImpl extends MinimalEObjectImpl.Container implements HardnessDetails {
	/**
	 * The default value of the '{@link #getRule() <em>Rule</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRule()
	 * @generated
	 * @ordered
	 */
	protected static final HardnessRule RULE_EDEFAULT = HardnessRule.UNKNOWN;

	/**
	 * The cached value of the '{@link #getRule() <em>Rule</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRule()
	 * @generated
	 * @ordered
	 */
	protected HardnessRule rule = RULE_EDEFAULT;

	/**
	 * The default value of the '{@link #getSort() <em>Sort</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSort()
	 * @generated
	 * @ordered
	 */
	protected static final RubberSort SORT_EDEFAULT = RubberSort.UNKNOWN;

	/**
	 * The cached value of the '{@link #getSort() <em>Sort</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSort()
	 * @generated
	 * @ordered
	 */
	protected RubberSort sort = SORT_EDEFAULT;

	/**
	 * The default value of the '{@link #getPlies() <em>Plies</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlies()
	 * @generated
	 * @ordered
	 */
	protected static final Integer PLIES_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPlies() <em>Plies</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlies()
	 * @generated
	 * @ordered
	 */
	protected Integer plies = PLIES_EDEFAULT;

	/**
	 * The default value of the '{@link #getEdge() <em>Edge</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEdge()
	 * @generated
	 * @ordered
	 */
	protected static final Double EDGE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getEdge() <em>Edge</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEdge()
	 * @generated
	 * @ordered
	 */
	protected Double edge = EDGE_EDEFAULT;

	/**
	 * The default value of the '{@link #getSpacing() <em>Spacing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSpacing()
	 * @generated
	 * @ordered
	 */
	protected static final Double SPACING_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSpacing() <em>Spacing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSpacing()
	 * @generated
	 * @ordered
	 */
	protected Double spacing = SPACING_EDEFAULT;

	/**
	 * The default value of the '{@link #getOnStand() <em>On Stand</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOnStand()
	 * @generated
	 * @ordered
	 */
	protected static final Boolean ON_STAND_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOnStand() <em>On Stand</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOnStand()
	 * @generated
	 * @ordered
	 */
	protected Boolean onStand = ON_STAND_EDEFAULT;

	/**
	 * The default value of the '{@link #getCurved() <em>Curved</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCurved()
	 * @generated
	 * @ordered
	 */
	protected static final Boolean CURVED_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCurved() <em>Curved</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCurved()
	 * @generated
	 * @ordered
	 */
	protected Boolean curved = CURVED_EDEFAULT;

	/**
	 * The default value of the '{@link #getPlySmooth() <em>Ply Smooth</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlySmooth()
	 * @generated
	 * @ordered
	 */
	protected static final Boolean PLY_SMOOTH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPlySmooth() <em>Ply Smooth</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlySmooth()
	 * @generated
	 * @ordered
	 */
	protected Boolean plySmooth = PLY_SMOOTH_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected HardnessDetailsImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return TestingDataPackage.Literals.HARDNESS_DETAILS;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public HardnessRule getRule() {
		return rule;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRule(HardnessRule newRule) {
		HardnessRule oldRule = rule;
		rule = newRule == null ? RULE_EDEFAULT : newRule;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, TestingDataPackage.HARDNESS_DETAILS__RULE, oldRule, rule));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public RubberSort getSort() {
		return sort;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSort(RubberSort newSort) {
		RubberSort oldSort = sort;
		sort = newSort == null ? SORT_EDEFAULT : newSort;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, TestingDataPackage.HARDNESS_DETAILS__SORT, oldSort, sort));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getPlies() {
		return plies;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPlies(Integer newPlies) {
		Integer oldPlies = plies;
		plies = newPlies;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, TestingDataPackage.HARDNESS_DETAILS__PLIES, oldPlies, plies));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getEdge() {
		return edge;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEdge(Double newEdge) {
		Double oldEdge = edge;
		edge = newEdge;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, TestingDataPackage.HARDNESS_DETAILS__EDGE, oldEdge, edge));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getSpacing() {
		return spacing;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSpacing(Double newSpacing) {
		Double oldSpacing = spacing;
		spacing = newSpacing;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, TestingDataPackage.HARDNESS_DETAILS__SPACING, oldSpacing, spacing));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Boolean getOnStand() {
		return onStand;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOnStand(Boolean newOnStand) {
		Boolean oldOnStand = onStand;
		onStand = newOnStand;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, TestingDataPackage.HARDNESS_DETAILS__ON_STAND, oldOnStand, onStand));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Boolean getCurved() {
		return curved;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCurved(Boolean newCurved) {
		Boolean oldCurved = curved;
		curved = newCurved;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, TestingDataPackage.HARDNESS_DETAILS__CURVED, oldCurved, curved));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Boolean getPlySmooth() {
		return plySmooth;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPlySmooth(Boolean newPlySmooth) {
		Boolean oldPlySmooth = plySmooth;
		plySmooth = newPlySmooth;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, TestingDataPackage.HARDNESS_DETAILS__PLY_SMOOTH, oldPlySmooth, plySmooth));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case TestingDataPackage.HARDNESS_DETAILS__RULE:
				return getRule();
			case TestingDataPackage.HARDNESS_DETAILS__SORT:
				return getSort();
			case TestingDataPackage.HARDNESS_DETAILS__PLIES:
				return getPlies();
			case TestingDataPackage.HARDNESS_DETAILS__EDGE:
				return getEdge();
			case TestingDataPackage.HARDNESS_DETAILS__SPACING:
				return getSpacing();
			case TestingDataPackage.HARDNESS_DETAILS__ON_STAND:
				return getOnStand();
			case TestingDataPackage.HARDNESS_DETAILS__CURVED:
				return getCurved();
			case TestingDataPackage.HARDNESS_DETAILS__PLY_SMOOTH:
				return getPlySmooth();
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
			case TestingDataPackage.HARDNESS_DETAILS__RULE:
				setRule((HardnessRule)newValue);
				return;
			case TestingDataPackage.HARDNESS_DETAILS__SORT:
				setSort((RubberSort)newValue);
				return;
			case TestingDataPackage.HARDNESS_DETAILS__PLIES:
				setPlies((Integer)newValue);
				return;
			case TestingDataPackage.HARDNESS_DETAILS__EDGE:
				setEdge((Double)newValue);
				return;
			case TestingDataPackage.HARDNESS_DETAILS__SPACING:
				setSpacing((Double)newValue);
				return;
			case TestingDataPackage.HARDNESS_DETAILS__ON_STAND:
				setOnStand((Boolean)newValue);
				return;
			case TestingDataPackage.HARDNESS_DETAILS__CURVED:
				setCurved((Boolean)newValue);
				return;
			case TestingDataPackage.HARDNESS_DETAILS__PLY_SMOOTH:
				setPlySmooth((Boolean)newValue);
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
			case TestingDataPackage.HARDNESS_DETAILS__RULE:
				setRule(RULE_EDEFAULT);
				return;
			case TestingDataPackage.HARDNESS_DETAILS__SORT:
				setSort(SORT_EDEFAULT);
				return;
			case TestingDataPackage.HARDNESS_DETAILS__PLIES:
				setPlies(PLIES_EDEFAULT);
				return;
			case TestingDataPackage.HARDNESS_DETAILS__EDGE:
				setEdge(EDGE_EDEFAULT);
				return;
			case TestingDataPackage.HARDNESS_DETAILS__SPACING:
				setSpacing(SPACING_EDEFAULT);
				return;
			case TestingDataPackage.HARDNESS_DETAILS__ON_STAND:
				setOnStand(ON_STAND_EDEFAULT);
				return;
			case TestingDataPackage.HARDNESS_DETAILS__CURVED:
				setCurved(CURVED_EDEFAULT);
				return;
			case TestingDataPackage.HARDNESS_DETAILS__PLY_SMOOTH:
				setPlySmooth(PLY_SMOOTH_EDEFAULT);
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
			case TestingDataPackage.HARDNESS_DETAILS__RULE:
				return rule != RULE_EDEFAULT;
			case TestingDataPackage.HARDNESS_DETAILS__SORT:
				return sort != SORT_EDEFAULT;
			case TestingDataPackage.HARDNESS_DETAILS__PLIES:
				return PLIES_EDEFAULT == null ? plies != null : !PLIES_EDEFAULT.equals(plies);
			case TestingDataPackage.HARDNESS_DETAILS__EDGE:
				return EDGE_EDEFAULT == null ? edge != null : !EDGE_EDEFAULT.equals(edge);
			case TestingDataPackage.HARDNESS_DETAILS__SPACING:
				return SPACING_EDEFAULT == null ? spacing != null : !SPACING_EDEFAULT.equals(spacing);
			case TestingDataPackage.HARDNESS_DETAILS__ON_STAND:
				return ON_STAND_EDEFAULT == null ? onStand != null : !ON_STAND_EDEFAULT.equals(onStand);
			case TestingDataPackage.HARDNESS_DETAILS__CURVED:
				return CURVED_EDEFAULT == null ? curved != null : !CURVED_EDEFAULT.equals(curved);
			case TestingDataPackage.HARDNESS_DETAILS__PLY_SMOOTH:
				return PLY_SMOOTH_EDEFAULT == null ? plySmooth != null : !PLY_SMOOTH_EDEFAULT.equals(plySmooth);
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
		result.append(" (rule: ");
		result.append(rule);
		result.append(", sort: ");
		result.append(sort);
		result.append(", plies: ");
		result.append(plies);
		result.append(", edge: ");
		result.append(edge);
		result.append(", spacing: ");
		result.append(spacing);
		result.append(", onStand: ");
		result.append(onStand);
		result.append(", curved: ");
		result.append(curved);
		result.append(", plySmooth: ");
		result.append(plySmooth);
		result.append(')');
		return result.toString();
	}

} //HardnessDetailsImpl
