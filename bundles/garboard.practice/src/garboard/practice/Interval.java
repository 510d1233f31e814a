// SPDX-License-Identifier: EPL-2.0
package garboard.practice;

import java.time.LocalDate;

import garboard.checks.Comparison;

/** How often something has to be done, in calendar months: done on 1 June it is due on 1 June, not a day before. */
public final class Interval {

    private final int months;

    private Interval(int months) {
        this.months = months;
    }

    public static Interval ofMonths(int months) {
        return new Interval(months);
    }

    public static Interval ofYears(int years) {
        return new Interval(12 * years);
    }

    /** @param done what was done then, as a clause: "the siphon break was serviced" */
    public Since since(LocalDate day, String done) {
        return new Since(months, day, done);
    }

    /** An interval that runs from a day. */
    public record Since(int months, LocalDate day, String done) {

        /** Holds until the day it is due, that day included. A day in the future is a slip of the pen and does not hold. */
        public Comparison on(LocalDate today) {
            LocalDate due = day.plusMonths(months);
            if (day.isAfter(today)) {
                return Comparison.holds(done + " on " + day + ", which is in the future", false);
            }
            return today.isAfter(due) ? Comparison.holds(done + " on " + day + " and has been due again since " + due, false)
                : Comparison.holds(done + " on " + day + "; due again on " + due, true);
        }
    }
}
