// SPDX-License-Identifier: EPL-2.0
package garboard.report.excel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;

import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFFormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import garboard.report.Block;
import garboard.report.Cell;
import garboard.report.Sheet;
import garboard.report.Table;

class WorkbookWriterTest {

    @Test
    void writesTheSheetsInOrder() throws IOException {
        try (XSSFWorkbook workbook = Written.workbook(HandMade.everything())) {
            assertThat(workbook).extracting(sheet -> sheet.getSheetName()).containsExactly("First", "Margins", "Plan", "Picture");
        }
    }

    @Test
    void formulasComeToWhatTheyShow() throws IOException {
        try (XSSFWorkbook workbook = Written.workbook(HandMade.everything())) {
            var evaluator = new XSSFFormulaEvaluator(workbook);
            int formulas = 0;
            for (var sheet : workbook) {
                for (XSSFCell cell : Written.cells((XSSFSheet) sheet)) {
                    if (cell.getCellType() == CellType.FORMULA) {
                        double shown = cell.getNumericCellValue();
                        assertThat(evaluator.evaluate(cell).getNumberValue()).as(cell.getCellFormula()).isCloseTo(shown, offset(1e-12));
                        formulas++;
                    }
                }
            }
            assertThat(formulas).isEqualTo(13); // 3 reactive, 3 + 2 totals; 4 margins; 1 due day
        }
    }

    @Test
    void marginIsALiveFormulaOnTheCellsBesideIt() throws IOException {
        try (XSSFWorkbook workbook = Written.workbook(HandMade.everything())) {
            XSSFSheet sheet = workbook.getSheet("Margins");
            XSSFCell measured = Written.cell(sheet, "Seat", "Measured");
            XSSFCell margin = Written.cell(sheet, "Seat", "Margin");
            assertThat(margin.getNumericCellValue()).isEqualTo(-79.75); // 420.25 - 500
            measured.setCellValue(510);
            assertThat(new XSSFFormulaEvaluator(workbook).evaluate(margin).getNumberValue()).isEqualTo(10);
        }
    }

    @Test
    void dueDayKeepsToTheEndOfTheMonth() throws IOException {
        try (XSSFWorkbook workbook = Written.workbook(HandMade.everything())) {
            XSSFSheet sheet = workbook.getSheet("Plan");
            XSSFCell due = Written.cell(sheet, "Impeller", "Due");
            assertThat(due.getLocalDateTimeCellValue()).isEqualTo(LocalDateTime.of(2032, 2, 29, 0, 0)); // 13 months behind 2031-01-31, a leap year
            assertThat(Written.cell(sheet, "Oil", "Due").getCellType()).isEqualTo(CellType.BLANK);
        }
    }

    @Test
    void userTextNeverBecomesAFormula() throws IOException {
        String[] texts = {"=1+1", "+49 123", "-Negative return", "@SUM(A1)", "=cmd|' /C calc'!A0", "\t=1+1"};
        var table = Table.of(Table.text("text", "Text", 182));
        for (String text : texts) {
            table.row(Cell.text(text));
        }
        try (XSSFWorkbook workbook = Written.workbook(HandMade.of(HandMade.upright("Texts", table.build(), Block.body("=2+2"))))) {
            XSSFSheet sheet = workbook.getSheet("Texts");
            for (String text : texts) {
                assertThat(Written.cell(sheet, text).getCellType()).isEqualTo(CellType.STRING);
            }
            assertThat(Written.cell(sheet, "=1+1").getCellStyle().getQuotePrefixed()).isTrue();
            assertThat(Written.cell(sheet, "-Negative return").getCellStyle().getQuotePrefixed()).isTrue();
            assertThat(Written.cell(sheet, "=2+2").getCellStyle().getQuotePrefixed()).isTrue();
            assertThat(Written.cells(sheet)).noneMatch(cell -> cell.getCellType() == CellType.FORMULA);
        }
    }

