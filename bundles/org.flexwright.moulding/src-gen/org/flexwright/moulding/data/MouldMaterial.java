/**
 */
package org.flexwright.moulding.data;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Mould Material</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * What the mould is made of.
 * <!-- end-model-doc -->
 * @see org.flexwright.moulding.data.MouldingDataPackage#getMouldMaterial()
 * @model
 * @generated
 */
public enum MouldMaterial implements Enumerator {
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
	 * The '<em><b>VAT PRINT</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #VAT_PRINT_VALUE
	 * @generated
	 * @ordered
	 */
	VAT_PRINT(1, "VAT_PRINT", "vat_print"),

	/**
	 * The '<em><b>FILAMENT PRINT</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #FILAMENT_PRINT_VALUE
	 * @generated
	 * @ordered
	 */
	FILAMENT_PRINT(2, "FILAMENT_PRINT", "filament_print"),

	/**
	 * The '<em><b>METAL</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #METAL_VALUE
	 * @generated
	 * @ordered
	 */
	METAL(3, "METAL", "metal"),

	/**
	 * The '<em><b>SILICONE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SILICONE_VALUE
	 * @generated
	 * @ordered
	 */
	SILICONE(4, "SILICONE", "silicone"),

	/**
	 * The '<em><b>PLASTER</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PLASTER_VALUE
	 * @generated
	 * @ordered
	 */
	PLASTER(5, "PLASTER", "plaster"),

	/**
	 * The '<em><b>OTHER</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #OTHER_VALUE
	 * @generated
	 * @ordered
	 */
	OTHER(6, "OTHER", "other");

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
	 * The '<em><b>VAT PRINT</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #VAT_PRINT
	 * @model literal="vat_print"
	 * @generated
	 * @ordered
	 */
	public static final int VAT_PRINT_VALUE = 1;

	/**
	 * The '<em><b>FILAMENT PRINT</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #FILAMENT_PRINT
	 * @model literal="filament_print"
	 * @generated
	 * @ordered
	 */
	public static final int FILAMENT_PRINT_VALUE = 2;

	/**
	 * The '<em><b>METAL</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #METAL
	 * @model literal="metal"
	 * @generated
	 * @ordered
	 */
	public static final int METAL_VALUE = 3;

	/**
	 * The '<em><b>SILICONE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SILICONE
	 * @model literal="silicone"
	 * @generated
	 * @ordered
	 */
	public static final int SILICONE_VALUE = 4;

	/**
	 * The '<em><b>PLASTER</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PLASTER
	 * @model literal="plaster"
	 * @generated
	 * @ordered
	 */
	public static final int PLASTER_VALUE = 5;

	/**
	 * The '<em><b>OTHER</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #OTHER
	 * @model literal="other"
	 * @generated
	 * @ordered
	 */
	public static final int OTHER_VALUE = 6;

	/**
	 * An array of all the '<em><b>Mould Material</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final MouldMaterial[] VALUES_ARRAY =
		new MouldMaterial[] {
			UNKNOWN,
			VAT_PRINT,
			FILAMENT_PRINT,
			METAL,
			SILICONE,
			PLASTER,
			OTHER,
		};

	/**
	 * A public read-only list of all the '<em><b>Mould Material</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<MouldMaterial> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Mould Material</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static MouldMaterial get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			MouldMaterial result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Mould Material</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static MouldMaterial getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			MouldMaterial result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Mould Material</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static MouldMaterial get(int value) {
		switch (value) {
			case UNKNOWN_VALUE: return UNKNOWN;
			case VAT_PRINT_VALUE: return VAT_PRINT;
			case FILAMENT_PRINT_VALUE: return FILAMENT_PRINT;
			case METAL_VALUE: return METAL;
			case SILICONE_VALUE: return SILICONE;
			case PLASTER_VALUE: return PLASTER;
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
	private MouldMaterial(int value, String name, String literal) {
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
	
} //MouldMaterial
