/**
 */
package garboard.model;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Fitting Material</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * @see garboard.model.GarboardPackage#getFittingMaterial()
 * @generated
 */
public enum FittingMaterial implements Enumerator {
	/**
	 * The '<em><b>NOT ENTERED</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #NOT_ENTERED_VALUE
	 * @generated
	 * @ordered
	 */
	NOT_ENTERED(0, "NOT_ENTERED", "not-entered"),

	/**
	 * The '<em><b>BRONZE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BRONZE_VALUE
	 * @generated
	 * @ordered
	 */
	BRONZE(1, "BRONZE", "bronze"),

	/**
	 * The '<em><b>DZR BRASS</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #DZR_BRASS_VALUE
	 * @generated
	 * @ordered
	 */
	DZR_BRASS(2, "DZR_BRASS", "dzr-brass"),

	/**
	 * The '<em><b>BRASS</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BRASS_VALUE
	 * @generated
	 * @ordered
	 */
	BRASS(3, "BRASS", "brass"),

	/**
	 * The '<em><b>STAINLESS STEEL</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #STAINLESS_STEEL_VALUE
	 * @generated
	 * @ordered
	 */
	STAINLESS_STEEL(4, "STAINLESS_STEEL", "stainless-steel"),

	/**
	 * The '<em><b>REINFORCED PLASTIC</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #REINFORCED_PLASTIC_VALUE
	 * @generated
	 * @ordered
	 */
	REINFORCED_PLASTIC(5, "REINFORCED_PLASTIC", "reinforced-plastic"),

	/**
	 * The '<em><b>PLASTIC</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PLASTIC_VALUE
	 * @generated
	 * @ordered
	 */
	PLASTIC(6, "PLASTIC", "plastic"),

	/**
	 * The '<em><b>ALUMINIUM</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ALUMINIUM_VALUE
	 * @generated
	 * @ordered
	 */
	ALUMINIUM(7, "ALUMINIUM", "aluminium"),

	/**
	 * The '<em><b>STEEL</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #STEEL_VALUE
	 * @generated
	 * @ordered
	 */
	STEEL(8, "STEEL", "steel"),

	/**
	 * The '<em><b>CAST IRON</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CAST_IRON_VALUE
	 * @generated
	 * @ordered
	 */
	CAST_IRON(9, "CAST_IRON", "cast-iron");

	/**
	 * The '<em><b>NOT ENTERED</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #NOT_ENTERED
	 * @generated
	 * @ordered
	 */
	public static final int NOT_ENTERED_VALUE = 0;

	/**
	 * The '<em><b>BRONZE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BRONZE
	 * @generated
	 * @ordered
	 */
	public static final int BRONZE_VALUE = 1;

	/**
	 * The '<em><b>DZR BRASS</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #DZR_BRASS
	 * @generated
	 * @ordered
	 */
	public static final int DZR_BRASS_VALUE = 2;

	/**
	 * The '<em><b>BRASS</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BRASS
	 * @generated
	 * @ordered
	 */
	public static final int BRASS_VALUE = 3;

	/**
	 * The '<em><b>STAINLESS STEEL</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #STAINLESS_STEEL
	 * @generated
	 * @ordered
	 */
	public static final int STAINLESS_STEEL_VALUE = 4;

	/**
	 * The '<em><b>REINFORCED PLASTIC</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #REINFORCED_PLASTIC
	 * @generated
	 * @ordered
	 */
	public static final int REINFORCED_PLASTIC_VALUE = 5;

	/**
	 * The '<em><b>PLASTIC</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PLASTIC
	 * @generated
	 * @ordered
	 */
	public static final int PLASTIC_VALUE = 6;

	/**
	 * The '<em><b>ALUMINIUM</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ALUMINIUM
	 * @generated
	 * @ordered
	 */
	public static final int ALUMINIUM_VALUE = 7;

	/**
	 * The '<em><b>STEEL</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #STEEL
	 * @generated
	 * @ordered
	 */
	public static final int STEEL_VALUE = 8;

	/**
	 * The '<em><b>CAST IRON</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CAST_IRON
	 * @generated
	 * @ordered
	 */
	public static final int CAST_IRON_VALUE = 9;

	/**
	 * An array of all the '<em><b>Fitting Material</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final FittingMaterial[] VALUES_ARRAY =
		new FittingMaterial[] {
			NOT_ENTERED,
			BRONZE,
			DZR_BRASS,
			BRASS,
			STAINLESS_STEEL,
			REINFORCED_PLASTIC,
			PLASTIC,
			ALUMINIUM,
			STEEL,
			CAST_IRON,
		};

	/**
	 * A public read-only list of all the '<em><b>Fitting Material</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<FittingMaterial> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Fitting Material</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static FittingMaterial get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			FittingMaterial result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Fitting Material</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static FittingMaterial getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			FittingMaterial result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Fitting Material</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static FittingMaterial get(int value) {
		switch (value) {
			case NOT_ENTERED_VALUE: return NOT_ENTERED;
			case BRONZE_VALUE: return BRONZE;
			case DZR_BRASS_VALUE: return DZR_BRASS;
			case BRASS_VALUE: return BRASS;
			case STAINLESS_STEEL_VALUE: return STAINLESS_STEEL;
			case REINFORCED_PLASTIC_VALUE: return REINFORCED_PLASTIC;
			case PLASTIC_VALUE: return PLASTIC;
			case ALUMINIUM_VALUE: return ALUMINIUM;
			case STEEL_VALUE: return STEEL;
			case CAST_IRON_VALUE: return CAST_IRON;
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
	private FittingMaterial(int value, String name, String literal) {
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
	
} //FittingMaterial