    @Test
    void standingIsAWordNotAColour() throws IOException {
        try (XSSFWorkbook workbook = Written.workbook(HandMade.everything())) {
            XSSFSheet sheet = workbook.getSheet("Margins");
            assertThat(Written.cell(sheet, "Seat", "Standing").getStringCellValue()).isEqualTo("✗ falls short");
            assertThat(Written.cell(sheet, "Nothing", "Standing").getStringCellValue()).isEqualTo("? cannot tell");
        }
    }

    @Test
    void sameReportBecomesTheSameBytes() throws IOException {
        assertThat(Written.bytes(HandMade.everything())).isEqualTo(Written.bytes(HandMade.everything()));
    }

    @Test
    void replacesAnOlderFileInOneStep(@TempDir Path folder) throws IOException {
        Path target = folder.resolve("report.xlsx");
        Files.writeString(target, "older");
        new WorkbookWriter().write(HandMade.everything(), HandMade.RECORD, target, Progress.none());
        assertThat(Files.readAllBytes(target)).isEqualTo(Written.bytes(HandMade.everything()));
        try (var left = Files.list(folder)) {
            assertThat(left).containsExactly(target);
        }
    }

    @Test
    void targetThatCannotBeWrittenIsToldInOneSentence(@TempDir Path folder) throws IOException {
        Path nowhere = folder.resolve("no such folder").resolve("report.xlsx");
        assertThatThrownBy(() -> new WorkbookWriter().write(HandMade.everything(), HandMade.RECORD, nowhere, Progress.none()))
            .isInstanceOf(WorkbookWriteException.class).hasMessageContaining(nowhere.toString()).hasMessageContaining("no such file or folder");
        Path folderInTheWay = Files.createDirectories(folder.resolve("report.xlsx").resolve("inside")).getParent();
        assertThatThrownBy(() -> new WorkbookWriter().write(HandMade.everything(), HandMade.RECORD, folderInTheWay, Progress.none()))
            .isInstanceOf(WorkbookWriteException.class).hasMessageStartingWith("The workbook " + folderInTheWay + " cannot be written");
        try (var left = Files.list(folder)) {
            assertThat(left).containsExactly(folderInTheWay);
        }
    }

    @Test
    void cancelledWritingLeavesNothingBehind(@TempDir Path folder) throws IOException {
        Path target = folder.resolve("report.xlsx");
        Files.writeString(target, "older");
        var stopAtThird = new Progress() {
            private int asked;

            @Override
            public void at(String what, int done, int total) {
                // counts only what it is asked
            }

            @Override
            public boolean cancelled() {
                return ++asked > 2;
            }
        };
        assertThatThrownBy(() -> new WorkbookWriter().write(HandMade.everything(), HandMade.RECORD, target, stopAtThird))
            .isInstanceOf(CancellationException.class);
        assertThat(target).hasContent("older");
        try (var left = Files.list(folder)) {
            assertThat(left).containsExactly(target);
        }
    }

    @Test
    void tellsHowFarItIs() throws IOException {
        List<String> told = new ArrayList<>();
        new WorkbookWriter().write(HandMade.everything(), HandMade.RECORD, new java.io.ByteArrayOutputStream(), new Progress() {
            @Override
            public void at(String what, int done, int total) {
                told.add(what + " " + done + "/" + total);
            }

            @Override
            public boolean cancelled() {
                return false;
            }
        });
        assertThat(told).containsExactly("First 0/5", "Margins 1/5", "Plan 2/5", "Picture 3/5", "Record 4/5", "Done 5/5");
    }

    @Test
    void bearsTitleProgramAndTime() throws IOException {
        try (XSSFWorkbook workbook = Written.workbook(HandMade.everything())) {
            var core = workbook.getProperties().getCoreProperties();
            assertThat(core.getTitle()).isEqualTo("Commissioning record");
            assertThat(core.getIdentifier()).isEqualTo("GB-1 & A");
            assertThat(core.getCreator()).isEqualTo("Garboard 0.1.0");
            assertThat(core.getCreated()).isEqualTo("2031-05-04T16:20:00Z");
            assertThat(core.getModified()).isEqualTo("2031-05-04T16:20:00Z");
            assertThat(workbook.getProperties().getExtendedProperties().getApplication()).isEqualTo("Garboard");
        }
    }

