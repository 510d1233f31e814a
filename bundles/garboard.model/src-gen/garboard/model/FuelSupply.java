/**
 */
package garboard.model;

import garboard.quantity.GaugePressure;
import garboard.quantity.Length;
import garboard.quantity.Power;
import garboard.quantity.PressureDifference;
import garboard.quantity.Resistance;
import garboard.quantity.TimeSpan;
import garboard.quantity.Volume;
import garboard.quantity.VolumeFlow;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Fuel Supply</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.FuelSupply#getTank <em>Tank</em>}</li>
 *   <li>{@link garboard.model.FuelSupply#getLines <em>Lines</em>}</li>
 *   <li>{@link garboard.model.FuelSupply#getSeparator <em>Separator</em>}</li>
 *   <li>{@link garboard.model.FuelSupply#getPumpPosition <em>Pump Position</em>}</li>
 *   <li>{@link garboard.model.FuelSupply#getEngineInletHeight <em>Engine Inlet Height</em>}</li>
 *   <li>{@link garboard.model.FuelSupply#getHighestLinePoint <em>Highest Line Point</em>}</li>
 *   <li>{@link garboard.model.FuelSupply#getLowestLinePoint <em>Lowest Line Point</em>}</li>
 *   <li>{@link garboard.model.FuelSupply#getPumpFlow <em>Pump Flow</em>}</li>
 *   <li>{@link garboard.model.FuelSupply#getElectricPump <em>Electric Pump</em>}</li>
 *   <li>{@link garboard.model.FuelSupply#getPumpStopsWithEngine <em>Pump Stops With Engine</em>}</li>
 *   <li>{@link garboard.model.FuelSupply#getPumpWithinReachOfEngine <em>Pump Within Reach Of Engine</em>}</li>
 *   <li>{@link garboard.model.FuelSupply#getAntiSiphon <em>Anti Siphon</em>}</li>
 *   <li>{@link garboard.model.FuelSupply#getAntiSiphonCrackingPressure <em>Anti Siphon Cracking Pressure</em>}</li>
 *   <li>{@link garboard.model.FuelSupply#getTankShutOff <em>Tank Shut Off</em>}</li>
 *   <li>{@link garboard.model.FuelSupply#getTankShutOffReachableFromOutside <em>Tank Shut Off Reachable From Outside</em>}</li>
 *   <li>{@link garboard.model.FuelSupply#getEngineShutOff <em>Engine Shut Off</em>}</li>
 *   <li>{@link garboard.model.FuelSupply#getLineLengthTankToEngine <em>Line Length Tank To Engine</em>}</li>
 *   <li>{@link garboard.model.FuelSupply#getOwnPickUp <em>Own Pick Up</em>}</li>
 *   <li>{@link garboard.model.FuelSupply#getPickUpClearance <em>Pick Up Clearance</em>}</li>
 *   <li>{@link garboard.model.FuelSupply#getPickUpScreen <em>Pick Up Screen</em>}</li>
 *   <li>{@link garboard.model.FuelSupply#getReturnToTankInUse <em>Return To Tank In Use</em>}</li>
 *   <li>{@link garboard.model.FuelSupply#getReturnCanDeadHead <em>Return Can Dead Head</em>}</li>
 *   <li>{@link garboard.model.FuelSupply#getFlexibleLastLink <em>Flexible Last Link</em>}</li>
 *   <li>{@link garboard.model.FuelSupply#getRigidLineSupportDistance <em>Rigid Line Support Distance</em>}</li>
 *   <li>{@link garboard.model.FuelSupply#getFlexibleHoseSpillVolume <em>Flexible Hose Spill Volume</em>}</li>
 *   <li>{@link garboard.model.FuelSupply#getLeakTestPressure <em>Leak Test Pressure</em>}</li>
 *   <li>{@link garboard.model.FuelSupply#getLeakTestHeld <em>Leak Test Held</em>}</li>
 *   <li>{@link garboard.model.FuelSupply#getGroundResistance <em>Ground Resistance</em>}</li>
 *   <li>{@link garboard.model.FuelSupply#getFillHoseClamps <em>Fill Hose Clamps</em>}</li>
 *   <li>{@link garboard.model.FuelSupply#getFillClampBandWidth <em>Fill Clamp Band Width</em>}</li>
 *   <li>{@link garboard.model.FuelSupply#getVentFlameArrester <em>Vent Flame Arrester</em>}</li>
 *   <li>{@link garboard.model.FuelSupply#getCleanVacuumAtPump <em>Clean Vacuum At Pump</em>}</li>
 *   <li>{@link garboard.model.FuelSupply#getVacuumAtPumpNow <em>Vacuum At Pump Now</em>}</li>
 *   <li>{@link garboard.model.FuelSupply#getFeedPressure <em>Feed Pressure</em>}</li>
 *   <li>{@link garboard.model.FuelSupply#getRailPressure <em>Rail Pressure</em>}</li>
 *   <li>{@link garboard.model.FuelSupply#getPlannedRunTime <em>Planned Run Time</em>}</li>
 *   <li>{@link garboard.model.FuelSupply#getPlannedLoadPower <em>Planned Load Power</em>}</li>
 *   <li>{@link garboard.model.FuelSupply#getBackfireFlameArrester <em>Backfire Flame Arrester</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getFuelSupply()
 * @generated
 */
public interface FuelSupply extends EObject {
	/**
	 * Returns the value of the '<em><b>Tank</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Tank</em>' containment reference.
	 * @see #setTank(FuelTank)
	 * @see garboard.model.GarboardPackage#getFuelSupply_Tank()
	 * @generated
	 */
	FuelTank getTank();

	/**
	 * Sets the value of the '{@link garboard.model.FuelSupply#getTank <em>Tank</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Tank</em>' containment reference.
	 * @see #getTank()
	 * @generated
	 */
	void setTank(FuelTank value);

	/**
	 * Returns the value of the '<em><b>Lines</b></em>' containment reference list.
	 * The list contents are of type {@link garboard.model.FuelLineRun}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Lines</em>' containment reference list.
	 * @see garboard.model.GarboardPackage#getFuelSupply_Lines()
	 * @generated
	 */
	EList<FuelLineRun> getLines();

	/**
	 * Returns the value of the '<em><b>Separator</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Separator</em>' containment reference.
	 * @see #setSeparator(FuelSeparator)
	 * @see garboard.model.GarboardPackage#getFuelSupply_Separator()
	 * @generated
	 */
	FuelSeparator getSeparator();

	/**
	 * Sets the value of the '{@link garboard.model.FuelSupply#getSeparator <em>Separator</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Separator</em>' containment reference.
	 * @see #getSeparator()
	 * @generated
	 */
	void setSeparator(FuelSeparator value);

	/**
	 * Returns the value of the '<em><b>Pump Position</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Pump Position</em>' containment reference.
	 * @see #setPumpPosition(Point)
	 * @see garboard.model.GarboardPackage#getFuelSupply_PumpPosition()
	 * @generated
	 */
	Point getPumpPosition();

	/**
	 * Sets the value of the '{@link garboard.model.FuelSupply#getPumpPosition <em>Pump Position</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Pump Position</em>' containment reference.
	 * @see #getPumpPosition()
	 * @generated
	 */
	void setPumpPosition(Point value);

	/**
	 * Returns the value of the '<em><b>Engine Inlet Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Engine Inlet Height</em>' attribute.
	 * @see #setEngineInletHeight(Length)
	 * @see garboard.model.GarboardPackage#getFuelSupply_EngineInletHeight()
	 * @generated
	 */
	Length getEngineInletHeight();

	/**
	 * Sets the value of the '{@link garboard.model.FuelSupply#getEngineInletHeight <em>Engine Inlet Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Engine Inlet Height</em>' attribute.
	 * @see #getEngineInletHeight()
	 * @generated
	 */
	void setEngineInletHeight(Length value);

	/**
	 * Returns the value of the '<em><b>Highest Line Point</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Highest Line Point</em>' attribute.
	 * @see #setHighestLinePoint(Length)
	 * @see garboard.model.GarboardPackage#getFuelSupply_HighestLinePoint()
	 * @generated
	 */
	Length getHighestLinePoint();

	/**
	 * Sets the value of the '{@link garboard.model.FuelSupply#getHighestLinePoint <em>Highest Line Point</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Highest Line Point</em>' attribute.
	 * @see #getHighestLinePoint()
	 * @generated
	 */
	void setHighestLinePoint(Length value);

	/**
	 * Returns the value of the '<em><b>Lowest Line Point</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Lowest Line Point</em>' attribute.
	 * @see #setLowestLinePoint(Length)
	 * @see garboard.model.GarboardPackage#getFuelSupply_LowestLinePoint()
	 * @generated
	 */
	Length getLowestLinePoint();

	/**
	 * Sets the value of the '{@link garboard.model.FuelSupply#getLowestLinePoint <em>Lowest Line Point</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Lowest Line Point</em>' attribute.
	 * @see #getLowestLinePoint()
	 * @generated
	 */
	void setLowestLinePoint(Length value);

	/**
	 * Returns the value of the '<em><b>Pump Flow</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Pump Flow</em>' attribute.
	 * @see #setPumpFlow(VolumeFlow)
	 * @see garboard.model.GarboardPackage#getFuelSupply_PumpFlow()
	 * @generated
	 */
	VolumeFlow getPumpFlow();

	/**
	 * Sets the value of the '{@link garboard.model.FuelSupply#getPumpFlow <em>Pump Flow</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Pump Flow</em>' attribute.
	 * @see #getPumpFlow()
	 * @generated
	 */
	void setPumpFlow(VolumeFlow value);

	/**
	 * Returns the value of the '<em><b>Electric Pump</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Electric Pump</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setElectricPump(Answer)
	 * @see garboard.model.GarboardPackage#getFuelSupply_ElectricPump()
	 * @generated
	 */
	Answer getElectricPump();

	/**
	 * Sets the value of the '{@link garboard.model.FuelSupply#getElectricPump <em>Electric Pump</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Electric Pump</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getElectricPump()
	 * @generated
	 */
	void setElectricPump(Answer value);

	/**
	 * Returns the value of the '<em><b>Pump Stops With Engine</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Pump Stops With Engine</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setPumpStopsWithEngine(Answer)
	 * @see garboard.model.GarboardPackage#getFuelSupply_PumpStopsWithEngine()
	 * @generated
	 */
	Answer getPumpStopsWithEngine();

	/**
	 * Sets the value of the '{@link garboard.model.FuelSupply#getPumpStopsWithEngine <em>Pump Stops With Engine</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Pump Stops With Engine</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getPumpStopsWithEngine()
	 * @generated
	 */
	void setPumpStopsWithEngine(Answer value);

	/**
	 * Returns the value of the '<em><b>Pump Within Reach Of Engine</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Pump Within Reach Of Engine</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setPumpWithinReachOfEngine(Answer)
	 * @see garboard.model.GarboardPackage#getFuelSupply_PumpWithinReachOfEngine()
	 * @generated
	 */
	Answer getPumpWithinReachOfEngine();

	/**
	 * Sets the value of the '{@link garboard.model.FuelSupply#getPumpWithinReachOfEngine <em>Pump Within Reach Of Engine</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Pump Within Reach Of Engine</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getPumpWithinReachOfEngine()
	 * @generated
	 */
	void setPumpWithinReachOfEngine(Answer value);

	/**
	 * Returns the value of the '<em><b>Anti Siphon</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.AntiSiphonProtection}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Anti Siphon</em>' attribute.
	 * @see garboard.model.AntiSiphonProtection
	 * @see #setAntiSiphon(AntiSiphonProtection)
	 * @see garboard.model.GarboardPackage#getFuelSupply_AntiSiphon()
	 * @generated
	 */
	AntiSiphonProtection getAntiSiphon();

	/**
	 * Sets the value of the '{@link garboard.model.FuelSupply#getAntiSiphon <em>Anti Siphon</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Anti Siphon</em>' attribute.
	 * @see garboard.model.AntiSiphonProtection
	 * @see #getAntiSiphon()
	 * @generated
	 */
	void setAntiSiphon(AntiSiphonProtection value);

	/**
	 * Returns the value of the '<em><b>Anti Siphon Cracking Pressure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Anti Siphon Cracking Pressure</em>' attribute.
	 * @see #setAntiSiphonCrackingPressure(PressureDifference)
	 * @see garboard.model.GarboardPackage#getFuelSupply_AntiSiphonCrackingPressure()
	 * @generated
	 */
	PressureDifference getAntiSiphonCrackingPressure();

	/**
	 * Sets the value of the '{@link garboard.model.FuelSupply#getAntiSiphonCrackingPressure <em>Anti Siphon Cracking Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Anti Siphon Cracking Pressure</em>' attribute.
	 * @see #getAntiSiphonCrackingPressure()
	 * @generated
	 */
	void setAntiSiphonCrackingPressure(PressureDifference value);

	/**
	 * Returns the value of the '<em><b>Tank Shut Off</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Tank Shut Off</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setTankShutOff(Answer)
	 * @see garboard.model.GarboardPackage#getFuelSupply_TankShutOff()
	 * @generated
	 */
	Answer getTankShutOff();

	/**
	 * Sets the value of the '{@link garboard.model.FuelSupply#getTankShutOff <em>Tank Shut Off</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Tank Shut Off</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getTankShutOff()
	 * @generated
	 */
	void setTankShutOff(Answer value);

	/**
	 * Returns the value of the '<em><b>Tank Shut Off Reachable From Outside</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Tank Shut Off Reachable From Outside</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setTankShutOffReachableFromOutside(Answer)
	 * @see garboard.model.GarboardPackage#getFuelSupply_TankShutOffReachableFromOutside()
	 * @generated
	 */
	Answer getTankShutOffReachableFromOutside();

	/**
	 * Sets the value of the '{@link garboard.model.FuelSupply#getTankShutOffReachableFromOutside <em>Tank Shut Off Reachable From Outside</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Tank Shut Off Reachable From Outside</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getTankShutOffReachableFromOutside()
	 * @generated
	 */
	void setTankShutOffReachableFromOutside(Answer value);

	/**
	 * Returns the value of the '<em><b>Engine Shut Off</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Engine Shut Off</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setEngineShutOff(Answer)
	 * @see garboard.model.GarboardPackage#getFuelSupply_EngineShutOff()
	 * @generated
	 */
	Answer getEngineShutOff();

	/**
	 * Sets the value of the '{@link garboard.model.FuelSupply#getEngineShutOff <em>Engine Shut Off</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Engine Shut Off</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getEngineShutOff()
	 * @generated
	 */
	void setEngineShutOff(Answer value);

	/**
	 * Returns the value of the '<em><b>Line Length Tank To Engine</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Line Length Tank To Engine</em>' attribute.
	 * @see #setLineLengthTankToEngine(Length)
	 * @see garboard.model.GarboardPackage#getFuelSupply_LineLengthTankToEngine()
	 * @generated
	 */
	Length getLineLengthTankToEngine();

	/**
	 * Sets the value of the '{@link garboard.model.FuelSupply#getLineLengthTankToEngine <em>Line Length Tank To Engine</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Line Length Tank To Engine</em>' attribute.
	 * @see #getLineLengthTankToEngine()
	 * @generated
	 */
	void setLineLengthTankToEngine(Length value);

	/**
	 * Returns the value of the '<em><b>Own Pick Up</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Own Pick Up</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setOwnPickUp(Answer)
	 * @see garboard.model.GarboardPackage#getFuelSupply_OwnPickUp()
	 * @generated
	 */
	Answer getOwnPickUp();

	/**
	 * Sets the value of the '{@link garboard.model.FuelSupply#getOwnPickUp <em>Own Pick Up</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Own Pick Up</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getOwnPickUp()
	 * @generated
	 */
	void setOwnPickUp(Answer value);

	/**
	 * Returns the value of the '<em><b>Pick Up Clearance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Pick Up Clearance</em>' attribute.
	 * @see #setPickUpClearance(Length)
	 * @see garboard.model.GarboardPackage#getFuelSupply_PickUpClearance()
	 * @generated
	 */
	Length getPickUpClearance();

	/**
	 * Sets the value of the '{@link garboard.model.FuelSupply#getPickUpClearance <em>Pick Up Clearance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Pick Up Clearance</em>' attribute.
	 * @see #getPickUpClearance()
	 * @generated
	 */
	void setPickUpClearance(Length value);

	/**
	 * Returns the value of the '<em><b>Pick Up Screen</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Pick Up Screen</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setPickUpScreen(Answer)
	 * @see garboard.model.GarboardPackage#getFuelSupply_PickUpScreen()
	 * @generated
	 */
	Answer getPickUpScreen();

	/**
	 * Sets the value of the '{@link garboard.model.FuelSupply#getPickUpScreen <em>Pick Up Screen</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Pick Up Screen</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getPickUpScreen()
	 * @generated
	 */
	void setPickUpScreen(Answer value);

	/**
	 * Returns the value of the '<em><b>Return To Tank In Use</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Return To Tank In Use</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setReturnToTankInUse(Answer)
	 * @see garboard.model.GarboardPackage#getFuelSupply_ReturnToTankInUse()
	 * @generated
	 */
	Answer getReturnToTankInUse();

	/**
	 * Sets the value of the '{@link garboard.model.FuelSupply#getReturnToTankInUse <em>Return To Tank In Use</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Return To Tank In Use</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getReturnToTankInUse()
	 * @generated
	 */
	void setReturnToTankInUse(Answer value);

	/**
	 * Returns the value of the '<em><b>Return Can Dead Head</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Return Can Dead Head</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setReturnCanDeadHead(Answer)
	 * @see garboard.model.GarboardPackage#getFuelSupply_ReturnCanDeadHead()
	 * @generated
	 */
	Answer getReturnCanDeadHead();

	/**
	 * Sets the value of the '{@link garboard.model.FuelSupply#getReturnCanDeadHead <em>Return Can Dead Head</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Return Can Dead Head</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getReturnCanDeadHead()
	 * @generated
	 */
	void setReturnCanDeadHead(Answer value);

	/**
	 * Returns the value of the '<em><b>Flexible Last Link</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Flexible Last Link</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setFlexibleLastLink(Answer)
	 * @see garboard.model.GarboardPackage#getFuelSupply_FlexibleLastLink()
	 * @generated
	 */
	Answer getFlexibleLastLink();

	/**
	 * Sets the value of the '{@link garboard.model.FuelSupply#getFlexibleLastLink <em>Flexible Last Link</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Flexible Last Link</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getFlexibleLastLink()
	 * @generated
	 */
	void setFlexibleLastLink(Answer value);

	/**
	 * Returns the value of the '<em><b>Rigid Line Support Distance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Rigid Line Support Distance</em>' attribute.
	 * @see #setRigidLineSupportDistance(Length)
	 * @see garboard.model.GarboardPackage#getFuelSupply_RigidLineSupportDistance()
	 * @generated
	 */
	Length getRigidLineSupportDistance();

	/**
	 * Sets the value of the '{@link garboard.model.FuelSupply#getRigidLineSupportDistance <em>Rigid Line Support Distance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rigid Line Support Distance</em>' attribute.
	 * @see #getRigidLineSupportDistance()
	 * @generated
	 */
	void setRigidLineSupportDistance(Length value);

	/**
	 * Returns the value of the '<em><b>Flexible Hose Spill Volume</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Flexible Hose Spill Volume</em>' attribute.
	 * @see #setFlexibleHoseSpillVolume(Volume)
	 * @see garboard.model.GarboardPackage#getFuelSupply_FlexibleHoseSpillVolume()
	 * @generated
	 */
	Volume getFlexibleHoseSpillVolume();

	/**
	 * Sets the value of the '{@link garboard.model.FuelSupply#getFlexibleHoseSpillVolume <em>Flexible Hose Spill Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Flexible Hose Spill Volume</em>' attribute.
	 * @see #getFlexibleHoseSpillVolume()
	 * @generated
	 */
	void setFlexibleHoseSpillVolume(Volume value);

	/**
	 * Returns the value of the '<em><b>Leak Test Pressure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Leak Test Pressure</em>' attribute.
	 * @see #setLeakTestPressure(GaugePressure)
	 * @see garboard.model.GarboardPackage#getFuelSupply_LeakTestPressure()
	 * @generated
	 */
	GaugePressure getLeakTestPressure();

	/**
	 * Sets the value of the '{@link garboard.model.FuelSupply#getLeakTestPressure <em>Leak Test Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Leak Test Pressure</em>' attribute.
	 * @see #getLeakTestPressure()
	 * @generated
	 */
	void setLeakTestPressure(GaugePressure value);

	/**
	 * Returns the value of the '<em><b>Leak Test Held</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Leak Test Held</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setLeakTestHeld(Answer)
	 * @see garboard.model.GarboardPackage#getFuelSupply_LeakTestHeld()
	 * @generated
	 */
	Answer getLeakTestHeld();

	/**
	 * Sets the value of the '{@link garboard.model.FuelSupply#getLeakTestHeld <em>Leak Test Held</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Leak Test Held</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getLeakTestHeld()
	 * @generated
	 */
	void setLeakTestHeld(Answer value);

	/**
	 * Returns the value of the '<em><b>Ground Resistance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Ground Resistance</em>' attribute.
	 * @see #setGroundResistance(Resistance)
	 * @see garboard.model.GarboardPackage#getFuelSupply_GroundResistance()
	 * @generated
	 */
	Resistance getGroundResistance();

	/**
	 * Sets the value of the '{@link garboard.model.FuelSupply#getGroundResistance <em>Ground Resistance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Ground Resistance</em>' attribute.
	 * @see #getGroundResistance()
	 * @generated
	 */
	void setGroundResistance(Resistance value);

	/**
	 * Returns the value of the '<em><b>Fill Hose Clamps</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Fill Hose Clamps</em>' attribute.
	 * @see #setFillHoseClamps(Integer)
	 * @see garboard.model.GarboardPackage#getFuelSupply_FillHoseClamps()
	 * @generated
	 */
	Integer getFillHoseClamps();

	/**
	 * Sets the value of the '{@link garboard.model.FuelSupply#getFillHoseClamps <em>Fill Hose Clamps</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Fill Hose Clamps</em>' attribute.
	 * @see #getFillHoseClamps()
	 * @generated
	 */
	void setFillHoseClamps(Integer value);

	/**
	 * Returns the value of the '<em><b>Fill Clamp Band Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Fill Clamp Band Width</em>' attribute.
	 * @see #setFillClampBandWidth(Length)
	 * @see garboard.model.GarboardPackage#getFuelSupply_FillClampBandWidth()
	 * @generated
	 */
	Length getFillClampBandWidth();

	/**
	 * Sets the value of the '{@link garboard.model.FuelSupply#getFillClampBandWidth <em>Fill Clamp Band Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Fill Clamp Band Width</em>' attribute.
	 * @see #getFillClampBandWidth()
	 * @generated
	 */
	void setFillClampBandWidth(Length value);

	/**
	 * Returns the value of the '<em><b>Vent Flame Arrester</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Vent Flame Arrester</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setVentFlameArrester(Answer)
	 * @see garboard.model.GarboardPackage#getFuelSupply_VentFlameArrester()
	 * @generated
	 */
	Answer getVentFlameArrester();

	/**
	 * Sets the value of the '{@link garboard.model.FuelSupply#getVentFlameArrester <em>Vent Flame Arrester</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Vent Flame Arrester</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getVentFlameArrester()
	 * @generated
	 */
	void setVentFlameArrester(Answer value);

	/**
	 * Returns the value of the '<em><b>Clean Vacuum At Pump</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Clean Vacuum At Pump</em>' attribute.
	 * @see #setCleanVacuumAtPump(PressureDifference)
	 * @see garboard.model.GarboardPackage#getFuelSupply_CleanVacuumAtPump()
	 * @generated
	 */
	PressureDifference getCleanVacuumAtPump();

	/**
	 * Sets the value of the '{@link garboard.model.FuelSupply#getCleanVacuumAtPump <em>Clean Vacuum At Pump</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Clean Vacuum At Pump</em>' attribute.
	 * @see #getCleanVacuumAtPump()
	 * @generated
	 */
	void setCleanVacuumAtPump(PressureDifference value);

	/**
	 * Returns the value of the '<em><b>Vacuum At Pump Now</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Vacuum At Pump Now</em>' attribute.
	 * @see #setVacuumAtPumpNow(PressureDifference)
	 * @see garboard.model.GarboardPackage#getFuelSupply_VacuumAtPumpNow()
	 * @generated
	 */
	PressureDifference getVacuumAtPumpNow();

	/**
	 * Sets the value of the '{@link garboard.model.FuelSupply#getVacuumAtPumpNow <em>Vacuum At Pump Now</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Vacuum At Pump Now</em>' attribute.
	 * @see #getVacuumAtPumpNow()
	 * @generated
	 */
	void setVacuumAtPumpNow(PressureDifference value);

	/**
	 * Returns the value of the '<em><b>Feed Pressure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Feed Pressure</em>' attribute.
	 * @see #setFeedPressure(GaugePressure)
	 * @see garboard.model.GarboardPackage#getFuelSupply_FeedPressure()
	 * @generated
	 */
	GaugePressure getFeedPressure();

	/**
	 * Sets the value of the '{@link garboard.model.FuelSupply#getFeedPressure <em>Feed Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Feed Pressure</em>' attribute.
	 * @see #getFeedPressure()
	 * @generated
	 */
	void setFeedPressure(GaugePressure value);

	/**
	 * Returns the value of the '<em><b>Rail Pressure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Rail Pressure</em>' attribute.
	 * @see #setRailPressure(GaugePressure)
	 * @see garboard.model.GarboardPackage#getFuelSupply_RailPressure()
	 * @generated
	 */
	GaugePressure getRailPressure();

	/**
	 * Sets the value of the '{@link garboard.model.FuelSupply#getRailPressure <em>Rail Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rail Pressure</em>' attribute.
	 * @see #getRailPressure()
	 * @generated
	 */
	void setRailPressure(GaugePressure value);

	/**
	 * Returns the value of the '<em><b>Planned Run Time</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Planned Run Time</em>' attribute.
	 * @see #setPlannedRunTime(TimeSpan)
	 * @see garboard.model.GarboardPackage#getFuelSupply_PlannedRunTime()
	 * @generated
	 */
	TimeSpan getPlannedRunTime();

	/**
	 * Sets the value of the '{@link garboard.model.FuelSupply#getPlannedRunTime <em>Planned Run Time</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Planned Run Time</em>' attribute.
	 * @see #getPlannedRunTime()
	 * @generated
	 */
	void setPlannedRunTime(TimeSpan value);

	/**
	 * Returns the value of the '<em><b>Planned Load Power</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Planned Load Power</em>' attribute.
	 * @see #setPlannedLoadPower(Power)
	 * @see garboard.model.GarboardPackage#getFuelSupply_PlannedLoadPower()
	 * @generated
	 */
	Power getPlannedLoadPower();

	/**
	 * Sets the value of the '{@link garboard.model.FuelSupply#getPlannedLoadPower <em>Planned Load Power</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Planned Load Power</em>' attribute.
	 * @see #getPlannedLoadPower()
	 * @generated
	 */
	void setPlannedLoadPower(Power value);

	/**
	 * Returns the value of the '<em><b>Backfire Flame Arrester</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Backfire Flame Arrester</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setBackfireFlameArrester(Answer)
	 * @see garboard.model.GarboardPackage#getFuelSupply_BackfireFlameArrester()
	 * @generated
	 */
	Answer getBackfireFlameArrester();

	/**
	 * Sets the value of the '{@link garboard.model.FuelSupply#getBackfireFlameArrester <em>Backfire Flame Arrester</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Backfire Flame Arrester</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getBackfireFlameArrester()
	 * @generated
	 */
	void setBackfireFlameArrester(Answer value);

} // FuelSupply
