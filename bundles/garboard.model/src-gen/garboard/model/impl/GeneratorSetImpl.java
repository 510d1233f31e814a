/**
 */
package garboard.model.impl;

import garboard.model.Answer;
import garboard.model.Aspiration;
import garboard.model.Cooling;
import garboard.model.DutyRating;
import garboard.model.FuelKind;
import garboard.model.FuelSystem;
import garboard.model.GarboardPackage;
import garboard.model.GeneratorSet;
import garboard.model.MakerLimits;
import garboard.model.PerformanceClass;
import garboard.model.PhaseSystem;

import garboard.quantity.ApparentPower;
import garboard.quantity.Current;
import garboard.quantity.Frequency;
import garboard.quantity.MassFlow;
import garboard.quantity.Power;
import garboard.quantity.Ratio;
import garboard.quantity.RotationalSpeed;
import garboard.quantity.SpecificConsumption;
import garboard.quantity.Temperature;
import garboard.quantity.TimeSpan;
import garboard.quantity.Voltage;
import garboard.quantity.VolumeFlow;

import java.time.LocalDate;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Generator Set</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.impl.GeneratorSetImpl#getMaker <em>Maker</em>}</li>
 *   <li>{@link garboard.model.impl.GeneratorSetImpl#getType <em>Type</em>}</li>
 *   <li>{@link garboard.model.impl.GeneratorSetImpl#getSerialNumber <em>Serial Number</em>}</li>
 *   <li>{@link garboard.model.impl.GeneratorSetImpl#getEngineSerialNumber <em>Engine Serial Number</em>}</li>
 *   <li>{@link garboard.model.impl.GeneratorSetImpl#getAlternatorSerialNumber <em>Alternator Serial Number</em>}</li>
 *   <li>{@link garboard.model.impl.GeneratorSetImpl#getSoldOn <em>Sold On</em>}</li>
 *   <li>{@link garboard.model.impl.GeneratorSetImpl#getInstalledOn <em>Installed On</em>}</li>
 *   <li>{@link garboard.model.impl.GeneratorSetImpl#getHourMeter <em>Hour Meter</em>}</li>
 *   <li>{@link garboard.model.impl.GeneratorSetImpl#getFuel <em>Fuel</em>}</li>
 *   <li>{@link garboard.model.impl.GeneratorSetImpl#getFuelSystem <em>Fuel System</em>}</li>
 *   <li>{@link garboard.model.impl.GeneratorSetImpl#getAspiration <em>Aspiration</em>}</li>
 *   <li>{@link garboard.model.impl.GeneratorSetImpl#getCooling <em>Cooling</em>}</li>
 *   <li>{@link garboard.model.impl.GeneratorSetImpl#getDutyRating <em>Duty Rating</em>}</li>
 *   <li>{@link garboard.model.impl.GeneratorSetImpl#getRatedPower <em>Rated Power</em>}</li>
 *   <li>{@link garboard.model.impl.GeneratorSetImpl#getRatedApparentPower <em>Rated Apparent Power</em>}</li>
 *   <li>{@link garboard.model.impl.GeneratorSetImpl#getRatedPowerFactor <em>Rated Power Factor</em>}</li>
 *   <li>{@link garboard.model.impl.GeneratorSetImpl#getRatedVoltage <em>Rated Voltage</em>}</li>
 *   <li>{@link garboard.model.impl.GeneratorSetImpl#getRatedFrequency <em>Rated Frequency</em>}</li>
 *   <li>{@link garboard.model.impl.GeneratorSetImpl#getPhases <em>Phases</em>}</li>
 *   <li>{@link garboard.model.impl.GeneratorSetImpl#getRatedSpeed <em>Rated Speed</em>}</li>
 *   <li>{@link garboard.model.impl.GeneratorSetImpl#getPoles <em>Poles</em>}</li>
 *   <li>{@link garboard.model.impl.GeneratorSetImpl#getCrankingSpeed <em>Cranking Speed</em>}</li>
 *   <li>{@link garboard.model.impl.GeneratorSetImpl#getShaftPower <em>Shaft Power</em>}</li>
 *   <li>{@link garboard.model.impl.GeneratorSetImpl#getAlternatorEfficiency <em>Alternator Efficiency</em>}</li>
 *   <li>{@link garboard.model.impl.GeneratorSetImpl#getFuelConsumptionFullLoad <em>Fuel Consumption Full Load</em>}</li>
 *   <li>{@link garboard.model.impl.GeneratorSetImpl#getSpecificFuelConsumption <em>Specific Fuel Consumption</em>}</li>
 *   <li>{@link garboard.model.impl.GeneratorSetImpl#getAirFuelRatio <em>Air Fuel Ratio</em>}</li>
 *   <li>{@link garboard.model.impl.GeneratorSetImpl#getExhaustGasTemperature <em>Exhaust Gas Temperature</em>}</li>
 *   <li>{@link garboard.model.impl.GeneratorSetImpl#getExhaustMassFlow <em>Exhaust Mass Flow</em>}</li>
 *   <li>{@link garboard.model.impl.GeneratorSetImpl#getHeatToCoolant <em>Heat To Coolant</em>}</li>
 *   <li>{@link garboard.model.impl.GeneratorSetImpl#getHeatToCompartment <em>Heat To Compartment</em>}</li>
 *   <li>{@link garboard.model.impl.GeneratorSetImpl#getCombustionAirFlow <em>Combustion Air Flow</em>}</li>
 *   <li>{@link garboard.model.impl.GeneratorSetImpl#getRawWaterFlow <em>Raw Water Flow</em>}</li>
 *   <li>{@link garboard.model.impl.GeneratorSetImpl#getSystemVoltage <em>System Voltage</em>}</li>
 *   <li>{@link garboard.model.impl.GeneratorSetImpl#getCrankingCurrent <em>Cranking Current</em>}</li>
 *   <li>{@link garboard.model.impl.GeneratorSetImpl#getStarterVoltage <em>Starter Voltage</em>}</li>
 *   <li>{@link garboard.model.impl.GeneratorSetImpl#getInSoundShield <em>In Sound Shield</em>}</li>
 *   <li>{@link garboard.model.impl.GeneratorSetImpl#getOverloadDeclared <em>Overload Declared</em>}</li>
 *   <li>{@link garboard.model.impl.GeneratorSetImpl#getEmissionLabelMarine <em>Emission Label Marine</em>}</li>
 *   <li>{@link garboard.model.impl.GeneratorSetImpl#getPerformanceClass <em>Performance Class</em>}</li>
 *   <li>{@link garboard.model.impl.GeneratorSetImpl#getDesignAmbient <em>Design Ambient</em>}</li>
 *   <li>{@link garboard.model.impl.GeneratorSetImpl#getSubtransientReactance <em>Subtransient Reactance</em>}</li>
 *   <li>{@link garboard.model.impl.GeneratorSetImpl#getTransientReactance <em>Transient Reactance</em>}</li>
 *   <li>{@link garboard.model.impl.GeneratorSetImpl#getSustainedShortCircuitMultiple <em>Sustained Short Circuit Multiple</em>}</li>
 *   <li>{@link garboard.model.impl.GeneratorSetImpl#getAnnualHours <em>Annual Hours</em>}</li>
 *   <li>{@link garboard.model.impl.GeneratorSetImpl#getPlateShowsDeratedPower <em>Plate Shows Derated Power</em>}</li>
 *   <li>{@link garboard.model.impl.GeneratorSetImpl#getMakerLimits <em>Maker Limits</em>}</li>
 * </ul>
 *
 * @generated
 */
public class GeneratorSetImpl extends MinimalEObjectImpl.Container implements GeneratorSet {
	/**
	 * The default value of the '{@link #getMaker() <em>Maker</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaker()
	 * @generated
	 * @ordered
	 */
	protected static final String MAKER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMaker() <em>Maker</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaker()
	 * @generated
	 * @ordered
	 */
	protected String maker = MAKER_EDEFAULT;

	/**
	 * The default value of the '{@link #getType() <em>Type</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getType()
	 * @generated
	 * @ordered
	 */
	protected static final String TYPE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getType() <em>Type</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getType()
	 * @generated
	 * @ordered
	 */
	protected String type = TYPE_EDEFAULT;

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
	 * The default value of the '{@link #getEngineSerialNumber() <em>Engine Serial Number</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEngineSerialNumber()
	 * @generated
	 * @ordered
	 */
	protected static final String ENGINE_SERIAL_NUMBER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getEngineSerialNumber() <em>Engine Serial Number</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEngineSerialNumber()
	 * @generated
	 * @ordered
	 */
	protected String engineSerialNumber = ENGINE_SERIAL_NUMBER_EDEFAULT;

	/**
	 * The default value of the '{@link #getAlternatorSerialNumber() <em>Alternator Serial Number</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAlternatorSerialNumber()
	 * @generated
	 * @ordered
	 */
	protected static final String ALTERNATOR_SERIAL_NUMBER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAlternatorSerialNumber() <em>Alternator Serial Number</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAlternatorSerialNumber()
	 * @generated
	 * @ordered
	 */
	protected String alternatorSerialNumber = ALTERNATOR_SERIAL_NUMBER_EDEFAULT;

	/**
	 * The default value of the '{@link #getSoldOn() <em>Sold On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSoldOn()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate SOLD_ON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSoldOn() <em>Sold On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSoldOn()
	 * @generated
	 * @ordered
	 */
	protected LocalDate soldOn = SOLD_ON_EDEFAULT;

	/**
	 * The default value of the '{@link #getInstalledOn() <em>Installed On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInstalledOn()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate INSTALLED_ON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getInstalledOn() <em>Installed On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInstalledOn()
	 * @generated
	 * @ordered
	 */
	protected LocalDate installedOn = INSTALLED_ON_EDEFAULT;

	/**
	 * The default value of the '{@link #getHourMeter() <em>Hour Meter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHourMeter()
	 * @generated
	 * @ordered
	 */
	protected static final TimeSpan HOUR_METER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getHourMeter() <em>Hour Meter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHourMeter()
	 * @generated
	 * @ordered
	 */
	protected TimeSpan hourMeter = HOUR_METER_EDEFAULT;

	/**
	 * The default value of the '{@link #getFuel() <em>Fuel</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFuel()
	 * @generated
	 * @ordered
	 */
	protected static final FuelKind FUEL_EDEFAULT = FuelKind.NOT_ENTERED;

	/**
	 * The cached value of the '{@link #getFuel() <em>Fuel</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFuel()
	 * @generated
	 * @ordered
	 */
	protected FuelKind fuel = FUEL_EDEFAULT;

	/**
	 * The default value of the '{@link #getFuelSystem() <em>Fuel System</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFuelSystem()
	 * @generated
	 * @ordered
	 */
	protected static final FuelSystem FUEL_SYSTEM_EDEFAULT = FuelSystem.NOT_ENTERED;

	/**
	 * The cached value of the '{@link #getFuelSystem() <em>Fuel System</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFuelSystem()
	 * @generated
	 * @ordered
	 */
	protected FuelSystem fuelSystem = FUEL_SYSTEM_EDEFAULT;

	/**
	 * The default value of the '{@link #getAspiration() <em>Aspiration</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAspiration()
	 * @generated
	 * @ordered
	 */
	protected static final Aspiration ASPIRATION_EDEFAULT = Aspiration.NOT_ENTERED;

	/**
	 * The cached value of the '{@link #getAspiration() <em>Aspiration</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAspiration()
	 * @generated
	 * @ordered
	 */
	protected Aspiration aspiration = ASPIRATION_EDEFAULT;

	/**
	 * The default value of the '{@link #getCooling() <em>Cooling</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCooling()
	 * @generated
	 * @ordered
	 */
	protected static final Cooling COOLING_EDEFAULT = Cooling.NOT_ENTERED;

	/**
	 * The cached value of the '{@link #getCooling() <em>Cooling</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCooling()
	 * @generated
	 * @ordered
	 */
	protected Cooling cooling = COOLING_EDEFAULT;

	/**
	 * The default value of the '{@link #getDutyRating() <em>Duty Rating</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDutyRating()
	 * @generated
	 * @ordered
	 */
	protected static final DutyRating DUTY_RATING_EDEFAULT = DutyRating.NOT_ENTERED;

	/**
	 * The cached value of the '{@link #getDutyRating() <em>Duty Rating</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDutyRating()
	 * @generated
	 * @ordered
	 */
	protected DutyRating dutyRating = DUTY_RATING_EDEFAULT;

	/**
	 * The default value of the '{@link #getRatedPower() <em>Rated Power</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRatedPower()
	 * @generated
	 * @ordered
	 */
	protected static final Power RATED_POWER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRatedPower() <em>Rated Power</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRatedPower()
	 * @generated
	 * @ordered
	 */
	protected Power ratedPower = RATED_POWER_EDEFAULT;

	/**
	 * The default value of the '{@link #getRatedApparentPower() <em>Rated Apparent Power</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRatedApparentPower()
	 * @generated
	 * @ordered
	 */
	protected static final ApparentPower RATED_APPARENT_POWER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRatedApparentPower() <em>Rated Apparent Power</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRatedApparentPower()
	 * @generated
	 * @ordered
	 */
	protected ApparentPower ratedApparentPower = RATED_APPARENT_POWER_EDEFAULT;

	/**
	 * The default value of the '{@link #getRatedPowerFactor() <em>Rated Power Factor</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRatedPowerFactor()
	 * @generated
	 * @ordered
	 */
	protected static final Ratio RATED_POWER_FACTOR_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRatedPowerFactor() <em>Rated Power Factor</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRatedPowerFactor()
	 * @generated
	 * @ordered
	 */
	protected Ratio ratedPowerFactor = RATED_POWER_FACTOR_EDEFAULT;

	/**
	 * The default value of the '{@link #getRatedVoltage() <em>Rated Voltage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRatedVoltage()
	 * @generated
	 * @ordered
	 */
	protected static final Voltage RATED_VOLTAGE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRatedVoltage() <em>Rated Voltage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRatedVoltage()
	 * @generated
	 * @ordered
	 */
	protected Voltage ratedVoltage = RATED_VOLTAGE_EDEFAULT;

	/**
	 * The default value of the '{@link #getRatedFrequency() <em>Rated Frequency</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRatedFrequency()
	 * @generated
	 * @ordered
	 */
	protected static final Frequency RATED_FREQUENCY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRatedFrequency() <em>Rated Frequency</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRatedFrequency()
	 * @generated
	 * @ordered
	 */
	protected Frequency ratedFrequency = RATED_FREQUENCY_EDEFAULT;

	/**
	 * The default value of the '{@link #getPhases() <em>Phases</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPhases()
	 * @generated
	 * @ordered
	 */
	protected static final PhaseSystem PHASES_EDEFAULT = PhaseSystem.NOT_ENTERED;

	/**
	 * The cached value of the '{@link #getPhases() <em>Phases</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPhases()
	 * @generated
	 * @ordered
	 */
	protected PhaseSystem phases = PHASES_EDEFAULT;

	/**
	 * The default value of the '{@link #getRatedSpeed() <em>Rated Speed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRatedSpeed()
	 * @generated
	 * @ordered
	 */
	protected static final RotationalSpeed RATED_SPEED_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRatedSpeed() <em>Rated Speed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRatedSpeed()
	 * @generated
	 * @ordered
	 */
	protected RotationalSpeed ratedSpeed = RATED_SPEED_EDEFAULT;

	/**
	 * The default value of the '{@link #getPoles() <em>Poles</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPoles()
	 * @generated
	 * @ordered
	 */
	protected static final Integer POLES_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPoles() <em>Poles</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPoles()
	 * @generated
	 * @ordered
	 */
	protected Integer poles = POLES_EDEFAULT;

	/**
	 * The default value of the '{@link #getCrankingSpeed() <em>Cranking Speed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCrankingSpeed()
	 * @generated
	 * @ordered
	 */
	protected static final RotationalSpeed CRANKING_SPEED_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCrankingSpeed() <em>Cranking Speed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCrankingSpeed()
	 * @generated
	 * @ordered
	 */
	protected RotationalSpeed crankingSpeed = CRANKING_SPEED_EDEFAULT;

	/**
	 * The default value of the '{@link #getShaftPower() <em>Shaft Power</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getShaftPower()
	 * @generated
	 * @ordered
	 */
	protected static final Power SHAFT_POWER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getShaftPower() <em>Shaft Power</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getShaftPower()
	 * @generated
	 * @ordered
	 */
	protected Power shaftPower = SHAFT_POWER_EDEFAULT;

	/**
	 * The default value of the '{@link #getAlternatorEfficiency() <em>Alternator Efficiency</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAlternatorEfficiency()
	 * @generated
	 * @ordered
	 */
	protected static final Ratio ALTERNATOR_EFFICIENCY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAlternatorEfficiency() <em>Alternator Efficiency</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAlternatorEfficiency()
	 * @generated
	 * @ordered
	 */
	protected Ratio alternatorEfficiency = ALTERNATOR_EFFICIENCY_EDEFAULT;

	/**
	 * The default value of the '{@link #getFuelConsumptionFullLoad() <em>Fuel Consumption Full Load</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFuelConsumptionFullLoad()
	 * @generated
	 * @ordered
	 */
	protected static final VolumeFlow FUEL_CONSUMPTION_FULL_LOAD_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFuelConsumptionFullLoad() <em>Fuel Consumption Full Load</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFuelConsumptionFullLoad()
	 * @generated
	 * @ordered
	 */
	protected VolumeFlow fuelConsumptionFullLoad = FUEL_CONSUMPTION_FULL_LOAD_EDEFAULT;

	/**
	 * The default value of the '{@link #getSpecificFuelConsumption() <em>Specific Fuel Consumption</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSpecificFuelConsumption()
	 * @generated
	 * @ordered
	 */
	protected static final SpecificConsumption SPECIFIC_FUEL_CONSUMPTION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSpecificFuelConsumption() <em>Specific Fuel Consumption</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSpecificFuelConsumption()
	 * @generated
	 * @ordered
	 */
	protected SpecificConsumption specificFuelConsumption = SPECIFIC_FUEL_CONSUMPTION_EDEFAULT;

	/**
	 * The default value of the '{@link #getAirFuelRatio() <em>Air Fuel Ratio</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAirFuelRatio()
	 * @generated
	 * @ordered
	 */
	protected static final Ratio AIR_FUEL_RATIO_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAirFuelRatio() <em>Air Fuel Ratio</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAirFuelRatio()
	 * @generated
	 * @ordered
	 */
	protected Ratio airFuelRatio = AIR_FUEL_RATIO_EDEFAULT;

	/**
	 * The default value of the '{@link #getExhaustGasTemperature() <em>Exhaust Gas Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getExhaustGasTemperature()
	 * @generated
	 * @ordered
	 */
	protected static final Temperature EXHAUST_GAS_TEMPERATURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getExhaustGasTemperature() <em>Exhaust Gas Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getExhaustGasTemperature()
	 * @generated
	 * @ordered
	 */
	protected Temperature exhaustGasTemperature = EXHAUST_GAS_TEMPERATURE_EDEFAULT;

	/**
	 * The default value of the '{@link #getExhaustMassFlow() <em>Exhaust Mass Flow</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getExhaustMassFlow()
	 * @generated
	 * @ordered
	 */
	protected static final MassFlow EXHAUST_MASS_FLOW_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getExhaustMassFlow() <em>Exhaust Mass Flow</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getExhaustMassFlow()
	 * @generated
	 * @ordered
	 */
	protected MassFlow exhaustMassFlow = EXHAUST_MASS_FLOW_EDEFAULT;

	/**
	 * The default value of the '{@link #getHeatToCoolant() <em>Heat To Coolant</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeatToCoolant()
	 * @generated
	 * @ordered
	 */
	protected static final Power HEAT_TO_COOLANT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getHeatToCoolant() <em>Heat To Coolant</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeatToCoolant()
	 * @generated
	 * @ordered
	 */
	protected Power heatToCoolant = HEAT_TO_COOLANT_EDEFAULT;

	/**
	 * The default value of the '{@link #getHeatToCompartment() <em>Heat To Compartment</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeatToCompartment()
	 * @generated
	 * @ordered
	 */
	protected static final Power HEAT_TO_COMPARTMENT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getHeatToCompartment() <em>Heat To Compartment</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeatToCompartment()
	 * @generated
	 * @ordered
	 */
	protected Power heatToCompartment = HEAT_TO_COMPARTMENT_EDEFAULT;

	/**
	 * The default value of the '{@link #getCombustionAirFlow() <em>Combustion Air Flow</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCombustionAirFlow()
	 * @generated
	 * @ordered
	 */
	protected static final VolumeFlow COMBUSTION_AIR_FLOW_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCombustionAirFlow() <em>Combustion Air Flow</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCombustionAirFlow()
	 * @generated
	 * @ordered
	 */
	protected VolumeFlow combustionAirFlow = COMBUSTION_AIR_FLOW_EDEFAULT;

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
	 * The default value of the '{@link #getSystemVoltage() <em>System Voltage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSystemVoltage()
	 * @generated
	 * @ordered
	 */
	protected static final Voltage SYSTEM_VOLTAGE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSystemVoltage() <em>System Voltage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSystemVoltage()
	 * @generated
	 * @ordered
	 */
	protected Voltage systemVoltage = SYSTEM_VOLTAGE_EDEFAULT;

	/**
	 * The default value of the '{@link #getCrankingCurrent() <em>Cranking Current</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCrankingCurrent()
	 * @generated
	 * @ordered
	 */
	protected static final Current CRANKING_CURRENT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCrankingCurrent() <em>Cranking Current</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCrankingCurrent()
	 * @generated
	 * @ordered
	 */
	protected Current crankingCurrent = CRANKING_CURRENT_EDEFAULT;

	/**
	 * The default value of the '{@link #getStarterVoltage() <em>Starter Voltage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStarterVoltage()
	 * @generated
	 * @ordered
	 */
	protected static final Voltage STARTER_VOLTAGE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getStarterVoltage() <em>Starter Voltage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStarterVoltage()
	 * @generated
	 * @ordered
	 */
	protected Voltage starterVoltage = STARTER_VOLTAGE_EDEFAULT;

	/**
	 * The default value of the '{@link #getInSoundShield() <em>In Sound Shield</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInSoundShield()
	 * @generated
	 * @ordered
	 */
	protected static final Answer IN_SOUND_SHIELD_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getInSoundShield() <em>In Sound Shield</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInSoundShield()
	 * @generated
	 * @ordered
	 */
	protected Answer inSoundShield = IN_SOUND_SHIELD_EDEFAULT;

	/**
	 * The default value of the '{@link #getOverloadDeclared() <em>Overload Declared</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOverloadDeclared()
	 * @generated
	 * @ordered
	 */
	protected static final Answer OVERLOAD_DECLARED_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getOverloadDeclared() <em>Overload Declared</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOverloadDeclared()
	 * @generated
	 * @ordered
	 */
	protected Answer overloadDeclared = OVERLOAD_DECLARED_EDEFAULT;

	/**
	 * The default value of the '{@link #getEmissionLabelMarine() <em>Emission Label Marine</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEmissionLabelMarine()
	 * @generated
	 * @ordered
	 */
	protected static final Answer EMISSION_LABEL_MARINE_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getEmissionLabelMarine() <em>Emission Label Marine</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEmissionLabelMarine()
	 * @generated
	 * @ordered
	 */
	protected Answer emissionLabelMarine = EMISSION_LABEL_MARINE_EDEFAULT;

	/**
	 * The default value of the '{@link #getPerformanceClass() <em>Performance Class</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPerformanceClass()
	 * @generated
	 * @ordered
	 */
	protected static final PerformanceClass PERFORMANCE_CLASS_EDEFAULT = PerformanceClass.NOT_ENTERED;

	/**
	 * The cached value of the '{@link #getPerformanceClass() <em>Performance Class</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPerformanceClass()
	 * @generated
	 * @ordered
	 */
	protected PerformanceClass performanceClass = PERFORMANCE_CLASS_EDEFAULT;

	/**
	 * The default value of the '{@link #getDesignAmbient() <em>Design Ambient</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDesignAmbient()
	 * @generated
	 * @ordered
	 */
	protected static final Temperature DESIGN_AMBIENT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDesignAmbient() <em>Design Ambient</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDesignAmbient()
	 * @generated
	 * @ordered
	 */
	protected Temperature designAmbient = DESIGN_AMBIENT_EDEFAULT;

	/**
	 * The default value of the '{@link #getSubtransientReactance() <em>Subtransient Reactance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSubtransientReactance()
	 * @generated
	 * @ordered
	 */
	protected static final Ratio SUBTRANSIENT_REACTANCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSubtransientReactance() <em>Subtransient Reactance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSubtransientReactance()
	 * @generated
	 * @ordered
	 */
	protected Ratio subtransientReactance = SUBTRANSIENT_REACTANCE_EDEFAULT;

	/**
	 * The default value of the '{@link #getTransientReactance() <em>Transient Reactance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTransientReactance()
	 * @generated
	 * @ordered
	 */
	protected static final Ratio TRANSIENT_REACTANCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTransientReactance() <em>Transient Reactance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTransientReactance()
	 * @generated
	 * @ordered
	 */
	protected Ratio transientReactance = TRANSIENT_REACTANCE_EDEFAULT;

	/**
	 * The default value of the '{@link #getSustainedShortCircuitMultiple() <em>Sustained Short Circuit Multiple</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSustainedShortCircuitMultiple()
	 * @generated
	 * @ordered
	 */
	protected static final Ratio SUSTAINED_SHORT_CIRCUIT_MULTIPLE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSustainedShortCircuitMultiple() <em>Sustained Short Circuit Multiple</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSustainedShortCircuitMultiple()
	 * @generated
	 * @ordered
	 */
	protected Ratio sustainedShortCircuitMultiple = SUSTAINED_SHORT_CIRCUIT_MULTIPLE_EDEFAULT;

	/**
	 * The default value of the '{@link #getAnnualHours() <em>Annual Hours</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAnnualHours()
	 * @generated
	 * @ordered
	 */
	protected static final TimeSpan ANNUAL_HOURS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAnnualHours() <em>Annual Hours</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAnnualHours()
	 * @generated
	 * @ordered
	 */
	protected TimeSpan annualHours = ANNUAL_HOURS_EDEFAULT;

	/**
	 * The default value of the '{@link #getPlateShowsDeratedPower() <em>Plate Shows Derated Power</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlateShowsDeratedPower()
	 * @generated
	 * @ordered
	 */
	protected static final Answer PLATE_SHOWS_DERATED_POWER_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getPlateShowsDeratedPower() <em>Plate Shows Derated Power</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlateShowsDeratedPower()
	 * @generated
	 * @ordered
	 */
	protected Answer plateShowsDeratedPower = PLATE_SHOWS_DERATED_POWER_EDEFAULT;

	/**
	 * The cached value of the '{@link #getMakerLimits() <em>Maker Limits</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMakerLimits()
	 * @generated
	 * @ordered
	 */
	protected MakerLimits makerLimits;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected GeneratorSetImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return GarboardPackage.Literals.GENERATOR_SET;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getMaker() {
		return maker;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMaker(String newMaker) {
		String oldMaker = maker;
		maker = newMaker;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.GENERATOR_SET__MAKER, oldMaker, maker));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getType() {
		return type;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setType(String newType) {
		String oldType = type;
		type = newType;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.GENERATOR_SET__TYPE, oldType, type));
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
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.GENERATOR_SET__SERIAL_NUMBER, oldSerialNumber, serialNumber));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getEngineSerialNumber() {
		return engineSerialNumber;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEngineSerialNumber(String newEngineSerialNumber) {
		String oldEngineSerialNumber = engineSerialNumber;
		engineSerialNumber = newEngineSerialNumber;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.GENERATOR_SET__ENGINE_SERIAL_NUMBER, oldEngineSerialNumber, engineSerialNumber));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getAlternatorSerialNumber() {
		return alternatorSerialNumber;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAlternatorSerialNumber(String newAlternatorSerialNumber) {
		String oldAlternatorSerialNumber = alternatorSerialNumber;
		alternatorSerialNumber = newAlternatorSerialNumber;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.GENERATOR_SET__ALTERNATOR_SERIAL_NUMBER, oldAlternatorSerialNumber, alternatorSerialNumber));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getSoldOn() {
		return soldOn;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSoldOn(LocalDate newSoldOn) {
		LocalDate oldSoldOn = soldOn;
		soldOn = newSoldOn;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.GENERATOR_SET__SOLD_ON, oldSoldOn, soldOn));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getInstalledOn() {
		return installedOn;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setInstalledOn(LocalDate newInstalledOn) {
		LocalDate oldInstalledOn = installedOn;
		installedOn = newInstalledOn;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.GENERATOR_SET__INSTALLED_ON, oldInstalledOn, installedOn));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TimeSpan getHourMeter() {
		return hourMeter;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHourMeter(TimeSpan newHourMeter) {
		TimeSpan oldHourMeter = hourMeter;
		hourMeter = newHourMeter;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.GENERATOR_SET__HOUR_METER, oldHourMeter, hourMeter));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public FuelKind getFuel() {
		return fuel;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFuel(FuelKind newFuel) {
		FuelKind oldFuel = fuel;
		fuel = newFuel == null ? FUEL_EDEFAULT : newFuel;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.GENERATOR_SET__FUEL, oldFuel, fuel));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public FuelSystem getFuelSystem() {
		return fuelSystem;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFuelSystem(FuelSystem newFuelSystem) {
		FuelSystem oldFuelSystem = fuelSystem;
		fuelSystem = newFuelSystem == null ? FUEL_SYSTEM_EDEFAULT : newFuelSystem;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.GENERATOR_SET__FUEL_SYSTEM, oldFuelSystem, fuelSystem));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Aspiration getAspiration() {
		return aspiration;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAspiration(Aspiration newAspiration) {
		Aspiration oldAspiration = aspiration;
		aspiration = newAspiration == null ? ASPIRATION_EDEFAULT : newAspiration;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.GENERATOR_SET__ASPIRATION, oldAspiration, aspiration));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Cooling getCooling() {
		return cooling;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCooling(Cooling newCooling) {
		Cooling oldCooling = cooling;
		cooling = newCooling == null ? COOLING_EDEFAULT : newCooling;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.GENERATOR_SET__COOLING, oldCooling, cooling));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public DutyRating getDutyRating() {
		return dutyRating;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDutyRating(DutyRating newDutyRating) {
		DutyRating oldDutyRating = dutyRating;
		dutyRating = newDutyRating == null ? DUTY_RATING_EDEFAULT : newDutyRating;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.GENERATOR_SET__DUTY_RATING, oldDutyRating, dutyRating));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Power getRatedPower() {
		return ratedPower;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRatedPower(Power newRatedPower) {
		Power oldRatedPower = ratedPower;
		ratedPower = newRatedPower;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.GENERATOR_SET__RATED_POWER, oldRatedPower, ratedPower));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ApparentPower getRatedApparentPower() {
		return ratedApparentPower;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRatedApparentPower(ApparentPower newRatedApparentPower) {
		ApparentPower oldRatedApparentPower = ratedApparentPower;
		ratedApparentPower = newRatedApparentPower;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.GENERATOR_SET__RATED_APPARENT_POWER, oldRatedApparentPower, ratedApparentPower));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Ratio getRatedPowerFactor() {
		return ratedPowerFactor;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRatedPowerFactor(Ratio newRatedPowerFactor) {
		Ratio oldRatedPowerFactor = ratedPowerFactor;
		ratedPowerFactor = newRatedPowerFactor;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.GENERATOR_SET__RATED_POWER_FACTOR, oldRatedPowerFactor, ratedPowerFactor));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Voltage getRatedVoltage() {
		return ratedVoltage;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRatedVoltage(Voltage newRatedVoltage) {
		Voltage oldRatedVoltage = ratedVoltage;
		ratedVoltage = newRatedVoltage;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.GENERATOR_SET__RATED_VOLTAGE, oldRatedVoltage, ratedVoltage));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Frequency getRatedFrequency() {
		return ratedFrequency;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRatedFrequency(Frequency newRatedFrequency) {
		Frequency oldRatedFrequency = ratedFrequency;
		ratedFrequency = newRatedFrequency;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.GENERATOR_SET__RATED_FREQUENCY, oldRatedFrequency, ratedFrequency));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PhaseSystem getPhases() {
		return phases;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPhases(PhaseSystem newPhases) {
		PhaseSystem oldPhases = phases;
		phases = newPhases == null ? PHASES_EDEFAULT : newPhases;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.GENERATOR_SET__PHASES, oldPhases, phases));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public RotationalSpeed getRatedSpeed() {
		return ratedSpeed;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRatedSpeed(RotationalSpeed newRatedSpeed) {
		RotationalSpeed oldRatedSpeed = ratedSpeed;
		ratedSpeed = newRatedSpeed;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.GENERATOR_SET__RATED_SPEED, oldRatedSpeed, ratedSpeed));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getPoles() {
		return poles;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPoles(Integer newPoles) {
		Integer oldPoles = poles;
		poles = newPoles;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.GENERATOR_SET__POLES, oldPoles, poles));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public RotationalSpeed getCrankingSpeed() {
		return crankingSpeed;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCrankingSpeed(RotationalSpeed newCrankingSpeed) {
		RotationalSpeed oldCrankingSpeed = crankingSpeed;
		crankingSpeed = newCrankingSpeed;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.GENERATOR_SET__CRANKING_SPEED, oldCrankingSpeed, crankingSpeed));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Power getShaftPower() {
		return shaftPower;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setShaftPower(Power newShaftPower) {
		Power oldShaftPower = shaftPower;
		shaftPower = newShaftPower;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.GENERATOR_SET__SHAFT_POWER, oldShaftPower, shaftPower));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Ratio getAlternatorEfficiency() {
		return alternatorEfficiency;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAlternatorEfficiency(Ratio newAlternatorEfficiency) {
		Ratio oldAlternatorEfficiency = alternatorEfficiency;
		alternatorEfficiency = newAlternatorEfficiency;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.GENERATOR_SET__ALTERNATOR_EFFICIENCY, oldAlternatorEfficiency, alternatorEfficiency));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public VolumeFlow getFuelConsumptionFullLoad() {
		return fuelConsumptionFullLoad;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFuelConsumptionFullLoad(VolumeFlow newFuelConsumptionFullLoad) {
		VolumeFlow oldFuelConsumptionFullLoad = fuelConsumptionFullLoad;
		fuelConsumptionFullLoad = newFuelConsumptionFullLoad;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.GENERATOR_SET__FUEL_CONSUMPTION_FULL_LOAD, oldFuelConsumptionFullLoad, fuelConsumptionFullLoad));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SpecificConsumption getSpecificFuelConsumption() {
		return specificFuelConsumption;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSpecificFuelConsumption(SpecificConsumption newSpecificFuelConsumption) {
		SpecificConsumption oldSpecificFuelConsumption = specificFuelConsumption;
		specificFuelConsumption = newSpecificFuelConsumption;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.GENERATOR_SET__SPECIFIC_FUEL_CONSUMPTION, oldSpecificFuelConsumption, specificFuelConsumption));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Ratio getAirFuelRatio() {
		return airFuelRatio;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAirFuelRatio(Ratio newAirFuelRatio) {
		Ratio oldAirFuelRatio = airFuelRatio;
		airFuelRatio = newAirFuelRatio;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.GENERATOR_SET__AIR_FUEL_RATIO, oldAirFuelRatio, airFuelRatio));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Temperature getExhaustGasTemperature() {
		return exhaustGasTemperature;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setExhaustGasTemperature(Temperature newExhaustGasTemperature) {
		Temperature oldExhaustGasTemperature = exhaustGasTemperature;
		exhaustGasTemperature = newExhaustGasTemperature;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.GENERATOR_SET__EXHAUST_GAS_TEMPERATURE, oldExhaustGasTemperature, exhaustGasTemperature));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public MassFlow getExhaustMassFlow() {
		return exhaustMassFlow;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setExhaustMassFlow(MassFlow newExhaustMassFlow) {
		MassFlow oldExhaustMassFlow = exhaustMassFlow;
		exhaustMassFlow = newExhaustMassFlow;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.GENERATOR_SET__EXHAUST_MASS_FLOW, oldExhaustMassFlow, exhaustMassFlow));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Power getHeatToCoolant() {
		return heatToCoolant;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHeatToCoolant(Power newHeatToCoolant) {
		Power oldHeatToCoolant = heatToCoolant;
		heatToCoolant = newHeatToCoolant;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.GENERATOR_SET__HEAT_TO_COOLANT, oldHeatToCoolant, heatToCoolant));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Power getHeatToCompartment() {
		return heatToCompartment;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHeatToCompartment(Power newHeatToCompartment) {
		Power oldHeatToCompartment = heatToCompartment;
		heatToCompartment = newHeatToCompartment;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.GENERATOR_SET__HEAT_TO_COMPARTMENT, oldHeatToCompartment, heatToCompartment));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public VolumeFlow getCombustionAirFlow() {
		return combustionAirFlow;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCombustionAirFlow(VolumeFlow newCombustionAirFlow) {
		VolumeFlow oldCombustionAirFlow = combustionAirFlow;
		combustionAirFlow = newCombustionAirFlow;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.GENERATOR_SET__COMBUSTION_AIR_FLOW, oldCombustionAirFlow, combustionAirFlow));
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
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.GENERATOR_SET__RAW_WATER_FLOW, oldRawWaterFlow, rawWaterFlow));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Voltage getSystemVoltage() {
		return systemVoltage;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSystemVoltage(Voltage newSystemVoltage) {
		Voltage oldSystemVoltage = systemVoltage;
		systemVoltage = newSystemVoltage;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.GENERATOR_SET__SYSTEM_VOLTAGE, oldSystemVoltage, systemVoltage));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Current getCrankingCurrent() {
		return crankingCurrent;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCrankingCurrent(Current newCrankingCurrent) {
		Current oldCrankingCurrent = crankingCurrent;
		crankingCurrent = newCrankingCurrent;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.GENERATOR_SET__CRANKING_CURRENT, oldCrankingCurrent, crankingCurrent));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Voltage getStarterVoltage() {
		return starterVoltage;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStarterVoltage(Voltage newStarterVoltage) {
		Voltage oldStarterVoltage = starterVoltage;
		starterVoltage = newStarterVoltage;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.GENERATOR_SET__STARTER_VOLTAGE, oldStarterVoltage, starterVoltage));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getInSoundShield() {
		return inSoundShield;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setInSoundShield(Answer newInSoundShield) {
		Answer oldInSoundShield = inSoundShield;
		inSoundShield = newInSoundShield == null ? IN_SOUND_SHIELD_EDEFAULT : newInSoundShield;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.GENERATOR_SET__IN_SOUND_SHIELD, oldInSoundShield, inSoundShield));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getOverloadDeclared() {
		return overloadDeclared;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOverloadDeclared(Answer newOverloadDeclared) {
		Answer oldOverloadDeclared = overloadDeclared;
		overloadDeclared = newOverloadDeclared == null ? OVERLOAD_DECLARED_EDEFAULT : newOverloadDeclared;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.GENERATOR_SET__OVERLOAD_DECLARED, oldOverloadDeclared, overloadDeclared));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getEmissionLabelMarine() {
		return emissionLabelMarine;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEmissionLabelMarine(Answer newEmissionLabelMarine) {
		Answer oldEmissionLabelMarine = emissionLabelMarine;
		emissionLabelMarine = newEmissionLabelMarine == null ? EMISSION_LABEL_MARINE_EDEFAULT : newEmissionLabelMarine;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.GENERATOR_SET__EMISSION_LABEL_MARINE, oldEmissionLabelMarine, emissionLabelMarine));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PerformanceClass getPerformanceClass() {
		return performanceClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPerformanceClass(PerformanceClass newPerformanceClass) {
		PerformanceClass oldPerformanceClass = performanceClass;
		performanceClass = newPerformanceClass == null ? PERFORMANCE_CLASS_EDEFAULT : newPerformanceClass;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.GENERATOR_SET__PERFORMANCE_CLASS, oldPerformanceClass, performanceClass));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Temperature getDesignAmbient() {
		return designAmbient;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDesignAmbient(Temperature newDesignAmbient) {
		Temperature oldDesignAmbient = designAmbient;
		designAmbient = newDesignAmbient;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.GENERATOR_SET__DESIGN_AMBIENT, oldDesignAmbient, designAmbient));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Ratio getSubtransientReactance() {
		return subtransientReactance;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSubtransientReactance(Ratio newSubtransientReactance) {
		Ratio oldSubtransientReactance = subtransientReactance;
		subtransientReactance = newSubtransientReactance;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.GENERATOR_SET__SUBTRANSIENT_REACTANCE, oldSubtransientReactance, subtransientReactance));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Ratio getTransientReactance() {
		return transientReactance;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTransientReactance(Ratio newTransientReactance) {
		Ratio oldTransientReactance = transientReactance;
		transientReactance = newTransientReactance;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.GENERATOR_SET__TRANSIENT_REACTANCE, oldTransientReactance, transientReactance));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Ratio getSustainedShortCircuitMultiple() {
		return sustainedShortCircuitMultiple;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSustainedShortCircuitMultiple(Ratio newSustainedShortCircuitMultiple) {
		Ratio oldSustainedShortCircuitMultiple = sustainedShortCircuitMultiple;
		sustainedShortCircuitMultiple = newSustainedShortCircuitMultiple;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.GENERATOR_SET__SUSTAINED_SHORT_CIRCUIT_MULTIPLE, oldSustainedShortCircuitMultiple, sustainedShortCircuitMultiple));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TimeSpan getAnnualHours() {
		return annualHours;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAnnualHours(TimeSpan newAnnualHours) {
		TimeSpan oldAnnualHours = annualHours;
		annualHours = newAnnualHours;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.GENERATOR_SET__ANNUAL_HOURS, oldAnnualHours, annualHours));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getPlateShowsDeratedPower() {
		return plateShowsDeratedPower;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPlateShowsDeratedPower(Answer newPlateShowsDeratedPower) {
		Answer oldPlateShowsDeratedPower = plateShowsDeratedPower;
		plateShowsDeratedPower = newPlateShowsDeratedPower == null ? PLATE_SHOWS_DERATED_POWER_EDEFAULT : newPlateShowsDeratedPower;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.GENERATOR_SET__PLATE_SHOWS_DERATED_POWER, oldPlateShowsDeratedPower, plateShowsDeratedPower));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public MakerLimits getMakerLimits() {
		return makerLimits;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetMakerLimits(MakerLimits newMakerLimits, NotificationChain msgs) {
		MakerLimits oldMakerLimits = makerLimits;
		makerLimits = newMakerLimits;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, GarboardPackage.GENERATOR_SET__MAKER_LIMITS, oldMakerLimits, newMakerLimits);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMakerLimits(MakerLimits newMakerLimits) {
		if (newMakerLimits != makerLimits) {
			NotificationChain msgs = null;
			if (makerLimits != null)
				msgs = ((InternalEObject)makerLimits).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.GENERATOR_SET__MAKER_LIMITS, null, msgs);
			if (newMakerLimits != null)
				msgs = ((InternalEObject)newMakerLimits).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.GENERATOR_SET__MAKER_LIMITS, null, msgs);
			msgs = basicSetMakerLimits(newMakerLimits, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.GENERATOR_SET__MAKER_LIMITS, newMakerLimits, newMakerLimits));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case GarboardPackage.GENERATOR_SET__MAKER_LIMITS:
				return basicSetMakerLimits(null, msgs);
		}
		return super.eInverseRemove(otherEnd, featureID, msgs);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case GarboardPackage.GENERATOR_SET__MAKER:
				return getMaker();
			case GarboardPackage.GENERATOR_SET__TYPE:
				return getType();
			case GarboardPackage.GENERATOR_SET__SERIAL_NUMBER:
				return getSerialNumber();
			case GarboardPackage.GENERATOR_SET__ENGINE_SERIAL_NUMBER:
				return getEngineSerialNumber();
			case GarboardPackage.GENERATOR_SET__ALTERNATOR_SERIAL_NUMBER:
				return getAlternatorSerialNumber();
			case GarboardPackage.GENERATOR_SET__SOLD_ON:
				return getSoldOn();
			case GarboardPackage.GENERATOR_SET__INSTALLED_ON:
				return getInstalledOn();
			case GarboardPackage.GENERATOR_SET__HOUR_METER:
				return getHourMeter();
			case GarboardPackage.GENERATOR_SET__FUEL:
				return getFuel();
			case GarboardPackage.GENERATOR_SET__FUEL_SYSTEM:
				return getFuelSystem();
			case GarboardPackage.GENERATOR_SET__ASPIRATION:
				return getAspiration();
			case GarboardPackage.GENERATOR_SET__COOLING:
				return getCooling();
			case GarboardPackage.GENERATOR_SET__DUTY_RATING:
				return getDutyRating();
			case GarboardPackage.GENERATOR_SET__RATED_POWER:
				return getRatedPower();
			case GarboardPackage.GENERATOR_SET__RATED_APPARENT_POWER:
				return getRatedApparentPower();
			case GarboardPackage.GENERATOR_SET__RATED_POWER_FACTOR:
				return getRatedPowerFactor();
			case GarboardPackage.GENERATOR_SET__RATED_VOLTAGE:
				return getRatedVoltage();
			case GarboardPackage.GENERATOR_SET__RATED_FREQUENCY:
				return getRatedFrequency();
			case GarboardPackage.GENERATOR_SET__PHASES:
				return getPhases();
			case GarboardPackage.GENERATOR_SET__RATED_SPEED:
				return getRatedSpeed();
			case GarboardPackage.GENERATOR_SET__POLES:
				return getPoles();
			case GarboardPackage.GENERATOR_SET__CRANKING_SPEED:
				return getCrankingSpeed();
			case GarboardPackage.GENERATOR_SET__SHAFT_POWER:
				return getShaftPower();
			case GarboardPackage.GENERATOR_SET__ALTERNATOR_EFFICIENCY:
				return getAlternatorEfficiency();
			case GarboardPackage.GENERATOR_SET__FUEL_CONSUMPTION_FULL_LOAD:
				return getFuelConsumptionFullLoad();
			case GarboardPackage.GENERATOR_SET__SPECIFIC_FUEL_CONSUMPTION:
				return getSpecificFuelConsumption();
			case GarboardPackage.GENERATOR_SET__AIR_FUEL_RATIO:
				return getAirFuelRatio();
			case GarboardPackage.GENERATOR_SET__EXHAUST_GAS_TEMPERATURE:
				return getExhaustGasTemperature();
			case GarboardPackage.GENERATOR_SET__EXHAUST_MASS_FLOW:
				return getExhaustMassFlow();
			case GarboardPackage.GENERATOR_SET__HEAT_TO_COOLANT:
				return getHeatToCoolant();
			case GarboardPackage.GENERATOR_SET__HEAT_TO_COMPARTMENT:
				return getHeatToCompartment();
			case GarboardPackage.GENERATOR_SET__COMBUSTION_AIR_FLOW:
				return getCombustionAirFlow();
			case GarboardPackage.GENERATOR_SET__RAW_WATER_FLOW:
				return getRawWaterFlow();
			case GarboardPackage.GENERATOR_SET__SYSTEM_VOLTAGE:
				return getSystemVoltage();
			case GarboardPackage.GENERATOR_SET__CRANKING_CURRENT:
				return getCrankingCurrent();
			case GarboardPackage.GENERATOR_SET__STARTER_VOLTAGE:
				return getStarterVoltage();
			case GarboardPackage.GENERATOR_SET__IN_SOUND_SHIELD:
				return getInSoundShield();
			case GarboardPackage.GENERATOR_SET__OVERLOAD_DECLARED:
				return getOverloadDeclared();
			case GarboardPackage.GENERATOR_SET__EMISSION_LABEL_MARINE:
				return getEmissionLabelMarine();
			case GarboardPackage.GENERATOR_SET__PERFORMANCE_CLASS:
				return getPerformanceClass();
			case GarboardPackage.GENERATOR_SET__DESIGN_AMBIENT:
				return getDesignAmbient();
			case GarboardPackage.GENERATOR_SET__SUBTRANSIENT_REACTANCE:
				return getSubtransientReactance();
			case GarboardPackage.GENERATOR_SET__TRANSIENT_REACTANCE:
				return getTransientReactance();
			case GarboardPackage.GENERATOR_SET__SUSTAINED_SHORT_CIRCUIT_MULTIPLE:
				return getSustainedShortCircuitMultiple();
			case GarboardPackage.GENERATOR_SET__ANNUAL_HOURS:
				return getAnnualHours();
			case GarboardPackage.GENERATOR_SET__PLATE_SHOWS_DERATED_POWER:
				return getPlateShowsDeratedPower();
			case GarboardPackage.GENERATOR_SET__MAKER_LIMITS:
				return getMakerLimits();
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
			case GarboardPackage.GENERATOR_SET__MAKER:
				setMaker((String)newValue);
				return;
			case GarboardPackage.GENERATOR_SET__TYPE:
				setType((String)newValue);
				return;
			case GarboardPackage.GENERATOR_SET__SERIAL_NUMBER:
				setSerialNumber((String)newValue);
				return;
			case GarboardPackage.GENERATOR_SET__ENGINE_SERIAL_NUMBER:
				setEngineSerialNumber((String)newValue);
				return;
			case GarboardPackage.GENERATOR_SET__ALTERNATOR_SERIAL_NUMBER:
				setAlternatorSerialNumber((String)newValue);
				return;
			case GarboardPackage.GENERATOR_SET__SOLD_ON:
				setSoldOn((LocalDate)newValue);
				return;
			case GarboardPackage.GENERATOR_SET__INSTALLED_ON:
				setInstalledOn((LocalDate)newValue);
				return;
			case GarboardPackage.GENERATOR_SET__HOUR_METER:
				setHourMeter((TimeSpan)newValue);
				return;
			case GarboardPackage.GENERATOR_SET__FUEL:
				setFuel((FuelKind)newValue);
				return;
			case GarboardPackage.GENERATOR_SET__FUEL_SYSTEM:
				setFuelSystem((FuelSystem)newValue);
				return;
			case GarboardPackage.GENERATOR_SET__ASPIRATION:
				setAspiration((Aspiration)newValue);
				return;
			case GarboardPackage.GENERATOR_SET__COOLING:
				setCooling((Cooling)newValue);
				return;
			case GarboardPackage.GENERATOR_SET__DUTY_RATING:
				setDutyRating((DutyRating)newValue);
				return;
			case GarboardPackage.GENERATOR_SET__RATED_POWER:
				setRatedPower((Power)newValue);
				return;
			case GarboardPackage.GENERATOR_SET__RATED_APPARENT_POWER:
				setRatedApparentPower((ApparentPower)newValue);
				return;
			case GarboardPackage.GENERATOR_SET__RATED_POWER_FACTOR:
				setRatedPowerFactor((Ratio)newValue);
				return;
			case GarboardPackage.GENERATOR_SET__RATED_VOLTAGE:
				setRatedVoltage((Voltage)newValue);
				return;
			case GarboardPackage.GENERATOR_SET__RATED_FREQUENCY:
				setRatedFrequency((Frequency)newValue);
				return;
			case GarboardPackage.GENERATOR_SET__PHASES:
				setPhases((PhaseSystem)newValue);
				return;
			case GarboardPackage.GENERATOR_SET__RATED_SPEED:
				setRatedSpeed((RotationalSpeed)newValue);
				return;
			case GarboardPackage.GENERATOR_SET__POLES:
				setPoles((Integer)newValue);
				return;
			case GarboardPackage.GENERATOR_SET__CRANKING_SPEED:
				setCrankingSpeed((RotationalSpeed)newValue);
				return;
			case GarboardPackage.GENERATOR_SET__SHAFT_POWER:
				setShaftPower((Power)newValue);
				return;
			case GarboardPackage.GENERATOR_SET__ALTERNATOR_EFFICIENCY:
				setAlternatorEfficiency((Ratio)newValue);
				return;
			case GarboardPackage.GENERATOR_SET__FUEL_CONSUMPTION_FULL_LOAD:
				setFuelConsumptionFullLoad((VolumeFlow)newValue);
				return;
			case GarboardPackage.GENERATOR_SET__SPECIFIC_FUEL_CONSUMPTION:
				setSpecificFuelConsumption((SpecificConsumption)newValue);
				return;
			case GarboardPackage.GENERATOR_SET__AIR_FUEL_RATIO:
				setAirFuelRatio((Ratio)newValue);
				return;
			case GarboardPackage.GENERATOR_SET__EXHAUST_GAS_TEMPERATURE:
				setExhaustGasTemperature((Temperature)newValue);
				return;
			case GarboardPackage.GENERATOR_SET__EXHAUST_MASS_FLOW:
				setExhaustMassFlow((MassFlow)newValue);
				return;
			case GarboardPackage.GENERATOR_SET__HEAT_TO_COOLANT:
				setHeatToCoolant((Power)newValue);
				return;
			case GarboardPackage.GENERATOR_SET__HEAT_TO_COMPARTMENT:
				setHeatToCompartment((Power)newValue);
				return;
			case GarboardPackage.GENERATOR_SET__COMBUSTION_AIR_FLOW:
				setCombustionAirFlow((VolumeFlow)newValue);
				return;
			case GarboardPackage.GENERATOR_SET__RAW_WATER_FLOW:
				setRawWaterFlow((VolumeFlow)newValue);
				return;
			case GarboardPackage.GENERATOR_SET__SYSTEM_VOLTAGE:
				setSystemVoltage((Voltage)newValue);
				return;
			case GarboardPackage.GENERATOR_SET__CRANKING_CURRENT:
				setCrankingCurrent((Current)newValue);
				return;
			case GarboardPackage.GENERATOR_SET__STARTER_VOLTAGE:
				setStarterVoltage((Voltage)newValue);
				return;
			case GarboardPackage.GENERATOR_SET__IN_SOUND_SHIELD:
				setInSoundShield((Answer)newValue);
				return;
			case GarboardPackage.GENERATOR_SET__OVERLOAD_DECLARED:
				setOverloadDeclared((Answer)newValue);
				return;
			case GarboardPackage.GENERATOR_SET__EMISSION_LABEL_MARINE:
				setEmissionLabelMarine((Answer)newValue);
				return;
			case GarboardPackage.GENERATOR_SET__PERFORMANCE_CLASS:
				setPerformanceClass((PerformanceClass)newValue);
				return;
			case GarboardPackage.GENERATOR_SET__DESIGN_AMBIENT:
				setDesignAmbient((Temperature)newValue);
				return;
			case GarboardPackage.GENERATOR_SET__SUBTRANSIENT_REACTANCE:
				setSubtransientReactance((Ratio)newValue);
				return;
			case GarboardPackage.GENERATOR_SET__TRANSIENT_REACTANCE:
				setTransientReactance((Ratio)newValue);
				return;
			case GarboardPackage.GENERATOR_SET__SUSTAINED_SHORT_CIRCUIT_MULTIPLE:
				setSustainedShortCircuitMultiple((Ratio)newValue);
				return;
			case GarboardPackage.GENERATOR_SET__ANNUAL_HOURS:
				setAnnualHours((TimeSpan)newValue);
				return;
			case GarboardPackage.GENERATOR_SET__PLATE_SHOWS_DERATED_POWER:
				setPlateShowsDeratedPower((Answer)newValue);
				return;
			case GarboardPackage.GENERATOR_SET__MAKER_LIMITS:
				setMakerLimits((MakerLimits)newValue);
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
			case GarboardPackage.GENERATOR_SET__MAKER:
				setMaker(MAKER_EDEFAULT);
				return;
			case GarboardPackage.GENERATOR_SET__TYPE:
				setType(TYPE_EDEFAULT);
				return;
			case GarboardPackage.GENERATOR_SET__SERIAL_NUMBER:
				setSerialNumber(SERIAL_NUMBER_EDEFAULT);
				return;
			case GarboardPackage.GENERATOR_SET__ENGINE_SERIAL_NUMBER:
				setEngineSerialNumber(ENGINE_SERIAL_NUMBER_EDEFAULT);
				return;
			case GarboardPackage.GENERATOR_SET__ALTERNATOR_SERIAL_NUMBER:
				setAlternatorSerialNumber(ALTERNATOR_SERIAL_NUMBER_EDEFAULT);
				return;
			case GarboardPackage.GENERATOR_SET__SOLD_ON:
				setSoldOn(SOLD_ON_EDEFAULT);
				return;
			case GarboardPackage.GENERATOR_SET__INSTALLED_ON:
				setInstalledOn(INSTALLED_ON_EDEFAULT);
				return;
			case GarboardPackage.GENERATOR_SET__HOUR_METER:
				setHourMeter(HOUR_METER_EDEFAULT);
				return;
			case GarboardPackage.GENERATOR_SET__FUEL:
				setFuel(FUEL_EDEFAULT);
				return;
			case GarboardPackage.GENERATOR_SET__FUEL_SYSTEM:
				setFuelSystem(FUEL_SYSTEM_EDEFAULT);
				return;
			case GarboardPackage.GENERATOR_SET__ASPIRATION:
				setAspiration(ASPIRATION_EDEFAULT);
				return;
			case GarboardPackage.GENERATOR_SET__COOLING:
				setCooling(COOLING_EDEFAULT);
				return;
			case GarboardPackage.GENERATOR_SET__DUTY_RATING:
				setDutyRating(DUTY_RATING_EDEFAULT);
				return;
			case GarboardPackage.GENERATOR_SET__RATED_POWER:
				setRatedPower(RATED_POWER_EDEFAULT);
				return;
			case GarboardPackage.GENERATOR_SET__RATED_APPARENT_POWER:
				setRatedApparentPower(RATED_APPARENT_POWER_EDEFAULT);
				return;
			case GarboardPackage.GENERATOR_SET__RATED_POWER_FACTOR:
				setRatedPowerFactor(RATED_POWER_FACTOR_EDEFAULT);
				return;
			case GarboardPackage.GENERATOR_SET__RATED_VOLTAGE:
				setRatedVoltage(RATED_VOLTAGE_EDEFAULT);
				return;
			case GarboardPackage.GENERATOR_SET__RATED_FREQUENCY:
				setRatedFrequency(RATED_FREQUENCY_EDEFAULT);
				return;
			case GarboardPackage.GENERATOR_SET__PHASES:
				setPhases(PHASES_EDEFAULT);
				return;
			case GarboardPackage.GENERATOR_SET__RATED_SPEED:
				setRatedSpeed(RATED_SPEED_EDEFAULT);
				return;
			case GarboardPackage.GENERATOR_SET__POLES:
				setPoles(POLES_EDEFAULT);
				return;
			case GarboardPackage.GENERATOR_SET__CRANKING_SPEED:
				setCrankingSpeed(CRANKING_SPEED_EDEFAULT);
				return;
			case GarboardPackage.GENERATOR_SET__SHAFT_POWER:
				setShaftPower(SHAFT_POWER_EDEFAULT);
				return;
			case GarboardPackage.GENERATOR_SET__ALTERNATOR_EFFICIENCY:
				setAlternatorEfficiency(ALTERNATOR_EFFICIENCY_EDEFAULT);
				return;
			case GarboardPackage.GENERATOR_SET__FUEL_CONSUMPTION_FULL_LOAD:
				setFuelConsumptionFullLoad(FUEL_CONSUMPTION_FULL_LOAD_EDEFAULT);
				return;
			case GarboardPackage.GENERATOR_SET__SPECIFIC_FUEL_CONSUMPTION:
				setSpecificFuelConsumption(SPECIFIC_FUEL_CONSUMPTION_EDEFAULT);
				return;
			case GarboardPackage.GENERATOR_SET__AIR_FUEL_RATIO:
				setAirFuelRatio(AIR_FUEL_RATIO_EDEFAULT);
				return;
			case GarboardPackage.GENERATOR_SET__EXHAUST_GAS_TEMPERATURE:
				setExhaustGasTemperature(EXHAUST_GAS_TEMPERATURE_EDEFAULT);
				return;
			case GarboardPackage.GENERATOR_SET__EXHAUST_MASS_FLOW:
				setExhaustMassFlow(EXHAUST_MASS_FLOW_EDEFAULT);
				return;
			case GarboardPackage.GENERATOR_SET__HEAT_TO_COOLANT:
				setHeatToCoolant(HEAT_TO_COOLANT_EDEFAULT);
				return;
			case GarboardPackage.GENERATOR_SET__HEAT_TO_COMPARTMENT:
				setHeatToCompartment(HEAT_TO_COMPARTMENT_EDEFAULT);
				return;
			case GarboardPackage.GENERATOR_SET__COMBUSTION_AIR_FLOW:
				setCombustionAirFlow(COMBUSTION_AIR_FLOW_EDEFAULT);
				return;
			case GarboardPackage.GENERATOR_SET__RAW_WATER_FLOW:
				setRawWaterFlow(RAW_WATER_FLOW_EDEFAULT);
				return;
			case GarboardPackage.GENERATOR_SET__SYSTEM_VOLTAGE:
				setSystemVoltage(SYSTEM_VOLTAGE_EDEFAULT);
				return;
			case GarboardPackage.GENERATOR_SET__CRANKING_CURRENT:
				setCrankingCurrent(CRANKING_CURRENT_EDEFAULT);
				return;
			case GarboardPackage.GENERATOR_SET__STARTER_VOLTAGE:
				setStarterVoltage(STARTER_VOLTAGE_EDEFAULT);
				return;
			case GarboardPackage.GENERATOR_SET__IN_SOUND_SHIELD:
				setInSoundShield(IN_SOUND_SHIELD_EDEFAULT);
				return;
			case GarboardPackage.GENERATOR_SET__OVERLOAD_DECLARED:
				setOverloadDeclared(OVERLOAD_DECLARED_EDEFAULT);
				return;
			case GarboardPackage.GENERATOR_SET__EMISSION_LABEL_MARINE:
				setEmissionLabelMarine(EMISSION_LABEL_MARINE_EDEFAULT);
				return;
			case GarboardPackage.GENERATOR_SET__PERFORMANCE_CLASS:
				setPerformanceClass(PERFORMANCE_CLASS_EDEFAULT);
				return;
			case GarboardPackage.GENERATOR_SET__DESIGN_AMBIENT:
				setDesignAmbient(DESIGN_AMBIENT_EDEFAULT);
				return;
			case GarboardPackage.GENERATOR_SET__SUBTRANSIENT_REACTANCE:
				setSubtransientReactance(SUBTRANSIENT_REACTANCE_EDEFAULT);
				return;
			case GarboardPackage.GENERATOR_SET__TRANSIENT_REACTANCE:
				setTransientReactance(TRANSIENT_REACTANCE_EDEFAULT);
				return;
			case GarboardPackage.GENERATOR_SET__SUSTAINED_SHORT_CIRCUIT_MULTIPLE:
				setSustainedShortCircuitMultiple(SUSTAINED_SHORT_CIRCUIT_MULTIPLE_EDEFAULT);
				return;
			case GarboardPackage.GENERATOR_SET__ANNUAL_HOURS:
				setAnnualHours(ANNUAL_HOURS_EDEFAULT);
				return;
			case GarboardPackage.GENERATOR_SET__PLATE_SHOWS_DERATED_POWER:
				setPlateShowsDeratedPower(PLATE_SHOWS_DERATED_POWER_EDEFAULT);
				return;
			case GarboardPackage.GENERATOR_SET__MAKER_LIMITS:
				setMakerLimits((MakerLimits)null);
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
			case GarboardPackage.GENERATOR_SET__MAKER:
				return MAKER_EDEFAULT == null ? maker != null : !MAKER_EDEFAULT.equals(maker);
			case GarboardPackage.GENERATOR_SET__TYPE:
				return TYPE_EDEFAULT == null ? type != null : !TYPE_EDEFAULT.equals(type);
			case GarboardPackage.GENERATOR_SET__SERIAL_NUMBER:
				return SERIAL_NUMBER_EDEFAULT == null ? serialNumber != null : !SERIAL_NUMBER_EDEFAULT.equals(serialNumber);
			case GarboardPackage.GENERATOR_SET__ENGINE_SERIAL_NUMBER:
				return ENGINE_SERIAL_NUMBER_EDEFAULT == null ? engineSerialNumber != null : !ENGINE_SERIAL_NUMBER_EDEFAULT.equals(engineSerialNumber);
			case GarboardPackage.GENERATOR_SET__ALTERNATOR_SERIAL_NUMBER:
				return ALTERNATOR_SERIAL_NUMBER_EDEFAULT == null ? alternatorSerialNumber != null : !ALTERNATOR_SERIAL_NUMBER_EDEFAULT.equals(alternatorSerialNumber);
			case GarboardPackage.GENERATOR_SET__SOLD_ON:
				return SOLD_ON_EDEFAULT == null ? soldOn != null : !SOLD_ON_EDEFAULT.equals(soldOn);
			case GarboardPackage.GENERATOR_SET__INSTALLED_ON:
				return INSTALLED_ON_EDEFAULT == null ? installedOn != null : !INSTALLED_ON_EDEFAULT.equals(installedOn);
			case GarboardPackage.GENERATOR_SET__HOUR_METER:
				return HOUR_METER_EDEFAULT == null ? hourMeter != null : !HOUR_METER_EDEFAULT.equals(hourMeter);
			case GarboardPackage.GENERATOR_SET__FUEL:
				return fuel != FUEL_EDEFAULT;
			case GarboardPackage.GENERATOR_SET__FUEL_SYSTEM:
				return fuelSystem != FUEL_SYSTEM_EDEFAULT;
			case GarboardPackage.GENERATOR_SET__ASPIRATION:
				return aspiration != ASPIRATION_EDEFAULT;
			case GarboardPackage.GENERATOR_SET__COOLING:
				return cooling != COOLING_EDEFAULT;
			case GarboardPackage.GENERATOR_SET__DUTY_RATING:
				return dutyRating != DUTY_RATING_EDEFAULT;
			case GarboardPackage.GENERATOR_SET__RATED_POWER:
				return RATED_POWER_EDEFAULT == null ? ratedPower != null : !RATED_POWER_EDEFAULT.equals(ratedPower);
			case GarboardPackage.GENERATOR_SET__RATED_APPARENT_POWER:
				return RATED_APPARENT_POWER_EDEFAULT == null ? ratedApparentPower != null : !RATED_APPARENT_POWER_EDEFAULT.equals(ratedApparentPower);
			case GarboardPackage.GENERATOR_SET__RATED_POWER_FACTOR:
				return RATED_POWER_FACTOR_EDEFAULT == null ? ratedPowerFactor != null : !RATED_POWER_FACTOR_EDEFAULT.equals(ratedPowerFactor);
			case GarboardPackage.GENERATOR_SET__RATED_VOLTAGE:
				return RATED_VOLTAGE_EDEFAULT == null ? ratedVoltage != null : !RATED_VOLTAGE_EDEFAULT.equals(ratedVoltage);
			case GarboardPackage.GENERATOR_SET__RATED_FREQUENCY:
				return RATED_FREQUENCY_EDEFAULT == null ? ratedFrequency != null : !RATED_FREQUENCY_EDEFAULT.equals(ratedFrequency);
			case GarboardPackage.GENERATOR_SET__PHASES:
				return phases != PHASES_EDEFAULT;
			case GarboardPackage.GENERATOR_SET__RATED_SPEED:
				return RATED_SPEED_EDEFAULT == null ? ratedSpeed != null : !RATED_SPEED_EDEFAULT.equals(ratedSpeed);
			case GarboardPackage.GENERATOR_SET__POLES:
				return POLES_EDEFAULT == null ? poles != null : !POLES_EDEFAULT.equals(poles);
			case GarboardPackage.GENERATOR_SET__CRANKING_SPEED:
				return CRANKING_SPEED_EDEFAULT == null ? crankingSpeed != null : !CRANKING_SPEED_EDEFAULT.equals(crankingSpeed);
			case GarboardPackage.GENERATOR_SET__SHAFT_POWER:
				return SHAFT_POWER_EDEFAULT == null ? shaftPower != null : !SHAFT_POWER_EDEFAULT.equals(shaftPower);
			case GarboardPackage.GENERATOR_SET__ALTERNATOR_EFFICIENCY:
				return ALTERNATOR_EFFICIENCY_EDEFAULT == null ? alternatorEfficiency != null : !ALTERNATOR_EFFICIENCY_EDEFAULT.equals(alternatorEfficiency);
			case GarboardPackage.GENERATOR_SET__FUEL_CONSUMPTION_FULL_LOAD:
				return FUEL_CONSUMPTION_FULL_LOAD_EDEFAULT == null ? fuelConsumptionFullLoad != null : !FUEL_CONSUMPTION_FULL_LOAD_EDEFAULT.equals(fuelConsumptionFullLoad);
			case GarboardPackage.GENERATOR_SET__SPECIFIC_FUEL_CONSUMPTION:
				return SPECIFIC_FUEL_CONSUMPTION_EDEFAULT == null ? specificFuelConsumption != null : !SPECIFIC_FUEL_CONSUMPTION_EDEFAULT.equals(specificFuelConsumption);
			case GarboardPackage.GENERATOR_SET__AIR_FUEL_RATIO:
				return AIR_FUEL_RATIO_EDEFAULT == null ? airFuelRatio != null : !AIR_FUEL_RATIO_EDEFAULT.equals(airFuelRatio);
			case GarboardPackage.GENERATOR_SET__EXHAUST_GAS_TEMPERATURE:
				return EXHAUST_GAS_TEMPERATURE_EDEFAULT == null ? exhaustGasTemperature != null : !EXHAUST_GAS_TEMPERATURE_EDEFAULT.equals(exhaustGasTemperature);
			case GarboardPackage.GENERATOR_SET__EXHAUST_MASS_FLOW:
				return EXHAUST_MASS_FLOW_EDEFAULT == null ? exhaustMassFlow != null : !EXHAUST_MASS_FLOW_EDEFAULT.equals(exhaustMassFlow);
			case GarboardPackage.GENERATOR_SET__HEAT_TO_COOLANT:
				return HEAT_TO_COOLANT_EDEFAULT == null ? heatToCoolant != null : !HEAT_TO_COOLANT_EDEFAULT.equals(heatToCoolant);
			case GarboardPackage.GENERATOR_SET__HEAT_TO_COMPARTMENT:
				return HEAT_TO_COMPARTMENT_EDEFAULT == null ? heatToCompartment != null : !HEAT_TO_COMPARTMENT_EDEFAULT.equals(heatToCompartment);
			case GarboardPackage.GENERATOR_SET__COMBUSTION_AIR_FLOW:
				return COMBUSTION_AIR_FLOW_EDEFAULT == null ? combustionAirFlow != null : !COMBUSTION_AIR_FLOW_EDEFAULT.equals(combustionAirFlow);
			case GarboardPackage.GENERATOR_SET__RAW_WATER_FLOW:
				return RAW_WATER_FLOW_EDEFAULT == null ? rawWaterFlow != null : !RAW_WATER_FLOW_EDEFAULT.equals(rawWaterFlow);
			case GarboardPackage.GENERATOR_SET__SYSTEM_VOLTAGE:
				return SYSTEM_VOLTAGE_EDEFAULT == null ? systemVoltage != null : !SYSTEM_VOLTAGE_EDEFAULT.equals(systemVoltage);
			case GarboardPackage.GENERATOR_SET__CRANKING_CURRENT:
				return CRANKING_CURRENT_EDEFAULT == null ? crankingCurrent != null : !CRANKING_CURRENT_EDEFAULT.equals(crankingCurrent);
			case GarboardPackage.GENERATOR_SET__STARTER_VOLTAGE:
				return STARTER_VOLTAGE_EDEFAULT == null ? starterVoltage != null : !STARTER_VOLTAGE_EDEFAULT.equals(starterVoltage);
			case GarboardPackage.GENERATOR_SET__IN_SOUND_SHIELD:
				return inSoundShield != IN_SOUND_SHIELD_EDEFAULT;
			case GarboardPackage.GENERATOR_SET__OVERLOAD_DECLARED:
				return overloadDeclared != OVERLOAD_DECLARED_EDEFAULT;
			case GarboardPackage.GENERATOR_SET__EMISSION_LABEL_MARINE:
				return emissionLabelMarine != EMISSION_LABEL_MARINE_EDEFAULT;
			case GarboardPackage.GENERATOR_SET__PERFORMANCE_CLASS:
				return performanceClass != PERFORMANCE_CLASS_EDEFAULT;
			case GarboardPackage.GENERATOR_SET__DESIGN_AMBIENT:
				return DESIGN_AMBIENT_EDEFAULT == null ? designAmbient != null : !DESIGN_AMBIENT_EDEFAULT.equals(designAmbient);
			case GarboardPackage.GENERATOR_SET__SUBTRANSIENT_REACTANCE:
				return SUBTRANSIENT_REACTANCE_EDEFAULT == null ? subtransientReactance != null : !SUBTRANSIENT_REACTANCE_EDEFAULT.equals(subtransientReactance);
			case GarboardPackage.GENERATOR_SET__TRANSIENT_REACTANCE:
				return TRANSIENT_REACTANCE_EDEFAULT == null ? transientReactance != null : !TRANSIENT_REACTANCE_EDEFAULT.equals(transientReactance);
			case GarboardPackage.GENERATOR_SET__SUSTAINED_SHORT_CIRCUIT_MULTIPLE:
				return SUSTAINED_SHORT_CIRCUIT_MULTIPLE_EDEFAULT == null ? sustainedShortCircuitMultiple != null : !SUSTAINED_SHORT_CIRCUIT_MULTIPLE_EDEFAULT.equals(sustainedShortCircuitMultiple);
			case GarboardPackage.GENERATOR_SET__ANNUAL_HOURS:
				return ANNUAL_HOURS_EDEFAULT == null ? annualHours != null : !ANNUAL_HOURS_EDEFAULT.equals(annualHours);
			case GarboardPackage.GENERATOR_SET__PLATE_SHOWS_DERATED_POWER:
				return plateShowsDeratedPower != PLATE_SHOWS_DERATED_POWER_EDEFAULT;
			case GarboardPackage.GENERATOR_SET__MAKER_LIMITS:
				return makerLimits != null;
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
		result.append(" (maker: ");
		result.append(maker);
		result.append(", type: ");
		result.append(type);
		result.append(", serialNumber: ");
		result.append(serialNumber);
		result.append(", engineSerialNumber: ");
		result.append(engineSerialNumber);
		result.append(", alternatorSerialNumber: ");
		result.append(alternatorSerialNumber);
		result.append(", soldOn: ");
		result.append(soldOn);
		result.append(", installedOn: ");
		result.append(installedOn);
		result.append(", hourMeter: ");
		result.append(hourMeter);
		result.append(", fuel: ");
		result.append(fuel);
		result.append(", fuelSystem: ");
		result.append(fuelSystem);
		result.append(", aspiration: ");
		result.append(aspiration);
		result.append(", cooling: ");
		result.append(cooling);
		result.append(", dutyRating: ");
		result.append(dutyRating);
		result.append(", ratedPower: ");
		result.append(ratedPower);
		result.append(", ratedApparentPower: ");
		result.append(ratedApparentPower);
		result.append(", ratedPowerFactor: ");
		result.append(ratedPowerFactor);
		result.append(", ratedVoltage: ");
		result.append(ratedVoltage);
		result.append(", ratedFrequency: ");
		result.append(ratedFrequency);
		result.append(", phases: ");
		result.append(phases);
		result.append(", ratedSpeed: ");
		result.append(ratedSpeed);
		result.append(", poles: ");
		result.append(poles);
		result.append(", crankingSpeed: ");
		result.append(crankingSpeed);
		result.append(", shaftPower: ");
		result.append(shaftPower);
		result.append(", alternatorEfficiency: ");
		result.append(alternatorEfficiency);
		result.append(", fuelConsumptionFullLoad: ");
		result.append(fuelConsumptionFullLoad);
		result.append(", specificFuelConsumption: ");
		result.append(specificFuelConsumption);
		result.append(", airFuelRatio: ");
		result.append(airFuelRatio);
		result.append(", exhaustGasTemperature: ");
		result.append(exhaustGasTemperature);
		result.append(", exhaustMassFlow: ");
		result.append(exhaustMassFlow);
		result.append(", heatToCoolant: ");
		result.append(heatToCoolant);
		result.append(", heatToCompartment: ");
		result.append(heatToCompartment);
		result.append(", combustionAirFlow: ");
		result.append(combustionAirFlow);
		result.append(", rawWaterFlow: ");
		result.append(rawWaterFlow);
		result.append(", systemVoltage: ");
		result.append(systemVoltage);
		result.append(", crankingCurrent: ");
		result.append(crankingCurrent);
		result.append(", starterVoltage: ");
		result.append(starterVoltage);
		result.append(", inSoundShield: ");
		result.append(inSoundShield);
		result.append(", overloadDeclared: ");
		result.append(overloadDeclared);
		result.append(", emissionLabelMarine: ");
		result.append(emissionLabelMarine);
		result.append(", performanceClass: ");
		result.append(performanceClass);
		result.append(", designAmbient: ");
		result.append(designAmbient);
		result.append(", subtransientReactance: ");
		result.append(subtransientReactance);
		result.append(", transientReactance: ");
		result.append(transientReactance);
		result.append(", sustainedShortCircuitMultiple: ");
		result.append(sustainedShortCircuitMultiple);
		result.append(", annualHours: ");
		result.append(annualHours);
		result.append(", plateShowsDeratedPower: ");
		result.append(plateShowsDeratedPower);
		result.append(')');
		return result.toString();
	}

} //GeneratorSetImpl
