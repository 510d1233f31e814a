// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.TerminalKind;

class BatteryTerminalsByLawTest {

    private final CommissioningRecord record = Bench.flooded();

    @ParameterizedTest
    @CsvSource({ "POST_CLAMP, MEETS", "BOLTED_LUG, MEETS", "WING_NUT, MEETS", "SPRING_CLIP, FALLS_SHORT" }) // 33 CFR 183.420(g)
    void noSpring(TerminalKind terminals, Standing standing) {
        record.getVessel().setGasolineEngineAboard(Answer.YES);
        record.getStartingBattery().setTerminals(terminals);
        judge(BatteryTerminalsByLaw.check(), record).is(standing);
    }

    @Test
    void cannotTellWithoutInputs() {
        judge(BatteryTerminalsByLaw.check(), record).cannotTell("vessel.gasolineEngineAboard", "startingBattery.terminals");
    }

    @Test
    void doesNotApplyWithoutGasoline() {
        record.getVessel().setGasolineEngineAboard(Answer.NO);
        judge(BatteryTerminalsByLaw.check(), record).doesNotApply();
    }
}
