/**
 */
package org.flexwright.model;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Material Grade</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A product a maker can buy, as its sheet describes it.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.MaterialGrade#getCode <em>Code</em>}</li>
 *   <li>{@link org.flexwright.model.MaterialGrade#getName <em>Name</em>}</li>
 *   <li>{@link org.flexwright.model.MaterialGrade#getFamily <em>Family</em>}</li>
 *   <li>{@link org.flexwright.model.MaterialGrade#getRole <em>Role</em>}</li>
 *   <li>{@link org.flexwright.model.MaterialGrade#getHazards <em>Hazards</em>}</li>
 *   <li>{@link org.flexwright.model.MaterialGrade#getValues <em>Values</em>}</li>
 *   <li>{@link org.flexwright.model.MaterialGrade#getLots <em>Lots</em>}</li>
 *   <li>{@link org.flexwright.model.MaterialGrade#getPackSize <em>Pack Size</em>}</li>
 * </ul>
 *
 * @see org.flexwright.model.ModelPackage#getMaterialGrade()
 * @model
 * @generated
 */
public interface MaterialGrade extends Entry {
	/**
	 * Returns the value of the '<em><b>Code</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Code</em>' attribute.
	 * @see #setCode(String)
	 * @see org.flexwright.model.ModelPackage#getMaterialGrade_Code()
	 * @model annotation="urn:flexwright:field label='Code'"
	 * @generated
	 */
	String getCode();

	/**
	 * Sets the value of the '{@link org.flexwright.model.MaterialGrade#getCode <em>Code</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Code</em>' attribute.
	 * @see #getCode()
	 * @generated
	 */
	void setCode(String value);

	/**
	 * Returns the value of the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Name</em>' attribute.
	 * @see #setName(String)
	 * @see org.flexwright.model.ModelPackage#getMaterialGrade_Name()
	 * @model annotation="urn:flexwright:field label='Name'"
	 * @generated
	 */
	String getName();

	/**
	 * Sets the value of the '{@link org.flexwright.model.MaterialGrade#getName <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Name</em>' attribute.
	 * @see #getName()
	 * @generated
	 */
	void setName(String value);

	/**
	 * Returns the value of the '<em><b>Family</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Id of the material family.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Family</em>' attribute.
	 * @see #setFamily(String)
	 * @see org.flexwright.model.ModelPackage#getMaterialGrade_Family()
	 * @model annotation="urn:flexwright:field label='Family' help='Id of the material family.'"
	 * @generated
	 */
	String getFamily();

	/**
	 * Sets the value of the '{@link org.flexwright.model.MaterialGrade#getFamily <em>Family</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Family</em>' attribute.
	 * @see #getFamily()
	 * @generated
	 */
	void setFamily(String value);

	/**
	 * Returns the value of the '<em><b>Role</b></em>' attribute.
	 * The literals are from the enumeration {@link org.flexwright.model.PartRole}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Role</em>' attribute.
	 * @see org.flexwright.model.PartRole
	 * @see #setRole(PartRole)
	 * @see org.flexwright.model.ModelPackage#getMaterialGrade_Role()
	 * @model annotation="urn:flexwright:field label='Role'"
	 * @generated
	 */
	PartRole getRole();

	/**
	 * Sets the value of the '{@link org.flexwright.model.MaterialGrade#getRole <em>Role</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Role</em>' attribute.
	 * @see org.flexwright.model.PartRole
	 * @see #getRole()
	 * @generated
	 */
	void setRole(PartRole value);

	/**
	 * Returns the value of the '<em><b>Hazards</b></em>' attribute list.
	 * The list contents are of type {@link java.lang.String}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * H codes the maker read on the sheet.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Hazards</em>' attribute list.
	 * @see org.flexwright.model.ModelPackage#getMaterialGrade_Hazards()
	 * @model annotation="urn:flexwright:field label='Hazard statements on its sheet' help='H codes the maker read on the sheet.'"
	 * @generated
	 */
	EList<String> getHazards();

	/**
	 * Returns the value of the '<em><b>Values</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.MaterialValue}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Values</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getMaterialGrade_Values()
	 * @model containment="true"
	 * @generated
	 */
	EList<MaterialValue> getValues();

	/**
	 * Returns the value of the '<em><b>Lots</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.Lot}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Lots</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getMaterialGrade_Lots()
	 * @model containment="true"
	 * @generated
	 */
	EList<Lot> getLots();

	/**
	 * Returns the value of the '<em><b>Pack Size</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The smallest amount that can be bought.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Pack Size</em>' attribute.
	 * @see #setPackSize(Double)
	 * @see org.flexwright.model.ModelPackage#getMaterialGrade_PackSize()
	 * @model annotation="urn:flexwright:field kind='MASS' unit='g' min='0' max='1000000' minOpen='true' label='Sold in packs of' help='The smallest amount that can be bought.'"
	 * @generated
	 */
	Double getPackSize();

	/**
	 * Sets the value of the '{@link org.flexwright.model.MaterialGrade#getPackSize <em>Pack Size</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Pack Size</em>' attribute.
	 * @see #getPackSize()
	 * @generated
	 */
	void setPackSize(Double value);

} // MaterialGrade
