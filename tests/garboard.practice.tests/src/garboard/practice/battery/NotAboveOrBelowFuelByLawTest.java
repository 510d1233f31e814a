// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__ABOVE_OR_BELOW_FUEL_FITTINGS;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Question;

class NotAboveOrBelowFuelByLawTest {

    @Test
    void answered() { // 33 CFR 183.420(d)
        Question.of(NotAboveOrBelowFuelByLaw.check(), STARTING_BATTERY__ABOVE_OR_BELOW_FUEL_FITTINGS).at(CommissioningRecord::getStartingBattery)
            .in(record -> record.getVessel().setGasolineEngineAboard(Answer.YES))
            .wants(Answer.NO, "startingBattery.aboveOrBelowFuelFittings");
    }

    @Test
    void doesNotApplyWithoutGasoline() {
        CommissioningRecord record = Bench.flooded();
        record.getVessel().setGasolineEngineAboard(Answer.NO);
        judge(NotAboveOrBelowFuelByLaw.check(), record).doesNotApply();
    }
}
