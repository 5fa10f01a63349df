/**
 */
package org.flexwright.model;

import java.time.Instant;
import java.time.LocalDate;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Batch</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * So many of a recipe, made in pots. Each pot is a trial of its own.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.Batch#getCode <em>Code</em>}</li>
 *   <li>{@link org.flexwright.model.Batch#getTitle <em>Title</em>}</li>
 *   <li>{@link org.flexwright.model.Batch#getRecipe <em>Recipe</em>}</li>
 *   <li>{@link org.flexwright.model.Batch#getWanted <em>Wanted</em>}</li>
 *   <li>{@link org.flexwright.model.Batch#getSpares <em>Spares</em>}</li>
 *   <li>{@link org.flexwright.model.Batch#getCreatedAt <em>Created At</em>}</li>
 *   <li>{@link org.flexwright.model.Batch#getNeededBy <em>Needed By</em>}</li>
 *   <li>{@link org.flexwright.model.Batch#getClosedAt <em>Closed At</em>}</li>
 *   <li>{@link org.flexwright.model.Batch#getRejectLimit <em>Reject Limit</em>}</li>
 *   <li>{@link org.flexwright.model.Batch#getPots <em>Pots</em>}</li>
 *   <li>{@link org.flexwright.model.Batch#getStartAt <em>Start At</em>}</li>
 * </ul>
 *
 * @see org.flexwright.model.ModelPackage#getBatch()
 * @model
 * @generated
 */
public interface Batch extends Entry {
	/**
	 * Returns the value of the '<em><b>Code</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Code</em>' attribute.
	 * @see #setCode(String)
	 * @see org.flexwright.model.ModelPackage#getBatch_Code()
	 * @model annotation="urn:flexwright:field label='Batch'"
	 * @generated
	 */
	String getCode();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Batch#getCode <em>Code</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Code</em>' attribute.
	 * @see #getCode()
	 * @generated
	 */
	void setCode(String value);

	/**
	 * Returns the value of the '<em><b>Title</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Title</em>' attribute.
	 * @see #setTitle(String)
	 * @see org.flexwright.model.ModelPackage#getBatch_Title()
	 * @model annotation="urn:flexwright:field label='Title'"
	 * @generated
	 */
	String getTitle();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Batch#getTitle <em>Title</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Title</em>' attribute.
	 * @see #getTitle()
	 * @generated
	 */
	void setTitle(String value);

	/**
	 * Returns the value of the '<em><b>Recipe</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Recipe</em>' reference.
	 * @see #setRecipe(Recipe)
	 * @see org.flexwright.model.ModelPackage#getBatch_Recipe()
	 * @model
	 * @generated
	 */
	Recipe getRecipe();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Batch#getRecipe <em>Recipe</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Recipe</em>' reference.
	 * @see #getRecipe()
	 * @generated
	 */
	void setRecipe(Recipe value);

	/**
	 * Returns the value of the '<em><b>Wanted</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Wanted</em>' attribute.
	 * @see #setWanted(Integer)
	 * @see org.flexwright.model.ModelPackage#getBatch_Wanted()
	 * @model annotation="urn:flexwright:field min='1' max='100000' label='Good parts wanted'"
	 * @generated
	 */
	Integer getWanted();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Batch#getWanted <em>Wanted</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Wanted</em>' attribute.
	 * @see #getWanted()
	 * @generated
	 */
	void setWanted(Integer value);

	/**
	 * Returns the value of the '<em><b>Spares</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Parts made on top, against rejects.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Spares</em>' attribute.
	 * @see #setSpares(Integer)
	 * @see org.flexwright.model.ModelPackage#getBatch_Spares()
	 * @model annotation="urn:flexwright:field min='0' max='100000' label='Spares' help='Parts made on top, against rejects.'"
	 * @generated
	 */
	Integer getSpares();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Batch#getSpares <em>Spares</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Spares</em>' attribute.
	 * @see #getSpares()
	 * @generated
	 */
	void setSpares(Integer value);

	/**
	 * Returns the value of the '<em><b>Created At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Created At</em>' attribute.
	 * @see #setCreatedAt(Instant)
	 * @see org.flexwright.model.ModelPackage#getBatch_CreatedAt()
	 * @model dataType="org.flexwright.model.Instant"
	 *        annotation="urn:flexwright:field label='Planned at'"
	 * @generated
	 */
	Instant getCreatedAt();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Batch#getCreatedAt <em>Created At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Created At</em>' attribute.
	 * @see #getCreatedAt()
	 * @generated
	 */
	void setCreatedAt(Instant value);

	/**
	 * Returns the value of the '<em><b>Needed By</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Needed By</em>' attribute.
	 * @see #setNeededBy(LocalDate)
	 * @see org.flexwright.model.ModelPackage#getBatch_NeededBy()
	 * @model dataType="org.flexwright.model.LocalDate"
	 *        annotation="urn:flexwright:field label='Needed by'"
	 * @generated
	 */
	LocalDate getNeededBy();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Batch#getNeededBy <em>Needed By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Needed By</em>' attribute.
	 * @see #getNeededBy()
	 * @generated
	 */
	void setNeededBy(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Closed At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Closed At</em>' attribute.
	 * @see #setClosedAt(Instant)
	 * @see org.flexwright.model.ModelPackage#getBatch_ClosedAt()
	 * @model dataType="org.flexwright.model.Instant"
	 *        annotation="urn:flexwright:field label='Closed at'"
	 * @generated
	 */
	Instant getClosedAt();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Batch#getClosedAt <em>Closed At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Closed At</em>' attribute.
	 * @see #getClosedAt()
	 * @generated
	 */
	void setClosedAt(Instant value);

	/**
	 * Returns the value of the '<em><b>Reject Limit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Rejects at which the batch stops to be looked at; agreed beforehand.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Reject Limit</em>' attribute.
	 * @see #setRejectLimit(Integer)
	 * @see org.flexwright.model.ModelPackage#getBatch_RejectLimit()
	 * @model annotation="urn:flexwright:field min='0' max='100000' label='Reject limit' help='Rejects at which the batch stops to be looked at; agreed beforehand.'"
	 * @generated
	 */
	Integer getRejectLimit();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Batch#getRejectLimit <em>Reject Limit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Reject Limit</em>' attribute.
	 * @see #getRejectLimit()
	 * @generated
	 */
	void setRejectLimit(Integer value);

	/**
	 * Returns the value of the '<em><b>Pots</b></em>' reference list.
	 * The list contents are of type {@link org.flexwright.model.Trial}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Pots</em>' reference list.
	 * @see org.flexwright.model.ModelPackage#getBatch_Pots()
	 * @model
	 * @generated
	 */
	EList<Trial> getPots();

	/**
	 * Returns the value of the '<em><b>Start At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * When work on it is to begin.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Start At</em>' attribute.
	 * @see #setStartAt(Instant)
	 * @see org.flexwright.model.ModelPackage#getBatch_StartAt()
	 * @model dataType="org.flexwright.model.Instant"
	 *        annotation="urn:flexwright:field label='Begins' help='When work on it is to begin.'"
	 * @generated
	 */
	Instant getStartAt();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Batch#getStartAt <em>Start At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Start At</em>' attribute.
	 * @see #getStartAt()
	 * @generated
	 */
	void setStartAt(Instant value);

} // Batch
