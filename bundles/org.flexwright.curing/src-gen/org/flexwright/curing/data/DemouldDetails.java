/**
 */
package org.flexwright.curing.data;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Demould Details</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Taking a part out of its mould.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.curing.data.DemouldDetails#getPlannedAge <em>Planned Age</em>}</li>
 *   <li>{@link org.flexwright.curing.data.DemouldDetails#getAge <em>Age</em>}</li>
 *   <li>{@link org.flexwright.curing.data.DemouldDetails#getMouldC <em>Mould C</em>}</li>
 *   <li>{@link org.flexwright.curing.data.DemouldDetails#getLeftoverFirm <em>Leftover Firm</em>}</li>
 *   <li>{@link org.flexwright.curing.data.DemouldDetails#getTorn <em>Torn</em>}</li>
 * </ul>
 *
 * @see org.flexwright.curing.data.CuringDataPackage#getDemouldDetails()
 * @model
 * @generated
 */
public interface DemouldDetails extends EObject {
	/**
	 * Returns the value of the '<em><b>Planned Age</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * From filling the mould.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Planned Age</em>' attribute.
	 * @see #setPlannedAge(Double)
	 * @see org.flexwright.curing.data.CuringDataPackage#getDemouldDetails_PlannedAge()
	 * @model annotation="urn:flexwright:field kind='DURATION' unit='h' min='0' max='10000' label='Age at demoulding' role='planned' help='From filling the mould.'"
	 * @generated
	 */
	Double getPlannedAge();

	/**
	 * Sets the value of the '{@link org.flexwright.curing.data.DemouldDetails#getPlannedAge <em>Planned Age</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Planned Age</em>' attribute.
	 * @see #getPlannedAge()
	 * @generated
	 */
	void setPlannedAge(Double value);

	/**
	 * Returns the value of the '<em><b>Age</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * From filling the mould.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Age</em>' attribute.
	 * @see #setAge(Double)
	 * @see org.flexwright.curing.data.CuringDataPackage#getDemouldDetails_Age()
	 * @model annotation="urn:flexwright:field kind='DURATION' unit='h' min='0' max='10000' label='Age at demoulding' role='actual' of='plannedAge' limit='10%' help='From filling the mould.'"
	 * @generated
	 */
	Double getAge();

	/**
	 * Sets the value of the '{@link org.flexwright.curing.data.DemouldDetails#getAge <em>Age</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Age</em>' attribute.
	 * @see #getAge()
	 * @generated
	 */
	void setAge(Double value);

	/**
	 * Returns the value of the '<em><b>Mould C</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * When it was opened.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Mould C</em>' attribute.
	 * @see #setMouldC(Double)
	 * @see org.flexwright.curing.data.CuringDataPackage#getDemouldDetails_MouldC()
	 * @model annotation="urn:flexwright:field kind='TEMPERATURE' unit='degC' min='-40' max='300' label='Mould temperature' role='actual' help='When it was opened.'"
	 * @generated
	 */
	Double getMouldC();

	/**
	 * Sets the value of the '{@link org.flexwright.curing.data.DemouldDetails#getMouldC <em>Mould C</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Mould C</em>' attribute.
	 * @see #getMouldC()
	 * @generated
	 */
	void setMouldC(Double value);

	/**
	 * Returns the value of the '<em><b>Leftover Firm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The rest in the cup tells before the part does.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Leftover Firm</em>' attribute.
	 * @see #setLeftoverFirm(Boolean)
	 * @see org.flexwright.curing.data.CuringDataPackage#getDemouldDetails_LeftoverFirm()
	 * @model annotation="urn:flexwright:field label='Leftover firm to the nail' role='actual' help='The rest in the cup tells before the part does.'"
	 * @generated
	 */
	Boolean getLeftoverFirm();

	/**
	 * Sets the value of the '{@link org.flexwright.curing.data.DemouldDetails#getLeftoverFirm <em>Leftover Firm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Leftover Firm</em>' attribute.
	 * @see #getLeftoverFirm()
	 * @generated
	 */
	void setLeftoverFirm(Boolean value);

	/**
	 * Returns the value of the '<em><b>Torn</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether the part tore while coming out.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Torn</em>' attribute.
	 * @see #setTorn(Boolean)
	 * @see org.flexwright.curing.data.CuringDataPackage#getDemouldDetails_Torn()
	 * @model annotation="urn:flexwright:field label='Torn' role='actual' help='Whether the part tore while coming out.'"
	 * @generated
	 */
	Boolean getTorn();

	/**
	 * Sets the value of the '{@link org.flexwright.curing.data.DemouldDetails#getTorn <em>Torn</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Torn</em>' attribute.
	 * @see #getTorn()
	 * @generated
	 */
	void setTorn(Boolean value);

} // DemouldDetails
