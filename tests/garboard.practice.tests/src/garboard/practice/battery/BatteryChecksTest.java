// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

import garboard.checks.Check;
import garboard.checks.Standing;
import garboard.checks.Verdict;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;

class BatteryChecksTest {

    @Test
    void everyIdIsItsOwnAndSpeaksOfTheBattery() {
        List<Check<?>> all = Stream.of(BatteryChecks.federal(), BatteryChecks.smallPassenger(), BatteryChecks.standards(), BatteryChecks.handbook())
            .<Check<?>>flatMap(List::stream).toList();
        assertThat(all).extracting(Check::id).doesNotHaveDuplicates().allMatch(id -> id.startsWith("BATTERY-"));
    }

    @Test
    void lawStandsInTheListsOfLawOnly() {
        assertThat(BatteryChecks.federal()).allMatch(check -> check.basis().citation().startsWith("33 CFR") && check.basis().isRegulation());
        assertThat(BatteryChecks.smallPassenger()).allMatch(check -> check.basis().citation().startsWith("46 CFR") && check.basis().isRegulation());
        assertThat(BatteryChecks.standards()).noneMatch(check -> check.basis().isRegulation());
        assertThat(BatteryChecks.handbook()).noneMatch(check -> check.basis().isRegulation());
    }

    @Test
    void aFaultNeverShowsOnAnEmptyRecord() {
        Stream.of(BatteryChecks.federal(), BatteryChecks.smallPassenger(), BatteryChecks.standards(), BatteryChecks.handbook()).flatMap(List::stream)
            .forEach(check -> assertThat(Judged.all(check, Installation.empty())).extracting(Verdict::standing).containsOnly(Standing.CANNOT_TELL));
    }
}
