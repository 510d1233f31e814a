// SPDX-License-Identifier: EPL-2.0
package garboard.session.journal;

import java.time.DateTimeException;
import java.time.Instant;
import java.util.Optional;
import java.util.Properties;

import garboard.session.files.FileStamp;

/** The stamp of a file among the properties of an entry. */
final class StampText {

    private StampText() {
    }

    static void put(FileStamp stamp, Properties into) {
        into.setProperty("file.size", Long.toString(stamp.size()));
        into.setProperty("file.modified", stamp.modified().toString());
        into.setProperty("file.sha256", stamp.sha256());
    }

    static Optional<FileStamp> from(Properties about) {
        try {
            return Optional.of(new FileStamp(Long.parseLong(about.getProperty("file.size", "")),
                Instant.parse(about.getProperty("file.modified", "")), about.getProperty("file.sha256", "")));
        } catch (NumberFormatException | DateTimeException none) {
            return Optional.empty();
        }
    }
}
