// SPDX-License-Identifier: EPL-2.0
package garboard.report.excel;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

import garboard.report.Block;
import garboard.report.Orientation;
import garboard.report.Paper;
import garboard.report.PictureRow;
import garboard.report.Sheet;
import garboard.report.Table;

/**
 * The columns of one sheet of the workbook. A sheet may hold several tables, which need not have the same columns: the grid has an edge
 * wherever one of them has one, and a table's cell spans what lies between its own edges. A sheet with one table has that table's
 * columns.
 */
final class SheetGrid {

    /** Pixels to the inch that spreadsheet programs reckon with. */
    static final double PIXELS_PER_MM = 96 / 25.4;
    private static final double POINTS_PER_PIXEL = 0.75;
    /** Edges nearer than this are one edge. */
    private static final int NEAR_PX = 8;
    /** Left and right of the content of a cell. */
    private static final double PADDING_PT = 4.5;

    private static final double[] PAIRS = {27, 64, 27, 64};
    private static final double[] SIGNATURES = {30, 62, 8, 42, 8, 32};

    private final int[] edges;
    private final double stretch;

    private SheetGrid(int[] edges, double stretch) {
        this.edges = edges;
        this.stretch = stretch;
    }

    static SheetGrid of(Sheet sheet, Paper paper) {
        double nominal = sheet.orientation() == Orientation.PORTRAIT ? Table.PORTRAIT_MM : Table.LANDSCAPE_MM;
        // A hair narrower than the page, so that nothing is scaled for the sake of a pixel.
        double stretch = paper.contentWidthMm(sheet.orientation()) * 0.988 / nominal * PIXELS_PER_MM;
        var wanted = new TreeSet<Integer>();
        wanted.add(0);
        wanted.add((int) Math.round(nominal * stretch));
        for (Block block : sheet.blocks()) {
            switch (block) {
                case Table table -> addEdges(table.columns().stream().mapToDouble(Table.Column::widthMm).toArray(), stretch, wanted);
                case Block.KeyValues pairs -> addEdges(pairWidths(nominal), stretch, wanted);
                case PictureRow row -> wanted.add((int) Math.round(nominal * stretch / 2));
                case Block.SignatureLines lines -> addEdges(SIGNATURES, stretch, wanted);
                default -> {
                    // spans the whole width
                }
            }
        }
        var kept = new ArrayList<Integer>();
        for (int edge : wanted) {
            if (kept.isEmpty() || edge - kept.getLast() > NEAR_PX) {
                kept.add(edge);
            }
        }
        return new SheetGrid(kept.stream().mapToInt(Integer::intValue).toArray(), stretch);
    }

    /** {@return widths of label, value, label, value on a sheet} */
    static double[] pairWidths(double nominal) {
        double[] widths = PAIRS.clone();
        for (int index = 0; index < widths.length; index++) {
            widths[index] *= nominal / Table.PORTRAIT_MM;
        }
        return widths;
    }

    static double[] signatureWidths() {
        return SIGNATURES.clone();
    }

    private static void addEdges(double[] widthsMm, double stretch, TreeSet<Integer> into) {
        double at = 0;
        for (double width : widthsMm) {
            at += width;
            into.add((int) Math.round(at * stretch));
        }
    }

    int columns() {
        return edges.length - 1;
    }

    int widthPx(int column) {
        return edges[column + 1] - edges[column];
    }

    /** {@return first and last grid column of each of some columns side by side} */
    List<Span> spans(double[] widthsMm) {
        var spans = new ArrayList<Span>();
        double at = 0;
        int first = 0;
        for (double width : widthsMm) {
            at += width;
            int end = Math.max(nearest((int) Math.round(at * stretch)), first + 1);
            spans.add(new Span(first, Math.min(end, columns()) - 1));
            first = Math.min(end, columns() - 1);
        }
        return spans;
    }

    Span all() {
        return new Span(0, columns() - 1);
    }

    /** {@return the width for text in points} */
    double innerWidthPt(Span span) {
        return (edges[span.last + 1] - edges[span.first]) * POINTS_PER_PIXEL - PADDING_PT;
    }

    private int nearest(int px) {
        int best = 0;
        for (int index = 1; index < edges.length; index++) {
            if (Math.abs(edges[index] - px) < Math.abs(edges[best] - px)) {
                best = index;
            }
        }
        return best;
    }

    /** Columns of the grid from first to last, both included. */
    record Span(int first, int last) {
    }
}
