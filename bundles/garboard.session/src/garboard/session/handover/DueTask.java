// SPDX-License-Identifier: EPL-2.0
package garboard.session.handover;

import java.time.LocalDate;
import java.util.Optional;

import garboard.model.UpkeepTask;
import garboard.quantity.TimeSpan;

/**
 * When a task of the upkeep is due next, whichever comes first.
 *
 * @param task the task
 * @param onDay the day, where it has months and a day to count from
 * @param atHours what the hour meter shows then, where it has hours and a reading to count from
 * @param expected the day on which the hour meter will show that, at the hours that the set runs in a year
 * @param firstTime whether it was never done, so that it is counted from the day of installation and from a new set
 * @param state how it stands today
 */
public record DueTask(UpkeepTask task, Optional<LocalDate> onDay, Optional<TimeSpan> atHours, Optional<LocalDate> expected, boolean firstTime,
        State state) {

    /** How a task stands. The order is the order in which people want to read them. */
    public enum State {
        OVERDUE, SOON, IN_ORDER,
        /** It goes by hours alone, and the hour meter is not entered: nobody can tell whether they are past. */
        NO_METER,
        /** It has an interval, but nothing says from when to count. */
        NO_BEGINNING,
        /** It has no interval. */
        NO_INTERVAL
    }

    /** {@return the day by which it is due, whichever comes first} */
    public Optional<LocalDate> by() {
        return onDay.isPresent() && expected.isPresent() ? Optional.of(onDay.get().isBefore(expected.get()) ? onDay.get() : expected.get())
            : onDay.or(() -> expected);
    }
}
