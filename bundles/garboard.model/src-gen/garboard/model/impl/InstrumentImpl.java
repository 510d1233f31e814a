/**
 */
package garboard.model.impl;

import garboard.model.GarboardPackage;
import garboard.model.Instrument;

import java.time.LocalDate;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Instrument</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.impl.InstrumentImpl#getName <em>Name</em>}</li>
 *   <li>{@link garboard.model.impl.InstrumentImpl#getSerialNumber <em>Serial Number</em>}</li>
 *   <li>{@link garboard.model.impl.InstrumentImpl#getMeasures <em>Measures</em>}</li>
 *   <li>{@link garboard.model.impl.InstrumentImpl#getAccuracyStated <em>Accuracy Stated</em>}</li>
 *   <li>{@link garboard.model.impl.InstrumentImpl#getCalibratedOn <em>Calibrated On</em>}</li>
 * </ul>
 *
 * @generated
 */
public class InstrumentImpl extends ItemImpl implements Instrument {
	/**
	 * The default value of the '{@link #getName() <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getName()
	 * @generated
	 * @ordered
	 */
	protected static final String NAME_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getName() <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getName()
	 * @generated
	 * @ordered
	 */
	protected String name = NAME_EDEFAULT;

	/**
	 * The default value of the '{@link #getSerialNumber() <em>Serial Number</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSerialNumber()
	 * @generated
	 * @ordered
	 */
	protected static final String SERIAL_NUMBER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSerialNumber() <em>Serial Number</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSerialNumber()
	 * @generated
	 * @ordered
	 */
	protected String serialNumber = SERIAL_NUMBER_EDEFAULT;

	/**
	 * The default value of the '{@link #getMeasures() <em>Measures</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMeasures()
	 * @generated
	 * @ordered
	 */
	protected static final String MEASURES_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMeasures() <em>Measures</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMeasures()
	 * @generated
	 * @ordered
	 */
	protected String measures = MEASURES_EDEFAULT;

	/**
	 * The default value of the '{@link #getAccuracyStated() <em>Accuracy Stated</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAccuracyStated()
	 * @generated
	 * @ordered
	 */
	protected static final String ACCURACY_STATED_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAccuracyStated() <em>Accuracy Stated</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAccuracyStated()
	 * @generated
	 * @ordered
	 */
	protected String accuracyStated = ACCURACY_STATED_EDEFAULT;

	/**
	 * The default value of the '{@link #getCalibratedOn() <em>Calibrated On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCalibratedOn()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate CALIBRATED_ON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCalibratedOn() <em>Calibrated On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCalibratedOn()
	 * @generated
	 * @ordered
	 */
	protected LocalDate calibratedOn = CALIBRATED_ON_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected InstrumentImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return GarboardPackage.Literals.INSTRUMENT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getName() {
		return name;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setName(String newName) {
		String oldName = name;
		name = newName;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.INSTRUMENT__NAME, oldName, name));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSerialNumber() {
		return serialNumber;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSerialNumber(String newSerialNumber) {
		String oldSerialNumber = serialNumber;
		serialNumber = newSerialNumber;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.INSTRUMENT__SERIAL_NUMBER, oldSerialNumber, serialNumber));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getMeasures() {
		return measures;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMeasures(String newMeasures) {
		String oldMeasures = measures;
		measures = newMeasures;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.INSTRUMENT__MEASURES, oldMeasures, measures));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getAccuracyStated() {
		return accuracyStated;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAccuracyStated(String newAccuracyStated) {
		String oldAccuracyStated = accuracyStated;
		accuracyStated = newAccuracyStated;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.INSTRUMENT__ACCURACY_STATED, oldAccuracyStated, accuracyStated));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getCalibratedOn() {
		return calibratedOn;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCalibratedOn(LocalDate newCalibratedOn) {
		LocalDate oldCalibratedOn = calibratedOn;
		calibratedOn = newCalibratedOn;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.INSTRUMENT__CALIBRATED_ON, oldCalibratedOn, calibratedOn));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case GarboardPackage.INSTRUMENT__NAME:
				return getName();
			case GarboardPackage.INSTRUMENT__SERIAL_NUMBER:
				return getSerialNumber();
			case GarboardPackage.INSTRUMENT__MEASURES:
				return getMeasures();
			case GarboardPackage.INSTRUMENT__ACCURACY_STATED:
				return getAccuracyStated();
			case GarboardPackage.INSTRUMENT__CALIBRATED_ON:
				return getCalibratedOn();
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
			case GarboardPackage.INSTRUMENT__NAME:
				setName((String)newValue);
				return;
			case GarboardPackage.INSTRUMENT__SERIAL_NUMBER:
				setSerialNumber((String)newValue);
				return;
			case GarboardPackage.INSTRUMENT__MEASURES:
				setMeasures((String)newValue);
				return;
			case GarboardPackage.INSTRUMENT__ACCURACY_STATED:
				setAccuracyStated((String)newValue);
				return;
			case GarboardPackage.INSTRUMENT__CALIBRATED_ON:
				setCalibratedOn((LocalDate)newValue);
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
			case GarboardPackage.INSTRUMENT__NAME:
				setName(NAME_EDEFAULT);
				return;
			case GarboardPackage.INSTRUMENT__SERIAL_NUMBER:
				setSerialNumber(SERIAL_NUMBER_EDEFAULT);
				return;
			case GarboardPackage.INSTRUMENT__MEASURES:
				setMeasures(MEASURES_EDEFAULT);
				return;
			case GarboardPackage.INSTRUMENT__ACCURACY_STATED:
				setAccuracyStated(ACCURACY_STATED_EDEFAULT);
				return;
			case GarboardPackage.INSTRUMENT__CALIBRATED_ON:
				setCalibratedOn(CALIBRATED_ON_EDEFAULT);
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
			case GarboardPackage.INSTRUMENT__NAME:
				return NAME_EDEFAULT == null ? name != null : !NAME_EDEFAULT.equals(name);
			case GarboardPackage.INSTRUMENT__SERIAL_NUMBER:
				return SERIAL_NUMBER_EDEFAULT == null ? serialNumber != null : !SERIAL_NUMBER_EDEFAULT.equals(serialNumber);
			case GarboardPackage.INSTRUMENT__MEASURES:
				return MEASURES_EDEFAULT == null ? measures != null : !MEASURES_EDEFAULT.equals(measures);
			case GarboardPackage.INSTRUMENT__ACCURACY_STATED:
				return ACCURACY_STATED_EDEFAULT == null ? accuracyStated != null : !ACCURACY_STATED_EDEFAULT.equals(accuracyStated);
			case GarboardPackage.INSTRUMENT__CALIBRATED_ON:
				return CALIBRATED_ON_EDEFAULT == null ? calibratedOn != null : !CALIBRATED_ON_EDEFAULT.equals(calibratedOn);
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
		result.append(" (name: ");
		result.append(name);
		result.append(", serialNumber: ");
		result.append(serialNumber);
		result.append(", measures: ");
		result.append(measures);
		result.append(", accuracyStated: ");
		result.append(accuracyStated);
		result.append(", calibratedOn: ");
		result.append(calibratedOn);
		result.append(')');
		return result.toString();
	}

} //InstrumentImpl
