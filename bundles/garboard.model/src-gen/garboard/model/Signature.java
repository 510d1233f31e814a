/**
 */
package garboard.model;

import java.time.LocalDate;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Signature</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.Signature#getRole <em>Role</em>}</li>
 *   <li>{@link garboard.model.Signature#getName <em>Name</em>}</li>
 *   <li>{@link garboard.model.Signature#getLicence <em>Licence</em>}</li>
 *   <li>{@link garboard.model.Signature#getPlace <em>Place</em>}</li>
 *   <li>{@link garboard.model.Signature#getSignedOn <em>Signed On</em>}</li>
 *   <li>{@link garboard.model.Signature#getStatement <em>Statement</em>}</li>
 *   <li>{@link garboard.model.Signature#getVerdicts <em>Verdicts</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getSignature()
 * @generated
 */
public interface Signature extends Item {
	/**
	 * Returns the value of the '<em><b>Role</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.SignatureRole}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Role</em>' attribute.
	 * @see garboard.model.SignatureRole
	 * @see #setRole(SignatureRole)
	 * @see garboard.model.GarboardPackage#getSignature_Role()
	 * @generated
	 */
	SignatureRole getRole();

	/**
	 * Sets the value of the '{@link garboard.model.Signature#getRole <em>Role</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Role</em>' attribute.
	 * @see garboard.model.SignatureRole
	 * @see #getRole()
	 * @generated
	 */
	void setRole(SignatureRole value);

	/**
	 * Returns the value of the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Name</em>' attribute.
	 * @see #setName(String)
	 * @see garboard.model.GarboardPackage#getSignature_Name()
	 * @generated
	 */
	String getName();

	/**
	 * Sets the value of the '{@link garboard.model.Signature#getName <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Name</em>' attribute.
	 * @see #getName()
	 * @generated
	 */
	void setName(String value);

	/**
	 * Returns the value of the '<em><b>Licence</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Licence</em>' attribute.
	 * @see #setLicence(String)
	 * @see garboard.model.GarboardPackage#getSignature_Licence()
	 * @generated
	 */
	String getLicence();

	/**
	 * Sets the value of the '{@link garboard.model.Signature#getLicence <em>Licence</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Licence</em>' attribute.
	 * @see #getLicence()
	 * @generated
	 */
	void setLicence(String value);

	/**
	 * Returns the value of the '<em><b>Place</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Place</em>' attribute.
	 * @see #setPlace(String)
	 * @see garboard.model.GarboardPackage#getSignature_Place()
	 * @generated
	 */
	String getPlace();

	/**
	 * Sets the value of the '{@link garboard.model.Signature#getPlace <em>Place</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Place</em>' attribute.
	 * @see #getPlace()
	 * @generated
	 */
	void setPlace(String value);

	/**
	 * Returns the value of the '<em><b>Signed On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Signed On</em>' attribute.
	 * @see #setSignedOn(LocalDate)
	 * @see garboard.model.GarboardPackage#getSignature_SignedOn()
	 * @generated
	 */
	LocalDate getSignedOn();

	/**
	 * Sets the value of the '{@link garboard.model.Signature#getSignedOn <em>Signed On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Signed On</em>' attribute.
	 * @see #getSignedOn()
	 * @generated
	 */
	void setSignedOn(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Statement</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Statement</em>' attribute.
	 * @see #setStatement(String)
	 * @see garboard.model.GarboardPackage#getSignature_Statement()
	 * @generated
	 */
	String getStatement();

	/**
	 * Sets the value of the '{@link garboard.model.Signature#getStatement <em>Statement</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Statement</em>' attribute.
	 * @see #getStatement()
	 * @generated
	 */
	void setStatement(String value);

	/**
	 * Returns the value of the '<em><b>Verdicts</b></em>' containment reference list.
	 * The list contents are of type {@link garboard.model.StoredVerdict}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Verdicts</em>' containment reference list.
	 * @see garboard.model.GarboardPackage#getSignature_Verdicts()
	 * @generated
	 */
	EList<StoredVerdict> getVerdicts();

} // Signature
