/**
 */
package garboard.model.impl;

import garboard.model.AcOutput;
import garboard.model.Acceptance;
import garboard.model.AirDuct;
import garboard.model.AlarmDevice;
import garboard.model.AlarmKind;
import garboard.model.AlarmsAndSafety;
import garboard.model.Answer;
import garboard.model.AntiSiphonProtection;
import garboard.model.AntiSurge;
import garboard.model.Aspiration;
import garboard.model.BatteryBlock;
import garboard.model.BatteryChemistry;
import garboard.model.BowlKind;
import garboard.model.CableFunction;
import garboard.model.CableRun;
import garboard.model.CommissioningRecord;
import garboard.model.Consumable;
import garboard.model.Cooling;
import garboard.model.CrankingAttempt;
import garboard.model.CrankingRatingDefinition;
import garboard.model.DuctFunction;
import garboard.model.DutyRating;
import garboard.model.ElectricalLoad;
import garboard.model.ExhaustBend;
import garboard.model.ExhaustBendKind;
import garboard.model.ExhaustCrest;
import garboard.model.ExhaustHoseStandard;
import garboard.model.ExhaustOutlet;
import garboard.model.ExhaustPoint;
import garboard.model.ExhaustRun;
import garboard.model.ExhaustSection;
import garboard.model.ExhaustSectionRun;
import garboard.model.FittingMaterial;
import garboard.model.FuelKind;
import garboard.model.FuelLineFunction;
import garboard.model.FuelLineKind;
import garboard.model.FuelLineRun;
import garboard.model.FuelPriming;
import garboard.model.FuelSeparator;
import garboard.model.FuelSupply;
import garboard.model.FuelSystem;
import garboard.model.FuelTank;
import garboard.model.GarboardFactory;
import garboard.model.GarboardPackage;
import garboard.model.GeneratorSet;
import garboard.model.HullKind;
import garboard.model.HullMaterial;
import garboard.model.HullPickUp;
import garboard.model.InspectionAnswer;
import garboard.model.Instrument;
import garboard.model.InsulationRating;
import garboard.model.Item;
import garboard.model.LoadKind;
import garboard.model.LoadStep;
import garboard.model.MakerLimits;
import garboard.model.MotorStarting;
import garboard.model.Mounting;
import garboard.model.Muffler;
import garboard.model.MufflerKind;
import garboard.model.NeutralBond;
import garboard.model.OutletPlace;
import garboard.model.Party;
import garboard.model.PartyRole;
import garboard.model.PerformanceClass;
import garboard.model.PhaseSystem;
import garboard.model.Photograph;
import garboard.model.PipeFitting;
import garboard.model.PipeFittingKind;
import garboard.model.Point;
import garboard.model.PolesSwitched;
import garboard.model.ProcedureStep;
import garboard.model.ProtectionKind;
import garboard.model.RawWaterCircuit;
import garboard.model.Reading;
import garboard.model.Revision;
import garboard.model.Riser;
import garboard.model.SeaRun;
import garboard.model.Seacock;
import garboard.model.SeacockState;
import garboard.model.SeparatorDrain;
import garboard.model.Signature;
import garboard.model.SignatureRole;
import garboard.model.SiphonBreak;
import garboard.model.SiphonBreakKind;
import garboard.model.SiphonBreakPlace;
import garboard.model.SmokeColour;
import garboard.model.StartingBattery;
import garboard.model.StoredVerdict;
import garboard.model.StrainerPickUp;
import garboard.model.StrandClass;
import garboard.model.TankMaterial;
import garboard.model.TerminalKind;
import garboard.model.TestResult;
import garboard.model.TransferKind;
import garboard.model.TransferSwitch;
import garboard.model.Trial;
import garboard.model.TrialPlace;
import garboard.model.TripCurve;
import garboard.model.UnreadEntry;
import garboard.model.Upkeep;
import garboard.model.UpkeepTask;
import garboard.model.ValveKind;
import garboard.model.VentHoseEnd;
import garboard.model.Ventilation;
import garboard.model.Vessel;
import garboard.model.VesselService;
import garboard.model.WaterHoseKind;
import garboard.model.WaterHoseRun;
import garboard.model.WaterPump;
import garboard.model.WaterSection;
import garboard.model.WaterStrainer;

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

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EReference;

import org.eclipse.emf.ecore.impl.EPackageImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model <b>Package</b>.
 * <!-- end-user-doc -->
 * @generated
 */
public class GarboardPackageImpl extends EPackageImpl implements GarboardPackage {
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass itemEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass pointEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass commissioningRecordEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass revisionEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass instrumentEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass partyEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass photographEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass vesselEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass generatorSetEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass makerLimitsEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass startingBatteryEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass batteryBlockEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass cableRunEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass fuelSupplyEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass fuelTankEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass fuelLineRunEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass fuelSeparatorEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass rawWaterCircuitEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass hullPickUpEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass seacockEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass waterStrainerEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass waterHoseRunEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass pipeFittingEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass waterPumpEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass siphonBreakEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass exhaustRunEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass exhaustPointEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass exhaustSectionRunEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass exhaustBendEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass mufflerEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass riserEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass exhaustCrestEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass exhaustOutletEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass separatorDrainEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass ventilationEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass airDuctEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass mountingEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass acOutputEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass transferSwitchEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass electricalLoadEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass alarmsAndSafetyEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass alarmDeviceEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass inspectionAnswerEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass trialEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass procedureStepEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass fuelPrimingEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass crankingAttemptEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass loadStepEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass readingEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass seaRunEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass upkeepEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass upkeepTaskEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass consumableEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass acceptanceEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass signatureEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass unreadEntryEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass storedVerdictEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum answerEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum partyRoleEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum hullKindEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum hullMaterialEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum vesselServiceEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum fuelKindEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum aspirationEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum fuelSystemEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum coolingEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum phaseSystemEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum dutyRatingEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum performanceClassEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum batteryChemistryEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum crankingRatingDefinitionEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum terminalKindEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum cableFunctionEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum strandClassEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum insulationRatingEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum protectionKindEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum tankMaterialEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum fuelLineFunctionEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum fuelLineKindEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum bowlKindEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum antiSiphonProtectionEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum strainerPickUpEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum valveKindEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum fittingMaterialEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum waterHoseKindEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum waterSectionEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum pipeFittingKindEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum siphonBreakKindEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum siphonBreakPlaceEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum ventHoseEndEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum exhaustSectionEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum exhaustHoseStandardEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum exhaustBendKindEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum mufflerKindEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum outletPlaceEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum antiSurgeEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum ductFunctionEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum neutralBondEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum transferKindEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum polesSwitchedEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum tripCurveEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum loadKindEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum motorStartingEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum alarmKindEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum testResultEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum seacockStateEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum trialPlaceEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum signatureRoleEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum smokeColourEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType lengthEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType areaEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType volumeEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType massEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType angleEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType slopeEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType speedEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType timeSpanEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType frequencyEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType rotationalSpeedEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType absolutePressureEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType gaugePressureEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType pressureDifferenceEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType temperatureEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType temperatureDifferenceEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType volumeFlowEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType massFlowEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType powerEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType apparentPowerEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType voltageEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType currentEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType resistanceEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType chargeEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType specificConsumptionEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType ratioEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType dateEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType dateTimeEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType textEDataType = null;

	/**
	 * Creates an instance of the model <b>Package</b>, registered with
	 * {@link org.eclipse.emf.ecore.EPackage.Registry EPackage.Registry} by the package
	 * package URI value.
	 * <p>Note: the correct way to create the package is via the static
	 * factory method {@link #init init()}, which also performs
	 * initialization of the package, or returns the registered package,
	 * if one already exists.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.eclipse.emf.ecore.EPackage.Registry
	 * @see garboard.model.GarboardPackage#eNS_URI
	 * @see #init()
	 * @generated
	 */
	private GarboardPackageImpl() {
		super(eNS_URI, GarboardFactory.eINSTANCE);
	}
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static boolean isInited = false;

