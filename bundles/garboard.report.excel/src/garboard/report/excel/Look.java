// SPDX-License-Identifier: EPL-2.0
package garboard.report.excel;

/**
 * How a cell looks. Equal looks share one style of the workbook.
 *
 * @param sizePt size of the letters in points
 * @param bold whether they are bold
 * @param ink colour of the letters as 0xRRGGBB
 * @param fill colour of the ground as 0xRRGGBB, or {@link #NO_FILL}
 * @param across where the content stands from left to right
 * @param down where it stands from top to bottom
 * @param wrap whether it wraps
 * @param edges which edges have a line
 * @param format number format, or an empty text
 * @param indent whether it is moved in a little
 */
record Look(double sizePt, boolean bold, int ink, int fill, Across across, Down down, boolean wrap, Edges edges, String format,
        boolean indent) {

    static final int NO_FILL = -1;
    static final int INK = 0x1A1A1A;
    static final int FAINT_INK = 0x5F666B;
    static final int ACCENT = 0x23424F;
    static final int HEAD_FILL = 0xE6EAEC;
    static final int GROUP_FILL = 0xF3F5F6;

    enum Across {
        LEFT, CENTRE, RIGHT
    }

    enum Down {
        TOP, MIDDLE, BOTTOM
    }

    /** Edges with a line. */
    enum Edges {
        NONE,
        /** A hair line below: rows of a table. */
        BELOW,
        /** A firm line below: heads. */
        BELOW_FIRM,
        /** A firm line above: totals. */
        ABOVE_FIRM,
        /** A line to write on. */
        TO_WRITE_ON,
        /** A heavy bar at the left: what must not be overlooked. */
        BAR_LEFT,
        /** A frame. */
        FRAME
    }

    static Look text(double sizePt) {
        return new Look(sizePt, false, INK, NO_FILL, Across.LEFT, Down.TOP, true, Edges.NONE, "", false);
    }

    Look size(double points) {
        return new Look(points, bold, ink, fill, across, down, wrap, edges, format, indent);
    }

    Look strong() {
        return new Look(sizePt, true, ink, fill, across, down, wrap, edges, format, indent);
    }

    Look ink(int colour) {
        return new Look(sizePt, bold, colour, fill, across, down, wrap, edges, format, indent);
    }

    Look on(int colour) {
        return new Look(sizePt, bold, ink, colour, across, down, wrap, edges, format, indent);
    }

    Look across(Across where) {
        return new Look(sizePt, bold, ink, fill, where, down, wrap, edges, format, indent);
    }

    Look inTheMiddle() {
        return new Look(sizePt, bold, ink, fill, across, Down.MIDDLE, wrap, edges, format, indent);
    }

    Look atTheBottom() {
        return new Look(sizePt, bold, ink, fill, across, Down.BOTTOM, wrap, edges, format, indent);
    }

    Look oneLine() {
        return new Look(sizePt, bold, ink, fill, across, down, false, edges, format, indent);
    }

    Look edges(Edges lines) {
        return new Look(sizePt, bold, ink, fill, across, down, wrap, lines, format, indent);
    }

    Look format(String numberFormat) {
        return new Look(sizePt, bold, ink, fill, across, down, wrap, edges, numberFormat, indent);
    }

    Look indented() {
        return new Look(sizePt, bold, ink, fill, across, down, wrap, edges, format, true);
    }

    /** {@return whether an empty cell of this look shows anything} */
    boolean hasGround() {
        return fill != NO_FILL || edges != Edges.NONE;
    }

    /** {@return the height of one line in points} */
    double lineHeightPt() {
        return sizePt * 1.22;
    }
}
