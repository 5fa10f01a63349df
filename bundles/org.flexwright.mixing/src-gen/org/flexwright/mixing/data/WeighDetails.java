/**
 */
package org.flexwright.mixing.data;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Weigh Details</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Weighing out a batch: the ratio and what the amounts are made from. Planned and weighed grams stand in the step's uses.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.mixing.data.WeighDetails#getRatioA <em>Ratio A</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.WeighDetails#getRatioB <em>Ratio B</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.WeighDetails#getBasis <em>Basis</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.WeighDetails#getDensityA <em>Density A</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.WeighDetails#getDensityB <em>Density B</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.WeighDetails#getOwnLimit <em>Own Limit</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.WeighDetails#getPartCount <em>Part Count</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.WeighDetails#getPartVolume <em>Part Volume</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.WeighDetails#getRunnerVolume <em>Runner Volume</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.WeighDetails#getDeadVolume <em>Dead Volume</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.WeighDetails#getExtra <em>Extra</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.WeighDetails#getExtraKind <em>Extra Kind</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.WeighDetails#getFiller <em>Filler</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.WeighDetails#getFillerBasis <em>Filler Basis</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.WeighDetails#getBatchMass <em>Batch Mass</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.WeighDetails#getIndex <em>Index</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.WeighDetails#getMeasuredVolume <em>Measured Volume</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.WeighDetails#getCupVolume <em>Cup Volume</em>}</li>
 * </ul>
 *
 * @see org.flexwright.mixing.data.MixingDataPackage#getWeighDetails()
 * @model
 * @generated
 */
public interface WeighDetails extends EObject {
	/**
	 * Returns the value of the '<em><b>Ratio A</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Parts of A as the sheet gives them.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Ratio A</em>' attribute.
	 * @see #setRatioA(Double)
	 * @see org.flexwright.mixing.data.MixingDataPackage#getWeighDetails_RatioA()
	 * @model annotation="urn:flexwright:field kind='NUMBER' min='0' minOpen='true' max='1000000' label='Parts of A' role='planned' def='100' help='Parts of A as the sheet gives them.'"
	 * @generated
	 */
	Double getRatioA();

	/**
	 * Sets the value of the '{@link org.flexwright.mixing.data.WeighDetails#getRatioA <em>Ratio A</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Ratio A</em>' attribute.
	 * @see #getRatioA()
	 * @generated
	 */
	void setRatioA(Double value);

	/**
	 * Returns the value of the '<em><b>Ratio B</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Parts of B as the sheet gives them.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Ratio B</em>' attribute.
	 * @see #setRatioB(Double)
	 * @see org.flexwright.mixing.data.MixingDataPackage#getWeighDetails_RatioB()
	 * @model annotation="urn:flexwright:field kind='NUMBER' min='0' minOpen='true' max='1000000' label='Parts of B' role='planned' help='Parts of B as the sheet gives them.'"
	 * @generated
	 */
	Double getRatioB();

	/**
	 * Sets the value of the '{@link org.flexwright.mixing.data.WeighDetails#getRatioB <em>Ratio B</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Ratio B</em>' attribute.
	 * @see #getRatioB()
	 * @generated
	 */
	void setRatioB(Double value);

	/**
	 * Returns the value of the '<em><b>Basis</b></em>' attribute.
	 * The literals are from the enumeration {@link org.flexwright.mixing.data.Basis}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether the parts are grams or millilitres. A ratio by volume needs both densities before it can be weighed.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Basis</em>' attribute.
	 * @see org.flexwright.mixing.data.Basis
	 * @see #setBasis(Basis)
	 * @see org.flexwright.mixing.data.MixingDataPackage#getWeighDetails_Basis()
	 * @model annotation="urn:flexwright:field label='Parts by' role='planned' help='Whether the parts are grams or millilitres. A ratio by volume needs both densities before it can be weighed.'"
	 * @generated
	 */
	Basis getBasis();

	/**
	 * Sets the value of the '{@link org.flexwright.mixing.data.WeighDetails#getBasis <em>Basis</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Basis</em>' attribute.
	 * @see org.flexwright.mixing.data.Basis
	 * @see #getBasis()
	 * @generated
	 */
	void setBasis(Basis value);

