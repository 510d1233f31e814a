// SPDX-License-Identifier: EPL-2.0
package garboard.report.excel;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** Decides where pages end, so that no heading stands alone at the foot of one and no drawing is cut. */
final class PageFlow {

    private PageFlow() {
    }

    /**
     * {@return the rows that begin a new page}
     *
     * @param pageHeightPt height of a page for the rows, as programs will surely find it
     * @param repeatedLine row that comes again at the head of every later page
     */
    static List<Integer> breaksBefore(List<Line> lines, double pageHeightPt, OptionalInt repeatedLine) {
        var breaks = new ArrayList<Integer>();
        double used = 0;
        int index = 0;
        while (index < lines.size()) {
            int end = endOfChain(lines, index);
            double height = height(lines, index, end);
            boolean full = used > 0 && used + height > pageHeightPt;
            if (index > 0 && (full || lines.get(index).breakBefore())) {
                breaks.add(index);
                int head = repeatedLine.orElse(Integer.MAX_VALUE);
                used = head < index ? lines.get(head).heightPt() : 0;
            }
            if (used + height > pageHeightPt) {
                // A chain higher than a page breaks wherever the page ends.
                used = breakInside(lines, new int[] {index, end}, used, pageHeightPt, breaks);
            } else {
                used += height;
            }
            index = end;
        }
        return breaks;
    }

    private static double breakInside(List<Line> lines, int[] range, double usedBefore, double pageHeightPt, List<Integer> breaks) {
        double used = usedBefore;
        for (int index = range[0]; index < range[1]; index++) {
            double height = lines.get(index).heightPt();
            if (used > 0 && used + height > pageHeightPt) {
                if (breaks.isEmpty() || breaks.getLast() != index) {
                    breaks.add(index);
                }
                used = 0;
            }
            used += height;
        }
        return used;
    }

    private static int endOfChain(List<Line> lines, int start) {
        int end = start;
        while (end < lines.size() - 1 && lines.get(end).keep() && !lines.get(end + 1).breakBefore()) {
            end++;
        }
        return end + 1;
    }

    private static double height(List<Line> lines, int from, int to) {
        double height = 0;
        for (int index = from; index < to; index++) {
            height += lines.get(index).heightPt();
        }
        return height;
    }
}
