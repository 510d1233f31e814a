// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.practice.exhaust.ExhaustFixture.exhaust;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Installation;
import garboard.quantity.Length;

class ExhaustTestTapDistanceTest {

    private static CommissioningRecord tapAt(Answer fitted, String distance) {
        CommissioningRecord record = Installation.empty();
        exhaust(record).setTestTapFitted(fitted);
        exhaust(record).setTestTapDistance(Length.valueOf(distance));
        return record;
    }

    // common practice: within 0.30 m (12 in)
    @ParameterizedTest
    @CsvSource({ "YES, 0.30 m, MEETS", "YES, 12 in, MEETS", "YES, 0.31 m, FALLS_SHORT", "YES, 13 in, FALLS_SHORT", "NO, 1 m, DOES_NOT_APPLY" })
    void allowsTwelveInches(Answer fitted, String distance, Standing expected) {
        judge(ExhaustTestTapDistance.check(), tapAt(fitted, distance)).is(expected);
    }

    @Test
    void theMovedTapMeets() {
        judge(ExhaustTestTapDistance.check(), tapAt(Answer.YES, "0.8 m")).fallsShort().afterRemedy().meets();
    }

    @Test
    void cannotTellWithoutTheDistance() {
        CommissioningRecord record = tapAt(Answer.YES, "0.8 m");
        exhaust(record).setTestTapDistance(null);
        judge(ExhaustTestTapDistance.check(), record).cannotTell("exhaust.testTapDistance");
    }
}
