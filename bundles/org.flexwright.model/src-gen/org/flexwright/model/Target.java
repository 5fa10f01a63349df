/**
 */
package org.flexwright.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Target</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One limit on one property.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.Target#getKey <em>Key</em>}</li>
 *   <li>{@link org.flexwright.model.Target#getRule <em>Rule</em>}</li>
 *   <li>{@link org.flexwright.model.Target#getLow <em>Low</em>}</li>
 *   <li>{@link org.flexwright.model.Target#getHigh <em>High</em>}</li>
 *   <li>{@link org.flexwright.model.Target#getNominal <em>Nominal</em>}</li>
 *   <li>{@link org.flexwright.model.Target#getTolerance <em>Tolerance</em>}</li>
 *   <li>{@link org.flexwright.model.Target#getWeight <em>Weight</em>}</li>
 *   <li>{@link org.flexwright.model.Target#getRejectBelow <em>Reject Below</em>}</li>
 *   <li>{@link org.flexwright.model.Target#getRejectAbove <em>Reject Above</em>}</li>
 *   <li>{@link org.flexwright.model.Target#getAllowedShare <em>Allowed Share</em>}</li>
 * </ul>
 *
 * @see org.flexwright.model.ModelPackage#getTarget()
 * @model
 * @generated
 */
public interface Target extends Entry {
	/**
	 * Returns the value of the '<em><b>Key</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Key</em>' containment reference.
	 * @see #setKey(PropertyKey)
	 * @see org.flexwright.model.ModelPackage#getTarget_Key()
	 * @model containment="true"
	 * @generated
	 */
	PropertyKey getKey();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Target#getKey <em>Key</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Key</em>' containment reference.
	 * @see #getKey()
	 * @generated
	 */
	void setKey(PropertyKey value);

	/**
	 * Returns the value of the '<em><b>Rule</b></em>' attribute.
	 * The literals are from the enumeration {@link org.flexwright.model.TargetRule}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Rule</em>' attribute.
	 * @see org.flexwright.model.TargetRule
	 * @see #setRule(TargetRule)
	 * @see org.flexwright.model.ModelPackage#getTarget_Rule()
	 * @model annotation="urn:flexwright:field label='Rule'"
	 * @generated
	 */
	TargetRule getRule();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Target#getRule <em>Rule</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rule</em>' attribute.
	 * @see org.flexwright.model.TargetRule
	 * @see #getRule()
	 * @generated
	 */
	void setRule(TargetRule value);

	/**
	 * Returns the value of the '<em><b>Low</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * In the property's unit.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Low</em>' attribute.
	 * @see #setLow(Double)
	 * @see org.flexwright.model.ModelPackage#getTarget_Low()
	 * @model annotation="urn:flexwright:field label='At least' help='In the property\'s unit.'"
	 * @generated
	 */
	Double getLow();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Target#getLow <em>Low</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Low</em>' attribute.
	 * @see #getLow()
	 * @generated
	 */
	void setLow(Double value);

	/**
	 * Returns the value of the '<em><b>High</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * In the property's unit.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>High</em>' attribute.
	 * @see #setHigh(Double)
	 * @see org.flexwright.model.ModelPackage#getTarget_High()
	 * @model annotation="urn:flexwright:field label='At most' help='In the property\'s unit.'"
	 * @generated
	 */
	Double getHigh();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Target#getHigh <em>High</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>High</em>' attribute.
	 * @see #getHigh()
	 * @generated
	 */
	void setHigh(Double value);

	/**
	 * Returns the value of the '<em><b>Nominal</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Nominal</em>' attribute.
	 * @see #setNominal(Double)
	 * @see org.flexwright.model.ModelPackage#getTarget_Nominal()
	 * @model annotation="urn:flexwright:field label='Nominal'"
	 * @generated
	 */
	Double getNominal();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Target#getNominal <em>Nominal</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Nominal</em>' attribute.
	 * @see #getNominal()
	 * @generated
	 */
	void setNominal(Double value);

	/**
	 * Returns the value of the '<em><b>Tolerance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Tolerance</em>' attribute.
	 * @see #setTolerance(Double)
	 * @see org.flexwright.model.ModelPackage#getTarget_Tolerance()
	 * @model annotation="urn:flexwright:field min='0' label='\261 Tolerance'"
	 * @generated
	 */
	Double getTolerance();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Target#getTolerance <em>Tolerance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Tolerance</em>' attribute.
	 * @see #getTolerance()
	 * @generated
	 */
	void setTolerance(Double value);

	/**
	 * Returns the value of the '<em><b>Weight</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Weight</em>' attribute.
	 * @see #setWeight(Double)
	 * @see org.flexwright.model.ModelPackage#getTarget_Weight()
	 * @model annotation="urn:flexwright:field kind='NUMBER' min='0' max='10' label='Weight' def='1'"
	 * @generated
	 */
	Double getWeight();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Target#getWeight <em>Weight</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Weight</em>' attribute.
	 * @see #getWeight()
	 * @generated
	 */
	void setWeight(Double value);

	/**
	 * Returns the value of the '<em><b>Reject Below</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A part below this is no part.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Reject Below</em>' attribute.
	 * @see #setRejectBelow(Double)
	 * @see org.flexwright.model.ModelPackage#getTarget_RejectBelow()
	 * @model annotation="urn:flexwright:field label='Reject below' help='A part below this is no part.'"
	 * @generated
	 */
	Double getRejectBelow();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Target#getRejectBelow <em>Reject Below</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Reject Below</em>' attribute.
	 * @see #getRejectBelow()
	 * @generated
	 */
	void setRejectBelow(Double value);

	/**
	 * Returns the value of the '<em><b>Reject Above</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A part above this is no part.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Reject Above</em>' attribute.
	 * @see #setRejectAbove(Double)
	 * @see org.flexwright.model.ModelPackage#getTarget_RejectAbove()
	 * @model annotation="urn:flexwright:field label='Reject above' help='A part above this is no part.'"
	 * @generated
	 */
	Double getRejectAbove();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Target#getRejectAbove <em>Reject Above</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Reject Above</em>' attribute.
	 * @see #getRejectAbove()
	 * @generated
	 */
	void setRejectAbove(Double value);

	/**
	 * Returns the value of the '<em><b>Allowed Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * For never and always: the share of exceptions that may be; empty means none seen.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Allowed Share</em>' attribute.
	 * @see #setAllowedShare(Double)
	 * @see org.flexwright.model.ModelPackage#getTarget_AllowedShare()
	 * @model annotation="urn:flexwright:field kind='FRACTION' unit='%' min='0' max='100' label='Allowed share' help='For never and always: the share of exceptions that may be; empty means none seen.'"
	 * @generated
	 */
	Double getAllowedShare();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Target#getAllowedShare <em>Allowed Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Allowed Share</em>' attribute.
	 * @see #getAllowedShare()
	 * @generated
	 */
	void setAllowedShare(Double value);

} // Target
