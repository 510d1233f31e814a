/**
 */
package garboard.model.impl;

import garboard.model.Answer;
import garboard.model.AntiSiphonProtection;
import garboard.model.FuelLineRun;
import garboard.model.FuelSeparator;
import garboard.model.FuelSupply;
import garboard.model.FuelTank;
import garboard.model.GarboardPackage;
import garboard.model.Point;

import garboard.quantity.GaugePressure;
import garboard.quantity.Length;
import garboard.quantity.Power;
import garboard.quantity.PressureDifference;
import garboard.quantity.Resistance;
import garboard.quantity.TimeSpan;
import garboard.quantity.Volume;
import garboard.quantity.VolumeFlow;

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
 * An implementation of the model object '<em><b>Fuel Supply</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.impl.FuelSupplyImpl#getTank <em>Tank</em>}</li>
 *   <li>{@link garboard.model.impl.FuelSupplyImpl#getLines <em>Lines</em>}</li>
 *   <li>{@link garboard.model.impl.FuelSupplyImpl#getSeparator <em>Separator</em>}</li>
 *   <li>{@link garboard.model.impl.FuelSupplyImpl#getPumpPosition <em>Pump Position</em>}</li>
 *   <li>{@link garboard.model.impl.FuelSupplyImpl#getEngineInletHeight <em>Engine Inlet Height</em>}</li>
 *   <li>{@link garboard.model.impl.FuelSupplyImpl#getHighestLinePoint <em>Highest Line Point</em>}</li>
 *   <li>{@link garboard.model.impl.FuelSupplyImpl#getLowestLinePoint <em>Lowest Line Point</em>}</li>
 *   <li>{@link garboard.model.impl.FuelSupplyImpl#getPumpFlow <em>Pump Flow</em>}</li>
 *   <li>{@link garboard.model.impl.FuelSupplyImpl#getElectricPump <em>Electric Pump</em>}</li>
 *   <li>{@link garboard.model.impl.FuelSupplyImpl#getPumpStopsWithEngine <em>Pump Stops With Engine</em>}</li>
 *   <li>{@link garboard.model.impl.FuelSupplyImpl#getPumpWithinReachOfEngine <em>Pump Within Reach Of Engine</em>}</li>
 *   <li>{@link garboard.model.impl.FuelSupplyImpl#getAntiSiphon <em>Anti Siphon</em>}</li>
 *   <li>{@link garboard.model.impl.FuelSupplyImpl#getAntiSiphonCrackingPressure <em>Anti Siphon Cracking Pressure</em>}</li>
 *   <li>{@link garboard.model.impl.FuelSupplyImpl#getTankShutOff <em>Tank Shut Off</em>}</li>
 *   <li>{@link garboard.model.impl.FuelSupplyImpl#getTankShutOffReachableFromOutside <em>Tank Shut Off Reachable From Outside</em>}</li>
 *   <li>{@link garboard.model.impl.FuelSupplyImpl#getEngineShutOff <em>Engine Shut Off</em>}</li>
 *   <li>{@link garboard.model.impl.FuelSupplyImpl#getLineLengthTankToEngine <em>Line Length Tank To Engine</em>}</li>
 *   <li>{@link garboard.model.impl.FuelSupplyImpl#getOwnPickUp <em>Own Pick Up</em>}</li>
 *   <li>{@link garboard.model.impl.FuelSupplyImpl#getPickUpClearance <em>Pick Up Clearance</em>}</li>
 *   <li>{@link garboard.model.impl.FuelSupplyImpl#getPickUpScreen <em>Pick Up Screen</em>}</li>
 *   <li>{@link garboard.model.impl.FuelSupplyImpl#getReturnToTankInUse <em>Return To Tank In Use</em>}</li>
 *   <li>{@link garboard.model.impl.FuelSupplyImpl#getReturnCanDeadHead <em>Return Can Dead Head</em>}</li>
 *   <li>{@link garboard.model.impl.FuelSupplyImpl#getFlexibleLastLink <em>Flexible Last Link</em>}</li>
 *   <li>{@link garboard.model.impl.FuelSupplyImpl#getRigidLineSupportDistance <em>Rigid Line Support Distance</em>}</li>
 *   <li>{@link garboard.model.impl.FuelSupplyImpl#getFlexibleHoseSpillVolume <em>Flexible Hose Spill Volume</em>}</li>
 *   <li>{@link garboard.model.impl.FuelSupplyImpl#getLeakTestPressure <em>Leak Test Pressure</em>}</li>
 *   <li>{@link garboard.model.impl.FuelSupplyImpl#getLeakTestHeld <em>Leak Test Held</em>}</li>
 *   <li>{@link garboard.model.impl.FuelSupplyImpl#getGroundResistance <em>Ground Resistance</em>}</li>
 *   <li>{@link garboard.model.impl.FuelSupplyImpl#getFillHoseClamps <em>Fill Hose Clamps</em>}</li>
 *   <li>{@link garboard.model.impl.FuelSupplyImpl#getFillClampBandWidth <em>Fill Clamp Band Width</em>}</li>
 *   <li>{@link garboard.model.impl.FuelSupplyImpl#getVentFlameArrester <em>Vent Flame Arrester</em>}</li>
 *   <li>{@link garboard.model.impl.FuelSupplyImpl#getCleanVacuumAtPump <em>Clean Vacuum At Pump</em>}</li>
 *   <li>{@link garboard.model.impl.FuelSupplyImpl#getVacuumAtPumpNow <em>Vacuum At Pump Now</em>}</li>
 *   <li>{@link garboard.model.impl.FuelSupplyImpl#getFeedPressure <em>Feed Pressure</em>}</li>
 *   <li>{@link garboard.model.impl.FuelSupplyImpl#getRailPressure <em>Rail Pressure</em>}</li>
 *   <li>{@link garboard.model.impl.FuelSupplyImpl#getPlannedRunTime <em>Planned Run Time</em>}</li>
 *   <li>{@link garboard.model.impl.FuelSupplyImpl#getPlannedLoadPower <em>Planned Load Power</em>}</li>
 *   <li>{@link garboard.model.impl.FuelSupplyImpl#getBackfireFlameArrester <em>Backfire Flame Arrester</em>}</li>
 * </ul>
 *
 * @generated
 */
public class FuelSupplyImpl extends MinimalEObjectImpl.Container implements FuelSupply {
	/**
	 * The cached value of the '{@link #getTank() <em>Tank</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTank()
	 * @generated
	 * @ordered
	 */
	protected FuelTank tank;

	/**
	 * The cached value of the '{@link #getLines() <em>Lines</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLines()
	 * @generated
	 * @ordered
	 */
	protected EList<FuelLineRun> lines;

	/**
	 * The cached value of the '{@link #getSeparator() <em>Separator</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSeparator()
	 * @generated
	 * @ordered
	 */
	protected FuelSeparator separator;

	/**
	 * The cached value of the '{@link #getPumpPosition() <em>Pump Position</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPumpPosition()
	 * @generated
	 * @ordered
	 */
	protected Point pumpPosition;

	/**
	 * The default value of the '{@link #getEngineInletHeight() <em>Engine Inlet Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEngineInletHeight()
	 * @generated
	 * @ordered
	 */
	protected static final Length ENGINE_INLET_HEIGHT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getEngineInletHeight() <em>Engine Inlet Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEngineInletHeight()
	 * @generated
	 * @ordered
	 */
	protected Length engineInletHeight = ENGINE_INLET_HEIGHT_EDEFAULT;

	/**
	 * The default value of the '{@link #getHighestLinePoint() <em>Highest Line Point</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHighestLinePoint()
	 * @generated
	 * @ordered
	 */
	protected static final Length HIGHEST_LINE_POINT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getHighestLinePoint() <em>Highest Line Point</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHighestLinePoint()
	 * @generated
	 * @ordered
	 */
	protected Length highestLinePoint = HIGHEST_LINE_POINT_EDEFAULT;

	/**
	 * The default value of the '{@link #getLowestLinePoint() <em>Lowest Line Point</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLowestLinePoint()
	 * @generated
	 * @ordered
	 */
	protected static final Length LOWEST_LINE_POINT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLowestLinePoint() <em>Lowest Line Point</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLowestLinePoint()
	 * @generated
	 * @ordered
	 */
	protected Length lowestLinePoint = LOWEST_LINE_POINT_EDEFAULT;

	/**
	 * The default value of the '{@link #getPumpFlow() <em>Pump Flow</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPumpFlow()
	 * @generated
	 * @ordered
	 */
	protected static final VolumeFlow PUMP_FLOW_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPumpFlow() <em>Pump Flow</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPumpFlow()
	 * @generated
	 * @ordered
	 */
	protected VolumeFlow pumpFlow = PUMP_FLOW_EDEFAULT;

	/**
	 * The default value of the '{@link #getElectricPump() <em>Electric Pump</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getElectricPump()
	 * @generated
	 * @ordered
	 */
	protected static final Answer ELECTRIC_PUMP_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getElectricPump() <em>Electric Pump</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getElectricPump()
	 * @generated
	 * @ordered
	 */
	protected Answer electricPump = ELECTRIC_PUMP_EDEFAULT;

	/**
	 * The default value of the '{@link #getPumpStopsWithEngine() <em>Pump Stops With Engine</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPumpStopsWithEngine()
	 * @generated
	 * @ordered
	 */
	protected static final Answer PUMP_STOPS_WITH_ENGINE_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getPumpStopsWithEngine() <em>Pump Stops With Engine</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPumpStopsWithEngine()
	 * @generated
	 * @ordered
	 */
	protected Answer pumpStopsWithEngine = PUMP_STOPS_WITH_ENGINE_EDEFAULT;

	/**
	 * The default value of the '{@link #getPumpWithinReachOfEngine() <em>Pump Within Reach Of Engine</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPumpWithinReachOfEngine()
	 * @generated
	 * @ordered
	 */
	protected static final Answer PUMP_WITHIN_REACH_OF_ENGINE_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getPumpWithinReachOfEngine() <em>Pump Within Reach Of Engine</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPumpWithinReachOfEngine()
	 * @generated
	 * @ordered
	 */
	protected Answer pumpWithinReachOfEngine = PUMP_WITHIN_REACH_OF_ENGINE_EDEFAULT;

	/**
	 * The default value of the '{@link #getAntiSiphon() <em>Anti Siphon</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAntiSiphon()
	 * @generated
	 * @ordered
	 */
	protected static final AntiSiphonProtection ANTI_SIPHON_EDEFAULT = AntiSiphonProtection.NOT_ENTERED;

	/**
	 * The cached value of the '{@link #getAntiSiphon() <em>Anti Siphon</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAntiSiphon()
	 * @generated
	 * @ordered
	 */
	protected AntiSiphonProtection antiSiphon = ANTI_SIPHON_EDEFAULT;

	/**
	 * The default value of the '{@link #getAntiSiphonCrackingPressure() <em>Anti Siphon Cracking Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAntiSiphonCrackingPressure()
	 * @generated
	 * @ordered
	 */
	protected static final PressureDifference ANTI_SIPHON_CRACKING_PRESSURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAntiSiphonCrackingPressure() <em>Anti Siphon Cracking Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAntiSiphonCrackingPressure()
	 * @generated
	 * @ordered
	 */
	protected PressureDifference antiSiphonCrackingPressure = ANTI_SIPHON_CRACKING_PRESSURE_EDEFAULT;

	/**
	 * The default value of the '{@link #getTankShutOff() <em>Tank Shut Off</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTankShutOff()
	 * @generated
	 * @ordered
	 */
	protected static final Answer TANK_SHUT_OFF_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getTankShutOff() <em>Tank Shut Off</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTankShutOff()
	 * @generated
	 * @ordered
	 */
	protected Answer tankShutOff = TANK_SHUT_OFF_EDEFAULT;

	/**
	 * The default value of the '{@link #getTankShutOffReachableFromOutside() <em>Tank Shut Off Reachable From Outside</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTankShutOffReachableFromOutside()
	 * @generated
	 * @ordered
	 */
	protected static final Answer TANK_SHUT_OFF_REACHABLE_FROM_OUTSIDE_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getTankShutOffReachableFromOutside() <em>Tank Shut Off Reachable From Outside</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTankShutOffReachableFromOutside()
	 * @generated
	 * @ordered
	 */
	protected Answer tankShutOffReachableFromOutside = TANK_SHUT_OFF_REACHABLE_FROM_OUTSIDE_EDEFAULT;

	/**
	 * The default value of the '{@link #getEngineShutOff() <em>Engine Shut Off</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEngineShutOff()
	 * @generated
	 * @ordered
	 */
	protected static final Answer ENGINE_SHUT_OFF_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getEngineShutOff() <em>Engine Shut Off</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEngineShutOff()
	 * @generated
	 * @ordered
	 */
	protected Answer engineShutOff = ENGINE_SHUT_OFF_EDEFAULT;

	/**
	 * The default value of the '{@link #getLineLengthTankToEngine() <em>Line Length Tank To Engine</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLineLengthTankToEngine()
	 * @generated
	 * @ordered
	 */
	protected static final Length LINE_LENGTH_TANK_TO_ENGINE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLineLengthTankToEngine() <em>Line Length Tank To Engine</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLineLengthTankToEngine()
	 * @generated
	 * @ordered
	 */
	protected Length lineLengthTankToEngine = LINE_LENGTH_TANK_TO_ENGINE_EDEFAULT;

	/**
	 * The default value of the '{@link #getOwnPickUp() <em>Own Pick Up</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOwnPickUp()
	 * @generated
	 * @ordered
	 */
	protected static final Answer OWN_PICK_UP_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getOwnPickUp() <em>Own Pick Up</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOwnPickUp()
	 * @generated
	 * @ordered
	 */
	protected Answer ownPickUp = OWN_PICK_UP_EDEFAULT;

	/**
	 * The default value of the '{@link #getPickUpClearance() <em>Pick Up Clearance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPickUpClearance()
	 * @generated
	 * @ordered
	 */
	protected static final Length PICK_UP_CLEARANCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPickUpClearance() <em>Pick Up Clearance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPickUpClearance()
	 * @generated
	 * @ordered
	 */
	protected Length pickUpClearance = PICK_UP_CLEARANCE_EDEFAULT;

	/**
	 * The default value of the '{@link #getPickUpScreen() <em>Pick Up Screen</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPickUpScreen()
	 * @generated
	 * @ordered
	 */
	protected static final Answer PICK_UP_SCREEN_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getPickUpScreen() <em>Pick Up Screen</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPickUpScreen()
	 * @generated
	 * @ordered
	 */
	protected Answer pickUpScreen = PICK_UP_SCREEN_EDEFAULT;

	/**
	 * The default value of the '{@link #getReturnToTankInUse() <em>Return To Tank In Use</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReturnToTankInUse()
	 * @generated
	 * @ordered
	 */
	protected static final Answer RETURN_TO_TANK_IN_USE_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getReturnToTankInUse() <em>Return To Tank In Use</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReturnToTankInUse()
	 * @generated
	 * @ordered
	 */
	protected Answer returnToTankInUse = RETURN_TO_TANK_IN_USE_EDEFAULT;

	/**
	 * The default value of the '{@link #getReturnCanDeadHead() <em>Return Can Dead Head</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReturnCanDeadHead()
	 * @generated
	 * @ordered
	 */
	protected static final Answer RETURN_CAN_DEAD_HEAD_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getReturnCanDeadHead() <em>Return Can Dead Head</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReturnCanDeadHead()
	 * @generated
	 * @ordered
	 */
	protected Answer returnCanDeadHead = RETURN_CAN_DEAD_HEAD_EDEFAULT;

	/**
	 * The default value of the '{@link #getFlexibleLastLink() <em>Flexible Last Link</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFlexibleLastLink()
	 * @generated
	 * @ordered
	 */
	protected static final Answer FLEXIBLE_LAST_LINK_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getFlexibleLastLink() <em>Flexible Last Link</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFlexibleLastLink()
	 * @generated
	 * @ordered
	 */
	protected Answer flexibleLastLink = FLEXIBLE_LAST_LINK_EDEFAULT;

	/**
	 * The default value of the '{@link #getRigidLineSupportDistance() <em>Rigid Line Support Distance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRigidLineSupportDistance()
	 * @generated
	 * @ordered
	 */
	protected static final Length RIGID_LINE_SUPPORT_DISTANCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRigidLineSupportDistance() <em>Rigid Line Support Distance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRigidLineSupportDistance()
	 * @generated
	 * @ordered
	 */
	protected Length rigidLineSupportDistance = RIGID_LINE_SUPPORT_DISTANCE_EDEFAULT;

	/**
	 * The default value of the '{@link #getFlexibleHoseSpillVolume() <em>Flexible Hose Spill Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFlexibleHoseSpillVolume()
	 * @generated
	 * @ordered
	 */
	protected static final Volume FLEXIBLE_HOSE_SPILL_VOLUME_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFlexibleHoseSpillVolume() <em>Flexible Hose Spill Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFlexibleHoseSpillVolume()
	 * @generated
	 * @ordered
	 */
	protected Volume flexibleHoseSpillVolume = FLEXIBLE_HOSE_SPILL_VOLUME_EDEFAULT;

	/**
	 * The default value of the '{@link #getLeakTestPressure() <em>Leak Test Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLeakTestPressure()
	 * @generated
	 * @ordered
	 */
	protected static final GaugePressure LEAK_TEST_PRESSURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLeakTestPressure() <em>Leak Test Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLeakTestPressure()
	 * @generated
	 * @ordered
	 */
	protected GaugePressure leakTestPressure = LEAK_TEST_PRESSURE_EDEFAULT;

	/**
	 * The default value of the '{@link #getLeakTestHeld() <em>Leak Test Held</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLeakTestHeld()
	 * @generated
	 * @ordered
	 */
	protected static final Answer LEAK_TEST_HELD_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getLeakTestHeld() <em>Leak Test Held</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLeakTestHeld()
	 * @generated
	 * @ordered
	 */
	protected Answer leakTestHeld = LEAK_TEST_HELD_EDEFAULT;

	/**
	 * The default value of the '{@link #getGroundResistance() <em>Ground Resistance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGroundResistance()
	 * @generated
	 * @ordered
	 */
	protected static final Resistance GROUND_RESISTANCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getGroundResistance() <em>Ground Resistance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGroundResistance()
	 * @generated
	 * @ordered
	 */
	protected Resistance groundResistance = GROUND_RESISTANCE_EDEFAULT;

	/**
	 * The default value of the '{@link #getFillHoseClamps() <em>Fill Hose Clamps</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFillHoseClamps()
	 * @generated
	 * @ordered
	 */
	protected static final Integer FILL_HOSE_CLAMPS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFillHoseClamps() <em>Fill Hose Clamps</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFillHoseClamps()
	 * @generated
	 * @ordered
	 */
	protected Integer fillHoseClamps = FILL_HOSE_CLAMPS_EDEFAULT;

	/**
	 * The default value of the '{@link #getFillClampBandWidth() <em>Fill Clamp Band Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFillClampBandWidth()
	 * @generated
	 * @ordered
	 */
	protected static final Length FILL_CLAMP_BAND_WIDTH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFillClampBandWidth() <em>Fill Clamp Band Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFillClampBandWidth()
	 * @generated
	 * @ordered
	 */
	protected Length fillClampBandWidth = FILL_CLAMP_BAND_WIDTH_EDEFAULT;

	/**
	 * The default value of the '{@link #getVentFlameArrester() <em>Vent Flame Arrester</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVentFlameArrester()
	 * @generated
	 * @ordered
	 */
	protected static final Answer VENT_FLAME_ARRESTER_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getVentFlameArrester() <em>Vent Flame Arrester</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVentFlameArrester()
	 * @generated
	 * @ordered
	 */
	protected Answer ventFlameArrester = VENT_FLAME_ARRESTER_EDEFAULT;

	/**
	 * The default value of the '{@link #getCleanVacuumAtPump() <em>Clean Vacuum At Pump</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCleanVacuumAtPump()
	 * @generated
	 * @ordered
	 */
	protected static final PressureDifference CLEAN_VACUUM_AT_PUMP_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCleanVacuumAtPump() <em>Clean Vacuum At Pump</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCleanVacuumAtPump()
	 * @generated
	 * @ordered
	 */
	protected PressureDifference cleanVacuumAtPump = CLEAN_VACUUM_AT_PUMP_EDEFAULT;

	/**
	 * The default value of the '{@link #getVacuumAtPumpNow() <em>Vacuum At Pump Now</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVacuumAtPumpNow()
	 * @generated
	 * @ordered
	 */
	protected static final PressureDifference VACUUM_AT_PUMP_NOW_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getVacuumAtPumpNow() <em>Vacuum At Pump Now</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVacuumAtPumpNow()
	 * @generated
	 * @ordered
	 */
	protected PressureDifference vacuumAtPumpNow = VACUUM_AT_PUMP_NOW_EDEFAULT;

	/**
	 * The default value of the '{@link #getFeedPressure() <em>Feed Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFeedPressure()
	 * @generated
	 * @ordered
	 */
	protected static final GaugePressure FEED_PRESSURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFeedPressure() <em>Feed Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFeedPressure()
	 * @generated
	 * @ordered
	 */
	protected GaugePressure feedPressure = FEED_PRESSURE_EDEFAULT;

	/**
	 * The default value of the '{@link #getRailPressure() <em>Rail Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRailPressure()
	 * @generated
	 * @ordered
	 */
	protected static final GaugePressure RAIL_PRESSURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRailPressure() <em>Rail Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRailPressure()
	 * @generated
	 * @ordered
	 */
	protected GaugePressure railPressure = RAIL_PRESSURE_EDEFAULT;

	/**
	 * The default value of the '{@link #getPlannedRunTime() <em>Planned Run Time</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlannedRunTime()
	 * @generated
	 * @ordered
	 */
	protected static final TimeSpan PLANNED_RUN_TIME_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPlannedRunTime() <em>Planned Run Time</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlannedRunTime()
	 * @generated
	 * @ordered
	 */
	protected TimeSpan plannedRunTime = PLANNED_RUN_TIME_EDEFAULT;

	/**
	 * The default value of the '{@link #getPlannedLoadPower() <em>Planned Load Power</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlannedLoadPower()
	 * @generated
	 * @ordered
	 */
	protected static final Power PLANNED_LOAD_POWER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPlannedLoadPower() <em>Planned Load Power</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlannedLoadPower()
	 * @generated
	 * @ordered
	 */
	protected Power plannedLoadPower = PLANNED_LOAD_POWER_EDEFAULT;

	/**
	 * The default value of the '{@link #getBackfireFlameArrester() <em>Backfire Flame Arrester</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBackfireFlameArrester()
	 * @generated
	 * @ordered
	 */
	protected static final Answer BACKFIRE_FLAME_ARRESTER_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getBackfireFlameArrester() <em>Backfire Flame Arrester</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBackfireFlameArrester()
	 * @generated
	 * @ordered
	 */
	protected Answer backfireFlameArrester = BACKFIRE_FLAME_ARRESTER_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected FuelSupplyImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return GarboardPackage.Literals.FUEL_SUPPLY;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public FuelTank getTank() {
		return tank;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetTank(FuelTank newTank, NotificationChain msgs) {
		FuelTank oldTank = tank;
		tank = newTank;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_SUPPLY__TANK, oldTank, newTank);
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
	public void setTank(FuelTank newTank) {
		if (newTank != tank) {
			NotificationChain msgs = null;
			if (tank != null)
				msgs = ((InternalEObject)tank).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.FUEL_SUPPLY__TANK, null, msgs);
			if (newTank != null)
				msgs = ((InternalEObject)newTank).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.FUEL_SUPPLY__TANK, null, msgs);
			msgs = basicSetTank(newTank, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_SUPPLY__TANK, newTank, newTank));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<FuelLineRun> getLines() {
		if (lines == null) {
			lines = new EObjectContainmentEList<FuelLineRun>(FuelLineRun.class, this, GarboardPackage.FUEL_SUPPLY__LINES);
		}
		return lines;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public FuelSeparator getSeparator() {
		return separator;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetSeparator(FuelSeparator newSeparator, NotificationChain msgs) {
		FuelSeparator oldSeparator = separator;
		separator = newSeparator;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_SUPPLY__SEPARATOR, oldSeparator, newSeparator);
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
	public void setSeparator(FuelSeparator newSeparator) {
		if (newSeparator != separator) {
			NotificationChain msgs = null;
			if (separator != null)
				msgs = ((InternalEObject)separator).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.FUEL_SUPPLY__SEPARATOR, null, msgs);
			if (newSeparator != null)
				msgs = ((InternalEObject)newSeparator).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.FUEL_SUPPLY__SEPARATOR, null, msgs);
			msgs = basicSetSeparator(newSeparator, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_SUPPLY__SEPARATOR, newSeparator, newSeparator));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Point getPumpPosition() {
		return pumpPosition;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetPumpPosition(Point newPumpPosition, NotificationChain msgs) {
		Point oldPumpPosition = pumpPosition;
		pumpPosition = newPumpPosition;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_SUPPLY__PUMP_POSITION, oldPumpPosition, newPumpPosition);
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
	public void setPumpPosition(Point newPumpPosition) {
		if (newPumpPosition != pumpPosition) {
			NotificationChain msgs = null;
			if (pumpPosition != null)
				msgs = ((InternalEObject)pumpPosition).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.FUEL_SUPPLY__PUMP_POSITION, null, msgs);
			if (newPumpPosition != null)
				msgs = ((InternalEObject)newPumpPosition).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.FUEL_SUPPLY__PUMP_POSITION, null, msgs);
			msgs = basicSetPumpPosition(newPumpPosition, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_SUPPLY__PUMP_POSITION, newPumpPosition, newPumpPosition));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getEngineInletHeight() {
		return engineInletHeight;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEngineInletHeight(Length newEngineInletHeight) {
		Length oldEngineInletHeight = engineInletHeight;
		engineInletHeight = newEngineInletHeight;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_SUPPLY__ENGINE_INLET_HEIGHT, oldEngineInletHeight, engineInletHeight));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getHighestLinePoint() {
		return highestLinePoint;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHighestLinePoint(Length newHighestLinePoint) {
		Length oldHighestLinePoint = highestLinePoint;
		highestLinePoint = newHighestLinePoint;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_SUPPLY__HIGHEST_LINE_POINT, oldHighestLinePoint, highestLinePoint));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getLowestLinePoint() {
		return lowestLinePoint;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLowestLinePoint(Length newLowestLinePoint) {
		Length oldLowestLinePoint = lowestLinePoint;
		lowestLinePoint = newLowestLinePoint;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_SUPPLY__LOWEST_LINE_POINT, oldLowestLinePoint, lowestLinePoint));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public VolumeFlow getPumpFlow() {
		return pumpFlow;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPumpFlow(VolumeFlow newPumpFlow) {
		VolumeFlow oldPumpFlow = pumpFlow;
		pumpFlow = newPumpFlow;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_SUPPLY__PUMP_FLOW, oldPumpFlow, pumpFlow));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getElectricPump() {
		return electricPump;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setElectricPump(Answer newElectricPump) {
		Answer oldElectricPump = electricPump;
		electricPump = newElectricPump == null ? ELECTRIC_PUMP_EDEFAULT : newElectricPump;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_SUPPLY__ELECTRIC_PUMP, oldElectricPump, electricPump));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getPumpStopsWithEngine() {
		return pumpStopsWithEngine;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPumpStopsWithEngine(Answer newPumpStopsWithEngine) {
		Answer oldPumpStopsWithEngine = pumpStopsWithEngine;
		pumpStopsWithEngine = newPumpStopsWithEngine == null ? PUMP_STOPS_WITH_ENGINE_EDEFAULT : newPumpStopsWithEngine;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_SUPPLY__PUMP_STOPS_WITH_ENGINE, oldPumpStopsWithEngine, pumpStopsWithEngine));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getPumpWithinReachOfEngine() {
		return pumpWithinReachOfEngine;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPumpWithinReachOfEngine(Answer newPumpWithinReachOfEngine) {
		Answer oldPumpWithinReachOfEngine = pumpWithinReachOfEngine;
		pumpWithinReachOfEngine = newPumpWithinReachOfEngine == null ? PUMP_WITHIN_REACH_OF_ENGINE_EDEFAULT : newPumpWithinReachOfEngine;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_SUPPLY__PUMP_WITHIN_REACH_OF_ENGINE, oldPumpWithinReachOfEngine, pumpWithinReachOfEngine));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public AntiSiphonProtection getAntiSiphon() {
		return antiSiphon;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAntiSiphon(AntiSiphonProtection newAntiSiphon) {
		AntiSiphonProtection oldAntiSiphon = antiSiphon;
		antiSiphon = newAntiSiphon == null ? ANTI_SIPHON_EDEFAULT : newAntiSiphon;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_SUPPLY__ANTI_SIPHON, oldAntiSiphon, antiSiphon));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PressureDifference getAntiSiphonCrackingPressure() {
		return antiSiphonCrackingPressure;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAntiSiphonCrackingPressure(PressureDifference newAntiSiphonCrackingPressure) {
		PressureDifference oldAntiSiphonCrackingPressure = antiSiphonCrackingPressure;
		antiSiphonCrackingPressure = newAntiSiphonCrackingPressure;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_SUPPLY__ANTI_SIPHON_CRACKING_PRESSURE, oldAntiSiphonCrackingPressure, antiSiphonCrackingPressure));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getTankShutOff() {
		return tankShutOff;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTankShutOff(Answer newTankShutOff) {
		Answer oldTankShutOff = tankShutOff;
		tankShutOff = newTankShutOff == null ? TANK_SHUT_OFF_EDEFAULT : newTankShutOff;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_SUPPLY__TANK_SHUT_OFF, oldTankShutOff, tankShutOff));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getTankShutOffReachableFromOutside() {
		return tankShutOffReachableFromOutside;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTankShutOffReachableFromOutside(Answer newTankShutOffReachableFromOutside) {
		Answer oldTankShutOffReachableFromOutside = tankShutOffReachableFromOutside;
		tankShutOffReachableFromOutside = newTankShutOffReachableFromOutside == null ? TANK_SHUT_OFF_REACHABLE_FROM_OUTSIDE_EDEFAULT : newTankShutOffReachableFromOutside;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_SUPPLY__TANK_SHUT_OFF_REACHABLE_FROM_OUTSIDE, oldTankShutOffReachableFromOutside, tankShutOffReachableFromOutside));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getEngineShutOff() {
		return engineShutOff;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEngineShutOff(Answer newEngineShutOff) {
		Answer oldEngineShutOff = engineShutOff;
		engineShutOff = newEngineShutOff == null ? ENGINE_SHUT_OFF_EDEFAULT : newEngineShutOff;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_SUPPLY__ENGINE_SHUT_OFF, oldEngineShutOff, engineShutOff));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getLineLengthTankToEngine() {
		return lineLengthTankToEngine;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLineLengthTankToEngine(Length newLineLengthTankToEngine) {
		Length oldLineLengthTankToEngine = lineLengthTankToEngine;
		lineLengthTankToEngine = newLineLengthTankToEngine;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_SUPPLY__LINE_LENGTH_TANK_TO_ENGINE, oldLineLengthTankToEngine, lineLengthTankToEngine));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getOwnPickUp() {
		return ownPickUp;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOwnPickUp(Answer newOwnPickUp) {
		Answer oldOwnPickUp = ownPickUp;
		ownPickUp = newOwnPickUp == null ? OWN_PICK_UP_EDEFAULT : newOwnPickUp;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_SUPPLY__OWN_PICK_UP, oldOwnPickUp, ownPickUp));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getPickUpClearance() {
		return pickUpClearance;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPickUpClearance(Length newPickUpClearance) {
		Length oldPickUpClearance = pickUpClearance;
		pickUpClearance = newPickUpClearance;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_SUPPLY__PICK_UP_CLEARANCE, oldPickUpClearance, pickUpClearance));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getPickUpScreen() {
		return pickUpScreen;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPickUpScreen(Answer newPickUpScreen) {
		Answer oldPickUpScreen = pickUpScreen;
		pickUpScreen = newPickUpScreen == null ? PICK_UP_SCREEN_EDEFAULT : newPickUpScreen;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_SUPPLY__PICK_UP_SCREEN, oldPickUpScreen, pickUpScreen));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getReturnToTankInUse() {
		return returnToTankInUse;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setReturnToTankInUse(Answer newReturnToTankInUse) {
		Answer oldReturnToTankInUse = returnToTankInUse;
		returnToTankInUse = newReturnToTankInUse == null ? RETURN_TO_TANK_IN_USE_EDEFAULT : newReturnToTankInUse;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_SUPPLY__RETURN_TO_TANK_IN_USE, oldReturnToTankInUse, returnToTankInUse));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getReturnCanDeadHead() {
		return returnCanDeadHead;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setReturnCanDeadHead(Answer newReturnCanDeadHead) {
		Answer oldReturnCanDeadHead = returnCanDeadHead;
		returnCanDeadHead = newReturnCanDeadHead == null ? RETURN_CAN_DEAD_HEAD_EDEFAULT : newReturnCanDeadHead;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_SUPPLY__RETURN_CAN_DEAD_HEAD, oldReturnCanDeadHead, returnCanDeadHead));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getFlexibleLastLink() {
		return flexibleLastLink;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFlexibleLastLink(Answer newFlexibleLastLink) {
		Answer oldFlexibleLastLink = flexibleLastLink;
		flexibleLastLink = newFlexibleLastLink == null ? FLEXIBLE_LAST_LINK_EDEFAULT : newFlexibleLastLink;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_SUPPLY__FLEXIBLE_LAST_LINK, oldFlexibleLastLink, flexibleLastLink));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getRigidLineSupportDistance() {
		return rigidLineSupportDistance;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRigidLineSupportDistance(Length newRigidLineSupportDistance) {
		Length oldRigidLineSupportDistance = rigidLineSupportDistance;
		rigidLineSupportDistance = newRigidLineSupportDistance;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_SUPPLY__RIGID_LINE_SUPPORT_DISTANCE, oldRigidLineSupportDistance, rigidLineSupportDistance));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Volume getFlexibleHoseSpillVolume() {
		return flexibleHoseSpillVolume;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFlexibleHoseSpillVolume(Volume newFlexibleHoseSpillVolume) {
		Volume oldFlexibleHoseSpillVolume = flexibleHoseSpillVolume;
		flexibleHoseSpillVolume = newFlexibleHoseSpillVolume;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_SUPPLY__FLEXIBLE_HOSE_SPILL_VOLUME, oldFlexibleHoseSpillVolume, flexibleHoseSpillVolume));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public GaugePressure getLeakTestPressure() {
		return leakTestPressure;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLeakTestPressure(GaugePressure newLeakTestPressure) {
		GaugePressure oldLeakTestPressure = leakTestPressure;
		leakTestPressure = newLeakTestPressure;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_SUPPLY__LEAK_TEST_PRESSURE, oldLeakTestPressure, leakTestPressure));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getLeakTestHeld() {
		return leakTestHeld;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLeakTestHeld(Answer newLeakTestHeld) {
		Answer oldLeakTestHeld = leakTestHeld;
		leakTestHeld = newLeakTestHeld == null ? LEAK_TEST_HELD_EDEFAULT : newLeakTestHeld;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_SUPPLY__LEAK_TEST_HELD, oldLeakTestHeld, leakTestHeld));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Resistance getGroundResistance() {
		return groundResistance;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGroundResistance(Resistance newGroundResistance) {
		Resistance oldGroundResistance = groundResistance;
		groundResistance = newGroundResistance;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_SUPPLY__GROUND_RESISTANCE, oldGroundResistance, groundResistance));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getFillHoseClamps() {
		return fillHoseClamps;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFillHoseClamps(Integer newFillHoseClamps) {
		Integer oldFillHoseClamps = fillHoseClamps;
		fillHoseClamps = newFillHoseClamps;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_SUPPLY__FILL_HOSE_CLAMPS, oldFillHoseClamps, fillHoseClamps));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getFillClampBandWidth() {
		return fillClampBandWidth;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFillClampBandWidth(Length newFillClampBandWidth) {
		Length oldFillClampBandWidth = fillClampBandWidth;
		fillClampBandWidth = newFillClampBandWidth;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_SUPPLY__FILL_CLAMP_BAND_WIDTH, oldFillClampBandWidth, fillClampBandWidth));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getVentFlameArrester() {
		return ventFlameArrester;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setVentFlameArrester(Answer newVentFlameArrester) {
		Answer oldVentFlameArrester = ventFlameArrester;
		ventFlameArrester = newVentFlameArrester == null ? VENT_FLAME_ARRESTER_EDEFAULT : newVentFlameArrester;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_SUPPLY__VENT_FLAME_ARRESTER, oldVentFlameArrester, ventFlameArrester));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PressureDifference getCleanVacuumAtPump() {
		return cleanVacuumAtPump;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCleanVacuumAtPump(PressureDifference newCleanVacuumAtPump) {
		PressureDifference oldCleanVacuumAtPump = cleanVacuumAtPump;
		cleanVacuumAtPump = newCleanVacuumAtPump;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_SUPPLY__CLEAN_VACUUM_AT_PUMP, oldCleanVacuumAtPump, cleanVacuumAtPump));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PressureDifference getVacuumAtPumpNow() {
		return vacuumAtPumpNow;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setVacuumAtPumpNow(PressureDifference newVacuumAtPumpNow) {
		PressureDifference oldVacuumAtPumpNow = vacuumAtPumpNow;
		vacuumAtPumpNow = newVacuumAtPumpNow;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_SUPPLY__VACUUM_AT_PUMP_NOW, oldVacuumAtPumpNow, vacuumAtPumpNow));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public GaugePressure getFeedPressure() {
		return feedPressure;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFeedPressure(GaugePressure newFeedPressure) {
		GaugePressure oldFeedPressure = feedPressure;
		feedPressure = newFeedPressure;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_SUPPLY__FEED_PRESSURE, oldFeedPressure, feedPressure));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public GaugePressure getRailPressure() {
		return railPressure;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRailPressure(GaugePressure newRailPressure) {
		GaugePressure oldRailPressure = railPressure;
		railPressure = newRailPressure;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_SUPPLY__RAIL_PRESSURE, oldRailPressure, railPressure));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TimeSpan getPlannedRunTime() {
		return plannedRunTime;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPlannedRunTime(TimeSpan newPlannedRunTime) {
		TimeSpan oldPlannedRunTime = plannedRunTime;
		plannedRunTime = newPlannedRunTime;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_SUPPLY__PLANNED_RUN_TIME, oldPlannedRunTime, plannedRunTime));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Power getPlannedLoadPower() {
		return plannedLoadPower;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPlannedLoadPower(Power newPlannedLoadPower) {
		Power oldPlannedLoadPower = plannedLoadPower;
		plannedLoadPower = newPlannedLoadPower;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_SUPPLY__PLANNED_LOAD_POWER, oldPlannedLoadPower, plannedLoadPower));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getBackfireFlameArrester() {
		return backfireFlameArrester;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBackfireFlameArrester(Answer newBackfireFlameArrester) {
		Answer oldBackfireFlameArrester = backfireFlameArrester;
		backfireFlameArrester = newBackfireFlameArrester == null ? BACKFIRE_FLAME_ARRESTER_EDEFAULT : newBackfireFlameArrester;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_SUPPLY__BACKFIRE_FLAME_ARRESTER, oldBackfireFlameArrester, backfireFlameArrester));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case GarboardPackage.FUEL_SUPPLY__TANK:
				return basicSetTank(null, msgs);
			case GarboardPackage.FUEL_SUPPLY__LINES:
				return ((InternalEList<?>)getLines()).basicRemove(otherEnd, msgs);
			case GarboardPackage.FUEL_SUPPLY__SEPARATOR:
				return basicSetSeparator(null, msgs);
			case GarboardPackage.FUEL_SUPPLY__PUMP_POSITION:
				return basicSetPumpPosition(null, msgs);
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
			case GarboardPackage.FUEL_SUPPLY__TANK:
				return getTank();
			case GarboardPackage.FUEL_SUPPLY__LINES:
				return getLines();
			case GarboardPackage.FUEL_SUPPLY__SEPARATOR:
				return getSeparator();
			case GarboardPackage.FUEL_SUPPLY__PUMP_POSITION:
				return getPumpPosition();
			case GarboardPackage.FUEL_SUPPLY__ENGINE_INLET_HEIGHT:
				return getEngineInletHeight();
			case GarboardPackage.FUEL_SUPPLY__HIGHEST_LINE_POINT:
				return getHighestLinePoint();
			case GarboardPackage.FUEL_SUPPLY__LOWEST_LINE_POINT:
				return getLowestLinePoint();
			case GarboardPackage.FUEL_SUPPLY__PUMP_FLOW:
				return getPumpFlow();
			case GarboardPackage.FUEL_SUPPLY__ELECTRIC_PUMP:
				return getElectricPump();
			case GarboardPackage.FUEL_SUPPLY__PUMP_STOPS_WITH_ENGINE:
				return getPumpStopsWithEngine();
			case GarboardPackage.FUEL_SUPPLY__PUMP_WITHIN_REACH_OF_ENGINE:
				return getPumpWithinReachOfEngine();
			case GarboardPackage.FUEL_SUPPLY__ANTI_SIPHON:
				return getAntiSiphon();
			case GarboardPackage.FUEL_SUPPLY__ANTI_SIPHON_CRACKING_PRESSURE:
				return getAntiSiphonCrackingPressure();
			case GarboardPackage.FUEL_SUPPLY__TANK_SHUT_OFF:
				return getTankShutOff();
			case GarboardPackage.FUEL_SUPPLY__TANK_SHUT_OFF_REACHABLE_FROM_OUTSIDE:
				return getTankShutOffReachableFromOutside();
			case GarboardPackage.FUEL_SUPPLY__ENGINE_SHUT_OFF:
				return getEngineShutOff();
			case GarboardPackage.FUEL_SUPPLY__LINE_LENGTH_TANK_TO_ENGINE:
				return getLineLengthTankToEngine();
			case GarboardPackage.FUEL_SUPPLY__OWN_PICK_UP:
				return getOwnPickUp();
			case GarboardPackage.FUEL_SUPPLY__PICK_UP_CLEARANCE:
				return getPickUpClearance();
			case GarboardPackage.FUEL_SUPPLY__PICK_UP_SCREEN:
				return getPickUpScreen();
			case GarboardPackage.FUEL_SUPPLY__RETURN_TO_TANK_IN_USE:
				return getReturnToTankInUse();
			case GarboardPackage.FUEL_SUPPLY__RETURN_CAN_DEAD_HEAD:
				return getReturnCanDeadHead();
			case GarboardPackage.FUEL_SUPPLY__FLEXIBLE_LAST_LINK:
				return getFlexibleLastLink();
			case GarboardPackage.FUEL_SUPPLY__RIGID_LINE_SUPPORT_DISTANCE:
				return getRigidLineSupportDistance();
			case GarboardPackage.FUEL_SUPPLY__FLEXIBLE_HOSE_SPILL_VOLUME:
				return getFlexibleHoseSpillVolume();
			case GarboardPackage.FUEL_SUPPLY__LEAK_TEST_PRESSURE:
				return getLeakTestPressure();
			case GarboardPackage.FUEL_SUPPLY__LEAK_TEST_HELD:
				return getLeakTestHeld();
			case GarboardPackage.FUEL_SUPPLY__GROUND_RESISTANCE:
				return getGroundResistance();
			case GarboardPackage.FUEL_SUPPLY__FILL_HOSE_CLAMPS:
				return getFillHoseClamps();
			case GarboardPackage.FUEL_SUPPLY__FILL_CLAMP_BAND_WIDTH:
				return getFillClampBandWidth();
			case GarboardPackage.FUEL_SUPPLY__VENT_FLAME_ARRESTER:
				return getVentFlameArrester();
			case GarboardPackage.FUEL_SUPPLY__CLEAN_VACUUM_AT_PUMP:
				return getCleanVacuumAtPump();
			case GarboardPackage.FUEL_SUPPLY__VACUUM_AT_PUMP_NOW:
				return getVacuumAtPumpNow();
			case GarboardPackage.FUEL_SUPPLY__FEED_PRESSURE:
				return getFeedPressure();
			case GarboardPackage.FUEL_SUPPLY__RAIL_PRESSURE:
				return getRailPressure();
			case GarboardPackage.FUEL_SUPPLY__PLANNED_RUN_TIME:
				return getPlannedRunTime();
			case GarboardPackage.FUEL_SUPPLY__PLANNED_LOAD_POWER:
				return getPlannedLoadPower();
			case GarboardPackage.FUEL_SUPPLY__BACKFIRE_FLAME_ARRESTER:
				return getBackfireFlameArrester();
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
			case GarboardPackage.FUEL_SUPPLY__TANK:
				setTank((FuelTank)newValue);
				return;
			case GarboardPackage.FUEL_SUPPLY__LINES:
				getLines().clear();
				getLines().addAll((Collection<? extends FuelLineRun>)newValue);
				return;
			case GarboardPackage.FUEL_SUPPLY__SEPARATOR:
				setSeparator((FuelSeparator)newValue);
				return;
			case GarboardPackage.FUEL_SUPPLY__PUMP_POSITION:
				setPumpPosition((Point)newValue);
				return;
			case GarboardPackage.FUEL_SUPPLY__ENGINE_INLET_HEIGHT:
				setEngineInletHeight((Length)newValue);
				return;
			case GarboardPackage.FUEL_SUPPLY__HIGHEST_LINE_POINT:
				setHighestLinePoint((Length)newValue);
				return;
			case GarboardPackage.FUEL_SUPPLY__LOWEST_LINE_POINT:
				setLowestLinePoint((Length)newValue);
				return;
			case GarboardPackage.FUEL_SUPPLY__PUMP_FLOW:
				setPumpFlow((VolumeFlow)newValue);
				return;
			case GarboardPackage.FUEL_SUPPLY__ELECTRIC_PUMP:
				setElectricPump((Answer)newValue);
				return;
			case GarboardPackage.FUEL_SUPPLY__PUMP_STOPS_WITH_ENGINE:
				setPumpStopsWithEngine((Answer)newValue);
				return;
			case GarboardPackage.FUEL_SUPPLY__PUMP_WITHIN_REACH_OF_ENGINE:
				setPumpWithinReachOfEngine((Answer)newValue);
				return;
			case GarboardPackage.FUEL_SUPPLY__ANTI_SIPHON:
				setAntiSiphon((AntiSiphonProtection)newValue);
				return;
			case GarboardPackage.FUEL_SUPPLY__ANTI_SIPHON_CRACKING_PRESSURE:
				setAntiSiphonCrackingPressure((PressureDifference)newValue);
				return;
			case GarboardPackage.FUEL_SUPPLY__TANK_SHUT_OFF:
				setTankShutOff((Answer)newValue);
				return;
			case GarboardPackage.FUEL_SUPPLY__TANK_SHUT_OFF_REACHABLE_FROM_OUTSIDE:
				setTankShutOffReachableFromOutside((Answer)newValue);
				return;
			case GarboardPackage.FUEL_SUPPLY__ENGINE_SHUT_OFF:
				setEngineShutOff((Answer)newValue);
				return;
			case GarboardPackage.FUEL_SUPPLY__LINE_LENGTH_TANK_TO_ENGINE:
				setLineLengthTankToEngine((Length)newValue);
				return;
			case GarboardPackage.FUEL_SUPPLY__OWN_PICK_UP:
				setOwnPickUp((Answer)newValue);
				return;
			case GarboardPackage.FUEL_SUPPLY__PICK_UP_CLEARANCE:
				setPickUpClearance((Length)newValue);
				return;
			case GarboardPackage.FUEL_SUPPLY__PICK_UP_SCREEN:
				setPickUpScreen((Answer)newValue);
				return;
			case GarboardPackage.FUEL_SUPPLY__RETURN_TO_TANK_IN_USE:
				setReturnToTankInUse((Answer)newValue);
				return;
			case GarboardPackage.FUEL_SUPPLY__RETURN_CAN_DEAD_HEAD:
				setReturnCanDeadHead((Answer)newValue);
				return;
			case GarboardPackage.FUEL_SUPPLY__FLEXIBLE_LAST_LINK:
				setFlexibleLastLink((Answer)newValue);
				return;
			case GarboardPackage.FUEL_SUPPLY__RIGID_LINE_SUPPORT_DISTANCE:
				setRigidLineSupportDistance((Length)newValue);
				return;
			case GarboardPackage.FUEL_SUPPLY__FLEXIBLE_HOSE_SPILL_VOLUME:
				setFlexibleHoseSpillVolume((Volume)newValue);
				return;
			case GarboardPackage.FUEL_SUPPLY__LEAK_TEST_PRESSURE:
				setLeakTestPressure((GaugePressure)newValue);
				return;
			case GarboardPackage.FUEL_SUPPLY__LEAK_TEST_HELD:
				setLeakTestHeld((Answer)newValue);
				return;
			case GarboardPackage.FUEL_SUPPLY__GROUND_RESISTANCE:
				setGroundResistance((Resistance)newValue);
				return;
			case GarboardPackage.FUEL_SUPPLY__FILL_HOSE_CLAMPS:
				setFillHoseClamps((Integer)newValue);
				return;
			case GarboardPackage.FUEL_SUPPLY__FILL_CLAMP_BAND_WIDTH:
				setFillClampBandWidth((Length)newValue);
				return;
			case GarboardPackage.FUEL_SUPPLY__VENT_FLAME_ARRESTER:
				setVentFlameArrester((Answer)newValue);
				return;
			case GarboardPackage.FUEL_SUPPLY__CLEAN_VACUUM_AT_PUMP:
				setCleanVacuumAtPump((PressureDifference)newValue);
				return;
			case GarboardPackage.FUEL_SUPPLY__VACUUM_AT_PUMP_NOW:
				setVacuumAtPumpNow((PressureDifference)newValue);
				return;
			case GarboardPackage.FUEL_SUPPLY__FEED_PRESSURE:
				setFeedPressure((GaugePressure)newValue);
				return;
			case GarboardPackage.FUEL_SUPPLY__RAIL_PRESSURE:
				setRailPressure((GaugePressure)newValue);
				return;
			case GarboardPackage.FUEL_SUPPLY__PLANNED_RUN_TIME:
				setPlannedRunTime((TimeSpan)newValue);
				return;
			case GarboardPackage.FUEL_SUPPLY__PLANNED_LOAD_POWER:
				setPlannedLoadPower((Power)newValue);
				return;
			case GarboardPackage.FUEL_SUPPLY__BACKFIRE_FLAME_ARRESTER:
				setBackfireFlameArrester((Answer)newValue);
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
			case GarboardPackage.FUEL_SUPPLY__TANK:
				setTank((FuelTank)null);
				return;
			case GarboardPackage.FUEL_SUPPLY__LINES:
				getLines().clear();
				return;
			case GarboardPackage.FUEL_SUPPLY__SEPARATOR:
				setSeparator((FuelSeparator)null);
				return;
			case GarboardPackage.FUEL_SUPPLY__PUMP_POSITION:
				setPumpPosition((Point)null);
				return;
			case GarboardPackage.FUEL_SUPPLY__ENGINE_INLET_HEIGHT:
				setEngineInletHeight(ENGINE_INLET_HEIGHT_EDEFAULT);
				return;
			case GarboardPackage.FUEL_SUPPLY__HIGHEST_LINE_POINT:
				setHighestLinePoint(HIGHEST_LINE_POINT_EDEFAULT);
				return;
			case GarboardPackage.FUEL_SUPPLY__LOWEST_LINE_POINT:
				setLowestLinePoint(LOWEST_LINE_POINT_EDEFAULT);
				return;
			case GarboardPackage.FUEL_SUPPLY__PUMP_FLOW:
				setPumpFlow(PUMP_FLOW_EDEFAULT);
				return;
			case GarboardPackage.FUEL_SUPPLY__ELECTRIC_PUMP:
				setElectricPump(ELECTRIC_PUMP_EDEFAULT);
				return;
			case GarboardPackage.FUEL_SUPPLY__PUMP_STOPS_WITH_ENGINE:
				setPumpStopsWithEngine(PUMP_STOPS_WITH_ENGINE_EDEFAULT);
				return;
			case GarboardPackage.FUEL_SUPPLY__PUMP_WITHIN_REACH_OF_ENGINE:
				setPumpWithinReachOfEngine(PUMP_WITHIN_REACH_OF_ENGINE_EDEFAULT);
				return;
			case GarboardPackage.FUEL_SUPPLY__ANTI_SIPHON:
				setAntiSiphon(ANTI_SIPHON_EDEFAULT);
				return;
			case GarboardPackage.FUEL_SUPPLY__ANTI_SIPHON_CRACKING_PRESSURE:
				setAntiSiphonCrackingPressure(ANTI_SIPHON_CRACKING_PRESSURE_EDEFAULT);
				return;
			case GarboardPackage.FUEL_SUPPLY__TANK_SHUT_OFF:
				setTankShutOff(TANK_SHUT_OFF_EDEFAULT);
				return;
			case GarboardPackage.FUEL_SUPPLY__TANK_SHUT_OFF_REACHABLE_FROM_OUTSIDE:
				setTankShutOffReachableFromOutside(TANK_SHUT_OFF_REACHABLE_FROM_OUTSIDE_EDEFAULT);
				return;
			case GarboardPackage.FUEL_SUPPLY__ENGINE_SHUT_OFF:
				setEngineShutOff(ENGINE_SHUT_OFF_EDEFAULT);
				return;
			case GarboardPackage.FUEL_SUPPLY__LINE_LENGTH_TANK_TO_ENGINE:
				setLineLengthTankToEngine(LINE_LENGTH_TANK_TO_ENGINE_EDEFAULT);
				return;
			case GarboardPackage.FUEL_SUPPLY__OWN_PICK_UP:
				setOwnPickUp(OWN_PICK_UP_EDEFAULT);
				return;
			case GarboardPackage.FUEL_SUPPLY__PICK_UP_CLEARANCE:
				setPickUpClearance(PICK_UP_CLEARANCE_EDEFAULT);
				return;
			case GarboardPackage.FUEL_SUPPLY__PICK_UP_SCREEN:
				setPickUpScreen(PICK_UP_SCREEN_EDEFAULT);
				return;
			case GarboardPackage.FUEL_SUPPLY__RETURN_TO_TANK_IN_USE:
				setReturnToTankInUse(RETURN_TO_TANK_IN_USE_EDEFAULT);
				return;
			case GarboardPackage.FUEL_SUPPLY__RETURN_CAN_DEAD_HEAD:
				setReturnCanDeadHead(RETURN_CAN_DEAD_HEAD_EDEFAULT);
				return;
			case GarboardPackage.FUEL_SUPPLY__FLEXIBLE_LAST_LINK:
				setFlexibleLastLink(FLEXIBLE_LAST_LINK_EDEFAULT);
				return;
			case GarboardPackage.FUEL_SUPPLY__RIGID_LINE_SUPPORT_DISTANCE:
				setRigidLineSupportDistance(RIGID_LINE_SUPPORT_DISTANCE_EDEFAULT);
				return;
			case GarboardPackage.FUEL_SUPPLY__FLEXIBLE_HOSE_SPILL_VOLUME:
				setFlexibleHoseSpillVolume(FLEXIBLE_HOSE_SPILL_VOLUME_EDEFAULT);
				return;
			case GarboardPackage.FUEL_SUPPLY__LEAK_TEST_PRESSURE:
				setLeakTestPressure(LEAK_TEST_PRESSURE_EDEFAULT);
				return;
			case GarboardPackage.FUEL_SUPPLY__LEAK_TEST_HELD:
				setLeakTestHeld(LEAK_TEST_HELD_EDEFAULT);
				return;
			case GarboardPackage.FUEL_SUPPLY__GROUND_RESISTANCE:
				setGroundResistance(GROUND_RESISTANCE_EDEFAULT);
				return;
			case GarboardPackage.FUEL_SUPPLY__FILL_HOSE_CLAMPS:
				setFillHoseClamps(FILL_HOSE_CLAMPS_EDEFAULT);
				return;
			case GarboardPackage.FUEL_SUPPLY__FILL_CLAMP_BAND_WIDTH:
				setFillClampBandWidth(FILL_CLAMP_BAND_WIDTH_EDEFAULT);
				return;
			case GarboardPackage.FUEL_SUPPLY__VENT_FLAME_ARRESTER:
				setVentFlameArrester(VENT_FLAME_ARRESTER_EDEFAULT);
				return;
			case GarboardPackage.FUEL_SUPPLY__CLEAN_VACUUM_AT_PUMP:
				setCleanVacuumAtPump(CLEAN_VACUUM_AT_PUMP_EDEFAULT);
				return;
			case GarboardPackage.FUEL_SUPPLY__VACUUM_AT_PUMP_NOW:
				setVacuumAtPumpNow(VACUUM_AT_PUMP_NOW_EDEFAULT);
				return;
			case GarboardPackage.FUEL_SUPPLY__FEED_PRESSURE:
				setFeedPressure(FEED_PRESSURE_EDEFAULT);
				return;
			case GarboardPackage.FUEL_SUPPLY__RAIL_PRESSURE:
				setRailPressure(RAIL_PRESSURE_EDEFAULT);
				return;
			case GarboardPackage.FUEL_SUPPLY__PLANNED_RUN_TIME:
				setPlannedRunTime(PLANNED_RUN_TIME_EDEFAULT);
				return;
			case GarboardPackage.FUEL_SUPPLY__PLANNED_LOAD_POWER:
				setPlannedLoadPower(PLANNED_LOAD_POWER_EDEFAULT);
				return;
			case GarboardPackage.FUEL_SUPPLY__BACKFIRE_FLAME_ARRESTER:
				setBackfireFlameArrester(BACKFIRE_FLAME_ARRESTER_EDEFAULT);
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
			case GarboardPackage.FUEL_SUPPLY__TANK:
				return tank != null;
			case GarboardPackage.FUEL_SUPPLY__LINES:
				return lines != null && !lines.isEmpty();
			case GarboardPackage.FUEL_SUPPLY__SEPARATOR:
				return separator != null;
			case GarboardPackage.FUEL_SUPPLY__PUMP_POSITION:
				return pumpPosition != null;
			case GarboardPackage.FUEL_SUPPLY__ENGINE_INLET_HEIGHT:
				return ENGINE_INLET_HEIGHT_EDEFAULT == null ? engineInletHeight != null : !ENGINE_INLET_HEIGHT_EDEFAULT.equals(engineInletHeight);
			case GarboardPackage.FUEL_SUPPLY__HIGHEST_LINE_POINT:
				return HIGHEST_LINE_POINT_EDEFAULT == null ? highestLinePoint != null : !HIGHEST_LINE_POINT_EDEFAULT.equals(highestLinePoint);
			case GarboardPackage.FUEL_SUPPLY__LOWEST_LINE_POINT:
				return LOWEST_LINE_POINT_EDEFAULT == null ? lowestLinePoint != null : !LOWEST_LINE_POINT_EDEFAULT.equals(lowestLinePoint);
			case GarboardPackage.FUEL_SUPPLY__PUMP_FLOW:
				return PUMP_FLOW_EDEFAULT == null ? pumpFlow != null : !PUMP_FLOW_EDEFAULT.equals(pumpFlow);
			case GarboardPackage.FUEL_SUPPLY__ELECTRIC_PUMP:
				return electricPump != ELECTRIC_PUMP_EDEFAULT;
			case GarboardPackage.FUEL_SUPPLY__PUMP_STOPS_WITH_ENGINE:
				return pumpStopsWithEngine != PUMP_STOPS_WITH_ENGINE_EDEFAULT;
			case GarboardPackage.FUEL_SUPPLY__PUMP_WITHIN_REACH_OF_ENGINE:
				return pumpWithinReachOfEngine != PUMP_WITHIN_REACH_OF_ENGINE_EDEFAULT;
			case GarboardPackage.FUEL_SUPPLY__ANTI_SIPHON:
				return antiSiphon != ANTI_SIPHON_EDEFAULT;
			case GarboardPackage.FUEL_SUPPLY__ANTI_SIPHON_CRACKING_PRESSURE:
				return ANTI_SIPHON_CRACKING_PRESSURE_EDEFAULT == null ? antiSiphonCrackingPressure != null : !ANTI_SIPHON_CRACKING_PRESSURE_EDEFAULT.equals(antiSiphonCrackingPressure);
			case GarboardPackage.FUEL_SUPPLY__TANK_SHUT_OFF:
				return tankShutOff != TANK_SHUT_OFF_EDEFAULT;
			case GarboardPackage.FUEL_SUPPLY__TANK_SHUT_OFF_REACHABLE_FROM_OUTSIDE:
				return tankShutOffReachableFromOutside != TANK_SHUT_OFF_REACHABLE_FROM_OUTSIDE_EDEFAULT;
			case GarboardPackage.FUEL_SUPPLY__ENGINE_SHUT_OFF:
				return engineShutOff != ENGINE_SHUT_OFF_EDEFAULT;
			case GarboardPackage.FUEL_SUPPLY__LINE_LENGTH_TANK_TO_ENGINE:
				return LINE_LENGTH_TANK_TO_ENGINE_EDEFAULT == null ? lineLengthTankToEngine != null : !LINE_LENGTH_TANK_TO_ENGINE_EDEFAULT.equals(lineLengthTankToEngine);
			case GarboardPackage.FUEL_SUPPLY__OWN_PICK_UP:
				return ownPickUp != OWN_PICK_UP_EDEFAULT;
			case GarboardPackage.FUEL_SUPPLY__PICK_UP_CLEARANCE:
				return PICK_UP_CLEARANCE_EDEFAULT == null ? pickUpClearance != null : !PICK_UP_CLEARANCE_EDEFAULT.equals(pickUpClearance);
			case GarboardPackage.FUEL_SUPPLY__PICK_UP_SCREEN:
				return pickUpScreen != PICK_UP_SCREEN_EDEFAULT;
			case GarboardPackage.FUEL_SUPPLY__RETURN_TO_TANK_IN_USE:
				return returnToTankInUse != RETURN_TO_TANK_IN_USE_EDEFAULT;
			case GarboardPackage.FUEL_SUPPLY__RETURN_CAN_DEAD_HEAD:
				return returnCanDeadHead != RETURN_CAN_DEAD_HEAD_EDEFAULT;
			case GarboardPackage.FUEL_SUPPLY__FLEXIBLE_LAST_LINK:
				return flexibleLastLink != FLEXIBLE_LAST_LINK_EDEFAULT;
			case GarboardPackage.FUEL_SUPPLY__RIGID_LINE_SUPPORT_DISTANCE:
				return RIGID_LINE_SUPPORT_DISTANCE_EDEFAULT == null ? rigidLineSupportDistance != null : !RIGID_LINE_SUPPORT_DISTANCE_EDEFAULT.equals(rigidLineSupportDistance);
			case GarboardPackage.FUEL_SUPPLY__FLEXIBLE_HOSE_SPILL_VOLUME:
				return FLEXIBLE_HOSE_SPILL_VOLUME_EDEFAULT == null ? flexibleHoseSpillVolume != null : !FLEXIBLE_HOSE_SPILL_VOLUME_EDEFAULT.equals(flexibleHoseSpillVolume);
			case GarboardPackage.FUEL_SUPPLY__LEAK_TEST_PRESSURE:
				return LEAK_TEST_PRESSURE_EDEFAULT == null ? leakTestPressure != null : !LEAK_TEST_PRESSURE_EDEFAULT.equals(leakTestPressure);
			case GarboardPackage.FUEL_SUPPLY__LEAK_TEST_HELD:
				return leakTestHeld != LEAK_TEST_HELD_EDEFAULT;
			case GarboardPackage.FUEL_SUPPLY__GROUND_RESISTANCE:
				return GROUND_RESISTANCE_EDEFAULT == null ? groundResistance != null : !GROUND_RESISTANCE_EDEFAULT.equals(groundResistance);
			case GarboardPackage.FUEL_SUPPLY__FILL_HOSE_CLAMPS:
				return FILL_HOSE_CLAMPS_EDEFAULT == null ? fillHoseClamps != null : !FILL_HOSE_CLAMPS_EDEFAULT.equals(fillHoseClamps);
			case GarboardPackage.FUEL_SUPPLY__FILL_CLAMP_BAND_WIDTH:
				return FILL_CLAMP_BAND_WIDTH_EDEFAULT == null ? fillClampBandWidth != null : !FILL_CLAMP_BAND_WIDTH_EDEFAULT.equals(fillClampBandWidth);
			case GarboardPackage.FUEL_SUPPLY__VENT_FLAME_ARRESTER:
				return ventFlameArrester != VENT_FLAME_ARRESTER_EDEFAULT;
			case GarboardPackage.FUEL_SUPPLY__CLEAN_VACUUM_AT_PUMP:
				return CLEAN_VACUUM_AT_PUMP_EDEFAULT == null ? cleanVacuumAtPump != null : !CLEAN_VACUUM_AT_PUMP_EDEFAULT.equals(cleanVacuumAtPump);
			case GarboardPackage.FUEL_SUPPLY__VACUUM_AT_PUMP_NOW:
				return VACUUM_AT_PUMP_NOW_EDEFAULT == null ? vacuumAtPumpNow != null : !VACUUM_AT_PUMP_NOW_EDEFAULT.equals(vacuumAtPumpNow);
			case GarboardPackage.FUEL_SUPPLY__FEED_PRESSURE:
				return FEED_PRESSURE_EDEFAULT == null ? feedPressure != null : !FEED_PRESSURE_EDEFAULT.equals(feedPressure);
			case GarboardPackage.FUEL_SUPPLY__RAIL_PRESSURE:
				return RAIL_PRESSURE_EDEFAULT == null ? railPressure != null : !RAIL_PRESSURE_EDEFAULT.equals(railPressure);
			case GarboardPackage.FUEL_SUPPLY__PLANNED_RUN_TIME:
				return PLANNED_RUN_TIME_EDEFAULT == null ? plannedRunTime != null : !PLANNED_RUN_TIME_EDEFAULT.equals(plannedRunTime);
			case GarboardPackage.FUEL_SUPPLY__PLANNED_LOAD_POWER:
				return PLANNED_LOAD_POWER_EDEFAULT == null ? plannedLoadPower != null : !PLANNED_LOAD_POWER_EDEFAULT.equals(plannedLoadPower);
			case GarboardPackage.FUEL_SUPPLY__BACKFIRE_FLAME_ARRESTER:
				return backfireFlameArrester != BACKFIRE_FLAME_ARRESTER_EDEFAULT;
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
		result.append(" (engineInletHeight: ");
		result.append(engineInletHeight);
		result.append(", highestLinePoint: ");
		result.append(highestLinePoint);
		result.append(", lowestLinePoint: ");
		result.append(lowestLinePoint);
		result.append(", pumpFlow: ");
		result.append(pumpFlow);
		result.append(", electricPump: ");
		result.append(electricPump);
		result.append(", pumpStopsWithEngine: ");
		result.append(pumpStopsWithEngine);
		result.append(", pumpWithinReachOfEngine: ");
		result.append(pumpWithinReachOfEngine);
		result.append(", antiSiphon: ");
		result.append(antiSiphon);
		result.append(", antiSiphonCrackingPressure: ");
		result.append(antiSiphonCrackingPressure);
		result.append(", tankShutOff: ");
		result.append(tankShutOff);
		result.append(", tankShutOffReachableFromOutside: ");
		result.append(tankShutOffReachableFromOutside);
		result.append(", engineShutOff: ");
		result.append(engineShutOff);
		result.append(", lineLengthTankToEngine: ");
		result.append(lineLengthTankToEngine);
		result.append(", ownPickUp: ");
		result.append(ownPickUp);
		result.append(", pickUpClearance: ");
		result.append(pickUpClearance);
		result.append(", pickUpScreen: ");
		result.append(pickUpScreen);
		result.append(", returnToTankInUse: ");
		result.append(returnToTankInUse);
		result.append(", returnCanDeadHead: ");
		result.append(returnCanDeadHead);
		result.append(", flexibleLastLink: ");
		result.append(flexibleLastLink);
		result.append(", rigidLineSupportDistance: ");
		result.append(rigidLineSupportDistance);
		result.append(", flexibleHoseSpillVolume: ");
		result.append(flexibleHoseSpillVolume);
		result.append(", leakTestPressure: ");
		result.append(leakTestPressure);
		result.append(", leakTestHeld: ");
		result.append(leakTestHeld);
		result.append(", groundResistance: ");
		result.append(groundResistance);
		result.append(", fillHoseClamps: ");
		result.append(fillHoseClamps);
		result.append(", fillClampBandWidth: ");
		result.append(fillClampBandWidth);
		result.append(", ventFlameArrester: ");
		result.append(ventFlameArrester);
		result.append(", cleanVacuumAtPump: ");
		result.append(cleanVacuumAtPump);
		result.append(", vacuumAtPumpNow: ");
		result.append(vacuumAtPumpNow);
		result.append(", feedPressure: ");
		result.append(feedPressure);
		result.append(", railPressure: ");
		result.append(railPressure);
		result.append(", plannedRunTime: ");
		result.append(plannedRunTime);
		result.append(", plannedLoadPower: ");
		result.append(plannedLoadPower);
		result.append(", backfireFlameArrester: ");
		result.append(backfireFlameArrester);
		result.append(')');
		return result.toString();
	}

} //FuelSupplyImpl
