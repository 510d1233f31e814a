/**
 */
package garboard.model;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Pipe Fitting Kind</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * @see garboard.model.GarboardPackage#getPipeFittingKind()
 * @generated
 */
public enum PipeFittingKind implements Enumerator {
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
	 * The '<em><b>ENTRANCE SHARP</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ENTRANCE_SHARP_VALUE
	 * @generated
	 * @ordered
	 */
	ENTRANCE_SHARP(1, "ENTRANCE_SHARP", "entrance-sharp"),

	/**
	 * The '<em><b>ENTRANCE PROJECTING</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ENTRANCE_PROJECTING_VALUE
	 * @generated
	 * @ordered
	 */
	ENTRANCE_PROJECTING(2, "ENTRANCE_PROJECTING", "entrance-projecting"),

	/**
	 * The '<em><b>ENTRANCE ROUNDED</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ENTRANCE_ROUNDED_VALUE
	 * @generated
	 * @ordered
	 */
	ENTRANCE_ROUNDED(3, "ENTRANCE_ROUNDED", "entrance-rounded"),

	/**
	 * The '<em><b>EXIT</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #EXIT_VALUE
	 * @generated
	 * @ordered
	 */
	EXIT(4, "EXIT", "exit"),

	/**
	 * The '<em><b>ELBOW 90</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ELBOW_90_VALUE
	 * @generated
	 * @ordered
	 */
	ELBOW_90(5, "ELBOW_90", "elbow-90"),

	/**
	 * The '<em><b>ELBOW 90 LONG</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ELBOW_90_LONG_VALUE
	 * @generated
	 * @ordered
	 */
	ELBOW_90_LONG(6, "ELBOW_90_LONG", "elbow-90-long"),

	/**
	 * The '<em><b>ELBOW 45</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ELBOW_45_VALUE
	 * @generated
	 * @ordered
	 */
	ELBOW_45(7, "ELBOW_45", "elbow-45"),

	/**
	 * The '<em><b>SMOOTH BEND 90</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SMOOTH_BEND_90_VALUE
	 * @generated
	 * @ordered
	 */
	SMOOTH_BEND_90(8, "SMOOTH_BEND_90", "smooth-bend-90"),

	/**
	 * The '<em><b>BEND 180</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BEND_180_VALUE
	 * @generated
	 * @ordered
	 */
	BEND_180(9, "BEND_180", "bend-180"),

	/**
	 * The '<em><b>TEE RUN</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TEE_RUN_VALUE
	 * @generated
	 * @ordered
	 */
	TEE_RUN(10, "TEE_RUN", "tee-run"),

	/**
	 * The '<em><b>TEE BRANCH</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TEE_BRANCH_VALUE
	 * @generated
	 * @ordered
	 */
	TEE_BRANCH(11, "TEE_BRANCH", "tee-branch"),

	/**
	 * The '<em><b>BALL VALVE OPEN</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BALL_VALVE_OPEN_VALUE
	 * @generated
	 * @ordered
	 */
	BALL_VALVE_OPEN(12, "BALL_VALVE_OPEN", "ball-valve-open"),

	/**
	 * The '<em><b>STRAINER CLEAN</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #STRAINER_CLEAN_VALUE
	 * @generated
	 * @ordered
	 */
	STRAINER_CLEAN(13, "STRAINER_CLEAN", "strainer-clean"),

	/**
	 * The '<em><b>HULL GRATING</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #HULL_GRATING_VALUE
	 * @generated
	 * @ordered
	 */
	HULL_GRATING(14, "HULL_GRATING", "hull-grating"),

	/**
	 * The '<em><b>HOSE BARB</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #HOSE_BARB_VALUE
	 * @generated
	 * @ordered
	 */
	HOSE_BARB(15, "HOSE_BARB", "hose-barb");

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
	 * The '<em><b>ENTRANCE SHARP</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ENTRANCE_SHARP
	 * @generated
	 * @ordered
	 */
	public static final int ENTRANCE_SHARP_VALUE = 1;

	/**
	 * The '<em><b>ENTRANCE PROJECTING</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ENTRANCE_PROJECTING
	 * @generated
	 * @ordered
	 */
	public static final int ENTRANCE_PROJECTING_VALUE = 2;

	/**
	 * The '<em><b>ENTRANCE ROUNDED</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ENTRANCE_ROUNDED
	 * @generated
	 * @ordered
	 */
	public static final int ENTRANCE_ROUNDED_VALUE = 3;

	/**
	 * The '<em><b>EXIT</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #EXIT
	 * @generated
	 * @ordered
	 */
	public static final int EXIT_VALUE = 4;

