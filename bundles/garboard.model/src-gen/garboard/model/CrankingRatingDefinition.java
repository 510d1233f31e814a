/**
 */
package garboard.model;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Cranking Rating Definition</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * @see garboard.model.GarboardPackage#getCrankingRatingDefinition()
 * @generated
 */
public enum CrankingRatingDefinition implements Enumerator {
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
	 * The '<em><b>CCA SAE J537</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CCA_SAE_J537_VALUE
	 * @generated
	 * @ordered
	 */
	CCA_SAE_J537(1, "CCA_SAE_J537", "cca-sae-j537"),

	/**
	 * The '<em><b>EN 50342 1</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #EN_50342_1_VALUE
	 * @generated
	 * @ordered
	 */
	EN_50342_1(2, "EN_50342_1", "en-50342-1"),

	/**
	 * The '<em><b>IEC 60095 1</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #IEC_60095_1_VALUE
	 * @generated
	 * @ordered
	 */
	IEC_60095_1(3, "IEC_60095_1", "iec-60095-1"),

	/**
	 * The '<em><b>CA AT 0DEGREES</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CA_AT_0DEGREES_VALUE
	 * @generated
	 * @ordered
	 */
	CA_AT_0DEGREES(4, "CA_AT_0_DEGREES", "ca-at-0-degrees");

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
	 * The '<em><b>CCA SAE J537</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CCA_SAE_J537
	 * @generated
	 * @ordered
	 */
	public static final int CCA_SAE_J537_VALUE = 1;

	/**
	 * The '<em><b>EN 50342 1</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #EN_50342_1
	 * @generated
	 * @ordered
	 */
	public static final int EN_50342_1_VALUE = 2;

	/**
	 * The '<em><b>IEC 60095 1</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #IEC_60095_1
	 * @generated
	 * @ordered
	 */
	public static final int IEC_60095_1_VALUE = 3;

	/**
	 * The '<em><b>CA AT 0DEGREES</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CA_AT_0DEGREES
	 * @generated
	 * @ordered
	 */
	public static final int CA_AT_0DEGREES_VALUE = 4;

	/**
	 * An array of all the '<em><b>Cranking Rating Definition</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final CrankingRatingDefinition[] VALUES_ARRAY =
		new CrankingRatingDefinition[] {
			NOT_ENTERED,
			CCA_SAE_J537,
			EN_50342_1,
			IEC_60095_1,
			CA_AT_0DEGREES,
		};

	/**
	 * A public read-only list of all the '<em><b>Cranking Rating Definition</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<CrankingRatingDefinition> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Cranking Rating Definition</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static CrankingRatingDefinition get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			CrankingRatingDefinition result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Cranking Rating Definition</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static CrankingRatingDefinition getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			CrankingRatingDefinition result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Cranking Rating Definition</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static CrankingRatingDefinition get(int value) {
		switch (value) {
			case NOT_ENTERED_VALUE: return NOT_ENTERED;
			case CCA_SAE_J537_VALUE: return CCA_SAE_J537;
			case EN_50342_1_VALUE: return EN_50342_1;
			case IEC_60095_1_VALUE: return IEC_60095_1;
			case CA_AT_0DEGREES_VALUE: return CA_AT_0DEGREES;
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
	private CrankingRatingDefinition(int value, String name, String literal) {
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
	
} //CrankingRatingDefinition
