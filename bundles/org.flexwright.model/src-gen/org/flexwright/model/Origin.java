/**
 */
package org.flexwright.model;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Origin</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * Where a number came from. COPIED counts as unconfirmed until its step is confirmed.
 * <!-- end-model-doc -->
 * @see org.flexwright.model.ModelPackage#getOrigin()
 * @model
 * @generated
 */
public enum Origin implements Enumerator {
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
	 * The '<em><b>TYPED</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TYPED_VALUE
	 * @generated
	 * @ordered
	 */
	TYPED(1, "TYPED", "typed"),

	/**
	 * The '<em><b>MEASURED</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #MEASURED_VALUE
	 * @generated
	 * @ordered
	 */
	MEASURED(2, "MEASURED", "measured"),

	/**
	 * The '<em><b>CALCULATED</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CALCULATED_VALUE
	 * @generated
	 * @ordered
	 */
	CALCULATED(3, "CALCULATED", "calculated"),

	/**
	 * The '<em><b>SHEET</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SHEET_VALUE
	 * @generated
	 * @ordered
	 */
	SHEET(4, "SHEET", "sheet"),

	/**
	 * The '<em><b>ESTIMATED</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ESTIMATED_VALUE
	 * @generated
	 * @ordered
	 */
	ESTIMATED(5, "ESTIMATED", "estimated"),

	/**
	 * The '<em><b>COPIED</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #COPIED_VALUE
	 * @generated
	 * @ordered
	 */
	COPIED(6, "COPIED", "copied"),

	/**
	 * The '<em><b>ASSUMED</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ASSUMED_VALUE
	 * @generated
	 * @ordered
	 */
	ASSUMED(7, "ASSUMED", "assumed");

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
	 * The '<em><b>TYPED</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TYPED
	 * @model literal="typed"
	 * @generated
	 * @ordered
	 */
	public static final int TYPED_VALUE = 1;

	/**
	 * The '<em><b>MEASURED</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #MEASURED
	 * @model literal="measured"
	 * @generated
	 * @ordered
	 */
	public static final int MEASURED_VALUE = 2;

	/**
	 * The '<em><b>CALCULATED</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CALCULATED
	 * @model literal="calculated"
	 * @generated
	 * @ordered
	 */
	public static final int CALCULATED_VALUE = 3;

	/**
	 * The '<em><b>SHEET</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SHEET
	 * @model literal="sheet"
	 * @generated
	 * @ordered
	 */
	public static final int SHEET_VALUE = 4;

	/**
	 * The '<em><b>ESTIMATED</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ESTIMATED
	 * @model literal="estimated"
	 * @generated
	 * @ordered
	 */
	public static final int ESTIMATED_VALUE = 5;

	/**
	 * The '<em><b>COPIED</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #COPIED
	 * @model literal="copied"
	 * @generated
	 * @ordered
	 */
	public static final int COPIED_VALUE = 6;

	/**
	 * The '<em><b>ASSUMED</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ASSUMED
	 * @model literal="assumed"
	 * @generated
	 * @ordered
	 */
	public static final int ASSUMED_VALUE = 7;

	/**
	 * An array of all the '<em><b>Origin</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final Origin[] VALUES_ARRAY =
		new Origin[] {
			UNKNOWN,
			TYPED,
			MEASURED,
			CALCULATED,
			SHEET,
			ESTIMATED,
			COPIED,
			ASSUMED,
		};

	/**
	 * A public read-only list of all the '<em><b>Origin</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<Origin> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Origin</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static Origin get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			Origin result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Origin</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static Origin getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			Origin result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Origin</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static Origin get(int value) {
		switch (value) {
			case UNKNOWN_VALUE: return UNKNOWN;
			case TYPED_VALUE: return TYPED;
			case MEASURED_VALUE: return MEASURED;
			case CALCULATED_VALUE: return CALCULATED;
			case SHEET_VALUE: return SHEET;
			case ESTIMATED_VALUE: return ESTIMATED;
			case COPIED_VALUE: return COPIED;
			case ASSUMED_VALUE: return ASSUMED;
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
	private Origin(int value, String name, String literal) {
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
	
} //Origin
