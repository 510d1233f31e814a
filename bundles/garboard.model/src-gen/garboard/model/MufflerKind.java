/**
 */
package garboard.model;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Muffler Kind</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * @see garboard.model.GarboardPackage#getMufflerKind()
 * @generated
 */
public enum MufflerKind implements Enumerator {
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
	 * The '<em><b>LIFT MUFFLER</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #LIFT_MUFFLER_VALUE
	 * @generated
	 * @ordered
	 */
	LIFT_MUFFLER(1, "LIFT_MUFFLER", "lift-muffler"),

	/**
	 * The '<em><b>GAS WATER SEPARATOR</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #GAS_WATER_SEPARATOR_VALUE
	 * @generated
	 * @ordered
	 */
	GAS_WATER_SEPARATOR(2, "GAS_WATER_SEPARATOR", "gas-water-separator"),

	/**
	 * The '<em><b>STANDPIPE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #STANDPIPE_VALUE
	 * @generated
	 * @ordered
	 */
	STANDPIPE(3, "STANDPIPE", "standpipe"),

	/**
	 * The '<em><b>COMBINED LIFT AND SEPARATOR</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #COMBINED_LIFT_AND_SEPARATOR_VALUE
	 * @generated
	 * @ordered
	 */
	COMBINED_LIFT_AND_SEPARATOR(4, "COMBINED_LIFT_AND_SEPARATOR", "combined-lift-and-separator"),

	/**
	 * The '<em><b>IN LINE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #IN_LINE_VALUE
	 * @generated
	 * @ordered
	 */
	IN_LINE(5, "IN_LINE", "in-line"),

	/**
	 * The '<em><b>NONE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #NONE_VALUE
	 * @generated
	 * @ordered
	 */
	NONE(6, "NONE", "none");

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
	 * The '<em><b>LIFT MUFFLER</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #LIFT_MUFFLER
	 * @generated
	 * @ordered
	 */
	public static final int LIFT_MUFFLER_VALUE = 1;

	/**
	 * The '<em><b>GAS WATER SEPARATOR</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #GAS_WATER_SEPARATOR
	 * @generated
	 * @ordered
	 */
	public static final int GAS_WATER_SEPARATOR_VALUE = 2;

	/**
	 * The '<em><b>STANDPIPE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #STANDPIPE
	 * @generated
	 * @ordered
	 */
	public static final int STANDPIPE_VALUE = 3;

	/**
	 * The '<em><b>COMBINED LIFT AND SEPARATOR</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #COMBINED_LIFT_AND_SEPARATOR
	 * @generated
	 * @ordered
	 */
	public static final int COMBINED_LIFT_AND_SEPARATOR_VALUE = 4;

	/**
	 * The '<em><b>IN LINE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #IN_LINE
	 * @generated
	 * @ordered
	 */
	public static final int IN_LINE_VALUE = 5;

	/**
	 * The '<em><b>NONE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #NONE
	 * @generated
	 * @ordered
	 */
	public static final int NONE_VALUE = 6;

	/**
	 * An array of all the '<em><b>Muffler Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final MufflerKind[] VALUES_ARRAY =
		new MufflerKind[] {
			NOT_ENTERED,
			LIFT_MUFFLER,
			GAS_WATER_SEPARATOR,
			STANDPIPE,
			COMBINED_LIFT_AND_SEPARATOR,
			IN_LINE,
			NONE,
		};

	/**
	 * A public read-only list of all the '<em><b>Muffler Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<MufflerKind> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Muffler Kind</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static MufflerKind get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			MufflerKind result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Muffler Kind</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static MufflerKind getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			MufflerKind result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Muffler Kind</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static MufflerKind get(int value) {
		switch (value) {
			case NOT_ENTERED_VALUE: return NOT_ENTERED;
			case LIFT_MUFFLER_VALUE: return LIFT_MUFFLER;
			case GAS_WATER_SEPARATOR_VALUE: return GAS_WATER_SEPARATOR;
			case STANDPIPE_VALUE: return STANDPIPE;
			case COMBINED_LIFT_AND_SEPARATOR_VALUE: return COMBINED_LIFT_AND_SEPARATOR;
			case IN_LINE_VALUE: return IN_LINE;
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
	private MufflerKind(int value, String name, String literal) {
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
	
} //MufflerKind
