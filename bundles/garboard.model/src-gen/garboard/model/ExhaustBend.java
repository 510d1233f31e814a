/**
 */
package garboard.model;

import garboard.quantity.Length;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Exhaust Bend</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.ExhaustBend#getKind <em>Kind</em>}</li>
 *   <li>{@link garboard.model.ExhaustBend#getCount <em>Count</em>}</li>
 *   <li>{@link garboard.model.ExhaustBend#getRadius <em>Radius</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getExhaustBend()
 * @generated
 */
public interface ExhaustBend extends Item {
	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.ExhaustBendKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see garboard.model.ExhaustBendKind
	 * @see #setKind(ExhaustBendKind)
	 * @see garboard.model.GarboardPackage#getExhaustBend_Kind()
	 * @generated
	 */
	ExhaustBendKind getKind();

	/**
	 * Sets the value of the '{@link garboard.model.ExhaustBend#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see garboard.model.ExhaustBendKind
	 * @see #getKind()
	 * @generated
	 */
	void setKind(ExhaustBendKind value);

	/**
	 * Returns the value of the '<em><b>Count</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Count</em>' attribute.
	 * @see #setCount(Integer)
	 * @see garboard.model.GarboardPackage#getExhaustBend_Count()
	 * @generated
	 */
	Integer getCount();

	/**
	 * Sets the value of the '{@link garboard.model.ExhaustBend#getCount <em>Count</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Count</em>' attribute.
	 * @see #getCount()
	 * @generated
	 */
	void setCount(Integer value);

	/**
	 * Returns the value of the '<em><b>Radius</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Radius</em>' attribute.
	 * @see #setRadius(Length)
	 * @see garboard.model.GarboardPackage#getExhaustBend_Radius()
	 * @generated
	 */
	Length getRadius();

	/**
	 * Sets the value of the '{@link garboard.model.ExhaustBend#getRadius <em>Radius</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Radius</em>' attribute.
	 * @see #getRadius()
	 * @generated
	 */
	void setRadius(Length value);

} // ExhaustBend
