// SPDX-License-Identifier: EPL-2.0
package garboard.report.excel.form;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Base64;
import java.util.Optional;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;

import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;

/** The record that a form was made from, packed into the cells of a hidden sheet. */
final class FormBase {

    /** Far beyond a record with all its photographs. */
    private static final int MOST_BYTES = 256 << 20;

    private FormBase() {
    }

    static void write(Workbook workbook, byte[] record) throws IOException {
        Sheet sheet = workbook.createSheet(FormGrid.BASE);
        var packed = new ByteArrayOutputStream();
        try (var zip = new GZIPOutputStream(packed)) {
            zip.write(record);
        }
        String text = Base64.getEncoder().encodeToString(packed.toByteArray());
        sheet.createRow(0).createCell(0).setCellValue(FormGrid.BASE_MARK);
        int row = 1;
        for (int from = 0; from < text.length(); from += FormGrid.BASE_CHUNK) {
            sheet.createRow(row++).createCell(0).setCellValue(text.substring(from, Math.min(text.length(), from + FormGrid.BASE_CHUNK)));
        }
        workbook.setSheetHidden(workbook.getSheetIndex(sheet), true);
    }

    /** Whether the workbook is a form at all. */
    static boolean isForm(Workbook workbook) {
        Sheet sheet = workbook.getSheet(FormGrid.BASE);
        return sheet != null && sheet.getRow(0) != null
            && CellText.of(sheet.getRow(0).getCell(0)).filter(FormGrid.BASE_MARK::equals).isPresent();
    }

    /** The packed record; empty when it is damaged. */
    static Optional<byte[]> read(Workbook workbook) {
        var text = new StringBuilder();
        Sheet sheet = workbook.getSheet(FormGrid.BASE);
        for (Row row : sheet) {
            if (row.getRowNum() > 0) {
                CellText.of(row.getCell(0)).ifPresent(text::append);
            }
        }
        try (var unzip = new GZIPInputStream(new ByteArrayInputStream(Base64.getDecoder().decode(text.toString())))) {
            byte[] record = unzip.readNBytes(MOST_BYTES + 1);
            return record.length > MOST_BYTES ? Optional.empty() : Optional.of(record);
        } catch (IOException | IllegalArgumentException damaged) {
            return Optional.empty();
        }
    }
}
