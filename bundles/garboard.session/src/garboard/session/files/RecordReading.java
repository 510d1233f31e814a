// SPDX-License-Identifier: EPL-2.0
package garboard.session.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import garboard.model.io.RecordFile;
import garboard.model.io.RecordReadException;
import garboard.session.files.UnreadableException.Fault;

/** Reads whatever a person opens: a record's own file or a workbook. What it is shows in its first bytes; the ending of a name can be wrong. */
public final class RecordReading {

    private static final int BEGINNING = 100;

    private final WorkbookReading workbooks;

    public RecordReading(WorkbookReading workbooks) {
        this.workbooks = workbooks;
    }

    /** What was read. @param ownFile whether the record can be saved where it came from */
    public record Read(RecordFile content, boolean ownFile) {
    }

    /** @throws UnreadableException when there is no record in it */
    public Read read(Path file) throws UnreadableException {
        String beginning = beginning(file);
        if (beginning.startsWith("PK")) {
            return new Read(workbooks.read(file), false);
        }
        if (!beginning.stripLeading().startsWith("<")) {
            throw fault(Fault.FOREIGN, file);
        }
        try {
            return new Read(RecordFile.open(file), true);
        } catch (RecordReadException refused) {
            throw new UnreadableException(Fault.DAMAGED, file, List.of(refused.getMessage()), refused);
        }
    }

    private static String beginning(Path file) throws UnreadableException {
        if (Files.isDirectory(file)) {
            throw fault(Fault.FOLDER, file);
        }
        if (Files.notExists(file)) {
            throw fault(Fault.GONE, file);
        }
        try (InputStream in = Files.newInputStream(file)) {
            String beginning = new String(in.readNBytes(BEGINNING), StandardCharsets.UTF_8);
            if (beginning.isEmpty()) {
                throw fault(Fault.EMPTY, file);
            }
            return beginning.replace("\uFEFF", "");
        } catch (IOException denied) {
            throw new UnreadableException(Fault.FORBIDDEN, file, List.of(String.valueOf(denied.getMessage())), denied);
        }
    }

    private static UnreadableException fault(Fault fault, Path file) {
        return new UnreadableException(fault, file, List.of(), null);
    }
}
