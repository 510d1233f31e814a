// SPDX-License-Identifier: EPL-2.0
package garboard.session.handover;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

import garboard.model.CommissioningRecord;
import garboard.model.GarboardFactory;
import garboard.model.GarboardPackage.Literals;
import garboard.model.GeneratorSet;
import garboard.model.Upkeep;
import garboard.model.UpkeepTask;
import garboard.quantity.TimeSpan;
import garboard.report.UsualUpkeep;
import garboard.session.OpenRecord;
import garboard.session.handover.DueTask.State;

/** The plan of the upkeep: what is due when, and the usual tasks that it lacks. */
public final class UpkeepPlan {

    /** A usual task is known again in every language by this and its word. */
    private static final String USUAL = "usual-";
    private static final int SOON_DAYS = 30;
    private static final double SOON_SHARE = 0.1;
    private static final double DAYS_A_YEAR = 365.25;
    private static final Comparator<Optional<LocalDate>> EARLIEST = Comparator.comparing(day -> day.orElse(LocalDate.MAX));

    private final CommissioningRecord record;
    private final LocalDate today;

    private UpkeepPlan(CommissioningRecord record, LocalDate today) {
        this.record = record;
        this.today = today;
    }

    /** {@return when each task is due, the most pressing first} */
    public static List<DueTask> due(CommissioningRecord record, LocalDate today) {
        var plan = new UpkeepPlan(record, today);
        return tasks(record).stream().map(plan::due)
            .sorted(Comparator.comparing(DueTask::state).thenComparing(DueTask::by, EARLIEST)
                .thenComparing(task -> task.atHours().map(TimeSpan::si).orElse(Double.MAX_VALUE)))
            .toList();
    }

    private static List<UpkeepTask> tasks(CommissioningRecord record) {
        return Optional.ofNullable(record.getUpkeep()).map(Upkeep::getTasks).<List<UpkeepTask>>map(List::copyOf).orElse(List.of());
    }

    private DueTask due(UpkeepTask task) {
        Optional<Integer> months = Optional.ofNullable(task.getEveryMonths()).filter(every -> every > 0);
        Optional<TimeSpan> hours = Optional.ofNullable(task.getEveryHours()).filter(every -> every.si() > 0);
        boolean never = task.getLastDoneOn() == null && task.getLastDoneHours() == null;
        Optional<LocalDate> from = Optional.ofNullable(task.getLastDoneOn()).or(() -> never ? set().map(GeneratorSet::getInstalledOn) : Optional.empty());
        Optional<LocalDate> onDay = months.flatMap(every -> from.map(day -> day.plusMonths(every)));
        Optional<TimeSpan> atHours = hours.flatMap(every -> hoursFrom(task, every, never).map(begun -> sum(begun, every)));
        Optional<LocalDate> expected = atHours.flatMap(this::expected);
        State state = months.isEmpty() && hours.isEmpty() ? State.NO_INTERVAL
            : onDay.isEmpty() && atHours.isEmpty() ? State.NO_BEGINNING : state(onDay, atHours, hours);
        return new DueTask(task, onDay, atHours, expected, never, state);
    }

    /** What was never done counts from a new set; a set that has run longer than the interval is none. */
    private Optional<TimeSpan> hoursFrom(UpkeepTask task, TimeSpan every, boolean never) {
        if (task.getLastDoneHours() != null) {
            return Optional.of(task.getLastDoneHours());
        }
        return never && meter().filter(shown -> shown.isMoreThan(every)).isEmpty() ? Optional.of(TimeSpan.of(0, "h")) : Optional.empty();
    }

    private static TimeSpan sum(TimeSpan begun, TimeSpan every) {
        return TimeSpan.of(begun.in("h") + every.in("h"), "h");
    }

    private State state(Optional<LocalDate> onDay, Optional<TimeSpan> atHours, Optional<TimeSpan> every) {
        Optional<Double> hoursLeft = atHours.flatMap(due -> meter().map(shown -> due.in("h") - shown.in("h")));
        if (onDay.filter(today::isAfter).isPresent() || hoursLeft.filter(left -> left < 0).isPresent()) {
            return State.OVERDUE;
        }
        if (onDay.isEmpty() && hoursLeft.isEmpty()) {
            return State.NO_METER;
        }
        boolean soon = onDay.filter(day -> !day.isAfter(today.plusDays(SOON_DAYS))).isPresent()
            || hoursLeft.filter(left -> left <= SOON_SHARE * every.orElseThrow().in("h")).isPresent();
        return soon ? State.SOON : State.IN_ORDER;
    }

    private Optional<LocalDate> expected(TimeSpan due) {
        Optional<TimeSpan> yearly = Optional.ofNullable(record.getUpkeep()).map(Upkeep::getAnnualHours)
            .or(() -> set().map(GeneratorSet::getAnnualHours)).filter(hours -> hours.si() > 0);
        return yearly.flatMap(hours -> meter().map(shown -> (due.in("h") - shown.in("h")) / hours.in("h") * DAYS_A_YEAR))
            .filter(days -> Math.abs(days) < 100 * DAYS_A_YEAR).map(days -> today.plusDays(Math.round(days)));
    }

    private Optional<TimeSpan> meter() {
        return set().map(GeneratorSet::getHourMeter);
    }

    private Optional<GeneratorSet> set() {
        return Optional.ofNullable(record.getGeneratorSet());
    }

    // The usual tasks -------------------------------------------------------------------------------------------------

    /** {@return the usual tasks that the plan does not hold, by their id or by the same words} @param wording their words in the person's language */
    public static List<UsualUpkeep.Task> lacking(CommissioningRecord record, Function<UsualUpkeep.Task, String> wording) {
        Set<String> there = new HashSet<>();
        tasks(record).forEach(task -> {
            Optional.ofNullable(task.getId()).ifPresent(there::add);
            Optional.ofNullable(task.getTask()).map(UpkeepPlan::plain).ifPresent(there::add);
        });
        return UsualUpkeep.tasks().stream().filter(task -> !there.contains(USUAL + task.id()) && !there.contains(plain(task.words()))
            && !there.contains(plain(wording.apply(task)))).toList();
    }

    private static String plain(String words) {
        return words.strip().toLowerCase(Locale.ROOT);
    }

    /** Takes usual tasks into the plan, in one step. @param note what each says of where it comes from */
    public static void take(OpenRecord open, List<UsualUpkeep.Task> chosen, Function<UsualUpkeep.Task, String> wording, String note, String label) {
        open.edits().together(label, () -> chosen.forEach(usual -> {
            UpkeepTask task = GarboardFactory.eINSTANCE.createUpkeepTask();
            task.setId(USUAL + usual.id());
            task.setTask(wording.apply(usual));
            task.setEveryMonths(usual.interval().months());
            task.setEveryHours(usual.interval().hours());
            task.setNote(note);
            open.edits().add(open.record(), List.of(Literals.COMMISSIONING_RECORD__UPKEEP, Literals.UPKEEP__TASKS), task, label);
        }));
    }
}
