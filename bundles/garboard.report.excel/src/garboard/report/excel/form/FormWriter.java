// SPDX-License-Identifier: EPL-2.0
package garboard.report.excel.form;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Locale;

import org.apache.poi.ss.usermodel.IgnoredErrorType;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

import garboard.model.CustomaryUnits;
import garboard.model.Labels;
import garboard.model.io.RecordFile;
import garboard.model.io.RecordWriteException;
import garboard.quantity.UnitSystem;
import garboard.report.form.FormLayout;
import garboard.report.form.FormPart;
import garboard.report.form.FormSheet;

/** Writes the workbook that is taken on board and filled in: one sheet for each system, in the order of a walk through the boat. */
public final class FormWriter {

    private static final List<String> INSTRUCTIONS = List.of(
        "Fill in the framed cells. Leave empty what you do not know: an empty cell is 'not entered', never a pass.",
        "Beside each number stands its unit. Change the unit where you measured in another one, or write it with the number: 19 mm, 3/4 in, 38 psi. Units may be mixed freely.",
        "Where you know how well your instrument reads, write it behind the number: 38 psi ±1 psi, or 12.7 V ±0.5 %.",
        "Dates are year-month-day: 2026-05-31. Choices offer a list; pick from it.",
        "Heights are above the loaded waterline, up positive. Forward is positive from midships, starboard is positive from the centreline.",
        "Items of a list (cables, hoses, bends, loads, readings) stand side by side, each in a column under its number.",
        "What is filled in already came from the record that this form was made from. Emptying a cell removes the value from the record.",
        "Do not delete rows, hidden columns or hidden sheets: the program finds its way by them.");
    private static final List<String> CAUTIONS = List.of(
        "Carbon monoxide kills without warning: run the engine only with the exhaust leading outside and ventilation running; watch a working alarm.",
        "Petrol vapour explodes: ventilate, then sniff low in the bilge before anything electrical is switched.",
        "Mains voltage: open covers only when you are licensed to, with the set stopped and locked out and shore power unplugged.",
        "Keep hands, hair and clothing away from belts, couplings and hot exhaust. A loose hose below the waterline sinks the boat: shut the seacock first.",
        "Local codes and licensed trades decide. This form certifies nothing.");

    private final Labels labels;
    private final CustomaryUnits units;

    /** @param units in whose customary units empty fields are offered */
    public FormWriter(UnitSystem units) {
        this.labels = Labels.in(Locale.ENGLISH);
        this.units = CustomaryUnits.of(units);
    }

    /**
     * Writes the form for a record; everything that the record holds is filled in.
     *
     * @param out stays open
     */
    public void write(RecordFile base, OutputStream out) throws IOException, RecordWriteException {
        try (var workbook = new XSSFWorkbook()) {
            var looks = new FormLooks(workbook);
            var choices = new FormChoices(workbook);
            start(workbook, looks, base);
            for (FormSheet layout : FormLayout.sheets()) {
                XSSFSheet sheet = sheet(workbook, layout.name());
                var page = new FormPage(sheet, looks, choices, labels, units);
                page.title(layout.name());
                for (FormPart part : layout.parts()) {
                    page.part(part, base.record());
                }
                page.finish();
            }
            choices.hide();
            workbook.setSheetOrder(FormGrid.CHOICES, workbook.getNumberOfSheets() - 1);
            FormBase.write(workbook, base.toBytes());
            workbook.setActiveSheet(0);
            workbook.write(out);
        }
    }

    private static XSSFSheet sheet(XSSFWorkbook workbook, String name) {
        XSSFSheet sheet = workbook.createSheet(name);
        sheet.setDisplayGridlines(false);
        sheet.setFitToPage(true);
        PrintSetup print = sheet.getPrintSetup();
        print.setPaperSize(PrintSetup.A4_PAPERSIZE);
        print.setLandscape(true);
        print.setFitWidth((short) 1);
        print.setFitHeight((short) 0);
        sheet.setMargin(PageMargin.LEFT, 0.5);
        sheet.setMargin(PageMargin.RIGHT, 0.5);
        sheet.setMargin(PageMargin.TOP, 0.6);
        sheet.setMargin(PageMargin.BOTTOM, 0.7);
        sheet.getFooter().setLeft("Garboard form · " + name);
        sheet.getFooter().setRight("Page &P of &N");
        return sheet;
    }

    private static void start(XSSFWorkbook workbook, FormLooks looks, RecordFile base) {
        XSSFSheet sheet = sheet(workbook, "Start here");
        sheet.setColumnWidth(0, 4 * 256);
        sheet.setColumnWidth(1, 110 * 256);
        int row = 0;
        String title = base.record().getTitle();
        line(sheet, row++, 0, "Installation form" + (title == null || title.isBlank() ? "" : " · " + title), looks.title, 24);
        row = section(sheet, row + 1, "Before you start", CAUTIONS, looks);
        section(sheet, row + 1, "How to fill this in", INSTRUCTIONS, looks);
    }

    private static int section(XSSFSheet sheet, int from, String heading, List<String> lines, FormLooks looks) {
        int row = from;
        line(sheet, row, 0, heading, looks.heading, 20);
        sheet.getRow(row).createCell(1).setCellStyle(looks.heading);
        row++;
        for (String text : lines) {
            line(sheet, row, 1, text, looks.prose, text.length() > 105 ? 32 : 17);
            row++;
        }
        return row;
    }

    private static void line(XSSFSheet sheet, int row, int column, String text, org.apache.poi.ss.usermodel.CellStyle style, int points) {
        var made = sheet.getRow(row) == null ? sheet.createRow(row) : sheet.getRow(row);
        made.setHeightInPoints(points);
        var cell = made.createCell(column);
        cell.setCellValue(text);
        cell.setCellStyle(style);
    }

    /** Numbers are kept as a person wrote them, in cells of text; a spreadsheet program need not point that out. */
    static void quiet(XSSFSheet sheet, int lastRow) {
        sheet.addIgnoredErrors(new CellRangeAddress(0, lastRow, FormGrid.VALUE, FormGrid.HOW - 1), IgnoredErrorType.NUMBER_STORED_AS_TEXT);
    }
}
