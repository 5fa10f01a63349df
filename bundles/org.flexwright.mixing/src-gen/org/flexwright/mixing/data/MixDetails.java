/**
 */
package org.flexwright.mixing.data;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Mix Details</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Stirring a batch.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.mixing.data.MixDetails#getPlannedMinutes <em>Planned Minutes</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.MixDetails#getMinutes <em>Minutes</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.MixDetails#getPlannedOrder <em>Planned Order</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.MixDetails#getOrder <em>Order</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.MixDetails#getTool <em>Tool</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.MixDetails#getScraped <em>Scraped</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.MixDetails#getWorkingTime <em>Working Time</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.MixDetails#getWorkingTimeRule <em>Working Time Rule</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.MixDetails#getWorkingTimeMass <em>Working Time Mass</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.MixDetails#getWorkingTimeC <em>Working Time C</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.MixDetails#getWorkingTimeGrowth <em>Working Time Growth</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.MixDetails#getWorkingTimeEnergy <em>Working Time Energy</em>}</li>
 * </ul>
 *
 * @see org.flexwright.mixing.data.MixingDataPackage#getMixDetails()
 * @model
 * @generated
 */
public interface MixDetails extends EObject {
	/**
	 * Returns the value of the '<em><b>Planned Minutes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How long it shall be stirred.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Planned Minutes</em>' attribute.
	 * @see #setPlannedMinutes(Double)
	 * @see org.flexwright.mixing.data.MixingDataPackage#getMixDetails_PlannedMinutes()
	 * @model annotation="urn:flexwright:field kind='DURATION' unit='min' min='0' max='1440' label='Mixing time' role='planned' help='How long it shall be stirred.'"
	 * @generated
	 */
	Double getPlannedMinutes();

	/**
	 * Sets the value of the '{@link org.flexwright.mixing.data.MixDetails#getPlannedMinutes <em>Planned Minutes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Planned Minutes</em>' attribute.
	 * @see #getPlannedMinutes()
	 * @generated
	 */
	void setPlannedMinutes(Double value);

	/**
	 * Returns the value of the '<em><b>Minutes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How long it was stirred.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Minutes</em>' attribute.
	 * @see #setMinutes(Double)
	 * @see org.flexwright.mixing.data.MixingDataPackage#getMixDetails_Minutes()
	 * @model annotation="urn:flexwright:field kind='DURATION' unit='min' min='0' max='1440' label='Mixing time' role='actual' of='plannedMinutes' limit='25%' help='How long it was stirred.'"
	 * @generated
	 */
	Double getMinutes();

	/**
	 * Sets the value of the '{@link org.flexwright.mixing.data.MixDetails#getMinutes <em>Minutes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Minutes</em>' attribute.
	 * @see #getMinutes()
	 * @generated
	 */
	void setMinutes(Double value);

	/**
	 * Returns the value of the '<em><b>Planned Order</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What goes in first.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Planned Order</em>' attribute.
	 * @see #setPlannedOrder(String)
	 * @see org.flexwright.mixing.data.MixingDataPackage#getMixDetails_PlannedOrder()
	 * @model annotation="urn:flexwright:field label='Order of adding' role='planned' help='What goes in first.'"
	 * @generated
	 */
	String getPlannedOrder();

	/**
	 * Sets the value of the '{@link org.flexwright.mixing.data.MixDetails#getPlannedOrder <em>Planned Order</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Planned Order</em>' attribute.
	 * @see #getPlannedOrder()
	 * @generated
	 */
	void setPlannedOrder(String value);

	/**
	 * Returns the value of the '<em><b>Order</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What went in first.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Order</em>' attribute.
	 * @see #setOrder(String)
	 * @see org.flexwright.mixing.data.MixingDataPackage#getMixDetails_Order()
	 * @model annotation="urn:flexwright:field label='Order of adding' role='actual' of='plannedOrder' help='What went in first.'"
	 * @generated
	 */
	String getOrder();

	/**
	 * Sets the value of the '{@link org.flexwright.mixing.data.MixDetails#getOrder <em>Order</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Order</em>' attribute.
	 * @see #getOrder()
	 * @generated
	 */
	void setOrder(String value);

	/**
	 * Returns the value of the '<em><b>Tool</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What it is stirred with.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Tool</em>' attribute.
	 * @see #setTool(String)
	 * @see org.flexwright.mixing.data.MixingDataPackage#getMixDetails_Tool()
	 * @model annotation="urn:flexwright:field label='Tool' role='planned' help='What it is stirred with.'"
	 * @generated
	 */
	String getTool();

	/**
	 * Sets the value of the '{@link org.flexwright.mixing.data.MixDetails#getTool <em>Tool</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Tool</em>' attribute.
	 * @see #getTool()
	 * @generated
	 */
	void setTool(String value);

	/**
	 * Returns the value of the '<em><b>Scraped</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Unmixed resin at the wall gives tacky or soft spots.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Scraped</em>' attribute.
	 * @see #setScraped(Boolean)
	 * @see org.flexwright.mixing.data.MixingDataPackage#getMixDetails_Scraped()
	 * @model annotation="urn:flexwright:field label='Walls and bottom scraped' role='actual' help='Unmixed resin at the wall gives tacky or soft spots.'"
	 * @generated
	 */
	Boolean getScraped();

	/**
	 * Sets the value of the '{@link org.flexwright.mixing.data.MixDetails#getScraped <em>Scraped</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Scraped</em>' attribute.
	 * @see #getScraped()
	 * @generated
	 */
	void setScraped(Boolean value);