	/**
	 * Returns the value of the '<em><b>Density A</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * From the sheet, or own measurement.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Density A</em>' attribute.
	 * @see #setDensityA(Double)
	 * @see org.flexwright.mixing.data.MixingDataPackage#getWeighDetails_DensityA()
	 * @model annotation="urn:flexwright:field kind='DENSITY' unit='g/cm3' min='0.3' max='5' label='Density of A' role='planned' help='From the sheet, or own measurement.'"
	 * @generated
	 */
	Double getDensityA();

	/**
	 * Sets the value of the '{@link org.flexwright.mixing.data.WeighDetails#getDensityA <em>Density A</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Density A</em>' attribute.
	 * @see #getDensityA()
	 * @generated
	 */
	void setDensityA(Double value);

	/**
	 * Returns the value of the '<em><b>Density B</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * From the sheet, or own measurement.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Density B</em>' attribute.
	 * @see #setDensityB(Double)
	 * @see org.flexwright.mixing.data.MixingDataPackage#getWeighDetails_DensityB()
	 * @model annotation="urn:flexwright:field kind='DENSITY' unit='g/cm3' min='0.3' max='5' label='Density of B' role='planned' help='From the sheet, or own measurement.'"
	 * @generated
	 */
	Double getDensityB();

	/**
	 * Sets the value of the '{@link org.flexwright.mixing.data.WeighDetails#getDensityB <em>Density B</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Density B</em>' attribute.
	 * @see #getDensityB()
	 * @generated
	 */
	void setDensityB(Double value);

	/**
	 * Returns the value of the '<em><b>Own Limit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Largest deviation of the ratio you accept; common practice, no source.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Own Limit</em>' attribute.
	 * @see #setOwnLimit(Double)
	 * @see org.flexwright.mixing.data.MixingDataPackage#getWeighDetails_OwnLimit()
	 * @model annotation="urn:flexwright:field kind='FRACTION' unit='%' min='0.05' max='50' label='Own limit' role='planned' def='2' help='Largest deviation of the ratio you accept; common practice, no source.'"
	 * @generated
	 */
	Double getOwnLimit();

	/**
	 * Sets the value of the '{@link org.flexwright.mixing.data.WeighDetails#getOwnLimit <em>Own Limit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Own Limit</em>' attribute.
	 * @see #getOwnLimit()
	 * @generated
	 */
	void setOwnLimit(Double value);

	/**
	 * Returns the value of the '<em><b>Part Count</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How many parts the batch is for.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Part Count</em>' attribute.
	 * @see #setPartCount(Integer)
	 * @see org.flexwright.mixing.data.MixingDataPackage#getWeighDetails_PartCount()
	 * @model annotation="urn:flexwright:field min='1' max='10000' label='Parts to make' role='planned' help='How many parts the batch is for.'"
	 * @generated
	 */
	Integer getPartCount();

	/**
	 * Sets the value of the '{@link org.flexwright.mixing.data.WeighDetails#getPartCount <em>Part Count</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Part Count</em>' attribute.
	 * @see #getPartCount()
	 * @generated
	 */
	void setPartCount(Integer value);

	/**
	 * Returns the value of the '<em><b>Part Volume</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Volume of one part.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Part Volume</em>' attribute.
	 * @see #setPartVolume(Double)
	 * @see org.flexwright.mixing.data.MixingDataPackage#getWeighDetails_PartVolume()
	 * @model annotation="urn:flexwright:field kind='VOLUME' unit='ml' min='0' max='100000' label='Part volume' role='planned' help='Volume of one part.'"
	 * @generated
	 */
	Double getPartVolume();

	/**
	 * Sets the value of the '{@link org.flexwright.mixing.data.WeighDetails#getPartVolume <em>Part Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Part Volume</em>' attribute.
	 * @see #getPartVolume()
	 * @generated
	 */
	void setPartVolume(Double value);

	/**
	 * Returns the value of the '<em><b>Runner Volume</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Sprue, runner and riser of one part.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Runner Volume</em>' attribute.
	 * @see #setRunnerVolume(Double)
	 * @see org.flexwright.mixing.data.MixingDataPackage#getWeighDetails_RunnerVolume()
	 * @model annotation="urn:flexwright:field kind='VOLUME' unit='ml' min='0' max='100000' label='Runner volume' role='planned' help='Sprue, runner and riser of one part.'"
	 * @generated
	 */
	Double getRunnerVolume();

