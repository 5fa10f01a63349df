/**
 */
package org.flexwright.model.impl;

import org.eclipse.emf.ecore.EClass;

import org.flexwright.model.ControlPiece;
import org.flexwright.model.ModelPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Control Piece</b></em>'.
 * <!-- end-user-doc -->
 *
 * @generated
 */
public class ControlPieceImpl extends SpecimenImpl implements ControlPiece {
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ControlPieceImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.CONTROL_PIECE;
	}

} //ControlPieceImpl
