// SPDX-License-Identifier: EPL-2.0
package garboard.practice.alarms;

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

class AlarmsChecksTest {

    private static List<Check<?>> all() {
        return Stream.of(AlarmsChecks.smallPassenger(), AlarmsChecks.standards(), AlarmsChecks.handbook()).<Check<?>>flatMap(List::stream).toList();
    }

    @Test
    void everyIdIsItsOwnAndSpeaksOfAlarms() {
        assertThat(all()).extracting(Check::id).doesNotHaveDuplicates().allMatch(id -> id.startsWith("ALARM-"));
    }

    @Test
    void lawStandsInTheListsOfLawOnly() {
        assertThat(AlarmsChecks.smallPassenger()).allMatch(check -> check.basis().citation().startsWith("46 CFR") && check.basis().isRegulation());
        assertThat(AlarmsChecks.standards()).noneMatch(check -> check.basis().isRegulation());
        assertThat(AlarmsChecks.handbook()).noneMatch(check -> check.basis().isRegulation());
    }

    @Test
    void aFaultNeverShowsOnAnEmptyRecord() {
        CommissioningRecord record = Installation.empty();
        record.getAlarms().getAlarms().add(GarboardFactory.eINSTANCE.createAlarmDevice());
        all().forEach(check -> assertThat(Judged.all(check, record)).extracting(Verdict::standing).as(check.id())
            .allMatch(Standing.CANNOT_TELL::equals));
    }

    @Test
    void aFaultNeverShowsWhereNoPartIsEntered() {
        CommissioningRecord record = GarboardFactory.eINSTANCE.createCommissioningRecord();
        record.setAlarms(GarboardFactory.eINSTANCE.createAlarmsAndSafety());
        all().forEach(check -> assertThat(Judged.all(check, record)).extracting(Verdict::standing).as(check.id())
            .allMatch(Standing.CANNOT_TELL::equals));
    }
}
