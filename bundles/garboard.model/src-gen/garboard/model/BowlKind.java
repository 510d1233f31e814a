/**
 */
package garboard.model;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Bowl Kind</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * @see garboard.model.GarboardPackage#getBowlKind()
 * @generated
 */
public enum BowlKind implements Enumerator {
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
	 * The '<em><b>METAL</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #METAL_VALUE
	 * @generated
	 * @ordered
	 */
	METAL(1, "METAL", "metal"),

	/**
	 * The '<em><b>CLEAR WITH HEAT SHIELD</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CLEAR_WITH_HEAT_SHIELD_VALUE
	 * @generated
	 * @ordered
	 */
	CLEAR_WITH_HEAT_SHIELD(2, "CLEAR_WITH_HEAT_SHIELD", "clear-with-heat-shield"),

	/**
	 * The '<em><b>CLEAR WITHOUT SHIELD</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CLEAR_WITHOUT_SHIELD_VALUE
	 * @generated
	 * @ordered
	 */
	CLEAR_WITHOUT_SHIELD(3, "CLEAR_WITHOUT_SHIELD", "clear-without-shield");

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
	 * The '<em><b>METAL</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #METAL
	 * @generated
	 * @ordered
	 */
	public static final int METAL_VALUE = 1;

	/**
	 * The '<em><b>CLEAR WITH HEAT SHIELD</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CLEAR_WITH_HEAT_SHIELD
	 * @generated
	 * @ordered
	 */
	public static final int CLEAR_WITH_HEAT_SHIELD_VALUE = 2;

	/**
	 * The '<em><b>CLEAR WITHOUT SHIELD</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CLEAR_WITHOUT_SHIELD
	 * @generated
	 * @ordered
	 */
	public static final int CLEAR_WITHOUT_SHIELD_VALUE = 3;

	/**
	 * An array of all the '<em><b>Bowl Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final BowlKind[] VALUES_ARRAY =
		new BowlKind[] {
			NOT_ENTERED,
			METAL,
			CLEAR_WITH_HEAT_SHIELD,
			CLEAR_WITHOUT_SHIELD,
		};

	/**
	 * A public read-only list of all the '<em><b>Bowl Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<BowlKind> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Bowl Kind</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static BowlKind get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			BowlKind result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Bowl Kind</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static BowlKind getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			BowlKind result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Bowl Kind</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static BowlKind get(int value) {
		switch (value) {
			case NOT_ENTERED_VALUE: return NOT_ENTERED;
			case METAL_VALUE: return METAL;
			case CLEAR_WITH_HEAT_SHIELD_VALUE: return CLEAR_WITH_HEAT_SHIELD;
			case CLEAR_WITHOUT_SHIELD_VALUE: return CLEAR_WITHOUT_SHIELD;
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
	private BowlKind(int value, String name, String literal) {
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
	
} //BowlKind
