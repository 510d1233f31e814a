/**
 */
package garboard.model.impl;

import garboard.model.*;

import garboard.quantity.AbsolutePressure;
import garboard.quantity.Angle;
import garboard.quantity.ApparentPower;
import garboard.quantity.Area;
import garboard.quantity.Charge;
import garboard.quantity.Current;
import garboard.quantity.Frequency;
import garboard.quantity.GaugePressure;
import garboard.quantity.Length;
import garboard.quantity.Mass;
import garboard.quantity.MassFlow;
import garboard.quantity.Power;
import garboard.quantity.PressureDifference;
import garboard.quantity.Ratio;
import garboard.quantity.Resistance;
import garboard.quantity.RotationalSpeed;
import garboard.quantity.Slope;
import garboard.quantity.SpecificConsumption;
import garboard.quantity.Speed;
import garboard.quantity.Temperature;
import garboard.quantity.TemperatureDifference;
import garboard.quantity.TimeSpan;
import garboard.quantity.Voltage;
import garboard.quantity.Volume;
import garboard.quantity.VolumeFlow;

import java.time.LocalDate;
import java.time.OffsetDateTime;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EPackage;

import org.eclipse.emf.ecore.impl.EFactoryImpl;

import org.eclipse.emf.ecore.plugin.EcorePlugin;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model <b>Factory</b>.
 * <!-- end-user-doc -->
 * @generated
 */
