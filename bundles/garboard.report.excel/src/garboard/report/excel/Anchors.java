// SPDX-License-Identifier: EPL-2.0
package garboard.report.excel;

import org.apache.poi.util.Units;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;

/** Fastens what floats over a sheet to the cells below it, at its true size. */
final class Anchors {

    private static final double MM_PER_INCH = 25.4;
    private static final int POINTS_PER_INCH = 72;

    private final SheetLayout layout;

    Anchors(SheetLayout layout) {
        this.layout = layout;
    }

    /** {@return the width of all columns in millimetres} */
    double widthMm() {
        int px = 0;
        for (int column = 0; column < layout.grid().columns(); column++) {
            px += layout.grid().widthPx(column);
        }
        return px / SheetGrid.PIXELS_PER_MM;
    }

    /**
     * {@return the place over the rows that begin with a row}
     *
     * @param leftWidthHeightMm distance from the left edge, width, height
     */
    XSSFClientAnchor over(int line, double[] leftWidthHeightMm) {
        var anchor = new XSSFClientAnchor();
        int left = emu(leftWidthHeightMm[0]);
        int[] start = across(left);
        anchor.setCol1(start[0]);
        anchor.setDx1(start[1]);
        int[] end = across(left + emu(leftWidthHeightMm[1]));
        anchor.setCol2(end[0]);
        anchor.setDx2(end[1]);
        anchor.setRow1(line);
        int[] bottom = down(line, emu(leftWidthHeightMm[2]));
        anchor.setRow2(bottom[0]);
        anchor.setDy2(bottom[1]);
        return anchor;
    }

    /** {@return the column, and how far inside it} */
    private int[] across(int emu) {
        int left = 0;
        int column = 0;
        int width = widthEmu(column);
        while (emu - left > width && column < layout.grid().columns() - 1) {
            left += width;
            column++;
            width = widthEmu(column);
        }
        return new int[] {column, Math.min(emu - left, width)};
    }

    /** {@return the row, and how far down in it} */
    private int[] down(int line, int emu) {
        int top = 0;
        int row = line;
        int height = heightEmu(row);
        while (emu - top > height && row < layout.lines().size() - 1) {
            top += height;
            row++;
            height = heightEmu(row);
        }
        return new int[] {row, Math.min(emu - top, height)};
    }

    private int widthEmu(int column) {
        return layout.grid().widthPx(column) * Units.EMU_PER_PIXEL;
    }

    private int heightEmu(int row) {
        return (int) Math.round(layout.lines().get(row).heightPt() * Units.EMU_PER_POINT);
    }

    private static int emu(double mm) {
        return (int) Math.round(mm / MM_PER_INCH * POINTS_PER_INCH * Units.EMU_PER_POINT);
    }
}
