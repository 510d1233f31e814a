// SPDX-License-Identifier: EPL-2.0
package garboard.console;

import java.io.PrintStream;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;

/**
 * What a command talks to; tests put their own in place.
 *
 * @param out results
 * @param err progress and complaints
 * @param folder the folder that relative paths start from
 * @param clock the day and the time printed on reports
 */
record Terminal(PrintStream out, PrintStream err, Path folder, Clock clock) {

    /** An absolute path from what a person typed. */
    Path resolve(Path typed) {
        return folder.resolve(typed).normalize();
    }

    LocalDate today() {
        return LocalDate.now(clock);
    }
}
