// SPDX-License-Identifier: EPL-2.0
package garboard.report;

/** The papers that a report is laid out for. */
public enum Paper {
    A4(210, 297), LETTER(215.9, 279.4);

    /** Left and right margin of the page in millimetres. */
    public static final double SIDE_MARGIN_MM = 14;
    /** Top margin in millimetres, the running head included. */
    public static final double TOP_MARGIN_MM = 18;
    /** Bottom margin in millimetres, the running foot included. */
    public static final double BOTTOM_MARGIN_MM = 16;

    private final double shortMm;
    private final double longMm;

    Paper(double shortMm, double longMm) {
        this.shortMm = shortMm;
        this.longMm = longMm;
    }

    /** Width between the margins in millimetres. */
    public double contentWidthMm(Orientation orientation) {
        return (orientation == Orientation.PORTRAIT ? shortMm : longMm) - 2 * SIDE_MARGIN_MM;
    }

    /** Height between the margins in millimetres. */
    public double contentHeightMm(Orientation orientation) {
        return (orientation == Orientation.PORTRAIT ? longMm : shortMm) - TOP_MARGIN_MM - BOTTOM_MARGIN_MM;
    }
}