public class GarboardFactoryImpl extends EFactoryImpl implements GarboardFactory {
	/**
	 * Creates the default factory implementation.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static GarboardFactory init() {
		try {
			GarboardFactory theGarboardFactory = (GarboardFactory)EPackage.Registry.INSTANCE.getEFactory(GarboardPackage.eNS_URI);
			if (theGarboardFactory != null) {
				return theGarboardFactory;
			}
		}
		catch (Exception exception) {
			EcorePlugin.INSTANCE.log(exception);
		}
		return new GarboardFactoryImpl();
	}

	/**
	 * Creates an instance of the factory.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public GarboardFactoryImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EObject create(EClass eClass) {
		switch (eClass.getClassifierID()) {
			case GarboardPackage.POINT: return createPoint();
			case GarboardPackage.COMMISSIONING_RECORD: return createCommissioningRecord();
			case GarboardPackage.REVISION: return createRevision();
			case GarboardPackage.INSTRUMENT: return createInstrument();
			case GarboardPackage.PARTY: return createParty();
			case GarboardPackage.PHOTOGRAPH: return createPhotograph();
			case GarboardPackage.VESSEL: return createVessel();
			case GarboardPackage.GENERATOR_SET: return createGeneratorSet();
			case GarboardPackage.MAKER_LIMITS: return createMakerLimits();
			case GarboardPackage.STARTING_BATTERY: return createStartingBattery();
			case GarboardPackage.BATTERY_BLOCK: return createBatteryBlock();
			case GarboardPackage.CABLE_RUN: return createCableRun();
			case GarboardPackage.FUEL_SUPPLY: return createFuelSupply();
			case GarboardPackage.FUEL_TANK: return createFuelTank();
			case GarboardPackage.FUEL_LINE_RUN: return createFuelLineRun();
			case GarboardPackage.FUEL_SEPARATOR: return createFuelSeparator();
			case GarboardPackage.RAW_WATER_CIRCUIT: return createRawWaterCircuit();
			case GarboardPackage.HULL_PICK_UP: return createHullPickUp();
			case GarboardPackage.SEACOCK: return createSeacock();
			case GarboardPackage.WATER_STRAINER: return createWaterStrainer();
			case GarboardPackage.WATER_HOSE_RUN: return createWaterHoseRun();
			case GarboardPackage.PIPE_FITTING: return createPipeFitting();
			case GarboardPackage.WATER_PUMP: return createWaterPump();
			case GarboardPackage.SIPHON_BREAK: return createSiphonBreak();
			case GarboardPackage.EXHAUST_RUN: return createExhaustRun();
			case GarboardPackage.EXHAUST_POINT: return createExhaustPoint();
			case GarboardPackage.EXHAUST_SECTION_RUN: return createExhaustSectionRun();
			case GarboardPackage.EXHAUST_BEND: return createExhaustBend();
			case GarboardPackage.MUFFLER: return createMuffler();
			case GarboardPackage.RISER: return createRiser();
			case GarboardPackage.EXHAUST_CREST: return createExhaustCrest();
			case GarboardPackage.EXHAUST_OUTLET: return createExhaustOutlet();
			case GarboardPackage.SEPARATOR_DRAIN: return createSeparatorDrain();
			case GarboardPackage.VENTILATION: return createVentilation();
			case GarboardPackage.AIR_DUCT: return createAirDuct();
			case GarboardPackage.MOUNTING: return createMounting();
			case GarboardPackage.AC_OUTPUT: return createAcOutput();
			case GarboardPackage.TRANSFER_SWITCH: return createTransferSwitch();
			case GarboardPackage.ELECTRICAL_LOAD: return createElectricalLoad();
			case GarboardPackage.ALARMS_AND_SAFETY: return createAlarmsAndSafety();
			case GarboardPackage.ALARM_DEVICE: return createAlarmDevice();
			case GarboardPackage.INSPECTION_ANSWER: return createInspectionAnswer();
			case GarboardPackage.TRIAL: return createTrial();
			case GarboardPackage.PROCEDURE_STEP: return createProcedureStep();
			case GarboardPackage.FUEL_PRIMING: return createFuelPriming();
			case GarboardPackage.CRANKING_ATTEMPT: return createCrankingAttempt();
			case GarboardPackage.LOAD_STEP: return createLoadStep();
			case GarboardPackage.READING: return createReading();
			case GarboardPackage.SEA_RUN: return createSeaRun();
			case GarboardPackage.UPKEEP: return createUpkeep();
			case GarboardPackage.UPKEEP_TASK: return createUpkeepTask();
			case GarboardPackage.CONSUMABLE: return createConsumable();
			case GarboardPackage.ACCEPTANCE: return createAcceptance();
			case GarboardPackage.SIGNATURE: return createSignature();
			case GarboardPackage.UNREAD_ENTRY: return createUnreadEntry();
			case GarboardPackage.STORED_VERDICT: return createStoredVerdict();
			default:
				throw new IllegalArgumentException("The class '" + eClass.getName() + "' is not a valid classifier");
		}
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object createFromString(EDataType eDataType, String initialValue) {
		switch (eDataType.getClassifierID()) {
			case GarboardPackage.ANSWER:
				return createAnswerFromString(eDataType, initialValue);
			case GarboardPackage.PARTY_ROLE:
				return createPartyRoleFromString(eDataType, initialValue);
			case GarboardPackage.HULL_KIND:
				return createHullKindFromString(eDataType, initialValue);
			case GarboardPackage.HULL_MATERIAL:
				return createHullMaterialFromString(eDataType, initialValue);
			case GarboardPackage.VESSEL_SERVICE:
				return createVesselServiceFromString(eDataType, initialValue);
			case GarboardPackage.FUEL_KIND:
				return createFuelKindFromString(eDataType, initialValue);
			case GarboardPackage.ASPIRATION:
				return createAspirationFromString(eDataType, initialValue);
			case GarboardPackage.FUEL_SYSTEM:
				return createFuelSystemFromString(eDataType, initialValue);
			case GarboardPackage.COOLING:
				return createCoolingFromString(eDataType, initialValue);
			case GarboardPackage.PHASE_SYSTEM:
				return createPhaseSystemFromString(eDataType, initialValue);
			case GarboardPackage.DUTY_RATING:
				return createDutyRatingFromString(eDataType, initialValue);
			case GarboardPackage.PERFORMANCE_CLASS:
				return createPerformanceClassFromString(eDataType, initialValue);
			case GarboardPackage.BATTERY_CHEMISTRY:
				return createBatteryChemistryFromString(eDataType, initialValue);
			case GarboardPackage.CRANKING_RATING_DEFINITION:
				return createCrankingRatingDefinitionFromString(eDataType, initialValue);
			case GarboardPackage.TERMINAL_KIND:
				return createTerminalKindFromString(eDataType, initialValue);
			case GarboardPackage.CABLE_FUNCTION:
				return createCableFunctionFromString(eDataType, initialValue);
			case GarboardPackage.STRAND_CLASS:
				return createStrandClassFromString(eDataType, initialValue);
			case GarboardPackage.INSULATION_RATING:
				return createInsulationRatingFromString(eDataType, initialValue);
			case GarboardPackage.PROTECTION_KIND:
				return createProtectionKindFromString(eDataType, initialValue);
			case GarboardPackage.TANK_MATERIAL:
				return createTankMaterialFromString(eDataType, initialValue);
			case GarboardPackage.FUEL_LINE_FUNCTION:
				return createFuelLineFunctionFromString(eDataType, initialValue);
			case GarboardPackage.FUEL_LINE_KIND:
				return createFuelLineKindFromString(eDataType, initialValue);
			case GarboardPackage.BOWL_KIND:
				return createBowlKindFromString(eDataType, initialValue);
			case GarboardPackage.ANTI_SIPHON_PROTECTION:
				return createAntiSiphonProtectionFromString(eDataType, initialValue);
			case GarboardPackage.STRAINER_PICK_UP:
				return createStrainerPickUpFromString(eDataType, initialValue);
			case GarboardPackage.VALVE_KIND:
				return createValveKindFromString(eDataType, initialValue);
			case GarboardPackage.FITTING_MATERIAL:
				return createFittingMaterialFromString(eDataType, initialValue);
			case GarboardPackage.WATER_HOSE_KIND:
				return createWaterHoseKindFromString(eDataType, initialValue);
			case GarboardPackage.WATER_SECTION:
				return createWaterSectionFromString(eDataType, initialValue);
			case GarboardPackage.PIPE_FITTING_KIND:
				return createPipeFittingKindFromString(eDataType, initialValue);
			case GarboardPackage.SIPHON_BREAK_KIND:
				return createSiphonBreakKindFromString(eDataType, initialValue);
			case GarboardPackage.SIPHON_BREAK_PLACE:
				return createSiphonBreakPlaceFromString(eDataType, initialValue);
			case GarboardPackage.VENT_HOSE_END:
				return createVentHoseEndFromString(eDataType, initialValue);
			case GarboardPackage.EXHAUST_SECTION:
				return createExhaustSectionFromString(eDataType, initialValue);
			case GarboardPackage.EXHAUST_HOSE_STANDARD:
				return createExhaustHoseStandardFromString(eDataType, initialValue);
			case GarboardPackage.EXHAUST_BEND_KIND:
				return createExhaustBendKindFromString(eDataType, initialValue);
			case GarboardPackage.MUFFLER_KIND:
				return createMufflerKindFromString(eDataType, initialValue);
			case GarboardPackage.OUTLET_PLACE:
				return createOutletPlaceFromString(eDataType, initialValue);
			case GarboardPackage.ANTI_SURGE:
				return createAntiSurgeFromString(eDataType, initialValue);
			case GarboardPackage.DUCT_FUNCTION:
				return createDuctFunctionFromString(eDataType, initialValue);
			case GarboardPackage.NEUTRAL_BOND:
				return createNeutralBondFromString(eDataType, initialValue);
			case GarboardPackage.TRANSFER_KIND:
				return createTransferKindFromString(eDataType, initialValue);
			case GarboardPackage.POLES_SWITCHED:
				return createPolesSwitchedFromString(eDataType, initialValue);
			case GarboardPackage.TRIP_CURVE:
				return createTripCurveFromString(eDataType, initialValue);
			case GarboardPackage.LOAD_KIND:
				return createLoadKindFromString(eDataType, initialValue);
			case GarboardPackage.MOTOR_STARTING:
				return createMotorStartingFromString(eDataType, initialValue);
			case GarboardPackage.ALARM_KIND:
				return createAlarmKindFromString(eDataType, initialValue);
			case GarboardPackage.TEST_RESULT:
				return createTestResultFromString(eDataType, initialValue);
			case GarboardPackage.SEACOCK_STATE:
				return createSeacockStateFromString(eDataType, initialValue);
			case GarboardPackage.TRIAL_PLACE:
				return createTrialPlaceFromString(eDataType, initialValue);
			case GarboardPackage.SIGNATURE_ROLE:
				return createSignatureRoleFromString(eDataType, initialValue);
			case GarboardPackage.SMOKE_COLOUR:
				return createSmokeColourFromString(eDataType, initialValue);
			case GarboardPackage.LENGTH:
				return createLengthFromString(eDataType, initialValue);
			case GarboardPackage.AREA:
				return createAreaFromString(eDataType, initialValue);
			case GarboardPackage.VOLUME:
				return createVolumeFromString(eDataType, initialValue);
			case GarboardPackage.MASS:
				return createMassFromString(eDataType, initialValue);
			case GarboardPackage.ANGLE:
				return createAngleFromString(eDataType, initialValue);
			case GarboardPackage.SLOPE:
				return createSlopeFromString(eDataType, initialValue);
			case GarboardPackage.SPEED:
				return createSpeedFromString(eDataType, initialValue);
			case GarboardPackage.TIME_SPAN:
				return createTimeSpanFromString(eDataType, initialValue);
			case GarboardPackage.FREQUENCY:
				return createFrequencyFromString(eDataType, initialValue);
			case GarboardPackage.ROTATIONAL_SPEED:
				return createRotationalSpeedFromString(eDataType, initialValue);
			case GarboardPackage.ABSOLUTE_PRESSURE:
				return createAbsolutePressureFromString(eDataType, initialValue);
			case GarboardPackage.GAUGE_PRESSURE:
				return createGaugePressureFromString(eDataType, initialValue);
			case GarboardPackage.PRESSURE_DIFFERENCE:
				return createPressureDifferenceFromString(eDataType, initialValue);
			case GarboardPackage.TEMPERATURE:
				return createTemperatureFromString(eDataType, initialValue);
			case GarboardPackage.TEMPERATURE_DIFFERENCE:
				return createTemperatureDifferenceFromString(eDataType, initialValue);
			case GarboardPackage.VOLUME_FLOW:
				return createVolumeFlowFromString(eDataType, initialValue);
			case GarboardPackage.MASS_FLOW:
				return createMassFlowFromString(eDataType, initialValue);
			case GarboardPackage.POWER:
				return createPowerFromString(eDataType, initialValue);
			case GarboardPackage.APPARENT_POWER:
				return createApparentPowerFromString(eDataType, initialValue);
			case GarboardPackage.VOLTAGE:
				return createVoltageFromString(eDataType, initialValue);
			case GarboardPackage.CURRENT:
				return createCurrentFromString(eDataType, initialValue);
			case GarboardPackage.RESISTANCE:
				return createResistanceFromString(eDataType, initialValue);
			case GarboardPackage.CHARGE:
				return createChargeFromString(eDataType, initialValue);
			case GarboardPackage.SPECIFIC_CONSUMPTION:
				return createSpecificConsumptionFromString(eDataType, initialValue);
			case GarboardPackage.RATIO:
				return createRatioFromString(eDataType, initialValue);
			case GarboardPackage.DATE:
				return createDateFromString(eDataType, initialValue);
			case GarboardPackage.DATE_TIME:
				return createDateTimeFromString(eDataType, initialValue);
			case GarboardPackage.TEXT:
				return createTextFromString(eDataType, initialValue);
			default:
				throw new IllegalArgumentException("The datatype '" + eDataType.getName() + "' is not a valid classifier");
		}
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String convertToString(EDataType eDataType, Object instanceValue) {
		switch (eDataType.getClassifierID()) {
			case GarboardPackage.ANSWER:
				return convertAnswerToString(eDataType, instanceValue);
			case GarboardPackage.PARTY_ROLE:
				return convertPartyRoleToString(eDataType, instanceValue);
			case GarboardPackage.HULL_KIND:
				return convertHullKindToString(eDataType, instanceValue);
			case GarboardPackage.HULL_MATERIAL:
				return convertHullMaterialToString(eDataType, instanceValue);
			case GarboardPackage.VESSEL_SERVICE:
				return convertVesselServiceToString(eDataType, instanceValue);
			case GarboardPackage.FUEL_KIND:
				return convertFuelKindToString(eDataType, instanceValue);
			case GarboardPackage.ASPIRATION:
				return convertAspirationToString(eDataType, instanceValue);
			case GarboardPackage.FUEL_SYSTEM:
				return convertFuelSystemToString(eDataType, instanceValue);
			case GarboardPackage.COOLING:
				return convertCoolingToString(eDataType, instanceValue);
			case GarboardPackage.PHASE_SYSTEM:
				return convertPhaseSystemToString(eDataType, instanceValue);
			case GarboardPackage.DUTY_RATING:
				return convertDutyRatingToString(eDataType, instanceValue);
			case GarboardPackage.PERFORMANCE_CLASS:
				return convertPerformanceClassToString(eDataType, instanceValue);
			case GarboardPackage.BATTERY_CHEMISTRY:
				return convertBatteryChemistryToString(eDataType, instanceValue);
			case GarboardPackage.CRANKING_RATING_DEFINITION:
				return convertCrankingRatingDefinitionToString(eDataType, instanceValue);
			case GarboardPackage.TERMINAL_KIND:
				return convertTerminalKindToString(eDataType, instanceValue);
			case GarboardPackage.CABLE_FUNCTION:
				return convertCableFunctionToString(eDataType, instanceValue);
			case GarboardPackage.STRAND_CLASS:
				return convertStrandClassToString(eDataType, instanceValue);
			case GarboardPackage.INSULATION_RATING:
				return convertInsulationRatingToString(eDataType, instanceValue);
			case GarboardPackage.PROTECTION_KIND:
				return convertProtectionKindToString(eDataType, instanceValue);
			case GarboardPackage.TANK_MATERIAL:
				return convertTankMaterialToString(eDataType, instanceValue);
			case GarboardPackage.FUEL_LINE_FUNCTION:
				return convertFuelLineFunctionToString(eDataType, instanceValue);
			case GarboardPackage.FUEL_LINE_KIND:
				return convertFuelLineKindToString(eDataType, instanceValue);
			case GarboardPackage.BOWL_KIND:
				return convertBowlKindToString(eDataType, instanceValue);
			case GarboardPackage.ANTI_SIPHON_PROTECTION:
				return convertAntiSiphonProtectionToString(eDataType, instanceValue);
			case GarboardPackage.STRAINER_PICK_UP:
				return convertStrainerPickUpToString(eDataType, instanceValue);
			case GarboardPackage.VALVE_KIND:
				return convertValveKindToString(eDataType, instanceValue);
			case GarboardPackage.FITTING_MATERIAL:
				return convertFittingMaterialToString(eDataType, instanceValue);
			case GarboardPackage.WATER_HOSE_KIND:
				return convertWaterHoseKindToString(eDataType, instanceValue);
			case GarboardPackage.WATER_SECTION:
				return convertWaterSectionToString(eDataType, instanceValue);
			case GarboardPackage.PIPE_FITTING_KIND:
				return convertPipeFittingKindToString(eDataType, instanceValue);
			case GarboardPackage.SIPHON_BREAK_KIND:
				return convertSiphonBreakKindToString(eDataType, instanceValue);
			case GarboardPackage.SIPHON_BREAK_PLACE:
				return convertSiphonBreakPlaceToString(eDataType, instanceValue);
			case GarboardPackage.VENT_HOSE_END:
				return convertVentHoseEndToString(eDataType, instanceValue);
			case GarboardPackage.EXHAUST_SECTION:
				return convertExhaustSectionToString(eDataType, instanceValue);
			case GarboardPackage.EXHAUST_HOSE_STANDARD:
				return convertExhaustHoseStandardToString(eDataType, instanceValue);
			case GarboardPackage.EXHAUST_BEND_KIND:
				return convertExhaustBendKindToString(eDataType, instanceValue);
			case GarboardPackage.MUFFLER_KIND:
				return convertMufflerKindToString(eDataType, instanceValue);
			case GarboardPackage.OUTLET_PLACE:
				return convertOutletPlaceToString(eDataType, instanceValue);
			case GarboardPackage.ANTI_SURGE:
				return convertAntiSurgeToString(eDataType, instanceValue);
			case GarboardPackage.DUCT_FUNCTION:
				return convertDuctFunctionToString(eDataType, instanceValue);
			case GarboardPackage.NEUTRAL_BOND:
				return convertNeutralBondToString(eDataType, instanceValue);
			case GarboardPackage.TRANSFER_KIND:
				return convertTransferKindToString(eDataType, instanceValue);
			case GarboardPackage.POLES_SWITCHED:
				return convertPolesSwitchedToString(eDataType, instanceValue);
			case GarboardPackage.TRIP_CURVE:
				return convertTripCurveToString(eDataType, instanceValue);
			case GarboardPackage.LOAD_KIND:
				return convertLoadKindToString(eDataType, instanceValue);
			case GarboardPackage.MOTOR_STARTING:
				return convertMotorStartingToString(eDataType, instanceValue);
			case GarboardPackage.ALARM_KIND:
				return convertAlarmKindToString(eDataType, instanceValue);
			case GarboardPackage.TEST_RESULT:
				return convertTestResultToString(eDataType, instanceValue);
			case GarboardPackage.SEACOCK_STATE:
				return convertSeacockStateToString(eDataType, instanceValue);
			case GarboardPackage.TRIAL_PLACE:
				return convertTrialPlaceToString(eDataType, instanceValue);
			case GarboardPackage.SIGNATURE_ROLE:
				return convertSignatureRoleToString(eDataType, instanceValue);
			case GarboardPackage.SMOKE_COLOUR:
				return convertSmokeColourToString(eDataType, instanceValue);
			case GarboardPackage.LENGTH:
				return convertLengthToString(eDataType, instanceValue);
			case GarboardPackage.AREA:
				return convertAreaToString(eDataType, instanceValue);
			case GarboardPackage.VOLUME:
				return convertVolumeToString(eDataType, instanceValue);
			case GarboardPackage.MASS:
				return convertMassToString(eDataType, instanceValue);
			case GarboardPackage.ANGLE:
				return convertAngleToString(eDataType, instanceValue);
			case GarboardPackage.SLOPE:
				return convertSlopeToString(eDataType, instanceValue);
			case GarboardPackage.SPEED:
				return convertSpeedToString(eDataType, instanceValue);
			case GarboardPackage.TIME_SPAN:
				return convertTimeSpanToString(eDataType, instanceValue);
			case GarboardPackage.FREQUENCY:
				return convertFrequencyToString(eDataType, instanceValue);
			case GarboardPackage.ROTATIONAL_SPEED:
				return convertRotationalSpeedToString(eDataType, instanceValue);
			case GarboardPackage.ABSOLUTE_PRESSURE:
				return convertAbsolutePressureToString(eDataType, instanceValue);
			case GarboardPackage.GAUGE_PRESSURE:
				return convertGaugePressureToString(eDataType, instanceValue);
			case GarboardPackage.PRESSURE_DIFFERENCE:
				return convertPressureDifferenceToString(eDataType, instanceValue);
			case GarboardPackage.TEMPERATURE:
				return convertTemperatureToString(eDataType, instanceValue);
			case GarboardPackage.TEMPERATURE_DIFFERENCE:
				return convertTemperatureDifferenceToString(eDataType, instanceValue);
			case GarboardPackage.VOLUME_FLOW:
				return convertVolumeFlowToString(eDataType, instanceValue);
			case GarboardPackage.MASS_FLOW:
				return convertMassFlowToString(eDataType, instanceValue);
			case GarboardPackage.POWER:
				return convertPowerToString(eDataType, instanceValue);
			case GarboardPackage.APPARENT_POWER:
				return convertApparentPowerToString(eDataType, instanceValue);
			case GarboardPackage.VOLTAGE:
				return convertVoltageToString(eDataType, instanceValue);
			case GarboardPackage.CURRENT:
				return convertCurrentToString(eDataType, instanceValue);
			case GarboardPackage.RESISTANCE:
				return convertResistanceToString(eDataType, instanceValue);
			case GarboardPackage.CHARGE:
				return convertChargeToString(eDataType, instanceValue);
			case GarboardPackage.SPECIFIC_CONSUMPTION:
				return convertSpecificConsumptionToString(eDataType, instanceValue);
			case GarboardPackage.RATIO:
				return convertRatioToString(eDataType, instanceValue);
			case GarboardPackage.DATE:
				return convertDateToString(eDataType, instanceValue);
			case GarboardPackage.DATE_TIME:
				return convertDateTimeToString(eDataType, instanceValue);
			case GarboardPackage.TEXT:
				return convertTextToString(eDataType, instanceValue);
			default:
				throw new IllegalArgumentException("The datatype '" + eDataType.getName() + "' is not a valid classifier");
		}
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Point createPoint() {
		PointImpl point = new PointImpl();
		return point;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public CommissioningRecord createCommissioningRecord() {
		CommissioningRecordImpl commissioningRecord = new CommissioningRecordImpl();
		return commissioningRecord;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Revision createRevision() {
		RevisionImpl revision = new RevisionImpl();
		return revision;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Instrument createInstrument() {
		InstrumentImpl instrument = new InstrumentImpl();
		return instrument;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Party createParty() {
		PartyImpl party = new PartyImpl();
		return party;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Photograph createPhotograph() {
		PhotographImpl photograph = new PhotographImpl();
		return photograph;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Vessel createVessel() {
		VesselImpl vessel = new VesselImpl();
		return vessel;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public GeneratorSet createGeneratorSet() {
		GeneratorSetImpl generatorSet = new GeneratorSetImpl();
		return generatorSet;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public MakerLimits createMakerLimits() {
		MakerLimitsImpl makerLimits = new MakerLimitsImpl();
		return makerLimits;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public StartingBattery createStartingBattery() {
		StartingBatteryImpl startingBattery = new StartingBatteryImpl();
		return startingBattery;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BatteryBlock createBatteryBlock() {
		BatteryBlockImpl batteryBlock = new BatteryBlockImpl();
		return batteryBlock;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public CableRun createCableRun() {
		CableRunImpl cableRun = new CableRunImpl();
		return cableRun;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public FuelSupply createFuelSupply() {
		FuelSupplyImpl fuelSupply = new FuelSupplyImpl();
		return fuelSupply;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public FuelTank createFuelTank() {
		FuelTankImpl fuelTank = new FuelTankImpl();
		return fuelTank;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public FuelLineRun createFuelLineRun() {
		FuelLineRunImpl fuelLineRun = new FuelLineRunImpl();
		return fuelLineRun;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public FuelSeparator createFuelSeparator() {
		FuelSeparatorImpl fuelSeparator = new FuelSeparatorImpl();
		return fuelSeparator;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public RawWaterCircuit createRawWaterCircuit() {
		RawWaterCircuitImpl rawWaterCircuit = new RawWaterCircuitImpl();
		return rawWaterCircuit;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public HullPickUp createHullPickUp() {
		HullPickUpImpl hullPickUp = new HullPickUpImpl();
		return hullPickUp;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Seacock createSeacock() {
		SeacockImpl seacock = new SeacockImpl();
		return seacock;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public WaterStrainer createWaterStrainer() {
		WaterStrainerImpl waterStrainer = new WaterStrainerImpl();
		return waterStrainer;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public WaterHoseRun createWaterHoseRun() {
		WaterHoseRunImpl waterHoseRun = new WaterHoseRunImpl();
		return waterHoseRun;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PipeFitting createPipeFitting() {
		PipeFittingImpl pipeFitting = new PipeFittingImpl();
		return pipeFitting;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public WaterPump createWaterPump() {
		WaterPumpImpl waterPump = new WaterPumpImpl();
		return waterPump;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SiphonBreak createSiphonBreak() {
		SiphonBreakImpl siphonBreak = new SiphonBreakImpl();
		return siphonBreak;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ExhaustRun createExhaustRun() {
		ExhaustRunImpl exhaustRun = new ExhaustRunImpl();
		return exhaustRun;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ExhaustPoint createExhaustPoint() {
		ExhaustPointImpl exhaustPoint = new ExhaustPointImpl();
		return exhaustPoint;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ExhaustSectionRun createExhaustSectionRun() {
		ExhaustSectionRunImpl exhaustSectionRun = new ExhaustSectionRunImpl();
		return exhaustSectionRun;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ExhaustBend createExhaustBend() {
		ExhaustBendImpl exhaustBend = new ExhaustBendImpl();
		return exhaustBend;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Muffler createMuffler() {
		MufflerImpl muffler = new MufflerImpl();
		return muffler;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Riser createRiser() {
		RiserImpl riser = new RiserImpl();
		return riser;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ExhaustCrest createExhaustCrest() {
		ExhaustCrestImpl exhaustCrest = new ExhaustCrestImpl();
		return exhaustCrest;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ExhaustOutlet createExhaustOutlet() {
		ExhaustOutletImpl exhaustOutlet = new ExhaustOutletImpl();
		return exhaustOutlet;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SeparatorDrain createSeparatorDrain() {
		SeparatorDrainImpl separatorDrain = new SeparatorDrainImpl();
		return separatorDrain;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Ventilation createVentilation() {
		VentilationImpl ventilation = new VentilationImpl();
		return ventilation;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public AirDuct createAirDuct() {
		AirDuctImpl airDuct = new AirDuctImpl();
		return airDuct;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Mounting createMounting() {
		MountingImpl mounting = new MountingImpl();
		return mounting;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public AcOutput createAcOutput() {
		AcOutputImpl acOutput = new AcOutputImpl();
		return acOutput;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TransferSwitch createTransferSwitch() {
		TransferSwitchImpl transferSwitch = new TransferSwitchImpl();
		return transferSwitch;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ElectricalLoad createElectricalLoad() {
		ElectricalLoadImpl electricalLoad = new ElectricalLoadImpl();
		return electricalLoad;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public AlarmsAndSafety createAlarmsAndSafety() {
		AlarmsAndSafetyImpl alarmsAndSafety = new AlarmsAndSafetyImpl();
		return alarmsAndSafety;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public AlarmDevice createAlarmDevice() {
		AlarmDeviceImpl alarmDevice = new AlarmDeviceImpl();
		return alarmDevice;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public InspectionAnswer createInspectionAnswer() {
		InspectionAnswerImpl inspectionAnswer = new InspectionAnswerImpl();
		return inspectionAnswer;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Trial createTrial() {
		TrialImpl trial = new TrialImpl();
		return trial;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ProcedureStep createProcedureStep() {
		ProcedureStepImpl procedureStep = new ProcedureStepImpl();
		return procedureStep;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public FuelPriming createFuelPriming() {
		FuelPrimingImpl fuelPriming = new FuelPrimingImpl();
		return fuelPriming;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public CrankingAttempt createCrankingAttempt() {
		CrankingAttemptImpl crankingAttempt = new CrankingAttemptImpl();
		return crankingAttempt;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LoadStep createLoadStep() {
		LoadStepImpl loadStep = new LoadStepImpl();
		return loadStep;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Reading createReading() {
		ReadingImpl reading = new ReadingImpl();
		return reading;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SeaRun createSeaRun() {
		SeaRunImpl seaRun = new SeaRunImpl();
		return seaRun;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Upkeep createUpkeep() {
		UpkeepImpl upkeep = new UpkeepImpl();
		return upkeep;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public UpkeepTask createUpkeepTask() {
		UpkeepTaskImpl upkeepTask = new UpkeepTaskImpl();
		return upkeepTask;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Consumable createConsumable() {
		ConsumableImpl consumable = new ConsumableImpl();
		return consumable;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Acceptance createAcceptance() {
		AcceptanceImpl acceptance = new AcceptanceImpl();
		return acceptance;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Signature createSignature() {
		SignatureImpl signature = new SignatureImpl();
		return signature;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public UnreadEntry createUnreadEntry() {
		UnreadEntryImpl unreadEntry = new UnreadEntryImpl();
		return unreadEntry;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public StoredVerdict createStoredVerdict() {
		StoredVerdictImpl storedVerdict = new StoredVerdictImpl();
		return storedVerdict;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Answer createAnswerFromString(EDataType eDataType, String initialValue) {
		Answer result = Answer.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertAnswerToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public PartyRole createPartyRoleFromString(EDataType eDataType, String initialValue) {
		PartyRole result = PartyRole.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertPartyRoleToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public HullKind createHullKindFromString(EDataType eDataType, String initialValue) {
		HullKind result = HullKind.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertHullKindToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public HullMaterial createHullMaterialFromString(EDataType eDataType, String initialValue) {
		HullMaterial result = HullMaterial.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertHullMaterialToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public VesselService createVesselServiceFromString(EDataType eDataType, String initialValue) {
		VesselService result = VesselService.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertVesselServiceToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public FuelKind createFuelKindFromString(EDataType eDataType, String initialValue) {
		FuelKind result = FuelKind.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertFuelKindToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Aspiration createAspirationFromString(EDataType eDataType, String initialValue) {
		Aspiration result = Aspiration.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertAspirationToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public FuelSystem createFuelSystemFromString(EDataType eDataType, String initialValue) {
		FuelSystem result = FuelSystem.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertFuelSystemToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Cooling createCoolingFromString(EDataType eDataType, String initialValue) {
		Cooling result = Cooling.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertCoolingToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public PhaseSystem createPhaseSystemFromString(EDataType eDataType, String initialValue) {
		PhaseSystem result = PhaseSystem.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertPhaseSystemToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public DutyRating createDutyRatingFromString(EDataType eDataType, String initialValue) {
		DutyRating result = DutyRating.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertDutyRatingToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public PerformanceClass createPerformanceClassFromString(EDataType eDataType, String initialValue) {
		PerformanceClass result = PerformanceClass.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertPerformanceClassToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public BatteryChemistry createBatteryChemistryFromString(EDataType eDataType, String initialValue) {
		BatteryChemistry result = BatteryChemistry.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertBatteryChemistryToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public CrankingRatingDefinition createCrankingRatingDefinitionFromString(EDataType eDataType, String initialValue) {
		CrankingRatingDefinition result = CrankingRatingDefinition.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertCrankingRatingDefinitionToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public TerminalKind createTerminalKindFromString(EDataType eDataType, String initialValue) {
		TerminalKind result = TerminalKind.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertTerminalKindToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public CableFunction createCableFunctionFromString(EDataType eDataType, String initialValue) {
		CableFunction result = CableFunction.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertCableFunctionToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public StrandClass createStrandClassFromString(EDataType eDataType, String initialValue) {
		StrandClass result = StrandClass.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertStrandClassToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public InsulationRating createInsulationRatingFromString(EDataType eDataType, String initialValue) {
		InsulationRating result = InsulationRating.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertInsulationRatingToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public ProtectionKind createProtectionKindFromString(EDataType eDataType, String initialValue) {
		ProtectionKind result = ProtectionKind.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertProtectionKindToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public TankMaterial createTankMaterialFromString(EDataType eDataType, String initialValue) {
		TankMaterial result = TankMaterial.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertTankMaterialToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public FuelLineFunction createFuelLineFunctionFromString(EDataType eDataType, String initialValue) {
		FuelLineFunction result = FuelLineFunction.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertFuelLineFunctionToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public FuelLineKind createFuelLineKindFromString(EDataType eDataType, String initialValue) {
		FuelLineKind result = FuelLineKind.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertFuelLineKindToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public BowlKind createBowlKindFromString(EDataType eDataType, String initialValue) {
		BowlKind result = BowlKind.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertBowlKindToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public AntiSiphonProtection createAntiSiphonProtectionFromString(EDataType eDataType, String initialValue) {
		AntiSiphonProtection result = AntiSiphonProtection.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertAntiSiphonProtectionToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public StrainerPickUp createStrainerPickUpFromString(EDataType eDataType, String initialValue) {
		StrainerPickUp result = StrainerPickUp.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertStrainerPickUpToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public ValveKind createValveKindFromString(EDataType eDataType, String initialValue) {
		ValveKind result = ValveKind.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertValveKindToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public FittingMaterial createFittingMaterialFromString(EDataType eDataType, String initialValue) {
		FittingMaterial result = FittingMaterial.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertFittingMaterialToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public WaterHoseKind createWaterHoseKindFromString(EDataType eDataType, String initialValue) {
		WaterHoseKind result = WaterHoseKind.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertWaterHoseKindToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public WaterSection createWaterSectionFromString(EDataType eDataType, String initialValue) {
		WaterSection result = WaterSection.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertWaterSectionToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public PipeFittingKind createPipeFittingKindFromString(EDataType eDataType, String initialValue) {
		PipeFittingKind result = PipeFittingKind.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertPipeFittingKindToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public SiphonBreakKind createSiphonBreakKindFromString(EDataType eDataType, String initialValue) {
		SiphonBreakKind result = SiphonBreakKind.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertSiphonBreakKindToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public SiphonBreakPlace createSiphonBreakPlaceFromString(EDataType eDataType, String initialValue) {
		SiphonBreakPlace result = SiphonBreakPlace.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertSiphonBreakPlaceToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public VentHoseEnd createVentHoseEndFromString(EDataType eDataType, String initialValue) {
		VentHoseEnd result = VentHoseEnd.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertVentHoseEndToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public ExhaustSection createExhaustSectionFromString(EDataType eDataType, String initialValue) {
		ExhaustSection result = ExhaustSection.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertExhaustSectionToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public ExhaustHoseStandard createExhaustHoseStandardFromString(EDataType eDataType, String initialValue) {
		ExhaustHoseStandard result = ExhaustHoseStandard.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertExhaustHoseStandardToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public ExhaustBendKind createExhaustBendKindFromString(EDataType eDataType, String initialValue) {
		ExhaustBendKind result = ExhaustBendKind.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertExhaustBendKindToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public MufflerKind createMufflerKindFromString(EDataType eDataType, String initialValue) {
		MufflerKind result = MufflerKind.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertMufflerKindToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public OutletPlace createOutletPlaceFromString(EDataType eDataType, String initialValue) {
		OutletPlace result = OutletPlace.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertOutletPlaceToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public AntiSurge createAntiSurgeFromString(EDataType eDataType, String initialValue) {
		AntiSurge result = AntiSurge.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertAntiSurgeToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public DuctFunction createDuctFunctionFromString(EDataType eDataType, String initialValue) {
		DuctFunction result = DuctFunction.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertDuctFunctionToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NeutralBond createNeutralBondFromString(EDataType eDataType, String initialValue) {
		NeutralBond result = NeutralBond.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertNeutralBondToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public TransferKind createTransferKindFromString(EDataType eDataType, String initialValue) {
		TransferKind result = TransferKind.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertTransferKindToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public PolesSwitched createPolesSwitchedFromString(EDataType eDataType, String initialValue) {
		PolesSwitched result = PolesSwitched.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertPolesSwitchedToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public TripCurve createTripCurveFromString(EDataType eDataType, String initialValue) {
		TripCurve result = TripCurve.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertTripCurveToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public LoadKind createLoadKindFromString(EDataType eDataType, String initialValue) {
		LoadKind result = LoadKind.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertLoadKindToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public MotorStarting createMotorStartingFromString(EDataType eDataType, String initialValue) {
		MotorStarting result = MotorStarting.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertMotorStartingToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public AlarmKind createAlarmKindFromString(EDataType eDataType, String initialValue) {
		AlarmKind result = AlarmKind.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertAlarmKindToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public TestResult createTestResultFromString(EDataType eDataType, String initialValue) {
		TestResult result = TestResult.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertTestResultToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public SeacockState createSeacockStateFromString(EDataType eDataType, String initialValue) {
		SeacockState result = SeacockState.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertSeacockStateToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public TrialPlace createTrialPlaceFromString(EDataType eDataType, String initialValue) {
		TrialPlace result = TrialPlace.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertTrialPlaceToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public SignatureRole createSignatureRoleFromString(EDataType eDataType, String initialValue) {
		SignatureRole result = SignatureRole.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertSignatureRoleToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public SmokeColour createSmokeColourFromString(EDataType eDataType, String initialValue) {
		SmokeColour result = SmokeColour.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertSmokeColourToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Length createLengthFromString(EDataType eDataType, String initialValue) {
		return (Length)super.createFromString(eDataType, initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertLengthToString(EDataType eDataType, Object instanceValue) {
		return super.convertToString(eDataType, instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Area createAreaFromString(EDataType eDataType, String initialValue) {
		return (Area)super.createFromString(eDataType, initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertAreaToString(EDataType eDataType, Object instanceValue) {
		return super.convertToString(eDataType, instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Volume createVolumeFromString(EDataType eDataType, String initialValue) {
		return (Volume)super.createFromString(eDataType, initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertVolumeToString(EDataType eDataType, Object instanceValue) {
		return super.convertToString(eDataType, instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Mass createMassFromString(EDataType eDataType, String initialValue) {
		return (Mass)super.createFromString(eDataType, initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertMassToString(EDataType eDataType, Object instanceValue) {
		return super.convertToString(eDataType, instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Angle createAngleFromString(EDataType eDataType, String initialValue) {
		return (Angle)super.createFromString(eDataType, initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertAngleToString(EDataType eDataType, Object instanceValue) {
		return super.convertToString(eDataType, instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Slope createSlopeFromString(EDataType eDataType, String initialValue) {
		return (Slope)super.createFromString(eDataType, initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertSlopeToString(EDataType eDataType, Object instanceValue) {
		return super.convertToString(eDataType, instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Speed createSpeedFromString(EDataType eDataType, String initialValue) {
		return (Speed)super.createFromString(eDataType, initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertSpeedToString(EDataType eDataType, Object instanceValue) {
		return super.convertToString(eDataType, instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public TimeSpan createTimeSpanFromString(EDataType eDataType, String initialValue) {
		return (TimeSpan)super.createFromString(eDataType, initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertTimeSpanToString(EDataType eDataType, Object instanceValue) {
		return super.convertToString(eDataType, instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Frequency createFrequencyFromString(EDataType eDataType, String initialValue) {
		return (Frequency)super.createFromString(eDataType, initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertFrequencyToString(EDataType eDataType, Object instanceValue) {
		return super.convertToString(eDataType, instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public RotationalSpeed createRotationalSpeedFromString(EDataType eDataType, String initialValue) {
		return (RotationalSpeed)super.createFromString(eDataType, initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertRotationalSpeedToString(EDataType eDataType, Object instanceValue) {
		return super.convertToString(eDataType, instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public AbsolutePressure createAbsolutePressureFromString(EDataType eDataType, String initialValue) {
		return (AbsolutePressure)super.createFromString(eDataType, initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertAbsolutePressureToString(EDataType eDataType, Object instanceValue) {
		return super.convertToString(eDataType, instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public GaugePressure createGaugePressureFromString(EDataType eDataType, String initialValue) {
		return (GaugePressure)super.createFromString(eDataType, initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertGaugePressureToString(EDataType eDataType, Object instanceValue) {
		return super.convertToString(eDataType, instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public PressureDifference createPressureDifferenceFromString(EDataType eDataType, String initialValue) {
		return (PressureDifference)super.createFromString(eDataType, initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertPressureDifferenceToString(EDataType eDataType, Object instanceValue) {
		return super.convertToString(eDataType, instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Temperature createTemperatureFromString(EDataType eDataType, String initialValue) {
		return (Temperature)super.createFromString(eDataType, initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertTemperatureToString(EDataType eDataType, Object instanceValue) {
		return super.convertToString(eDataType, instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public TemperatureDifference createTemperatureDifferenceFromString(EDataType eDataType, String initialValue) {
		return (TemperatureDifference)super.createFromString(eDataType, initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertTemperatureDifferenceToString(EDataType eDataType, Object instanceValue) {
		return super.convertToString(eDataType, instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public VolumeFlow createVolumeFlowFromString(EDataType eDataType, String initialValue) {
		return (VolumeFlow)super.createFromString(eDataType, initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertVolumeFlowToString(EDataType eDataType, Object instanceValue) {
		return super.convertToString(eDataType, instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public MassFlow createMassFlowFromString(EDataType eDataType, String initialValue) {
		return (MassFlow)super.createFromString(eDataType, initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertMassFlowToString(EDataType eDataType, Object instanceValue) {
		return super.convertToString(eDataType, instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Power createPowerFromString(EDataType eDataType, String initialValue) {
		return (Power)super.createFromString(eDataType, initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertPowerToString(EDataType eDataType, Object instanceValue) {
		return super.convertToString(eDataType, instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public ApparentPower createApparentPowerFromString(EDataType eDataType, String initialValue) {
		return (ApparentPower)super.createFromString(eDataType, initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertApparentPowerToString(EDataType eDataType, Object instanceValue) {
		return super.convertToString(eDataType, instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Voltage createVoltageFromString(EDataType eDataType, String initialValue) {
		return (Voltage)super.createFromString(eDataType, initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertVoltageToString(EDataType eDataType, Object instanceValue) {
		return super.convertToString(eDataType, instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Current createCurrentFromString(EDataType eDataType, String initialValue) {
		return (Current)super.createFromString(eDataType, initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertCurrentToString(EDataType eDataType, Object instanceValue) {
		return super.convertToString(eDataType, instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Resistance createResistanceFromString(EDataType eDataType, String initialValue) {
		return (Resistance)super.createFromString(eDataType, initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertResistanceToString(EDataType eDataType, Object instanceValue) {
		return super.convertToString(eDataType, instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Charge createChargeFromString(EDataType eDataType, String initialValue) {
		return (Charge)super.createFromString(eDataType, initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertChargeToString(EDataType eDataType, Object instanceValue) {
		return super.convertToString(eDataType, instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public SpecificConsumption createSpecificConsumptionFromString(EDataType eDataType, String initialValue) {
		return (SpecificConsumption)super.createFromString(eDataType, initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertSpecificConsumptionToString(EDataType eDataType, Object instanceValue) {
		return super.convertToString(eDataType, instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Ratio createRatioFromString(EDataType eDataType, String initialValue) {
		return (Ratio)super.createFromString(eDataType, initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertRatioToString(EDataType eDataType, Object instanceValue) {
		return super.convertToString(eDataType, instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public LocalDate createDate(final String it) {
		return it == null || it.isEmpty() ? null : java.time.LocalDate.parse(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public LocalDate createDateFromString(EDataType eDataType, String initialValue) {
		return createDate(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertDate(final LocalDate it) {
		return it == null ? null : it.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertDateToString(EDataType eDataType, Object instanceValue) {
		return convertDate((LocalDate)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public OffsetDateTime createDateTime(final String it) {
		return it == null || it.isEmpty() ? null : java.time.OffsetDateTime.parse(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public OffsetDateTime createDateTimeFromString(EDataType eDataType, String initialValue) {
		return createDateTime(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertDateTime(final OffsetDateTime it) {
		return it == null ? null : it.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertDateTimeToString(EDataType eDataType, Object instanceValue) {
		return convertDateTime((OffsetDateTime)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String createTextFromString(EDataType eDataType, String initialValue) {
		return (String)super.createFromString(eDataType, initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertTextToString(EDataType eDataType, Object instanceValue) {
		return super.convertToString(eDataType, instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public GarboardPackage getGarboardPackage() {
		return (GarboardPackage)getEPackage();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @deprecated
	 * @generated
	 */
	@Deprecated
	public static GarboardPackage getPackage() {
		return GarboardPackage.eINSTANCE;
	}

} //GarboardFactoryImpl
