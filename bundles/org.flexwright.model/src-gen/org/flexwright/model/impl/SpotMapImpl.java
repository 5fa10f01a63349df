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

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

import org.flexwright.model.Attachment;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.SpotMap;
import org.flexwright.model.SpotPlace;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Spot Map</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.impl.SpotMapImpl#getTitle <em>Title</em>}</li>
 *   <li>{@link org.flexwright.model.impl.SpotMapImpl#getPicture <em>Picture</em>}</li>
 *   <li>{@link org.flexwright.model.impl.SpotMapImpl#getSketch <em>Sketch</em>}</li>
 *   <li>{@link org.flexwright.model.impl.SpotMapImpl#getPlaces <em>Places</em>}</li>
 * </ul>
 *
 * @generated
 */
public class SpotMapImpl extends EntryImpl implements SpotMap {
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
	 * The cached value of the '{@link #getPicture() <em>Picture</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPicture()
	 * @generated
	 * @ordered
	 */
	protected Attachment picture;

	/**
	 * The default value of the '{@link #getSketch() <em>Sketch</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSketch()
	 * @generated
	 * @ordered
	 */
	protected static final String SKETCH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSketch() <em>Sketch</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSketch()
	 * @generated
	 * @ordered
	 */
	protected String sketch = SKETCH_EDEFAULT;

	/**
	 * The cached value of the '{@link #getPlaces() <em>Places</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlaces()
	 * @generated
	 * @ordered
	 */
	protected EList<SpotPlace> places;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected SpotMapImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.SPOT_MAP;
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SPOT_MAP__TITLE, oldTitle, title));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Attachment getPicture() {
		if (picture != null && picture.eIsProxy()) {
			InternalEObject oldPicture = (InternalEObject)picture;
			picture = (Attachment)eResolveProxy(oldPicture);
			if (picture != oldPicture) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.SPOT_MAP__PICTURE, oldPicture, picture));
			}
		}
		return picture;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Attachment basicGetPicture() {
		return picture;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPicture(Attachment newPicture) {
		Attachment oldPicture = picture;
		picture = newPicture;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SPOT_MAP__PICTURE, oldPicture, picture));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSketch() {
		return sketch;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSketch(String newSketch) {
		String oldSketch = sketch;
		sketch = newSketch;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SPOT_MAP__SKETCH, oldSketch, sketch));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<SpotPlace> getPlaces() {
		if (places == null) {
			places = new EObjectContainmentEList<SpotPlace>(SpotPlace.class, this, ModelPackage.SPOT_MAP__PLACES);
		}
		return places;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case ModelPackage.SPOT_MAP__PLACES:
				return ((InternalEList<?>)getPlaces()).basicRemove(otherEnd, msgs);
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
			case ModelPackage.SPOT_MAP__TITLE:
				return getTitle();
			case ModelPackage.SPOT_MAP__PICTURE:
				if (resolve) return getPicture();
				return basicGetPicture();
			case ModelPackage.SPOT_MAP__SKETCH:
				return getSketch();
			case ModelPackage.SPOT_MAP__PLACES:
				return getPlaces();
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
			case ModelPackage.SPOT_MAP__TITLE:
				setTitle((String)newValue);
				return;
			case ModelPackage.SPOT_MAP__PICTURE:
				setPicture((Attachment)newValue);
				return;
			case ModelPackage.SPOT_MAP__SKETCH:
				setSketch((String)newValue);
				return;
			case ModelPackage.SPOT_MAP__PLACES:
				getPlaces().clear();
				getPlaces().addAll((Collection<? extends SpotPlace>)newValue);
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
			case ModelPackage.SPOT_MAP__TITLE:
				setTitle(TITLE_EDEFAULT);
				return;
			case ModelPackage.SPOT_MAP__PICTURE:
				setPicture((Attachment)null);
				return;
			case ModelPackage.SPOT_MAP__SKETCH:
				setSketch(SKETCH_EDEFAULT);
				return;
			case ModelPackage.SPOT_MAP__PLACES:
				getPlaces().clear();
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
			case ModelPackage.SPOT_MAP__TITLE:
				return TITLE_EDEFAULT == null ? title != null : !TITLE_EDEFAULT.equals(title);
			case ModelPackage.SPOT_MAP__PICTURE:
				return picture != null;
			case ModelPackage.SPOT_MAP__SKETCH:
				return SKETCH_EDEFAULT == null ? sketch != null : !SKETCH_EDEFAULT.equals(sketch);
			case ModelPackage.SPOT_MAP__PLACES:
				return places != null && !places.isEmpty();
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
		result.append(", sketch: ");
		result.append(sketch);
		result.append(')');
		return result.toString();
	}

} //SpotMapImpl
