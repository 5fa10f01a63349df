/**
 */
package org.flexwright.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Control Piece</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A kept piece read at the start of each session.
 * <!-- end-model-doc -->
 *
 *
 * @see org.flexwright.model.ModelPackage#getControlPiece()
 * @model
 * @generated
 */
public interface ControlPiece extends Specimen {
} // ControlPiece