	/**
	 * The '<em><b>ELBOW 90</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ELBOW_90
	 * @generated
	 * @ordered
	 */
	public static final int ELBOW_90_VALUE = 5;

	/**
	 * The '<em><b>ELBOW 90 LONG</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ELBOW_90_LONG
	 * @generated
	 * @ordered
	 */
	public static final int ELBOW_90_LONG_VALUE = 6;

	/**
	 * The '<em><b>ELBOW 45</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ELBOW_45
	 * @generated
	 * @ordered
	 */
	public static final int ELBOW_45_VALUE = 7;

	/**
	 * The '<em><b>SMOOTH BEND 90</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SMOOTH_BEND_90
	 * @generated
	 * @ordered
	 */
	public static final int SMOOTH_BEND_90_VALUE = 8;

	/**
	 * The '<em><b>BEND 180</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BEND_180
	 * @generated
	 * @ordered
	 */
	public static final int BEND_180_VALUE = 9;

	/**
	 * The '<em><b>TEE RUN</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TEE_RUN
	 * @generated
	 * @ordered
	 */
	public static final int TEE_RUN_VALUE = 10;

	/**
	 * The '<em><b>TEE BRANCH</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TEE_BRANCH
	 * @generated
	 * @ordered
	 */
	public static final int TEE_BRANCH_VALUE = 11;

	/**
	 * The '<em><b>BALL VALVE OPEN</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BALL_VALVE_OPEN
	 * @generated
	 * @ordered
	 */
	public static final int BALL_VALVE_OPEN_VALUE = 12;

	/**
	 * The '<em><b>STRAINER CLEAN</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #STRAINER_CLEAN
	 * @generated
	 * @ordered
	 */
	public static final int STRAINER_CLEAN_VALUE = 13;

	/**
	 * The '<em><b>HULL GRATING</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #HULL_GRATING
	 * @generated
	 * @ordered
	 */
	public static final int HULL_GRATING_VALUE = 14;

	/**
	 * The '<em><b>HOSE BARB</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #HOSE_BARB
	 * @generated
	 * @ordered
	 */
	public static final int HOSE_BARB_VALUE = 15;

	/**
	 * An array of all the '<em><b>Pipe Fitting Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final PipeFittingKind[] VALUES_ARRAY =
		new PipeFittingKind[] {
			NOT_ENTERED,
			ENTRANCE_SHARP,
			ENTRANCE_PROJECTING,
			ENTRANCE_ROUNDED,
			EXIT,
			ELBOW_90,
			ELBOW_90_LONG,
			ELBOW_45,
			SMOOTH_BEND_90,
			BEND_180,
			TEE_RUN,
			TEE_BRANCH,
			BALL_VALVE_OPEN,
			STRAINER_CLEAN,
			HULL_GRATING,
			HOSE_BARB,
		};

	/**
	 * A public read-only list of all the '<em><b>Pipe Fitting Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<PipeFittingKind> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Pipe Fitting Kind</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static PipeFittingKind get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			PipeFittingKind result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Pipe Fitting Kind</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static PipeFittingKind getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			PipeFittingKind result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Pipe Fitting Kind</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static PipeFittingKind get(int value) {
		switch (value) {
			case NOT_ENTERED_VALUE: return NOT_ENTERED;
			case ENTRANCE_SHARP_VALUE: return ENTRANCE_SHARP;
			case ENTRANCE_PROJECTING_VALUE: return ENTRANCE_PROJECTING;
			case ENTRANCE_ROUNDED_VALUE: return ENTRANCE_ROUNDED;
			case EXIT_VALUE: return EXIT;
			case ELBOW_90_VALUE: return ELBOW_90;
			case ELBOW_90_LONG_VALUE: return ELBOW_90_LONG;
			case ELBOW_45_VALUE: return ELBOW_45;
			case SMOOTH_BEND_90_VALUE: return SMOOTH_BEND_90;
			case BEND_180_VALUE: return BEND_180;
			case TEE_RUN_VALUE: return TEE_RUN;
			case TEE_BRANCH_VALUE: return TEE_BRANCH;
			case BALL_VALVE_OPEN_VALUE: return BALL_VALVE_OPEN;
			case STRAINER_CLEAN_VALUE: return STRAINER_CLEAN;
			case HULL_GRATING_VALUE: return HULL_GRATING;
			case HOSE_BARB_VALUE: return HOSE_BARB;
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
	private PipeFittingKind(int value, String name, String literal) {
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
	
} //PipeFittingKind
