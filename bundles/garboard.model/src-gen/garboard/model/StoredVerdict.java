/**
 */
package garboard.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Stored Verdict</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.StoredVerdict#getCheck <em>Check</em>}</li>
 *   <li>{@link garboard.model.StoredVerdict#getSubject <em>Subject</em>}</li>
 *   <li>{@link garboard.model.StoredVerdict#getStanding <em>Standing</em>}</li>
 *   <li>{@link garboard.model.StoredVerdict#getMeasured <em>Measured</em>}</li>
 *   <li>{@link garboard.model.StoredVerdict#getLimit <em>Limit</em>}</li>
 *   <li>{@link garboard.model.StoredVerdict#getMargin <em>Margin</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getStoredVerdict()
 * @generated
 */
public interface StoredVerdict extends Item {
	/**
	 * Returns the value of the '<em><b>Check</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Check</em>' attribute.
	 * @see #setCheck(String)
	 * @see garboard.model.GarboardPackage#getStoredVerdict_Check()
	 * @generated
	 */
	String getCheck();

	/**
	 * Sets the value of the '{@link garboard.model.StoredVerdict#getCheck <em>Check</em>}' attribute.
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
	 * @see garboard.model.GarboardPackage#getStoredVerdict_Subject()
	 * @generated
	 */
	String getSubject();

	/**
	 * Sets the value of the '{@link garboard.model.StoredVerdict#getSubject <em>Subject</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Subject</em>' attribute.
	 * @see #getSubject()
	 * @generated
	 */
	void setSubject(String value);

	/**
	 * Returns the value of the '<em><b>Standing</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Standing</em>' attribute.
	 * @see #setStanding(String)
	 * @see garboard.model.GarboardPackage#getStoredVerdict_Standing()
	 * @generated
	 */
	String getStanding();

	/**
	 * Sets the value of the '{@link garboard.model.StoredVerdict#getStanding <em>Standing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Standing</em>' attribute.
	 * @see #getStanding()
	 * @generated
	 */
	void setStanding(String value);

	/**
	 * Returns the value of the '<em><b>Measured</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Measured</em>' attribute.
	 * @see #setMeasured(String)
	 * @see garboard.model.GarboardPackage#getStoredVerdict_Measured()
	 * @generated
	 */
	String getMeasured();

	/**
	 * Sets the value of the '{@link garboard.model.StoredVerdict#getMeasured <em>Measured</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Measured</em>' attribute.
	 * @see #getMeasured()
	 * @generated
	 */
	void setMeasured(String value);

	/**
	 * Returns the value of the '<em><b>Limit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Limit</em>' attribute.
	 * @see #setLimit(String)
	 * @see garboard.model.GarboardPackage#getStoredVerdict_Limit()
	 * @generated
	 */
	String getLimit();

	/**
	 * Sets the value of the '{@link garboard.model.StoredVerdict#getLimit <em>Limit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Limit</em>' attribute.
	 * @see #getLimit()
	 * @generated
	 */
	void setLimit(String value);

	/**
	 * Returns the value of the '<em><b>Margin</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Margin</em>' attribute.
	 * @see #setMargin(String)
	 * @see garboard.model.GarboardPackage#getStoredVerdict_Margin()
	 * @generated
	 */
	String getMargin();

	/**
	 * Sets the value of the '{@link garboard.model.StoredVerdict#getMargin <em>Margin</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Margin</em>' attribute.
	 * @see #getMargin()
	 * @generated
	 */
	void setMargin(String value);

} // StoredVerdict
