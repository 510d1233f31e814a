/**
 */
package garboard.model;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Water Hose Kind</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * @see garboard.model.GarboardPackage#getWaterHoseKind()
 * @generated
 */
public enum WaterHoseKind implements Enumerator {
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
	 * The '<em><b>WIRE REINFORCED SMOOTH BORE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #WIRE_REINFORCED_SMOOTH_BORE_VALUE
	 * @generated
	 * @ordered
	 */
	WIRE_REINFORCED_SMOOTH_BORE(1, "WIRE_REINFORCED_SMOOTH_BORE", "wire-reinforced-smooth-bore"),

	/**
	 * The '<em><b>CORRUGATED BORE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CORRUGATED_BORE_VALUE
	 * @generated
	 * @ordered
	 */
	CORRUGATED_BORE(2, "CORRUGATED_BORE", "corrugated-bore"),

	/**
	 * The '<em><b>SOFT WALL</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SOFT_WALL_VALUE
	 * @generated
	 * @ordered
	 */
	SOFT_WALL(3, "SOFT_WALL", "soft-wall"),

	/**
	 * The '<em><b>RIGID METAL PIPE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #RIGID_METAL_PIPE_VALUE
	 * @generated
	 * @ordered
	 */
	RIGID_METAL_PIPE(4, "RIGID_METAL_PIPE", "rigid-metal-pipe"),

	/**
	 * The '<em><b>RIGID PLASTIC PIPE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #RIGID_PLASTIC_PIPE_VALUE
	 * @generated
	 * @ordered
	 */
	RIGID_PLASTIC_PIPE(5, "RIGID_PLASTIC_PIPE", "rigid-plastic-pipe");

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
	 * The '<em><b>WIRE REINFORCED SMOOTH BORE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #WIRE_REINFORCED_SMOOTH_BORE
	 * @generated
	 * @ordered
	 */
	public static final int WIRE_REINFORCED_SMOOTH_BORE_VALUE = 1;

	/**
	 * The '<em><b>CORRUGATED BORE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CORRUGATED_BORE
	 * @generated
	 * @ordered
	 */
	public static final int CORRUGATED_BORE_VALUE = 2;

	/**
	 * The '<em><b>SOFT WALL</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SOFT_WALL
	 * @generated
	 * @ordered
	 */
	public static final int SOFT_WALL_VALUE = 3;

	/**
	 * The '<em><b>RIGID METAL PIPE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #RIGID_METAL_PIPE
	 * @generated
	 * @ordered
	 */
	public static final int RIGID_METAL_PIPE_VALUE = 4;

	/**
	 * The '<em><b>RIGID PLASTIC PIPE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #RIGID_PLASTIC_PIPE
	 * @generated
	 * @ordered
	 */
	public static final int RIGID_PLASTIC_PIPE_VALUE = 5;

	/**
	 * An array of all the '<em><b>Water Hose Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final WaterHoseKind[] VALUES_ARRAY =
		new WaterHoseKind[] {
			NOT_ENTERED,
			WIRE_REINFORCED_SMOOTH_BORE,
			CORRUGATED_BORE,
			SOFT_WALL,
			RIGID_METAL_PIPE,
			RIGID_PLASTIC_PIPE,
		};

	/**
	 * A public read-only list of all the '<em><b>Water Hose Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<WaterHoseKind> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Water Hose Kind</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static WaterHoseKind get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			WaterHoseKind result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Water Hose Kind</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static WaterHoseKind getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			WaterHoseKind result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Water Hose Kind</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static WaterHoseKind get(int value) {
		switch (value) {
			case NOT_ENTERED_VALUE: return NOT_ENTERED;
			case WIRE_REINFORCED_SMOOTH_BORE_VALUE: return WIRE_REINFORCED_SMOOTH_BORE;
			case CORRUGATED_BORE_VALUE: return CORRUGATED_BORE;
			case SOFT_WALL_VALUE: return SOFT_WALL;
			case RIGID_METAL_PIPE_VALUE: return RIGID_METAL_PIPE;
			case RIGID_PLASTIC_PIPE_VALUE: return RIGID_PLASTIC_PIPE;
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
	private WaterHoseKind(int value, String name, String literal) {
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
	
} //WaterHoseKind
