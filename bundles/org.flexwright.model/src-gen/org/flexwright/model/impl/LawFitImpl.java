/**
 */
package org.flexwright.model.impl;

import java.time.Instant;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EObjectResolvingEList;

import org.flexwright.model.LawFit;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Recording;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Law Fit</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.impl.LawFitImpl#getTitle <em>Title</em>}</li>
 *   <li>{@link org.flexwright.model.impl.LawFitImpl#getLaw <em>Law</em>}</li>
 *   <li>{@link org.flexwright.model.impl.LawFitImpl#getWeighting <em>Weighting</em>}</li>
 *   <li>{@link org.flexwright.model.impl.LawFitImpl#getFromStretch <em>From Stretch</em>}</li>
 *   <li>{@link org.flexwright.model.impl.LawFitImpl#getToStretch <em>To Stretch</em>}</li>
 *   <li>{@link org.flexwright.model.impl.LawFitImpl#getAt <em>At</em>}</li>
 *   <li>{@link org.flexwright.model.impl.LawFitImpl#getRecordings <em>Recordings</em>}</li>
 * </ul>
 *
 * @generated
 */
public class LawFitImpl extends EntryImpl implements LawFit {
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
	 * The default value of the '{@link #getLaw() <em>Law</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLaw()
	 * @generated
	 * @ordered
	 */
	protected static final String LAW_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLaw() <em>Law</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLaw()
	 * @generated
	 * @ordered
	 */
	protected String law = LAW_EDEFAULT;

	/**
	 * The default value of the '{@link #getWeighting() <em>Weighting</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWeighting()
	 * @generated
	 * @ordered
	 */
	protected static final String WEIGHTING_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWeighting() <em>Weighting</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWeighting()
	 * @generated
	 * @ordered
	 */
	protected String weighting = WEIGHTING_EDEFAULT;

	/**
	 * The default value of the '{@link #getFromStretch() <em>From Stretch</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFromStretch()
	 * @generated
	 * @ordered
	 */
	protected static final Double FROM_STRETCH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFromStretch() <em>From Stretch</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFromStretch()
	 * @generated
	 * @ordered
	 */
	protected Double fromStretch = FROM_STRETCH_EDEFAULT;

	/**
	 * The default value of the '{@link #getToStretch() <em>To Stretch</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getToStretch()
	 * @generated
	 * @ordered
	 */
	protected static final Double TO_STRETCH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getToStretch() <em>To Stretch</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getToStretch()
	 * @generated
	 * @ordered
	 */
	protected Double toStretch = TO_STRETCH_EDEFAULT;

	/**
	 * The default value of the '{@link #getAt() <em>At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAt()
	 * @generated
	 * @ordered
	 */
	protected static final Instant AT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAt() <em>At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAt()
	 * @generated
	 * @ordered
	 */
	protected Instant at = AT_EDEFAULT;

	/**
	 * The cached value of the '{@link #getRecordings() <em>Recordings</em>}' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRecordings()
	 * @generated
	 * @ordered
	 */
	protected EList<Recording> recordings;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected LawFitImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.LAW_FIT;
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LAW_FIT__TITLE, oldTitle, title));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getLaw() {
		return law;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLaw(String newLaw) {
		String oldLaw = law;
		law = newLaw;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LAW_FIT__LAW, oldLaw, law));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getWeighting() {
		return weighting;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWeighting(String newWeighting) {
		String oldWeighting = weighting;
		weighting = newWeighting;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LAW_FIT__WEIGHTING, oldWeighting, weighting));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getFromStretch() {
		return fromStretch;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFromStretch(Double newFromStretch) {
		Double oldFromStretch = fromStretch;
		fromStretch = newFromStretch;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LAW_FIT__FROM_STRETCH, oldFromStretch, fromStretch));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getToStretch() {
		return toStretch;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setToStretch(Double newToStretch) {
		Double oldToStretch = toStretch;
		toStretch = newToStretch;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LAW_FIT__TO_STRETCH, oldToStretch, toStretch));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Instant getAt() {
		return at;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAt(Instant newAt) {
		Instant oldAt = at;
		at = newAt;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LAW_FIT__AT, oldAt, at));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Recording> getRecordings() {
		if (recordings == null) {
			recordings = new EObjectResolvingEList<Recording>(Recording.class, this, ModelPackage.LAW_FIT__RECORDINGS);
		}
		return recordings;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case ModelPackage.LAW_FIT__TITLE:
				return getTitle();
			case ModelPackage.LAW_FIT__LAW:
				return getLaw();
			case ModelPackage.LAW_FIT__WEIGHTING:
				return getWeighting();
			case ModelPackage.LAW_FIT__FROM_STRETCH:
				return getFromStretch();
			case ModelPackage.LAW_FIT__TO_STRETCH:
				return getToStretch();
			case ModelPackage.LAW_FIT__AT:
				return getAt();
			case ModelPackage.LAW_FIT__RECORDINGS:
				return getRecordings();
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
			case ModelPackage.LAW_FIT__TITLE:
				setTitle((String)newValue);
				return;
			case ModelPackage.LAW_FIT__LAW:
				setLaw((String)newValue);
				return;
			case ModelPackage.LAW_FIT__WEIGHTING:
				setWeighting((String)newValue);
				return;
			case ModelPackage.LAW_FIT__FROM_STRETCH:
				setFromStretch((Double)newValue);
				return;
			case ModelPackage.LAW_FIT__TO_STRETCH:
				setToStretch((Double)newValue);
				return;
			case ModelPackage.LAW_FIT__AT:
				setAt((Instant)newValue);
				return;
			case ModelPackage.LAW_FIT__RECORDINGS:
				getRecordings().clear();
				getRecordings().addAll((Collection<? extends Recording>)newValue);
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
			case ModelPackage.LAW_FIT__TITLE:
				setTitle(TITLE_EDEFAULT);
				return;
			case ModelPackage.LAW_FIT__LAW:
				setLaw(LAW_EDEFAULT);
				return;
			case ModelPackage.LAW_FIT__WEIGHTING:
				setWeighting(WEIGHTING_EDEFAULT);
				return;
			case ModelPackage.LAW_FIT__FROM_STRETCH:
				setFromStretch(FROM_STRETCH_EDEFAULT);
				return;
			case ModelPackage.LAW_FIT__TO_STRETCH:
				setToStretch(TO_STRETCH_EDEFAULT);
				return;
			case ModelPackage.LAW_FIT__AT:
				setAt(AT_EDEFAULT);
				return;
			case ModelPackage.LAW_FIT__RECORDINGS:
				getRecordings().clear();
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
			case ModelPackage.LAW_FIT__TITLE:
				return TITLE_EDEFAULT == null ? title != null : !TITLE_EDEFAULT.equals(title);
			case ModelPackage.LAW_FIT__LAW:
				return LAW_EDEFAULT == null ? law != null : !LAW_EDEFAULT.equals(law);
			case ModelPackage.LAW_FIT__WEIGHTING:
				return WEIGHTING_EDEFAULT == null ? weighting != null : !WEIGHTING_EDEFAULT.equals(weighting);
			case ModelPackage.LAW_FIT__FROM_STRETCH:
				return FROM_STRETCH_EDEFAULT == null ? fromStretch != null : !FROM_STRETCH_EDEFAULT.equals(fromStretch);
			case ModelPackage.LAW_FIT__TO_STRETCH:
				return TO_STRETCH_EDEFAULT == null ? toStretch != null : !TO_STRETCH_EDEFAULT.equals(toStretch);
			case ModelPackage.LAW_FIT__AT:
				return AT_EDEFAULT == null ? at != null : !AT_EDEFAULT.equals(at);
			case ModelPackage.LAW_FIT__RECORDINGS:
				return recordings != null && !recordings.isEmpty();
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
		result.append(", law: ");
		result.append(law);
		result.append(", weighting: ");
		result.append(weighting);
		result.append(", fromStretch: ");
		result.append(fromStretch);
		result.append(", toStretch: ");
		result.append(toStretch);
		result.append(", at: ");
		result.append(at);
		result.append(')');
		return result.toString();
	}

} //LawFitImpl
