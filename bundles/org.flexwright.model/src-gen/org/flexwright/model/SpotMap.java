/**
 */
package org.flexwright.model;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Spot Map</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Where the named spots of a shape are, on a photo or on a sketch.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.SpotMap#getTitle <em>Title</em>}</li>
 *   <li>{@link org.flexwright.model.SpotMap#getPicture <em>Picture</em>}</li>
 *   <li>{@link org.flexwright.model.SpotMap#getSketch <em>Sketch</em>}</li>
 *   <li>{@link org.flexwright.model.SpotMap#getPlaces <em>Places</em>}</li>
 * </ul>
 *
 * @see org.flexwright.model.ModelPackage#getSpotMap()
 * @model
 * @generated
 */
public interface SpotMap extends Entry {
	/**
	 * Returns the value of the '<em><b>Title</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Title</em>' attribute.
	 * @see #setTitle(String)
	 * @see org.flexwright.model.ModelPackage#getSpotMap_Title()
	 * @model annotation="urn:flexwright:field label='Title'"
	 * @generated
	 */
	String getTitle();

	/**
	 * Sets the value of the '{@link org.flexwright.model.SpotMap#getTitle <em>Title</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Title</em>' attribute.
	 * @see #getTitle()
	 * @generated
	 */
	void setTitle(String value);

	/**
	 * Returns the value of the '<em><b>Picture</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Photo the places refer to; empty for a sketch.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Picture</em>' reference.
	 * @see #setPicture(Attachment)
	 * @see org.flexwright.model.ModelPackage#getSpotMap_Picture()
	 * @model
	 * @generated
	 */
	Attachment getPicture();

	/**
	 * Sets the value of the '{@link org.flexwright.model.SpotMap#getPicture <em>Picture</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Picture</em>' reference.
	 * @see #getPicture()
	 * @generated
	 */
	void setPicture(Attachment value);

	/**
	 * Returns the value of the '<em><b>Sketch</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Which drawn outline stands in for a photo: dome-top, dome-side or sheet.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Sketch</em>' attribute.
	 * @see #setSketch(String)
	 * @see org.flexwright.model.ModelPackage#getSpotMap_Sketch()
	 * @model annotation="urn:flexwright:field label='Sketch' help='Which drawn outline stands in for a photo: dome-top, dome-side or sheet.'"
	 * @generated
	 */
	String getSketch();

	/**
	 * Sets the value of the '{@link org.flexwright.model.SpotMap#getSketch <em>Sketch</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sketch</em>' attribute.
	 * @see #getSketch()
	 * @generated
	 */
	void setSketch(String value);

	/**
	 * Returns the value of the '<em><b>Places</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.SpotPlace}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Places</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getSpotMap_Places()
	 * @model containment="true"
	 * @generated
	 */
	EList<SpotPlace> getPlaces();

} // SpotMap
