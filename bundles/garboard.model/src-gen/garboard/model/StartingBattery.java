/**
 */
package garboard.model;

import garboard.quantity.Area;
import garboard.quantity.Charge;
import garboard.quantity.Current;
import garboard.quantity.Length;
import garboard.quantity.Mass;
import garboard.quantity.Temperature;
import garboard.quantity.TimeSpan;
import garboard.quantity.Voltage;

import java.time.LocalDate;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Starting Battery</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.StartingBattery#getChemistry <em>Chemistry</em>}</li>
 *   <li>{@link garboard.model.StartingBattery#getBlockVoltage <em>Block Voltage</em>}</li>
 *   <li>{@link garboard.model.StartingBattery#getBlocksInSeries <em>Blocks In Series</em>}</li>
 *   <li>{@link garboard.model.StartingBattery#getStringsInParallel <em>Strings In Parallel</em>}</li>
 *   <li>{@link garboard.model.StartingBattery#getBlockCapacity <em>Block Capacity</em>}</li>
 *   <li>{@link garboard.model.StartingBattery#getBlockCrankingRating <em>Block Cranking Rating</em>}</li>
 *   <li>{@link garboard.model.StartingBattery#getCrankingRatingDefinition <em>Cranking Rating Definition</em>}</li>
 *   <li>{@link garboard.model.StartingBattery#getInstalledOn <em>Installed On</em>}</li>
 *   <li>{@link garboard.model.StartingBattery#getBlockMass <em>Block Mass</em>}</li>
 *   <li>{@link garboard.model.StartingBattery#getBatteryTemperature <em>Battery Temperature</em>}</li>
 *   <li>{@link garboard.model.StartingBattery#getRestTime <em>Rest Time</em>}</li>
 *   <li>{@link garboard.model.StartingBattery#getRestedVoltage <em>Rested Voltage</em>}</li>
 *   <li>{@link garboard.model.StartingBattery#getColdestStart <em>Coldest Start</em>}</li>
 *   <li>{@link garboard.model.StartingBattery#getBlocks <em>Blocks</em>}</li>
 *   <li>{@link garboard.model.StartingBattery#getDedicatedToGenerator <em>Dedicated To Generator</em>}</li>
 *   <li>{@link garboard.model.StartingBattery#getIsolatingSwitch <em>Isolating Switch</em>}</li>
 *   <li>{@link garboard.model.StartingBattery#getIsolatingSwitchReachable <em>Isolating Switch Reachable</em>}</li>
 *   <li>{@link garboard.model.StartingBattery#getEmergencyCrossConnect <em>Emergency Cross Connect</em>}</li>
 *   <li>{@link garboard.model.StartingBattery#getSecured <em>Secured</em>}</li>
 *   <li>{@link garboard.model.StartingBattery#getMovementUnderTest <em>Movement Under Test</em>}</li>
 *   <li>{@link garboard.model.StartingBattery#getTrayOrBox <em>Tray Or Box</em>}</li>
 *   <li>{@link garboard.model.StartingBattery#getPositiveTerminalCovered <em>Positive Terminal Covered</em>}</li>
 *   <li>{@link garboard.model.StartingBattery#getTerminals <em>Terminals</em>}</li>
 *   <li>{@link garboard.model.StartingBattery#getVentedOverboard <em>Vented Overboard</em>}</li>
 *   <li>{@link garboard.model.StartingBattery#getVentilationAreaEachWay <em>Ventilation Area Each Way</em>}</li>
 *   <li>{@link garboard.model.StartingBattery#getDistanceToStarter <em>Distance To Starter</em>}</li>
 *   <li>{@link garboard.model.StartingBattery#getFuelPartsWithinReach <em>Fuel Parts Within Reach</em>}</li>
 *   <li>{@link garboard.model.StartingBattery#getDielectricShield <em>Dielectric Shield</em>}</li>
 *   <li>{@link garboard.model.StartingBattery#getAboveOrBelowFuelFittings <em>Above Or Below Fuel Fittings</em>}</li>
 *   <li>{@link garboard.model.StartingBattery#getHighAboveBilge <em>High Above Bilge</em>}</li>
 *   <li>{@link garboard.model.StartingBattery#getChargerRatedCurrent <em>Charger Rated Current</em>}</li>
 *   <li>{@link garboard.model.StartingBattery#getChargerVoltage <em>Charger Voltage</em>}</li>
 *   <li>{@link garboard.model.StartingBattery#getChargingVoltageRunning <em>Charging Voltage Running</em>}</li>
 *   <li>{@link garboard.model.StartingBattery#getChargerAmmeter <em>Charger Ammeter</em>}</li>
 *   <li>{@link garboard.model.StartingBattery#getSameTypeAndAge <em>Same Type And Age</em>}</li>
 *   <li>{@link garboard.model.StartingBattery#getCables <em>Cables</em>}</li>
 *   <li>{@link garboard.model.StartingBattery#getCrankingVoltageAtPosts <em>Cranking Voltage At Posts</em>}</li>
 *   <li>{@link garboard.model.StartingBattery#getCrankingVoltageAtStarter <em>Cranking Voltage At Starter</em>}</li>
 *   <li>{@link garboard.model.StartingBattery#getBlocksMixed <em>Blocks Mixed</em>}</li>
 *   <li>{@link garboard.model.StartingBattery#getEmergencySource <em>Emergency Source</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getStartingBattery()
 * @generated
 */
public interface StartingBattery extends EObject {
	/**
	 * Returns the value of the '<em><b>Chemistry</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.BatteryChemistry}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Chemistry</em>' attribute.
	 * @see garboard.model.BatteryChemistry
	 * @see #setChemistry(BatteryChemistry)
	 * @see garboard.model.GarboardPackage#getStartingBattery_Chemistry()
	 * @generated
	 */
	BatteryChemistry getChemistry();

	/**
	 * Sets the value of the '{@link garboard.model.StartingBattery#getChemistry <em>Chemistry</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Chemistry</em>' attribute.
	 * @see garboard.model.BatteryChemistry
	 * @see #getChemistry()
	 * @generated
	 */
	void setChemistry(BatteryChemistry value);

	/**
	 * Returns the value of the '<em><b>Block Voltage</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Block Voltage</em>' attribute.
	 * @see #setBlockVoltage(Voltage)
	 * @see garboard.model.GarboardPackage#getStartingBattery_BlockVoltage()
	 * @generated
	 */
	Voltage getBlockVoltage();

	/**
	 * Sets the value of the '{@link garboard.model.StartingBattery#getBlockVoltage <em>Block Voltage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Block Voltage</em>' attribute.
	 * @see #getBlockVoltage()
	 * @generated
	 */
	void setBlockVoltage(Voltage value);

	/**
	 * Returns the value of the '<em><b>Blocks In Series</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Blocks In Series</em>' attribute.
	 * @see #setBlocksInSeries(Integer)
	 * @see garboard.model.GarboardPackage#getStartingBattery_BlocksInSeries()
	 * @generated
	 */
	Integer getBlocksInSeries();

	/**
	 * Sets the value of the '{@link garboard.model.StartingBattery#getBlocksInSeries <em>Blocks In Series</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Blocks In Series</em>' attribute.
	 * @see #getBlocksInSeries()
	 * @generated
	 */
	void setBlocksInSeries(Integer value);

	/**
	 * Returns the value of the '<em><b>Strings In Parallel</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Strings In Parallel</em>' attribute.
	 * @see #setStringsInParallel(Integer)
	 * @see garboard.model.GarboardPackage#getStartingBattery_StringsInParallel()
	 * @generated
	 */
	Integer getStringsInParallel();

	/**
	 * Sets the value of the '{@link garboard.model.StartingBattery#getStringsInParallel <em>Strings In Parallel</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Strings In Parallel</em>' attribute.
	 * @see #getStringsInParallel()
	 * @generated
	 */
	void setStringsInParallel(Integer value);

	/**
	 * Returns the value of the '<em><b>Block Capacity</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Block Capacity</em>' attribute.
	 * @see #setBlockCapacity(Charge)
	 * @see garboard.model.GarboardPackage#getStartingBattery_BlockCapacity()
	 * @generated
	 */
	Charge getBlockCapacity();

	/**
	 * Sets the value of the '{@link garboard.model.StartingBattery#getBlockCapacity <em>Block Capacity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Block Capacity</em>' attribute.
	 * @see #getBlockCapacity()
	 * @generated
	 */
	void setBlockCapacity(Charge value);

	/**
	 * Returns the value of the '<em><b>Block Cranking Rating</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Block Cranking Rating</em>' attribute.
	 * @see #setBlockCrankingRating(Current)
	 * @see garboard.model.GarboardPackage#getStartingBattery_BlockCrankingRating()
	 * @generated
	 */
	Current getBlockCrankingRating();

	/**
	 * Sets the value of the '{@link garboard.model.StartingBattery#getBlockCrankingRating <em>Block Cranking Rating</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Block Cranking Rating</em>' attribute.
	 * @see #getBlockCrankingRating()
	 * @generated
	 */
	void setBlockCrankingRating(Current value);

	/**
	 * Returns the value of the '<em><b>Cranking Rating Definition</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.CrankingRatingDefinition}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Cranking Rating Definition</em>' attribute.
	 * @see garboard.model.CrankingRatingDefinition
	 * @see #setCrankingRatingDefinition(CrankingRatingDefinition)
	 * @see garboard.model.GarboardPackage#getStartingBattery_CrankingRatingDefinition()
	 * @generated
	 */
	CrankingRatingDefinition getCrankingRatingDefinition();

	/**
	 * Sets the value of the '{@link garboard.model.StartingBattery#getCrankingRatingDefinition <em>Cranking Rating Definition</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Cranking Rating Definition</em>' attribute.
	 * @see garboard.model.CrankingRatingDefinition
	 * @see #getCrankingRatingDefinition()
	 * @generated
	 */
	void setCrankingRatingDefinition(CrankingRatingDefinition value);

	/**
	 * Returns the value of the '<em><b>Installed On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Installed On</em>' attribute.
	 * @see #setInstalledOn(LocalDate)
	 * @see garboard.model.GarboardPackage#getStartingBattery_InstalledOn()
	 * @generated
	 */
	LocalDate getInstalledOn();

	/**
	 * Sets the value of the '{@link garboard.model.StartingBattery#getInstalledOn <em>Installed On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Installed On</em>' attribute.
	 * @see #getInstalledOn()
	 * @generated
	 */
	void setInstalledOn(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Block Mass</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Block Mass</em>' attribute.
	 * @see #setBlockMass(Mass)
	 * @see garboard.model.GarboardPackage#getStartingBattery_BlockMass()
	 * @generated
	 */
	Mass getBlockMass();

	/**
	 * Sets the value of the '{@link garboard.model.StartingBattery#getBlockMass <em>Block Mass</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Block Mass</em>' attribute.
	 * @see #getBlockMass()
	 * @generated
	 */
	void setBlockMass(Mass value);

	/**
	 * Returns the value of the '<em><b>Battery Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Battery Temperature</em>' attribute.
	 * @see #setBatteryTemperature(Temperature)
	 * @see garboard.model.GarboardPackage#getStartingBattery_BatteryTemperature()
	 * @generated
	 */
	Temperature getBatteryTemperature();

	/**
	 * Sets the value of the '{@link garboard.model.StartingBattery#getBatteryTemperature <em>Battery Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Battery Temperature</em>' attribute.
	 * @see #getBatteryTemperature()
	 * @generated
	 */
	void setBatteryTemperature(Temperature value);

	/**
	 * Returns the value of the '<em><b>Rest Time</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Rest Time</em>' attribute.
	 * @see #setRestTime(TimeSpan)
	 * @see garboard.model.GarboardPackage#getStartingBattery_RestTime()
	 * @generated
	 */
	TimeSpan getRestTime();

	/**
	 * Sets the value of the '{@link garboard.model.StartingBattery#getRestTime <em>Rest Time</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rest Time</em>' attribute.
	 * @see #getRestTime()
	 * @generated
	 */
	void setRestTime(TimeSpan value);

	/**
	 * Returns the value of the '<em><b>Rested Voltage</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Rested Voltage</em>' attribute.
	 * @see #setRestedVoltage(Voltage)
	 * @see garboard.model.GarboardPackage#getStartingBattery_RestedVoltage()
	 * @generated
	 */
	Voltage getRestedVoltage();

	/**
	 * Sets the value of the '{@link garboard.model.StartingBattery#getRestedVoltage <em>Rested Voltage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rested Voltage</em>' attribute.
	 * @see #getRestedVoltage()
	 * @generated
	 */
	void setRestedVoltage(Voltage value);

	/**
	 * Returns the value of the '<em><b>Coldest Start</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Coldest Start</em>' attribute.
	 * @see #setColdestStart(Temperature)
	 * @see garboard.model.GarboardPackage#getStartingBattery_ColdestStart()
	 * @generated
	 */
	Temperature getColdestStart();

	/**
	 * Sets the value of the '{@link garboard.model.StartingBattery#getColdestStart <em>Coldest Start</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Coldest Start</em>' attribute.
	 * @see #getColdestStart()
	 * @generated
	 */
	void setColdestStart(Temperature value);

	/**
	 * Returns the value of the '<em><b>Blocks</b></em>' containment reference list.
	 * The list contents are of type {@link garboard.model.BatteryBlock}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Blocks</em>' containment reference list.
	 * @see garboard.model.GarboardPackage#getStartingBattery_Blocks()
	 * @generated
	 */
	EList<BatteryBlock> getBlocks();

	/**
	 * Returns the value of the '<em><b>Dedicated To Generator</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Dedicated To Generator</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setDedicatedToGenerator(Answer)
	 * @see garboard.model.GarboardPackage#getStartingBattery_DedicatedToGenerator()
	 * @generated
	 */
	Answer getDedicatedToGenerator();

	/**
	 * Sets the value of the '{@link garboard.model.StartingBattery#getDedicatedToGenerator <em>Dedicated To Generator</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Dedicated To Generator</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getDedicatedToGenerator()
	 * @generated
	 */
	void setDedicatedToGenerator(Answer value);

	/**
	 * Returns the value of the '<em><b>Isolating Switch</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Isolating Switch</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setIsolatingSwitch(Answer)
	 * @see garboard.model.GarboardPackage#getStartingBattery_IsolatingSwitch()
	 * @generated
	 */
	Answer getIsolatingSwitch();

	/**
	 * Sets the value of the '{@link garboard.model.StartingBattery#getIsolatingSwitch <em>Isolating Switch</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Isolating Switch</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getIsolatingSwitch()
	 * @generated
	 */
	void setIsolatingSwitch(Answer value);

	/**
	 * Returns the value of the '<em><b>Isolating Switch Reachable</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Isolating Switch Reachable</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setIsolatingSwitchReachable(Answer)
	 * @see garboard.model.GarboardPackage#getStartingBattery_IsolatingSwitchReachable()
	 * @generated
	 */
	Answer getIsolatingSwitchReachable();

	/**
	 * Sets the value of the '{@link garboard.model.StartingBattery#getIsolatingSwitchReachable <em>Isolating Switch Reachable</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Isolating Switch Reachable</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getIsolatingSwitchReachable()
	 * @generated
	 */
	void setIsolatingSwitchReachable(Answer value);

	/**
	 * Returns the value of the '<em><b>Emergency Cross Connect</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Emergency Cross Connect</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setEmergencyCrossConnect(Answer)
	 * @see garboard.model.GarboardPackage#getStartingBattery_EmergencyCrossConnect()
	 * @generated
	 */
	Answer getEmergencyCrossConnect();

	/**
	 * Sets the value of the '{@link garboard.model.StartingBattery#getEmergencyCrossConnect <em>Emergency Cross Connect</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Emergency Cross Connect</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getEmergencyCrossConnect()
	 * @generated
	 */
	void setEmergencyCrossConnect(Answer value);

	/**
	 * Returns the value of the '<em><b>Secured</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Secured</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setSecured(Answer)
	 * @see garboard.model.GarboardPackage#getStartingBattery_Secured()
	 * @generated
	 */
	Answer getSecured();

	/**
	 * Sets the value of the '{@link garboard.model.StartingBattery#getSecured <em>Secured</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Secured</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getSecured()
	 * @generated
	 */
	void setSecured(Answer value);

	/**
	 * Returns the value of the '<em><b>Movement Under Test</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Movement Under Test</em>' attribute.
	 * @see #setMovementUnderTest(Length)
	 * @see garboard.model.GarboardPackage#getStartingBattery_MovementUnderTest()
	 * @generated
	 */
	Length getMovementUnderTest();

	/**
	 * Sets the value of the '{@link garboard.model.StartingBattery#getMovementUnderTest <em>Movement Under Test</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Movement Under Test</em>' attribute.
	 * @see #getMovementUnderTest()
	 * @generated
	 */
	void setMovementUnderTest(Length value);

	/**
	 * Returns the value of the '<em><b>Tray Or Box</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Tray Or Box</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setTrayOrBox(Answer)
	 * @see garboard.model.GarboardPackage#getStartingBattery_TrayOrBox()
	 * @generated
	 */
	Answer getTrayOrBox();

	/**
	 * Sets the value of the '{@link garboard.model.StartingBattery#getTrayOrBox <em>Tray Or Box</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Tray Or Box</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getTrayOrBox()
	 * @generated
	 */
	void setTrayOrBox(Answer value);

	/**
	 * Returns the value of the '<em><b>Positive Terminal Covered</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Positive Terminal Covered</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setPositiveTerminalCovered(Answer)
	 * @see garboard.model.GarboardPackage#getStartingBattery_PositiveTerminalCovered()
	 * @generated
	 */
	Answer getPositiveTerminalCovered();

	/**
	 * Sets the value of the '{@link garboard.model.StartingBattery#getPositiveTerminalCovered <em>Positive Terminal Covered</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Positive Terminal Covered</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getPositiveTerminalCovered()
	 * @generated
	 */
	void setPositiveTerminalCovered(Answer value);

	/**
	 * Returns the value of the '<em><b>Terminals</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.TerminalKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Terminals</em>' attribute.
	 * @see garboard.model.TerminalKind
	 * @see #setTerminals(TerminalKind)
	 * @see garboard.model.GarboardPackage#getStartingBattery_Terminals()
	 * @generated
	 */
	TerminalKind getTerminals();

	/**
	 * Sets the value of the '{@link garboard.model.StartingBattery#getTerminals <em>Terminals</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Terminals</em>' attribute.
	 * @see garboard.model.TerminalKind
	 * @see #getTerminals()
	 * @generated
	 */
	void setTerminals(TerminalKind value);

	/**
	 * Returns the value of the '<em><b>Vented Overboard</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Vented Overboard</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setVentedOverboard(Answer)
	 * @see garboard.model.GarboardPackage#getStartingBattery_VentedOverboard()
	 * @generated
	 */
	Answer getVentedOverboard();

	/**
	 * Sets the value of the '{@link garboard.model.StartingBattery#getVentedOverboard <em>Vented Overboard</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Vented Overboard</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getVentedOverboard()
	 * @generated
	 */
	void setVentedOverboard(Answer value);

	/**
	 * Returns the value of the '<em><b>Ventilation Area Each Way</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Ventilation Area Each Way</em>' attribute.
	 * @see #setVentilationAreaEachWay(Area)
	 * @see garboard.model.GarboardPackage#getStartingBattery_VentilationAreaEachWay()
	 * @generated
	 */
	Area getVentilationAreaEachWay();

	/**
	 * Sets the value of the '{@link garboard.model.StartingBattery#getVentilationAreaEachWay <em>Ventilation Area Each Way</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Ventilation Area Each Way</em>' attribute.
	 * @see #getVentilationAreaEachWay()
	 * @generated
	 */
	void setVentilationAreaEachWay(Area value);

	/**
	 * Returns the value of the '<em><b>Distance To Starter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Distance To Starter</em>' attribute.
	 * @see #setDistanceToStarter(Length)
	 * @see garboard.model.GarboardPackage#getStartingBattery_DistanceToStarter()
	 * @generated
	 */
	Length getDistanceToStarter();

	/**
	 * Sets the value of the '{@link garboard.model.StartingBattery#getDistanceToStarter <em>Distance To Starter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Distance To Starter</em>' attribute.
	 * @see #getDistanceToStarter()
	 * @generated
	 */
	void setDistanceToStarter(Length value);

	/**
	 * Returns the value of the '<em><b>Fuel Parts Within Reach</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Fuel Parts Within Reach</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setFuelPartsWithinReach(Answer)
	 * @see garboard.model.GarboardPackage#getStartingBattery_FuelPartsWithinReach()
	 * @generated
	 */
	Answer getFuelPartsWithinReach();

	/**
	 * Sets the value of the '{@link garboard.model.StartingBattery#getFuelPartsWithinReach <em>Fuel Parts Within Reach</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Fuel Parts Within Reach</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getFuelPartsWithinReach()
	 * @generated
	 */
	void setFuelPartsWithinReach(Answer value);

	/**
	 * Returns the value of the '<em><b>Dielectric Shield</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Dielectric Shield</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setDielectricShield(Answer)
	 * @see garboard.model.GarboardPackage#getStartingBattery_DielectricShield()
	 * @generated
	 */
	Answer getDielectricShield();

	/**
	 * Sets the value of the '{@link garboard.model.StartingBattery#getDielectricShield <em>Dielectric Shield</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Dielectric Shield</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getDielectricShield()
	 * @generated
	 */
	void setDielectricShield(Answer value);

	/**
	 * Returns the value of the '<em><b>Above Or Below Fuel Fittings</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Above Or Below Fuel Fittings</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setAboveOrBelowFuelFittings(Answer)
	 * @see garboard.model.GarboardPackage#getStartingBattery_AboveOrBelowFuelFittings()
	 * @generated
	 */
	Answer getAboveOrBelowFuelFittings();

	/**
	 * Sets the value of the '{@link garboard.model.StartingBattery#getAboveOrBelowFuelFittings <em>Above Or Below Fuel Fittings</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Above Or Below Fuel Fittings</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getAboveOrBelowFuelFittings()
	 * @generated
	 */
	void setAboveOrBelowFuelFittings(Answer value);

	/**
	 * Returns the value of the '<em><b>High Above Bilge</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>High Above Bilge</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setHighAboveBilge(Answer)
	 * @see garboard.model.GarboardPackage#getStartingBattery_HighAboveBilge()
	 * @generated
	 */
	Answer getHighAboveBilge();

	/**
	 * Sets the value of the '{@link garboard.model.StartingBattery#getHighAboveBilge <em>High Above Bilge</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>High Above Bilge</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getHighAboveBilge()
	 * @generated
	 */
	void setHighAboveBilge(Answer value);

	/**
	 * Returns the value of the '<em><b>Charger Rated Current</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Charger Rated Current</em>' attribute.
	 * @see #setChargerRatedCurrent(Current)
	 * @see garboard.model.GarboardPackage#getStartingBattery_ChargerRatedCurrent()
	 * @generated
	 */
	Current getChargerRatedCurrent();

	/**
	 * Sets the value of the '{@link garboard.model.StartingBattery#getChargerRatedCurrent <em>Charger Rated Current</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Charger Rated Current</em>' attribute.
	 * @see #getChargerRatedCurrent()
	 * @generated
	 */
	void setChargerRatedCurrent(Current value);

	/**
	 * Returns the value of the '<em><b>Charger Voltage</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Charger Voltage</em>' attribute.
	 * @see #setChargerVoltage(Voltage)
	 * @see garboard.model.GarboardPackage#getStartingBattery_ChargerVoltage()
	 * @generated
	 */
	Voltage getChargerVoltage();

	/**
	 * Sets the value of the '{@link garboard.model.StartingBattery#getChargerVoltage <em>Charger Voltage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Charger Voltage</em>' attribute.
	 * @see #getChargerVoltage()
	 * @generated
	 */
	void setChargerVoltage(Voltage value);

	/**
	 * Returns the value of the '<em><b>Charging Voltage Running</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Charging Voltage Running</em>' attribute.
	 * @see #setChargingVoltageRunning(Voltage)
	 * @see garboard.model.GarboardPackage#getStartingBattery_ChargingVoltageRunning()
	 * @generated
	 */
	Voltage getChargingVoltageRunning();

	/**
	 * Sets the value of the '{@link garboard.model.StartingBattery#getChargingVoltageRunning <em>Charging Voltage Running</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Charging Voltage Running</em>' attribute.
	 * @see #getChargingVoltageRunning()
	 * @generated
	 */
	void setChargingVoltageRunning(Voltage value);

	/**
	 * Returns the value of the '<em><b>Charger Ammeter</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Charger Ammeter</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setChargerAmmeter(Answer)
	 * @see garboard.model.GarboardPackage#getStartingBattery_ChargerAmmeter()
	 * @generated
	 */
	Answer getChargerAmmeter();

	/**
	 * Sets the value of the '{@link garboard.model.StartingBattery#getChargerAmmeter <em>Charger Ammeter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Charger Ammeter</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getChargerAmmeter()
	 * @generated
	 */
	void setChargerAmmeter(Answer value);

	/**
	 * Returns the value of the '<em><b>Same Type And Age</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Same Type And Age</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setSameTypeAndAge(Answer)
	 * @see garboard.model.GarboardPackage#getStartingBattery_SameTypeAndAge()
	 * @generated
	 */
	Answer getSameTypeAndAge();

	/**
	 * Sets the value of the '{@link garboard.model.StartingBattery#getSameTypeAndAge <em>Same Type And Age</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Same Type And Age</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getSameTypeAndAge()
	 * @generated
	 */
	void setSameTypeAndAge(Answer value);

	/**
	 * Returns the value of the '<em><b>Cables</b></em>' containment reference list.
	 * The list contents are of type {@link garboard.model.CableRun}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Cables</em>' containment reference list.
	 * @see garboard.model.GarboardPackage#getStartingBattery_Cables()
	 * @generated
	 */
	EList<CableRun> getCables();

	/**
	 * Returns the value of the '<em><b>Cranking Voltage At Posts</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Cranking Voltage At Posts</em>' attribute.
	 * @see #setCrankingVoltageAtPosts(Voltage)
	 * @see garboard.model.GarboardPackage#getStartingBattery_CrankingVoltageAtPosts()
	 * @generated
	 */
	Voltage getCrankingVoltageAtPosts();

	/**
	 * Sets the value of the '{@link garboard.model.StartingBattery#getCrankingVoltageAtPosts <em>Cranking Voltage At Posts</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Cranking Voltage At Posts</em>' attribute.
	 * @see #getCrankingVoltageAtPosts()
	 * @generated
	 */
	void setCrankingVoltageAtPosts(Voltage value);

	/**
	 * Returns the value of the '<em><b>Cranking Voltage At Starter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Cranking Voltage At Starter</em>' attribute.
	 * @see #setCrankingVoltageAtStarter(Voltage)
	 * @see garboard.model.GarboardPackage#getStartingBattery_CrankingVoltageAtStarter()
	 * @generated
	 */
	Voltage getCrankingVoltageAtStarter();

	/**
	 * Sets the value of the '{@link garboard.model.StartingBattery#getCrankingVoltageAtStarter <em>Cranking Voltage At Starter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Cranking Voltage At Starter</em>' attribute.
	 * @see #getCrankingVoltageAtStarter()
	 * @generated
	 */
	void setCrankingVoltageAtStarter(Voltage value);

	/**
	 * Returns the value of the '<em><b>Blocks Mixed</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Blocks Mixed</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setBlocksMixed(Answer)
	 * @see garboard.model.GarboardPackage#getStartingBattery_BlocksMixed()
	 * @generated
	 */
	Answer getBlocksMixed();

	/**
	 * Sets the value of the '{@link garboard.model.StartingBattery#getBlocksMixed <em>Blocks Mixed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Blocks Mixed</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getBlocksMixed()
	 * @generated
	 */
	void setBlocksMixed(Answer value);

	/**
	 * Returns the value of the '<em><b>Emergency Source</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Emergency Source</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setEmergencySource(Answer)
	 * @see garboard.model.GarboardPackage#getStartingBattery_EmergencySource()
	 * @generated
	 */
	Answer getEmergencySource();

	/**
	 * Sets the value of the '{@link garboard.model.StartingBattery#getEmergencySource <em>Emergency Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Emergency Source</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getEmergencySource()
	 * @generated
	 */
	void setEmergencySource(Answer value);

} // StartingBattery
