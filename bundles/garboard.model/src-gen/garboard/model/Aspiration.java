/**
 */
package garboard.model;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Aspiration</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * @see garboard.model.GarboardPackage#getAspiration()
 * @generated
 */
public enum Aspiration implements Enumerator {
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
	 * The '<em><b>NATURALLY ASPIRATED</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #NATURALLY_ASPIRATED_VALUE
	 * @generated
	 * @ordered
	 */
	NATURALLY_ASPIRATED(1, "NATURALLY_ASPIRATED", "naturally-aspirated"),

	/**
	 * The '<em><b>TURBOCHARGED</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TURBOCHARGED_VALUE
	 * @generated
	 * @ordered
	 */
	TURBOCHARGED(2, "TURBOCHARGED", "turbocharged"),

	/**
	 * The '<em><b>TURBOCHARGED CHARGE AIR COOLED</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TURBOCHARGED_CHARGE_AIR_COOLED_VALUE
	 * @generated
	 * @ordered
	 */
	TURBOCHARGED_CHARGE_AIR_COOLED(3, "TURBOCHARGED_CHARGE_AIR_COOLED", "turbocharged-charge-air-cooled");

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
	 * The '<em><b>NATURALLY ASPIRATED</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #NATURALLY_ASPIRATED
	 * @generated
	 * @ordered
	 */
	public static final int NATURALLY_ASPIRATED_VALUE = 1;

	/**
	 * The '<em><b>TURBOCHARGED</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TURBOCHARGED
	 * @generated
	 * @ordered
	 */
	public static final int TURBOCHARGED_VALUE = 2;

	/**
	 * The '<em><b>TURBOCHARGED CHARGE AIR COOLED</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TURBOCHARGED_CHARGE_AIR_COOLED
	 * @generated
	 * @ordered
	 */
	public static final int TURBOCHARGED_CHARGE_AIR_COOLED_VALUE = 3;

	/**
	 * An array of all the '<em><b>Aspiration</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final Aspiration[] VALUES_ARRAY =
		new Aspiration[] {
			NOT_ENTERED,
			NATURALLY_ASPIRATED,
			TURBOCHARGED,
			TURBOCHARGED_CHARGE_AIR_COOLED,
		};

	/**
	 * A public read-only list of all the '<em><b>Aspiration</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<Aspiration> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Aspiration</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static Aspiration get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			Aspiration result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Aspiration</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static Aspiration getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			Aspiration result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Aspiration</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static Aspiration get(int value) {
		switch (value) {
			case NOT_ENTERED_VALUE: return NOT_ENTERED;
			case NATURALLY_ASPIRATED_VALUE: return NATURALLY_ASPIRATED;
			case TURBOCHARGED_VALUE: return TURBOCHARGED;
			case TURBOCHARGED_CHARGE_AIR_COOLED_VALUE: return TURBOCHARGED_CHARGE_AIR_COOLED;
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
	private Aspiration(int value, String name, String literal) {
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
	
} //Aspiration
