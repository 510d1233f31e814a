/**
 */
package garboard.model;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Party Role</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * @see garboard.model.GarboardPackage#getPartyRole()
 * @generated
 */
public enum PartyRole implements Enumerator {
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
	 * The '<em><b>OWNER</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #OWNER_VALUE
	 * @generated
	 * @ordered
	 */
	OWNER(1, "OWNER", "owner"),

	/**
	 * The '<em><b>INSTALLER</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #INSTALLER_VALUE
	 * @generated
	 * @ordered
	 */
	INSTALLER(2, "INSTALLER", "installer"),

	/**
	 * The '<em><b>SURVEYOR</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SURVEYOR_VALUE
	 * @generated
	 * @ordered
	 */
	SURVEYOR(3, "SURVEYOR", "surveyor"),

	/**
	 * The '<em><b>WARRANTY DESK</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #WARRANTY_DESK_VALUE
	 * @generated
	 * @ordered
	 */
	WARRANTY_DESK(4, "WARRANTY_DESK", "warranty-desk"),

	/**
	 * The '<em><b>BUILDER</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BUILDER_VALUE
	 * @generated
	 * @ordered
	 */
	BUILDER(5, "BUILDER", "builder"),

	/**
	 * The '<em><b>OPERATOR</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #OPERATOR_VALUE
	 * @generated
	 * @ordered
	 */
	OPERATOR(6, "OPERATOR", "operator");

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
	 * The '<em><b>OWNER</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #OWNER
	 * @generated
	 * @ordered
	 */
	public static final int OWNER_VALUE = 1;

	/**
	 * The '<em><b>INSTALLER</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #INSTALLER
	 * @generated
	 * @ordered
	 */
	public static final int INSTALLER_VALUE = 2;

	/**
	 * The '<em><b>SURVEYOR</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SURVEYOR
	 * @generated
	 * @ordered
	 */
	public static final int SURVEYOR_VALUE = 3;

	/**
	 * The '<em><b>WARRANTY DESK</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #WARRANTY_DESK
	 * @generated
	 * @ordered
	 */
	public static final int WARRANTY_DESK_VALUE = 4;

	/**
	 * The '<em><b>BUILDER</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BUILDER
	 * @generated
	 * @ordered
	 */
	public static final int BUILDER_VALUE = 5;

	/**
	 * The '<em><b>OPERATOR</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #OPERATOR
	 * @generated
	 * @ordered
	 */
	public static final int OPERATOR_VALUE = 6;

	/**
	 * An array of all the '<em><b>Party Role</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final PartyRole[] VALUES_ARRAY =
		new PartyRole[] {
			NOT_ENTERED,
			OWNER,
			INSTALLER,
			SURVEYOR,
			WARRANTY_DESK,
			BUILDER,
			OPERATOR,
		};

	/**
	 * A public read-only list of all the '<em><b>Party Role</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<PartyRole> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Party Role</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static PartyRole get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			PartyRole result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Party Role</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static PartyRole getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			PartyRole result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Party Role</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static PartyRole get(int value) {
		switch (value) {
			case NOT_ENTERED_VALUE: return NOT_ENTERED;
			case OWNER_VALUE: return OWNER;
			case INSTALLER_VALUE: return INSTALLER;
			case SURVEYOR_VALUE: return SURVEYOR;
			case WARRANTY_DESK_VALUE: return WARRANTY_DESK;
			case BUILDER_VALUE: return BUILDER;
			case OPERATOR_VALUE: return OPERATOR;
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
	private PartyRole(int value, String name, String literal) {
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
	
} //PartyRole