    @Test
    void splitsATextThatNoRowCouldShow() throws IOException {
        String text = "A sentence that goes on for a while, one of very many. ".repeat(400).strip();
        Sheet sheet = HandMade.upright("Long", Block.body(text), Table.of(Table.text("a", "A", 20), Table.text("b", "B", 162))
            .row(Cell.text("x"), Cell.text(text)).build());
        try (XSSFWorkbook workbook = Written.workbook(HandMade.of(sheet))) {
            XSSFSheet written = workbook.getSheet("Long");
            var all = new StringBuilder();
            for (var row : written) {
                assertThat(row.getHeightInPoints()).isLessThanOrEqualTo(409.5f); // the highest row that the format knows
                row.forEach(cell -> all.append(cell.getCellType() == CellType.STRING ? cell.getStringCellValue() : ""));
            }
            assertThat(all.toString()).contains(text).contains("x" + text.substring(0, 30));
            assertThat(all.toString().length() - all.toString().replace("one of very many", "").length()).isEqualTo(2 * 400 * "one of very many".length());
        }
    }

    @Test
    void aPictureThatCannotBeDrawnIsToldInWords() throws IOException {
        var broken = new garboard.report.Picture("Broken", 100, 50, graphics -> {
            throw new IllegalStateException("no font");
        }, "a muffler below the waterline");
        try (XSSFWorkbook workbook = Written.workbook(HandMade.of(HandMade.upright("Drawings", broken)))) {
            assertThat(Written.cells(workbook.getSheet("Drawings"))).anyMatch(cell -> cell.getCellType() == CellType.STRING
                && cell.getStringCellValue().contains("no font") && cell.getStringCellValue().contains("a muffler below the waterline"));
        }
    }

    @Test
    void picturesHaveTheirSizeAndWords() throws IOException {
        try (XSSFWorkbook workbook = Written.workbook(HandMade.everything())) {
            var shapes = workbook.getSheet("Picture").getDrawingPatriarch().getShapes();
            var picture = (org.apache.poi.xssf.usermodel.XSSFPicture) shapes.stream()
                .filter(org.apache.poi.xssf.usermodel.XSSFPicture.class::isInstance).findFirst().orElseThrow();
            assertThat(picture.getCTPicture().getNvPicPr().getCNvPr().getDescr()).isEqualTo("a line");
            var image = javax.imageio.ImageIO.read(new java.io.ByteArrayInputStream(picture.getPictureData().getData()));
            assertThat((double) image.getWidth() / image.getHeight()).isCloseTo(200.0 / 120, offset(0.01));
            assertThat(image.getRGB(0, 0) & 0xFFFFFF).isLessThan(0x404040);
            assertThat(image.getRGB(image.getWidth() - 2, 1) & 0xFFFFFF).isEqualTo(0xFFFFFF);
        }
    }

    @Test
    void chartReadsItsNumbersFromTheTable() throws IOException {
        try (XSSFWorkbook workbook = Written.workbook(HandMade.everything())) {
            XSSFSheet sheet = workbook.getSheet("Picture");
            var series = sheet.getDrawingPatriarch().getCharts().getFirst().getCTChart().getPlotArea().getScatterChartArray(0).getSerArray(0);
            XSSFCell first = Written.cell(sheet, "Frequency", "09:40");
            XSSFCell last = Written.cell(sheet, "Frequency", "10:15");
            assertThat(series.getYVal().getNumRef().getF().replace("$", "")).isEqualTo(
                "Picture!" + first.getAddress().formatAsString() + ":" + last.getAddress().formatAsString());
            assertThat(series.getYVal().getNumRef().getNumCache().getPtArray(1).getV()).isEqualTo("49.9");
        }
    }
}