	/**
	 * Sets the value of the '{@link org.flexwright.mixing.data.WeighDetails#getRunnerVolume <em>Runner Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Runner Volume</em>' attribute.
	 * @see #getRunnerVolume()
	 * @generated
	 */
	void setRunnerVolume(Double value);

	/**
	 * Returns the value of the '<em><b>Dead Volume</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What stays in syringe or hose, once a batch.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Dead Volume</em>' attribute.
	 * @see #setDeadVolume(Double)
	 * @see org.flexwright.mixing.data.MixingDataPackage#getWeighDetails_DeadVolume()
	 * @model annotation="urn:flexwright:field kind='VOLUME' unit='ml' min='0' max='100000' label='Dead volume' role='planned' help='What stays in syringe or hose, once a batch.'"
	 * @generated
	 */
	Double getDeadVolume();

	/**
	 * Sets the value of the '{@link org.flexwright.mixing.data.WeighDetails#getDeadVolume <em>Dead Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Dead Volume</em>' attribute.
	 * @see #getDeadVolume()
	 * @generated
	 */
	void setDeadVolume(Double value);

	/**
	 * Returns the value of the '<em><b>Extra</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Allowance or loss, see the next field.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Extra</em>' attribute.
	 * @see #setExtra(Double)
	 * @see org.flexwright.mixing.data.MixingDataPackage#getWeighDetails_Extra()
	 * @model annotation="urn:flexwright:field kind='FRACTION' unit='%' min='0' max='90' label='Extra' role='planned' help='Allowance or loss, see the next field.'"
	 * @generated
	 */
	Double getExtra();

	/**
	 * Sets the value of the '{@link org.flexwright.mixing.data.WeighDetails#getExtra <em>Extra</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Extra</em>' attribute.
	 * @see #getExtra()
	 * @generated
	 */
	void setExtra(Double value);

	/**
	 * Returns the value of the '<em><b>Extra Kind</b></em>' attribute.
	 * The literals are from the enumeration {@link org.flexwright.mixing.data.Extra}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * An allowance is added to the net; a loss is the share of the mixed amount that never reaches the mould. 15 % is not the same amount in both.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Extra Kind</em>' attribute.
	 * @see org.flexwright.mixing.data.Extra
	 * @see #setExtraKind(Extra)
	 * @see org.flexwright.mixing.data.MixingDataPackage#getWeighDetails_ExtraKind()
	 * @model annotation="urn:flexwright:field label='Extra is' role='planned' help='An allowance is added to the net; a loss is the share of the mixed amount that never reaches the mould. 15 % is not the same amount in both.'"
	 * @generated
	 */
	Extra getExtraKind();

	/**
	 * Sets the value of the '{@link org.flexwright.mixing.data.WeighDetails#getExtraKind <em>Extra Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Extra Kind</em>' attribute.
	 * @see org.flexwright.mixing.data.Extra
	 * @see #getExtraKind()
	 * @generated
	 */
	void setExtraKind(Extra value);

	/**
	 * Returns the value of the '<em><b>Filler</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The number as the recipe gives it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Filler</em>' attribute.
	 * @see #setFiller(Double)
	 * @see org.flexwright.mixing.data.MixingDataPackage#getWeighDetails_Filler()
	 * @model annotation="urn:flexwright:field kind='NUMBER' min='0' max='1000' label='Filler amount' role='planned' help='The number as the recipe gives it.'"
	 * @generated
	 */
	Double getFiller();

	/**
	 * Sets the value of the '{@link org.flexwright.mixing.data.WeighDetails#getFiller <em>Filler</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Filler</em>' attribute.
	 * @see #getFiller()
	 * @generated
	 */
	void setFiller(Double value);

