/**
 */
package org.flexwright.model;

import java.time.Instant;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Target Sheet</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A version of what must be reached; frozen once agreed.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.TargetSheet#getVersion <em>Version</em>}</li>
 *   <li>{@link org.flexwright.model.TargetSheet#getFrozenAt <em>Frozen At</em>}</li>
 *   <li>{@link org.flexwright.model.TargetSheet#getFrozenBy <em>Frozen By</em>}</li>
 *   <li>{@link org.flexwright.model.TargetSheet#getReason <em>Reason</em>}</li>
 *   <li>{@link org.flexwright.model.TargetSheet#getTargets <em>Targets</em>}</li>
 * </ul>
 *
 * @see org.flexwright.model.ModelPackage#getTargetSheet()
 * @model
 * @generated
 */
public interface TargetSheet extends Entry {
	/**
	 * Returns the value of the '<em><b>Version</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Version</em>' attribute.
	 * @see #setVersion(int)
	 * @see org.flexwright.model.ModelPackage#getTargetSheet_Version()
	 * @model
	 * @generated
	 */
	int getVersion();

	/**
	 * Sets the value of the '{@link org.flexwright.model.TargetSheet#getVersion <em>Version</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Version</em>' attribute.
	 * @see #getVersion()
	 * @generated
	 */
	void setVersion(int value);

	/**
	 * Returns the value of the '<em><b>Frozen At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Frozen At</em>' attribute.
	 * @see #setFrozenAt(Instant)
	 * @see org.flexwright.model.ModelPackage#getTargetSheet_FrozenAt()
	 * @model dataType="org.flexwright.model.Instant"
	 * @generated
	 */
	Instant getFrozenAt();

	/**
	 * Sets the value of the '{@link org.flexwright.model.TargetSheet#getFrozenAt <em>Frozen At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Frozen At</em>' attribute.
	 * @see #getFrozenAt()
	 * @generated
	 */
	void setFrozenAt(Instant value);

	/**
	 * Returns the value of the '<em><b>Frozen By</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Frozen By</em>' attribute.
	 * @see #setFrozenBy(String)
	 * @see org.flexwright.model.ModelPackage#getTargetSheet_FrozenBy()
	 * @model
	 * @generated
	 */
	String getFrozenBy();

	/**
	 * Sets the value of the '{@link org.flexwright.model.TargetSheet#getFrozenBy <em>Frozen By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Frozen By</em>' attribute.
	 * @see #getFrozenBy()
	 * @generated
	 */
	void setFrozenBy(String value);

	/**
	 * Returns the value of the '<em><b>Reason</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What changed against the version before.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Reason</em>' attribute.
	 * @see #setReason(String)
	 * @see org.flexwright.model.ModelPackage#getTargetSheet_Reason()
	 * @model annotation="urn:flexwright:field label='Why this version' help='What changed against the version before.'"
	 * @generated
	 */
	String getReason();

	/**
	 * Sets the value of the '{@link org.flexwright.model.TargetSheet#getReason <em>Reason</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Reason</em>' attribute.
	 * @see #getReason()
	 * @generated
	 */
	void setReason(String value);

	/**
	 * Returns the value of the '<em><b>Targets</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.Target}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Targets</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getTargetSheet_Targets()
	 * @model containment="true"
	 * @generated
	 */
	EList<Target> getTargets();

} // TargetSheet
