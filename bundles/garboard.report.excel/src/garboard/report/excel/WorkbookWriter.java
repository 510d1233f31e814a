// SPDX-License-Identifier: EPL-2.0
package garboard.report.excel;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.ZonedDateTime;
import java.util.Date;
import java.util.Optional;
import java.util.concurrent.CancellationException;

import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbookType;

import garboard.report.Report;
import garboard.report.Sheet;

/**
 * Writes a report as an Excel workbook that carries its record inside. The same report becomes the same bytes. Stateless; one may be
 * used by several threads.
 */
public final class WorkbookWriter {

    /**
     * Writes to a file: all of it or nothing. An older file of that name stays as it is until the new one is complete.
     *
     * @throws WorkbookWriteException when the file cannot be written
     * @throws CancellationException when {@code progress} asks to stop; nothing is left behind
     */
    public void write(Report report, EmbeddedRecord record, Path target, Progress progress) throws WorkbookWriteException {
        Path whole = target.toAbsolutePath();
        Path beside = whole.resolveSibling("." + whole.getFileName() + ".part");
        try {
            try (var channel = FileChannel.open(beside, StandardOpenOption.CREATE, StandardOpenOption.TRUNCATE_EXISTING,
                    StandardOpenOption.WRITE);
                    OutputStream out = Channels.newOutputStream(channel)) {
                write(report, record, out, progress);
                channel.force(true);
            }
            replace(beside, whole);
        } catch (IOException failed) {
            throw new WorkbookWriteException("The workbook " + target + " cannot be written: " + IoReason.of(failed), failed);
        } finally {
            remove(beside);
        }
    }

    /**
     * Writes to a stream, which stays open.
     *
     * @throws CancellationException when {@code progress} asks to stop
     */
    public void write(Report report, EmbeddedRecord record, OutputStream target, Progress progress) throws IOException {
        try (var workbook = new XSSFWorkbook(XSSFWorkbookType.XLSX)) {
            workbook.setCellFormulaValidation(false); // ours are made, not typed
            Common common = Common.of(workbook);
            int total = report.sheets().size() + 1;
            int done = 0;
            for (Sheet sheet : report.sheets()) {
                goOn(progress, sheet.name(), done, total);
                writeSheet(workbook.createSheet(sheet.name()), sheet, report, common, progress);
                done++;
            }
            goOn(progress, "Record", done, total);
            Enclosures.encloseRecord(workbook, record);
            Enclosures.encloseVerdicts(workbook, report.verdicts(), report.options().printedAt().toOffsetDateTime().toString());
            properties(workbook, report);
            save(workbook, target, report.options().printedAt());
            progress.at("Done", total, total);
        }
    }

    private static void writeSheet(XSSFSheet target, Sheet sheet, Report report, Common common, Progress progress) {
        var writer = new SheetWriter(target, sheet, report, common);
        writer.write();
        var pictures = new PictureWriter(target, writer.layout());
        for (SheetLayout.Drawn drawn : writer.layout().drawings()) {
            stopIfCancelled(progress);
            pictures.draw(drawn);
        }
        for (SheetLayout.Photos photographs : writer.layout().photographs()) {
            stopIfCancelled(progress);
            pictures.show(photographs);
        }
        for (SheetLayout.Charted chart : writer.layout().charts()) {
            stopIfCancelled(progress);
            new ChartWriter(target, writer.layout()).draw(chart);
        }
    }

    private static void properties(XSSFWorkbook workbook, Report report) {
        String program = "Garboard " + report.options().programVersion();
        POIXMLProperties properties = workbook.getProperties();
        properties.getExtendedProperties().getUnderlyingProperties().setApplication("Garboard");
        POIXMLProperties.CoreProperties core = properties.getCoreProperties();
        core.setTitle(report.title());
        core.setSubjectProperty(report.subject());
        core.setIdentifier(report.recordNumber());
        core.setCreator(program);
        core.setLastModifiedByUser(program);
        var printedAt = Optional.of(Date.from(report.options().printedAt().toInstant()));
        core.setCreated(printedAt);
        core.setModified(printedAt);
    }

    private static void save(XSSFWorkbook workbook, OutputStream target, ZonedDateTime printedAt) throws IOException {
        var zip = new FixedTimeZip(new Unclosed(target), printedAt.toLocalDateTime());
        workbook.write(zip);
        zip.close();
    }

    private static void goOn(Progress progress, String what, int done, int total) {
        stopIfCancelled(progress);
        progress.at(what, done, total);
    }

    private static void stopIfCancelled(Progress progress) {
        if (progress.cancelled()) {
            throw new CancellationException("The writing of the workbook was stopped");
        }
    }

    private static void replace(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException someNetworkDrives) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private static void remove(Path leftover) {
        try {
            Files.deleteIfExists(leftover);
        } catch (IOException beyondHelp) {
            // the failure that left it is on its way to the caller
        }
    }
}
