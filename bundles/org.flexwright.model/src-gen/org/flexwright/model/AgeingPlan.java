/**
 */
package org.flexwright.model;

import java.time.Instant;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Ageing Plan</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Readings to be taken again as parts grow older.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.AgeingPlan#getTitle <em>Title</em>}</li>
 *   <li>{@link org.flexwright.model.AgeingPlan#getKey <em>Key</em>}</li>
 *   <li>{@link org.flexwright.model.AgeingPlan#getSpecimens <em>Specimens</em>}</li>
 *   <li>{@link org.flexwright.model.AgeingPlan#getFrom <em>From</em>}</li>
 *   <li>{@link org.flexwright.model.AgeingPlan#getRemind <em>Remind</em>}</li>
 *   <li>{@link org.flexwright.model.AgeingPlan#getPoints <em>Points</em>}</li>
 * </ul>
 *
 * @see org.flexwright.model.ModelPackage#getAgeingPlan()
 * @model
 * @generated
 */
public interface AgeingPlan extends Entry {
	/**
	 * Returns the value of the '<em><b>Title</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Title</em>' attribute.
	 * @see #setTitle(String)
	 * @see org.flexwright.model.ModelPackage#getAgeingPlan_Title()
	 * @model annotation="urn:flexwright:field label='Title'"
	 * @generated
	 */
	String getTitle();

	/**
	 * Sets the value of the '{@link org.flexwright.model.AgeingPlan#getTitle <em>Title</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Title</em>' attribute.
	 * @see #getTitle()
	 * @generated
	 */
	void setTitle(String value);

	/**
	 * Returns the value of the '<em><b>Key</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Key</em>' containment reference.
	 * @see #setKey(PropertyKey)
	 * @see org.flexwright.model.ModelPackage#getAgeingPlan_Key()
	 * @model containment="true"
	 * @generated
	 */
	PropertyKey getKey();

	/**
	 * Sets the value of the '{@link org.flexwright.model.AgeingPlan#getKey <em>Key</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Key</em>' containment reference.
	 * @see #getKey()
	 * @generated
	 */
	void setKey(PropertyKey value);

	/**
	 * Returns the value of the '<em><b>Specimens</b></em>' reference list.
	 * The list contents are of type {@link org.flexwright.model.Specimen}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Specimens</em>' reference list.
	 * @see org.flexwright.model.ModelPackage#getAgeingPlan_Specimens()
	 * @model
	 * @generated
	 */
	EList<Specimen> getSpecimens();

	/**
	 * Returns the value of the '<em><b>From</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Empty: each piece from when it was made.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>From</em>' attribute.
	 * @see #setFrom(Instant)
	 * @see org.flexwright.model.ModelPackage#getAgeingPlan_From()
	 * @model dataType="org.flexwright.model.Instant"
	 *        annotation="urn:flexwright:field label='Counted from' help='Empty: each piece from when it was made.'"
	 * @generated
	 */
	Instant getFrom();

	/**
	 * Sets the value of the '{@link org.flexwright.model.AgeingPlan#getFrom <em>From</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>From</em>' attribute.
	 * @see #getFrom()
	 * @generated
	 */
	void setFrom(Instant value);

	/**
	 * Returns the value of the '<em><b>Remind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Remind</em>' attribute.
	 * @see #setRemind(Boolean)
	 * @see org.flexwright.model.ModelPackage#getAgeingPlan_Remind()
	 * @model annotation="urn:flexwright:field label='Remind'"
	 * @generated
	 */
	Boolean getRemind();

	/**
	 * Sets the value of the '{@link org.flexwright.model.AgeingPlan#getRemind <em>Remind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Remind</em>' attribute.
	 * @see #getRemind()
	 * @generated
	 */
	void setRemind(Boolean value);

	/**
	 * Returns the value of the '<em><b>Points</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.AgeingPoint}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Points</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getAgeingPlan_Points()
	 * @model containment="true"
	 * @generated
	 */
	EList<AgeingPoint> getPoints();

} // AgeingPlan
