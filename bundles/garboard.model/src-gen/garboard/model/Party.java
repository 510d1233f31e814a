/**
 */
package garboard.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Party</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.Party#getRole <em>Role</em>}</li>
 *   <li>{@link garboard.model.Party#getName <em>Name</em>}</li>
 *   <li>{@link garboard.model.Party#getOrganisation <em>Organisation</em>}</li>
 *   <li>{@link garboard.model.Party#getLicence <em>Licence</em>}</li>
 *   <li>{@link garboard.model.Party#getContact <em>Contact</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getParty()
 * @generated
 */
public interface Party extends Item {
	/**
	 * Returns the value of the '<em><b>Role</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.PartyRole}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Role</em>' attribute.
	 * @see garboard.model.PartyRole
	 * @see #setRole(PartyRole)
	 * @see garboard.model.GarboardPackage#getParty_Role()
	 * @generated
	 */
	PartyRole getRole();

	/**
	 * Sets the value of the '{@link garboard.model.Party#getRole <em>Role</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Role</em>' attribute.
	 * @see garboard.model.PartyRole
	 * @see #getRole()
	 * @generated
	 */
	void setRole(PartyRole value);

	/**
	 * Returns the value of the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Name</em>' attribute.
	 * @see #setName(String)
	 * @see garboard.model.GarboardPackage#getParty_Name()
	 * @generated
	 */
	String getName();

	/**
	 * Sets the value of the '{@link garboard.model.Party#getName <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Name</em>' attribute.
	 * @see #getName()
	 * @generated
	 */
	void setName(String value);

	/**
	 * Returns the value of the '<em><b>Organisation</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Organisation</em>' attribute.
	 * @see #setOrganisation(String)
	 * @see garboard.model.GarboardPackage#getParty_Organisation()
	 * @generated
	 */
	String getOrganisation();

	/**
	 * Sets the value of the '{@link garboard.model.Party#getOrganisation <em>Organisation</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Organisation</em>' attribute.
	 * @see #getOrganisation()
	 * @generated
	 */
	void setOrganisation(String value);

	/**
	 * Returns the value of the '<em><b>Licence</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Licence</em>' attribute.
	 * @see #setLicence(String)
	 * @see garboard.model.GarboardPackage#getParty_Licence()
	 * @generated
	 */
	String getLicence();

	/**
	 * Sets the value of the '{@link garboard.model.Party#getLicence <em>Licence</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Licence</em>' attribute.
	 * @see #getLicence()
	 * @generated
	 */
	void setLicence(String value);

	/**
	 * Returns the value of the '<em><b>Contact</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Contact</em>' attribute.
	 * @see #setContact(String)
	 * @see garboard.model.GarboardPackage#getParty_Contact()
	 * @generated
	 */
	String getContact();

	/**
	 * Sets the value of the '{@link garboard.model.Party#getContact <em>Contact</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Contact</em>' attribute.
	 * @see #getContact()
	 * @generated
	 */
	void setContact(String value);

} // Party
