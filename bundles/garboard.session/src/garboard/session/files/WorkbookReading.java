// SPDX-License-Identifier: EPL-2.0
package garboard.session.files;

import java.nio.file.Path;

import garboard.model.io.RecordFile;

/** Takes the record out of a workbook that somebody sent: a report, or a filled form. */
public interface WorkbookReading {

    /**
     * {@return the record in a workbook}
     *
     * @throws UnreadableException when there is none, or it cannot be read
     */
    RecordFile read(Path workbook) throws UnreadableException;
}
