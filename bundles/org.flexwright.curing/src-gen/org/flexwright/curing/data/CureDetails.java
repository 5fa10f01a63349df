/**
 */
package org.flexwright.curing.data;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Cure Details</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Letting a part cure.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.curing.data.CureDetails#getBy <em>By</em>}</li>
 *   <li>{@link org.flexwright.curing.data.CureDetails#getPlannedHours <em>Planned Hours</em>}</li>
 *   <li>{@link org.flexwright.curing.data.CureDetails#getHours <em>Hours</em>}</li>
 *   <li>{@link org.flexwright.curing.data.CureDetails#getPlannedC <em>Planned C</em>}</li>
 *   <li>{@link org.flexwright.curing.data.CureDetails#getCelsius <em>Celsius</em>}</li>
 *   <li>{@link org.flexwright.curing.data.CureDetails#getPlannedStages <em>Planned Stages</em>}</li>
 *   <li>{@link org.flexwright.curing.data.CureDetails#getStages <em>Stages</em>}</li>
 *   <li>{@link org.flexwright.curing.data.CureDetails#getLamp <em>Lamp</em>}</li>
 *   <li>{@link org.flexwright.curing.data.CureDetails#getActivationEnergy <em>Activation Energy</em>}</li>
 * </ul>
 *
 * @see org.flexwright.curing.data.CuringDataPackage#getCureDetails()
 * @model
 * @generated
 */
public interface CureDetails extends EObject {
	/**
	 * Returns the value of the '<em><b>By</b></em>' attribute.
	 * The literals are from the enumeration {@link org.flexwright.curing.data.CureBy}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Room temperature, an oven, or a lamp.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>By</em>' attribute.
	 * @see org.flexwright.curing.data.CureBy
	 * @see #setBy(CureBy)
	 * @see org.flexwright.curing.data.CuringDataPackage#getCureDetails_By()
	 * @model annotation="urn:flexwright:field label='Cured by' role='planned' help='Room temperature, an oven, or a lamp.'"
	 * @generated
	 */
	CureBy getBy();

	/**
	 * Sets the value of the '{@link org.flexwright.curing.data.CureDetails#getBy <em>By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>By</em>' attribute.
	 * @see org.flexwright.curing.data.CureBy
	 * @see #getBy()
	 * @generated
	 */
	void setBy(CureBy value);

	/**
	 * Returns the value of the '<em><b>Planned Hours</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * For one temperature all through; leave empty when stretches are given.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Planned Hours</em>' attribute.
	 * @see #setPlannedHours(Double)
	 * @see org.flexwright.curing.data.CuringDataPackage#getCureDetails_PlannedHours()
	 * @model annotation="urn:flexwright:field kind='DURATION' unit='h' min='0' max='10000' label='Cure time' role='planned' help='For one temperature all through; leave empty when stretches are given.'"
	 * @generated
	 */
	Double getPlannedHours();

	/**
	 * Sets the value of the '{@link org.flexwright.curing.data.CureDetails#getPlannedHours <em>Planned Hours</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Planned Hours</em>' attribute.
	 * @see #getPlannedHours()
	 * @generated
	 */
	void setPlannedHours(Double value);

	/**
	 * Returns the value of the '<em><b>Hours</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * For one temperature all through.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Hours</em>' attribute.
	 * @see #setHours(Double)
	 * @see org.flexwright.curing.data.CuringDataPackage#getCureDetails_Hours()
	 * @model annotation="urn:flexwright:field kind='DURATION' unit='h' min='0' max='10000' label='Cure time' role='actual' of='plannedHours' limit='10%' help='For one temperature all through.'"
	 * @generated
	 */
	Double getHours();

	/**
	 * Sets the value of the '{@link org.flexwright.curing.data.CureDetails#getHours <em>Hours</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Hours</em>' attribute.
	 * @see #getHours()
	 * @generated
	 */
	void setHours(Double value);

	/**
	 * Returns the value of the '<em><b>Planned C</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * In the part, not of the oven's dial.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Planned C</em>' attribute.
	 * @see #setPlannedC(Double)
	 * @see org.flexwright.curing.data.CuringDataPackage#getCureDetails_PlannedC()
	 * @model annotation="urn:flexwright:field kind='TEMPERATURE' unit='degC' min='-40' max='300' label='Cure temperature' role='planned' help='In the part, not of the oven\'s dial.'"
	 * @generated
	 */
	Double getPlannedC();

	/**
	 * Sets the value of the '{@link org.flexwright.curing.data.CureDetails#getPlannedC <em>Planned C</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Planned C</em>' attribute.
	 * @see #getPlannedC()
	 * @generated
	 */
	void setPlannedC(Double value);

	/**
	 * Returns the value of the '<em><b>Celsius</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * In the part, not of the oven's dial.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Celsius</em>' attribute.
	 * @see #setCelsius(Double)
	 * @see org.flexwright.curing.data.CuringDataPackage#getCureDetails_Celsius()
	 * @model annotation="urn:flexwright:field kind='TEMPERATURE' unit='degC' min='-40' max='300' label='Cure temperature' role='actual' of='plannedC' limit='3 K' help='In the part, not of the oven\'s dial.'"
	 * @generated
	 */
	Double getCelsius();

	/**
	 * Sets the value of the '{@link org.flexwright.curing.data.CureDetails#getCelsius <em>Celsius</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Celsius</em>' attribute.
	 * @see #getCelsius()
	 * @generated
	 */
	void setCelsius(Double value);

	/**
	 * Returns the value of the '<em><b>Planned Stages</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.curing.data.CureStage}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * For a schedule of several temperatures.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Planned Stages</em>' containment reference list.
	 * @see org.flexwright.curing.data.CuringDataPackage#getCureDetails_PlannedStages()
	 * @model containment="true"
	 *        annotation="urn:flexwright:field label='Stretches' role='planned' help='For a schedule of several temperatures.'"
	 * @generated
	 */
	EList<CureStage> getPlannedStages();

	/**
	 * Returns the value of the '<em><b>Stages</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.curing.data.CureStage}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What it really went through.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Stages</em>' containment reference list.
	 * @see org.flexwright.curing.data.CuringDataPackage#getCureDetails_Stages()
	 * @model containment="true"
	 *        annotation="urn:flexwright:field label='Stretches' role='actual' of='plannedStages' help='What it really went through.'"
	 * @generated
	 */
	EList<CureStage> getStages();

	/**
	 * Returns the value of the '<em><b>Lamp</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Wavelength and distance, for a lamp cure.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Lamp</em>' attribute.
	 * @see #setLamp(String)
	 * @see org.flexwright.curing.data.CuringDataPackage#getCureDetails_Lamp()
	 * @model annotation="urn:flexwright:field label='Lamp' role='planned' help='Wavelength and distance, for a lamp cure.'"
	 * @generated
	 */
	String getLamp();

	/**
	 * Sets the value of the '{@link org.flexwright.curing.data.CureDetails#getLamp <em>Lamp</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Lamp</em>' attribute.
	 * @see #getLamp()
	 * @generated
	 */
	void setLamp(String value);

	/**
	 * Returns the value of the '<em><b>Activation Energy</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Own value, if known; 35 to 75 is usual for urethanes and 50 is assumed.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Activation Energy</em>' attribute.
	 * @see #setActivationEnergy(Double)
	 * @see org.flexwright.curing.data.CuringDataPackage#getCureDetails_ActivationEnergy()
	 * @model annotation="urn:flexwright:field kind='MOLAR_ENERGY' unit='kJ/mol' min='10' max='200' label='Activation energy' role='planned' help='Own value, if known; 35 to 75 is usual for urethanes and 50 is assumed.'"
	 * @generated
	 */
	Double getActivationEnergy();

	/**
	 * Sets the value of the '{@link org.flexwright.curing.data.CureDetails#getActivationEnergy <em>Activation Energy</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Activation Energy</em>' attribute.
	 * @see #getActivationEnergy()
	 * @generated
	 */
	void setActivationEnergy(Double value);

} // CureDetails
