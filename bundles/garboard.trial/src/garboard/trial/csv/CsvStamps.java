// SPDX-License-Identifier: EPL-2.0
package garboard.trial.csv;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.OptionalDouble;

import garboard.trial.log.Decimal;
import garboard.trial.log.LogOptions;
import garboard.trial.log.LogStamps;
import garboard.trial.log.LogTally;
import garboard.trial.log.TextCursor;

/** Reads the times of the rows of a table. */
final class CsvStamps {

    private static final double NS_PER_S = 1e9;
    private static final double NS_PER_DAY = 86_400e9;
    /** Spreadsheets count days from 1899-12-30, so that 1900-03-01 and all later ones fit. */
    private static final double DAYS_TO_1970 = 25_569;
    /** Of seconds, so that nanoseconds can be counted. */
    private static final double MOST_SECONDS = 9e9;
    private static final long NS_PER_MICROSECOND = 1000;

    private final CsvTime time;
    private final char decimalSign;
    private final LogStamps stamps;
    private final TextCursor cursor = new TextCursor();

    CsvStamps(CsvTime time, char decimalSign, LogOptions options, LogTally tally) {
        this.time = time;
        this.decimalSign = decimalSign;
        stamps = new LogStamps(options.in(time.zone()), tally);
    }

    long ns() {
        return stamps.ns();
    }

    LogStamps.Result read(List<String> row) {
        if (time.column() >= row.size() || time.second() >= row.size()) {
            return LogStamps.Result.UNREADABLE;
        }
        String cell = row.get(time.column());
        return switch (time.form()) {
            case TOGETHER -> text(cell);
            case DATE_AND_TIME -> text(cell + " " + row.get(time.second()));
            case SPREADSHEET_DAYS -> number(cell, days -> {
                // A double holds these days to about a microsecond; what lies below is not the recorder's.
                double microseconds = Math.rint((days - DAYS_TO_1970) * NS_PER_DAY / NS_PER_MICROSECOND);
                return Math.abs(microseconds) > MOST_SECONDS * NS_PER_S / NS_PER_MICROSECOND ? LogStamps.Result.UNREADABLE
                    : stamps.local((long) microseconds * NS_PER_MICROSECOND);
            });
            case EPOCH_SECONDS -> number(cell, this::epoch);
            case EPOCH_MILLISECONDS -> number(cell, milliseconds -> epoch(milliseconds / 1000));
            case SECONDS_FROM_START -> number(cell, seconds -> Math.abs(seconds) > MOST_SECONDS ? LogStamps.Result.UNREADABLE
                : stamps.relative(Math.round(seconds * NS_PER_S)));
        };
    }

    private LogStamps.Result text(String text) {
        byte[] bytes = text.replace(',', '.').getBytes(StandardCharsets.UTF_8);
        cursor.set(bytes, 0, bytes.length);
        LogStamps.Result result = stamps.dateAndTime(cursor, time.order());
        return cursor.isAtEnd() ? result : LogStamps.Result.UNREADABLE;
    }

    private LogStamps.Result epoch(double seconds) {
        double whole = Math.floor(seconds);
        return seconds < 0 || seconds > MOST_SECONDS ? LogStamps.Result.UNREADABLE
            : stamps.epoch((long) whole, Math.round((seconds - whole) * NS_PER_S / NS_PER_MICROSECOND) * NS_PER_MICROSECOND);
    }

    private interface OfNumber {
        LogStamps.Result read(double number);
    }

    private LogStamps.Result number(String cell, OfNumber form) {
        OptionalDouble number = Decimal.parse(cell, decimalSign);
        return number.isEmpty() ? LogStamps.Result.UNREADABLE : form.read(number.getAsDouble());
    }
}
