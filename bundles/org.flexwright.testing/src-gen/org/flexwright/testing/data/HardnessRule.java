/**
 */
package org.flexwright.testing.data;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Hardness Rule</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * Which standard the readings follow.
 * <!-- end-model-doc -->
 * @see org.flexwright.testing.data.TestingDataPackage#getHardnessRule()
 * @model
 * @generated
 */
public enum HardnessRule implements Enumerator {
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
	 * The '<em><b>ISO 48 4</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ISO_48_4_VALUE
	 * @generated
	 * @ordered
	 */
	ISO_48_4(1, "ISO_48_4", "iso_48_4"),

	/**
	 * The '<em><b>ISO 868</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ISO_868_VALUE
	 * @generated
	 * @ordered
	 */
	ISO_868(2, "ISO_868", "iso_868"),

	/**
	 * The '<em><b>ASTM D2240</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ASTM_D2240_VALUE
	 * @generated
	 * @ordered
	 */
	ASTM_D2240(3, "ASTM_D2240", "astm_d2240");

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
	 * The '<em><b>ISO 48 4</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ISO_48_4
	 * @model literal="iso_48_4"
	 *        annotation="urn:flexwright:field label='ISO 48-4'"
	 * @generated
	 * @ordered
	 */
	public static final int ISO_48_4_VALUE = 1;

	/**
	 * The '<em><b>ISO 868</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ISO_868
	 * @model literal="iso_868"
	 *        annotation="urn:flexwright:field label='ISO 868'"
	 * @generated
	 * @ordered
	 */
	public static final int ISO_868_VALUE = 2;

	/**
	 * The '<em><b>ASTM D2240</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ASTM_D2240
	 * @model literal="astm_d2240"
	 *        annotation="urn:flexwright:field label='ASTM D2240'"
	 * @generated
	 * @ordered
	 */
	public static final int ASTM_D2240_VALUE = 3;

	/**
	 * An array of all the '<em><b>Hardness Rule</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final HardnessRule[] VALUES_ARRAY =
		new HardnessRule[] {
			UNKNOWN,
			ISO_48_4,
			ISO_868,
			ASTM_D2240,
		};

	/**
	 * A public read-only list of all the '<em><b>Hardness Rule</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<HardnessRule> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Hardness Rule</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static HardnessRule get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			HardnessRule result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Hardness Rule</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static HardnessRule getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			HardnessRule result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Hardness Rule</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static HardnessRule get(int value) {
		switch (value) {
			case UNKNOWN_VALUE: return UNKNOWN;
			case ISO_48_4_VALUE: return ISO_48_4;
			case ISO_868_VALUE: return ISO_868;
			case ASTM_D2240_VALUE: return ASTM_D2240;
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
	private HardnessRule(int value, String name, String literal) {
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
	
} //HardnessRule
