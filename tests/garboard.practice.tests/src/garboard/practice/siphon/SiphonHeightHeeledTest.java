// SPDX-License-Identifier: EPL-2.0
package garboard.practice.siphon;

import static garboard.practice.siphon.SiphonFixture.fitted;
import static garboard.practice.siphon.SiphonFixture.loopAt;
import static garboard.practice.siphon.SiphonFixture.siphonBreak;
import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.SiphonBreakKind;
import garboard.practice.testing.Boat;
import garboard.quantity.Length;

class SiphonHeightHeeledTest {

    // Heights recomputed independently from h = x sin(theta) - y sin(phi) cos(theta) + z cos(phi) cos(theta), derived from the rotation of the
    // boat's axes. Limits: 8 in under sail, Gerr, ch. 7; 6 in for motor craft, common practice.
    @ParameterizedTest
    @CsvSource({ "S, 0 m, 0.10 m, 0.45 m, 30 deg, 0 deg, 0.3397, MEETS", "S, 0 m, 1.0 m, 0.45 m, 30 deg, 0 deg, -0.1103, FALLS_SHORT",
            "S, 0 m, 0.60 m, 0.45 m, 25 deg, 0 deg, 0.1543, FALLS_SHORT", "S, -2.0 m, 0.60 m, 0.45 m, 25 deg, 3 deg, 0.0494, FALLS_SHORT",
            "S, 2.0 m, -0.60 m, 0.45 m, 25 deg, 3 deg, 0.0494, FALLS_SHORT", "M, 0 m, 1.2 m, 0.30 m, 7 deg, 0 deg, 0.1515, MEETS",
            "M, 0 m, -1.2 m, 0.30 m, 7 deg, 0 deg, 0.1515, MEETS", "M, 0 m, 1.2 m, 0.30 m, 22.5 deg, 0 deg, -0.1821, FALLS_SHORT" })
    void findsTheWorstAttitude(String kind, String x, String y, String z, String heel, String trim, double height, Standing expected) {
        judge(SiphonHeightHeeled.check(), loopAt(Boat.of(kind, heel, trim), x, y, z)).is(expected).measured(height, "m", 0.00005);
    }

    @Test
    void namesTheWorstAttitude() {
        assertThat(judge(SiphonHeightHeeled.check(), loopAt(Boat.sailing("25 deg", "3 deg"), "-2.0 m", "0.60 m", "0.45 m")).verdict().sentence())
            .isEqualTo("the vent seat lies 49.4 mm (1.94 in) above the water at 25 deg heel to starboard and 3 deg bow up");
        assertThat(judge(SiphonHeightHeeled.check(), loopAt(Boat.sailing("25 deg", "3 deg"), "2.0 m", "-0.60 m", "0.45 m")).verdict().sentence())
            .contains("25 deg heel to port and 3 deg bow down");
    }

    // Least heights recomputed independently from z = (m + |y| sin(phi) cos(theta) + |x| sin(theta)) / (cos(phi) cos(theta)), rounded up to 10 mm
    @ParameterizedTest
    @CsvSource({ "S, 0 m, 1.0 m, 30 deg, 0 deg, 810", "S, 0 m, 0.1 m, 30 deg, 0 deg, 290", "S, 1.5 m, 0.3 m, 30 deg, 3 deg, 500",
            "M, 0 m, 1.2 m, 7 deg, 0 deg, 350", "M, 0 m, 1.2 m, 22.5 deg, 0 deg, 720", "M, 2.0 m, 1.2 m, 22.5 deg, 7.5 deg, 1010" })
    void tellsTheHeightToBuildForAMarginOfTwoHundredMillimetres(String kind, String x, String y, String heel, String trim, double millimetres) {
        CommissioningRecord record = loopAt(Boat.of(kind, heel, trim), x, y, "50 mm");
        record.getGeneratorSet().getMakerLimits().setMinimumSiphonClearanceHeeled(Length.valueOf("200 mm"));
        judge(SiphonHeightHeeled.check(), record).fallsShort().limitFromMaker().afterRemedy().meets();
        assertThat(siphonBreak(record).getVentSeat().getZ().in("mm")).isEqualTo(millimetres);
    }

    @ParameterizedTest
    @CsvSource({ "S, 200 mm, MEETS", "S, 199.9 mm, FALLS_SHORT", "S, 8 in, MEETS", "M, 150 mm, MEETS", "M, 149.9 mm, FALLS_SHORT", "M, 6 in, MEETS",
            "M, 5 in, FALLS_SHORT" })
    void meetsExactlyAtTheLimit(String kind, String z, Standing expected) {
        judge(SiphonHeightHeeled.check(), loopAt(Boat.of(kind, "0 deg", "0 deg"), "0 m", "0 m", z)).is(expected);
    }

    @Test
    void isBorderlineWithinTheAccuracyOfTheTape() {
        // 0.1515 m as above; a transverse coordinate good to 50 mm moves it by 0.05 sin 7 deg = 6 mm
        judge(SiphonHeightHeeled.check(), loopAt(Boat.motor("7 deg", "0 deg"), "0 m", "1.2 m ±50 mm", "0.30 m")).is(Standing.BORDERLINE);
        judge(SiphonHeightHeeled.check(), loopAt(Boat.motor("7 deg", "0 deg"), "0 m", "1.2 m ±5 mm", "0.30 m")).meets();
    }

    @Test
    void theHeightToBuildAllowsForTheAccuracyOfTheOtherCoordinates() {
        judge(SiphonHeightHeeled.check(), loopAt(Boat.sailing("30 deg", "3 deg"), "1.5 m ±0.2 m", "0.3 m ±60 mm", "0.1 m ±5 mm")).fallsShort()
            .afterRemedy().meets();
    }

    @Test
    void sinkageTakesHeightAwayAndLiftGivesNone() {
        CommissioningRecord record = loopAt(Boat.motor("0 deg", "0 deg"), "0 m", "0 m", "180 mm");
        record.getVessel().setSinkage(Length.valueOf("40 mm"));
        judge(SiphonHeightHeeled.check(), record).fallsShort().measured(140, "mm", 1e-6).afterRemedy().meets();
        record.getVessel().setSinkage(Length.valueOf("-40 mm"));
        judge(SiphonHeightHeeled.check(), loopAt(record, "0 m", "0 m", "140 mm")).fallsShort().measured(140, "mm", 1e-6);
    }

    @Test
    void doesNotApplyWithoutABreak() {
        judge(SiphonHeightHeeled.check(), fitted(SiphonBreakKind.NONE)).doesNotApply();
    }

    @Test
    void cannotTellWithoutPlaceHullOrAttitude() {
        judge(SiphonHeightHeeled.check(), fitted(SiphonBreakKind.VALVED_VENTED_LOOP)).cannotTell("rawWater.siphonBreak.ventSeat.x",
            "rawWater.siphonBreak.ventSeat.y", "rawWater.siphonBreak.ventSeat.z", "vessel.hullKind", "vessel.designTrim");
        CommissioningRecord record = loopAt(Boat.motor("7 deg", "0 deg"), "0 m", "0 m", "0.3 m");
        record.getVessel().setDesignRoll(null);
        judge(SiphonHeightHeeled.check(), record).cannotTell("vessel.designRoll");
    }
}
