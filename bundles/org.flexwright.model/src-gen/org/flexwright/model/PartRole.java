/**
 */
package org.flexwright.model;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Part Role</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * What a material does in a step.
 * <!-- end-model-doc -->
 * @see org.flexwright.model.ModelPackage#getPartRole()
 * @model
 * @generated
 */
public enum PartRole implements Enumerator {
	/**
	 * The '<em><b>COMPONENT A</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #COMPONENT_A_VALUE
	 * @generated
	 * @ordered
	 */
	COMPONENT_A(0, "COMPONENT_A", "component_a"),

	/**
	 * The '<em><b>COMPONENT B</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #COMPONENT_B_VALUE
	 * @generated
	 * @ordered
	 */
	COMPONENT_B(1, "COMPONENT_B", "component_b"),

	/**
	 * The '<em><b>SINGLE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SINGLE_VALUE
	 * @generated
	 * @ordered
	 */
	SINGLE(2, "SINGLE", "single"),

	/**
	 * The '<em><b>FILLER</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #FILLER_VALUE
	 * @generated
	 * @ordered
	 */
	FILLER(3, "FILLER", "filler"),

	/**
	 * The '<em><b>PIGMENT</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PIGMENT_VALUE
	 * @generated
	 * @ordered
	 */
	PIGMENT(4, "PIGMENT", "pigment"),

	/**
	 * The '<em><b>PLASTICISER</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PLASTICISER_VALUE
	 * @generated
	 * @ordered
	 */
	PLASTICISER(5, "PLASTICISER", "plasticiser"),

	/**
	 * The '<em><b>THINNER</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #THINNER_VALUE
	 * @generated
	 * @ordered
	 */
	THINNER(6, "THINNER", "thinner"),

	/**
	 * The '<em><b>CATALYST</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CATALYST_VALUE
	 * @generated
	 * @ordered
	 */
	CATALYST(7, "CATALYST", "catalyst"),

	/**
	 * The '<em><b>MOULD</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #MOULD_VALUE
	 * @generated
	 * @ordered
	 */
	MOULD(8, "MOULD", "mould"),

	/**
	 * The '<em><b>RELEASE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #RELEASE_VALUE
	 * @generated
	 * @ordered
	 */
	RELEASE(9, "RELEASE", "release"),

	/**
	 * The '<em><b>WASH</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #WASH_VALUE
	 * @generated
	 * @ordered
	 */
	WASH(10, "WASH", "wash"),

	/**
	 * The '<em><b>OTHER</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #OTHER_VALUE
	 * @generated
	 * @ordered
	 */
	OTHER(11, "OTHER", "other"),

	/**
	 * The '<em><b>PREMIX</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PREMIX_VALUE
	 * @generated
	 * @ordered
	 */
	PREMIX(12, "PREMIX", "premix"),

	/**
	 * The '<em><b>POLYOL</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #POLYOL_VALUE
	 * @generated
	 * @ordered
	 */
	POLYOL(13, "POLYOL", "polyol");

	/**
	 * The '<em><b>COMPONENT A</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #COMPONENT_A
	 * @model literal="component_a"
	 * @generated
	 * @ordered
	 */
	public static final int COMPONENT_A_VALUE = 0;

	/**
	 * The '<em><b>COMPONENT B</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #COMPONENT_B
	 * @model literal="component_b"
	 * @generated
	 * @ordered
	 */
	public static final int COMPONENT_B_VALUE = 1;

	/**
	 * The '<em><b>SINGLE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SINGLE
	 * @model literal="single"
	 * @generated
	 * @ordered
	 */
	public static final int SINGLE_VALUE = 2;

	/**
	 * The '<em><b>FILLER</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #FILLER
	 * @model literal="filler"
	 * @generated
	 * @ordered
	 */
	public static final int FILLER_VALUE = 3;

	/**
	 * The '<em><b>PIGMENT</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PIGMENT
	 * @model literal="pigment"
	 * @generated
	 * @ordered
	 */
	public static final int PIGMENT_VALUE = 4;

	/**
	 * The '<em><b>PLASTICISER</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PLASTICISER
	 * @model literal="plasticiser"
	 * @generated
	 * @ordered
	 */
	public static final int PLASTICISER_VALUE = 5;

	/**
	 * The '<em><b>THINNER</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #THINNER
	 * @model literal="thinner"
	 * @generated
	 * @ordered
	 */
	public static final int THINNER_VALUE = 6;

	/**
	 * The '<em><b>CATALYST</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CATALYST
	 * @model literal="catalyst"
	 * @generated
	 * @ordered
	 */
	public static final int CATALYST_VALUE = 7;

	/**
	 * The '<em><b>MOULD</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #MOULD
	 * @model literal="mould"
	 * @generated
	 * @ordered
	 */
	public static final int MOULD_VALUE = 8;

	/**
	 * The '<em><b>RELEASE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #RELEASE
	 * @model literal="release"
	 * @generated
	 * @ordered
	 */
	public static final int RELEASE_VALUE = 9;

	/**
	 * The '<em><b>WASH</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #WASH
	 * @model literal="wash"
	 * @generated
	 * @ordered
	 */
	public static final int WASH_VALUE = 10;

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
	 * The '<em><b>PREMIX</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PREMIX
	 * @model literal="premix"
	 * @generated
	 * @ordered
	 */
	public static final int PREMIX_VALUE = 12;

	/**
	 * The '<em><b>POLYOL</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #POLYOL
	 * @model literal="polyol"
	 * @generated
	 * @ordered
	 */
	public static final int POLYOL_VALUE = 13;

	/**
	 * An array of all the '<em><b>Part Role</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final PartRole[] VALUES_ARRAY =
		new PartRole[] {
			COMPONENT_A,
			COMPONENT_B,
			SINGLE,
			FILLER,
			PIGMENT,
			PLASTICISER,
			THINNER,
			CATALYST,
			MOULD,
			RELEASE,
			WASH,
			OTHER,
			PREMIX,
			POLYOL,
		};

	/**
	 * A public read-only list of all the '<em><b>Part Role</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<PartRole> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Part Role</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static PartRole get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			PartRole result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Part Role</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static PartRole getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			PartRole result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Part Role</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static PartRole get(int value) {
		switch (value) {
			case COMPONENT_A_VALUE: return COMPONENT_A;
			case COMPONENT_B_VALUE: return COMPONENT_B;
			case SINGLE_VALUE: return SINGLE;
			case FILLER_VALUE: return FILLER;
			case PIGMENT_VALUE: return PIGMENT;
			case PLASTICISER_VALUE: return PLASTICISER;
			case THINNER_VALUE: return THINNER;
			case CATALYST_VALUE: return CATALYST;
			case MOULD_VALUE: return MOULD;
			case RELEASE_VALUE: return RELEASE;
			case WASH_VALUE: return WASH;
			case OTHER_VALUE: return OTHER;
			case PREMIX_VALUE: return PREMIX;
			case POLYOL_VALUE: return POLYOL;
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
	private PartRole(int value, String name, String literal) {
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
	
} //PartRole
