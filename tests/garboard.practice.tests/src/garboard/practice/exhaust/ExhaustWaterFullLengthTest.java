// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.model.GarboardPackage.Literals.EXHAUST_RUN__WATER_FULL_LENGTH;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.VesselService;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Question;

class ExhaustWaterFullLengthTest {

    // 46 CFR 182.425(b)(2)
    @Test
    void followsTheAnswer() {
        Question.of(ExhaustWaterFullLength.check(), EXHAUST_RUN__WATER_FULL_LENGTH).at(record -> record.getExhaust())
            .in(ExhaustWaterFullLengthTest::installation).demands(Answer.YES, "exhaust.waterFullLength");
    }

    @Test
    void doesNotApplyToOtherVessels() {
        CommissioningRecord record = Installation.empty();
        record.getVessel().setService(VesselService.RECREATIONAL);
        judge(ExhaustWaterFullLength.check(), record).doesNotApply();
    }

    private static void installation(CommissioningRecord record) {
        record.getVessel().setService(VesselService.SMALL_PASSENGER);
    }
}
