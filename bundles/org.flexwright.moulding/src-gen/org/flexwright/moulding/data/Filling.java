/**
 */
package org.flexwright.moulding.data;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Filling</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * How the mix gets into the mould, and how long that takes against its working time.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.moulding.data.Filling#getMethod <em>Method</em>}</li>
 *   <li>{@link org.flexwright.moulding.data.Filling#getPlannedFillMinutes <em>Planned Fill Minutes</em>}</li>
 *   <li>{@link org.flexwright.moulding.data.Filling#getActualFillMinutes <em>Actual Fill Minutes</em>}</li>
 *   <li>{@link org.flexwright.moulding.data.Filling#getWorkingMinutes <em>Working Minutes</em>}</li>
 *   <li>{@link org.flexwright.moulding.data.Filling#getWorkingDefinition <em>Working Definition</em>}</li>
 *   <li>{@link org.flexwright.moulding.data.Filling#getWorkingGrowth <em>Working Growth</em>}</li>
 *   <li>{@link org.flexwright.moulding.data.Filling#getViscosity <em>Viscosity</em>}</li>
 *   <li>{@link org.flexwright.moulding.data.Filling#getGateRadius <em>Gate Radius</em>}</li>
 *   <li>{@link org.flexwright.moulding.data.Filling#getGateLength <em>Gate Length</em>}</li>
 *   <li>{@link org.flexwright.moulding.data.Filling#getPlannedPressure <em>Planned Pressure</em>}</li>
 *   <li>{@link org.flexwright.moulding.data.Filling#getActualPressure <em>Actual Pressure</em>}</li>
 *   <li>{@link org.flexwright.moulding.data.Filling#getPartVolume <em>Part Volume</em>}</li>
 * </ul>
 *
 * @see org.flexwright.moulding.data.MouldingDataPackage#getFilling()
 * @model
 * @generated
 */
public interface Filling extends EObject {
	/**
	 * Returns the value of the '<em><b>Method</b></em>' attribute.
	 * The literals are from the enumeration {@link org.flexwright.moulding.data.FillMethod}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Method</em>' attribute.
	 * @see org.flexwright.moulding.data.FillMethod
	 * @see #setMethod(FillMethod)
	 * @see org.flexwright.moulding.data.MouldingDataPackage#getFilling_Method()
	 * @model annotation="urn:flexwright:field label='Filled by' role='planned' help='Poured under its own weight, or pressed in.'"
	 * @generated
	 */
	FillMethod getMethod();

	/**
	 * Sets the value of the '{@link org.flexwright.moulding.data.Filling#getMethod <em>Method</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Method</em>' attribute.
	 * @see org.flexwright.moulding.data.FillMethod
	 * @see #getMethod()
	 * @generated
	 */
	void setMethod(FillMethod value);

	/**
	 * Returns the value of the '<em><b>Planned Fill Minutes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Planned Fill Minutes</em>' attribute.
	 * @see #setPlannedFillMinutes(Double)
	 * @see org.flexwright.moulding.data.MouldingDataPackage#getFilling_PlannedFillMinutes()
	 * @model annotation="urn:flexwright:field kind='DURATION' unit='min' min='0' max='1440' label='Fill time' role='planned' help='From the first drop into the mould to full.'"
	 * @generated
	 */
	Double getPlannedFillMinutes();

	/**
	 * Sets the value of the '{@link org.flexwright.moulding.data.Filling#getPlannedFillMinutes <em>Planned Fill Minutes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Planned Fill Minutes</em>' attribute.
	 * @see #getPlannedFillMinutes()
	 * @generated
	 */
	void setPlannedFillMinutes(Double value);

	/**
	 * Returns the value of the '<em><b>Actual Fill Minutes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Actual Fill Minutes</em>' attribute.
	 * @see #setActualFillMinutes(Double)
	 * @see org.flexwright.moulding.data.MouldingDataPackage#getFilling_ActualFillMinutes()
	 * @model annotation="urn:flexwright:field kind='DURATION' unit='min' min='0' max='1440' label='Fill time taken' role='actual' of='plannedFillMinutes' limit='25%' help='As timed.'"
	 * @generated
	 */
	Double getActualFillMinutes();

	/**
	 * Sets the value of the '{@link org.flexwright.moulding.data.Filling#getActualFillMinutes <em>Actual Fill Minutes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Actual Fill Minutes</em>' attribute.
	 * @see #getActualFillMinutes()
	 * @generated
	 */
	void setActualFillMinutes(Double value);

	/**
	 * Returns the value of the '<em><b>Working Minutes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Working Minutes</em>' attribute.
	 * @see #setWorkingMinutes(Double)
	 * @see org.flexwright.moulding.data.MouldingDataPackage#getFilling_WorkingMinutes()
	 * @model annotation="urn:flexwright:field kind='DURATION' unit='min' min='0' max='1440' label='Working time of the mix' role='planned' help='Time in which the mix can still be poured, for this amount and temperature.'"
	 * @generated
	 */
	Double getWorkingMinutes();

	/**
	 * Sets the value of the '{@link org.flexwright.moulding.data.Filling#getWorkingMinutes <em>Working Minutes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Working Minutes</em>' attribute.
	 * @see #getWorkingMinutes()
	 * @generated
	 */
	void setWorkingMinutes(Double value);

	/**
	 * Returns the value of the '<em><b>Working Definition</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Working Definition</em>' attribute.
	 * @see #setWorkingDefinition(String)
	 * @see org.flexwright.moulding.data.MouldingDataPackage#getFilling_WorkingDefinition()
	 * @model annotation="urn:flexwright:field label='Working time means' role='planned' help='How the sheet defines it: amount, temperature, what has changed by then. Definitions differ.'"
	 * @generated
	 */
	String getWorkingDefinition();

	/**
	 * Sets the value of the '{@link org.flexwright.moulding.data.Filling#getWorkingDefinition <em>Working Definition</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Working Definition</em>' attribute.
	 * @see #getWorkingDefinition()
	 * @generated
	 */
	void setWorkingDefinition(String value);

	/**
	 * Returns the value of the '<em><b>Working Growth</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Working Growth</em>' attribute.
	 * @see #setWorkingGrowth(Double)
	 * @see org.flexwright.moulding.data.MouldingDataPackage#getFilling_WorkingGrowth()
	 * @model annotation="urn:flexwright:field kind='NUMBER' min='1' max='1000' label='Thickens by then' role='planned' help='How many times thicker the mix is at the end of the working time; 2 when it means doubling.' def='2'"
	 * @generated
	 */
	Double getWorkingGrowth();

	/**
	 * Sets the value of the '{@link org.flexwright.moulding.data.Filling#getWorkingGrowth <em>Working Growth</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Working Growth</em>' attribute.
	 * @see #getWorkingGrowth()
	 * @generated
	 */
	void setWorkingGrowth(Double value);

	/**
	 * Returns the value of the '<em><b>Viscosity</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Viscosity</em>' attribute.
	 * @see #setViscosity(Double)
	 * @see org.flexwright.moulding.data.MouldingDataPackage#getFilling_Viscosity()
	 * @model annotation="urn:flexwright:field kind='VISCOSITY' unit='Pa s' min='0' max='10000' label='Viscosity, fresh' role='planned' help='Of the mix right after mixing, at its temperature.'"
	 * @generated
	 */
	Double getViscosity();

	/**
	 * Sets the value of the '{@link org.flexwright.moulding.data.Filling#getViscosity <em>Viscosity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Viscosity</em>' attribute.
	 * @see #getViscosity()
	 * @generated
	 */
	void setViscosity(Double value);

	/**
	 * Returns the value of the '<em><b>Gate Radius</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Gate Radius</em>' attribute.
	 * @see #setGateRadius(Double)
	 * @see org.flexwright.moulding.data.MouldingDataPackage#getFilling_GateRadius()
	 * @model annotation="urn:flexwright:field kind='LENGTH' unit='mm' min='0' max='100' label='Gate radius' role='planned' help='Half the bore of the round channel the mix flows through.'"
	 * @generated
	 */
	Double getGateRadius();

	/**
	 * Sets the value of the '{@link org.flexwright.moulding.data.Filling#getGateRadius <em>Gate Radius</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Gate Radius</em>' attribute.
	 * @see #getGateRadius()
	 * @generated
	 */
	void setGateRadius(Double value);

	/**
	 * Returns the value of the '<em><b>Gate Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Gate Length</em>' attribute.
	 * @see #setGateLength(Double)
	 * @see org.flexwright.moulding.data.MouldingDataPackage#getFilling_GateLength()
	 * @model annotation="urn:flexwright:field kind='LENGTH' unit='mm' min='0' max='2000' label='Gate length' role='planned' help='Length of that channel.'"
	 * @generated
	 */
	Double getGateLength();

	/**
	 * Sets the value of the '{@link org.flexwright.moulding.data.Filling#getGateLength <em>Gate Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Gate Length</em>' attribute.
	 * @see #getGateLength()
	 * @generated
	 */
	void setGateLength(Double value);

	/**
	 * Returns the value of the '<em><b>Planned Pressure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Planned Pressure</em>' attribute.
	 * @see #setPlannedPressure(Double)
	 * @see org.flexwright.moulding.data.MouldingDataPackage#getFilling_PlannedPressure()
	 * @model annotation="urn:flexwright:field kind='PRESSURE_GAUGE' unit='kPa gauge' min='0' max='1000' label='Pressure' role='planned' help='Above the surrounding air: plunger, pot or the head of liquid.'"
	 * @generated
	 */
	Double getPlannedPressure();

	/**
	 * Sets the value of the '{@link org.flexwright.moulding.data.Filling#getPlannedPressure <em>Planned Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Planned Pressure</em>' attribute.
	 * @see #getPlannedPressure()
	 * @generated
	 */
	void setPlannedPressure(Double value);

	/**
	 * Returns the value of the '<em><b>Actual Pressure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Actual Pressure</em>' attribute.
	 * @see #setActualPressure(Double)
	 * @see org.flexwright.moulding.data.MouldingDataPackage#getFilling_ActualPressure()
	 * @model annotation="urn:flexwright:field kind='PRESSURE_GAUGE' unit='kPa gauge' min='0' max='1000' label='Pressure used' role='actual' of='plannedPressure' limit='20%' help='Above the surrounding air.'"
	 * @generated
	 */
	Double getActualPressure();

	/**
	 * Sets the value of the '{@link org.flexwright.moulding.data.Filling#getActualPressure <em>Actual Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Actual Pressure</em>' attribute.
	 * @see #getActualPressure()
	 * @generated
	 */
	void setActualPressure(Double value);

	/**
	 * Returns the value of the '<em><b>Part Volume</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Part Volume</em>' attribute.
	 * @see #setPartVolume(Double)
	 * @see org.flexwright.moulding.data.MouldingDataPackage#getFilling_PartVolume()
	 * @model annotation="urn:flexwright:field kind='VOLUME' unit='cm3' min='0' max='100000' label='Volume to fill' role='planned' help='All cavities with gate and sprue.'"
	 * @generated
	 */
	Double getPartVolume();

	/**
	 * Sets the value of the '{@link org.flexwright.moulding.data.Filling#getPartVolume <em>Part Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Part Volume</em>' attribute.
	 * @see #getPartVolume()
	 * @generated
	 */
	void setPartVolume(Double value);

} // Filling
