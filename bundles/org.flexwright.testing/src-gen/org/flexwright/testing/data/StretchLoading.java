/**
 */
package org.flexwright.testing.data;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Stretch Loading</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * How a sheet or strip is stretched.
 * <!-- end-model-doc -->
 * @see org.flexwright.testing.data.TestingDataPackage#getStretchLoading()
 * @model
 * @generated
 */
public enum StretchLoading implements Enumerator {
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
	 * The '<em><b>UNIAXIAL</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #UNIAXIAL_VALUE
	 * @generated
	 * @ordered
	 */
	UNIAXIAL(1, "UNIAXIAL", "uniaxial"),

	/**
	 * The '<em><b>EQUIBIAXIAL</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #EQUIBIAXIAL_VALUE
	 * @generated
	 * @ordered
	 */
	EQUIBIAXIAL(2, "EQUIBIAXIAL", "equibiaxial"),

	/**
	 * The '<em><b>PLANAR</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PLANAR_VALUE
	 * @generated
	 * @ordered
	 */
	PLANAR(3, "PLANAR", "planar");

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
	 * The '<em><b>UNIAXIAL</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #UNIAXIAL
	 * @model literal="uniaxial"
	 * @generated
	 * @ordered
	 */
	public static final int UNIAXIAL_VALUE = 1;

	/**
	 * The '<em><b>EQUIBIAXIAL</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #EQUIBIAXIAL
	 * @model literal="equibiaxial"
	 * @generated
	 * @ordered
	 */
	public static final int EQUIBIAXIAL_VALUE = 2;

	/**
	 * The '<em><b>PLANAR</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PLANAR
	 * @model literal="planar"
	 * @generated
	 * @ordered
	 */
	public static final int PLANAR_VALUE = 3;

	/**
	 * An array of all the '<em><b>Stretch Loading</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final StretchLoading[] VALUES_ARRAY =
		new StretchLoading[] {
			UNKNOWN,
			UNIAXIAL,
			EQUIBIAXIAL,
			PLANAR,
		};

	/**
	 * A public read-only list of all the '<em><b>Stretch Loading</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<StretchLoading> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Stretch Loading</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static StretchLoading get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			StretchLoading result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Stretch Loading</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static StretchLoading getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			StretchLoading result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Stretch Loading</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static StretchLoading get(int value) {
		switch (value) {
			case UNKNOWN_VALUE: return UNKNOWN;
			case UNIAXIAL_VALUE: return UNIAXIAL;
			case EQUIBIAXIAL_VALUE: return EQUIBIAXIAL;
			case PLANAR_VALUE: return PLANAR;
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
	private StretchLoading(int value, String name, String literal) {
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
	
} //StretchLoading
