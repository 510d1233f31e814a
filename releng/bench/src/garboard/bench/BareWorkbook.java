// SPDX-License-Identifier: EPL-2.0
package garboard.bench;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;

import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFPicture;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFShape;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * The cells, styles, merged regions, sizes of rows and columns, and pictures of a workbook, and the shortest way to write them with POI:
 * nothing is laid out, measured or looked up. Not among them are what makes the report one: charts, page set-up, heads and feet, the
 * record inside.
 */
final class BareWorkbook {

    private record Looks(boolean bold, double sizePt, byte[] fill, HorizontalAlignment across, VerticalAlignment down, boolean wrap,
            String format, BorderStyle below) {
    }

    /** @param formula empty for a cell that holds its value itself */
    private record Written(int column, String text, double number, boolean isNumber, String formula, int style) {
    }

    private record Row(int index, float heightPt, List<Written> cells) {
    }

    private record Placed(byte[] image, int type, int[] anchor) {
    }

    private record Sheet(String name, int[] widths, List<Row> rows, List<CellRangeAddress> merged, List<Placed> pictures) {
    }

    private final List<Looks> styles = new ArrayList<>();
    private final List<Sheet> sheets = new ArrayList<>();

    private BareWorkbook() {
    }

    static BareWorkbook like(byte[] bytes) throws IOException {
        var bare = new BareWorkbook();
        try (var workbook = new XSSFWorkbook(new ByteArrayInputStream(bytes))) {
            for (int index = 0; index < workbook.getNumCellStyles(); index++) {
                bare.styles.add(looks(workbook.getCellStyleAt(index)));
            }
            for (int index = 0; index < workbook.getNumberOfSheets(); index++) {
                bare.sheets.add(sheet(workbook.getSheetAt(index)));
            }
        }
        return bare;
    }

    private static Looks looks(XSSFCellStyle style) {
        byte[] fill = style.getFillForegroundColorColor() == null ? new byte[0] : style.getFillForegroundColorColor().getRGB();
        return new Looks(style.getFont().getBold(), style.getFont().getFontHeight() / 20.0, fill, style.getAlignment(),
            style.getVerticalAlignment(), style.getWrapText(), style.getDataFormatString(), style.getBorderBottom());
    }

    private static Sheet sheet(XSSFSheet sheet) {
        var rows = new ArrayList<Row>();
        int columns = 0;
        for (var row : sheet) {
            var cells = new ArrayList<Written>();
            for (var cell : row) {
                cells.add(written((XSSFCell) cell));
            }
            columns = Math.max(columns, row.getLastCellNum());
            rows.add(new Row(row.getRowNum(), row.getHeightInPoints(), cells));
        }
        var widths = new int[columns];
        for (int column = 0; column < columns; column++) {
            widths[column] = sheet.getColumnWidth(column);
        }
        return new Sheet(sheet.getSheetName(), widths, rows, sheet.getMergedRegions(), pictures(sheet));
    }

    private static Written written(XSSFCell cell) {
        int column = cell.getColumnIndex();
        int style = cell.getCellStyle().getIndex();
        return switch (cell.getCellType()) {
            case STRING -> new Written(column, cell.getStringCellValue(), 0, false, "", style);
            case NUMERIC -> new Written(column, "", cell.getNumericCellValue(), true, "", style);
            case FORMULA -> new Written(column, "", cell.getNumericCellValue(), true, cell.getCellFormula(), style);
            case BLANK -> new Written(column, "", 0, false, "", style);
            default -> throw new IllegalStateException("A cell of the type " + cell.getCellType() + " in " + cell.getAddress());
        };
    }

    private static List<Placed> pictures(XSSFSheet sheet) {
        var placed = new ArrayList<Placed>();
        if (sheet.getDrawingPatriarch() != null) {
            for (XSSFShape shape : sheet.getDrawingPatriarch().getShapes()) {
                if (shape instanceof XSSFPicture picture) {
                    XSSFClientAnchor at = picture.getClientAnchor();
                    placed.add(new Placed(picture.getPictureData().getData(), picture.getPictureData().getPictureType(), new int[] {at.getDx1(),
                        at.getDy1(), at.getDx2(), at.getDy2(), at.getCol1(), at.getRow1(), at.getCol2(), at.getRow2()}));
                }
            }
        }
        return placed;
    }

    void write(OutputStream target) throws IOException {
        try (var workbook = new XSSFWorkbook()) {
            workbook.setCellFormulaValidation(false);
            List<XSSFCellStyle> made = styles.stream().map(looks -> make(workbook, looks)).toList();
            for (Sheet sheet : sheets) {
                write(sheet, workbook.createSheet(sheet.name), made);
            }
            workbook.write(target);
        }
    }

    private static XSSFCellStyle make(XSSFWorkbook workbook, Looks looks) {
        XSSFFont font = workbook.createFont();
        font.setBold(looks.bold);
        font.setFontHeight(looks.sizePt);
        XSSFCellStyle style = workbook.createCellStyle();
        style.setFont(font);
        if (looks.fill.length > 0) {
            style.setFillForegroundColor(new org.apache.poi.xssf.usermodel.XSSFColor(looks.fill));
            style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
        }
        style.setAlignment(looks.across);
        style.setVerticalAlignment(looks.down);
        style.setWrapText(looks.wrap);
        style.setDataFormat(workbook.createDataFormat().getFormat(looks.format));
        style.setBorderBottom(looks.below);
        return style;
    }

    private static void write(Sheet sheet, XSSFSheet target, List<XSSFCellStyle> styles) {
        for (int column = 0; column < sheet.widths.length; column++) {
            target.setColumnWidth(column, sheet.widths[column]);
        }
        for (Row row : sheet.rows) {
            XSSFRow made = target.createRow(row.index);
            made.setHeightInPoints(row.heightPt);
            for (Written cell : row.cells) {
                fill(made.createCell(cell.column), cell, styles);
            }
        }
        sheet.merged.forEach(target::addMergedRegionUnsafe);
        for (Placed picture : sheet.pictures) {
            int[] at = picture.anchor;
            int index = target.getWorkbook().addPicture(picture.image, picture.type);
            target.createDrawingPatriarch().createPicture(new XSSFClientAnchor(at[0], at[1], at[2], at[3], at[4], at[5], at[6], at[7]), index);
        }
    }

    private static void fill(XSSFCell target, Written cell, List<XSSFCellStyle> styles) {
        target.setCellStyle(styles.get(cell.style));
        if (!cell.formula.isEmpty()) {
            target.setCellFormula(cell.formula);
        }
        if (cell.isNumber) {
            target.setCellValue(cell.number);
        } else if (!cell.text.isEmpty()) {
            target.setCellValue(cell.text);
        }
    }
}
