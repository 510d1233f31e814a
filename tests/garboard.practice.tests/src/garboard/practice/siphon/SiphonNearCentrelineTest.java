// SPDX-License-Identifier: EPL-2.0
package garboard.practice.siphon;

import static garboard.practice.siphon.SiphonFixture.fitted;
import static garboard.practice.siphon.SiphonFixture.loopAt;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.SiphonBreakKind;
import garboard.practice.testing.Boat;
import garboard.quantity.Length;

class SiphonNearCentrelineTest {

    private static CommissioningRecord ventAt(String y) {
        CommissioningRecord record = loopAt(Boat.sailing("30 deg", "0 deg"), "0 m", y, "0.45 m");
        record.getVessel().setBeam(Length.valueOf("4 m"));
        return record;
    }

    // centreline: Gerr, ch. 7; a tenth of the beam: common practice
    @ParameterizedTest
    @CsvSource({ "0 m, MEETS", "0.40 m, MEETS", "-0.40 m, MEETS", "0.41 m, FALLS_SHORT", "-0.41 m, FALLS_SHORT", "15 in, MEETS", "16 in, FALLS_SHORT",
            "-0.39 m ±20 mm, BORDERLINE" })
    void allowsATenthOfTheBeam(String y, Standing expected) {
        judge(SiphonNearCentreline.check(), ventAt(y)).is(expected).limit(0.4, "m", 1e-9);
    }

    @Test
    void theMovedLoopMeetsOnEitherSide() {
        judge(SiphonNearCentreline.check(), ventAt("1.1 m")).fallsShort().afterRemedy().meets();
        judge(SiphonNearCentreline.check(), ventAt("-1.1 m")).fallsShort().afterRemedy().meets();
    }

    @Test
    void doesNotApplyToMotorCraftOrWithoutABreak() {
        judge(SiphonNearCentreline.check(), loopAt(Boat.motor("15 deg", "0 deg"), "0 m", "1 m", "1 m")).doesNotApply();
        judge(SiphonNearCentreline.check(), fitted(SiphonBreakKind.NONE)).doesNotApply();
    }

    @Test
    void cannotTellFromABeamThatCannotBeRight() {
        CommissioningRecord record = ventAt("1 m");
        record.getVessel().setBeam(Length.valueOf("-4 m"));
        judge(SiphonNearCentreline.check(), record).is(Standing.CANNOT_TELL);
    }

    @Test
    void cannotTellWithoutPlaceOrBeam() {
        judge(SiphonNearCentreline.check(), fitted(Boat.sailing("30 deg", "0 deg"), SiphonBreakKind.VALVED_VENTED_LOOP))
            .cannotTell("rawWater.siphonBreak.ventSeat.y", "vessel.beam");
    }
}
