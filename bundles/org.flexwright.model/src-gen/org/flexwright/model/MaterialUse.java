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
 *   <li>{@link org.flexwright.model.MaterialUse#getParts <em>Parts</em>}</li>
 *   <li>{@link org.flexwright.model.MaterialUse#getPartsBy <em>Parts By</em>}</li>
 *   <li>{@link org.flexwright.model.MaterialUse#getPartsOf <em>Parts Of</em>}</li>
 *   <li>{@link org.flexwright.model.MaterialUse#getMoisture <em>Moisture</em>}</li>
 *   <li>{@link org.flexwright.model.MaterialUse#getDried <em>Dried</em>}</li>
 *   <li>{@link org.flexwright.model.MaterialUse#getPremix <em>Premix</em>}</li>
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

	/**
	 * Returns the value of the '<em><b>Parts</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Share in the formulation as the maker thinks of it; counted as said in Counted by and Of what.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Parts</em>' attribute.
	 * @see #setParts(Double)
	 * @see org.flexwright.model.ModelPackage#getMaterialUse_Parts()
	 * @model annotation="urn:flexwright:field min='0' max='100000' label='Parts' help='Share in the formulation as the maker thinks of it; counted as said in Counted by and Of what.'"
	 * @generated
	 */
	Double getParts();

	/**
	 * Sets the value of the '{@link org.flexwright.model.MaterialUse#getParts <em>Parts</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Parts</em>' attribute.
	 * @see #getParts()
	 * @generated
	 */
	void setParts(Double value);

	/**
	 * Returns the value of the '<em><b>Parts By</b></em>' attribute.
	 * The literals are from the enumeration {@link org.flexwright.model.AmountBasis}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Weight, volume or equivalents.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Parts By</em>' attribute.
	 * @see org.flexwright.model.AmountBasis
	 * @see #setPartsBy(AmountBasis)
	 * @see org.flexwright.model.ModelPackage#getMaterialUse_PartsBy()
	 * @model annotation="urn:flexwright:field label='Counted by' help='Weight, volume or equivalents.'"
	 * @generated
	 */
	AmountBasis getPartsBy();

	/**
	 * Sets the value of the '{@link org.flexwright.model.MaterialUse#getPartsBy <em>Parts By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Parts By</em>' attribute.
	 * @see org.flexwright.model.AmountBasis
	 * @see #getPartsBy()
	 * @generated
	 */
	void setPartsBy(AmountBasis value);

	/**
	 * Returns the value of the '<em><b>Parts Of</b></em>' attribute.
	 * The literals are from the enumeration {@link org.flexwright.model.PartsOf}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What the parts are a share of; for components A and B the ratio between them.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Parts Of</em>' attribute.
	 * @see org.flexwright.model.PartsOf
	 * @see #setPartsOf(PartsOf)
	 * @see org.flexwright.model.ModelPackage#getMaterialUse_PartsOf()
	 * @model annotation="urn:flexwright:field label='Of what' help='What the parts are a share of; for components A and B the ratio between them.'"
	 * @generated
	 */
	PartsOf getPartsOf();

	/**
	 * Sets the value of the '{@link org.flexwright.model.MaterialUse#getPartsOf <em>Parts Of</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Parts Of</em>' attribute.
	 * @see org.flexwright.model.PartsOf
	 * @see #getPartsOf()
	 * @generated
	 */
	void setPartsOf(PartsOf value);

	/**
	 * Returns the value of the '<em><b>Moisture</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Water that the material brings along, per cent of its mass.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Moisture</em>' attribute.
	 * @see #setMoisture(Double)
	 * @see org.flexwright.model.ModelPackage#getMaterialUse_Moisture()
	 * @model annotation="urn:flexwright:field kind='FRACTION' unit='%' min='0' max='100' label='Water in it' help='Water that the material brings along, per cent of its mass.'"
	 * @generated
	 */
	Double getMoisture();

	/**
	 * Sets the value of the '{@link org.flexwright.model.MaterialUse#getMoisture <em>Moisture</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Moisture</em>' attribute.
	 * @see #getMoisture()
	 * @generated
	 */
	void setMoisture(Double value);

	/**
	 * Returns the value of the '<em><b>Dried</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether it was dried before it was weighed.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Dried</em>' attribute.
	 * @see #setDried(Boolean)
	 * @see org.flexwright.model.ModelPackage#getMaterialUse_Dried()
	 * @model annotation="urn:flexwright:field label='Dried before use' help='Whether it was dried before it was weighed.'"
	 * @generated
	 */
	Boolean getDried();

	/**
	 * Sets the value of the '{@link org.flexwright.model.MaterialUse#getDried <em>Dried</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Dried</em>' attribute.
	 * @see #getDried()
	 * @generated
	 */
	void setDried(Boolean value);

	/**
	 * Returns the value of the '<em><b>Premix</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The blend that was weighed, in place of a grade; it counts as its ingredients.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Premix</em>' reference.
	 * @see #setPremix(Premix)
	 * @see org.flexwright.model.ModelPackage#getMaterialUse_Premix()
	 * @model
	 * @generated
	 */
	Premix getPremix();

	/**
	 * Sets the value of the '{@link org.flexwright.model.MaterialUse#getPremix <em>Premix</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Premix</em>' reference.
	 * @see #getPremix()
	 * @generated
	 */
	void setPremix(Premix value);

} // MaterialUse
