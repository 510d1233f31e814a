// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import java.time.LocalDate;
import java.util.Objects;

import garboard.checks.Standing;

/** What stands in one cell. Numbers never carry their unit in the cell: it stands beside them or in the heading. */
public sealed interface Cell {

    /** How heavy a text is. */
    enum Weight {
        PLAIN, STRONG, FAINT
    }

    /** Nothing. */
    record Blank() implements Cell {
    }

    /** A text. A person may have written it: it is never a formula, whatever it begins with. */
    record Text(String text, Weight weight) implements Cell {
        public Text {
            Objects.requireNonNull(text, "text");
            Objects.requireNonNull(weight, "weight");
        }
    }

    /**
     * A number.
     *
     * @param value in the unit that stands beside it
     * @param decimals shown behind the point; the value itself is not rounded
     */
    record Number(double value, int decimals) implements Cell {
        public Number {
            if (!Double.isFinite(value)) {
                throw new IllegalArgumentException(value + " cannot stand in a cell");
            }
        }
    }

    /**
     * A number that is worked out from other cells before the reader's eyes.
     *
     * @param expression how
     * @param decimals shown behind the point
     * @param signed whether a plus is shown, as for a margin
     */
    record Computed(Expression expression, int decimals, boolean signed) implements Cell {
        public Computed {
            Objects.requireNonNull(expression, "expression");
        }
    }

    /** A day. */
    record Day(LocalDate day) implements Cell {
        public Day {
            Objects.requireNonNull(day, "day");
        }
    }

    /** The day that lies so many months behind another day of the same row. */
    record DayAfter(String dayColumn, String monthsColumn) implements Cell {
    }

    /** A standing: a mark and a word, so that it can be told without colour. */
    record Stands(Standing standing) implements Cell {
        public Stands {
            Objects.requireNonNull(standing, "standing");
        }
    }

    Cell BLANK = new Blank();

    static Cell text(String text) {
        return text.isEmpty() ? BLANK : new Text(text, Weight.PLAIN);
    }

    static Cell strong(String text) {
        return new Text(text, Weight.STRONG);
    }

    static Cell faint(String text) {
        return text.isEmpty() ? BLANK : new Text(text, Weight.FAINT);
    }

    static Cell count(long count) {
        return new Number(count, 0);
    }
}
