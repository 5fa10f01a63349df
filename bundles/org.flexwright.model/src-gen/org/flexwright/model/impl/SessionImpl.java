/**
 */
package org.flexwright.model.impl;

import java.time.Instant;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EObjectResolvingEList;

import org.flexwright.model.ControlPiece;
import org.flexwright.model.Instrument;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Session;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Session</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.impl.SessionImpl#getCode <em>Code</em>}</li>
 *   <li>{@link org.flexwright.model.impl.SessionImpl#getAt <em>At</em>}</li>
 *   <li>{@link org.flexwright.model.impl.SessionImpl#getRoomC <em>Room C</em>}</li>
 *   <li>{@link org.flexwright.model.impl.SessionImpl#getRoomRh <em>Room Rh</em>}</li>
 *   <li>{@link org.flexwright.model.impl.SessionImpl#getWho <em>Who</em>}</li>
 *   <li>{@link org.flexwright.model.impl.SessionImpl#getInstruments <em>Instruments</em>}</li>
 *   <li>{@link org.flexwright.model.impl.SessionImpl#getControlPiece <em>Control Piece</em>}</li>
 *   <li>{@link org.flexwright.model.impl.SessionImpl#getConditioningHours <em>Conditioning Hours</em>}</li>
 *   <li>{@link org.flexwright.model.impl.SessionImpl#getRoom <em>Room</em>}</li>
 * </ul>
 *
 * @generated
 */
public class SessionImpl extends EntryImpl implements Session {
	/**
	 * The default value of the '{@link #getCode() <em>Code</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCode()
	 * @generated
	 * @ordered
	 */
	protected static final String CODE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCode() <em>Code</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCode()
	 * @generated
	 * @ordered
	 */
	protected String code = CODE_EDEFAULT;

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
	 * The default value of the '{@link #getRoomC() <em>Room C</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRoomC()
	 * @generated
	 * @ordered
	 */
	protected static final Double ROOM_C_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRoomC() <em>Room C</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRoomC()
	 * @generated
	 * @ordered
	 */
	protected Double roomC = ROOM_C_EDEFAULT;

	/**
	 * The default value of the '{@link #getRoomRh() <em>Room Rh</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRoomRh()
	 * @generated
	 * @ordered
	 */
	protected static final Double ROOM_RH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRoomRh() <em>Room Rh</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRoomRh()
	 * @generated
	 * @ordered
	 */
	protected Double roomRh = ROOM_RH_EDEFAULT;

	/**
	 * The default value of the '{@link #getWho() <em>Who</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWho()
	 * @generated
	 * @ordered
	 */
	protected static final String WHO_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWho() <em>Who</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWho()
	 * @generated
	 * @ordered
	 */
	protected String who = WHO_EDEFAULT;

	/**
	 * The cached value of the '{@link #getInstruments() <em>Instruments</em>}' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInstruments()
	 * @generated
	 * @ordered
	 */
	protected EList<Instrument> instruments;

	/**
	 * The cached value of the '{@link #getControlPiece() <em>Control Piece</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getControlPiece()
	 * @generated
	 * @ordered
	 */
	protected ControlPiece controlPiece;

	/**
	 * The default value of the '{@link #getConditioningHours() <em>Conditioning Hours</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getConditioningHours()
	 * @generated
	 * @ordered
	 */
	protected static final Double CONDITIONING_HOURS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getConditioningHours() <em>Conditioning Hours</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getConditioningHours()
	 * @generated
	 * @ordered
	 */
	protected Double conditioningHours = CONDITIONING_HOURS_EDEFAULT;

	/**
	 * The default value of the '{@link #getRoom() <em>Room</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRoom()
	 * @generated
	 * @ordered
	 */
	protected static final String ROOM_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRoom() <em>Room</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRoom()
	 * @generated
	 * @ordered
	 */
	protected String room = ROOM_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected SessionImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.SESSION;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getCode() {
		return code;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCode(String newCode) {
		String oldCode = code;
		code = newCode;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SESSION__CODE, oldCode, code));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SESSION__AT, oldAt, at));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getRoomC() {
		return roomC;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRoomC(Double newRoomC) {
		Double oldRoomC = roomC;
		roomC = newRoomC;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SESSION__ROOM_C, oldRoomC, roomC));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getRoomRh() {
		return roomRh;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRoomRh(Double newRoomRh) {
		Double oldRoomRh = roomRh;
		roomRh = newRoomRh;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SESSION__ROOM_RH, oldRoomRh, roomRh));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getWho() {
		return who;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWho(String newWho) {
		String oldWho = who;
		who = newWho;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SESSION__WHO, oldWho, who));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Instrument> getInstruments() {
		if (instruments == null) {
			instruments = new EObjectResolvingEList<Instrument>(Instrument.class, this, ModelPackage.SESSION__INSTRUMENTS);
		}
		return instruments;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ControlPiece getControlPiece() {
		if (controlPiece != null && controlPiece.eIsProxy()) {
			InternalEObject oldControlPiece = (InternalEObject)controlPiece;
			controlPiece = (ControlPiece)eResolveProxy(oldControlPiece);
			if (controlPiece != oldControlPiece) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.SESSION__CONTROL_PIECE, oldControlPiece, controlPiece));
			}
		}
		return controlPiece;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public ControlPiece basicGetControlPiece() {
		return controlPiece;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setControlPiece(ControlPiece newControlPiece) {
		ControlPiece oldControlPiece = controlPiece;
		controlPiece = newControlPiece;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SESSION__CONTROL_PIECE, oldControlPiece, controlPiece));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getConditioningHours() {
		return conditioningHours;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setConditioningHours(Double newConditioningHours) {
		Double oldConditioningHours = conditioningHours;
		conditioningHours = newConditioningHours;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SESSION__CONDITIONING_HOURS, oldConditioningHours, conditioningHours));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getRoom() {
		return room;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRoom(String newRoom) {
		String oldRoom = room;
		room = newRoom;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SESSION__ROOM, oldRoom, room));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case ModelPackage.SESSION__CODE:
				return getCode();
			case ModelPackage.SESSION__AT:
				return getAt();
			case ModelPackage.SESSION__ROOM_C:
				return getRoomC();
			case ModelPackage.SESSION__ROOM_RH:
				return getRoomRh();
			case ModelPackage.SESSION__WHO:
				return getWho();
			case ModelPackage.SESSION__INSTRUMENTS:
				return getInstruments();
			case ModelPackage.SESSION__CONTROL_PIECE:
				if (resolve) return getControlPiece();
				return basicGetControlPiece();
			case ModelPackage.SESSION__CONDITIONING_HOURS:
				return getConditioningHours();
			case ModelPackage.SESSION__ROOM:
				return getRoom();
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
			case ModelPackage.SESSION__CODE:
				setCode((String)newValue);
				return;
			case ModelPackage.SESSION__AT:
				setAt((Instant)newValue);
				return;
			case ModelPackage.SESSION__ROOM_C:
				setRoomC((Double)newValue);
				return;
			case ModelPackage.SESSION__ROOM_RH:
				setRoomRh((Double)newValue);
				return;
			case ModelPackage.SESSION__WHO:
				setWho((String)newValue);
				return;
			case ModelPackage.SESSION__INSTRUMENTS:
				getInstruments().clear();
				getInstruments().addAll((Collection<? extends Instrument>)newValue);
				return;
			case ModelPackage.SESSION__CONTROL_PIECE:
				setControlPiece((ControlPiece)newValue);
				return;
			case ModelPackage.SESSION__CONDITIONING_HOURS:
				setConditioningHours((Double)newValue);
				return;
			case ModelPackage.SESSION__ROOM:
				setRoom((String)newValue);
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
			case ModelPackage.SESSION__CODE:
				setCode(CODE_EDEFAULT);
				return;
			case ModelPackage.SESSION__AT:
				setAt(AT_EDEFAULT);
				return;
			case ModelPackage.SESSION__ROOM_C:
				setRoomC(ROOM_C_EDEFAULT);
				return;
			case ModelPackage.SESSION__ROOM_RH:
				setRoomRh(ROOM_RH_EDEFAULT);
				return;
			case ModelPackage.SESSION__WHO:
				setWho(WHO_EDEFAULT);
				return;
			case ModelPackage.SESSION__INSTRUMENTS:
				getInstruments().clear();
				return;
			case ModelPackage.SESSION__CONTROL_PIECE:
				setControlPiece((ControlPiece)null);
				return;
			case ModelPackage.SESSION__CONDITIONING_HOURS:
				setConditioningHours(CONDITIONING_HOURS_EDEFAULT);
				return;
			case ModelPackage.SESSION__ROOM:
				setRoom(ROOM_EDEFAULT);
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
			case ModelPackage.SESSION__CODE:
				return CODE_EDEFAULT == null ? code != null : !CODE_EDEFAULT.equals(code);
			case ModelPackage.SESSION__AT:
				return AT_EDEFAULT == null ? at != null : !AT_EDEFAULT.equals(at);
			case ModelPackage.SESSION__ROOM_C:
				return ROOM_C_EDEFAULT == null ? roomC != null : !ROOM_C_EDEFAULT.equals(roomC);
			case ModelPackage.SESSION__ROOM_RH:
				return ROOM_RH_EDEFAULT == null ? roomRh != null : !ROOM_RH_EDEFAULT.equals(roomRh);
			case ModelPackage.SESSION__WHO:
				return WHO_EDEFAULT == null ? who != null : !WHO_EDEFAULT.equals(who);
			case ModelPackage.SESSION__INSTRUMENTS:
				return instruments != null && !instruments.isEmpty();
			case ModelPackage.SESSION__CONTROL_PIECE:
				return controlPiece != null;
			case ModelPackage.SESSION__CONDITIONING_HOURS:
				return CONDITIONING_HOURS_EDEFAULT == null ? conditioningHours != null : !CONDITIONING_HOURS_EDEFAULT.equals(conditioningHours);
			case ModelPackage.SESSION__ROOM:
				return ROOM_EDEFAULT == null ? room != null : !ROOM_EDEFAULT.equals(room);
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
		result.append(" (code: ");
		result.append(code);
		result.append(", at: ");
		result.append(at);
		result.append(", roomC: ");
		result.append(roomC);
		result.append(", roomRh: ");
		result.append(roomRh);
		result.append(", who: ");
		result.append(who);
		result.append(", conditioningHours: ");
		result.append(conditioningHours);
		result.append(", room: ");
		result.append(room);
		result.append(')');
		return result.toString();
	}

} //SessionImpl
