// SPDX-License-Identifier: EPL-2.0
package garboard.report.excel.form;

import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The looks of a form's cells, each made once for a workbook. Readable on paper without colour: what is to be filled in has a frame. */
final class FormLooks {

    private static final byte[] PAPER = { (byte) 0xFF, (byte) 0xFD, (byte) 0xF2 };
    private static final byte[] SLATE = { (byte) 0x2F, (byte) 0x3E, (byte) 0x4A };
    private static final byte[] MIST = { (byte) 0xE8, (byte) 0xEC, (byte) 0xEE };
    private static final byte[] GREY = { (byte) 0x59, (byte) 0x59, (byte) 0x59 };

    final XSSFCellStyle title;
    final XSSFCellStyle prose;
    final XSSFCellStyle heading;
    final XSSFCellStyle columnHeading;
    final XSSFCellStyle label;
    final XSSFCellStyle unit;
    final XSSFCellStyle input;
    final XSSFCellStyle number;
    final XSSFCellStyle how;

    private final XSSFWorkbook workbook;

    FormLooks(XSSFWorkbook workbook) {
        this.workbook = workbook;
        title = style(font(16, true, SLATE));
        prose = wrapped(style(font(11, false, null)));
        heading = style(font(12, true, SLATE));
        heading.setBorderBottom(BorderStyle.MEDIUM);
        columnHeading = filled(style(font(9, true, SLATE)), MIST);
        columnHeading.setAlignment(HorizontalAlignment.CENTER);
        label = wrapped(style(font(10, false, null)));
        unit = framed(wrapped(style(font(10, false, null))), BorderStyle.HAIR);
        input = framed(filled(wrapped(style(font(11, false, null))), PAPER), BorderStyle.THIN);
        // Text format: an entry such as 3/4 must not become the fourth of March.
        input.setDataFormat(workbook.createDataFormat().getFormat("@"));
        number = framed(filled(style(font(10, true, SLATE)), MIST), BorderStyle.THIN);
        number.setAlignment(HorizontalAlignment.CENTER);
        how = wrapped(style(font(9, false, GREY)));
    }

    private XSSFFont font(int points, boolean bold, byte[] colour) {
        XSSFFont font = workbook.createFont();
        font.setFontName("Calibri");
        font.setFontHeightInPoints((short) points);
        font.setBold(bold);
        if (colour != null) {
            font.setColor(new XSSFColor(colour));
        }
        return font;
    }

    private XSSFCellStyle style(XSSFFont font) {
        XSSFCellStyle style = workbook.createCellStyle();
        style.setFont(font);
        style.setVerticalAlignment(VerticalAlignment.CENTER);
        return style;
    }

    private static XSSFCellStyle wrapped(XSSFCellStyle style) {
        style.setWrapText(true);
        return style;
    }

    private static XSSFCellStyle filled(XSSFCellStyle style, byte[] colour) {
        style.setFillForegroundColor(new XSSFColor(colour));
        style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
        return style;
    }

    private static XSSFCellStyle framed(XSSFCellStyle style, BorderStyle border) {
        style.setBorderTop(border);
        style.setBorderBottom(border);
        style.setBorderLeft(border);
        style.setBorderRight(border);
        return style;
    }
}
