/**
 */
package garboard.model.impl;

import garboard.model.GarboardPackage;
import garboard.model.Reading;
import garboard.model.SmokeColour;

import garboard.quantity.Current;
import garboard.quantity.Frequency;
import garboard.quantity.GaugePressure;
import garboard.quantity.Power;
import garboard.quantity.PressureDifference;
import garboard.quantity.Ratio;
import garboard.quantity.Temperature;
import garboard.quantity.Voltage;
import garboard.quantity.VolumeFlow;

import java.time.OffsetDateTime;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Reading</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.impl.ReadingImpl#getAt <em>At</em>}</li>
 *   <li>{@link garboard.model.impl.ReadingImpl#getVoltage1 <em>Voltage1</em>}</li>
 *   <li>{@link garboard.model.impl.ReadingImpl#getVoltage2 <em>Voltage2</em>}</li>
 *   <li>{@link garboard.model.impl.ReadingImpl#getVoltage3 <em>Voltage3</em>}</li>
 *   <li>{@link garboard.model.impl.ReadingImpl#getCurrent1 <em>Current1</em>}</li>
 *   <li>{@link garboard.model.impl.ReadingImpl#getCurrent2 <em>Current2</em>}</li>
 *   <li>{@link garboard.model.impl.ReadingImpl#getCurrent3 <em>Current3</em>}</li>
 *   <li>{@link garboard.model.impl.ReadingImpl#getFrequency <em>Frequency</em>}</li>
 *   <li>{@link garboard.model.impl.ReadingImpl#getPower <em>Power</em>}</li>
 *   <li>{@link garboard.model.impl.ReadingImpl#getPowerFactor <em>Power Factor</em>}</li>
 *   <li>{@link garboard.model.impl.ReadingImpl#getOilPressure <em>Oil Pressure</em>}</li>
 *   <li>{@link garboard.model.impl.ReadingImpl#getCoolantTemperature <em>Coolant Temperature</em>}</li>
 *   <li>{@link garboard.model.impl.ReadingImpl#getRawWaterIn <em>Raw Water In</em>}</li>
 *   <li>{@link garboard.model.impl.ReadingImpl#getRawWaterOut <em>Raw Water Out</em>}</li>
 *   <li>{@link garboard.model.impl.ReadingImpl#getExhaustMixed <em>Exhaust Mixed</em>}</li>
 *   <li>{@link garboard.model.impl.ReadingImpl#getExhaustDry <em>Exhaust Dry</em>}</li>
 *   <li>{@link garboard.model.impl.ReadingImpl#getBackPressure <em>Back Pressure</em>}</li>
 *   <li>{@link garboard.model.impl.ReadingImpl#getCompartmentTemperature <em>Compartment Temperature</em>}</li>
 *   <li>{@link garboard.model.impl.ReadingImpl#getOutsideTemperature <em>Outside Temperature</em>}</li>
 *   <li>{@link garboard.model.impl.ReadingImpl#getCompartmentDepression <em>Compartment Depression</em>}</li>
 *   <li>{@link garboard.model.impl.ReadingImpl#getFuelVacuum <em>Fuel Vacuum</em>}</li>
 *   <li>{@link garboard.model.impl.ReadingImpl#getRawWaterVacuum <em>Raw Water Vacuum</em>}</li>
 *   <li>{@link garboard.model.impl.ReadingImpl#getRawWaterFlow <em>Raw Water Flow</em>}</li>
 *   <li>{@link garboard.model.impl.ReadingImpl#getBatteryVoltage <em>Battery Voltage</em>}</li>
 *   <li>{@link garboard.model.impl.ReadingImpl#getChargeCurrent <em>Charge Current</em>}</li>
 *   <li>{@link garboard.model.impl.ReadingImpl#getCarbonMonoxide <em>Carbon Monoxide</em>}</li>
 *   <li>{@link garboard.model.impl.ReadingImpl#getSmoke <em>Smoke</em>}</li>
 *   <li>{@link garboard.model.impl.ReadingImpl#getNote <em>Note</em>}</li>
 *   <li>{@link garboard.model.impl.ReadingImpl#getInstruments <em>Instruments</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ReadingImpl extends ItemImpl implements Reading {
	/**
	 * The default value of the '{@link #getAt() <em>At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAt()
	 * @generated
	 * @ordered
	 */
	protected static final OffsetDateTime AT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAt() <em>At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAt()
	 * @generated
	 * @ordered
	 */
	protected OffsetDateTime at = AT_EDEFAULT;

	/**
	 * The default value of the '{@link #getVoltage1() <em>Voltage1</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVoltage1()
	 * @generated
	 * @ordered
	 */
	protected static final Voltage VOLTAGE1_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getVoltage1() <em>Voltage1</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVoltage1()
	 * @generated
	 * @ordered
	 */
	protected Voltage voltage1 = VOLTAGE1_EDEFAULT;

	/**
	 * The default value of the '{@link #getVoltage2() <em>Voltage2</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVoltage2()
	 * @generated
	 * @ordered
	 */
	protected static final Voltage VOLTAGE2_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getVoltage2() <em>Voltage2</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVoltage2()
	 * @generated
	 * @ordered
	 */
	protected Voltage voltage2 = VOLTAGE2_EDEFAULT;

	/**
	 * The default value of the '{@link #getVoltage3() <em>Voltage3</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVoltage3()
	 * @generated
	 * @ordered
	 */
	protected static final Voltage VOLTAGE3_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getVoltage3() <em>Voltage3</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVoltage3()
	 * @generated
	 * @ordered
	 */
	protected Voltage voltage3 = VOLTAGE3_EDEFAULT;

	/**
	 * The default value of the '{@link #getCurrent1() <em>Current1</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCurrent1()
	 * @generated
	 * @ordered
	 */
	protected static final Current CURRENT1_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCurrent1() <em>Current1</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCurrent1()
	 * @generated
	 * @ordered
	 */
	protected Current current1 = CURRENT1_EDEFAULT;

	/**
	 * The default value of the '{@link #getCurrent2() <em>Current2</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCurrent2()
	 * @generated
	 * @ordered
	 */
	protected static final Current CURRENT2_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCurrent2() <em>Current2</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCurrent2()
	 * @generated
	 * @ordered
	 */
	protected Current current2 = CURRENT2_EDEFAULT;

	/**
	 * The default value of the '{@link #getCurrent3() <em>Current3</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCurrent3()
	 * @generated
	 * @ordered
	 */
	protected static final Current CURRENT3_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCurrent3() <em>Current3</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCurrent3()
	 * @generated
	 * @ordered
	 */
	protected Current current3 = CURRENT3_EDEFAULT;

	/**
	 * The default value of the '{@link #getFrequency() <em>Frequency</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFrequency()
	 * @generated
	 * @ordered
	 */
	protected static final Frequency FREQUENCY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFrequency() <em>Frequency</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFrequency()
	 * @generated
	 * @ordered
	 */
	protected Frequency frequency = FREQUENCY_EDEFAULT;

	/**
	 * The default value of the '{@link #getPower() <em>Power</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPower()
	 * @generated
	 * @ordered
	 */
	protected static final Power POWER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPower() <em>Power</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPower()
	 * @generated
	 * @ordered
	 */
	protected Power power = POWER_EDEFAULT;

	/**
	 * The default value of the '{@link #getPowerFactor() <em>Power Factor</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPowerFactor()
	 * @generated
	 * @ordered
	 */
	protected static final Ratio POWER_FACTOR_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPowerFactor() <em>Power Factor</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPowerFactor()
	 * @generated
	 * @ordered
	 */
	protected Ratio powerFactor = POWER_FACTOR_EDEFAULT;

	/**
	 * The default value of the '{@link #getOilPressure() <em>Oil Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOilPressure()
	 * @generated
	 * @ordered
	 */
	protected static final GaugePressure OIL_PRESSURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOilPressure() <em>Oil Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOilPressure()
	 * @generated
	 * @ordered
	 */
	protected GaugePressure oilPressure = OIL_PRESSURE_EDEFAULT;

	/**
	 * The default value of the '{@link #getCoolantTemperature() <em>Coolant Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCoolantTemperature()
	 * @generated
	 * @ordered
	 */
	protected static final Temperature COOLANT_TEMPERATURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCoolantTemperature() <em>Coolant Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCoolantTemperature()
	 * @generated
	 * @ordered
	 */
	protected Temperature coolantTemperature = COOLANT_TEMPERATURE_EDEFAULT;

	/**
	 * The default value of the '{@link #getRawWaterIn() <em>Raw Water In</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRawWaterIn()
	 * @generated
	 * @ordered
	 */
	protected static final Temperature RAW_WATER_IN_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRawWaterIn() <em>Raw Water In</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRawWaterIn()
	 * @generated
	 * @ordered
	 */
	protected Temperature rawWaterIn = RAW_WATER_IN_EDEFAULT;

	/**
	 * The default value of the '{@link #getRawWaterOut() <em>Raw Water Out</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRawWaterOut()
	 * @generated
	 * @ordered
	 */
	protected static final Temperature RAW_WATER_OUT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRawWaterOut() <em>Raw Water Out</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRawWaterOut()
	 * @generated
	 * @ordered
	 */
	protected Temperature rawWaterOut = RAW_WATER_OUT_EDEFAULT;

	/**
	 * The default value of the '{@link #getExhaustMixed() <em>Exhaust Mixed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getExhaustMixed()
	 * @generated
	 * @ordered
	 */
	protected static final Temperature EXHAUST_MIXED_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getExhaustMixed() <em>Exhaust Mixed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getExhaustMixed()
	 * @generated
	 * @ordered
	 */
	protected Temperature exhaustMixed = EXHAUST_MIXED_EDEFAULT;

	/**
	 * The default value of the '{@link #getExhaustDry() <em>Exhaust Dry</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getExhaustDry()
	 * @generated
	 * @ordered
	 */
	protected static final Temperature EXHAUST_DRY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getExhaustDry() <em>Exhaust Dry</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getExhaustDry()
	 * @generated
	 * @ordered
	 */
	protected Temperature exhaustDry = EXHAUST_DRY_EDEFAULT;

	/**
	 * The default value of the '{@link #getBackPressure() <em>Back Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBackPressure()
	 * @generated
	 * @ordered
	 */
	protected static final GaugePressure BACK_PRESSURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBackPressure() <em>Back Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBackPressure()
	 * @generated
	 * @ordered
	 */
	protected GaugePressure backPressure = BACK_PRESSURE_EDEFAULT;

	/**
	 * The default value of the '{@link #getCompartmentTemperature() <em>Compartment Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCompartmentTemperature()
	 * @generated
	 * @ordered
	 */
	protected static final Temperature COMPARTMENT_TEMPERATURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCompartmentTemperature() <em>Compartment Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCompartmentTemperature()
	 * @generated
	 * @ordered
	 */
	protected Temperature compartmentTemperature = COMPARTMENT_TEMPERATURE_EDEFAULT;

	/**
	 * The default value of the '{@link #getOutsideTemperature() <em>Outside Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOutsideTemperature()
	 * @generated
	 * @ordered
	 */
	protected static final Temperature OUTSIDE_TEMPERATURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOutsideTemperature() <em>Outside Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOutsideTemperature()
	 * @generated
	 * @ordered
	 */
	protected Temperature outsideTemperature = OUTSIDE_TEMPERATURE_EDEFAULT;

	/**
	 * The default value of the '{@link #getCompartmentDepression() <em>Compartment Depression</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCompartmentDepression()
	 * @generated
	 * @ordered
	 */
	protected static final PressureDifference COMPARTMENT_DEPRESSION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCompartmentDepression() <em>Compartment Depression</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCompartmentDepression()
	 * @generated
	 * @ordered
	 */
	protected PressureDifference compartmentDepression = COMPARTMENT_DEPRESSION_EDEFAULT;

	/**
	 * The default value of the '{@link #getFuelVacuum() <em>Fuel Vacuum</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFuelVacuum()
	 * @generated
	 * @ordered
	 */
	protected static final PressureDifference FUEL_VACUUM_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFuelVacuum() <em>Fuel Vacuum</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFuelVacuum()
	 * @generated
	 * @ordered
	 */
	protected PressureDifference fuelVacuum = FUEL_VACUUM_EDEFAULT;

	/**
	 * The default value of the '{@link #getRawWaterVacuum() <em>Raw Water Vacuum</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRawWaterVacuum()
	 * @generated
	 * @ordered
	 */
	protected static final PressureDifference RAW_WATER_VACUUM_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRawWaterVacuum() <em>Raw Water Vacuum</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRawWaterVacuum()
	 * @generated
	 * @ordered
	 */
	protected PressureDifference rawWaterVacuum = RAW_WATER_VACUUM_EDEFAULT;

	/**
	 * The default value of the '{@link #getRawWaterFlow() <em>Raw Water Flow</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRawWaterFlow()
	 * @generated
	 * @ordered
	 */
	protected static final VolumeFlow RAW_WATER_FLOW_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRawWaterFlow() <em>Raw Water Flow</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRawWaterFlow()
	 * @generated
	 * @ordered
	 */
	protected VolumeFlow rawWaterFlow = RAW_WATER_FLOW_EDEFAULT;

	/**
	 * The default value of the '{@link #getBatteryVoltage() <em>Battery Voltage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBatteryVoltage()
	 * @generated
	 * @ordered
	 */
	protected static final Voltage BATTERY_VOLTAGE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBatteryVoltage() <em>Battery Voltage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBatteryVoltage()
	 * @generated
	 * @ordered
	 */
	protected Voltage batteryVoltage = BATTERY_VOLTAGE_EDEFAULT;

	/**
	 * The default value of the '{@link #getChargeCurrent() <em>Charge Current</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getChargeCurrent()
	 * @generated
	 * @ordered
	 */
	protected static final Current CHARGE_CURRENT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getChargeCurrent() <em>Charge Current</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getChargeCurrent()
	 * @generated
	 * @ordered
	 */
	protected Current chargeCurrent = CHARGE_CURRENT_EDEFAULT;

	/**
	 * The default value of the '{@link #getCarbonMonoxide() <em>Carbon Monoxide</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCarbonMonoxide()
	 * @generated
	 * @ordered
	 */
	protected static final Ratio CARBON_MONOXIDE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCarbonMonoxide() <em>Carbon Monoxide</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCarbonMonoxide()
	 * @generated
	 * @ordered
	 */
	protected Ratio carbonMonoxide = CARBON_MONOXIDE_EDEFAULT;

	/**
	 * The default value of the '{@link #getSmoke() <em>Smoke</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSmoke()
	 * @generated
	 * @ordered
	 */
	protected static final SmokeColour SMOKE_EDEFAULT = SmokeColour.NOT_ENTERED;

	/**
	 * The cached value of the '{@link #getSmoke() <em>Smoke</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSmoke()
	 * @generated
	 * @ordered
	 */
	protected SmokeColour smoke = SMOKE_EDEFAULT;

	/**
	 * The default value of the '{@link #getNote() <em>Note</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNote()
	 * @generated
	 * @ordered
	 */
	protected static final String NOTE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getNote() <em>Note</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNote()
	 * @generated
	 * @ordered
	 */
	protected String note = NOTE_EDEFAULT;

	/**
	 * The default value of the '{@link #getInstruments() <em>Instruments</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInstruments()
	 * @generated
	 * @ordered
	 */
	protected static final String INSTRUMENTS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getInstruments() <em>Instruments</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInstruments()
	 * @generated
	 * @ordered
	 */
	protected String instruments = INSTRUMENTS_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ReadingImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return GarboardPackage.Literals.READING;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public OffsetDateTime getAt() {
		return at;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAt(OffsetDateTime newAt) {
		OffsetDateTime oldAt = at;
		at = newAt;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.READING__AT, oldAt, at));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Voltage getVoltage1() {
		return voltage1;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setVoltage1(Voltage newVoltage1) {
		Voltage oldVoltage1 = voltage1;
		voltage1 = newVoltage1;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.READING__VOLTAGE1, oldVoltage1, voltage1));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Voltage getVoltage2() {
		return voltage2;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setVoltage2(Voltage newVoltage2) {
		Voltage oldVoltage2 = voltage2;
		voltage2 = newVoltage2;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.READING__VOLTAGE2, oldVoltage2, voltage2));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Voltage getVoltage3() {
		return voltage3;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setVoltage3(Voltage newVoltage3) {
		Voltage oldVoltage3 = voltage3;
		voltage3 = newVoltage3;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.READING__VOLTAGE3, oldVoltage3, voltage3));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Current getCurrent1() {
		return current1;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCurrent1(Current newCurrent1) {
		Current oldCurrent1 = current1;
		current1 = newCurrent1;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.READING__CURRENT1, oldCurrent1, current1));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Current getCurrent2() {
		return current2;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCurrent2(Current newCurrent2) {
		Current oldCurrent2 = current2;
		current2 = newCurrent2;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.READING__CURRENT2, oldCurrent2, current2));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Current getCurrent3() {
		return current3;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCurrent3(Current newCurrent3) {
		Current oldCurrent3 = current3;
		current3 = newCurrent3;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.READING__CURRENT3, oldCurrent3, current3));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Frequency getFrequency() {
		return frequency;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFrequency(Frequency newFrequency) {
		Frequency oldFrequency = frequency;
		frequency = newFrequency;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.READING__FREQUENCY, oldFrequency, frequency));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Power getPower() {
		return power;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPower(Power newPower) {
		Power oldPower = power;
		power = newPower;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.READING__POWER, oldPower, power));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Ratio getPowerFactor() {
		return powerFactor;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPowerFactor(Ratio newPowerFactor) {
		Ratio oldPowerFactor = powerFactor;
		powerFactor = newPowerFactor;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.READING__POWER_FACTOR, oldPowerFactor, powerFactor));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public GaugePressure getOilPressure() {
		return oilPressure;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOilPressure(GaugePressure newOilPressure) {
		GaugePressure oldOilPressure = oilPressure;
		oilPressure = newOilPressure;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.READING__OIL_PRESSURE, oldOilPressure, oilPressure));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Temperature getCoolantTemperature() {
		return coolantTemperature;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCoolantTemperature(Temperature newCoolantTemperature) {
		Temperature oldCoolantTemperature = coolantTemperature;
		coolantTemperature = newCoolantTemperature;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.READING__COOLANT_TEMPERATURE, oldCoolantTemperature, coolantTemperature));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Temperature getRawWaterIn() {
		return rawWaterIn;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRawWaterIn(Temperature newRawWaterIn) {
		Temperature oldRawWaterIn = rawWaterIn;
		rawWaterIn = newRawWaterIn;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.READING__RAW_WATER_IN, oldRawWaterIn, rawWaterIn));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Temperature getRawWaterOut() {
		return rawWaterOut;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRawWaterOut(Temperature newRawWaterOut) {
		Temperature oldRawWaterOut = rawWaterOut;
		rawWaterOut = newRawWaterOut;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.READING__RAW_WATER_OUT, oldRawWaterOut, rawWaterOut));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Temperature getExhaustMixed() {
		return exhaustMixed;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setExhaustMixed(Temperature newExhaustMixed) {
		Temperature oldExhaustMixed = exhaustMixed;
		exhaustMixed = newExhaustMixed;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.READING__EXHAUST_MIXED, oldExhaustMixed, exhaustMixed));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Temperature getExhaustDry() {
		return exhaustDry;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setExhaustDry(Temperature newExhaustDry) {
		Temperature oldExhaustDry = exhaustDry;
		exhaustDry = newExhaustDry;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.READING__EXHAUST_DRY, oldExhaustDry, exhaustDry));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public GaugePressure getBackPressure() {
		return backPressure;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBackPressure(GaugePressure newBackPressure) {
		GaugePressure oldBackPressure = backPressure;
		backPressure = newBackPressure;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.READING__BACK_PRESSURE, oldBackPressure, backPressure));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Temperature getCompartmentTemperature() {
		return compartmentTemperature;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCompartmentTemperature(Temperature newCompartmentTemperature) {
		Temperature oldCompartmentTemperature = compartmentTemperature;
		compartmentTemperature = newCompartmentTemperature;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.READING__COMPARTMENT_TEMPERATURE, oldCompartmentTemperature, compartmentTemperature));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Temperature getOutsideTemperature() {
		return outsideTemperature;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOutsideTemperature(Temperature newOutsideTemperature) {
		Temperature oldOutsideTemperature = outsideTemperature;
		outsideTemperature = newOutsideTemperature;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.READING__OUTSIDE_TEMPERATURE, oldOutsideTemperature, outsideTemperature));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PressureDifference getCompartmentDepression() {
		return compartmentDepression;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCompartmentDepression(PressureDifference newCompartmentDepression) {
		PressureDifference oldCompartmentDepression = compartmentDepression;
		compartmentDepression = newCompartmentDepression;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.READING__COMPARTMENT_DEPRESSION, oldCompartmentDepression, compartmentDepression));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PressureDifference getFuelVacuum() {
		return fuelVacuum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFuelVacuum(PressureDifference newFuelVacuum) {
		PressureDifference oldFuelVacuum = fuelVacuum;
		fuelVacuum = newFuelVacuum;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.READING__FUEL_VACUUM, oldFuelVacuum, fuelVacuum));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PressureDifference getRawWaterVacuum() {
		return rawWaterVacuum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRawWaterVacuum(PressureDifference newRawWaterVacuum) {
		PressureDifference oldRawWaterVacuum = rawWaterVacuum;
		rawWaterVacuum = newRawWaterVacuum;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.READING__RAW_WATER_VACUUM, oldRawWaterVacuum, rawWaterVacuum));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public VolumeFlow getRawWaterFlow() {
		return rawWaterFlow;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRawWaterFlow(VolumeFlow newRawWaterFlow) {
		VolumeFlow oldRawWaterFlow = rawWaterFlow;
		rawWaterFlow = newRawWaterFlow;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.READING__RAW_WATER_FLOW, oldRawWaterFlow, rawWaterFlow));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Voltage getBatteryVoltage() {
		return batteryVoltage;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBatteryVoltage(Voltage newBatteryVoltage) {
		Voltage oldBatteryVoltage = batteryVoltage;
		batteryVoltage = newBatteryVoltage;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.READING__BATTERY_VOLTAGE, oldBatteryVoltage, batteryVoltage));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Current getChargeCurrent() {
		return chargeCurrent;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setChargeCurrent(Current newChargeCurrent) {
		Current oldChargeCurrent = chargeCurrent;
		chargeCurrent = newChargeCurrent;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.READING__CHARGE_CURRENT, oldChargeCurrent, chargeCurrent));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Ratio getCarbonMonoxide() {
		return carbonMonoxide;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCarbonMonoxide(Ratio newCarbonMonoxide) {
		Ratio oldCarbonMonoxide = carbonMonoxide;
		carbonMonoxide = newCarbonMonoxide;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.READING__CARBON_MONOXIDE, oldCarbonMonoxide, carbonMonoxide));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SmokeColour getSmoke() {
		return smoke;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSmoke(SmokeColour newSmoke) {
		SmokeColour oldSmoke = smoke;
		smoke = newSmoke == null ? SMOKE_EDEFAULT : newSmoke;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.READING__SMOKE, oldSmoke, smoke));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getNote() {
		return note;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNote(String newNote) {
		String oldNote = note;
		note = newNote;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.READING__NOTE, oldNote, note));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getInstruments() {
		return instruments;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setInstruments(String newInstruments) {
		String oldInstruments = instruments;
		instruments = newInstruments;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.READING__INSTRUMENTS, oldInstruments, instruments));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case GarboardPackage.READING__AT:
				return getAt();
			case GarboardPackage.READING__VOLTAGE1:
				return getVoltage1();
			case GarboardPackage.READING__VOLTAGE2:
				return getVoltage2();
			case GarboardPackage.READING__VOLTAGE3:
				return getVoltage3();
			case GarboardPackage.READING__CURRENT1:
				return getCurrent1();
			case GarboardPackage.READING__CURRENT2:
				return getCurrent2();
			case GarboardPackage.READING__CURRENT3:
				return getCurrent3();
			case GarboardPackage.READING__FREQUENCY:
				return getFrequency();
			case GarboardPackage.READING__POWER:
				return getPower();
			case GarboardPackage.READING__POWER_FACTOR:
				return getPowerFactor();
			case GarboardPackage.READING__OIL_PRESSURE:
				return getOilPressure();
			case GarboardPackage.READING__COOLANT_TEMPERATURE:
				return getCoolantTemperature();
			case GarboardPackage.READING__RAW_WATER_IN:
				return getRawWaterIn();
			case GarboardPackage.READING__RAW_WATER_OUT:
				return getRawWaterOut();
			case GarboardPackage.READING__EXHAUST_MIXED:
				return getExhaustMixed();
			case GarboardPackage.READING__EXHAUST_DRY:
				return getExhaustDry();
			case GarboardPackage.READING__BACK_PRESSURE:
				return getBackPressure();
			case GarboardPackage.READING__COMPARTMENT_TEMPERATURE:
				return getCompartmentTemperature();
			case GarboardPackage.READING__OUTSIDE_TEMPERATURE:
				return getOutsideTemperature();
			case GarboardPackage.READING__COMPARTMENT_DEPRESSION:
				return getCompartmentDepression();
			case GarboardPackage.READING__FUEL_VACUUM:
				return getFuelVacuum();
			case GarboardPackage.READING__RAW_WATER_VACUUM:
				return getRawWaterVacuum();
			case GarboardPackage.READING__RAW_WATER_FLOW:
				return getRawWaterFlow();
			case GarboardPackage.READING__BATTERY_VOLTAGE:
				return getBatteryVoltage();
			case GarboardPackage.READING__CHARGE_CURRENT:
				return getChargeCurrent();
			case GarboardPackage.READING__CARBON_MONOXIDE:
				return getCarbonMonoxide();
			case GarboardPackage.READING__SMOKE:
				return getSmoke();
			case GarboardPackage.READING__NOTE:
				return getNote();
			case GarboardPackage.READING__INSTRUMENTS:
				return getInstruments();
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
			case GarboardPackage.READING__AT:
				setAt((OffsetDateTime)newValue);
				return;
			case GarboardPackage.READING__VOLTAGE1:
				setVoltage1((Voltage)newValue);
				return;
			case GarboardPackage.READING__VOLTAGE2:
				setVoltage2((Voltage)newValue);
				return;
			case GarboardPackage.READING__VOLTAGE3:
				setVoltage3((Voltage)newValue);
				return;
			case GarboardPackage.READING__CURRENT1:
				setCurrent1((Current)newValue);
				return;
			case GarboardPackage.READING__CURRENT2:
				setCurrent2((Current)newValue);
				return;
			case GarboardPackage.READING__CURRENT3:
				setCurrent3((Current)newValue);
				return;
			case GarboardPackage.READING__FREQUENCY:
				setFrequency((Frequency)newValue);
				return;
			case GarboardPackage.READING__POWER:
				setPower((Power)newValue);
				return;
			case GarboardPackage.READING__POWER_FACTOR:
				setPowerFactor((Ratio)newValue);
				return;
			case GarboardPackage.READING__OIL_PRESSURE:
				setOilPressure((GaugePressure)newValue);
				return;
			case GarboardPackage.READING__COOLANT_TEMPERATURE:
				setCoolantTemperature((Temperature)newValue);
				return;
			case GarboardPackage.READING__RAW_WATER_IN:
				setRawWaterIn((Temperature)newValue);
				return;
			case GarboardPackage.READING__RAW_WATER_OUT:
				setRawWaterOut((Temperature)newValue);
				return;
			case GarboardPackage.READING__EXHAUST_MIXED:
				setExhaustMixed((Temperature)newValue);
				return;
			case GarboardPackage.READING__EXHAUST_DRY:
				setExhaustDry((Temperature)newValue);
				return;
			case GarboardPackage.READING__BACK_PRESSURE:
				setBackPressure((GaugePressure)newValue);
				return;
			case GarboardPackage.READING__COMPARTMENT_TEMPERATURE:
				setCompartmentTemperature((Temperature)newValue);
				return;
			case GarboardPackage.READING__OUTSIDE_TEMPERATURE:
				setOutsideTemperature((Temperature)newValue);
				return;
			case GarboardPackage.READING__COMPARTMENT_DEPRESSION:
				setCompartmentDepression((PressureDifference)newValue);
				return;
			case GarboardPackage.READING__FUEL_VACUUM:
				setFuelVacuum((PressureDifference)newValue);
				return;
			case GarboardPackage.READING__RAW_WATER_VACUUM:
				setRawWaterVacuum((PressureDifference)newValue);
				return;
			case GarboardPackage.READING__RAW_WATER_FLOW:
				setRawWaterFlow((VolumeFlow)newValue);
				return;
			case GarboardPackage.READING__BATTERY_VOLTAGE:
				setBatteryVoltage((Voltage)newValue);
				return;
			case GarboardPackage.READING__CHARGE_CURRENT:
				setChargeCurrent((Current)newValue);
				return;
			case GarboardPackage.READING__CARBON_MONOXIDE:
				setCarbonMonoxide((Ratio)newValue);
				return;
			case GarboardPackage.READING__SMOKE:
				setSmoke((SmokeColour)newValue);
				return;
			case GarboardPackage.READING__NOTE:
				setNote((String)newValue);
				return;
			case GarboardPackage.READING__INSTRUMENTS:
				setInstruments((String)newValue);
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
			case GarboardPackage.READING__AT:
				setAt(AT_EDEFAULT);
				return;
			case GarboardPackage.READING__VOLTAGE1:
				setVoltage1(VOLTAGE1_EDEFAULT);
				return;
			case GarboardPackage.READING__VOLTAGE2:
				setVoltage2(VOLTAGE2_EDEFAULT);
				return;
			case GarboardPackage.READING__VOLTAGE3:
				setVoltage3(VOLTAGE3_EDEFAULT);
				return;
			case GarboardPackage.READING__CURRENT1:
				setCurrent1(CURRENT1_EDEFAULT);
				return;
			case GarboardPackage.READING__CURRENT2:
				setCurrent2(CURRENT2_EDEFAULT);
				return;
			case GarboardPackage.READING__CURRENT3:
				setCurrent3(CURRENT3_EDEFAULT);
				return;
			case GarboardPackage.READING__FREQUENCY:
				setFrequency(FREQUENCY_EDEFAULT);
				return;
			case GarboardPackage.READING__POWER:
				setPower(POWER_EDEFAULT);
				return;
			case GarboardPackage.READING__POWER_FACTOR:
				setPowerFactor(POWER_FACTOR_EDEFAULT);
				return;
			case GarboardPackage.READING__OIL_PRESSURE:
				setOilPressure(OIL_PRESSURE_EDEFAULT);
				return;
			case GarboardPackage.READING__COOLANT_TEMPERATURE:
				setCoolantTemperature(COOLANT_TEMPERATURE_EDEFAULT);
				return;
			case GarboardPackage.READING__RAW_WATER_IN:
				setRawWaterIn(RAW_WATER_IN_EDEFAULT);
				return;
			case GarboardPackage.READING__RAW_WATER_OUT:
				setRawWaterOut(RAW_WATER_OUT_EDEFAULT);
				return;
			case GarboardPackage.READING__EXHAUST_MIXED:
				setExhaustMixed(EXHAUST_MIXED_EDEFAULT);
				return;
			case GarboardPackage.READING__EXHAUST_DRY:
				setExhaustDry(EXHAUST_DRY_EDEFAULT);
				return;
			case GarboardPackage.READING__BACK_PRESSURE:
				setBackPressure(BACK_PRESSURE_EDEFAULT);
				return;
			case GarboardPackage.READING__COMPARTMENT_TEMPERATURE:
				setCompartmentTemperature(COMPARTMENT_TEMPERATURE_EDEFAULT);
				return;
			case GarboardPackage.READING__OUTSIDE_TEMPERATURE:
				setOutsideTemperature(OUTSIDE_TEMPERATURE_EDEFAULT);
				return;
			case GarboardPackage.READING__COMPARTMENT_DEPRESSION:
				setCompartmentDepression(COMPARTMENT_DEPRESSION_EDEFAULT);
				return;
			case GarboardPackage.READING__FUEL_VACUUM:
				setFuelVacuum(FUEL_VACUUM_EDEFAULT);
				return;
			case GarboardPackage.READING__RAW_WATER_VACUUM:
				setRawWaterVacuum(RAW_WATER_VACUUM_EDEFAULT);
				return;
			case GarboardPackage.READING__RAW_WATER_FLOW:
				setRawWaterFlow(RAW_WATER_FLOW_EDEFAULT);
				return;
			case GarboardPackage.READING__BATTERY_VOLTAGE:
				setBatteryVoltage(BATTERY_VOLTAGE_EDEFAULT);
				return;
			case GarboardPackage.READING__CHARGE_CURRENT:
				setChargeCurrent(CHARGE_CURRENT_EDEFAULT);
				return;
			case GarboardPackage.READING__CARBON_MONOXIDE:
				setCarbonMonoxide(CARBON_MONOXIDE_EDEFAULT);
				return;
			case GarboardPackage.READING__SMOKE:
				setSmoke(SMOKE_EDEFAULT);
				return;
			case GarboardPackage.READING__NOTE:
				setNote(NOTE_EDEFAULT);
				return;
			case GarboardPackage.READING__INSTRUMENTS:
				setInstruments(INSTRUMENTS_EDEFAULT);
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
			case GarboardPackage.READING__AT:
				return AT_EDEFAULT == null ? at != null : !AT_EDEFAULT.equals(at);
			case GarboardPackage.READING__VOLTAGE1:
				return VOLTAGE1_EDEFAULT == null ? voltage1 != null : !VOLTAGE1_EDEFAULT.equals(voltage1);
			case GarboardPackage.READING__VOLTAGE2:
				return VOLTAGE2_EDEFAULT == null ? voltage2 != null : !VOLTAGE2_EDEFAULT.equals(voltage2);
			case GarboardPackage.READING__VOLTAGE3:
				return VOLTAGE3_EDEFAULT == null ? voltage3 != null : !VOLTAGE3_EDEFAULT.equals(voltage3);
			case GarboardPackage.READING__CURRENT1:
				return CURRENT1_EDEFAULT == null ? current1 != null : !CURRENT1_EDEFAULT.equals(current1);
			case GarboardPackage.READING__CURRENT2:
				return CURRENT2_EDEFAULT == null ? current2 != null : !CURRENT2_EDEFAULT.equals(current2);
			case GarboardPackage.READING__CURRENT3:
				return CURRENT3_EDEFAULT == null ? current3 != null : !CURRENT3_EDEFAULT.equals(current3);
			case GarboardPackage.READING__FREQUENCY:
				return FREQUENCY_EDEFAULT == null ? frequency != null : !FREQUENCY_EDEFAULT.equals(frequency);
			case GarboardPackage.READING__POWER:
				return POWER_EDEFAULT == null ? power != null : !POWER_EDEFAULT.equals(power);
			case GarboardPackage.READING__POWER_FACTOR:
				return POWER_FACTOR_EDEFAULT == null ? powerFactor != null : !POWER_FACTOR_EDEFAULT.equals(powerFactor);
			case GarboardPackage.READING__OIL_PRESSURE:
				return OIL_PRESSURE_EDEFAULT == null ? oilPressure != null : !OIL_PRESSURE_EDEFAULT.equals(oilPressure);
			case GarboardPackage.READING__COOLANT_TEMPERATURE:
				return COOLANT_TEMPERATURE_EDEFAULT == null ? coolantTemperature != null : !COOLANT_TEMPERATURE_EDEFAULT.equals(coolantTemperature);
			case GarboardPackage.READING__RAW_WATER_IN:
				return RAW_WATER_IN_EDEFAULT == null ? rawWaterIn != null : !RAW_WATER_IN_EDEFAULT.equals(rawWaterIn);
			case GarboardPackage.READING__RAW_WATER_OUT:
				return RAW_WATER_OUT_EDEFAULT == null ? rawWaterOut != null : !RAW_WATER_OUT_EDEFAULT.equals(rawWaterOut);
			case GarboardPackage.READING__EXHAUST_MIXED:
				return EXHAUST_MIXED_EDEFAULT == null ? exhaustMixed != null : !EXHAUST_MIXED_EDEFAULT.equals(exhaustMixed);
			case GarboardPackage.READING__EXHAUST_DRY:
				return EXHAUST_DRY_EDEFAULT == null ? exhaustDry != null : !EXHAUST_DRY_EDEFAULT.equals(exhaustDry);
			case GarboardPackage.READING__BACK_PRESSURE:
				return BACK_PRESSURE_EDEFAULT == null ? backPressure != null : !BACK_PRESSURE_EDEFAULT.equals(backPressure);
			case GarboardPackage.READING__COMPARTMENT_TEMPERATURE:
				return COMPARTMENT_TEMPERATURE_EDEFAULT == null ? compartmentTemperature != null : !COMPARTMENT_TEMPERATURE_EDEFAULT.equals(compartmentTemperature);
			case GarboardPackage.READING__OUTSIDE_TEMPERATURE:
				return OUTSIDE_TEMPERATURE_EDEFAULT == null ? outsideTemperature != null : !OUTSIDE_TEMPERATURE_EDEFAULT.equals(outsideTemperature);
			case GarboardPackage.READING__COMPARTMENT_DEPRESSION:
				return COMPARTMENT_DEPRESSION_EDEFAULT == null ? compartmentDepression != null : !COMPARTMENT_DEPRESSION_EDEFAULT.equals(compartmentDepression);
			case GarboardPackage.READING__FUEL_VACUUM:
				return FUEL_VACUUM_EDEFAULT == null ? fuelVacuum != null : !FUEL_VACUUM_EDEFAULT.equals(fuelVacuum);
			case GarboardPackage.READING__RAW_WATER_VACUUM:
				return RAW_WATER_VACUUM_EDEFAULT == null ? rawWaterVacuum != null : !RAW_WATER_VACUUM_EDEFAULT.equals(rawWaterVacuum);
			case GarboardPackage.READING__RAW_WATER_FLOW:
				return RAW_WATER_FLOW_EDEFAULT == null ? rawWaterFlow != null : !RAW_WATER_FLOW_EDEFAULT.equals(rawWaterFlow);
			case GarboardPackage.READING__BATTERY_VOLTAGE:
				return BATTERY_VOLTAGE_EDEFAULT == null ? batteryVoltage != null : !BATTERY_VOLTAGE_EDEFAULT.equals(batteryVoltage);
			case GarboardPackage.READING__CHARGE_CURRENT:
				return CHARGE_CURRENT_EDEFAULT == null ? chargeCurrent != null : !CHARGE_CURRENT_EDEFAULT.equals(chargeCurrent);
			case GarboardPackage.READING__CARBON_MONOXIDE:
				return CARBON_MONOXIDE_EDEFAULT == null ? carbonMonoxide != null : !CARBON_MONOXIDE_EDEFAULT.equals(carbonMonoxide);
			case GarboardPackage.READING__SMOKE:
				return smoke != SMOKE_EDEFAULT;
			case GarboardPackage.READING__NOTE:
				return NOTE_EDEFAULT == null ? note != null : !NOTE_EDEFAULT.equals(note);
			case GarboardPackage.READING__INSTRUMENTS:
				return INSTRUMENTS_EDEFAULT == null ? instruments != null : !INSTRUMENTS_EDEFAULT.equals(instruments);
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
		result.append(" (at: ");
		result.append(at);
		result.append(", voltage1: ");
		result.append(voltage1);
		result.append(", voltage2: ");
		result.append(voltage2);
		result.append(", voltage3: ");
		result.append(voltage3);
		result.append(", current1: ");
		result.append(current1);
		result.append(", current2: ");
		result.append(current2);
		result.append(", current3: ");
		result.append(current3);
		result.append(", frequency: ");
		result.append(frequency);
		result.append(", power: ");
		result.append(power);
		result.append(", powerFactor: ");
		result.append(powerFactor);
		result.append(", oilPressure: ");
		result.append(oilPressure);
		result.append(", coolantTemperature: ");
		result.append(coolantTemperature);
		result.append(", rawWaterIn: ");
		result.append(rawWaterIn);
		result.append(", rawWaterOut: ");
		result.append(rawWaterOut);
		result.append(", exhaustMixed: ");
		result.append(exhaustMixed);
		result.append(", exhaustDry: ");
		result.append(exhaustDry);
		result.append(", backPressure: ");
		result.append(backPressure);
		result.append(", compartmentTemperature: ");
		result.append(compartmentTemperature);
		result.append(", outsideTemperature: ");
		result.append(outsideTemperature);
		result.append(", compartmentDepression: ");
		result.append(compartmentDepression);
		result.append(", fuelVacuum: ");
		result.append(fuelVacuum);
		result.append(", rawWaterVacuum: ");
		result.append(rawWaterVacuum);
		result.append(", rawWaterFlow: ");
		result.append(rawWaterFlow);
		result.append(", batteryVoltage: ");
		result.append(batteryVoltage);
		result.append(", chargeCurrent: ");
		result.append(chargeCurrent);
		result.append(", carbonMonoxide: ");
		result.append(carbonMonoxide);
		result.append(", smoke: ");
		result.append(smoke);
		result.append(", note: ");
		result.append(note);
		result.append(", instruments: ");
		result.append(instruments);
		result.append(')');
		return result.toString();
	}

} //ReadingImpl
