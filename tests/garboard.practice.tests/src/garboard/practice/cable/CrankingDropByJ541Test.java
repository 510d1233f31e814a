// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.StartingBattery;
import garboard.quantity.Current;
import garboard.quantity.Resistance;
import garboard.quantity.Voltage;

class CrankingDropByJ541Test {

    private final CommissioningRecord record = Wiring.withoutOutputCable();
    private final StartingBattery battery = record.getStartingBattery();

    private void measured(String posts, String starter) {
        battery.setCrankingVoltageAtPosts(Voltage.valueOf(posts));
        battery.setCrankingVoltageAtStarter(Voltage.valueOf(starter));
    }

    // SAE J541 (quoted): 300 A at 12 V 0.60 V, 400 A at 12 V 0.80 V, 250 A at 24 V 1.00 V
    @ParameterizedTest
    @CsvSource({ "12 V, 300 A, 10.30 V, 9.81 V, 0.60, MEETS", "12 V, 300 A, 10.30 V, 9.70 V, 0.60, MEETS",
        "12 V, 300 A, 10.30 V, 9.69 V, 0.60, FALLS_SHORT",
        "12 V, 400 A, 10.20 V, 9582 mV, 0.80, MEETS", "24 V, 250 A, 21.47 V, 20.36 V, 1.00, FALLS_SHORT" })
    void keepsTheDrop(String system, String cranking, String posts, String starter, double limitV, Standing standing) {
        record.getGeneratorSet().setSystemVoltage(Voltage.valueOf(system));
        record.getGeneratorSet().setCrankingCurrent(Current.valueOf(cranking));
        measured(posts, starter);
        judge(CrankingDropByJ541.check(), record).is(standing).limit(limitV, "V", 1e-9);
    }

    @Test
    void makersResistanceTakesThePlace() {
        record.getGeneratorSet().setSystemVoltage(Voltage.of(12, "V"));
        record.getGeneratorSet().setCrankingCurrent(Current.of(300, "A"));
        record.getGeneratorSet().getMakerLimits().setMaximumCrankingCircuitResistance(Resistance.of(1, "mohm"));
        measured("10.3 V", "9.9 V");
        judge(CrankingDropByJ541.check(), record).fallsShort().limitFromMaker().limit(0.3, "V", 1e-9);
    }

    @Test
    void carriesTheAccuracyOfBothReadings() {
        record.getGeneratorSet().setSystemVoltage(Voltage.of(12, "V"));
        record.getGeneratorSet().setCrankingCurrent(Current.of(300, "A"));
        measured("10.30 V ±0.03 V", "9.74 V ±0.04 V"); // 0.56 V +- 0.05 V
        judge(CrankingDropByJ541.check(), record).is(Standing.BORDERLINE);
        measured("10.30 V ±0.03 V", "9.76 V ±0.04 V"); // 0.54 V +- 0.05 V
        judge(CrankingDropByJ541.check(), record).meets();
    }

    @Test
    void refusesMoreAtTheStarterThanAtThePosts() {
        record.getGeneratorSet().setSystemVoltage(Voltage.of(12, "V"));
        record.getGeneratorSet().setCrankingCurrent(Current.of(300, "A"));
        measured("9.8 V", "10.3 V");
        judge(CrankingDropByJ541.check(), record).fallsShort();
    }

    @Test
    void cannotTellWithoutInputs() {
        judge(CrankingDropByJ541.check(), record).cannotTell("generatorSet.systemVoltage", "generatorSet.crankingCurrent",
            "startingBattery.crankingVoltageAtPosts", "startingBattery.crankingVoltageAtStarter");
    }

    @Test
    void doesNotApplyWhereItHasNoFigure() {
        record.getGeneratorSet().setSystemVoltage(Voltage.of(48, "V"));
        judge(CrankingDropByJ541.check(), record).doesNotApply();
    }
}
