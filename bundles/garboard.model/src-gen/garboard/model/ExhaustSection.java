/**
 */
package garboard.model;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Exhaust Section</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * @see garboard.model.GarboardPackage#getExhaustSection()
 * @generated
 */
public enum ExhaustSection implements Enumerator {
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
	 * The '<em><b>DRY</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #DRY_VALUE
	 * @generated
	 * @ordered
	 */
	DRY(1, "DRY", "dry"),

	/**
	 * The '<em><b>INJECTION TO MUFFLER</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #INJECTION_TO_MUFFLER_VALUE
	 * @generated
	 * @ordered
	 */
	INJECTION_TO_MUFFLER(2, "INJECTION_TO_MUFFLER", "injection-to-muffler"),

	/**
	 * The '<em><b>MUFFLER TO CREST</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #MUFFLER_TO_CREST_VALUE
	 * @generated
	 * @ordered
	 */
	MUFFLER_TO_CREST(3, "MUFFLER_TO_CREST", "muffler-to-crest"),

	/**
	 * The '<em><b>CREST TO OUTLET</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CREST_TO_OUTLET_VALUE
	 * @generated
	 * @ordered
	 */
	CREST_TO_OUTLET(4, "CREST_TO_OUTLET", "crest-to-outlet"),

	/**
	 * The '<em><b>SEPARATOR DRAIN</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SEPARATOR_DRAIN_VALUE
	 * @generated
	 * @ordered
	 */
	SEPARATOR_DRAIN(5, "SEPARATOR_DRAIN", "separator-drain");

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
	 * The '<em><b>DRY</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #DRY
	 * @generated
	 * @ordered
	 */
	public static final int DRY_VALUE = 1;

	/**
	 * The '<em><b>INJECTION TO MUFFLER</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #INJECTION_TO_MUFFLER
	 * @generated
	 * @ordered
	 */
	public static final int INJECTION_TO_MUFFLER_VALUE = 2;

	/**
	 * The '<em><b>MUFFLER TO CREST</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #MUFFLER_TO_CREST
	 * @generated
	 * @ordered
	 */
	public static final int MUFFLER_TO_CREST_VALUE = 3;

	/**
	 * The '<em><b>CREST TO OUTLET</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CREST_TO_OUTLET
	 * @generated
	 * @ordered
	 */
	public static final int CREST_TO_OUTLET_VALUE = 4;

	/**
	 * The '<em><b>SEPARATOR DRAIN</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SEPARATOR_DRAIN
	 * @generated
	 * @ordered
	 */
	public static final int SEPARATOR_DRAIN_VALUE = 5;

	/**
	 * An array of all the '<em><b>Exhaust Section</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final ExhaustSection[] VALUES_ARRAY =
		new ExhaustSection[] {
			NOT_ENTERED,
			DRY,
			INJECTION_TO_MUFFLER,
			MUFFLER_TO_CREST,
			CREST_TO_OUTLET,
			SEPARATOR_DRAIN,
		};

	/**
	 * A public read-only list of all the '<em><b>Exhaust Section</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<ExhaustSection> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Exhaust Section</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static ExhaustSection get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			ExhaustSection result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Exhaust Section</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static ExhaustSection getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			ExhaustSection result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Exhaust Section</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static ExhaustSection get(int value) {
		switch (value) {
			case NOT_ENTERED_VALUE: return NOT_ENTERED;
			case DRY_VALUE: return DRY;
			case INJECTION_TO_MUFFLER_VALUE: return INJECTION_TO_MUFFLER;
			case MUFFLER_TO_CREST_VALUE: return MUFFLER_TO_CREST;
			case CREST_TO_OUTLET_VALUE: return CREST_TO_OUTLET;
			case SEPARATOR_DRAIN_VALUE: return SEPARATOR_DRAIN;
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
	private ExhaustSection(int value, String name, String literal) {
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
	
} //ExhaustSection
