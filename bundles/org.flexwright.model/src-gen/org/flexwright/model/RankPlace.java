/**
 */
package org.flexwright.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Rank Place</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A piece and its place in the order; pieces that feel alike share a place.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.RankPlace#getSpecimen <em>Specimen</em>}</li>
 *   <li>{@link org.flexwright.model.RankPlace#getRank <em>Rank</em>}</li>
 * </ul>
 *
 * @see org.flexwright.model.ModelPackage#getRankPlace()
 * @model
 * @generated
 */
public interface RankPlace extends Entry {
	/**
	 * Returns the value of the '<em><b>Specimen</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Specimen</em>' reference.
	 * @see #setSpecimen(Specimen)
	 * @see org.flexwright.model.ModelPackage#getRankPlace_Specimen()
	 * @model
	 * @generated
	 */
	Specimen getSpecimen();

	/**
	 * Sets the value of the '{@link org.flexwright.model.RankPlace#getSpecimen <em>Specimen</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Specimen</em>' reference.
	 * @see #getSpecimen()
	 * @generated
	 */
	void setSpecimen(Specimen value);

	/**
	 * Returns the value of the '<em><b>Rank</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * 1 is first.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Rank</em>' attribute.
	 * @see #setRank(Integer)
	 * @see org.flexwright.model.ModelPackage#getRankPlace_Rank()
	 * @model annotation="urn:flexwright:field min='1' max='1000' label='Place' help='1 is first.'"
	 * @generated
	 */
	Integer getRank();

	/**
	 * Sets the value of the '{@link org.flexwright.model.RankPlace#getRank <em>Rank</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rank</em>' attribute.
	 * @see #getRank()
	 * @generated
	 */
	void setRank(Integer value);

} // RankPlace