	/**
	 * Returns the value of the '<em><b>Working Time</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Also called pot life.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Working Time</em>' attribute.
	 * @see #setWorkingTime(Double)
	 * @see org.flexwright.mixing.data.MixingDataPackage#getMixDetails_WorkingTime()
	 * @model annotation="urn:flexwright:field kind='DURATION' unit='min' min='0' max='10000' label='Working time on the sheet' role='planned' help='Also called pot life.'"
	 * @generated
	 */
	Double getWorkingTime();

	/**
	 * Sets the value of the '{@link org.flexwright.mixing.data.MixDetails#getWorkingTime <em>Working Time</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Working Time</em>' attribute.
	 * @see #getWorkingTime()
	 * @generated
	 */
	void setWorkingTime(Double value);

	/**
	 * Returns the value of the '<em><b>Working Time Rule</b></em>' attribute.
	 * The literals are from the enumeration {@link org.flexwright.mixing.data.WorkingTimeRule}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Sheets end it differently; without this two working times cannot be compared.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Working Time Rule</em>' attribute.
	 * @see org.flexwright.mixing.data.WorkingTimeRule
	 * @see #setWorkingTimeRule(WorkingTimeRule)
	 * @see org.flexwright.mixing.data.MixingDataPackage#getMixDetails_WorkingTimeRule()
	 * @model annotation="urn:flexwright:field label='Working time ends when' role='planned' help='Sheets end it differently; without this two working times cannot be compared.'"
	 * @generated
	 */
	WorkingTimeRule getWorkingTimeRule();

	/**
	 * Sets the value of the '{@link org.flexwright.mixing.data.MixDetails#getWorkingTimeRule <em>Working Time Rule</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Working Time Rule</em>' attribute.
	 * @see org.flexwright.mixing.data.WorkingTimeRule
	 * @see #getWorkingTimeRule()
	 * @generated
	 */
	void setWorkingTimeRule(WorkingTimeRule value);

	/**
	 * Returns the value of the '<em><b>Working Time Mass</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Amount in the cup it was measured with: a bigger cup runs hotter and shorter.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Working Time Mass</em>' attribute.
	 * @see #setWorkingTimeMass(Double)
	 * @see org.flexwright.mixing.data.MixingDataPackage#getMixDetails_WorkingTimeMass()
	 * @model annotation="urn:flexwright:field kind='MASS' unit='g' min='0' max='100000' label='Working time holds for' role='planned' help='Amount in the cup it was measured with: a bigger cup runs hotter and shorter.'"
	 * @generated
	 */
	Double getWorkingTimeMass();

	/**
	 * Sets the value of the '{@link org.flexwright.mixing.data.MixDetails#getWorkingTimeMass <em>Working Time Mass</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Working Time Mass</em>' attribute.
	 * @see #getWorkingTimeMass()
	 * @generated
	 */
	void setWorkingTimeMass(Double value);

	/**
	 * Returns the value of the '<em><b>Working Time C</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Temperature it was measured at.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Working Time C</em>' attribute.
	 * @see #setWorkingTimeC(Double)
	 * @see org.flexwright.mixing.data.MixingDataPackage#getMixDetails_WorkingTimeC()
	 * @model annotation="urn:flexwright:field kind='TEMPERATURE' unit='degC' min='-20' max='150' label='Working time at' role='planned' help='Temperature it was measured at.'"
	 * @generated
	 */
	Double getWorkingTimeC();

	/**
	 * Sets the value of the '{@link org.flexwright.mixing.data.MixDetails#getWorkingTimeC <em>Working Time C</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Working Time C</em>' attribute.
	 * @see #getWorkingTimeC()
	 * @generated
	 */
	void setWorkingTimeC(Double value);

	/**
	 * Returns the value of the '<em><b>Working Time Growth</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How many times thicker the mixture is by then, where a growth of viscosity ends it otherwise than by doubling.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Working Time Growth</em>' attribute.
	 * @see #setWorkingTimeGrowth(Double)
	 * @see org.flexwright.mixing.data.MixingDataPackage#getMixDetails_WorkingTimeGrowth()
	 * @model annotation="urn:flexwright:field kind='NUMBER' min='1' minOpen='true' max='1000' label='Thicker by then, times' role='planned' help='How many times thicker the mixture is by then, where a growth of viscosity ends it otherwise than by doubling.'"
	 * @generated
	 */
	Double getWorkingTimeGrowth();

	/**
	 * Sets the value of the '{@link org.flexwright.mixing.data.MixDetails#getWorkingTimeGrowth <em>Working Time Growth</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Working Time Growth</em>' attribute.
	 * @see #getWorkingTimeGrowth()
	 * @generated
	 */
	void setWorkingTimeGrowth(Double value);

	/**
	 * Returns the value of the '<em><b>Working Time Energy</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Own activation energy of this mixture; empty: 35 to 75 kJ/mol is taken, 50 as likely.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Working Time Energy</em>' attribute.
	 * @see #setWorkingTimeEnergy(Double)
	 * @see org.flexwright.mixing.data.MixingDataPackage#getMixDetails_WorkingTimeEnergy()
	 * @model annotation="urn:flexwright:field kind='MOLAR_ENERGY' unit='kJ/mol' min='10' max='200' label='Activation energy' role='planned' help='Own activation energy of this mixture; empty: 35 to 75 kJ/mol is taken, 50 as likely.'"
	 * @generated
	 */
	Double getWorkingTimeEnergy();

	/**
	 * Sets the value of the '{@link org.flexwright.mixing.data.MixDetails#getWorkingTimeEnergy <em>Working Time Energy</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Working Time Energy</em>' attribute.
	 * @see #getWorkingTimeEnergy()
	 * @generated
	 */
	void setWorkingTimeEnergy(Double value);

} // MixDetails
