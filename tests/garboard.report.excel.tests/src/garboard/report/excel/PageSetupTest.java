// SPDX-License-Identifier: EPL-2.0
package garboard.report.excel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.io.IOException;
import java.util.ArrayList;
import java.util.stream.IntStream;

import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;

import garboard.report.Block;
import garboard.report.Cell;
import garboard.report.Paper;
import garboard.report.Table;

class PageSetupTest {

    @Test
    void fitsTheWidthOfThePaper() throws IOException {
        try (XSSFWorkbook workbook = Written.workbook(HandMade.everything())) {
            XSSFSheet upright = workbook.getSheet("First");
            assertThat(upright.getPrintSetup().getPaperSize()).isEqualTo(PrintSetup.A4_PAPERSIZE);
            assertThat(upright.getPrintSetup().getLandscape()).isFalse();
            assertThat(upright.getFitToPage()).isTrue();
            assertThat(upright.getPrintSetup().getFitWidth()).isEqualTo((short) 1);
            assertThat(upright.getPrintSetup().getFitHeight()).isZero();
            assertThat(workbook.getSheet("Picture").getPrintSetup().getLandscape()).isTrue();
            double printable = (210 - (upright.getMargin(PageMargin.LEFT) + upright.getMargin(PageMargin.RIGHT)) * 25.4); // ISO 216: A4 is 210 mm wide
            assertThat(widthMm(workbook, "First")).isLessThan(printable).isGreaterThan(printable * 0.97);
        }
    }

    @Test
    void everySheetIsAsWideAsTheOthers() throws IOException {
        try (XSSFWorkbook workbook = Written.workbook(HandMade.everything())) {
            double halfAStepPerColumn = 8 * 0.5 / 256 * 7 / 96 * 25.4;
            assertThat(widthMm(workbook, "First")).isCloseTo(widthMm(workbook, "Margins"), offset(halfAStepPerColumn))
                .isCloseTo(widthMm(workbook, "Plan"), offset(halfAStepPerColumn));
        }
    }

    @Test
    void usesLetterPaperWhenAsked() throws IOException {
        try (XSSFWorkbook workbook = Written.workbook(HandMade.of(Paper.LETTER, HandMade.upright("Plan", HandMade.plan())))) {
            XSSFSheet sheet = workbook.getSheet("Plan");
            assertThat(sheet.getPrintSetup().getPaperSize()).isEqualTo(PrintSetup.LETTER_PAPERSIZE);
            double printable = 8.5 * 25.4 - (sheet.getMargin(PageMargin.LEFT) + sheet.getMargin(PageMargin.RIGHT)) * 25.4; // US letter is 8.5 in wide
            assertThat(widthMm(workbook, "Plan")).isLessThan(printable).isGreaterThan(printable * 0.97);
        }
    }

    /** What is printed across. Seven pixels of 1/96 in to the character, of which a width unit is 1/256. */
    private static double widthMm(XSSFWorkbook workbook, String name) {
        XSSFSheet sheet = workbook.getSheet(name);
        return IntStream.rangeClosed(0, printed(workbook, sheet).getLastColumn()).map(sheet::getColumnWidth).sum() / 256.0 * 7 / 96 * 25.4;
    }

    private static CellRangeAddress printed(XSSFWorkbook workbook, XSSFSheet sheet) {
        String area = workbook.getPrintArea(workbook.getSheetIndex(sheet));
        return CellRangeAddress.valueOf(area.substring(area.indexOf('!') + 1));
    }

    @Test
    void repeatsAndFreezesTheHeadOfALongTable() throws IOException {
        try (XSSFWorkbook workbook = Written.workbook(HandMade.everything())) {
            XSSFSheet sheet = workbook.getSheet("Margins");
            int head = Written.cell(sheet, "Measured").getRowIndex();
            assertThat(sheet.getRepeatingRows().getFirstRow()).isEqualTo(head);
            assertThat(sheet.getRepeatingRows().getLastRow()).isEqualTo(head);
            assertThat((int) sheet.getPaneInformation().getHorizontalSplitPosition()).isEqualTo(head + 1);
            assertThat(workbook.getSheet("Plan").getRepeatingRows()).isNull();
        }
    }

    @Test
    void printsEverythingThatIsWritten() throws IOException {
        try (XSSFWorkbook workbook = Written.workbook(HandMade.everything())) {
            XSSFSheet sheet = workbook.getSheet("Margins");
            CellRangeAddress range = printed(workbook, sheet);
            assertThat(range.isInRange(Written.cell(sheet, "Nothing"))).isTrue();
            assertThat(range.isInRange(Written.cell(sheet, "Margin %"))).isTrue();
            assertThat(range.getFirstRow()).isZero();
        }
    }

    @Test
    void headAndFootTellRecordTimeAndPage() throws IOException {
        try (XSSFWorkbook workbook = Written.workbook(HandMade.everything())) {
            XSSFSheet sheet = workbook.getSheet("Margins");
            assertThat(sheet.getHeader().getLeft()).endsWith("Record GB-1 && A"); // a single ampersand would be a code
            assertThat(sheet.getFooter().getRight()).endsWith("&P of &N");
            assertThat(sheet.getFooter().getLeft()).contains("2031-05-04 16:20").contains("Garboard 0.1.0");
        }
    }

    @Test
    void keepsASmallTableOnOnePage() throws IOException {
        var tables = new ArrayList<Block>();
        for (int number = 0; number < 40; number++) {
            tables.add(Table.of(Table.text("a", "", 91), Table.text("b", "", 91)).group("Table " + number)
                .row(Cell.text("row"), Cell.text("one\ntwo")).row(Cell.text("row"), Cell.text("one")).row(Cell.text("row"), Cell.text("one")).build());
        }
        try (XSSFWorkbook workbook = Written.workbook(HandMade.of(HandMade.upright("Small", tables.toArray(Block[]::new))))) {
            XSSFSheet sheet = workbook.getSheet("Small");
            assertThat(sheet.getRowBreaks()).isNotEmpty();
            for (int last : sheet.getRowBreaks()) {
                var first = sheet.getRow(last + 1).getCell(0); // the heading of a table, or the gap before it
                assertThat(first == null ? "" : first.getStringCellValue()).isNotEqualTo("row");
            }
        }
    }

    @Test
    void breaksPagesBetweenRowsAndKeepsAGroupHeadingWithItsFirstRow() throws IOException {
        var table = Table.of(Table.text("a", "A", 91), Table.text("b", "B", 91)).repeated();
        for (int group = 0; group < 60; group++) {
            table.group("Group " + group).row(Cell.text("row"), Cell.text("one\ntwo\nthree"));
        }
        try (XSSFWorkbook workbook = Written.workbook(HandMade.of(HandMade.upright("Long", table.build())))) {
            XSSFSheet sheet = workbook.getSheet("Long");
            assertThat(sheet.getRowBreaks()).isNotEmpty();
            for (int last : sheet.getRowBreaks()) {
                assertThat(sheet.getRow(last).getCell(0).getStringCellValue()).isEqualTo("row");
                assertThat(sheet.getRow(last + 1).getCell(0).getStringCellValue()).startsWith("Group");
            }
            double pageHeight = 297 - 18 - 16; // ISO 216: A4 is 297 mm high; the margins of the report
            double first = IntStream.rangeClosed(0, sheet.getRowBreaks()[0]).mapToDouble(row -> sheet.getRow(row).getHeightInPoints()).sum();
            assertThat(first / 72 * 25.4).isLessThan(pageHeight).isGreaterThan(pageHeight * 0.85);
        }
    }
}
