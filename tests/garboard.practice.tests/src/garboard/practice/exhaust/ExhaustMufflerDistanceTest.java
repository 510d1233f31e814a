// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.practice.exhaust.ExhaustFixture.exhaust;
import static garboard.practice.exhaust.ExhaustFixture.liftMuffler;
import static garboard.practice.exhaust.ExhaustFixture.muffler;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.MufflerKind;
import garboard.quantity.Length;

class ExhaustMufflerDistanceTest {

    private static CommissioningRecord away(String distance) {
        CommissioningRecord record = liftMuffler();
        exhaust(record).getMuffler().setDistanceFromEngine(Length.valueOf(distance));
        return record;
    }

    // common practice: 3 m (10 ft)
    @ParameterizedTest
    @CsvSource({ "1 m, MEETS", "3 m, MEETS", "10 ft, MEETS", "3.1 m, FALLS_SHORT", "11 ft, FALLS_SHORT" })
    void allowsTenFeet(String distance, Standing expected) {
        judge(ExhaustMufflerDistance.check(), away(distance)).is(expected);
    }

    @Test
    void theMovedMufflerMeets() {
        judge(ExhaustMufflerDistance.check(), away("5 m")).fallsShort().afterRemedy().meets();
    }

    @Test
    void doesNotApplyWithoutALiftMuffler() {
        judge(ExhaustMufflerDistance.check(), muffler(MufflerKind.STANDPIPE)).doesNotApply();
    }

    @Test
    void cannotTellWithoutTheDistance() {
        judge(ExhaustMufflerDistance.check(), liftMuffler()).cannotTell("exhaust.muffler.distanceFromEngine");
    }
}
