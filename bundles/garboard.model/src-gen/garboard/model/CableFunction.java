/**
 */
package garboard.model;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Cable Function</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * @see garboard.model.GarboardPackage#getCableFunction()
 * @generated
 */
public enum CableFunction implements Enumerator {
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
	 * The '<em><b>CRANKING POSITIVE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CRANKING_POSITIVE_VALUE
	 * @generated
	 * @ordered
	 */
	CRANKING_POSITIVE(1, "CRANKING_POSITIVE", "cranking-positive"),

	/**
	 * The '<em><b>CRANKING NEGATIVE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CRANKING_NEGATIVE_VALUE
	 * @generated
	 * @ordered
	 */
	CRANKING_NEGATIVE(2, "CRANKING_NEGATIVE", "cranking-negative"),

	/**
	 * The '<em><b>CHARGING</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CHARGING_VALUE
	 * @generated
	 * @ordered
	 */
	CHARGING(3, "CHARGING", "charging"),

	/**
	 * The '<em><b>CONTROL</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CONTROL_VALUE
	 * @generated
	 * @ordered
	 */
	CONTROL(4, "CONTROL", "control"),

	/**
	 * The '<em><b>FUEL PUMP</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #FUEL_PUMP_VALUE
	 * @generated
	 * @ordered
	 */
	FUEL_PUMP(5, "FUEL_PUMP", "fuel-pump"),

	/**
	 * The '<em><b>PARALLEL LINK</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PARALLEL_LINK_VALUE
	 * @generated
	 * @ordered
	 */
	PARALLEL_LINK(6, "PARALLEL_LINK", "parallel-link"),

	/**
	 * The '<em><b>COMMON NEGATIVE LINK</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #COMMON_NEGATIVE_LINK_VALUE
	 * @generated
	 * @ordered
	 */
	COMMON_NEGATIVE_LINK(7, "COMMON_NEGATIVE_LINK", "common-negative-link"),

	/**
	 * The '<em><b>AC OUTPUT</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #AC_OUTPUT_VALUE
	 * @generated
	 * @ordered
	 */
	AC_OUTPUT(8, "AC_OUTPUT", "ac-output"),

	/**
	 * The '<em><b>AC BRANCH</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #AC_BRANCH_VALUE
	 * @generated
	 * @ordered
	 */
	AC_BRANCH(9, "AC_BRANCH", "ac-branch"),

	/**
	 * The '<em><b>BONDING</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BONDING_VALUE
	 * @generated
	 * @ordered
	 */
	BONDING(10, "BONDING", "bonding"),

	/**
	 * The '<em><b>OTHER DC</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #OTHER_DC_VALUE
	 * @generated
	 * @ordered
	 */
	OTHER_DC(11, "OTHER_DC", "other-dc");

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
	 * The '<em><b>CRANKING POSITIVE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CRANKING_POSITIVE
	 * @generated
	 * @ordered
	 */
	public static final int CRANKING_POSITIVE_VALUE = 1;

	/**
	 * The '<em><b>CRANKING NEGATIVE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CRANKING_NEGATIVE
	 * @generated
	 * @ordered
	 */
	public static final int CRANKING_NEGATIVE_VALUE = 2;

	/**
	 * The '<em><b>CHARGING</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CHARGING
	 * @generated
	 * @ordered
	 */
	public static final int CHARGING_VALUE = 3;

	/**
	 * The '<em><b>CONTROL</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CONTROL
	 * @generated
	 * @ordered
	 */
	public static final int CONTROL_VALUE = 4;

	/**
	 * The '<em><b>FUEL PUMP</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #FUEL_PUMP
	 * @generated
	 * @ordered
	 */
	public static final int FUEL_PUMP_VALUE = 5;

	/**
	 * The '<em><b>PARALLEL LINK</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PARALLEL_LINK
	 * @generated
	 * @ordered
	 */
	public static final int PARALLEL_LINK_VALUE = 6;

	/**
	 * The '<em><b>COMMON NEGATIVE LINK</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #COMMON_NEGATIVE_LINK
	 * @generated
	 * @ordered
	 */
	public static final int COMMON_NEGATIVE_LINK_VALUE = 7;

	/**
	 * The '<em><b>AC OUTPUT</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #AC_OUTPUT
	 * @generated
	 * @ordered
	 */
	public static final int AC_OUTPUT_VALUE = 8;

	/**
	 * The '<em><b>AC BRANCH</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #AC_BRANCH
	 * @generated
	 * @ordered
	 */
	public static final int AC_BRANCH_VALUE = 9;

	/**
	 * The '<em><b>BONDING</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BONDING
	 * @generated
	 * @ordered
	 */
	public static final int BONDING_VALUE = 10;

	/**
	 * The '<em><b>OTHER DC</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #OTHER_DC
	 * @generated
	 * @ordered
	 */
	public static final int OTHER_DC_VALUE = 11;

	/**
	 * An array of all the '<em><b>Cable Function</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final CableFunction[] VALUES_ARRAY =
		new CableFunction[] {
			NOT_ENTERED,
			CRANKING_POSITIVE,
			CRANKING_NEGATIVE,
			CHARGING,
			CONTROL,
			FUEL_PUMP,
			PARALLEL_LINK,
			COMMON_NEGATIVE_LINK,
			AC_OUTPUT,
			AC_BRANCH,
			BONDING,
			OTHER_DC,
		};

	/**
	 * A public read-only list of all the '<em><b>Cable Function</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<CableFunction> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Cable Function</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static CableFunction get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			CableFunction result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Cable Function</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static CableFunction getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			CableFunction result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Cable Function</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static CableFunction get(int value) {
		switch (value) {
			case NOT_ENTERED_VALUE: return NOT_ENTERED;
			case CRANKING_POSITIVE_VALUE: return CRANKING_POSITIVE;
			case CRANKING_NEGATIVE_VALUE: return CRANKING_NEGATIVE;
			case CHARGING_VALUE: return CHARGING;
			case CONTROL_VALUE: return CONTROL;
			case FUEL_PUMP_VALUE: return FUEL_PUMP;
			case PARALLEL_LINK_VALUE: return PARALLEL_LINK;
			case COMMON_NEGATIVE_LINK_VALUE: return COMMON_NEGATIVE_LINK;
			case AC_OUTPUT_VALUE: return AC_OUTPUT;
			case AC_BRANCH_VALUE: return AC_BRANCH;
			case BONDING_VALUE: return BONDING;
			case OTHER_DC_VALUE: return OTHER_DC;
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
	private CableFunction(int value, String name, String literal) {
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
	
} //CableFunction
