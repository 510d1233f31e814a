// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.practice.exhaust.ExhaustFixture.exhaust;
import static garboard.practice.exhaust.ExhaustFixture.muffler;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.MufflerKind;
import garboard.model.SiphonBreakKind;
import garboard.practice.testing.Installation;
import garboard.quantity.Length;

class ExhaustSpillOverHeightTest {

    private static CommissioningRecord crestAt(String height, MufflerKind kind, SiphonBreakKind siphonBreak) {
        CommissioningRecord record = muffler(kind);
        record.getRawWater().getSiphonBreak().setKind(siphonBreak);
        exhaust(record).getRiser().getDryCrestInside().setZ(Length.valueOf(height));
        return record;
    }

    // 12 in without a lift muffler: marine trade press, 2017; 6 to 8 in with lift muffler and siphon break: common practice
    @ParameterizedTest
    @CsvSource({ "300 mm, IN_LINE, NONE, 300, MEETS", "12 in, NONE, NONE, 300, MEETS", "299 mm, STANDPIPE, VALVED_VENTED_LOOP, 300, FALLS_SHORT",
            "200 mm, LIFT_MUFFLER, NONE, 300, FALLS_SHORT", "200 mm, LIFT_MUFFLER, LOOP_WITHOUT_VENT, 300, FALLS_SHORT",
            "150 mm, LIFT_MUFFLER, VALVED_VENTED_LOOP, 150, MEETS", "6 in, COMBINED_LIFT_AND_SEPARATOR, BLEED_OVERBOARD, 150, MEETS",
            "149 mm, LIFT_MUFFLER, BLEED_OVERBOARD, 150, FALLS_SHORT" })
    void asksForLessBehindALiftMufflerWithASiphonBreak(String height, MufflerKind kind, SiphonBreakKind loop, double limit, Standing expected) {
        judge(ExhaustSpillOverHeight.check(), crestAt(height, kind, loop)).is(expected).limit(limit, "mm", 0);
    }

    @Test
    void theHighRiseElbowMeets() {
        judge(ExhaustSpillOverHeight.check(), crestAt("90 mm", MufflerKind.IN_LINE, SiphonBreakKind.NONE)).fallsShort().afterRemedy().meets();
    }

    @Test
    void cannotTellWithoutHeightMufflerOrSiphonBreak() {
        judge(ExhaustSpillOverHeight.check(), Installation.empty()).cannotTell("exhaust.riser.dryCrestInside.z", "exhaust.muffler.kind");
        judge(ExhaustSpillOverHeight.check(), crestAt("200 mm", MufflerKind.LIFT_MUFFLER, SiphonBreakKind.NOT_ENTERED))
            .cannotTell("rawWater.siphonBreak.kind");
    }
}
