/**
 */
package garboard.model;

import org.eclipse.emf.ecore.EFactory;

/**
 * <!-- begin-user-doc -->
 * The <b>Factory</b> for the model.
 * It provides a create method for each non-abstract class of the model.
 * <!-- end-user-doc -->
 * @see garboard.model.GarboardPackage
 * @generated
 */
public interface GarboardFactory extends EFactory {
	/**
	 * The singleton instance of the factory.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	GarboardFactory eINSTANCE = garboard.model.impl.GarboardFactoryImpl.init();

	/**
	 * Returns a new object of class '<em>Point</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Point</em>'.
	 * @generated
	 */
	Point createPoint();

	/**
	 * Returns a new object of class '<em>Commissioning Record</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Commissioning Record</em>'.
	 * @generated
	 */
	CommissioningRecord createCommissioningRecord();

	/**
	 * Returns a new object of class '<em>Revision</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Revision</em>'.
	 * @generated
	 */
	Revision createRevision();

	/**
	 * Returns a new object of class '<em>Instrument</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Instrument</em>'.
	 * @generated
	 */
	Instrument createInstrument();

	/**
	 * Returns a new object of class '<em>Party</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Party</em>'.
	 * @generated
	 */
	Party createParty();

	/**
	 * Returns a new object of class '<em>Photograph</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Photograph</em>'.
	 * @generated
	 */
	Photograph createPhotograph();

	/**
	 * Returns a new object of class '<em>Vessel</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Vessel</em>'.
	 * @generated
	 */
	Vessel createVessel();

	/**
	 * Returns a new object of class '<em>Generator Set</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Generator Set</em>'.
	 * @generated
	 */
	GeneratorSet createGeneratorSet();

	/**
	 * Returns a new object of class '<em>Maker Limits</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Maker Limits</em>'.
	 * @generated
	 */
	MakerLimits createMakerLimits();

	/**
	 * Returns a new object of class '<em>Starting Battery</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Starting Battery</em>'.
	 * @generated
	 */
	StartingBattery createStartingBattery();

	/**
	 * Returns a new object of class '<em>Battery Block</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Battery Block</em>'.
	 * @generated
	 */
	BatteryBlock createBatteryBlock();

	/**
	 * Returns a new object of class '<em>Cable Run</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Cable Run</em>'.
	 * @generated
	 */
	CableRun createCableRun();

	/**
	 * Returns a new object of class '<em>Fuel Supply</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Fuel Supply</em>'.
	 * @generated
	 */
	FuelSupply createFuelSupply();

	/**
	 * Returns a new object of class '<em>Fuel Tank</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Fuel Tank</em>'.
	 * @generated
	 */
	FuelTank createFuelTank();

	/**
	 * Returns a new object of class '<em>Fuel Line Run</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Fuel Line Run</em>'.
	 * @generated
	 */
	FuelLineRun createFuelLineRun();

	/**
	 * Returns a new object of class '<em>Fuel Separator</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Fuel Separator</em>'.
	 * @generated
	 */
	FuelSeparator createFuelSeparator();

	/**
	 * Returns a new object of class '<em>Raw Water Circuit</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Raw Water Circuit</em>'.
	 * @generated
	 */
	RawWaterCircuit createRawWaterCircuit();

	/**
	 * Returns a new object of class '<em>Hull Pick Up</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Hull Pick Up</em>'.
	 * @generated
	 */
	HullPickUp createHullPickUp();

	/**
	 * Returns a new object of class '<em>Seacock</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Seacock</em>'.
	 * @generated
	 */
	Seacock createSeacock();

	/**
	 * Returns a new object of class '<em>Water Strainer</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Water Strainer</em>'.
	 * @generated
	 */
	WaterStrainer createWaterStrainer();

	/**
	 * Returns a new object of class '<em>Water Hose Run</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Water Hose Run</em>'.
	 * @generated
	 */
	WaterHoseRun createWaterHoseRun();

	/**
	 * Returns a new object of class '<em>Pipe Fitting</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Pipe Fitting</em>'.
	 * @generated
	 */
	PipeFitting createPipeFitting();

	/**
	 * Returns a new object of class '<em>Water Pump</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Water Pump</em>'.
	 * @generated
	 */
	WaterPump createWaterPump();

	/**
	 * Returns a new object of class '<em>Siphon Break</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Siphon Break</em>'.
	 * @generated
	 */
	SiphonBreak createSiphonBreak();

	/**
	 * Returns a new object of class '<em>Exhaust Run</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Exhaust Run</em>'.
	 * @generated
	 */
	ExhaustRun createExhaustRun();

	/**
	 * Returns a new object of class '<em>Exhaust Point</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Exhaust Point</em>'.
	 * @generated
	 */
	ExhaustPoint createExhaustPoint();

	/**
	 * Returns a new object of class '<em>Exhaust Section Run</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Exhaust Section Run</em>'.
	 * @generated
	 */
	ExhaustSectionRun createExhaustSectionRun();

