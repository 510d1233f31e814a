// SPDX-License-Identifier: EPL-2.0
package garboard.practice.siphon;

import static garboard.practice.siphon.SiphonFixture.fitted;
import static garboard.practice.siphon.SiphonFixture.loopAt;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.SiphonBreakKind;
import garboard.practice.testing.Boat;

class SiphonAboveWaterTest {

    @Test
    void anEighteenInchLoopAMetreOffCentreGoesUnder() {
        // the top stays above the surrounding water: ABYC P-1 as quoted; 0.45 cos 30 - 1.0 sin 30 = -0.1103 m, derived
        judge(SiphonAboveWater.check(), loopAt(Boat.sailing("30 deg", "0 deg"), "0 m", "1.0 m", "0.45 m")).fallsShort()
            .measured(-0.1103, "m", 0.00005).afterRemedy().meets();
    }

    @Test
    void nearTheCentrelineItStaysClear() {
        judge(SiphonAboveWater.check(), loopAt(Boat.sailing("30 deg", "0 deg"), "0 m", "0.10 m", "0.45 m")).meets().measured(0.3397, "m", 0.00005);
    }

    @Test
    void theWaterItselfIsTooLow() {
        judge(SiphonAboveWater.check(), loopAt(Boat.motor("0 deg", "0 deg"), "0 m", "0 m", "0 mm")).fallsShort();
        judge(SiphonAboveWater.check(), loopAt(Boat.motor("0 deg", "0 deg"), "0 m", "0 m", "1 mm")).meets();
    }

    @Test
    void doesNotApplyWithoutABreak() {
        judge(SiphonAboveWater.check(), fitted(SiphonBreakKind.NONE)).doesNotApply();
    }

    @Test
    void cannotTellWithoutThePlaceOrTheAttitude() {
        judge(SiphonAboveWater.check(), fitted(SiphonBreakKind.BLEED_OVERBOARD)).cannotTell("rawWater.siphonBreak.ventSeat.x",
            "rawWater.siphonBreak.ventSeat.y", "rawWater.siphonBreak.ventSeat.z", "vessel.hullKind", "vessel.designTrim");
    }
}
