/**
 */
package org.flexwright.model;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Part</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A moulded or printed part or a test piece of a trial.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.Part#getPhotos <em>Photos</em>}</li>
 * </ul>
 *
 * @see org.flexwright.model.ModelPackage#getPart()
 * @model
 * @generated
 */
public interface Part extends Specimen {
	/**
	 * Returns the value of the '<em><b>Photos</b></em>' reference list.
	 * The list contents are of type {@link org.flexwright.model.Attachment}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Photos</em>' reference list.
	 * @see org.flexwright.model.ModelPackage#getPart_Photos()
	 * @model
	 * @generated
	 */
	EList<Attachment> getPhotos();

} // Part
