// SPDX-License-Identifier: EPL-2.0
package garboard.report.excel.form;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.apache.poi.UnsupportedFileFormatException;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.openxml4j.exceptions.OpenXML4JRuntimeException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackageAccess;
import org.apache.poi.ooxml.POIXMLException;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

import garboard.model.Labels;
import garboard.model.io.RecordFile;
import garboard.model.io.RecordReadException;

/**
 * Takes a filled form back: the record that it was made from, with every field as the form says. All mistakes are collected; with a
 * single one nothing is handed out.
 */
public final class FormReader {

    /** Stands in a cell for a text that no cell can hold. */
    static final String TOO_LONG = "(too long for a cell; kept as it is)";

    private static final long LARGEST_FILE = 256L << 20;

    private final Labels labels = Labels.in(Locale.ENGLISH);

    /** Whether a workbook is a form. */
    public boolean isForm(Path file) throws FormReadException {
        try (XSSFWorkbook workbook = open(file)) {
            return FormBase.isForm(workbook);
        } catch (IOException failed) {
            throw refused(file, failed);
        }
    }

    /**
     * Reads a filled form.
     *
     * @throws FormReadException when the file is no form or is damaged, or with every mistake in it
     */
    public RecordFile read(Path file) throws FormReadException {
        try (XSSFWorkbook workbook = open(file)) {
            if (!FormBase.isForm(workbook)) {
                throw new FormReadException("The workbook " + file + " is not a Garboard form.");
            }
            byte[] bytes = FormBase.read(workbook)
                .orElseThrow(() -> new FormReadException("The hidden record in the form " + file + " is damaged; make a new form and copy the entries over."));
            RecordFile base = RecordFile.read(new ByteArrayInputStream(bytes), "the record in the form " + file);
            var mistakes = new ArrayList<FormMistake>();
            var entries = new FormEntries(base.record(), labels, mistakes);
            for (Sheet sheet : workbook) {
                if (!sheet.getSheetName().equals(FormGrid.BASE) && !sheet.getSheetName().equals(FormGrid.CHOICES)) {
                    read(sheet, entries);
                }
            }
            entries.takeOver();
            if (!mistakes.isEmpty()) {
                throw new FormReadException(mistakes);
            }
            base.items().assign();
            return base;
        } catch (RecordReadException damaged) {
            throw new FormReadException(damaged.getMessage(), damaged);
        } catch (IOException failed) {
            throw refused(file, failed);
        }
    }

    private static void read(Sheet sheet, FormEntries entries) {
        entries.nextSheet();
        for (Row row : sheet) {
            Optional<String> key = CellText.of(row.getCell(FormGrid.KEY));
            if (key.isPresent()) {
                entries.row(row, key.get());
            }
        }
    }

    private static XSSFWorkbook open(Path file) throws FormReadException, IOException {
        if (Files.isDirectory(file)) {
            throw new FormReadException("The workbook " + file + " cannot be read: it is a folder.");
        }
        if (Files.notExists(file)) {
            throw new FormReadException("The workbook " + file + " does not exist.");
        }
        if (Files.size(file) > LARGEST_FILE) {
            throw new FormReadException("The workbook " + file + " is larger than any form can be.");
        }
        try {
            return new XSSFWorkbook(OPCPackage.open(file.toFile(), PackageAccess.READ));
        } catch (InvalidFormatException | UnsupportedFileFormatException | OpenXML4JRuntimeException | POIXMLException noWorkbook) {
            throw new FormReadException("The file " + file + " is no Excel workbook (.xlsx), or it was cut short.", noWorkbook);
        } catch (RuntimeException unreadable) {
            // The library meets damaged files with all sorts of exceptions; none of them may reach a person as a stack trace.
            throw new FormReadException("The workbook " + file + " is damaged and cannot be read.", unreadable);
        }
    }

    private static FormReadException refused(Path file, IOException failed) {
        return new FormReadException("The workbook " + file + " cannot be read: it is damaged or cut short.", failed);
    }

    static List<String> lines(String text) {
        return text.lines().map(String::strip).filter(line -> !line.isEmpty()).toList();
    }
}
