/**
 */
package org.flexwright.mixing.data;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Filler Basis</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * What an amount of filler is counted on: 100 g of polymer, the whole mixture, part A or part B.
 * <!-- end-model-doc -->
 * @see org.flexwright.mixing.data.MixingDataPackage#getFillerBasis()
 * @model
 * @generated
 */
public enum FillerBasis implements Enumerator {
	/**
	 * The '<em><b>UNSTATED</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #UNSTATED_VALUE
	 * @generated
	 * @ordered
	 */
	UNSTATED(0, "UNSTATED", "unstated"),

	/**
	 * The '<em><b>PHR</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PHR_VALUE
	 * @generated
	 * @ordered
	 */
	PHR(1, "PHR", "phr"),

	/**
	 * The '<em><b>OF TOTAL</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #OF_TOTAL_VALUE
	 * @generated
	 * @ordered
	 */
	OF_TOTAL(2, "OF_TOTAL", "of_total"),

	/**
	 * The '<em><b>OF A</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #OF_A_VALUE
	 * @generated
	 * @ordered
	 */
	OF_A(3, "OF_A", "of_a"),

	/**
	 * The '<em><b>OF B</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #OF_B_VALUE
	 * @generated
	 * @ordered
	 */
	OF_B(4, "OF_B", "of_b");

	/**
	 * The '<em><b>UNSTATED</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #UNSTATED
	 * @model literal="unstated"
	 * @generated
	 * @ordered
	 */
	public static final int UNSTATED_VALUE = 0;

	/**
	 * The '<em><b>PHR</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PHR
	 * @model literal="phr"
	 * @generated
	 * @ordered
	 */
	public static final int PHR_VALUE = 1;

	/**
	 * The '<em><b>OF TOTAL</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #OF_TOTAL
	 * @model literal="of_total"
	 * @generated
	 * @ordered
	 */
	public static final int OF_TOTAL_VALUE = 2;

	/**
	 * The '<em><b>OF A</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #OF_A
	 * @model literal="of_a"
	 * @generated
	 * @ordered
	 */
	public static final int OF_A_VALUE = 3;

	/**
	 * The '<em><b>OF B</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #OF_B
	 * @model literal="of_b"
	 * @generated
	 * @ordered
	 */
	public static final int OF_B_VALUE = 4;

	/**
	 * An array of all the '<em><b>Filler Basis</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final FillerBasis[] VALUES_ARRAY =
		new FillerBasis[] {
			UNSTATED,
			PHR,
			OF_TOTAL,
			OF_A,
			OF_B,
		};

	/**
	 * A public read-only list of all the '<em><b>Filler Basis</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<FillerBasis> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Filler Basis</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static FillerBasis get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			FillerBasis result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Filler Basis</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static FillerBasis getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			FillerBasis result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Filler Basis</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static FillerBasis get(int value) {
		switch (value) {
			case UNSTATED_VALUE: return UNSTATED;
			case PHR_VALUE: return PHR;
			case OF_TOTAL_VALUE: return OF_TOTAL;
			case OF_A_VALUE: return OF_A;
			case OF_B_VALUE: return OF_B;
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
	private FillerBasis(int value, String name, String literal) {
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
	
} //FillerBasis
