/**
 */
package garboard.model;

import java.time.LocalDate;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Acceptance</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.Acceptance#getCheck <em>Check</em>}</li>
 *   <li>{@link garboard.model.Acceptance#getSubject <em>Subject</em>}</li>
 *   <li>{@link garboard.model.Acceptance#getReason <em>Reason</em>}</li>
 *   <li>{@link garboard.model.Acceptance#getAcceptedBy <em>Accepted By</em>}</li>
 *   <li>{@link garboard.model.Acceptance#getAcceptedOn <em>Accepted On</em>}</li>
 *   <li>{@link garboard.model.Acceptance#getUntil <em>Until</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getAcceptance()
 * @generated
 */
public interface Acceptance extends Item {
	/**
	 * Returns the value of the '<em><b>Check</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Check</em>' attribute.
	 * @see #setCheck(String)
	 * @see garboard.model.GarboardPackage#getAcceptance_Check()
	 * @generated
	 */
	String getCheck();

	/**
	 * Sets the value of the '{@link garboard.model.Acceptance#getCheck <em>Check</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Check</em>' attribute.
	 * @see #getCheck()
	 * @generated
	 */
	void setCheck(String value);

	/**
	 * Returns the value of the '<em><b>Subject</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Subject</em>' attribute.
	 * @see #setSubject(String)
	 * @see garboard.model.GarboardPackage#getAcceptance_Subject()
	 * @generated
	 */
	String getSubject();

	/**
	 * Sets the value of the '{@link garboard.model.Acceptance#getSubject <em>Subject</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Subject</em>' attribute.
	 * @see #getSubject()
	 * @generated
	 */
	void setSubject(String value);

	/**
	 * Returns the value of the '<em><b>Reason</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Reason</em>' attribute.
	 * @see #setReason(String)
	 * @see garboard.model.GarboardPackage#getAcceptance_Reason()
	 * @generated
	 */
	String getReason();

	/**
	 * Sets the value of the '{@link garboard.model.Acceptance#getReason <em>Reason</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Reason</em>' attribute.
	 * @see #getReason()
	 * @generated
	 */
	void setReason(String value);

	/**
	 * Returns the value of the '<em><b>Accepted By</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Accepted By</em>' attribute.
	 * @see #setAcceptedBy(String)
	 * @see garboard.model.GarboardPackage#getAcceptance_AcceptedBy()
	 * @generated
	 */
	String getAcceptedBy();

	/**
	 * Sets the value of the '{@link garboard.model.Acceptance#getAcceptedBy <em>Accepted By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Accepted By</em>' attribute.
	 * @see #getAcceptedBy()
	 * @generated
	 */
	void setAcceptedBy(String value);

	/**
	 * Returns the value of the '<em><b>Accepted On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Accepted On</em>' attribute.
	 * @see #setAcceptedOn(LocalDate)
	 * @see garboard.model.GarboardPackage#getAcceptance_AcceptedOn()
	 * @generated
	 */
	LocalDate getAcceptedOn();

	/**
	 * Sets the value of the '{@link garboard.model.Acceptance#getAcceptedOn <em>Accepted On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Accepted On</em>' attribute.
	 * @see #getAcceptedOn()
	 * @generated
	 */
	void setAcceptedOn(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Until</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Until</em>' attribute.
	 * @see #setUntil(LocalDate)
	 * @see garboard.model.GarboardPackage#getAcceptance_Until()
	 * @generated
	 */
	LocalDate getUntil();

	/**
	 * Sets the value of the '{@link garboard.model.Acceptance#getUntil <em>Until</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Until</em>' attribute.
	 * @see #getUntil()
	 * @generated
	 */
	void setUntil(LocalDate value);

} // Acceptance
