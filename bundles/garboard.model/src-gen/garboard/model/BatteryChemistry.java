/**
 */
package garboard.model;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Battery Chemistry</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * @see garboard.model.GarboardPackage#getBatteryChemistry()
 * @generated
 */
public enum BatteryChemistry implements Enumerator {
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
	 * The '<em><b>FLOODED LEAD ACID</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #FLOODED_LEAD_ACID_VALUE
	 * @generated
	 * @ordered
	 */
	FLOODED_LEAD_ACID(1, "FLOODED_LEAD_ACID", "flooded-lead-acid"),

	/**
	 * The '<em><b>AGM</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #AGM_VALUE
	 * @generated
	 * @ordered
	 */
	AGM(2, "AGM", "agm"),

	/**
	 * The '<em><b>GEL</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #GEL_VALUE
	 * @generated
	 * @ordered
	 */
	GEL(3, "GEL", "gel"),

	/**
	 * The '<em><b>LITHIUM IRON PHOSPHATE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #LITHIUM_IRON_PHOSPHATE_VALUE
	 * @generated
	 * @ordered
	 */
	LITHIUM_IRON_PHOSPHATE(4, "LITHIUM_IRON_PHOSPHATE", "lithium-iron-phosphate");

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
	 * The '<em><b>FLOODED LEAD ACID</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #FLOODED_LEAD_ACID
	 * @generated
	 * @ordered
	 */
	public static final int FLOODED_LEAD_ACID_VALUE = 1;

	/**
	 * The '<em><b>AGM</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #AGM
	 * @generated
	 * @ordered
	 */
	public static final int AGM_VALUE = 2;

	/**
	 * The '<em><b>GEL</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #GEL
	 * @generated
	 * @ordered
	 */
	public static final int GEL_VALUE = 3;

	/**
	 * The '<em><b>LITHIUM IRON PHOSPHATE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #LITHIUM_IRON_PHOSPHATE
	 * @generated
	 * @ordered
	 */
	public static final int LITHIUM_IRON_PHOSPHATE_VALUE = 4;

	/**
	 * An array of all the '<em><b>Battery Chemistry</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final BatteryChemistry[] VALUES_ARRAY =
		new BatteryChemistry[] {
			NOT_ENTERED,
			FLOODED_LEAD_ACID,
			AGM,
			GEL,
			LITHIUM_IRON_PHOSPHATE,
		};

	/**
	 * A public read-only list of all the '<em><b>Battery Chemistry</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<BatteryChemistry> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Battery Chemistry</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static BatteryChemistry get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			BatteryChemistry result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Battery Chemistry</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static BatteryChemistry getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			BatteryChemistry result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Battery Chemistry</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static BatteryChemistry get(int value) {
		switch (value) {
			case NOT_ENTERED_VALUE: return NOT_ENTERED;
			case FLOODED_LEAD_ACID_VALUE: return FLOODED_LEAD_ACID;
			case AGM_VALUE: return AGM;
			case GEL_VALUE: return GEL;
			case LITHIUM_IRON_PHOSPHATE_VALUE: return LITHIUM_IRON_PHOSPHATE;
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
	private BatteryChemistry(int value, String name, String literal) {
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
	
} //BatteryChemistry
