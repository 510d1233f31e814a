// SPDX-License-Identifier: EPL-2.0
package garboard.practice.set;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.GarboardFactory;
import garboard.model.UpkeepTask;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.TimeSpan;

class ServiceInTimeTest {

    private final CommissioningRecord record = Installation.empty();
    private final UpkeepTask task = GarboardFactory.eINSTANCE.createUpkeepTask();

    @BeforeEach
    void inThePlan() {
        record.getUpkeep().getTasks().add(task);
    }

    private Judged judged() {
        return judge(ServiceInTime.check(), record);
    }

    // tests judge on 2026-06-01
    @ParameterizedTest
    @CsvSource({ "2025-06-01, 12, MEETS", "2025-05-31, 12, FALLS_SHORT", "2026-05-01, 1, MEETS", "2026-04-30, 1, FALLS_SHORT", "2026-07-01, 1, FALLS_SHORT" })
    void byMonths(LocalDate last, int months, Standing standing) {
        task.setEveryMonths(months);
        task.setLastDoneOn(last);
        judged().is(standing);
    }

    @ParameterizedTest
    @CsvSource({ "1290 h, 1086 h, 200 h, FALLS_SHORT", "1290 h, 1090 h, 200 h, MEETS", "1290 h, 1286 h, 200 h, MEETS", "1290.1 h, 1090 h, 12000 min, FALLS_SHORT" })
    void byHours(String meter, String last, String every, Standing standing) {
        record.getGeneratorSet().setHourMeter(TimeSpan.valueOf(meter));
        task.setLastDoneHours(TimeSpan.valueOf(last));
        task.setEveryHours(TimeSpan.valueOf(every));
        judged().is(standing);
    }

    @Test
    void whicheverComesFirst() {
        byHours("100 h", "0 h", "200 h", Standing.MEETS);
        byMonths(LocalDate.of(2025, 5, 31), 12, Standing.FALLS_SHORT);
        task.setLastDoneOn(LocalDate.of(2026, 5, 31));
        judged().meets();
        record.getGeneratorSet().setHourMeter(TimeSpan.of(201, "h"));
        judged().fallsShort();
    }

    @Test
    void aTaskThatWasNeverDoneCountsFromTheInstallation() {
        task.setEveryMonths(12);
        record.getGeneratorSet().setInstalledOn(LocalDate.of(2025, 5, 31));
        judged().fallsShort();
        record.getGeneratorSet().setInstalledOn(LocalDate.of(2025, 6, 1));
        judged().meets();
    }

    @Test
    void aNewSetCannotBeOverdueByItsHours() {
        task.setEveryHours(TimeSpan.of(35, "h"));
        record.getGeneratorSet().setHourMeter(TimeSpan.of(35, "h"));
        judged().meets();
        record.getGeneratorSet().setHourMeter(TimeSpan.of(36, "h"));
        judged().cannotTell("upkeep.tasks[0].lastDoneHours");
    }

    @Test
    void whatIsOverdueByItsDateNeedsNoHours() {
        task.setEveryHours(TimeSpan.of(50, "h"));
        byMonths(LocalDate.of(2025, 5, 31), 12, Standing.FALLS_SHORT);
    }

    @Test
    void cannotTellWithoutADayOrTheHourMeter() {
        task.setEveryMonths(12);
        judged().cannotTell("upkeep.tasks[0].lastDoneOn");
        task.setLastDoneOn(LocalDate.of(2026, 5, 31));
        task.setEveryHours(TimeSpan.of(50, "h"));
        judged().cannotTell("generatorSet.hourMeter");
    }

    @Test
    void looksAtTasksWithAnInterval() {
        assertThat(Judged.all(ServiceInTime.check(), record)).isEmpty();
    }
}
