/**
 */
package garboard.model;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Motor Starting</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * @see garboard.model.GarboardPackage#getMotorStarting()
 * @generated
 */
public enum MotorStarting implements Enumerator {
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
	 * The '<em><b>DIRECT ON LINE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #DIRECT_ON_LINE_VALUE
	 * @generated
	 * @ordered
	 */
	DIRECT_ON_LINE(1, "DIRECT_ON_LINE", "direct-on-line"),

	/**
	 * The '<em><b>STAR DELTA</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #STAR_DELTA_VALUE
	 * @generated
	 * @ordered
	 */
	STAR_DELTA(2, "STAR_DELTA", "star-delta"),

	/**
	 * The '<em><b>SOFT START</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SOFT_START_VALUE
	 * @generated
	 * @ordered
	 */
	SOFT_START(3, "SOFT_START", "soft-start"),

	/**
	 * The '<em><b>VARIABLE SPEED</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #VARIABLE_SPEED_VALUE
	 * @generated
	 * @ordered
	 */
	VARIABLE_SPEED(4, "VARIABLE_SPEED", "variable-speed");

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
	 * The '<em><b>DIRECT ON LINE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #DIRECT_ON_LINE
	 * @generated
	 * @ordered
	 */
	public static final int DIRECT_ON_LINE_VALUE = 1;

	/**
	 * The '<em><b>STAR DELTA</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #STAR_DELTA
	 * @generated
	 * @ordered
	 */
	public static final int STAR_DELTA_VALUE = 2;

	/**
	 * The '<em><b>SOFT START</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SOFT_START
	 * @generated
	 * @ordered
	 */
	public static final int SOFT_START_VALUE = 3;

	/**
	 * The '<em><b>VARIABLE SPEED</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #VARIABLE_SPEED
	 * @generated
	 * @ordered
	 */
	public static final int VARIABLE_SPEED_VALUE = 4;

	/**
	 * An array of all the '<em><b>Motor Starting</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final MotorStarting[] VALUES_ARRAY =
		new MotorStarting[] {
			NOT_ENTERED,
			DIRECT_ON_LINE,
			STAR_DELTA,
			SOFT_START,
			VARIABLE_SPEED,
		};

	/**
	 * A public read-only list of all the '<em><b>Motor Starting</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<MotorStarting> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Motor Starting</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static MotorStarting get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			MotorStarting result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Motor Starting</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static MotorStarting getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			MotorStarting result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Motor Starting</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static MotorStarting get(int value) {
		switch (value) {
			case NOT_ENTERED_VALUE: return NOT_ENTERED;
			case DIRECT_ON_LINE_VALUE: return DIRECT_ON_LINE;
			case STAR_DELTA_VALUE: return STAR_DELTA;
			case SOFT_START_VALUE: return SOFT_START;
			case VARIABLE_SPEED_VALUE: return VARIABLE_SPEED;
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
	private MotorStarting(int value, String name, String literal) {
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
	
} //MotorStarting
