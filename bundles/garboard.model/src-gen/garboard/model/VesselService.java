/**
 */
package garboard.model;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Vessel Service</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * @see garboard.model.GarboardPackage#getVesselService()
 * @generated
 */
public enum VesselService implements Enumerator {
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
	 * The '<em><b>RECREATIONAL</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #RECREATIONAL_VALUE
	 * @generated
	 * @ordered
	 */
	RECREATIONAL(1, "RECREATIONAL", "recreational"),

	/**
	 * The '<em><b>SMALL PASSENGER</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SMALL_PASSENGER_VALUE
	 * @generated
	 * @ordered
	 */
	SMALL_PASSENGER(2, "SMALL_PASSENGER", "small-passenger"),

	/**
	 * The '<em><b>UNINSPECTED COMMERCIAL</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #UNINSPECTED_COMMERCIAL_VALUE
	 * @generated
	 * @ordered
	 */
	UNINSPECTED_COMMERCIAL(3, "UNINSPECTED_COMMERCIAL", "uninspected-commercial"),

	/**
	 * The '<em><b>FISHING</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #FISHING_VALUE
	 * @generated
	 * @ordered
	 */
	FISHING(4, "FISHING", "fishing"),

	/**
	 * The '<em><b>TOWING</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TOWING_VALUE
	 * @generated
	 * @ordered
	 */
	TOWING(5, "TOWING", "towing");

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
	 * The '<em><b>RECREATIONAL</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #RECREATIONAL
	 * @generated
	 * @ordered
	 */
	public static final int RECREATIONAL_VALUE = 1;

	/**
	 * The '<em><b>SMALL PASSENGER</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SMALL_PASSENGER
	 * @generated
	 * @ordered
	 */
	public static final int SMALL_PASSENGER_VALUE = 2;

	/**
	 * The '<em><b>UNINSPECTED COMMERCIAL</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #UNINSPECTED_COMMERCIAL
	 * @generated
	 * @ordered
	 */
	public static final int UNINSPECTED_COMMERCIAL_VALUE = 3;

	/**
	 * The '<em><b>FISHING</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #FISHING
	 * @generated
	 * @ordered
	 */
	public static final int FISHING_VALUE = 4;

	/**
	 * The '<em><b>TOWING</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TOWING
	 * @generated
	 * @ordered
	 */
	public static final int TOWING_VALUE = 5;

	/**
	 * An array of all the '<em><b>Vessel Service</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final VesselService[] VALUES_ARRAY =
		new VesselService[] {
			NOT_ENTERED,
			RECREATIONAL,
			SMALL_PASSENGER,
			UNINSPECTED_COMMERCIAL,
			FISHING,
			TOWING,
		};

	/**
	 * A public read-only list of all the '<em><b>Vessel Service</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<VesselService> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Vessel Service</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static VesselService get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			VesselService result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Vessel Service</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static VesselService getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			VesselService result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Vessel Service</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static VesselService get(int value) {
		switch (value) {
			case NOT_ENTERED_VALUE: return NOT_ENTERED;
			case RECREATIONAL_VALUE: return RECREATIONAL;
			case SMALL_PASSENGER_VALUE: return SMALL_PASSENGER;
			case UNINSPECTED_COMMERCIAL_VALUE: return UNINSPECTED_COMMERCIAL;
			case FISHING_VALUE: return FISHING;
			case TOWING_VALUE: return TOWING;
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
	private VesselService(int value, String name, String literal) {
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
	
} //VesselService
