/**
 */
package garboard.model.util;

import garboard.model.*;

import org.eclipse.emf.common.notify.Adapter;
import org.eclipse.emf.common.notify.Notifier;

import org.eclipse.emf.common.notify.impl.AdapterFactoryImpl;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * The <b>Adapter Factory</b> for the model.
 * It provides an adapter <code>createXXX</code> method for each class of the model.
 * <!-- end-user-doc -->
 * @see garboard.model.GarboardPackage
 * @generated
 */
public class GarboardAdapterFactory extends AdapterFactoryImpl {
	/**
	 * The cached model package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected static GarboardPackage modelPackage;

	/**
	 * Creates an instance of the adapter factory.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public GarboardAdapterFactory() {
		if (modelPackage == null) {
			modelPackage = GarboardPackage.eINSTANCE;
		}
	}

	/**
	 * Returns whether this factory is applicable for the type of the object.
	 * <!-- begin-user-doc -->
	 * This implementation returns <code>true</code> if the object is either the model's package or is an instance object of the model.
	 * <!-- end-user-doc -->
	 * @return whether this factory is applicable for the type of the object.
	 * @generated
	 */
	@Override
	public boolean isFactoryForType(Object object) {
		if (object == modelPackage) {
			return true;
		}
		if (object instanceof EObject) {
			return ((EObject)object).eClass().getEPackage() == modelPackage;
		}
		return false;
	}

