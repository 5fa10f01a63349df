/**
 */
package org.flexwright.model;

import java.time.Instant;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Calculation Run</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A calculation kept in a trial; stale when its inputs change, never recomputed by itself.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.CalculationRun#getCalculation <em>Calculation</em>}</li>
 *   <li>{@link org.flexwright.model.CalculationRun#getVersion <em>Version</em>}</li>
 *   <li>{@link org.flexwright.model.CalculationRun#getProgramVersion <em>Program Version</em>}</li>
 *   <li>{@link org.flexwright.model.CalculationRun#getAt <em>At</em>}</li>
 *   <li>{@link org.flexwright.model.CalculationRun#getInputs <em>Inputs</em>}</li>
 *   <li>{@link org.flexwright.model.CalculationRun#getResults <em>Results</em>}</li>
 *   <li>{@link org.flexwright.model.CalculationRun#getRefusal <em>Refusal</em>}</li>
 * </ul>
 *
 * @see org.flexwright.model.ModelPackage#getCalculationRun()
 * @model
 * @generated
 */
public interface CalculationRun extends Entry {
	/**
	 * Returns the value of the '<em><b>Calculation</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Calculation</em>' attribute.
	 * @see #setCalculation(String)
	 * @see org.flexwright.model.ModelPackage#getCalculationRun_Calculation()
	 * @model
	 * @generated
	 */
	String getCalculation();

	/**
	 * Sets the value of the '{@link org.flexwright.model.CalculationRun#getCalculation <em>Calculation</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Calculation</em>' attribute.
	 * @see #getCalculation()
	 * @generated
	 */
	void setCalculation(String value);

	/**
	 * Returns the value of the '<em><b>Version</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Version</em>' attribute.
	 * @see #setVersion(String)
	 * @see org.flexwright.model.ModelPackage#getCalculationRun_Version()
	 * @model
	 * @generated
	 */
	String getVersion();

	/**
	 * Sets the value of the '{@link org.flexwright.model.CalculationRun#getVersion <em>Version</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Version</em>' attribute.
	 * @see #getVersion()
	 * @generated
	 */
	void setVersion(String value);

	/**
	 * Returns the value of the '<em><b>Program Version</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Program Version</em>' attribute.
	 * @see #setProgramVersion(String)
	 * @see org.flexwright.model.ModelPackage#getCalculationRun_ProgramVersion()
	 * @model
	 * @generated
	 */
	String getProgramVersion();

	/**
	 * Sets the value of the '{@link org.flexwright.model.CalculationRun#getProgramVersion <em>Program Version</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Program Version</em>' attribute.
	 * @see #getProgramVersion()
	 * @generated
	 */
	void setProgramVersion(String value);

	/**
	 * Returns the value of the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>At</em>' attribute.
	 * @see #setAt(Instant)
	 * @see org.flexwright.model.ModelPackage#getCalculationRun_At()
	 * @model dataType="org.flexwright.model.Instant"
	 * @generated
	 */
	Instant getAt();

	/**
	 * Sets the value of the '{@link org.flexwright.model.CalculationRun#getAt <em>At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>At</em>' attribute.
	 * @see #getAt()
	 * @generated
	 */
	void setAt(Instant value);

	/**
	 * Returns the value of the '<em><b>Inputs</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.RunInput}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Inputs</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getCalculationRun_Inputs()
	 * @model containment="true"
	 * @generated
	 */
	EList<RunInput> getInputs();

	/**
	 * Returns the value of the '<em><b>Results</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.RunResult}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Results</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getCalculationRun_Results()
	 * @model containment="true"
	 * @generated
	 */
	EList<RunResult> getResults();

	/**
	 * Returns the value of the '<em><b>Refusal</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Refusal</em>' attribute.
	 * @see #setRefusal(String)
	 * @see org.flexwright.model.ModelPackage#getCalculationRun_Refusal()
	 * @model
	 * @generated
	 */
	String getRefusal();

	/**
	 * Sets the value of the '{@link org.flexwright.model.CalculationRun#getRefusal <em>Refusal</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Refusal</em>' attribute.
	 * @see #getRefusal()
	 * @generated
	 */
	void setRefusal(String value);

} // CalculationRun
