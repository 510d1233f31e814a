// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.practice.exhaust.ExhaustFixture.exhaust;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Installation;
import garboard.quantity.Length;

class ExhaustCrestHeightTest {

    private static CommissioningRecord crestAt(String height) {
        CommissioningRecord record = Installation.empty();
        exhaust(record).getCrest().getInsideBottom().setZ(Length.valueOf(height));
        return record;
    }

    // 18 in for a raised dry exhaust: Gerr; for a hose loop common practice
    @ParameterizedTest
    @CsvSource({ "450 mm, MEETS", "18 in, MEETS", "449 mm, FALLS_SHORT", "17 in, FALLS_SHORT", "460 mm ±15 mm, BORDERLINE" })
    void asksForEighteenInches(String height, Standing expected) {
        judge(ExhaustCrestHeight.check(), crestAt(height)).is(expected).limit(450, "mm", 0);
    }

    @Test
    void theRaisedCrestMeets() {
        judge(ExhaustCrestHeight.check(), crestAt("200 mm")).fallsShort().afterRemedy().meets();
    }

    @Test
    void cannotTellWithoutTheHeight() {
        judge(ExhaustCrestHeight.check(), Installation.empty()).cannotTell("exhaust.crest.insideBottom.z");
    }
}
