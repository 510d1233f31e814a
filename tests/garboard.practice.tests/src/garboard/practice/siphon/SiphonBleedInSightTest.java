// SPDX-License-Identifier: EPL-2.0
package garboard.practice.siphon;

import static garboard.practice.siphon.SiphonFixture.fitted;
import static garboard.practice.siphon.SiphonFixture.loop;
import static garboard.practice.siphon.SiphonFixture.siphonBreak;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.SiphonBreakKind;
import garboard.model.VentHoseEnd;

class SiphonBleedInSightTest {

    // common practice: led overboard where the crew sees it
    @ParameterizedTest
    @CsvSource({ "OVERBOARD, YES, MEETS", "OVERBOARD, NO, FALLS_SHORT", "BILGE, YES, FALLS_SHORT", "NO_VENT_HOSE, YES, FALLS_SHORT",
            "COCKPIT, NO, FALLS_SHORT" })
    void runsOverboardInSight(VentHoseEnd end, Answer seen, Standing expected) {
        CommissioningRecord record = fitted(SiphonBreakKind.BLEED_OVERBOARD);
        siphonBreak(record).setVentHose(end);
        siphonBreak(record).setTellTaleVisible(seen);
        judge(SiphonBleedInSight.check(), record).is(expected);
    }

    @Test
    void doesNotApplyToAValve() {
        judge(SiphonBleedInSight.check(), loop()).doesNotApply();
    }

    @Test
    void cannotTellWithoutTheAnswers() {
        judge(SiphonBleedInSight.check(), fitted(SiphonBreakKind.BLEED_OVERBOARD)).cannotTell("rawWater.siphonBreak.ventHose",
            "rawWater.siphonBreak.tellTaleVisible");
    }
}
