/**
 */
package org.flexwright.model;

import java.time.LocalDate;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Mould</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A mould, with every cast it has seen.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.Mould#getCode <em>Code</em>}</li>
 *   <li>{@link org.flexwright.model.Mould#getName <em>Name</em>}</li>
 *   <li>{@link org.flexwright.model.Mould#getMaterial <em>Material</em>}</li>
 *   <li>{@link org.flexwright.model.Mould#getMadeOn <em>Made On</em>}</li>
 *   <li>{@link org.flexwright.model.Mould#getCavities <em>Cavities</em>}</li>
 *   <li>{@link org.flexwright.model.Mould#getCastsBefore <em>Casts Before</em>}</li>
 *   <li>{@link org.flexwright.model.Mould#getCastsLimit <em>Casts Limit</em>}</li>
 *   <li>{@link org.flexwright.model.Mould#getTurnMinutes <em>Turn Minutes</em>}</li>
 *   <li>{@link org.flexwright.model.Mould#getPrice <em>Price</em>}</li>
 *   <li>{@link org.flexwright.model.Mould#getCasts <em>Casts</em>}</li>
 * </ul>
 *
 * @see org.flexwright.model.ModelPackage#getMould()
 * @model
 * @generated
 */
public interface Mould extends Entry {
	/**
	 * Returns the value of the '<em><b>Code</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Code</em>' attribute.
	 * @see #setCode(String)
	 * @see org.flexwright.model.ModelPackage#getMould_Code()
	 * @model annotation="urn:flexwright:field label='Mould'"
	 * @generated
	 */
	String getCode();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Mould#getCode <em>Code</em>}' attribute.
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
	 * @see org.flexwright.model.ModelPackage#getMould_Name()
	 * @model annotation="urn:flexwright:field label='Name'"
	 * @generated
	 */
	String getName();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Mould#getName <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Name</em>' attribute.
	 * @see #getName()
	 * @generated
	 */
	void setName(String value);

	/**
	 * Returns the value of the '<em><b>Material</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Material</em>' attribute.
	 * @see #setMaterial(String)
	 * @see org.flexwright.model.ModelPackage#getMould_Material()
	 * @model annotation="urn:flexwright:field label='Made of'"
	 * @generated
	 */
	String getMaterial();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Mould#getMaterial <em>Material</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Material</em>' attribute.
	 * @see #getMaterial()
	 * @generated
	 */
	void setMaterial(String value);

	/**
	 * Returns the value of the '<em><b>Made On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Made On</em>' attribute.
	 * @see #setMadeOn(LocalDate)
	 * @see org.flexwright.model.ModelPackage#getMould_MadeOn()
	 * @model dataType="org.flexwright.model.LocalDate"
	 *        annotation="urn:flexwright:field label='Made on'"
	 * @generated
	 */
	LocalDate getMadeOn();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Mould#getMadeOn <em>Made On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Made On</em>' attribute.
	 * @see #getMadeOn()
	 * @generated
	 */
	void setMadeOn(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Cavities</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Parts a cast.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Cavities</em>' attribute.
	 * @see #setCavities(Integer)
	 * @see org.flexwright.model.ModelPackage#getMould_Cavities()
	 * @model annotation="urn:flexwright:field min='1' max='1000' label='Cavities' help='Parts a cast.'"
	 * @generated
	 */
	Integer getCavities();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Mould#getCavities <em>Cavities</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Cavities</em>' attribute.
	 * @see #getCavities()
	 * @generated
	 */
	void setCavities(Integer value);

	/**
	 * Returns the value of the '<em><b>Casts Before</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Casts made before they were counted here.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Casts Before</em>' attribute.
	 * @see #setCastsBefore(Integer)
	 * @see org.flexwright.model.ModelPackage#getMould_CastsBefore()
	 * @model annotation="urn:flexwright:field min='0' max='100000' label='Casts before' help='Casts made before they were counted here.'"
	 * @generated
	 */
	Integer getCastsBefore();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Mould#getCastsBefore <em>Casts Before</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Casts Before</em>' attribute.
	 * @see #getCastsBefore()
	 * @generated
	 */
	void setCastsBefore(Integer value);

	/**
	 * Returns the value of the '<em><b>Casts Limit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Casts after which it is to be replaced or looked at closely; own experience.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Casts Limit</em>' attribute.
	 * @see #setCastsLimit(Integer)
	 * @see org.flexwright.model.ModelPackage#getMould_CastsLimit()
	 * @model annotation="urn:flexwright:field min='1' max='100000' label='Own limit' help='Casts after which it is to be replaced or looked at closely; own experience.'"
	 * @generated
	 */
	Integer getCastsLimit();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Mould#getCastsLimit <em>Casts Limit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Casts Limit</em>' attribute.
	 * @see #getCastsLimit()
	 * @generated
	 */
	void setCastsLimit(Integer value);

	/**
	 * Returns the value of the '<em><b>Turn Minutes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * From pouring until it can be poured again: cure, demould, cleaning.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Turn Minutes</em>' attribute.
	 * @see #setTurnMinutes(Double)
	 * @see org.flexwright.model.ModelPackage#getMould_TurnMinutes()
	 * @model annotation="urn:flexwright:field kind='DURATION' unit='min' min='0' max='100000' label='Time to be free again' help='From pouring until it can be poured again: cure, demould, cleaning.'"
	 * @generated
	 */
	Double getTurnMinutes();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Mould#getTurnMinutes <em>Turn Minutes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Turn Minutes</em>' attribute.
	 * @see #getTurnMinutes()
	 * @generated
	 */
	void setTurnMinutes(Double value);

	/**
	 * Returns the value of the '<em><b>Price</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Price</em>' attribute.
	 * @see #setPrice(Double)
	 * @see org.flexwright.model.ModelPackage#getMould_Price()
	 * @model annotation="urn:flexwright:field kind='MONEY' unit='EUR' min='0' max='100000' label='Cost'"
	 * @generated
	 */
	Double getPrice();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Mould#getPrice <em>Price</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Price</em>' attribute.
	 * @see #getPrice()
	 * @generated
	 */
	void setPrice(Double value);

	/**
	 * Returns the value of the '<em><b>Casts</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.MouldCast}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Casts</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getMould_Casts()
	 * @model containment="true"
	 * @generated
	 */
	EList<MouldCast> getCasts();

} // Mould
