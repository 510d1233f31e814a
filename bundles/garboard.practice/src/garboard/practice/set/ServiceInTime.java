// SPDX-License-Identifier: EPL-2.0
package garboard.practice.set;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__HOUR_METER;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__INSTALLED_ON;
import static garboard.model.GarboardPackage.Literals.UPKEEP_TASK__EVERY_HOURS;
import static garboard.model.GarboardPackage.Literals.UPKEEP_TASK__EVERY_MONTHS;
import static garboard.model.GarboardPackage.Literals.UPKEEP_TASK__LAST_DONE_HOURS;
import static garboard.model.GarboardPackage.Literals.UPKEEP_TASK__LAST_DONE_ON;

import java.time.LocalDate;
import java.util.Optional;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Situation;
import garboard.model.GeneratorSet;
import garboard.model.UpkeepTask;
import garboard.practice.Interval;
import garboard.quantity.Display;
import garboard.quantity.TimeSpan;

/** A task of the plan of upkeep is not overdue, by hours or by months, whichever comes first. */
final class ServiceInTime {

    private ServiceInTime() {
    }

    static Check<UpkeepTask> check() {
        return Check.check("SET-SERVICE", UpkeepTask.class)
            .among(task -> task.getEveryHours() != null || task.getEveryMonths() != null, path(UPKEEP_TASK__EVERY_HOURS),
                path(UPKEEP_TASK__EVERY_MONTHS))
            .title("Service is not overdue")
            .why("What the plan asks for is what keeps the warranty, and the set.")
            .basis(Basis.derived("the record's own plan; a task that was never done counts from the installation and from 0 h"))
            .gravity(Gravity.ADVICE)
            .limit("hours and months of the plan, whichever comes first, that day included")
            .uses(UPKEEP_TASK__LAST_DONE_ON, UPKEEP_TASK__LAST_DONE_HOURS)
            .uses(path(GENERATOR_SET__INSTALLED_ON), path(GENERATOR_SET__HOUR_METER))
            .needsWhen(s -> s.subject().getEveryMonths() != null && since(s).isEmpty(), path(UPKEEP_TASK__LAST_DONE_ON))
            .needsWhen(s -> !overdueByDate(s) && s.subject().getEveryHours() != null, path(GENERATOR_SET__HOUR_METER))
            .needsWhen(s -> !overdueByDate(s) && hoursDecide(s), path(UPKEEP_TASK__LAST_DONE_HOURS))
            .holds(ServiceInTime::compare)
            .remedy("Do what the plan asks for, and enter day and hours")
            .build();
    }

    private static Optional<LocalDate> since(Situation<UpkeepTask> s) {
        return Optional.ofNullable(s.subject().getLastDoneOn()).or(() -> s.optional(s.record().getGeneratorSet(), GeneratorSet::getInstalledOn));
    }

    private static Optional<Interval.Since> byDate(Situation<UpkeepTask> s) {
        String done = s.subject().getLastDoneOn() == null ? "never entered as done: counted from the installation" : "last done";
        return s.subject().getEveryMonths() == null ? Optional.empty()
            : since(s).map(day -> Interval.ofMonths(s.subject().getEveryMonths()).since(day, done));
    }

    private static boolean overdueByDate(Situation<UpkeepTask> s) {
        return byDate(s).filter(since -> since.on(s.today()) instanceof Comparison.Holds held && !held.holds()).isPresent();
    }

    /** A set that has not run as long as the interval cannot be overdue by its hours, whenever the task was done. */
    private static boolean hoursDecide(Situation<UpkeepTask> s) {
        return s.subject().getEveryHours() != null && s.set().getHourMeter().isMoreThan(s.subject().getEveryHours());
    }

    private static Comparison compare(Situation<UpkeepTask> s) {
        if (overdueByDate(s)) {
            return byDate(s).orElseThrow().on(s.today());
        }
        if (s.subject().getEveryHours() == null) {
            return byDate(s).orElseThrow().on(s.today());
        }
        TimeSpan last = s.subject().getLastDoneHours() == null ? TimeSpan.of(0) : s.subject().getLastDoneHours();
        TimeSpan due = TimeSpan.of(last.si() + s.subject().getEveryHours().si());
        return Comparison.holds("the hour meter shows " + Display.formatIn(s.set().getHourMeter(), "h") + "; due at " + Display.formatIn(due, "h"),
            s.set().getHourMeter().si() <= due.si() * (1 + 1e-9));
    }
}
