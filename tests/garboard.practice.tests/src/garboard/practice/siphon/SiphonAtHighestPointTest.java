// SPDX-License-Identifier: EPL-2.0
package garboard.practice.siphon;

import static garboard.model.GarboardPackage.Literals.SIPHON_BREAK__HIGHEST_POINT;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.SiphonBreakKind;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Question;

class SiphonAtHighestPointTest {

    // common practice
    @Test
    void followsTheAnswer() {
        Question.of(SiphonAtHighestPoint.check(), SIPHON_BREAK__HIGHEST_POINT).at(record -> record.getRawWater().getSiphonBreak())
            .in(SiphonAtHighestPointTest::installation).wants(Answer.YES, "rawWater.siphonBreak.highestPoint");
    }

    @Test
    void doesNotApplyWithoutALoop() {
        CommissioningRecord record = Installation.empty();
        record.getRawWater().getSiphonBreak().setKind(SiphonBreakKind.NONE);
        judge(SiphonAtHighestPoint.check(), record).doesNotApply();
    }

    private static void installation(CommissioningRecord record) {
        record.getRawWater().getSiphonBreak().setKind(SiphonBreakKind.VALVED_VENTED_LOOP);
    }
}
