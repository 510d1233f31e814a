/**
 */
package garboard.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Consumable</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.Consumable#getName <em>Name</em>}</li>
 *   <li>{@link garboard.model.Consumable#getPartNumber <em>Part Number</em>}</li>
 *   <li>{@link garboard.model.Consumable#getQuantity <em>Quantity</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getConsumable()
 * @generated
 */
public interface Consumable extends Item {
	/**
	 * Returns the value of the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Name</em>' attribute.
	 * @see #setName(String)
	 * @see garboard.model.GarboardPackage#getConsumable_Name()
	 * @generated
	 */
	String getName();

	/**
	 * Sets the value of the '{@link garboard.model.Consumable#getName <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Name</em>' attribute.
	 * @see #getName()
	 * @generated
	 */
	void setName(String value);

	/**
	 * Returns the value of the '<em><b>Part Number</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Part Number</em>' attribute.
	 * @see #setPartNumber(String)
	 * @see garboard.model.GarboardPackage#getConsumable_PartNumber()
	 * @generated
	 */
	String getPartNumber();

	/**
	 * Sets the value of the '{@link garboard.model.Consumable#getPartNumber <em>Part Number</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Part Number</em>' attribute.
	 * @see #getPartNumber()
	 * @generated
	 */
	void setPartNumber(String value);

	/**
	 * Returns the value of the '<em><b>Quantity</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Quantity</em>' attribute.
	 * @see #setQuantity(Integer)
	 * @see garboard.model.GarboardPackage#getConsumable_Quantity()
	 * @generated
	 */
	Integer getQuantity();

	/**
	 * Sets the value of the '{@link garboard.model.Consumable#getQuantity <em>Quantity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Quantity</em>' attribute.
	 * @see #getQuantity()
	 * @generated
	 */
	void setQuantity(Integer value);

} // Consumable
