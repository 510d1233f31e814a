/**
 */
package garboard.model;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Transfer Kind</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * @see garboard.model.GarboardPackage#getTransferKind()
 * @generated
 */
public enum TransferKind implements Enumerator {
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
	 * The '<em><b>ROTARY SELECTOR</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ROTARY_SELECTOR_VALUE
	 * @generated
	 * @ordered
	 */
	ROTARY_SELECTOR(1, "ROTARY_SELECTOR", "rotary-selector"),

	/**
	 * The '<em><b>INTERLOCKED BREAKERS</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #INTERLOCKED_BREAKERS_VALUE
	 * @generated
	 * @ordered
	 */
	INTERLOCKED_BREAKERS(2, "INTERLOCKED_BREAKERS", "interlocked-breakers"),

	/**
	 * The '<em><b>AUTOMATIC BREAK BEFORE MAKE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #AUTOMATIC_BREAK_BEFORE_MAKE_VALUE
	 * @generated
	 * @ordered
	 */
	AUTOMATIC_BREAK_BEFORE_MAKE(3, "AUTOMATIC_BREAK_BEFORE_MAKE", "automatic-break-before-make"),

	/**
	 * The '<em><b>SEPARATE BREAKERS</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SEPARATE_BREAKERS_VALUE
	 * @generated
	 * @ordered
	 */
	SEPARATE_BREAKERS(4, "SEPARATE_BREAKERS", "separate-breakers"),

	/**
	 * The '<em><b>NONE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #NONE_VALUE
	 * @generated
	 * @ordered
	 */
	NONE(5, "NONE", "none");

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
	 * The '<em><b>ROTARY SELECTOR</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ROTARY_SELECTOR
	 * @generated
	 * @ordered
	 */
	public static final int ROTARY_SELECTOR_VALUE = 1;

	/**
	 * The '<em><b>INTERLOCKED BREAKERS</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #INTERLOCKED_BREAKERS
	 * @generated
	 * @ordered
	 */
	public static final int INTERLOCKED_BREAKERS_VALUE = 2;

	/**
	 * The '<em><b>AUTOMATIC BREAK BEFORE MAKE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #AUTOMATIC_BREAK_BEFORE_MAKE
	 * @generated
	 * @ordered
	 */
	public static final int AUTOMATIC_BREAK_BEFORE_MAKE_VALUE = 3;

	/**
	 * The '<em><b>SEPARATE BREAKERS</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SEPARATE_BREAKERS
	 * @generated
	 * @ordered
	 */
	public static final int SEPARATE_BREAKERS_VALUE = 4;

	/**
	 * The '<em><b>NONE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #NONE
	 * @generated
	 * @ordered
	 */
	public static final int NONE_VALUE = 5;

	/**
	 * An array of all the '<em><b>Transfer Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final TransferKind[] VALUES_ARRAY =
		new TransferKind[] {
			NOT_ENTERED,
			ROTARY_SELECTOR,
			INTERLOCKED_BREAKERS,
			AUTOMATIC_BREAK_BEFORE_MAKE,
			SEPARATE_BREAKERS,
			NONE,
		};

	/**
	 * A public read-only list of all the '<em><b>Transfer Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<TransferKind> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Transfer Kind</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static TransferKind get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			TransferKind result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Transfer Kind</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static TransferKind getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			TransferKind result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Transfer Kind</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static TransferKind get(int value) {
		switch (value) {
			case NOT_ENTERED_VALUE: return NOT_ENTERED;
			case ROTARY_SELECTOR_VALUE: return ROTARY_SELECTOR;
			case INTERLOCKED_BREAKERS_VALUE: return INTERLOCKED_BREAKERS;
			case AUTOMATIC_BREAK_BEFORE_MAKE_VALUE: return AUTOMATIC_BREAK_BEFORE_MAKE;
			case SEPARATE_BREAKERS_VALUE: return SEPARATE_BREAKERS;
			case NONE_VALUE: return NONE;
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
	private TransferKind(int value, String name, String literal) {
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
	
} //TransferKind
