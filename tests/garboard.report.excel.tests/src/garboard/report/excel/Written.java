// SPDX-License-Identifier: EPL-2.0
package garboard.report.excel;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

import garboard.report.Report;

/** Writes reports and finds things in the workbook again by what a reader sees. */
final class Written {

    private Written() {
    }

    static byte[] bytes(Report report) throws IOException {
        var out = new ByteArrayOutputStream();
        new WorkbookWriter().write(report, HandMade.RECORD, out, Progress.none());
        return out.toByteArray();
    }

    static XSSFWorkbook workbook(Report report) throws IOException {
        return new XSSFWorkbook(new ByteArrayInputStream(bytes(report)));
    }

    static List<XSSFCell> cells(XSSFSheet sheet) {
        var cells = new ArrayList<XSSFCell>();
        sheet.forEach(row -> row.forEach(cell -> cells.add((XSSFCell) cell)));
        return cells;
    }

    static XSSFCell cell(XSSFSheet sheet, String text) {
        return cells(sheet).stream().filter(cell -> cell.getCellType() == CellType.STRING && cell.getStringCellValue().equals(text)).findFirst()
            .orElseThrow(() -> new AssertionError("Nothing says \"" + text + "\" on " + sheet.getSheetName()));
    }

    /** The cell in the row of one text and the column of another. */
    static XSSFCell cell(XSSFSheet sheet, String rowText, String columnTitle) {
        return sheet.getRow(cell(sheet, rowText).getRowIndex()).getCell(cell(sheet, columnTitle).getColumnIndex());
    }
}
