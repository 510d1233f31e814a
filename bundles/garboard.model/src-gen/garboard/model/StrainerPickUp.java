/**
 */
package garboard.model;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Strainer Pick Up</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * @see garboard.model.GarboardPackage#getStrainerPickUp()
 * @generated
 */
public enum StrainerPickUp implements Enumerator {
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
	 * The '<em><b>FLUSH</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #FLUSH_VALUE
	 * @generated
	 * @ordered
	 */
	FLUSH(1, "FLUSH", "flush"),

	/**
	 * The '<em><b>ROUND NON DIRECTIONAL</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ROUND_NON_DIRECTIONAL_VALUE
	 * @generated
	 * @ordered
	 */
	ROUND_NON_DIRECTIONAL(2, "ROUND_NON_DIRECTIONAL", "round-non-directional"),

	/**
	 * The '<em><b>SCOOP FACING FORWARD</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SCOOP_FACING_FORWARD_VALUE
	 * @generated
	 * @ordered
	 */
	SCOOP_FACING_FORWARD(3, "SCOOP_FACING_FORWARD", "scoop-facing-forward"),

	/**
	 * The '<em><b>SCOOP FACING AFT</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SCOOP_FACING_AFT_VALUE
	 * @generated
	 * @ordered
	 */
	SCOOP_FACING_AFT(4, "SCOOP_FACING_AFT", "scoop-facing-aft"),

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
	 * The '<em><b>FLUSH</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #FLUSH
	 * @generated
	 * @ordered
	 */
	public static final int FLUSH_VALUE = 1;

	/**
	 * The '<em><b>ROUND NON DIRECTIONAL</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ROUND_NON_DIRECTIONAL
	 * @generated
	 * @ordered
	 */
	public static final int ROUND_NON_DIRECTIONAL_VALUE = 2;

	/**
	 * The '<em><b>SCOOP FACING FORWARD</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SCOOP_FACING_FORWARD
	 * @generated
	 * @ordered
	 */
	public static final int SCOOP_FACING_FORWARD_VALUE = 3;

	/**
	 * The '<em><b>SCOOP FACING AFT</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SCOOP_FACING_AFT
	 * @generated
	 * @ordered
	 */
	public static final int SCOOP_FACING_AFT_VALUE = 4;

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
	 * An array of all the '<em><b>Strainer Pick Up</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final StrainerPickUp[] VALUES_ARRAY =
		new StrainerPickUp[] {
			NOT_ENTERED,
			FLUSH,
			ROUND_NON_DIRECTIONAL,
			SCOOP_FACING_FORWARD,
			SCOOP_FACING_AFT,
			NONE,
		};

	/**
	 * A public read-only list of all the '<em><b>Strainer Pick Up</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<StrainerPickUp> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Strainer Pick Up</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static StrainerPickUp get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			StrainerPickUp result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Strainer Pick Up</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static StrainerPickUp getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			StrainerPickUp result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Strainer Pick Up</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static StrainerPickUp get(int value) {
		switch (value) {
			case NOT_ENTERED_VALUE: return NOT_ENTERED;
			case FLUSH_VALUE: return FLUSH;
			case ROUND_NON_DIRECTIONAL_VALUE: return ROUND_NON_DIRECTIONAL;
			case SCOOP_FACING_FORWARD_VALUE: return SCOOP_FACING_FORWARD;
			case SCOOP_FACING_AFT_VALUE: return SCOOP_FACING_AFT;
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
	private StrainerPickUp(int value, String name, String literal) {
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
	
} //StrainerPickUp
