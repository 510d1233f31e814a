/**
 */
package garboard.model;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Duct Function</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * @see garboard.model.GarboardPackage#getDuctFunction()
 * @generated
 */
public enum DuctFunction implements Enumerator {
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
	 * The '<em><b>NATURAL SUPPLY</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #NATURAL_SUPPLY_VALUE
	 * @generated
	 * @ordered
	 */
	NATURAL_SUPPLY(1, "NATURAL_SUPPLY", "natural-supply"),

	/**
	 * The '<em><b>NATURAL EXHAUST</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #NATURAL_EXHAUST_VALUE
	 * @generated
	 * @ordered
	 */
	NATURAL_EXHAUST(2, "NATURAL_EXHAUST", "natural-exhaust"),

	/**
	 * The '<em><b>BLOWER INTAKE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BLOWER_INTAKE_VALUE
	 * @generated
	 * @ordered
	 */
	BLOWER_INTAKE(3, "BLOWER_INTAKE", "blower-intake"),

	/**
	 * The '<em><b>COMBUSTION AIR</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #COMBUSTION_AIR_VALUE
	 * @generated
	 * @ordered
	 */
	COMBUSTION_AIR(4, "COMBUSTION_AIR", "combustion-air");

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
	 * The '<em><b>NATURAL SUPPLY</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #NATURAL_SUPPLY
	 * @generated
	 * @ordered
	 */
	public static final int NATURAL_SUPPLY_VALUE = 1;

	/**
	 * The '<em><b>NATURAL EXHAUST</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #NATURAL_EXHAUST
	 * @generated
	 * @ordered
	 */
	public static final int NATURAL_EXHAUST_VALUE = 2;

	/**
	 * The '<em><b>BLOWER INTAKE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BLOWER_INTAKE
	 * @generated
	 * @ordered
	 */
	public static final int BLOWER_INTAKE_VALUE = 3;

	/**
	 * The '<em><b>COMBUSTION AIR</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #COMBUSTION_AIR
	 * @generated
	 * @ordered
	 */
	public static final int COMBUSTION_AIR_VALUE = 4;

	/**
	 * An array of all the '<em><b>Duct Function</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final DuctFunction[] VALUES_ARRAY =
		new DuctFunction[] {
			NOT_ENTERED,
			NATURAL_SUPPLY,
			NATURAL_EXHAUST,
			BLOWER_INTAKE,
			COMBUSTION_AIR,
		};

	/**
	 * A public read-only list of all the '<em><b>Duct Function</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<DuctFunction> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Duct Function</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static DuctFunction get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			DuctFunction result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Duct Function</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static DuctFunction getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			DuctFunction result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Duct Function</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static DuctFunction get(int value) {
		switch (value) {
			case NOT_ENTERED_VALUE: return NOT_ENTERED;
			case NATURAL_SUPPLY_VALUE: return NATURAL_SUPPLY;
			case NATURAL_EXHAUST_VALUE: return NATURAL_EXHAUST;
			case BLOWER_INTAKE_VALUE: return BLOWER_INTAKE;
			case COMBUSTION_AIR_VALUE: return COMBUSTION_AIR;
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
	private DuctFunction(int value, String name, String literal) {
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
	
} //DuctFunction
