// SPDX-License-Identifier: EPL-2.0
package garboard.session.handover;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import garboard.model.GarboardFactory;
import garboard.model.GarboardPackage.Literals;
import garboard.model.UpkeepTask;
import garboard.quantity.TimeSpan;
import garboard.report.UsualUpkeep;
import garboard.session.OpenRecord;
import garboard.session.handover.DueTask.State;

class UpkeepPlanTest {

    private static final LocalDate TODAY = Handed.TODAY;

    private OpenRecord open;

    @BeforeEach
    void openNew() {
        open = Handed.empty();
        open.edits().set(Handed.field(open, "generatorSet.installedOn"), LocalDate.of(2026, 11, 1), "");
        open.edits().set(Handed.field(open, "generatorSet.hourMeter"), TimeSpan.valueOf("100 h"), "");
    }

    private UpkeepTask task(String name) {
        UpkeepTask task = GarboardFactory.eINSTANCE.createUpkeepTask();
        task.setTask(name);
        return open.edits().add(open.record(), List.of(Literals.COMMISSIONING_RECORD__UPKEEP, Literals.UPKEEP__TASKS), task, "");
    }

    private DueTask due() {
        return UpkeepPlan.due(open.record(), TODAY).getFirst();
    }

    @Test
    void countsMonthsFromTheLastTime() {
        UpkeepTask task = task("Oil");
        task.setEveryMonths(12);
        task.setLastDoneOn(LocalDate.of(2026, 1, 31));
        assertThat(due().onDay()).contains(LocalDate.of(2027, 1, 31));
        assertThat(due().state()).isEqualTo(State.IN_ORDER);
        assertThat(due().firstTime()).isFalse();
    }

    @Test
    void endsAMonthThatIsShorterOnItsLastDay() {
        UpkeepTask task = task("Alarms");
        task.setEveryMonths(1);
        task.setLastDoneOn(LocalDate.of(2026, 10, 31));
        assertThat(due().onDay()).contains(LocalDate.of(2026, 11, 30));
        assertThat(due().state()).isEqualTo(State.SOON);
    }

    @Test
    void isOverdueOnTheDayAfter() {
        UpkeepTask task = task("Alarms");
        task.setEveryMonths(1);
        task.setLastDoneOn(LocalDate.of(2026, 10, 25));
        assertThat(due().state()).isEqualTo(State.SOON);
        task.setLastDoneOn(LocalDate.of(2026, 10, 24));
        assertThat(due().state()).isEqualTo(State.OVERDUE);
    }

    @Test
    void countsHoursFromTheLastTime() {
        UpkeepTask task = task("Oil");
        task.setEveryHours(TimeSpan.valueOf("150 h"));
        task.setLastDoneHours(TimeSpan.valueOf("20 h"));
        assertThat(due().atHours().orElseThrow().in("h")).isEqualTo(170);
        assertThat(due().state()).isEqualTo(State.IN_ORDER);
        // 30 h are left of 300 h: a tenth.
        task.setEveryHours(TimeSpan.valueOf("300 h"));
        open.edits().set(Handed.field(open, "generatorSet.hourMeter"), TimeSpan.valueOf("290 h"), "");
        assertThat(due().state()).isEqualTo(State.SOON);
        open.edits().set(Handed.field(open, "generatorSet.hourMeter"), TimeSpan.valueOf("321 h"), "");
        assertThat(due().state()).isEqualTo(State.OVERDUE);
    }

    @Test
    void reckonsTheDayFromTheHoursInAYear() {
        UpkeepTask task = task("Oil");
        task.setEveryHours(TimeSpan.valueOf("200 h"));
        task.setLastDoneHours(TimeSpan.valueOf("0 h"));
        assertThat(due().expected()).isEmpty();
        // 100 h are left at 200 h a year: half a year of 365.25 days, rounded.
        open.edits().set(Handed.field(open, "upkeep.annualHours"), TimeSpan.valueOf("200 h"), "");
        assertThat(due().expected()).contains(TODAY.plusDays(183));
        assertThat(due().by()).contains(TODAY.plusDays(183));
        task.setEveryMonths(3);
        task.setLastDoneOn(TODAY);
        assertThat(due().by()).contains(TODAY.plusMonths(3));
    }

