/**
 */
package garboard.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Unread Entry</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.UnreadEntry#getPlace <em>Place</em>}</li>
 *   <li>{@link garboard.model.UnreadEntry#getText <em>Text</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getUnreadEntry()
 * @generated
 */
public interface UnreadEntry extends Item {
	/**
	 * Returns the value of the '<em><b>Place</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Place</em>' attribute.
	 * @see #setPlace(String)
	 * @see garboard.model.GarboardPackage#getUnreadEntry_Place()
	 * @generated
	 */
	String getPlace();

	/**
	 * Sets the value of the '{@link garboard.model.UnreadEntry#getPlace <em>Place</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Place</em>' attribute.
	 * @see #getPlace()
	 * @generated
	 */
	void setPlace(String value);

	/**
	 * Returns the value of the '<em><b>Text</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Text</em>' attribute.
	 * @see #setText(String)
	 * @see garboard.model.GarboardPackage#getUnreadEntry_Text()
	 * @generated
	 */
	String getText();

	/**
	 * Sets the value of the '{@link garboard.model.UnreadEntry#getText <em>Text</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Text</em>' attribute.
	 * @see #getText()
	 * @generated
	 */
	void setText(String value);

} // UnreadEntry
