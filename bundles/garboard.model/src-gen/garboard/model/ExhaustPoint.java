/**
 */
package garboard.model;

import garboard.quantity.Length;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Exhaust Point</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.ExhaustPoint#getName <em>Name</em>}</li>
 *   <li>{@link garboard.model.ExhaustPoint#getPosition <em>Position</em>}</li>
 *   <li>{@link garboard.model.ExhaustPoint#getBore <em>Bore</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getExhaustPoint()
 * @generated
 */
public interface ExhaustPoint extends Item {
	/**
	 * Returns the value of the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Name</em>' attribute.
	 * @see #setName(String)
	 * @see garboard.model.GarboardPackage#getExhaustPoint_Name()
	 * @generated
	 */
	String getName();

	/**
	 * Sets the value of the '{@link garboard.model.ExhaustPoint#getName <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Name</em>' attribute.
	 * @see #getName()
	 * @generated
	 */
	void setName(String value);

	/**
	 * Returns the value of the '<em><b>Position</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Position</em>' containment reference.
	 * @see #setPosition(Point)
	 * @see garboard.model.GarboardPackage#getExhaustPoint_Position()
	 * @generated
	 */
	Point getPosition();

	/**
	 * Sets the value of the '{@link garboard.model.ExhaustPoint#getPosition <em>Position</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Position</em>' containment reference.
	 * @see #getPosition()
	 * @generated
	 */
	void setPosition(Point value);

	/**
	 * Returns the value of the '<em><b>Bore</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Bore</em>' attribute.
	 * @see #setBore(Length)
	 * @see garboard.model.GarboardPackage#getExhaustPoint_Bore()
	 * @generated
	 */
	Length getBore();

	/**
	 * Sets the value of the '{@link garboard.model.ExhaustPoint#getBore <em>Bore</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Bore</em>' attribute.
	 * @see #getBore()
	 * @generated
	 */
	void setBore(Length value);

} // ExhaustPoint
