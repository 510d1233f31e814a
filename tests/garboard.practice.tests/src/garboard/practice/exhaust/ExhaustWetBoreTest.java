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

class ExhaustWetBoreTest {

    private static CommissioningRecord bores(String dry, String wet) {
        CommissioningRecord record = Installation.empty();
        add(record, ExhaustSection.DRY, dry, "0.3 m");
        add(record, ExhaustSection.MUFFLER_TO_CREST, wet, "1 m");
        return record;
    }

    // Gerr, Boat Mechanical Systems Handbook: about 1.4 times the dry bore; 38.1 -> 53.3 mm, 50 -> 70 mm
    @ParameterizedTest
    @CsvSource({ "38.1 mm, 53.4 mm, 53.3, MEETS", "38.1 mm, 53.3 mm, 53.3, FALLS_SHORT", "1 1/2 in, 2 in, 53.3, FALLS_SHORT",
            "50 mm, 70 mm, 70.0, MEETS",
            "50 mm, 69 mm, 70.0, FALLS_SHORT" })
    void asksForOnePointFourTimesTheDryBore(String dry, String wet, double limit, Standing expected) {
        judge(ExhaustWetBore.check(), bores(dry, wet)).is(expected).limit(limit, "mm", 0.05);
    }

    @Test
    void theWidestDryPartCounts() {
        CommissioningRecord record = bores("38.1 mm", "60 mm");
        add(record, ExhaustSection.DRY, "50 mm", "0.2 m");
        judge(ExhaustWetBore.check(), record).fallsShort().limit(70, "mm", 1e-9);
    }

    @Test
    void theWiderHoseMeets() {
        CommissioningRecord record = bores("38.1 mm", "50.8 mm");
        // the next size above 53.3 mm is 2 1/2 in, 63.5 mm: common sizes of hose
        judge(ExhaustWetBore.check(), record).fallsShort().afterRemedy().meets().measured(63.5, "mm", 1e-9);
    }

    @Test
    void cannotTellWithoutTheBores() {
        CommissioningRecord record = Installation.empty();
        add(record, ExhaustSection.CREST_TO_OUTLET);
        add(record, ExhaustSection.DRY);
        judge(ExhaustWetBore.check(), record).cannotTell("exhaust.sections[run-1].bore", "exhaust.sections[run-2].bore");
    }
}
