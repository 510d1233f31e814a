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
import garboard.model.CommissioningRecord;
import garboard.model.SiphonBreakKind;
import garboard.quantity.Length;

class SiphonHeightDesignTest {

    private static CommissioningRecord ventAt(String height) {
        CommissioningRecord record = loop();
        siphonBreak(record).getVentSeat().setZ(Length.valueOf(height));
        return record;
    }

    // Gerr, Boat Mechanical Systems Handbook, ch. 7: 18 in
    @ParameterizedTest
    @CsvSource({ "440 mm, FALLS_SHORT", "450 mm, MEETS", "18 in, MEETS", "17 in, FALLS_SHORT" })
    void asksForTheHandbooksHeight(String height, Standing expected) {
        judge(SiphonHeightDesign.check(), ventAt(height)).is(expected);
    }

    @Test
    void theRaisedLoopMeets() {
        judge(SiphonHeightDesign.check(), ventAt("310 mm")).fallsShort().afterRemedy().meets();
    }

    @Test
    void doesNotApplyWithoutABreakOrWithTheMakersHeight() {
        judge(SiphonHeightDesign.check(), fitted(SiphonBreakKind.NONE)).doesNotApply();
        CommissioningRecord record = ventAt("310 mm");
        record.getGeneratorSet().getMakerLimits().setMinimumSiphonBreakHeight(Length.valueOf("300 mm"));
        judge(SiphonHeightDesign.check(), record).doesNotApply();
    }

    @Test
    void cannotTellWithoutTheHeight() {
        judge(SiphonHeightDesign.check(), loop()).cannotTell("rawWater.siphonBreak.ventSeat.z");
    }
}
