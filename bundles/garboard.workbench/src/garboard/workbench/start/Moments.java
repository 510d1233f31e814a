// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.start;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Locale;

import garboard.workbench.Desk;
import garboard.workbench.text.Texts;

/** When something was, as people say it: today and yesterday by name, else the date. */
final class Moments {

    private Moments() {
    }

    static String words(Instant when, Desk desk) {
        Texts.Of texts = desk.texts(Moments.class);
        Locale language = desk.texts().locale();
        ZonedDateTime there = when.atZone(desk.clock().getZone());
        LocalDate today = LocalDate.now(desk.clock());
        String time = there.format(DateTimeFormatter.ofLocalizedTime(FormatStyle.SHORT).withLocale(language));
        LocalDate day = there.toLocalDate();
        if (day.equals(today)) {
            return texts.get("moment.today", time);
        }
        if (day.equals(today.minusDays(1))) {
            return texts.get("moment.yesterday", time);
        }
        return texts.get("moment.day", day.format(DateTimeFormatter.ofLocalizedDate(FormatStyle.LONG).withLocale(language)), time);
    }
}
