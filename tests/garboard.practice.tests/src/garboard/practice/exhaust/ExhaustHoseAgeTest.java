// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.practice.exhaust.ExhaustFixture.add;
import static garboard.practice.testing.Judged.judge;

import java.time.LocalDate;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.ExhaustHoseStandard;
import garboard.model.ExhaustSection;
import garboard.model.ExhaustSectionRun;
import garboard.practice.testing.Installation;

class ExhaustHoseAgeTest {

    private static CommissioningRecord fittedOn(ExhaustHoseStandard standard, LocalDate day) {
        CommissioningRecord record = Installation.empty();
        ExhaustSectionRun run = add(record, ExhaustSection.MUFFLER_TO_CREST);
        run.setStandard(standard);
        run.setInstalledOn(day);
        return record;
    }

    // common practice: 5 to 8 years; the tests judge on 2026-06-01
    @ParameterizedTest
    @CsvSource({ "SAE_J2006, 2026-05-01, MEETS", "SAE_J2006, 2018-06-01, MEETS", "SAE_J2006, 2018-05-31, FALLS_SHORT",
            "SAE_J2006, 2027-01-01, FALLS_SHORT",
            "METAL_PIPE, 2000-01-01, DOES_NOT_APPLY" })
    void isReplacedAfterEightYears(ExhaustHoseStandard standard, LocalDate day, Standing expected) {
        judge(ExhaustHoseAge.check(), fittedOn(standard, day)).is(expected);
    }

    @Test
    void cannotTellWithoutTheDate() {
        judge(ExhaustHoseAge.check(), fittedOn(ExhaustHoseStandard.SAE_J2006, null)).cannotTell("exhaust.sections[run-1].installedOn");
    }
}
