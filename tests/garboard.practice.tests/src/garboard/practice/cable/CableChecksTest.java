// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

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

class CableChecksTest {

    private static List<Check<?>> all() {
        return Stream.of(CableChecks.federal(), CableChecks.smallPassenger(), CableChecks.standards(), CableChecks.handbook())
            .<Check<?>>flatMap(List::stream).toList();
    }

    @Test
    void everyIdIsItsOwnAndSpeaksOfCables() {
        assertThat(all()).extracting(Check::id).doesNotHaveDuplicates().allMatch(id -> id.startsWith("CABLE-"));
    }

    @Test
    void lawStandsInTheListsOfLawOnly() {
        assertThat(CableChecks.federal()).allMatch(check -> check.basis().citation().startsWith("33 CFR") && check.basis().isRegulation());
        assertThat(CableChecks.smallPassenger()).allMatch(check -> check.basis().citation().startsWith("46 CFR") && check.basis().isRegulation());
        assertThat(CableChecks.standards()).noneMatch(check -> check.basis().isRegulation());
        assertThat(CableChecks.handbook()).noneMatch(check -> check.basis().isRegulation());
    }

    @Test
    void aFaultNeverShowsOnACableOfWhichNothingIsEntered() {
        CommissioningRecord record = Installation.empty();
        record.getStartingBattery().getCables().add(GarboardFactory.eINSTANCE.createCableRun());
        all().forEach(check -> assertThat(Judged.all(check, record)).extracting(Verdict::standing).allMatch(Standing.CANNOT_TELL::equals));
    }
}
