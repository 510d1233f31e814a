/**
 */
package garboard.model;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Valve Kind</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * @see garboard.model.GarboardPackage#getValveKind()
 * @generated
 */
public enum ValveKind implements Enumerator {
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
	 * The '<em><b>FLANGED SEACOCK</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #FLANGED_SEACOCK_VALUE
	 * @generated
	 * @ordered
	 */
	FLANGED_SEACOCK(1, "FLANGED_SEACOCK", "flanged-seacock"),

	/**
	 * The '<em><b>IN LINE BALL VALVE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #IN_LINE_BALL_VALVE_VALUE
	 * @generated
	 * @ordered
	 */
	IN_LINE_BALL_VALVE(2, "IN_LINE_BALL_VALVE", "in-line-ball-valve"),

	/**
	 * The '<em><b>GATE VALVE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #GATE_VALVE_VALUE
	 * @generated
	 * @ordered
	 */
	GATE_VALVE(3, "GATE_VALVE", "gate-valve"),

	/**
	 * The '<em><b>HOUSEHOLD BALL VALVE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #HOUSEHOLD_BALL_VALVE_VALUE
	 * @generated
	 * @ordered
	 */
	HOUSEHOLD_BALL_VALVE(4, "HOUSEHOLD_BALL_VALVE", "household-ball-valve"),

	/**
	 * The '<em><b>NONE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #NONE_VALUE
	 * @generated
	 * @ordered
	 */
	NONE(5, "NONE", "none");

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
	 * The '<em><b>FLANGED SEACOCK</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #FLANGED_SEACOCK
	 * @generated
	 * @ordered
	 */
	public static final int FLANGED_SEACOCK_VALUE = 1;

	/**
	 * The '<em><b>IN LINE BALL VALVE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #IN_LINE_BALL_VALVE
	 * @generated
	 * @ordered
	 */
	public static final int IN_LINE_BALL_VALVE_VALUE = 2;

	/**
	 * The '<em><b>GATE VALVE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #GATE_VALVE
	 * @generated
	 * @ordered
	 */
	public static final int GATE_VALVE_VALUE = 3;

	/**
	 * The '<em><b>HOUSEHOLD BALL VALVE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #HOUSEHOLD_BALL_VALVE
	 * @generated
	 * @ordered
	 */
	public static final int HOUSEHOLD_BALL_VALVE_VALUE = 4;

	/**
	 * The '<em><b>NONE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #NONE
	 * @generated
	 * @ordered
	 */
	public static final int NONE_VALUE = 5;

	/**
	 * An array of all the '<em><b>Valve Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final ValveKind[] VALUES_ARRAY =
		new ValveKind[] {
			NOT_ENTERED,
			FLANGED_SEACOCK,
			IN_LINE_BALL_VALVE,
			GATE_VALVE,
			HOUSEHOLD_BALL_VALVE,
			NONE,
		};

	/**
	 * A public read-only list of all the '<em><b>Valve Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<ValveKind> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Valve Kind</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static ValveKind get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			ValveKind result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Valve Kind</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static ValveKind getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			ValveKind result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Valve Kind</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static ValveKind get(int value) {
		switch (value) {
			case NOT_ENTERED_VALUE: return NOT_ENTERED;
			case FLANGED_SEACOCK_VALUE: return FLANGED_SEACOCK;
			case IN_LINE_BALL_VALVE_VALUE: return IN_LINE_BALL_VALVE;
			case GATE_VALVE_VALUE: return GATE_VALVE;
			case HOUSEHOLD_BALL_VALVE_VALUE: return HOUSEHOLD_BALL_VALVE;
			case NONE_VALUE: return NONE;
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
	private ValveKind(int value, String name, String literal) {
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
	
} //ValveKind
