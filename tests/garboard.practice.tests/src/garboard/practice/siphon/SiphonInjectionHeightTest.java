// SPDX-License-Identifier: EPL-2.0
package garboard.practice.siphon;

import static garboard.practice.siphon.SiphonFixture.fitted;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.SiphonBreakKind;
import garboard.quantity.Length;

class SiphonInjectionHeightTest {

    private static CommissioningRecord injectionAt(String height) {
        CommissioningRecord record = fitted(SiphonBreakKind.NONE);
        record.getRawWater().getInjection().setZ(Length.valueOf(height));
        return record;
    }

    // common practice: a break is needed where the injection lies less than 230 mm (9 in) above the loaded waterline
    @ParameterizedTest
    @CsvSource({ "200 mm, FALLS_SHORT", "229 mm, FALLS_SHORT", "230 mm, MEETS", "9 1/16 in, MEETS", "-50 mm, FALLS_SHORT",
            "9.0551181102362204 in, MEETS" })
    void asksForTwoHundredAndThirtyMillimetres(String height, Standing expected) {
        judge(SiphonInjectionHeight.check(), injectionAt(height)).is(expected).limit(0.23, "m", 1e-9);
    }

    @Test
    void aLoopWithoutAVentCountsAsNone() {
        CommissioningRecord record = injectionAt("100 mm");
        fitted(record, SiphonBreakKind.LOOP_WITHOUT_VENT);
        judge(SiphonInjectionHeight.check(), record).fallsShort().measured(100, "mm", 0);
    }

    @Test
    void theMakersHeightTakesThePlaceOfCommonPractice() {
        CommissioningRecord record = injectionAt("200 mm");
        record.getGeneratorSet().getMakerLimits().setSiphonBreakNeededBelow(Length.valueOf("6 in"));
        judge(SiphonInjectionHeight.check(), record).meets().limitFromMaker().limit(6, "in", 0);
    }

    @Test
    void theRaisedInjectionMeets() {
        judge(SiphonInjectionHeight.check(), injectionAt("120 mm")).fallsShort().afterRemedy().meets();
    }

    @Test
    void doesNotApplyWithASiphonBreak() {
        judge(SiphonInjectionHeight.check(), fitted(injectionAt("100 mm"), SiphonBreakKind.VALVED_VENTED_LOOP)).doesNotApply();
        judge(SiphonInjectionHeight.check(), fitted(injectionAt("100 mm"), SiphonBreakKind.BLEED_OVERBOARD)).doesNotApply();
    }

    @Test
    void cannotTellWithoutTheHeightOrTheKind() {
        judge(SiphonInjectionHeight.check(), fitted(SiphonBreakKind.NONE)).cannotTell("rawWater.injection.z");
        CommissioningRecord record = injectionAt("100 mm");
        fitted(record, SiphonBreakKind.NOT_ENTERED);
        judge(SiphonInjectionHeight.check(), record).cannotTell("rawWater.siphonBreak.kind");
    }
}
