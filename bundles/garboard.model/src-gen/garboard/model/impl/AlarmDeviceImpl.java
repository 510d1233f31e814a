/**
 */
package garboard.model.impl;

import garboard.model.AlarmDevice;
import garboard.model.AlarmKind;
import garboard.model.GarboardPackage;
import garboard.model.TestResult;

import java.time.LocalDate;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Alarm Device</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.impl.AlarmDeviceImpl#getKind <em>Kind</em>}</li>
 *   <li>{@link garboard.model.impl.AlarmDeviceImpl#getLocation <em>Location</em>}</li>
 *   <li>{@link garboard.model.impl.AlarmDeviceImpl#getSetting <em>Setting</em>}</li>
 *   <li>{@link garboard.model.impl.AlarmDeviceImpl#getTestResult <em>Test Result</em>}</li>
 *   <li>{@link garboard.model.impl.AlarmDeviceImpl#getTestedOn <em>Tested On</em>}</li>
 *   <li>{@link garboard.model.impl.AlarmDeviceImpl#getExpiresOn <em>Expires On</em>}</li>
 * </ul>
 *
 * @generated
 */
public class AlarmDeviceImpl extends ItemImpl implements AlarmDevice {
	/**
	 * The default value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected static final AlarmKind KIND_EDEFAULT = AlarmKind.NOT_ENTERED;

	/**
	 * The cached value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected AlarmKind kind = KIND_EDEFAULT;

	/**
	 * The default value of the '{@link #getLocation() <em>Location</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLocation()
	 * @generated
	 * @ordered
	 */
	protected static final String LOCATION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLocation() <em>Location</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLocation()
	 * @generated
	 * @ordered
	 */
	protected String location = LOCATION_EDEFAULT;

	/**
	 * The default value of the '{@link #getSetting() <em>Setting</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSetting()
	 * @generated
	 * @ordered
	 */
	protected static final String SETTING_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSetting() <em>Setting</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSetting()
	 * @generated
	 * @ordered
	 */
	protected String setting = SETTING_EDEFAULT;

	/**
	 * The default value of the '{@link #getTestResult() <em>Test Result</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTestResult()
	 * @generated
	 * @ordered
	 */
	protected static final TestResult TEST_RESULT_EDEFAULT = TestResult.NOT_ENTERED;

	/**
	 * The cached value of the '{@link #getTestResult() <em>Test Result</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTestResult()
	 * @generated
	 * @ordered
	 */
	protected TestResult testResult = TEST_RESULT_EDEFAULT;

	/**
	 * The default value of the '{@link #getTestedOn() <em>Tested On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTestedOn()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate TESTED_ON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTestedOn() <em>Tested On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTestedOn()
	 * @generated
	 * @ordered
	 */
	protected LocalDate testedOn = TESTED_ON_EDEFAULT;

	/**
	 * The default value of the '{@link #getExpiresOn() <em>Expires On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getExpiresOn()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate EXPIRES_ON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getExpiresOn() <em>Expires On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getExpiresOn()
	 * @generated
	 * @ordered
	 */
	protected LocalDate expiresOn = EXPIRES_ON_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected AlarmDeviceImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return GarboardPackage.Literals.ALARM_DEVICE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public AlarmKind getKind() {
		return kind;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKind(AlarmKind newKind) {
		AlarmKind oldKind = kind;
		kind = newKind == null ? KIND_EDEFAULT : newKind;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.ALARM_DEVICE__KIND, oldKind, kind));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getLocation() {
		return location;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLocation(String newLocation) {
		String oldLocation = location;
		location = newLocation;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.ALARM_DEVICE__LOCATION, oldLocation, location));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSetting() {
		return setting;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSetting(String newSetting) {
		String oldSetting = setting;
		setting = newSetting;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.ALARM_DEVICE__SETTING, oldSetting, setting));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TestResult getTestResult() {
		return testResult;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTestResult(TestResult newTestResult) {
		TestResult oldTestResult = testResult;
		testResult = newTestResult == null ? TEST_RESULT_EDEFAULT : newTestResult;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.ALARM_DEVICE__TEST_RESULT, oldTestResult, testResult));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getTestedOn() {
		return testedOn;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTestedOn(LocalDate newTestedOn) {
		LocalDate oldTestedOn = testedOn;
		testedOn = newTestedOn;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.ALARM_DEVICE__TESTED_ON, oldTestedOn, testedOn));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getExpiresOn() {
		return expiresOn;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setExpiresOn(LocalDate newExpiresOn) {
		LocalDate oldExpiresOn = expiresOn;
		expiresOn = newExpiresOn;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.ALARM_DEVICE__EXPIRES_ON, oldExpiresOn, expiresOn));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case GarboardPackage.ALARM_DEVICE__KIND:
				return getKind();
			case GarboardPackage.ALARM_DEVICE__LOCATION:
				return getLocation();
			case GarboardPackage.ALARM_DEVICE__SETTING:
				return getSetting();
			case GarboardPackage.ALARM_DEVICE__TEST_RESULT:
				return getTestResult();
			case GarboardPackage.ALARM_DEVICE__TESTED_ON:
				return getTestedOn();
			case GarboardPackage.ALARM_DEVICE__EXPIRES_ON:
				return getExpiresOn();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case GarboardPackage.ALARM_DEVICE__KIND:
				setKind((AlarmKind)newValue);
				return;
			case GarboardPackage.ALARM_DEVICE__LOCATION:
				setLocation((String)newValue);
				return;
			case GarboardPackage.ALARM_DEVICE__SETTING:
				setSetting((String)newValue);
				return;
			case GarboardPackage.ALARM_DEVICE__TEST_RESULT:
				setTestResult((TestResult)newValue);
				return;
			case GarboardPackage.ALARM_DEVICE__TESTED_ON:
				setTestedOn((LocalDate)newValue);
				return;
			case GarboardPackage.ALARM_DEVICE__EXPIRES_ON:
				setExpiresOn((LocalDate)newValue);
				return;
		}
		super.eSet(featureID, newValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eUnset(int featureID) {
		switch (featureID) {
			case GarboardPackage.ALARM_DEVICE__KIND:
				setKind(KIND_EDEFAULT);
				return;
			case GarboardPackage.ALARM_DEVICE__LOCATION:
				setLocation(LOCATION_EDEFAULT);
				return;
			case GarboardPackage.ALARM_DEVICE__SETTING:
				setSetting(SETTING_EDEFAULT);
				return;
			case GarboardPackage.ALARM_DEVICE__TEST_RESULT:
				setTestResult(TEST_RESULT_EDEFAULT);
				return;
			case GarboardPackage.ALARM_DEVICE__TESTED_ON:
				setTestedOn(TESTED_ON_EDEFAULT);
				return;
			case GarboardPackage.ALARM_DEVICE__EXPIRES_ON:
				setExpiresOn(EXPIRES_ON_EDEFAULT);
				return;
		}
		super.eUnset(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean eIsSet(int featureID) {
		switch (featureID) {
			case GarboardPackage.ALARM_DEVICE__KIND:
				return kind != KIND_EDEFAULT;
			case GarboardPackage.ALARM_DEVICE__LOCATION:
				return LOCATION_EDEFAULT == null ? location != null : !LOCATION_EDEFAULT.equals(location);
			case GarboardPackage.ALARM_DEVICE__SETTING:
				return SETTING_EDEFAULT == null ? setting != null : !SETTING_EDEFAULT.equals(setting);
			case GarboardPackage.ALARM_DEVICE__TEST_RESULT:
				return testResult != TEST_RESULT_EDEFAULT;
			case GarboardPackage.ALARM_DEVICE__TESTED_ON:
				return TESTED_ON_EDEFAULT == null ? testedOn != null : !TESTED_ON_EDEFAULT.equals(testedOn);
			case GarboardPackage.ALARM_DEVICE__EXPIRES_ON:
				return EXPIRES_ON_EDEFAULT == null ? expiresOn != null : !EXPIRES_ON_EDEFAULT.equals(expiresOn);
		}
		return super.eIsSet(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString() {
		if (eIsProxy()) return super.toString();

		StringBuilder result = new StringBuilder(super.toString());
		result.append(" (kind: ");
		result.append(kind);
		result.append(", location: ");
		result.append(location);
		result.append(", setting: ");
		result.append(setting);
		result.append(", testResult: ");
		result.append(testResult);
		result.append(", testedOn: ");
		result.append(testedOn);
		result.append(", expiresOn: ");
		result.append(expiresOn);
		result.append(')');
		return result.toString();
	}

} //AlarmDeviceImpl