	/**
	 * Creates, registers, and initializes the <b>Package</b> for this model, and for any others upon which it depends.
	 *
	 * <p>This method is used to initialize {@link GarboardPackage#eINSTANCE} when that field is accessed.
	 * Clients should not invoke it directly. Instead, they should simply access that field to obtain the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #eNS_URI
	 * @see #createPackageContents()
	 * @see #initializePackageContents()
	 * @generated
	 */
	public static GarboardPackage init() {
		if (isInited) return (GarboardPackage)EPackage.Registry.INSTANCE.getEPackage(GarboardPackage.eNS_URI);

		// Obtain or create and register package
		Object registeredGarboardPackage = EPackage.Registry.INSTANCE.get(eNS_URI);
		GarboardPackageImpl theGarboardPackage = registeredGarboardPackage instanceof GarboardPackageImpl ? (GarboardPackageImpl)registeredGarboardPackage : new GarboardPackageImpl();

		isInited = true;

		// Create package meta-data objects
		theGarboardPackage.createPackageContents();

		// Initialize created meta-data
		theGarboardPackage.initializePackageContents();

		// Mark meta-data to indicate it can't be changed
		theGarboardPackage.freeze();

		// Update the registry and return the package
		EPackage.Registry.INSTANCE.put(GarboardPackage.eNS_URI, theGarboardPackage);
		return theGarboardPackage;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getItem() {
		return itemEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getItem_Id() {
		return (EAttribute)itemEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getPoint() {
		return pointEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPoint_X() {
		return (EAttribute)pointEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPoint_Y() {
		return (EAttribute)pointEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPoint_Z() {
		return (EAttribute)pointEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getCommissioningRecord() {
		return commissioningRecordEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCommissioningRecord_FormatVersion() {
		return (EAttribute)commissioningRecordEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCommissioningRecord_RecordNumber() {
		return (EAttribute)commissioningRecordEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCommissioningRecord_Title() {
		return (EAttribute)commissioningRecordEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCommissioningRecord_CreatedOn() {
		return (EAttribute)commissioningRecordEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCommissioningRecord_Practices() {
		return (EAttribute)commissioningRecordEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCommissioningRecord_Remarks() {
		return (EAttribute)commissioningRecordEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCommissioningRecord_Instruments() {
		return (EReference)commissioningRecordEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCommissioningRecord_Parties() {
		return (EReference)commissioningRecordEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCommissioningRecord_Vessel() {
		return (EReference)commissioningRecordEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCommissioningRecord_GeneratorSet() {
		return (EReference)commissioningRecordEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCommissioningRecord_StartingBattery() {
		return (EReference)commissioningRecordEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCommissioningRecord_FuelSupply() {
		return (EReference)commissioningRecordEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCommissioningRecord_RawWater() {
		return (EReference)commissioningRecordEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCommissioningRecord_Exhaust() {
		return (EReference)commissioningRecordEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCommissioningRecord_Ventilation() {
		return (EReference)commissioningRecordEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCommissioningRecord_Mounting() {
		return (EReference)commissioningRecordEClass.getEStructuralFeatures().get(15);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCommissioningRecord_AcOutput() {
		return (EReference)commissioningRecordEClass.getEStructuralFeatures().get(16);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCommissioningRecord_Alarms() {
		return (EReference)commissioningRecordEClass.getEStructuralFeatures().get(17);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCommissioningRecord_Inspections() {
		return (EReference)commissioningRecordEClass.getEStructuralFeatures().get(18);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCommissioningRecord_Trial() {
		return (EReference)commissioningRecordEClass.getEStructuralFeatures().get(19);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCommissioningRecord_Upkeep() {
		return (EReference)commissioningRecordEClass.getEStructuralFeatures().get(20);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCommissioningRecord_Acceptances() {
		return (EReference)commissioningRecordEClass.getEStructuralFeatures().get(21);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCommissioningRecord_Signatures() {
		return (EReference)commissioningRecordEClass.getEStructuralFeatures().get(22);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCommissioningRecord_Photographs() {
		return (EReference)commissioningRecordEClass.getEStructuralFeatures().get(23);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCommissioningRecord_Revisions() {
		return (EReference)commissioningRecordEClass.getEStructuralFeatures().get(24);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCommissioningRecord_UnreadEntries() {
		return (EReference)commissioningRecordEClass.getEStructuralFeatures().get(25);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getRevision() {
		return revisionEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRevision_Number() {
		return (EAttribute)revisionEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRevision_Date() {
		return (EAttribute)revisionEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRevision_By() {
		return (EAttribute)revisionEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRevision_Description() {
		return (EAttribute)revisionEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getInstrument() {
		return instrumentEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getInstrument_Name() {
		return (EAttribute)instrumentEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getInstrument_SerialNumber() {
		return (EAttribute)instrumentEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getInstrument_Measures() {
		return (EAttribute)instrumentEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getInstrument_AccuracyStated() {
		return (EAttribute)instrumentEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getInstrument_CalibratedOn() {
		return (EAttribute)instrumentEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getParty() {
		return partyEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getParty_Role() {
		return (EAttribute)partyEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getParty_Name() {
		return (EAttribute)partyEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getParty_Organisation() {
		return (EAttribute)partyEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getParty_Licence() {
		return (EAttribute)partyEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getParty_Contact() {
		return (EAttribute)partyEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getPhotograph() {
		return photographEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPhotograph_Caption() {
		return (EAttribute)photographEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPhotograph_TakenOn() {
		return (EAttribute)photographEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPhotograph_MediaType() {
		return (EAttribute)photographEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPhotograph_Data() {
		return (EAttribute)photographEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getVessel() {
		return vesselEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVessel_Name() {
		return (EAttribute)vesselEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVessel_Identification() {
		return (EAttribute)vesselEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVessel_Flag() {
		return (EAttribute)vesselEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVessel_HullKind() {
		return (EAttribute)vesselEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVessel_HullMaterial() {
		return (EAttribute)vesselEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVessel_Service() {
		return (EAttribute)vesselEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVessel_BuiltOn() {
		return (EAttribute)vesselEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVessel_LengthOverall() {
		return (EAttribute)vesselEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVessel_WaterlineLength() {
		return (EAttribute)vesselEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVessel_Beam() {
		return (EAttribute)vesselEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVessel_Draught() {
		return (EAttribute)vesselEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVessel_FreeboardAmidships() {
		return (EAttribute)vesselEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVessel_Passengers() {
		return (EAttribute)vesselEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVessel_OvernightPassengers() {
		return (EAttribute)vesselEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVessel_Speed() {
		return (EAttribute)vesselEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVessel_DesignHeel() {
		return (EAttribute)vesselEClass.getEStructuralFeatures().get(15);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVessel_DesignRoll() {
		return (EAttribute)vesselEClass.getEStructuralFeatures().get(16);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVessel_DesignTrim() {
		return (EAttribute)vesselEClass.getEStructuralFeatures().get(17);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVessel_Sinkage() {
		return (EAttribute)vesselEClass.getEStructuralFeatures().get(18);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVessel_GasolineEngineAboard() {
		return (EAttribute)vesselEClass.getEStructuralFeatures().get(19);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVessel_GasolineEngines() {
		return (EAttribute)vesselEClass.getEStructuralFeatures().get(20);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getGeneratorSet() {
		return generatorSetEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGeneratorSet_Maker() {
		return (EAttribute)generatorSetEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGeneratorSet_Type() {
		return (EAttribute)generatorSetEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGeneratorSet_SerialNumber() {
		return (EAttribute)generatorSetEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGeneratorSet_EngineSerialNumber() {
		return (EAttribute)generatorSetEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGeneratorSet_AlternatorSerialNumber() {
		return (EAttribute)generatorSetEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGeneratorSet_SoldOn() {
		return (EAttribute)generatorSetEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGeneratorSet_InstalledOn() {
		return (EAttribute)generatorSetEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGeneratorSet_HourMeter() {
		return (EAttribute)generatorSetEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGeneratorSet_Fuel() {
		return (EAttribute)generatorSetEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGeneratorSet_FuelSystem() {
		return (EAttribute)generatorSetEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGeneratorSet_Aspiration() {
		return (EAttribute)generatorSetEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGeneratorSet_Cooling() {
		return (EAttribute)generatorSetEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGeneratorSet_DutyRating() {
		return (EAttribute)generatorSetEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGeneratorSet_RatedPower() {
		return (EAttribute)generatorSetEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGeneratorSet_RatedApparentPower() {
		return (EAttribute)generatorSetEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGeneratorSet_RatedPowerFactor() {
		return (EAttribute)generatorSetEClass.getEStructuralFeatures().get(15);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGeneratorSet_RatedVoltage() {
		return (EAttribute)generatorSetEClass.getEStructuralFeatures().get(16);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGeneratorSet_RatedFrequency() {
		return (EAttribute)generatorSetEClass.getEStructuralFeatures().get(17);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGeneratorSet_Phases() {
		return (EAttribute)generatorSetEClass.getEStructuralFeatures().get(18);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGeneratorSet_RatedSpeed() {
		return (EAttribute)generatorSetEClass.getEStructuralFeatures().get(19);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGeneratorSet_Poles() {
		return (EAttribute)generatorSetEClass.getEStructuralFeatures().get(20);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGeneratorSet_CrankingSpeed() {
		return (EAttribute)generatorSetEClass.getEStructuralFeatures().get(21);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGeneratorSet_ShaftPower() {
		return (EAttribute)generatorSetEClass.getEStructuralFeatures().get(22);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGeneratorSet_AlternatorEfficiency() {
		return (EAttribute)generatorSetEClass.getEStructuralFeatures().get(23);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGeneratorSet_FuelConsumptionFullLoad() {
		return (EAttribute)generatorSetEClass.getEStructuralFeatures().get(24);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGeneratorSet_SpecificFuelConsumption() {
		return (EAttribute)generatorSetEClass.getEStructuralFeatures().get(25);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGeneratorSet_AirFuelRatio() {
		return (EAttribute)generatorSetEClass.getEStructuralFeatures().get(26);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGeneratorSet_ExhaustGasTemperature() {
		return (EAttribute)generatorSetEClass.getEStructuralFeatures().get(27);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGeneratorSet_ExhaustMassFlow() {
		return (EAttribute)generatorSetEClass.getEStructuralFeatures().get(28);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGeneratorSet_HeatToCoolant() {
		return (EAttribute)generatorSetEClass.getEStructuralFeatures().get(29);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGeneratorSet_HeatToCompartment() {
		return (EAttribute)generatorSetEClass.getEStructuralFeatures().get(30);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGeneratorSet_CombustionAirFlow() {
		return (EAttribute)generatorSetEClass.getEStructuralFeatures().get(31);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGeneratorSet_RawWaterFlow() {
		return (EAttribute)generatorSetEClass.getEStructuralFeatures().get(32);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGeneratorSet_SystemVoltage() {
		return (EAttribute)generatorSetEClass.getEStructuralFeatures().get(33);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGeneratorSet_CrankingCurrent() {
		return (EAttribute)generatorSetEClass.getEStructuralFeatures().get(34);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGeneratorSet_StarterVoltage() {
		return (EAttribute)generatorSetEClass.getEStructuralFeatures().get(35);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGeneratorSet_InSoundShield() {
		return (EAttribute)generatorSetEClass.getEStructuralFeatures().get(36);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGeneratorSet_OverloadDeclared() {
		return (EAttribute)generatorSetEClass.getEStructuralFeatures().get(37);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGeneratorSet_EmissionLabelMarine() {
		return (EAttribute)generatorSetEClass.getEStructuralFeatures().get(38);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGeneratorSet_PerformanceClass() {
		return (EAttribute)generatorSetEClass.getEStructuralFeatures().get(39);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGeneratorSet_DesignAmbient() {
		return (EAttribute)generatorSetEClass.getEStructuralFeatures().get(40);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGeneratorSet_SubtransientReactance() {
		return (EAttribute)generatorSetEClass.getEStructuralFeatures().get(41);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGeneratorSet_TransientReactance() {
		return (EAttribute)generatorSetEClass.getEStructuralFeatures().get(42);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGeneratorSet_SustainedShortCircuitMultiple() {
		return (EAttribute)generatorSetEClass.getEStructuralFeatures().get(43);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGeneratorSet_AnnualHours() {
		return (EAttribute)generatorSetEClass.getEStructuralFeatures().get(44);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGeneratorSet_PlateShowsDeratedPower() {
		return (EAttribute)generatorSetEClass.getEStructuralFeatures().get(45);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getGeneratorSet_MakerLimits() {
		return (EReference)generatorSetEClass.getEStructuralFeatures().get(46);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getMakerLimits() {
		return makerLimitsEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMakerLimits_Document() {
		return (EAttribute)makerLimitsEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMakerLimits_DocumentPage() {
		return (EAttribute)makerLimitsEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMakerLimits_MaximumBackPressure() {
		return (EAttribute)makerLimitsEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMakerLimits_MaximumLiftHeight() {
		return (EAttribute)makerLimitsEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMakerLimits_MinimumSiphonBreakHeight() {
		return (EAttribute)makerLimitsEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMakerLimits_MinimumSiphonClearanceHeeled() {
		return (EAttribute)makerLimitsEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMakerLimits_SiphonBreakNeededBelow() {
		return (EAttribute)makerLimitsEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMakerLimits_MinimumInjectionDrop() {
		return (EAttribute)makerLimitsEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMakerLimits_MinimumExhaustFall() {
		return (EAttribute)makerLimitsEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMakerLimits_MinimumExhaustBore() {
		return (EAttribute)makerLimitsEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMakerLimits_MaximumExhaustLength() {
		return (EAttribute)makerLimitsEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMakerLimits_MinimumMufflerVolume() {
		return (EAttribute)makerLimitsEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMakerLimits_MinimumRawWaterFlow() {
		return (EAttribute)makerLimitsEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMakerLimits_MaximumRawWaterSuctionHead() {
		return (EAttribute)makerLimitsEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMakerLimits_MaximumRawWaterVacuum() {
		return (EAttribute)makerLimitsEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMakerLimits_MaximumRawWaterInletPressure() {
		return (EAttribute)makerLimitsEClass.getEStructuralFeatures().get(15);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMakerLimits_MinimumRawWaterHoseBore() {
		return (EAttribute)makerLimitsEClass.getEStructuralFeatures().get(16);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMakerLimits_MaximumFuelLift() {
		return (EAttribute)makerLimitsEClass.getEStructuralFeatures().get(17);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMakerLimits_MaximumFuelVacuum() {
		return (EAttribute)makerLimitsEClass.getEStructuralFeatures().get(18);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMakerLimits_MinimumFuelLineBore() {
		return (EAttribute)makerLimitsEClass.getEStructuralFeatures().get(19);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMakerLimits_RequiredSeparatorFlow() {
		return (EAttribute)makerLimitsEClass.getEStructuralFeatures().get(20);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMakerLimits_FilterFineness() {
		return (EAttribute)makerLimitsEClass.getEStructuralFeatures().get(21);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMakerLimits_MinimumBatteryCcA() {
		return (EAttribute)makerLimitsEClass.getEStructuralFeatures().get(22);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMakerLimits_MinimumBatteryCapacity() {
		return (EAttribute)makerLimitsEClass.getEStructuralFeatures().get(23);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMakerLimits_BatteryCrankingDefinition() {
		return (EAttribute)makerLimitsEClass.getEStructuralFeatures().get(24);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMakerLimits_MaximumCrankingCircuitResistance() {
		return (EAttribute)makerLimitsEClass.getEStructuralFeatures().get(25);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMakerLimits_MinimumCrankingVoltage() {
		return (EAttribute)makerLimitsEClass.getEStructuralFeatures().get(26);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMakerLimits_FeedPressureLow() {
		return (EAttribute)makerLimitsEClass.getEStructuralFeatures().get(27);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMakerLimits_FeedPressureHigh() {
		return (EAttribute)makerLimitsEClass.getEStructuralFeatures().get(28);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMakerLimits_RailPressureLow() {
		return (EAttribute)makerLimitsEClass.getEStructuralFeatures().get(29);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMakerLimits_RailPressureHigh() {
		return (EAttribute)makerLimitsEClass.getEStructuralFeatures().get(30);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMakerLimits_MaximumCrankTime() {
		return (EAttribute)makerLimitsEClass.getEStructuralFeatures().get(31);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMakerLimits_MaximumTotalCrankTime() {
		return (EAttribute)makerLimitsEClass.getEStructuralFeatures().get(32);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMakerLimits_MaximumCompartmentTemperature() {
		return (EAttribute)makerLimitsEClass.getEStructuralFeatures().get(33);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMakerLimits_MaximumCompartmentRise() {
		return (EAttribute)makerLimitsEClass.getEStructuralFeatures().get(34);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMakerLimits_MaximumDepression() {
		return (EAttribute)makerLimitsEClass.getEStructuralFeatures().get(35);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMakerLimits_MaximumHeel() {
		return (EAttribute)makerLimitsEClass.getEStructuralFeatures().get(36);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMakerLimits_MaximumTrim() {
		return (EAttribute)makerLimitsEClass.getEStructuralFeatures().get(37);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMakerLimits_MaximumCoolantTemperature() {
		return (EAttribute)makerLimitsEClass.getEStructuralFeatures().get(38);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMakerLimits_MinimumOilPressure() {
		return (EAttribute)makerLimitsEClass.getEStructuralFeatures().get(39);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMakerLimits_MaximumExhaustTemperature() {
		return (EAttribute)makerLimitsEClass.getEStructuralFeatures().get(40);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMakerLimits_MinimumVentilationArea() {
		return (EAttribute)makerLimitsEClass.getEStructuralFeatures().get(41);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getStartingBattery() {
		return startingBatteryEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStartingBattery_Chemistry() {
		return (EAttribute)startingBatteryEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStartingBattery_BlockVoltage() {
		return (EAttribute)startingBatteryEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStartingBattery_BlocksInSeries() {
		return (EAttribute)startingBatteryEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStartingBattery_StringsInParallel() {
		return (EAttribute)startingBatteryEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStartingBattery_BlockCapacity() {
		return (EAttribute)startingBatteryEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStartingBattery_BlockCrankingRating() {
		return (EAttribute)startingBatteryEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStartingBattery_CrankingRatingDefinition() {
		return (EAttribute)startingBatteryEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStartingBattery_InstalledOn() {
		return (EAttribute)startingBatteryEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStartingBattery_BlockMass() {
		return (EAttribute)startingBatteryEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStartingBattery_BatteryTemperature() {
		return (EAttribute)startingBatteryEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStartingBattery_RestTime() {
		return (EAttribute)startingBatteryEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStartingBattery_RestedVoltage() {
		return (EAttribute)startingBatteryEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStartingBattery_ColdestStart() {
		return (EAttribute)startingBatteryEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getStartingBattery_Blocks() {
		return (EReference)startingBatteryEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStartingBattery_DedicatedToGenerator() {
		return (EAttribute)startingBatteryEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStartingBattery_IsolatingSwitch() {
		return (EAttribute)startingBatteryEClass.getEStructuralFeatures().get(15);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStartingBattery_IsolatingSwitchReachable() {
		return (EAttribute)startingBatteryEClass.getEStructuralFeatures().get(16);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStartingBattery_EmergencyCrossConnect() {
		return (EAttribute)startingBatteryEClass.getEStructuralFeatures().get(17);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStartingBattery_Secured() {
		return (EAttribute)startingBatteryEClass.getEStructuralFeatures().get(18);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStartingBattery_MovementUnderTest() {
		return (EAttribute)startingBatteryEClass.getEStructuralFeatures().get(19);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStartingBattery_TrayOrBox() {
		return (EAttribute)startingBatteryEClass.getEStructuralFeatures().get(20);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStartingBattery_PositiveTerminalCovered() {
		return (EAttribute)startingBatteryEClass.getEStructuralFeatures().get(21);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStartingBattery_Terminals() {
		return (EAttribute)startingBatteryEClass.getEStructuralFeatures().get(22);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStartingBattery_VentedOverboard() {
		return (EAttribute)startingBatteryEClass.getEStructuralFeatures().get(23);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStartingBattery_VentilationAreaEachWay() {
		return (EAttribute)startingBatteryEClass.getEStructuralFeatures().get(24);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStartingBattery_DistanceToStarter() {
		return (EAttribute)startingBatteryEClass.getEStructuralFeatures().get(25);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStartingBattery_FuelPartsWithinReach() {
		return (EAttribute)startingBatteryEClass.getEStructuralFeatures().get(26);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStartingBattery_DielectricShield() {
		return (EAttribute)startingBatteryEClass.getEStructuralFeatures().get(27);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStartingBattery_AboveOrBelowFuelFittings() {
		return (EAttribute)startingBatteryEClass.getEStructuralFeatures().get(28);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStartingBattery_HighAboveBilge() {
		return (EAttribute)startingBatteryEClass.getEStructuralFeatures().get(29);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStartingBattery_ChargerRatedCurrent() {
		return (EAttribute)startingBatteryEClass.getEStructuralFeatures().get(30);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStartingBattery_ChargerVoltage() {
		return (EAttribute)startingBatteryEClass.getEStructuralFeatures().get(31);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStartingBattery_ChargingVoltageRunning() {
		return (EAttribute)startingBatteryEClass.getEStructuralFeatures().get(32);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStartingBattery_ChargerAmmeter() {
		return (EAttribute)startingBatteryEClass.getEStructuralFeatures().get(33);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStartingBattery_SameTypeAndAge() {
		return (EAttribute)startingBatteryEClass.getEStructuralFeatures().get(34);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getStartingBattery_Cables() {
		return (EReference)startingBatteryEClass.getEStructuralFeatures().get(35);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStartingBattery_CrankingVoltageAtPosts() {
		return (EAttribute)startingBatteryEClass.getEStructuralFeatures().get(36);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStartingBattery_CrankingVoltageAtStarter() {
		return (EAttribute)startingBatteryEClass.getEStructuralFeatures().get(37);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStartingBattery_BlocksMixed() {
		return (EAttribute)startingBatteryEClass.getEStructuralFeatures().get(38);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStartingBattery_EmergencySource() {
		return (EAttribute)startingBatteryEClass.getEStructuralFeatures().get(39);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getBatteryBlock() {
		return batteryBlockEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBatteryBlock_Label() {
		return (EAttribute)batteryBlockEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBatteryBlock_RestedVoltage() {
		return (EAttribute)batteryBlockEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBatteryBlock_SpecificGravityLow() {
		return (EAttribute)batteryBlockEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBatteryBlock_SpecificGravityHigh() {
		return (EAttribute)batteryBlockEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getCableRun() {
		return cableRunEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCableRun_Name() {
		return (EAttribute)cableRunEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCableRun_Function() {
		return (EAttribute)cableRunEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCableRun_ConductorSize() {
		return (EAttribute)cableRunEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCableRun_StrandClass() {
		return (EAttribute)cableRunEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCableRun_Insulation() {
		return (EAttribute)cableRunEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCableRun_Length() {
		return (EAttribute)cableRunEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCableRun_Current() {
		return (EAttribute)cableRunEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCableRun_SystemVoltage() {
		return (EAttribute)cableRunEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCableRun_Critical() {
		return (EAttribute)cableRunEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCableRun_InEngineSpace() {
		return (EAttribute)cableRunEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCableRun_ConductorsInBundle() {
		return (EAttribute)cableRunEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCableRun_ConductorTemperature() {
		return (EAttribute)cableRunEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCableRun_Protection() {
		return (EAttribute)cableRunEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCableRun_ProtectionRating() {
		return (EAttribute)cableRunEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCableRun_ProtectionVoltageRating() {
		return (EAttribute)cableRunEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCableRun_ProtectionDistanceFromSource() {
		return (EAttribute)cableRunEClass.getEStructuralFeatures().get(15);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCableRun_SheathedToProtection() {
		return (EAttribute)cableRunEClass.getEStructuralFeatures().get(16);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCableRun_ConnectedToBatteryTerminal() {
		return (EAttribute)cableRunEClass.getEStructuralFeatures().get(17);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCableRun_SupportSpacing() {
		return (EAttribute)cableRunEClass.getEStructuralFeatures().get(18);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCableRun_RingTerminals() {
		return (EAttribute)cableRunEClass.getEStructuralFeatures().get(19);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCableRun_LugsOnStud() {
		return (EAttribute)cableRunEClass.getEStructuralFeatures().get(20);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCableRun_ChafeProtected() {
		return (EAttribute)cableRunEClass.getEStructuralFeatures().get(21);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCableRun_MultiStrandCopper() {
		return (EAttribute)cableRunEClass.getEStructuralFeatures().get(22);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCableRun_MeasuredDrop() {
		return (EAttribute)cableRunEClass.getEStructuralFeatures().get(23);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getFuelSupply() {
		return fuelSupplyEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getFuelSupply_Tank() {
		return (EReference)fuelSupplyEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getFuelSupply_Lines() {
		return (EReference)fuelSupplyEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getFuelSupply_Separator() {
		return (EReference)fuelSupplyEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getFuelSupply_PumpPosition() {
		return (EReference)fuelSupplyEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelSupply_EngineInletHeight() {
		return (EAttribute)fuelSupplyEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelSupply_HighestLinePoint() {
		return (EAttribute)fuelSupplyEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelSupply_LowestLinePoint() {
		return (EAttribute)fuelSupplyEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelSupply_PumpFlow() {
		return (EAttribute)fuelSupplyEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelSupply_ElectricPump() {
		return (EAttribute)fuelSupplyEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelSupply_PumpStopsWithEngine() {
		return (EAttribute)fuelSupplyEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelSupply_PumpWithinReachOfEngine() {
		return (EAttribute)fuelSupplyEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelSupply_AntiSiphon() {
		return (EAttribute)fuelSupplyEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelSupply_AntiSiphonCrackingPressure() {
		return (EAttribute)fuelSupplyEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelSupply_TankShutOff() {
		return (EAttribute)fuelSupplyEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelSupply_TankShutOffReachableFromOutside() {
		return (EAttribute)fuelSupplyEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelSupply_EngineShutOff() {
		return (EAttribute)fuelSupplyEClass.getEStructuralFeatures().get(15);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelSupply_LineLengthTankToEngine() {
		return (EAttribute)fuelSupplyEClass.getEStructuralFeatures().get(16);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelSupply_OwnPickUp() {
		return (EAttribute)fuelSupplyEClass.getEStructuralFeatures().get(17);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelSupply_PickUpClearance() {
		return (EAttribute)fuelSupplyEClass.getEStructuralFeatures().get(18);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelSupply_PickUpScreen() {
		return (EAttribute)fuelSupplyEClass.getEStructuralFeatures().get(19);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelSupply_ReturnToTankInUse() {
		return (EAttribute)fuelSupplyEClass.getEStructuralFeatures().get(20);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelSupply_ReturnCanDeadHead() {
		return (EAttribute)fuelSupplyEClass.getEStructuralFeatures().get(21);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelSupply_FlexibleLastLink() {
		return (EAttribute)fuelSupplyEClass.getEStructuralFeatures().get(22);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelSupply_RigidLineSupportDistance() {
		return (EAttribute)fuelSupplyEClass.getEStructuralFeatures().get(23);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelSupply_FlexibleHoseSpillVolume() {
		return (EAttribute)fuelSupplyEClass.getEStructuralFeatures().get(24);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelSupply_LeakTestPressure() {
		return (EAttribute)fuelSupplyEClass.getEStructuralFeatures().get(25);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelSupply_LeakTestHeld() {
		return (EAttribute)fuelSupplyEClass.getEStructuralFeatures().get(26);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelSupply_GroundResistance() {
		return (EAttribute)fuelSupplyEClass.getEStructuralFeatures().get(27);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelSupply_FillHoseClamps() {
		return (EAttribute)fuelSupplyEClass.getEStructuralFeatures().get(28);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelSupply_FillClampBandWidth() {
		return (EAttribute)fuelSupplyEClass.getEStructuralFeatures().get(29);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelSupply_VentFlameArrester() {
		return (EAttribute)fuelSupplyEClass.getEStructuralFeatures().get(30);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelSupply_CleanVacuumAtPump() {
		return (EAttribute)fuelSupplyEClass.getEStructuralFeatures().get(31);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelSupply_VacuumAtPumpNow() {
		return (EAttribute)fuelSupplyEClass.getEStructuralFeatures().get(32);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelSupply_FeedPressure() {
		return (EAttribute)fuelSupplyEClass.getEStructuralFeatures().get(33);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelSupply_RailPressure() {
		return (EAttribute)fuelSupplyEClass.getEStructuralFeatures().get(34);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelSupply_PlannedRunTime() {
		return (EAttribute)fuelSupplyEClass.getEStructuralFeatures().get(35);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelSupply_PlannedLoadPower() {
		return (EAttribute)fuelSupplyEClass.getEStructuralFeatures().get(36);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelSupply_BackfireFlameArrester() {
		return (EAttribute)fuelSupplyEClass.getEStructuralFeatures().get(37);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getFuelTank() {
		return fuelTankEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelTank_Name() {
		return (EAttribute)fuelTankEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelTank_Material() {
		return (EAttribute)fuelTankEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelTank_Capacity() {
		return (EAttribute)fuelTankEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelTank_UsableFraction() {
		return (EAttribute)fuelTankEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getFuelTank_Top() {
		return (EReference)fuelTankEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelTank_BottomHeight() {
		return (EAttribute)fuelTankEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelTank_Labelled() {
		return (EAttribute)fuelTankEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelTank_TestPressureOnLabel() {
		return (EAttribute)fuelTankEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelTank_TestPressure() {
		return (EAttribute)fuelTankEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelTank_OpeningsAtTop() {
		return (EAttribute)fuelTankEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelTank_Movement() {
		return (EAttribute)fuelTankEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelTank_SharedWithMainEngine() {
		return (EAttribute)fuelTankEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getFuelLineRun() {
		return fuelLineRunEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelLineRun_Name() {
		return (EAttribute)fuelLineRunEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelLineRun_Function() {
		return (EAttribute)fuelLineRunEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelLineRun_Kind() {
		return (EAttribute)fuelLineRunEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelLineRun_Bore() {
		return (EAttribute)fuelLineRunEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelLineRun_Length() {
		return (EAttribute)fuelLineRunEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelLineRun_Marking() {
		return (EAttribute)fuelLineRunEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelLineRun_WorkingPressure() {
		return (EAttribute)fuelLineRunEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelLineRun_ClampsPerEnd() {
		return (EAttribute)fuelLineRunEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelLineRun_BarbedEnds() {
		return (EAttribute)fuelLineRunEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelLineRun_InEngineSpace() {
		return (EAttribute)fuelLineRunEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelLineRun_InstalledOn() {
		return (EAttribute)fuelLineRunEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getFuelSeparator() {
		return fuelSeparatorEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelSeparator_Maker() {
		return (EAttribute)fuelSeparatorEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelSeparator_RatedFlow() {
		return (EAttribute)fuelSeparatorEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelSeparator_Fineness() {
		return (EAttribute)fuelSeparatorEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelSeparator_OnEngineFineness() {
		return (EAttribute)fuelSeparatorEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelSeparator_Bowl() {
		return (EAttribute)fuelSeparatorEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getFuelSeparator_Position() {
		return (EReference)fuelSeparatorEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelSeparator_ClearanceBelow() {
		return (EAttribute)fuelSeparatorEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelSeparator_FixedToStructure() {
		return (EAttribute)fuelSeparatorEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelSeparator_HighestPointOfLine() {
		return (EAttribute)fuelSeparatorEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelSeparator_FireTested() {
		return (EAttribute)fuelSeparatorEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelSeparator_WaterAlarm() {
		return (EAttribute)fuelSeparatorEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelSeparator_ElementChangedOn() {
		return (EAttribute)fuelSeparatorEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelSeparator_BypassOrSpare() {
		return (EAttribute)fuelSeparatorEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelSeparator_WaterFound() {
		return (EAttribute)fuelSeparatorEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getRawWaterCircuit() {
		return rawWaterCircuitEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRawWaterCircuit_PickUp() {
		return (EReference)rawWaterCircuitEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRawWaterCircuit_Seacock() {
		return (EReference)rawWaterCircuitEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRawWaterCircuit_Strainer() {
		return (EReference)rawWaterCircuitEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRawWaterCircuit_Hoses() {
		return (EReference)rawWaterCircuitEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRawWaterCircuit_Pump() {
		return (EReference)rawWaterCircuitEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRawWaterCircuit_SiphonBreak() {
		return (EReference)rawWaterCircuitEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRawWaterCircuit_Injection() {
		return (EReference)rawWaterCircuitEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRawWaterCircuit_SiphonBreakHoseBore() {
		return (EAttribute)rawWaterCircuitEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRawWaterCircuit_OwnIntake() {
		return (EAttribute)rawWaterCircuitEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRawWaterCircuit_DischargeAheadOfIntake() {
		return (EAttribute)rawWaterCircuitEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRawWaterCircuit_MeasuredFlow() {
		return (EAttribute)rawWaterCircuitEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRawWaterCircuit_MeasuredVacuumAtPump() {
		return (EAttribute)rawWaterCircuitEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRawWaterCircuit_MeasuredInletTemperature() {
		return (EAttribute)rawWaterCircuitEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRawWaterCircuit_MeasuredOverboardTemperature() {
		return (EAttribute)rawWaterCircuitEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRawWaterCircuit_DesignSeaTemperature() {
		return (EAttribute)rawWaterCircuitEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRawWaterCircuit_SeacockTagAtStartPanel() {
		return (EAttribute)rawWaterCircuitEClass.getEStructuralFeatures().get(15);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRawWaterCircuit_ShutWhenNotInUse() {
		return (EAttribute)rawWaterCircuitEClass.getEStructuralFeatures().get(16);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRawWaterCircuit_WinteriseConnection() {
		return (EAttribute)rawWaterCircuitEClass.getEStructuralFeatures().get(17);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getHullPickUp() {
		return hullPickUpEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getHullPickUp_Kind() {
		return (EAttribute)hullPickUpEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getHullPickUp_Position() {
		return (EReference)hullPickUpEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getHullPickUp_Bore() {
		return (EAttribute)hullPickUpEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getHullPickUp_Material() {
		return (EAttribute)hullPickUpEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getHullPickUp_GratingOpenArea() {
		return (EAttribute)hullPickUpEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getHullPickUp_LightShipRise() {
		return (EAttribute)hullPickUpEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getSeacock() {
		return seacockEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSeacock_Kind() {
		return (EAttribute)seacockEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSeacock_Material() {
		return (EAttribute)seacockEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSeacock_Bore() {
		return (EAttribute)seacockEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSeacock_FullBore() {
		return (EAttribute)seacockEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSeacock_LeverShowsState() {
		return (EAttribute)seacockEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSeacock_ReachableWithoutTools() {
		return (EAttribute)seacockEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSeacock_CloseToHull() {
		return (EAttribute)seacockEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSeacock_StaticLoadMarked() {
		return (EAttribute)seacockEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSeacock_WorksFreely() {
		return (EAttribute)seacockEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getWaterStrainer() {
		return waterStrainerEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getWaterStrainer_Position() {
		return (EReference)waterStrainerEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWaterStrainer_PortBore() {
		return (EAttribute)waterStrainerEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWaterStrainer_BasketOpenArea() {
		return (EAttribute)waterStrainerEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWaterStrainer_HoleSize() {
		return (EAttribute)waterStrainerEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWaterStrainer_SeeThroughOrOpenable() {
		return (EAttribute)waterStrainerEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWaterStrainer_BesideSeacock() {
		return (EAttribute)waterStrainerEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWaterStrainer_LidAboveWaterline() {
		return (EAttribute)waterStrainerEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getWaterHoseRun() {
		return waterHoseRunEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWaterHoseRun_Name() {
		return (EAttribute)waterHoseRunEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWaterHoseRun_Section() {
		return (EAttribute)waterHoseRunEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWaterHoseRun_Kind() {
		return (EAttribute)waterHoseRunEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWaterHoseRun_Bore() {
		return (EAttribute)waterHoseRunEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWaterHoseRun_Length() {
		return (EAttribute)waterHoseRunEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWaterHoseRun_ClampsPerEnd() {
		return (EAttribute)waterHoseRunEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWaterHoseRun_CollapseProof() {
		return (EAttribute)waterHoseRunEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getWaterHoseRun_Fittings() {
		return (EReference)waterHoseRunEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWaterHoseRun_InstalledOn() {
		return (EAttribute)waterHoseRunEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getPipeFitting() {
		return pipeFittingEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPipeFitting_Kind() {
		return (EAttribute)pipeFittingEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPipeFitting_Count() {
		return (EAttribute)pipeFittingEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getWaterPump() {
		return waterPumpEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getWaterPump_Position() {
		return (EReference)waterPumpEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWaterPump_InletBore() {
		return (EAttribute)waterPumpEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWaterPump_OutletBore() {
		return (EAttribute)waterPumpEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWaterPump_RatedFlow() {
		return (EAttribute)waterPumpEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWaterPump_SelfPriming() {
		return (EAttribute)waterPumpEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWaterPump_ImpellerPiecesMissing() {
		return (EAttribute)waterPumpEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWaterPump_ImpellerPiecesFound() {
		return (EAttribute)waterPumpEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWaterPump_ImpellerChangedOn() {
		return (EAttribute)waterPumpEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getSiphonBreak() {
		return siphonBreakEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSiphonBreak_Kind() {
		return (EAttribute)siphonBreakEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSiphonBreak_VentSeat() {
		return (EReference)siphonBreakEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSiphonBreak_Place() {
		return (EAttribute)siphonBreakEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSiphonBreak_Bore() {
		return (EAttribute)siphonBreakEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSiphonBreak_HighestPoint() {
		return (EAttribute)siphonBreakEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSiphonBreak_VentHose() {
		return (EAttribute)siphonBreakEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSiphonBreak_VentHoseFree() {
		return (EAttribute)siphonBreakEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSiphonBreak_VentHoseEndHeight() {
		return (EAttribute)siphonBreakEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSiphonBreak_BleedBore() {
		return (EAttribute)siphonBreakEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSiphonBreak_TellTaleVisible() {
		return (EAttribute)siphonBreakEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSiphonBreak_AboveElectrics() {
		return (EAttribute)siphonBreakEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSiphonBreak_DripShield() {
		return (EAttribute)siphonBreakEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSiphonBreak_ServicedOn() {
		return (EAttribute)siphonBreakEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSiphonBreak_ValveTested() {
		return (EAttribute)siphonBreakEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getExhaustRun() {
		return exhaustRunEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getExhaustRun_Path() {
		return (EReference)exhaustRunEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getExhaustRun_Sections() {
		return (EReference)exhaustRunEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getExhaustRun_Muffler() {
		return (EReference)exhaustRunEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getExhaustRun_Riser() {
		return (EReference)exhaustRunEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getExhaustRun_Crest() {
		return (EReference)exhaustRunEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getExhaustRun_Outlet() {
		return (EReference)exhaustRunEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getExhaustRun_SeparatorDrain() {
		return (EReference)exhaustRunEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExhaustRun_TurbineOutletPortBore() {
		return (EAttribute)exhaustRunEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExhaustRun_OwnSystem() {
		return (EAttribute)exhaustRunEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExhaustRun_GasTight() {
		return (EAttribute)exhaustRunEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExhaustRun_DryPartsLagged() {
		return (EAttribute)exhaustRunEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExhaustRun_DryPartSurfaceTemperature() {
		return (EAttribute)exhaustRunEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExhaustRun_WeightOnManifold() {
		return (EAttribute)exhaustRunEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExhaustRun_TemperatureAlarm() {
		return (EAttribute)exhaustRunEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExhaustRun_TemperatureAlarmSetting() {
		return (EAttribute)exhaustRunEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExhaustRun_TestTapFitted() {
		return (EAttribute)exhaustRunEClass.getEStructuralFeatures().get(15);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExhaustRun_TestTapDistance() {
		return (EAttribute)exhaustRunEClass.getEStructuralFeatures().get(16);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExhaustRun_MeasuredBackPressure() {
		return (EAttribute)exhaustRunEClass.getEStructuralFeatures().get(17);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExhaustRun_MeasuredBackPressureLoad() {
		return (EAttribute)exhaustRunEClass.getEStructuralFeatures().get(18);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExhaustRun_BaselineBackPressure() {
		return (EAttribute)exhaustRunEClass.getEStructuralFeatures().get(19);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExhaustRun_SilencerLoss() {
		return (EAttribute)exhaustRunEClass.getEStructuralFeatures().get(20);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExhaustRun_WaterFullLength() {
		return (EAttribute)exhaustRunEClass.getEStructuralFeatures().get(21);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExhaustRun_BulkheadsSealed() {
		return (EAttribute)exhaustRunEClass.getEStructuralFeatures().get(22);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExhaustRun_JointsAccessible() {
		return (EAttribute)exhaustRunEClass.getEStructuralFeatures().get(23);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExhaustRun_ClearOfCombustibles() {
		return (EAttribute)exhaustRunEClass.getEStructuralFeatures().get(24);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getExhaustPoint() {
		return exhaustPointEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExhaustPoint_Name() {
		return (EAttribute)exhaustPointEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getExhaustPoint_Position() {
		return (EReference)exhaustPointEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExhaustPoint_Bore() {
		return (EAttribute)exhaustPointEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getExhaustSectionRun() {
		return exhaustSectionRunEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExhaustSectionRun_Name() {
		return (EAttribute)exhaustSectionRunEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExhaustSectionRun_Section() {
		return (EAttribute)exhaustSectionRunEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExhaustSectionRun_Standard() {
		return (EAttribute)exhaustSectionRunEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExhaustSectionRun_Bore() {
		return (EAttribute)exhaustSectionRunEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExhaustSectionRun_Length() {
		return (EAttribute)exhaustSectionRunEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExhaustSectionRun_Rise() {
		return (EAttribute)exhaustSectionRunEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExhaustSectionRun_Fall() {
		return (EAttribute)exhaustSectionRunEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExhaustSectionRun_SlopesBackToMuffler() {
		return (EAttribute)exhaustSectionRunEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getExhaustSectionRun_Bends() {
		return (EReference)exhaustSectionRunEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExhaustSectionRun_ClampsPerEnd() {
		return (EAttribute)exhaustSectionRunEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExhaustSectionRun_ClampBandWidth() {
		return (EAttribute)exhaustSectionRunEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExhaustSectionRun_SupportSpacing() {
		return (EAttribute)exhaustSectionRunEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExhaustSectionRun_SagFree() {
		return (EAttribute)exhaustSectionRunEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExhaustSectionRun_InstalledOn() {
		return (EAttribute)exhaustSectionRunEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExhaustSectionRun_GasTemperature() {
		return (EAttribute)exhaustSectionRunEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getExhaustBend() {
		return exhaustBendEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExhaustBend_Kind() {
		return (EAttribute)exhaustBendEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExhaustBend_Count() {
		return (EAttribute)exhaustBendEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExhaustBend_Radius() {
		return (EAttribute)exhaustBendEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getMuffler() {
		return mufflerEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMuffler_Kind() {
		return (EAttribute)mufflerEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getMuffler_Position() {
		return (EReference)mufflerEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMuffler_InletBore() {
		return (EAttribute)mufflerEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMuffler_OutletBore() {
		return (EAttribute)mufflerEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMuffler_VolumeToInlet() {
		return (EAttribute)mufflerEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMuffler_ResidueFraction() {
		return (EAttribute)mufflerEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMuffler_BottomHeight() {
		return (EAttribute)mufflerEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMuffler_InletInvertHeight() {
		return (EAttribute)mufflerEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMuffler_DistanceFromEngine() {
		return (EAttribute)mufflerEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMuffler_LowestPoint() {
		return (EAttribute)mufflerEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMuffler_Marked() {
		return (EAttribute)mufflerEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMuffler_DrainPlug() {
		return (EAttribute)mufflerEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMuffler_DrainPosition() {
		return (EAttribute)mufflerEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMuffler_LevelAfterStopBelowInlet() {
		return (EAttribute)mufflerEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMuffler_Supported() {
		return (EAttribute)mufflerEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMuffler_PressureLoss() {
		return (EAttribute)mufflerEClass.getEStructuralFeatures().get(15);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getRiser() {
		return riserEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRiser_DryCrestInside() {
		return (EReference)riserEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRiser_InjectionOnFallingLeg() {
		return (EAttribute)riserEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRiser_InjectionPointsDown() {
		return (EAttribute)riserEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRiser_InjectionDropToMuffler() {
		return (EAttribute)riserEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRiser_LiftHeight() {
		return (EAttribute)riserEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRiser_ElbowBore() {
		return (EAttribute)riserEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRiser_ElbowInspectedOn() {
		return (EAttribute)riserEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getExhaustCrest() {
		return exhaustCrestEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getExhaustCrest_InsideBottom() {
		return (EReference)exhaustCrestEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExhaustCrest_Vented() {
		return (EAttribute)exhaustCrestEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getExhaustOutlet() {
		return exhaustOutletEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExhaustOutlet_Place() {
		return (EAttribute)exhaustOutletEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getExhaustOutlet_InsideBottom() {
		return (EReference)exhaustOutletEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExhaustOutlet_Bore() {
		return (EAttribute)exhaustOutletEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExhaustOutlet_AntiSurge() {
		return (EAttribute)exhaustOutletEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExhaustOutlet_ClosedByValve() {
		return (EAttribute)exhaustOutletEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExhaustOutlet_UnderSwimPlatform() {
		return (EAttribute)exhaustOutletEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExhaustOutlet_NearOpenings() {
		return (EAttribute)exhaustOutletEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExhaustOutlet_DistanceToOpening() {
		return (EAttribute)exhaustOutletEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExhaustOutlet_WaterVisible() {
		return (EAttribute)exhaustOutletEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExhaustOutlet_Material() {
		return (EAttribute)exhaustOutletEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getSeparatorDrain() {
		return separatorDrainEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSeparatorDrain_Bore() {
		return (EAttribute)separatorDrainEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSeparatorDrain_BaseHeight() {
		return (EAttribute)separatorDrainEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSeparatorDrain_OwnSeacock() {
		return (EAttribute)separatorDrainEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSeparatorDrain_FallsAllTheWay() {
		return (EAttribute)separatorDrainEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSeparatorDrain_GasSidePressure() {
		return (EAttribute)separatorDrainEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getVentilation() {
		return ventilationEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVentilation_NetVolume() {
		return (EAttribute)ventilationEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVentilation_GrossVolume() {
		return (EAttribute)ventilationEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVentilation_OpenAreaToAtmosphere() {
		return (EAttribute)ventilationEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVentilation_ConnectedOpeningFraction() {
		return (EAttribute)ventilationEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVentilation_CompartmentHeight() {
		return (EAttribute)ventilationEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVentilation_BilgeWaterHeight() {
		return (EAttribute)ventilationEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getVentilation_Ducts() {
		return (EReference)ventilationEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVentilation_BlowerRatedFlow() {
		return (EAttribute)ventilationEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVentilation_BlowerMeasuredFlow() {
		return (EAttribute)ventilationEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVentilation_BlowerLabelAtEachStart() {
		return (EAttribute)ventilationEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVentilation_BlowerInterlocked() {
		return (EAttribute)ventilationEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVentilation_BlowerIgnitionProtected() {
		return (EAttribute)ventilationEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVentilation_SealedFromAccommodation() {
		return (EAttribute)ventilationEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVentilation_SupplyFromOutside() {
		return (EAttribute)ventilationEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVentilation_SupplyAreaTotal() {
		return (EAttribute)ventilationEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVentilation_ExhaustAreaTotal() {
		return (EAttribute)ventilationEClass.getEStructuralFeatures().get(15);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVentilation_NaturalDraught() {
		return (EAttribute)ventilationEClass.getEStructuralFeatures().get(16);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVentilation_OutsideTemperature() {
		return (EAttribute)ventilationEClass.getEStructuralFeatures().get(17);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVentilation_CompartmentTemperature() {
		return (EAttribute)ventilationEClass.getEStructuralFeatures().get(18);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVentilation_AirInletTemperature() {
		return (EAttribute)ventilationEClass.getEStructuralFeatures().get(19);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVentilation_Depression() {
		return (EAttribute)ventilationEClass.getEStructuralFeatures().get(20);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVentilation_DesignAmbient() {
		return (EAttribute)ventilationEClass.getEStructuralFeatures().get(21);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVentilation_DuctsLowAndHigh() {
		return (EAttribute)ventilationEClass.getEStructuralFeatures().get(22);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVentilation_ClearOfExhaustOutlet() {
		return (EAttribute)ventilationEClass.getEStructuralFeatures().get(23);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVentilation_IgnitionProtectedComponents() {
		return (EAttribute)ventilationEClass.getEStructuralFeatures().get(24);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVentilation_CrankingMotorFitted() {
		return (EAttribute)ventilationEClass.getEStructuralFeatures().get(25);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVentilation_FanFlow() {
		return (EAttribute)ventilationEClass.getEStructuralFeatures().get(26);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getAirDuct() {
		return airDuctEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAirDuct_Name() {
		return (EAttribute)airDuctEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAirDuct_Function() {
		return (EAttribute)airDuctEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAirDuct_Area() {
		return (EAttribute)airDuctEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAirDuct_EndFittingArea() {
		return (EAttribute)airDuctEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAirDuct_Flexible() {
		return (EAttribute)airDuctEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAirDuct_MouthHeight() {
		return (EAttribute)airDuctEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAirDuct_TerminatesOutside() {
		return (EAttribute)airDuctEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getMounting() {
		return mountingEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMounting_BedsRigid() {
		return (EAttribute)mountingEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMounting_MountsAligned() {
		return (EAttribute)mountingEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMounting_ClearanceAround() {
		return (EAttribute)mountingEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMounting_FlexibleConnections() {
		return (EAttribute)mountingEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMounting_DripTray() {
		return (EAttribute)mountingEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMounting_AccessForService() {
		return (EAttribute)mountingEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMounting_BondingConductor() {
		return (EAttribute)mountingEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMounting_BondedToCommonGround() {
		return (EAttribute)mountingEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMounting_CommonNegativeLink() {
		return (EAttribute)mountingEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMounting_DcNegativeIsolated() {
		return (EAttribute)mountingEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMounting_InstalledAngleFore() {
		return (EAttribute)mountingEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMounting_InstalledAngleSide() {
		return (EAttribute)mountingEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMounting_HeightAboveBilge() {
		return (EAttribute)mountingEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMounting_AnodesFitted() {
		return (EAttribute)mountingEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMounting_LabelsPosted() {
		return (EAttribute)mountingEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMounting_RotatingPartsGuarded() {
		return (EAttribute)mountingEClass.getEStructuralFeatures().get(15);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getAcOutput() {
		return acOutputEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getAcOutput_Transfer() {
		return (EReference)acOutputEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAcOutput_ProtectionDevice() {
		return (EAttribute)acOutputEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAcOutput_ProtectionRating() {
		return (EAttribute)acOutputEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAcOutput_TripCurve() {
		return (EAttribute)acOutputEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAcOutput_ProtectionPoles() {
		return (EAttribute)acOutputEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAcOutput_ProtectionDistance() {
		return (EAttribute)acOutputEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAcOutput_ResidualCurrentDevice() {
		return (EAttribute)acOutputEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAcOutput_ResidualTripCurrent() {
		return (EAttribute)acOutputEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAcOutput_ResidualTripTime() {
		return (EAttribute)acOutputEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getAcOutput_OutputCable() {
		return (EReference)acOutputEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAcOutput_NeutralBond() {
		return (EAttribute)acOutputEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAcOutput_ProtectiveConductorSize() {
		return (EAttribute)acOutputEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAcOutput_ProtectiveConductorResistance() {
		return (EAttribute)acOutputEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAcOutput_NeutralGroundConductorSize() {
		return (EAttribute)acOutputEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAcOutput_InsulationResistance() {
		return (EAttribute)acOutputEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAcOutput_InsulationTemperature() {
		return (EAttribute)acOutputEClass.getEStructuralFeatures().get(15);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAcOutput_PolarityIndicator() {
		return (EAttribute)acOutputEClass.getEStructuralFeatures().get(16);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAcOutput_PolarityTested() {
		return (EAttribute)acOutputEClass.getEStructuralFeatures().get(17);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAcOutput_Voltmeter() {
		return (EAttribute)acOutputEClass.getEStructuralFeatures().get(18);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAcOutput_Ammeter() {
		return (EAttribute)acOutputEClass.getEStructuralFeatures().get(19);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAcOutput_FrequencyMeter() {
		return (EAttribute)acOutputEClass.getEStructuralFeatures().get(20);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAcOutput_NamePlateReadable() {
		return (EAttribute)acOutputEClass.getEStructuralFeatures().get(21);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAcOutput_EarthedPartsBonded() {
		return (EAttribute)acOutputEClass.getEStructuralFeatures().get(22);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAcOutput_GroundDetection() {
		return (EAttribute)acOutputEClass.getEStructuralFeatures().get(23);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getAcOutput_Loads() {
		return (EReference)acOutputEClass.getEStructuralFeatures().get(24);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAcOutput_NoLoadVoltage() {
		return (EAttribute)acOutputEClass.getEStructuralFeatures().get(25);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAcOutput_NoLoadFrequency() {
		return (EAttribute)acOutputEClass.getEStructuralFeatures().get(26);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAcOutput_LegACurrent() {
		return (EAttribute)acOutputEClass.getEStructuralFeatures().get(27);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAcOutput_LegBCurrent() {
		return (EAttribute)acOutputEClass.getEStructuralFeatures().get(28);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAcOutput_ShoreInletResidualDevice() {
		return (EAttribute)acOutputEClass.getEStructuralFeatures().get(29);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getTransferSwitch() {
		return transferSwitchEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTransferSwitch_Kind() {
		return (EAttribute)transferSwitchEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTransferSwitch_Poles() {
		return (EAttribute)transferSwitchEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTransferSwitch_Interlocked() {
		return (EAttribute)transferSwitchEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTransferSwitch_BackFeedVoltage() {
		return (EAttribute)transferSwitchEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTransferSwitch_Tested() {
		return (EAttribute)transferSwitchEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTransferSwitch_RatedCurrent() {
		return (EAttribute)transferSwitchEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getElectricalLoad() {
		return electricalLoadEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getElectricalLoad_Name() {
		return (EAttribute)electricalLoadEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getElectricalLoad_Kind() {
		return (EAttribute)electricalLoadEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getElectricalLoad_Power() {
		return (EAttribute)electricalLoadEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getElectricalLoad_Efficiency() {
		return (EAttribute)electricalLoadEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getElectricalLoad_PowerFactor() {
		return (EAttribute)electricalLoadEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getElectricalLoad_DemandFactor() {
		return (EAttribute)electricalLoadEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getElectricalLoad_Group() {
		return (EAttribute)electricalLoadEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getElectricalLoad_ExclusiveWith() {
		return (EAttribute)electricalLoadEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getElectricalLoad_Phase() {
		return (EAttribute)electricalLoadEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getElectricalLoad_MotorHorsepower() {
		return (EAttribute)electricalLoadEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getElectricalLoad_CodeLetter() {
		return (EAttribute)electricalLoadEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getElectricalLoad_LockedRotorCurrent() {
		return (EAttribute)electricalLoadEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getElectricalLoad_Starting() {
		return (EAttribute)electricalLoadEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getElectricalLoad_Voltage() {
		return (EAttribute)electricalLoadEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getElectricalLoad_Condition() {
		return (EAttribute)electricalLoadEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getAlarmsAndSafety() {
		return alarmsAndSafetyEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getAlarmsAndSafety_Alarms() {
		return (EReference)alarmsAndSafetyEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAlarmsAndSafety_CarbonMonoxideInEverySpace() {
		return (EAttribute)alarmsAndSafetyEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAlarmsAndSafety_CarbonMonoxideMarked() {
		return (EAttribute)alarmsAndSafetyEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAlarmsAndSafety_CarbonMonoxideExpiry() {
		return (EAttribute)alarmsAndSafetyEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAlarmsAndSafety_CarbonMonoxideAlwaysPowered() {
		return (EAttribute)alarmsAndSafetyEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAlarmsAndSafety_HabitableSpaces() {
		return (EAttribute)alarmsAndSafetyEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAlarmsAndSafety_CarbonMonoxideAlarms() {
		return (EAttribute)alarmsAndSafetyEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAlarmsAndSafety_VapourDetector() {
		return (EAttribute)alarmsAndSafetyEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAlarmsAndSafety_VapourSensorLow() {
		return (EAttribute)alarmsAndSafetyEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAlarmsAndSafety_VapourBeforeStart() {
		return (EAttribute)alarmsAndSafetyEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAlarmsAndSafety_FireExtinguisher() {
		return (EAttribute)alarmsAndSafetyEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAlarmsAndSafety_FixedFireSystem() {
		return (EAttribute)alarmsAndSafetyEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAlarmsAndSafety_FireSystemStopsSet() {
		return (EAttribute)alarmsAndSafetyEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAlarmsAndSafety_FireDischargePort() {
		return (EAttribute)alarmsAndSafetyEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAlarmsAndSafety_RemoteStop() {
		return (EAttribute)alarmsAndSafetyEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAlarmsAndSafety_WarningLabels() {
		return (EAttribute)alarmsAndSafetyEClass.getEStructuralFeatures().get(15);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getAlarmDevice() {
		return alarmDeviceEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAlarmDevice_Kind() {
		return (EAttribute)alarmDeviceEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAlarmDevice_Location() {
		return (EAttribute)alarmDeviceEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAlarmDevice_Setting() {
		return (EAttribute)alarmDeviceEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAlarmDevice_TestResult() {
		return (EAttribute)alarmDeviceEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAlarmDevice_TestedOn() {
		return (EAttribute)alarmDeviceEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAlarmDevice_ExpiresOn() {
		return (EAttribute)alarmDeviceEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getInspectionAnswer() {
		return inspectionAnswerEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getInspectionAnswer_Question() {
		return (EAttribute)inspectionAnswerEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getInspectionAnswer_Answer() {
		return (EAttribute)inspectionAnswerEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getInspectionAnswer_Note() {
		return (EAttribute)inspectionAnswerEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getInspectionAnswer_AnsweredBy() {
		return (EAttribute)inspectionAnswerEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getInspectionAnswer_AnsweredOn() {
		return (EAttribute)inspectionAnswerEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getInspectionAnswer_Photographs() {
		return (EReference)inspectionAnswerEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getTrial() {
		return trialEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTrial_Date() {
		return (EAttribute)trialEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTrial_Place() {
		return (EAttribute)trialEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTrial_Location() {
		return (EAttribute)trialEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTrial_People() {
		return (EAttribute)trialEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTrial_SeaTemperature() {
		return (EAttribute)trialEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTrial_OutsideTemperature() {
		return (EAttribute)trialEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTrial_BarometricPressure() {
		return (EAttribute)trialEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTrial_RelativeHumidity() {
		return (EAttribute)trialEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTrial_HeadOfWater() {
		return (EAttribute)trialEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getTrial_Procedure() {
		return (EReference)trialEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getTrial_Priming() {
		return (EReference)trialEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getTrial_Attempts() {
		return (EReference)trialEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getTrial_LoadSteps() {
		return (EReference)trialEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getTrial_ShutdownTests() {
		return (EReference)trialEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getTrial_SeaRun() {
		return (EReference)trialEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTrial_CoolantLevelCold() {
		return (EAttribute)trialEClass.getEStructuralFeatures().get(15);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTrial_CoolantLevelHot() {
		return (EAttribute)trialEClass.getEStructuralFeatures().get(16);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTrial_CoolantLevelColdAgain() {
		return (EAttribute)trialEClass.getEStructuralFeatures().get(17);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTrial_LeaksCold() {
		return (EAttribute)trialEClass.getEStructuralFeatures().get(18);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTrial_LeaksHot() {
		return (EAttribute)trialEClass.getEStructuralFeatures().get(19);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTrial_WaterAtOutletAfter() {
		return (EAttribute)trialEClass.getEStructuralFeatures().get(20);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTrial_OilPressureAfter() {
		return (EAttribute)trialEClass.getEStructuralFeatures().get(21);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTrial_MufflerLevelChecked() {
		return (EAttribute)trialEClass.getEStructuralFeatures().get(22);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTrial_Remarks() {
		return (EAttribute)trialEClass.getEStructuralFeatures().get(23);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTrial_CarbonMonoxideCabin() {
		return (EAttribute)trialEClass.getEStructuralFeatures().get(24);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getProcedureStep() {
		return procedureStepEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getProcedureStep_Number() {
		return (EAttribute)procedureStepEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getProcedureStep_Step() {
		return (EAttribute)procedureStepEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getProcedureStep_Done() {
		return (EAttribute)procedureStepEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getProcedureStep_At() {
		return (EAttribute)procedureStepEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getProcedureStep_Note() {
		return (EAttribute)procedureStepEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getFuelPriming() {
		return fuelPrimingEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelPriming_KeyCycles() {
		return (EAttribute)fuelPrimingEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelPriming_CycleTime() {
		return (EAttribute)fuelPrimingEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelPriming_FeedPressure() {
		return (EAttribute)fuelPrimingEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelPriming_RailPressure() {
		return (EAttribute)fuelPrimingEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelPriming_HeldFor() {
		return (EAttribute)fuelPrimingEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelPriming_BubblesGone() {
		return (EAttribute)fuelPrimingEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFuelPriming_Leaks() {
		return (EAttribute)fuelPrimingEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getCrankingAttempt() {
		return crankingAttemptEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCrankingAttempt_At() {
		return (EAttribute)crankingAttemptEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCrankingAttempt_Duration() {
		return (EAttribute)crankingAttemptEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCrankingAttempt_Rest() {
		return (EAttribute)crankingAttemptEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCrankingAttempt_Seacock() {
		return (EAttribute)crankingAttemptEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCrankingAttempt_Fired() {
		return (EAttribute)crankingAttemptEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCrankingAttempt_LowestVoltage() {
		return (EAttribute)crankingAttemptEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCrankingAttempt_MufflerDrained() {
		return (EAttribute)crankingAttemptEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getLoadStep() {
		return loadStepEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLoadStep_Load() {
		return (EAttribute)loadStepEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLoadStep_Dwell() {
		return (EAttribute)loadStepEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getLoadStep_Readings() {
		return (EReference)loadStepEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLoadStep_Remarks() {
		return (EAttribute)loadStepEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getReading() {
		return readingEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReading_At() {
		return (EAttribute)readingEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReading_Voltage1() {
		return (EAttribute)readingEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReading_Voltage2() {
		return (EAttribute)readingEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReading_Voltage3() {
		return (EAttribute)readingEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReading_Current1() {
		return (EAttribute)readingEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReading_Current2() {
		return (EAttribute)readingEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReading_Current3() {
		return (EAttribute)readingEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReading_Frequency() {
		return (EAttribute)readingEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReading_Power() {
		return (EAttribute)readingEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReading_PowerFactor() {
		return (EAttribute)readingEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReading_OilPressure() {
		return (EAttribute)readingEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReading_CoolantTemperature() {
		return (EAttribute)readingEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReading_RawWaterIn() {
		return (EAttribute)readingEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReading_RawWaterOut() {
		return (EAttribute)readingEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReading_ExhaustMixed() {
		return (EAttribute)readingEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReading_ExhaustDry() {
		return (EAttribute)readingEClass.getEStructuralFeatures().get(15);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReading_BackPressure() {
		return (EAttribute)readingEClass.getEStructuralFeatures().get(16);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReading_CompartmentTemperature() {
		return (EAttribute)readingEClass.getEStructuralFeatures().get(17);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReading_OutsideTemperature() {
		return (EAttribute)readingEClass.getEStructuralFeatures().get(18);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReading_CompartmentDepression() {
		return (EAttribute)readingEClass.getEStructuralFeatures().get(19);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReading_FuelVacuum() {
		return (EAttribute)readingEClass.getEStructuralFeatures().get(20);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReading_RawWaterVacuum() {
		return (EAttribute)readingEClass.getEStructuralFeatures().get(21);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReading_RawWaterFlow() {
		return (EAttribute)readingEClass.getEStructuralFeatures().get(22);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReading_BatteryVoltage() {
		return (EAttribute)readingEClass.getEStructuralFeatures().get(23);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReading_ChargeCurrent() {
		return (EAttribute)readingEClass.getEStructuralFeatures().get(24);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReading_CarbonMonoxide() {
		return (EAttribute)readingEClass.getEStructuralFeatures().get(25);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReading_Smoke() {
		return (EAttribute)readingEClass.getEStructuralFeatures().get(26);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReading_Note() {
		return (EAttribute)readingEClass.getEStructuralFeatures().get(27);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReading_Instruments() {
		return (EAttribute)readingEClass.getEStructuralFeatures().get(28);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getSeaRun() {
		return seaRunEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSeaRun_Date() {
		return (EAttribute)seaRunEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSeaRun_HeelPort() {
		return (EAttribute)seaRunEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSeaRun_HeelStarboard() {
		return (EAttribute)seaRunEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSeaRun_TrimUp() {
		return (EAttribute)seaRunEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSeaRun_TrimDown() {
		return (EAttribute)seaRunEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSeaRun_Speed() {
		return (EAttribute)seaRunEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSeaRun_WaterFlowing() {
		return (EAttribute)seaRunEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSeaRun_WaterOverCrest() {
		return (EAttribute)seaRunEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSeaRun_WaterInMuffler() {
		return (EAttribute)seaRunEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSeaRun_Difference() {
		return (EAttribute)seaRunEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSeaRun_Duration() {
		return (EAttribute)seaRunEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getUpkeep() {
		return upkeepEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getUpkeep_Tasks() {
		return (EReference)upkeepEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getUpkeep_Consumables() {
		return (EReference)upkeepEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getUpkeep_AnnualHours() {
		return (EAttribute)upkeepEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getUpkeepTask() {
		return upkeepTaskEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getUpkeepTask_Task() {
		return (EAttribute)upkeepTaskEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getUpkeepTask_EveryHours() {
		return (EAttribute)upkeepTaskEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getUpkeepTask_EveryMonths() {
		return (EAttribute)upkeepTaskEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getUpkeepTask_LastDoneOn() {
		return (EAttribute)upkeepTaskEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getUpkeepTask_LastDoneHours() {
		return (EAttribute)upkeepTaskEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getUpkeepTask_Note() {
		return (EAttribute)upkeepTaskEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getConsumable() {
		return consumableEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getConsumable_Name() {
		return (EAttribute)consumableEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getConsumable_PartNumber() {
		return (EAttribute)consumableEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getConsumable_Quantity() {
		return (EAttribute)consumableEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getAcceptance() {
		return acceptanceEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAcceptance_Check() {
		return (EAttribute)acceptanceEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAcceptance_Subject() {
		return (EAttribute)acceptanceEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAcceptance_Reason() {
		return (EAttribute)acceptanceEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAcceptance_AcceptedBy() {
		return (EAttribute)acceptanceEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAcceptance_AcceptedOn() {
		return (EAttribute)acceptanceEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAcceptance_Until() {
		return (EAttribute)acceptanceEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getSignature() {
		return signatureEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSignature_Role() {
		return (EAttribute)signatureEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSignature_Name() {
		return (EAttribute)signatureEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSignature_Licence() {
		return (EAttribute)signatureEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSignature_Place() {
		return (EAttribute)signatureEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSignature_SignedOn() {
		return (EAttribute)signatureEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSignature_Statement() {
		return (EAttribute)signatureEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSignature_Verdicts() {
		return (EReference)signatureEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getUnreadEntry() {
		return unreadEntryEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getUnreadEntry_Place() {
		return (EAttribute)unreadEntryEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getUnreadEntry_Text() {
		return (EAttribute)unreadEntryEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getStoredVerdict() {
		return storedVerdictEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStoredVerdict_Check() {
		return (EAttribute)storedVerdictEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStoredVerdict_Subject() {
		return (EAttribute)storedVerdictEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStoredVerdict_Standing() {
		return (EAttribute)storedVerdictEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStoredVerdict_Measured() {
		return (EAttribute)storedVerdictEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStoredVerdict_Limit() {
		return (EAttribute)storedVerdictEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStoredVerdict_Margin() {
		return (EAttribute)storedVerdictEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getAnswer() {
		return answerEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getPartyRole() {
		return partyRoleEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getHullKind() {
		return hullKindEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getHullMaterial() {
		return hullMaterialEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getVesselService() {
		return vesselServiceEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getFuelKind() {
		return fuelKindEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getAspiration() {
		return aspirationEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getFuelSystem() {
		return fuelSystemEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getCooling() {
		return coolingEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getPhaseSystem() {
		return phaseSystemEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getDutyRating() {
		return dutyRatingEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getPerformanceClass() {
		return performanceClassEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getBatteryChemistry() {
		return batteryChemistryEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getCrankingRatingDefinition() {
		return crankingRatingDefinitionEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getTerminalKind() {
		return terminalKindEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getCableFunction() {
		return cableFunctionEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getStrandClass() {
		return strandClassEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getInsulationRating() {
		return insulationRatingEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getProtectionKind() {
		return protectionKindEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getTankMaterial() {
		return tankMaterialEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getFuelLineFunction() {
		return fuelLineFunctionEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getFuelLineKind() {
		return fuelLineKindEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getBowlKind() {
		return bowlKindEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getAntiSiphonProtection() {
		return antiSiphonProtectionEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getStrainerPickUp() {
		return strainerPickUpEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getValveKind() {
		return valveKindEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getFittingMaterial() {
		return fittingMaterialEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getWaterHoseKind() {
		return waterHoseKindEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getWaterSection() {
		return waterSectionEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getPipeFittingKind() {
		return pipeFittingKindEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getSiphonBreakKind() {
		return siphonBreakKindEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getSiphonBreakPlace() {
		return siphonBreakPlaceEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getVentHoseEnd() {
		return ventHoseEndEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getExhaustSection() {
		return exhaustSectionEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getExhaustHoseStandard() {
		return exhaustHoseStandardEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getExhaustBendKind() {
		return exhaustBendKindEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getMufflerKind() {
		return mufflerKindEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getOutletPlace() {
		return outletPlaceEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getAntiSurge() {
		return antiSurgeEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getDuctFunction() {
		return ductFunctionEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getNeutralBond() {
		return neutralBondEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getTransferKind() {
		return transferKindEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getPolesSwitched() {
		return polesSwitchedEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getTripCurve() {
		return tripCurveEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getLoadKind() {
		return loadKindEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getMotorStarting() {
		return motorStartingEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getAlarmKind() {
		return alarmKindEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getTestResult() {
		return testResultEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getSeacockState() {
		return seacockStateEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getTrialPlace() {
		return trialPlaceEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getSignatureRole() {
		return signatureRoleEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getSmokeColour() {
		return smokeColourEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getLength() {
		return lengthEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getArea() {
		return areaEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getVolume() {
		return volumeEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getMass() {
		return massEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getAngle() {
		return angleEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getSlope() {
		return slopeEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getSpeed() {
		return speedEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getTimeSpan() {
		return timeSpanEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getFrequency() {
		return frequencyEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getRotationalSpeed() {
		return rotationalSpeedEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getAbsolutePressure() {
		return absolutePressureEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getGaugePressure() {
		return gaugePressureEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getPressureDifference() {
		return pressureDifferenceEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getTemperature() {
		return temperatureEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getTemperatureDifference() {
		return temperatureDifferenceEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getVolumeFlow() {
		return volumeFlowEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getMassFlow() {
		return massFlowEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getPower() {
		return powerEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getApparentPower() {
		return apparentPowerEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getVoltage() {
		return voltageEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getCurrent() {
		return currentEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getResistance() {
		return resistanceEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getCharge() {
		return chargeEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getSpecificConsumption() {
		return specificConsumptionEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getRatio() {
		return ratioEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getDate() {
		return dateEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getDateTime() {
		return dateTimeEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getText() {
		return textEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public GarboardFactory getGarboardFactory() {
		return (GarboardFactory)getEFactoryInstance();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private boolean isCreated = false;

	/**
	 * Creates the meta-model objects for the package.  This method is
	 * guarded to have no affect on any invocation but its first.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public void createPackageContents() {
		if (isCreated) return;
		isCreated = true;

		// Create classes and their features
		itemEClass = createEClass(ITEM);
		createEAttribute(itemEClass, ITEM__ID);

		pointEClass = createEClass(POINT);
		createEAttribute(pointEClass, POINT__X);
		createEAttribute(pointEClass, POINT__Y);
		createEAttribute(pointEClass, POINT__Z);

		commissioningRecordEClass = createEClass(COMMISSIONING_RECORD);
		createEAttribute(commissioningRecordEClass, COMMISSIONING_RECORD__FORMAT_VERSION);
		createEAttribute(commissioningRecordEClass, COMMISSIONING_RECORD__RECORD_NUMBER);
		createEAttribute(commissioningRecordEClass, COMMISSIONING_RECORD__TITLE);
		createEAttribute(commissioningRecordEClass, COMMISSIONING_RECORD__CREATED_ON);
		createEAttribute(commissioningRecordEClass, COMMISSIONING_RECORD__PRACTICES);
		createEAttribute(commissioningRecordEClass, COMMISSIONING_RECORD__REMARKS);
		createEReference(commissioningRecordEClass, COMMISSIONING_RECORD__INSTRUMENTS);
		createEReference(commissioningRecordEClass, COMMISSIONING_RECORD__PARTIES);
		createEReference(commissioningRecordEClass, COMMISSIONING_RECORD__VESSEL);
		createEReference(commissioningRecordEClass, COMMISSIONING_RECORD__GENERATOR_SET);
		createEReference(commissioningRecordEClass, COMMISSIONING_RECORD__STARTING_BATTERY);
		createEReference(commissioningRecordEClass, COMMISSIONING_RECORD__FUEL_SUPPLY);
		createEReference(commissioningRecordEClass, COMMISSIONING_RECORD__RAW_WATER);
		createEReference(commissioningRecordEClass, COMMISSIONING_RECORD__EXHAUST);
		createEReference(commissioningRecordEClass, COMMISSIONING_RECORD__VENTILATION);
		createEReference(commissioningRecordEClass, COMMISSIONING_RECORD__MOUNTING);
		createEReference(commissioningRecordEClass, COMMISSIONING_RECORD__AC_OUTPUT);
		createEReference(commissioningRecordEClass, COMMISSIONING_RECORD__ALARMS);
		createEReference(commissioningRecordEClass, COMMISSIONING_RECORD__INSPECTIONS);
		createEReference(commissioningRecordEClass, COMMISSIONING_RECORD__TRIAL);
		createEReference(commissioningRecordEClass, COMMISSIONING_RECORD__UPKEEP);
		createEReference(commissioningRecordEClass, COMMISSIONING_RECORD__ACCEPTANCES);
		createEReference(commissioningRecordEClass, COMMISSIONING_RECORD__SIGNATURES);
		createEReference(commissioningRecordEClass, COMMISSIONING_RECORD__PHOTOGRAPHS);
		createEReference(commissioningRecordEClass, COMMISSIONING_RECORD__REVISIONS);
		createEReference(commissioningRecordEClass, COMMISSIONING_RECORD__UNREAD_ENTRIES);

		revisionEClass = createEClass(REVISION);
		createEAttribute(revisionEClass, REVISION__NUMBER);
		createEAttribute(revisionEClass, REVISION__DATE);
		createEAttribute(revisionEClass, REVISION__BY);
		createEAttribute(revisionEClass, REVISION__DESCRIPTION);

		instrumentEClass = createEClass(INSTRUMENT);
		createEAttribute(instrumentEClass, INSTRUMENT__NAME);
		createEAttribute(instrumentEClass, INSTRUMENT__SERIAL_NUMBER);
		createEAttribute(instrumentEClass, INSTRUMENT__MEASURES);
		createEAttribute(instrumentEClass, INSTRUMENT__ACCURACY_STATED);
		createEAttribute(instrumentEClass, INSTRUMENT__CALIBRATED_ON);

		partyEClass = createEClass(PARTY);
		createEAttribute(partyEClass, PARTY__ROLE);
		createEAttribute(partyEClass, PARTY__NAME);
		createEAttribute(partyEClass, PARTY__ORGANISATION);
		createEAttribute(partyEClass, PARTY__LICENCE);
		createEAttribute(partyEClass, PARTY__CONTACT);

		photographEClass = createEClass(PHOTOGRAPH);
		createEAttribute(photographEClass, PHOTOGRAPH__CAPTION);
		createEAttribute(photographEClass, PHOTOGRAPH__TAKEN_ON);
		createEAttribute(photographEClass, PHOTOGRAPH__MEDIA_TYPE);
		createEAttribute(photographEClass, PHOTOGRAPH__DATA);

		vesselEClass = createEClass(VESSEL);
		createEAttribute(vesselEClass, VESSEL__NAME);
		createEAttribute(vesselEClass, VESSEL__IDENTIFICATION);
		createEAttribute(vesselEClass, VESSEL__FLAG);
		createEAttribute(vesselEClass, VESSEL__HULL_KIND);
		createEAttribute(vesselEClass, VESSEL__HULL_MATERIAL);
		createEAttribute(vesselEClass, VESSEL__SERVICE);
		createEAttribute(vesselEClass, VESSEL__BUILT_ON);
		createEAttribute(vesselEClass, VESSEL__LENGTH_OVERALL);
		createEAttribute(vesselEClass, VESSEL__WATERLINE_LENGTH);
		createEAttribute(vesselEClass, VESSEL__BEAM);
		createEAttribute(vesselEClass, VESSEL__DRAUGHT);
		createEAttribute(vesselEClass, VESSEL__FREEBOARD_AMIDSHIPS);
		createEAttribute(vesselEClass, VESSEL__PASSENGERS);
		createEAttribute(vesselEClass, VESSEL__OVERNIGHT_PASSENGERS);
		createEAttribute(vesselEClass, VESSEL__SPEED);
		createEAttribute(vesselEClass, VESSEL__DESIGN_HEEL);
		createEAttribute(vesselEClass, VESSEL__DESIGN_ROLL);
		createEAttribute(vesselEClass, VESSEL__DESIGN_TRIM);
		createEAttribute(vesselEClass, VESSEL__SINKAGE);
		createEAttribute(vesselEClass, VESSEL__GASOLINE_ENGINE_ABOARD);
		createEAttribute(vesselEClass, VESSEL__GASOLINE_ENGINES);

		generatorSetEClass = createEClass(GENERATOR_SET);
		createEAttribute(generatorSetEClass, GENERATOR_SET__MAKER);
		createEAttribute(generatorSetEClass, GENERATOR_SET__TYPE);
		createEAttribute(generatorSetEClass, GENERATOR_SET__SERIAL_NUMBER);
		createEAttribute(generatorSetEClass, GENERATOR_SET__ENGINE_SERIAL_NUMBER);
		createEAttribute(generatorSetEClass, GENERATOR_SET__ALTERNATOR_SERIAL_NUMBER);
		createEAttribute(generatorSetEClass, GENERATOR_SET__SOLD_ON);
		createEAttribute(generatorSetEClass, GENERATOR_SET__INSTALLED_ON);
		createEAttribute(generatorSetEClass, GENERATOR_SET__HOUR_METER);
		createEAttribute(generatorSetEClass, GENERATOR_SET__FUEL);
		createEAttribute(generatorSetEClass, GENERATOR_SET__FUEL_SYSTEM);
		createEAttribute(generatorSetEClass, GENERATOR_SET__ASPIRATION);
		createEAttribute(generatorSetEClass, GENERATOR_SET__COOLING);
		createEAttribute(generatorSetEClass, GENERATOR_SET__DUTY_RATING);
		createEAttribute(generatorSetEClass, GENERATOR_SET__RATED_POWER);
		createEAttribute(generatorSetEClass, GENERATOR_SET__RATED_APPARENT_POWER);
		createEAttribute(generatorSetEClass, GENERATOR_SET__RATED_POWER_FACTOR);
		createEAttribute(generatorSetEClass, GENERATOR_SET__RATED_VOLTAGE);
		createEAttribute(generatorSetEClass, GENERATOR_SET__RATED_FREQUENCY);
		createEAttribute(generatorSetEClass, GENERATOR_SET__PHASES);
		createEAttribute(generatorSetEClass, GENERATOR_SET__RATED_SPEED);
		createEAttribute(generatorSetEClass, GENERATOR_SET__POLES);
		createEAttribute(generatorSetEClass, GENERATOR_SET__CRANKING_SPEED);
		createEAttribute(generatorSetEClass, GENERATOR_SET__SHAFT_POWER);
		createEAttribute(generatorSetEClass, GENERATOR_SET__ALTERNATOR_EFFICIENCY);
		createEAttribute(generatorSetEClass, GENERATOR_SET__FUEL_CONSUMPTION_FULL_LOAD);
		createEAttribute(generatorSetEClass, GENERATOR_SET__SPECIFIC_FUEL_CONSUMPTION);
		createEAttribute(generatorSetEClass, GENERATOR_SET__AIR_FUEL_RATIO);
		createEAttribute(generatorSetEClass, GENERATOR_SET__EXHAUST_GAS_TEMPERATURE);
		createEAttribute(generatorSetEClass, GENERATOR_SET__EXHAUST_MASS_FLOW);
		createEAttribute(generatorSetEClass, GENERATOR_SET__HEAT_TO_COOLANT);
		createEAttribute(generatorSetEClass, GENERATOR_SET__HEAT_TO_COMPARTMENT);
		createEAttribute(generatorSetEClass, GENERATOR_SET__COMBUSTION_AIR_FLOW);
		createEAttribute(generatorSetEClass, GENERATOR_SET__RAW_WATER_FLOW);
		createEAttribute(generatorSetEClass, GENERATOR_SET__SYSTEM_VOLTAGE);
		createEAttribute(generatorSetEClass, GENERATOR_SET__CRANKING_CURRENT);
		createEAttribute(generatorSetEClass, GENERATOR_SET__STARTER_VOLTAGE);
		createEAttribute(generatorSetEClass, GENERATOR_SET__IN_SOUND_SHIELD);
		createEAttribute(generatorSetEClass, GENERATOR_SET__OVERLOAD_DECLARED);
		createEAttribute(generatorSetEClass, GENERATOR_SET__EMISSION_LABEL_MARINE);
		createEAttribute(generatorSetEClass, GENERATOR_SET__PERFORMANCE_CLASS);
		createEAttribute(generatorSetEClass, GENERATOR_SET__DESIGN_AMBIENT);
		createEAttribute(generatorSetEClass, GENERATOR_SET__SUBTRANSIENT_REACTANCE);
		createEAttribute(generatorSetEClass, GENERATOR_SET__TRANSIENT_REACTANCE);
		createEAttribute(generatorSetEClass, GENERATOR_SET__SUSTAINED_SHORT_CIRCUIT_MULTIPLE);
		createEAttribute(generatorSetEClass, GENERATOR_SET__ANNUAL_HOURS);
		createEAttribute(generatorSetEClass, GENERATOR_SET__PLATE_SHOWS_DERATED_POWER);
		createEReference(generatorSetEClass, GENERATOR_SET__MAKER_LIMITS);

		makerLimitsEClass = createEClass(MAKER_LIMITS);
		createEAttribute(makerLimitsEClass, MAKER_LIMITS__DOCUMENT);
		createEAttribute(makerLimitsEClass, MAKER_LIMITS__DOCUMENT_PAGE);
		createEAttribute(makerLimitsEClass, MAKER_LIMITS__MAXIMUM_BACK_PRESSURE);
		createEAttribute(makerLimitsEClass, MAKER_LIMITS__MAXIMUM_LIFT_HEIGHT);
		createEAttribute(makerLimitsEClass, MAKER_LIMITS__MINIMUM_SIPHON_BREAK_HEIGHT);
		createEAttribute(makerLimitsEClass, MAKER_LIMITS__MINIMUM_SIPHON_CLEARANCE_HEELED);
		createEAttribute(makerLimitsEClass, MAKER_LIMITS__SIPHON_BREAK_NEEDED_BELOW);
		createEAttribute(makerLimitsEClass, MAKER_LIMITS__MINIMUM_INJECTION_DROP);
		createEAttribute(makerLimitsEClass, MAKER_LIMITS__MINIMUM_EXHAUST_FALL);
		createEAttribute(makerLimitsEClass, MAKER_LIMITS__MINIMUM_EXHAUST_BORE);
		createEAttribute(makerLimitsEClass, MAKER_LIMITS__MAXIMUM_EXHAUST_LENGTH);
		createEAttribute(makerLimitsEClass, MAKER_LIMITS__MINIMUM_MUFFLER_VOLUME);
		createEAttribute(makerLimitsEClass, MAKER_LIMITS__MINIMUM_RAW_WATER_FLOW);
		createEAttribute(makerLimitsEClass, MAKER_LIMITS__MAXIMUM_RAW_WATER_SUCTION_HEAD);
		createEAttribute(makerLimitsEClass, MAKER_LIMITS__MAXIMUM_RAW_WATER_VACUUM);
		createEAttribute(makerLimitsEClass, MAKER_LIMITS__MAXIMUM_RAW_WATER_INLET_PRESSURE);
		createEAttribute(makerLimitsEClass, MAKER_LIMITS__MINIMUM_RAW_WATER_HOSE_BORE);
		createEAttribute(makerLimitsEClass, MAKER_LIMITS__MAXIMUM_FUEL_LIFT);
		createEAttribute(makerLimitsEClass, MAKER_LIMITS__MAXIMUM_FUEL_VACUUM);
		createEAttribute(makerLimitsEClass, MAKER_LIMITS__MINIMUM_FUEL_LINE_BORE);
		createEAttribute(makerLimitsEClass, MAKER_LIMITS__REQUIRED_SEPARATOR_FLOW);
		createEAttribute(makerLimitsEClass, MAKER_LIMITS__FILTER_FINENESS);
		createEAttribute(makerLimitsEClass, MAKER_LIMITS__MINIMUM_BATTERY_CC_A);
		createEAttribute(makerLimitsEClass, MAKER_LIMITS__MINIMUM_BATTERY_CAPACITY);
		createEAttribute(makerLimitsEClass, MAKER_LIMITS__BATTERY_CRANKING_DEFINITION);
		createEAttribute(makerLimitsEClass, MAKER_LIMITS__MAXIMUM_CRANKING_CIRCUIT_RESISTANCE);
		createEAttribute(makerLimitsEClass, MAKER_LIMITS__MINIMUM_CRANKING_VOLTAGE);
		createEAttribute(makerLimitsEClass, MAKER_LIMITS__FEED_PRESSURE_LOW);
		createEAttribute(makerLimitsEClass, MAKER_LIMITS__FEED_PRESSURE_HIGH);
		createEAttribute(makerLimitsEClass, MAKER_LIMITS__RAIL_PRESSURE_LOW);
		createEAttribute(makerLimitsEClass, MAKER_LIMITS__RAIL_PRESSURE_HIGH);
		createEAttribute(makerLimitsEClass, MAKER_LIMITS__MAXIMUM_CRANK_TIME);
		createEAttribute(makerLimitsEClass, MAKER_LIMITS__MAXIMUM_TOTAL_CRANK_TIME);
		createEAttribute(makerLimitsEClass, MAKER_LIMITS__MAXIMUM_COMPARTMENT_TEMPERATURE);
		createEAttribute(makerLimitsEClass, MAKER_LIMITS__MAXIMUM_COMPARTMENT_RISE);
		createEAttribute(makerLimitsEClass, MAKER_LIMITS__MAXIMUM_DEPRESSION);
		createEAttribute(makerLimitsEClass, MAKER_LIMITS__MAXIMUM_HEEL);
		createEAttribute(makerLimitsEClass, MAKER_LIMITS__MAXIMUM_TRIM);
		createEAttribute(makerLimitsEClass, MAKER_LIMITS__MAXIMUM_COOLANT_TEMPERATURE);
		createEAttribute(makerLimitsEClass, MAKER_LIMITS__MINIMUM_OIL_PRESSURE);
		createEAttribute(makerLimitsEClass, MAKER_LIMITS__MAXIMUM_EXHAUST_TEMPERATURE);
		createEAttribute(makerLimitsEClass, MAKER_LIMITS__MINIMUM_VENTILATION_AREA);

		startingBatteryEClass = createEClass(STARTING_BATTERY);
		createEAttribute(startingBatteryEClass, STARTING_BATTERY__CHEMISTRY);
		createEAttribute(startingBatteryEClass, STARTING_BATTERY__BLOCK_VOLTAGE);
		createEAttribute(startingBatteryEClass, STARTING_BATTERY__BLOCKS_IN_SERIES);
		createEAttribute(startingBatteryEClass, STARTING_BATTERY__STRINGS_IN_PARALLEL);
		createEAttribute(startingBatteryEClass, STARTING_BATTERY__BLOCK_CAPACITY);
		createEAttribute(startingBatteryEClass, STARTING_BATTERY__BLOCK_CRANKING_RATING);
		createEAttribute(startingBatteryEClass, STARTING_BATTERY__CRANKING_RATING_DEFINITION);
		createEAttribute(startingBatteryEClass, STARTING_BATTERY__INSTALLED_ON);
		createEAttribute(startingBatteryEClass, STARTING_BATTERY__BLOCK_MASS);
		createEAttribute(startingBatteryEClass, STARTING_BATTERY__BATTERY_TEMPERATURE);
		createEAttribute(startingBatteryEClass, STARTING_BATTERY__REST_TIME);
		createEAttribute(startingBatteryEClass, STARTING_BATTERY__RESTED_VOLTAGE);
		createEAttribute(startingBatteryEClass, STARTING_BATTERY__COLDEST_START);
		createEReference(startingBatteryEClass, STARTING_BATTERY__BLOCKS);
		createEAttribute(startingBatteryEClass, STARTING_BATTERY__DEDICATED_TO_GENERATOR);
		createEAttribute(startingBatteryEClass, STARTING_BATTERY__ISOLATING_SWITCH);
		createEAttribute(startingBatteryEClass, STARTING_BATTERY__ISOLATING_SWITCH_REACHABLE);
		createEAttribute(startingBatteryEClass, STARTING_BATTERY__EMERGENCY_CROSS_CONNECT);
		createEAttribute(startingBatteryEClass, STARTING_BATTERY__SECURED);
		createEAttribute(startingBatteryEClass, STARTING_BATTERY__MOVEMENT_UNDER_TEST);
		createEAttribute(startingBatteryEClass, STARTING_BATTERY__TRAY_OR_BOX);
		createEAttribute(startingBatteryEClass, STARTING_BATTERY__POSITIVE_TERMINAL_COVERED);
		createEAttribute(startingBatteryEClass, STARTING_BATTERY__TERMINALS);
		createEAttribute(startingBatteryEClass, STARTING_BATTERY__VENTED_OVERBOARD);
		createEAttribute(startingBatteryEClass, STARTING_BATTERY__VENTILATION_AREA_EACH_WAY);
		createEAttribute(startingBatteryEClass, STARTING_BATTERY__DISTANCE_TO_STARTER);
		createEAttribute(startingBatteryEClass, STARTING_BATTERY__FUEL_PARTS_WITHIN_REACH);
		createEAttribute(startingBatteryEClass, STARTING_BATTERY__DIELECTRIC_SHIELD);
		createEAttribute(startingBatteryEClass, STARTING_BATTERY__ABOVE_OR_BELOW_FUEL_FITTINGS);
		createEAttribute(startingBatteryEClass, STARTING_BATTERY__HIGH_ABOVE_BILGE);
		createEAttribute(startingBatteryEClass, STARTING_BATTERY__CHARGER_RATED_CURRENT);
		createEAttribute(startingBatteryEClass, STARTING_BATTERY__CHARGER_VOLTAGE);
		createEAttribute(startingBatteryEClass, STARTING_BATTERY__CHARGING_VOLTAGE_RUNNING);
		createEAttribute(startingBatteryEClass, STARTING_BATTERY__CHARGER_AMMETER);
		createEAttribute(startingBatteryEClass, STARTING_BATTERY__SAME_TYPE_AND_AGE);
		createEReference(startingBatteryEClass, STARTING_BATTERY__CABLES);
		createEAttribute(startingBatteryEClass, STARTING_BATTERY__CRANKING_VOLTAGE_AT_POSTS);
		createEAttribute(startingBatteryEClass, STARTING_BATTERY__CRANKING_VOLTAGE_AT_STARTER);
		createEAttribute(startingBatteryEClass, STARTING_BATTERY__BLOCKS_MIXED);
		createEAttribute(startingBatteryEClass, STARTING_BATTERY__EMERGENCY_SOURCE);

		batteryBlockEClass = createEClass(BATTERY_BLOCK);
		createEAttribute(batteryBlockEClass, BATTERY_BLOCK__LABEL);
		createEAttribute(batteryBlockEClass, BATTERY_BLOCK__RESTED_VOLTAGE);
		createEAttribute(batteryBlockEClass, BATTERY_BLOCK__SPECIFIC_GRAVITY_LOW);
		createEAttribute(batteryBlockEClass, BATTERY_BLOCK__SPECIFIC_GRAVITY_HIGH);

		cableRunEClass = createEClass(CABLE_RUN);
		createEAttribute(cableRunEClass, CABLE_RUN__NAME);
		createEAttribute(cableRunEClass, CABLE_RUN__FUNCTION);
		createEAttribute(cableRunEClass, CABLE_RUN__CONDUCTOR_SIZE);
		createEAttribute(cableRunEClass, CABLE_RUN__STRAND_CLASS);
		createEAttribute(cableRunEClass, CABLE_RUN__INSULATION);
		createEAttribute(cableRunEClass, CABLE_RUN__LENGTH);
		createEAttribute(cableRunEClass, CABLE_RUN__CURRENT);
		createEAttribute(cableRunEClass, CABLE_RUN__SYSTEM_VOLTAGE);
		createEAttribute(cableRunEClass, CABLE_RUN__CRITICAL);
		createEAttribute(cableRunEClass, CABLE_RUN__IN_ENGINE_SPACE);
		createEAttribute(cableRunEClass, CABLE_RUN__CONDUCTORS_IN_BUNDLE);
		createEAttribute(cableRunEClass, CABLE_RUN__CONDUCTOR_TEMPERATURE);
		createEAttribute(cableRunEClass, CABLE_RUN__PROTECTION);
		createEAttribute(cableRunEClass, CABLE_RUN__PROTECTION_RATING);
		createEAttribute(cableRunEClass, CABLE_RUN__PROTECTION_VOLTAGE_RATING);
		createEAttribute(cableRunEClass, CABLE_RUN__PROTECTION_DISTANCE_FROM_SOURCE);
		createEAttribute(cableRunEClass, CABLE_RUN__SHEATHED_TO_PROTECTION);
		createEAttribute(cableRunEClass, CABLE_RUN__CONNECTED_TO_BATTERY_TERMINAL);
		createEAttribute(cableRunEClass, CABLE_RUN__SUPPORT_SPACING);
		createEAttribute(cableRunEClass, CABLE_RUN__RING_TERMINALS);
		createEAttribute(cableRunEClass, CABLE_RUN__LUGS_ON_STUD);
		createEAttribute(cableRunEClass, CABLE_RUN__CHAFE_PROTECTED);
		createEAttribute(cableRunEClass, CABLE_RUN__MULTI_STRAND_COPPER);
		createEAttribute(cableRunEClass, CABLE_RUN__MEASURED_DROP);

		fuelSupplyEClass = createEClass(FUEL_SUPPLY);
		createEReference(fuelSupplyEClass, FUEL_SUPPLY__TANK);
		createEReference(fuelSupplyEClass, FUEL_SUPPLY__LINES);
		createEReference(fuelSupplyEClass, FUEL_SUPPLY__SEPARATOR);
		createEReference(fuelSupplyEClass, FUEL_SUPPLY__PUMP_POSITION);
		createEAttribute(fuelSupplyEClass, FUEL_SUPPLY__ENGINE_INLET_HEIGHT);
		createEAttribute(fuelSupplyEClass, FUEL_SUPPLY__HIGHEST_LINE_POINT);
		createEAttribute(fuelSupplyEClass, FUEL_SUPPLY__LOWEST_LINE_POINT);
		createEAttribute(fuelSupplyEClass, FUEL_SUPPLY__PUMP_FLOW);
		createEAttribute(fuelSupplyEClass, FUEL_SUPPLY__ELECTRIC_PUMP);
		createEAttribute(fuelSupplyEClass, FUEL_SUPPLY__PUMP_STOPS_WITH_ENGINE);
		createEAttribute(fuelSupplyEClass, FUEL_SUPPLY__PUMP_WITHIN_REACH_OF_ENGINE);
		createEAttribute(fuelSupplyEClass, FUEL_SUPPLY__ANTI_SIPHON);
		createEAttribute(fuelSupplyEClass, FUEL_SUPPLY__ANTI_SIPHON_CRACKING_PRESSURE);
		createEAttribute(fuelSupplyEClass, FUEL_SUPPLY__TANK_SHUT_OFF);
		createEAttribute(fuelSupplyEClass, FUEL_SUPPLY__TANK_SHUT_OFF_REACHABLE_FROM_OUTSIDE);
		createEAttribute(fuelSupplyEClass, FUEL_SUPPLY__ENGINE_SHUT_OFF);
		createEAttribute(fuelSupplyEClass, FUEL_SUPPLY__LINE_LENGTH_TANK_TO_ENGINE);
		createEAttribute(fuelSupplyEClass, FUEL_SUPPLY__OWN_PICK_UP);
		createEAttribute(fuelSupplyEClass, FUEL_SUPPLY__PICK_UP_CLEARANCE);
		createEAttribute(fuelSupplyEClass, FUEL_SUPPLY__PICK_UP_SCREEN);
		createEAttribute(fuelSupplyEClass, FUEL_SUPPLY__RETURN_TO_TANK_IN_USE);
		createEAttribute(fuelSupplyEClass, FUEL_SUPPLY__RETURN_CAN_DEAD_HEAD);
		createEAttribute(fuelSupplyEClass, FUEL_SUPPLY__FLEXIBLE_LAST_LINK);
		createEAttribute(fuelSupplyEClass, FUEL_SUPPLY__RIGID_LINE_SUPPORT_DISTANCE);
		createEAttribute(fuelSupplyEClass, FUEL_SUPPLY__FLEXIBLE_HOSE_SPILL_VOLUME);
		createEAttribute(fuelSupplyEClass, FUEL_SUPPLY__LEAK_TEST_PRESSURE);
		createEAttribute(fuelSupplyEClass, FUEL_SUPPLY__LEAK_TEST_HELD);
		createEAttribute(fuelSupplyEClass, FUEL_SUPPLY__GROUND_RESISTANCE);
		createEAttribute(fuelSupplyEClass, FUEL_SUPPLY__FILL_HOSE_CLAMPS);
		createEAttribute(fuelSupplyEClass, FUEL_SUPPLY__FILL_CLAMP_BAND_WIDTH);
		createEAttribute(fuelSupplyEClass, FUEL_SUPPLY__VENT_FLAME_ARRESTER);
		createEAttribute(fuelSupplyEClass, FUEL_SUPPLY__CLEAN_VACUUM_AT_PUMP);
		createEAttribute(fuelSupplyEClass, FUEL_SUPPLY__VACUUM_AT_PUMP_NOW);
		createEAttribute(fuelSupplyEClass, FUEL_SUPPLY__FEED_PRESSURE);
		createEAttribute(fuelSupplyEClass, FUEL_SUPPLY__RAIL_PRESSURE);
		createEAttribute(fuelSupplyEClass, FUEL_SUPPLY__PLANNED_RUN_TIME);
		createEAttribute(fuelSupplyEClass, FUEL_SUPPLY__PLANNED_LOAD_POWER);
		createEAttribute(fuelSupplyEClass, FUEL_SUPPLY__BACKFIRE_FLAME_ARRESTER);

		fuelTankEClass = createEClass(FUEL_TANK);
		createEAttribute(fuelTankEClass, FUEL_TANK__NAME);
		createEAttribute(fuelTankEClass, FUEL_TANK__MATERIAL);
		createEAttribute(fuelTankEClass, FUEL_TANK__CAPACITY);
		createEAttribute(fuelTankEClass, FUEL_TANK__USABLE_FRACTION);
		createEReference(fuelTankEClass, FUEL_TANK__TOP);
		createEAttribute(fuelTankEClass, FUEL_TANK__BOTTOM_HEIGHT);
		createEAttribute(fuelTankEClass, FUEL_TANK__LABELLED);
		createEAttribute(fuelTankEClass, FUEL_TANK__TEST_PRESSURE_ON_LABEL);
		createEAttribute(fuelTankEClass, FUEL_TANK__TEST_PRESSURE);
		createEAttribute(fuelTankEClass, FUEL_TANK__OPENINGS_AT_TOP);
		createEAttribute(fuelTankEClass, FUEL_TANK__MOVEMENT);
		createEAttribute(fuelTankEClass, FUEL_TANK__SHARED_WITH_MAIN_ENGINE);

		fuelLineRunEClass = createEClass(FUEL_LINE_RUN);
		createEAttribute(fuelLineRunEClass, FUEL_LINE_RUN__NAME);
		createEAttribute(fuelLineRunEClass, FUEL_LINE_RUN__FUNCTION);
		createEAttribute(fuelLineRunEClass, FUEL_LINE_RUN__KIND);
		createEAttribute(fuelLineRunEClass, FUEL_LINE_RUN__BORE);
		createEAttribute(fuelLineRunEClass, FUEL_LINE_RUN__LENGTH);
		createEAttribute(fuelLineRunEClass, FUEL_LINE_RUN__MARKING);
		createEAttribute(fuelLineRunEClass, FUEL_LINE_RUN__WORKING_PRESSURE);
		createEAttribute(fuelLineRunEClass, FUEL_LINE_RUN__CLAMPS_PER_END);
		createEAttribute(fuelLineRunEClass, FUEL_LINE_RUN__BARBED_ENDS);
		createEAttribute(fuelLineRunEClass, FUEL_LINE_RUN__IN_ENGINE_SPACE);
		createEAttribute(fuelLineRunEClass, FUEL_LINE_RUN__INSTALLED_ON);

		fuelSeparatorEClass = createEClass(FUEL_SEPARATOR);
		createEAttribute(fuelSeparatorEClass, FUEL_SEPARATOR__MAKER);
		createEAttribute(fuelSeparatorEClass, FUEL_SEPARATOR__RATED_FLOW);
		createEAttribute(fuelSeparatorEClass, FUEL_SEPARATOR__FINENESS);
		createEAttribute(fuelSeparatorEClass, FUEL_SEPARATOR__ON_ENGINE_FINENESS);
		createEAttribute(fuelSeparatorEClass, FUEL_SEPARATOR__BOWL);
		createEReference(fuelSeparatorEClass, FUEL_SEPARATOR__POSITION);
		createEAttribute(fuelSeparatorEClass, FUEL_SEPARATOR__CLEARANCE_BELOW);
		createEAttribute(fuelSeparatorEClass, FUEL_SEPARATOR__FIXED_TO_STRUCTURE);
		createEAttribute(fuelSeparatorEClass, FUEL_SEPARATOR__HIGHEST_POINT_OF_LINE);
		createEAttribute(fuelSeparatorEClass, FUEL_SEPARATOR__FIRE_TESTED);
		createEAttribute(fuelSeparatorEClass, FUEL_SEPARATOR__WATER_ALARM);
		createEAttribute(fuelSeparatorEClass, FUEL_SEPARATOR__ELEMENT_CHANGED_ON);
		createEAttribute(fuelSeparatorEClass, FUEL_SEPARATOR__BYPASS_OR_SPARE);
		createEAttribute(fuelSeparatorEClass, FUEL_SEPARATOR__WATER_FOUND);

		rawWaterCircuitEClass = createEClass(RAW_WATER_CIRCUIT);
		createEReference(rawWaterCircuitEClass, RAW_WATER_CIRCUIT__PICK_UP);
		createEReference(rawWaterCircuitEClass, RAW_WATER_CIRCUIT__SEACOCK);
		createEReference(rawWaterCircuitEClass, RAW_WATER_CIRCUIT__STRAINER);
		createEReference(rawWaterCircuitEClass, RAW_WATER_CIRCUIT__HOSES);
		createEReference(rawWaterCircuitEClass, RAW_WATER_CIRCUIT__PUMP);
		createEReference(rawWaterCircuitEClass, RAW_WATER_CIRCUIT__SIPHON_BREAK);
		createEReference(rawWaterCircuitEClass, RAW_WATER_CIRCUIT__INJECTION);
		createEAttribute(rawWaterCircuitEClass, RAW_WATER_CIRCUIT__SIPHON_BREAK_HOSE_BORE);
		createEAttribute(rawWaterCircuitEClass, RAW_WATER_CIRCUIT__OWN_INTAKE);
		createEAttribute(rawWaterCircuitEClass, RAW_WATER_CIRCUIT__DISCHARGE_AHEAD_OF_INTAKE);
		createEAttribute(rawWaterCircuitEClass, RAW_WATER_CIRCUIT__MEASURED_FLOW);
		createEAttribute(rawWaterCircuitEClass, RAW_WATER_CIRCUIT__MEASURED_VACUUM_AT_PUMP);
		createEAttribute(rawWaterCircuitEClass, RAW_WATER_CIRCUIT__MEASURED_INLET_TEMPERATURE);
		createEAttribute(rawWaterCircuitEClass, RAW_WATER_CIRCUIT__MEASURED_OVERBOARD_TEMPERATURE);
		createEAttribute(rawWaterCircuitEClass, RAW_WATER_CIRCUIT__DESIGN_SEA_TEMPERATURE);
		createEAttribute(rawWaterCircuitEClass, RAW_WATER_CIRCUIT__SEACOCK_TAG_AT_START_PANEL);
		createEAttribute(rawWaterCircuitEClass, RAW_WATER_CIRCUIT__SHUT_WHEN_NOT_IN_USE);
		createEAttribute(rawWaterCircuitEClass, RAW_WATER_CIRCUIT__WINTERISE_CONNECTION);

		hullPickUpEClass = createEClass(HULL_PICK_UP);
		createEAttribute(hullPickUpEClass, HULL_PICK_UP__KIND);
		createEReference(hullPickUpEClass, HULL_PICK_UP__POSITION);
		createEAttribute(hullPickUpEClass, HULL_PICK_UP__BORE);
		createEAttribute(hullPickUpEClass, HULL_PICK_UP__MATERIAL);
		createEAttribute(hullPickUpEClass, HULL_PICK_UP__GRATING_OPEN_AREA);
		createEAttribute(hullPickUpEClass, HULL_PICK_UP__LIGHT_SHIP_RISE);

		seacockEClass = createEClass(SEACOCK);
		createEAttribute(seacockEClass, SEACOCK__KIND);
		createEAttribute(seacockEClass, SEACOCK__MATERIAL);
		createEAttribute(seacockEClass, SEACOCK__BORE);
		createEAttribute(seacockEClass, SEACOCK__FULL_BORE);
		createEAttribute(seacockEClass, SEACOCK__LEVER_SHOWS_STATE);
		createEAttribute(seacockEClass, SEACOCK__REACHABLE_WITHOUT_TOOLS);
		createEAttribute(seacockEClass, SEACOCK__CLOSE_TO_HULL);
		createEAttribute(seacockEClass, SEACOCK__STATIC_LOAD_MARKED);
		createEAttribute(seacockEClass, SEACOCK__WORKS_FREELY);

		waterStrainerEClass = createEClass(WATER_STRAINER);
		createEReference(waterStrainerEClass, WATER_STRAINER__POSITION);
		createEAttribute(waterStrainerEClass, WATER_STRAINER__PORT_BORE);
		createEAttribute(waterStrainerEClass, WATER_STRAINER__BASKET_OPEN_AREA);
		createEAttribute(waterStrainerEClass, WATER_STRAINER__HOLE_SIZE);
		createEAttribute(waterStrainerEClass, WATER_STRAINER__SEE_THROUGH_OR_OPENABLE);
		createEAttribute(waterStrainerEClass, WATER_STRAINER__BESIDE_SEACOCK);
		createEAttribute(waterStrainerEClass, WATER_STRAINER__LID_ABOVE_WATERLINE);

		waterHoseRunEClass = createEClass(WATER_HOSE_RUN);
		createEAttribute(waterHoseRunEClass, WATER_HOSE_RUN__NAME);
		createEAttribute(waterHoseRunEClass, WATER_HOSE_RUN__SECTION);
		createEAttribute(waterHoseRunEClass, WATER_HOSE_RUN__KIND);
		createEAttribute(waterHoseRunEClass, WATER_HOSE_RUN__BORE);
		createEAttribute(waterHoseRunEClass, WATER_HOSE_RUN__LENGTH);
		createEAttribute(waterHoseRunEClass, WATER_HOSE_RUN__CLAMPS_PER_END);
		createEAttribute(waterHoseRunEClass, WATER_HOSE_RUN__COLLAPSE_PROOF);
		createEReference(waterHoseRunEClass, WATER_HOSE_RUN__FITTINGS);
		createEAttribute(waterHoseRunEClass, WATER_HOSE_RUN__INSTALLED_ON);

		pipeFittingEClass = createEClass(PIPE_FITTING);
		createEAttribute(pipeFittingEClass, PIPE_FITTING__KIND);
		createEAttribute(pipeFittingEClass, PIPE_FITTING__COUNT);

		waterPumpEClass = createEClass(WATER_PUMP);
		createEReference(waterPumpEClass, WATER_PUMP__POSITION);
		createEAttribute(waterPumpEClass, WATER_PUMP__INLET_BORE);
		createEAttribute(waterPumpEClass, WATER_PUMP__OUTLET_BORE);
		createEAttribute(waterPumpEClass, WATER_PUMP__RATED_FLOW);
		createEAttribute(waterPumpEClass, WATER_PUMP__SELF_PRIMING);
		createEAttribute(waterPumpEClass, WATER_PUMP__IMPELLER_PIECES_MISSING);
		createEAttribute(waterPumpEClass, WATER_PUMP__IMPELLER_PIECES_FOUND);
		createEAttribute(waterPumpEClass, WATER_PUMP__IMPELLER_CHANGED_ON);

		siphonBreakEClass = createEClass(SIPHON_BREAK);
		createEAttribute(siphonBreakEClass, SIPHON_BREAK__KIND);
		createEReference(siphonBreakEClass, SIPHON_BREAK__VENT_SEAT);
		createEAttribute(siphonBreakEClass, SIPHON_BREAK__PLACE);
		createEAttribute(siphonBreakEClass, SIPHON_BREAK__BORE);
		createEAttribute(siphonBreakEClass, SIPHON_BREAK__HIGHEST_POINT);
		createEAttribute(siphonBreakEClass, SIPHON_BREAK__VENT_HOSE);
		createEAttribute(siphonBreakEClass, SIPHON_BREAK__VENT_HOSE_FREE);
		createEAttribute(siphonBreakEClass, SIPHON_BREAK__VENT_HOSE_END_HEIGHT);
		createEAttribute(siphonBreakEClass, SIPHON_BREAK__BLEED_BORE);
		createEAttribute(siphonBreakEClass, SIPHON_BREAK__TELL_TALE_VISIBLE);
		createEAttribute(siphonBreakEClass, SIPHON_BREAK__ABOVE_ELECTRICS);
		createEAttribute(siphonBreakEClass, SIPHON_BREAK__DRIP_SHIELD);
		createEAttribute(siphonBreakEClass, SIPHON_BREAK__SERVICED_ON);
		createEAttribute(siphonBreakEClass, SIPHON_BREAK__VALVE_TESTED);

		exhaustRunEClass = createEClass(EXHAUST_RUN);
		createEReference(exhaustRunEClass, EXHAUST_RUN__PATH);
		createEReference(exhaustRunEClass, EXHAUST_RUN__SECTIONS);
		createEReference(exhaustRunEClass, EXHAUST_RUN__MUFFLER);
		createEReference(exhaustRunEClass, EXHAUST_RUN__RISER);
		createEReference(exhaustRunEClass, EXHAUST_RUN__CREST);
		createEReference(exhaustRunEClass, EXHAUST_RUN__OUTLET);
		createEReference(exhaustRunEClass, EXHAUST_RUN__SEPARATOR_DRAIN);
		createEAttribute(exhaustRunEClass, EXHAUST_RUN__TURBINE_OUTLET_PORT_BORE);
		createEAttribute(exhaustRunEClass, EXHAUST_RUN__OWN_SYSTEM);
		createEAttribute(exhaustRunEClass, EXHAUST_RUN__GAS_TIGHT);
		createEAttribute(exhaustRunEClass, EXHAUST_RUN__DRY_PARTS_LAGGED);
		createEAttribute(exhaustRunEClass, EXHAUST_RUN__DRY_PART_SURFACE_TEMPERATURE);
		createEAttribute(exhaustRunEClass, EXHAUST_RUN__WEIGHT_ON_MANIFOLD);
		createEAttribute(exhaustRunEClass, EXHAUST_RUN__TEMPERATURE_ALARM);
		createEAttribute(exhaustRunEClass, EXHAUST_RUN__TEMPERATURE_ALARM_SETTING);
		createEAttribute(exhaustRunEClass, EXHAUST_RUN__TEST_TAP_FITTED);
		createEAttribute(exhaustRunEClass, EXHAUST_RUN__TEST_TAP_DISTANCE);
		createEAttribute(exhaustRunEClass, EXHAUST_RUN__MEASURED_BACK_PRESSURE);
		createEAttribute(exhaustRunEClass, EXHAUST_RUN__MEASURED_BACK_PRESSURE_LOAD);
		createEAttribute(exhaustRunEClass, EXHAUST_RUN__BASELINE_BACK_PRESSURE);
		createEAttribute(exhaustRunEClass, EXHAUST_RUN__SILENCER_LOSS);
		createEAttribute(exhaustRunEClass, EXHAUST_RUN__WATER_FULL_LENGTH);
		createEAttribute(exhaustRunEClass, EXHAUST_RUN__BULKHEADS_SEALED);
		createEAttribute(exhaustRunEClass, EXHAUST_RUN__JOINTS_ACCESSIBLE);
		createEAttribute(exhaustRunEClass, EXHAUST_RUN__CLEAR_OF_COMBUSTIBLES);

		exhaustPointEClass = createEClass(EXHAUST_POINT);
		createEAttribute(exhaustPointEClass, EXHAUST_POINT__NAME);
		createEReference(exhaustPointEClass, EXHAUST_POINT__POSITION);
		createEAttribute(exhaustPointEClass, EXHAUST_POINT__BORE);

		exhaustSectionRunEClass = createEClass(EXHAUST_SECTION_RUN);
		createEAttribute(exhaustSectionRunEClass, EXHAUST_SECTION_RUN__NAME);
		createEAttribute(exhaustSectionRunEClass, EXHAUST_SECTION_RUN__SECTION);
		createEAttribute(exhaustSectionRunEClass, EXHAUST_SECTION_RUN__STANDARD);
		createEAttribute(exhaustSectionRunEClass, EXHAUST_SECTION_RUN__BORE);
		createEAttribute(exhaustSectionRunEClass, EXHAUST_SECTION_RUN__LENGTH);
		createEAttribute(exhaustSectionRunEClass, EXHAUST_SECTION_RUN__RISE);
		createEAttribute(exhaustSectionRunEClass, EXHAUST_SECTION_RUN__FALL);
		createEAttribute(exhaustSectionRunEClass, EXHAUST_SECTION_RUN__SLOPES_BACK_TO_MUFFLER);
		createEReference(exhaustSectionRunEClass, EXHAUST_SECTION_RUN__BENDS);
		createEAttribute(exhaustSectionRunEClass, EXHAUST_SECTION_RUN__CLAMPS_PER_END);
		createEAttribute(exhaustSectionRunEClass, EXHAUST_SECTION_RUN__CLAMP_BAND_WIDTH);
		createEAttribute(exhaustSectionRunEClass, EXHAUST_SECTION_RUN__SUPPORT_SPACING);
		createEAttribute(exhaustSectionRunEClass, EXHAUST_SECTION_RUN__SAG_FREE);
		createEAttribute(exhaustSectionRunEClass, EXHAUST_SECTION_RUN__INSTALLED_ON);
		createEAttribute(exhaustSectionRunEClass, EXHAUST_SECTION_RUN__GAS_TEMPERATURE);

		exhaustBendEClass = createEClass(EXHAUST_BEND);
		createEAttribute(exhaustBendEClass, EXHAUST_BEND__KIND);
		createEAttribute(exhaustBendEClass, EXHAUST_BEND__COUNT);
		createEAttribute(exhaustBendEClass, EXHAUST_BEND__RADIUS);

		mufflerEClass = createEClass(MUFFLER);
		createEAttribute(mufflerEClass, MUFFLER__KIND);
		createEReference(mufflerEClass, MUFFLER__POSITION);
		createEAttribute(mufflerEClass, MUFFLER__INLET_BORE);
		createEAttribute(mufflerEClass, MUFFLER__OUTLET_BORE);
		createEAttribute(mufflerEClass, MUFFLER__VOLUME_TO_INLET);
		createEAttribute(mufflerEClass, MUFFLER__RESIDUE_FRACTION);
		createEAttribute(mufflerEClass, MUFFLER__BOTTOM_HEIGHT);
		createEAttribute(mufflerEClass, MUFFLER__INLET_INVERT_HEIGHT);
		createEAttribute(mufflerEClass, MUFFLER__DISTANCE_FROM_ENGINE);
		createEAttribute(mufflerEClass, MUFFLER__LOWEST_POINT);
		createEAttribute(mufflerEClass, MUFFLER__MARKED);
		createEAttribute(mufflerEClass, MUFFLER__DRAIN_PLUG);
		createEAttribute(mufflerEClass, MUFFLER__DRAIN_POSITION);
		createEAttribute(mufflerEClass, MUFFLER__LEVEL_AFTER_STOP_BELOW_INLET);
		createEAttribute(mufflerEClass, MUFFLER__SUPPORTED);
		createEAttribute(mufflerEClass, MUFFLER__PRESSURE_LOSS);

		riserEClass = createEClass(RISER);
		createEReference(riserEClass, RISER__DRY_CREST_INSIDE);
		createEAttribute(riserEClass, RISER__INJECTION_ON_FALLING_LEG);
		createEAttribute(riserEClass, RISER__INJECTION_POINTS_DOWN);
		createEAttribute(riserEClass, RISER__INJECTION_DROP_TO_MUFFLER);
		createEAttribute(riserEClass, RISER__LIFT_HEIGHT);
		createEAttribute(riserEClass, RISER__ELBOW_BORE);
		createEAttribute(riserEClass, RISER__ELBOW_INSPECTED_ON);

		exhaustCrestEClass = createEClass(EXHAUST_CREST);
		createEReference(exhaustCrestEClass, EXHAUST_CREST__INSIDE_BOTTOM);
		createEAttribute(exhaustCrestEClass, EXHAUST_CREST__VENTED);

		exhaustOutletEClass = createEClass(EXHAUST_OUTLET);
		createEAttribute(exhaustOutletEClass, EXHAUST_OUTLET__PLACE);
		createEReference(exhaustOutletEClass, EXHAUST_OUTLET__INSIDE_BOTTOM);
		createEAttribute(exhaustOutletEClass, EXHAUST_OUTLET__BORE);
		createEAttribute(exhaustOutletEClass, EXHAUST_OUTLET__ANTI_SURGE);
		createEAttribute(exhaustOutletEClass, EXHAUST_OUTLET__CLOSED_BY_VALVE);
		createEAttribute(exhaustOutletEClass, EXHAUST_OUTLET__UNDER_SWIM_PLATFORM);
		createEAttribute(exhaustOutletEClass, EXHAUST_OUTLET__NEAR_OPENINGS);
		createEAttribute(exhaustOutletEClass, EXHAUST_OUTLET__DISTANCE_TO_OPENING);
		createEAttribute(exhaustOutletEClass, EXHAUST_OUTLET__WATER_VISIBLE);
		createEAttribute(exhaustOutletEClass, EXHAUST_OUTLET__MATERIAL);

		separatorDrainEClass = createEClass(SEPARATOR_DRAIN);
		createEAttribute(separatorDrainEClass, SEPARATOR_DRAIN__BORE);
		createEAttribute(separatorDrainEClass, SEPARATOR_DRAIN__BASE_HEIGHT);
		createEAttribute(separatorDrainEClass, SEPARATOR_DRAIN__OWN_SEACOCK);
		createEAttribute(separatorDrainEClass, SEPARATOR_DRAIN__FALLS_ALL_THE_WAY);
		createEAttribute(separatorDrainEClass, SEPARATOR_DRAIN__GAS_SIDE_PRESSURE);

		ventilationEClass = createEClass(VENTILATION);
		createEAttribute(ventilationEClass, VENTILATION__NET_VOLUME);
		createEAttribute(ventilationEClass, VENTILATION__GROSS_VOLUME);
		createEAttribute(ventilationEClass, VENTILATION__OPEN_AREA_TO_ATMOSPHERE);
		createEAttribute(ventilationEClass, VENTILATION__CONNECTED_OPENING_FRACTION);
		createEAttribute(ventilationEClass, VENTILATION__COMPARTMENT_HEIGHT);
		createEAttribute(ventilationEClass, VENTILATION__BILGE_WATER_HEIGHT);
		createEReference(ventilationEClass, VENTILATION__DUCTS);
		createEAttribute(ventilationEClass, VENTILATION__BLOWER_RATED_FLOW);
		createEAttribute(ventilationEClass, VENTILATION__BLOWER_MEASURED_FLOW);
		createEAttribute(ventilationEClass, VENTILATION__BLOWER_LABEL_AT_EACH_START);
		createEAttribute(ventilationEClass, VENTILATION__BLOWER_INTERLOCKED);
		createEAttribute(ventilationEClass, VENTILATION__BLOWER_IGNITION_PROTECTED);
		createEAttribute(ventilationEClass, VENTILATION__SEALED_FROM_ACCOMMODATION);
		createEAttribute(ventilationEClass, VENTILATION__SUPPLY_FROM_OUTSIDE);
		createEAttribute(ventilationEClass, VENTILATION__SUPPLY_AREA_TOTAL);
		createEAttribute(ventilationEClass, VENTILATION__EXHAUST_AREA_TOTAL);
		createEAttribute(ventilationEClass, VENTILATION__NATURAL_DRAUGHT);
		createEAttribute(ventilationEClass, VENTILATION__OUTSIDE_TEMPERATURE);
		createEAttribute(ventilationEClass, VENTILATION__COMPARTMENT_TEMPERATURE);
		createEAttribute(ventilationEClass, VENTILATION__AIR_INLET_TEMPERATURE);
		createEAttribute(ventilationEClass, VENTILATION__DEPRESSION);
		createEAttribute(ventilationEClass, VENTILATION__DESIGN_AMBIENT);
		createEAttribute(ventilationEClass, VENTILATION__DUCTS_LOW_AND_HIGH);
		createEAttribute(ventilationEClass, VENTILATION__CLEAR_OF_EXHAUST_OUTLET);
		createEAttribute(ventilationEClass, VENTILATION__IGNITION_PROTECTED_COMPONENTS);
		createEAttribute(ventilationEClass, VENTILATION__CRANKING_MOTOR_FITTED);
		createEAttribute(ventilationEClass, VENTILATION__FAN_FLOW);

		airDuctEClass = createEClass(AIR_DUCT);
		createEAttribute(airDuctEClass, AIR_DUCT__NAME);
		createEAttribute(airDuctEClass, AIR_DUCT__FUNCTION);
		createEAttribute(airDuctEClass, AIR_DUCT__AREA);
		createEAttribute(airDuctEClass, AIR_DUCT__END_FITTING_AREA);
		createEAttribute(airDuctEClass, AIR_DUCT__FLEXIBLE);
		createEAttribute(airDuctEClass, AIR_DUCT__MOUTH_HEIGHT);
		createEAttribute(airDuctEClass, AIR_DUCT__TERMINATES_OUTSIDE);

		mountingEClass = createEClass(MOUNTING);
		createEAttribute(mountingEClass, MOUNTING__BEDS_RIGID);
		createEAttribute(mountingEClass, MOUNTING__MOUNTS_ALIGNED);
		createEAttribute(mountingEClass, MOUNTING__CLEARANCE_AROUND);
		createEAttribute(mountingEClass, MOUNTING__FLEXIBLE_CONNECTIONS);
		createEAttribute(mountingEClass, MOUNTING__DRIP_TRAY);
		createEAttribute(mountingEClass, MOUNTING__ACCESS_FOR_SERVICE);
		createEAttribute(mountingEClass, MOUNTING__BONDING_CONDUCTOR);
		createEAttribute(mountingEClass, MOUNTING__BONDED_TO_COMMON_GROUND);
		createEAttribute(mountingEClass, MOUNTING__COMMON_NEGATIVE_LINK);
		createEAttribute(mountingEClass, MOUNTING__DC_NEGATIVE_ISOLATED);
		createEAttribute(mountingEClass, MOUNTING__INSTALLED_ANGLE_FORE);
		createEAttribute(mountingEClass, MOUNTING__INSTALLED_ANGLE_SIDE);
		createEAttribute(mountingEClass, MOUNTING__HEIGHT_ABOVE_BILGE);
		createEAttribute(mountingEClass, MOUNTING__ANODES_FITTED);
		createEAttribute(mountingEClass, MOUNTING__LABELS_POSTED);
		createEAttribute(mountingEClass, MOUNTING__ROTATING_PARTS_GUARDED);

		acOutputEClass = createEClass(AC_OUTPUT);
		createEReference(acOutputEClass, AC_OUTPUT__TRANSFER);
		createEAttribute(acOutputEClass, AC_OUTPUT__PROTECTION_DEVICE);
		createEAttribute(acOutputEClass, AC_OUTPUT__PROTECTION_RATING);
		createEAttribute(acOutputEClass, AC_OUTPUT__TRIP_CURVE);
		createEAttribute(acOutputEClass, AC_OUTPUT__PROTECTION_POLES);
		createEAttribute(acOutputEClass, AC_OUTPUT__PROTECTION_DISTANCE);
		createEAttribute(acOutputEClass, AC_OUTPUT__RESIDUAL_CURRENT_DEVICE);
		createEAttribute(acOutputEClass, AC_OUTPUT__RESIDUAL_TRIP_CURRENT);
		createEAttribute(acOutputEClass, AC_OUTPUT__RESIDUAL_TRIP_TIME);
		createEReference(acOutputEClass, AC_OUTPUT__OUTPUT_CABLE);
		createEAttribute(acOutputEClass, AC_OUTPUT__NEUTRAL_BOND);
		createEAttribute(acOutputEClass, AC_OUTPUT__PROTECTIVE_CONDUCTOR_SIZE);
		createEAttribute(acOutputEClass, AC_OUTPUT__PROTECTIVE_CONDUCTOR_RESISTANCE);
		createEAttribute(acOutputEClass, AC_OUTPUT__NEUTRAL_GROUND_CONDUCTOR_SIZE);
		createEAttribute(acOutputEClass, AC_OUTPUT__INSULATION_RESISTANCE);
		createEAttribute(acOutputEClass, AC_OUTPUT__INSULATION_TEMPERATURE);
		createEAttribute(acOutputEClass, AC_OUTPUT__POLARITY_INDICATOR);
		createEAttribute(acOutputEClass, AC_OUTPUT__POLARITY_TESTED);
		createEAttribute(acOutputEClass, AC_OUTPUT__VOLTMETER);
		createEAttribute(acOutputEClass, AC_OUTPUT__AMMETER);
		createEAttribute(acOutputEClass, AC_OUTPUT__FREQUENCY_METER);
		createEAttribute(acOutputEClass, AC_OUTPUT__NAME_PLATE_READABLE);
		createEAttribute(acOutputEClass, AC_OUTPUT__EARTHED_PARTS_BONDED);
		createEAttribute(acOutputEClass, AC_OUTPUT__GROUND_DETECTION);
		createEReference(acOutputEClass, AC_OUTPUT__LOADS);
		createEAttribute(acOutputEClass, AC_OUTPUT__NO_LOAD_VOLTAGE);
		createEAttribute(acOutputEClass, AC_OUTPUT__NO_LOAD_FREQUENCY);
		createEAttribute(acOutputEClass, AC_OUTPUT__LEG_ACURRENT);
		createEAttribute(acOutputEClass, AC_OUTPUT__LEG_BCURRENT);
		createEAttribute(acOutputEClass, AC_OUTPUT__SHORE_INLET_RESIDUAL_DEVICE);

		transferSwitchEClass = createEClass(TRANSFER_SWITCH);
		createEAttribute(transferSwitchEClass, TRANSFER_SWITCH__KIND);
		createEAttribute(transferSwitchEClass, TRANSFER_SWITCH__POLES);
		createEAttribute(transferSwitchEClass, TRANSFER_SWITCH__INTERLOCKED);
		createEAttribute(transferSwitchEClass, TRANSFER_SWITCH__BACK_FEED_VOLTAGE);
		createEAttribute(transferSwitchEClass, TRANSFER_SWITCH__TESTED);
		createEAttribute(transferSwitchEClass, TRANSFER_SWITCH__RATED_CURRENT);

		electricalLoadEClass = createEClass(ELECTRICAL_LOAD);
		createEAttribute(electricalLoadEClass, ELECTRICAL_LOAD__NAME);
		createEAttribute(electricalLoadEClass, ELECTRICAL_LOAD__KIND);
		createEAttribute(electricalLoadEClass, ELECTRICAL_LOAD__POWER);
		createEAttribute(electricalLoadEClass, ELECTRICAL_LOAD__EFFICIENCY);
		createEAttribute(electricalLoadEClass, ELECTRICAL_LOAD__POWER_FACTOR);
		createEAttribute(electricalLoadEClass, ELECTRICAL_LOAD__DEMAND_FACTOR);
		createEAttribute(electricalLoadEClass, ELECTRICAL_LOAD__GROUP);
		createEAttribute(electricalLoadEClass, ELECTRICAL_LOAD__EXCLUSIVE_WITH);
		createEAttribute(electricalLoadEClass, ELECTRICAL_LOAD__PHASE);
		createEAttribute(electricalLoadEClass, ELECTRICAL_LOAD__MOTOR_HORSEPOWER);
		createEAttribute(electricalLoadEClass, ELECTRICAL_LOAD__CODE_LETTER);
		createEAttribute(electricalLoadEClass, ELECTRICAL_LOAD__LOCKED_ROTOR_CURRENT);
		createEAttribute(electricalLoadEClass, ELECTRICAL_LOAD__STARTING);
		createEAttribute(electricalLoadEClass, ELECTRICAL_LOAD__VOLTAGE);
		createEAttribute(electricalLoadEClass, ELECTRICAL_LOAD__CONDITION);

		alarmsAndSafetyEClass = createEClass(ALARMS_AND_SAFETY);
		createEReference(alarmsAndSafetyEClass, ALARMS_AND_SAFETY__ALARMS);
		createEAttribute(alarmsAndSafetyEClass, ALARMS_AND_SAFETY__CARBON_MONOXIDE_IN_EVERY_SPACE);
		createEAttribute(alarmsAndSafetyEClass, ALARMS_AND_SAFETY__CARBON_MONOXIDE_MARKED);
		createEAttribute(alarmsAndSafetyEClass, ALARMS_AND_SAFETY__CARBON_MONOXIDE_EXPIRY);
		createEAttribute(alarmsAndSafetyEClass, ALARMS_AND_SAFETY__CARBON_MONOXIDE_ALWAYS_POWERED);
		createEAttribute(alarmsAndSafetyEClass, ALARMS_AND_SAFETY__HABITABLE_SPACES);
		createEAttribute(alarmsAndSafetyEClass, ALARMS_AND_SAFETY__CARBON_MONOXIDE_ALARMS);
		createEAttribute(alarmsAndSafetyEClass, ALARMS_AND_SAFETY__VAPOUR_DETECTOR);
		createEAttribute(alarmsAndSafetyEClass, ALARMS_AND_SAFETY__VAPOUR_SENSOR_LOW);
		createEAttribute(alarmsAndSafetyEClass, ALARMS_AND_SAFETY__VAPOUR_BEFORE_START);
		createEAttribute(alarmsAndSafetyEClass, ALARMS_AND_SAFETY__FIRE_EXTINGUISHER);
		createEAttribute(alarmsAndSafetyEClass, ALARMS_AND_SAFETY__FIXED_FIRE_SYSTEM);
		createEAttribute(alarmsAndSafetyEClass, ALARMS_AND_SAFETY__FIRE_SYSTEM_STOPS_SET);
		createEAttribute(alarmsAndSafetyEClass, ALARMS_AND_SAFETY__FIRE_DISCHARGE_PORT);
		createEAttribute(alarmsAndSafetyEClass, ALARMS_AND_SAFETY__REMOTE_STOP);
		createEAttribute(alarmsAndSafetyEClass, ALARMS_AND_SAFETY__WARNING_LABELS);

		alarmDeviceEClass = createEClass(ALARM_DEVICE);
		createEAttribute(alarmDeviceEClass, ALARM_DEVICE__KIND);
		createEAttribute(alarmDeviceEClass, ALARM_DEVICE__LOCATION);
		createEAttribute(alarmDeviceEClass, ALARM_DEVICE__SETTING);
		createEAttribute(alarmDeviceEClass, ALARM_DEVICE__TEST_RESULT);
		createEAttribute(alarmDeviceEClass, ALARM_DEVICE__TESTED_ON);
		createEAttribute(alarmDeviceEClass, ALARM_DEVICE__EXPIRES_ON);

		inspectionAnswerEClass = createEClass(INSPECTION_ANSWER);
		createEAttribute(inspectionAnswerEClass, INSPECTION_ANSWER__QUESTION);
		createEAttribute(inspectionAnswerEClass, INSPECTION_ANSWER__ANSWER);
		createEAttribute(inspectionAnswerEClass, INSPECTION_ANSWER__NOTE);
		createEAttribute(inspectionAnswerEClass, INSPECTION_ANSWER__ANSWERED_BY);
		createEAttribute(inspectionAnswerEClass, INSPECTION_ANSWER__ANSWERED_ON);
		createEReference(inspectionAnswerEClass, INSPECTION_ANSWER__PHOTOGRAPHS);

		trialEClass = createEClass(TRIAL);
		createEAttribute(trialEClass, TRIAL__DATE);
		createEAttribute(trialEClass, TRIAL__PLACE);
		createEAttribute(trialEClass, TRIAL__LOCATION);
		createEAttribute(trialEClass, TRIAL__PEOPLE);
		createEAttribute(trialEClass, TRIAL__SEA_TEMPERATURE);
		createEAttribute(trialEClass, TRIAL__OUTSIDE_TEMPERATURE);
		createEAttribute(trialEClass, TRIAL__BAROMETRIC_PRESSURE);
		createEAttribute(trialEClass, TRIAL__RELATIVE_HUMIDITY);
		createEAttribute(trialEClass, TRIAL__HEAD_OF_WATER);
		createEReference(trialEClass, TRIAL__PROCEDURE);
		createEReference(trialEClass, TRIAL__PRIMING);
		createEReference(trialEClass, TRIAL__ATTEMPTS);
		createEReference(trialEClass, TRIAL__LOAD_STEPS);
		createEReference(trialEClass, TRIAL__SHUTDOWN_TESTS);
		createEReference(trialEClass, TRIAL__SEA_RUN);
		createEAttribute(trialEClass, TRIAL__COOLANT_LEVEL_COLD);
		createEAttribute(trialEClass, TRIAL__COOLANT_LEVEL_HOT);
		createEAttribute(trialEClass, TRIAL__COOLANT_LEVEL_COLD_AGAIN);
		createEAttribute(trialEClass, TRIAL__LEAKS_COLD);
		createEAttribute(trialEClass, TRIAL__LEAKS_HOT);
		createEAttribute(trialEClass, TRIAL__WATER_AT_OUTLET_AFTER);
		createEAttribute(trialEClass, TRIAL__OIL_PRESSURE_AFTER);
		createEAttribute(trialEClass, TRIAL__MUFFLER_LEVEL_CHECKED);
		createEAttribute(trialEClass, TRIAL__REMARKS);
		createEAttribute(trialEClass, TRIAL__CARBON_MONOXIDE_CABIN);

		procedureStepEClass = createEClass(PROCEDURE_STEP);
		createEAttribute(procedureStepEClass, PROCEDURE_STEP__NUMBER);
		createEAttribute(procedureStepEClass, PROCEDURE_STEP__STEP);
		createEAttribute(procedureStepEClass, PROCEDURE_STEP__DONE);
		createEAttribute(procedureStepEClass, PROCEDURE_STEP__AT);
		createEAttribute(procedureStepEClass, PROCEDURE_STEP__NOTE);

		fuelPrimingEClass = createEClass(FUEL_PRIMING);
		createEAttribute(fuelPrimingEClass, FUEL_PRIMING__KEY_CYCLES);
		createEAttribute(fuelPrimingEClass, FUEL_PRIMING__CYCLE_TIME);
		createEAttribute(fuelPrimingEClass, FUEL_PRIMING__FEED_PRESSURE);
		createEAttribute(fuelPrimingEClass, FUEL_PRIMING__RAIL_PRESSURE);
		createEAttribute(fuelPrimingEClass, FUEL_PRIMING__HELD_FOR);
		createEAttribute(fuelPrimingEClass, FUEL_PRIMING__BUBBLES_GONE);
		createEAttribute(fuelPrimingEClass, FUEL_PRIMING__LEAKS);

		crankingAttemptEClass = createEClass(CRANKING_ATTEMPT);
		createEAttribute(crankingAttemptEClass, CRANKING_ATTEMPT__AT);
		createEAttribute(crankingAttemptEClass, CRANKING_ATTEMPT__DURATION);
		createEAttribute(crankingAttemptEClass, CRANKING_ATTEMPT__REST);
		createEAttribute(crankingAttemptEClass, CRANKING_ATTEMPT__SEACOCK);
		createEAttribute(crankingAttemptEClass, CRANKING_ATTEMPT__FIRED);
		createEAttribute(crankingAttemptEClass, CRANKING_ATTEMPT__LOWEST_VOLTAGE);
		createEAttribute(crankingAttemptEClass, CRANKING_ATTEMPT__MUFFLER_DRAINED);

		loadStepEClass = createEClass(LOAD_STEP);
		createEAttribute(loadStepEClass, LOAD_STEP__LOAD);
		createEAttribute(loadStepEClass, LOAD_STEP__DWELL);
		createEReference(loadStepEClass, LOAD_STEP__READINGS);
		createEAttribute(loadStepEClass, LOAD_STEP__REMARKS);

		readingEClass = createEClass(READING);
		createEAttribute(readingEClass, READING__AT);
		createEAttribute(readingEClass, READING__VOLTAGE1);
		createEAttribute(readingEClass, READING__VOLTAGE2);
		createEAttribute(readingEClass, READING__VOLTAGE3);
		createEAttribute(readingEClass, READING__CURRENT1);
		createEAttribute(readingEClass, READING__CURRENT2);
		createEAttribute(readingEClass, READING__CURRENT3);
		createEAttribute(readingEClass, READING__FREQUENCY);
		createEAttribute(readingEClass, READING__POWER);
		createEAttribute(readingEClass, READING__POWER_FACTOR);
		createEAttribute(readingEClass, READING__OIL_PRESSURE);
		createEAttribute(readingEClass, READING__COOLANT_TEMPERATURE);
		createEAttribute(readingEClass, READING__RAW_WATER_IN);
		createEAttribute(readingEClass, READING__RAW_WATER_OUT);
		createEAttribute(readingEClass, READING__EXHAUST_MIXED);
		createEAttribute(readingEClass, READING__EXHAUST_DRY);
		createEAttribute(readingEClass, READING__BACK_PRESSURE);
		createEAttribute(readingEClass, READING__COMPARTMENT_TEMPERATURE);
		createEAttribute(readingEClass, READING__OUTSIDE_TEMPERATURE);
		createEAttribute(readingEClass, READING__COMPARTMENT_DEPRESSION);
		createEAttribute(readingEClass, READING__FUEL_VACUUM);
		createEAttribute(readingEClass, READING__RAW_WATER_VACUUM);
		createEAttribute(readingEClass, READING__RAW_WATER_FLOW);
		createEAttribute(readingEClass, READING__BATTERY_VOLTAGE);
		createEAttribute(readingEClass, READING__CHARGE_CURRENT);
		createEAttribute(readingEClass, READING__CARBON_MONOXIDE);
		createEAttribute(readingEClass, READING__SMOKE);
		createEAttribute(readingEClass, READING__NOTE);
		createEAttribute(readingEClass, READING__INSTRUMENTS);

		seaRunEClass = createEClass(SEA_RUN);
		createEAttribute(seaRunEClass, SEA_RUN__DATE);
		createEAttribute(seaRunEClass, SEA_RUN__HEEL_PORT);
		createEAttribute(seaRunEClass, SEA_RUN__HEEL_STARBOARD);
		createEAttribute(seaRunEClass, SEA_RUN__TRIM_UP);
		createEAttribute(seaRunEClass, SEA_RUN__TRIM_DOWN);
		createEAttribute(seaRunEClass, SEA_RUN__SPEED);
		createEAttribute(seaRunEClass, SEA_RUN__WATER_FLOWING);
		createEAttribute(seaRunEClass, SEA_RUN__WATER_OVER_CREST);
		createEAttribute(seaRunEClass, SEA_RUN__WATER_IN_MUFFLER);
		createEAttribute(seaRunEClass, SEA_RUN__DIFFERENCE);
		createEAttribute(seaRunEClass, SEA_RUN__DURATION);

		upkeepEClass = createEClass(UPKEEP);
		createEReference(upkeepEClass, UPKEEP__TASKS);
		createEReference(upkeepEClass, UPKEEP__CONSUMABLES);
		createEAttribute(upkeepEClass, UPKEEP__ANNUAL_HOURS);

		upkeepTaskEClass = createEClass(UPKEEP_TASK);
		createEAttribute(upkeepTaskEClass, UPKEEP_TASK__TASK);
		createEAttribute(upkeepTaskEClass, UPKEEP_TASK__EVERY_HOURS);
		createEAttribute(upkeepTaskEClass, UPKEEP_TASK__EVERY_MONTHS);
		createEAttribute(upkeepTaskEClass, UPKEEP_TASK__LAST_DONE_ON);
		createEAttribute(upkeepTaskEClass, UPKEEP_TASK__LAST_DONE_HOURS);
		createEAttribute(upkeepTaskEClass, UPKEEP_TASK__NOTE);

		consumableEClass = createEClass(CONSUMABLE);
		createEAttribute(consumableEClass, CONSUMABLE__NAME);
		createEAttribute(consumableEClass, CONSUMABLE__PART_NUMBER);
		createEAttribute(consumableEClass, CONSUMABLE__QUANTITY);

		acceptanceEClass = createEClass(ACCEPTANCE);
		createEAttribute(acceptanceEClass, ACCEPTANCE__CHECK);
		createEAttribute(acceptanceEClass, ACCEPTANCE__SUBJECT);
		createEAttribute(acceptanceEClass, ACCEPTANCE__REASON);
		createEAttribute(acceptanceEClass, ACCEPTANCE__ACCEPTED_BY);
		createEAttribute(acceptanceEClass, ACCEPTANCE__ACCEPTED_ON);
		createEAttribute(acceptanceEClass, ACCEPTANCE__UNTIL);

		signatureEClass = createEClass(SIGNATURE);
		createEAttribute(signatureEClass, SIGNATURE__ROLE);
		createEAttribute(signatureEClass, SIGNATURE__NAME);
		createEAttribute(signatureEClass, SIGNATURE__LICENCE);
		createEAttribute(signatureEClass, SIGNATURE__PLACE);
		createEAttribute(signatureEClass, SIGNATURE__SIGNED_ON);
		createEAttribute(signatureEClass, SIGNATURE__STATEMENT);
		createEReference(signatureEClass, SIGNATURE__VERDICTS);

		unreadEntryEClass = createEClass(UNREAD_ENTRY);
		createEAttribute(unreadEntryEClass, UNREAD_ENTRY__PLACE);
		createEAttribute(unreadEntryEClass, UNREAD_ENTRY__TEXT);

		storedVerdictEClass = createEClass(STORED_VERDICT);
		createEAttribute(storedVerdictEClass, STORED_VERDICT__CHECK);
		createEAttribute(storedVerdictEClass, STORED_VERDICT__SUBJECT);
		createEAttribute(storedVerdictEClass, STORED_VERDICT__STANDING);
		createEAttribute(storedVerdictEClass, STORED_VERDICT__MEASURED);
		createEAttribute(storedVerdictEClass, STORED_VERDICT__LIMIT);
		createEAttribute(storedVerdictEClass, STORED_VERDICT__MARGIN);

		// Create enums
		answerEEnum = createEEnum(ANSWER);
		partyRoleEEnum = createEEnum(PARTY_ROLE);
		hullKindEEnum = createEEnum(HULL_KIND);
		hullMaterialEEnum = createEEnum(HULL_MATERIAL);
		vesselServiceEEnum = createEEnum(VESSEL_SERVICE);
		fuelKindEEnum = createEEnum(FUEL_KIND);
		aspirationEEnum = createEEnum(ASPIRATION);
		fuelSystemEEnum = createEEnum(FUEL_SYSTEM);
		coolingEEnum = createEEnum(COOLING);
		phaseSystemEEnum = createEEnum(PHASE_SYSTEM);
		dutyRatingEEnum = createEEnum(DUTY_RATING);
		performanceClassEEnum = createEEnum(PERFORMANCE_CLASS);
		batteryChemistryEEnum = createEEnum(BATTERY_CHEMISTRY);
		crankingRatingDefinitionEEnum = createEEnum(CRANKING_RATING_DEFINITION);
		terminalKindEEnum = createEEnum(TERMINAL_KIND);
		cableFunctionEEnum = createEEnum(CABLE_FUNCTION);
		strandClassEEnum = createEEnum(STRAND_CLASS);
		insulationRatingEEnum = createEEnum(INSULATION_RATING);
		protectionKindEEnum = createEEnum(PROTECTION_KIND);
		tankMaterialEEnum = createEEnum(TANK_MATERIAL);
		fuelLineFunctionEEnum = createEEnum(FUEL_LINE_FUNCTION);
		fuelLineKindEEnum = createEEnum(FUEL_LINE_KIND);
		bowlKindEEnum = createEEnum(BOWL_KIND);
		antiSiphonProtectionEEnum = createEEnum(ANTI_SIPHON_PROTECTION);
		strainerPickUpEEnum = createEEnum(STRAINER_PICK_UP);
		valveKindEEnum = createEEnum(VALVE_KIND);
		fittingMaterialEEnum = createEEnum(FITTING_MATERIAL);
		waterHoseKindEEnum = createEEnum(WATER_HOSE_KIND);
		waterSectionEEnum = createEEnum(WATER_SECTION);
		pipeFittingKindEEnum = createEEnum(PIPE_FITTING_KIND);
		siphonBreakKindEEnum = createEEnum(SIPHON_BREAK_KIND);
		siphonBreakPlaceEEnum = createEEnum(SIPHON_BREAK_PLACE);
		ventHoseEndEEnum = createEEnum(VENT_HOSE_END);
		exhaustSectionEEnum = createEEnum(EXHAUST_SECTION);
		exhaustHoseStandardEEnum = createEEnum(EXHAUST_HOSE_STANDARD);
		exhaustBendKindEEnum = createEEnum(EXHAUST_BEND_KIND);
		mufflerKindEEnum = createEEnum(MUFFLER_KIND);
		outletPlaceEEnum = createEEnum(OUTLET_PLACE);
		antiSurgeEEnum = createEEnum(ANTI_SURGE);
		ductFunctionEEnum = createEEnum(DUCT_FUNCTION);
		neutralBondEEnum = createEEnum(NEUTRAL_BOND);
		transferKindEEnum = createEEnum(TRANSFER_KIND);
		polesSwitchedEEnum = createEEnum(POLES_SWITCHED);
		tripCurveEEnum = createEEnum(TRIP_CURVE);
		loadKindEEnum = createEEnum(LOAD_KIND);
		motorStartingEEnum = createEEnum(MOTOR_STARTING);
		alarmKindEEnum = createEEnum(ALARM_KIND);
		testResultEEnum = createEEnum(TEST_RESULT);
		seacockStateEEnum = createEEnum(SEACOCK_STATE);
		trialPlaceEEnum = createEEnum(TRIAL_PLACE);
		signatureRoleEEnum = createEEnum(SIGNATURE_ROLE);
		smokeColourEEnum = createEEnum(SMOKE_COLOUR);

		// Create data types
		lengthEDataType = createEDataType(LENGTH);
		areaEDataType = createEDataType(AREA);
		volumeEDataType = createEDataType(VOLUME);
		massEDataType = createEDataType(MASS);
		angleEDataType = createEDataType(ANGLE);
		slopeEDataType = createEDataType(SLOPE);
		speedEDataType = createEDataType(SPEED);
		timeSpanEDataType = createEDataType(TIME_SPAN);
		frequencyEDataType = createEDataType(FREQUENCY);
		rotationalSpeedEDataType = createEDataType(ROTATIONAL_SPEED);
		absolutePressureEDataType = createEDataType(ABSOLUTE_PRESSURE);
		gaugePressureEDataType = createEDataType(GAUGE_PRESSURE);
		pressureDifferenceEDataType = createEDataType(PRESSURE_DIFFERENCE);
		temperatureEDataType = createEDataType(TEMPERATURE);
		temperatureDifferenceEDataType = createEDataType(TEMPERATURE_DIFFERENCE);
		volumeFlowEDataType = createEDataType(VOLUME_FLOW);
		massFlowEDataType = createEDataType(MASS_FLOW);
		powerEDataType = createEDataType(POWER);
		apparentPowerEDataType = createEDataType(APPARENT_POWER);
		voltageEDataType = createEDataType(VOLTAGE);
		currentEDataType = createEDataType(CURRENT);
		resistanceEDataType = createEDataType(RESISTANCE);
		chargeEDataType = createEDataType(CHARGE);
		specificConsumptionEDataType = createEDataType(SPECIFIC_CONSUMPTION);
		ratioEDataType = createEDataType(RATIO);
		dateEDataType = createEDataType(DATE);
		dateTimeEDataType = createEDataType(DATE_TIME);
		textEDataType = createEDataType(TEXT);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private boolean isInitialized = false;

	/**
	 * Complete the initialization of the package and its meta-model.  This
	 * method is guarded to have no affect on any invocation but its first.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public void initializePackageContents() {
		if (isInitialized) return;
		isInitialized = true;

		// Initialize package
		setName(eNAME);
		setNsPrefix(eNS_PREFIX);
		setNsURI(eNS_URI);

		// Create type parameters

		// Set bounds for type parameters

		// Add supertypes to classes
		revisionEClass.getESuperTypes().add(this.getItem());
		instrumentEClass.getESuperTypes().add(this.getItem());
		partyEClass.getESuperTypes().add(this.getItem());
		photographEClass.getESuperTypes().add(this.getItem());
		batteryBlockEClass.getESuperTypes().add(this.getItem());
		cableRunEClass.getESuperTypes().add(this.getItem());
		fuelLineRunEClass.getESuperTypes().add(this.getItem());
		waterHoseRunEClass.getESuperTypes().add(this.getItem());
		pipeFittingEClass.getESuperTypes().add(this.getItem());
		exhaustPointEClass.getESuperTypes().add(this.getItem());
		exhaustSectionRunEClass.getESuperTypes().add(this.getItem());
		exhaustBendEClass.getESuperTypes().add(this.getItem());
		airDuctEClass.getESuperTypes().add(this.getItem());
		electricalLoadEClass.getESuperTypes().add(this.getItem());
		alarmDeviceEClass.getESuperTypes().add(this.getItem());
		inspectionAnswerEClass.getESuperTypes().add(this.getItem());
		procedureStepEClass.getESuperTypes().add(this.getItem());
		crankingAttemptEClass.getESuperTypes().add(this.getItem());
		loadStepEClass.getESuperTypes().add(this.getItem());
		readingEClass.getESuperTypes().add(this.getItem());
		upkeepTaskEClass.getESuperTypes().add(this.getItem());
		consumableEClass.getESuperTypes().add(this.getItem());
		acceptanceEClass.getESuperTypes().add(this.getItem());
		signatureEClass.getESuperTypes().add(this.getItem());
		unreadEntryEClass.getESuperTypes().add(this.getItem());
		storedVerdictEClass.getESuperTypes().add(this.getItem());

		// Initialize classes and features; add operations and parameters
		initEClass(itemEClass, Item.class, "Item", IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getItem_Id(), ecorePackage.getEString(), "id", null, 0, 1, Item.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(pointEClass, Point.class, "Point", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getPoint_X(), this.getLength(), "x", null, 0, 1, Point.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPoint_Y(), this.getLength(), "y", null, 0, 1, Point.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPoint_Z(), this.getLength(), "z", null, 0, 1, Point.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(commissioningRecordEClass, CommissioningRecord.class, "CommissioningRecord", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getCommissioningRecord_FormatVersion(), ecorePackage.getEString(), "formatVersion", null, 0, 1, CommissioningRecord.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCommissioningRecord_RecordNumber(), ecorePackage.getEString(), "recordNumber", null, 0, 1, CommissioningRecord.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCommissioningRecord_Title(), ecorePackage.getEString(), "title", null, 0, 1, CommissioningRecord.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCommissioningRecord_CreatedOn(), this.getDate(), "createdOn", null, 0, 1, CommissioningRecord.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCommissioningRecord_Practices(), ecorePackage.getEString(), "practices", null, 0, -1, CommissioningRecord.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCommissioningRecord_Remarks(), this.getText(), "remarks", null, 0, 1, CommissioningRecord.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCommissioningRecord_Instruments(), this.getInstrument(), null, "instruments", null, 0, -1, CommissioningRecord.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCommissioningRecord_Parties(), this.getParty(), null, "parties", null, 0, -1, CommissioningRecord.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCommissioningRecord_Vessel(), this.getVessel(), null, "vessel", null, 0, 1, CommissioningRecord.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCommissioningRecord_GeneratorSet(), this.getGeneratorSet(), null, "generatorSet", null, 0, 1, CommissioningRecord.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCommissioningRecord_StartingBattery(), this.getStartingBattery(), null, "startingBattery", null, 0, 1, CommissioningRecord.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCommissioningRecord_FuelSupply(), this.getFuelSupply(), null, "fuelSupply", null, 0, 1, CommissioningRecord.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCommissioningRecord_RawWater(), this.getRawWaterCircuit(), null, "rawWater", null, 0, 1, CommissioningRecord.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCommissioningRecord_Exhaust(), this.getExhaustRun(), null, "exhaust", null, 0, 1, CommissioningRecord.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCommissioningRecord_Ventilation(), this.getVentilation(), null, "ventilation", null, 0, 1, CommissioningRecord.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCommissioningRecord_Mounting(), this.getMounting(), null, "mounting", null, 0, 1, CommissioningRecord.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCommissioningRecord_AcOutput(), this.getAcOutput(), null, "acOutput", null, 0, 1, CommissioningRecord.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCommissioningRecord_Alarms(), this.getAlarmsAndSafety(), null, "alarms", null, 0, 1, CommissioningRecord.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCommissioningRecord_Inspections(), this.getInspectionAnswer(), null, "inspections", null, 0, -1, CommissioningRecord.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCommissioningRecord_Trial(), this.getTrial(), null, "trial", null, 0, 1, CommissioningRecord.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCommissioningRecord_Upkeep(), this.getUpkeep(), null, "upkeep", null, 0, 1, CommissioningRecord.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCommissioningRecord_Acceptances(), this.getAcceptance(), null, "acceptances", null, 0, -1, CommissioningRecord.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCommissioningRecord_Signatures(), this.getSignature(), null, "signatures", null, 0, -1, CommissioningRecord.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCommissioningRecord_Photographs(), this.getPhotograph(), null, "photographs", null, 0, -1, CommissioningRecord.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCommissioningRecord_Revisions(), this.getRevision(), null, "revisions", null, 0, -1, CommissioningRecord.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCommissioningRecord_UnreadEntries(), this.getUnreadEntry(), null, "unreadEntries", null, 0, -1, CommissioningRecord.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(revisionEClass, Revision.class, "Revision", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getRevision_Number(), ecorePackage.getEIntegerObject(), "number", null, 0, 1, Revision.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRevision_Date(), this.getDate(), "date", null, 0, 1, Revision.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRevision_By(), ecorePackage.getEString(), "by", null, 0, 1, Revision.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRevision_Description(), this.getText(), "description", null, 0, 1, Revision.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(instrumentEClass, Instrument.class, "Instrument", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getInstrument_Name(), ecorePackage.getEString(), "name", null, 0, 1, Instrument.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getInstrument_SerialNumber(), ecorePackage.getEString(), "serialNumber", null, 0, 1, Instrument.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getInstrument_Measures(), ecorePackage.getEString(), "measures", null, 0, 1, Instrument.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getInstrument_AccuracyStated(), ecorePackage.getEString(), "accuracyStated", null, 0, 1, Instrument.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getInstrument_CalibratedOn(), this.getDate(), "calibratedOn", null, 0, 1, Instrument.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(partyEClass, Party.class, "Party", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getParty_Role(), this.getPartyRole(), "role", null, 0, 1, Party.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getParty_Name(), ecorePackage.getEString(), "name", null, 0, 1, Party.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getParty_Organisation(), ecorePackage.getEString(), "organisation", null, 0, 1, Party.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getParty_Licence(), ecorePackage.getEString(), "licence", null, 0, 1, Party.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getParty_Contact(), ecorePackage.getEString(), "contact", null, 0, 1, Party.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(photographEClass, Photograph.class, "Photograph", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getPhotograph_Caption(), ecorePackage.getEString(), "caption", null, 0, 1, Photograph.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPhotograph_TakenOn(), this.getDate(), "takenOn", null, 0, 1, Photograph.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPhotograph_MediaType(), ecorePackage.getEString(), "mediaType", null, 0, 1, Photograph.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPhotograph_Data(), ecorePackage.getEByteArray(), "data", null, 0, 1, Photograph.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(vesselEClass, Vessel.class, "Vessel", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getVessel_Name(), ecorePackage.getEString(), "name", null, 0, 1, Vessel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVessel_Identification(), ecorePackage.getEString(), "identification", null, 0, 1, Vessel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVessel_Flag(), ecorePackage.getEString(), "flag", null, 0, 1, Vessel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVessel_HullKind(), this.getHullKind(), "hullKind", null, 0, 1, Vessel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVessel_HullMaterial(), this.getHullMaterial(), "hullMaterial", null, 0, 1, Vessel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVessel_Service(), this.getVesselService(), "service", null, 0, 1, Vessel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVessel_BuiltOn(), this.getDate(), "builtOn", null, 0, 1, Vessel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVessel_LengthOverall(), this.getLength(), "lengthOverall", null, 0, 1, Vessel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVessel_WaterlineLength(), this.getLength(), "waterlineLength", null, 0, 1, Vessel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVessel_Beam(), this.getLength(), "beam", null, 0, 1, Vessel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVessel_Draught(), this.getLength(), "draught", null, 0, 1, Vessel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVessel_FreeboardAmidships(), this.getLength(), "freeboardAmidships", null, 0, 1, Vessel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVessel_Passengers(), ecorePackage.getEIntegerObject(), "passengers", null, 0, 1, Vessel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVessel_OvernightPassengers(), ecorePackage.getEIntegerObject(), "overnightPassengers", null, 0, 1, Vessel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVessel_Speed(), this.getSpeed(), "speed", null, 0, 1, Vessel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVessel_DesignHeel(), this.getAngle(), "designHeel", null, 0, 1, Vessel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVessel_DesignRoll(), this.getAngle(), "designRoll", null, 0, 1, Vessel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVessel_DesignTrim(), this.getAngle(), "designTrim", null, 0, 1, Vessel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVessel_Sinkage(), this.getLength(), "sinkage", null, 0, 1, Vessel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVessel_GasolineEngineAboard(), this.getAnswer(), "gasolineEngineAboard", null, 0, 1, Vessel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVessel_GasolineEngines(), ecorePackage.getEIntegerObject(), "gasolineEngines", null, 0, 1, Vessel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(generatorSetEClass, GeneratorSet.class, "GeneratorSet", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getGeneratorSet_Maker(), ecorePackage.getEString(), "maker", null, 0, 1, GeneratorSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGeneratorSet_Type(), ecorePackage.getEString(), "type", null, 0, 1, GeneratorSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGeneratorSet_SerialNumber(), ecorePackage.getEString(), "serialNumber", null, 0, 1, GeneratorSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGeneratorSet_EngineSerialNumber(), ecorePackage.getEString(), "engineSerialNumber", null, 0, 1, GeneratorSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGeneratorSet_AlternatorSerialNumber(), ecorePackage.getEString(), "alternatorSerialNumber", null, 0, 1, GeneratorSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGeneratorSet_SoldOn(), this.getDate(), "soldOn", null, 0, 1, GeneratorSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGeneratorSet_InstalledOn(), this.getDate(), "installedOn", null, 0, 1, GeneratorSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGeneratorSet_HourMeter(), this.getTimeSpan(), "hourMeter", null, 0, 1, GeneratorSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGeneratorSet_Fuel(), this.getFuelKind(), "fuel", null, 0, 1, GeneratorSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGeneratorSet_FuelSystem(), this.getFuelSystem(), "fuelSystem", null, 0, 1, GeneratorSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGeneratorSet_Aspiration(), this.getAspiration(), "aspiration", null, 0, 1, GeneratorSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGeneratorSet_Cooling(), this.getCooling(), "cooling", null, 0, 1, GeneratorSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGeneratorSet_DutyRating(), this.getDutyRating(), "dutyRating", null, 0, 1, GeneratorSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGeneratorSet_RatedPower(), this.getPower(), "ratedPower", null, 0, 1, GeneratorSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGeneratorSet_RatedApparentPower(), this.getApparentPower(), "ratedApparentPower", null, 0, 1, GeneratorSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGeneratorSet_RatedPowerFactor(), this.getRatio(), "ratedPowerFactor", null, 0, 1, GeneratorSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGeneratorSet_RatedVoltage(), this.getVoltage(), "ratedVoltage", null, 0, 1, GeneratorSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGeneratorSet_RatedFrequency(), this.getFrequency(), "ratedFrequency", null, 0, 1, GeneratorSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGeneratorSet_Phases(), this.getPhaseSystem(), "phases", null, 0, 1, GeneratorSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGeneratorSet_RatedSpeed(), this.getRotationalSpeed(), "ratedSpeed", null, 0, 1, GeneratorSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGeneratorSet_Poles(), ecorePackage.getEIntegerObject(), "poles", null, 0, 1, GeneratorSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGeneratorSet_CrankingSpeed(), this.getRotationalSpeed(), "crankingSpeed", null, 0, 1, GeneratorSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGeneratorSet_ShaftPower(), this.getPower(), "shaftPower", null, 0, 1, GeneratorSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGeneratorSet_AlternatorEfficiency(), this.getRatio(), "alternatorEfficiency", null, 0, 1, GeneratorSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGeneratorSet_FuelConsumptionFullLoad(), this.getVolumeFlow(), "fuelConsumptionFullLoad", null, 0, 1, GeneratorSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGeneratorSet_SpecificFuelConsumption(), this.getSpecificConsumption(), "specificFuelConsumption", null, 0, 1, GeneratorSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGeneratorSet_AirFuelRatio(), this.getRatio(), "airFuelRatio", null, 0, 1, GeneratorSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGeneratorSet_ExhaustGasTemperature(), this.getTemperature(), "exhaustGasTemperature", null, 0, 1, GeneratorSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGeneratorSet_ExhaustMassFlow(), this.getMassFlow(), "exhaustMassFlow", null, 0, 1, GeneratorSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGeneratorSet_HeatToCoolant(), this.getPower(), "heatToCoolant", null, 0, 1, GeneratorSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGeneratorSet_HeatToCompartment(), this.getPower(), "heatToCompartment", null, 0, 1, GeneratorSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGeneratorSet_CombustionAirFlow(), this.getVolumeFlow(), "combustionAirFlow", null, 0, 1, GeneratorSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGeneratorSet_RawWaterFlow(), this.getVolumeFlow(), "rawWaterFlow", null, 0, 1, GeneratorSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGeneratorSet_SystemVoltage(), this.getVoltage(), "systemVoltage", null, 0, 1, GeneratorSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGeneratorSet_CrankingCurrent(), this.getCurrent(), "crankingCurrent", null, 0, 1, GeneratorSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGeneratorSet_StarterVoltage(), this.getVoltage(), "starterVoltage", null, 0, 1, GeneratorSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGeneratorSet_InSoundShield(), this.getAnswer(), "inSoundShield", null, 0, 1, GeneratorSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGeneratorSet_OverloadDeclared(), this.getAnswer(), "overloadDeclared", null, 0, 1, GeneratorSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGeneratorSet_EmissionLabelMarine(), this.getAnswer(), "emissionLabelMarine", null, 0, 1, GeneratorSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGeneratorSet_PerformanceClass(), this.getPerformanceClass(), "performanceClass", null, 0, 1, GeneratorSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGeneratorSet_DesignAmbient(), this.getTemperature(), "designAmbient", null, 0, 1, GeneratorSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGeneratorSet_SubtransientReactance(), this.getRatio(), "subtransientReactance", null, 0, 1, GeneratorSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGeneratorSet_TransientReactance(), this.getRatio(), "transientReactance", null, 0, 1, GeneratorSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGeneratorSet_SustainedShortCircuitMultiple(), this.getRatio(), "sustainedShortCircuitMultiple", null, 0, 1, GeneratorSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGeneratorSet_AnnualHours(), this.getTimeSpan(), "annualHours", null, 0, 1, GeneratorSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGeneratorSet_PlateShowsDeratedPower(), this.getAnswer(), "plateShowsDeratedPower", null, 0, 1, GeneratorSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getGeneratorSet_MakerLimits(), this.getMakerLimits(), null, "makerLimits", null, 0, 1, GeneratorSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(makerLimitsEClass, MakerLimits.class, "MakerLimits", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getMakerLimits_Document(), ecorePackage.getEString(), "document", null, 0, 1, MakerLimits.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMakerLimits_DocumentPage(), ecorePackage.getEString(), "documentPage", null, 0, 1, MakerLimits.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMakerLimits_MaximumBackPressure(), this.getGaugePressure(), "maximumBackPressure", null, 0, 1, MakerLimits.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMakerLimits_MaximumLiftHeight(), this.getLength(), "maximumLiftHeight", null, 0, 1, MakerLimits.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMakerLimits_MinimumSiphonBreakHeight(), this.getLength(), "minimumSiphonBreakHeight", null, 0, 1, MakerLimits.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMakerLimits_MinimumSiphonClearanceHeeled(), this.getLength(), "minimumSiphonClearanceHeeled", null, 0, 1, MakerLimits.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMakerLimits_SiphonBreakNeededBelow(), this.getLength(), "siphonBreakNeededBelow", null, 0, 1, MakerLimits.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMakerLimits_MinimumInjectionDrop(), this.getLength(), "minimumInjectionDrop", null, 0, 1, MakerLimits.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMakerLimits_MinimumExhaustFall(), this.getSlope(), "minimumExhaustFall", null, 0, 1, MakerLimits.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMakerLimits_MinimumExhaustBore(), this.getLength(), "minimumExhaustBore", null, 0, 1, MakerLimits.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMakerLimits_MaximumExhaustLength(), this.getLength(), "maximumExhaustLength", null, 0, 1, MakerLimits.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMakerLimits_MinimumMufflerVolume(), this.getVolume(), "minimumMufflerVolume", null, 0, 1, MakerLimits.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMakerLimits_MinimumRawWaterFlow(), this.getVolumeFlow(), "minimumRawWaterFlow", null, 0, 1, MakerLimits.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMakerLimits_MaximumRawWaterSuctionHead(), this.getLength(), "maximumRawWaterSuctionHead", null, 0, 1, MakerLimits.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMakerLimits_MaximumRawWaterVacuum(), this.getPressureDifference(), "maximumRawWaterVacuum", null, 0, 1, MakerLimits.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMakerLimits_MaximumRawWaterInletPressure(), this.getGaugePressure(), "maximumRawWaterInletPressure", null, 0, 1, MakerLimits.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMakerLimits_MinimumRawWaterHoseBore(), this.getLength(), "minimumRawWaterHoseBore", null, 0, 1, MakerLimits.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMakerLimits_MaximumFuelLift(), this.getLength(), "maximumFuelLift", null, 0, 1, MakerLimits.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMakerLimits_MaximumFuelVacuum(), this.getPressureDifference(), "maximumFuelVacuum", null, 0, 1, MakerLimits.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMakerLimits_MinimumFuelLineBore(), this.getLength(), "minimumFuelLineBore", null, 0, 1, MakerLimits.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMakerLimits_RequiredSeparatorFlow(), this.getVolumeFlow(), "requiredSeparatorFlow", null, 0, 1, MakerLimits.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMakerLimits_FilterFineness(), this.getLength(), "filterFineness", null, 0, 1, MakerLimits.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMakerLimits_MinimumBatteryCcA(), this.getCurrent(), "minimumBatteryCcA", null, 0, 1, MakerLimits.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMakerLimits_MinimumBatteryCapacity(), this.getCharge(), "minimumBatteryCapacity", null, 0, 1, MakerLimits.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMakerLimits_BatteryCrankingDefinition(), this.getCrankingRatingDefinition(), "batteryCrankingDefinition", null, 0, 1, MakerLimits.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMakerLimits_MaximumCrankingCircuitResistance(), this.getResistance(), "maximumCrankingCircuitResistance", null, 0, 1, MakerLimits.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMakerLimits_MinimumCrankingVoltage(), this.getVoltage(), "minimumCrankingVoltage", null, 0, 1, MakerLimits.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMakerLimits_FeedPressureLow(), this.getGaugePressure(), "feedPressureLow", null, 0, 1, MakerLimits.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMakerLimits_FeedPressureHigh(), this.getGaugePressure(), "feedPressureHigh", null, 0, 1, MakerLimits.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMakerLimits_RailPressureLow(), this.getGaugePressure(), "railPressureLow", null, 0, 1, MakerLimits.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMakerLimits_RailPressureHigh(), this.getGaugePressure(), "railPressureHigh", null, 0, 1, MakerLimits.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMakerLimits_MaximumCrankTime(), this.getTimeSpan(), "maximumCrankTime", null, 0, 1, MakerLimits.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMakerLimits_MaximumTotalCrankTime(), this.getTimeSpan(), "maximumTotalCrankTime", null, 0, 1, MakerLimits.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMakerLimits_MaximumCompartmentTemperature(), this.getTemperature(), "maximumCompartmentTemperature", null, 0, 1, MakerLimits.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMakerLimits_MaximumCompartmentRise(), this.getTemperatureDifference(), "maximumCompartmentRise", null, 0, 1, MakerLimits.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMakerLimits_MaximumDepression(), this.getPressureDifference(), "maximumDepression", null, 0, 1, MakerLimits.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMakerLimits_MaximumHeel(), this.getAngle(), "maximumHeel", null, 0, 1, MakerLimits.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMakerLimits_MaximumTrim(), this.getAngle(), "maximumTrim", null, 0, 1, MakerLimits.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMakerLimits_MaximumCoolantTemperature(), this.getTemperature(), "maximumCoolantTemperature", null, 0, 1, MakerLimits.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMakerLimits_MinimumOilPressure(), this.getGaugePressure(), "minimumOilPressure", null, 0, 1, MakerLimits.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMakerLimits_MaximumExhaustTemperature(), this.getTemperature(), "maximumExhaustTemperature", null, 0, 1, MakerLimits.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMakerLimits_MinimumVentilationArea(), this.getArea(), "minimumVentilationArea", null, 0, 1, MakerLimits.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(startingBatteryEClass, StartingBattery.class, "StartingBattery", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getStartingBattery_Chemistry(), this.getBatteryChemistry(), "chemistry", null, 0, 1, StartingBattery.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStartingBattery_BlockVoltage(), this.getVoltage(), "blockVoltage", null, 0, 1, StartingBattery.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStartingBattery_BlocksInSeries(), ecorePackage.getEIntegerObject(), "blocksInSeries", null, 0, 1, StartingBattery.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStartingBattery_StringsInParallel(), ecorePackage.getEIntegerObject(), "stringsInParallel", null, 0, 1, StartingBattery.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStartingBattery_BlockCapacity(), this.getCharge(), "blockCapacity", null, 0, 1, StartingBattery.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStartingBattery_BlockCrankingRating(), this.getCurrent(), "blockCrankingRating", null, 0, 1, StartingBattery.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStartingBattery_CrankingRatingDefinition(), this.getCrankingRatingDefinition(), "crankingRatingDefinition", null, 0, 1, StartingBattery.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStartingBattery_InstalledOn(), this.getDate(), "installedOn", null, 0, 1, StartingBattery.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStartingBattery_BlockMass(), this.getMass(), "blockMass", null, 0, 1, StartingBattery.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStartingBattery_BatteryTemperature(), this.getTemperature(), "batteryTemperature", null, 0, 1, StartingBattery.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStartingBattery_RestTime(), this.getTimeSpan(), "restTime", null, 0, 1, StartingBattery.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStartingBattery_RestedVoltage(), this.getVoltage(), "restedVoltage", null, 0, 1, StartingBattery.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStartingBattery_ColdestStart(), this.getTemperature(), "coldestStart", null, 0, 1, StartingBattery.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getStartingBattery_Blocks(), this.getBatteryBlock(), null, "blocks", null, 0, -1, StartingBattery.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStartingBattery_DedicatedToGenerator(), this.getAnswer(), "dedicatedToGenerator", null, 0, 1, StartingBattery.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStartingBattery_IsolatingSwitch(), this.getAnswer(), "isolatingSwitch", null, 0, 1, StartingBattery.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStartingBattery_IsolatingSwitchReachable(), this.getAnswer(), "isolatingSwitchReachable", null, 0, 1, StartingBattery.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStartingBattery_EmergencyCrossConnect(), this.getAnswer(), "emergencyCrossConnect", null, 0, 1, StartingBattery.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStartingBattery_Secured(), this.getAnswer(), "secured", null, 0, 1, StartingBattery.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStartingBattery_MovementUnderTest(), this.getLength(), "movementUnderTest", null, 0, 1, StartingBattery.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStartingBattery_TrayOrBox(), this.getAnswer(), "trayOrBox", null, 0, 1, StartingBattery.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStartingBattery_PositiveTerminalCovered(), this.getAnswer(), "positiveTerminalCovered", null, 0, 1, StartingBattery.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStartingBattery_Terminals(), this.getTerminalKind(), "terminals", null, 0, 1, StartingBattery.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStartingBattery_VentedOverboard(), this.getAnswer(), "ventedOverboard", null, 0, 1, StartingBattery.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStartingBattery_VentilationAreaEachWay(), this.getArea(), "ventilationAreaEachWay", null, 0, 1, StartingBattery.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStartingBattery_DistanceToStarter(), this.getLength(), "distanceToStarter", null, 0, 1, StartingBattery.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStartingBattery_FuelPartsWithinReach(), this.getAnswer(), "fuelPartsWithinReach", null, 0, 1, StartingBattery.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStartingBattery_DielectricShield(), this.getAnswer(), "dielectricShield", null, 0, 1, StartingBattery.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStartingBattery_AboveOrBelowFuelFittings(), this.getAnswer(), "aboveOrBelowFuelFittings", null, 0, 1, StartingBattery.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStartingBattery_HighAboveBilge(), this.getAnswer(), "highAboveBilge", null, 0, 1, StartingBattery.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStartingBattery_ChargerRatedCurrent(), this.getCurrent(), "chargerRatedCurrent", null, 0, 1, StartingBattery.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStartingBattery_ChargerVoltage(), this.getVoltage(), "chargerVoltage", null, 0, 1, StartingBattery.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStartingBattery_ChargingVoltageRunning(), this.getVoltage(), "chargingVoltageRunning", null, 0, 1, StartingBattery.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStartingBattery_ChargerAmmeter(), this.getAnswer(), "chargerAmmeter", null, 0, 1, StartingBattery.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStartingBattery_SameTypeAndAge(), this.getAnswer(), "sameTypeAndAge", null, 0, 1, StartingBattery.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getStartingBattery_Cables(), this.getCableRun(), null, "cables", null, 0, -1, StartingBattery.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStartingBattery_CrankingVoltageAtPosts(), this.getVoltage(), "crankingVoltageAtPosts", null, 0, 1, StartingBattery.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStartingBattery_CrankingVoltageAtStarter(), this.getVoltage(), "crankingVoltageAtStarter", null, 0, 1, StartingBattery.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStartingBattery_BlocksMixed(), this.getAnswer(), "blocksMixed", null, 0, 1, StartingBattery.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStartingBattery_EmergencySource(), this.getAnswer(), "emergencySource", null, 0, 1, StartingBattery.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(batteryBlockEClass, BatteryBlock.class, "BatteryBlock", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getBatteryBlock_Label(), ecorePackage.getEString(), "label", null, 0, 1, BatteryBlock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBatteryBlock_RestedVoltage(), this.getVoltage(), "restedVoltage", null, 0, 1, BatteryBlock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBatteryBlock_SpecificGravityLow(), this.getRatio(), "specificGravityLow", null, 0, 1, BatteryBlock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBatteryBlock_SpecificGravityHigh(), this.getRatio(), "specificGravityHigh", null, 0, 1, BatteryBlock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(cableRunEClass, CableRun.class, "CableRun", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getCableRun_Name(), ecorePackage.getEString(), "name", null, 0, 1, CableRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCableRun_Function(), this.getCableFunction(), "function", null, 0, 1, CableRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCableRun_ConductorSize(), ecorePackage.getEString(), "conductorSize", null, 0, 1, CableRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCableRun_StrandClass(), this.getStrandClass(), "strandClass", null, 0, 1, CableRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCableRun_Insulation(), this.getInsulationRating(), "insulation", null, 0, 1, CableRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCableRun_Length(), this.getLength(), "length", null, 0, 1, CableRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCableRun_Current(), this.getCurrent(), "current", null, 0, 1, CableRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCableRun_SystemVoltage(), this.getVoltage(), "systemVoltage", null, 0, 1, CableRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCableRun_Critical(), this.getAnswer(), "critical", null, 0, 1, CableRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCableRun_InEngineSpace(), this.getAnswer(), "inEngineSpace", null, 0, 1, CableRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCableRun_ConductorsInBundle(), ecorePackage.getEIntegerObject(), "conductorsInBundle", null, 0, 1, CableRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCableRun_ConductorTemperature(), this.getTemperature(), "conductorTemperature", null, 0, 1, CableRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCableRun_Protection(), this.getProtectionKind(), "protection", null, 0, 1, CableRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCableRun_ProtectionRating(), this.getCurrent(), "protectionRating", null, 0, 1, CableRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCableRun_ProtectionVoltageRating(), this.getVoltage(), "protectionVoltageRating", null, 0, 1, CableRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCableRun_ProtectionDistanceFromSource(), this.getLength(), "protectionDistanceFromSource", null, 0, 1, CableRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCableRun_SheathedToProtection(), this.getAnswer(), "sheathedToProtection", null, 0, 1, CableRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCableRun_ConnectedToBatteryTerminal(), this.getAnswer(), "connectedToBatteryTerminal", null, 0, 1, CableRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCableRun_SupportSpacing(), this.getLength(), "supportSpacing", null, 0, 1, CableRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCableRun_RingTerminals(), this.getAnswer(), "ringTerminals", null, 0, 1, CableRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCableRun_LugsOnStud(), ecorePackage.getEIntegerObject(), "lugsOnStud", null, 0, 1, CableRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCableRun_ChafeProtected(), this.getAnswer(), "chafeProtected", null, 0, 1, CableRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCableRun_MultiStrandCopper(), this.getAnswer(), "multiStrandCopper", null, 0, 1, CableRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCableRun_MeasuredDrop(), this.getVoltage(), "measuredDrop", null, 0, 1, CableRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(fuelSupplyEClass, FuelSupply.class, "FuelSupply", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getFuelSupply_Tank(), this.getFuelTank(), null, "tank", null, 0, 1, FuelSupply.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getFuelSupply_Lines(), this.getFuelLineRun(), null, "lines", null, 0, -1, FuelSupply.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getFuelSupply_Separator(), this.getFuelSeparator(), null, "separator", null, 0, 1, FuelSupply.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getFuelSupply_PumpPosition(), this.getPoint(), null, "pumpPosition", null, 0, 1, FuelSupply.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelSupply_EngineInletHeight(), this.getLength(), "engineInletHeight", null, 0, 1, FuelSupply.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelSupply_HighestLinePoint(), this.getLength(), "highestLinePoint", null, 0, 1, FuelSupply.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelSupply_LowestLinePoint(), this.getLength(), "lowestLinePoint", null, 0, 1, FuelSupply.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelSupply_PumpFlow(), this.getVolumeFlow(), "pumpFlow", null, 0, 1, FuelSupply.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelSupply_ElectricPump(), this.getAnswer(), "electricPump", null, 0, 1, FuelSupply.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelSupply_PumpStopsWithEngine(), this.getAnswer(), "pumpStopsWithEngine", null, 0, 1, FuelSupply.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelSupply_PumpWithinReachOfEngine(), this.getAnswer(), "pumpWithinReachOfEngine", null, 0, 1, FuelSupply.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelSupply_AntiSiphon(), this.getAntiSiphonProtection(), "antiSiphon", null, 0, 1, FuelSupply.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelSupply_AntiSiphonCrackingPressure(), this.getPressureDifference(), "antiSiphonCrackingPressure", null, 0, 1, FuelSupply.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelSupply_TankShutOff(), this.getAnswer(), "tankShutOff", null, 0, 1, FuelSupply.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelSupply_TankShutOffReachableFromOutside(), this.getAnswer(), "tankShutOffReachableFromOutside", null, 0, 1, FuelSupply.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelSupply_EngineShutOff(), this.getAnswer(), "engineShutOff", null, 0, 1, FuelSupply.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelSupply_LineLengthTankToEngine(), this.getLength(), "lineLengthTankToEngine", null, 0, 1, FuelSupply.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelSupply_OwnPickUp(), this.getAnswer(), "ownPickUp", null, 0, 1, FuelSupply.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelSupply_PickUpClearance(), this.getLength(), "pickUpClearance", null, 0, 1, FuelSupply.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelSupply_PickUpScreen(), this.getAnswer(), "pickUpScreen", null, 0, 1, FuelSupply.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelSupply_ReturnToTankInUse(), this.getAnswer(), "returnToTankInUse", null, 0, 1, FuelSupply.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelSupply_ReturnCanDeadHead(), this.getAnswer(), "returnCanDeadHead", null, 0, 1, FuelSupply.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelSupply_FlexibleLastLink(), this.getAnswer(), "flexibleLastLink", null, 0, 1, FuelSupply.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelSupply_RigidLineSupportDistance(), this.getLength(), "rigidLineSupportDistance", null, 0, 1, FuelSupply.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelSupply_FlexibleHoseSpillVolume(), this.getVolume(), "flexibleHoseSpillVolume", null, 0, 1, FuelSupply.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelSupply_LeakTestPressure(), this.getGaugePressure(), "leakTestPressure", null, 0, 1, FuelSupply.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelSupply_LeakTestHeld(), this.getAnswer(), "leakTestHeld", null, 0, 1, FuelSupply.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelSupply_GroundResistance(), this.getResistance(), "groundResistance", null, 0, 1, FuelSupply.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelSupply_FillHoseClamps(), ecorePackage.getEIntegerObject(), "fillHoseClamps", null, 0, 1, FuelSupply.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelSupply_FillClampBandWidth(), this.getLength(), "fillClampBandWidth", null, 0, 1, FuelSupply.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelSupply_VentFlameArrester(), this.getAnswer(), "ventFlameArrester", null, 0, 1, FuelSupply.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelSupply_CleanVacuumAtPump(), this.getPressureDifference(), "cleanVacuumAtPump", null, 0, 1, FuelSupply.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelSupply_VacuumAtPumpNow(), this.getPressureDifference(), "vacuumAtPumpNow", null, 0, 1, FuelSupply.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelSupply_FeedPressure(), this.getGaugePressure(), "feedPressure", null, 0, 1, FuelSupply.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelSupply_RailPressure(), this.getGaugePressure(), "railPressure", null, 0, 1, FuelSupply.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelSupply_PlannedRunTime(), this.getTimeSpan(), "plannedRunTime", null, 0, 1, FuelSupply.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelSupply_PlannedLoadPower(), this.getPower(), "plannedLoadPower", null, 0, 1, FuelSupply.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelSupply_BackfireFlameArrester(), this.getAnswer(), "backfireFlameArrester", null, 0, 1, FuelSupply.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(fuelTankEClass, FuelTank.class, "FuelTank", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getFuelTank_Name(), ecorePackage.getEString(), "name", null, 0, 1, FuelTank.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelTank_Material(), this.getTankMaterial(), "material", null, 0, 1, FuelTank.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelTank_Capacity(), this.getVolume(), "capacity", null, 0, 1, FuelTank.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelTank_UsableFraction(), this.getRatio(), "usableFraction", null, 0, 1, FuelTank.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getFuelTank_Top(), this.getPoint(), null, "top", null, 0, 1, FuelTank.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelTank_BottomHeight(), this.getLength(), "bottomHeight", null, 0, 1, FuelTank.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelTank_Labelled(), this.getAnswer(), "labelled", null, 0, 1, FuelTank.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelTank_TestPressureOnLabel(), this.getGaugePressure(), "testPressureOnLabel", null, 0, 1, FuelTank.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelTank_TestPressure(), this.getGaugePressure(), "testPressure", null, 0, 1, FuelTank.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelTank_OpeningsAtTop(), this.getAnswer(), "openingsAtTop", null, 0, 1, FuelTank.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelTank_Movement(), this.getLength(), "movement", null, 0, 1, FuelTank.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelTank_SharedWithMainEngine(), this.getAnswer(), "sharedWithMainEngine", null, 0, 1, FuelTank.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(fuelLineRunEClass, FuelLineRun.class, "FuelLineRun", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getFuelLineRun_Name(), ecorePackage.getEString(), "name", null, 0, 1, FuelLineRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelLineRun_Function(), this.getFuelLineFunction(), "function", null, 0, 1, FuelLineRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelLineRun_Kind(), this.getFuelLineKind(), "kind", null, 0, 1, FuelLineRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelLineRun_Bore(), this.getLength(), "bore", null, 0, 1, FuelLineRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelLineRun_Length(), this.getLength(), "length", null, 0, 1, FuelLineRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelLineRun_Marking(), ecorePackage.getEString(), "marking", null, 0, 1, FuelLineRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelLineRun_WorkingPressure(), this.getGaugePressure(), "workingPressure", null, 0, 1, FuelLineRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelLineRun_ClampsPerEnd(), ecorePackage.getEIntegerObject(), "clampsPerEnd", null, 0, 1, FuelLineRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelLineRun_BarbedEnds(), this.getAnswer(), "barbedEnds", null, 0, 1, FuelLineRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelLineRun_InEngineSpace(), this.getAnswer(), "inEngineSpace", null, 0, 1, FuelLineRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelLineRun_InstalledOn(), this.getDate(), "installedOn", null, 0, 1, FuelLineRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(fuelSeparatorEClass, FuelSeparator.class, "FuelSeparator", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getFuelSeparator_Maker(), ecorePackage.getEString(), "maker", null, 0, 1, FuelSeparator.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelSeparator_RatedFlow(), this.getVolumeFlow(), "ratedFlow", null, 0, 1, FuelSeparator.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelSeparator_Fineness(), this.getLength(), "fineness", null, 0, 1, FuelSeparator.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelSeparator_OnEngineFineness(), this.getLength(), "onEngineFineness", null, 0, 1, FuelSeparator.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelSeparator_Bowl(), this.getBowlKind(), "bowl", null, 0, 1, FuelSeparator.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getFuelSeparator_Position(), this.getPoint(), null, "position", null, 0, 1, FuelSeparator.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelSeparator_ClearanceBelow(), this.getLength(), "clearanceBelow", null, 0, 1, FuelSeparator.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelSeparator_FixedToStructure(), this.getAnswer(), "fixedToStructure", null, 0, 1, FuelSeparator.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelSeparator_HighestPointOfLine(), this.getAnswer(), "highestPointOfLine", null, 0, 1, FuelSeparator.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelSeparator_FireTested(), this.getAnswer(), "fireTested", null, 0, 1, FuelSeparator.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelSeparator_WaterAlarm(), this.getAnswer(), "waterAlarm", null, 0, 1, FuelSeparator.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelSeparator_ElementChangedOn(), this.getDate(), "elementChangedOn", null, 0, 1, FuelSeparator.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelSeparator_BypassOrSpare(), this.getAnswer(), "bypassOrSpare", null, 0, 1, FuelSeparator.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelSeparator_WaterFound(), this.getAnswer(), "waterFound", null, 0, 1, FuelSeparator.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(rawWaterCircuitEClass, RawWaterCircuit.class, "RawWaterCircuit", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getRawWaterCircuit_PickUp(), this.getHullPickUp(), null, "pickUp", null, 0, 1, RawWaterCircuit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getRawWaterCircuit_Seacock(), this.getSeacock(), null, "seacock", null, 0, 1, RawWaterCircuit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getRawWaterCircuit_Strainer(), this.getWaterStrainer(), null, "strainer", null, 0, 1, RawWaterCircuit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getRawWaterCircuit_Hoses(), this.getWaterHoseRun(), null, "hoses", null, 0, -1, RawWaterCircuit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getRawWaterCircuit_Pump(), this.getWaterPump(), null, "pump", null, 0, 1, RawWaterCircuit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getRawWaterCircuit_SiphonBreak(), this.getSiphonBreak(), null, "siphonBreak", null, 0, 1, RawWaterCircuit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getRawWaterCircuit_Injection(), this.getPoint(), null, "injection", null, 0, 1, RawWaterCircuit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRawWaterCircuit_SiphonBreakHoseBore(), this.getLength(), "siphonBreakHoseBore", null, 0, 1, RawWaterCircuit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRawWaterCircuit_OwnIntake(), this.getAnswer(), "ownIntake", null, 0, 1, RawWaterCircuit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRawWaterCircuit_DischargeAheadOfIntake(), this.getAnswer(), "dischargeAheadOfIntake", null, 0, 1, RawWaterCircuit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRawWaterCircuit_MeasuredFlow(), this.getVolumeFlow(), "measuredFlow", null, 0, 1, RawWaterCircuit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRawWaterCircuit_MeasuredVacuumAtPump(), this.getPressureDifference(), "measuredVacuumAtPump", null, 0, 1, RawWaterCircuit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRawWaterCircuit_MeasuredInletTemperature(), this.getTemperature(), "measuredInletTemperature", null, 0, 1, RawWaterCircuit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRawWaterCircuit_MeasuredOverboardTemperature(), this.getTemperature(), "measuredOverboardTemperature", null, 0, 1, RawWaterCircuit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRawWaterCircuit_DesignSeaTemperature(), this.getTemperature(), "designSeaTemperature", null, 0, 1, RawWaterCircuit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRawWaterCircuit_SeacockTagAtStartPanel(), this.getAnswer(), "seacockTagAtStartPanel", null, 0, 1, RawWaterCircuit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRawWaterCircuit_ShutWhenNotInUse(), this.getAnswer(), "shutWhenNotInUse", null, 0, 1, RawWaterCircuit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRawWaterCircuit_WinteriseConnection(), this.getAnswer(), "winteriseConnection", null, 0, 1, RawWaterCircuit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(hullPickUpEClass, HullPickUp.class, "HullPickUp", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getHullPickUp_Kind(), this.getStrainerPickUp(), "kind", null, 0, 1, HullPickUp.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getHullPickUp_Position(), this.getPoint(), null, "position", null, 0, 1, HullPickUp.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getHullPickUp_Bore(), this.getLength(), "bore", null, 0, 1, HullPickUp.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getHullPickUp_Material(), this.getFittingMaterial(), "material", null, 0, 1, HullPickUp.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getHullPickUp_GratingOpenArea(), this.getArea(), "gratingOpenArea", null, 0, 1, HullPickUp.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getHullPickUp_LightShipRise(), this.getLength(), "lightShipRise", null, 0, 1, HullPickUp.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(seacockEClass, Seacock.class, "Seacock", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getSeacock_Kind(), this.getValveKind(), "kind", null, 0, 1, Seacock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSeacock_Material(), this.getFittingMaterial(), "material", null, 0, 1, Seacock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSeacock_Bore(), this.getLength(), "bore", null, 0, 1, Seacock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSeacock_FullBore(), this.getAnswer(), "fullBore", null, 0, 1, Seacock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSeacock_LeverShowsState(), this.getAnswer(), "leverShowsState", null, 0, 1, Seacock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSeacock_ReachableWithoutTools(), this.getAnswer(), "reachableWithoutTools", null, 0, 1, Seacock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSeacock_CloseToHull(), this.getAnswer(), "closeToHull", null, 0, 1, Seacock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSeacock_StaticLoadMarked(), this.getAnswer(), "staticLoadMarked", null, 0, 1, Seacock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSeacock_WorksFreely(), this.getAnswer(), "worksFreely", null, 0, 1, Seacock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(waterStrainerEClass, WaterStrainer.class, "WaterStrainer", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getWaterStrainer_Position(), this.getPoint(), null, "position", null, 0, 1, WaterStrainer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWaterStrainer_PortBore(), this.getLength(), "portBore", null, 0, 1, WaterStrainer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWaterStrainer_BasketOpenArea(), this.getArea(), "basketOpenArea", null, 0, 1, WaterStrainer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWaterStrainer_HoleSize(), this.getLength(), "holeSize", null, 0, 1, WaterStrainer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWaterStrainer_SeeThroughOrOpenable(), this.getAnswer(), "seeThroughOrOpenable", null, 0, 1, WaterStrainer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWaterStrainer_BesideSeacock(), this.getAnswer(), "besideSeacock", null, 0, 1, WaterStrainer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWaterStrainer_LidAboveWaterline(), this.getAnswer(), "lidAboveWaterline", null, 0, 1, WaterStrainer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(waterHoseRunEClass, WaterHoseRun.class, "WaterHoseRun", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getWaterHoseRun_Name(), ecorePackage.getEString(), "name", null, 0, 1, WaterHoseRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWaterHoseRun_Section(), this.getWaterSection(), "section", null, 0, 1, WaterHoseRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWaterHoseRun_Kind(), this.getWaterHoseKind(), "kind", null, 0, 1, WaterHoseRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWaterHoseRun_Bore(), this.getLength(), "bore", null, 0, 1, WaterHoseRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWaterHoseRun_Length(), this.getLength(), "length", null, 0, 1, WaterHoseRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWaterHoseRun_ClampsPerEnd(), ecorePackage.getEIntegerObject(), "clampsPerEnd", null, 0, 1, WaterHoseRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWaterHoseRun_CollapseProof(), this.getAnswer(), "collapseProof", null, 0, 1, WaterHoseRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getWaterHoseRun_Fittings(), this.getPipeFitting(), null, "fittings", null, 0, -1, WaterHoseRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWaterHoseRun_InstalledOn(), this.getDate(), "installedOn", null, 0, 1, WaterHoseRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(pipeFittingEClass, PipeFitting.class, "PipeFitting", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getPipeFitting_Kind(), this.getPipeFittingKind(), "kind", null, 0, 1, PipeFitting.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPipeFitting_Count(), ecorePackage.getEIntegerObject(), "count", null, 0, 1, PipeFitting.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(waterPumpEClass, WaterPump.class, "WaterPump", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getWaterPump_Position(), this.getPoint(), null, "position", null, 0, 1, WaterPump.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWaterPump_InletBore(), this.getLength(), "inletBore", null, 0, 1, WaterPump.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWaterPump_OutletBore(), this.getLength(), "outletBore", null, 0, 1, WaterPump.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWaterPump_RatedFlow(), this.getVolumeFlow(), "ratedFlow", null, 0, 1, WaterPump.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWaterPump_SelfPriming(), this.getAnswer(), "selfPriming", null, 0, 1, WaterPump.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWaterPump_ImpellerPiecesMissing(), ecorePackage.getEIntegerObject(), "impellerPiecesMissing", null, 0, 1, WaterPump.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWaterPump_ImpellerPiecesFound(), ecorePackage.getEIntegerObject(), "impellerPiecesFound", null, 0, 1, WaterPump.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWaterPump_ImpellerChangedOn(), this.getDate(), "impellerChangedOn", null, 0, 1, WaterPump.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(siphonBreakEClass, SiphonBreak.class, "SiphonBreak", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getSiphonBreak_Kind(), this.getSiphonBreakKind(), "kind", null, 0, 1, SiphonBreak.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSiphonBreak_VentSeat(), this.getPoint(), null, "ventSeat", null, 0, 1, SiphonBreak.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSiphonBreak_Place(), this.getSiphonBreakPlace(), "place", null, 0, 1, SiphonBreak.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSiphonBreak_Bore(), this.getLength(), "bore", null, 0, 1, SiphonBreak.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSiphonBreak_HighestPoint(), this.getAnswer(), "highestPoint", null, 0, 1, SiphonBreak.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSiphonBreak_VentHose(), this.getVentHoseEnd(), "ventHose", null, 0, 1, SiphonBreak.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSiphonBreak_VentHoseFree(), this.getAnswer(), "ventHoseFree", null, 0, 1, SiphonBreak.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSiphonBreak_VentHoseEndHeight(), this.getLength(), "ventHoseEndHeight", null, 0, 1, SiphonBreak.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSiphonBreak_BleedBore(), this.getLength(), "bleedBore", null, 0, 1, SiphonBreak.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSiphonBreak_TellTaleVisible(), this.getAnswer(), "tellTaleVisible", null, 0, 1, SiphonBreak.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSiphonBreak_AboveElectrics(), this.getAnswer(), "aboveElectrics", null, 0, 1, SiphonBreak.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSiphonBreak_DripShield(), this.getAnswer(), "dripShield", null, 0, 1, SiphonBreak.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSiphonBreak_ServicedOn(), this.getDate(), "servicedOn", null, 0, 1, SiphonBreak.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSiphonBreak_ValveTested(), this.getAnswer(), "valveTested", null, 0, 1, SiphonBreak.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(exhaustRunEClass, ExhaustRun.class, "ExhaustRun", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getExhaustRun_Path(), this.getExhaustPoint(), null, "path", null, 0, -1, ExhaustRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getExhaustRun_Sections(), this.getExhaustSectionRun(), null, "sections", null, 0, -1, ExhaustRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getExhaustRun_Muffler(), this.getMuffler(), null, "muffler", null, 0, 1, ExhaustRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getExhaustRun_Riser(), this.getRiser(), null, "riser", null, 0, 1, ExhaustRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getExhaustRun_Crest(), this.getExhaustCrest(), null, "crest", null, 0, 1, ExhaustRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getExhaustRun_Outlet(), this.getExhaustOutlet(), null, "outlet", null, 0, 1, ExhaustRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getExhaustRun_SeparatorDrain(), this.getSeparatorDrain(), null, "separatorDrain", null, 0, 1, ExhaustRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getExhaustRun_TurbineOutletPortBore(), this.getLength(), "turbineOutletPortBore", null, 0, 1, ExhaustRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getExhaustRun_OwnSystem(), this.getAnswer(), "ownSystem", null, 0, 1, ExhaustRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getExhaustRun_GasTight(), this.getAnswer(), "gasTight", null, 0, 1, ExhaustRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getExhaustRun_DryPartsLagged(), this.getAnswer(), "dryPartsLagged", null, 0, 1, ExhaustRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getExhaustRun_DryPartSurfaceTemperature(), this.getTemperature(), "dryPartSurfaceTemperature", null, 0, 1, ExhaustRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getExhaustRun_WeightOnManifold(), this.getAnswer(), "weightOnManifold", null, 0, 1, ExhaustRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getExhaustRun_TemperatureAlarm(), this.getAnswer(), "temperatureAlarm", null, 0, 1, ExhaustRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getExhaustRun_TemperatureAlarmSetting(), this.getTemperature(), "temperatureAlarmSetting", null, 0, 1, ExhaustRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getExhaustRun_TestTapFitted(), this.getAnswer(), "testTapFitted", null, 0, 1, ExhaustRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getExhaustRun_TestTapDistance(), this.getLength(), "testTapDistance", null, 0, 1, ExhaustRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getExhaustRun_MeasuredBackPressure(), this.getGaugePressure(), "measuredBackPressure", null, 0, 1, ExhaustRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getExhaustRun_MeasuredBackPressureLoad(), this.getRatio(), "measuredBackPressureLoad", null, 0, 1, ExhaustRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getExhaustRun_BaselineBackPressure(), this.getGaugePressure(), "baselineBackPressure", null, 0, 1, ExhaustRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getExhaustRun_SilencerLoss(), this.getPressureDifference(), "silencerLoss", null, 0, 1, ExhaustRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getExhaustRun_WaterFullLength(), this.getAnswer(), "waterFullLength", null, 0, 1, ExhaustRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getExhaustRun_BulkheadsSealed(), this.getAnswer(), "bulkheadsSealed", null, 0, 1, ExhaustRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getExhaustRun_JointsAccessible(), this.getAnswer(), "jointsAccessible", null, 0, 1, ExhaustRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getExhaustRun_ClearOfCombustibles(), this.getAnswer(), "clearOfCombustibles", null, 0, 1, ExhaustRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(exhaustPointEClass, ExhaustPoint.class, "ExhaustPoint", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getExhaustPoint_Name(), ecorePackage.getEString(), "name", null, 0, 1, ExhaustPoint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getExhaustPoint_Position(), this.getPoint(), null, "position", null, 0, 1, ExhaustPoint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getExhaustPoint_Bore(), this.getLength(), "bore", null, 0, 1, ExhaustPoint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(exhaustSectionRunEClass, ExhaustSectionRun.class, "ExhaustSectionRun", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getExhaustSectionRun_Name(), ecorePackage.getEString(), "name", null, 0, 1, ExhaustSectionRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getExhaustSectionRun_Section(), this.getExhaustSection(), "section", null, 0, 1, ExhaustSectionRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getExhaustSectionRun_Standard(), this.getExhaustHoseStandard(), "standard", null, 0, 1, ExhaustSectionRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getExhaustSectionRun_Bore(), this.getLength(), "bore", null, 0, 1, ExhaustSectionRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getExhaustSectionRun_Length(), this.getLength(), "length", null, 0, 1, ExhaustSectionRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getExhaustSectionRun_Rise(), this.getLength(), "rise", null, 0, 1, ExhaustSectionRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getExhaustSectionRun_Fall(), this.getLength(), "fall", null, 0, 1, ExhaustSectionRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getExhaustSectionRun_SlopesBackToMuffler(), this.getAnswer(), "slopesBackToMuffler", null, 0, 1, ExhaustSectionRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getExhaustSectionRun_Bends(), this.getExhaustBend(), null, "bends", null, 0, -1, ExhaustSectionRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getExhaustSectionRun_ClampsPerEnd(), ecorePackage.getEIntegerObject(), "clampsPerEnd", null, 0, 1, ExhaustSectionRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getExhaustSectionRun_ClampBandWidth(), this.getLength(), "clampBandWidth", null, 0, 1, ExhaustSectionRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getExhaustSectionRun_SupportSpacing(), this.getLength(), "supportSpacing", null, 0, 1, ExhaustSectionRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getExhaustSectionRun_SagFree(), this.getAnswer(), "sagFree", null, 0, 1, ExhaustSectionRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getExhaustSectionRun_InstalledOn(), this.getDate(), "installedOn", null, 0, 1, ExhaustSectionRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getExhaustSectionRun_GasTemperature(), this.getTemperature(), "gasTemperature", null, 0, 1, ExhaustSectionRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(exhaustBendEClass, ExhaustBend.class, "ExhaustBend", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getExhaustBend_Kind(), this.getExhaustBendKind(), "kind", null, 0, 1, ExhaustBend.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getExhaustBend_Count(), ecorePackage.getEIntegerObject(), "count", null, 0, 1, ExhaustBend.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getExhaustBend_Radius(), this.getLength(), "radius", null, 0, 1, ExhaustBend.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(mufflerEClass, Muffler.class, "Muffler", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getMuffler_Kind(), this.getMufflerKind(), "kind", null, 0, 1, Muffler.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getMuffler_Position(), this.getPoint(), null, "position", null, 0, 1, Muffler.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMuffler_InletBore(), this.getLength(), "inletBore", null, 0, 1, Muffler.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMuffler_OutletBore(), this.getLength(), "outletBore", null, 0, 1, Muffler.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMuffler_VolumeToInlet(), this.getVolume(), "volumeToInlet", null, 0, 1, Muffler.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMuffler_ResidueFraction(), this.getRatio(), "residueFraction", null, 0, 1, Muffler.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMuffler_BottomHeight(), this.getLength(), "bottomHeight", null, 0, 1, Muffler.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMuffler_InletInvertHeight(), this.getLength(), "inletInvertHeight", null, 0, 1, Muffler.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMuffler_DistanceFromEngine(), this.getLength(), "distanceFromEngine", null, 0, 1, Muffler.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMuffler_LowestPoint(), this.getAnswer(), "lowestPoint", null, 0, 1, Muffler.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMuffler_Marked(), this.getAnswer(), "marked", null, 0, 1, Muffler.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMuffler_DrainPlug(), this.getAnswer(), "drainPlug", null, 0, 1, Muffler.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMuffler_DrainPosition(), this.getAnswer(), "drainPosition", null, 0, 1, Muffler.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMuffler_LevelAfterStopBelowInlet(), this.getAnswer(), "levelAfterStopBelowInlet", null, 0, 1, Muffler.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMuffler_Supported(), this.getAnswer(), "supported", null, 0, 1, Muffler.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMuffler_PressureLoss(), this.getPressureDifference(), "pressureLoss", null, 0, 1, Muffler.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(riserEClass, Riser.class, "Riser", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getRiser_DryCrestInside(), this.getPoint(), null, "dryCrestInside", null, 0, 1, Riser.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRiser_InjectionOnFallingLeg(), this.getAnswer(), "injectionOnFallingLeg", null, 0, 1, Riser.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRiser_InjectionPointsDown(), this.getAnswer(), "injectionPointsDown", null, 0, 1, Riser.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRiser_InjectionDropToMuffler(), this.getLength(), "injectionDropToMuffler", null, 0, 1, Riser.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRiser_LiftHeight(), this.getLength(), "liftHeight", null, 0, 1, Riser.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRiser_ElbowBore(), this.getLength(), "elbowBore", null, 0, 1, Riser.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRiser_ElbowInspectedOn(), this.getDate(), "elbowInspectedOn", null, 0, 1, Riser.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(exhaustCrestEClass, ExhaustCrest.class, "ExhaustCrest", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getExhaustCrest_InsideBottom(), this.getPoint(), null, "insideBottom", null, 0, 1, ExhaustCrest.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getExhaustCrest_Vented(), this.getAnswer(), "vented", null, 0, 1, ExhaustCrest.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(exhaustOutletEClass, ExhaustOutlet.class, "ExhaustOutlet", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getExhaustOutlet_Place(), this.getOutletPlace(), "place", null, 0, 1, ExhaustOutlet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getExhaustOutlet_InsideBottom(), this.getPoint(), null, "insideBottom", null, 0, 1, ExhaustOutlet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getExhaustOutlet_Bore(), this.getLength(), "bore", null, 0, 1, ExhaustOutlet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getExhaustOutlet_AntiSurge(), this.getAntiSurge(), "antiSurge", null, 0, 1, ExhaustOutlet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getExhaustOutlet_ClosedByValve(), this.getAnswer(), "closedByValve", null, 0, 1, ExhaustOutlet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getExhaustOutlet_UnderSwimPlatform(), this.getAnswer(), "underSwimPlatform", null, 0, 1, ExhaustOutlet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getExhaustOutlet_NearOpenings(), this.getAnswer(), "nearOpenings", null, 0, 1, ExhaustOutlet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getExhaustOutlet_DistanceToOpening(), this.getLength(), "distanceToOpening", null, 0, 1, ExhaustOutlet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getExhaustOutlet_WaterVisible(), this.getAnswer(), "waterVisible", null, 0, 1, ExhaustOutlet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getExhaustOutlet_Material(), this.getFittingMaterial(), "material", null, 0, 1, ExhaustOutlet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(separatorDrainEClass, SeparatorDrain.class, "SeparatorDrain", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getSeparatorDrain_Bore(), this.getLength(), "bore", null, 0, 1, SeparatorDrain.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSeparatorDrain_BaseHeight(), this.getLength(), "baseHeight", null, 0, 1, SeparatorDrain.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSeparatorDrain_OwnSeacock(), this.getAnswer(), "ownSeacock", null, 0, 1, SeparatorDrain.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSeparatorDrain_FallsAllTheWay(), this.getAnswer(), "fallsAllTheWay", null, 0, 1, SeparatorDrain.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSeparatorDrain_GasSidePressure(), this.getGaugePressure(), "gasSidePressure", null, 0, 1, SeparatorDrain.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(ventilationEClass, Ventilation.class, "Ventilation", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getVentilation_NetVolume(), this.getVolume(), "netVolume", null, 0, 1, Ventilation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVentilation_GrossVolume(), this.getVolume(), "grossVolume", null, 0, 1, Ventilation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVentilation_OpenAreaToAtmosphere(), this.getArea(), "openAreaToAtmosphere", null, 0, 1, Ventilation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVentilation_ConnectedOpeningFraction(), this.getRatio(), "connectedOpeningFraction", null, 0, 1, Ventilation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVentilation_CompartmentHeight(), this.getLength(), "compartmentHeight", null, 0, 1, Ventilation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVentilation_BilgeWaterHeight(), this.getLength(), "bilgeWaterHeight", null, 0, 1, Ventilation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getVentilation_Ducts(), this.getAirDuct(), null, "ducts", null, 0, -1, Ventilation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVentilation_BlowerRatedFlow(), this.getVolumeFlow(), "blowerRatedFlow", null, 0, 1, Ventilation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVentilation_BlowerMeasuredFlow(), this.getVolumeFlow(), "blowerMeasuredFlow", null, 0, 1, Ventilation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVentilation_BlowerLabelAtEachStart(), this.getAnswer(), "blowerLabelAtEachStart", null, 0, 1, Ventilation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVentilation_BlowerInterlocked(), this.getAnswer(), "blowerInterlocked", null, 0, 1, Ventilation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVentilation_BlowerIgnitionProtected(), this.getAnswer(), "blowerIgnitionProtected", null, 0, 1, Ventilation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVentilation_SealedFromAccommodation(), this.getAnswer(), "sealedFromAccommodation", null, 0, 1, Ventilation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVentilation_SupplyFromOutside(), this.getAnswer(), "supplyFromOutside", null, 0, 1, Ventilation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVentilation_SupplyAreaTotal(), this.getArea(), "supplyAreaTotal", null, 0, 1, Ventilation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVentilation_ExhaustAreaTotal(), this.getArea(), "exhaustAreaTotal", null, 0, 1, Ventilation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVentilation_NaturalDraught(), this.getAnswer(), "naturalDraught", null, 0, 1, Ventilation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVentilation_OutsideTemperature(), this.getTemperature(), "outsideTemperature", null, 0, 1, Ventilation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVentilation_CompartmentTemperature(), this.getTemperature(), "compartmentTemperature", null, 0, 1, Ventilation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVentilation_AirInletTemperature(), this.getTemperature(), "airInletTemperature", null, 0, 1, Ventilation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVentilation_Depression(), this.getPressureDifference(), "depression", null, 0, 1, Ventilation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVentilation_DesignAmbient(), this.getTemperature(), "designAmbient", null, 0, 1, Ventilation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVentilation_DuctsLowAndHigh(), this.getAnswer(), "ductsLowAndHigh", null, 0, 1, Ventilation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVentilation_ClearOfExhaustOutlet(), this.getAnswer(), "clearOfExhaustOutlet", null, 0, 1, Ventilation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVentilation_IgnitionProtectedComponents(), this.getAnswer(), "ignitionProtectedComponents", null, 0, 1, Ventilation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVentilation_CrankingMotorFitted(), this.getAnswer(), "crankingMotorFitted", null, 0, 1, Ventilation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVentilation_FanFlow(), this.getVolumeFlow(), "fanFlow", null, 0, 1, Ventilation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(airDuctEClass, AirDuct.class, "AirDuct", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getAirDuct_Name(), ecorePackage.getEString(), "name", null, 0, 1, AirDuct.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAirDuct_Function(), this.getDuctFunction(), "function", null, 0, 1, AirDuct.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAirDuct_Area(), this.getArea(), "area", null, 0, 1, AirDuct.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAirDuct_EndFittingArea(), this.getArea(), "endFittingArea", null, 0, 1, AirDuct.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAirDuct_Flexible(), this.getAnswer(), "flexible", null, 0, 1, AirDuct.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAirDuct_MouthHeight(), this.getLength(), "mouthHeight", null, 0, 1, AirDuct.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAirDuct_TerminatesOutside(), this.getAnswer(), "terminatesOutside", null, 0, 1, AirDuct.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(mountingEClass, Mounting.class, "Mounting", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getMounting_BedsRigid(), this.getAnswer(), "bedsRigid", null, 0, 1, Mounting.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMounting_MountsAligned(), this.getAnswer(), "mountsAligned", null, 0, 1, Mounting.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMounting_ClearanceAround(), this.getLength(), "clearanceAround", null, 0, 1, Mounting.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMounting_FlexibleConnections(), this.getAnswer(), "flexibleConnections", null, 0, 1, Mounting.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMounting_DripTray(), this.getAnswer(), "dripTray", null, 0, 1, Mounting.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMounting_AccessForService(), this.getAnswer(), "accessForService", null, 0, 1, Mounting.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMounting_BondingConductor(), ecorePackage.getEString(), "bondingConductor", null, 0, 1, Mounting.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMounting_BondedToCommonGround(), this.getAnswer(), "bondedToCommonGround", null, 0, 1, Mounting.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMounting_CommonNegativeLink(), ecorePackage.getEString(), "commonNegativeLink", null, 0, 1, Mounting.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMounting_DcNegativeIsolated(), this.getAnswer(), "dcNegativeIsolated", null, 0, 1, Mounting.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMounting_InstalledAngleFore(), this.getAngle(), "installedAngleFore", null, 0, 1, Mounting.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMounting_InstalledAngleSide(), this.getAngle(), "installedAngleSide", null, 0, 1, Mounting.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMounting_HeightAboveBilge(), this.getLength(), "heightAboveBilge", null, 0, 1, Mounting.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMounting_AnodesFitted(), this.getAnswer(), "anodesFitted", null, 0, 1, Mounting.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMounting_LabelsPosted(), this.getAnswer(), "labelsPosted", null, 0, 1, Mounting.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMounting_RotatingPartsGuarded(), this.getAnswer(), "rotatingPartsGuarded", null, 0, 1, Mounting.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(acOutputEClass, AcOutput.class, "AcOutput", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getAcOutput_Transfer(), this.getTransferSwitch(), null, "transfer", null, 0, 1, AcOutput.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAcOutput_ProtectionDevice(), this.getProtectionKind(), "protectionDevice", null, 0, 1, AcOutput.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAcOutput_ProtectionRating(), this.getCurrent(), "protectionRating", null, 0, 1, AcOutput.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAcOutput_TripCurve(), this.getTripCurve(), "tripCurve", null, 0, 1, AcOutput.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAcOutput_ProtectionPoles(), ecorePackage.getEIntegerObject(), "protectionPoles", null, 0, 1, AcOutput.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAcOutput_ProtectionDistance(), this.getLength(), "protectionDistance", null, 0, 1, AcOutput.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAcOutput_ResidualCurrentDevice(), this.getAnswer(), "residualCurrentDevice", null, 0, 1, AcOutput.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAcOutput_ResidualTripCurrent(), this.getCurrent(), "residualTripCurrent", null, 0, 1, AcOutput.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAcOutput_ResidualTripTime(), this.getTimeSpan(), "residualTripTime", null, 0, 1, AcOutput.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getAcOutput_OutputCable(), this.getCableRun(), null, "outputCable", null, 0, 1, AcOutput.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAcOutput_NeutralBond(), this.getNeutralBond(), "neutralBond", null, 0, 1, AcOutput.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAcOutput_ProtectiveConductorSize(), ecorePackage.getEString(), "protectiveConductorSize", null, 0, 1, AcOutput.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAcOutput_ProtectiveConductorResistance(), this.getResistance(), "protectiveConductorResistance", null, 0, 1, AcOutput.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAcOutput_NeutralGroundConductorSize(), ecorePackage.getEString(), "neutralGroundConductorSize", null, 0, 1, AcOutput.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAcOutput_InsulationResistance(), this.getResistance(), "insulationResistance", null, 0, 1, AcOutput.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAcOutput_InsulationTemperature(), this.getTemperature(), "insulationTemperature", null, 0, 1, AcOutput.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAcOutput_PolarityIndicator(), this.getAnswer(), "polarityIndicator", null, 0, 1, AcOutput.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAcOutput_PolarityTested(), this.getTestResult(), "polarityTested", null, 0, 1, AcOutput.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAcOutput_Voltmeter(), this.getAnswer(), "voltmeter", null, 0, 1, AcOutput.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAcOutput_Ammeter(), this.getAnswer(), "ammeter", null, 0, 1, AcOutput.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAcOutput_FrequencyMeter(), this.getAnswer(), "frequencyMeter", null, 0, 1, AcOutput.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAcOutput_NamePlateReadable(), this.getAnswer(), "namePlateReadable", null, 0, 1, AcOutput.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAcOutput_EarthedPartsBonded(), this.getAnswer(), "earthedPartsBonded", null, 0, 1, AcOutput.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAcOutput_GroundDetection(), this.getAnswer(), "groundDetection", null, 0, 1, AcOutput.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getAcOutput_Loads(), this.getElectricalLoad(), null, "loads", null, 0, -1, AcOutput.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAcOutput_NoLoadVoltage(), this.getVoltage(), "noLoadVoltage", null, 0, 1, AcOutput.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAcOutput_NoLoadFrequency(), this.getFrequency(), "noLoadFrequency", null, 0, 1, AcOutput.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAcOutput_LegACurrent(), this.getCurrent(), "legACurrent", null, 0, 1, AcOutput.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAcOutput_LegBCurrent(), this.getCurrent(), "legBCurrent", null, 0, 1, AcOutput.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAcOutput_ShoreInletResidualDevice(), this.getAnswer(), "shoreInletResidualDevice", null, 0, 1, AcOutput.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(transferSwitchEClass, TransferSwitch.class, "TransferSwitch", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getTransferSwitch_Kind(), this.getTransferKind(), "kind", null, 0, 1, TransferSwitch.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTransferSwitch_Poles(), this.getPolesSwitched(), "poles", null, 0, 1, TransferSwitch.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTransferSwitch_Interlocked(), this.getAnswer(), "interlocked", null, 0, 1, TransferSwitch.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTransferSwitch_BackFeedVoltage(), this.getVoltage(), "backFeedVoltage", null, 0, 1, TransferSwitch.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTransferSwitch_Tested(), this.getTestResult(), "tested", null, 0, 1, TransferSwitch.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTransferSwitch_RatedCurrent(), this.getCurrent(), "ratedCurrent", null, 0, 1, TransferSwitch.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(electricalLoadEClass, ElectricalLoad.class, "ElectricalLoad", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getElectricalLoad_Name(), ecorePackage.getEString(), "name", null, 0, 1, ElectricalLoad.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getElectricalLoad_Kind(), this.getLoadKind(), "kind", null, 0, 1, ElectricalLoad.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getElectricalLoad_Power(), this.getPower(), "power", null, 0, 1, ElectricalLoad.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getElectricalLoad_Efficiency(), this.getRatio(), "efficiency", null, 0, 1, ElectricalLoad.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getElectricalLoad_PowerFactor(), this.getRatio(), "powerFactor", null, 0, 1, ElectricalLoad.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getElectricalLoad_DemandFactor(), this.getRatio(), "demandFactor", null, 0, 1, ElectricalLoad.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getElectricalLoad_Group(), ecorePackage.getEString(), "group", null, 0, 1, ElectricalLoad.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getElectricalLoad_ExclusiveWith(), ecorePackage.getEString(), "exclusiveWith", null, 0, 1, ElectricalLoad.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getElectricalLoad_Phase(), ecorePackage.getEString(), "phase", null, 0, 1, ElectricalLoad.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getElectricalLoad_MotorHorsepower(), this.getPower(), "motorHorsepower", null, 0, 1, ElectricalLoad.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getElectricalLoad_CodeLetter(), ecorePackage.getEString(), "codeLetter", null, 0, 1, ElectricalLoad.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getElectricalLoad_LockedRotorCurrent(), this.getCurrent(), "lockedRotorCurrent", null, 0, 1, ElectricalLoad.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getElectricalLoad_Starting(), this.getMotorStarting(), "starting", null, 0, 1, ElectricalLoad.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getElectricalLoad_Voltage(), this.getVoltage(), "voltage", null, 0, 1, ElectricalLoad.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getElectricalLoad_Condition(), ecorePackage.getEString(), "condition", null, 0, 1, ElectricalLoad.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(alarmsAndSafetyEClass, AlarmsAndSafety.class, "AlarmsAndSafety", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getAlarmsAndSafety_Alarms(), this.getAlarmDevice(), null, "alarms", null, 0, -1, AlarmsAndSafety.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAlarmsAndSafety_CarbonMonoxideInEverySpace(), this.getAnswer(), "carbonMonoxideInEverySpace", null, 0, 1, AlarmsAndSafety.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAlarmsAndSafety_CarbonMonoxideMarked(), this.getAnswer(), "carbonMonoxideMarked", null, 0, 1, AlarmsAndSafety.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAlarmsAndSafety_CarbonMonoxideExpiry(), this.getDate(), "carbonMonoxideExpiry", null, 0, 1, AlarmsAndSafety.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAlarmsAndSafety_CarbonMonoxideAlwaysPowered(), this.getAnswer(), "carbonMonoxideAlwaysPowered", null, 0, 1, AlarmsAndSafety.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAlarmsAndSafety_HabitableSpaces(), ecorePackage.getEIntegerObject(), "habitableSpaces", null, 0, 1, AlarmsAndSafety.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAlarmsAndSafety_CarbonMonoxideAlarms(), ecorePackage.getEIntegerObject(), "carbonMonoxideAlarms", null, 0, 1, AlarmsAndSafety.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAlarmsAndSafety_VapourDetector(), this.getAnswer(), "vapourDetector", null, 0, 1, AlarmsAndSafety.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAlarmsAndSafety_VapourSensorLow(), this.getAnswer(), "vapourSensorLow", null, 0, 1, AlarmsAndSafety.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAlarmsAndSafety_VapourBeforeStart(), this.getTimeSpan(), "vapourBeforeStart", null, 0, 1, AlarmsAndSafety.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAlarmsAndSafety_FireExtinguisher(), this.getAnswer(), "fireExtinguisher", null, 0, 1, AlarmsAndSafety.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAlarmsAndSafety_FixedFireSystem(), this.getAnswer(), "fixedFireSystem", null, 0, 1, AlarmsAndSafety.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAlarmsAndSafety_FireSystemStopsSet(), this.getAnswer(), "fireSystemStopsSet", null, 0, 1, AlarmsAndSafety.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAlarmsAndSafety_FireDischargePort(), this.getAnswer(), "fireDischargePort", null, 0, 1, AlarmsAndSafety.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAlarmsAndSafety_RemoteStop(), this.getAnswer(), "remoteStop", null, 0, 1, AlarmsAndSafety.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAlarmsAndSafety_WarningLabels(), this.getAnswer(), "warningLabels", null, 0, 1, AlarmsAndSafety.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(alarmDeviceEClass, AlarmDevice.class, "AlarmDevice", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getAlarmDevice_Kind(), this.getAlarmKind(), "kind", null, 0, 1, AlarmDevice.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAlarmDevice_Location(), ecorePackage.getEString(), "location", null, 0, 1, AlarmDevice.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAlarmDevice_Setting(), ecorePackage.getEString(), "setting", null, 0, 1, AlarmDevice.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAlarmDevice_TestResult(), this.getTestResult(), "testResult", null, 0, 1, AlarmDevice.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAlarmDevice_TestedOn(), this.getDate(), "testedOn", null, 0, 1, AlarmDevice.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAlarmDevice_ExpiresOn(), this.getDate(), "expiresOn", null, 0, 1, AlarmDevice.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(inspectionAnswerEClass, InspectionAnswer.class, "InspectionAnswer", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getInspectionAnswer_Question(), ecorePackage.getEString(), "question", null, 0, 1, InspectionAnswer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getInspectionAnswer_Answer(), this.getAnswer(), "answer", null, 0, 1, InspectionAnswer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getInspectionAnswer_Note(), this.getText(), "note", null, 0, 1, InspectionAnswer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getInspectionAnswer_AnsweredBy(), ecorePackage.getEString(), "answeredBy", null, 0, 1, InspectionAnswer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getInspectionAnswer_AnsweredOn(), this.getDate(), "answeredOn", null, 0, 1, InspectionAnswer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getInspectionAnswer_Photographs(), this.getPhotograph(), null, "photographs", null, 0, -1, InspectionAnswer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(trialEClass, Trial.class, "Trial", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getTrial_Date(), this.getDate(), "date", null, 0, 1, Trial.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTrial_Place(), this.getTrialPlace(), "place", null, 0, 1, Trial.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTrial_Location(), ecorePackage.getEString(), "location", null, 0, 1, Trial.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTrial_People(), ecorePackage.getEString(), "people", null, 0, 1, Trial.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTrial_SeaTemperature(), this.getTemperature(), "seaTemperature", null, 0, 1, Trial.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTrial_OutsideTemperature(), this.getTemperature(), "outsideTemperature", null, 0, 1, Trial.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTrial_BarometricPressure(), this.getAbsolutePressure(), "barometricPressure", null, 0, 1, Trial.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTrial_RelativeHumidity(), this.getRatio(), "relativeHumidity", null, 0, 1, Trial.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTrial_HeadOfWater(), this.getLength(), "headOfWater", null, 0, 1, Trial.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getTrial_Procedure(), this.getProcedureStep(), null, "procedure", null, 0, -1, Trial.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getTrial_Priming(), this.getFuelPriming(), null, "priming", null, 0, 1, Trial.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getTrial_Attempts(), this.getCrankingAttempt(), null, "attempts", null, 0, -1, Trial.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getTrial_LoadSteps(), this.getLoadStep(), null, "loadSteps", null, 0, -1, Trial.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getTrial_ShutdownTests(), this.getAlarmDevice(), null, "shutdownTests", null, 0, -1, Trial.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getTrial_SeaRun(), this.getSeaRun(), null, "seaRun", null, 0, 1, Trial.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTrial_CoolantLevelCold(), ecorePackage.getEString(), "coolantLevelCold", null, 0, 1, Trial.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTrial_CoolantLevelHot(), ecorePackage.getEString(), "coolantLevelHot", null, 0, 1, Trial.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTrial_CoolantLevelColdAgain(), ecorePackage.getEString(), "coolantLevelColdAgain", null, 0, 1, Trial.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTrial_LeaksCold(), this.getAnswer(), "leaksCold", null, 0, 1, Trial.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTrial_LeaksHot(), this.getAnswer(), "leaksHot", null, 0, 1, Trial.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTrial_WaterAtOutletAfter(), this.getTimeSpan(), "waterAtOutletAfter", null, 0, 1, Trial.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTrial_OilPressureAfter(), this.getTimeSpan(), "oilPressureAfter", null, 0, 1, Trial.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTrial_MufflerLevelChecked(), this.getAnswer(), "mufflerLevelChecked", null, 0, 1, Trial.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTrial_Remarks(), this.getText(), "remarks", null, 0, 1, Trial.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTrial_CarbonMonoxideCabin(), this.getRatio(), "carbonMonoxideCabin", null, 0, 1, Trial.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(procedureStepEClass, ProcedureStep.class, "ProcedureStep", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getProcedureStep_Number(), ecorePackage.getEIntegerObject(), "number", null, 0, 1, ProcedureStep.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getProcedureStep_Step(), ecorePackage.getEString(), "step", null, 0, 1, ProcedureStep.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getProcedureStep_Done(), this.getAnswer(), "done", null, 0, 1, ProcedureStep.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getProcedureStep_At(), this.getDateTime(), "at", null, 0, 1, ProcedureStep.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getProcedureStep_Note(), this.getText(), "note", null, 0, 1, ProcedureStep.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(fuelPrimingEClass, FuelPriming.class, "FuelPriming", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getFuelPriming_KeyCycles(), ecorePackage.getEIntegerObject(), "keyCycles", null, 0, 1, FuelPriming.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelPriming_CycleTime(), this.getTimeSpan(), "cycleTime", null, 0, 1, FuelPriming.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelPriming_FeedPressure(), this.getGaugePressure(), "feedPressure", null, 0, 1, FuelPriming.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelPriming_RailPressure(), this.getGaugePressure(), "railPressure", null, 0, 1, FuelPriming.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelPriming_HeldFor(), this.getTimeSpan(), "heldFor", null, 0, 1, FuelPriming.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelPriming_BubblesGone(), this.getAnswer(), "bubblesGone", null, 0, 1, FuelPriming.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFuelPriming_Leaks(), this.getAnswer(), "leaks", null, 0, 1, FuelPriming.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(crankingAttemptEClass, CrankingAttempt.class, "CrankingAttempt", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getCrankingAttempt_At(), this.getDateTime(), "at", null, 0, 1, CrankingAttempt.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCrankingAttempt_Duration(), this.getTimeSpan(), "duration", null, 0, 1, CrankingAttempt.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCrankingAttempt_Rest(), this.getTimeSpan(), "rest", null, 0, 1, CrankingAttempt.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCrankingAttempt_Seacock(), this.getSeacockState(), "seacock", null, 0, 1, CrankingAttempt.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCrankingAttempt_Fired(), this.getAnswer(), "fired", null, 0, 1, CrankingAttempt.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCrankingAttempt_LowestVoltage(), this.getVoltage(), "lowestVoltage", null, 0, 1, CrankingAttempt.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCrankingAttempt_MufflerDrained(), this.getAnswer(), "mufflerDrained", null, 0, 1, CrankingAttempt.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(loadStepEClass, LoadStep.class, "LoadStep", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getLoadStep_Load(), this.getRatio(), "load", null, 0, 1, LoadStep.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLoadStep_Dwell(), this.getTimeSpan(), "dwell", null, 0, 1, LoadStep.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getLoadStep_Readings(), this.getReading(), null, "readings", null, 0, -1, LoadStep.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLoadStep_Remarks(), this.getText(), "remarks", null, 0, 1, LoadStep.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(readingEClass, Reading.class, "Reading", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getReading_At(), this.getDateTime(), "at", null, 0, 1, Reading.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getReading_Voltage1(), this.getVoltage(), "voltage1", null, 0, 1, Reading.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getReading_Voltage2(), this.getVoltage(), "voltage2", null, 0, 1, Reading.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getReading_Voltage3(), this.getVoltage(), "voltage3", null, 0, 1, Reading.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getReading_Current1(), this.getCurrent(), "current1", null, 0, 1, Reading.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getReading_Current2(), this.getCurrent(), "current2", null, 0, 1, Reading.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getReading_Current3(), this.getCurrent(), "current3", null, 0, 1, Reading.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getReading_Frequency(), this.getFrequency(), "frequency", null, 0, 1, Reading.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getReading_Power(), this.getPower(), "power", null, 0, 1, Reading.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getReading_PowerFactor(), this.getRatio(), "powerFactor", null, 0, 1, Reading.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getReading_OilPressure(), this.getGaugePressure(), "oilPressure", null, 0, 1, Reading.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getReading_CoolantTemperature(), this.getTemperature(), "coolantTemperature", null, 0, 1, Reading.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getReading_RawWaterIn(), this.getTemperature(), "rawWaterIn", null, 0, 1, Reading.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getReading_RawWaterOut(), this.getTemperature(), "rawWaterOut", null, 0, 1, Reading.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getReading_ExhaustMixed(), this.getTemperature(), "exhaustMixed", null, 0, 1, Reading.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getReading_ExhaustDry(), this.getTemperature(), "exhaustDry", null, 0, 1, Reading.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getReading_BackPressure(), this.getGaugePressure(), "backPressure", null, 0, 1, Reading.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getReading_CompartmentTemperature(), this.getTemperature(), "compartmentTemperature", null, 0, 1, Reading.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getReading_OutsideTemperature(), this.getTemperature(), "outsideTemperature", null, 0, 1, Reading.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getReading_CompartmentDepression(), this.getPressureDifference(), "compartmentDepression", null, 0, 1, Reading.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getReading_FuelVacuum(), this.getPressureDifference(), "fuelVacuum", null, 0, 1, Reading.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getReading_RawWaterVacuum(), this.getPressureDifference(), "rawWaterVacuum", null, 0, 1, Reading.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getReading_RawWaterFlow(), this.getVolumeFlow(), "rawWaterFlow", null, 0, 1, Reading.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getReading_BatteryVoltage(), this.getVoltage(), "batteryVoltage", null, 0, 1, Reading.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getReading_ChargeCurrent(), this.getCurrent(), "chargeCurrent", null, 0, 1, Reading.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getReading_CarbonMonoxide(), this.getRatio(), "carbonMonoxide", null, 0, 1, Reading.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getReading_Smoke(), this.getSmokeColour(), "smoke", null, 0, 1, Reading.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getReading_Note(), this.getText(), "note", null, 0, 1, Reading.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getReading_Instruments(), ecorePackage.getEString(), "instruments", null, 0, 1, Reading.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(seaRunEClass, SeaRun.class, "SeaRun", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getSeaRun_Date(), this.getDate(), "date", null, 0, 1, SeaRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSeaRun_HeelPort(), this.getAngle(), "heelPort", null, 0, 1, SeaRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSeaRun_HeelStarboard(), this.getAngle(), "heelStarboard", null, 0, 1, SeaRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSeaRun_TrimUp(), this.getAngle(), "trimUp", null, 0, 1, SeaRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSeaRun_TrimDown(), this.getAngle(), "trimDown", null, 0, 1, SeaRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSeaRun_Speed(), this.getSpeed(), "speed", null, 0, 1, SeaRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSeaRun_WaterFlowing(), this.getAnswer(), "waterFlowing", null, 0, 1, SeaRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSeaRun_WaterOverCrest(), this.getAnswer(), "waterOverCrest", null, 0, 1, SeaRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSeaRun_WaterInMuffler(), this.getAnswer(), "waterInMuffler", null, 0, 1, SeaRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSeaRun_Difference(), this.getText(), "difference", null, 0, 1, SeaRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSeaRun_Duration(), this.getTimeSpan(), "duration", null, 0, 1, SeaRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(upkeepEClass, Upkeep.class, "Upkeep", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getUpkeep_Tasks(), this.getUpkeepTask(), null, "tasks", null, 0, -1, Upkeep.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getUpkeep_Consumables(), this.getConsumable(), null, "consumables", null, 0, -1, Upkeep.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getUpkeep_AnnualHours(), this.getTimeSpan(), "annualHours", null, 0, 1, Upkeep.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(upkeepTaskEClass, UpkeepTask.class, "UpkeepTask", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getUpkeepTask_Task(), ecorePackage.getEString(), "task", null, 0, 1, UpkeepTask.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getUpkeepTask_EveryHours(), this.getTimeSpan(), "everyHours", null, 0, 1, UpkeepTask.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getUpkeepTask_EveryMonths(), ecorePackage.getEIntegerObject(), "everyMonths", null, 0, 1, UpkeepTask.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getUpkeepTask_LastDoneOn(), this.getDate(), "lastDoneOn", null, 0, 1, UpkeepTask.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getUpkeepTask_LastDoneHours(), this.getTimeSpan(), "lastDoneHours", null, 0, 1, UpkeepTask.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getUpkeepTask_Note(), this.getText(), "note", null, 0, 1, UpkeepTask.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(consumableEClass, Consumable.class, "Consumable", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getConsumable_Name(), ecorePackage.getEString(), "name", null, 0, 1, Consumable.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getConsumable_PartNumber(), ecorePackage.getEString(), "partNumber", null, 0, 1, Consumable.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getConsumable_Quantity(), ecorePackage.getEIntegerObject(), "quantity", null, 0, 1, Consumable.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(acceptanceEClass, Acceptance.class, "Acceptance", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getAcceptance_Check(), ecorePackage.getEString(), "check", null, 0, 1, Acceptance.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAcceptance_Subject(), ecorePackage.getEString(), "subject", null, 0, 1, Acceptance.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAcceptance_Reason(), this.getText(), "reason", null, 0, 1, Acceptance.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAcceptance_AcceptedBy(), ecorePackage.getEString(), "acceptedBy", null, 0, 1, Acceptance.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAcceptance_AcceptedOn(), this.getDate(), "acceptedOn", null, 0, 1, Acceptance.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAcceptance_Until(), this.getDate(), "until", null, 0, 1, Acceptance.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(signatureEClass, Signature.class, "Signature", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getSignature_Role(), this.getSignatureRole(), "role", null, 0, 1, Signature.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSignature_Name(), ecorePackage.getEString(), "name", null, 0, 1, Signature.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSignature_Licence(), ecorePackage.getEString(), "licence", null, 0, 1, Signature.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSignature_Place(), ecorePackage.getEString(), "place", null, 0, 1, Signature.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSignature_SignedOn(), this.getDate(), "signedOn", null, 0, 1, Signature.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSignature_Statement(), this.getText(), "statement", null, 0, 1, Signature.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSignature_Verdicts(), this.getStoredVerdict(), null, "verdicts", null, 0, -1, Signature.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(unreadEntryEClass, UnreadEntry.class, "UnreadEntry", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getUnreadEntry_Place(), ecorePackage.getEString(), "place", null, 0, 1, UnreadEntry.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getUnreadEntry_Text(), ecorePackage.getEString(), "text", null, 0, 1, UnreadEntry.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(storedVerdictEClass, StoredVerdict.class, "StoredVerdict", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getStoredVerdict_Check(), ecorePackage.getEString(), "check", null, 0, 1, StoredVerdict.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStoredVerdict_Subject(), ecorePackage.getEString(), "subject", null, 0, 1, StoredVerdict.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStoredVerdict_Standing(), ecorePackage.getEString(), "standing", null, 0, 1, StoredVerdict.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStoredVerdict_Measured(), ecorePackage.getEString(), "measured", null, 0, 1, StoredVerdict.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStoredVerdict_Limit(), ecorePackage.getEString(), "limit", null, 0, 1, StoredVerdict.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStoredVerdict_Margin(), ecorePackage.getEString(), "margin", null, 0, 1, StoredVerdict.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		// Initialize enums and add enum literals
		initEEnum(answerEEnum, Answer.class, "Answer");
		addEEnumLiteral(answerEEnum, Answer.UNANSWERED);
		addEEnumLiteral(answerEEnum, Answer.YES);
		addEEnumLiteral(answerEEnum, Answer.NO);
		addEEnumLiteral(answerEEnum, Answer.NOT_APPLICABLE);

		initEEnum(partyRoleEEnum, PartyRole.class, "PartyRole");
		addEEnumLiteral(partyRoleEEnum, PartyRole.NOT_ENTERED);
		addEEnumLiteral(partyRoleEEnum, PartyRole.OWNER);
		addEEnumLiteral(partyRoleEEnum, PartyRole.INSTALLER);
		addEEnumLiteral(partyRoleEEnum, PartyRole.SURVEYOR);
		addEEnumLiteral(partyRoleEEnum, PartyRole.WARRANTY_DESK);
		addEEnumLiteral(partyRoleEEnum, PartyRole.BUILDER);
		addEEnumLiteral(partyRoleEEnum, PartyRole.OPERATOR);

		initEEnum(hullKindEEnum, HullKind.class, "HullKind");
		addEEnumLiteral(hullKindEEnum, HullKind.NOT_ENTERED);
		addEEnumLiteral(hullKindEEnum, HullKind.MOTOR_DISPLACEMENT);
		addEEnumLiteral(hullKindEEnum, HullKind.MOTOR_PLANING);
		addEEnumLiteral(hullKindEEnum, HullKind.SAILING_MONOHULL);
		addEEnumLiteral(hullKindEEnum, HullKind.SAILING_MULTIHULL);
		addEEnumLiteral(hullKindEEnum, HullKind.MOTOR_MULTIHULL);

		initEEnum(hullMaterialEEnum, HullMaterial.class, "HullMaterial");
		addEEnumLiteral(hullMaterialEEnum, HullMaterial.NOT_ENTERED);
		addEEnumLiteral(hullMaterialEEnum, HullMaterial.FIBRE_REINFORCED_PLASTIC);
		addEEnumLiteral(hullMaterialEEnum, HullMaterial.ALUMINIUM);
		addEEnumLiteral(hullMaterialEEnum, HullMaterial.STEEL);
		addEEnumLiteral(hullMaterialEEnum, HullMaterial.WOOD);

		initEEnum(vesselServiceEEnum, VesselService.class, "VesselService");
		addEEnumLiteral(vesselServiceEEnum, VesselService.NOT_ENTERED);
		addEEnumLiteral(vesselServiceEEnum, VesselService.RECREATIONAL);
		addEEnumLiteral(vesselServiceEEnum, VesselService.SMALL_PASSENGER);
		addEEnumLiteral(vesselServiceEEnum, VesselService.UNINSPECTED_COMMERCIAL);
		addEEnumLiteral(vesselServiceEEnum, VesselService.FISHING);
		addEEnumLiteral(vesselServiceEEnum, VesselService.TOWING);

		initEEnum(fuelKindEEnum, FuelKind.class, "FuelKind");
		addEEnumLiteral(fuelKindEEnum, FuelKind.NOT_ENTERED);
		addEEnumLiteral(fuelKindEEnum, FuelKind.DIESEL);
		addEEnumLiteral(fuelKindEEnum, FuelKind.GASOLINE);

		initEEnum(aspirationEEnum, Aspiration.class, "Aspiration");
		addEEnumLiteral(aspirationEEnum, Aspiration.NOT_ENTERED);
		addEEnumLiteral(aspirationEEnum, Aspiration.NATURALLY_ASPIRATED);
		addEEnumLiteral(aspirationEEnum, Aspiration.TURBOCHARGED);
		addEEnumLiteral(aspirationEEnum, Aspiration.TURBOCHARGED_CHARGE_AIR_COOLED);

		initEEnum(fuelSystemEEnum, FuelSystem.class, "FuelSystem");
		addEEnumLiteral(fuelSystemEEnum, FuelSystem.NOT_ENTERED);
		addEEnumLiteral(fuelSystemEEnum, FuelSystem.CARBURETTOR);
		addEEnumLiteral(fuelSystemEEnum, FuelSystem.PORT_INJECTION);
		addEEnumLiteral(fuelSystemEEnum, FuelSystem.MECHANICAL_INJECTION);
		addEEnumLiteral(fuelSystemEEnum, FuelSystem.COMMON_RAIL);

		initEEnum(coolingEEnum, Cooling.class, "Cooling");
		addEEnumLiteral(coolingEEnum, Cooling.NOT_ENTERED);
		addEEnumLiteral(coolingEEnum, Cooling.HEAT_EXCHANGER);
		addEEnumLiteral(coolingEEnum, Cooling.DIRECT_RAW_WATER);
		addEEnumLiteral(coolingEEnum, Cooling.KEEL_COOLED);

		initEEnum(phaseSystemEEnum, PhaseSystem.class, "PhaseSystem");
		addEEnumLiteral(phaseSystemEEnum, PhaseSystem.NOT_ENTERED);
		addEEnumLiteral(phaseSystemEEnum, PhaseSystem.SINGLE_PHASE);
		addEEnumLiteral(phaseSystemEEnum, PhaseSystem.SPLIT_PHASE);
		addEEnumLiteral(phaseSystemEEnum, PhaseSystem.THREE_PHASE);

		initEEnum(dutyRatingEEnum, DutyRating.class, "DutyRating");
		addEEnumLiteral(dutyRatingEEnum, DutyRating.NOT_ENTERED);
		addEEnumLiteral(dutyRatingEEnum, DutyRating.CONTINUOUS);
		addEEnumLiteral(dutyRatingEEnum, DutyRating.PRIME);
		addEEnumLiteral(dutyRatingEEnum, DutyRating.LIMITED_TIME);
		addEEnumLiteral(dutyRatingEEnum, DutyRating.STANDBY);

		initEEnum(performanceClassEEnum, PerformanceClass.class, "PerformanceClass");
		addEEnumLiteral(performanceClassEEnum, PerformanceClass.NOT_ENTERED);
		addEEnumLiteral(performanceClassEEnum, PerformanceClass.G1);
		addEEnumLiteral(performanceClassEEnum, PerformanceClass.G2);
		addEEnumLiteral(performanceClassEEnum, PerformanceClass.G3);
		addEEnumLiteral(performanceClassEEnum, PerformanceClass.G4);

		initEEnum(batteryChemistryEEnum, BatteryChemistry.class, "BatteryChemistry");
		addEEnumLiteral(batteryChemistryEEnum, BatteryChemistry.NOT_ENTERED);
		addEEnumLiteral(batteryChemistryEEnum, BatteryChemistry.FLOODED_LEAD_ACID);
		addEEnumLiteral(batteryChemistryEEnum, BatteryChemistry.AGM);
		addEEnumLiteral(batteryChemistryEEnum, BatteryChemistry.GEL);
		addEEnumLiteral(batteryChemistryEEnum, BatteryChemistry.LITHIUM_IRON_PHOSPHATE);

		initEEnum(crankingRatingDefinitionEEnum, CrankingRatingDefinition.class, "CrankingRatingDefinition");
		addEEnumLiteral(crankingRatingDefinitionEEnum, CrankingRatingDefinition.NOT_ENTERED);
		addEEnumLiteral(crankingRatingDefinitionEEnum, CrankingRatingDefinition.CCA_SAE_J537);
		addEEnumLiteral(crankingRatingDefinitionEEnum, CrankingRatingDefinition.EN_50342_1);
		addEEnumLiteral(crankingRatingDefinitionEEnum, CrankingRatingDefinition.IEC_60095_1);
		addEEnumLiteral(crankingRatingDefinitionEEnum, CrankingRatingDefinition.CA_AT_0DEGREES);

		initEEnum(terminalKindEEnum, TerminalKind.class, "TerminalKind");
		addEEnumLiteral(terminalKindEEnum, TerminalKind.NOT_ENTERED);
		addEEnumLiteral(terminalKindEEnum, TerminalKind.POST_CLAMP);
		addEEnumLiteral(terminalKindEEnum, TerminalKind.BOLTED_LUG);
		addEEnumLiteral(terminalKindEEnum, TerminalKind.SPRING_CLIP);
		addEEnumLiteral(terminalKindEEnum, TerminalKind.WING_NUT);

		initEEnum(cableFunctionEEnum, CableFunction.class, "CableFunction");
		addEEnumLiteral(cableFunctionEEnum, CableFunction.NOT_ENTERED);
		addEEnumLiteral(cableFunctionEEnum, CableFunction.CRANKING_POSITIVE);
		addEEnumLiteral(cableFunctionEEnum, CableFunction.CRANKING_NEGATIVE);
		addEEnumLiteral(cableFunctionEEnum, CableFunction.CHARGING);
		addEEnumLiteral(cableFunctionEEnum, CableFunction.CONTROL);
		addEEnumLiteral(cableFunctionEEnum, CableFunction.FUEL_PUMP);
		addEEnumLiteral(cableFunctionEEnum, CableFunction.PARALLEL_LINK);
		addEEnumLiteral(cableFunctionEEnum, CableFunction.COMMON_NEGATIVE_LINK);
		addEEnumLiteral(cableFunctionEEnum, CableFunction.AC_OUTPUT);
		addEEnumLiteral(cableFunctionEEnum, CableFunction.AC_BRANCH);
		addEEnumLiteral(cableFunctionEEnum, CableFunction.BONDING);
		addEEnumLiteral(cableFunctionEEnum, CableFunction.OTHER_DC);

		initEEnum(strandClassEEnum, StrandClass.class, "StrandClass");
		addEEnumLiteral(strandClassEEnum, StrandClass.NOT_ENTERED);
		addEEnumLiteral(strandClassEEnum, StrandClass.CLASS_2PLAIN);
		addEEnumLiteral(strandClassEEnum, StrandClass.CLASS_2TINNED);
		addEEnumLiteral(strandClassEEnum, StrandClass.CLASS_5PLAIN);
		addEEnumLiteral(strandClassEEnum, StrandClass.CLASS_5TINNED);

		initEEnum(insulationRatingEEnum, InsulationRating.class, "InsulationRating");
		addEEnumLiteral(insulationRatingEEnum, InsulationRating.NOT_ENTERED);
		addEEnumLiteral(insulationRatingEEnum, InsulationRating.C60);
		addEEnumLiteral(insulationRatingEEnum, InsulationRating.C70);
		addEEnumLiteral(insulationRatingEEnum, InsulationRating.C75);
		addEEnumLiteral(insulationRatingEEnum, InsulationRating.C80);
		addEEnumLiteral(insulationRatingEEnum, InsulationRating.C90);
		addEEnumLiteral(insulationRatingEEnum, InsulationRating.C105);
		addEEnumLiteral(insulationRatingEEnum, InsulationRating.C125);
		addEEnumLiteral(insulationRatingEEnum, InsulationRating.C200);

		initEEnum(protectionKindEEnum, ProtectionKind.class, "ProtectionKind");
		addEEnumLiteral(protectionKindEEnum, ProtectionKind.NOT_ENTERED);
		addEEnumLiteral(protectionKindEEnum, ProtectionKind.FUSE);
		addEEnumLiteral(protectionKindEEnum, ProtectionKind.CIRCUIT_BREAKER);
		addEEnumLiteral(protectionKindEEnum, ProtectionKind.NONE);

		initEEnum(tankMaterialEEnum, TankMaterial.class, "TankMaterial");
		addEEnumLiteral(tankMaterialEEnum, TankMaterial.NOT_ENTERED);
		addEEnumLiteral(tankMaterialEEnum, TankMaterial.STAINLESS_STEEL);
		addEEnumLiteral(tankMaterialEEnum, TankMaterial.STEEL);
		addEEnumLiteral(tankMaterialEEnum, TankMaterial.ALUMINIUM);
		addEEnumLiteral(tankMaterialEEnum, TankMaterial.POLYETHYLENE);
		addEEnumLiteral(tankMaterialEEnum, TankMaterial.FIBRE_REINFORCED_PLASTIC);

		initEEnum(fuelLineFunctionEEnum, FuelLineFunction.class, "FuelLineFunction");
		addEEnumLiteral(fuelLineFunctionEEnum, FuelLineFunction.NOT_ENTERED);
		addEEnumLiteral(fuelLineFunctionEEnum, FuelLineFunction.TANK_TO_ENGINE);
		addEEnumLiteral(fuelLineFunctionEEnum, FuelLineFunction.TANK_TO_SEPARATOR);
		addEEnumLiteral(fuelLineFunctionEEnum, FuelLineFunction.SEPARATOR_TO_PUMP);
		addEEnumLiteral(fuelLineFunctionEEnum, FuelLineFunction.PUMP_TO_CARBURETTOR);
		addEEnumLiteral(fuelLineFunctionEEnum, FuelLineFunction.RETURN);
		addEEnumLiteral(fuelLineFunctionEEnum, FuelLineFunction.VENT);
		addEEnumLiteral(fuelLineFunctionEEnum, FuelLineFunction.FILL);

		initEEnum(fuelLineKindEEnum, FuelLineKind.class, "FuelLineKind");
		addEEnumLiteral(fuelLineKindEEnum, FuelLineKind.NOT_ENTERED);
		addEEnumLiteral(fuelLineKindEEnum, FuelLineKind.HOSE_A1);
		addEEnumLiteral(fuelLineKindEEnum, FuelLineKind.HOSE_A1_15);
		addEEnumLiteral(fuelLineKindEEnum, FuelLineKind.HOSE_A2);
		addEEnumLiteral(fuelLineKindEEnum, FuelLineKind.HOSE_B1);
		addEEnumLiteral(fuelLineKindEEnum, FuelLineKind.HOSE_B2);
		addEEnumLiteral(fuelLineKindEEnum, FuelLineKind.HOSE_ISO_7840);
		addEEnumLiteral(fuelLineKindEEnum, FuelLineKind.HOSE_ISO_8469);
		addEEnumLiteral(fuelLineKindEEnum, FuelLineKind.INJECTION_HOSE);
		addEEnumLiteral(fuelLineKindEEnum, FuelLineKind.COPPER_TUBE);
		addEEnumLiteral(fuelLineKindEEnum, FuelLineKind.COPPER_NICKEL_TUBE);
		addEEnumLiteral(fuelLineKindEEnum, FuelLineKind.STEEL_TUBE);
		addEEnumLiteral(fuelLineKindEEnum, FuelLineKind.OTHER);

		initEEnum(bowlKindEEnum, BowlKind.class, "BowlKind");
		addEEnumLiteral(bowlKindEEnum, BowlKind.NOT_ENTERED);
		addEEnumLiteral(bowlKindEEnum, BowlKind.METAL);
		addEEnumLiteral(bowlKindEEnum, BowlKind.CLEAR_WITH_HEAT_SHIELD);
		addEEnumLiteral(bowlKindEEnum, BowlKind.CLEAR_WITHOUT_SHIELD);

		initEEnum(antiSiphonProtectionEEnum, AntiSiphonProtection.class, "AntiSiphonProtection");
		addEEnumLiteral(antiSiphonProtectionEEnum, AntiSiphonProtection.NOT_ENTERED);
		addEEnumLiteral(antiSiphonProtectionEEnum, AntiSiphonProtection.LINE_ABOVE_TANK_TOP);
		addEEnumLiteral(antiSiphonProtectionEEnum, AntiSiphonProtection.ANTI_SIPHON_VALVE);
		addEEnumLiteral(antiSiphonProtectionEEnum, AntiSiphonProtection.ELECTRIC_STOP_VALVE);
		addEEnumLiteral(antiSiphonProtectionEEnum, AntiSiphonProtection.TANK_SHUT_OFF_WITH_RATED_LINE);
		addEEnumLiteral(antiSiphonProtectionEEnum, AntiSiphonProtection.NONE);

		initEEnum(strainerPickUpEEnum, StrainerPickUp.class, "StrainerPickUp");
		addEEnumLiteral(strainerPickUpEEnum, StrainerPickUp.NOT_ENTERED);
		addEEnumLiteral(strainerPickUpEEnum, StrainerPickUp.FLUSH);
		addEEnumLiteral(strainerPickUpEEnum, StrainerPickUp.ROUND_NON_DIRECTIONAL);
		addEEnumLiteral(strainerPickUpEEnum, StrainerPickUp.SCOOP_FACING_FORWARD);
		addEEnumLiteral(strainerPickUpEEnum, StrainerPickUp.SCOOP_FACING_AFT);
		addEEnumLiteral(strainerPickUpEEnum, StrainerPickUp.NONE);

		initEEnum(valveKindEEnum, ValveKind.class, "ValveKind");
		addEEnumLiteral(valveKindEEnum, ValveKind.NOT_ENTERED);
		addEEnumLiteral(valveKindEEnum, ValveKind.FLANGED_SEACOCK);
		addEEnumLiteral(valveKindEEnum, ValveKind.IN_LINE_BALL_VALVE);
		addEEnumLiteral(valveKindEEnum, ValveKind.GATE_VALVE);
		addEEnumLiteral(valveKindEEnum, ValveKind.HOUSEHOLD_BALL_VALVE);
		addEEnumLiteral(valveKindEEnum, ValveKind.NONE);

		initEEnum(fittingMaterialEEnum, FittingMaterial.class, "FittingMaterial");
		addEEnumLiteral(fittingMaterialEEnum, FittingMaterial.NOT_ENTERED);
		addEEnumLiteral(fittingMaterialEEnum, FittingMaterial.BRONZE);
		addEEnumLiteral(fittingMaterialEEnum, FittingMaterial.DZR_BRASS);
		addEEnumLiteral(fittingMaterialEEnum, FittingMaterial.BRASS);
		addEEnumLiteral(fittingMaterialEEnum, FittingMaterial.STAINLESS_STEEL);
		addEEnumLiteral(fittingMaterialEEnum, FittingMaterial.REINFORCED_PLASTIC);
		addEEnumLiteral(fittingMaterialEEnum, FittingMaterial.PLASTIC);
		addEEnumLiteral(fittingMaterialEEnum, FittingMaterial.ALUMINIUM);
		addEEnumLiteral(fittingMaterialEEnum, FittingMaterial.STEEL);
		addEEnumLiteral(fittingMaterialEEnum, FittingMaterial.CAST_IRON);

		initEEnum(waterHoseKindEEnum, WaterHoseKind.class, "WaterHoseKind");
		addEEnumLiteral(waterHoseKindEEnum, WaterHoseKind.NOT_ENTERED);
		addEEnumLiteral(waterHoseKindEEnum, WaterHoseKind.WIRE_REINFORCED_SMOOTH_BORE);
		addEEnumLiteral(waterHoseKindEEnum, WaterHoseKind.CORRUGATED_BORE);
		addEEnumLiteral(waterHoseKindEEnum, WaterHoseKind.SOFT_WALL);
		addEEnumLiteral(waterHoseKindEEnum, WaterHoseKind.RIGID_METAL_PIPE);
		addEEnumLiteral(waterHoseKindEEnum, WaterHoseKind.RIGID_PLASTIC_PIPE);

		initEEnum(waterSectionEEnum, WaterSection.class, "WaterSection");
		addEEnumLiteral(waterSectionEEnum, WaterSection.NOT_ENTERED);
		addEEnumLiteral(waterSectionEEnum, WaterSection.SUCTION);
		addEEnumLiteral(waterSectionEEnum, WaterSection.PUMP_TO_ENGINE);
		addEEnumLiteral(waterSectionEEnum, WaterSection.ENGINE_TO_SIPHON_BREAK);
		addEEnumLiteral(waterSectionEEnum, WaterSection.SIPHON_BREAK_TO_INJECTION);
		addEEnumLiteral(waterSectionEEnum, WaterSection.ENGINE_TO_INJECTION);

		initEEnum(pipeFittingKindEEnum, PipeFittingKind.class, "PipeFittingKind");
		addEEnumLiteral(pipeFittingKindEEnum, PipeFittingKind.NOT_ENTERED);
		addEEnumLiteral(pipeFittingKindEEnum, PipeFittingKind.ENTRANCE_SHARP);
		addEEnumLiteral(pipeFittingKindEEnum, PipeFittingKind.ENTRANCE_PROJECTING);
		addEEnumLiteral(pipeFittingKindEEnum, PipeFittingKind.ENTRANCE_ROUNDED);
		addEEnumLiteral(pipeFittingKindEEnum, PipeFittingKind.EXIT);
		addEEnumLiteral(pipeFittingKindEEnum, PipeFittingKind.ELBOW_90);
		addEEnumLiteral(pipeFittingKindEEnum, PipeFittingKind.ELBOW_90_LONG);
		addEEnumLiteral(pipeFittingKindEEnum, PipeFittingKind.ELBOW_45);
		addEEnumLiteral(pipeFittingKindEEnum, PipeFittingKind.SMOOTH_BEND_90);
		addEEnumLiteral(pipeFittingKindEEnum, PipeFittingKind.BEND_180);
		addEEnumLiteral(pipeFittingKindEEnum, PipeFittingKind.TEE_RUN);
		addEEnumLiteral(pipeFittingKindEEnum, PipeFittingKind.TEE_BRANCH);
		addEEnumLiteral(pipeFittingKindEEnum, PipeFittingKind.BALL_VALVE_OPEN);
		addEEnumLiteral(pipeFittingKindEEnum, PipeFittingKind.STRAINER_CLEAN);
		addEEnumLiteral(pipeFittingKindEEnum, PipeFittingKind.HULL_GRATING);
		addEEnumLiteral(pipeFittingKindEEnum, PipeFittingKind.HOSE_BARB);

		initEEnum(siphonBreakKindEEnum, SiphonBreakKind.class, "SiphonBreakKind");
		addEEnumLiteral(siphonBreakKindEEnum, SiphonBreakKind.NOT_ENTERED);
		addEEnumLiteral(siphonBreakKindEEnum, SiphonBreakKind.VALVED_VENTED_LOOP);
		addEEnumLiteral(siphonBreakKindEEnum, SiphonBreakKind.BLEED_OVERBOARD);
		addEEnumLiteral(siphonBreakKindEEnum, SiphonBreakKind.LOOP_WITHOUT_VENT);
		addEEnumLiteral(siphonBreakKindEEnum, SiphonBreakKind.NONE);

		initEEnum(siphonBreakPlaceEEnum, SiphonBreakPlace.class, "SiphonBreakPlace");
		addEEnumLiteral(siphonBreakPlaceEEnum, SiphonBreakPlace.NOT_ENTERED);
		addEEnumLiteral(siphonBreakPlaceEEnum, SiphonBreakPlace.PUMP_SUCTION);
		addEEnumLiteral(siphonBreakPlaceEEnum, SiphonBreakPlace.BETWEEN_PUMP_AND_HEAT_EXCHANGER);
		addEEnumLiteral(siphonBreakPlaceEEnum, SiphonBreakPlace.BETWEEN_HEAT_EXCHANGER_AND_INJECTION);
		addEEnumLiteral(siphonBreakPlaceEEnum, SiphonBreakPlace.AFTER_INJECTION);

		initEEnum(ventHoseEndEEnum, VentHoseEnd.class, "VentHoseEnd");
		addEEnumLiteral(ventHoseEndEEnum, VentHoseEnd.NOT_ENTERED);
		addEEnumLiteral(ventHoseEndEEnum, VentHoseEnd.NO_VENT_HOSE);
		addEEnumLiteral(ventHoseEndEEnum, VentHoseEnd.BILGE);
		addEEnumLiteral(ventHoseEndEEnum, VentHoseEnd.OVERBOARD);
		addEEnumLiteral(ventHoseEndEEnum, VentHoseEnd.COCKPIT);

		initEEnum(exhaustSectionEEnum, ExhaustSection.class, "ExhaustSection");
		addEEnumLiteral(exhaustSectionEEnum, ExhaustSection.NOT_ENTERED);
		addEEnumLiteral(exhaustSectionEEnum, ExhaustSection.DRY);
		addEEnumLiteral(exhaustSectionEEnum, ExhaustSection.INJECTION_TO_MUFFLER);
		addEEnumLiteral(exhaustSectionEEnum, ExhaustSection.MUFFLER_TO_CREST);
		addEEnumLiteral(exhaustSectionEEnum, ExhaustSection.CREST_TO_OUTLET);
		addEEnumLiteral(exhaustSectionEEnum, ExhaustSection.SEPARATOR_DRAIN);

		initEEnum(exhaustHoseStandardEEnum, ExhaustHoseStandard.class, "ExhaustHoseStandard");
		addEEnumLiteral(exhaustHoseStandardEEnum, ExhaustHoseStandard.NOT_ENTERED);
		addEEnumLiteral(exhaustHoseStandardEEnum, ExhaustHoseStandard.SAE_J2006);
		addEEnumLiteral(exhaustHoseStandardEEnum, ExhaustHoseStandard.ISO_13363_CLASS_A);
		addEEnumLiteral(exhaustHoseStandardEEnum, ExhaustHoseStandard.ISO_13363_CLASS_B);
		addEEnumLiteral(exhaustHoseStandardEEnum, ExhaustHoseStandard.UNMARKED);
		addEEnumLiteral(exhaustHoseStandardEEnum, ExhaustHoseStandard.METAL_PIPE);
		addEEnumLiteral(exhaustHoseStandardEEnum, ExhaustHoseStandard.FIBRE_REINFORCED_TUBE);

		initEEnum(exhaustBendKindEEnum, ExhaustBendKind.class, "ExhaustBendKind");
		addEEnumLiteral(exhaustBendKindEEnum, ExhaustBendKind.NOT_ENTERED);
		addEEnumLiteral(exhaustBendKindEEnum, ExhaustBendKind.STANDARD_90);
		addEEnumLiteral(exhaustBendKindEEnum, ExhaustBendKind.LONG_90);
		addEEnumLiteral(exhaustBendKindEEnum, ExhaustBendKind.STANDARD_45);
		addEEnumLiteral(exhaustBendKindEEnum, ExhaustBendKind.SQUARE_90);
		addEEnumLiteral(exhaustBendKindEEnum, ExhaustBendKind.UBEND_180);

		initEEnum(mufflerKindEEnum, MufflerKind.class, "MufflerKind");
		addEEnumLiteral(mufflerKindEEnum, MufflerKind.NOT_ENTERED);
		addEEnumLiteral(mufflerKindEEnum, MufflerKind.LIFT_MUFFLER);
		addEEnumLiteral(mufflerKindEEnum, MufflerKind.GAS_WATER_SEPARATOR);
		addEEnumLiteral(mufflerKindEEnum, MufflerKind.STANDPIPE);
		addEEnumLiteral(mufflerKindEEnum, MufflerKind.COMBINED_LIFT_AND_SEPARATOR);
		addEEnumLiteral(mufflerKindEEnum, MufflerKind.IN_LINE);
		addEEnumLiteral(mufflerKindEEnum, MufflerKind.NONE);

		initEEnum(outletPlaceEEnum, OutletPlace.class, "OutletPlace");
		addEEnumLiteral(outletPlaceEEnum, OutletPlace.NOT_ENTERED);
		addEEnumLiteral(outletPlaceEEnum, OutletPlace.TRANSOM);
		addEEnumLiteral(outletPlaceEEnum, OutletPlace.SIDE);
		addEEnumLiteral(outletPlaceEEnum, OutletPlace.UNDERWATER);
		addEEnumLiteral(outletPlaceEEnum, OutletPlace.BOTTOM);

		initEEnum(antiSurgeEEnum, AntiSurge.class, "AntiSurge");
		addEEnumLiteral(antiSurgeEEnum, AntiSurge.NOT_ENTERED);
		addEEnumLiteral(antiSurgeEEnum, AntiSurge.FLAP);
		addEEnumLiteral(antiSurgeEEnum, AntiSurge.SURGE_CHAMBER);
		addEEnumLiteral(antiSurgeEEnum, AntiSurge.FLAP_AND_HIGH_CREST);
		addEEnumLiteral(antiSurgeEEnum, AntiSurge.NONE);

		initEEnum(ductFunctionEEnum, DuctFunction.class, "DuctFunction");
		addEEnumLiteral(ductFunctionEEnum, DuctFunction.NOT_ENTERED);
		addEEnumLiteral(ductFunctionEEnum, DuctFunction.NATURAL_SUPPLY);
		addEEnumLiteral(ductFunctionEEnum, DuctFunction.NATURAL_EXHAUST);
		addEEnumLiteral(ductFunctionEEnum, DuctFunction.BLOWER_INTAKE);
		addEEnumLiteral(ductFunctionEEnum, DuctFunction.COMBUSTION_AIR);

		initEEnum(neutralBondEEnum, NeutralBond.class, "NeutralBond");
		addEEnumLiteral(neutralBondEEnum, NeutralBond.NOT_ENTERED);
		addEEnumLiteral(neutralBondEEnum, NeutralBond.AT_GENERATOR);
		addEEnumLiteral(neutralBondEEnum, NeutralBond.AT_SWITCHBOARD);
		addEEnumLiteral(neutralBondEEnum, NeutralBond.SWITCHED_WITH_SOURCE);
		addEEnumLiteral(neutralBondEEnum, NeutralBond.NONE);
		addEEnumLiteral(neutralBondEEnum, NeutralBond.SEVERAL);

		initEEnum(transferKindEEnum, TransferKind.class, "TransferKind");
		addEEnumLiteral(transferKindEEnum, TransferKind.NOT_ENTERED);
		addEEnumLiteral(transferKindEEnum, TransferKind.ROTARY_SELECTOR);
		addEEnumLiteral(transferKindEEnum, TransferKind.INTERLOCKED_BREAKERS);
		addEEnumLiteral(transferKindEEnum, TransferKind.AUTOMATIC_BREAK_BEFORE_MAKE);
		addEEnumLiteral(transferKindEEnum, TransferKind.SEPARATE_BREAKERS);
		addEEnumLiteral(transferKindEEnum, TransferKind.NONE);

		initEEnum(polesSwitchedEEnum, PolesSwitched.class, "PolesSwitched");
		addEEnumLiteral(polesSwitchedEEnum, PolesSwitched.NOT_ENTERED);
		addEEnumLiteral(polesSwitchedEEnum, PolesSwitched.ALL_LIVE_AND_NEUTRAL);
		addEEnumLiteral(polesSwitchedEEnum, PolesSwitched.LIVE_ONLY);

		initEEnum(tripCurveEEnum, TripCurve.class, "TripCurve");
		addEEnumLiteral(tripCurveEEnum, TripCurve.NOT_ENTERED);
		addEEnumLiteral(tripCurveEEnum, TripCurve.TYPE_B);
		addEEnumLiteral(tripCurveEEnum, TripCurve.TYPE_C);
		addEEnumLiteral(tripCurveEEnum, TripCurve.TYPE_D);
		addEEnumLiteral(tripCurveEEnum, TripCurve.THERMAL_ONLY);
		addEEnumLiteral(tripCurveEEnum, TripCurve.ELECTRONIC);

		initEEnum(loadKindEEnum, LoadKind.class, "LoadKind");
		addEEnumLiteral(loadKindEEnum, LoadKind.NOT_ENTERED);
		addEEnumLiteral(loadKindEEnum, LoadKind.RESISTIVE);
		addEEnumLiteral(loadKindEEnum, LoadKind.MOTOR);
		addEEnumLiteral(loadKindEEnum, LoadKind.ELECTRONIC);
		addEEnumLiteral(loadKindEEnum, LoadKind.CHARGER);
		addEEnumLiteral(loadKindEEnum, LoadKind.LIGHTING);
		addEEnumLiteral(loadKindEEnum, LoadKind.MIXED);

		initEEnum(motorStartingEEnum, MotorStarting.class, "MotorStarting");
		addEEnumLiteral(motorStartingEEnum, MotorStarting.NOT_ENTERED);
		addEEnumLiteral(motorStartingEEnum, MotorStarting.DIRECT_ON_LINE);
		addEEnumLiteral(motorStartingEEnum, MotorStarting.STAR_DELTA);
		addEEnumLiteral(motorStartingEEnum, MotorStarting.SOFT_START);
		addEEnumLiteral(motorStartingEEnum, MotorStarting.VARIABLE_SPEED);

		initEEnum(alarmKindEEnum, AlarmKind.class, "AlarmKind");
		addEEnumLiteral(alarmKindEEnum, AlarmKind.NOT_ENTERED);
		addEEnumLiteral(alarmKindEEnum, AlarmKind.EXHAUST_TEMPERATURE);
		addEEnumLiteral(alarmKindEEnum, AlarmKind.RAW_WATER_FLOW);
		addEEnumLiteral(alarmKindEEnum, AlarmKind.OIL_PRESSURE);
		addEEnumLiteral(alarmKindEEnum, AlarmKind.COOLANT_TEMPERATURE);
		addEEnumLiteral(alarmKindEEnum, AlarmKind.FUEL_VAPOUR);
		addEEnumLiteral(alarmKindEEnum, AlarmKind.CARBON_MONOXIDE);
		addEEnumLiteral(alarmKindEEnum, AlarmKind.BILGE_LEVEL);
		addEEnumLiteral(alarmKindEEnum, AlarmKind.FIRE);
		addEEnumLiteral(alarmKindEEnum, AlarmKind.LOW_VOLTAGE);
		addEEnumLiteral(alarmKindEEnum, AlarmKind.OVERSPEED);

		initEEnum(testResultEEnum, TestResult.class, "TestResult");
		addEEnumLiteral(testResultEEnum, TestResult.NOT_ENTERED);
		addEEnumLiteral(testResultEEnum, TestResult.PASSED);
		addEEnumLiteral(testResultEEnum, TestResult.FAILED);
		addEEnumLiteral(testResultEEnum, TestResult.NOT_TESTED);

		initEEnum(seacockStateEEnum, SeacockState.class, "SeacockState");
		addEEnumLiteral(seacockStateEEnum, SeacockState.NOT_ENTERED);
		addEEnumLiteral(seacockStateEEnum, SeacockState.OPEN);
		addEEnumLiteral(seacockStateEEnum, SeacockState.SHUT);

		initEEnum(trialPlaceEEnum, TrialPlace.class, "TrialPlace");
		addEEnumLiteral(trialPlaceEEnum, TrialPlace.NOT_ENTERED);
		addEEnumLiteral(trialPlaceEEnum, TrialPlace.DOCK);
		addEEnumLiteral(trialPlaceEEnum, TrialPlace.SEA);
		addEEnumLiteral(trialPlaceEEnum, TrialPlace.WORKSHOP);

		initEEnum(signatureRoleEEnum, SignatureRole.class, "SignatureRole");
		addEEnumLiteral(signatureRoleEEnum, SignatureRole.NOT_ENTERED);
		addEEnumLiteral(signatureRoleEEnum, SignatureRole.INSTALLER);
		addEEnumLiteral(signatureRoleEEnum, SignatureRole.OWNER);
		addEEnumLiteral(signatureRoleEEnum, SignatureRole.SURVEYOR);
		addEEnumLiteral(signatureRoleEEnum, SignatureRole.WARRANTY_DESK);

		initEEnum(smokeColourEEnum, SmokeColour.class, "SmokeColour");
		addEEnumLiteral(smokeColourEEnum, SmokeColour.NOT_ENTERED);
		addEEnumLiteral(smokeColourEEnum, SmokeColour.NONE);
		addEEnumLiteral(smokeColourEEnum, SmokeColour.WHITE);
		addEEnumLiteral(smokeColourEEnum, SmokeColour.BLACK);
		addEEnumLiteral(smokeColourEEnum, SmokeColour.BLUE);

		// Initialize data types
		initEDataType(lengthEDataType, Length.class, "Length", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(areaEDataType, Area.class, "Area", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(volumeEDataType, Volume.class, "Volume", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(massEDataType, Mass.class, "Mass", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(angleEDataType, Angle.class, "Angle", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(slopeEDataType, Slope.class, "Slope", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(speedEDataType, Speed.class, "Speed", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(timeSpanEDataType, TimeSpan.class, "TimeSpan", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(frequencyEDataType, Frequency.class, "Frequency", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(rotationalSpeedEDataType, RotationalSpeed.class, "RotationalSpeed", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(absolutePressureEDataType, AbsolutePressure.class, "AbsolutePressure", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(gaugePressureEDataType, GaugePressure.class, "GaugePressure", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(pressureDifferenceEDataType, PressureDifference.class, "PressureDifference", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(temperatureEDataType, Temperature.class, "Temperature", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(temperatureDifferenceEDataType, TemperatureDifference.class, "TemperatureDifference", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(volumeFlowEDataType, VolumeFlow.class, "VolumeFlow", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(massFlowEDataType, MassFlow.class, "MassFlow", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(powerEDataType, Power.class, "Power", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(apparentPowerEDataType, ApparentPower.class, "ApparentPower", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(voltageEDataType, Voltage.class, "Voltage", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(currentEDataType, Current.class, "Current", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(resistanceEDataType, Resistance.class, "Resistance", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(chargeEDataType, Charge.class, "Charge", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(specificConsumptionEDataType, SpecificConsumption.class, "SpecificConsumption", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(ratioEDataType, Ratio.class, "Ratio", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(dateEDataType, LocalDate.class, "Date", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(dateTimeEDataType, OffsetDateTime.class, "DateTime", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(textEDataType, String.class, "Text", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);

		// Create resource
		createResource(eNS_URI);
	}

} //GarboardPackageImpl
