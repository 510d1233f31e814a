// SPDX-License-Identifier: EPL-2.0
package garboard.trial.log;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.Month;
import java.time.Year;
import java.time.ZoneOffset;
import java.util.List;

/** Reads the time stamps of text logs into nanoseconds since 1970, or since the start of the log where it tells no day. */
public final class LogStamps {

    private static final long NS_PER_S = 1_000_000_000L;
    private static final long S_PER_DAY = 86_400;
    /** Earlier than any logger: less counts from the start of the log. It is March 1973. */
    private static final long RELATIVE_BELOW_S = 100_000_000;
    /** The last second whose nanoseconds can be counted, in 2262. */
    private static final long LAST_S = Long.MAX_VALUE / NS_PER_S - 1;
    private static final int LAST_YEAR = 2261;

    private final LogOptions options;
    private final LogTally tally;
    private final long startNs;
    private final long startOfDayNs;
    private long ns;
    private long previousOfDayNs = -1;
    private long daysNs;

    /** Stamps of one log. */
    public LogStamps(LogOptions options, LogTally tally) {
        this.options = options;
        this.tally = tally;
        startNs = options.start().map(LogStamps::ns).orElse(0L);
        startOfDayNs = startNs - Math.floorMod(startNs, S_PER_DAY * NS_PER_S);
    }

    /** What came of a stamp. */
    public enum Result {
        OK, UNREADABLE,
        /** A local time that exists twice, or not at all, because clocks were changed. */
        AMBIGUOUS
    }

    /** {@return nanoseconds since 1970 of an instant, the last that can be counted for a later one} */
    public static long ns(Instant instant) {
        long seconds = Math.max(-LAST_S, Math.min(LAST_S, instant.getEpochSecond()));
        return seconds * NS_PER_S + instant.getNano();
    }

    /** {@return nanoseconds as seconds, to the microsecond, which is as much as a double holds of a time since 1970} */
    public static double seconds(long ns) {
        return Math.floorDiv(ns, 1000) / 1e6;
    }

    /** {@return the time that was read last} */
    public long ns() {
        return ns;
    }

    /** Seconds with decimals, or a local date and time, up to a closing parenthesis; the cursor is behind the opening one. */
    public Result parenthesis(TextCursor c) {
        int from = c.at();
        long seconds = c.takeDigits();
        if (c.peek() == '-') {
            c.goTo(from);
            Result result = dateAndTime(c);
            return c.take(')') ? result : Result.UNREADABLE;
        }
        long fraction = c.takeNanoseconds();
        return fraction >= 0 && c.take(')') ? epoch(seconds, fraction) : Result.UNREADABLE;
    }

    /** Seconds since 1970, or, where they are few, since the start of the log. */
    public Result epoch(long seconds, long fractionNs) {
        if (seconds < 0 || seconds > LAST_S) {
            return Result.UNREADABLE;
        }
        ns = seconds * NS_PER_S + fractionNs;
        if (seconds < RELATIVE_BELOW_S) {
            return relative(ns);
        }
        return Result.OK;
    }

    /** Nanoseconds since the start of the log. */
    public Result relative(long sinceStartNs) {
        if (options.start().isEmpty()) {
            tally.timeIsRelative();
        }
        if (Long.MAX_VALUE - Math.max(0, startNs) < sinceStartNs) {
            return Result.UNREADABLE;
        }
        ns = startNs + sinceStartNs;
        return Result.OK;
    }

    /** Which part of a date comes first. */
    public enum DateOrder {
        YEAR_MONTH_DAY, DAY_MONTH_YEAR, MONTH_DAY_YEAR
    }

    /** Date and time by ISO 8601, parted by T, a blank or a hyphen; with Z or an offset, else in the zone of the options. */
    public Result dateAndTime(TextCursor c) {
        return dateAndTime(c, DateOrder.YEAR_MONTH_DAY);
    }

    /** The same with another order of the date, whose parts may be parted by points or strokes, too. */
    public Result dateAndTime(TextCursor c, DateOrder order) {
        long day = epochDay(c, order);
        boolean parted = c.take('T') || c.take('-') || c.takeBlanks();
        long ofDay = day < 0 || !parted ? -1 : ofDay(c);
        return ofDay < 0 ? Result.UNREADABLE : zone(c, day * S_PER_DAY * NS_PER_S + ofDay);
    }

