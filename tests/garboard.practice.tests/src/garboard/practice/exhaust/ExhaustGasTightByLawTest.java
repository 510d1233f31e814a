// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.model.GarboardPackage.Literals.EXHAUST_RUN__GAS_TIGHT;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.VesselService;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Question;

class ExhaustGasTightByLawTest {

    // 46 CFR 182.430, from memory
    @Test
    void followsTheAnswer() {
        Question.of(ExhaustGasTightByLaw.check(), EXHAUST_RUN__GAS_TIGHT).at(record -> record.getExhaust())
            .in(ExhaustGasTightByLawTest::installation).demands(Answer.YES, "exhaust.gasTight");
    }

    @Test
    void doesNotApplyToOtherVessels() {
        CommissioningRecord record = Installation.empty();
        record.getVessel().setService(VesselService.RECREATIONAL);
        judge(ExhaustGasTightByLaw.check(), record).doesNotApply();
    }

    private static void installation(CommissioningRecord record) {
        record.getVessel().setService(VesselService.SMALL_PASSENGER);
    }
}
