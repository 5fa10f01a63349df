/**
 */
package org.flexwright.curing.data;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Cure By</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * What drives the cure.
 * <!-- end-model-doc -->
 * @see org.flexwright.curing.data.CuringDataPackage#getCureBy()
 * @model
 * @generated
 */
public enum CureBy implements Enumerator {
	/**
	 * The '<em><b>ROOM</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ROOM_VALUE
	 * @generated
	 * @ordered
	 */
	ROOM(0, "ROOM", "room"),

	/**
	 * The '<em><b>HEAT</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #HEAT_VALUE
	 * @generated
	 * @ordered
	 */
	HEAT(1, "HEAT", "heat"),

	/**
	 * The '<em><b>LAMP</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #LAMP_VALUE
	 * @generated
	 * @ordered
	 */
	LAMP(2, "LAMP", "lamp");

	/**
	 * The '<em><b>ROOM</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ROOM
	 * @model literal="room"
	 * @generated
	 * @ordered
	 */
	public static final int ROOM_VALUE = 0;

	/**
	 * The '<em><b>HEAT</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #HEAT
	 * @model literal="heat"
	 * @generated
	 * @ordered
	 */
	public static final int HEAT_VALUE = 1;

	/**
	 * The '<em><b>LAMP</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #LAMP
	 * @model literal="lamp"
	 * @generated
	 * @ordered
	 */
	public static final int LAMP_VALUE = 2;

	/**
	 * An array of all the '<em><b>Cure By</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final CureBy[] VALUES_ARRAY =
		new CureBy[] {
			ROOM,
			HEAT,
			LAMP,
		};

	/**
	 * A public read-only list of all the '<em><b>Cure By</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<CureBy> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Cure By</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static CureBy get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			CureBy result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Cure By</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static CureBy getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			CureBy result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Cure By</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static CureBy get(int value) {
		switch (value) {
			case ROOM_VALUE: return ROOM;
			case HEAT_VALUE: return HEAT;
			case LAMP_VALUE: return LAMP;
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
	private CureBy(int value, String name, String literal) {
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
	
} //CureBy
