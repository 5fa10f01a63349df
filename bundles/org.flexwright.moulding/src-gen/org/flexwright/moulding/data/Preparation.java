/**
 */
package org.flexwright.moulding.data;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Preparation</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What is done to the mould before it is filled.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.moulding.data.Preparation#getMouldMaterial <em>Mould Material</em>}</li>
 *   <li>{@link org.flexwright.moulding.data.Preparation#getPlannedTreatment <em>Planned Treatment</em>}</li>
 *   <li>{@link org.flexwright.moulding.data.Preparation#getActualTreatment <em>Actual Treatment</em>}</li>
 *   <li>{@link org.flexwright.moulding.data.Preparation#getPlannedDryHours <em>Planned Dry Hours</em>}</li>
 *   <li>{@link org.flexwright.moulding.data.Preparation#getActualDryHours <em>Actual Dry Hours</em>}</li>
 *   <li>{@link org.flexwright.moulding.data.Preparation#getPlannedTemperature <em>Planned Temperature</em>}</li>
 *   <li>{@link org.flexwright.moulding.data.Preparation#getActualTemperature <em>Actual Temperature</em>}</li>
 *   <li>{@link org.flexwright.moulding.data.Preparation#getRelease <em>Release</em>}</li>
 *   <li>{@link org.flexwright.moulding.data.Preparation#getCastsSoFar <em>Casts So Far</em>}</li>
 *   <li>{@link org.flexwright.moulding.data.Preparation#getCastsLimit <em>Casts Limit</em>}</li>
 * </ul>
 *
 * @see org.flexwright.moulding.data.MouldingDataPackage#getPreparation()
 * @model
 * @generated
 */
public interface Preparation extends EObject {
	/**
	 * Returns the value of the '<em><b>Mould Material</b></em>' attribute.
	 * The literals are from the enumeration {@link org.flexwright.moulding.data.MouldMaterial}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Mould Material</em>' attribute.
	 * @see org.flexwright.moulding.data.MouldMaterial
	 * @see #setMouldMaterial(MouldMaterial)
	 * @see org.flexwright.moulding.data.MouldingDataPackage#getPreparation_MouldMaterial()
	 * @model annotation="urn:flexwright:field label='Mould made of' role='planned' help='Decides what the mould may do to the cure.'"
	 * @generated
	 */
	MouldMaterial getMouldMaterial();

	/**
	 * Sets the value of the '{@link org.flexwright.moulding.data.Preparation#getMouldMaterial <em>Mould Material</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Mould Material</em>' attribute.
	 * @see org.flexwright.moulding.data.MouldMaterial
	 * @see #getMouldMaterial()
	 * @generated
	 */
	void setMouldMaterial(MouldMaterial value);

	/**
	 * Returns the value of the '<em><b>Planned Treatment</b></em>' attribute.
	 * The literals are from the enumeration {@link org.flexwright.moulding.data.MouldTreatment}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Planned Treatment</em>' attribute.
	 * @see org.flexwright.moulding.data.MouldTreatment
	 * @see #setPlannedTreatment(MouldTreatment)
	 * @see org.flexwright.moulding.data.MouldingDataPackage#getPreparation_PlannedTreatment()
	 * @model annotation="urn:flexwright:field label='Treatment' role='planned' help='Washed, baked, coated with a barrier, or nothing.'"
	 * @generated
	 */
	MouldTreatment getPlannedTreatment();

	/**
	 * Sets the value of the '{@link org.flexwright.moulding.data.Preparation#getPlannedTreatment <em>Planned Treatment</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Planned Treatment</em>' attribute.
	 * @see org.flexwright.moulding.data.MouldTreatment
	 * @see #getPlannedTreatment()
	 * @generated
	 */
	void setPlannedTreatment(MouldTreatment value);

	/**
	 * Returns the value of the '<em><b>Actual Treatment</b></em>' attribute.
	 * The literals are from the enumeration {@link org.flexwright.moulding.data.MouldTreatment}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Actual Treatment</em>' attribute.
	 * @see org.flexwright.moulding.data.MouldTreatment
	 * @see #setActualTreatment(MouldTreatment)
	 * @see org.flexwright.moulding.data.MouldingDataPackage#getPreparation_ActualTreatment()
	 * @model annotation="urn:flexwright:field label='Treatment done' role='actual' of='plannedTreatment' help='What was really done to the mould face.'"
	 * @generated
	 */
	MouldTreatment getActualTreatment();

	/**
	 * Sets the value of the '{@link org.flexwright.moulding.data.Preparation#getActualTreatment <em>Actual Treatment</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Actual Treatment</em>' attribute.
	 * @see org.flexwright.moulding.data.MouldTreatment
	 * @see #getActualTreatment()
	 * @generated
	 */
	void setActualTreatment(MouldTreatment value);

	/**
	 * Returns the value of the '<em><b>Planned Dry Hours</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Planned Dry Hours</em>' attribute.
	 * @see #setPlannedDryHours(Double)
	 * @see org.flexwright.moulding.data.MouldingDataPackage#getPreparation_PlannedDryHours()
	 * @model annotation="urn:flexwright:field kind='DURATION' unit='h' min='0' max='1000' label='Drying' role='planned' help='Hours the mould is to dry warm before casting.'"
	 * @generated
	 */
	Double getPlannedDryHours();

	/**
	 * Sets the value of the '{@link org.flexwright.moulding.data.Preparation#getPlannedDryHours <em>Planned Dry Hours</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Planned Dry Hours</em>' attribute.
	 * @see #getPlannedDryHours()
	 * @generated
	 */
	void setPlannedDryHours(Double value);

	/**
	 * Returns the value of the '<em><b>Actual Dry Hours</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Actual Dry Hours</em>' attribute.
	 * @see #setActualDryHours(Double)
	 * @see org.flexwright.moulding.data.MouldingDataPackage#getPreparation_ActualDryHours()
	 * @model annotation="urn:flexwright:field kind='DURATION' unit='h' min='0' max='1000' label='Dried for' role='actual' of='plannedDryHours' limit='25%' help='Hours the mould really dried.'"
	 * @generated
	 */
	Double getActualDryHours();

	/**
	 * Sets the value of the '{@link org.flexwright.moulding.data.Preparation#getActualDryHours <em>Actual Dry Hours</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Actual Dry Hours</em>' attribute.
	 * @see #getActualDryHours()
	 * @generated
	 */
	void setActualDryHours(Double value);

	/**
	 * Returns the value of the '<em><b>Planned Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Planned Temperature</em>' attribute.
	 * @see #setPlannedTemperature(Double)
	 * @see org.flexwright.moulding.data.MouldingDataPackage#getPreparation_PlannedTemperature()
	 * @model annotation="urn:flexwright:field kind='TEMPERATURE' unit='degC' min='-20' max='200' label='Mould temperature' role='planned' help='Of the mould itself when it is filled, not of the room.'"
	 * @generated
	 */
	Double getPlannedTemperature();

	/**
	 * Sets the value of the '{@link org.flexwright.moulding.data.Preparation#getPlannedTemperature <em>Planned Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Planned Temperature</em>' attribute.
	 * @see #getPlannedTemperature()
	 * @generated
	 */
	void setPlannedTemperature(Double value);

	/**
	 * Returns the value of the '<em><b>Actual Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Actual Temperature</em>' attribute.
	 * @see #setActualTemperature(Double)
	 * @see org.flexwright.moulding.data.MouldingDataPackage#getPreparation_ActualTemperature()
	 * @model annotation="urn:flexwright:field kind='TEMPERATURE' unit='degC' min='-20' max='200' label='Mould temperature read' role='actual' of='plannedTemperature' limit='3 K' help='Read on the mould just before filling.'"
	 * @generated
	 */
	Double getActualTemperature();

	/**
	 * Sets the value of the '{@link org.flexwright.moulding.data.Preparation#getActualTemperature <em>Actual Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Actual Temperature</em>' attribute.
	 * @see #getActualTemperature()
	 * @generated
	 */
	void setActualTemperature(Double value);

	/**
	 * Returns the value of the '<em><b>Release</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Release</em>' attribute.
	 * @see #setRelease(String)
	 * @see org.flexwright.moulding.data.MouldingDataPackage#getPreparation_Release()
	 * @model annotation="urn:flexwright:field label='Release' role='planned' help='Release agent and how it was put on; empty when none.'"
	 * @generated
	 */
	String getRelease();

	/**
	 * Sets the value of the '{@link org.flexwright.moulding.data.Preparation#getRelease <em>Release</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Release</em>' attribute.
	 * @see #getRelease()
	 * @generated
	 */
	void setRelease(String value);

	/**
	 * Returns the value of the '<em><b>Casts So Far</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Casts So Far</em>' attribute.
	 * @see #setCastsSoFar(Integer)
	 * @see org.flexwright.moulding.data.MouldingDataPackage#getPreparation_CastsSoFar()
	 * @model annotation="urn:flexwright:field min='0' max='1000000' label='Casts so far' help='How often this mould was filled before.'"
	 * @generated
	 */
	Integer getCastsSoFar();

	/**
	 * Sets the value of the '{@link org.flexwright.moulding.data.Preparation#getCastsSoFar <em>Casts So Far</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Casts So Far</em>' attribute.
	 * @see #getCastsSoFar()
	 * @generated
	 */
	void setCastsSoFar(Integer value);

	/**
	 * Returns the value of the '<em><b>Casts Limit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Casts Limit</em>' attribute.
	 * @see #setCastsLimit(Integer)
	 * @see org.flexwright.moulding.data.MouldingDataPackage#getPreparation_CastsLimit()
	 * @model annotation="urn:flexwright:field min='1' max='1000000' label='Own limit of casts' role='planned' help='After how many casts you want to look at the mould again.'"
	 * @generated
	 */
	Integer getCastsLimit();

	/**
	 * Sets the value of the '{@link org.flexwright.moulding.data.Preparation#getCastsLimit <em>Casts Limit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Casts Limit</em>' attribute.
	 * @see #getCastsLimit()
	 * @generated
	 */
	void setCastsLimit(Integer value);

} // Preparation
