/**
 */
package garboard.model;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Exhaust Hose Standard</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * @see garboard.model.GarboardPackage#getExhaustHoseStandard()
 * @generated
 */
public enum ExhaustHoseStandard implements Enumerator {
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
	 * The '<em><b>SAE J2006</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SAE_J2006_VALUE
	 * @generated
	 * @ordered
	 */
	SAE_J2006(1, "SAE_J2006", "sae-j2006"),

	/**
	 * The '<em><b>ISO 13363 CLASS A</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ISO_13363_CLASS_A_VALUE
	 * @generated
	 * @ordered
	 */
	ISO_13363_CLASS_A(2, "ISO_13363_CLASS_A", "iso-13363-class-a"),

	/**
	 * The '<em><b>ISO 13363 CLASS B</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ISO_13363_CLASS_B_VALUE
	 * @generated
	 * @ordered
	 */
	ISO_13363_CLASS_B(3, "ISO_13363_CLASS_B", "iso-13363-class-b"),

	/**
	 * The '<em><b>UNMARKED</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #UNMARKED_VALUE
	 * @generated
	 * @ordered
	 */
	UNMARKED(4, "UNMARKED", "unmarked"),

	/**
	 * The '<em><b>METAL PIPE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #METAL_PIPE_VALUE
	 * @generated
	 * @ordered
	 */
	METAL_PIPE(5, "METAL_PIPE", "metal-pipe"),

	/**
	 * The '<em><b>FIBRE REINFORCED TUBE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #FIBRE_REINFORCED_TUBE_VALUE
	 * @generated
	 * @ordered
	 */
	FIBRE_REINFORCED_TUBE(6, "FIBRE_REINFORCED_TUBE", "fibre-reinforced-tube");

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
	 * The '<em><b>SAE J2006</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SAE_J2006
	 * @generated
	 * @ordered
	 */
	public static final int SAE_J2006_VALUE = 1;

	/**
	 * The '<em><b>ISO 13363 CLASS A</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ISO_13363_CLASS_A
	 * @generated
	 * @ordered
	 */
	public static final int ISO_13363_CLASS_A_VALUE = 2;

	/**
	 * The '<em><b>ISO 13363 CLASS B</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ISO_13363_CLASS_B
	 * @generated
	 * @ordered
	 */
	public static final int ISO_13363_CLASS_B_VALUE = 3;

	/**
	 * The '<em><b>UNMARKED</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #UNMARKED
	 * @generated
	 * @ordered
	 */
	public static final int UNMARKED_VALUE = 4;

	/**
	 * The '<em><b>METAL PIPE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #METAL_PIPE
	 * @generated
	 * @ordered
	 */
	public static final int METAL_PIPE_VALUE = 5;

	/**
	 * The '<em><b>FIBRE REINFORCED TUBE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #FIBRE_REINFORCED_TUBE
	 * @generated
	 * @ordered
	 */
	public static final int FIBRE_REINFORCED_TUBE_VALUE = 6;

	/**
	 * An array of all the '<em><b>Exhaust Hose Standard</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final ExhaustHoseStandard[] VALUES_ARRAY =
		new ExhaustHoseStandard[] {
			NOT_ENTERED,
			SAE_J2006,
			ISO_13363_CLASS_A,
			ISO_13363_CLASS_B,
			UNMARKED,
			METAL_PIPE,
			FIBRE_REINFORCED_TUBE,
		};

	/**
	 * A public read-only list of all the '<em><b>Exhaust Hose Standard</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<ExhaustHoseStandard> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Exhaust Hose Standard</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static ExhaustHoseStandard get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			ExhaustHoseStandard result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Exhaust Hose Standard</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static ExhaustHoseStandard getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			ExhaustHoseStandard result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Exhaust Hose Standard</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static ExhaustHoseStandard get(int value) {
		switch (value) {
			case NOT_ENTERED_VALUE: return NOT_ENTERED;
			case SAE_J2006_VALUE: return SAE_J2006;
			case ISO_13363_CLASS_A_VALUE: return ISO_13363_CLASS_A;
			case ISO_13363_CLASS_B_VALUE: return ISO_13363_CLASS_B;
			case UNMARKED_VALUE: return UNMARKED;
			case METAL_PIPE_VALUE: return METAL_PIPE;
			case FIBRE_REINFORCED_TUBE_VALUE: return FIBRE_REINFORCED_TUBE;
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
	private ExhaustHoseStandard(int value, String name, String literal) {
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
	
} //ExhaustHoseStandard
