/**
 */
package org.flexwright.model;

import java.time.Instant;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Provenance</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Where one feature's value came from.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.Provenance#getFeature <em>Feature</em>}</li>
 *   <li>{@link org.flexwright.model.Provenance#getOrigin <em>Origin</em>}</li>
 *   <li>{@link org.flexwright.model.Provenance#getSource <em>Source</em>}</li>
 *   <li>{@link org.flexwright.model.Provenance#getUncertainty <em>Uncertainty</em>}</li>
 *   <li>{@link org.flexwright.model.Provenance#getTypedAs <em>Typed As</em>}</li>
 *   <li>{@link org.flexwright.model.Provenance#getBy <em>By</em>}</li>
 *   <li>{@link org.flexwright.model.Provenance#getAt <em>At</em>}</li>
 * </ul>
 *
 * @see org.flexwright.model.ModelPackage#getProvenance()
 * @model
 * @generated
 */
public interface Provenance extends EObject {
	/**
	 * Returns the value of the '<em><b>Feature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Name of the feature.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Feature</em>' attribute.
	 * @see #setFeature(String)
	 * @see org.flexwright.model.ModelPackage#getProvenance_Feature()
	 * @model
	 * @generated
	 */
	String getFeature();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Provenance#getFeature <em>Feature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Feature</em>' attribute.
	 * @see #getFeature()
	 * @generated
	 */
	void setFeature(String value);

	/**
	 * Returns the value of the '<em><b>Origin</b></em>' attribute.
	 * The literals are from the enumeration {@link org.flexwright.model.Origin}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Kind of origin.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Origin</em>' attribute.
	 * @see org.flexwright.model.Origin
	 * @see #setOrigin(Origin)
	 * @see org.flexwright.model.ModelPackage#getProvenance_Origin()
	 * @model
	 * @generated
	 */
	Origin getOrigin();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Provenance#getOrigin <em>Origin</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Origin</em>' attribute.
	 * @see org.flexwright.model.Origin
	 * @see #getOrigin()
	 * @generated
	 */
	void setOrigin(Origin value);

	/**
	 * Returns the value of the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Source in words.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Source</em>' attribute.
	 * @see #setSource(String)
	 * @see org.flexwright.model.ModelPackage#getProvenance_Source()
	 * @model
	 * @generated
	 */
	String getSource();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Provenance#getSource <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Source</em>' attribute.
	 * @see #getSource()
	 * @generated
	 */
	void setSource(String value);

	/**
	 * Returns the value of the '<em><b>Uncertainty</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Half width in the feature's own unit, 95 %.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Uncertainty</em>' attribute.
	 * @see #setUncertainty(Double)
	 * @see org.flexwright.model.ModelPackage#getProvenance_Uncertainty()
	 * @model
	 * @generated
	 */
	Double getUncertainty();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Provenance#getUncertainty <em>Uncertainty</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Uncertainty</em>' attribute.
	 * @see #getUncertainty()
	 * @generated
	 */
	void setUncertainty(Double value);

	/**
	 * Returns the value of the '<em><b>Typed As</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Exactly what was typed, unit included.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Typed As</em>' attribute.
	 * @see #setTypedAs(String)
	 * @see org.flexwright.model.ModelPackage#getProvenance_TypedAs()
	 * @model
	 * @generated
	 */
	String getTypedAs();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Provenance#getTypedAs <em>Typed As</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Typed As</em>' attribute.
	 * @see #getTypedAs()
	 * @generated
	 */
	void setTypedAs(String value);

	/**
	 * Returns the value of the '<em><b>By</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Who.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>By</em>' attribute.
	 * @see #setBy(String)
	 * @see org.flexwright.model.ModelPackage#getProvenance_By()
	 * @model
	 * @generated
	 */
	String getBy();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Provenance#getBy <em>By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>By</em>' attribute.
	 * @see #getBy()
	 * @generated
	 */
	void setBy(String value);

	/**
	 * Returns the value of the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * When.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>At</em>' attribute.
	 * @see #setAt(Instant)
	 * @see org.flexwright.model.ModelPackage#getProvenance_At()
	 * @model dataType="org.flexwright.model.Instant"
	 * @generated
	 */
	Instant getAt();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Provenance#getAt <em>At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>At</em>' attribute.
	 * @see #getAt()
	 * @generated
	 */
	void setAt(Instant value);

} // Provenance
