/**
 */
package garboard.model;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Siphon Break Place</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * @see garboard.model.GarboardPackage#getSiphonBreakPlace()
 * @generated
 */
public enum SiphonBreakPlace implements Enumerator {
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
	 * The '<em><b>PUMP SUCTION</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PUMP_SUCTION_VALUE
	 * @generated
	 * @ordered
	 */
	PUMP_SUCTION(1, "PUMP_SUCTION", "pump-suction"),

	/**
	 * The '<em><b>BETWEEN PUMP AND HEAT EXCHANGER</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BETWEEN_PUMP_AND_HEAT_EXCHANGER_VALUE
	 * @generated
	 * @ordered
	 */
	BETWEEN_PUMP_AND_HEAT_EXCHANGER(2, "BETWEEN_PUMP_AND_HEAT_EXCHANGER", "between-pump-and-heat-exchanger"),

	/**
	 * The '<em><b>BETWEEN HEAT EXCHANGER AND INJECTION</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BETWEEN_HEAT_EXCHANGER_AND_INJECTION_VALUE
	 * @generated
	 * @ordered
	 */
	BETWEEN_HEAT_EXCHANGER_AND_INJECTION(3, "BETWEEN_HEAT_EXCHANGER_AND_INJECTION", "between-heat-exchanger-and-injection"),

	/**
	 * The '<em><b>AFTER INJECTION</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #AFTER_INJECTION_VALUE
	 * @generated
	 * @ordered
	 */
	AFTER_INJECTION(4, "AFTER_INJECTION", "after-injection");

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
	 * The '<em><b>PUMP SUCTION</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PUMP_SUCTION
	 * @generated
	 * @ordered
	 */
	public static final int PUMP_SUCTION_VALUE = 1;

	/**
	 * The '<em><b>BETWEEN PUMP AND HEAT EXCHANGER</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BETWEEN_PUMP_AND_HEAT_EXCHANGER
	 * @generated
	 * @ordered
	 */
	public static final int BETWEEN_PUMP_AND_HEAT_EXCHANGER_VALUE = 2;

	/**
	 * The '<em><b>BETWEEN HEAT EXCHANGER AND INJECTION</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BETWEEN_HEAT_EXCHANGER_AND_INJECTION
	 * @generated
	 * @ordered
	 */
	public static final int BETWEEN_HEAT_EXCHANGER_AND_INJECTION_VALUE = 3;

	/**
	 * The '<em><b>AFTER INJECTION</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #AFTER_INJECTION
	 * @generated
	 * @ordered
	 */
	public static final int AFTER_INJECTION_VALUE = 4;

	/**
	 * An array of all the '<em><b>Siphon Break Place</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final SiphonBreakPlace[] VALUES_ARRAY =
		new SiphonBreakPlace[] {
			NOT_ENTERED,
			PUMP_SUCTION,
			BETWEEN_PUMP_AND_HEAT_EXCHANGER,
			BETWEEN_HEAT_EXCHANGER_AND_INJECTION,
			AFTER_INJECTION,
		};

	/**
	 * A public read-only list of all the '<em><b>Siphon Break Place</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<SiphonBreakPlace> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Siphon Break Place</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static SiphonBreakPlace get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			SiphonBreakPlace result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Siphon Break Place</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static SiphonBreakPlace getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			SiphonBreakPlace result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Siphon Break Place</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static SiphonBreakPlace get(int value) {
		switch (value) {
			case NOT_ENTERED_VALUE: return NOT_ENTERED;
			case PUMP_SUCTION_VALUE: return PUMP_SUCTION;
			case BETWEEN_PUMP_AND_HEAT_EXCHANGER_VALUE: return BETWEEN_PUMP_AND_HEAT_EXCHANGER;
			case BETWEEN_HEAT_EXCHANGER_AND_INJECTION_VALUE: return BETWEEN_HEAT_EXCHANGER_AND_INJECTION;
			case AFTER_INJECTION_VALUE: return AFTER_INJECTION;
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
	private SiphonBreakPlace(int value, String name, String literal) {
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
	
} //SiphonBreakPlace
