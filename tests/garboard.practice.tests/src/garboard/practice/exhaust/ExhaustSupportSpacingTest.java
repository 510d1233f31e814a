// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.practice.exhaust.ExhaustFixture.add;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.ExhaustSection;
import garboard.practice.testing.Installation;
import garboard.quantity.Length;

class ExhaustSupportSpacingTest {

    private static CommissioningRecord supportedEvery(String spacing) {
        CommissioningRecord record = Installation.empty();
        add(record, ExhaustSection.MUFFLER_TO_CREST).setSupportSpacing(Length.valueOf(spacing));
        return record;
    }

    // common practice: every 0.6 to 0.9 m (2 to 3 ft)
    @ParameterizedTest
    @CsvSource({ "0.6 m, MEETS", "0.9 m, MEETS", "3 ft, MEETS", "36 in, MEETS", "0.95 m, FALLS_SHORT", "4 ft, FALLS_SHORT" })
    void allowsThreeFeet(String spacing, Standing expected) {
        judge(ExhaustSupportSpacing.check(), supportedEvery(spacing)).is(expected);
    }

    @Test
    void withMoreSupportsItMeets() {
        judge(ExhaustSupportSpacing.check(), supportedEvery("2 m")).fallsShort().afterRemedy().meets();
    }

    @Test
    void cannotTellWithoutTheSpacing() {
        CommissioningRecord record = Installation.empty();
        add(record, ExhaustSection.CREST_TO_OUTLET);
        judge(ExhaustSupportSpacing.check(), record).cannotTell("exhaust.sections[run-1].supportSpacing");
    }
}
