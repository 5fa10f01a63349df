/**
 */
package org.flexwright.curing.data;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Cure Stage</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A stretch of a cure: from the temperature before it, or at once, to its own.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.curing.data.CureStage#getMinutes <em>Minutes</em>}</li>
 *   <li>{@link org.flexwright.curing.data.CureStage#getCelsius <em>Celsius</em>}</li>
 *   <li>{@link org.flexwright.curing.data.CureStage#isRamp <em>Ramp</em>}</li>
 * </ul>
 *
 * @see org.flexwright.curing.data.CuringDataPackage#getCureStage()
 * @model
 * @generated
 */
public interface CureStage extends EObject {
	/**
	 * Returns the value of the '<em><b>Minutes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How long the stretch lasts.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Minutes</em>' attribute.
	 * @see #setMinutes(Double)
	 * @see org.flexwright.curing.data.CuringDataPackage#getCureStage_Minutes()
	 * @model annotation="urn:flexwright:field kind='DURATION' unit='min' min='0' max='100000' label='Time' help='How long the stretch lasts.'"
	 * @generated
	 */
	Double getMinutes();

	/**
	 * Sets the value of the '{@link org.flexwright.curing.data.CureStage#getMinutes <em>Minutes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Minutes</em>' attribute.
	 * @see #getMinutes()
	 * @generated
	 */
	void setMinutes(Double value);

	/**
	 * Returns the value of the '<em><b>Celsius</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Temperature at its end; all through when it is no ramp.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Celsius</em>' attribute.
	 * @see #setCelsius(Double)
	 * @see org.flexwright.curing.data.CuringDataPackage#getCureStage_Celsius()
	 * @model annotation="urn:flexwright:field kind='TEMPERATURE' unit='degC' min='-40' max='300' label='Temperature' help='Temperature at its end; all through when it is no ramp.'"
	 * @generated
	 */
	Double getCelsius();

	/**
	 * Sets the value of the '{@link org.flexwright.curing.data.CureStage#getCelsius <em>Celsius</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Celsius</em>' attribute.
	 * @see #getCelsius()
	 * @generated
	 */
	void setCelsius(Double value);

	/**
	 * Returns the value of the '<em><b>Ramp</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * True when the temperature runs evenly from the stretch before to this one.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Ramp</em>' attribute.
	 * @see #setRamp(boolean)
	 * @see org.flexwright.curing.data.CuringDataPackage#getCureStage_Ramp()
	 * @model annotation="urn:flexwright:field label='Ramp' help='True when the temperature runs evenly from the stretch before to this one.'"
	 * @generated
	 */
	boolean isRamp();

	/**
	 * Sets the value of the '{@link org.flexwright.curing.data.CureStage#isRamp <em>Ramp</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Ramp</em>' attribute.
	 * @see #isRamp()
	 * @generated
	 */
	void setRamp(boolean value);

} // CureStage
