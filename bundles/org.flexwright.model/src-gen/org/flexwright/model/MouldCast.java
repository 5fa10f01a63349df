/**
 */
package org.flexwright.model;

import java.time.Instant;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Mould Cast</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One cast in a mould.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.MouldCast#getAt <em>At</em>}</li>
 *   <li>{@link org.flexwright.model.MouldCast#getTrial <em>Trial</em>}</li>
 *   <li>{@link org.flexwright.model.MouldCast#getRelease <em>Release</em>}</li>
 *   <li>{@link org.flexwright.model.MouldCast#getReleasedWell <em>Released Well</em>}</li>
 *   <li>{@link org.flexwright.model.MouldCast#getParts <em>Parts</em>}</li>
 * </ul>
 *
 * @see org.flexwright.model.ModelPackage#getMouldCast()
 * @model
 * @generated
 */
public interface MouldCast extends Entry {
	/**
	 * Returns the value of the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>At</em>' attribute.
	 * @see #setAt(Instant)
	 * @see org.flexwright.model.ModelPackage#getMouldCast_At()
	 * @model dataType="org.flexwright.model.Instant"
	 *        annotation="urn:flexwright:field label='At'"
	 * @generated
	 */
	Instant getAt();

	/**
	 * Sets the value of the '{@link org.flexwright.model.MouldCast#getAt <em>At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>At</em>' attribute.
	 * @see #getAt()
	 * @generated
	 */
	void setAt(Instant value);

	/**
	 * Returns the value of the '<em><b>Trial</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Trial</em>' reference.
	 * @see #setTrial(Trial)
	 * @see org.flexwright.model.ModelPackage#getMouldCast_Trial()
	 * @model
	 * @generated
	 */
	Trial getTrial();

	/**
	 * Sets the value of the '{@link org.flexwright.model.MouldCast#getTrial <em>Trial</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Trial</em>' reference.
	 * @see #getTrial()
	 * @generated
	 */
	void setTrial(Trial value);

	/**
	 * Returns the value of the '<em><b>Release</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Release</em>' attribute.
	 * @see #setRelease(String)
	 * @see org.flexwright.model.ModelPackage#getMouldCast_Release()
	 * @model annotation="urn:flexwright:field label='Release agent'"
	 * @generated
	 */
	String getRelease();

	/**
	 * Sets the value of the '{@link org.flexwright.model.MouldCast#getRelease <em>Release</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Release</em>' attribute.
	 * @see #getRelease()
	 * @generated
	 */
	void setRelease(String value);

	/**
	 * Returns the value of the '<em><b>Released Well</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether the parts came out without force or damage.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Released Well</em>' attribute.
	 * @see #setReleasedWell(Boolean)
	 * @see org.flexwright.model.ModelPackage#getMouldCast_ReleasedWell()
	 * @model annotation="urn:flexwright:field label='Released well' help='Whether the parts came out without force or damage.'"
	 * @generated
	 */
	Boolean getReleasedWell();

	/**
	 * Sets the value of the '{@link org.flexwright.model.MouldCast#getReleasedWell <em>Released Well</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Released Well</em>' attribute.
	 * @see #getReleasedWell()
	 * @generated
	 */
	void setReleasedWell(Boolean value);

	/**
	 * Returns the value of the '<em><b>Parts</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Parts</em>' attribute.
	 * @see #setParts(Integer)
	 * @see org.flexwright.model.ModelPackage#getMouldCast_Parts()
	 * @model annotation="urn:flexwright:field min='0' max='1000' label='Parts'"
	 * @generated
	 */
	Integer getParts();

	/**
	 * Sets the value of the '{@link org.flexwright.model.MouldCast#getParts <em>Parts</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Parts</em>' attribute.
	 * @see #getParts()
	 * @generated
	 */
	void setParts(Integer value);

} // MouldCast
