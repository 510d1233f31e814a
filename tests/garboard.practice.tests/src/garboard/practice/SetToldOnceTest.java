// SPDX-License-Identifier: EPL-2.0
package garboard.practice;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.model.AcOutput;
import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.FuelKind;
import garboard.model.GeneratorSet;
import garboard.model.NeutralBond;
import garboard.model.PhaseSystem;
import garboard.model.ProtectionKind;
import garboard.model.TransferKind;
import garboard.model.VesselService;
import garboard.practice.testing.Boat;
import garboard.quantity.Area;
import garboard.quantity.Current;
import garboard.quantity.Length;
import garboard.quantity.Power;
import garboard.quantity.Ratio;
import garboard.quantity.Temperature;
import garboard.quantity.TimeSpan;
import garboard.quantity.Voltage;
import garboard.quantity.Volume;
import garboard.quantity.VolumeFlow;

/** As {@link ToldOnceTest}, for the set itself, its mounting, its alarms and its AC output. */
class SetToldOnceTest {

    private final CommissioningRecord record = everythingWrong();
    private final AcOutput output = record.getAcOutput();
    private final LawAndPractice told = new LawAndPractice(record);

    @ParameterizedTest
    @CsvSource({ "AC-SOURCES-INTERLOCKED, AC-SOURCES-INTERLOCKED-183-390, 183.390(d)", "AC-PARTS-GROUNDED, AC-PARTS-GROUNDED-183-372, 183.372",
        "AC-PROTECTIVE-SIZE, AC-PROTECTIVE-SIZE-183-372, 183.372(c)", "AC-METERS, AC-METERS-183-320, 183.320(c)",
        "AC-PLATE, AC-PLATE-183-320, 183.320(d)", "AC-DEVICE-RATING, AC-DEVICE-RATING-183-320, 183.320(f)",
        "MOUNTING-ACCESS, MOUNTING-ACCESS-183-320, 183.320(a)", "MOUNTING-BILGE, MOUNTING-BILGE-183-320, 183.320(a)",
        "AC-NEUTRAL-BOND, AC-NEUTRAL-BOND-183-376, 183.376" })
    void onSmallPassengerVessels(String practice, String law, String reason) {
        record.getVessel().setService(VesselService.SMALL_PASSENGER);
        told.byTheLawAlone(practice, law, reason);
        record.getVessel().setService(VesselService.RECREATIONAL);
        told.byThePracticeAlone(practice, law);
    }

    @ParameterizedTest
    @CsvSource({ "ALARM-VAPOUR, ALARM-VAPOUR-182-480, 182.480", "ALARM-VAPOUR-LOW, ALARM-VAPOUR-LOW-182-480, 182.480",
        "VENT-BLOWER-TIME, VENT-BLOWER-TIME-185-352, 185.352" })
    void onSmallPassengerVesselsWithAGasolineSet(String practice, String law, String reason) {
        record.getGeneratorSet().setFuel(FuelKind.GASOLINE);
        record.getAlarms().setVapourDetector(practice.equals("ALARM-VAPOUR-LOW") ? Answer.YES : Answer.NO);
        onSmallPassengerVessels(practice, law, reason);
    }

    @Test
    void anUngroundedSystemOnAPassengerVessel() {
        output.setNeutralBond(NeutralBond.NONE);
        onSmallPassengerVessels("AC-GROUND-DETECTION", "AC-GROUND-DETECTION-183-378", "183.378");
    }

    @Test
    void severalBondsOfAThreePhaseSetOnAPassengerVessel() {
        record.getGeneratorSet().setPhases(PhaseSystem.THREE_PHASE);
        onSmallPassengerVessels("AC-NEUTRAL-ONCE", "AC-NEUTRAL-BOND-183-376", "183.376");
    }

    @ParameterizedTest
    @CsvSource({ "AC-DEVICE-PLACE, AC-DEVICE-PLACE-183-455, 183.455(b)", "AC-DEVICE-VOLTAGE, AC-DEVICE-VOLTAGE-183-455, 183.455(d)" })
    void onGasolineBoats(String practice, String law, String reason) {
        record.getVessel().setGasolineEngineAboard(Answer.YES);
        told.byTheLawAlone(practice, law, reason);
        record.getVessel().setGasolineEngineAboard(Answer.NO);
        told.byThePracticeAlone(practice, law);
    }

    @Test
    void noMainDeviceAtAll() {
        output.setProtectionDevice(ProtectionKind.NONE);
        onGasolineBoats("AC-PROTECTED", "AC-PROTECTED-183-455", "183.455(a)");
    }

    /** A diesel set of 10 kW, 230 V, one phase, with everything missing that the checks above ask for. */
    private static CommissioningRecord everythingWrong() {
        CommissioningRecord record = Boat.motor("7 deg", "0 deg");
        rated(record.getGeneratorSet());
        record.getVessel().setGasolineEngineAboard(Answer.NO);
        record.getVentilation().setDesignAmbient(Temperature.of(45, "degC"));
        record.getVentilation().setGrossVolume(Volume.of(6, "m3"));
        record.getVentilation().setNetVolume(Volume.of(4, "m3"));
        record.getVentilation().setOpenAreaToAtmosphere(Area.of(0, "cm2"));
        record.getVentilation().setBlowerRatedFlow(VolumeFlow.of(3, "m3/min"));
        record.getMounting().setAccessForService(Answer.NO);
        record.getMounting().setHeightAboveBilge(Length.of(-50, "mm"));
        record.getAlarms().setVapourSensorLow(Answer.NO);
        record.getAlarms().setVapourBeforeStart(TimeSpan.of(0, "s"));
        wrong(record.getAcOutput());
        return record;
    }

    private static void rated(GeneratorSet set) {
        set.setFuel(FuelKind.DIESEL);
        set.setPhases(PhaseSystem.SINGLE_PHASE);
        set.setRatedPower(Power.of(10, "kW"));
        set.setRatedPowerFactor(Ratio.of(1));
        set.setRatedVoltage(Voltage.of(230, "V"));
        set.setDesignAmbient(Temperature.of(50, "degC"));
    }

    // 10 kW at 230 V: 43.5 A; a breaker of 100 A, 65 V, 2 m away; 2.5 mm2 where NFPA 70, 250.122 asks for 8 AWG
    private static void wrong(AcOutput output) {
        output.getTransfer().setKind(TransferKind.INTERLOCKED_BREAKERS);
        output.getTransfer().setInterlocked(Answer.NO);
        output.setShoreInletResidualDevice(Answer.NO);
        output.setNeutralBond(NeutralBond.SEVERAL);
        output.setEarthedPartsBonded(Answer.NO);
        output.setGroundDetection(Answer.NO);
        output.setVoltmeter(Answer.NO);
        output.setAmmeter(Answer.NO);
        output.setFrequencyMeter(Answer.NO);
        output.setNamePlateReadable(Answer.NO);
        output.setProtectiveConductorSize("2.5 mm2");
        output.setProtectionDevice(ProtectionKind.CIRCUIT_BREAKER);
        output.setProtectionRating(Current.of(100, "A"));
        output.setProtectionDistance(Length.of(2, "m"));
        output.getOutputCable().setSheathedToProtection(Answer.NO);
        output.getOutputCable().setProtectionVoltageRating(Voltage.of(65, "V"));
    }
}
