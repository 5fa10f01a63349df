/**
 */
package org.flexwright.model;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Piece Kind</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * A moulded or printed part, a test piece, or a button poured beside the parts for the durometer.
 * <!-- end-model-doc -->
 * @see org.flexwright.model.ModelPackage#getPieceKind()
 * @model
 * @generated
 */
public enum PieceKind implements Enumerator {
	/**
	 * The '<em><b>PART</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PART_VALUE
	 * @generated
	 * @ordered
	 */
	PART(0, "PART", "part"),

	/**
	 * The '<em><b>TEST PIECE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TEST_PIECE_VALUE
	 * @generated
	 * @ordered
	 */
	TEST_PIECE(1, "TEST_PIECE", "test_piece"),

	/**
	 * The '<em><b>WITNESS BUTTON</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #WITNESS_BUTTON_VALUE
	 * @generated
	 * @ordered
	 */
	WITNESS_BUTTON(2, "WITNESS_BUTTON", "witness_button");

	/**
	 * The '<em><b>PART</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PART
	 * @model literal="part"
	 * @generated
	 * @ordered
	 */
	public static final int PART_VALUE = 0;

	/**
	 * The '<em><b>TEST PIECE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TEST_PIECE
	 * @model literal="test_piece"
	 * @generated
	 * @ordered
	 */
	public static final int TEST_PIECE_VALUE = 1;

	/**
	 * The '<em><b>WITNESS BUTTON</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #WITNESS_BUTTON
	 * @model literal="witness_button"
	 * @generated
	 * @ordered
	 */
	public static final int WITNESS_BUTTON_VALUE = 2;

	/**
	 * An array of all the '<em><b>Piece Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final PieceKind[] VALUES_ARRAY =
		new PieceKind[] {
			PART,
			TEST_PIECE,
			WITNESS_BUTTON,
		};

	/**
	 * A public read-only list of all the '<em><b>Piece Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<PieceKind> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Piece Kind</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static PieceKind get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			PieceKind result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Piece Kind</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static PieceKind getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			PieceKind result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Piece Kind</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static PieceKind get(int value) {
		switch (value) {
			case PART_VALUE: return PART;
			case TEST_PIECE_VALUE: return TEST_PIECE;
			case WITNESS_BUTTON_VALUE: return WITNESS_BUTTON;
		}
		return null;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private final int value;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private final String name;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private final String literal;

	/**
	 * Only this class can construct instances.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private PieceKind(int value, String name, String literal) {
		this.value = value;
		this.name = name;
		this.literal = literal;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getValue() {
	  return value;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getName() {
	  return name;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getLiteral() {
	  return literal;
	}

	/**
	 * Returns the literal value of the enumerator, which is its string representation.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString() {
		return literal;
	}
	
} //PieceKind
