/**
 */
package garboard.model;

import garboard.quantity.Length;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Point</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.Point#getX <em>X</em>}</li>
 *   <li>{@link garboard.model.Point#getY <em>Y</em>}</li>
 *   <li>{@link garboard.model.Point#getZ <em>Z</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getPoint()
 * @generated
 */
public interface Point extends EObject {
	/**
	 * Returns the value of the '<em><b>X</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>X</em>' attribute.
	 * @see #setX(Length)
	 * @see garboard.model.GarboardPackage#getPoint_X()
	 * @generated
	 */
	Length getX();

	/**
	 * Sets the value of the '{@link garboard.model.Point#getX <em>X</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>X</em>' attribute.
	 * @see #getX()
	 * @generated
	 */
	void setX(Length value);

	/**
	 * Returns the value of the '<em><b>Y</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Y</em>' attribute.
	 * @see #setY(Length)
	 * @see garboard.model.GarboardPackage#getPoint_Y()
	 * @generated
	 */
	Length getY();

	/**
	 * Sets the value of the '{@link garboard.model.Point#getY <em>Y</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Y</em>' attribute.
	 * @see #getY()
	 * @generated
	 */
	void setY(Length value);

	/**
	 * Returns the value of the '<em><b>Z</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Z</em>' attribute.
	 * @see #setZ(Length)
	 * @see garboard.model.GarboardPackage#getPoint_Z()
	 * @generated
	 */
	Length getZ();

	/**
	 * Sets the value of the '{@link garboard.model.Point#getZ <em>Z</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Z</em>' attribute.
	 * @see #getZ()
	 * @generated
	 */
	void setZ(Length value);

} // Point
