/**
 */
package org.flexwright.model;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Material Use</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A lot used in a step: how much was meant, each weighing as it happened.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.MaterialUse#getRole <em>Role</em>}</li>
 *   <li>{@link org.flexwright.model.MaterialUse#getGrade <em>Grade</em>}</li>
 *   <li>{@link org.flexwright.model.MaterialUse#getLot <em>Lot</em>}</li>
 *   <li>{@link org.flexwright.model.MaterialUse#getPlanned <em>Planned</em>}</li>
 *   <li>{@link org.flexwright.model.MaterialUse#getWeighings <em>Weighings</em>}</li>
 * </ul>
 *
 * @see org.flexwright.model.ModelPackage#getMaterialUse()
 * @model
 * @generated
 */
public interface MaterialUse extends Entry {
	/**
	 * Returns the value of the '<em><b>Role</b></em>' attribute.
	 * The literals are from the enumeration {@link org.flexwright.model.PartRole}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Role</em>' attribute.
	 * @see org.flexwright.model.PartRole
	 * @see #setRole(PartRole)
	 * @see org.flexwright.model.ModelPackage#getMaterialUse_Role()
	 * @model annotation="urn:flexwright:field label='Role'"
	 * @generated
	 */
	PartRole getRole();

	/**
	 * Sets the value of the '{@link org.flexwright.model.MaterialUse#getRole <em>Role</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Role</em>' attribute.
	 * @see org.flexwright.model.PartRole
	 * @see #getRole()
	 * @generated
	 */
	void setRole(PartRole value);

	/**
	 * Returns the value of the '<em><b>Grade</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Grade</em>' reference.
	 * @see #setGrade(MaterialGrade)
	 * @see org.flexwright.model.ModelPackage#getMaterialUse_Grade()
	 * @model
	 * @generated
	 */
	MaterialGrade getGrade();

	/**
	 * Sets the value of the '{@link org.flexwright.model.MaterialUse#getGrade <em>Grade</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Grade</em>' reference.
	 * @see #getGrade()
	 * @generated
	 */
	void setGrade(MaterialGrade value);

	/**
	 * Returns the value of the '<em><b>Lot</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Lot</em>' reference.
	 * @see #setLot(Lot)
	 * @see org.flexwright.model.ModelPackage#getMaterialUse_Lot()
	 * @model
	 * @generated
	 */
	Lot getLot();

	/**
	 * Sets the value of the '{@link org.flexwright.model.MaterialUse#getLot <em>Lot</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Lot</em>' reference.
	 * @see #getLot()
	 * @generated
	 */
	void setLot(Lot value);

	/**
	 * Returns the value of the '<em><b>Planned</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Planned</em>' attribute.
	 * @see #setPlanned(Double)
	 * @see org.flexwright.model.ModelPackage#getMaterialUse_Planned()
	 * @model annotation="urn:flexwright:field kind='MASS' unit='g' min='0' max='100000' label='Planned'"
	 * @generated
	 */
	Double getPlanned();

	/**
	 * Sets the value of the '{@link org.flexwright.model.MaterialUse#getPlanned <em>Planned</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Planned</em>' attribute.
	 * @see #getPlanned()
	 * @generated
	 */
	void setPlanned(Double value);

	/**
	 * Returns the value of the '<em><b>Weighings</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.Weighing}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Weighings</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getMaterialUse_Weighings()
	 * @model containment="true"
	 * @generated
	 */
	EList<Weighing> getWeighings();

} // MaterialUse
