/**
 */
package garboard.model;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Fuel System</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * @see garboard.model.GarboardPackage#getFuelSystem()
 * @generated
 */
public enum FuelSystem implements Enumerator {
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
	 * The '<em><b>CARBURETTOR</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CARBURETTOR_VALUE
	 * @generated
	 * @ordered
	 */
	CARBURETTOR(1, "CARBURETTOR", "carburettor"),

	/**
	 * The '<em><b>PORT INJECTION</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PORT_INJECTION_VALUE
	 * @generated
	 * @ordered
	 */
	PORT_INJECTION(2, "PORT_INJECTION", "port-injection"),

	/**
	 * The '<em><b>MECHANICAL INJECTION</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #MECHANICAL_INJECTION_VALUE
	 * @generated
	 * @ordered
	 */
	MECHANICAL_INJECTION(3, "MECHANICAL_INJECTION", "mechanical-injection"),

	/**
	 * The '<em><b>COMMON RAIL</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #COMMON_RAIL_VALUE
	 * @generated
	 * @ordered
	 */
	COMMON_RAIL(4, "COMMON_RAIL", "common-rail");

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
	 * The '<em><b>CARBURETTOR</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CARBURETTOR
	 * @generated
	 * @ordered
	 */
	public static final int CARBURETTOR_VALUE = 1;

	/**
	 * The '<em><b>PORT INJECTION</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PORT_INJECTION
	 * @generated
	 * @ordered
	 */
	public static final int PORT_INJECTION_VALUE = 2;

	/**
	 * The '<em><b>MECHANICAL INJECTION</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #MECHANICAL_INJECTION
	 * @generated
	 * @ordered
	 */
	public static final int MECHANICAL_INJECTION_VALUE = 3;

	/**
	 * The '<em><b>COMMON RAIL</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #COMMON_RAIL
	 * @generated
	 * @ordered
	 */
	public static final int COMMON_RAIL_VALUE = 4;

	/**
	 * An array of all the '<em><b>Fuel System</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final FuelSystem[] VALUES_ARRAY =
		new FuelSystem[] {
			NOT_ENTERED,
			CARBURETTOR,
			PORT_INJECTION,
			MECHANICAL_INJECTION,
			COMMON_RAIL,
		};

	/**
	 * A public read-only list of all the '<em><b>Fuel System</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<FuelSystem> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Fuel System</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static FuelSystem get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			FuelSystem result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Fuel System</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static FuelSystem getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			FuelSystem result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Fuel System</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static FuelSystem get(int value) {
		switch (value) {
			case NOT_ENTERED_VALUE: return NOT_ENTERED;
			case CARBURETTOR_VALUE: return CARBURETTOR;
			case PORT_INJECTION_VALUE: return PORT_INJECTION;
			case MECHANICAL_INJECTION_VALUE: return MECHANICAL_INJECTION;
			case COMMON_RAIL_VALUE: return COMMON_RAIL;
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
	private FuelSystem(int value, String name, String literal) {
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
	
} //FuelSystem
