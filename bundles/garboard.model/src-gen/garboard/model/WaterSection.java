/**
 */
package garboard.model;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Water Section</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * @see garboard.model.GarboardPackage#getWaterSection()
 * @generated
 */
public enum WaterSection implements Enumerator {
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
	 * The '<em><b>SUCTION</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SUCTION_VALUE
	 * @generated
	 * @ordered
	 */
	SUCTION(1, "SUCTION", "suction"),

	/**
	 * The '<em><b>PUMP TO ENGINE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PUMP_TO_ENGINE_VALUE
	 * @generated
	 * @ordered
	 */
	PUMP_TO_ENGINE(2, "PUMP_TO_ENGINE", "pump-to-engine"),

	/**
	 * The '<em><b>ENGINE TO SIPHON BREAK</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ENGINE_TO_SIPHON_BREAK_VALUE
	 * @generated
	 * @ordered
	 */
	ENGINE_TO_SIPHON_BREAK(3, "ENGINE_TO_SIPHON_BREAK", "engine-to-siphon-break"),

	/**
	 * The '<em><b>SIPHON BREAK TO INJECTION</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SIPHON_BREAK_TO_INJECTION_VALUE
	 * @generated
	 * @ordered
	 */
	SIPHON_BREAK_TO_INJECTION(4, "SIPHON_BREAK_TO_INJECTION", "siphon-break-to-injection"),

	/**
	 * The '<em><b>ENGINE TO INJECTION</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ENGINE_TO_INJECTION_VALUE
	 * @generated
	 * @ordered
	 */
	ENGINE_TO_INJECTION(5, "ENGINE_TO_INJECTION", "engine-to-injection");

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
	 * The '<em><b>SUCTION</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SUCTION
	 * @generated
	 * @ordered
	 */
	public static final int SUCTION_VALUE = 1;

	/**
	 * The '<em><b>PUMP TO ENGINE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PUMP_TO_ENGINE
	 * @generated
	 * @ordered
	 */
	public static final int PUMP_TO_ENGINE_VALUE = 2;

	/**
	 * The '<em><b>ENGINE TO SIPHON BREAK</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ENGINE_TO_SIPHON_BREAK
	 * @generated
	 * @ordered
	 */
	public static final int ENGINE_TO_SIPHON_BREAK_VALUE = 3;

	/**
	 * The '<em><b>SIPHON BREAK TO INJECTION</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SIPHON_BREAK_TO_INJECTION
	 * @generated
	 * @ordered
	 */
	public static final int SIPHON_BREAK_TO_INJECTION_VALUE = 4;

	/**
	 * The '<em><b>ENGINE TO INJECTION</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ENGINE_TO_INJECTION
	 * @generated
	 * @ordered
	 */
	public static final int ENGINE_TO_INJECTION_VALUE = 5;

	/**
	 * An array of all the '<em><b>Water Section</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final WaterSection[] VALUES_ARRAY =
		new WaterSection[] {
			NOT_ENTERED,
			SUCTION,
			PUMP_TO_ENGINE,
			ENGINE_TO_SIPHON_BREAK,
			SIPHON_BREAK_TO_INJECTION,
			ENGINE_TO_INJECTION,
		};

	/**
	 * A public read-only list of all the '<em><b>Water Section</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<WaterSection> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Water Section</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static WaterSection get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			WaterSection result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Water Section</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static WaterSection getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			WaterSection result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Water Section</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static WaterSection get(int value) {
		switch (value) {
			case NOT_ENTERED_VALUE: return NOT_ENTERED;
			case SUCTION_VALUE: return SUCTION;
			case PUMP_TO_ENGINE_VALUE: return PUMP_TO_ENGINE;
			case ENGINE_TO_SIPHON_BREAK_VALUE: return ENGINE_TO_SIPHON_BREAK;
			case SIPHON_BREAK_TO_INJECTION_VALUE: return SIPHON_BREAK_TO_INJECTION;
			case ENGINE_TO_INJECTION_VALUE: return ENGINE_TO_INJECTION;
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
	private WaterSection(int value, String name, String literal) {
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
	
} //WaterSection
