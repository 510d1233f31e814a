// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.shell;

import java.nio.file.Path;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;

import garboard.workbench.Desk;

/** What is said quietly after a record was saved. */
public final class Saved {

    private Saved() {
    }

    /** {@return where and when} */
    public static String words(Desk desk) {
        Path file = desk.open().orElseThrow().file().orElseThrow();
        String time = LocalTime.now(desk.clock()).format(DateTimeFormatter.ofLocalizedTime(FormatStyle.SHORT).withLocale(desk.texts().locale()));
        return desk.texts(Saved.class).get("saved", file.getFileName(), file.getParent(), time);
    }
}
