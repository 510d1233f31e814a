// SPDX-License-Identifier: EPL-2.0
package garboard.session.journal;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;

import garboard.model.io.RecordFile;
import garboard.session.files.FileStamp;

/**
 * An open record at one moment.
 *
 * @param content a copy that nobody edits
 * @param file where the record belongs, when it was ever saved
 * @param stamp what that file was like when it was read or written last
 * @param name what the record is called, empty when it has no name yet
 */
record Snapshot(RecordFile content, Optional<Path> file, Optional<FileStamp> stamp, String name, Instant when) {
}