    @Test
    void countsWhatWasNeverDoneFromTheInstallationOfANewSet() {
        UpkeepTask task = task("First oil");
        task.setEveryHours(TimeSpan.valueOf("150 h"));
        task.setEveryMonths(6);
        assertThat(due().firstTime()).isTrue();
        assertThat(due().onDay()).contains(LocalDate.of(2027, 5, 1));
        assertThat(due().atHours().orElseThrow().in("h")).isEqualTo(150);
        // A set that has run for longer than the interval was not new.
        task.setEveryHours(TimeSpan.valueOf("50 h"));
        assertThat(due().atHours()).isEmpty();
    }

    @Test
    void saysWhenNothingCanBeReckoned() {
        task("Look around");
        assertThat(due().state()).isEqualTo(State.NO_INTERVAL);
        UpkeepTask task = open.record().getUpkeep().getTasks().getFirst();
        task.setEveryMonths(1);
        open.edits().clear(Handed.field(open, "generatorSet.installedOn"), "");
        assertThat(due().state()).isEqualTo(State.NO_BEGINNING);
        task.setEveryMonths(0);
        assertThat(due().state()).isEqualTo(State.NO_INTERVAL);
        task.setEveryMonths(-3);
        assertThat(due().state()).isEqualTo(State.NO_INTERVAL);
    }

    @Test
    void doesNotSayThatHoursAreNotPastWithoutTheHourMeter() {
        UpkeepTask task = task("Oil");
        task.setEveryHours(TimeSpan.valueOf("150 h"));
        task.setLastDoneHours(TimeSpan.valueOf("20 h"));
        open.edits().clear(Handed.field(open, "generatorSet.hourMeter"), "");
        assertThat(due().state()).isEqualTo(State.NO_METER);
        assertThat(due().atHours().orElseThrow().in("h")).isEqualTo(170);
        task.setEveryMonths(6);
        task.setLastDoneOn(TODAY);
        assertThat(due().state()).isEqualTo(State.IN_ORDER);
    }

    @Test
    void listsTheMostPressingFirst() {
        // Due on 2026-11-09, 2026-11-15 and later, by the record.
        List<DueTask> due = UpkeepPlan.due(Handed.example("motor-cruiser").record(), TODAY);
        assertThat(due).extracting(one -> one.task().getTask()).startsWith("Exhaust and fuel hoses looked at and felt", "Carbon-monoxide alarms tried");
        assertThat(due.subList(0, 2)).extracting(DueTask::state).containsOnly(State.OVERDUE);
    }

    @Test
    void takesTheUsualTasksInOneStepAndOnlyOnce() {
        List<UsualUpkeep.Task> lacking = UpkeepPlan.lacking(open.record(), UsualUpkeep.Task::words);
        assertThat(lacking).hasSameSizeAs(UsualUpkeep.tasks());
        UpkeepPlan.take(open, lacking, task -> "de: " + task.id(), "Common practice", "Take over");
        assertThat(open.record().getUpkeep().getTasks()).hasSameSizeAs(lacking).allSatisfy(task -> assertThat(task.getNote()).isEqualTo("Common practice"));
        // Known again in another language, and by words of their own.
        assertThat(UpkeepPlan.lacking(open.record(), UsualUpkeep.Task::words)).isEmpty();
        open.edits().undo();
        assertThat(UpkeepPlan.lacking(open.record(), UsualUpkeep.Task::words)).hasSameSizeAs(lacking);
        task("oil and OIL filter ");
        assertThat(UpkeepPlan.lacking(open.record(), UsualUpkeep.Task::words)).extracting(UsualUpkeep.Task::id).doesNotContain("oil").contains("impeller");
    }

    @Test
    void callsEveryUsualTaskInGermanByWordsOfItsOwn() {
        UsualWords german = UsualWords.in(Locale.GERMAN);
        assertThat(UsualUpkeep.tasks()).allSatisfy(task -> assertThat(german.of(task)).isNotBlank().isNotEqualTo(task.words()));
        assertThat(UsualUpkeep.tasks()).extracting(german::of).doesNotHaveDuplicates();
        UsualUpkeep.Task first = UsualUpkeep.tasks().getFirst();
        assertThat(UsualWords.in(Locale.ENGLISH).of(first)).isEqualTo(first.words());
    }
}
