/**
 */
package garboard.model;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Fuel Line Kind</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * @see garboard.model.GarboardPackage#getFuelLineKind()
 * @generated
 */
public enum FuelLineKind implements Enumerator {
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
	 * The '<em><b>HOSE A1</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #HOSE_A1_VALUE
	 * @generated
	 * @ordered
	 */
	HOSE_A1(1, "HOSE_A1", "hose-a1"),

	/**
	 * The '<em><b>HOSE A1 15</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #HOSE_A1_15_VALUE
	 * @generated
	 * @ordered
	 */
	HOSE_A1_15(2, "HOSE_A1_15", "hose-a1-15"),

	/**
	 * The '<em><b>HOSE A2</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #HOSE_A2_VALUE
	 * @generated
	 * @ordered
	 */
	HOSE_A2(3, "HOSE_A2", "hose-a2"),

	/**
	 * The '<em><b>HOSE B1</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #HOSE_B1_VALUE
	 * @generated
	 * @ordered
	 */
	HOSE_B1(4, "HOSE_B1", "hose-b1"),

	/**
	 * The '<em><b>HOSE B2</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #HOSE_B2_VALUE
	 * @generated
	 * @ordered
	 */
	HOSE_B2(5, "HOSE_B2", "hose-b2"),

	/**
	 * The '<em><b>HOSE ISO 7840</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #HOSE_ISO_7840_VALUE
	 * @generated
	 * @ordered
	 */
	HOSE_ISO_7840(6, "HOSE_ISO_7840", "hose-iso-7840"),

	/**
	 * The '<em><b>HOSE ISO 8469</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #HOSE_ISO_8469_VALUE
	 * @generated
	 * @ordered
	 */
	HOSE_ISO_8469(7, "HOSE_ISO_8469", "hose-iso-8469"),

	/**
	 * The '<em><b>INJECTION HOSE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #INJECTION_HOSE_VALUE
	 * @generated
	 * @ordered
	 */
	INJECTION_HOSE(8, "INJECTION_HOSE", "injection-hose"),

	/**
	 * The '<em><b>COPPER TUBE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #COPPER_TUBE_VALUE
	 * @generated
	 * @ordered
	 */
	COPPER_TUBE(9, "COPPER_TUBE", "copper-tube"),

	/**
	 * The '<em><b>COPPER NICKEL TUBE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #COPPER_NICKEL_TUBE_VALUE
	 * @generated
	 * @ordered
	 */
	COPPER_NICKEL_TUBE(10, "COPPER_NICKEL_TUBE", "copper-nickel-tube"),

	/**
	 * The '<em><b>STEEL TUBE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #STEEL_TUBE_VALUE
	 * @generated
	 * @ordered
	 */
	STEEL_TUBE(11, "STEEL_TUBE", "steel-tube"),

	/**
	 * The '<em><b>OTHER</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #OTHER_VALUE
	 * @generated
	 * @ordered
	 */
	OTHER(12, "OTHER", "other");

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
	 * The '<em><b>HOSE A1</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #HOSE_A1
	 * @generated
	 * @ordered
	 */
	public static final int HOSE_A1_VALUE = 1;

	/**
	 * The '<em><b>HOSE A1 15</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #HOSE_A1_15
	 * @generated
	 * @ordered
	 */
	public static final int HOSE_A1_15_VALUE = 2;

	/**
	 * The '<em><b>HOSE A2</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #HOSE_A2
	 * @generated
	 * @ordered
	 */
	public static final int HOSE_A2_VALUE = 3;

	/**
	 * The '<em><b>HOSE B1</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #HOSE_B1
	 * @generated
	 * @ordered
	 */
	public static final int HOSE_B1_VALUE = 4;

	/**
	 * The '<em><b>HOSE B2</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #HOSE_B2
	 * @generated
	 * @ordered
	 */
	public static final int HOSE_B2_VALUE = 5;

	/**
	 * The '<em><b>HOSE ISO 7840</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #HOSE_ISO_7840
	 * @generated
	 * @ordered
	 */
	public static final int HOSE_ISO_7840_VALUE = 6;

	/**
	 * The '<em><b>HOSE ISO 8469</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #HOSE_ISO_8469
	 * @generated
	 * @ordered
	 */
	public static final int HOSE_ISO_8469_VALUE = 7;

	/**
	 * The '<em><b>INJECTION HOSE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #INJECTION_HOSE
	 * @generated
	 * @ordered
	 */
	public static final int INJECTION_HOSE_VALUE = 8;

	/**
	 * The '<em><b>COPPER TUBE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #COPPER_TUBE
	 * @generated
	 * @ordered
	 */
	public static final int COPPER_TUBE_VALUE = 9;

	/**
	 * The '<em><b>COPPER NICKEL TUBE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #COPPER_NICKEL_TUBE
	 * @generated
	 * @ordered
	 */
	public static final int COPPER_NICKEL_TUBE_VALUE = 10;

	/**
	 * The '<em><b>STEEL TUBE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #STEEL_TUBE
	 * @generated
	 * @ordered
	 */
	public static final int STEEL_TUBE_VALUE = 11;

	/**
	 * The '<em><b>OTHER</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #OTHER
	 * @generated
	 * @ordered
	 */
	public static final int OTHER_VALUE = 12;

	/**
	 * An array of all the '<em><b>Fuel Line Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final FuelLineKind[] VALUES_ARRAY =
		new FuelLineKind[] {
			NOT_ENTERED,
			HOSE_A1,
			HOSE_A1_15,
			HOSE_A2,
			HOSE_B1,
			HOSE_B2,
			HOSE_ISO_7840,
			HOSE_ISO_8469,
			INJECTION_HOSE,
			COPPER_TUBE,
			COPPER_NICKEL_TUBE,
			STEEL_TUBE,
			OTHER,
		};

	/**
	 * A public read-only list of all the '<em><b>Fuel Line Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<FuelLineKind> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Fuel Line Kind</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static FuelLineKind get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			FuelLineKind result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Fuel Line Kind</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static FuelLineKind getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			FuelLineKind result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Fuel Line Kind</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static FuelLineKind get(int value) {
		switch (value) {
			case NOT_ENTERED_VALUE: return NOT_ENTERED;
			case HOSE_A1_VALUE: return HOSE_A1;
			case HOSE_A1_15_VALUE: return HOSE_A1_15;
			case HOSE_A2_VALUE: return HOSE_A2;
			case HOSE_B1_VALUE: return HOSE_B1;
			case HOSE_B2_VALUE: return HOSE_B2;
			case HOSE_ISO_7840_VALUE: return HOSE_ISO_7840;
			case HOSE_ISO_8469_VALUE: return HOSE_ISO_8469;
			case INJECTION_HOSE_VALUE: return INJECTION_HOSE;
			case COPPER_TUBE_VALUE: return COPPER_TUBE;
			case COPPER_NICKEL_TUBE_VALUE: return COPPER_NICKEL_TUBE;
			case STEEL_TUBE_VALUE: return STEEL_TUBE;
			case OTHER_VALUE: return OTHER;
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
	private FuelLineKind(int value, String name, String literal) {
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
	
} //FuelLineKind
