// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

import garboard.checks.Check;

class ExhaustChecksTest {

    private static List<Check<?>> all() {
        return Stream.of(ExhaustChecks.smallPassenger(), ExhaustChecks.standards(), ExhaustChecks.handbook()).flatMap(List::stream).toList();
    }

    @Test
    void eachIdIsThereOnceAndNamesTheSystem() {
        assertThat(all()).extracting(Check::id).doesNotHaveDuplicates().allMatch(id -> id.startsWith("EXHAUST-"));
    }

    @Test
    void onlyTheLawStandsAmongTheLaw() {
        assertThat(ExhaustChecks.smallPassenger()).allMatch(check -> check.basis().isRegulation());
        assertThat(ExhaustChecks.standards()).noneMatch(check -> check.basis().isRegulation());
        assertThat(ExhaustChecks.handbook()).noneMatch(check -> check.basis().isRegulation());
    }
}
