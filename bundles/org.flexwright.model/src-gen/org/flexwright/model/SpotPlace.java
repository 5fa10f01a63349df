/**
 */
package org.flexwright.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Spot Place</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Where a named spot is, as shares of the width and height of the picture.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.SpotPlace#getSpot <em>Spot</em>}</li>
 *   <li>{@link org.flexwright.model.SpotPlace#getAcross <em>Across</em>}</li>
 *   <li>{@link org.flexwright.model.SpotPlace#getDown <em>Down</em>}</li>
 * </ul>
 *
 * @see org.flexwright.model.ModelPackage#getSpotPlace()
 * @model
 * @generated
 */
public interface SpotPlace extends Entry {
	/**
	 * Returns the value of the '<em><b>Spot</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Spot</em>' attribute.
	 * @see #setSpot(String)
	 * @see org.flexwright.model.ModelPackage#getSpotPlace_Spot()
	 * @model annotation="urn:flexwright:field label='Spot'"
	 * @generated
	 */
	String getSpot();

	/**
	 * Sets the value of the '{@link org.flexwright.model.SpotPlace#getSpot <em>Spot</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Spot</em>' attribute.
	 * @see #getSpot()
	 * @generated
	 */
	void setSpot(String value);

	/**
	 * Returns the value of the '<em><b>Across</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Share of the width from the left.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Across</em>' attribute.
	 * @see #setAcross(Double)
	 * @see org.flexwright.model.ModelPackage#getSpotPlace_Across()
	 * @model annotation="urn:flexwright:field min='0' max='1' label='Across' help='Share of the width from the left.'"
	 * @generated
	 */
	Double getAcross();

	/**
	 * Sets the value of the '{@link org.flexwright.model.SpotPlace#getAcross <em>Across</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Across</em>' attribute.
	 * @see #getAcross()
	 * @generated
	 */
	void setAcross(Double value);

	/**
	 * Returns the value of the '<em><b>Down</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Share of the height from the top.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Down</em>' attribute.
	 * @see #setDown(Double)
	 * @see org.flexwright.model.ModelPackage#getSpotPlace_Down()
	 * @model annotation="urn:flexwright:field min='0' max='1' label='Down' help='Share of the height from the top.'"
	 * @generated
	 */
	Double getDown();

	/**
	 * Sets the value of the '{@link org.flexwright.model.SpotPlace#getDown <em>Down</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Down</em>' attribute.
	 * @see #getDown()
	 * @generated
	 */
	void setDown(Double value);

} // SpotPlace
