// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.handover;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

import garboard.model.io.RecordWriteException;
import garboard.report.excel.EmbeddedRecord;
import garboard.report.excel.Progress;
import garboard.report.excel.WorkbookWriter;
import garboard.report.excel.form.FormWriter;
import garboard.session.handover.ReportSource;

/** A workbook that can be written from a copy of the record, on any thread: all of it or nothing. */
enum Workbook {

    REPORT("report") {
        @Override
        void write(ReportSource source, Path target, Progress progress) throws IOException, RecordWriteException {
            var report = source.compose();
            new WorkbookWriter().write(report, new EmbeddedRecord(source.fileName(), source.bytes()), target, progress);
        }
    },

    FORM("form") {
        @Override
        void write(ReportSource source, Path target, Progress progress) throws IOException, RecordWriteException {
            progress.at("", 0, 1);
            var out = new ByteArrayOutputStream();
            new FormWriter(source.units()).write(source.record(), out);
            if (!progress.cancelled()) {
                replace(target, out.toByteArray());
            }
        }
    };

    static final String ENDING = ".xlsx";

    private final String id;

    Workbook(String id) {
        this.id = id;
    }

    /** {@return the word under which it is known to texts and tests} */
    String id() {
        return id;
    }

    /** Writes it. What is stopped by the progress leaves nothing behind, and may end by an exception that says so. */
    abstract void write(ReportSource source, Path target, Progress progress) throws IOException, RecordWriteException;

    /** Writes beside the target first, with the permissions that any file of the person gets there, and puts it in place when it is whole. */
    private static void replace(Path target, byte[] content) throws IOException {
        Path beside = target.resolveSibling("." + target.getFileName() + ".part");
        try {
            Files.write(beside, content);
            try {
                Files.move(beside, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            } catch (AtomicMoveNotSupportedException someNetworkDrives) {
                Files.move(beside, target, StandardCopyOption.REPLACE_EXISTING);
            }
        } finally {
            Files.deleteIfExists(beside);
        }
    }

    /** {@return the name to propose for it} @param stem the name of the record without its ending */
    String fileName(String stem) {
        return stem + (this == FORM ? "-form" : "") + ENDING;
    }
}
