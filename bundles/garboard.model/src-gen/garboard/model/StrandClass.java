/**
 */
package garboard.model;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Strand Class</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * @see garboard.model.GarboardPackage#getStrandClass()
 * @generated
 */
public enum StrandClass implements Enumerator {
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
	 * The '<em><b>CLASS 2PLAIN</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CLASS_2PLAIN_VALUE
	 * @generated
	 * @ordered
	 */
	CLASS_2PLAIN(1, "CLASS_2_PLAIN", "class-2-plain"),

	/**
	 * The '<em><b>CLASS 2TINNED</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CLASS_2TINNED_VALUE
	 * @generated
	 * @ordered
	 */
	CLASS_2TINNED(2, "CLASS_2_TINNED", "class-2-tinned"),

	/**
	 * The '<em><b>CLASS 5PLAIN</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CLASS_5PLAIN_VALUE
	 * @generated
	 * @ordered
	 */
	CLASS_5PLAIN(3, "CLASS_5_PLAIN", "class-5-plain"),

	/**
	 * The '<em><b>CLASS 5TINNED</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CLASS_5TINNED_VALUE
	 * @generated
	 * @ordered
	 */
	CLASS_5TINNED(4, "CLASS_5_TINNED", "class-5-tinned");

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
	 * The '<em><b>CLASS 2PLAIN</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CLASS_2PLAIN
	 * @generated
	 * @ordered
	 */
	public static final int CLASS_2PLAIN_VALUE = 1;

	/**
	 * The '<em><b>CLASS 2TINNED</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CLASS_2TINNED
	 * @generated
	 * @ordered
	 */
	public static final int CLASS_2TINNED_VALUE = 2;

	/**
	 * The '<em><b>CLASS 5PLAIN</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CLASS_5PLAIN
	 * @generated
	 * @ordered
	 */
	public static final int CLASS_5PLAIN_VALUE = 3;

	/**
	 * The '<em><b>CLASS 5TINNED</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CLASS_5TINNED
	 * @generated
	 * @ordered
	 */
	public static final int CLASS_5TINNED_VALUE = 4;

	/**
	 * An array of all the '<em><b>Strand Class</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final StrandClass[] VALUES_ARRAY =
		new StrandClass[] {
			NOT_ENTERED,
			CLASS_2PLAIN,
			CLASS_2TINNED,
			CLASS_5PLAIN,
			CLASS_5TINNED,
		};

	/**
	 * A public read-only list of all the '<em><b>Strand Class</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<StrandClass> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Strand Class</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static StrandClass get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			StrandClass result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Strand Class</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static StrandClass getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			StrandClass result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Strand Class</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static StrandClass get(int value) {
		switch (value) {
			case NOT_ENTERED_VALUE: return NOT_ENTERED;
			case CLASS_2PLAIN_VALUE: return CLASS_2PLAIN;
			case CLASS_2TINNED_VALUE: return CLASS_2TINNED;
			case CLASS_5PLAIN_VALUE: return CLASS_5PLAIN;
			case CLASS_5TINNED_VALUE: return CLASS_5TINNED;
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
	private StrandClass(int value, String name, String literal) {
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
	
} //StrandClass
