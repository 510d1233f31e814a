// SPDX-License-Identifier: EPL-2.0
package garboard.practice.siphon;

import static garboard.practice.siphon.SiphonFixture.fitted;
import static garboard.practice.siphon.SiphonFixture.siphonBreak;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.SiphonBreakKind;
import garboard.model.VentHoseEnd;
import garboard.practice.testing.Boat;
import garboard.quantity.Length;

class SiphonVentHoseEndHeightTest {

    private static CommissioningRecord endsOverboard(CommissioningRecord boat, String beam, String height) {
        fitted(boat, SiphonBreakKind.VALVED_VENTED_LOOP);
        boat.getVessel().setBeam(Length.valueOf(beam));
        siphonBreak(boat).setVentHose(VentHoseEnd.OVERBOARD);
        siphonBreak(boat).setVentHoseEndHeight(Length.valueOf(height));
        return boat;
    }

    // h = z cos(phi) - y sin(phi), derived, with y half the beam: 0.30 cos 7 - 1.2 sin 7 = 0.1515 m; 0.10 cos 7 - 1.4 sin 7 = -0.0714 m;
    // 0.45 cos 30 - 1.0 sin 30 = -0.1103 m; 0.30 cos 22.5 - 1.2 sin 22.5 = -0.182 m
    @ParameterizedTest
    @CsvSource({ "M, 2.4 m, 7 deg, 0.30 m, 0.1515, 0.00005, MEETS", "M, 2.8 m, 7 deg, 0.10 m, -0.0714, 0.00005, FALLS_SHORT",
            "S, 2.0 m, 30 deg, 0.45 m, -0.1103, 0.00005, FALLS_SHORT", "M, 2.4 m, 22.5 deg, 0.30 m, -0.182, 0.0005, FALLS_SHORT" })
    void isReckonedAtTheSideOfTheHull(String kind, String beam, String heel, String height, double expected, double half, Standing standing) {
        judge(SiphonVentHoseEndHeight.check(), endsOverboard(Boat.of(kind, heel, "0 deg"), beam, height)).is(standing)
            .measured(expected, "m", half);
    }

    @Test
    void theWaterItselfIsTooLow() {
        judge(SiphonVentHoseEndHeight.check(), endsOverboard(Boat.motor("0 deg", "0 deg"), "3 m", "0 mm")).fallsShort();
        judge(SiphonVentHoseEndHeight.check(), endsOverboard(Boat.motor("0 deg", "0 deg"), "3 m", "1 mm")).meets();
    }

    @Test
    void sinkageTakesHeightAwayAndTheRaisedEndMeets() {
        CommissioningRecord record = endsOverboard(Boat.motor("0 deg", "0 deg"), "3 m", "50 mm");
        record.getVessel().setSinkage(Length.valueOf("60 mm"));
        judge(SiphonVentHoseEndHeight.check(), record).fallsShort().measured(-10, "mm", 1e-6).afterRemedy().meets();
    }

    @Test
    void doesNotApplyToOtherEndsOrWithoutABreak() {
        CommissioningRecord record = endsOverboard(Boat.motor("7 deg", "0 deg"), "3 m", "50 mm");
        siphonBreak(record).setVentHose(VentHoseEnd.COCKPIT);
        judge(SiphonVentHoseEndHeight.check(), record).doesNotApply();
        judge(SiphonVentHoseEndHeight.check(), fitted(SiphonBreakKind.NONE)).doesNotApply();
    }

    @Test
    void cannotTellWithoutHeightBeamOrHeel() {
        CommissioningRecord record = fitted(SiphonBreakKind.VALVED_VENTED_LOOP);
        siphonBreak(record).setVentHose(VentHoseEnd.OVERBOARD);
        judge(SiphonVentHoseEndHeight.check(), record).cannotTell("rawWater.siphonBreak.ventHoseEndHeight", "vessel.beam", "vessel.hullKind");
        CommissioningRecord sailing = endsOverboard(Boat.sailing("30 deg", "0 deg"), "3 m", "1 m");
        sailing.getVessel().setDesignHeel(null);
        judge(SiphonVentHoseEndHeight.check(), sailing).cannotTell("vessel.designHeel");
    }
}
