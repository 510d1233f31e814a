// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.practice.exhaust.ExhaustFixture.add;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.ExhaustHoseStandard;
import garboard.model.ExhaustSection;
import garboard.practice.testing.Installation;

class ExhaustHoseStandardMarkedTest {

    // scope of SAE J2006:2013 and of ISO 13363:2016
    @ParameterizedTest
    @CsvSource({ "SAE_J2006, MEETS", "ISO_13363_CLASS_A, MEETS", "ISO_13363_CLASS_B, MEETS", "UNMARKED, FALLS_SHORT", "METAL_PIPE, DOES_NOT_APPLY",
            "FIBRE_REINFORCED_TUBE, DOES_NOT_APPLY" })
    void takesEitherStandard(ExhaustHoseStandard standard, Standing expected) {
        CommissioningRecord record = Installation.empty();
        add(record, ExhaustSection.MUFFLER_TO_CREST).setStandard(standard);
        judge(ExhaustHoseStandardMarked.check(), record).is(expected);
    }

    @Test
    void cannotTellWithoutTheMark() {
        CommissioningRecord record = Installation.empty();
        add(record, ExhaustSection.MUFFLER_TO_CREST);
        judge(ExhaustHoseStandardMarked.check(), record).cannotTell("exhaust.sections[run-1].standard");
    }
}
