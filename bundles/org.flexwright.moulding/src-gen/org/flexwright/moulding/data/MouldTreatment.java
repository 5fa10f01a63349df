/**
 */
package org.flexwright.moulding.data;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Mould Treatment</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * What was done to the mould face before casting.
 * <!-- end-model-doc -->
 * @see org.flexwright.moulding.data.MouldingDataPackage#getMouldTreatment()
 * @model
 * @generated
 */
public enum MouldTreatment implements Enumerator {
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
	 * The '<em><b>NONE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #NONE_VALUE
	 * @generated
	 * @ordered
	 */
	NONE(1, "NONE", "none"),

	/**
	 * The '<em><b>WASHED</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #WASHED_VALUE
	 * @generated
	 * @ordered
	 */
	WASHED(2, "WASHED", "washed"),

	/**
	 * The '<em><b>BAKED</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BAKED_VALUE
	 * @generated
	 * @ordered
	 */
	BAKED(3, "BAKED", "baked"),

	/**
	 * The '<em><b>BARRIER COAT</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BARRIER_COAT_VALUE
	 * @generated
	 * @ordered
	 */
	BARRIER_COAT(4, "BARRIER_COAT", "barrier_coat"),

	/**
	 * The '<em><b>BAKED AND COATED</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BAKED_AND_COATED_VALUE
	 * @generated
	 * @ordered
	 */
	BAKED_AND_COATED(5, "BAKED_AND_COATED", "baked_and_coated");

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
	 * The '<em><b>NONE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #NONE
	 * @model literal="none"
	 * @generated
	 * @ordered
	 */
	public static final int NONE_VALUE = 1;

	/**
	 * The '<em><b>WASHED</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #WASHED
	 * @model literal="washed"
	 * @generated
	 * @ordered
	 */
	public static final int WASHED_VALUE = 2;

	/**
	 * The '<em><b>BAKED</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BAKED
	 * @model literal="baked"
	 * @generated
	 * @ordered
	 */
	public static final int BAKED_VALUE = 3;

	/**
	 * The '<em><b>BARRIER COAT</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BARRIER_COAT
	 * @model literal="barrier_coat"
	 * @generated
	 * @ordered
	 */
	public static final int BARRIER_COAT_VALUE = 4;

	/**
	 * The '<em><b>BAKED AND COATED</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BAKED_AND_COATED
	 * @model literal="baked_and_coated"
	 * @generated
	 * @ordered
	 */
	public static final int BAKED_AND_COATED_VALUE = 5;

	/**
	 * An array of all the '<em><b>Mould Treatment</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final MouldTreatment[] VALUES_ARRAY =
		new MouldTreatment[] {
			UNKNOWN,
			NONE,
			WASHED,
			BAKED,
			BARRIER_COAT,
			BAKED_AND_COATED,
		};

	/**
	 * A public read-only list of all the '<em><b>Mould Treatment</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<MouldTreatment> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Mould Treatment</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static MouldTreatment get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			MouldTreatment result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Mould Treatment</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static MouldTreatment getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			MouldTreatment result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Mould Treatment</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static MouldTreatment get(int value) {
		switch (value) {
			case UNKNOWN_VALUE: return UNKNOWN;
			case NONE_VALUE: return NONE;
			case WASHED_VALUE: return WASHED;
			case BAKED_VALUE: return BAKED;
			case BARRIER_COAT_VALUE: return BARRIER_COAT;
			case BAKED_AND_COATED_VALUE: return BAKED_AND_COATED;
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
	private MouldTreatment(int value, String name, String literal) {
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
	
} //MouldTreatment
