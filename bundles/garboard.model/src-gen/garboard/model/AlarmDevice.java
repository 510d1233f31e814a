/**
 */
package garboard.model;

import java.time.LocalDate;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Alarm Device</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.AlarmDevice#getKind <em>Kind</em>}</li>
 *   <li>{@link garboard.model.AlarmDevice#getLocation <em>Location</em>}</li>
 *   <li>{@link garboard.model.AlarmDevice#getSetting <em>Setting</em>}</li>
 *   <li>{@link garboard.model.AlarmDevice#getTestResult <em>Test Result</em>}</li>
 *   <li>{@link garboard.model.AlarmDevice#getTestedOn <em>Tested On</em>}</li>
 *   <li>{@link garboard.model.AlarmDevice#getExpiresOn <em>Expires On</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getAlarmDevice()
 * @generated
 */
public interface AlarmDevice extends Item {
	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.AlarmKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see garboard.model.AlarmKind
	 * @see #setKind(AlarmKind)
	 * @see garboard.model.GarboardPackage#getAlarmDevice_Kind()
	 * @generated
	 */
	AlarmKind getKind();

	/**
	 * Sets the value of the '{@link garboard.model.AlarmDevice#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see garboard.model.AlarmKind
	 * @see #getKind()
	 * @generated
	 */
	void setKind(AlarmKind value);

	/**
	 * Returns the value of the '<em><b>Location</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Location</em>' attribute.
	 * @see #setLocation(String)
	 * @see garboard.model.GarboardPackage#getAlarmDevice_Location()
	 * @generated
	 */
	String getLocation();

	/**
	 * Sets the value of the '{@link garboard.model.AlarmDevice#getLocation <em>Location</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Location</em>' attribute.
	 * @see #getLocation()
	 * @generated
	 */
	void setLocation(String value);

	/**
	 * Returns the value of the '<em><b>Setting</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Setting</em>' attribute.
	 * @see #setSetting(String)
	 * @see garboard.model.GarboardPackage#getAlarmDevice_Setting()
	 * @generated
	 */
	String getSetting();

	/**
	 * Sets the value of the '{@link garboard.model.AlarmDevice#getSetting <em>Setting</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Setting</em>' attribute.
	 * @see #getSetting()
	 * @generated
	 */
	void setSetting(String value);

	/**
	 * Returns the value of the '<em><b>Test Result</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.TestResult}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Test Result</em>' attribute.
	 * @see garboard.model.TestResult
	 * @see #setTestResult(TestResult)
	 * @see garboard.model.GarboardPackage#getAlarmDevice_TestResult()
	 * @generated
	 */
	TestResult getTestResult();

	/**
	 * Sets the value of the '{@link garboard.model.AlarmDevice#getTestResult <em>Test Result</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Test Result</em>' attribute.
	 * @see garboard.model.TestResult
	 * @see #getTestResult()
	 * @generated
	 */
	void setTestResult(TestResult value);

	/**
	 * Returns the value of the '<em><b>Tested On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Tested On</em>' attribute.
	 * @see #setTestedOn(LocalDate)
	 * @see garboard.model.GarboardPackage#getAlarmDevice_TestedOn()
	 * @generated
	 */
	LocalDate getTestedOn();

	/**
	 * Sets the value of the '{@link garboard.model.AlarmDevice#getTestedOn <em>Tested On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Tested On</em>' attribute.
	 * @see #getTestedOn()
	 * @generated
	 */
	void setTestedOn(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Expires On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Expires On</em>' attribute.
	 * @see #setExpiresOn(LocalDate)
	 * @see garboard.model.GarboardPackage#getAlarmDevice_ExpiresOn()
	 * @generated
	 */
	LocalDate getExpiresOn();

	/**
	 * Sets the value of the '{@link garboard.model.AlarmDevice#getExpiresOn <em>Expires On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Expires On</em>' attribute.
	 * @see #getExpiresOn()
	 * @generated
	 */
	void setExpiresOn(LocalDate value);

} // AlarmDevice