	/**
	 * Returns a new object of class '<em>Exhaust Bend</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Exhaust Bend</em>'.
	 * @generated
	 */
	ExhaustBend createExhaustBend();

	/**
	 * Returns a new object of class '<em>Muffler</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Muffler</em>'.
	 * @generated
	 */
	Muffler createMuffler();

	/**
	 * Returns a new object of class '<em>Riser</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Riser</em>'.
	 * @generated
	 */
	Riser createRiser();

	/**
	 * Returns a new object of class '<em>Exhaust Crest</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Exhaust Crest</em>'.
	 * @generated
	 */
	ExhaustCrest createExhaustCrest();

	/**
	 * Returns a new object of class '<em>Exhaust Outlet</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Exhaust Outlet</em>'.
	 * @generated
	 */
	ExhaustOutlet createExhaustOutlet();

	/**
	 * Returns a new object of class '<em>Separator Drain</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Separator Drain</em>'.
	 * @generated
	 */
	SeparatorDrain createSeparatorDrain();

	/**
	 * Returns a new object of class '<em>Ventilation</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Ventilation</em>'.
	 * @generated
	 */
	Ventilation createVentilation();

	/**
	 * Returns a new object of class '<em>Air Duct</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Air Duct</em>'.
	 * @generated
	 */
	AirDuct createAirDuct();

	/**
	 * Returns a new object of class '<em>Mounting</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Mounting</em>'.
	 * @generated
	 */
	Mounting createMounting();

	/**
	 * Returns a new object of class '<em>Ac Output</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Ac Output</em>'.
	 * @generated
	 */
	AcOutput createAcOutput();

	/**
	 * Returns a new object of class '<em>Transfer Switch</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Transfer Switch</em>'.
	 * @generated
	 */
	TransferSwitch createTransferSwitch();

	/**
	 * Returns a new object of class '<em>Electrical Load</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Electrical Load</em>'.
	 * @generated
	 */
	ElectricalLoad createElectricalLoad();

	/**
	 * Returns a new object of class '<em>Alarms And Safety</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Alarms And Safety</em>'.
	 * @generated
	 */
	AlarmsAndSafety createAlarmsAndSafety();

	/**
	 * Returns a new object of class '<em>Alarm Device</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Alarm Device</em>'.
	 * @generated
	 */
	AlarmDevice createAlarmDevice();

	/**
	 * Returns a new object of class '<em>Inspection Answer</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Inspection Answer</em>'.
	 * @generated
	 */
	InspectionAnswer createInspectionAnswer();

	/**
	 * Returns a new object of class '<em>Trial</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Trial</em>'.
	 * @generated
	 */
	Trial createTrial();

	/**
	 * Returns a new object of class '<em>Procedure Step</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Procedure Step</em>'.
	 * @generated
	 */
	ProcedureStep createProcedureStep();

	/**
	 * Returns a new object of class '<em>Fuel Priming</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Fuel Priming</em>'.
	 * @generated
	 */
	FuelPriming createFuelPriming();

	/**
	 * Returns a new object of class '<em>Cranking Attempt</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Cranking Attempt</em>'.
	 * @generated
	 */
	CrankingAttempt createCrankingAttempt();

	/**
	 * Returns a new object of class '<em>Load Step</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Load Step</em>'.
	 * @generated
	 */
	LoadStep createLoadStep();

	/**
	 * Returns a new object of class '<em>Reading</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Reading</em>'.
	 * @generated
	 */
	Reading createReading();

	/**
	 * Returns a new object of class '<em>Sea Run</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Sea Run</em>'.
	 * @generated
	 */
	SeaRun createSeaRun();

	/**
	 * Returns a new object of class '<em>Upkeep</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Upkeep</em>'.
	 * @generated
	 */
	Upkeep createUpkeep();

	/**
	 * Returns a new object of class '<em>Upkeep Task</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Upkeep Task</em>'.
	 * @generated
	 */
	UpkeepTask createUpkeepTask();

	/**
	 * Returns a new object of class '<em>Consumable</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Consumable</em>'.
	 * @generated
	 */
	Consumable createConsumable();

	/**
	 * Returns a new object of class '<em>Acceptance</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Acceptance</em>'.
	 * @generated
	 */
	Acceptance createAcceptance();

	/**
	 * Returns a new object of class '<em>Signature</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Signature</em>'.
	 * @generated
	 */
	Signature createSignature();

	/**
	 * Returns a new object of class '<em>Unread Entry</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Unread Entry</em>'.
	 * @generated
	 */
	UnreadEntry createUnreadEntry();

	/**
	 * Returns a new object of class '<em>Stored Verdict</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Stored Verdict</em>'.
	 * @generated
	 */
	StoredVerdict createStoredVerdict();

	/**
	 * Returns the package supported by this factory.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the package supported by this factory.
	 * @generated
	 */
	GarboardPackage getGarboardPackage();

} //GarboardFactory
