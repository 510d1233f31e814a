/**
 */
package garboard.model;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Vent Hose End</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * @see garboard.model.GarboardPackage#getVentHoseEnd()
 * @generated
 */
public enum VentHoseEnd implements Enumerator {
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
	 * The '<em><b>NO VENT HOSE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #NO_VENT_HOSE_VALUE
	 * @generated
	 * @ordered
	 */
	NO_VENT_HOSE(1, "NO_VENT_HOSE", "no-vent-hose"),

	/**
	 * The '<em><b>BILGE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BILGE_VALUE
	 * @generated
	 * @ordered
	 */
	BILGE(2, "BILGE", "bilge"),

	/**
	 * The '<em><b>OVERBOARD</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #OVERBOARD_VALUE
	 * @generated
	 * @ordered
	 */
	OVERBOARD(3, "OVERBOARD", "overboard"),

	/**
	 * The '<em><b>COCKPIT</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #COCKPIT_VALUE
	 * @generated
	 * @ordered
	 */
	COCKPIT(4, "COCKPIT", "cockpit");

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
	 * The '<em><b>NO VENT HOSE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #NO_VENT_HOSE
	 * @generated
	 * @ordered
	 */
	public static final int NO_VENT_HOSE_VALUE = 1;

	/**
	 * The '<em><b>BILGE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BILGE
	 * @generated
	 * @ordered
	 */
	public static final int BILGE_VALUE = 2;

	/**
	 * The '<em><b>OVERBOARD</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #OVERBOARD
	 * @generated
	 * @ordered
	 */
	public static final int OVERBOARD_VALUE = 3;

	/**
	 * The '<em><b>COCKPIT</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #COCKPIT
	 * @generated
	 * @ordered
	 */
	public static final int COCKPIT_VALUE = 4;

	/**
	 * An array of all the '<em><b>Vent Hose End</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final VentHoseEnd[] VALUES_ARRAY =
		new VentHoseEnd[] {
			NOT_ENTERED,
			NO_VENT_HOSE,
			BILGE,
			OVERBOARD,
			COCKPIT,
		};

	/**
	 * A public read-only list of all the '<em><b>Vent Hose End</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<VentHoseEnd> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Vent Hose End</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static VentHoseEnd get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			VentHoseEnd result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Vent Hose End</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static VentHoseEnd getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			VentHoseEnd result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Vent Hose End</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static VentHoseEnd get(int value) {
		switch (value) {
			case NOT_ENTERED_VALUE: return NOT_ENTERED;
			case NO_VENT_HOSE_VALUE: return NO_VENT_HOSE;
			case BILGE_VALUE: return BILGE;
			case OVERBOARD_VALUE: return OVERBOARD;
			case COCKPIT_VALUE: return COCKPIT;
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
	private VentHoseEnd(int value, String name, String literal) {
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
	
} //VentHoseEnd
