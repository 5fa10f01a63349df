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
import org.eclipse.emf.ecore.util.InternalEList;

import org.flexwright.model.CalculationRun;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.RunInput;
import org.flexwright.model.RunResult;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Calculation Run</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.impl.CalculationRunImpl#getCalculation <em>Calculation</em>}</li>
 *   <li>{@link org.flexwright.model.impl.CalculationRunImpl#getVersion <em>Version</em>}</li>
 *   <li>{@link org.flexwright.model.impl.CalculationRunImpl#getProgramVersion <em>Program Version</em>}</li>
 *   <li>{@link org.flexwright.model.impl.CalculationRunImpl#getAt <em>At</em>}</li>
 *   <li>{@link org.flexwright.model.impl.CalculationRunImpl#getInputs <em>Inputs</em>}</li>
 *   <li>{@link org.flexwright.model.impl.CalculationRunImpl#getResults <em>Results</em>}</li>
 *   <li>{@link org.flexwright.model.impl.CalculationRunImpl#getRefusal <em>Refusal</em>}</li>
 * </ul>
 *
 * @generated
 */
public class CalculationRunImpl extends EntryImpl implements CalculationRun {
	/**
	 * The default value of the '{@link #getCalculation() <em>Calculation</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCalculation()
	 * @generated
	 * @ordered
	 */
	protected static final String CALCULATION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCalculation() <em>Calculation</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCalculation()
	 * @generated
	 * @ordered
	 */
	protected String calculation = CALCULATION_EDEFAULT;

	/**
	 * The default value of the '{@link #getVersion() <em>Version</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVersion()
	 * @generated
	 * @ordered
	 */
	protected static final String VERSION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getVersion() <em>Version</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVersion()
	 * @generated
	 * @ordered
	 */
	protected String version = VERSION_EDEFAULT;

	/**
	 * The default value of the '{@link #getProgramVersion() <em>Program Version</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getProgramVersion()
	 * @generated
	 * @ordered
	 */
	protected static final String PROGRAM_VERSION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getProgramVersion() <em>Program Version</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getProgramVersion()
	 * @generated
	 * @ordered
	 */
	protected String programVersion = PROGRAM_VERSION_EDEFAULT;

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
	 * The cached value of the '{@link #getInputs() <em>Inputs</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInputs()
	 * @generated
	 * @ordered
	 */
	protected EList<RunInput> inputs;

	/**
	 * The cached value of the '{@link #getResults() <em>Results</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getResults()
	 * @generated
	 * @ordered
	 */
	protected EList<RunResult> results;

	/**
	 * The default value of the '{@link #getRefusal() <em>Refusal</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRefusal()
	 * @generated
	 * @ordered
	 */
	protected static final String REFUSAL_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRefusal() <em>Refusal</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRefusal()
	 * @generated
	 * @ordered
	 */
	protected String refusal = REFUSAL_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected CalculationRunImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.CALCULATION_RUN;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getCalculation() {
		return calculation;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCalculation(String newCalculation) {
		String oldCalculation = calculation;
		calculation = newCalculation;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.CALCULATION_RUN__CALCULATION, oldCalculation, calculation));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getVersion() {
		return version;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setVersion(String newVersion) {
		String oldVersion = version;
		version = newVersion;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.CALCULATION_RUN__VERSION, oldVersion, version));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getProgramVersion() {
		return programVersion;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setProgramVersion(String newProgramVersion) {
		String oldProgramVersion = programVersion;
		programVersion = newProgramVersion;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.CALCULATION_RUN__PROGRAM_VERSION, oldProgramVersion, programVersion));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.CALCULATION_RUN__AT, oldAt, at));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<RunInput> getInputs() {
		if (inputs == null) {
			inputs = new EObjectContainmentEList<RunInput>(RunInput.class, this, ModelPackage.CALCULATION_RUN__INPUTS);
		}
		return inputs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<RunResult> getResults() {
		if (results == null) {
			results = new EObjectContainmentEList<RunResult>(RunResult.class, this, ModelPackage.CALCULATION_RUN__RESULTS);
		}
		return results;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getRefusal() {
		return refusal;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRefusal(String newRefusal) {
		String oldRefusal = refusal;
		refusal = newRefusal;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.CALCULATION_RUN__REFUSAL, oldRefusal, refusal));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case ModelPackage.CALCULATION_RUN__INPUTS:
				return ((InternalEList<?>)getInputs()).basicRemove(otherEnd, msgs);
			case ModelPackage.CALCULATION_RUN__RESULTS:
				return ((InternalEList<?>)getResults()).basicRemove(otherEnd, msgs);
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
			case ModelPackage.CALCULATION_RUN__CALCULATION:
				return getCalculation();
			case ModelPackage.CALCULATION_RUN__VERSION:
				return getVersion();
			case ModelPackage.CALCULATION_RUN__PROGRAM_VERSION:
				return getProgramVersion();
			case ModelPackage.CALCULATION_RUN__AT:
				return getAt();
			case ModelPackage.CALCULATION_RUN__INPUTS:
				return getInputs();
			case ModelPackage.CALCULATION_RUN__RESULTS:
				return getResults();
			case ModelPackage.CALCULATION_RUN__REFUSAL:
				return getRefusal();
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
			case ModelPackage.CALCULATION_RUN__CALCULATION:
				setCalculation((String)newValue);
				return;
			case ModelPackage.CALCULATION_RUN__VERSION:
				setVersion((String)newValue);
				return;
			case ModelPackage.CALCULATION_RUN__PROGRAM_VERSION:
				setProgramVersion((String)newValue);
				return;
			case ModelPackage.CALCULATION_RUN__AT:
				setAt((Instant)newValue);
				return;
			case ModelPackage.CALCULATION_RUN__INPUTS:
				getInputs().clear();
				getInputs().addAll((Collection<? extends RunInput>)newValue);
				return;
			case ModelPackage.CALCULATION_RUN__RESULTS:
				getResults().clear();
				getResults().addAll((Collection<? extends RunResult>)newValue);
				return;
			case ModelPackage.CALCULATION_RUN__REFUSAL:
				setRefusal((String)newValue);
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
			case ModelPackage.CALCULATION_RUN__CALCULATION:
				setCalculation(CALCULATION_EDEFAULT);
				return;
			case ModelPackage.CALCULATION_RUN__VERSION:
				setVersion(VERSION_EDEFAULT);
				return;
			case ModelPackage.CALCULATION_RUN__PROGRAM_VERSION:
				setProgramVersion(PROGRAM_VERSION_EDEFAULT);
				return;
			case ModelPackage.CALCULATION_RUN__AT:
				setAt(AT_EDEFAULT);
				return;
			case ModelPackage.CALCULATION_RUN__INPUTS:
				getInputs().clear();
				return;
			case ModelPackage.CALCULATION_RUN__RESULTS:
				getResults().clear();
				return;
			case ModelPackage.CALCULATION_RUN__REFUSAL:
				setRefusal(REFUSAL_EDEFAULT);
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
			case ModelPackage.CALCULATION_RUN__CALCULATION:
				return CALCULATION_EDEFAULT == null ? calculation != null : !CALCULATION_EDEFAULT.equals(calculation);
			case ModelPackage.CALCULATION_RUN__VERSION:
				return VERSION_EDEFAULT == null ? version != null : !VERSION_EDEFAULT.equals(version);
			case ModelPackage.CALCULATION_RUN__PROGRAM_VERSION:
				return PROGRAM_VERSION_EDEFAULT == null ? programVersion != null : !PROGRAM_VERSION_EDEFAULT.equals(programVersion);
			case ModelPackage.CALCULATION_RUN__AT:
				return AT_EDEFAULT == null ? at != null : !AT_EDEFAULT.equals(at);
			case ModelPackage.CALCULATION_RUN__INPUTS:
				return inputs != null && !inputs.isEmpty();
			case ModelPackage.CALCULATION_RUN__RESULTS:
				return results != null && !results.isEmpty();
			case ModelPackage.CALCULATION_RUN__REFUSAL:
				return REFUSAL_EDEFAULT == null ? refusal != null : !REFUSAL_EDEFAULT.equals(refusal);
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
		result.append(" (calculation: ");
		result.append(calculation);
		result.append(", version: ");
		result.append(version);
		result.append(", programVersion: ");
		result.append(programVersion);
		result.append(", at: ");
		result.append(at);
		result.append(", refusal: ");
		result.append(refusal);
		result.append(')');
		return result.toString();
	}

} //CalculationRunImpl
