// SPDX-License-Identifier: EPL-2.0
package garboard.practice.siphon;

import static garboard.practice.siphon.SiphonFixture.fitted;
import static garboard.practice.siphon.SiphonFixture.loopAt;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.HullKind;
import garboard.model.SiphonBreakKind;
import garboard.practice.testing.Boat;

class SiphonHeightRollingTest {

    @Test
    void aLoopThatPassesAtSevenDegreesCanGoUnderInASea() {
        // 22.5 deg roll: UK code of practice for small commercial vessels, section 7; 0.30 cos 22.5 - 1.2 sin 22.5 = -0.182 m, derived
        judge(SiphonHeightRolling.check(), loopAt(Boat.motor("7 deg", "0 deg"), "0 m", "1.2 m", "0.30 m")).fallsShort().measured(-0.182, "m", 0.0005)
            .limit(0, "mm", 0).afterRemedy().meets();
    }

    @Test
    void countsTheTrimOfTheCodeToo() {
        // (0.20 m margin, x 2.0, y 1.2, 22.5 deg, 7.5 deg) needs 1.0004 m, recomputed independently: so at 1.0004 m the height is 0.200 m
        judge(SiphonHeightRolling.check(), loopAt(Boat.motor("7 deg", "0 deg"), "2.0 m", "1.2 m", "1.0004 m")).meets().measured(0.2, "m", 0.00005);
    }

    @Test
    void stepsBackWhereTheDesignRollIsTooMuchAlready() {
        judge(SiphonHeightRolling.check(), loopAt(Boat.motor("7 deg", "0 deg"), "0 m", "0 m", "0 mm")).doesNotApply();
        judge(SiphonHeightRolling.check(), loopAt(Boat.motor("7 deg", "0 deg"), "0 m", "1.2 m", "0.29 m")).doesNotApply();
    }

    @Test
    void doesNotApplyUnderSailOrWithoutABreak() {
        judge(SiphonHeightRolling.check(), loopAt(Boat.sailing("30 deg", "0 deg"), "0 m", "0 m", "1 m")).doesNotApply();
        judge(SiphonHeightRolling.check(), fitted(SiphonBreakKind.NONE)).doesNotApply();
    }

    @Test
    void cannotTellWithoutThePlace() {
        var record = fitted(SiphonBreakKind.VALVED_VENTED_LOOP);
        record.getVessel().setHullKind(HullKind.MOTOR_PLANING);
        judge(SiphonHeightRolling.check(), record).cannotTell("rawWater.siphonBreak.ventSeat.x", "rawWater.siphonBreak.ventSeat.y",
            "rawWater.siphonBreak.ventSeat.z");
    }
}
