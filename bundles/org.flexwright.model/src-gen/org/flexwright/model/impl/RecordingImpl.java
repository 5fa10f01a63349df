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

import org.flexwright.model.Attachment;
import org.flexwright.model.Instrument;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Recording;
import org.flexwright.model.RecordingChannel;
import org.flexwright.model.RecordingMark;
import org.flexwright.model.Session;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Recording</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.impl.RecordingImpl#getKind <em>Kind</em>}</li>
 *   <li>{@link org.flexwright.model.impl.RecordingImpl#getCode <em>Code</em>}</li>
 *   <li>{@link org.flexwright.model.impl.RecordingImpl#getTitle <em>Title</em>}</li>
 *   <li>{@link org.flexwright.model.impl.RecordingImpl#getAt <em>At</em>}</li>
 *   <li>{@link org.flexwright.model.impl.RecordingImpl#getFile <em>File</em>}</li>
 *   <li>{@link org.flexwright.model.impl.RecordingImpl#getSession <em>Session</em>}</li>
 *   <li>{@link org.flexwright.model.impl.RecordingImpl#getInstrument <em>Instrument</em>}</li>
 *   <li>{@link org.flexwright.model.impl.RecordingImpl#getSeparator <em>Separator</em>}</li>
 *   <li>{@link org.flexwright.model.impl.RecordingImpl#getDecimalComma <em>Decimal Comma</em>}</li>
 *   <li>{@link org.flexwright.model.impl.RecordingImpl#getSkipLines <em>Skip Lines</em>}</li>
 *   <li>{@link org.flexwright.model.impl.RecordingImpl#getCycle <em>Cycle</em>}</li>
 *   <li>{@link org.flexwright.model.impl.RecordingImpl#getLeftOut <em>Left Out</em>}</li>
 *   <li>{@link org.flexwright.model.impl.RecordingImpl#getChannels <em>Channels</em>}</li>
 *   <li>{@link org.flexwright.model.impl.RecordingImpl#getMarks <em>Marks</em>}</li>
 *   <li>{@link org.flexwright.model.impl.RecordingImpl#getDetails <em>Details</em>}</li>
 * </ul>
 *
 * @generated
 */
public class RecordingImpl extends EntryImpl implements Recording {
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
	 * The cached value of the '{@link #getFile() <em>File</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFile()
	 * @generated
	 * @ordered
	 */
	protected Attachment file;

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
	 * The default value of the '{@link #getSeparator() <em>Separator</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSeparator()
	 * @generated
	 * @ordered
	 */
	protected static final String SEPARATOR_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSeparator() <em>Separator</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSeparator()
	 * @generated
	 * @ordered
	 */
	protected String separator = SEPARATOR_EDEFAULT;

	/**
	 * The default value of the '{@link #getDecimalComma() <em>Decimal Comma</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDecimalComma()
	 * @generated
	 * @ordered
	 */
	protected static final Boolean DECIMAL_COMMA_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDecimalComma() <em>Decimal Comma</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDecimalComma()
	 * @generated
	 * @ordered
	 */
	protected Boolean decimalComma = DECIMAL_COMMA_EDEFAULT;

	/**
	 * The default value of the '{@link #getSkipLines() <em>Skip Lines</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSkipLines()
	 * @generated
	 * @ordered
	 */
	protected static final Integer SKIP_LINES_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSkipLines() <em>Skip Lines</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSkipLines()
	 * @generated
	 * @ordered
	 */
	protected Integer skipLines = SKIP_LINES_EDEFAULT;

	/**
	 * The default value of the '{@link #getCycle() <em>Cycle</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCycle()
	 * @generated
	 * @ordered
	 */
	protected static final Integer CYCLE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCycle() <em>Cycle</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCycle()
	 * @generated
	 * @ordered
	 */
	protected Integer cycle = CYCLE_EDEFAULT;

	/**
	 * The default value of the '{@link #getLeftOut() <em>Left Out</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLeftOut()
	 * @generated
	 * @ordered
	 */
	protected static final String LEFT_OUT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLeftOut() <em>Left Out</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLeftOut()
	 * @generated
	 * @ordered
	 */
	protected String leftOut = LEFT_OUT_EDEFAULT;

	/**
	 * The cached value of the '{@link #getChannels() <em>Channels</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getChannels()
	 * @generated
	 * @ordered
	 */
	protected EList<RecordingChannel> channels;

	/**
	 * The cached value of the '{@link #getMarks() <em>Marks</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMarks()
	 * @generated
	 * @ordered
	 */
	protected EList<RecordingMark> marks;

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
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected RecordingImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.RECORDING;
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.RECORDING__KIND, oldKind, kind));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.RECORDING__CODE, oldCode, code));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.RECORDING__TITLE, oldTitle, title));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.RECORDING__AT, oldAt, at));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Attachment getFile() {
		if (file != null && file.eIsProxy()) {
			InternalEObject oldFile = (InternalEObject)file;
			file = (Attachment)eResolveProxy(oldFile);
			if (file != oldFile) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.RECORDING__FILE, oldFile, file));
			}
		}
		return file;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Attachment basicGetFile() {
		return file;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFile(Attachment newFile) {
		Attachment oldFile = file;
		file = newFile;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.RECORDING__FILE, oldFile, file));
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
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.RECORDING__SESSION, oldSession, session));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.RECORDING__SESSION, oldSession, session));
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
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.RECORDING__INSTRUMENT, oldInstrument, instrument));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.RECORDING__INSTRUMENT, oldInstrument, instrument));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSeparator() {
		return separator;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSeparator(String newSeparator) {
		String oldSeparator = separator;
		separator = newSeparator;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.RECORDING__SEPARATOR, oldSeparator, separator));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Boolean getDecimalComma() {
		return decimalComma;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDecimalComma(Boolean newDecimalComma) {
		Boolean oldDecimalComma = decimalComma;
		decimalComma = newDecimalComma;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.RECORDING__DECIMAL_COMMA, oldDecimalComma, decimalComma));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getSkipLines() {
		return skipLines;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSkipLines(Integer newSkipLines) {
		Integer oldSkipLines = skipLines;
		skipLines = newSkipLines;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.RECORDING__SKIP_LINES, oldSkipLines, skipLines));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getCycle() {
		return cycle;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCycle(Integer newCycle) {
		Integer oldCycle = cycle;
		cycle = newCycle;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.RECORDING__CYCLE, oldCycle, cycle));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getLeftOut() {
		return leftOut;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLeftOut(String newLeftOut) {
		String oldLeftOut = leftOut;
		leftOut = newLeftOut;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.RECORDING__LEFT_OUT, oldLeftOut, leftOut));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<RecordingChannel> getChannels() {
		if (channels == null) {
			channels = new EObjectContainmentEList<RecordingChannel>(RecordingChannel.class, this, ModelPackage.RECORDING__CHANNELS);
		}
		return channels;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<RecordingMark> getMarks() {
		if (marks == null) {
			marks = new EObjectContainmentEList<RecordingMark>(RecordingMark.class, this, ModelPackage.RECORDING__MARKS);
		}
		return marks;
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
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, ModelPackage.RECORDING__DETAILS, oldDetails, newDetails);
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
				msgs = ((InternalEObject)details).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - ModelPackage.RECORDING__DETAILS, null, msgs);
			if (newDetails != null)
				msgs = ((InternalEObject)newDetails).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - ModelPackage.RECORDING__DETAILS, null, msgs);
			msgs = basicSetDetails(newDetails, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.RECORDING__DETAILS, newDetails, newDetails));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case ModelPackage.RECORDING__CHANNELS:
				return ((InternalEList<?>)getChannels()).basicRemove(otherEnd, msgs);
			case ModelPackage.RECORDING__MARKS:
				return ((InternalEList<?>)getMarks()).basicRemove(otherEnd, msgs);
			case ModelPackage.RECORDING__DETAILS:
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
			case ModelPackage.RECORDING__KIND:
				return getKind();
			case ModelPackage.RECORDING__CODE:
				return getCode();
			case ModelPackage.RECORDING__TITLE:
				return getTitle();
			case ModelPackage.RECORDING__AT:
				return getAt();
			case ModelPackage.RECORDING__FILE:
				if (resolve) return getFile();
				return basicGetFile();
			case ModelPackage.RECORDING__SESSION:
				if (resolve) return getSession();
				return basicGetSession();
			case ModelPackage.RECORDING__INSTRUMENT:
				if (resolve) return getInstrument();
				return basicGetInstrument();
			case ModelPackage.RECORDING__SEPARATOR:
				return getSeparator();
			case ModelPackage.RECORDING__DECIMAL_COMMA:
				return getDecimalComma();
			case ModelPackage.RECORDING__SKIP_LINES:
				return getSkipLines();
			case ModelPackage.RECORDING__CYCLE:
				return getCycle();
			case ModelPackage.RECORDING__LEFT_OUT:
				return getLeftOut();
			case ModelPackage.RECORDING__CHANNELS:
				return getChannels();
			case ModelPackage.RECORDING__MARKS:
				return getMarks();
			case ModelPackage.RECORDING__DETAILS:
				return getDetails();
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
			case ModelPackage.RECORDING__KIND:
				setKind((String)newValue);
				return;
			case ModelPackage.RECORDING__CODE:
				setCode((String)newValue);
				return;
			case ModelPackage.RECORDING__TITLE:
				setTitle((String)newValue);
				return;
			case ModelPackage.RECORDING__AT:
				setAt((Instant)newValue);
				return;
			case ModelPackage.RECORDING__FILE:
				setFile((Attachment)newValue);
				return;
			case ModelPackage.RECORDING__SESSION:
				setSession((Session)newValue);
				return;
			case ModelPackage.RECORDING__INSTRUMENT:
				setInstrument((Instrument)newValue);
				return;
			case ModelPackage.RECORDING__SEPARATOR:
				setSeparator((String)newValue);
				return;
			case ModelPackage.RECORDING__DECIMAL_COMMA:
				setDecimalComma((Boolean)newValue);
				return;
			case ModelPackage.RECORDING__SKIP_LINES:
				setSkipLines((Integer)newValue);
				return;
			case ModelPackage.RECORDING__CYCLE:
				setCycle((Integer)newValue);
				return;
			case ModelPackage.RECORDING__LEFT_OUT:
				setLeftOut((String)newValue);
				return;
			case ModelPackage.RECORDING__CHANNELS:
				getChannels().clear();
				getChannels().addAll((Collection<? extends RecordingChannel>)newValue);
				return;
			case ModelPackage.RECORDING__MARKS:
				getMarks().clear();
				getMarks().addAll((Collection<? extends RecordingMark>)newValue);
				return;
			case ModelPackage.RECORDING__DETAILS:
				setDetails((EObject)newValue);
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
			case ModelPackage.RECORDING__KIND:
				setKind(KIND_EDEFAULT);
				return;
			case ModelPackage.RECORDING__CODE:
				setCode(CODE_EDEFAULT);
				return;
			case ModelPackage.RECORDING__TITLE:
				setTitle(TITLE_EDEFAULT);
				return;
			case ModelPackage.RECORDING__AT:
				setAt(AT_EDEFAULT);
				return;
			case ModelPackage.RECORDING__FILE:
				setFile((Attachment)null);
				return;
			case ModelPackage.RECORDING__SESSION:
				setSession((Session)null);
				return;
			case ModelPackage.RECORDING__INSTRUMENT:
				setInstrument((Instrument)null);
				return;
			case ModelPackage.RECORDING__SEPARATOR:
				setSeparator(SEPARATOR_EDEFAULT);
				return;
			case ModelPackage.RECORDING__DECIMAL_COMMA:
				setDecimalComma(DECIMAL_COMMA_EDEFAULT);
				return;
			case ModelPackage.RECORDING__SKIP_LINES:
				setSkipLines(SKIP_LINES_EDEFAULT);
				return;
			case ModelPackage.RECORDING__CYCLE:
				setCycle(CYCLE_EDEFAULT);
				return;
			case ModelPackage.RECORDING__LEFT_OUT:
				setLeftOut(LEFT_OUT_EDEFAULT);
				return;
			case ModelPackage.RECORDING__CHANNELS:
				getChannels().clear();
				return;
			case ModelPackage.RECORDING__MARKS:
				getMarks().clear();
				return;
			case ModelPackage.RECORDING__DETAILS:
				setDetails((EObject)null);
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
			case ModelPackage.RECORDING__KIND:
				return KIND_EDEFAULT == null ? kind != null : !KIND_EDEFAULT.equals(kind);
			case ModelPackage.RECORDING__CODE:
				return CODE_EDEFAULT == null ? code != null : !CODE_EDEFAULT.equals(code);
			case ModelPackage.RECORDING__TITLE:
				return TITLE_EDEFAULT == null ? title != null : !TITLE_EDEFAULT.equals(title);
			case ModelPackage.RECORDING__AT:
				return AT_EDEFAULT == null ? at != null : !AT_EDEFAULT.equals(at);
			case ModelPackage.RECORDING__FILE:
				return file != null;
			case ModelPackage.RECORDING__SESSION:
				return session != null;
			case ModelPackage.RECORDING__INSTRUMENT:
				return instrument != null;
			case ModelPackage.RECORDING__SEPARATOR:
				return SEPARATOR_EDEFAULT == null ? separator != null : !SEPARATOR_EDEFAULT.equals(separator);
			case ModelPackage.RECORDING__DECIMAL_COMMA:
				return DECIMAL_COMMA_EDEFAULT == null ? decimalComma != null : !DECIMAL_COMMA_EDEFAULT.equals(decimalComma);
			case ModelPackage.RECORDING__SKIP_LINES:
				return SKIP_LINES_EDEFAULT == null ? skipLines != null : !SKIP_LINES_EDEFAULT.equals(skipLines);
			case ModelPackage.RECORDING__CYCLE:
				return CYCLE_EDEFAULT == null ? cycle != null : !CYCLE_EDEFAULT.equals(cycle);
			case ModelPackage.RECORDING__LEFT_OUT:
				return LEFT_OUT_EDEFAULT == null ? leftOut != null : !LEFT_OUT_EDEFAULT.equals(leftOut);
			case ModelPackage.RECORDING__CHANNELS:
				return channels != null && !channels.isEmpty();
			case ModelPackage.RECORDING__MARKS:
				return marks != null && !marks.isEmpty();
			case ModelPackage.RECORDING__DETAILS:
				return details != null;
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
		result.append(", code: ");
		result.append(code);
		result.append(", title: ");
		result.append(title);
		result.append(", at: ");
		result.append(at);
		result.append(", separator: ");
		result.append(separator);
		result.append(", decimalComma: ");
		result.append(decimalComma);
		result.append(", skipLines: ");
		result.append(skipLines);
		result.append(", cycle: ");
		result.append(cycle);
		result.append(", leftOut: ");
		result.append(leftOut);
		result.append(')');
		return result.toString();
	}

} //RecordingImpl
