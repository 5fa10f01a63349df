/**
 */
package org.flexwright.vatprint.data;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Post Curing</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Drying, then light and warmth.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.vatprint.data.PostCuring#getPlannedDryMinutes <em>Planned Dry Minutes</em>}</li>
 *   <li>{@link org.flexwright.vatprint.data.PostCuring#getActualDryMinutes <em>Actual Dry Minutes</em>}</li>
 *   <li>{@link org.flexwright.vatprint.data.PostCuring#getMassSteady <em>Mass Steady</em>}</li>
 *   <li>{@link org.flexwright.vatprint.data.PostCuring#getPlannedMinutes <em>Planned Minutes</em>}</li>
 *   <li>{@link org.flexwright.vatprint.data.PostCuring#getActualMinutes <em>Actual Minutes</em>}</li>
 *   <li>{@link org.flexwright.vatprint.data.PostCuring#getPlannedTemperature <em>Planned Temperature</em>}</li>
 *   <li>{@link org.flexwright.vatprint.data.PostCuring#getActualTemperature <em>Actual Temperature</em>}</li>
 *   <li>{@link org.flexwright.vatprint.data.PostCuring#getMedium <em>Medium</em>}</li>
 * </ul>
 *
 * @see org.flexwright.vatprint.data.VatprintDataPackage#getPostCuring()
 * @model
 * @generated
 */
public interface PostCuring extends EObject {
	/**
	 * Returns the value of the '<em><b>Planned Dry Minutes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Planned Dry Minutes</em>' attribute.
	 * @see #setPlannedDryMinutes(Double)
	 * @see org.flexwright.vatprint.data.VatprintDataPackage#getPostCuring_PlannedDryMinutes()
	 * @model annotation="urn:flexwright:field kind='DURATION' unit='min' min='0' max='10000' label='Drying before light' role='planned' help='Until the solvent is out of the part.'"
	 * @generated
	 */
	Double getPlannedDryMinutes();

	/**
	 * Sets the value of the '{@link org.flexwright.vatprint.data.PostCuring#getPlannedDryMinutes <em>Planned Dry Minutes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Planned Dry Minutes</em>' attribute.
	 * @see #getPlannedDryMinutes()
	 * @generated
	 */
	void setPlannedDryMinutes(Double value);

	/**
	 * Returns the value of the '<em><b>Actual Dry Minutes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Actual Dry Minutes</em>' attribute.
	 * @see #setActualDryMinutes(Double)
	 * @see org.flexwright.vatprint.data.VatprintDataPackage#getPostCuring_ActualDryMinutes()
	 * @model annotation="urn:flexwright:field kind='DURATION' unit='min' min='0' max='10000' label='Dried for' role='actual' of='plannedDryMinutes' limit='25%' help='Before the lamp was switched on.'"
	 * @generated
	 */
	Double getActualDryMinutes();

	/**
	 * Sets the value of the '{@link org.flexwright.vatprint.data.PostCuring#getActualDryMinutes <em>Actual Dry Minutes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Actual Dry Minutes</em>' attribute.
	 * @see #getActualDryMinutes()
	 * @generated
	 */
	void setActualDryMinutes(Double value);

	/**
	 * Returns the value of the '<em><b>Mass Steady</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Mass Steady</em>' attribute.
	 * @see #setMassSteady(Boolean)
	 * @see org.flexwright.vatprint.data.VatprintDataPackage#getPostCuring_MassSteady()
	 * @model annotation="urn:flexwright:field label='Mass had stopped falling' help='Weighed twice, some minutes apart, without a difference.'"
	 * @generated
	 */
	Boolean getMassSteady();

	/**
	 * Sets the value of the '{@link org.flexwright.vatprint.data.PostCuring#getMassSteady <em>Mass Steady</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Mass Steady</em>' attribute.
	 * @see #getMassSteady()
	 * @generated
	 */
	void setMassSteady(Boolean value);

	/**
	 * Returns the value of the '<em><b>Planned Minutes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Planned Minutes</em>' attribute.
	 * @see #setPlannedMinutes(Double)
	 * @see org.flexwright.vatprint.data.VatprintDataPackage#getPostCuring_PlannedMinutes()
	 * @model annotation="urn:flexwright:field kind='DURATION' unit='min' min='0' max='10000' label='Light' role='planned' help='Minutes under the lamp, all sides together.'"
	 * @generated
	 */
	Double getPlannedMinutes();

	/**
	 * Sets the value of the '{@link org.flexwright.vatprint.data.PostCuring#getPlannedMinutes <em>Planned Minutes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Planned Minutes</em>' attribute.
	 * @see #getPlannedMinutes()
	 * @generated
	 */
	void setPlannedMinutes(Double value);

	/**
	 * Returns the value of the '<em><b>Actual Minutes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Actual Minutes</em>' attribute.
	 * @see #setActualMinutes(Double)
	 * @see org.flexwright.vatprint.data.VatprintDataPackage#getPostCuring_ActualMinutes()
	 * @model annotation="urn:flexwright:field kind='DURATION' unit='min' min='0' max='10000' label='Light given' role='actual' of='plannedMinutes' limit='10%' help='Minutes under the lamp, all sides together.'"
	 * @generated
	 */
	Double getActualMinutes();

	/**
	 * Sets the value of the '{@link org.flexwright.vatprint.data.PostCuring#getActualMinutes <em>Actual Minutes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Actual Minutes</em>' attribute.
	 * @see #getActualMinutes()
	 * @generated
	 */
	void setActualMinutes(Double value);

	/**
	 * Returns the value of the '<em><b>Planned Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Planned Temperature</em>' attribute.
	 * @see #setPlannedTemperature(Double)
	 * @see org.flexwright.vatprint.data.VatprintDataPackage#getPostCuring_PlannedTemperature()
	 * @model annotation="urn:flexwright:field kind='TEMPERATURE' unit='degC' min='0' max='150' label='Temperature' role='planned' help='Of the part while it is post-cured.'"
	 * @generated
	 */
	Double getPlannedTemperature();

	/**
	 * Sets the value of the '{@link org.flexwright.vatprint.data.PostCuring#getPlannedTemperature <em>Planned Temperature</em>}' attribute.
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
	 * @see org.flexwright.vatprint.data.VatprintDataPackage#getPostCuring_ActualTemperature()
	 * @model annotation="urn:flexwright:field kind='TEMPERATURE' unit='degC' min='0' max='150' label='Temperature read' role='actual' of='plannedTemperature' limit='5 K' help='Read beside the part.'"
	 * @generated
	 */
	Double getActualTemperature();

	/**
	 * Sets the value of the '{@link org.flexwright.vatprint.data.PostCuring#getActualTemperature <em>Actual Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Actual Temperature</em>' attribute.
	 * @see #getActualTemperature()
	 * @generated
	 */
	void setActualTemperature(Double value);

	/**
	 * Returns the value of the '<em><b>Medium</b></em>' attribute.
	 * The literals are from the enumeration {@link org.flexwright.vatprint.data.PostCureMedium}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Medium</em>' attribute.
	 * @see org.flexwright.vatprint.data.PostCureMedium
	 * @see #setMedium(PostCureMedium)
	 * @see org.flexwright.vatprint.data.VatprintDataPackage#getPostCuring_Medium()
	 * @model annotation="urn:flexwright:field label='Around the part' role='planned' help='Air leaves some resins with a tacky skin.'"
	 * @generated
	 */
	PostCureMedium getMedium();

	/**
	 * Sets the value of the '{@link org.flexwright.vatprint.data.PostCuring#getMedium <em>Medium</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Medium</em>' attribute.
	 * @see org.flexwright.vatprint.data.PostCureMedium
	 * @see #getMedium()
	 * @generated
	 */
	void setMedium(PostCureMedium value);

} // PostCuring
