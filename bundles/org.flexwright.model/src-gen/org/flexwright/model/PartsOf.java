/**
 */
package org.flexwright.model;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Parts Of</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * What a share is a share of. UNSTATED is asked about, never guessed.
 * <!-- end-model-doc -->
 * @see org.flexwright.model.ModelPackage#getPartsOf()
 * @model
 * @generated
 */
public enum PartsOf implements Enumerator {
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
	 * The '<em><b>PER 100 POLYMER</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PER_100_POLYMER_VALUE
	 * @generated
	 * @ordered
	 */
	PER_100_POLYMER(1, "PER_100_POLYMER", "per_100_polymer"),

	/**
	 * The '<em><b>OF ALL</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #OF_ALL_VALUE
	 * @generated
	 * @ordered
	 */
	OF_ALL(2, "OF_ALL", "of_all"),

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
	 * The '<em><b>PER 100 POLYMER</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PER_100_POLYMER
	 * @model literal="per_100_polymer"
	 * @generated
	 * @ordered
	 */
	public static final int PER_100_POLYMER_VALUE = 1;

	/**
	 * The '<em><b>OF ALL</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #OF_ALL
	 * @model literal="of_all"
	 * @generated
	 * @ordered
	 */
	public static final int OF_ALL_VALUE = 2;

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
	 * An array of all the '<em><b>Parts Of</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final PartsOf[] VALUES_ARRAY =
		new PartsOf[] {
			UNSTATED,
			PER_100_POLYMER,
			OF_ALL,
			OF_A,
			OF_B,
		};

	/**
	 * A public read-only list of all the '<em><b>Parts Of</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<PartsOf> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Parts Of</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static PartsOf get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			PartsOf result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Parts Of</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static PartsOf getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			PartsOf result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Parts Of</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static PartsOf get(int value) {
		switch (value) {
			case UNSTATED_VALUE: return UNSTATED;
			case PER_100_POLYMER_VALUE: return PER_100_POLYMER;
			case OF_ALL_VALUE: return OF_ALL;
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
	private PartsOf(int value, String name, String literal) {
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
	
} //PartsOf
