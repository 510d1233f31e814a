// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

import garboard.checks.Evaluation;
import garboard.checks.Standing;
import garboard.checks.Verdict;

class OutcomeTest {

    private static final List<Verdict> SAMPLE = SamplePractice.evaluate(SampleRecord.make()).verdicts();

    private static String outcome(Standing... standings) {
        List<Verdict> verdicts = Stream.of(standings)
            .map(standing -> SAMPLE.stream().filter(verdict -> verdict.standing() == standing).findFirst().orElseThrow()).toList();
        return Outcome.of(new Evaluation(verdicts, List.of(), LocalDate.of(2031, 5, 4)));
    }

    @Test
    void allMet() {
        assertThat(outcome(Standing.MEETS, Standing.MEETS, Standing.DOES_NOT_APPLY)).isEqualTo("All 2 checks that apply are met.");
        assertThat(outcome(Standing.MEETS)).isEqualTo("The one check that applies is met.");
    }

    @Test
    void cannotTellIsNoPass() {
        assertThat(outcome(Standing.MEETS, Standing.CANNOT_TELL))
            .isEqualTo("Not complete: no check falls short, but 1 cannot tell because something is not entered.");
    }

    @Test
    void acceptedStaysVisible() {
        assertThat(outcome(Standing.MEETS, Standing.ACCEPTED)).isEqualTo("No check falls short, but 1 shortfall was accepted by a person.");
    }

    @Test
    void severalShortfalls() {
        assertThat(outcome(Standing.FALLS_SHORT, Standing.FALLS_SHORT, Standing.MEETS))
            .isEqualTo("Falls short of practice: 2 checks are not met, a danger to people.");
    }
}
