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

class SiphonNotAboveElectricsTest {

    // common practice: not above alternator, control box or starter, or a drip shield
    @ParameterizedTest
    @CsvSource({ "NO, UNANSWERED, MEETS", "NO, NO, MEETS", "YES, YES, MEETS", "YES, NO, FALLS_SHORT", "YES, NOT_APPLICABLE, FALLS_SHORT",
            "NOT_APPLICABLE, UNANSWERED, DOES_NOT_APPLY" })
    void asksForAShieldOnlyAboveElectricalParts(Answer above, Answer shield, Standing expected) {
        CommissioningRecord record = loop();
        siphonBreak(record).setAboveElectrics(above);
        siphonBreak(record).setDripShield(shield);
        judge(SiphonNotAboveElectrics.check(), record).is(expected);
    }

    @Test
    void doesNotApplyWithoutABreak() {
        judge(SiphonNotAboveElectrics.check(), fitted(SiphonBreakKind.NONE)).doesNotApply();
    }

    @Test
    void cannotTellWithoutTheAnswers() {
        judge(SiphonNotAboveElectrics.check(), loop()).cannotTell("rawWater.siphonBreak.aboveElectrics");
        CommissioningRecord record = loop();
        siphonBreak(record).setAboveElectrics(Answer.YES);
        judge(SiphonNotAboveElectrics.check(), record).cannotTell("rawWater.siphonBreak.dripShield");
    }
}
