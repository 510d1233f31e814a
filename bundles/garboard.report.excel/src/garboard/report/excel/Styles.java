// SPDX-License-Identifier: EPL-2.0
package garboard.report.excel;

import java.util.HashMap;
import java.util.Map;

import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.DefaultIndexedColorMap;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The styles of one workbook, each made once. */
final class Styles {

    /** On every machine, or something of the same widths. */
    static final String FONT = "Arial";
    /**
     * Column widths are told in figures of the standard font. At this size a figure is as near as can be to whole pixels wide, so that
     * programs which round and programs which do not come to the same widths.
     */
    static final double STANDARD_PT = 9.5;

    private static final int HAIR = 0xC3C9CD;
    private static final int FIRM = 0x23424F;

    private record FontLook(double sizePt, boolean bold, int ink) {
    }

    private record StyleLook(Look look, boolean textOnly) {
    }

    private final XSSFWorkbook workbook;
    private final Map<FontLook, XSSFFont> fonts = new HashMap<>();
    private final Map<StyleLook, XSSFCellStyle> styles = new HashMap<>();

    Styles(XSSFWorkbook workbook) {
        this.workbook = workbook;
        XSSFFont standard = workbook.getFontAt(0);
        standard.setFontName(FONT);
        standard.setFontHeight(STANDARD_PT);
    }

    /**
     * {@return the style of a look}
     *
     * @param textOnly for a text that a careless edit in the spreadsheet program would turn into a formula
     */
    XSSFCellStyle of(Look look, boolean textOnly) {
        return styles.computeIfAbsent(new StyleLook(look, textOnly), this::make);
    }

    private XSSFCellStyle make(StyleLook wanted) {
        Look look = wanted.look();
        XSSFCellStyle style = workbook.createCellStyle();
        style.setFont(fonts.computeIfAbsent(new FontLook(look.sizePt(), look.bold(), look.ink()), this::makeFont));
        if (look.fill() != Look.NO_FILL) {
            style.setFillForegroundColor(colour(look.fill()));
            style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
        }
        style.setAlignment(switch (look.across()) {
            case LEFT -> HorizontalAlignment.LEFT;
            case CENTRE -> HorizontalAlignment.CENTER;
            case RIGHT -> HorizontalAlignment.RIGHT;
        });
        style.setVerticalAlignment(switch (look.down()) {
            case TOP -> VerticalAlignment.TOP;
            case MIDDLE -> VerticalAlignment.CENTER;
            case BOTTOM -> VerticalAlignment.BOTTOM;
        });
        style.setWrapText(look.wrap());
        if (look.indent()) {
            style.setIndention((short) 1);
        }
        if (!look.format().isEmpty()) {
            style.setDataFormat(workbook.createDataFormat().getFormat(look.format()));
        }
        if (wanted.textOnly()) {
            style.setQuotePrefixed(true);
        }
        edges(style, look.edges());
        return style;
    }

    private XSSFFont makeFont(FontLook look) {
        XSSFFont font = workbook.createFont();
        font.setFontName(FONT);
        font.setFontHeight(look.sizePt());
        font.setBold(look.bold());
        font.setColor(colour(look.ink()));
        return font;
    }

    private static void edges(XSSFCellStyle style, Look.Edges edges) {
        switch (edges) {
            case NONE -> {
                // no line
            }
            case BELOW -> below(style, BorderStyle.THIN, HAIR);
            case BELOW_FIRM -> below(style, BorderStyle.THIN, FIRM);
            case TO_WRITE_ON -> below(style, BorderStyle.THIN, Look.INK);
            case ABOVE_FIRM -> {
                style.setBorderTop(BorderStyle.THIN);
                style.setTopBorderColor(colour(FIRM));
                below(style, BorderStyle.THIN, HAIR);
            }
            case BAR_LEFT -> {
                style.setBorderLeft(BorderStyle.THICK);
                style.setLeftBorderColor(colour(FIRM));
            }
            case FRAME -> {
                below(style, BorderStyle.THIN, FIRM);
                style.setBorderTop(BorderStyle.THIN);
                style.setTopBorderColor(colour(FIRM));
                style.setBorderLeft(BorderStyle.THIN);
                style.setLeftBorderColor(colour(FIRM));
                style.setBorderRight(BorderStyle.THIN);
                style.setRightBorderColor(colour(FIRM));
            }
        }
    }

    private static void below(XSSFCellStyle style, BorderStyle line, int rgb) {
        style.setBorderBottom(line);
        style.setBottomBorderColor(colour(rgb));
    }

    private static XSSFColor colour(int rgb) {
        byte[] bytes = {(byte) (rgb >> 16), (byte) (rgb >> 8), (byte) rgb};
        return new XSSFColor(bytes, new DefaultIndexedColorMap());
    }
}
