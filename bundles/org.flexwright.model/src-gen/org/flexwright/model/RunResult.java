/**
 */
package org.flexwright.model;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Run Result</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One result as it was.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.RunResult#getName <em>Name</em>}</li>
 *   <li>{@link org.flexwright.model.RunResult#getLow <em>Low</em>}</li>
 *   <li>{@link org.flexwright.model.RunResult#getLikely <em>Likely</em>}</li>
 *   <li>{@link org.flexwright.model.RunResult#getHigh <em>High</em>}</li>
 *   <li>{@link org.flexwright.model.RunResult#getText <em>Text</em>}</li>
 *   <li>{@link org.flexwright.model.RunResult#getUnit <em>Unit</em>}</li>
 *   <li>{@link org.flexwright.model.RunResult#getSource <em>Source</em>}</li>
 * </ul>
 *
 * @see org.flexwright.model.ModelPackage#getRunResult()
 * @model
 * @generated
 */
public interface RunResult extends EObject {
	/**
	 * Returns the value of the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Name</em>' attribute.
	 * @see #setName(String)
	 * @see org.flexwright.model.ModelPackage#getRunResult_Name()
	 * @model
	 * @generated
	 */
	String getName();

	/**
	 * Sets the value of the '{@link org.flexwright.model.RunResult#getName <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Name</em>' attribute.
	 * @see #getName()
	 * @generated
	 */
	void setName(String value);

	/**
	 * Returns the value of the '<em><b>Low</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Low</em>' attribute.
	 * @see #setLow(Double)
	 * @see org.flexwright.model.ModelPackage#getRunResult_Low()
	 * @model
	 * @generated
	 */
	Double getLow();

	/**
	 * Sets the value of the '{@link org.flexwright.model.RunResult#getLow <em>Low</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Low</em>' attribute.
	 * @see #getLow()
	 * @generated
	 */
	void setLow(Double value);

	/**
	 * Returns the value of the '<em><b>Likely</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Likely</em>' attribute.
	 * @see #setLikely(Double)
	 * @see org.flexwright.model.ModelPackage#getRunResult_Likely()
	 * @model
	 * @generated
	 */
	Double getLikely();

	/**
	 * Sets the value of the '{@link org.flexwright.model.RunResult#getLikely <em>Likely</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Likely</em>' attribute.
	 * @see #getLikely()
	 * @generated
	 */
	void setLikely(Double value);

	/**
	 * Returns the value of the '<em><b>High</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>High</em>' attribute.
	 * @see #setHigh(Double)
	 * @see org.flexwright.model.ModelPackage#getRunResult_High()
	 * @model
	 * @generated
	 */
	Double getHigh();

	/**
	 * Sets the value of the '{@link org.flexwright.model.RunResult#getHigh <em>High</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>High</em>' attribute.
	 * @see #getHigh()
	 * @generated
	 */
	void setHigh(Double value);

	/**
	 * Returns the value of the '<em><b>Text</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Text</em>' attribute.
	 * @see #setText(String)
	 * @see org.flexwright.model.ModelPackage#getRunResult_Text()
	 * @model
	 * @generated
	 */
	String getText();

	/**
	 * Sets the value of the '{@link org.flexwright.model.RunResult#getText <em>Text</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Text</em>' attribute.
	 * @see #getText()
	 * @generated
	 */
	void setText(String value);

	/**
	 * Returns the value of the '<em><b>Unit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Unit</em>' attribute.
	 * @see #setUnit(String)
	 * @see org.flexwright.model.ModelPackage#getRunResult_Unit()
	 * @model
	 * @generated
	 */
	String getUnit();

	/**
	 * Sets the value of the '{@link org.flexwright.model.RunResult#getUnit <em>Unit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Unit</em>' attribute.
	 * @see #getUnit()
	 * @generated
	 */
	void setUnit(String value);

	/**
	 * Returns the value of the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Source</em>' attribute.
	 * @see #setSource(String)
	 * @see org.flexwright.model.ModelPackage#getRunResult_Source()
	 * @model
	 * @generated
	 */
	String getSource();

	/**
	 * Sets the value of the '{@link org.flexwright.model.RunResult#getSource <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Source</em>' attribute.
	 * @see #getSource()
	 * @generated
	 */
	void setSource(String value);

} // RunResult