	/**
	 * Returns the value of the '<em><b>Filler Basis</b></em>' attribute.
	 * The literals are from the enumeration {@link org.flexwright.mixing.data.FillerBasis}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * 10 on 100 g of polymer is 9.09 % of the total.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Filler Basis</em>' attribute.
	 * @see org.flexwright.mixing.data.FillerBasis
	 * @see #setFillerBasis(FillerBasis)
	 * @see org.flexwright.mixing.data.MixingDataPackage#getWeighDetails_FillerBasis()
	 * @model annotation="urn:flexwright:field label='Filler counted on' role='planned' help='10 on 100 g of polymer is 9.09 % of the total.'"
	 * @generated
	 */
	FillerBasis getFillerBasis();

	/**
	 * Sets the value of the '{@link org.flexwright.mixing.data.WeighDetails#getFillerBasis <em>Filler Basis</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Filler Basis</em>' attribute.
	 * @see org.flexwright.mixing.data.FillerBasis
	 * @see #getFillerBasis()
	 * @generated
	 */
	void setFillerBasis(FillerBasis value);

	/**
	 * Returns the value of the '<em><b>Batch Mass</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Everything in the cup together. Empty: it follows from the parts to make.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Batch Mass</em>' attribute.
	 * @see #setBatchMass(Double)
	 * @see org.flexwright.mixing.data.MixingDataPackage#getWeighDetails_BatchMass()
	 * @model annotation="urn:flexwright:field kind='MASS' unit='g' min='0' minOpen='true' max='100000' label='Batch' role='planned' help='Everything in the cup together. Empty: it follows from the parts to make.'"
	 * @generated
	 */
	Double getBatchMass();

	/**
	 * Sets the value of the '{@link org.flexwright.mixing.data.WeighDetails#getBatchMass <em>Batch Mass</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Batch Mass</em>' attribute.
	 * @see #getBatchMass()
	 * @generated
	 */
	void setBatchMass(Double value);

	/**
	 * Returns the value of the '<em><b>Index</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * NCO groups to 100 groups that react with them, water included. Empty: the ratio says it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Index</em>' attribute.
	 * @see #setIndex(Double)
	 * @see org.flexwright.mixing.data.MixingDataPackage#getWeighDetails_Index()
	 * @model annotation="urn:flexwright:field kind='NUMBER' min='80' max='130' label='Index wanted' role='planned' help='NCO groups to 100 groups that react with them, water included. Empty: the ratio says it.'"
	 * @generated
	 */
	Double getIndex();

	/**
	 * Sets the value of the '{@link org.flexwright.mixing.data.WeighDetails#getIndex <em>Index</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Index</em>' attribute.
	 * @see #getIndex()
	 * @generated
	 */
	void setIndex(Double value);

	/**
	 * Returns the value of the '<em><b>Measured Volume</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Volume of one part as measured, by water pushed aside or by mass over density; the part volume is that of the drawing.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Measured Volume</em>' attribute.
	 * @see #setMeasuredVolume(Double)
	 * @see org.flexwright.mixing.data.MixingDataPackage#getWeighDetails_MeasuredVolume()
	 * @model annotation="urn:flexwright:field kind='VOLUME' unit='ml' min='0' minOpen='true' max='100000' label='Volume of a part, measured' role='planned' help='Volume of one part as measured, by water pushed aside or by mass over density; the part volume is that of the drawing.'"
	 * @generated
	 */
	Double getMeasuredVolume();

	/**
	 * Sets the value of the '{@link org.flexwright.mixing.data.WeighDetails#getMeasuredVolume <em>Measured Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Measured Volume</em>' attribute.
	 * @see #getMeasuredVolume()
	 * @generated
	 */
	void setMeasuredVolume(Double value);

	/**
	 * Returns the value of the '<em><b>Cup Volume</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Up to the brim.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Cup Volume</em>' attribute.
	 * @see #setCupVolume(Double)
	 * @see org.flexwright.mixing.data.MixingDataPackage#getWeighDetails_CupVolume()
	 * @model annotation="urn:flexwright:field kind='VOLUME' unit='ml' min='0' minOpen='true' max='100000' label='Cup holds' role='planned' help='Up to the brim.'"
	 * @generated
	 */
	Double getCupVolume();

	/**
	 * Sets the value of the '{@link org.flexwright.mixing.data.WeighDetails#getCupVolume <em>Cup Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Cup Volume</em>' attribute.
	 * @see #getCupVolume()
	 * @generated
	 */
	void setCupVolume(Double value);

} // WeighDetails
