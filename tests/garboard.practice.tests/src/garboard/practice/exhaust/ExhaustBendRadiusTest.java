// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.practice.exhaust.ExhaustFixture.add;
import static garboard.practice.exhaust.ExhaustFixture.bend;
import static garboard.practice.exhaust.ExhaustFixture.exhaust;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.ExhaustBendKind;
import garboard.model.ExhaustSection;
import garboard.model.ExhaustSectionRun;
import garboard.practice.testing.Installation;
import garboard.quantity.Length;

class ExhaustBendRadiusTest {

    private static CommissioningRecord bent(ExhaustBendKind kind, String radius) {
        CommissioningRecord record = Installation.empty();
        ExhaustSectionRun run = add(record, ExhaustSection.MUFFLER_TO_CREST, "50 mm", "1 m");
        bend(run, kind, 1).setRadius(Length.valueOf(radius));
        return record;
    }

    // common practice: twice the bore; a tight U-bend on top of the lift is accepted: Gerr
    @ParameterizedTest
    @CsvSource({ "LONG_90, 100 mm, MEETS", "STANDARD_90, 99 mm, FALLS_SHORT", "STANDARD_45, 4 in, MEETS", "SQUARE_90, 25 mm, FALLS_SHORT",
            "UBEND_180, 40 mm, MEETS" })
    void asksForTwiceTheBoreButForUBends(ExhaustBendKind kind, String radius, Standing expected) {
        judge(ExhaustBendRadius.check(), bent(kind, radius)).is(expected);
    }

    @Test
    void theTightestBendCountsAndAllAreWidened() {
        CommissioningRecord record = bent(ExhaustBendKind.LONG_90, "150 mm");
        ExhaustSectionRun run = exhaust(record).getSections().getFirst();
        bend(run, ExhaustBendKind.STANDARD_90, 1).setRadius(Length.valueOf("60 mm"));
        bend(run, ExhaustBendKind.STANDARD_45, 2).setRadius(Length.valueOf("80 mm"));
        judge(ExhaustBendRadius.check(), record).fallsShort().measured(60, "mm", 0).limit(100, "mm", 1e-9).afterRemedy().meets();
    }

    @Test
    void aUBendNeedsNoRadius() {
        CommissioningRecord record = bent(ExhaustBendKind.UBEND_180, "40 mm");
        exhaust(record).getSections().getFirst().getBends().getFirst().setRadius(null);
        judge(ExhaustBendRadius.check(), record).meets();
    }

    @Test
    void doesNotApplyToAStraightRun() {
        CommissioningRecord record = Installation.empty();
        add(record, ExhaustSection.MUFFLER_TO_CREST, "50 mm", "1 m");
        judge(ExhaustBendRadius.check(), record).doesNotApply();
    }

    @Test
    void cannotTellWithoutRadiusKindOrBore() {
        CommissioningRecord record = bent(ExhaustBendKind.LONG_90, "150 mm");
        exhaust(record).getSections().getFirst().getBends().getFirst().setRadius(null);
        judge(ExhaustBendRadius.check(), record).cannotTell("exhaust.sections[run-1].bends[run-1-bend-1].radius");
        exhaust(record).getSections().getFirst().getBends().getFirst().setKind(ExhaustBendKind.NOT_ENTERED);
        exhaust(record).getSections().getFirst().setBore(null);
        judge(ExhaustBendRadius.check(), record).cannotTell("exhaust.sections[run-1].bends[run-1-bend-1].kind", "exhaust.sections[run-1].bore");
    }
}
