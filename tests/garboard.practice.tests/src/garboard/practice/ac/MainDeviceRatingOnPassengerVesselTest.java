// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.GeneratorSet;
import garboard.model.PhaseSystem;
import garboard.model.ProtectionKind;
import garboard.model.VesselService;
import garboard.practice.testing.Installation;
import garboard.quantity.Current;
import garboard.quantity.Power;
import garboard.quantity.Ratio;
import garboard.quantity.Temperature;
import garboard.quantity.Voltage;

class MainDeviceRatingOnPassengerVesselTest {

    private final CommissioningRecord record = Installation.empty();
    private final GeneratorSet set = record.getGeneratorSet();

    private void set(String power, String voltage, PhaseSystem phases, double powerFactor) {
        Board.passengers(record);
        set.setRatedPower(Power.valueOf(power));
        set.setRatedPowerFactor(Ratio.of(powerFactor));
        set.setRatedVoltage(Voltage.valueOf(voltage));
        set.setPhases(phases);
        set.setDesignAmbient(Temperature.of(50, "degC"));
        record.getAcOutput().setProtectionDevice(ProtectionKind.CIRCUIT_BREAKER);
    }

    // 46 CFR 183.320(f): 8 kW 240 V pf 1: 33.333 A -> 38.333; 8 kW 120 V: 66.667 -> 76.667; 20 kW 208 V pf 0.8: 69.393 -> 79.802; 99 kW 400 V: 205.410
    @ParameterizedTest
    @CsvSource({ "8 kW, 240 V, SINGLE_PHASE, 1, 35 A, 38.333, MEETS", "8 kW, 240 V, SINGLE_PHASE, 1, 40 A, 38.333, FALLS_SHORT",
        "8 kW, 120 V, SINGLE_PHASE, 1, 70 A, 76.667, MEETS", "8 kW, 120 V, SINGLE_PHASE, 1, 80 A, 76.667, FALLS_SHORT",
        "20 kW, 208 V, THREE_PHASE, 0.8, 80 A, 79.802, FALLS_SHORT", "99 kW, 400 V, THREE_PHASE, 0.8, 200 A, 205.410, MEETS" })
    void atMost115PerCent(String power, String voltage, PhaseSystem phases, double powerFactor, String rating, double mostA, Standing standing) {
        set(power, voltage, phases, powerFactor);
        record.getAcOutput().setProtectionRating(Current.valueOf(rating));
        judge(MainDeviceRatingOnPassengerVessel.check(), record).is(standing).limit(mostA, "A", 0.0005);
    }

    @Test
    void aSetFor40DegreesInAHotterSpaceCountsWith80PerCent() {
        // 46 CFR 183.320(b) and (f): 20 kW 40 degC set in 50 degC space: 16 kW, 55.514 A, limit 63.842 A
        set("20 kW", "208 V", PhaseSystem.THREE_PHASE, 0.8);
        set.setDesignAmbient(Temperature.of(40, "degC"));
        record.getVentilation().setDesignAmbient(Temperature.of(50, "degC"));
        record.getAcOutput().setProtectionRating(Current.of(70, "A"));
        judge(MainDeviceRatingOnPassengerVessel.check(), record).fallsShort().limit(63.842, "A", 0.0005).afterRemedy().meets();
        assertThat(record.getAcOutput().getProtectionRating().si()).isEqualTo(60);
        record.getAcOutput().setProtectionRating(Current.of(70, "A"));
        record.getVentilation().setDesignAmbient(Temperature.of(40, "degC"));
        judge(MainDeviceRatingOnPassengerVessel.check(), record).meets().limit(79.802, "A", 0.0005);
        record.getVentilation().setDesignAmbient(Temperature.of(45, "degC"));
        judge(MainDeviceRatingOnPassengerVessel.check(), record).fallsShort();
        record.getVentilation().setDesignAmbient(Temperature.of(55, "degC")); // outside the rule
        judge(MainDeviceRatingOnPassengerVessel.check(), record).is(Standing.CANNOT_TELL);
    }

    @Test
    void aPlateWithTheDeratedCapacityIsNotDeratedAgain() {
        set("16 kW", "208 V", PhaseSystem.THREE_PHASE, 0.8);
        set.setDesignAmbient(Temperature.of(40, "degC"));
        set.setPlateShowsDeratedPower(Answer.YES);
        record.getVentilation().setDesignAmbient(Temperature.of(50, "degC"));
        record.getAcOutput().setProtectionRating(Current.of(60, "A"));
        judge(MainDeviceRatingOnPassengerVessel.check(), record).meets().limit(63.842, "A", 0.0005);
    }

    @Test
    void fallsShortWithoutADevice() {
        set("8 kW", "240 V", PhaseSystem.SINGLE_PHASE, 1);
        record.getAcOutput().setProtectionDevice(ProtectionKind.NONE);
        judge(MainDeviceRatingOnPassengerVessel.check(), record).fallsShort();
    }

    @Test
    void cannotTellWithoutInputs() {
        Board.passengers(record);
        judge(MainDeviceRatingOnPassengerVessel.check(), record).cannotTell("generatorSet.ratedPower", "generatorSet.ratedPowerFactor",
            "generatorSet.ratedVoltage", "generatorSet.phases", "acOutput.protectionDevice");
        set("8 kW", "240 V", PhaseSystem.SINGLE_PHASE, 1);
        set.setDesignAmbient(Temperature.of(40, "degC"));
        judge(MainDeviceRatingOnPassengerVessel.check(), record).cannotTell("acOutput.protectionRating", "ventilation.designAmbient");
    }

    @Test
    void doesNotApplyToOtherVessels() {
        record.getVessel().setService(VesselService.RECREATIONAL);
        judge(MainDeviceRatingOnPassengerVessel.check(), record).doesNotApply();
    }
}
