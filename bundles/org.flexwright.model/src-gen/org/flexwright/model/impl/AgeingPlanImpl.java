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
import org.eclipse.emf.ecore.util.EObjectResolvingEList;
import org.eclipse.emf.ecore.util.InternalEList;

import org.flexwright.model.AgeingPlan;
import org.flexwright.model.AgeingPoint;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.PropertyKey;
import org.flexwright.model.Specimen;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Ageing Plan</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.impl.AgeingPlanImpl#getTitle <em>Title</em>}</li>
 *   <li>{@link org.flexwright.model.impl.AgeingPlanImpl#getKey <em>Key</em>}</li>
 *   <li>{@link org.flexwright.model.impl.AgeingPlanImpl#getSpecimens <em>Specimens</em>}</li>
 *   <li>{@link org.flexwright.model.impl.AgeingPlanImpl#getFrom <em>From</em>}</li>
 *   <li>{@link org.flexwright.model.impl.AgeingPlanImpl#getRemind <em>Remind</em>}</li>
 *   <li>{@link org.flexwright.model.impl.AgeingPlanImpl#getPoints <em>Points</em>}</li>
 * </ul>
 *
 * @generated
 */
public class AgeingPlanImpl extends EntryImpl implements AgeingPlan {
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
	 * The cached value of the '{@link #getKey() <em>Key</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKey()
	 * @generated
	 * @ordered
	 */
	protected PropertyKey key;

	/**
	 * The cached value of the '{@link #getSpecimens() <em>Specimens</em>}' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSpecimens()
	 * @generated
	 * @ordered
	 */
	protected EList<Specimen> specimens;

	/**
	 * The default value of the '{@link #getFrom() <em>From</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFrom()
	 * @generated
	 * @ordered
	 */
	protected static final Instant FROM_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFrom() <em>From</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFrom()
	 * @generated
	 * @ordered
	 */
	protected Instant from = FROM_EDEFAULT;

	/**
	 * The default value of the '{@link #getRemind() <em>Remind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRemind()
	 * @generated
	 * @ordered
	 */
	protected static final Boolean REMIND_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRemind() <em>Remind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRemind()
	 * @generated
	 * @ordered
	 */
	protected Boolean remind = REMIND_EDEFAULT;

	/**
	 * The cached value of the '{@link #getPoints() <em>Points</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPoints()
	 * @generated
	 * @ordered
	 */
	protected EList<AgeingPoint> points;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected AgeingPlanImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.AGEING_PLAN;
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.AGEING_PLAN__TITLE, oldTitle, title));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PropertyKey getKey() {
		return key;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetKey(PropertyKey newKey, NotificationChain msgs) {
		PropertyKey oldKey = key;
		key = newKey;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, ModelPackage.AGEING_PLAN__KEY, oldKey, newKey);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKey(PropertyKey newKey) {
		if (newKey != key) {
			NotificationChain msgs = null;
			if (key != null)
				msgs = ((InternalEObject)key).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - ModelPackage.AGEING_PLAN__KEY, null, msgs);
			if (newKey != null)
				msgs = ((InternalEObject)newKey).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - ModelPackage.AGEING_PLAN__KEY, null, msgs);
			msgs = basicSetKey(newKey, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.AGEING_PLAN__KEY, newKey, newKey));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Specimen> getSpecimens() {
		if (specimens == null) {
			specimens = new EObjectResolvingEList<Specimen>(Specimen.class, this, ModelPackage.AGEING_PLAN__SPECIMENS);
		}
		return specimens;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Instant getFrom() {
		return from;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFrom(Instant newFrom) {
		Instant oldFrom = from;
		from = newFrom;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.AGEING_PLAN__FROM, oldFrom, from));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Boolean getRemind() {
		return remind;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRemind(Boolean newRemind) {
		Boolean oldRemind = remind;
		remind = newRemind;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.AGEING_PLAN__REMIND, oldRemind, remind));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<AgeingPoint> getPoints() {
		if (points == null) {
			points = new EObjectContainmentEList<AgeingPoint>(AgeingPoint.class, this, ModelPackage.AGEING_PLAN__POINTS);
		}
		return points;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case ModelPackage.AGEING_PLAN__KEY:
				return basicSetKey(null, msgs);
			case ModelPackage.AGEING_PLAN__POINTS:
				return ((InternalEList<?>)getPoints()).basicRemove(otherEnd, msgs);
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
			case ModelPackage.AGEING_PLAN__TITLE:
				return getTitle();
			case ModelPackage.AGEING_PLAN__KEY:
				return getKey();
			case ModelPackage.AGEING_PLAN__SPECIMENS:
				return getSpecimens();
			case ModelPackage.AGEING_PLAN__FROM:
				return getFrom();
			case ModelPackage.AGEING_PLAN__REMIND:
				return getRemind();
			case ModelPackage.AGEING_PLAN__POINTS:
				return getPoints();
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
			case ModelPackage.AGEING_PLAN__TITLE:
				setTitle((String)newValue);
				return;
			case ModelPackage.AGEING_PLAN__KEY:
				setKey((PropertyKey)newValue);
				return;
			case ModelPackage.AGEING_PLAN__SPECIMENS:
				getSpecimens().clear();
				getSpecimens().addAll((Collection<? extends Specimen>)newValue);
				return;
			case ModelPackage.AGEING_PLAN__FROM:
				setFrom((Instant)newValue);
				return;
			case ModelPackage.AGEING_PLAN__REMIND:
				setRemind((Boolean)newValue);
				return;
			case ModelPackage.AGEING_PLAN__POINTS:
				getPoints().clear();
				getPoints().addAll((Collection<? extends AgeingPoint>)newValue);
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
			case ModelPackage.AGEING_PLAN__TITLE:
				setTitle(TITLE_EDEFAULT);
				return;
			case ModelPackage.AGEING_PLAN__KEY:
				setKey((PropertyKey)null);
				return;
			case ModelPackage.AGEING_PLAN__SPECIMENS:
				getSpecimens().clear();
				return;
			case ModelPackage.AGEING_PLAN__FROM:
				setFrom(FROM_EDEFAULT);
				return;
			case ModelPackage.AGEING_PLAN__REMIND:
				setRemind(REMIND_EDEFAULT);
				return;
			case ModelPackage.AGEING_PLAN__POINTS:
				getPoints().clear();
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
			case ModelPackage.AGEING_PLAN__TITLE:
				return TITLE_EDEFAULT == null ? title != null : !TITLE_EDEFAULT.equals(title);
			case ModelPackage.AGEING_PLAN__KEY:
				return key != null;
			case ModelPackage.AGEING_PLAN__SPECIMENS:
				return specimens != null && !specimens.isEmpty();
			case ModelPackage.AGEING_PLAN__FROM:
				return FROM_EDEFAULT == null ? from != null : !FROM_EDEFAULT.equals(from);
			case ModelPackage.AGEING_PLAN__REMIND:
				return REMIND_EDEFAULT == null ? remind != null : !REMIND_EDEFAULT.equals(remind);
			case ModelPackage.AGEING_PLAN__POINTS:
				return points != null && !points.isEmpty();
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
		result.append(" (title: ");
		result.append(title);
		result.append(", from: ");
		result.append(from);
		result.append(", remind: ");
		result.append(remind);
		result.append(')');
		return result.toString();
	}

} //AgeingPlanImpl
