/**
 */
package org.flexwright.vatprint.data;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Post Cure Medium</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * What surrounds the part while it is post-cured.
 * <!-- end-model-doc -->
 * @see org.flexwright.vatprint.data.VatprintDataPackage#getPostCureMedium()
 * @model
 * @generated
 */
public enum PostCureMedium implements Enumerator {
	/**
	 * The '<em><b>UNKNOWN</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #UNKNOWN_VALUE
	 * @generated
	 * @ordered
	 */
	UNKNOWN(0, "UNKNOWN", "unknown"),

	/**
	 * The '<em><b>AIR</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #AIR_VALUE
	 * @generated
	 * @ordered
	 */
	AIR(1, "AIR", "air"),

	/**
	 * The '<em><b>WATER</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #WATER_VALUE
	 * @generated
	 * @ordered
	 */
	WATER(2, "WATER", "water"),

	/**
	 * The '<em><b>GLYCERINE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #GLYCERINE_VALUE
	 * @generated
	 * @ordered
	 */
	GLYCERINE(3, "GLYCERINE", "glycerine"),

	/**
	 * The '<em><b>INERT GAS</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #INERT_GAS_VALUE
	 * @generated
	 * @ordered
	 */
	INERT_GAS(4, "INERT_GAS", "inert_gas");

	/**
	 * The '<em><b>UNKNOWN</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #UNKNOWN
	 * @model literal="unknown"
	 * @generated
	 * @ordered
	 */
	public static final int UNKNOWN_VALUE = 0;

	/**
	 * The '<em><b>AIR</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #AIR
	 * @model literal="air"
	 * @generated
	 * @ordered
	 */
	public static final int AIR_VALUE = 1;

	/**
	 * The '<em><b>WATER</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #WATER
	 * @model literal="water"
	 * @generated
	 * @ordered
	 */
	public static final int WATER_VALUE = 2;

	/**
	 * The '<em><b>GLYCERINE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #GLYCERINE
	 * @model literal="glycerine"
	 * @generated
	 * @ordered
	 */
	public static final int GLYCERINE_VALUE = 3;

	/**
	 * The '<em><b>INERT GAS</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #INERT_GAS
	 * @model literal="inert_gas"
	 * @generated
	 * @ordered
	 */
	public static final int INERT_GAS_VALUE = 4;

	/**
	 * An array of all the '<em><b>Post Cure Medium</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final PostCureMedium[] VALUES_ARRAY =
		new PostCureMedium[] {
			UNKNOWN,
			AIR,
			WATER,
			GLYCERINE,
			INERT_GAS,
		};

	/**
	 * A public read-only list of all the '<em><b>Post Cure Medium</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<PostCureMedium> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Post Cure Medium</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static PostCureMedium get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			PostCureMedium result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Post Cure Medium</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static PostCureMedium getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			PostCureMedium result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Post Cure Medium</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static PostCureMedium get(int value) {
		switch (value) {
			case UNKNOWN_VALUE: return UNKNOWN;
			case AIR_VALUE: return AIR;
			case WATER_VALUE: return WATER;
			case GLYCERINE_VALUE: return GLYCERINE;
			case INERT_GAS_VALUE: return INERT_GAS;
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
	private PostCureMedium(int value, String name, String literal) {
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
	
} //PostCureMedium
