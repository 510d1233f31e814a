// SPDX-License-Identifier: EPL-2.0
package garboard.console;

import java.io.ByteArrayInputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

import garboard.model.Labels;
import garboard.model.RecordPath;
import garboard.model.UnreadEntry;
import garboard.model.io.RecordFile;
import garboard.model.io.RecordReadException;
import garboard.report.excel.EmbeddedRecord;
import garboard.report.excel.WorkbookReadException;
import garboard.report.excel.WorkbookReader;

/** Opens what a person names as a record. */
final class RecordInput {

    private RecordInput() {
    }

    /** A record's own file, or a report workbook that carries one. */
    static RecordFile open(Terminal terminal, Path typed) throws CommandFailure {
        Path file = terminal.resolve(typed);
        if (Files.notExists(file)) {
            throw new CommandFailure("There is no file " + typed);
        }
        try {
            RecordFile record = isWorkbook(file) ? fromWorkbook(file) : RecordFile.open(file);
            record.notes().forEach(note -> terminal.err().println("garboard: note: " + note));
            record.record().getUnreadEntries().forEach(entry -> terminal.err().println("garboard: note: " + unread(record, entry)));
            return record;
        } catch (RecordReadException | WorkbookReadException wrong) {
            throw new CommandFailure(wrong.getMessage(), wrong);
        }
    }

    /** What was typed in the window and is no value: to the checks it is as if nothing were entered, so a reader must hear of it. */
    private static String unread(RecordFile file, UnreadEntry entry) {
        String key = String.valueOf(entry.getPlace());
        String place = RecordPath.resolve(file.record(), key)
            .map(found -> RecordPath.words(found.owner(), found.feature(), Labels.in(Locale.ENGLISH))).orElse(key);
        return place + ": \"" + entry.getText() + "\" was typed and could not be read; it counts as not entered";
    }

    /** The record that a report workbook carries. */
    static RecordFile fromWorkbook(Path file) throws RecordReadException, WorkbookReadException {
        EmbeddedRecord embedded = new WorkbookReader().readEnclosedFile(file);
        return RecordFile.read(new ByteArrayInputStream(embedded.bytes()), embedded.fileName() + " in " + file.getFileName());
    }

    static boolean isWorkbook(Path file) {
        return file.toString().toLowerCase(Locale.ROOT).endsWith(".xlsx");
    }

    /** The name of a file without its ending. */
    static String stem(Path file) {
        String name = file.getFileName().toString();
        int dot = name.lastIndexOf('.');
        return dot > 0 ? name.substring(0, dot) : name;
    }
}
