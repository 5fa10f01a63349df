/**
 */
package org.flexwright.model.impl;

import java.time.Instant;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

import org.flexwright.model.Instrument;
import org.flexwright.model.Knowledge;
import org.flexwright.model.Measurement;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.PropertyKey;
import org.flexwright.model.Reading;
import org.flexwright.model.Recording;
import org.flexwright.model.Session;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Measurement</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.impl.MeasurementImpl#getKind <em>Kind</em>}</li>
 *   <li>{@link org.flexwright.model.impl.MeasurementImpl#getKey <em>Key</em>}</li>
 *   <li>{@link org.flexwright.model.impl.MeasurementImpl#getAt <em>At</em>}</li>
 *   <li>{@link org.flexwright.model.impl.MeasurementImpl#getDelayHours <em>Delay Hours</em>}</li>
 *   <li>{@link org.flexwright.model.impl.MeasurementImpl#getPieceC <em>Piece C</em>}</li>
 *   <li>{@link org.flexwright.model.impl.MeasurementImpl#getKnowledge <em>Knowledge</em>}</li>
 *   <li>{@link org.flexwright.model.impl.MeasurementImpl#getSession <em>Session</em>}</li>
 *   <li>{@link org.flexwright.model.impl.MeasurementImpl#getInstrument <em>Instrument</em>}</li>
 *   <li>{@link org.flexwright.model.impl.MeasurementImpl#getReadings <em>Readings</em>}</li>
 *   <li>{@link org.flexwright.model.impl.MeasurementImpl#getDetails <em>Details</em>}</li>
 *   <li>{@link org.flexwright.model.impl.MeasurementImpl#getRecording <em>Recording</em>}</li>
 * </ul>
 *
 * @generated
 */
public class MeasurementImpl extends EntryImpl implements Measurement {
	/**
	 * The default value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected static final String KIND_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected String kind = KIND_EDEFAULT;

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
	 * The default value of the '{@link #getDelayHours() <em>Delay Hours</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDelayHours()
	 * @generated
	 * @ordered
	 */
	protected static final Double DELAY_HOURS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDelayHours() <em>Delay Hours</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDelayHours()
	 * @generated
	 * @ordered
	 */
	protected Double delayHours = DELAY_HOURS_EDEFAULT;

	/**
	 * The default value of the '{@link #getPieceC() <em>Piece C</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPieceC()
	 * @generated
	 * @ordered
	 */
	protected static final Double PIECE_C_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPieceC() <em>Piece C</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPieceC()
	 * @generated
	 * @ordered
	 */
	protected Double pieceC = PIECE_C_EDEFAULT;

	/**
	 * The default value of the '{@link #getKnowledge() <em>Knowledge</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKnowledge()
	 * @generated
	 * @ordered
	 */
	protected static final Knowledge KNOWLEDGE_EDEFAULT = Knowledge.MEASURED;

	/**
	 * The cached value of the '{@link #getKnowledge() <em>Knowledge</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKnowledge()
	 * @generated
	 * @ordered
	 */
	protected Knowledge knowledge = KNOWLEDGE_EDEFAULT;

	/**
	 * The cached value of the '{@link #getSession() <em>Session</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSession()
	 * @generated
	 * @ordered
	 */
	protected Session session;

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
	 * The cached value of the '{@link #getReadings() <em>Readings</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReadings()
	 * @generated
	 * @ordered
	 */
	protected EList<Reading> readings;

	/**
	 * The cached value of the '{@link #getDetails() <em>Details</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDetails()
	 * @generated
	 * @ordered
	 */
	protected EObject details;

	/**
	 * The cached value of the '{@link #getRecording() <em>Recording</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRecording()
	 * @generated
	 * @ordered
	 */
	protected Recording recording;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected MeasurementImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.MEASUREMENT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getKind() {
		return kind;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKind(String newKind) {
		String oldKind = kind;
		kind = newKind;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MEASUREMENT__KIND, oldKind, kind));
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
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, ModelPackage.MEASUREMENT__KEY, oldKey, newKey);
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
				msgs = ((InternalEObject)key).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - ModelPackage.MEASUREMENT__KEY, null, msgs);
			if (newKey != null)
				msgs = ((InternalEObject)newKey).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - ModelPackage.MEASUREMENT__KEY, null, msgs);
			msgs = basicSetKey(newKey, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MEASUREMENT__KEY, newKey, newKey));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MEASUREMENT__AT, oldAt, at));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getDelayHours() {
		return delayHours;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDelayHours(Double newDelayHours) {
		Double oldDelayHours = delayHours;
		delayHours = newDelayHours;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MEASUREMENT__DELAY_HOURS, oldDelayHours, delayHours));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getPieceC() {
		return pieceC;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPieceC(Double newPieceC) {
		Double oldPieceC = pieceC;
		pieceC = newPieceC;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MEASUREMENT__PIECE_C, oldPieceC, pieceC));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Knowledge getKnowledge() {
		return knowledge;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKnowledge(Knowledge newKnowledge) {
		Knowledge oldKnowledge = knowledge;
		knowledge = newKnowledge == null ? KNOWLEDGE_EDEFAULT : newKnowledge;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MEASUREMENT__KNOWLEDGE, oldKnowledge, knowledge));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Session getSession() {
		if (session != null && session.eIsProxy()) {
			InternalEObject oldSession = (InternalEObject)session;
			session = (Session)eResolveProxy(oldSession);
			if (session != oldSession) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.MEASUREMENT__SESSION, oldSession, session));
			}
		}
		return session;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Session basicGetSession() {
		return session;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSession(Session newSession) {
		Session oldSession = session;
		session = newSession;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MEASUREMENT__SESSION, oldSession, session));
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
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.MEASUREMENT__INSTRUMENT, oldInstrument, instrument));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MEASUREMENT__INSTRUMENT, oldInstrument, instrument));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Reading> getReadings() {
		if (readings == null) {
			readings = new EObjectContainmentEList<Reading>(Reading.class, this, ModelPackage.MEASUREMENT__READINGS);
		}
		return readings;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EObject getDetails() {
		return details;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetDetails(EObject newDetails, NotificationChain msgs) {
		EObject oldDetails = details;
		details = newDetails;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, ModelPackage.MEASUREMENT__DETAILS, oldDetails, newDetails);
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
	public void setDetails(EObject newDetails) {
		if (newDetails != details) {
			NotificationChain msgs = null;
			if (details != null)
				msgs = ((InternalEObject)details).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - ModelPackage.MEASUREMENT__DETAILS, null, msgs);
			if (newDetails != null)
				msgs = ((InternalEObject)newDetails).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - ModelPackage.MEASUREMENT__DETAILS, null, msgs);
			msgs = basicSetDetails(newDetails, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MEASUREMENT__DETAILS, newDetails, newDetails));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Recording getRecording() {
		if (recording != null && recording.eIsProxy()) {
			InternalEObject oldRecording = (InternalEObject)recording;
			recording = (Recording)eResolveProxy(oldRecording);
			if (recording != oldRecording) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.MEASUREMENT__RECORDING, oldRecording, recording));
			}
		}
		return recording;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Recording basicGetRecording() {
		return recording;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRecording(Recording newRecording) {
		Recording oldRecording = recording;
		recording = newRecording;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MEASUREMENT__RECORDING, oldRecording, recording));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case ModelPackage.MEASUREMENT__KEY:
				return basicSetKey(null, msgs);
			case ModelPackage.MEASUREMENT__READINGS:
				return ((InternalEList<?>)getReadings()).basicRemove(otherEnd, msgs);
			case ModelPackage.MEASUREMENT__DETAILS:
				return basicSetDetails(null, msgs);
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
			case ModelPackage.MEASUREMENT__KIND:
				return getKind();
			case ModelPackage.MEASUREMENT__KEY:
				return getKey();
			case ModelPackage.MEASUREMENT__AT:
				return getAt();
			case ModelPackage.MEASUREMENT__DELAY_HOURS:
				return getDelayHours();
			case ModelPackage.MEASUREMENT__PIECE_C:
				return getPieceC();
			case ModelPackage.MEASUREMENT__KNOWLEDGE:
				return getKnowledge();
			case ModelPackage.MEASUREMENT__SESSION:
				if (resolve) return getSession();
				return basicGetSession();
			case ModelPackage.MEASUREMENT__INSTRUMENT:
				if (resolve) return getInstrument();
				return basicGetInstrument();
			case ModelPackage.MEASUREMENT__READINGS:
				return getReadings();
			case ModelPackage.MEASUREMENT__DETAILS:
				return getDetails();
			case ModelPackage.MEASUREMENT__RECORDING:
				if (resolve) return getRecording();
				return basicGetRecording();
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
			case ModelPackage.MEASUREMENT__KIND:
				setKind((String)newValue);
				return;
			case ModelPackage.MEASUREMENT__KEY:
				setKey((PropertyKey)newValue);
				return;
			case ModelPackage.MEASUREMENT__AT:
				setAt((Instant)newValue);
				return;
			case ModelPackage.MEASUREMENT__DELAY_HOURS:
				setDelayHours((Double)newValue);
				return;
			case ModelPackage.MEASUREMENT__PIECE_C:
				setPieceC((Double)newValue);
				return;
			case ModelPackage.MEASUREMENT__KNOWLEDGE:
				setKnowledge((Knowledge)newValue);
				return;
			case ModelPackage.MEASUREMENT__SESSION:
				setSession((Session)newValue);
				return;
			case ModelPackage.MEASUREMENT__INSTRUMENT:
				setInstrument((Instrument)newValue);
				return;
			case ModelPackage.MEASUREMENT__READINGS:
				getReadings().clear();
				getReadings().addAll((Collection<? extends Reading>)newValue);
				return;
			case ModelPackage.MEASUREMENT__DETAILS:
				setDetails((EObject)newValue);
				return;
			case ModelPackage.MEASUREMENT__RECORDING:
				setRecording((Recording)newValue);
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
			case ModelPackage.MEASUREMENT__KIND:
				setKind(KIND_EDEFAULT);
				return;
			case ModelPackage.MEASUREMENT__KEY:
				setKey((PropertyKey)null);
				return;
			case ModelPackage.MEASUREMENT__AT:
				setAt(AT_EDEFAULT);
				return;
			case ModelPackage.MEASUREMENT__DELAY_HOURS:
				setDelayHours(DELAY_HOURS_EDEFAULT);
				return;
			case ModelPackage.MEASUREMENT__PIECE_C:
				setPieceC(PIECE_C_EDEFAULT);
				return;
			case ModelPackage.MEASUREMENT__KNOWLEDGE:
				setKnowledge(KNOWLEDGE_EDEFAULT);
				return;
			case ModelPackage.MEASUREMENT__SESSION:
				setSession((Session)null);
				return;
			case ModelPackage.MEASUREMENT__INSTRUMENT:
				setInstrument((Instrument)null);
				return;
			case ModelPackage.MEASUREMENT__READINGS:
				getReadings().clear();
				return;
			case ModelPackage.MEASUREMENT__DETAILS:
				setDetails((EObject)null);
				return;
			case ModelPackage.MEASUREMENT__RECORDING:
				setRecording((Recording)null);
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
			case ModelPackage.MEASUREMENT__KIND:
				return KIND_EDEFAULT == null ? kind != null : !KIND_EDEFAULT.equals(kind);
			case ModelPackage.MEASUREMENT__KEY:
				return key != null;
			case ModelPackage.MEASUREMENT__AT:
				return AT_EDEFAULT == null ? at != null : !AT_EDEFAULT.equals(at);
			case ModelPackage.MEASUREMENT__DELAY_HOURS:
				return DELAY_HOURS_EDEFAULT == null ? delayHours != null : !DELAY_HOURS_EDEFAULT.equals(delayHours);
			case ModelPackage.MEASUREMENT__PIECE_C:
				return PIECE_C_EDEFAULT == null ? pieceC != null : !PIECE_C_EDEFAULT.equals(pieceC);
			case ModelPackage.MEASUREMENT__KNOWLEDGE:
				return knowledge != KNOWLEDGE_EDEFAULT;
			case ModelPackage.MEASUREMENT__SESSION:
				return session != null;
			case ModelPackage.MEASUREMENT__INSTRUMENT:
				return instrument != null;
			case ModelPackage.MEASUREMENT__READINGS:
				return readings != null && !readings.isEmpty();
			case ModelPackage.MEASUREMENT__DETAILS:
				return details != null;
			case ModelPackage.MEASUREMENT__RECORDING:
				return recording != null;
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
		result.append(" (kind: ");
		result.append(kind);
		result.append(", at: ");
		result.append(at);
		result.append(", delayHours: ");
		result.append(delayHours);
		result.append(", pieceC: ");
		result.append(pieceC);
		result.append(", knowledge: ");
		result.append(knowledge);
		result.append(')');
		return result.toString();
	}

} //MeasurementImpl
