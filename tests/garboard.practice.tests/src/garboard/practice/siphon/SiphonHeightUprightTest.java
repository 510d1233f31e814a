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

class SiphonHeightUprightTest {

    private static CommissioningRecord ventAt(String height) {
        CommissioningRecord record = loop();
        siphonBreak(record).getVentSeat().setZ(Length.valueOf(height));
        return record;
    }

    // marine trade press, 2017: 12 to 18 in above the loaded waterline
    @ParameterizedTest
    @CsvSource({ "290 mm, FALLS_SHORT", "300 mm, MEETS", "12 in, MEETS", "11 in, FALLS_SHORT", "305 mm ±10 mm, BORDERLINE" })
    void asksForThreeHundredMillimetres(String height, Standing expected) {
        judge(SiphonHeightUpright.check(), ventAt(height)).is(expected).limit(300, "mm", 1e-9);
    }

    @Test
    void theMakersHeightTakesThePlaceOfTheTradePress() {
        CommissioningRecord record = ventAt("320 mm");
        record.getGeneratorSet().getMakerLimits().setMinimumSiphonBreakHeight(Length.valueOf("14 in"));
        judge(SiphonHeightUpright.check(), record).fallsShort().limitFromMaker().limit(14, "in", 0).afterRemedy().meets();
    }

    @Test
    void theRaisedLoopMeets() {
        judge(SiphonHeightUpright.check(), ventAt("120 mm")).fallsShort().afterRemedy().meets().measured(300, "mm", 0);
    }

    @Test
    void doesNotApplyWithoutAVentedLoop() {
        judge(SiphonHeightUpright.check(), fitted(SiphonBreakKind.NONE)).doesNotApply();
        judge(SiphonHeightUpright.check(), fitted(SiphonBreakKind.LOOP_WITHOUT_VENT)).doesNotApply();
    }

    @Test
    void cannotTellWithoutTheHeight() {
        judge(SiphonHeightUpright.check(), loop()).cannotTell("rawWater.siphonBreak.ventSeat.z");
    }
}
