/**
 */
package org.flexwright.mixing.data.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.flexwright.mixing.data.Basis;
import org.flexwright.mixing.data.Extra;
import org.flexwright.mixing.data.FillerBasis;
import org.flexwright.mixing.data.MixingDataPackage;
import org.flexwright.mixing.data.WeighDetails;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Weigh Details</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.mixing.data.impl.WeighDetailsImpl#getRatioA <em>Ratio A</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.impl.WeighDetailsImpl#getRatioB <em>Ratio B</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.impl.WeighDetailsImpl#getBasis <em>Basis</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.impl.WeighDetailsImpl#getDensityA <em>Density A</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.impl.WeighDetailsImpl#getDensityB <em>Density B</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.impl.WeighDetailsImpl#getOwnLimit <em>Own Limit</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.impl.WeighDetailsImpl#getPartCount <em>Part Count</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.impl.WeighDetailsImpl#getPartVolume <em>Part Volume</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.impl.WeighDetailsImpl#getRunnerVolume <em>Runner Volume</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.impl.WeighDetailsImpl#getDeadVolume <em>Dead Volume</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.impl.WeighDetailsImpl#getExtra <em>Extra</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.impl.WeighDetailsImpl#getExtraKind <em>Extra Kind</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.impl.WeighDetailsImpl#getFiller <em>Filler</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.impl.WeighDetailsImpl#getFillerBasis <em>Filler Basis</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.impl.WeighDetailsImpl#getBatchMass <em>Batch Mass</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.impl.WeighDetailsImpl#getIndex <em>Index</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.impl.WeighDetailsImpl#getMeasuredVolume <em>Measured Volume</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.impl.WeighDetailsImpl#getCupVolume <em>Cup Volume</em>}</li>
 * </ul>
 *
 * @generated
 */
public class WeighDetailsImpl extends MinimalEObjectImpl.Container implements WeighDetails {
	/**
	 * The default value of the '{@link #getRatioA() <em>Ratio A</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRatioA()
	 * @generated
	 * @ordered
	 */
	protected static final Double RATIO_A_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRatioA() <em>Ratio A</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRatioA()
	 * @generated
	 * @ordered
	 */
	protected Double ratioA = RATIO_A_EDEFAULT;

	/**
	 * The default value of the '{@link #getRatioB() <em>Ratio B</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRatioB()
	 * @generated
	 * @ordered
	 */
	protected static final Double RATIO_B_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRatioB() <em>Ratio B</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRatioB()
	 * @generated
	 * @ordered
	 */
	protected Double ratioB = RATIO_B_EDEFAULT;

	/**
	 * The default value of the '{@link #getBasis() <em>Basis</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBasis()
	 * @generated
	 * @ordered
	 */
	protected static final Basis BASIS_EDEFAULT = Basis.WEIGHT;

	/**
	 * The cached value of the '{@link #getBasis() <em>Basis</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBasis()
	 * @generated
	 * @ordered
	 */
	protected Basis basis = BASIS_EDEFAULT;

	/**
	 * The default value of the '{@link #getDensityA() <em>Density A</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDensityA()
	 * @generated
	 * @ordered
	 */
	protected static final Double DENSITY_A_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDensityA() <em>Density A</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDensityA()
	 * @generated
	 * @ordered
	 */
	protected Double densityA = DENSITY_A_EDEFAULT;

	/**
	 * The default value of the '{@link #getDensityB() <em>Density B</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDensityB()
	 * @generated
	 * @ordered
	 */
	protected static final Double DENSITY_B_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDensityB() <em>Density B</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDensityB()
	 * @generated
	 * @ordered
	 */
	protected Double densityB = DENSITY_B_EDEFAULT;

	/**
	 * The default value of the '{@link #getOwnLimit() <em>Own Limit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOwnLimit()
	 * @generated
	 * @ordered
	 */
	protected static final Double OWN_LIMIT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOwnLimit() <em>Own Limit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOwnLimit()
	 * @generated
	 * @ordered
	 */
	protected Double ownLimit = OWN_LIMIT_EDEFAULT;

	/**
	 * The default value of the '{@link #getPartCount() <em>Part Count</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPartCount()
	 * @generated
	 * @ordered
	 */
	protected static final Integer PART_COUNT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPartCount() <em>Part Count</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPartCount()
	 * @generated
	 * @ordered
	 */
	protected Integer partCount = PART_COUNT_EDEFAULT;

