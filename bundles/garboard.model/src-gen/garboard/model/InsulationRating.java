/**
 */
package garboard.model;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Insulation Rating</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * @see garboard.model.GarboardPackage#getInsulationRating()
 * @generated
 */
public enum InsulationRating implements Enumerator {
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
	 * The '<em><b>C60</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #C60_VALUE
	 * @generated
	 * @ordered
	 */
	C60(1, "C60", "c60"),

	/**
	 * The '<em><b>C70</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #C70_VALUE
	 * @generated
	 * @ordered
	 */
	C70(2, "C70", "c70"),

	/**
	 * The '<em><b>C75</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #C75_VALUE
	 * @generated
	 * @ordered
	 */
	C75(3, "C75", "c75"),

	/**
	 * The '<em><b>C80</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #C80_VALUE
	 * @generated
	 * @ordered
	 */
	C80(4, "C80", "c80"),

	/**
	 * The '<em><b>C90</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #C90_VALUE
	 * @generated
	 * @ordered
	 */
	C90(5, "C90", "c90"),

	/**
	 * The '<em><b>C105</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #C105_VALUE
	 * @generated
	 * @ordered
	 */
	C105(6, "C105", "c105"),

	/**
	 * The '<em><b>C125</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #C125_VALUE
	 * @generated
	 * @ordered
	 */
	C125(7, "C125", "c125"),

	/**
	 * The '<em><b>C200</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #C200_VALUE
	 * @generated
	 * @ordered
	 */
	C200(8, "C200", "c200");

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
	 * The '<em><b>C60</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #C60
	 * @generated
	 * @ordered
	 */
	public static final int C60_VALUE = 1;

	/**
	 * The '<em><b>C70</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #C70
	 * @generated
	 * @ordered
	 */
	public static final int C70_VALUE = 2;

	/**
	 * The '<em><b>C75</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #C75
	 * @generated
	 * @ordered
	 */
	public static final int C75_VALUE = 3;

	/**
	 * The '<em><b>C80</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #C80
	 * @generated
	 * @ordered
	 */
	public static final int C80_VALUE = 4;

	/**
	 * The '<em><b>C90</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #C90
	 * @generated
	 * @ordered
	 */
	public static final int C90_VALUE = 5;

	/**
	 * The '<em><b>C105</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #C105
	 * @generated
	 * @ordered
	 */
	public static final int C105_VALUE = 6;

	/**
	 * The '<em><b>C125</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #C125
	 * @generated
	 * @ordered
	 */
	public static final int C125_VALUE = 7;

	/**
	 * The '<em><b>C200</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #C200
	 * @generated
	 * @ordered
	 */
	public static final int C200_VALUE = 8;

	/**
	 * An array of all the '<em><b>Insulation Rating</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final InsulationRating[] VALUES_ARRAY =
		new InsulationRating[] {
			NOT_ENTERED,
			C60,
			C70,
			C75,
			C80,
			C90,
			C105,
			C125,
			C200,
		};

	/**
	 * A public read-only list of all the '<em><b>Insulation Rating</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<InsulationRating> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Insulation Rating</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static InsulationRating get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			InsulationRating result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Insulation Rating</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static InsulationRating getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			InsulationRating result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Insulation Rating</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static InsulationRating get(int value) {
		switch (value) {
			case NOT_ENTERED_VALUE: return NOT_ENTERED;
			case C60_VALUE: return C60;
			case C70_VALUE: return C70;
			case C75_VALUE: return C75;
			case C80_VALUE: return C80;
			case C90_VALUE: return C90;
			case C105_VALUE: return C105;
			case C125_VALUE: return C125;
			case C200_VALUE: return C200;
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
	private InsulationRating(int value, String name, String literal) {
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
	
} //InsulationRating