    /** {@return days since 1970, -1 for what is no date since then} */
    private static long epochDay(TextCursor c, DateOrder order) {
        long first = c.takeDigits();
        int separator = c.peek();
        boolean parted = separator == '-' || separator == '.' || separator == '/';
        if (!parted || !c.take((char) separator)) {
            return -1;
        }
        long second = c.takeDigits();
        if (!c.take((char) separator)) {
            return -1;
        }
        long third = c.takeDigits();
        long year = order == DateOrder.YEAR_MONTH_DAY ? first : third;
        long month = order == DateOrder.MONTH_DAY_YEAR ? first : second;
        long day = switch (order) {
            case YEAR_MONTH_DAY -> third;
            case DAY_MONTH_YEAR -> first;
            case MONTH_DAY_YEAR -> second;
        };
        if (year < 1970 || year > LAST_YEAR || month < 1 || month > 12 || day < 1 || day > Month.of((int) month).length(Year.isLeap(year))) {
            return -1;
        }
        return LocalDate.of((int) year, (int) month, (int) day).toEpochDay();
    }

    /** A local time as if it were universal, in nanoseconds, brought to the zone of the options. */
    public Result local(long asUtcNs) {
        if (options.zone() instanceof ZoneOffset offset) {
            ns = asUtcNs - offset.getTotalSeconds() * NS_PER_S;
            return Result.OK;
        }
        long seconds = Math.floorDiv(asUtcNs, NS_PER_S);
        List<ZoneOffset> valid = options.zone().getRules().getValidOffsets(LocalDateTime.ofEpochSecond(seconds, 0, ZoneOffset.UTC));
        ns = asUtcNs - (valid.isEmpty() ? 0 : valid.get(0).getTotalSeconds() * NS_PER_S);
        return valid.size() == 1 ? Result.OK : Result.AMBIGUOUS;
    }

    /** A time of day alone: on the day of the start, or of relative time; a day later each time it starts anew from midnight. */
    public Result timeOfDay(TextCursor c) {
        long ofDay = ofDay(c);
        if (ofDay < 0) {
            return Result.UNREADABLE;
        }
        if (previousOfDayNs - ofDay > S_PER_DAY / 2 * NS_PER_S) {
            daysNs += S_PER_DAY * NS_PER_S;
        }
        previousOfDayNs = ofDay;
        if (options.start().isEmpty()) {
            tally.timeIsRelative();
        }
        ns = startOfDayNs + daysNs + ofDay;
        return Result.OK;
    }

    /** Z, an offset, or nothing. */
    private Result zone(TextCursor c, long asUtcNs) {
        c.takeBlanks();
        if (c.take('Z') || c.take('z')) {
            ns = asUtcNs;
            return Result.OK;
        }
        boolean east = c.take('+');
        if (!east && !c.take('-')) {
            return local(asUtcNs);
        }
        int from = c.at();
        long hours = c.takeDigits();
        boolean together = c.at() - from == 4;
        long minutes = c.take(':') ? c.takeDigits() : 0;
        if (together) {
            minutes = hours % 100;
            hours = hours / 100;
        }
        if (hours < 0 || hours > 18 || minutes < 0 || minutes > 59) {
            return Result.UNREADABLE;
        }
        long offsetNs = (hours * 60 + minutes) * 60 * NS_PER_S;
        ns = asUtcNs + (east ? -offsetNs : offsetNs);
        return Result.OK;
    }

    /** {@return nanoseconds since midnight, -1 for what is no time} Seconds may be missing, 60 is a leap second; AM or PM may follow. */
    private static long ofDay(TextCursor c) {
        long hours = c.takeDigits();
        boolean parted = c.take(':');
        long minutes = c.takeDigits();
        long seconds = c.take(':') ? c.takeDigits() : 0;
        long fraction = c.takeNanoseconds();
        if (!parted || hours < 0 || hours > 23 || minutes < 0 || minutes > 59 || seconds < 0 || seconds > 60 || fraction < 0) {
            return -1;
        }
        c.takeBlanks();
        boolean morning = c.take('A');
        if (morning || c.take('P')) {
            if (!c.take('M') || hours < 1 || hours > 12) {
                return -1;
            }
            hours = hours % 12 + (morning ? 0 : 12);
        }
        return ((hours * 60 + minutes) * 60 + seconds) * NS_PER_S + fraction;
    }
}