	/**
	 * The switch that delegates to the <code>createXXX</code> methods.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected GarboardSwitch<Adapter> modelSwitch =
		new GarboardSwitch<Adapter>() {
			@Override
			public Adapter caseItem(Item object) {
				return createItemAdapter();
			}
			@Override
			public Adapter casePoint(Point object) {
				return createPointAdapter();
			}
			@Override
			public Adapter caseCommissioningRecord(CommissioningRecord object) {
				return createCommissioningRecordAdapter();
			}
			@Override
			public Adapter caseRevision(Revision object) {
				return createRevisionAdapter();
			}
			@Override
			public Adapter caseInstrument(Instrument object) {
				return createInstrumentAdapter();
			}
			@Override
			public Adapter caseParty(Party object) {
				return createPartyAdapter();
			}
			@Override
			public Adapter casePhotograph(Photograph object) {
				return createPhotographAdapter();
			}
			@Override
			public Adapter caseVessel(Vessel object) {
				return createVesselAdapter();
			}
			@Override
			public Adapter caseGeneratorSet(GeneratorSet object) {
				return createGeneratorSetAdapter();
			}
			@Override
			public Adapter caseMakerLimits(MakerLimits object) {
				return createMakerLimitsAdapter();
			}
			@Override
			public Adapter caseStartingBattery(StartingBattery object) {
				return createStartingBatteryAdapter();
			}
			@Override
			public Adapter caseBatteryBlock(BatteryBlock object) {
				return createBatteryBlockAdapter();
			}
			@Override
			public Adapter caseCableRun(CableRun object) {
				return createCableRunAdapter();
			}
			@Override
			public Adapter caseFuelSupply(FuelSupply object) {
				return createFuelSupplyAdapter();
			}
			@Override
			public Adapter caseFuelTank(FuelTank object) {
				return createFuelTankAdapter();
			}
			@Override
			public Adapter caseFuelLineRun(FuelLineRun object) {
				return createFuelLineRunAdapter();
			}
			@Override
			public Adapter caseFuelSeparator(FuelSeparator object) {
				return createFuelSeparatorAdapter();
			}
			@Override
			public Adapter caseRawWaterCircuit(RawWaterCircuit object) {
				return createRawWaterCircuitAdapter();
			}
			@Override
			public Adapter caseHullPickUp(HullPickUp object) {
				return createHullPickUpAdapter();
			}
			@Override
			public Adapter caseSeacock(Seacock object) {
				return createSeacockAdapter();
			}
			@Override
			public Adapter caseWaterStrainer(WaterStrainer object) {
				return createWaterStrainerAdapter();
			}
			@Override
			public Adapter caseWaterHoseRun(WaterHoseRun object) {
				return createWaterHoseRunAdapter();
			}
			@Override
			public Adapter casePipeFitting(PipeFitting object) {
				return createPipeFittingAdapter();
			}
			@Override
			public Adapter caseWaterPump(WaterPump object) {
				return createWaterPumpAdapter();
			}
			@Override
			public Adapter caseSiphonBreak(SiphonBreak object) {
				return createSiphonBreakAdapter();
			}
			@Override
			public Adapter caseExhaustRun(ExhaustRun object) {
				return createExhaustRunAdapter();
			}
			@Override
			public Adapter caseExhaustPoint(ExhaustPoint object) {
				return createExhaustPointAdapter();
			}
			@Override
			public Adapter caseExhaustSectionRun(ExhaustSectionRun object) {
				return createExhaustSectionRunAdapter();
			}
			@Override
			public Adapter caseExhaustBend(ExhaustBend object) {
				return createExhaustBendAdapter();
			}
			@Override
			public Adapter caseMuffler(Muffler object) {
				return createMufflerAdapter();
			}
			@Override
			public Adapter caseRiser(Riser object) {
				return createRiserAdapter();
			}
			@Override
			public Adapter caseExhaustCrest(ExhaustCrest object) {
				return createExhaustCrestAdapter();
			}
			@Override
			public Adapter caseExhaustOutlet(ExhaustOutlet object) {
				return createExhaustOutletAdapter();
			}
			@Override
			public Adapter caseSeparatorDrain(SeparatorDrain object) {
				return createSeparatorDrainAdapter();
			}
			@Override
			public Adapter caseVentilation(Ventilation object) {
				return createVentilationAdapter();
			}
			@Override
			public Adapter caseAirDuct(AirDuct object) {
				return createAirDuctAdapter();
			}
			@Override
			public Adapter caseMounting(Mounting object) {
				return createMountingAdapter();
			}
			@Override
			public Adapter caseAcOutput(AcOutput object) {
				return createAcOutputAdapter();
			}
			@Override
			public Adapter caseTransferSwitch(TransferSwitch object) {
				return createTransferSwitchAdapter();
			}
			@Override
			public Adapter caseElectricalLoad(ElectricalLoad object) {
				return createElectricalLoadAdapter();
			}
			@Override
			public Adapter caseAlarmsAndSafety(AlarmsAndSafety object) {
				return createAlarmsAndSafetyAdapter();
			}
			@Override
			public Adapter caseAlarmDevice(AlarmDevice object) {
				return createAlarmDeviceAdapter();
			}
			@Override
			public Adapter caseInspectionAnswer(InspectionAnswer object) {
				return createInspectionAnswerAdapter();
			}
			@Override
			public Adapter caseTrial(Trial object) {
				return createTrialAdapter();
			}
			@Override
			public Adapter caseProcedureStep(ProcedureStep object) {
				return createProcedureStepAdapter();
			}
			@Override
			public Adapter caseFuelPriming(FuelPriming object) {
				return createFuelPrimingAdapter();
			}
			@Override
			public Adapter caseCrankingAttempt(CrankingAttempt object) {
				return createCrankingAttemptAdapter();
			}
			@Override
			public Adapter caseLoadStep(LoadStep object) {
				return createLoadStepAdapter();
			}
			@Override
			public Adapter caseReading(Reading object) {
				return createReadingAdapter();
			}
			@Override
			public Adapter caseSeaRun(SeaRun object) {
				return createSeaRunAdapter();
			}
			@Override
			public Adapter caseUpkeep(Upkeep object) {
				return createUpkeepAdapter();
			}
			@Override
			public Adapter caseUpkeepTask(UpkeepTask object) {
				return createUpkeepTaskAdapter();
			}
			@Override
			public Adapter caseConsumable(Consumable object) {
				return createConsumableAdapter();
			}
			@Override
			public Adapter caseAcceptance(Acceptance object) {
				return createAcceptanceAdapter();
			}
			@Override
			public Adapter caseSignature(Signature object) {
				return createSignatureAdapter();
			}
			@Override
			public Adapter caseUnreadEntry(UnreadEntry object) {
				return createUnreadEntryAdapter();
			}
			@Override
			public Adapter caseStoredVerdict(StoredVerdict object) {
				return createStoredVerdictAdapter();
			}
			@Override
			public Adapter defaultCase(EObject object) {
				return createEObjectAdapter();
			}
		};

	/**
	 * Creates an adapter for the <code>target</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param target the object to adapt.
	 * @return the adapter for the <code>target</code>.
	 * @generated
	 */
	@Override
	public Adapter createAdapter(Notifier target) {
		return modelSwitch.doSwitch((EObject)target);
	}


	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.Item <em>Item</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.Item
	 * @generated
	 */
	public Adapter createItemAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.Point <em>Point</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.Point
	 * @generated
	 */
	public Adapter createPointAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.CommissioningRecord <em>Commissioning Record</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.CommissioningRecord
	 * @generated
	 */
	public Adapter createCommissioningRecordAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.Revision <em>Revision</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.Revision
	 * @generated
	 */
	public Adapter createRevisionAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.Instrument <em>Instrument</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.Instrument
	 * @generated
	 */
	public Adapter createInstrumentAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.Party <em>Party</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.Party
	 * @generated
	 */
	public Adapter createPartyAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.Photograph <em>Photograph</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.Photograph
	 * @generated
	 */
	public Adapter createPhotographAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.Vessel <em>Vessel</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.Vessel
	 * @generated
	 */
	public Adapter createVesselAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.GeneratorSet <em>Generator Set</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.GeneratorSet
	 * @generated
	 */
	public Adapter createGeneratorSetAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.MakerLimits <em>Maker Limits</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.MakerLimits
	 * @generated
	 */
	public Adapter createMakerLimitsAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.StartingBattery <em>Starting Battery</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.StartingBattery
	 * @generated
	 */
	public Adapter createStartingBatteryAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.BatteryBlock <em>Battery Block</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.BatteryBlock
	 * @generated
	 */
	public Adapter createBatteryBlockAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.CableRun <em>Cable Run</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.CableRun
	 * @generated
	 */
	public Adapter createCableRunAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.FuelSupply <em>Fuel Supply</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.FuelSupply
	 * @generated
	 */
	public Adapter createFuelSupplyAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.FuelTank <em>Fuel Tank</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.FuelTank
	 * @generated
	 */
	public Adapter createFuelTankAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.FuelLineRun <em>Fuel Line Run</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.FuelLineRun
	 * @generated
	 */
	public Adapter createFuelLineRunAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.FuelSeparator <em>Fuel Separator</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.FuelSeparator
	 * @generated
	 */
	public Adapter createFuelSeparatorAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.RawWaterCircuit <em>Raw Water Circuit</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.RawWaterCircuit
	 * @generated
	 */
	public Adapter createRawWaterCircuitAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.HullPickUp <em>Hull Pick Up</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.HullPickUp
	 * @generated
	 */
	public Adapter createHullPickUpAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.Seacock <em>Seacock</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.Seacock
	 * @generated
	 */
	public Adapter createSeacockAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.WaterStrainer <em>Water Strainer</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.WaterStrainer
	 * @generated
	 */
	public Adapter createWaterStrainerAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.WaterHoseRun <em>Water Hose Run</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.WaterHoseRun
	 * @generated
	 */
	public Adapter createWaterHoseRunAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.PipeFitting <em>Pipe Fitting</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.PipeFitting
	 * @generated
	 */
	public Adapter createPipeFittingAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.WaterPump <em>Water Pump</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.WaterPump
	 * @generated
	 */
	public Adapter createWaterPumpAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.SiphonBreak <em>Siphon Break</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.SiphonBreak
	 * @generated
	 */
	public Adapter createSiphonBreakAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.ExhaustRun <em>Exhaust Run</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.ExhaustRun
	 * @generated
	 */
	public Adapter createExhaustRunAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.ExhaustPoint <em>Exhaust Point</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.ExhaustPoint
	 * @generated
	 */
	public Adapter createExhaustPointAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.ExhaustSectionRun <em>Exhaust Section Run</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.ExhaustSectionRun
	 * @generated
	 */
	public Adapter createExhaustSectionRunAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.ExhaustBend <em>Exhaust Bend</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.ExhaustBend
	 * @generated
	 */
	public Adapter createExhaustBendAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.Muffler <em>Muffler</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.Muffler
	 * @generated
	 */
	public Adapter createMufflerAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.Riser <em>Riser</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.Riser
	 * @generated
	 */
	public Adapter createRiserAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.ExhaustCrest <em>Exhaust Crest</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.ExhaustCrest
	 * @generated
	 */
	public Adapter createExhaustCrestAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.ExhaustOutlet <em>Exhaust Outlet</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.ExhaustOutlet
	 * @generated
	 */
	public Adapter createExhaustOutletAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.SeparatorDrain <em>Separator Drain</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.SeparatorDrain
	 * @generated
	 */
	public Adapter createSeparatorDrainAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.Ventilation <em>Ventilation</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.Ventilation
	 * @generated
	 */
	public Adapter createVentilationAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.AirDuct <em>Air Duct</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.AirDuct
	 * @generated
	 */
	public Adapter createAirDuctAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.Mounting <em>Mounting</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.Mounting
	 * @generated
	 */
	public Adapter createMountingAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.AcOutput <em>Ac Output</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.AcOutput
	 * @generated
	 */
	public Adapter createAcOutputAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.TransferSwitch <em>Transfer Switch</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.TransferSwitch
	 * @generated
	 */
	public Adapter createTransferSwitchAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.ElectricalLoad <em>Electrical Load</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.ElectricalLoad
	 * @generated
	 */
	public Adapter createElectricalLoadAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.AlarmsAndSafety <em>Alarms And Safety</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.AlarmsAndSafety
	 * @generated
	 */
	public Adapter createAlarmsAndSafetyAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.AlarmDevice <em>Alarm Device</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.AlarmDevice
	 * @generated
	 */
	public Adapter createAlarmDeviceAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.InspectionAnswer <em>Inspection Answer</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.InspectionAnswer
	 * @generated
	 */
	public Adapter createInspectionAnswerAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.Trial <em>Trial</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.Trial
	 * @generated
	 */
	public Adapter createTrialAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.ProcedureStep <em>Procedure Step</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.ProcedureStep
	 * @generated
	 */
	public Adapter createProcedureStepAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.FuelPriming <em>Fuel Priming</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.FuelPriming
	 * @generated
	 */
	public Adapter createFuelPrimingAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.CrankingAttempt <em>Cranking Attempt</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.CrankingAttempt
	 * @generated
	 */
	public Adapter createCrankingAttemptAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.LoadStep <em>Load Step</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.LoadStep
	 * @generated
	 */
	public Adapter createLoadStepAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.Reading <em>Reading</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.Reading
	 * @generated
	 */
	public Adapter createReadingAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.SeaRun <em>Sea Run</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.SeaRun
	 * @generated
	 */
	public Adapter createSeaRunAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.Upkeep <em>Upkeep</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.Upkeep
	 * @generated
	 */
	public Adapter createUpkeepAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.UpkeepTask <em>Upkeep Task</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.UpkeepTask
	 * @generated
	 */
	public Adapter createUpkeepTaskAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.Consumable <em>Consumable</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.Consumable
	 * @generated
	 */
	public Adapter createConsumableAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.Acceptance <em>Acceptance</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.Acceptance
	 * @generated
	 */
	public Adapter createAcceptanceAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.Signature <em>Signature</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.Signature
	 * @generated
	 */
	public Adapter createSignatureAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.UnreadEntry <em>Unread Entry</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.UnreadEntry
	 * @generated
	 */
	public Adapter createUnreadEntryAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link garboard.model.StoredVerdict <em>Stored Verdict</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see garboard.model.StoredVerdict
	 * @generated
	 */
	public Adapter createStoredVerdictAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for the default case.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @generated
	 */
	public Adapter createEObjectAdapter() {
		return null;
	}

} //GarboardAdapterFactory
