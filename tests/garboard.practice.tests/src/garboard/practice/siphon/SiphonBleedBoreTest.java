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

class SiphonBleedBoreTest {

    private static CommissioningRecord bleedOf(String bore) {
        CommissioningRecord record = fitted(SiphonBreakKind.BLEED_OVERBOARD);
        siphonBreak(record).setBleedBore(Length.valueOf(bore));
        return record;
    }

    // common practice: 6 to 10 mm (1/4 to 3/8 in)
    @ParameterizedTest
    @CsvSource({ "5.9 mm, FALLS_SHORT", "6 mm, MEETS", "1/4 in, MEETS", "3/8 in, MEETS",
            "10 mm, MEETS", "10.1 mm, FALLS_SHORT", "1/2 in, FALLS_SHORT" })
    void suitsBetweenSixAndTenMillimetres(String bore, Standing expected) {
        judge(SiphonBleedBore.check(), bleedOf(bore)).is(expected);
    }

    @Test
    void theRefittedBleedMeets() {
        judge(SiphonBleedBore.check(), bleedOf("3 mm")).fallsShort().afterRemedy().meets().measured(6, "mm", 0);
        judge(SiphonBleedBore.check(), bleedOf("20 mm")).fallsShort().afterRemedy().meets().measured(10, "mm", 0);
    }

    @Test
    void doesNotApplyToAValve() {
        judge(SiphonBleedBore.check(), loop()).doesNotApply();
    }

    @Test
    void cannotTellWithoutTheBore() {
        judge(SiphonBleedBore.check(), fitted(SiphonBreakKind.BLEED_OVERBOARD)).cannotTell("rawWater.siphonBreak.bleedBore");
    }
}
