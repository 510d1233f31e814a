// SPDX-License-Identifier: EPL-2.0
package garboard.session.files;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;

/**
 * A record that was open, as it was then.
 *
 * @param vessel its name, empty when none was entered
 * @param set what the set is, empty when nothing was entered
 * @param when it was opened or saved last
 */
public record RecentRecord(Path file, String vessel, String set, Instant when) {

    /** {@return whether the file is still there} */
    public boolean there() {
        return Files.isRegularFile(file);
    }
}
