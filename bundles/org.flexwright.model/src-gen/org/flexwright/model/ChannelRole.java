/**
 */
package org.flexwright.model;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Channel Role</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * What a column or channel of a recording means.
 * <!-- end-model-doc -->
 * @see org.flexwright.model.ModelPackage#getChannelRole()
 * @model
 * @generated
 */
public enum ChannelRole implements Enumerator {
	/**
	 * The '<em><b>TIME</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TIME_VALUE
	 * @generated
	 * @ordered
	 */
	TIME(0, "TIME", "time"),

	/**
	 * The '<em><b>TRAVEL</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TRAVEL_VALUE
	 * @generated
	 * @ordered
	 */
	TRAVEL(1, "TRAVEL", "travel"),

	/**
	 * The '<em><b>FORCE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #FORCE_VALUE
	 * @generated
	 * @ordered
	 */
	FORCE(2, "FORCE", "force"),

	/**
	 * The '<em><b>STRETCH</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #STRETCH_VALUE
	 * @generated
	 * @ordered
	 */
	STRETCH(3, "STRETCH", "stretch"),

	/**
	 * The '<em><b>STRAIN</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #STRAIN_VALUE
	 * @generated
	 * @ordered
	 */
	STRAIN(4, "STRAIN", "strain"),

	/**
	 * The '<em><b>STRESS</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #STRESS_VALUE
	 * @generated
	 * @ordered
	 */
	STRESS(5, "STRESS", "stress"),

	/**
	 * The '<em><b>TEMPERATURE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TEMPERATURE_VALUE
	 * @generated
	 * @ordered
	 */
	TEMPERATURE(6, "TEMPERATURE", "temperature"),

	/**
	 * The '<em><b>MASS</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #MASS_VALUE
	 * @generated
	 * @ordered
	 */
	MASS(7, "MASS", "mass"),

	/**
	 * The '<em><b>HEIGHT</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #HEIGHT_VALUE
	 * @generated
	 * @ordered
	 */
	HEIGHT(8, "HEIGHT", "height"),

	/**
	 * The '<em><b>SOUND</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SOUND_VALUE
	 * @generated
	 * @ordered
	 */
	SOUND(9, "SOUND", "sound"),

	/**
	 * The '<em><b>FRAME</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #FRAME_VALUE
	 * @generated
	 * @ordered
	 */
	FRAME(10, "FRAME", "frame"),

	/**
	 * The '<em><b>OTHER</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #OTHER_VALUE
	 * @generated
	 * @ordered
	 */
	OTHER(11, "OTHER", "other");

	/**
	 * The '<em><b>TIME</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TIME
	 * @model literal="time"
	 * @generated
	 * @ordered
	 */
	public static final int TIME_VALUE = 0;

	/**
	 * The '<em><b>TRAVEL</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TRAVEL
	 * @model literal="travel"
	 * @generated
	 * @ordered
	 */
	public static final int TRAVEL_VALUE = 1;

	/**
	 * The '<em><b>FORCE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #FORCE
	 * @model literal="force"
	 * @generated
	 * @ordered
	 */
	public static final int FORCE_VALUE = 2;

	/**
	 * The '<em><b>STRETCH</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #STRETCH
	 * @model literal="stretch"
	 * @generated
	 * @ordered
	 */
	public static final int STRETCH_VALUE = 3;

	/**
	 * The '<em><b>STRAIN</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #STRAIN
	 * @model literal="strain"
	 * @generated
	 * @ordered
	 */
	public static final int STRAIN_VALUE = 4;

	/**
	 * The '<em><b>STRESS</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #STRESS
	 * @model literal="stress"
	 * @generated
	 * @ordered
	 */
	public static final int STRESS_VALUE = 5;

	/**
	 * The '<em><b>TEMPERATURE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TEMPERATURE
	 * @model literal="temperature"
	 * @generated
	 * @ordered
	 */
	public static final int TEMPERATURE_VALUE = 6;

	/**
	 * The '<em><b>MASS</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #MASS
	 * @model literal="mass"
	 * @generated
	 * @ordered
	 */
	public static final int MASS_VALUE = 7;

	/**
	 * The '<em><b>HEIGHT</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #HEIGHT
	 * @model literal="height"
	 * @generated
	 * @ordered
	 */
	public static final int HEIGHT_VALUE = 8;

	/**
	 * The '<em><b>SOUND</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SOUND
	 * @model literal="sound"
	 * @generated
	 * @ordered
	 */
	public static final int SOUND_VALUE = 9;

	/**
	 * The '<em><b>FRAME</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #FRAME
	 * @model literal="frame"
	 * @generated
	 * @ordered
	 */
	public static final int FRAME_VALUE = 10;

	/**
	 * The '<em><b>OTHER</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #OTHER
	 * @model literal="other"
	 * @generated
	 * @ordered
	 */
	public static final int OTHER_VALUE = 11;

	/**
	 * An array of all the '<em><b>Channel Role</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final ChannelRole[] VALUES_ARRAY =
		new ChannelRole[] {
			TIME,
			TRAVEL,
			FORCE,
			STRETCH,
			STRAIN,
			STRESS,
			TEMPERATURE,
			MASS,
			HEIGHT,
			SOUND,
			FRAME,
			OTHER,
		};

	/**
	 * A public read-only list of all the '<em><b>Channel Role</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<ChannelRole> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Channel Role</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static ChannelRole get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			ChannelRole result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Channel Role</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static ChannelRole getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			ChannelRole result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Channel Role</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static ChannelRole get(int value) {
		switch (value) {
			case TIME_VALUE: return TIME;
			case TRAVEL_VALUE: return TRAVEL;
			case FORCE_VALUE: return FORCE;
			case STRETCH_VALUE: return STRETCH;
			case STRAIN_VALUE: return STRAIN;
			case STRESS_VALUE: return STRESS;
			case TEMPERATURE_VALUE: return TEMPERATURE;
			case MASS_VALUE: return MASS;
			case HEIGHT_VALUE: return HEIGHT;
			case SOUND_VALUE: return SOUND;
			case FRAME_VALUE: return FRAME;
			case OTHER_VALUE: return OTHER;
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
	private ChannelRole(int value, String name, String literal) {
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
	
} //ChannelRole
