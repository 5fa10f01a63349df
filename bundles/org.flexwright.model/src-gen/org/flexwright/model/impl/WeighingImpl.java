/**
 */
package org.flexwright.model.impl;

import java.time.Instant;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.flexwright.model.Instrument;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Weighing;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Weighing</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.impl.WeighingImpl#getGross <em>Gross</em>}</li>
 *   <li>{@link org.flexwright.model.impl.WeighingImpl#getTare <em>Tare</em>}</li>
 *   <li>{@link org.flexwright.model.impl.WeighingImpl#getNet <em>Net</em>}</li>
 *   <li>{@link org.flexwright.model.impl.WeighingImpl#getAt <em>At</em>}</li>
 *   <li>{@link org.flexwright.model.impl.WeighingImpl#isCorrection <em>Correction</em>}</li>
 *   <li>{@link org.flexwright.model.impl.WeighingImpl#getInstrument <em>Instrument</em>}</li>
 * </ul>
 *
 * @generated
 */
public class WeighingImpl extends EntryImpl implements Weighing {
	/**
	 * The default value of the '{@link #getGross() <em>Gross</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGross()
	 * @generated
	 * @ordered
	 */
	protected static final Double GROSS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getGross() <em>Gross</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGross()
	 * @generated
	 * @ordered
	 */
	protected Double gross = GROSS_EDEFAULT;

	/**
	 * The default value of the '{@link #getTare() <em>Tare</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTare()
	 * @generated
	 * @ordered
	 */
	protected static final Double TARE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTare() <em>Tare</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTare()
	 * @generated
	 * @ordered
	 */
	protected Double tare = TARE_EDEFAULT;

	/**
	 * The default value of the '{@link #getNet() <em>Net</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNet()
	 * @generated
	 * @ordered
	 */
	protected static final Double NET_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getNet() <em>Net</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNet()
	 * @generated
	 * @ordered
	 */
	protected Double net = NET_EDEFAULT;

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
	 * The default value of the '{@link #isCorrection() <em>Correction</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isCorrection()
	 * @generated
	 * @ordered
	 */
	protected static final boolean CORRECTION_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isCorrection() <em>Correction</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isCorrection()
	 * @generated
	 * @ordered
	 */
	protected boolean correction = CORRECTION_EDEFAULT;

	/**
	 * The cached value of the '{@link #getInstrument() <em>Instrument</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInstrument()
	 * @generated
	 * @ordered
	 */
	protected Instrument instrument;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected WeighingImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.WEIGHING;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getGross() {
		return gross;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGross(Double newGross) {
		Double oldGross = gross;
		gross = newGross;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.WEIGHING__GROSS, oldGross, gross));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getTare() {
		return tare;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTare(Double newTare) {
		Double oldTare = tare;
		tare = newTare;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.WEIGHING__TARE, oldTare, tare));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getNet() {
		return net;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNet(Double newNet) {
		Double oldNet = net;
		net = newNet;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.WEIGHING__NET, oldNet, net));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.WEIGHING__AT, oldAt, at));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isCorrection() {
		return correction;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCorrection(boolean newCorrection) {
		boolean oldCorrection = correction;
		correction = newCorrection;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.WEIGHING__CORRECTION, oldCorrection, correction));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Instrument getInstrument() {
		if (instrument != null && instrument.eIsProxy()) {
			InternalEObject oldInstrument = (InternalEObject)instrument;
			instrument = (Instrument)eResolveProxy(oldInstrument);
			if (instrument != oldInstrument) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.WEIGHING__INSTRUMENT, oldInstrument, instrument));
			}
		}
		return instrument;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Instrument basicGetInstrument() {
		return instrument;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setInstrument(Instrument newInstrument) {
		Instrument oldInstrument = instrument;
		instrument = newInstrument;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.WEIGHING__INSTRUMENT, oldInstrument, instrument));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case ModelPackage.WEIGHING__GROSS:
				return getGross();
			case ModelPackage.WEIGHING__TARE:
				return getTare();
			case ModelPackage.WEIGHING__NET:
				return getNet();
			case ModelPackage.WEIGHING__AT:
				return getAt();
			case ModelPackage.WEIGHING__CORRECTION:
				return isCorrection();
			case ModelPackage.WEIGHING__INSTRUMENT:
				if (resolve) return getInstrument();
				return basicGetInstrument();
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
			case ModelPackage.WEIGHING__GROSS:
				setGross((Double)newValue);
				return;
			case ModelPackage.WEIGHING__TARE:
				setTare((Double)newValue);
				return;
			case ModelPackage.WEIGHING__NET:
				setNet((Double)newValue);
				return;
			case ModelPackage.WEIGHING__AT:
				setAt((Instant)newValue);
				return;
			case ModelPackage.WEIGHING__CORRECTION:
				setCorrection((Boolean)newValue);
				return;
			case ModelPackage.WEIGHING__INSTRUMENT:
				setInstrument((Instrument)newValue);
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
			case ModelPackage.WEIGHING__GROSS:
				setGross(GROSS_EDEFAULT);
				return;
			case ModelPackage.WEIGHING__TARE:
				setTare(TARE_EDEFAULT);
				return;
			case ModelPackage.WEIGHING__NET:
				setNet(NET_EDEFAULT);
				return;
			case ModelPackage.WEIGHING__AT:
				setAt(AT_EDEFAULT);
				return;
			case ModelPackage.WEIGHING__CORRECTION:
				setCorrection(CORRECTION_EDEFAULT);
				return;
			case ModelPackage.WEIGHING__INSTRUMENT:
				setInstrument((Instrument)null);
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
			case ModelPackage.WEIGHING__GROSS:
				return GROSS_EDEFAULT == null ? gross != null : !GROSS_EDEFAULT.equals(gross);
			case ModelPackage.WEIGHING__TARE:
				return TARE_EDEFAULT == null ? tare != null : !TARE_EDEFAULT.equals(tare);
			case ModelPackage.WEIGHING__NET:
				return NET_EDEFAULT == null ? net != null : !NET_EDEFAULT.equals(net);
			case ModelPackage.WEIGHING__AT:
				return AT_EDEFAULT == null ? at != null : !AT_EDEFAULT.equals(at);
			case ModelPackage.WEIGHING__CORRECTION:
				return correction != CORRECTION_EDEFAULT;
			case ModelPackage.WEIGHING__INSTRUMENT:
				return instrument != null;
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
		result.append(" (gross: ");
		result.append(gross);
		result.append(", tare: ");
		result.append(tare);
		result.append(", net: ");
		result.append(net);
		result.append(", at: ");
		result.append(at);
		result.append(", correction: ");
		result.append(correction);
		result.append(')');
		return result.toString();
	}

} //WeighingImpl
