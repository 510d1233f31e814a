// SPDX-License-Identifier: EPL-2.0
package garboard.practice.siphon;

import static garboard.model.GarboardPackage.Literals.SIPHON_BREAK__VENT_HOSE_FREE;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.SiphonBreakKind;
import garboard.model.VentHoseEnd;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Question;

class SiphonVentHoseFreeTest {

    // kinked vent hoses as a cause of flooding: marine trade press, 2021
    @Test
    void followsTheAnswer() {
        Question.of(SiphonVentHoseFree.check(), SIPHON_BREAK__VENT_HOSE_FREE).at(record -> record.getRawWater().getSiphonBreak())
            .in(SiphonVentHoseFreeTest::installation).wants(Answer.YES, "rawWater.siphonBreak.ventHoseFree");
    }

    @Test
    void doesNotApplyWithoutAVentHose() {
        CommissioningRecord record = Installation.empty();
        record.getRawWater().getSiphonBreak().setKind(SiphonBreakKind.VALVED_VENTED_LOOP);
        record.getRawWater().getSiphonBreak().setVentHose(VentHoseEnd.NO_VENT_HOSE);
        judge(SiphonVentHoseFree.check(), record).doesNotApply();
    }

    private static void installation(CommissioningRecord record) {
        record.getRawWater().getSiphonBreak().setKind(SiphonBreakKind.VALVED_VENTED_LOOP);
        record.getRawWater().getSiphonBreak().setVentHose(VentHoseEnd.COCKPIT);
    }
}
