/**
 */
package org.flexwright.filament.data;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Drying</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Drying of the spool before the print.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.filament.data.Drying#getPlannedTemperature <em>Planned Temperature</em>}</li>
 *   <li>{@link org.flexwright.filament.data.Drying#getActualTemperature <em>Actual Temperature</em>}</li>
 *   <li>{@link org.flexwright.filament.data.Drying#getPlannedHours <em>Planned Hours</em>}</li>
 *   <li>{@link org.flexwright.filament.data.Drying#getActualHours <em>Actual Hours</em>}</li>
 *   <li>{@link org.flexwright.filament.data.Drying#getSoftening <em>Softening</em>}</li>
 *   <li>{@link org.flexwright.filament.data.Drying#getDiffusivity <em>Diffusivity</em>}</li>
 *   <li>{@link org.flexwright.filament.data.Drying#getActivationEnergy <em>Activation Energy</em>}</li>
 *   <li>{@link org.flexwright.filament.data.Drying#getDiffusionSource <em>Diffusion Source</em>}</li>
 * </ul>
 *
 * @see org.flexwright.filament.data.FilamentDataPackage#getDrying()
 * @model
 * @generated
 */
public interface Drying extends EObject {
	/**
	 * Returns the value of the '<em><b>Planned Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Planned Temperature</em>' attribute.
	 * @see #setPlannedTemperature(Double)
	 * @see org.flexwright.filament.data.FilamentDataPackage#getDrying_PlannedTemperature()
	 * @model annotation="urn:flexwright:field kind='TEMPERATURE' unit='degC' min='0' max='150' label='Temperature' role='planned' help='Of the air in the dryer; below the softening of the strand.'"
	 * @generated
	 */
	Double getPlannedTemperature();

	/**
	 * Sets the value of the '{@link org.flexwright.filament.data.Drying#getPlannedTemperature <em>Planned Temperature</em>}' attribute.
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
	 * @see org.flexwright.filament.data.FilamentDataPackage#getDrying_ActualTemperature()
	 * @model annotation="urn:flexwright:field kind='TEMPERATURE' unit='degC' min='0' max='150' label='Temperature read' role='actual' of='plannedTemperature' limit='5 K' help='Read inside the dryer.'"
	 * @generated
	 */
	Double getActualTemperature();

	/**
	 * Sets the value of the '{@link org.flexwright.filament.data.Drying#getActualTemperature <em>Actual Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Actual Temperature</em>' attribute.
	 * @see #getActualTemperature()
	 * @generated
	 */
	void setActualTemperature(Double value);

	/**
	 * Returns the value of the '<em><b>Planned Hours</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Planned Hours</em>' attribute.
	 * @see #setPlannedHours(Double)
	 * @see org.flexwright.filament.data.FilamentDataPackage#getDrying_PlannedHours()
	 * @model annotation="urn:flexwright:field kind='DURATION' unit='h' min='0' max='500' label='Drying' role='planned' help='Hours at that temperature.'"
	 * @generated
	 */
	Double getPlannedHours();

	/**
	 * Sets the value of the '{@link org.flexwright.filament.data.Drying#getPlannedHours <em>Planned Hours</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Planned Hours</em>' attribute.
	 * @see #getPlannedHours()
	 * @generated
	 */
	void setPlannedHours(Double value);

	/**
	 * Returns the value of the '<em><b>Actual Hours</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Actual Hours</em>' attribute.
	 * @see #setActualHours(Double)
	 * @see org.flexwright.filament.data.FilamentDataPackage#getDrying_ActualHours()
	 * @model annotation="urn:flexwright:field kind='DURATION' unit='h' min='0' max='500' label='Dried for' role='actual' of='plannedHours' limit='25%' help='Hours at that temperature.'"
	 * @generated
	 */
	Double getActualHours();

	/**
	 * Sets the value of the '{@link org.flexwright.filament.data.Drying#getActualHours <em>Actual Hours</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Actual Hours</em>' attribute.
	 * @see #getActualHours()
	 * @generated
	 */
	void setActualHours(Double value);

	/**
	 * Returns the value of the '<em><b>Softening</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Softening</em>' attribute.
	 * @see #setSoftening(Double)
	 * @see org.flexwright.filament.data.FilamentDataPackage#getDrying_Softening()
	 * @model annotation="urn:flexwright:field kind='TEMPERATURE' unit='degC' min='0' max='200' label='Stay below' role='planned' help='Temperature at which turns of the strand stick together, from the sheet or own trial.'"
	 * @generated
	 */
	Double getSoftening();

	/**
	 * Sets the value of the '{@link org.flexwright.filament.data.Drying#getSoftening <em>Softening</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Softening</em>' attribute.
	 * @see #getSoftening()
	 * @generated
	 */
	void setSoftening(Double value);

	/**
	 * Returns the value of the '<em><b>Diffusivity</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Diffusivity</em>' attribute.
	 * @see #setDiffusivity(Double)
	 * @see org.flexwright.filament.data.FilamentDataPackage#getDrying_Diffusivity()
	 * @model annotation="urn:flexwright:field kind='DIFFUSIVITY' unit='m2/s' min='0' max='1e-6' label='Diffusivity at 23 degC' role='planned' help='Of water in the strand; left empty, a published spread is used.'"
	 * @generated
	 */
	Double getDiffusivity();

	/**
	 * Sets the value of the '{@link org.flexwright.filament.data.Drying#getDiffusivity <em>Diffusivity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Diffusivity</em>' attribute.
	 * @see #getDiffusivity()
	 * @generated
	 */
	void setDiffusivity(Double value);

	/**
	 * Returns the value of the '<em><b>Activation Energy</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Activation Energy</em>' attribute.
	 * @see #setActivationEnergy(Double)
	 * @see org.flexwright.filament.data.FilamentDataPackage#getDrying_ActivationEnergy()
	 * @model annotation="urn:flexwright:field kind='MOLAR_ENERGY' unit='kJ/mol' min='0' max='200' label='Activation energy' role='planned' help='Of that diffusivity; left empty, a published value is used.'"
	 * @generated
	 */
	Double getActivationEnergy();

	/**
	 * Sets the value of the '{@link org.flexwright.filament.data.Drying#getActivationEnergy <em>Activation Energy</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Activation Energy</em>' attribute.
	 * @see #getActivationEnergy()
	 * @generated
	 */
	void setActivationEnergy(Double value);

	/**
	 * Returns the value of the '<em><b>Diffusion Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Diffusion Source</em>' attribute.
	 * @see #setDiffusionSource(String)
	 * @see org.flexwright.filament.data.FilamentDataPackage#getDrying_DiffusionSource()
	 * @model annotation="urn:flexwright:field label='Where both come from' role='planned' help='Sheet, paper or own drying curve.'"
	 * @generated
	 */
	String getDiffusionSource();

	/**
	 * Sets the value of the '{@link org.flexwright.filament.data.Drying#getDiffusionSource <em>Diffusion Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Diffusion Source</em>' attribute.
	 * @see #getDiffusionSource()
	 * @generated
	 */
	void setDiffusionSource(String value);

} // Drying
