// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.practice.exhaust.ExhaustFixture.add;
import static garboard.practice.exhaust.ExhaustFixture.exhaust;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.ExhaustHoseStandard;
import garboard.model.ExhaustSection;
import garboard.model.ExhaustSectionRun;
import garboard.practice.testing.Installation;
import garboard.quantity.Length;

class ExhaustClampBandWidthTest {

    private static CommissioningRecord band(ExhaustHoseStandard standard, String width) {
        CommissioningRecord record = Installation.empty();
        ExhaustSectionRun run = add(record, ExhaustSection.CREST_TO_OUTLET);
        run.setStandard(standard);
        run.setClampBandWidth(Length.valueOf(width));
        return record;
    }

    // 12.7 mm (1/2 in): 33 CFR 183.564 for fuel fills, carried over by common practice
    @ParameterizedTest
    @CsvSource({ "SAE_J2006, 12.7 mm, MEETS", "SAE_J2006, 1/2 in, MEETS", "SAE_J2006, 12 mm, FALLS_SHORT", "UNMARKED, 9/16 in, MEETS",
            "METAL_PIPE, 5 mm, DOES_NOT_APPLY" })
    void asksForHalfAnInch(ExhaustHoseStandard standard, String width, Standing expected) {
        judge(ExhaustClampBandWidth.check(), band(standard, width)).is(expected);
    }

    @Test
    void theBroadBandMeets() {
        judge(ExhaustClampBandWidth.check(), band(ExhaustHoseStandard.SAE_J2006, "9 mm")).fallsShort().afterRemedy().meets();
    }

    @Test
    void cannotTellWithoutTheWidth() {
        CommissioningRecord record = band(ExhaustHoseStandard.SAE_J2006, "9 mm");
        exhaust(record).getSections().getFirst().setClampBandWidth(null);
        judge(ExhaustClampBandWidth.check(), record).cannotTell("exhaust.sections[run-1].clampBandWidth");
    }
}
