// SPDX-License-Identifier: EPL-2.0
package garboard.report.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Names of parts in columns to the left and right of a drawing, each led to its part by a line. Parts in the left half are named at the
 * left; in a column they stand in the order of their heights and never on top of each other.
 */
final class Callouts {

    private static final double LINE_MM = 3.2;
    private static final double GAP_MM = 2.2;
    private static final double LEAD_MM = 3;

    /** What is said of a part at a place of the paper; the first line is its name. */
    record Callout(double x, double y, List<String> lines) {
        double height() {
            return lines.size() * LINE_MM + GAP_MM;
        }
    }

    private final double left;
    private final double right;
    private final double top;
    private final double bottom;
    private final double room;

    /**
     * @param leftRightTopBottom inner edges of the two columns, upper and lower end of both
     * @param room width of either column
     */
    Callouts(double[] leftRightTopBottom, double room) {
        this.room = room;
        this.left = leftRightTopBottom[0];
        this.right = leftRightTopBottom[1];
        this.top = leftRightTopBottom[2];
        this.bottom = leftRightTopBottom[3];
    }

    void draw(Pen pen, List<Callout> callouts) {
        List<Callout> across = callouts.stream().sorted(Comparator.comparingDouble(Callout::x)).toList();
        int half = across.size() / 2;
        drawColumn(pen, across.subList(0, half), true);
        drawColumn(pen, across.subList(half, across.size()), false);
    }

    private void drawColumn(Pen pen, List<Callout> unsorted, boolean atLeft) {
        List<Callout> column = unsorted.stream().sorted(Comparator.comparingDouble(Callout::y)).toList();
        double[] tops = tops(column);
        for (int index = 0; index < column.size(); index++) {
            draw(pen, column.get(index), tops[index], atLeft);
        }
    }

    private void draw(Pen pen, Callout callout, double upper, boolean atLeft) {
        double edge = atLeft ? left : right;
        double turn = atLeft ? edge + LEAD_MM : edge - LEAD_MM;
        double level = upper + LINE_MM / 2;
        pen.ink(Ink.FAINT).width(Pen.HAIR).line(atLeft ? edge + 1 : edge - 1, level, turn, level).line(turn, level, callout.x, callout.y);
        double y = upper + LINE_MM * 0.8;
        for (int index = 0; index < callout.lines.size(); index++) {
            boolean name = index == 0;
            pen.ink(name ? Ink.INK : Ink.FAINT);
            pen.textWithin(room, callout.lines.get(index), edge, y, name ? atLeft ? Letters.BOLD_RIGHT : Letters.BOLD_LEFT
                : atLeft ? Letters.SMALL_RIGHT : Letters.SMALL_LEFT);
            y += LINE_MM;
        }
    }

    /** As near to the parts as can be without overlap: pushed down where they crowd, and up again from the lower end. */
    private double[] tops(List<Callout> column) {
        var tops = new ArrayList<Double>();
        double free = top;
        for (Callout callout : column) {
            double at = Math.max(free, callout.y - LINE_MM / 2);
            tops.add(at);
            free = at + callout.height();
        }
        double end = bottom;
        for (int index = column.size() - 1; index >= 0; index--) {
            double at = Math.min(tops.get(index), end - column.get(index).height());
            tops.set(index, at);
            end = at;
        }
        return tops.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
