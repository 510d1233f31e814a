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
import garboard.practice.testing.Boat;
import garboard.quantity.Length;

class ExhaustMufflerNearCentrelineTest {

    private static CommissioningRecord mufflerAt(String y) {
        CommissioningRecord record = muffler(Boat.sailing("30 deg", "3 deg"), MufflerKind.LIFT_MUFFLER);
        record.getVessel().setBeam(Length.valueOf("3.6 m"));
        exhaust(record).getMuffler().getPosition().setY(Length.valueOf(y));
        return record;
    }

    // common practice: near the centreline; a tenth of the beam as for the siphon break
    @ParameterizedTest
    @CsvSource({ "0 m, MEETS", "0.36 m, MEETS", "-0.36 m, MEETS", "0.37 m, FALLS_SHORT", "-0.37 m, FALLS_SHORT", "14 in, MEETS",
            "15 in, FALLS_SHORT" })
    void allowsATenthOfTheBeam(String y, Standing expected) {
        judge(ExhaustMufflerNearCentreline.check(), mufflerAt(y)).is(expected).limit(0.36, "m", 1e-9);
    }

    @Test
    void theMovedMufflerMeetsOnEitherSide() {
        judge(ExhaustMufflerNearCentreline.check(), mufflerAt("1.2 m")).fallsShort().afterRemedy().meets();
        judge(ExhaustMufflerNearCentreline.check(), mufflerAt("-1.2 m")).fallsShort().afterRemedy().meets();
    }

    @Test
    void doesNotApplyToMotorCraftOrOtherMufflers() {
        judge(ExhaustMufflerNearCentreline.check(), muffler(Boat.motor("15 deg", "3 deg"), MufflerKind.LIFT_MUFFLER)).doesNotApply();
        judge(ExhaustMufflerNearCentreline.check(), muffler(Boat.sailing("30 deg", "3 deg"), MufflerKind.STANDPIPE)).doesNotApply();
    }

    @Test
    void cannotTellWithoutPlaceOrBeam() {
        judge(ExhaustMufflerNearCentreline.check(), muffler(Boat.sailing("30 deg", "3 deg"), MufflerKind.LIFT_MUFFLER))
            .cannotTell("exhaust.muffler.position.y", "vessel.beam");
    }
}
