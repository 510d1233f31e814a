// SPDX-License-Identifier: EPL-2.0
package garboard.practice.siphon;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

import garboard.checks.Check;

class SiphonChecksTest {

    private static List<Check<?>> all() {
        return Stream.of(SiphonChecks.standards(), SiphonChecks.handbook()).flatMap(List::stream).toList();
    }

    @Test
    void eachIdIsThereOnceAndNamesTheSystem() {
        assertThat(all()).extracting(Check::id).doesNotHaveDuplicates().allMatch(id -> id.startsWith("SIPHON-"));
    }

    @Test
    void noneIsALaw() {
        assertThat(SiphonChecks.standards()).noneMatch(check -> check.basis().isRegulation());
        assertThat(SiphonChecks.handbook()).noneMatch(check -> check.basis().isRegulation());
    }
}
