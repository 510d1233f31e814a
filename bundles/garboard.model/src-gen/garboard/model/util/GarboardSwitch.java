/**
 */
package garboard.model.util;

import garboard.model.*;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EPackage;

import org.eclipse.emf.ecore.util.Switch;

/**
 * <!-- begin-user-doc -->
 * The <b>Switch</b> for the model's inheritance hierarchy.
 * It supports the call {@link #doSwitch(EObject) doSwitch(object)}
 * to invoke the <code>caseXXX</code> method for each class of the model,
 * starting with the actual class of the object
 * and proceeding up the inheritance hierarchy
 * until a non-null result is returned,
 * which is the result of the switch.
 * <!-- end-user-doc -->
 * @see garboard.model.GarboardPackage
 * @generated
 */
public class GarboardSwitch<T> extends Switch<T> {
	/**
	 * The cached model package
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected static GarboardPackage modelPackage;

	/**
	 * Creates an instance of the switch.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public GarboardSwitch() {
		if (modelPackage == null) {
			modelPackage = GarboardPackage.eINSTANCE;
		}
	}

	/**
	 * Checks whether this is a switch for the given package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param ePackage the package in question.
	 * @return whether this is a switch for the given package.
	 * @generated
	 */
	@Override
	protected boolean isSwitchFor(EPackage ePackage) {
		return ePackage == modelPackage;
	}

