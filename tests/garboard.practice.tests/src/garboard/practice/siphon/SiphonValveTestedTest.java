// SPDX-License-Identifier: EPL-2.0
package garboard.practice.siphon;

import static garboard.model.GarboardPackage.Literals.SIPHON_BREAK__VALVE_TESTED;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.SiphonBreakKind;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Question;

class SiphonValveTestedTest {

    // testing the valve: marine trade press
    @Test
    void followsTheAnswer() {
        Question.of(SiphonValveTested.check(), SIPHON_BREAK__VALVE_TESTED).at(record -> record.getRawWater().getSiphonBreak())
            .in(SiphonValveTestedTest::installation).wants(Answer.YES, "rawWater.siphonBreak.valveTested");
    }

    @Test
    void doesNotApplyWithoutAValve() {
        CommissioningRecord record = Installation.empty();
        record.getRawWater().getSiphonBreak().setKind(SiphonBreakKind.BLEED_OVERBOARD);
        judge(SiphonValveTested.check(), record).doesNotApply();
    }

    private static void installation(CommissioningRecord record) {
        record.getRawWater().getSiphonBreak().setKind(SiphonBreakKind.VALVED_VENTED_LOOP);
    }
}
