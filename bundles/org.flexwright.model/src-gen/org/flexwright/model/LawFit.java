/**
 */
package org.flexwright.model;

import java.time.Instant;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Law Fit</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A rubber law fitted to recordings, one or several ways of loading together. The coefficients are computed, not kept.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.LawFit#getTitle <em>Title</em>}</li>
 *   <li>{@link org.flexwright.model.LawFit#getLaw <em>Law</em>}</li>
 *   <li>{@link org.flexwright.model.LawFit#getWeighting <em>Weighting</em>}</li>
 *   <li>{@link org.flexwright.model.LawFit#getFromStretch <em>From Stretch</em>}</li>
 *   <li>{@link org.flexwright.model.LawFit#getToStretch <em>To Stretch</em>}</li>
 *   <li>{@link org.flexwright.model.LawFit#getAt <em>At</em>}</li>
 *   <li>{@link org.flexwright.model.LawFit#getRecordings <em>Recordings</em>}</li>
 * </ul>
 *
 * @see org.flexwright.model.ModelPackage#getLawFit()
 * @model
 * @generated
 */
public interface LawFit extends Entry {
	/**
	 * Returns the value of the '<em><b>Title</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Title</em>' attribute.
	 * @see #setTitle(String)
	 * @see org.flexwright.model.ModelPackage#getLawFit_Title()
	 * @model annotation="urn:flexwright:field label='Title'"
	 * @generated
	 */
	String getTitle();

	/**
	 * Sets the value of the '{@link org.flexwright.model.LawFit#getTitle <em>Title</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Title</em>' attribute.
	 * @see #getTitle()
	 * @generated
	 */
	void setTitle(String value);

	/**
	 * Returns the value of the '<em><b>Law</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * neo-hooke, mooney-rivlin, yeoh, ogden-1, ogden-2 or ogden-3.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Law</em>' attribute.
	 * @see #setLaw(String)
	 * @see org.flexwright.model.ModelPackage#getLawFit_Law()
	 * @model annotation="urn:flexwright:field label='Law' help='neo-hooke, mooney-rivlin, yeoh, ogden-1, ogden-2 or ogden-3.'"
	 * @generated
	 */
	String getLaw();

	/**
	 * Sets the value of the '{@link org.flexwright.model.LawFit#getLaw <em>Law</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Law</em>' attribute.
	 * @see #getLaw()
	 * @generated
	 */
	void setLaw(String value);

	/**
	 * Returns the value of the '<em><b>Weighting</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Which points count how much.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Weighting</em>' attribute.
	 * @see #setWeighting(String)
	 * @see org.flexwright.model.ModelPackage#getLawFit_Weighting()
	 * @model annotation="urn:flexwright:field label='Weighting' help='Which points count how much.'"
	 * @generated
	 */
	String getWeighting();

	/**
	 * Sets the value of the '{@link org.flexwright.model.LawFit#getWeighting <em>Weighting</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Weighting</em>' attribute.
	 * @see #getWeighting()
	 * @generated
	 */
	void setWeighting(String value);

	/**
	 * Returns the value of the '<em><b>From Stretch</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>From Stretch</em>' attribute.
	 * @see #setFromStretch(Double)
	 * @see org.flexwright.model.ModelPackage#getLawFit_FromStretch()
	 * @model annotation="urn:flexwright:field min='0.01' max='50' label='From stretch'"
	 * @generated
	 */
	Double getFromStretch();

	/**
	 * Sets the value of the '{@link org.flexwright.model.LawFit#getFromStretch <em>From Stretch</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>From Stretch</em>' attribute.
	 * @see #getFromStretch()
	 * @generated
	 */
	void setFromStretch(Double value);

	/**
	 * Returns the value of the '<em><b>To Stretch</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>To Stretch</em>' attribute.
	 * @see #setToStretch(Double)
	 * @see org.flexwright.model.ModelPackage#getLawFit_ToStretch()
	 * @model annotation="urn:flexwright:field min='0.01' max='50' label='To stretch'"
	 * @generated
	 */
	Double getToStretch();

	/**
	 * Sets the value of the '{@link org.flexwright.model.LawFit#getToStretch <em>To Stretch</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>To Stretch</em>' attribute.
	 * @see #getToStretch()
	 * @generated
	 */
	void setToStretch(Double value);

	/**
	 * Returns the value of the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>At</em>' attribute.
	 * @see #setAt(Instant)
	 * @see org.flexwright.model.ModelPackage#getLawFit_At()
	 * @model dataType="org.flexwright.model.Instant"
	 *        annotation="urn:flexwright:field label='At'"
	 * @generated
	 */
	Instant getAt();

	/**
	 * Sets the value of the '{@link org.flexwright.model.LawFit#getAt <em>At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>At</em>' attribute.
	 * @see #getAt()
	 * @generated
	 */
	void setAt(Instant value);

	/**
	 * Returns the value of the '<em><b>Recordings</b></em>' reference list.
	 * The list contents are of type {@link org.flexwright.model.Recording}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Recordings</em>' reference list.
	 * @see org.flexwright.model.ModelPackage#getLawFit_Recordings()
	 * @model
	 * @generated
	 */
	EList<Recording> getRecordings();

} // LawFit
