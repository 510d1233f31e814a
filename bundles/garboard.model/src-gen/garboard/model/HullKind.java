/**
 */
package garboard.model;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Hull Kind</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * @see garboard.model.GarboardPackage#getHullKind()
 * @generated
 */
public enum HullKind implements Enumerator {
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
	 * The '<em><b>MOTOR DISPLACEMENT</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #MOTOR_DISPLACEMENT_VALUE
	 * @generated
	 * @ordered
	 */
	MOTOR_DISPLACEMENT(1, "MOTOR_DISPLACEMENT", "motor-displacement"),

	/**
	 * The '<em><b>MOTOR PLANING</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #MOTOR_PLANING_VALUE
	 * @generated
	 * @ordered
	 */
	MOTOR_PLANING(2, "MOTOR_PLANING", "motor-planing"),

	/**
	 * The '<em><b>SAILING MONOHULL</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SAILING_MONOHULL_VALUE
	 * @generated
	 * @ordered
	 */
	SAILING_MONOHULL(3, "SAILING_MONOHULL", "sailing-monohull"),

	/**
	 * The '<em><b>SAILING MULTIHULL</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SAILING_MULTIHULL_VALUE
	 * @generated
	 * @ordered
	 */
	SAILING_MULTIHULL(4, "SAILING_MULTIHULL", "sailing-multihull"),

	/**
	 * The '<em><b>MOTOR MULTIHULL</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #MOTOR_MULTIHULL_VALUE
	 * @generated
	 * @ordered
	 */
	MOTOR_MULTIHULL(5, "MOTOR_MULTIHULL", "motor-multihull");

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
	 * The '<em><b>MOTOR DISPLACEMENT</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #MOTOR_DISPLACEMENT
	 * @generated
	 * @ordered
	 */
	public static final int MOTOR_DISPLACEMENT_VALUE = 1;

	/**
	 * The '<em><b>MOTOR PLANING</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #MOTOR_PLANING
	 * @generated
	 * @ordered
	 */
	public static final int MOTOR_PLANING_VALUE = 2;

	/**
	 * The '<em><b>SAILING MONOHULL</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SAILING_MONOHULL
	 * @generated
	 * @ordered
	 */
	public static final int SAILING_MONOHULL_VALUE = 3;

	/**
	 * The '<em><b>SAILING MULTIHULL</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SAILING_MULTIHULL
	 * @generated
	 * @ordered
	 */
	public static final int SAILING_MULTIHULL_VALUE = 4;

	/**
	 * The '<em><b>MOTOR MULTIHULL</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #MOTOR_MULTIHULL
	 * @generated
	 * @ordered
	 */
	public static final int MOTOR_MULTIHULL_VALUE = 5;

	/**
	 * An array of all the '<em><b>Hull Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final HullKind[] VALUES_ARRAY =
		new HullKind[] {
			NOT_ENTERED,
			MOTOR_DISPLACEMENT,
			MOTOR_PLANING,
			SAILING_MONOHULL,
			SAILING_MULTIHULL,
			MOTOR_MULTIHULL,
		};

	/**
	 * A public read-only list of all the '<em><b>Hull Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<HullKind> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Hull Kind</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static HullKind get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			HullKind result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Hull Kind</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static HullKind getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			HullKind result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Hull Kind</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static HullKind get(int value) {
		switch (value) {
			case NOT_ENTERED_VALUE: return NOT_ENTERED;
			case MOTOR_DISPLACEMENT_VALUE: return MOTOR_DISPLACEMENT;
			case MOTOR_PLANING_VALUE: return MOTOR_PLANING;
			case SAILING_MONOHULL_VALUE: return SAILING_MONOHULL;
			case SAILING_MULTIHULL_VALUE: return SAILING_MULTIHULL;
			case MOTOR_MULTIHULL_VALUE: return MOTOR_MULTIHULL;
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
	private HullKind(int value, String name, String literal) {
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
	
} //HullKind