	/**
	 * Calls <code>caseXXX</code> for each class of the model until one returns a non null result; it yields that result.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the first non-null result returned by a <code>caseXXX</code> call.
	 * @generated
	 */
	@Override
	protected T doSwitch(int classifierID, EObject theEObject) {
		switch (classifierID) {
			case GarboardPackage.ITEM: {
				Item item = (Item)theEObject;
				T result = caseItem(item);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.POINT: {
				Point point = (Point)theEObject;
				T result = casePoint(point);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.COMMISSIONING_RECORD: {
				CommissioningRecord commissioningRecord = (CommissioningRecord)theEObject;
				T result = caseCommissioningRecord(commissioningRecord);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.REVISION: {
				Revision revision = (Revision)theEObject;
				T result = caseRevision(revision);
				if (result == null) result = caseItem(revision);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.INSTRUMENT: {
				Instrument instrument = (Instrument)theEObject;
				T result = caseInstrument(instrument);
				if (result == null) result = caseItem(instrument);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.PARTY: {
				Party party = (Party)theEObject;
				T result = caseParty(party);
				if (result == null) result = caseItem(party);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.PHOTOGRAPH: {
				Photograph photograph = (Photograph)theEObject;
				T result = casePhotograph(photograph);
				if (result == null) result = caseItem(photograph);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.VESSEL: {
				Vessel vessel = (Vessel)theEObject;
				T result = caseVessel(vessel);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.GENERATOR_SET: {
				GeneratorSet generatorSet = (GeneratorSet)theEObject;
				T result = caseGeneratorSet(generatorSet);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.MAKER_LIMITS: {
				MakerLimits makerLimits = (MakerLimits)theEObject;
				T result = caseMakerLimits(makerLimits);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.STARTING_BATTERY: {
				StartingBattery startingBattery = (StartingBattery)theEObject;
				T result = caseStartingBattery(startingBattery);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.BATTERY_BLOCK: {
				BatteryBlock batteryBlock = (BatteryBlock)theEObject;
				T result = caseBatteryBlock(batteryBlock);
				if (result == null) result = caseItem(batteryBlock);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.CABLE_RUN: {
				CableRun cableRun = (CableRun)theEObject;
				T result = caseCableRun(cableRun);
				if (result == null) result = caseItem(cableRun);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.FUEL_SUPPLY: {
				FuelSupply fuelSupply = (FuelSupply)theEObject;
				T result = caseFuelSupply(fuelSupply);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.FUEL_TANK: {
				FuelTank fuelTank = (FuelTank)theEObject;
				T result = caseFuelTank(fuelTank);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.FUEL_LINE_RUN: {
				FuelLineRun fuelLineRun = (FuelLineRun)theEObject;
				T result = caseFuelLineRun(fuelLineRun);
				if (result == null) result = caseItem(fuelLineRun);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.FUEL_SEPARATOR: {
				FuelSeparator fuelSeparator = (FuelSeparator)theEObject;
				T result = caseFuelSeparator(fuelSeparator);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.RAW_WATER_CIRCUIT: {
				RawWaterCircuit rawWaterCircuit = (RawWaterCircuit)theEObject;
				T result = caseRawWaterCircuit(rawWaterCircuit);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.HULL_PICK_UP: {
				HullPickUp hullPickUp = (HullPickUp)theEObject;
				T result = caseHullPickUp(hullPickUp);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.SEACOCK: {
				Seacock seacock = (Seacock)theEObject;
				T result = caseSeacock(seacock);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.WATER_STRAINER: {
				WaterStrainer waterStrainer = (WaterStrainer)theEObject;
				T result = caseWaterStrainer(waterStrainer);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.WATER_HOSE_RUN: {
				WaterHoseRun waterHoseRun = (WaterHoseRun)theEObject;
				T result = caseWaterHoseRun(waterHoseRun);
				if (result == null) result = caseItem(waterHoseRun);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.PIPE_FITTING: {
				PipeFitting pipeFitting = (PipeFitting)theEObject;
				T result = casePipeFitting(pipeFitting);
				if (result == null) result = caseItem(pipeFitting);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.WATER_PUMP: {
				WaterPump waterPump = (WaterPump)theEObject;
				T result = caseWaterPump(waterPump);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.SIPHON_BREAK: {
				SiphonBreak siphonBreak = (SiphonBreak)theEObject;
				T result = caseSiphonBreak(siphonBreak);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.EXHAUST_RUN: {
				ExhaustRun exhaustRun = (ExhaustRun)theEObject;
				T result = caseExhaustRun(exhaustRun);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.EXHAUST_POINT: {
				ExhaustPoint exhaustPoint = (ExhaustPoint)theEObject;
				T result = caseExhaustPoint(exhaustPoint);
				if (result == null) result = caseItem(exhaustPoint);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.EXHAUST_SECTION_RUN: {
				ExhaustSectionRun exhaustSectionRun = (ExhaustSectionRun)theEObject;
				T result = caseExhaustSectionRun(exhaustSectionRun);
				if (result == null) result = caseItem(exhaustSectionRun);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.EXHAUST_BEND: {
				ExhaustBend exhaustBend = (ExhaustBend)theEObject;
				T result = caseExhaustBend(exhaustBend);
				if (result == null) result = caseItem(exhaustBend);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.MUFFLER: {
				Muffler muffler = (Muffler)theEObject;
				T result = caseMuffler(muffler);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.RISER: {
				Riser riser = (Riser)theEObject;
				T result = caseRiser(riser);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.EXHAUST_CREST: {
				ExhaustCrest exhaustCrest = (ExhaustCrest)theEObject;
				T result = caseExhaustCrest(exhaustCrest);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.EXHAUST_OUTLET: {
				ExhaustOutlet exhaustOutlet = (ExhaustOutlet)theEObject;
				T result = caseExhaustOutlet(exhaustOutlet);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.SEPARATOR_DRAIN: {
				SeparatorDrain separatorDrain = (SeparatorDrain)theEObject;
				T result = caseSeparatorDrain(separatorDrain);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.VENTILATION: {
				Ventilation ventilation = (Ventilation)theEObject;
				T result = caseVentilation(ventilation);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.AIR_DUCT: {
				AirDuct airDuct = (AirDuct)theEObject;
				T result = caseAirDuct(airDuct);
				if (result == null) result = caseItem(airDuct);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.MOUNTING: {
				Mounting mounting = (Mounting)theEObject;
				T result = caseMounting(mounting);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.AC_OUTPUT: {
				AcOutput acOutput = (AcOutput)theEObject;
				T result = caseAcOutput(acOutput);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.TRANSFER_SWITCH: {
				TransferSwitch transferSwitch = (TransferSwitch)theEObject;
				T result = caseTransferSwitch(transferSwitch);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.ELECTRICAL_LOAD: {
				ElectricalLoad electricalLoad = (ElectricalLoad)theEObject;
				T result = caseElectricalLoad(electricalLoad);
				if (result == null) result = caseItem(electricalLoad);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.ALARMS_AND_SAFETY: {
				AlarmsAndSafety alarmsAndSafety = (AlarmsAndSafety)theEObject;
				T result = caseAlarmsAndSafety(alarmsAndSafety);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.ALARM_DEVICE: {
				AlarmDevice alarmDevice = (AlarmDevice)theEObject;
				T result = caseAlarmDevice(alarmDevice);
				if (result == null) result = caseItem(alarmDevice);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.INSPECTION_ANSWER: {
				InspectionAnswer inspectionAnswer = (InspectionAnswer)theEObject;
				T result = caseInspectionAnswer(inspectionAnswer);
				if (result == null) result = caseItem(inspectionAnswer);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.TRIAL: {
				Trial trial = (Trial)theEObject;
				T result = caseTrial(trial);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.PROCEDURE_STEP: {
				ProcedureStep procedureStep = (ProcedureStep)theEObject;
				T result = caseProcedureStep(procedureStep);
				if (result == null) result = caseItem(procedureStep);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.FUEL_PRIMING: {
				FuelPriming fuelPriming = (FuelPriming)theEObject;
				T result = caseFuelPriming(fuelPriming);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.CRANKING_ATTEMPT: {
				CrankingAttempt crankingAttempt = (CrankingAttempt)theEObject;
				T result = caseCrankingAttempt(crankingAttempt);
				if (result == null) result = caseItem(crankingAttempt);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.LOAD_STEP: {
				LoadStep loadStep = (LoadStep)theEObject;
				T result = caseLoadStep(loadStep);
				if (result == null) result = caseItem(loadStep);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.READING: {
				Reading reading = (Reading)theEObject;
				T result = caseReading(reading);
				if (result == null) result = caseItem(reading);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.SEA_RUN: {
				SeaRun seaRun = (SeaRun)theEObject;
				T result = caseSeaRun(seaRun);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.UPKEEP: {
				Upkeep upkeep = (Upkeep)theEObject;
				T result = caseUpkeep(upkeep);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.UPKEEP_TASK: {
				UpkeepTask upkeepTask = (UpkeepTask)theEObject;
				T result = caseUpkeepTask(upkeepTask);
				if (result == null) result = caseItem(upkeepTask);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.CONSUMABLE: {
				Consumable consumable = (Consumable)theEObject;
				T result = caseConsumable(consumable);
				if (result == null) result = caseItem(consumable);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.ACCEPTANCE: {
				Acceptance acceptance = (Acceptance)theEObject;
				T result = caseAcceptance(acceptance);
				if (result == null) result = caseItem(acceptance);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.SIGNATURE: {
				Signature signature = (Signature)theEObject;
				T result = caseSignature(signature);
				if (result == null) result = caseItem(signature);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.UNREAD_ENTRY: {
				UnreadEntry unreadEntry = (UnreadEntry)theEObject;
				T result = caseUnreadEntry(unreadEntry);
				if (result == null) result = caseItem(unreadEntry);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case GarboardPackage.STORED_VERDICT: {
				StoredVerdict storedVerdict = (StoredVerdict)theEObject;
				T result = caseStoredVerdict(storedVerdict);
				if (result == null) result = caseItem(storedVerdict);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			default: return defaultCase(theEObject);
		}
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Item</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Item</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseItem(Item object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Point</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Point</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T casePoint(Point object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Commissioning Record</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Commissioning Record</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseCommissioningRecord(CommissioningRecord object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Revision</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Revision</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseRevision(Revision object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Instrument</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Instrument</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseInstrument(Instrument object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Party</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Party</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseParty(Party object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Photograph</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Photograph</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T casePhotograph(Photograph object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Vessel</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Vessel</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseVessel(Vessel object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Generator Set</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Generator Set</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseGeneratorSet(GeneratorSet object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Maker Limits</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Maker Limits</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseMakerLimits(MakerLimits object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Starting Battery</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Starting Battery</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseStartingBattery(StartingBattery object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Battery Block</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Battery Block</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseBatteryBlock(BatteryBlock object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Cable Run</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Cable Run</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseCableRun(CableRun object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Fuel Supply</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Fuel Supply</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseFuelSupply(FuelSupply object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Fuel Tank</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Fuel Tank</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseFuelTank(FuelTank object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Fuel Line Run</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Fuel Line Run</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseFuelLineRun(FuelLineRun object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Fuel Separator</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Fuel Separator</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseFuelSeparator(FuelSeparator object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Raw Water Circuit</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Raw Water Circuit</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseRawWaterCircuit(RawWaterCircuit object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Hull Pick Up</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Hull Pick Up</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseHullPickUp(HullPickUp object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Seacock</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Seacock</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseSeacock(Seacock object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Water Strainer</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Water Strainer</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseWaterStrainer(WaterStrainer object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Water Hose Run</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Water Hose Run</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseWaterHoseRun(WaterHoseRun object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Pipe Fitting</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Pipe Fitting</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T casePipeFitting(PipeFitting object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Water Pump</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Water Pump</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseWaterPump(WaterPump object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Siphon Break</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Siphon Break</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseSiphonBreak(SiphonBreak object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Exhaust Run</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Exhaust Run</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseExhaustRun(ExhaustRun object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Exhaust Point</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Exhaust Point</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseExhaustPoint(ExhaustPoint object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Exhaust Section Run</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Exhaust Section Run</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseExhaustSectionRun(ExhaustSectionRun object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Exhaust Bend</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Exhaust Bend</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseExhaustBend(ExhaustBend object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Muffler</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Muffler</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseMuffler(Muffler object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Riser</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Riser</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseRiser(Riser object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Exhaust Crest</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Exhaust Crest</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseExhaustCrest(ExhaustCrest object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Exhaust Outlet</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Exhaust Outlet</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseExhaustOutlet(ExhaustOutlet object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Separator Drain</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Separator Drain</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseSeparatorDrain(SeparatorDrain object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Ventilation</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Ventilation</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseVentilation(Ventilation object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Air Duct</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Air Duct</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseAirDuct(AirDuct object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Mounting</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Mounting</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseMounting(Mounting object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Ac Output</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Ac Output</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseAcOutput(AcOutput object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Transfer Switch</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Transfer Switch</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseTransferSwitch(TransferSwitch object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Electrical Load</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Electrical Load</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseElectricalLoad(ElectricalLoad object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Alarms And Safety</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Alarms And Safety</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseAlarmsAndSafety(AlarmsAndSafety object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Alarm Device</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Alarm Device</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseAlarmDevice(AlarmDevice object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Inspection Answer</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Inspection Answer</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseInspectionAnswer(InspectionAnswer object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Trial</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Trial</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseTrial(Trial object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Procedure Step</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Procedure Step</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseProcedureStep(ProcedureStep object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Fuel Priming</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Fuel Priming</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseFuelPriming(FuelPriming object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Cranking Attempt</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Cranking Attempt</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseCrankingAttempt(CrankingAttempt object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Load Step</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Load Step</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseLoadStep(LoadStep object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Reading</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Reading</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseReading(Reading object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Sea Run</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Sea Run</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseSeaRun(SeaRun object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Upkeep</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Upkeep</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseUpkeep(Upkeep object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Upkeep Task</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Upkeep Task</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseUpkeepTask(UpkeepTask object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Consumable</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Consumable</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseConsumable(Consumable object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Acceptance</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Acceptance</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseAcceptance(Acceptance object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Signature</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Signature</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseSignature(Signature object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Unread Entry</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Unread Entry</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseUnreadEntry(UnreadEntry object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Stored Verdict</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Stored Verdict</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseStoredVerdict(StoredVerdict object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>EObject</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch, but this is the last case anyway.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>EObject</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject)
	 * @generated
	 */
	@Override
	public T defaultCase(EObject object) {
		return null;
	}

} //GarboardSwitch
