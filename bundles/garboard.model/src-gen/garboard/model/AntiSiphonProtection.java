/**
 */
package garboard.model;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Anti Siphon Protection</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * @see garboard.model.GarboardPackage#getAntiSiphonProtection()
 * @generated
 */
public enum AntiSiphonProtection implements Enumerator {
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
	 * The '<em><b>LINE ABOVE TANK TOP</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #LINE_ABOVE_TANK_TOP_VALUE
	 * @generated
	 * @ordered
	 */
	LINE_ABOVE_TANK_TOP(1, "LINE_ABOVE_TANK_TOP", "line-above-tank-top"),

	/**
	 * The '<em><b>ANTI SIPHON VALVE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ANTI_SIPHON_VALVE_VALUE
	 * @generated
	 * @ordered
	 */
	ANTI_SIPHON_VALVE(2, "ANTI_SIPHON_VALVE", "anti-siphon-valve"),

	/**
	 * The '<em><b>ELECTRIC STOP VALVE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ELECTRIC_STOP_VALVE_VALUE
	 * @generated
	 * @ordered
	 */
	ELECTRIC_STOP_VALVE(3, "ELECTRIC_STOP_VALVE", "electric-stop-valve"),

	/**
	 * The '<em><b>TANK SHUT OFF WITH RATED LINE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TANK_SHUT_OFF_WITH_RATED_LINE_VALUE
	 * @generated
	 * @ordered
	 */
	TANK_SHUT_OFF_WITH_RATED_LINE(4, "TANK_SHUT_OFF_WITH_RATED_LINE", "tank-shut-off-with-rated-line"),

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
	 * The '<em><b>LINE ABOVE TANK TOP</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #LINE_ABOVE_TANK_TOP
	 * @generated
	 * @ordered
	 */
	public static final int LINE_ABOVE_TANK_TOP_VALUE = 1;

	/**
	 * The '<em><b>ANTI SIPHON VALVE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ANTI_SIPHON_VALVE
	 * @generated
	 * @ordered
	 */
	public static final int ANTI_SIPHON_VALVE_VALUE = 2;

	/**
	 * The '<em><b>ELECTRIC STOP VALVE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ELECTRIC_STOP_VALVE
	 * @generated
	 * @ordered
	 */
	public static final int ELECTRIC_STOP_VALVE_VALUE = 3;

	/**
	 * The '<em><b>TANK SHUT OFF WITH RATED LINE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TANK_SHUT_OFF_WITH_RATED_LINE
	 * @generated
	 * @ordered
	 */
	public static final int TANK_SHUT_OFF_WITH_RATED_LINE_VALUE = 4;

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
	 * An array of all the '<em><b>Anti Siphon Protection</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final AntiSiphonProtection[] VALUES_ARRAY =
		new AntiSiphonProtection[] {
			NOT_ENTERED,
			LINE_ABOVE_TANK_TOP,
			ANTI_SIPHON_VALVE,
			ELECTRIC_STOP_VALVE,
			TANK_SHUT_OFF_WITH_RATED_LINE,
			NONE,
		};

	/**
	 * A public read-only list of all the '<em><b>Anti Siphon Protection</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<AntiSiphonProtection> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Anti Siphon Protection</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static AntiSiphonProtection get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			AntiSiphonProtection result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Anti Siphon Protection</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static AntiSiphonProtection getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			AntiSiphonProtection result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Anti Siphon Protection</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static AntiSiphonProtection get(int value) {
		switch (value) {
			case NOT_ENTERED_VALUE: return NOT_ENTERED;
			case LINE_ABOVE_TANK_TOP_VALUE: return LINE_ABOVE_TANK_TOP;
			case ANTI_SIPHON_VALVE_VALUE: return ANTI_SIPHON_VALVE;
			case ELECTRIC_STOP_VALVE_VALUE: return ELECTRIC_STOP_VALVE;
			case TANK_SHUT_OFF_WITH_RATED_LINE_VALUE: return TANK_SHUT_OFF_WITH_RATED_LINE;
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
	private AntiSiphonProtection(int value, String name, String literal) {
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
	
} //AntiSiphonProtection
