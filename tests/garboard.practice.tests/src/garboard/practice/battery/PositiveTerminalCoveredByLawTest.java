// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__POSITIVE_TERMINAL_COVERED;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Question;

class PositiveTerminalCoveredByLawTest {

    @Test
    void answered() { // 33 CFR 183.420(b)
        Question.of(PositiveTerminalCoveredByLaw.check(), STARTING_BATTERY__POSITIVE_TERMINAL_COVERED).at(CommissioningRecord::getStartingBattery)
            .in(record -> record.getVessel().setGasolineEngineAboard(Answer.YES))
            .demands(Answer.YES, "startingBattery.positiveTerminalCovered");
    }

    @Test
    void doesNotApplyWithoutGasoline() {
        CommissioningRecord record = Bench.flooded();
        record.getVessel().setGasolineEngineAboard(Answer.NO);
        judge(PositiveTerminalCoveredByLaw.check(), record).doesNotApply();
    }
}
