/**
 */
package org.flexwright.mixing.data;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Degas Details</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Pulling air out of a mixture.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.mixing.data.DegasDetails#getPlannedMinutes <em>Planned Minutes</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.DegasDetails#getMinutes <em>Minutes</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.DegasDetails#getPlannedPressure <em>Planned Pressure</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.DegasDetails#getPressure <em>Pressure</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.DegasDetails#getCupVolume <em>Cup Volume</em>}</li>
 *   <li>{@link org.flexwright.mixing.data.DegasDetails#getMixVolume <em>Mix Volume</em>}</li>
 * </ul>
 *
 * @see org.flexwright.mixing.data.MixingDataPackage#getDegasDetails()
 * @model
 * @generated
 */
public interface DegasDetails extends EObject {
	/**
	 * Returns the value of the '<em><b>Planned Minutes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * From reaching the pressure to letting air in.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Planned Minutes</em>' attribute.
	 * @see #setPlannedMinutes(Double)
	 * @see org.flexwright.mixing.data.MixingDataPackage#getDegasDetails_PlannedMinutes()
	 * @model annotation="urn:flexwright:field kind='DURATION' unit='min' min='0' max='1440' label='Time under vacuum' role='planned' help='From reaching the pressure to letting air in.'"
	 * @generated
	 */
	Double getPlannedMinutes();

	/**
	 * Sets the value of the '{@link org.flexwright.mixing.data.DegasDetails#getPlannedMinutes <em>Planned Minutes</em>}' attribute.
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
	 * From reaching the pressure to letting air in.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Minutes</em>' attribute.
	 * @see #setMinutes(Double)
	 * @see org.flexwright.mixing.data.MixingDataPackage#getDegasDetails_Minutes()
	 * @model annotation="urn:flexwright:field kind='DURATION' unit='min' min='0' max='1440' label='Time under vacuum' role='actual' of='plannedMinutes' limit='25%' help='From reaching the pressure to letting air in.'"
	 * @generated
	 */
	Double getMinutes();

	/**
	 * Sets the value of the '{@link org.flexwright.mixing.data.DegasDetails#getMinutes <em>Minutes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Minutes</em>' attribute.
	 * @see #getMinutes()
	 * @generated
	 */
	void setMinutes(Double value);

	/**
	 * Returns the value of the '<em><b>Planned Pressure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Not the reading below the room: 0 is a perfect vacuum.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Planned Pressure</em>' attribute.
	 * @see #setPlannedPressure(Double)
	 * @see org.flexwright.mixing.data.MixingDataPackage#getDegasDetails_PlannedPressure()
	 * @model annotation="urn:flexwright:field kind='PRESSURE_ABSOLUTE' unit='kPa' min='0' max='110' label='Absolute pressure' role='planned' help='Not the reading below the room: 0 is a perfect vacuum.'"
	 * @generated
	 */
	Double getPlannedPressure();

	/**
	 * Sets the value of the '{@link org.flexwright.mixing.data.DegasDetails#getPlannedPressure <em>Planned Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Planned Pressure</em>' attribute.
	 * @see #getPlannedPressure()
	 * @generated
	 */
	void setPlannedPressure(Double value);

	/**
	 * Returns the value of the '<em><b>Pressure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Not the reading below the room: 0 is a perfect vacuum.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Pressure</em>' attribute.
	 * @see #setPressure(Double)
	 * @see org.flexwright.mixing.data.MixingDataPackage#getDegasDetails_Pressure()
	 * @model annotation="urn:flexwright:field kind='PRESSURE_ABSOLUTE' unit='kPa' min='0' max='110' label='Absolute pressure' role='actual' of='plannedPressure' limit='20%' help='Not the reading below the room: 0 is a perfect vacuum.'"
	 * @generated
	 */
	Double getPressure();

	/**
	 * Sets the value of the '{@link org.flexwright.mixing.data.DegasDetails#getPressure <em>Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Pressure</em>' attribute.
	 * @see #getPressure()
	 * @generated
	 */
	void setPressure(Double value);

	/**
	 * Returns the value of the '<em><b>Cup Volume</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Up to the brim.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Cup Volume</em>' attribute.
	 * @see #setCupVolume(Double)
	 * @see org.flexwright.mixing.data.MixingDataPackage#getDegasDetails_CupVolume()
	 * @model annotation="urn:flexwright:field kind='VOLUME' unit='ml' min='0' max='100000' label='Cup holds' role='planned' help='Up to the brim.'"
	 * @generated
	 */
	Double getCupVolume();

	/**
	 * Sets the value of the '{@link org.flexwright.mixing.data.DegasDetails#getCupVolume <em>Cup Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Cup Volume</em>' attribute.
	 * @see #getCupVolume()
	 * @generated
	 */
	void setCupVolume(Double value);

	/**
	 * Returns the value of the '<em><b>Mix Volume</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Foam rises to several times this.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Mix Volume</em>' attribute.
	 * @see #setMixVolume(Double)
	 * @see org.flexwright.mixing.data.MixingDataPackage#getDegasDetails_MixVolume()
	 * @model annotation="urn:flexwright:field kind='VOLUME' unit='ml' min='0' max='100000' label='Mixture in the cup' role='planned' help='Foam rises to several times this.'"
	 * @generated
	 */
	Double getMixVolume();

	/**
	 * Sets the value of the '{@link org.flexwright.mixing.data.DegasDetails#getMixVolume <em>Mix Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Mix Volume</em>' attribute.
	 * @see #getMixVolume()
	 * @generated
	 */
	void setMixVolume(Double value);

} // DegasDetails
