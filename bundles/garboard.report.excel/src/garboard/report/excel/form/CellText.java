// SPDX-License-Identifier: EPL-2.0
package garboard.report.excel.form;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;

import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DateUtil;

/** What stands in a cell, as the text that a person sees there. */
final class CellText {

    private CellText() {
    }

    /** Empty for a missing or blank cell. A formula counts with its last result. */
    static Optional<String> of(Cell cell) {
        if (cell == null) {
            return Optional.empty();
        }
        CellType type = cell.getCellType() == CellType.FORMULA ? cell.getCachedFormulaResultType() : cell.getCellType();
        String text = switch (type) {
            case STRING -> cell.getStringCellValue();
            case NUMERIC -> DateUtil.isCellDateFormatted(cell) ? date(cell) : number(cell.getNumericCellValue());
            case BOOLEAN -> cell.getBooleanCellValue() ? "yes" : "no";
            case ERROR -> "#error";
            default -> "";
        };
        return text.isBlank() ? Optional.empty() : Optional.of(text);
    }

    private static String date(Cell cell) {
        LocalDate date = cell.getLocalDateTimeCellValue().toLocalDate();
        return date.toString();
    }

    /** The shortest decimal that is this number, without an exponent where a person would not write one. */
    static String number(double value) {
        var decimal = new BigDecimal(Double.toString(value)).stripTrailingZeros();
        return Math.abs(decimal.scale()) > 15 ? decimal.toString() : decimal.toPlainString();
    }

    /** Letters as the file format carries them: a line break is a line feed. */
    static String normal(String text) {
        return text.replace("\r\n", "\n").replace('\r', '\n');
    }

    /**
     * Text for a cell: what looks like an escape of the file format (an underscore, x, four hexadecimal digits, an underscore)
     * is escaped itself, or it would come back as the character that it names.
     */
    static String escaped(String text) {
        return text.replaceAll("_(?=x[0-9A-Fa-f]{4}_)", "_x005F_");
    }
}