	/**
	 * The default value of the '{@link #getPartVolume() <em>Part Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPartVolume()
	 * @generated
	 * @ordered
	 */
	protected static final Double PART_VOLUME_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPartVolume() <em>Part Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPartVolume()
	 * @generated
	 * @ordered
	 */
	protected Double partVolume = PART_VOLUME_EDEFAULT;

	/**
	 * The default value of the '{@link #getRunnerVolume() <em>Runner Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRunnerVolume()
	 * @generated
	 * @ordered
	 */
	protected static final Double RUNNER_VOLUME_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRunnerVolume() <em>Runner Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRunnerVolume()
	 * @generated
	 * @ordered
	 */
	protected Double runnerVolume = RUNNER_VOLUME_EDEFAULT;

	/**
	 * The default value of the '{@link #getDeadVolume() <em>Dead Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDeadVolume()
	 * @generated
	 * @ordered
	 */
	protected static final Double DEAD_VOLUME_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDeadVolume() <em>Dead Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDeadVolume()
	 * @generated
	 * @ordered
	 */
	protected Double deadVolume = DEAD_VOLUME_EDEFAULT;

	/**
	 * The default value of the '{@link #getExtra() <em>Extra</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getExtra()
	 * @generated
	 * @ordered
	 */
	protected static final Double EXTRA_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getExtra() <em>Extra</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getExtra()
	 * @generated
	 * @ordered
	 */
	protected Double extra = EXTRA_EDEFAULT;

	/**
	 * The default value of the '{@link #getExtraKind() <em>Extra Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getExtraKind()
	 * @generated
	 * @ordered
	 */
	protected static final Extra EXTRA_KIND_EDEFAULT = Extra.ALLOWANCE;

	/**
	 * The cached value of the '{@link #getExtraKind() <em>Extra Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getExtraKind()
	 * @generated
	 * @ordered
	 */
	protected Extra extraKind = EXTRA_KIND_EDEFAULT;

	/**
	 * The default value of the '{@link #getFiller() <em>Filler</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFiller()
	 * @generated
	 * @ordered
	 */
	protected static final Double FILLER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFiller() <em>Filler</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFiller()
	 * @generated
	 * @ordered
	 */
	protected Double filler = FILLER_EDEFAULT;

	/**
	 * The default value of the '{@link #getFillerBasis() <em>Filler Basis</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFillerBasis()
	 * @generated
	 * @ordered
	 */
	protected static final FillerBasis FILLER_BASIS_EDEFAULT = FillerBasis.UNSTATED;

	/**
	 * The cached value of the '{@link #getFillerBasis() <em>Filler Basis</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFillerBasis()
	 * @generated
	 * @ordered
	 */
	protected FillerBasis fillerBasis = FILLER_BASIS_EDEFAULT;

	/**
	 * The default value of the '{@link #getBatchMass() <em>Batch Mass</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBatchMass()
	 * @generated
	 * @ordered
	 */
	protected static final Double BATCH_MASS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBatchMass() <em>Batch Mass</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBatchMass()
	 * @generated
	 * @ordered
	 */
	protected Double batchMass = BATCH_MASS_EDEFAULT;

	/**
	 * The default value of the '{@link #getIndex() <em>Index</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getIndex()
	 * @generated
	 * @ordered
	 */
	protected static final Double INDEX_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getIndex() <em>Index</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getIndex()
	 * @generated
	 * @ordered
	 */
	protected Double index = INDEX_EDEFAULT;

	/**
	 * The default value of the '{@link #getMeasuredVolume() <em>Measured Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMeasuredVolume()
	 * @generated
	 * @ordered
	 */
	protected static final Double MEASURED_VOLUME_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMeasuredVolume() <em>Measured Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMeasuredVolume()
	 * @generated
	 * @ordered
	 */
	protected Double measuredVolume = MEASURED_VOLUME_EDEFAULT;

