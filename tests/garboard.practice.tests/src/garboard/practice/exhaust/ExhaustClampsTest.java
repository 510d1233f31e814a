// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.practice.exhaust.ExhaustFixture.add;
import static garboard.practice.exhaust.ExhaustFixture.exhaust;
import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.ExhaustHoseStandard;
import garboard.model.ExhaustSection;
import garboard.model.ExhaustSectionRun;
import garboard.practice.testing.Installation;

class ExhaustClampsTest {

    private static CommissioningRecord clamped(ExhaustHoseStandard standard, int clamps) {
        CommissioningRecord record = Installation.empty();
        ExhaustSectionRun run = add(record, ExhaustSection.INJECTION_TO_MUFFLER);
        run.setStandard(standard);
        run.setClampsPerEnd(clamps);
        return record;
    }

    // ABYC P-1.7.1.10.1 as quoted: at least two clamps on each end
    @ParameterizedTest
    @CsvSource({ "SAE_J2006, 2, MEETS", "UNMARKED, 3, MEETS", "ISO_13363_CLASS_B, 1, FALLS_SHORT", "SAE_J2006, 0, FALLS_SHORT",
            "METAL_PIPE, 0, DOES_NOT_APPLY", "FIBRE_REINFORCED_TUBE, 0, DOES_NOT_APPLY" })
    void asksForTwo(ExhaustHoseStandard standard, int clamps, Standing expected) {
        judge(ExhaustClamps.check(), clamped(standard, clamps)).is(expected);
    }

    @Test
    void saysHowManyThereAre() {
        assertThat(judge(ExhaustClamps.check(), clamped(ExhaustHoseStandard.SAE_J2006, 3)).meets().verdict().sentence())
            .isEqualTo("the run from injection to muffler has 3 clamps on each end");
        assertThat(judge(ExhaustClamps.check(), clamped(ExhaustHoseStandard.SAE_J2006, 1)).verdict().sentence()).contains("has one clamp on");
    }

    @Test
    void withTwoItMeets() {
        judge(ExhaustClamps.check(), clamped(ExhaustHoseStandard.SAE_J2006, 1)).fallsShort().afterRemedy().meets();
    }

    @Test
    void cannotTellWithoutTheNumber() {
        CommissioningRecord record = clamped(ExhaustHoseStandard.SAE_J2006, 2);
        exhaust(record).getSections().getFirst().setClampsPerEnd(null);
        judge(ExhaustClamps.check(), record).cannotTell("exhaust.sections[run-1].clampsPerEnd");
    }
}
