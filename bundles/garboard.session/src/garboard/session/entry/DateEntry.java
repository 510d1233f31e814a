// SPDX-License-Identifier: EPL-2.0
package garboard.session.entry;

import static garboard.session.entry.Refusal.because;

import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.YearMonth;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import garboard.session.entry.Refusal.Reason;

/**
 * Reads dates as people write them: {@code 2026-05-31}, {@code 31.5.2026}, {@code 31 May 2026}, {@code May 31, 2026}, {@code 5/31/2026};
 * where day and month may be exchanged it asks. And moments: a date and a time of day, or today's time of day alone.
 */
final class DateEntry {

    private static final Pattern ISO = Pattern.compile("(\\d{4})-(\\d{1,2})-(\\d{1,2})");
    private static final Pattern DOTS = Pattern.compile("(\\d{1,2})\\. ?(\\d{1,2})\\. ?(\\d{4}|\\d{2})");
    private static final Pattern STROKES = Pattern.compile("(\\d{1,2})/(\\d{1,2})/(\\d{4}|\\d{2})");
    private static final Pattern DAY_FIRST = Pattern.compile("(\\d{1,2})\\.? ?([\\p{L}]{3,9})\\.?,? ?(\\d{4})");
    private static final Pattern MONTH_FIRST = Pattern.compile("([\\p{L}]{3,9})\\.? (\\d{1,2})(?:st|nd|rd|th)?,? (\\d{4})");
    private static final Pattern BEGUN = Pattern.compile("[\\d. /-]{1,9}|\\d{1,2}\\.? ?\\p{L}{0,9}\\.?,? ?\\d{0,3}|\\p{L}{1,9}\\.? ?\\d{0,2},? ?\\d{0,3}");
    private static final Pattern MOMENT = Pattern.compile(
        "(?:(.*?\\S)[ T]+)?(\\d{1,2})[:.](\\d{2})(?:[:.](\\d{2})(?:\\.\\d+)?)?(?: ?(Z|[-+\u2212]\\d{2}:?\\d{2}))?(?: ?Uhr)?");
    private static final Pattern MOMENT_BEGUN = Pattern.compile("(?:.*[ T])?\\d{0,2}[:.]?\\d?|[\\d. /-]{1,10}T?");
    private static final DateTimeFormatter SHOWN = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm xxx", Locale.ROOT);
    private static final DateTimeFormatter SHOWN_WITH_SECONDS = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm:ss xxx", Locale.ROOT);
    private static final int CENTURY = 2000;
    private static final int FIRST_YEAR = 1850;
    private static final int LAST_YEAR = 2150;
    private static final int MONTHS = 12;
    private static final Map<String, Integer> MONTH_NAMES = monthNames();

    private DateEntry() {
    }

    static Reading date(String text) {
        String tidy = text.replace('\u00a0', ' ').strip().replaceAll("\\s+", " ");
        Matcher iso = ISO.matcher(tidy);
        if (iso.matches()) {
            return day(number(iso, 1), number(iso, 2), number(iso, 3));
        }
        Matcher dots = DOTS.matcher(tidy);
        if (dots.matches()) {
            return day(year(dots.group(3)), number(dots, 2), number(dots, 1));
        }
        Matcher strokes = STROKES.matcher(tidy);
        if (strokes.matches()) {
            return strokes(year(strokes.group(3)), number(strokes, 1), number(strokes, 2));
        }
        Matcher dayFirst = DAY_FIRST.matcher(tidy);
        if (dayFirst.matches() && month(dayFirst.group(2)).isPresent()) {
            return day(number(dayFirst, 3), month(dayFirst.group(2)).get(), number(dayFirst, 1));
        }
        Matcher monthFirst = MONTH_FIRST.matcher(tidy);
        if (monthFirst.matches() && month(monthFirst.group(1)).isPresent()) {
            return day(number(monthFirst, 3), month(monthFirst.group(1)).get(), number(monthFirst, 2));
        }
        Refusal why = because(Reason.NO_DATE);
        return BEGUN.matcher(tidy).matches() ? new Reading.Begun(List.of(), why) : new Reading.Refused(why);
    }

