// SPDX-License-Identifier: EPL-2.0
package garboard.practice.siphon;

import static garboard.practice.siphon.SiphonFixture.fitted;
import static garboard.practice.siphon.SiphonFixture.loop;
import static garboard.practice.siphon.SiphonFixture.loopWithHose;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.SiphonBreakKind;
import garboard.model.VentHoseEnd;

class SiphonVentHoseEndTest {

    // engines flooded through vent hoses that ended in the bilge: marine trade press, 2021
    @ParameterizedTest
    @CsvSource({ "BILGE, FALLS_SHORT", "OVERBOARD, MEETS", "COCKPIT, MEETS", "NO_VENT_HOSE, DOES_NOT_APPLY" })
    void neverInTheBilge(VentHoseEnd end, Standing expected) {
        judge(SiphonVentHoseEnd.check(), loopWithHose(end)).is(expected);
    }

    @Test
    void doesNotApplyWithoutABreak() {
        judge(SiphonVentHoseEnd.check(), fitted(SiphonBreakKind.NONE)).doesNotApply();
    }

    @Test
    void cannotTellWithoutAnAnswer() {
        judge(SiphonVentHoseEnd.check(), loop()).cannotTell("rawWater.siphonBreak.ventHose");
    }
}
