/**
 */
package org.flexwright.mixing.data;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Working Time Rule</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * What ends the working time on the sheet it was read from.
 * <!-- end-model-doc -->
 * @see org.flexwright.mixing.data.MixingDataPackage#getWorkingTimeRule()
 * @model
 * @generated
 */
public enum WorkingTimeRule implements Enumerator {
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
	 * The '<em><b>VISCOSITY DOUBLES</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #VISCOSITY_DOUBLES_VALUE
	 * @generated
	 * @ordered
	 */
	VISCOSITY_DOUBLES(1, "VISCOSITY_DOUBLES", "viscosity_doubles"),

	/**
	 * The '<em><b>VISCOSITY LIMIT</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #VISCOSITY_LIMIT_VALUE
	 * @generated
	 * @ordered
	 */
	VISCOSITY_LIMIT(2, "VISCOSITY_LIMIT", "viscosity_limit"),

	/**
	 * The '<em><b>WARMING</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #WARMING_VALUE
	 * @generated
	 * @ordered
	 */
	WARMING(3, "WARMING", "warming"),

	/**
	 * The '<em><b>GELS</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #GELS_VALUE
	 * @generated
	 * @ordered
	 */
	GELS(4, "GELS", "gels");

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
	 * The '<em><b>VISCOSITY DOUBLES</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #VISCOSITY_DOUBLES
	 * @model literal="viscosity_doubles"
	 * @generated
	 * @ordered
	 */
	public static final int VISCOSITY_DOUBLES_VALUE = 1;

	/**
	 * The '<em><b>VISCOSITY LIMIT</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #VISCOSITY_LIMIT
	 * @model literal="viscosity_limit"
	 * @generated
	 * @ordered
	 */
	public static final int VISCOSITY_LIMIT_VALUE = 2;

	/**
	 * The '<em><b>WARMING</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #WARMING
	 * @model literal="warming"
	 * @generated
	 * @ordered
	 */
	public static final int WARMING_VALUE = 3;

	/**
	 * The '<em><b>GELS</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #GELS
	 * @model literal="gels"
	 * @generated
	 * @ordered
	 */
	public static final int GELS_VALUE = 4;

	/**
	 * An array of all the '<em><b>Working Time Rule</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final WorkingTimeRule[] VALUES_ARRAY =
		new WorkingTimeRule[] {
			UNSTATED,
			VISCOSITY_DOUBLES,
			VISCOSITY_LIMIT,
			WARMING,
			GELS,
		};

	/**
	 * A public read-only list of all the '<em><b>Working Time Rule</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<WorkingTimeRule> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Working Time Rule</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static WorkingTimeRule get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			WorkingTimeRule result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Working Time Rule</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static WorkingTimeRule getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			WorkingTimeRule result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Working Time Rule</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static WorkingTimeRule get(int value) {
		switch (value) {
			case UNSTATED_VALUE: return UNSTATED;
			case VISCOSITY_DOUBLES_VALUE: return VISCOSITY_DOUBLES;
			case VISCOSITY_LIMIT_VALUE: return VISCOSITY_LIMIT;
			case WARMING_VALUE: return WARMING;
			case GELS_VALUE: return GELS;
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
	private WorkingTimeRule(int value, String name, String literal) {
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
	
} //WorkingTimeRule
