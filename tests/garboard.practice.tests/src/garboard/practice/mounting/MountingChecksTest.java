// SPDX-License-Identifier: EPL-2.0
package garboard.practice.mounting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

import garboard.checks.Check;
import garboard.checks.Standing;
import garboard.checks.Verdict;
import garboard.model.CommissioningRecord;
import garboard.model.GarboardFactory;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;

class MountingChecksTest {

    private static List<Check<?>> all() {
        return Stream.of(MountingChecks.smallPassenger(), MountingChecks.standards(), MountingChecks.handbook()).<Check<?>>flatMap(List::stream).toList();
    }

    @Test
    void everyIdIsItsOwnAndSpeaksOfTheMounting() {
        assertThat(all()).extracting(Check::id).doesNotHaveDuplicates().allMatch(id -> id.startsWith("MOUNTING-"));
    }

    @Test
    void lawStandsInTheListsOfLawOnly() {
        assertThat(MountingChecks.smallPassenger()).allMatch(check -> check.basis().citation().startsWith("46 CFR") && check.basis().isRegulation());
        assertThat(MountingChecks.standards()).noneMatch(check -> check.basis().isRegulation());
        assertThat(MountingChecks.handbook()).noneMatch(check -> check.basis().isRegulation());
    }

    @Test
    void aFaultNeverShowsOnAnEmptyRecord() {
        CommissioningRecord nothing = GarboardFactory.eINSTANCE.createCommissioningRecord();
        nothing.setMounting(GarboardFactory.eINSTANCE.createMounting());
        for (CommissioningRecord record : List.of(Installation.empty(), nothing)) {
            all().forEach(check -> assertThat(Judged.all(check, record)).extracting(Verdict::standing).as(check.id())
                .containsOnly(Standing.CANNOT_TELL));
        }
    }
}
