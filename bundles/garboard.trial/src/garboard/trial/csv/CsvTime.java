// SPDX-License-Identifier: EPL-2.0
package garboard.trial.csv;

import java.time.ZoneId;
import java.util.Objects;

import garboard.trial.log.LogStamps;

/**
 * Where and how the rows of a table tell their time.
 *
 * @param form   how it is written
 * @param column the column, from 0; with {@link Form#DATE_AND_TIME} that of the date
 * @param second the column of the time where the date has its own, else the same as {@code column}
 * @param order  of the date
 * @param zone   where times without offset are from
 */
public record CsvTime(Form form, int column, int second, LogStamps.DateOrder order, ZoneId zone) {

    public CsvTime {
        Objects.requireNonNull(form, "form");
        Objects.requireNonNull(order, "order");
        Objects.requireNonNull(zone, "zone");
        if (column < 0 || second < 0) {
            throw new IllegalArgumentException("the column of the time is " + column + ", must be 0 or more");
        }
    }

    /** How a time is written. */
    public enum Form {
        /** Date and time in one cell, with Z, an offset or none. */
        TOGETHER,
        /** Date in one cell, time in another. */
        DATE_AND_TIME,
        /** The number of a spreadsheet: days since 1899-12-30, local time. */
        SPREADSHEET_DAYS,
        /** Seconds since 1970, universal time. */
        EPOCH_SECONDS,
        /** Milliseconds since 1970, universal time. */
        EPOCH_MILLISECONDS,
        /** Seconds since the start of the log. */
        SECONDS_FROM_START
    }

    /** The same in another zone. */
    public CsvTime in(ZoneId other) {
        return new CsvTime(form, column, second, order, other);
    }
}
