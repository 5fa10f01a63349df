/**
 */
package org.flexwright.testing.data;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Hardness Details</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * How a hardness was read, beyond the number.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.testing.data.HardnessDetails#getRule <em>Rule</em>}</li>
 *   <li>{@link org.flexwright.testing.data.HardnessDetails#getSort <em>Sort</em>}</li>
 *   <li>{@link org.flexwright.testing.data.HardnessDetails#getPlies <em>Plies</em>}</li>
 *   <li>{@link org.flexwright.testing.data.HardnessDetails#getEdge <em>Edge</em>}</li>
 *   <li>{@link org.flexwright.testing.data.HardnessDetails#getSpacing <em>Spacing</em>}</li>
 *   <li>{@link org.flexwright.testing.data.HardnessDetails#getOnStand <em>On Stand</em>}</li>
 *   <li>{@link org.flexwright.testing.data.HardnessDetails#getCurved <em>Curved</em>}</li>
 *   <li>{@link org.flexwright.testing.data.HardnessDetails#getPlySmooth <em>Ply Smooth</em>}</li>
 * </ul>
 *
 * @see org.flexwright.testing.data.TestingDataPackage#getHardnessDetails()
 * @model
 * @generated
 */
public interface HardnessDetails extends EObject {
	/**
	 * Returns the value of the '<em><b>Rule</b></em>' attribute.
	 * The literals are from the enumeration {@link org.flexwright.testing.data.HardnessRule}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Which standard the readings follow.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Rule</em>' attribute.
	 * @see org.flexwright.testing.data.HardnessRule
	 * @see #setRule(HardnessRule)
	 * @see org.flexwright.testing.data.TestingDataPackage#getHardnessDetails_Rule()
	 * @model annotation="urn:flexwright:field label='Read by' help='Which standard the readings follow.'"
	 * @generated
	 */
	HardnessRule getRule();

	/**
	 * Sets the value of the '{@link org.flexwright.testing.data.HardnessDetails#getRule <em>Rule</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rule</em>' attribute.
	 * @see org.flexwright.testing.data.HardnessRule
	 * @see #getRule()
	 * @generated
	 */
	void setRule(HardnessRule value);

	/**
	 * Returns the value of the '<em><b>Sort</b></em>' attribute.
	 * The literals are from the enumeration {@link org.flexwright.testing.data.RubberSort}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Vulcanised or thermoplastic, for the dwell.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Sort</em>' attribute.
	 * @see org.flexwright.testing.data.RubberSort
	 * @see #setSort(RubberSort)
	 * @see org.flexwright.testing.data.TestingDataPackage#getHardnessDetails_Sort()
	 * @model annotation="urn:flexwright:field label='Sort' help='Vulcanised or thermoplastic, for the dwell.'"
	 * @generated
	 */
	RubberSort getSort();

	/**
	 * Sets the value of the '{@link org.flexwright.testing.data.HardnessDetails#getSort <em>Sort</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sort</em>' attribute.
	 * @see org.flexwright.testing.data.RubberSort
	 * @see #getSort()
	 * @generated
	 */
	void setSort(RubberSort value);

	/**
	 * Returns the value of the '<em><b>Plies</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How many layers lay on each other.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Plies</em>' attribute.
	 * @see #setPlies(Integer)
	 * @see org.flexwright.testing.data.TestingDataPackage#getHardnessDetails_Plies()
	 * @model annotation="urn:flexwright:field min='1' max='20' label='Plies' help='How many layers lay on each other.'"
	 * @generated
	 */
	Integer getPlies();

	/**
	 * Sets the value of the '{@link org.flexwright.testing.data.HardnessDetails#getPlies <em>Plies</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Plies</em>' attribute.
	 * @see #getPlies()
	 * @generated
	 */
	void setPlies(Integer value);

	/**
	 * Returns the value of the '<em><b>Edge</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * From the tip to the nearest edge.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Edge</em>' attribute.
	 * @see #setEdge(Double)
	 * @see org.flexwright.testing.data.TestingDataPackage#getHardnessDetails_Edge()
	 * @model annotation="urn:flexwright:field kind='LENGTH' unit='mm' min='0' max='1000' label='Distance to edge' help='From the tip to the nearest edge.'"
	 * @generated
	 */
	Double getEdge();

	/**
	 * Sets the value of the '{@link org.flexwright.testing.data.HardnessDetails#getEdge <em>Edge</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Edge</em>' attribute.
	 * @see #getEdge()
	 * @generated
	 */
	void setEdge(Double value);

	/**
	 * Returns the value of the '<em><b>Spacing</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Between two readings.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Spacing</em>' attribute.
	 * @see #setSpacing(Double)
	 * @see org.flexwright.testing.data.TestingDataPackage#getHardnessDetails_Spacing()
	 * @model annotation="urn:flexwright:field kind='LENGTH' unit='mm' min='0' max='1000' label='Spacing' help='Between two readings.'"
	 * @generated
	 */
	Double getSpacing();

	/**
	 * Sets the value of the '{@link org.flexwright.testing.data.HardnessDetails#getSpacing <em>Spacing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Spacing</em>' attribute.
	 * @see #getSpacing()
	 * @generated
	 */
	void setSpacing(Double value);

	/**
	 * Returns the value of the '<em><b>On Stand</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether a stand with its mass pressed the gauge, not the hand.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>On Stand</em>' attribute.
	 * @see #setOnStand(Boolean)
	 * @see org.flexwright.testing.data.TestingDataPackage#getHardnessDetails_OnStand()
	 * @model annotation="urn:flexwright:field label='On a stand' help='Whether a stand with its mass pressed the gauge, not the hand.'"
	 * @generated
	 */
	Boolean getOnStand();

	/**
	 * Sets the value of the '{@link org.flexwright.testing.data.HardnessDetails#getOnStand <em>On Stand</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>On Stand</em>' attribute.
	 * @see #getOnStand()
	 * @generated
	 */
	void setOnStand(Boolean value);

	/**
	 * Returns the value of the '<em><b>Curved</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether the place is curved.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Curved</em>' attribute.
	 * @see #setCurved(Boolean)
	 * @see org.flexwright.testing.data.TestingDataPackage#getHardnessDetails_Curved()
	 * @model annotation="urn:flexwright:field label='Curved' help='Whether the place is curved.'"
	 * @generated
	 */
	Boolean getCurved();

	/**
	 * Sets the value of the '{@link org.flexwright.testing.data.HardnessDetails#getCurved <em>Curved</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Curved</em>' attribute.
	 * @see #getCurved()
	 * @generated
	 */
	void setCurved(Boolean value);

	/**
	 * Returns the value of the '<em><b>Ply Smooth</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether the faces between plies are smooth and flat.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Ply Smooth</em>' attribute.
	 * @see #setPlySmooth(Boolean)
	 * @see org.flexwright.testing.data.TestingDataPackage#getHardnessDetails_PlySmooth()
	 * @model annotation="urn:flexwright:field label='Plies smooth' help='Whether the faces between plies are smooth and flat.'"
	 * @generated
	 */
	Boolean getPlySmooth();

	/**
	 * Sets the value of the '{@link org.flexwright.testing.data.HardnessDetails#getPlySmooth <em>Ply Smooth</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Ply Smooth</em>' attribute.
	 * @see #getPlySmooth()
	 * @generated
	 */
	void setPlySmooth(Boolean value);

} // HardnessDetails
