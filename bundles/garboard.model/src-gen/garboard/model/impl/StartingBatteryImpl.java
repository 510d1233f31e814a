/**
 */
package garboard.model.impl;

import garboard.model.Answer;
import garboard.model.BatteryBlock;
import garboard.model.BatteryChemistry;
import garboard.model.CableRun;
import garboard.model.CrankingRatingDefinition;
import garboard.model.GarboardPackage;
import garboard.model.StartingBattery;
import garboard.model.TerminalKind;

import garboard.quantity.Area;
import garboard.quantity.Charge;
import garboard.quantity.Current;
import garboard.quantity.Length;
import garboard.quantity.Mass;
import garboard.quantity.Temperature;
import garboard.quantity.TimeSpan;
import garboard.quantity.Voltage;

import java.time.LocalDate;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Starting Battery</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.impl.StartingBatteryImpl#getChemistry <em>Chemistry</em>}</li>
 *   <li>{@link garboard.model.impl.StartingBatteryImpl#getBlockVoltage <em>Block Voltage</em>}</li>
 *   <li>{@link garboard.model.impl.StartingBatteryImpl#getBlocksInSeries <em>Blocks In Series</em>}</li>
 *   <li>{@link garboard.model.impl.StartingBatteryImpl#getStringsInParallel <em>Strings In Parallel</em>}</li>
 *   <li>{@link garboard.model.impl.StartingBatteryImpl#getBlockCapacity <em>Block Capacity</em>}</li>
 *   <li>{@link garboard.model.impl.StartingBatteryImpl#getBlockCrankingRating <em>Block Cranking Rating</em>}</li>
 *   <li>{@link garboard.model.impl.StartingBatteryImpl#getCrankingRatingDefinition <em>Cranking Rating Definition</em>}</li>
 *   <li>{@link garboard.model.impl.StartingBatteryImpl#getInstalledOn <em>Installed On</em>}</li>
 *   <li>{@link garboard.model.impl.StartingBatteryImpl#getBlockMass <em>Block Mass</em>}</li>
 *   <li>{@link garboard.model.impl.StartingBatteryImpl#getBatteryTemperature <em>Battery Temperature</em>}</li>
 *   <li>{@link garboard.model.impl.StartingBatteryImpl#getRestTime <em>Rest Time</em>}</li>
 *   <li>{@link garboard.model.impl.StartingBatteryImpl#getRestedVoltage <em>Rested Voltage</em>}</li>
 *   <li>{@link garboard.model.impl.StartingBatteryImpl#getColdestStart <em>Coldest Start</em>}</li>
 *   <li>{@link garboard.model.impl.StartingBatteryImpl#getBlocks <em>Blocks</em>}</li>
 *   <li>{@link garboard.model.impl.StartingBatteryImpl#getDedicatedToGenerator <em>Dedicated To Generator</em>}</li>
 *   <li>{@link garboard.model.impl.StartingBatteryImpl#getIsolatingSwitch <em>Isolating Switch</em>}</li>
 *   <li>{@link garboard.model.impl.StartingBatteryImpl#getIsolatingSwitchReachable <em>Isolating Switch Reachable</em>}</li>
 *   <li>{@link garboard.model.impl.StartingBatteryImpl#getEmergencyCrossConnect <em>Emergency Cross Connect</em>}</li>
 *   <li>{@link garboard.model.impl.StartingBatteryImpl#getSecured <em>Secured</em>}</li>
 *   <li>{@link garboard.model.impl.StartingBatteryImpl#getMovementUnderTest <em>Movement Under Test</em>}</li>
 *   <li>{@link garboard.model.impl.StartingBatteryImpl#getTrayOrBox <em>Tray Or Box</em>}</li>
 *   <li>{@link garboard.model.impl.StartingBatteryImpl#getPositiveTerminalCovered <em>Positive Terminal Covered</em>}</li>
 *   <li>{@link garboard.model.impl.StartingBatteryImpl#getTerminals <em>Terminals</em>}</li>
 *   <li>{@link garboard.model.impl.StartingBatteryImpl#getVentedOverboard <em>Vented Overboard</em>}</li>
 *   <li>{@link garboard.model.impl.StartingBatteryImpl#getVentilationAreaEachWay <em>Ventilation Area Each Way</em>}</li>
 *   <li>{@link garboard.model.impl.StartingBatteryImpl#getDistanceToStarter <em>Distance To Starter</em>}</li>
 *   <li>{@link garboard.model.impl.StartingBatteryImpl#getFuelPartsWithinReach <em>Fuel Parts Within Reach</em>}</li>
 *   <li>{@link garboard.model.impl.StartingBatteryImpl#getDielectricShield <em>Dielectric Shield</em>}</li>
 *   <li>{@link garboard.model.impl.StartingBatteryImpl#getAboveOrBelowFuelFittings <em>Above Or Below Fuel Fittings</em>}</li>
 *   <li>{@link garboard.model.impl.StartingBatteryImpl#getHighAboveBilge <em>High Above Bilge</em>}</li>
 *   <li>{@link garboard.model.impl.StartingBatteryImpl#getChargerRatedCurrent <em>Charger Rated Current</em>}</li>
 *   <li>{@link garboard.model.impl.StartingBatteryImpl#getChargerVoltage <em>Charger Voltage</em>}</li>
 *   <li>{@link garboard.model.impl.StartingBatteryImpl#getChargingVoltageRunning <em>Charging Voltage Running</em>}</li>
 *   <li>{@link garboard.model.impl.StartingBatteryImpl#getChargerAmmeter <em>Charger Ammeter</em>}</li>
 *   <li>{@link garboard.model.impl.StartingBatteryImpl#getSameTypeAndAge <em>Same Type And Age</em>}</li>
 *   <li>{@link garboard.model.impl.StartingBatteryImpl#getCables <em>Cables</em>}</li>
 *   <li>{@link garboard.model.impl.StartingBatteryImpl#getCrankingVoltageAtPosts <em>Cranking Voltage At Posts</em>}</li>
 *   <li>{@link garboard.model.impl.StartingBatteryImpl#getCrankingVoltageAtStarter <em>Cranking Voltage At Starter</em>}</li>
 *   <li>{@link garboard.model.impl.StartingBatteryImpl#getBlocksMixed <em>Blocks Mixed</em>}</li>
 *   <li>{@link garboard.model.impl.StartingBatteryImpl#getEmergencySource <em>Emergency Source</em>}</li>
 * </ul>
 *
 * @generated
 */
public class StartingBatteryImpl extends MinimalEObjectImpl.Container implements StartingBattery {
	/**
	 * The default value of the '{@link #getChemistry() <em>Chemistry</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getChemistry()
	 * @generated
	 * @ordered
	 */
	protected static final BatteryChemistry CHEMISTRY_EDEFAULT = BatteryChemistry.NOT_ENTERED;

	/**
	 * The cached value of the '{@link #getChemistry() <em>Chemistry</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getChemistry()
	 * @generated
	 * @ordered
	 */
	protected BatteryChemistry chemistry = CHEMISTRY_EDEFAULT;

	/**
	 * The default value of the '{@link #getBlockVoltage() <em>Block Voltage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBlockVoltage()
	 * @generated
	 * @ordered
	 */
	protected static final Voltage BLOCK_VOLTAGE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBlockVoltage() <em>Block Voltage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBlockVoltage()
	 * @generated
	 * @ordered
	 */
	protected Voltage blockVoltage = BLOCK_VOLTAGE_EDEFAULT;

	/**
	 * The default value of the '{@link #getBlocksInSeries() <em>Blocks In Series</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBlocksInSeries()
	 * @generated
	 * @ordered
	 */
	protected static final Integer BLOCKS_IN_SERIES_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBlocksInSeries() <em>Blocks In Series</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBlocksInSeries()
	 * @generated
	 * @ordered
	 */
	protected Integer blocksInSeries = BLOCKS_IN_SERIES_EDEFAULT;

	/**
	 * The default value of the '{@link #getStringsInParallel() <em>Strings In Parallel</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStringsInParallel()
	 * @generated
	 * @ordered
	 */
	protected static final Integer STRINGS_IN_PARALLEL_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getStringsInParallel() <em>Strings In Parallel</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStringsInParallel()
	 * @generated
	 * @ordered
	 */
	protected Integer stringsInParallel = STRINGS_IN_PARALLEL_EDEFAULT;

	/**
	 * The default value of the '{@link #getBlockCapacity() <em>Block Capacity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBlockCapacity()
	 * @generated
	 * @ordered
	 */
	protected static final Charge BLOCK_CAPACITY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBlockCapacity() <em>Block Capacity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBlockCapacity()
	 * @generated
	 * @ordered
	 */
	protected Charge blockCapacity = BLOCK_CAPACITY_EDEFAULT;

	/**
	 * The default value of the '{@link #getBlockCrankingRating() <em>Block Cranking Rating</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBlockCrankingRating()
	 * @generated
	 * @ordered
	 */
	protected static final Current BLOCK_CRANKING_RATING_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBlockCrankingRating() <em>Block Cranking Rating</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBlockCrankingRating()
	 * @generated
	 * @ordered
	 */
	protected Current blockCrankingRating = BLOCK_CRANKING_RATING_EDEFAULT;

	/**
	 * The default value of the '{@link #getCrankingRatingDefinition() <em>Cranking Rating Definition</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCrankingRatingDefinition()
	 * @generated
	 * @ordered
	 */
	protected static final CrankingRatingDefinition CRANKING_RATING_DEFINITION_EDEFAULT = CrankingRatingDefinition.NOT_ENTERED;

	/**
	 * The cached value of the '{@link #getCrankingRatingDefinition() <em>Cranking Rating Definition</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCrankingRatingDefinition()
	 * @generated
	 * @ordered
	 */
	protected CrankingRatingDefinition crankingRatingDefinition = CRANKING_RATING_DEFINITION_EDEFAULT;

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
	 * The default value of the '{@link #getBlockMass() <em>Block Mass</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBlockMass()
	 * @generated
	 * @ordered
	 */
	protected static final Mass BLOCK_MASS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBlockMass() <em>Block Mass</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBlockMass()
	 * @generated
	 * @ordered
	 */
	protected Mass blockMass = BLOCK_MASS_EDEFAULT;

	/**
	 * The default value of the '{@link #getBatteryTemperature() <em>Battery Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBatteryTemperature()
	 * @generated
	 * @ordered
	 */
	protected static final Temperature BATTERY_TEMPERATURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBatteryTemperature() <em>Battery Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBatteryTemperature()
	 * @generated
	 * @ordered
	 */
	protected Temperature batteryTemperature = BATTERY_TEMPERATURE_EDEFAULT;

	/**
	 * The default value of the '{@link #getRestTime() <em>Rest Time</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRestTime()
	 * @generated
	 * @ordered
	 */
	protected static final TimeSpan REST_TIME_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRestTime() <em>Rest Time</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRestTime()
	 * @generated
	 * @ordered
	 */
	protected TimeSpan restTime = REST_TIME_EDEFAULT;

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
	 * The default value of the '{@link #getColdestStart() <em>Coldest Start</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getColdestStart()
	 * @generated
	 * @ordered
	 */
	protected static final Temperature COLDEST_START_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getColdestStart() <em>Coldest Start</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getColdestStart()
	 * @generated
	 * @ordered
	 */
	protected Temperature coldestStart = COLDEST_START_EDEFAULT;

	/**
	 * The cached value of the '{@link #getBlocks() <em>Blocks</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBlocks()
	 * @generated
	 * @ordered
	 */
	protected EList<BatteryBlock> blocks;

	/**
	 * The default value of the '{@link #getDedicatedToGenerator() <em>Dedicated To Generator</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDedicatedToGenerator()
	 * @generated
	 * @ordered
	 */
	protected static final Answer DEDICATED_TO_GENERATOR_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getDedicatedToGenerator() <em>Dedicated To Generator</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDedicatedToGenerator()
	 * @generated
	 * @ordered
	 */
	protected Answer dedicatedToGenerator = DEDICATED_TO_GENERATOR_EDEFAULT;

	/**
	 * The default value of the '{@link #getIsolatingSwitch() <em>Isolating Switch</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getIsolatingSwitch()
	 * @generated
	 * @ordered
	 */
	protected static final Answer ISOLATING_SWITCH_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getIsolatingSwitch() <em>Isolating Switch</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getIsolatingSwitch()
	 * @generated
	 * @ordered
	 */
	protected Answer isolatingSwitch = ISOLATING_SWITCH_EDEFAULT;

	/**
	 * The default value of the '{@link #getIsolatingSwitchReachable() <em>Isolating Switch Reachable</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getIsolatingSwitchReachable()
	 * @generated
	 * @ordered
	 */
	protected static final Answer ISOLATING_SWITCH_REACHABLE_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getIsolatingSwitchReachable() <em>Isolating Switch Reachable</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getIsolatingSwitchReachable()
	 * @generated
	 * @ordered
	 */
	protected Answer isolatingSwitchReachable = ISOLATING_SWITCH_REACHABLE_EDEFAULT;

	/**
	 * The default value of the '{@link #getEmergencyCrossConnect() <em>Emergency Cross Connect</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEmergencyCrossConnect()
	 * @generated
	 * @ordered
	 */
	protected static final Answer EMERGENCY_CROSS_CONNECT_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getEmergencyCrossConnect() <em>Emergency Cross Connect</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEmergencyCrossConnect()
	 * @generated
	 * @ordered
	 */
	protected Answer emergencyCrossConnect = EMERGENCY_CROSS_CONNECT_EDEFAULT;

	/**
	 * The default value of the '{@link #getSecured() <em>Secured</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSecured()
	 * @generated
	 * @ordered
	 */
	protected static final Answer SECURED_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getSecured() <em>Secured</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSecured()
	 * @generated
	 * @ordered
	 */
	protected Answer secured = SECURED_EDEFAULT;

	/**
	 * The default value of the '{@link #getMovementUnderTest() <em>Movement Under Test</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMovementUnderTest()
	 * @generated
	 * @ordered
	 */
	protected static final Length MOVEMENT_UNDER_TEST_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMovementUnderTest() <em>Movement Under Test</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMovementUnderTest()
	 * @generated
	 * @ordered
	 */
	protected Length movementUnderTest = MOVEMENT_UNDER_TEST_EDEFAULT;

	/**
	 * The default value of the '{@link #getTrayOrBox() <em>Tray Or Box</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTrayOrBox()
	 * @generated
	 * @ordered
	 */
	protected static final Answer TRAY_OR_BOX_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getTrayOrBox() <em>Tray Or Box</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTrayOrBox()
	 * @generated
	 * @ordered
	 */
	protected Answer trayOrBox = TRAY_OR_BOX_EDEFAULT;

	/**
	 * The default value of the '{@link #getPositiveTerminalCovered() <em>Positive Terminal Covered</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPositiveTerminalCovered()
	 * @generated
	 * @ordered
	 */
	protected static final Answer POSITIVE_TERMINAL_COVERED_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getPositiveTerminalCovered() <em>Positive Terminal Covered</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPositiveTerminalCovered()
	 * @generated
	 * @ordered
	 */
	protected Answer positiveTerminalCovered = POSITIVE_TERMINAL_COVERED_EDEFAULT;

	/**
	 * The default value of the '{@link #getTerminals() <em>Terminals</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTerminals()
	 * @generated
	 * @ordered
	 */
	protected static final TerminalKind TERMINALS_EDEFAULT = TerminalKind.NOT_ENTERED;

	/**
	 * The cached value of the '{@link #getTerminals() <em>Terminals</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTerminals()
	 * @generated
	 * @ordered
	 */
	protected TerminalKind terminals = TERMINALS_EDEFAULT;

	/**
	 * The default value of the '{@link #getVentedOverboard() <em>Vented Overboard</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVentedOverboard()
	 * @generated
	 * @ordered
	 */
	protected static final Answer VENTED_OVERBOARD_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getVentedOverboard() <em>Vented Overboard</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVentedOverboard()
	 * @generated
	 * @ordered
	 */
	protected Answer ventedOverboard = VENTED_OVERBOARD_EDEFAULT;

	/**
	 * The default value of the '{@link #getVentilationAreaEachWay() <em>Ventilation Area Each Way</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVentilationAreaEachWay()
	 * @generated
	 * @ordered
	 */
	protected static final Area VENTILATION_AREA_EACH_WAY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getVentilationAreaEachWay() <em>Ventilation Area Each Way</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVentilationAreaEachWay()
	 * @generated
	 * @ordered
	 */
	protected Area ventilationAreaEachWay = VENTILATION_AREA_EACH_WAY_EDEFAULT;

	/**
	 * The default value of the '{@link #getDistanceToStarter() <em>Distance To Starter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDistanceToStarter()
	 * @generated
	 * @ordered
	 */
	protected static final Length DISTANCE_TO_STARTER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDistanceToStarter() <em>Distance To Starter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDistanceToStarter()
	 * @generated
	 * @ordered
	 */
	protected Length distanceToStarter = DISTANCE_TO_STARTER_EDEFAULT;

	/**
	 * The default value of the '{@link #getFuelPartsWithinReach() <em>Fuel Parts Within Reach</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFuelPartsWithinReach()
	 * @generated
	 * @ordered
	 */
	protected static final Answer FUEL_PARTS_WITHIN_REACH_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getFuelPartsWithinReach() <em>Fuel Parts Within Reach</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFuelPartsWithinReach()
	 * @generated
	 * @ordered
	 */
	protected Answer fuelPartsWithinReach = FUEL_PARTS_WITHIN_REACH_EDEFAULT;

	/**
	 * The default value of the '{@link #getDielectricShield() <em>Dielectric Shield</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDielectricShield()
	 * @generated
	 * @ordered
	 */
	protected static final Answer DIELECTRIC_SHIELD_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getDielectricShield() <em>Dielectric Shield</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDielectricShield()
	 * @generated
	 * @ordered
	 */
	protected Answer dielectricShield = DIELECTRIC_SHIELD_EDEFAULT;

	/**
	 * The default value of the '{@link #getAboveOrBelowFuelFittings() <em>Above Or Below Fuel Fittings</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAboveOrBelowFuelFittings()
	 * @generated
	 * @ordered
	 */
	protected static final Answer ABOVE_OR_BELOW_FUEL_FITTINGS_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getAboveOrBelowFuelFittings() <em>Above Or Below Fuel Fittings</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAboveOrBelowFuelFittings()
	 * @generated
	 * @ordered
	 */
	protected Answer aboveOrBelowFuelFittings = ABOVE_OR_BELOW_FUEL_FITTINGS_EDEFAULT;

	/**
	 * The default value of the '{@link #getHighAboveBilge() <em>High Above Bilge</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHighAboveBilge()
	 * @generated
	 * @ordered
	 */
	protected static final Answer HIGH_ABOVE_BILGE_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getHighAboveBilge() <em>High Above Bilge</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHighAboveBilge()
	 * @generated
	 * @ordered
	 */
	protected Answer highAboveBilge = HIGH_ABOVE_BILGE_EDEFAULT;

	/**
	 * The default value of the '{@link #getChargerRatedCurrent() <em>Charger Rated Current</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getChargerRatedCurrent()
	 * @generated
	 * @ordered
	 */
	protected static final Current CHARGER_RATED_CURRENT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getChargerRatedCurrent() <em>Charger Rated Current</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getChargerRatedCurrent()
	 * @generated
	 * @ordered
	 */
	protected Current chargerRatedCurrent = CHARGER_RATED_CURRENT_EDEFAULT;

	/**
	 * The default value of the '{@link #getChargerVoltage() <em>Charger Voltage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getChargerVoltage()
	 * @generated
	 * @ordered
	 */
	protected static final Voltage CHARGER_VOLTAGE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getChargerVoltage() <em>Charger Voltage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getChargerVoltage()
	 * @generated
	 * @ordered
	 */
	protected Voltage chargerVoltage = CHARGER_VOLTAGE_EDEFAULT;

	/**
	 * The default value of the '{@link #getChargingVoltageRunning() <em>Charging Voltage Running</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getChargingVoltageRunning()
	 * @generated
	 * @ordered
	 */
	protected static final Voltage CHARGING_VOLTAGE_RUNNING_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getChargingVoltageRunning() <em>Charging Voltage Running</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getChargingVoltageRunning()
	 * @generated
	 * @ordered
	 */
	protected Voltage chargingVoltageRunning = CHARGING_VOLTAGE_RUNNING_EDEFAULT;

	/**
	 * The default value of the '{@link #getChargerAmmeter() <em>Charger Ammeter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getChargerAmmeter()
	 * @generated
	 * @ordered
	 */
	protected static final Answer CHARGER_AMMETER_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getChargerAmmeter() <em>Charger Ammeter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getChargerAmmeter()
	 * @generated
	 * @ordered
	 */
	protected Answer chargerAmmeter = CHARGER_AMMETER_EDEFAULT;

	/**
	 * The default value of the '{@link #getSameTypeAndAge() <em>Same Type And Age</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSameTypeAndAge()
	 * @generated
	 * @ordered
	 */
	protected static final Answer SAME_TYPE_AND_AGE_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getSameTypeAndAge() <em>Same Type And Age</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSameTypeAndAge()
	 * @generated
	 * @ordered
	 */
	protected Answer sameTypeAndAge = SAME_TYPE_AND_AGE_EDEFAULT;

	/**
	 * The cached value of the '{@link #getCables() <em>Cables</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCables()
	 * @generated
	 * @ordered
	 */
	protected EList<CableRun> cables;

	/**
	 * The default value of the '{@link #getCrankingVoltageAtPosts() <em>Cranking Voltage At Posts</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCrankingVoltageAtPosts()
	 * @generated
	 * @ordered
	 */
	protected static final Voltage CRANKING_VOLTAGE_AT_POSTS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCrankingVoltageAtPosts() <em>Cranking Voltage At Posts</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCrankingVoltageAtPosts()
	 * @generated
	 * @ordered
	 */
	protected Voltage crankingVoltageAtPosts = CRANKING_VOLTAGE_AT_POSTS_EDEFAULT;

	/**
	 * The default value of the '{@link #getCrankingVoltageAtStarter() <em>Cranking Voltage At Starter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCrankingVoltageAtStarter()
	 * @generated
	 * @ordered
	 */
	protected static final Voltage CRANKING_VOLTAGE_AT_STARTER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCrankingVoltageAtStarter() <em>Cranking Voltage At Starter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCrankingVoltageAtStarter()
	 * @generated
	 * @ordered
	 */
	protected Voltage crankingVoltageAtStarter = CRANKING_VOLTAGE_AT_STARTER_EDEFAULT;

	/**
	 * The default value of the '{@link #getBlocksMixed() <em>Blocks Mixed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBlocksMixed()
	 * @generated
	 * @ordered
	 */
	protected static final Answer BLOCKS_MIXED_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getBlocksMixed() <em>Blocks Mixed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBlocksMixed()
	 * @generated
	 * @ordered
	 */
	protected Answer blocksMixed = BLOCKS_MIXED_EDEFAULT;

	/**
	 * The default value of the '{@link #getEmergencySource() <em>Emergency Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEmergencySource()
	 * @generated
	 * @ordered
	 */
	protected static final Answer EMERGENCY_SOURCE_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getEmergencySource() <em>Emergency Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEmergencySource()
	 * @generated
	 * @ordered
	 */
	protected Answer emergencySource = EMERGENCY_SOURCE_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected StartingBatteryImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return GarboardPackage.Literals.STARTING_BATTERY;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BatteryChemistry getChemistry() {
		return chemistry;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setChemistry(BatteryChemistry newChemistry) {
		BatteryChemistry oldChemistry = chemistry;
		chemistry = newChemistry == null ? CHEMISTRY_EDEFAULT : newChemistry;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.STARTING_BATTERY__CHEMISTRY, oldChemistry, chemistry));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Voltage getBlockVoltage() {
		return blockVoltage;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBlockVoltage(Voltage newBlockVoltage) {
		Voltage oldBlockVoltage = blockVoltage;
		blockVoltage = newBlockVoltage;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.STARTING_BATTERY__BLOCK_VOLTAGE, oldBlockVoltage, blockVoltage));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getBlocksInSeries() {
		return blocksInSeries;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBlocksInSeries(Integer newBlocksInSeries) {
		Integer oldBlocksInSeries = blocksInSeries;
		blocksInSeries = newBlocksInSeries;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.STARTING_BATTERY__BLOCKS_IN_SERIES, oldBlocksInSeries, blocksInSeries));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getStringsInParallel() {
		return stringsInParallel;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStringsInParallel(Integer newStringsInParallel) {
		Integer oldStringsInParallel = stringsInParallel;
		stringsInParallel = newStringsInParallel;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.STARTING_BATTERY__STRINGS_IN_PARALLEL, oldStringsInParallel, stringsInParallel));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Charge getBlockCapacity() {
		return blockCapacity;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBlockCapacity(Charge newBlockCapacity) {
		Charge oldBlockCapacity = blockCapacity;
		blockCapacity = newBlockCapacity;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.STARTING_BATTERY__BLOCK_CAPACITY, oldBlockCapacity, blockCapacity));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Current getBlockCrankingRating() {
		return blockCrankingRating;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBlockCrankingRating(Current newBlockCrankingRating) {
		Current oldBlockCrankingRating = blockCrankingRating;
		blockCrankingRating = newBlockCrankingRating;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.STARTING_BATTERY__BLOCK_CRANKING_RATING, oldBlockCrankingRating, blockCrankingRating));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public CrankingRatingDefinition getCrankingRatingDefinition() {
		return crankingRatingDefinition;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCrankingRatingDefinition(CrankingRatingDefinition newCrankingRatingDefinition) {
		CrankingRatingDefinition oldCrankingRatingDefinition = crankingRatingDefinition;
		crankingRatingDefinition = newCrankingRatingDefinition == null ? CRANKING_RATING_DEFINITION_EDEFAULT : newCrankingRatingDefinition;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.STARTING_BATTERY__CRANKING_RATING_DEFINITION, oldCrankingRatingDefinition, crankingRatingDefinition));
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
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.STARTING_BATTERY__INSTALLED_ON, oldInstalledOn, installedOn));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Mass getBlockMass() {
		return blockMass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBlockMass(Mass newBlockMass) {
		Mass oldBlockMass = blockMass;
		blockMass = newBlockMass;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.STARTING_BATTERY__BLOCK_MASS, oldBlockMass, blockMass));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Temperature getBatteryTemperature() {
		return batteryTemperature;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBatteryTemperature(Temperature newBatteryTemperature) {
		Temperature oldBatteryTemperature = batteryTemperature;
		batteryTemperature = newBatteryTemperature;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.STARTING_BATTERY__BATTERY_TEMPERATURE, oldBatteryTemperature, batteryTemperature));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TimeSpan getRestTime() {
		return restTime;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRestTime(TimeSpan newRestTime) {
		TimeSpan oldRestTime = restTime;
		restTime = newRestTime;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.STARTING_BATTERY__REST_TIME, oldRestTime, restTime));
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
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.STARTING_BATTERY__RESTED_VOLTAGE, oldRestedVoltage, restedVoltage));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Temperature getColdestStart() {
		return coldestStart;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setColdestStart(Temperature newColdestStart) {
		Temperature oldColdestStart = coldestStart;
		coldestStart = newColdestStart;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.STARTING_BATTERY__COLDEST_START, oldColdestStart, coldestStart));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<BatteryBlock> getBlocks() {
		if (blocks == null) {
			blocks = new EObjectContainmentEList<BatteryBlock>(BatteryBlock.class, this, GarboardPackage.STARTING_BATTERY__BLOCKS);
		}
		return blocks;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getDedicatedToGenerator() {
		return dedicatedToGenerator;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDedicatedToGenerator(Answer newDedicatedToGenerator) {
		Answer oldDedicatedToGenerator = dedicatedToGenerator;
		dedicatedToGenerator = newDedicatedToGenerator == null ? DEDICATED_TO_GENERATOR_EDEFAULT : newDedicatedToGenerator;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.STARTING_BATTERY__DEDICATED_TO_GENERATOR, oldDedicatedToGenerator, dedicatedToGenerator));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getIsolatingSwitch() {
		return isolatingSwitch;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setIsolatingSwitch(Answer newIsolatingSwitch) {
		Answer oldIsolatingSwitch = isolatingSwitch;
		isolatingSwitch = newIsolatingSwitch == null ? ISOLATING_SWITCH_EDEFAULT : newIsolatingSwitch;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.STARTING_BATTERY__ISOLATING_SWITCH, oldIsolatingSwitch, isolatingSwitch));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getIsolatingSwitchReachable() {
		return isolatingSwitchReachable;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setIsolatingSwitchReachable(Answer newIsolatingSwitchReachable) {
		Answer oldIsolatingSwitchReachable = isolatingSwitchReachable;
		isolatingSwitchReachable = newIsolatingSwitchReachable == null ? ISOLATING_SWITCH_REACHABLE_EDEFAULT : newIsolatingSwitchReachable;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.STARTING_BATTERY__ISOLATING_SWITCH_REACHABLE, oldIsolatingSwitchReachable, isolatingSwitchReachable));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getEmergencyCrossConnect() {
		return emergencyCrossConnect;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEmergencyCrossConnect(Answer newEmergencyCrossConnect) {
		Answer oldEmergencyCrossConnect = emergencyCrossConnect;
		emergencyCrossConnect = newEmergencyCrossConnect == null ? EMERGENCY_CROSS_CONNECT_EDEFAULT : newEmergencyCrossConnect;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.STARTING_BATTERY__EMERGENCY_CROSS_CONNECT, oldEmergencyCrossConnect, emergencyCrossConnect));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getSecured() {
		return secured;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSecured(Answer newSecured) {
		Answer oldSecured = secured;
		secured = newSecured == null ? SECURED_EDEFAULT : newSecured;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.STARTING_BATTERY__SECURED, oldSecured, secured));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getMovementUnderTest() {
		return movementUnderTest;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMovementUnderTest(Length newMovementUnderTest) {
		Length oldMovementUnderTest = movementUnderTest;
		movementUnderTest = newMovementUnderTest;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.STARTING_BATTERY__MOVEMENT_UNDER_TEST, oldMovementUnderTest, movementUnderTest));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getTrayOrBox() {
		return trayOrBox;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTrayOrBox(Answer newTrayOrBox) {
		Answer oldTrayOrBox = trayOrBox;
		trayOrBox = newTrayOrBox == null ? TRAY_OR_BOX_EDEFAULT : newTrayOrBox;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.STARTING_BATTERY__TRAY_OR_BOX, oldTrayOrBox, trayOrBox));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getPositiveTerminalCovered() {
		return positiveTerminalCovered;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPositiveTerminalCovered(Answer newPositiveTerminalCovered) {
		Answer oldPositiveTerminalCovered = positiveTerminalCovered;
		positiveTerminalCovered = newPositiveTerminalCovered == null ? POSITIVE_TERMINAL_COVERED_EDEFAULT : newPositiveTerminalCovered;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.STARTING_BATTERY__POSITIVE_TERMINAL_COVERED, oldPositiveTerminalCovered, positiveTerminalCovered));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TerminalKind getTerminals() {
		return terminals;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTerminals(TerminalKind newTerminals) {
		TerminalKind oldTerminals = terminals;
		terminals = newTerminals == null ? TERMINALS_EDEFAULT : newTerminals;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.STARTING_BATTERY__TERMINALS, oldTerminals, terminals));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getVentedOverboard() {
		return ventedOverboard;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setVentedOverboard(Answer newVentedOverboard) {
		Answer oldVentedOverboard = ventedOverboard;
		ventedOverboard = newVentedOverboard == null ? VENTED_OVERBOARD_EDEFAULT : newVentedOverboard;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.STARTING_BATTERY__VENTED_OVERBOARD, oldVentedOverboard, ventedOverboard));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Area getVentilationAreaEachWay() {
		return ventilationAreaEachWay;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setVentilationAreaEachWay(Area newVentilationAreaEachWay) {
		Area oldVentilationAreaEachWay = ventilationAreaEachWay;
		ventilationAreaEachWay = newVentilationAreaEachWay;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.STARTING_BATTERY__VENTILATION_AREA_EACH_WAY, oldVentilationAreaEachWay, ventilationAreaEachWay));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getDistanceToStarter() {
		return distanceToStarter;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDistanceToStarter(Length newDistanceToStarter) {
		Length oldDistanceToStarter = distanceToStarter;
		distanceToStarter = newDistanceToStarter;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.STARTING_BATTERY__DISTANCE_TO_STARTER, oldDistanceToStarter, distanceToStarter));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getFuelPartsWithinReach() {
		return fuelPartsWithinReach;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFuelPartsWithinReach(Answer newFuelPartsWithinReach) {
		Answer oldFuelPartsWithinReach = fuelPartsWithinReach;
		fuelPartsWithinReach = newFuelPartsWithinReach == null ? FUEL_PARTS_WITHIN_REACH_EDEFAULT : newFuelPartsWithinReach;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.STARTING_BATTERY__FUEL_PARTS_WITHIN_REACH, oldFuelPartsWithinReach, fuelPartsWithinReach));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getDielectricShield() {
		return dielectricShield;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDielectricShield(Answer newDielectricShield) {
		Answer oldDielectricShield = dielectricShield;
		dielectricShield = newDielectricShield == null ? DIELECTRIC_SHIELD_EDEFAULT : newDielectricShield;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.STARTING_BATTERY__DIELECTRIC_SHIELD, oldDielectricShield, dielectricShield));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getAboveOrBelowFuelFittings() {
		return aboveOrBelowFuelFittings;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAboveOrBelowFuelFittings(Answer newAboveOrBelowFuelFittings) {
		Answer oldAboveOrBelowFuelFittings = aboveOrBelowFuelFittings;
		aboveOrBelowFuelFittings = newAboveOrBelowFuelFittings == null ? ABOVE_OR_BELOW_FUEL_FITTINGS_EDEFAULT : newAboveOrBelowFuelFittings;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.STARTING_BATTERY__ABOVE_OR_BELOW_FUEL_FITTINGS, oldAboveOrBelowFuelFittings, aboveOrBelowFuelFittings));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getHighAboveBilge() {
		return highAboveBilge;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHighAboveBilge(Answer newHighAboveBilge) {
		Answer oldHighAboveBilge = highAboveBilge;
		highAboveBilge = newHighAboveBilge == null ? HIGH_ABOVE_BILGE_EDEFAULT : newHighAboveBilge;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.STARTING_BATTERY__HIGH_ABOVE_BILGE, oldHighAboveBilge, highAboveBilge));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Current getChargerRatedCurrent() {
		return chargerRatedCurrent;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setChargerRatedCurrent(Current newChargerRatedCurrent) {
		Current oldChargerRatedCurrent = chargerRatedCurrent;
		chargerRatedCurrent = newChargerRatedCurrent;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.STARTING_BATTERY__CHARGER_RATED_CURRENT, oldChargerRatedCurrent, chargerRatedCurrent));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Voltage getChargerVoltage() {
		return chargerVoltage;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setChargerVoltage(Voltage newChargerVoltage) {
		Voltage oldChargerVoltage = chargerVoltage;
		chargerVoltage = newChargerVoltage;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.STARTING_BATTERY__CHARGER_VOLTAGE, oldChargerVoltage, chargerVoltage));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Voltage getChargingVoltageRunning() {
		return chargingVoltageRunning;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setChargingVoltageRunning(Voltage newChargingVoltageRunning) {
		Voltage oldChargingVoltageRunning = chargingVoltageRunning;
		chargingVoltageRunning = newChargingVoltageRunning;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.STARTING_BATTERY__CHARGING_VOLTAGE_RUNNING, oldChargingVoltageRunning, chargingVoltageRunning));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getChargerAmmeter() {
		return chargerAmmeter;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setChargerAmmeter(Answer newChargerAmmeter) {
		Answer oldChargerAmmeter = chargerAmmeter;
		chargerAmmeter = newChargerAmmeter == null ? CHARGER_AMMETER_EDEFAULT : newChargerAmmeter;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.STARTING_BATTERY__CHARGER_AMMETER, oldChargerAmmeter, chargerAmmeter));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getSameTypeAndAge() {
		return sameTypeAndAge;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSameTypeAndAge(Answer newSameTypeAndAge) {
		Answer oldSameTypeAndAge = sameTypeAndAge;
		sameTypeAndAge = newSameTypeAndAge == null ? SAME_TYPE_AND_AGE_EDEFAULT : newSameTypeAndAge;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.STARTING_BATTERY__SAME_TYPE_AND_AGE, oldSameTypeAndAge, sameTypeAndAge));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<CableRun> getCables() {
		if (cables == null) {
			cables = new EObjectContainmentEList<CableRun>(CableRun.class, this, GarboardPackage.STARTING_BATTERY__CABLES);
		}
		return cables;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Voltage getCrankingVoltageAtPosts() {
		return crankingVoltageAtPosts;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCrankingVoltageAtPosts(Voltage newCrankingVoltageAtPosts) {
		Voltage oldCrankingVoltageAtPosts = crankingVoltageAtPosts;
		crankingVoltageAtPosts = newCrankingVoltageAtPosts;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.STARTING_BATTERY__CRANKING_VOLTAGE_AT_POSTS, oldCrankingVoltageAtPosts, crankingVoltageAtPosts));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Voltage getCrankingVoltageAtStarter() {
		return crankingVoltageAtStarter;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCrankingVoltageAtStarter(Voltage newCrankingVoltageAtStarter) {
		Voltage oldCrankingVoltageAtStarter = crankingVoltageAtStarter;
		crankingVoltageAtStarter = newCrankingVoltageAtStarter;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.STARTING_BATTERY__CRANKING_VOLTAGE_AT_STARTER, oldCrankingVoltageAtStarter, crankingVoltageAtStarter));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getBlocksMixed() {
		return blocksMixed;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBlocksMixed(Answer newBlocksMixed) {
		Answer oldBlocksMixed = blocksMixed;
		blocksMixed = newBlocksMixed == null ? BLOCKS_MIXED_EDEFAULT : newBlocksMixed;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.STARTING_BATTERY__BLOCKS_MIXED, oldBlocksMixed, blocksMixed));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getEmergencySource() {
		return emergencySource;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEmergencySource(Answer newEmergencySource) {
		Answer oldEmergencySource = emergencySource;
		emergencySource = newEmergencySource == null ? EMERGENCY_SOURCE_EDEFAULT : newEmergencySource;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.STARTING_BATTERY__EMERGENCY_SOURCE, oldEmergencySource, emergencySource));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case GarboardPackage.STARTING_BATTERY__BLOCKS:
				return ((InternalEList<?>)getBlocks()).basicRemove(otherEnd, msgs);
			case GarboardPackage.STARTING_BATTERY__CABLES:
				return ((InternalEList<?>)getCables()).basicRemove(otherEnd, msgs);
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
			case GarboardPackage.STARTING_BATTERY__CHEMISTRY:
				return getChemistry();
			case GarboardPackage.STARTING_BATTERY__BLOCK_VOLTAGE:
				return getBlockVoltage();
			case GarboardPackage.STARTING_BATTERY__BLOCKS_IN_SERIES:
				return getBlocksInSeries();
			case GarboardPackage.STARTING_BATTERY__STRINGS_IN_PARALLEL:
				return getStringsInParallel();
			case GarboardPackage.STARTING_BATTERY__BLOCK_CAPACITY:
				return getBlockCapacity();
			case GarboardPackage.STARTING_BATTERY__BLOCK_CRANKING_RATING:
				return getBlockCrankingRating();
			case GarboardPackage.STARTING_BATTERY__CRANKING_RATING_DEFINITION:
				return getCrankingRatingDefinition();
			case GarboardPackage.STARTING_BATTERY__INSTALLED_ON:
				return getInstalledOn();
			case GarboardPackage.STARTING_BATTERY__BLOCK_MASS:
				return getBlockMass();
			case GarboardPackage.STARTING_BATTERY__BATTERY_TEMPERATURE:
				return getBatteryTemperature();
			case GarboardPackage.STARTING_BATTERY__REST_TIME:
				return getRestTime();
			case GarboardPackage.STARTING_BATTERY__RESTED_VOLTAGE:
				return getRestedVoltage();
			case GarboardPackage.STARTING_BATTERY__COLDEST_START:
				return getColdestStart();
			case GarboardPackage.STARTING_BATTERY__BLOCKS:
				return getBlocks();
			case GarboardPackage.STARTING_BATTERY__DEDICATED_TO_GENERATOR:
				return getDedicatedToGenerator();
			case GarboardPackage.STARTING_BATTERY__ISOLATING_SWITCH:
				return getIsolatingSwitch();
			case GarboardPackage.STARTING_BATTERY__ISOLATING_SWITCH_REACHABLE:
				return getIsolatingSwitchReachable();
			case GarboardPackage.STARTING_BATTERY__EMERGENCY_CROSS_CONNECT:
				return getEmergencyCrossConnect();
			case GarboardPackage.STARTING_BATTERY__SECURED:
				return getSecured();
			case GarboardPackage.STARTING_BATTERY__MOVEMENT_UNDER_TEST:
				return getMovementUnderTest();
			case GarboardPackage.STARTING_BATTERY__TRAY_OR_BOX:
				return getTrayOrBox();
			case GarboardPackage.STARTING_BATTERY__POSITIVE_TERMINAL_COVERED:
				return getPositiveTerminalCovered();
			case GarboardPackage.STARTING_BATTERY__TERMINALS:
				return getTerminals();
			case GarboardPackage.STARTING_BATTERY__VENTED_OVERBOARD:
				return getVentedOverboard();
			case GarboardPackage.STARTING_BATTERY__VENTILATION_AREA_EACH_WAY:
				return getVentilationAreaEachWay();
			case GarboardPackage.STARTING_BATTERY__DISTANCE_TO_STARTER:
				return getDistanceToStarter();
			case GarboardPackage.STARTING_BATTERY__FUEL_PARTS_WITHIN_REACH:
				return getFuelPartsWithinReach();
			case GarboardPackage.STARTING_BATTERY__DIELECTRIC_SHIELD:
				return getDielectricShield();
			case GarboardPackage.STARTING_BATTERY__ABOVE_OR_BELOW_FUEL_FITTINGS:
				return getAboveOrBelowFuelFittings();
			case GarboardPackage.STARTING_BATTERY__HIGH_ABOVE_BILGE:
				return getHighAboveBilge();
			case GarboardPackage.STARTING_BATTERY__CHARGER_RATED_CURRENT:
				return getChargerRatedCurrent();
			case GarboardPackage.STARTING_BATTERY__CHARGER_VOLTAGE:
				return getChargerVoltage();
			case GarboardPackage.STARTING_BATTERY__CHARGING_VOLTAGE_RUNNING:
				return getChargingVoltageRunning();
			case GarboardPackage.STARTING_BATTERY__CHARGER_AMMETER:
				return getChargerAmmeter();
			case GarboardPackage.STARTING_BATTERY__SAME_TYPE_AND_AGE:
				return getSameTypeAndAge();
			case GarboardPackage.STARTING_BATTERY__CABLES:
				return getCables();
			case GarboardPackage.STARTING_BATTERY__CRANKING_VOLTAGE_AT_POSTS:
				return getCrankingVoltageAtPosts();
			case GarboardPackage.STARTING_BATTERY__CRANKING_VOLTAGE_AT_STARTER:
				return getCrankingVoltageAtStarter();
			case GarboardPackage.STARTING_BATTERY__BLOCKS_MIXED:
				return getBlocksMixed();
			case GarboardPackage.STARTING_BATTERY__EMERGENCY_SOURCE:
				return getEmergencySource();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case GarboardPackage.STARTING_BATTERY__CHEMISTRY:
				setChemistry((BatteryChemistry)newValue);
				return;
			case GarboardPackage.STARTING_BATTERY__BLOCK_VOLTAGE:
				setBlockVoltage((Voltage)newValue);
				return;
			case GarboardPackage.STARTING_BATTERY__BLOCKS_IN_SERIES:
				setBlocksInSeries((Integer)newValue);
				return;
			case GarboardPackage.STARTING_BATTERY__STRINGS_IN_PARALLEL:
				setStringsInParallel((Integer)newValue);
				return;
			case GarboardPackage.STARTING_BATTERY__BLOCK_CAPACITY:
				setBlockCapacity((Charge)newValue);
				return;
			case GarboardPackage.STARTING_BATTERY__BLOCK_CRANKING_RATING:
				setBlockCrankingRating((Current)newValue);
				return;
			case GarboardPackage.STARTING_BATTERY__CRANKING_RATING_DEFINITION:
				setCrankingRatingDefinition((CrankingRatingDefinition)newValue);
				return;
			case GarboardPackage.STARTING_BATTERY__INSTALLED_ON:
				setInstalledOn((LocalDate)newValue);
				return;
			case GarboardPackage.STARTING_BATTERY__BLOCK_MASS:
				setBlockMass((Mass)newValue);
				return;
			case GarboardPackage.STARTING_BATTERY__BATTERY_TEMPERATURE:
				setBatteryTemperature((Temperature)newValue);
				return;
			case GarboardPackage.STARTING_BATTERY__REST_TIME:
				setRestTime((TimeSpan)newValue);
				return;
			case GarboardPackage.STARTING_BATTERY__RESTED_VOLTAGE:
				setRestedVoltage((Voltage)newValue);
				return;
			case GarboardPackage.STARTING_BATTERY__COLDEST_START:
				setColdestStart((Temperature)newValue);
				return;
			case GarboardPackage.STARTING_BATTERY__BLOCKS:
				getBlocks().clear();
				getBlocks().addAll((Collection<? extends BatteryBlock>)newValue);
				return;
			case GarboardPackage.STARTING_BATTERY__DEDICATED_TO_GENERATOR:
				setDedicatedToGenerator((Answer)newValue);
				return;
			case GarboardPackage.STARTING_BATTERY__ISOLATING_SWITCH:
				setIsolatingSwitch((Answer)newValue);
				return;
			case GarboardPackage.STARTING_BATTERY__ISOLATING_SWITCH_REACHABLE:
				setIsolatingSwitchReachable((Answer)newValue);
				return;
			case GarboardPackage.STARTING_BATTERY__EMERGENCY_CROSS_CONNECT:
				setEmergencyCrossConnect((Answer)newValue);
				return;
			case GarboardPackage.STARTING_BATTERY__SECURED:
				setSecured((Answer)newValue);
				return;
			case GarboardPackage.STARTING_BATTERY__MOVEMENT_UNDER_TEST:
				setMovementUnderTest((Length)newValue);
				return;
			case GarboardPackage.STARTING_BATTERY__TRAY_OR_BOX:
				setTrayOrBox((Answer)newValue);
				return;
			case GarboardPackage.STARTING_BATTERY__POSITIVE_TERMINAL_COVERED:
				setPositiveTerminalCovered((Answer)newValue);
				return;
			case GarboardPackage.STARTING_BATTERY__TERMINALS:
				setTerminals((TerminalKind)newValue);
				return;
			case GarboardPackage.STARTING_BATTERY__VENTED_OVERBOARD:
				setVentedOverboard((Answer)newValue);
				return;
			case GarboardPackage.STARTING_BATTERY__VENTILATION_AREA_EACH_WAY:
				setVentilationAreaEachWay((Area)newValue);
				return;
			case GarboardPackage.STARTING_BATTERY__DISTANCE_TO_STARTER:
				setDistanceToStarter((Length)newValue);
				return;
			case GarboardPackage.STARTING_BATTERY__FUEL_PARTS_WITHIN_REACH:
				setFuelPartsWithinReach((Answer)newValue);
				return;
			case GarboardPackage.STARTING_BATTERY__DIELECTRIC_SHIELD:
				setDielectricShield((Answer)newValue);
				return;
			case GarboardPackage.STARTING_BATTERY__ABOVE_OR_BELOW_FUEL_FITTINGS:
				setAboveOrBelowFuelFittings((Answer)newValue);
				return;
			case GarboardPackage.STARTING_BATTERY__HIGH_ABOVE_BILGE:
				setHighAboveBilge((Answer)newValue);
				return;
			case GarboardPackage.STARTING_BATTERY__CHARGER_RATED_CURRENT:
				setChargerRatedCurrent((Current)newValue);
				return;
			case GarboardPackage.STARTING_BATTERY__CHARGER_VOLTAGE:
				setChargerVoltage((Voltage)newValue);
				return;
			case GarboardPackage.STARTING_BATTERY__CHARGING_VOLTAGE_RUNNING:
				setChargingVoltageRunning((Voltage)newValue);
				return;
			case GarboardPackage.STARTING_BATTERY__CHARGER_AMMETER:
				setChargerAmmeter((Answer)newValue);
				return;
			case GarboardPackage.STARTING_BATTERY__SAME_TYPE_AND_AGE:
				setSameTypeAndAge((Answer)newValue);
				return;
			case GarboardPackage.STARTING_BATTERY__CABLES:
				getCables().clear();
				getCables().addAll((Collection<? extends CableRun>)newValue);
				return;
			case GarboardPackage.STARTING_BATTERY__CRANKING_VOLTAGE_AT_POSTS:
				setCrankingVoltageAtPosts((Voltage)newValue);
				return;
			case GarboardPackage.STARTING_BATTERY__CRANKING_VOLTAGE_AT_STARTER:
				setCrankingVoltageAtStarter((Voltage)newValue);
				return;
			case GarboardPackage.STARTING_BATTERY__BLOCKS_MIXED:
				setBlocksMixed((Answer)newValue);
				return;
			case GarboardPackage.STARTING_BATTERY__EMERGENCY_SOURCE:
				setEmergencySource((Answer)newValue);
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
			case GarboardPackage.STARTING_BATTERY__CHEMISTRY:
				setChemistry(CHEMISTRY_EDEFAULT);
				return;
			case GarboardPackage.STARTING_BATTERY__BLOCK_VOLTAGE:
				setBlockVoltage(BLOCK_VOLTAGE_EDEFAULT);
				return;
			case GarboardPackage.STARTING_BATTERY__BLOCKS_IN_SERIES:
				setBlocksInSeries(BLOCKS_IN_SERIES_EDEFAULT);
				return;
			case GarboardPackage.STARTING_BATTERY__STRINGS_IN_PARALLEL:
				setStringsInParallel(STRINGS_IN_PARALLEL_EDEFAULT);
				return;
			case GarboardPackage.STARTING_BATTERY__BLOCK_CAPACITY:
				setBlockCapacity(BLOCK_CAPACITY_EDEFAULT);
				return;
			case GarboardPackage.STARTING_BATTERY__BLOCK_CRANKING_RATING:
				setBlockCrankingRating(BLOCK_CRANKING_RATING_EDEFAULT);
				return;
			case GarboardPackage.STARTING_BATTERY__CRANKING_RATING_DEFINITION:
				setCrankingRatingDefinition(CRANKING_RATING_DEFINITION_EDEFAULT);
				return;
			case GarboardPackage.STARTING_BATTERY__INSTALLED_ON:
				setInstalledOn(INSTALLED_ON_EDEFAULT);
				return;
			case GarboardPackage.STARTING_BATTERY__BLOCK_MASS:
				setBlockMass(BLOCK_MASS_EDEFAULT);
				return;
			case GarboardPackage.STARTING_BATTERY__BATTERY_TEMPERATURE:
				setBatteryTemperature(BATTERY_TEMPERATURE_EDEFAULT);
				return;
			case GarboardPackage.STARTING_BATTERY__REST_TIME:
				setRestTime(REST_TIME_EDEFAULT);
				return;
			case GarboardPackage.STARTING_BATTERY__RESTED_VOLTAGE:
				setRestedVoltage(RESTED_VOLTAGE_EDEFAULT);
				return;
			case GarboardPackage.STARTING_BATTERY__COLDEST_START:
				setColdestStart(COLDEST_START_EDEFAULT);
				return;
			case GarboardPackage.STARTING_BATTERY__BLOCKS:
				getBlocks().clear();
				return;
			case GarboardPackage.STARTING_BATTERY__DEDICATED_TO_GENERATOR:
				setDedicatedToGenerator(DEDICATED_TO_GENERATOR_EDEFAULT);
				return;
			case GarboardPackage.STARTING_BATTERY__ISOLATING_SWITCH:
				setIsolatingSwitch(ISOLATING_SWITCH_EDEFAULT);
				return;
			case GarboardPackage.STARTING_BATTERY__ISOLATING_SWITCH_REACHABLE:
				setIsolatingSwitchReachable(ISOLATING_SWITCH_REACHABLE_EDEFAULT);
				return;
			case GarboardPackage.STARTING_BATTERY__EMERGENCY_CROSS_CONNECT:
				setEmergencyCrossConnect(EMERGENCY_CROSS_CONNECT_EDEFAULT);
				return;
			case GarboardPackage.STARTING_BATTERY__SECURED:
				setSecured(SECURED_EDEFAULT);
				return;
			case GarboardPackage.STARTING_BATTERY__MOVEMENT_UNDER_TEST:
				setMovementUnderTest(MOVEMENT_UNDER_TEST_EDEFAULT);
				return;
			case GarboardPackage.STARTING_BATTERY__TRAY_OR_BOX:
				setTrayOrBox(TRAY_OR_BOX_EDEFAULT);
				return;
			case GarboardPackage.STARTING_BATTERY__POSITIVE_TERMINAL_COVERED:
				setPositiveTerminalCovered(POSITIVE_TERMINAL_COVERED_EDEFAULT);
				return;
			case GarboardPackage.STARTING_BATTERY__TERMINALS:
				setTerminals(TERMINALS_EDEFAULT);
				return;
			case GarboardPackage.STARTING_BATTERY__VENTED_OVERBOARD:
				setVentedOverboard(VENTED_OVERBOARD_EDEFAULT);
				return;
			case GarboardPackage.STARTING_BATTERY__VENTILATION_AREA_EACH_WAY:
				setVentilationAreaEachWay(VENTILATION_AREA_EACH_WAY_EDEFAULT);
				return;
			case GarboardPackage.STARTING_BATTERY__DISTANCE_TO_STARTER:
				setDistanceToStarter(DISTANCE_TO_STARTER_EDEFAULT);
				return;
			case GarboardPackage.STARTING_BATTERY__FUEL_PARTS_WITHIN_REACH:
				setFuelPartsWithinReach(FUEL_PARTS_WITHIN_REACH_EDEFAULT);
				return;
			case GarboardPackage.STARTING_BATTERY__DIELECTRIC_SHIELD:
				setDielectricShield(DIELECTRIC_SHIELD_EDEFAULT);
				return;
			case GarboardPackage.STARTING_BATTERY__ABOVE_OR_BELOW_FUEL_FITTINGS:
				setAboveOrBelowFuelFittings(ABOVE_OR_BELOW_FUEL_FITTINGS_EDEFAULT);
				return;
			case GarboardPackage.STARTING_BATTERY__HIGH_ABOVE_BILGE:
				setHighAboveBilge(HIGH_ABOVE_BILGE_EDEFAULT);
				return;
			case GarboardPackage.STARTING_BATTERY__CHARGER_RATED_CURRENT:
				setChargerRatedCurrent(CHARGER_RATED_CURRENT_EDEFAULT);
				return;
			case GarboardPackage.STARTING_BATTERY__CHARGER_VOLTAGE:
				setChargerVoltage(CHARGER_VOLTAGE_EDEFAULT);
				return;
			case GarboardPackage.STARTING_BATTERY__CHARGING_VOLTAGE_RUNNING:
				setChargingVoltageRunning(CHARGING_VOLTAGE_RUNNING_EDEFAULT);
				return;
			case GarboardPackage.STARTING_BATTERY__CHARGER_AMMETER:
				setChargerAmmeter(CHARGER_AMMETER_EDEFAULT);
				return;
			case GarboardPackage.STARTING_BATTERY__SAME_TYPE_AND_AGE:
				setSameTypeAndAge(SAME_TYPE_AND_AGE_EDEFAULT);
				return;
			case GarboardPackage.STARTING_BATTERY__CABLES:
				getCables().clear();
				return;
			case GarboardPackage.STARTING_BATTERY__CRANKING_VOLTAGE_AT_POSTS:
				setCrankingVoltageAtPosts(CRANKING_VOLTAGE_AT_POSTS_EDEFAULT);
				return;
			case GarboardPackage.STARTING_BATTERY__CRANKING_VOLTAGE_AT_STARTER:
				setCrankingVoltageAtStarter(CRANKING_VOLTAGE_AT_STARTER_EDEFAULT);
				return;
			case GarboardPackage.STARTING_BATTERY__BLOCKS_MIXED:
				setBlocksMixed(BLOCKS_MIXED_EDEFAULT);
				return;
			case GarboardPackage.STARTING_BATTERY__EMERGENCY_SOURCE:
				setEmergencySource(EMERGENCY_SOURCE_EDEFAULT);
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
			case GarboardPackage.STARTING_BATTERY__CHEMISTRY:
				return chemistry != CHEMISTRY_EDEFAULT;
			case GarboardPackage.STARTING_BATTERY__BLOCK_VOLTAGE:
				return BLOCK_VOLTAGE_EDEFAULT == null ? blockVoltage != null : !BLOCK_VOLTAGE_EDEFAULT.equals(blockVoltage);
			case GarboardPackage.STARTING_BATTERY__BLOCKS_IN_SERIES:
				return BLOCKS_IN_SERIES_EDEFAULT == null ? blocksInSeries != null : !BLOCKS_IN_SERIES_EDEFAULT.equals(blocksInSeries);
			case GarboardPackage.STARTING_BATTERY__STRINGS_IN_PARALLEL:
				return STRINGS_IN_PARALLEL_EDEFAULT == null ? stringsInParallel != null : !STRINGS_IN_PARALLEL_EDEFAULT.equals(stringsInParallel);
			case GarboardPackage.STARTING_BATTERY__BLOCK_CAPACITY:
				return BLOCK_CAPACITY_EDEFAULT == null ? blockCapacity != null : !BLOCK_CAPACITY_EDEFAULT.equals(blockCapacity);
			case GarboardPackage.STARTING_BATTERY__BLOCK_CRANKING_RATING:
				return BLOCK_CRANKING_RATING_EDEFAULT == null ? blockCrankingRating != null : !BLOCK_CRANKING_RATING_EDEFAULT.equals(blockCrankingRating);
			case GarboardPackage.STARTING_BATTERY__CRANKING_RATING_DEFINITION:
				return crankingRatingDefinition != CRANKING_RATING_DEFINITION_EDEFAULT;
			case GarboardPackage.STARTING_BATTERY__INSTALLED_ON:
				return INSTALLED_ON_EDEFAULT == null ? installedOn != null : !INSTALLED_ON_EDEFAULT.equals(installedOn);
			case GarboardPackage.STARTING_BATTERY__BLOCK_MASS:
				return BLOCK_MASS_EDEFAULT == null ? blockMass != null : !BLOCK_MASS_EDEFAULT.equals(blockMass);
			case GarboardPackage.STARTING_BATTERY__BATTERY_TEMPERATURE:
				return BATTERY_TEMPERATURE_EDEFAULT == null ? batteryTemperature != null : !BATTERY_TEMPERATURE_EDEFAULT.equals(batteryTemperature);
			case GarboardPackage.STARTING_BATTERY__REST_TIME:
				return REST_TIME_EDEFAULT == null ? restTime != null : !REST_TIME_EDEFAULT.equals(restTime);
			case GarboardPackage.STARTING_BATTERY__RESTED_VOLTAGE:
				return RESTED_VOLTAGE_EDEFAULT == null ? restedVoltage != null : !RESTED_VOLTAGE_EDEFAULT.equals(restedVoltage);
			case GarboardPackage.STARTING_BATTERY__COLDEST_START:
				return COLDEST_START_EDEFAULT == null ? coldestStart != null : !COLDEST_START_EDEFAULT.equals(coldestStart);
			case GarboardPackage.STARTING_BATTERY__BLOCKS:
				return blocks != null && !blocks.isEmpty();
			case GarboardPackage.STARTING_BATTERY__DEDICATED_TO_GENERATOR:
				return dedicatedToGenerator != DEDICATED_TO_GENERATOR_EDEFAULT;
			case GarboardPackage.STARTING_BATTERY__ISOLATING_SWITCH:
				return isolatingSwitch != ISOLATING_SWITCH_EDEFAULT;
			case GarboardPackage.STARTING_BATTERY__ISOLATING_SWITCH_REACHABLE:
				return isolatingSwitchReachable != ISOLATING_SWITCH_REACHABLE_EDEFAULT;
			case GarboardPackage.STARTING_BATTERY__EMERGENCY_CROSS_CONNECT:
				return emergencyCrossConnect != EMERGENCY_CROSS_CONNECT_EDEFAULT;
			case GarboardPackage.STARTING_BATTERY__SECURED:
				return secured != SECURED_EDEFAULT;
			case GarboardPackage.STARTING_BATTERY__MOVEMENT_UNDER_TEST:
				return MOVEMENT_UNDER_TEST_EDEFAULT == null ? movementUnderTest != null : !MOVEMENT_UNDER_TEST_EDEFAULT.equals(movementUnderTest);
			case GarboardPackage.STARTING_BATTERY__TRAY_OR_BOX:
				return trayOrBox != TRAY_OR_BOX_EDEFAULT;
			case GarboardPackage.STARTING_BATTERY__POSITIVE_TERMINAL_COVERED:
				return positiveTerminalCovered != POSITIVE_TERMINAL_COVERED_EDEFAULT;
			case GarboardPackage.STARTING_BATTERY__TERMINALS:
				return terminals != TERMINALS_EDEFAULT;
			case GarboardPackage.STARTING_BATTERY__VENTED_OVERBOARD:
				return ventedOverboard != VENTED_OVERBOARD_EDEFAULT;
			case GarboardPackage.STARTING_BATTERY__VENTILATION_AREA_EACH_WAY:
				return VENTILATION_AREA_EACH_WAY_EDEFAULT == null ? ventilationAreaEachWay != null : !VENTILATION_AREA_EACH_WAY_EDEFAULT.equals(ventilationAreaEachWay);
			case GarboardPackage.STARTING_BATTERY__DISTANCE_TO_STARTER:
				return DISTANCE_TO_STARTER_EDEFAULT == null ? distanceToStarter != null : !DISTANCE_TO_STARTER_EDEFAULT.equals(distanceToStarter);
			case GarboardPackage.STARTING_BATTERY__FUEL_PARTS_WITHIN_REACH:
				return fuelPartsWithinReach != FUEL_PARTS_WITHIN_REACH_EDEFAULT;
			case GarboardPackage.STARTING_BATTERY__DIELECTRIC_SHIELD:
				return dielectricShield != DIELECTRIC_SHIELD_EDEFAULT;
			case GarboardPackage.STARTING_BATTERY__ABOVE_OR_BELOW_FUEL_FITTINGS:
				return aboveOrBelowFuelFittings != ABOVE_OR_BELOW_FUEL_FITTINGS_EDEFAULT;
			case GarboardPackage.STARTING_BATTERY__HIGH_ABOVE_BILGE:
				return highAboveBilge != HIGH_ABOVE_BILGE_EDEFAULT;
			case GarboardPackage.STARTING_BATTERY__CHARGER_RATED_CURRENT:
				return CHARGER_RATED_CURRENT_EDEFAULT == null ? chargerRatedCurrent != null : !CHARGER_RATED_CURRENT_EDEFAULT.equals(chargerRatedCurrent);
			case GarboardPackage.STARTING_BATTERY__CHARGER_VOLTAGE:
				return CHARGER_VOLTAGE_EDEFAULT == null ? chargerVoltage != null : !CHARGER_VOLTAGE_EDEFAULT.equals(chargerVoltage);
			case GarboardPackage.STARTING_BATTERY__CHARGING_VOLTAGE_RUNNING:
				return CHARGING_VOLTAGE_RUNNING_EDEFAULT == null ? chargingVoltageRunning != null : !CHARGING_VOLTAGE_RUNNING_EDEFAULT.equals(chargingVoltageRunning);
			case GarboardPackage.STARTING_BATTERY__CHARGER_AMMETER:
				return chargerAmmeter != CHARGER_AMMETER_EDEFAULT;
			case GarboardPackage.STARTING_BATTERY__SAME_TYPE_AND_AGE:
				return sameTypeAndAge != SAME_TYPE_AND_AGE_EDEFAULT;
			case GarboardPackage.STARTING_BATTERY__CABLES:
				return cables != null && !cables.isEmpty();
			case GarboardPackage.STARTING_BATTERY__CRANKING_VOLTAGE_AT_POSTS:
				return CRANKING_VOLTAGE_AT_POSTS_EDEFAULT == null ? crankingVoltageAtPosts != null : !CRANKING_VOLTAGE_AT_POSTS_EDEFAULT.equals(crankingVoltageAtPosts);
			case GarboardPackage.STARTING_BATTERY__CRANKING_VOLTAGE_AT_STARTER:
				return CRANKING_VOLTAGE_AT_STARTER_EDEFAULT == null ? crankingVoltageAtStarter != null : !CRANKING_VOLTAGE_AT_STARTER_EDEFAULT.equals(crankingVoltageAtStarter);
			case GarboardPackage.STARTING_BATTERY__BLOCKS_MIXED:
				return blocksMixed != BLOCKS_MIXED_EDEFAULT;
			case GarboardPackage.STARTING_BATTERY__EMERGENCY_SOURCE:
				return emergencySource != EMERGENCY_SOURCE_EDEFAULT;
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
		result.append(" (chemistry: ");
		result.append(chemistry);
		result.append(", blockVoltage: ");
		result.append(blockVoltage);
		result.append(", blocksInSeries: ");
		result.append(blocksInSeries);
		result.append(", stringsInParallel: ");
		result.append(stringsInParallel);
		result.append(", blockCapacity: ");
		result.append(blockCapacity);
		result.append(", blockCrankingRating: ");
		result.append(blockCrankingRating);
		result.append(", crankingRatingDefinition: ");
		result.append(crankingRatingDefinition);
		result.append(", installedOn: ");
		result.append(installedOn);
		result.append(", blockMass: ");
		result.append(blockMass);
		result.append(", batteryTemperature: ");
		result.append(batteryTemperature);
		result.append(", restTime: ");
		result.append(restTime);
		result.append(", restedVoltage: ");
		result.append(restedVoltage);
		result.append(", coldestStart: ");
		result.append(coldestStart);
		result.append(", dedicatedToGenerator: ");
		result.append(dedicatedToGenerator);
		result.append(", isolatingSwitch: ");
		result.append(isolatingSwitch);
		result.append(", isolatingSwitchReachable: ");
		result.append(isolatingSwitchReachable);
		result.append(", emergencyCrossConnect: ");
		result.append(emergencyCrossConnect);
		result.append(", secured: ");
		result.append(secured);
		result.append(", movementUnderTest: ");
		result.append(movementUnderTest);
		result.append(", trayOrBox: ");
		result.append(trayOrBox);
		result.append(", positiveTerminalCovered: ");
		result.append(positiveTerminalCovered);
		result.append(", terminals: ");
		result.append(terminals);
		result.append(", ventedOverboard: ");
		result.append(ventedOverboard);
		result.append(", ventilationAreaEachWay: ");
		result.append(ventilationAreaEachWay);
		result.append(", distanceToStarter: ");
		result.append(distanceToStarter);
		result.append(", fuelPartsWithinReach: ");
		result.append(fuelPartsWithinReach);
		result.append(", dielectricShield: ");
		result.append(dielectricShield);
		result.append(", aboveOrBelowFuelFittings: ");
		result.append(aboveOrBelowFuelFittings);
		result.append(", highAboveBilge: ");
		result.append(highAboveBilge);
		result.append(", chargerRatedCurrent: ");
		result.append(chargerRatedCurrent);
		result.append(", chargerVoltage: ");
		result.append(chargerVoltage);
		result.append(", chargingVoltageRunning: ");
		result.append(chargingVoltageRunning);
		result.append(", chargerAmmeter: ");
		result.append(chargerAmmeter);
		result.append(", sameTypeAndAge: ");
		result.append(sameTypeAndAge);
		result.append(", crankingVoltageAtPosts: ");
		result.append(crankingVoltageAtPosts);
		result.append(", crankingVoltageAtStarter: ");
		result.append(crankingVoltageAtStarter);
		result.append(", blocksMixed: ");
		result.append(blocksMixed);
		result.append(", emergencySource: ");
		result.append(emergencySource);
		result.append(')');
		return result.toString();
	}

} //StartingBatteryImpl
