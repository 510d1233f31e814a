// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Days and times as cells. */
final class Days {

    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    private Days() {
    }

    static Cell cell(LocalDate day) {
        return day == null ? Cell.BLANK : new Cell.Day(day);
    }

    static Cell moment(OffsetDateTime moment) {
        return moment == null ? Cell.BLANK : Cell.text(MOMENT.format(moment));
    }

    static String clock(OffsetDateTime moment) {
        return moment == null ? "" : CLOCK.format(moment);
    }
}