	/**
	 * The default value of the '{@link #getCupVolume() <em>Cup Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCupVolume()
	 * @generated
	 * @ordered
	 */
	protected static final Double CUP_VOLUME_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCupVolume() <em>Cup Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCupVolume()
	 * @generated
	 * @ordered
	 */
	protected Double cupVolume = CUP_VOLUME_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected WeighDetailsImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return MixingDataPackage.Literals.WEIGH_DETAILS;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getRatioA() {
		return ratioA;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRatioA(Double newRatioA) {
		Double oldRatioA = ratioA;
		ratioA = newRatioA;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, MixingDataPackage.WEIGH_DETAILS__RATIO_A, oldRatioA, ratioA));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getRatioB() {
		return ratioB;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRatioB(Double newRatioB) {
		Double oldRatioB = ratioB;
		ratioB = newRatioB;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, MixingDataPackage.WEIGH_DETAILS__RATIO_B, oldRatioB, ratioB));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Basis getBasis() {
		return basis;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBasis(Basis newBasis) {
		Basis oldBasis = basis;
		basis = newBasis == null ? BASIS_EDEFAULT : newBasis;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, MixingDataPackage.WEIGH_DETAILS__BASIS, oldBasis, basis));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getDensityA() {
		return densityA;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDensityA(Double newDensityA) {
		Double oldDensityA = densityA;
		densityA = newDensityA;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, MixingDataPackage.WEIGH_DETAILS__DENSITY_A, oldDensityA, densityA));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getDensityB() {
		return densityB;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDensityB(Double newDensityB) {
		Double oldDensityB = densityB;
		densityB = newDensityB;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, MixingDataPackage.WEIGH_DETAILS__DENSITY_B, oldDensityB, densityB));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getOwnLimit() {
		return ownLimit;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOwnLimit(Double newOwnLimit) {
		Double oldOwnLimit = ownLimit;
		ownLimit = newOwnLimit;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, MixingDataPackage.WEIGH_DETAILS__OWN_LIMIT, oldOwnLimit, ownLimit));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getPartCount() {
		return partCount;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPartCount(Integer newPartCount) {
		Integer oldPartCount = partCount;
		partCount = newPartCount;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, MixingDataPackage.WEIGH_DETAILS__PART_COUNT, oldPartCount, partCount));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getPartVolume() {
		return partVolume;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPartVolume(Double newPartVolume) {
		Double oldPartVolume = partVolume;
		partVolume = newPartVolume;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, MixingDataPackage.WEIGH_DETAILS__PART_VOLUME, oldPartVolume, partVolume));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getRunnerVolume() {
		return runnerVolume;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRunnerVolume(Double newRunnerVolume) {
		Double oldRunnerVolume = runnerVolume;
		runnerVolume = newRunnerVolume;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, MixingDataPackage.WEIGH_DETAILS__RUNNER_VOLUME, oldRunnerVolume, runnerVolume));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getDeadVolume() {
		return deadVolume;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDeadVolume(Double newDeadVolume) {
		Double oldDeadVolume = deadVolume;
		deadVolume = newDeadVolume;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, MixingDataPackage.WEIGH_DETAILS__DEAD_VOLUME, oldDeadVolume, deadVolume));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getExtra() {
		return extra;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setExtra(Double newExtra) {
		Double oldExtra = extra;
		extra = newExtra;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, MixingDataPackage.WEIGH_DETAILS__EXTRA, oldExtra, extra));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Extra getExtraKind() {
		return extraKind;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setExtraKind(Extra newExtraKind) {
		Extra oldExtraKind = extraKind;
		extraKind = newExtraKind == null ? EXTRA_KIND_EDEFAULT : newExtraKind;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, MixingDataPackage.WEIGH_DETAILS__EXTRA_KIND, oldExtraKind, extraKind));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getFiller() {
		return filler;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFiller(Double newFiller) {
		Double oldFiller = filler;
		filler = newFiller;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, MixingDataPackage.WEIGH_DETAILS__FILLER, oldFiller, filler));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public FillerBasis getFillerBasis() {
		return fillerBasis;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFillerBasis(FillerBasis newFillerBasis) {
		FillerBasis oldFillerBasis = fillerBasis;
		fillerBasis = newFillerBasis == null ? FILLER_BASIS_EDEFAULT : newFillerBasis;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, MixingDataPackage.WEIGH_DETAILS__FILLER_BASIS, oldFillerBasis, fillerBasis));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getBatchMass() {
		return batchMass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBatchMass(Double newBatchMass) {
		Double oldBatchMass = batchMass;
		batchMass = newBatchMass;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, MixingDataPackage.WEIGH_DETAILS__BATCH_MASS, oldBatchMass, batchMass));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getIndex() {
		return index;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setIndex(Double newIndex) {
		Double oldIndex = index;
		index = newIndex;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, MixingDataPackage.WEIGH_DETAILS__INDEX, oldIndex, index));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getMeasuredVolume() {
		return measuredVolume;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMeasuredVolume(Double newMeasuredVolume) {
		Double oldMeasuredVolume = measuredVolume;
		measuredVolume = newMeasuredVolume;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, MixingDataPackage.WEIGH_DETAILS__MEASURED_VOLUME, oldMeasuredVolume, measuredVolume));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getCupVolume() {
		return cupVolume;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCupVolume(Double newCupVolume) {
		Double oldCupVolume = cupVolume;
		cupVolume = newCupVolume;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, MixingDataPackage.WEIGH_DETAILS__CUP_VOLUME, oldCupVolume, cupVolume));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case MixingDataPackage.WEIGH_DETAILS__RATIO_A:
				return getRatioA();
			case MixingDataPackage.WEIGH_DETAILS__RATIO_B:
				return getRatioB();
			case MixingDataPackage.WEIGH_DETAILS__BASIS:
				return getBasis();
			case MixingDataPackage.WEIGH_DETAILS__DENSITY_A:
				return getDensityA();
			case MixingDataPackage.WEIGH_DETAILS__DENSITY_B:
				return getDensityB();
			case MixingDataPackage.WEIGH_DETAILS__OWN_LIMIT:
				return getOwnLimit();
			case MixingDataPackage.WEIGH_DETAILS__PART_COUNT:
				return getPartCount();
			case MixingDataPackage.WEIGH_DETAILS__PART_VOLUME:
				return getPartVolume();
			case MixingDataPackage.WEIGH_DETAILS__RUNNER_VOLUME:
				return getRunnerVolume();
			case MixingDataPackage.WEIGH_DETAILS__DEAD_VOLUME:
				return getDeadVolume();
			case MixingDataPackage.WEIGH_DETAILS__EXTRA:
				return getExtra();
			case MixingDataPackage.WEIGH_DETAILS__EXTRA_KIND:
				return getExtraKind();
			case MixingDataPackage.WEIGH_DETAILS__FILLER:
				return getFiller();
			case MixingDataPackage.WEIGH_DETAILS__FILLER_BASIS:
				return getFillerBasis();
			case MixingDataPackage.WEIGH_DETAILS__BATCH_MASS:
				return getBatchMass();
			case MixingDataPackage.WEIGH_DETAILS__INDEX:
				return getIndex();
			case MixingDataPackage.WEIGH_DETAILS__MEASURED_VOLUME:
				return getMeasuredVolume();
			case MixingDataPackage.WEIGH_DETAILS__CUP_VOLUME:
				return getCupVolume();
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
			case MixingDataPackage.WEIGH_DETAILS__RATIO_A:
				setRatioA((Double)newValue);
				return;
			case MixingDataPackage.WEIGH_DETAILS__RATIO_B:
				setRatioB((Double)newValue);
				return;
			case MixingDataPackage.WEIGH_DETAILS__BASIS:
				setBasis((Basis)newValue);
				return;
			case MixingDataPackage.WEIGH_DETAILS__DENSITY_A:
				setDensityA((Double)newValue);
				return;
			case MixingDataPackage.WEIGH_DETAILS__DENSITY_B:
				setDensityB((Double)newValue);
				return;
			case MixingDataPackage.WEIGH_DETAILS__OWN_LIMIT:
				setOwnLimit((Double)newValue);
				return;
			case MixingDataPackage.WEIGH_DETAILS__PART_COUNT:
				setPartCount((Integer)newValue);
				return;
			case MixingDataPackage.WEIGH_DETAILS__PART_VOLUME:
				setPartVolume((Double)newValue);
				return;
			case MixingDataPackage.WEIGH_DETAILS__RUNNER_VOLUME:
				setRunnerVolume((Double)newValue);
				return;
			case MixingDataPackage.WEIGH_DETAILS__DEAD_VOLUME:
				setDeadVolume((Double)newValue);
				return;
			case MixingDataPackage.WEIGH_DETAILS__EXTRA:
				setExtra((Double)newValue);
				return;
			case MixingDataPackage.WEIGH_DETAILS__EXTRA_KIND:
				setExtraKind((Extra)newValue);
				return;
			case MixingDataPackage.WEIGH_DETAILS__FILLER:
				setFiller((Double)newValue);
				return;
			case MixingDataPackage.WEIGH_DETAILS__FILLER_BASIS:
				setFillerBasis((FillerBasis)newValue);
				return;
			case MixingDataPackage.WEIGH_DETAILS__BATCH_MASS:
				setBatchMass((Double)newValue);
				return;
			case MixingDataPackage.WEIGH_DETAILS__INDEX:
				setIndex((Double)newValue);
				return;
			case MixingDataPackage.WEIGH_DETAILS__MEASURED_VOLUME:
				setMeasuredVolume((Double)newValue);
				return;
			case MixingDataPackage.WEIGH_DETAILS__CUP_VOLUME:
				setCupVolume((Double)newValue);
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
			case MixingDataPackage.WEIGH_DETAILS__RATIO_A:
				setRatioA(RATIO_A_EDEFAULT);
				return;
			case MixingDataPackage.WEIGH_DETAILS__RATIO_B:
				setRatioB(RATIO_B_EDEFAULT);
				return;
			case MixingDataPackage.WEIGH_DETAILS__BASIS:
				setBasis(BASIS_EDEFAULT);
				return;
			case MixingDataPackage.WEIGH_DETAILS__DENSITY_A:
				setDensityA(DENSITY_A_EDEFAULT);
				return;
			case MixingDataPackage.WEIGH_DETAILS__DENSITY_B:
				setDensityB(DENSITY_B_EDEFAULT);
				return;
			case MixingDataPackage.WEIGH_DETAILS__OWN_LIMIT:
				setOwnLimit(OWN_LIMIT_EDEFAULT);
				return;
			case MixingDataPackage.WEIGH_DETAILS__PART_COUNT:
				setPartCount(PART_COUNT_EDEFAULT);
				return;
			case MixingDataPackage.WEIGH_DETAILS__PART_VOLUME:
				setPartVolume(PART_VOLUME_EDEFAULT);
				return;
			case MixingDataPackage.WEIGH_DETAILS__RUNNER_VOLUME:
				setRunnerVolume(RUNNER_VOLUME_EDEFAULT);
				return;
			case MixingDataPackage.WEIGH_DETAILS__DEAD_VOLUME:
				setDeadVolume(DEAD_VOLUME_EDEFAULT);
				return;
			case MixingDataPackage.WEIGH_DETAILS__EXTRA:
				setExtra(EXTRA_EDEFAULT);
				return;
			case MixingDataPackage.WEIGH_DETAILS__EXTRA_KIND:
				setExtraKind(EXTRA_KIND_EDEFAULT);
				return;
			case MixingDataPackage.WEIGH_DETAILS__FILLER:
				setFiller(FILLER_EDEFAULT);
				return;
			case MixingDataPackage.WEIGH_DETAILS__FILLER_BASIS:
				setFillerBasis(FILLER_BASIS_EDEFAULT);
				return;
			case MixingDataPackage.WEIGH_DETAILS__BATCH_MASS:
				setBatchMass(BATCH_MASS_EDEFAULT);
				return;
			case MixingDataPackage.WEIGH_DETAILS__INDEX:
				setIndex(INDEX_EDEFAULT);
				return;
			case MixingDataPackage.WEIGH_DETAILS__MEASURED_VOLUME:
				setMeasuredVolume(MEASURED_VOLUME_EDEFAULT);
				return;
			case MixingDataPackage.WEIGH_DETAILS__CUP_VOLUME:
				setCupVolume(CUP_VOLUME_EDEFAULT);
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
			case MixingDataPackage.WEIGH_DETAILS__RATIO_A:
				return RATIO_A_EDEFAULT == null ? ratioA != null : !RATIO_A_EDEFAULT.equals(ratioA);
			case MixingDataPackage.WEIGH_DETAILS__RATIO_B:
				return RATIO_B_EDEFAULT == null ? ratioB != null : !RATIO_B_EDEFAULT.equals(ratioB);
			case MixingDataPackage.WEIGH_DETAILS__BASIS:
				return basis != BASIS_EDEFAULT;
			case MixingDataPackage.WEIGH_DETAILS__DENSITY_A:
				return DENSITY_A_EDEFAULT == null ? densityA != null : !DENSITY_A_EDEFAULT.equals(densityA);
			case MixingDataPackage.WEIGH_DETAILS__DENSITY_B:
				return DENSITY_B_EDEFAULT == null ? densityB != null : !DENSITY_B_EDEFAULT.equals(densityB);
			case MixingDataPackage.WEIGH_DETAILS__OWN_LIMIT:
				return OWN_LIMIT_EDEFAULT == null ? ownLimit != null : !OWN_LIMIT_EDEFAULT.equals(ownLimit);
			case MixingDataPackage.WEIGH_DETAILS__PART_COUNT:
				return PART_COUNT_EDEFAULT == null ? partCount != null : !PART_COUNT_EDEFAULT.equals(partCount);
			case MixingDataPackage.WEIGH_DETAILS__PART_VOLUME:
				return PART_VOLUME_EDEFAULT == null ? partVolume != null : !PART_VOLUME_EDEFAULT.equals(partVolume);
			case MixingDataPackage.WEIGH_DETAILS__RUNNER_VOLUME:
				return RUNNER_VOLUME_EDEFAULT == null ? runnerVolume != null : !RUNNER_VOLUME_EDEFAULT.equals(runnerVolume);
			case MixingDataPackage.WEIGH_DETAILS__DEAD_VOLUME:
				return DEAD_VOLUME_EDEFAULT == null ? deadVolume != null : !DEAD_VOLUME_EDEFAULT.equals(deadVolume);
			case MixingDataPackage.WEIGH_DETAILS__EXTRA:
				return EXTRA_EDEFAULT == null ? extra != null : !EXTRA_EDEFAULT.equals(extra);
			case MixingDataPackage.WEIGH_DETAILS__EXTRA_KIND:
				return extraKind != EXTRA_KIND_EDEFAULT;
			case MixingDataPackage.WEIGH_DETAILS__FILLER:
				return FILLER_EDEFAULT == null ? filler != null : !FILLER_EDEFAULT.equals(filler);
			case MixingDataPackage.WEIGH_DETAILS__FILLER_BASIS:
				return fillerBasis != FILLER_BASIS_EDEFAULT;
			case MixingDataPackage.WEIGH_DETAILS__BATCH_MASS:
				return BATCH_MASS_EDEFAULT == null ? batchMass != null : !BATCH_MASS_EDEFAULT.equals(batchMass);
			case MixingDataPackage.WEIGH_DETAILS__INDEX:
				return INDEX_EDEFAULT == null ? index != null : !INDEX_EDEFAULT.equals(index);
			case MixingDataPackage.WEIGH_DETAILS__MEASURED_VOLUME:
				return MEASURED_VOLUME_EDEFAULT == null ? measuredVolume != null : !MEASURED_VOLUME_EDEFAULT.equals(measuredVolume);
			case MixingDataPackage.WEIGH_DETAILS__CUP_VOLUME:
				return CUP_VOLUME_EDEFAULT == null ? cupVolume != null : !CUP_VOLUME_EDEFAULT.equals(cupVolume);
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
		result.append(" (ratioA: ");
		result.append(ratioA);
		result.append(", ratioB: ");
		result.append(ratioB);
		result.append(", basis: ");
		result.append(basis);
		result.append(", densityA: ");
		result.append(densityA);
		result.append(", densityB: ");
		result.append(densityB);
		result.append(", ownLimit: ");
		result.append(ownLimit);
		result.append(", partCount: ");
		result.append(partCount);
		result.append(", partVolume: ");
		result.append(partVolume);
		result.append(", runnerVolume: ");
		result.append(runnerVolume);
		result.append(", deadVolume: ");
		result.append(deadVolume);
		result.append(", extra: ");
		result.append(extra);
		result.append(", extraKind: ");
		result.append(extraKind);
		result.append(", filler: ");
		result.append(filler);
		result.append(", fillerBasis: ");
		result.append(fillerBasis);
		result.append(", batchMass: ");
		result.append(batchMass);
		result.append(", index: ");
		result.append(index);
		result.append(", measuredVolume: ");
		result.append(measuredVolume);
		result.append(", cupVolume: ");
		result.append(cupVolume);
		result.append(')');
		return result.toString();
	}

} //WeighDetailsImpl
