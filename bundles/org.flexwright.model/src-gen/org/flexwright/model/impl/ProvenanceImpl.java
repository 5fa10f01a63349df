/**
 */
package org.flexwright.model.impl;

import java.time.Instant;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.flexwright.model.ModelPackage;
import org.flexwright.model.Origin;
import org.flexwright.model.Provenance;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Provenance</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.impl.ProvenanceImpl#getFeature <em>Feature</em>}</li>
 *   <li>{@link org.flexwright.model.impl.ProvenanceImpl#getOrigin <em>Origin</em>}</li>
 *   <li>{@link org.flexwright.model.impl.ProvenanceImpl#getSource <em>Source</em>}</li>
 *   <li>{@link org.flexwright.model.impl.ProvenanceImpl#getUncertainty <em>Uncertainty</em>}</li>
 *   <li>{@link org.flexwright.model.impl.ProvenanceImpl#getTypedAs <em>Typed As</em>}</li>
 *   <li>{@link org.flexwright.model.impl.ProvenanceImpl#getBy <em>By</em>}</li>
 *   <li>{@link org.flexwright.model.impl.ProvenanceImpl#getAt <em>At</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ProvenanceImpl extends MinimalEObjectImpl.Container implements Provenance {
	/**
	 * The default value of the '{@link #getFeature() <em>Feature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFeature()
	 * @generated
	 * @ordered
	 */
	protected static final String FEATURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFeature() <em>Feature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFeature()
	 * @generated
	 * @ordered
	 */
	protected String feature = FEATURE_EDEFAULT;

	/**
	 * The default value of the '{@link #getOrigin() <em>Origin</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOrigin()
	 * @generated
	 * @ordered
	 */
	protected static final Origin ORIGIN_EDEFAULT = Origin.UNKNOWN;

	/**
	 * The cached value of the '{@link #getOrigin() <em>Origin</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOrigin()
	 * @generated
	 * @ordered
	 */
	protected Origin origin = ORIGIN_EDEFAULT;

	/**
	 * The default value of the '{@link #getSource() <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSource()
	 * @generated
	 * @ordered
	 */
	protected static final String SOURCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSource() <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSource()
	 * @generated
	 * @ordered
	 */
	protected String source = SOURCE_EDEFAULT;

	/**
	 * The default value of the '{@link #getUncertainty() <em>Uncertainty</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUncertainty()
	 * @generated
	 * @ordered
	 */
	protected static final Double UNCERTAINTY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getUncertainty() <em>Uncertainty</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUncertainty()
	 * @generated
	 * @ordered
	 */
	protected Double uncertainty = UNCERTAINTY_EDEFAULT;

	/**
	 * The default value of the '{@link #getTypedAs() <em>Typed As</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTypedAs()
	 * @generated
	 * @ordered
	 */
	protected static final String TYPED_AS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTypedAs() <em>Typed As</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTypedAs()
	 * @generated
	 * @ordered
	 */
	protected String typedAs = TYPED_AS_EDEFAULT;

	/**
	 * The default value of the '{@link #getBy() <em>By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBy()
	 * @generated
	 * @ordered
	 */
	protected static final String BY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBy() <em>By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBy()
	 * @generated
	 * @ordered
	 */
	protected String by = BY_EDEFAULT;

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
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ProvenanceImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.PROVENANCE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getFeature() {
		return feature;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFeature(String newFeature) {
		String oldFeature = feature;
		feature = newFeature;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PROVENANCE__FEATURE, oldFeature, feature));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Origin getOrigin() {
		return origin;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOrigin(Origin newOrigin) {
		Origin oldOrigin = origin;
		origin = newOrigin == null ? ORIGIN_EDEFAULT : newOrigin;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PROVENANCE__ORIGIN, oldOrigin, origin));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSource() {
		return source;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSource(String newSource) {
		String oldSource = source;
		source = newSource;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PROVENANCE__SOURCE, oldSource, source));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getUncertainty() {
		return uncertainty;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setUncertainty(Double newUncertainty) {
		Double oldUncertainty = uncertainty;
		uncertainty = newUncertainty;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PROVENANCE__UNCERTAINTY, oldUncertainty, uncertainty));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getTypedAs() {
		return typedAs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTypedAs(String newTypedAs) {
		String oldTypedAs = typedAs;
		typedAs = newTypedAs;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PROVENANCE__TYPED_AS, oldTypedAs, typedAs));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getBy() {
		return by;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBy(String newBy) {
		String oldBy = by;
		by = newBy;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PROVENANCE__BY, oldBy, by));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PROVENANCE__AT, oldAt, at));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case ModelPackage.PROVENANCE__FEATURE:
				return getFeature();
			case ModelPackage.PROVENANCE__ORIGIN:
				return getOrigin();
			case ModelPackage.PROVENANCE__SOURCE:
				return getSource();
			case ModelPackage.PROVENANCE__UNCERTAINTY:
				return getUncertainty();
			case ModelPackage.PROVENANCE__TYPED_AS:
				return getTypedAs();
			case ModelPackage.PROVENANCE__BY:
				return getBy();
			case ModelPackage.PROVENANCE__AT:
				return getAt();
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
			case ModelPackage.PROVENANCE__FEATURE:
				setFeature((String)newValue);
				return;
			case ModelPackage.PROVENANCE__ORIGIN:
				setOrigin((Origin)newValue);
				return;
			case ModelPackage.PROVENANCE__SOURCE:
				setSource((String)newValue);
				return;
			case ModelPackage.PROVENANCE__UNCERTAINTY:
				setUncertainty((Double)newValue);
				return;
			case ModelPackage.PROVENANCE__TYPED_AS:
				setTypedAs((String)newValue);
				return;
			case ModelPackage.PROVENANCE__BY:
				setBy((String)newValue);
				return;
			case ModelPackage.PROVENANCE__AT:
				setAt((Instant)newValue);
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
			case ModelPackage.PROVENANCE__FEATURE:
				setFeature(FEATURE_EDEFAULT);
				return;
			case ModelPackage.PROVENANCE__ORIGIN:
				setOrigin(ORIGIN_EDEFAULT);
				return;
			case ModelPackage.PROVENANCE__SOURCE:
				setSource(SOURCE_EDEFAULT);
				return;
			case ModelPackage.PROVENANCE__UNCERTAINTY:
				setUncertainty(UNCERTAINTY_EDEFAULT);
				return;
			case ModelPackage.PROVENANCE__TYPED_AS:
				setTypedAs(TYPED_AS_EDEFAULT);
				return;
			case ModelPackage.PROVENANCE__BY:
				setBy(BY_EDEFAULT);
				return;
			case ModelPackage.PROVENANCE__AT:
				setAt(AT_EDEFAULT);
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
			case ModelPackage.PROVENANCE__FEATURE:
				return FEATURE_EDEFAULT == null ? feature != null : !FEATURE_EDEFAULT.equals(feature);
			case ModelPackage.PROVENANCE__ORIGIN:
				return origin != ORIGIN_EDEFAULT;
			case ModelPackage.PROVENANCE__SOURCE:
				return SOURCE_EDEFAULT == null ? source != null : !SOURCE_EDEFAULT.equals(source);
			case ModelPackage.PROVENANCE__UNCERTAINTY:
				return UNCERTAINTY_EDEFAULT == null ? uncertainty != null : !UNCERTAINTY_EDEFAULT.equals(uncertainty);
			case ModelPackage.PROVENANCE__TYPED_AS:
				return TYPED_AS_EDEFAULT == null ? typedAs != null : !TYPED_AS_EDEFAULT.equals(typedAs);
			case ModelPackage.PROVENANCE__BY:
				return BY_EDEFAULT == null ? by != null : !BY_EDEFAULT.equals(by);
			case ModelPackage.PROVENANCE__AT:
				return AT_EDEFAULT == null ? at != null : !AT_EDEFAULT.equals(at);
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
		result.append(" (feature: ");
		result.append(feature);
		result.append(", origin: ");
		result.append(origin);
		result.append(", source: ");
		result.append(source);
		result.append(", uncertainty: ");
		result.append(uncertainty);
		result.append(", typedAs: ");
		result.append(typedAs);
		result.append(", by: ");
		result.append(by);
		result.append(", at: ");
		result.append(at);
		result.append(')');
		return result.toString();
	}

} //ProvenanceImpl
