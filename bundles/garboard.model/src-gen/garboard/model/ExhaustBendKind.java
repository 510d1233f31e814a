/**
 */
package garboard.model;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Exhaust Bend Kind</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * @see garboard.model.GarboardPackage#getExhaustBendKind()
 * @generated
 */
public enum ExhaustBendKind implements Enumerator {
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
	 * The '<em><b>STANDARD 90</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #STANDARD_90_VALUE
	 * @generated
	 * @ordered
	 */
	STANDARD_90(1, "STANDARD_90", "standard-90"),

	/**
	 * The '<em><b>LONG 90</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #LONG_90_VALUE
	 * @generated
	 * @ordered
	 */
	LONG_90(2, "LONG_90", "long-90"),

	/**
	 * The '<em><b>STANDARD 45</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #STANDARD_45_VALUE
	 * @generated
	 * @ordered
	 */
	STANDARD_45(3, "STANDARD_45", "standard-45"),

	/**
	 * The '<em><b>SQUARE 90</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SQUARE_90_VALUE
	 * @generated
	 * @ordered
	 */
	SQUARE_90(4, "SQUARE_90", "square-90"),

	/**
	 * The '<em><b>UBEND 180</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #UBEND_180_VALUE
	 * @generated
	 * @ordered
	 */
	UBEND_180(5, "U_BEND_180", "u-bend-180");

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
	 * The '<em><b>STANDARD 90</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #STANDARD_90
	 * @generated
	 * @ordered
	 */
	public static final int STANDARD_90_VALUE = 1;

	/**
	 * The '<em><b>LONG 90</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #LONG_90
	 * @generated
	 * @ordered
	 */
	public static final int LONG_90_VALUE = 2;

	/**
	 * The '<em><b>STANDARD 45</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #STANDARD_45
	 * @generated
	 * @ordered
	 */
	public static final int STANDARD_45_VALUE = 3;

	/**
	 * The '<em><b>SQUARE 90</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SQUARE_90
	 * @generated
	 * @ordered
	 */
	public static final int SQUARE_90_VALUE = 4;

	/**
	 * The '<em><b>UBEND 180</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #UBEND_180
	 * @generated
	 * @ordered
	 */
	public static final int UBEND_180_VALUE = 5;

	/**
	 * An array of all the '<em><b>Exhaust Bend Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final ExhaustBendKind[] VALUES_ARRAY =
		new ExhaustBendKind[] {
			NOT_ENTERED,
			STANDARD_90,
			LONG_90,
			STANDARD_45,
			SQUARE_90,
			UBEND_180,
		};

	/**
	 * A public read-only list of all the '<em><b>Exhaust Bend Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<ExhaustBendKind> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Exhaust Bend Kind</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static ExhaustBendKind get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			ExhaustBendKind result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Exhaust Bend Kind</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static ExhaustBendKind getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			ExhaustBendKind result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Exhaust Bend Kind</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static ExhaustBendKind get(int value) {
		switch (value) {
			case NOT_ENTERED_VALUE: return NOT_ENTERED;
			case STANDARD_90_VALUE: return STANDARD_90;
			case LONG_90_VALUE: return LONG_90;
			case STANDARD_45_VALUE: return STANDARD_45;
			case SQUARE_90_VALUE: return SQUARE_90;
			case UBEND_180_VALUE: return UBEND_180;
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
	private ExhaustBendKind(int value, String name, String literal) {
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
	
} //ExhaustBendKind
