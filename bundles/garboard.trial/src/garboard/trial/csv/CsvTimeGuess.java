// SPDX-License-Identifier: EPL-2.0
package garboard.trial.csv;

import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

import garboard.trial.log.Decimal;
import garboard.trial.log.LogStamps;

/**
 * Where the time of a table seems to stand.
 *
 * @param doubts what a person should look at
 */
record CsvTimeGuess(CsvTime time, List<String> doubts) {

    private static final Pattern HEADING = Pattern.compile("time|date|stamp|zeit|datum|uhr|elapsed|seconds|^t$|^s$");
    private static final Pattern DATE_AND_TIME = Pattern.compile("\\d{1,4}[-./]\\d{1,2}[-./]\\d{1,4}[T -]+\\d{1,2}:\\d{2}.*");
    private static final Pattern DATE = Pattern.compile("\\d{1,4}[-./]\\d{1,2}[-./]\\d{1,4}");
    private static final Pattern TIME = Pattern.compile("\\d{1,2}:\\d{2}(:\\d{2}([.,]\\d+)?)?( ?[AP]M)?");
    private static final Pattern OFFSET = Pattern.compile(".*(Z|[+-]\\d{2}:?\\d{2})");
    private static final double EPOCH_SECONDS_FROM = 1e8;
    private static final double EPOCH_MILLISECONDS_FROM = 1e11;
    private static final double SPREADSHEET_DAYS_FROM = 25_569;
    private static final double SPREADSHEET_DAYS_TO = 80_000;

    /** Nothing where no column holds a time. */
    static Optional<CsvTimeGuess> of(List<String> headings, List<List<String>> rows, char decimalSign, ZoneId zone) {
        int date = -1;
        for (int i = 0; i < headings.size(); i++) {
            String cell = first(rows, i);
            if (DATE_AND_TIME.matcher(cell).matches()) {
                return Optional.of(text(CsvTime.Form.TOGETHER, i, i, rows, zone));
            }
            if (DATE.matcher(cell).matches() && date < 0) {
                date = i;
            }
        }
        for (int i = 0; i < headings.size() && date >= 0; i++) {
            if (TIME.matcher(first(rows, i)).matches()) {
                return Optional.of(text(CsvTime.Form.DATE_AND_TIME, date, i, rows, zone));
            }
        }
        return number(headings, rows, decimalSign, zone);
    }

    private static String first(List<List<String>> rows, int column) {
        return rows.stream().map(row -> row.get(column)).filter(cell -> !cell.isEmpty()).findFirst().orElse("");
    }

    private static CsvTimeGuess text(CsvTime.Form form, int column, int second, List<List<String>> rows, ZoneId zone) {
        List<String> doubts = new ArrayList<>();
        String date = first(rows, column);
        LogStamps.DateOrder order = LogStamps.DateOrder.YEAR_MONTH_DAY;
        if (date.indexOf('.') > 0 && date.indexOf('.') < 3) {
            order = LogStamps.DateOrder.DAY_MONTH_YEAR;
        } else if (!date.matches("\\d{4}.*")) {
            boolean dayFirst = anyAbove12(rows, column, 0);
            order = dayFirst ? LogStamps.DateOrder.DAY_MONTH_YEAR : LogStamps.DateOrder.MONTH_DAY_YEAR;
            if (!dayFirst && !anyAbove12(rows, column, 1)) {
                doubts.add("A date such as " + date + " may have its day or its month first; it is taken for month first.");
            }
        }
        if (!OFFSET.matcher(first(rows, second)).matches()) {
            doubts.add("The times tell no offset from universal time; they are taken for those of " + zone + ".");
        }
        return new CsvTimeGuess(new CsvTime(form, column, second, order, zone), doubts);
    }

    private static boolean anyAbove12(List<List<String>> rows, int column, int part) {
        return rows.stream().map(row -> row.get(column)).filter(cell -> !cell.isEmpty()).map(cell -> cell.split("[-./T ]"))
            .anyMatch(parts -> parts.length > part && Decimal.parse(parts[part]).orElse(0) > 12);
    }

    private static Optional<CsvTimeGuess> number(List<String> headings, List<List<String>> rows, char decimalSign, ZoneId zone) {
        for (int i = 0; i < headings.size(); i++) {
            OptionalDouble first = Decimal.parse(first(rows, i), decimalSign);
            if (first.isPresent() && HEADING.matcher(headings.get(i).toLowerCase(Locale.ROOT)).find()) {
                return Optional.of(number(i, first.getAsDouble(), zone));
            }
        }
        return Optional.empty();
    }

    private static CsvTimeGuess number(int column, double first, ZoneId zone) {
        CsvTime.Form form = CsvTime.Form.SECONDS_FROM_START;
        String doubt = "The times are taken for seconds since the start of the log; tell when it began.";
        if (first >= EPOCH_MILLISECONDS_FROM) {
            form = CsvTime.Form.EPOCH_MILLISECONDS;
            doubt = "The times are taken for milliseconds since 1970, universal time.";
        } else if (first >= EPOCH_SECONDS_FROM) {
            form = CsvTime.Form.EPOCH_SECONDS;
            doubt = "The times are taken for seconds since 1970, universal time.";
        } else if (first >= SPREADSHEET_DAYS_FROM && first < SPREADSHEET_DAYS_TO) {
            form = CsvTime.Form.SPREADSHEET_DAYS;
            doubt = "The times are taken for a spreadsheet's days since 1899-12-30, local time of " + zone + ".";
        }
        ZoneId where = form == CsvTime.Form.SPREADSHEET_DAYS ? zone : ZoneOffset.UTC;
        return new CsvTimeGuess(new CsvTime(form, column, column, LogStamps.DateOrder.YEAR_MONTH_DAY, where), List.of(doubt));
    }
}
