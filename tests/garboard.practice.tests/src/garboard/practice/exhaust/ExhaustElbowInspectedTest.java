// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.practice.exhaust.ExhaustFixture.exhaust;
import static garboard.practice.testing.Judged.judge;

import java.time.LocalDate;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Installation;

class ExhaustElbowInspectedTest {

    // common practice: yearly; the tests judge on 2026-06-01
    @ParameterizedTest
    @CsvSource({ "2026-01-15, MEETS", "2025-06-01, MEETS", "2025-05-31, FALLS_SHORT", "2026-06-02, FALLS_SHORT" })
    void isLookedIntoEveryYear(LocalDate day, Standing expected) {
        CommissioningRecord record = Installation.empty();
        exhaust(record).getRiser().setElbowInspectedOn(day);
        judge(ExhaustElbowInspected.check(), record).is(expected);
    }

    @Test
    void cannotTellWithoutTheDate() {
        judge(ExhaustElbowInspected.check(), Installation.empty()).cannotTell("exhaust.riser.elbowInspectedOn");
    }
}
