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

class SiphonBoreTest {

    private static CommissioningRecord bores(String loop, String hose) {
        CommissioningRecord record = loop();
        siphonBreak(record).setBore(Length.valueOf(loop));
        record.getRawWater().setSiphonBreakHoseBore(Length.valueOf(hose));
        return record;
    }

    // common practice: the loop at least as wide as the hose; 1 in is 25.4 mm
    @ParameterizedTest
    @CsvSource({ "25.4 mm, 25.4 mm, MEETS", "25.4 mm, 1 in, MEETS", "25 mm, 1 in, FALLS_SHORT", "3/4 in, 1 in, FALLS_SHORT",
            "1 1/4 in, 1 in, MEETS" })
    void asksForTheBoreOfTheHose(String loop, String hose, Standing expected) {
        judge(SiphonBore.check(), bores(loop, hose)).is(expected);
    }

    @Test
    void theWiderLoopMeets() {
        judge(SiphonBore.check(), bores("19 mm", "25.4 mm")).fallsShort().afterRemedy().meets();
    }

    @Test
    void doesNotApplyWithoutALoop() {
        judge(SiphonBore.check(), fitted(SiphonBreakKind.NONE)).doesNotApply();
    }

    @Test
    void cannotTellWithoutTheBores() {
        judge(SiphonBore.check(), loop()).cannotTell("rawWater.siphonBreak.bore", "rawWater.siphonBreakHoseBore");
    }
}
