// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__VENTED_OVERBOARD;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Question;

class HydrogenLeavesTheBoatByLawTest {

    @Test
    void answered() { // 33 CFR 183.420(e)
        Question.of(HydrogenLeavesTheBoatByLaw.check(), STARTING_BATTERY__VENTED_OVERBOARD).at(CommissioningRecord::getStartingBattery)
            .in(record -> record.getVessel().setGasolineEngineAboard(Answer.YES))
            .wants(Answer.YES, "startingBattery.ventedOverboard");
    }

    @Test
    void doesNotApplyWithoutGasoline() {
        CommissioningRecord record = Bench.flooded();
        record.getVessel().setGasolineEngineAboard(Answer.NO);
        judge(HydrogenLeavesTheBoatByLaw.check(), record).doesNotApply();
    }
}