    private static Reading strokes(int year, int first, int second) {
        if (first <= MONTHS && second <= MONTHS && first != second) {
            return new Reading.Refused(because(Reason.DATE_WITH_TWO_READINGS, iso(year, first, second), iso(year, second, first)));
        }
        return first > MONTHS ? day(year, second, first) : day(year, first, second);
    }

    private static Reading day(int year, int month, int day) {
        if (year < FIRST_YEAR || year > LAST_YEAR) {
            return new Reading.Refused(because(Reason.YEAR, String.valueOf(year)));
        }
        if (month < 1 || month > MONTHS || day < 1) {
            return new Reading.Refused(because(Reason.NO_DATE));
        }
        int last = YearMonth.of(year, month).lengthOfMonth();
        return day > last ? new Reading.Refused(because(Reason.NO_SUCH_DAY, iso(year, month, last)))
            : new Reading.Entered(LocalDate.of(year, month, day), Optional.empty());
    }

    /** The date may be left out for today, the offset for that of the clock's zone. */
    static Reading moment(String text, Clock clock) {
        String tidy = text.replace('\u00a0', ' ').strip().replaceAll("\\s+", " ");
        Matcher found = MOMENT.matcher(tidy);
        if (!found.matches()) {
            Refusal why = because(Reason.NO_TIME);
            boolean begun = MOMENT_BEGUN.matcher(tidy).matches() || date(tidy) instanceof Reading.Entered || date(tidy) instanceof Reading.Begun;
            return begun ? new Reading.Begun(List.of(), why) : new Reading.Refused(why);
        }
        Reading day = found.group(1) == null ? new Reading.Entered(LocalDate.now(clock), Optional.empty()) : date(found.group(1));
        if (!(day instanceof Reading.Entered entered)) {
            return day;
        }
        int seconds = found.group(4) == null ? 0 : number(found, 4);
        if (number(found, 2) > 23 || number(found, 3) > 59 || seconds > 59) {
            return new Reading.Refused(because(Reason.NO_TIME));
        }
        var local = LocalDateTime.of((LocalDate) entered.value(), LocalTime.of(number(found, 2), number(found, 3), seconds));
        return new Reading.Entered(OffsetDateTime.of(local, offset(found.group(5), local, clock.getZone())), Optional.empty());
    }

    private static ZoneOffset offset(String typed, LocalDateTime local, ZoneId zone) {
        try {
            return typed == null ? zone.getRules().getOffset(local) : ZoneOffset.of(typed.replace('\u2212', '-'));
        } catch (java.time.DateTimeException outOfRange) {
            return zone.getRules().getOffset(local);
        }
    }

    static String written(OffsetDateTime moment) {
        return moment.getSecond() == 0 ? SHOWN.format(moment) : SHOWN_WITH_SECONDS.format(moment);
    }

    private static int number(Matcher found, int group) {
        return Integer.parseInt(found.group(group));
    }

    private static int year(String digits) {
        return digits.length() == 2 ? CENTURY + Integer.parseInt(digits) : Integer.parseInt(digits);
    }

    private static String iso(int year, int month, int day) {
        return "%04d-%02d-%02d".formatted(year, month, day);
    }

    private static Optional<Integer> month(String name) {
        String small = name.toLowerCase(Locale.ROOT);
        return MONTH_NAMES.entrySet().stream().filter(known -> known.getKey().startsWith(small)).map(Map.Entry::getValue).findFirst();
    }

    /** English and German, by which a record is kept; three letters of a name do. */
    private static Map<String, Integer> monthNames() {
        var names = new java.util.LinkedHashMap<String, Integer>();
        for (Locale language : List.of(Locale.ENGLISH, Locale.GERMAN)) {
            for (java.time.Month month : java.time.Month.values()) {
                names.put(month.getDisplayName(java.time.format.TextStyle.FULL, language).toLowerCase(Locale.ROOT), month.getValue());
            }
        }
        names.put("maerz", 3);
        names.put("mrz", 3);
        names.put("sept", 9);
        return Map.copyOf(names);
    }
}
