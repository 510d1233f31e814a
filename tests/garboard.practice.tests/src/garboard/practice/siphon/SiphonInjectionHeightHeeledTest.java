// SPDX-License-Identifier: EPL-2.0
package garboard.practice.siphon;

import static garboard.practice.siphon.SiphonFixture.fitted;
import static garboard.practice.siphon.SiphonFixture.noBreakInjectionAt;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.model.SiphonBreakKind;
import garboard.practice.testing.Boat;
import garboard.quantity.Length;

class SiphonInjectionHeightHeeledTest {

    @Test
    void asksForABreakWhereTheInjectionComesCloseToTheWater() {
        // h = z cos(phi) - y sin(phi), derived from the rotation of the boat's axes: 0.20 cos 15 - 0.3 sin 15 = 0.1155 m; 150 mm is common practice
        judge(SiphonInjectionHeightHeeled.check(), noBreakInjectionAt(Boat.motor("15 deg", "0 deg"), "0 m", "0.3 m", "0.20 m")).fallsShort()
            .measured(0.1155, "m", 0.00005).limit(0.15, "m", 1e-9).afterRemedy().meets();
    }

    @Test
    void meetsExactlyAtTheLimit() {
        judge(SiphonInjectionHeightHeeled.check(), noBreakInjectionAt(Boat.sailing("0 deg", "0 deg"), "0 m", "0.3 m", "150 mm")).meets();
        judge(SiphonInjectionHeightHeeled.check(), noBreakInjectionAt(Boat.sailing("0 deg", "0 deg"), "0 m", "0.3 m", "149 mm")).fallsShort();
    }

    @Test
    void sinkageTakesHeightAway() {
        CommissioningRecord record = noBreakInjectionAt(Boat.sailing("0 deg", "0 deg"), "0 m", "0 m", "200 mm");
        record.getVessel().setSinkage(Length.valueOf("60 mm"));
        judge(SiphonInjectionHeightHeeled.check(), record).fallsShort().measured(140, "mm", 1e-6).afterRemedy().meets();
    }

    @Test
    void doesNotApplyWithASiphonBreak() {
        judge(SiphonInjectionHeightHeeled.check(), fitted(SiphonBreakKind.BLEED_OVERBOARD)).doesNotApply();
    }

    @Test
    void cannotTellWithoutPlaceHullOrAttitude() {
        judge(SiphonInjectionHeightHeeled.check(), fitted(SiphonBreakKind.NONE)).cannotTell("rawWater.injection.x", "rawWater.injection.y",
            "rawWater.injection.z", "vessel.hullKind", "vessel.designTrim");
        CommissioningRecord record = noBreakInjectionAt(Boat.sailing("30 deg", "0 deg"), "0 m", "0 m", "1 m");
        record.getVessel().setDesignHeel(null);
        judge(SiphonInjectionHeightHeeled.check(), record).cannotTell("vessel.designHeel");
    }
}
