/**
 */
package org.flexwright.model;

import java.time.Instant;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Ranking</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Several people put the same pieces in order without seeing which is which.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.Ranking#getCode <em>Code</em>}</li>
 *   <li>{@link org.flexwright.model.Ranking#getTitle <em>Title</em>}</li>
 *   <li>{@link org.flexwright.model.Ranking#getQuestion <em>Question</em>}</li>
 *   <li>{@link org.flexwright.model.Ranking#getAt <em>At</em>}</li>
 *   <li>{@link org.flexwright.model.Ranking#getBlind <em>Blind</em>}</li>
 *   <li>{@link org.flexwright.model.Ranking#getLists <em>Lists</em>}</li>
 * </ul>
 *
 * @see org.flexwright.model.ModelPackage#getRanking()
 * @model
 * @generated
 */
public interface Ranking extends Entry {
	/**
	 * Returns the value of the '<em><b>Code</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Code</em>' attribute.
	 * @see #setCode(String)
	 * @see org.flexwright.model.ModelPackage#getRanking_Code()
	 * @model annotation="urn:flexwright:field label='Ranking'"
	 * @generated
	 */
	String getCode();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Ranking#getCode <em>Code</em>}' attribute.
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
	 * @see org.flexwright.model.ModelPackage#getRanking_Title()
	 * @model annotation="urn:flexwright:field label='Title'"
	 * @generated
	 */
	String getTitle();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Ranking#getTitle <em>Title</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Title</em>' attribute.
	 * @see #getTitle()
	 * @generated
	 */
	void setTitle(String value);

	/**
	 * Returns the value of the '<em><b>Question</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What they were asked: which feels liveliest, which is hardest to press.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Question</em>' attribute.
	 * @see #setQuestion(String)
	 * @see org.flexwright.model.ModelPackage#getRanking_Question()
	 * @model annotation="urn:flexwright:field label='Question' help='What they were asked: which feels liveliest, which is hardest to press.'"
	 * @generated
	 */
	String getQuestion();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Ranking#getQuestion <em>Question</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Question</em>' attribute.
	 * @see #getQuestion()
	 * @generated
	 */
	void setQuestion(String value);

	/**
	 * Returns the value of the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>At</em>' attribute.
	 * @see #setAt(Instant)
	 * @see org.flexwright.model.ModelPackage#getRanking_At()
	 * @model dataType="org.flexwright.model.Instant"
	 *        annotation="urn:flexwright:field label='At'"
	 * @generated
	 */
	Instant getAt();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Ranking#getAt <em>At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>At</em>' attribute.
	 * @see #getAt()
	 * @generated
	 */
	void setAt(Instant value);

	/**
	 * Returns the value of the '<em><b>Blind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether nobody saw which piece was which.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Blind</em>' attribute.
	 * @see #setBlind(Boolean)
	 * @see org.flexwright.model.ModelPackage#getRanking_Blind()
	 * @model annotation="urn:flexwright:field label='Blind' help='Whether nobody saw which piece was which.'"
	 * @generated
	 */
	Boolean getBlind();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Ranking#getBlind <em>Blind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Blind</em>' attribute.
	 * @see #getBlind()
	 * @generated
	 */
	void setBlind(Boolean value);

	/**
	 * Returns the value of the '<em><b>Lists</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.RankList}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Lists</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getRanking_Lists()
	 * @model containment="true"
	 * @generated
	 */
	EList<RankList> getLists();

} // Ranking
