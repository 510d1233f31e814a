// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.model.GarboardPackage.Literals.EXHAUST_RUN__CLEAR_OF_COMBUSTIBLES;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.VesselService;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Question;

class ExhaustClearOfCombustiblesTest {

    // 46 CFR 177.405(b)
    @Test
    void followsTheAnswer() {
        Question.of(ExhaustClearOfCombustibles.check(), EXHAUST_RUN__CLEAR_OF_COMBUSTIBLES).at(record -> record.getExhaust())
            .in(ExhaustClearOfCombustiblesTest::installation).demands(Answer.YES, "exhaust.clearOfCombustibles");
    }

    @Test
    void doesNotApplyToOtherVessels() {
        CommissioningRecord record = Installation.empty();
        record.getVessel().setService(VesselService.RECREATIONAL);
        judge(ExhaustClearOfCombustibles.check(), record).doesNotApply();
    }

    private static void installation(CommissioningRecord record) {
        record.getVessel().setService(VesselService.SMALL_PASSENGER);
    }
}
