/**
 */
package garboard.model;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Trip Curve</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * @see garboard.model.GarboardPackage#getTripCurve()
 * @generated
 */
public enum TripCurve implements Enumerator {
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
	 * The '<em><b>TYPE B</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TYPE_B_VALUE
	 * @generated
	 * @ordered
	 */
	TYPE_B(1, "TYPE_B", "type-b"),

	/**
	 * The '<em><b>TYPE C</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TYPE_C_VALUE
	 * @generated
	 * @ordered
	 */
	TYPE_C(2, "TYPE_C", "type-c"),

	/**
	 * The '<em><b>TYPE D</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TYPE_D_VALUE
	 * @generated
	 * @ordered
	 */
	TYPE_D(3, "TYPE_D", "type-d"),

	/**
	 * The '<em><b>THERMAL ONLY</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #THERMAL_ONLY_VALUE
	 * @generated
	 * @ordered
	 */
	THERMAL_ONLY(4, "THERMAL_ONLY", "thermal-only"),

	/**
	 * The '<em><b>ELECTRONIC</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ELECTRONIC_VALUE
	 * @generated
	 * @ordered
	 */
	ELECTRONIC(5, "ELECTRONIC", "electronic");

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
	 * The '<em><b>TYPE B</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TYPE_B
	 * @generated
	 * @ordered
	 */
	public static final int TYPE_B_VALUE = 1;

	/**
	 * The '<em><b>TYPE C</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TYPE_C
	 * @generated
	 * @ordered
	 */
	public static final int TYPE_C_VALUE = 2;

	/**
	 * The '<em><b>TYPE D</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TYPE_D
	 * @generated
	 * @ordered
	 */
	public static final int TYPE_D_VALUE = 3;

	/**
	 * The '<em><b>THERMAL ONLY</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #THERMAL_ONLY
	 * @generated
	 * @ordered
	 */
	public static final int THERMAL_ONLY_VALUE = 4;

	/**
	 * The '<em><b>ELECTRONIC</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ELECTRONIC
	 * @generated
	 * @ordered
	 */
	public static final int ELECTRONIC_VALUE = 5;

	/**
	 * An array of all the '<em><b>Trip Curve</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final TripCurve[] VALUES_ARRAY =
		new TripCurve[] {
			NOT_ENTERED,
			TYPE_B,
			TYPE_C,
			TYPE_D,
			THERMAL_ONLY,
			ELECTRONIC,
		};

	/**
	 * A public read-only list of all the '<em><b>Trip Curve</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<TripCurve> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Trip Curve</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static TripCurve get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			TripCurve result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Trip Curve</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static TripCurve getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			TripCurve result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Trip Curve</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static TripCurve get(int value) {
		switch (value) {
			case NOT_ENTERED_VALUE: return NOT_ENTERED;
			case TYPE_B_VALUE: return TYPE_B;
			case TYPE_C_VALUE: return TYPE_C;
			case TYPE_D_VALUE: return TYPE_D;
			case THERMAL_ONLY_VALUE: return THERMAL_ONLY;
			case ELECTRONIC_VALUE: return ELECTRONIC;
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
	private TripCurve(int value, String name, String literal) {
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
	
} //TripCurve
