// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.model.GarboardPackage.Literals.EXHAUST_RUN__DRY_PARTS_LAGGED;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.VesselService;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Question;

class ExhaustDryPartsLaggedTest {

    // 46 CFR 182.425(b)(3)
    @Test
    void followsTheAnswer() {
        Question.of(ExhaustDryPartsLagged.check(), EXHAUST_RUN__DRY_PARTS_LAGGED).at(record -> record.getExhaust())
            .in(ExhaustDryPartsLaggedTest::installation).demands(Answer.YES, "exhaust.dryPartsLagged");
    }

    @Test
    void doesNotApplyToOtherVessels() {
        CommissioningRecord record = Installation.empty();
        record.getVessel().setService(VesselService.RECREATIONAL);
        judge(ExhaustDryPartsLagged.check(), record).doesNotApply();
    }

    private static void installation(CommissioningRecord record) {
        record.getVessel().setService(VesselService.SMALL_PASSENGER);
    }
}
