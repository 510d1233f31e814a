// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.StartingBattery;
import garboard.quantity.Length;
import garboard.quantity.Mass;

class BatteryRestraintByLawTest {

    private final CommissioningRecord record = Bench.flooded();
    private final StartingBattery battery = record.getStartingBattery();

    @BeforeEach
    void gasolineBoat() {
        record.getVessel().setGasolineEngineAboard(Answer.YES);
    }

    @ParameterizedTest
    @CsvSource({ "1.0 in, MEETS", "25.4 mm, MEETS", "1.1 in, FALLS_SHORT", "26 mm, FALLS_SHORT", "0 mm, MEETS" }) // 33 CFR 183.420(a): one inch
    void movesOneInch(String moved, Standing standing) {
        battery.setMovementUnderTest(Length.valueOf(moved));
        judge(BatteryRestraintByLaw.check(), record).is(standing);
    }

    // 33 CFR 183.420(a): the lesser of 90 lbf and twice the weight; 25 kg would be 490 N, 15 kg is 294 N
    @ParameterizedTest
    @CsvSource({ "30 lb, (60 lbf)", "44 lb, (88 lbf)", "45 lb, (90 lbf)", "60 lb, (90 lbf)", "25 kg, 400 N", "15 kg, 294 N" })
    void namesThePull(String mass, String pull) {
        battery.setMovementUnderTest(Length.of(5, "mm"));
        battery.setBlockMass(Mass.valueOf(mass));
        assertThat(judge(BatteryRestraintByLaw.check(), record).meets().verdict().sentence()).contains(pull);
    }

    @Test
    void cannotTellWithoutTheTest() {
        judge(BatteryRestraintByLaw.check(), record).cannotTell("startingBattery.movementUnderTest");
    }

    @Test
    void doesNotApplyWithoutGasoline() {
        record.getVessel().setGasolineEngineAboard(Answer.NO);
        judge(BatteryRestraintByLaw.check(), record).doesNotApply();
    }
}
