// SPDX-License-Identifier: EPL-2.0
package garboard.report.excel;

import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.OptionalInt;

import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PrintOrientation;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFPrintSetup;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;

import garboard.report.Orientation;
import garboard.report.Paper;
import garboard.report.Report;
import garboard.report.Sheet;
import garboard.report.excel.Line.Content;
import garboard.report.excel.Line.Placed;

/** Writes one laid-out sheet into the workbook. */
final class SheetWriter {

    private static final double MM_PER_INCH = 25.4;
    private static final double POINTS_PER_MM = 72 / MM_PER_INCH;
    /** Programs and printers find the page a little lower than the paper is. */
    private static final double SURE_PART_OF_PAGE = 0.97;
    /** Pixels of the widest figure of the standard font, the unit of column widths. */
    private static final int FIGURE_PX = 7;
    private static final int WIDTH_STEPS = 256;
    /** More than this and frozen rows would leave no room to scroll. */
    private static final double MOST_FROZEN_PT = 170;

    private final XSSFSheet target;
    private final Sheet sheet;
    private final SheetLayout layout;
    private final Report report;
    private final Common common;

    SheetWriter(XSSFSheet target, Sheet sheet, Report report, Common common) {
        this.target = target;
        this.sheet = sheet;
        this.report = report;
        this.common = common;
        this.layout = SheetLayout.of(sheet, report);
    }

    SheetLayout layout() {
        return layout;
    }

    void write() {
        for (int column = 0; column < layout.grid().columns(); column++) {
            target.setColumnWidth(column, Math.round(layout.grid().widthPx(column) * (float) WIDTH_STEPS / FIGURE_PX));
        }
        for (int index = 0; index < layout.lines().size(); index++) {
            writeLine(layout.lines().get(index), index);
        }
        setUpPage();
    }

    private void writeLine(Line line, int index) {
        XSSFRow row = target.createRow(index);
        row.setHeightInPoints((float) line.heightPt());
        for (Placed placed : line.cells()) {
            XSSFCell cell = row.createCell(placed.span().first());
            boolean textOnly = placed.content() instanceof Content.Words words && looksLikeFormula(words.text());
            XSSFCellStyle style = common.styles().of(placed.look(), textOnly);
            cell.setCellStyle(style);
            fill(cell, placed.content());
            if (placed.span().last() > placed.span().first()) {
                for (int column = placed.span().first() + 1; column <= placed.span().last() && placed.look().hasGround(); column++) {
                    row.createCell(column).setCellStyle(style); // lines and ground of a merged cell are those of every cell in it
                }
                target.addMergedRegionUnsafe(new CellRangeAddress(index, index, placed.span().first(), placed.span().last()));
            }
        }
    }

    private void fill(XSSFCell cell, Content content) {
        switch (content) {
            case Content.Nothing nothing -> {
                // ground and lines only
            }
            case Content.Words words -> common.texts().put(cell, words.text());
            case Content.Figure figure -> cell.setCellValue(figure.value());
            case Content.Date date -> cell.setCellValue(date.day());
            case Content.Formula formula -> {
                cell.setCellFormula(formula.text());
                cell.setCellValue(formula.cached());
            }
        }
    }

    private static boolean looksLikeFormula(String text) {
        return !text.isEmpty() && "=+-@".indexOf(text.charAt(0)) >= 0;
    }

    private void setUpPage() {
        Paper paper = report.options().paper();
        XSSFPrintSetup setup = target.getPrintSetup();
        setup.setPaperSize(paper == Paper.A4 ? XSSFPrintSetup.A4_PAPERSIZE : XSSFPrintSetup.LETTER_PAPERSIZE);
        setup.setOrientation(sheet.orientation() == Orientation.PORTRAIT ? PrintOrientation.PORTRAIT : PrintOrientation.LANDSCAPE);
        target.setFitToPage(true);
        setup.setFitWidth((short) 1);
        setup.setFitHeight((short) 0);
        target.setMargin(PageMargin.LEFT, Paper.SIDE_MARGIN_MM / MM_PER_INCH);
        target.setMargin(PageMargin.RIGHT, Paper.SIDE_MARGIN_MM / MM_PER_INCH);
        target.setMargin(PageMargin.TOP, Paper.TOP_MARGIN_MM / MM_PER_INCH);
        target.setMargin(PageMargin.BOTTOM, Paper.BOTTOM_MARGIN_MM / MM_PER_INCH);
        target.setMargin(PageMargin.HEADER, 8 / MM_PER_INCH);
        target.setMargin(PageMargin.FOOTER, 8 / MM_PER_INCH);
        target.setDisplayGridlines(false);
        target.setPrintGridlines(false);
        headAndFoot();
        OptionalInt repeated = layout.repeatedLine();
        repeated.ifPresent(line -> target.setRepeatingRows(new CellRangeAddress(line, line, -1, -1)));
        repeated.ifPresent(this::freezeBelow);
        double pageHeight = paper.contentHeightMm(sheet.orientation()) * POINTS_PER_MM * SURE_PART_OF_PAGE;
        PageFlow.breaksBefore(layout.lines(), pageHeight, repeated).forEach(line -> target.setRowBreak(line - 1));
        target.getWorkbook().setPrintArea(target.getWorkbook().getSheetIndex(target), 0, layout.grid().columns() - 1, 0,
            layout.lines().size() - 1);
    }

    private void freezeBelow(int line) {
        double height = layout.lines().subList(0, line + 1).stream().mapToDouble(Line::heightPt).sum();
        if (height <= MOST_FROZEN_PT) {
            target.createFreezePane(0, line + 1);
        }
    }

    private void headAndFoot() {
        String number = report.recordNumber().isEmpty() ? "" : "Record " + report.recordNumber();
        target.getHeader().setLeft(small(number));
        target.getHeader().setRight(small(sheet.heading()));
        String printed = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm xxx", Locale.ROOT).format(report.options().printedAt());
        target.getFooter().setLeft(small("Printed " + printed + " by Garboard " + report.options().programVersion()));
        target.getFooter().setCenter(small("Certifies nothing"));
        target.getFooter().setRight("&\"" + Styles.FONT + "\"&8 &P of &N");
    }

    /** An ampersand would be taken for a code; a figure at the head would be taken for part of the size. */
    private static String small(String text) {
        return text.isEmpty() ? "" : "&\"" + Styles.FONT + "\"&8 " + text.replace("&", "&&");
    }
}
