/**
 */
package org.flexwright.model.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.flexwright.model.ModelPackage;
import org.flexwright.model.PieceKind;
import org.flexwright.model.PropertyKey;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Property Key</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.impl.PropertyKeyImpl#getProperty <em>Property</em>}</li>
 *   <li>{@link org.flexwright.model.impl.PropertyKeyImpl#getPieceKind <em>Piece Kind</em>}</li>
 *   <li>{@link org.flexwright.model.impl.PropertyKeyImpl#getSpot <em>Spot</em>}</li>
 *   <li>{@link org.flexwright.model.impl.PropertyKeyImpl#getSupport <em>Support</em>}</li>
 *   <li>{@link org.flexwright.model.impl.PropertyKeyImpl#getDwell <em>Dwell</em>}</li>
 * </ul>
 *
 * @generated
 */
public class PropertyKeyImpl extends MinimalEObjectImpl.Container implements PropertyKey {
	/**
	 * The default value of the '{@link #getProperty() <em>Property</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getProperty()
	 * @generated
	 * @ordered
	 */
	protected static final String PROPERTY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getProperty() <em>Property</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getProperty()
	 * @generated
	 * @ordered
	 */
	protected String property = PROPERTY_EDEFAULT;

	/**
	 * The default value of the '{@link #getPieceKind() <em>Piece Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPieceKind()
	 * @generated
	 * @ordered
	 */
	protected static final PieceKind PIECE_KIND_EDEFAULT = PieceKind.PART;

	/**
	 * The cached value of the '{@link #getPieceKind() <em>Piece Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPieceKind()
	 * @generated
	 * @ordered
	 */
	protected PieceKind pieceKind = PIECE_KIND_EDEFAULT;

	/**
	 * The default value of the '{@link #getSpot() <em>Spot</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSpot()
	 * @generated
	 * @ordered
	 */
	protected static final String SPOT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSpot() <em>Spot</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSpot()
	 * @generated
	 * @ordered
	 */
	protected String spot = SPOT_EDEFAULT;

	/**
	 * The default value of the '{@link #getSupport() <em>Support</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSupport()
	 * @generated
	 * @ordered
	 */
	protected static final String SUPPORT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSupport() <em>Support</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSupport()
	 * @generated
	 * @ordered
	 */
	protected String support = SUPPORT_EDEFAULT;

	/**
	 * The default value of the '{@link #getDwell() <em>Dwell</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDwell()
	 * @generated
	 * @ordered
	 */
	protected static final Double DWELL_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDwell() <em>Dwell</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDwell()
	 * @generated
	 * @ordered
	 */
	protected Double dwell = DWELL_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected PropertyKeyImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.PROPERTY_KEY;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getProperty() {
		return property;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setProperty(String newProperty) {
		String oldProperty = property;
		property = newProperty;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PROPERTY_KEY__PROPERTY, oldProperty, property));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PieceKind getPieceKind() {
		return pieceKind;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPieceKind(PieceKind newPieceKind) {
		PieceKind oldPieceKind = pieceKind;
		pieceKind = newPieceKind == null ? PIECE_KIND_EDEFAULT : newPieceKind;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PROPERTY_KEY__PIECE_KIND, oldPieceKind, pieceKind));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSpot() {
		return spot;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSpot(String newSpot) {
		String oldSpot = spot;
		spot = newSpot;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PROPERTY_KEY__SPOT, oldSpot, spot));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSupport() {
		return support;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSupport(String newSupport) {
		String oldSupport = support;
		support = newSupport;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PROPERTY_KEY__SUPPORT, oldSupport, support));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getDwell() {
		return dwell;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDwell(Double newDwell) {
		Double oldDwell = dwell;
		dwell = newDwell;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PROPERTY_KEY__DWELL, oldDwell, dwell));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case ModelPackage.PROPERTY_KEY__PROPERTY:
				return getProperty();
			case ModelPackage.PROPERTY_KEY__PIECE_KIND:
				return getPieceKind();
			case ModelPackage.PROPERTY_KEY__SPOT:
				return getSpot();
			case ModelPackage.PROPERTY_KEY__SUPPORT:
				return getSupport();
			case ModelPackage.PROPERTY_KEY__DWELL:
				return getDwell();
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
			case ModelPackage.PROPERTY_KEY__PROPERTY:
				setProperty((String)newValue);
				return;
			case ModelPackage.PROPERTY_KEY__PIECE_KIND:
				setPieceKind((PieceKind)newValue);
				return;
			case ModelPackage.PROPERTY_KEY__SPOT:
				setSpot((String)newValue);
				return;
			case ModelPackage.PROPERTY_KEY__SUPPORT:
				setSupport((String)newValue);
				return;
			case ModelPackage.PROPERTY_KEY__DWELL:
				setDwell((Double)newValue);
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
			case ModelPackage.PROPERTY_KEY__PROPERTY:
				setProperty(PROPERTY_EDEFAULT);
				return;
			case ModelPackage.PROPERTY_KEY__PIECE_KIND:
				setPieceKind(PIECE_KIND_EDEFAULT);
				return;
			case ModelPackage.PROPERTY_KEY__SPOT:
				setSpot(SPOT_EDEFAULT);
				return;
			case ModelPackage.PROPERTY_KEY__SUPPORT:
				setSupport(SUPPORT_EDEFAULT);
				return;
			case ModelPackage.PROPERTY_KEY__DWELL:
				setDwell(DWELL_EDEFAULT);
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
			case ModelPackage.PROPERTY_KEY__PROPERTY:
				return PROPERTY_EDEFAULT == null ? property != null : !PROPERTY_EDEFAULT.equals(property);
			case ModelPackage.PROPERTY_KEY__PIECE_KIND:
				return pieceKind != PIECE_KIND_EDEFAULT;
			case ModelPackage.PROPERTY_KEY__SPOT:
				return SPOT_EDEFAULT == null ? spot != null : !SPOT_EDEFAULT.equals(spot);
			case ModelPackage.PROPERTY_KEY__SUPPORT:
				return SUPPORT_EDEFAULT == null ? support != null : !SUPPORT_EDEFAULT.equals(support);
			case ModelPackage.PROPERTY_KEY__DWELL:
				return DWELL_EDEFAULT == null ? dwell != null : !DWELL_EDEFAULT.equals(dwell);
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
		result.append(" (property: ");
		result.append(property);
		result.append(", pieceKind: ");
		result.append(pieceKind);
		result.append(", spot: ");
		result.append(spot);
		result.append(", support: ");
		result.append(support);
		result.append(", dwell: ");
		result.append(dwell);
		result.append(')');
		return result.toString();
	}

} //PropertyKeyImpl
