/**
 */
package garboard.model.impl;

import garboard.model.BatteryBlock;
import garboard.model.GarboardPackage;

import garboard.quantity.Ratio;
import garboard.quantity.Voltage;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Battery Block</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.impl.BatteryBlockImpl#getLabel <em>Label</em>}</li>
 *   <li>{@link garboard.model.impl.BatteryBlockImpl#getRestedVoltage <em>Rested Voltage</em>}</li>
 *   <li>{@link garboard.model.impl.BatteryBlockImpl#getSpecificGravityLow <em>Specific Gravity Low</em>}</li>
 *   <li>{@link garboard.model.impl.BatteryBlockImpl#getSpecificGravityHigh <em>Specific Gravity High</em>}</li>
 * </ul>
 *
 * @generated
 */
public class BatteryBlockImpl extends ItemImpl implements BatteryBlock {
	/**
	 * The default value of the '{@link #getLabel() <em>Label</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLabel()
	 * @generated
	 * @ordered
	 */
	protected static final String LABEL_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLabel() <em>Label</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLabel()
	 * @generated
	 * @ordered
	 */
	protected String label = LABEL_EDEFAULT;

	/**
	 * The default value of the '{@link #getRestedVoltage() <em>Rested Voltage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRestedVoltage()
	 * @generated
	 * @ordered
	 */
	protected static final Voltage RESTED_VOLTAGE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRestedVoltage() <em>Rested Voltage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRestedVoltage()
	 * @generated
	 * @ordered
	 */
	protected Voltage restedVoltage = RESTED_VOLTAGE_EDEFAULT;

	/**
	 * The default value of the '{@link #getSpecificGravityLow() <em>Specific Gravity Low</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSpecificGravityLow()
	 * @generated
	 * @ordered
	 */
	protected static final Ratio SPECIFIC_GRAVITY_LOW_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSpecificGravityLow() <em>Specific Gravity Low</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSpecificGravityLow()
	 * @generated
	 * @ordered
	 */
	protected Ratio specificGravityLow = SPECIFIC_GRAVITY_LOW_EDEFAULT;

	/**
	 * The default value of the '{@link #getSpecificGravityHigh() <em>Specific Gravity High</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSpecificGravityHigh()
	 * @generated
	 * @ordered
	 */
	protected static final Ratio SPECIFIC_GRAVITY_HIGH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSpecificGravityHigh() <em>Specific Gravity High</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSpecificGravityHigh()
	 * @generated
	 * @ordered
	 */
	protected Ratio specificGravityHigh = SPECIFIC_GRAVITY_HIGH_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected BatteryBlockImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return GarboardPackage.Literals.BATTERY_BLOCK;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getLabel() {
		return label;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLabel(String newLabel) {
		String oldLabel = label;
		label = newLabel;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.BATTERY_BLOCK__LABEL, oldLabel, label));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Voltage getRestedVoltage() {
		return restedVoltage;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRestedVoltage(Voltage newRestedVoltage) {
		Voltage oldRestedVoltage = restedVoltage;
		restedVoltage = newRestedVoltage;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.BATTERY_BLOCK__RESTED_VOLTAGE, oldRestedVoltage, restedVoltage));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Ratio getSpecificGravityLow() {
		return specificGravityLow;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSpecificGravityLow(Ratio newSpecificGravityLow) {
		Ratio oldSpecificGravityLow = specificGravityLow;
		specificGravityLow = newSpecificGravityLow;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.BATTERY_BLOCK__SPECIFIC_GRAVITY_LOW, oldSpecificGravityLow, specificGravityLow));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Ratio getSpecificGravityHigh() {
		return specificGravityHigh;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSpecificGravityHigh(Ratio newSpecificGravityHigh) {
		Ratio oldSpecificGravityHigh = specificGravityHigh;
		specificGravityHigh = newSpecificGravityHigh;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.BATTERY_BLOCK__SPECIFIC_GRAVITY_HIGH, oldSpecificGravityHigh, specificGravityHigh));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case GarboardPackage.BATTERY_BLOCK__LABEL:
				return getLabel();
			case GarboardPackage.BATTERY_BLOCK__RESTED_VOLTAGE:
				return getRestedVoltage();
			case GarboardPackage.BATTERY_BLOCK__SPECIFIC_GRAVITY_LOW:
				return getSpecificGravityLow();
			case GarboardPackage.BATTERY_BLOCK__SPECIFIC_GRAVITY_HIGH:
				return getSpecificGravityHigh();
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
			case GarboardPackage.BATTERY_BLOCK__LABEL:
				setLabel((String)newValue);
				return;
			case GarboardPackage.BATTERY_BLOCK__RESTED_VOLTAGE:
				setRestedVoltage((Voltage)newValue);
				return;
			case GarboardPackage.BATTERY_BLOCK__SPECIFIC_GRAVITY_LOW:
				setSpecificGravityLow((Ratio)newValue);
				return;
			case GarboardPackage.BATTERY_BLOCK__SPECIFIC_GRAVITY_HIGH:
				setSpecificGravityHigh((Ratio)newValue);
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
			case GarboardPackage.BATTERY_BLOCK__LABEL:
				setLabel(LABEL_EDEFAULT);
				return;
			case GarboardPackage.BATTERY_BLOCK__RESTED_VOLTAGE:
				setRestedVoltage(RESTED_VOLTAGE_EDEFAULT);
				return;
			case GarboardPackage.BATTERY_BLOCK__SPECIFIC_GRAVITY_LOW:
				setSpecificGravityLow(SPECIFIC_GRAVITY_LOW_EDEFAULT);
				return;
			case GarboardPackage.BATTERY_BLOCK__SPECIFIC_GRAVITY_HIGH:
				setSpecificGravityHigh(SPECIFIC_GRAVITY_HIGH_EDEFAULT);
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
			case GarboardPackage.BATTERY_BLOCK__LABEL:
				return LABEL_EDEFAULT == null ? label != null : !LABEL_EDEFAULT.equals(label);
			case GarboardPackage.BATTERY_BLOCK__RESTED_VOLTAGE:
				return RESTED_VOLTAGE_EDEFAULT == null ? restedVoltage != null : !RESTED_VOLTAGE_EDEFAULT.equals(restedVoltage);
			case GarboardPackage.BATTERY_BLOCK__SPECIFIC_GRAVITY_LOW:
				return SPECIFIC_GRAVITY_LOW_EDEFAULT == null ? specificGravityLow != null : !SPECIFIC_GRAVITY_LOW_EDEFAULT.equals(specificGravityLow);
			case GarboardPackage.BATTERY_BLOCK__SPECIFIC_GRAVITY_HIGH:
				return SPECIFIC_GRAVITY_HIGH_EDEFAULT == null ? specificGravityHigh != null : !SPECIFIC_GRAVITY_HIGH_EDEFAULT.equals(specificGravityHigh);
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
		result.append(" (label: ");
		result.append(label);
		result.append(", restedVoltage: ");
		result.append(restedVoltage);
		result.append(", specificGravityLow: ");
		result.append(specificGravityLow);
		result.append(", specificGravityHigh: ");
		result.append(specificGravityHigh);
		result.append(')');
		return result.toString();
	}

} //BatteryBlockImpl
