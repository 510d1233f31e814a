/**
 */
package garboard.model;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Alarm Kind</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * @see garboard.model.GarboardPackage#getAlarmKind()
 * @generated
 */
public enum AlarmKind implements Enumerator {
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
	 * The '<em><b>EXHAUST TEMPERATURE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #EXHAUST_TEMPERATURE_VALUE
	 * @generated
	 * @ordered
	 */
	EXHAUST_TEMPERATURE(1, "EXHAUST_TEMPERATURE", "exhaust-temperature"),

	/**
	 * The '<em><b>RAW WATER FLOW</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #RAW_WATER_FLOW_VALUE
	 * @generated
	 * @ordered
	 */
	RAW_WATER_FLOW(2, "RAW_WATER_FLOW", "raw-water-flow"),

	/**
	 * The '<em><b>OIL PRESSURE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #OIL_PRESSURE_VALUE
	 * @generated
	 * @ordered
	 */
	OIL_PRESSURE(3, "OIL_PRESSURE", "oil-pressure"),

	/**
	 * The '<em><b>COOLANT TEMPERATURE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #COOLANT_TEMPERATURE_VALUE
	 * @generated
	 * @ordered
	 */
	COOLANT_TEMPERATURE(4, "COOLANT_TEMPERATURE", "coolant-temperature"),

	/**
	 * The '<em><b>FUEL VAPOUR</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #FUEL_VAPOUR_VALUE
	 * @generated
	 * @ordered
	 */
	FUEL_VAPOUR(5, "FUEL_VAPOUR", "fuel-vapour"),

	/**
	 * The '<em><b>CARBON MONOXIDE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CARBON_MONOXIDE_VALUE
	 * @generated
	 * @ordered
	 */
	CARBON_MONOXIDE(6, "CARBON_MONOXIDE", "carbon-monoxide"),

	/**
	 * The '<em><b>BILGE LEVEL</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BILGE_LEVEL_VALUE
	 * @generated
	 * @ordered
	 */
	BILGE_LEVEL(7, "BILGE_LEVEL", "bilge-level"),

	/**
	 * The '<em><b>FIRE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #FIRE_VALUE
	 * @generated
	 * @ordered
	 */
	FIRE(8, "FIRE", "fire"),

	/**
	 * The '<em><b>LOW VOLTAGE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #LOW_VOLTAGE_VALUE
	 * @generated
	 * @ordered
	 */
	LOW_VOLTAGE(9, "LOW_VOLTAGE", "low-voltage"),

	/**
	 * The '<em><b>OVERSPEED</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #OVERSPEED_VALUE
	 * @generated
	 * @ordered
	 */
	OVERSPEED(10, "OVERSPEED", "overspeed");

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
	 * The '<em><b>EXHAUST TEMPERATURE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #EXHAUST_TEMPERATURE
	 * @generated
	 * @ordered
	 */
	public static final int EXHAUST_TEMPERATURE_VALUE = 1;

	/**
	 * The '<em><b>RAW WATER FLOW</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #RAW_WATER_FLOW
	 * @generated
	 * @ordered
	 */
	public static final int RAW_WATER_FLOW_VALUE = 2;

	/**
	 * The '<em><b>OIL PRESSURE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #OIL_PRESSURE
	 * @generated
	 * @ordered
	 */
	public static final int OIL_PRESSURE_VALUE = 3;

	/**
	 * The '<em><b>COOLANT TEMPERATURE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #COOLANT_TEMPERATURE
	 * @generated
	 * @ordered
	 */
	public static final int COOLANT_TEMPERATURE_VALUE = 4;

	/**
	 * The '<em><b>FUEL VAPOUR</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #FUEL_VAPOUR
	 * @generated
	 * @ordered
	 */
	public static final int FUEL_VAPOUR_VALUE = 5;

	/**
	 * The '<em><b>CARBON MONOXIDE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CARBON_MONOXIDE
	 * @generated
	 * @ordered
	 */
	public static final int CARBON_MONOXIDE_VALUE = 6;

	/**
	 * The '<em><b>BILGE LEVEL</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BILGE_LEVEL
	 * @generated
	 * @ordered
	 */
	public static final int BILGE_LEVEL_VALUE = 7;

	/**
	 * The '<em><b>FIRE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #FIRE
	 * @generated
	 * @ordered
	 */
	public static final int FIRE_VALUE = 8;

	/**
	 * The '<em><b>LOW VOLTAGE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #LOW_VOLTAGE
	 * @generated
	 * @ordered
	 */
	public static final int LOW_VOLTAGE_VALUE = 9;

	/**
	 * The '<em><b>OVERSPEED</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #OVERSPEED
	 * @generated
	 * @ordered
	 */
	public static final int OVERSPEED_VALUE = 10;

	/**
	 * An array of all the '<em><b>Alarm Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final AlarmKind[] VALUES_ARRAY =
		new AlarmKind[] {
			NOT_ENTERED,
			EXHAUST_TEMPERATURE,
			RAW_WATER_FLOW,
			OIL_PRESSURE,
			COOLANT_TEMPERATURE,
			FUEL_VAPOUR,
			CARBON_MONOXIDE,
			BILGE_LEVEL,
			FIRE,
			LOW_VOLTAGE,
			OVERSPEED,
		};

	/**
	 * A public read-only list of all the '<em><b>Alarm Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<AlarmKind> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Alarm Kind</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static AlarmKind get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			AlarmKind result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Alarm Kind</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static AlarmKind getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			AlarmKind result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Alarm Kind</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static AlarmKind get(int value) {
		switch (value) {
			case NOT_ENTERED_VALUE: return NOT_ENTERED;
			case EXHAUST_TEMPERATURE_VALUE: return EXHAUST_TEMPERATURE;
			case RAW_WATER_FLOW_VALUE: return RAW_WATER_FLOW;
			case OIL_PRESSURE_VALUE: return OIL_PRESSURE;
			case COOLANT_TEMPERATURE_VALUE: return COOLANT_TEMPERATURE;
			case FUEL_VAPOUR_VALUE: return FUEL_VAPOUR;
			case CARBON_MONOXIDE_VALUE: return CARBON_MONOXIDE;
			case BILGE_LEVEL_VALUE: return BILGE_LEVEL;
			case FIRE_VALUE: return FIRE;
			case LOW_VOLTAGE_VALUE: return LOW_VOLTAGE;
			case OVERSPEED_VALUE: return OVERSPEED;
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
	private AlarmKind(int value, String name, String literal) {
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
	
} //AlarmKind
