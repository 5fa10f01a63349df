/**
 */
package org.flexwright.model.impl;

import java.time.LocalDate;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.flexwright.model.GaugeStudy;
import org.flexwright.model.Instrument;
import org.flexwright.model.ModelPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Instrument</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.impl.InstrumentImpl#getName <em>Name</em>}</li>
 *   <li>{@link org.flexwright.model.impl.InstrumentImpl#getKind <em>Kind</em>}</li>
 *   <li>{@link org.flexwright.model.impl.InstrumentImpl#getUnit <em>Unit</em>}</li>
 *   <li>{@link org.flexwright.model.impl.InstrumentImpl#getResolution <em>Resolution</em>}</li>
 *   <li>{@link org.flexwright.model.impl.InstrumentImpl#getAccuracy <em>Accuracy</em>}</li>
 *   <li>{@link org.flexwright.model.impl.InstrumentImpl#getScale <em>Scale</em>}</li>
 *   <li>{@link org.flexwright.model.impl.InstrumentImpl#getSpread <em>Spread</em>}</li>
 *   <li>{@link org.flexwright.model.impl.InstrumentImpl#getSpreadFrom <em>Spread From</em>}</li>
 *   <li>{@link org.flexwright.model.impl.InstrumentImpl#getCheckedOn <em>Checked On</em>}</li>
 *   <li>{@link org.flexwright.model.impl.InstrumentImpl#getCheckEveryDays <em>Check Every Days</em>}</li>
 *   <li>{@link org.flexwright.model.impl.InstrumentImpl#getCheckNote <em>Check Note</em>}</li>
 *   <li>{@link org.flexwright.model.impl.InstrumentImpl#getStudy <em>Study</em>}</li>
 * </ul>
 *
 * @generated
 */
public class InstrumentImpl extends EntryImpl implements Instrument {
	/**
	 * The default value of the '{@link #getName() <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getName()
	 * @generated
	 * @ordered
	 */
	protected static final String NAME_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getName() <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getName()
	 * @generated
	 * @ordered
	 */
	protected String name = NAME_EDEFAULT;

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
	 * The default value of the '{@link #getUnit() <em>Unit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUnit()
	 * @generated
	 * @ordered
	 */
	protected static final String UNIT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getUnit() <em>Unit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUnit()
	 * @generated
	 * @ordered
	 */
	protected String unit = UNIT_EDEFAULT;

	/**
	 * The default value of the '{@link #getResolution() <em>Resolution</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getResolution()
	 * @generated
	 * @ordered
	 */
	protected static final Double RESOLUTION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getResolution() <em>Resolution</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getResolution()
	 * @generated
	 * @ordered
	 */
	protected Double resolution = RESOLUTION_EDEFAULT;

	/**
	 * The default value of the '{@link #getAccuracy() <em>Accuracy</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAccuracy()
	 * @generated
	 * @ordered
	 */
	protected static final Double ACCURACY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAccuracy() <em>Accuracy</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAccuracy()
	 * @generated
	 * @ordered
	 */
	protected Double accuracy = ACCURACY_EDEFAULT;

	/**
	 * The default value of the '{@link #getScale() <em>Scale</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getScale()
	 * @generated
	 * @ordered
	 */
	protected static final String SCALE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getScale() <em>Scale</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getScale()
	 * @generated
	 * @ordered
	 */
	protected String scale = SCALE_EDEFAULT;

	/**
	 * The default value of the '{@link #getSpread() <em>Spread</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSpread()
	 * @generated
	 * @ordered
	 */
	protected static final Double SPREAD_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSpread() <em>Spread</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSpread()
	 * @generated
	 * @ordered
	 */
	protected Double spread = SPREAD_EDEFAULT;

	/**
	 * The default value of the '{@link #getSpreadFrom() <em>Spread From</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSpreadFrom()
	 * @generated
	 * @ordered
	 */
	protected static final String SPREAD_FROM_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSpreadFrom() <em>Spread From</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSpreadFrom()
	 * @generated
	 * @ordered
	 */
	protected String spreadFrom = SPREAD_FROM_EDEFAULT;

	/**
	 * The default value of the '{@link #getCheckedOn() <em>Checked On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCheckedOn()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate CHECKED_ON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCheckedOn() <em>Checked On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCheckedOn()
	 * @generated
	 * @ordered
	 */
	protected LocalDate checkedOn = CHECKED_ON_EDEFAULT;

	/**
	 * The default value of the '{@link #getCheckEveryDays() <em>Check Every Days</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCheckEveryDays()
	 * @generated
	 * @ordered
	 */
	protected static final Double CHECK_EVERY_DAYS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCheckEveryDays() <em>Check Every Days</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCheckEveryDays()
	 * @generated
	 * @ordered
	 */
	protected Double checkEveryDays = CHECK_EVERY_DAYS_EDEFAULT;

	/**
	 * The default value of the '{@link #getCheckNote() <em>Check Note</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCheckNote()
	 * @generated
	 * @ordered
	 */
	protected static final String CHECK_NOTE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCheckNote() <em>Check Note</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCheckNote()
	 * @generated
	 * @ordered
	 */
	protected String checkNote = CHECK_NOTE_EDEFAULT;

	/**
	 * The cached value of the '{@link #getStudy() <em>Study</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStudy()
	 * @generated
	 * @ordered
	 */
	protected GaugeStudy study;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected InstrumentImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.INSTRUMENT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getName() {
		return name;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setName(String newName) {
		String oldName = name;
		name = newName;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.INSTRUMENT__NAME, oldName, name));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.INSTRUMENT__KIND, oldKind, kind));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getUnit() {
		return unit;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setUnit(String newUnit) {
		String oldUnit = unit;
		unit = newUnit;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.INSTRUMENT__UNIT, oldUnit, unit));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getResolution() {
		return resolution;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setResolution(Double newResolution) {
		Double oldResolution = resolution;
		resolution = newResolution;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.INSTRUMENT__RESOLUTION, oldResolution, resolution));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getAccuracy() {
		return accuracy;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAccuracy(Double newAccuracy) {
		Double oldAccuracy = accuracy;
		accuracy = newAccuracy;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.INSTRUMENT__ACCURACY, oldAccuracy, accuracy));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getScale() {
		return scale;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setScale(String newScale) {
		String oldScale = scale;
		scale = newScale;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.INSTRUMENT__SCALE, oldScale, scale));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getSpread() {
		return spread;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSpread(Double newSpread) {
		Double oldSpread = spread;
		spread = newSpread;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.INSTRUMENT__SPREAD, oldSpread, spread));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSpreadFrom() {
		return spreadFrom;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSpreadFrom(String newSpreadFrom) {
		String oldSpreadFrom = spreadFrom;
		spreadFrom = newSpreadFrom;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.INSTRUMENT__SPREAD_FROM, oldSpreadFrom, spreadFrom));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getCheckedOn() {
		return checkedOn;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCheckedOn(LocalDate newCheckedOn) {
		LocalDate oldCheckedOn = checkedOn;
		checkedOn = newCheckedOn;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.INSTRUMENT__CHECKED_ON, oldCheckedOn, checkedOn));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getCheckEveryDays() {
		return checkEveryDays;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCheckEveryDays(Double newCheckEveryDays) {
		Double oldCheckEveryDays = checkEveryDays;
		checkEveryDays = newCheckEveryDays;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.INSTRUMENT__CHECK_EVERY_DAYS, oldCheckEveryDays, checkEveryDays));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getCheckNote() {
		return checkNote;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCheckNote(String newCheckNote) {
		String oldCheckNote = checkNote;
		checkNote = newCheckNote;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.INSTRUMENT__CHECK_NOTE, oldCheckNote, checkNote));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public GaugeStudy getStudy() {
		if (study != null && study.eIsProxy()) {
			InternalEObject oldStudy = (InternalEObject)study;
			study = (GaugeStudy)eResolveProxy(oldStudy);
			if (study != oldStudy) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.INSTRUMENT__STUDY, oldStudy, study));
			}
		}
		return study;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public GaugeStudy basicGetStudy() {
		return study;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStudy(GaugeStudy newStudy) {
		GaugeStudy oldStudy = study;
		study = newStudy;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.INSTRUMENT__STUDY, oldStudy, study));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case ModelPackage.INSTRUMENT__NAME:
				return getName();
			case ModelPackage.INSTRUMENT__KIND:
				return getKind();
			case ModelPackage.INSTRUMENT__UNIT:
				return getUnit();
			case ModelPackage.INSTRUMENT__RESOLUTION:
				return getResolution();
			case ModelPackage.INSTRUMENT__ACCURACY:
				return getAccuracy();
			case ModelPackage.INSTRUMENT__SCALE:
				return getScale();
			case ModelPackage.INSTRUMENT__SPREAD:
				return getSpread();
			case ModelPackage.INSTRUMENT__SPREAD_FROM:
				return getSpreadFrom();
			case ModelPackage.INSTRUMENT__CHECKED_ON:
				return getCheckedOn();
			case ModelPackage.INSTRUMENT__CHECK_EVERY_DAYS:
				return getCheckEveryDays();
			case ModelPackage.INSTRUMENT__CHECK_NOTE:
				return getCheckNote();
			case ModelPackage.INSTRUMENT__STUDY:
				if (resolve) return getStudy();
				return basicGetStudy();
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
			case ModelPackage.INSTRUMENT__NAME:
				setName((String)newValue);
				return;
			case ModelPackage.INSTRUMENT__KIND:
				setKind((String)newValue);
				return;
			case ModelPackage.INSTRUMENT__UNIT:
				setUnit((String)newValue);
				return;
			case ModelPackage.INSTRUMENT__RESOLUTION:
				setResolution((Double)newValue);
				return;
			case ModelPackage.INSTRUMENT__ACCURACY:
				setAccuracy((Double)newValue);
				return;
			case ModelPackage.INSTRUMENT__SCALE:
				setScale((String)newValue);
				return;
			case ModelPackage.INSTRUMENT__SPREAD:
				setSpread((Double)newValue);
				return;
			case ModelPackage.INSTRUMENT__SPREAD_FROM:
				setSpreadFrom((String)newValue);
				return;
			case ModelPackage.INSTRUMENT__CHECKED_ON:
				setCheckedOn((LocalDate)newValue);
				return;
			case ModelPackage.INSTRUMENT__CHECK_EVERY_DAYS:
				setCheckEveryDays((Double)newValue);
				return;
			case ModelPackage.INSTRUMENT__CHECK_NOTE:
				setCheckNote((String)newValue);
				return;
			case ModelPackage.INSTRUMENT__STUDY:
				setStudy((GaugeStudy)newValue);
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
			case ModelPackage.INSTRUMENT__NAME:
				setName(NAME_EDEFAULT);
				return;
			case ModelPackage.INSTRUMENT__KIND:
				setKind(KIND_EDEFAULT);
				return;
			case ModelPackage.INSTRUMENT__UNIT:
				setUnit(UNIT_EDEFAULT);
				return;
			case ModelPackage.INSTRUMENT__RESOLUTION:
				setResolution(RESOLUTION_EDEFAULT);
				return;
			case ModelPackage.INSTRUMENT__ACCURACY:
				setAccuracy(ACCURACY_EDEFAULT);
				return;
			case ModelPackage.INSTRUMENT__SCALE:
				setScale(SCALE_EDEFAULT);
				return;
			case ModelPackage.INSTRUMENT__SPREAD:
				setSpread(SPREAD_EDEFAULT);
				return;
			case ModelPackage.INSTRUMENT__SPREAD_FROM:
				setSpreadFrom(SPREAD_FROM_EDEFAULT);
				return;
			case ModelPackage.INSTRUMENT__CHECKED_ON:
				setCheckedOn(CHECKED_ON_EDEFAULT);
				return;
			case ModelPackage.INSTRUMENT__CHECK_EVERY_DAYS:
				setCheckEveryDays(CHECK_EVERY_DAYS_EDEFAULT);
				return;
			case ModelPackage.INSTRUMENT__CHECK_NOTE:
				setCheckNote(CHECK_NOTE_EDEFAULT);
				return;
			case ModelPackage.INSTRUMENT__STUDY:
				setStudy((GaugeStudy)null);
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
			case ModelPackage.INSTRUMENT__NAME:
				return NAME_EDEFAULT == null ? name != null : !NAME_EDEFAULT.equals(name);
			case ModelPackage.INSTRUMENT__KIND:
				return KIND_EDEFAULT == null ? kind != null : !KIND_EDEFAULT.equals(kind);
			case ModelPackage.INSTRUMENT__UNIT:
				return UNIT_EDEFAULT == null ? unit != null : !UNIT_EDEFAULT.equals(unit);
			case ModelPackage.INSTRUMENT__RESOLUTION:
				return RESOLUTION_EDEFAULT == null ? resolution != null : !RESOLUTION_EDEFAULT.equals(resolution);
			case ModelPackage.INSTRUMENT__ACCURACY:
				return ACCURACY_EDEFAULT == null ? accuracy != null : !ACCURACY_EDEFAULT.equals(accuracy);
			case ModelPackage.INSTRUMENT__SCALE:
				return SCALE_EDEFAULT == null ? scale != null : !SCALE_EDEFAULT.equals(scale);
			case ModelPackage.INSTRUMENT__SPREAD:
				return SPREAD_EDEFAULT == null ? spread != null : !SPREAD_EDEFAULT.equals(spread);
			case ModelPackage.INSTRUMENT__SPREAD_FROM:
				return SPREAD_FROM_EDEFAULT == null ? spreadFrom != null : !SPREAD_FROM_EDEFAULT.equals(spreadFrom);
			case ModelPackage.INSTRUMENT__CHECKED_ON:
				return CHECKED_ON_EDEFAULT == null ? checkedOn != null : !CHECKED_ON_EDEFAULT.equals(checkedOn);
			case ModelPackage.INSTRUMENT__CHECK_EVERY_DAYS:
				return CHECK_EVERY_DAYS_EDEFAULT == null ? checkEveryDays != null : !CHECK_EVERY_DAYS_EDEFAULT.equals(checkEveryDays);
			case ModelPackage.INSTRUMENT__CHECK_NOTE:
				return CHECK_NOTE_EDEFAULT == null ? checkNote != null : !CHECK_NOTE_EDEFAULT.equals(checkNote);
			case ModelPackage.INSTRUMENT__STUDY:
				return study != null;
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
		result.append(" (name: ");
		result.append(name);
		result.append(", kind: ");
		result.append(kind);
		result.append(", unit: ");
		result.append(unit);
		result.append(", resolution: ");
		result.append(resolution);
		result.append(", accuracy: ");
		result.append(accuracy);
		result.append(", scale: ");
		result.append(scale);
		result.append(", spread: ");
		result.append(spread);
		result.append(", spreadFrom: ");
		result.append(spreadFrom);
		result.append(", checkedOn: ");
		result.append(checkedOn);
		result.append(", checkEveryDays: ");
		result.append(checkEveryDays);
		result.append(", checkNote: ");
		result.append(checkNote);
		result.append(')');
		return result.toString();
	}

} //InstrumentImpl
