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

class SiphonInjectionHeightAdvisedTest {

    private static CommissioningRecord injectionAt(String height) {
        CommissioningRecord record = fitted(SiphonBreakKind.NONE);
        record.getRawWater().getInjection().setZ(Length.valueOf(height));
        return record;
    }

    // common practice: a break is advised up to 300 mm (12 in)
    @ParameterizedTest
    @CsvSource({ "299 mm, FALLS_SHORT", "300 mm, MEETS", "12 in, MEETS" })
    void advisesABreakUpToThreeHundredMillimetres(String height, Standing expected) {
        judge(SiphonInjectionHeightAdvised.check(), injectionAt(height)).is(expected).limit(300, "mm", 1e-9);
    }

    @Test
    void theRaisedInjectionMeets() {
        judge(SiphonInjectionHeightAdvised.check(), injectionAt("240 mm")).fallsShort().afterRemedy().meets();
    }

    @Test
    void doesNotApplyWithASiphonBreakOrAWordOfTheMaker() {
        judge(SiphonInjectionHeightAdvised.check(), fitted(SiphonBreakKind.VALVED_VENTED_LOOP)).doesNotApply();
        CommissioningRecord record = injectionAt("240 mm");
        record.getGeneratorSet().getMakerLimits().setSiphonBreakNeededBelow(Length.valueOf("150 mm"));
        judge(SiphonInjectionHeightAdvised.check(), record).doesNotApply();
    }

    @Test
    void cannotTellWithoutTheHeight() {
        judge(SiphonInjectionHeightAdvised.check(), fitted(SiphonBreakKind.NONE)).cannotTell("rawWater.injection.z");
    }
}
