/**
 */
package garboard.model;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Fuel Line Function</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * @see garboard.model.GarboardPackage#getFuelLineFunction()
 * @generated
 */
public enum FuelLineFunction implements Enumerator {
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
	 * The '<em><b>TANK TO ENGINE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TANK_TO_ENGINE_VALUE
	 * @generated
	 * @ordered
	 */
	TANK_TO_ENGINE(1, "TANK_TO_ENGINE", "tank-to-engine"),

	/**
	 * The '<em><b>TANK TO SEPARATOR</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TANK_TO_SEPARATOR_VALUE
	 * @generated
	 * @ordered
	 */
	TANK_TO_SEPARATOR(2, "TANK_TO_SEPARATOR", "tank-to-separator"),

	/**
	 * The '<em><b>SEPARATOR TO PUMP</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SEPARATOR_TO_PUMP_VALUE
	 * @generated
	 * @ordered
	 */
	SEPARATOR_TO_PUMP(3, "SEPARATOR_TO_PUMP", "separator-to-pump"),

	/**
	 * The '<em><b>PUMP TO CARBURETTOR</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PUMP_TO_CARBURETTOR_VALUE
	 * @generated
	 * @ordered
	 */
	PUMP_TO_CARBURETTOR(4, "PUMP_TO_CARBURETTOR", "pump-to-carburettor"),

	/**
	 * The '<em><b>RETURN</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #RETURN_VALUE
	 * @generated
	 * @ordered
	 */
	RETURN(5, "RETURN", "return"),

	/**
	 * The '<em><b>VENT</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #VENT_VALUE
	 * @generated
	 * @ordered
	 */
	VENT(6, "VENT", "vent"),

	/**
	 * The '<em><b>FILL</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #FILL_VALUE
	 * @generated
	 * @ordered
	 */
	FILL(7, "FILL", "fill");

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
	 * The '<em><b>TANK TO ENGINE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TANK_TO_ENGINE
	 * @generated
	 * @ordered
	 */
	public static final int TANK_TO_ENGINE_VALUE = 1;

	/**
	 * The '<em><b>TANK TO SEPARATOR</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TANK_TO_SEPARATOR
	 * @generated
	 * @ordered
	 */
	public static final int TANK_TO_SEPARATOR_VALUE = 2;

	/**
	 * The '<em><b>SEPARATOR TO PUMP</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SEPARATOR_TO_PUMP
	 * @generated
	 * @ordered
	 */
	public static final int SEPARATOR_TO_PUMP_VALUE = 3;

	/**
	 * The '<em><b>PUMP TO CARBURETTOR</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PUMP_TO_CARBURETTOR
	 * @generated
	 * @ordered
	 */
	public static final int PUMP_TO_CARBURETTOR_VALUE = 4;

	/**
	 * The '<em><b>RETURN</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #RETURN
	 * @generated
	 * @ordered
	 */
	public static final int RETURN_VALUE = 5;

	/**
	 * The '<em><b>VENT</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #VENT
	 * @generated
	 * @ordered
	 */
	public static final int VENT_VALUE = 6;

	/**
	 * The '<em><b>FILL</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #FILL
	 * @generated
	 * @ordered
	 */
	public static final int FILL_VALUE = 7;

	/**
	 * An array of all the '<em><b>Fuel Line Function</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final FuelLineFunction[] VALUES_ARRAY =
		new FuelLineFunction[] {
			NOT_ENTERED,
			TANK_TO_ENGINE,
			TANK_TO_SEPARATOR,
			SEPARATOR_TO_PUMP,
			PUMP_TO_CARBURETTOR,
			RETURN,
			VENT,
			FILL,
		};

	/**
	 * A public read-only list of all the '<em><b>Fuel Line Function</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<FuelLineFunction> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Fuel Line Function</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static FuelLineFunction get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			FuelLineFunction result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Fuel Line Function</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static FuelLineFunction getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			FuelLineFunction result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Fuel Line Function</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static FuelLineFunction get(int value) {
		switch (value) {
			case NOT_ENTERED_VALUE: return NOT_ENTERED;
			case TANK_TO_ENGINE_VALUE: return TANK_TO_ENGINE;
			case TANK_TO_SEPARATOR_VALUE: return TANK_TO_SEPARATOR;
			case SEPARATOR_TO_PUMP_VALUE: return SEPARATOR_TO_PUMP;
			case PUMP_TO_CARBURETTOR_VALUE: return PUMP_TO_CARBURETTOR;
			case RETURN_VALUE: return RETURN;
			case VENT_VALUE: return VENT;
			case FILL_VALUE: return FILL;
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
	private FuelLineFunction(int value, String name, String literal) {
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
	
} //FuelLineFunction
