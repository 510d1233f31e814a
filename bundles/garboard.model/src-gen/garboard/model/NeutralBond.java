/**
 */
package garboard.model;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Neutral Bond</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * @see garboard.model.GarboardPackage#getNeutralBond()
 * @generated
 */
public enum NeutralBond implements Enumerator {
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
	 * The '<em><b>AT GENERATOR</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #AT_GENERATOR_VALUE
	 * @generated
	 * @ordered
	 */
	AT_GENERATOR(1, "AT_GENERATOR", "at-generator"),

	/**
	 * The '<em><b>AT SWITCHBOARD</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #AT_SWITCHBOARD_VALUE
	 * @generated
	 * @ordered
	 */
	AT_SWITCHBOARD(2, "AT_SWITCHBOARD", "at-switchboard"),

	/**
	 * The '<em><b>SWITCHED WITH SOURCE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SWITCHED_WITH_SOURCE_VALUE
	 * @generated
	 * @ordered
	 */
	SWITCHED_WITH_SOURCE(3, "SWITCHED_WITH_SOURCE", "switched-with-source"),

	/**
	 * The '<em><b>NONE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #NONE_VALUE
	 * @generated
	 * @ordered
	 */
	NONE(4, "NONE", "none"),

	/**
	 * The '<em><b>SEVERAL</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SEVERAL_VALUE
	 * @generated
	 * @ordered
	 */
	SEVERAL(5, "SEVERAL", "several");

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
	 * The '<em><b>AT GENERATOR</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #AT_GENERATOR
	 * @generated
	 * @ordered
	 */
	public static final int AT_GENERATOR_VALUE = 1;

	/**
	 * The '<em><b>AT SWITCHBOARD</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #AT_SWITCHBOARD
	 * @generated
	 * @ordered
	 */
	public static final int AT_SWITCHBOARD_VALUE = 2;

	/**
	 * The '<em><b>SWITCHED WITH SOURCE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SWITCHED_WITH_SOURCE
	 * @generated
	 * @ordered
	 */
	public static final int SWITCHED_WITH_SOURCE_VALUE = 3;

	/**
	 * The '<em><b>NONE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #NONE
	 * @generated
	 * @ordered
	 */
	public static final int NONE_VALUE = 4;

	/**
	 * The '<em><b>SEVERAL</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SEVERAL
	 * @generated
	 * @ordered
	 */
	public static final int SEVERAL_VALUE = 5;

	/**
	 * An array of all the '<em><b>Neutral Bond</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final NeutralBond[] VALUES_ARRAY =
		new NeutralBond[] {
			NOT_ENTERED,
			AT_GENERATOR,
			AT_SWITCHBOARD,
			SWITCHED_WITH_SOURCE,
			NONE,
			SEVERAL,
		};

	/**
	 * A public read-only list of all the '<em><b>Neutral Bond</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<NeutralBond> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Neutral Bond</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static NeutralBond get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			NeutralBond result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Neutral Bond</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static NeutralBond getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			NeutralBond result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Neutral Bond</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static NeutralBond get(int value) {
		switch (value) {
			case NOT_ENTERED_VALUE: return NOT_ENTERED;
			case AT_GENERATOR_VALUE: return AT_GENERATOR;
			case AT_SWITCHBOARD_VALUE: return AT_SWITCHBOARD;
			case SWITCHED_WITH_SOURCE_VALUE: return SWITCHED_WITH_SOURCE;
			case NONE_VALUE: return NONE;
			case SEVERAL_VALUE: return SEVERAL;
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
	private NeutralBond(int value, String name, String literal) {
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
	
} //NeutralBond
