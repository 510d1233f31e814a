// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

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

class AcChecksTest {

    private static List<Check<?>> all() {
        return Stream.of(AcChecks.federal(), AcChecks.smallPassenger(), AcChecks.standards(), AcChecks.handbook()).<Check<?>>flatMap(List::stream).toList();
    }

    @Test
    void everyIdIsItsOwnAndSpeaksOfTheAcOutput() {
        assertThat(all()).extracting(Check::id).doesNotHaveDuplicates().allMatch(id -> id.startsWith("AC-"));
    }

    @Test
    void lawStandsInTheListsOfLawOnly() {
        assertThat(AcChecks.federal()).allMatch(check -> check.basis().citation().startsWith("33 CFR") && check.basis().isRegulation());
        assertThat(AcChecks.smallPassenger()).allMatch(check -> check.basis().citation().startsWith("46 CFR") && check.basis().isRegulation());
        assertThat(AcChecks.standards()).noneMatch(check -> check.basis().isRegulation());
        assertThat(AcChecks.handbook()).noneMatch(check -> check.basis().isRegulation());
    }

    @Test
    void aFaultNeverShowsOnAnEmptyRecord() {
        CommissioningRecord record = Installation.empty();
        record.getAcOutput().getLoads().add(GarboardFactory.eINSTANCE.createElectricalLoad());
        all().forEach(check -> assertThat(Judged.all(check, record)).extracting(Verdict::standing).as(check.id())
            .allMatch(Standing.CANNOT_TELL::equals));
    }

    @Test
    void aFaultNeverShowsWhereNoPartIsEntered() {
        CommissioningRecord record = GarboardFactory.eINSTANCE.createCommissioningRecord();
        record.setAcOutput(GarboardFactory.eINSTANCE.createAcOutput());
        all().forEach(check -> assertThat(Judged.all(check, record)).extracting(Verdict::standing).as(check.id())
            .allMatch(Standing.CANNOT_TELL::equals));
    }
}
