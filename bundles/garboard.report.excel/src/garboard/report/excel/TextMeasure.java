// SPDX-License-Identifier: EPL-2.0
package garboard.report.excel;

import java.util.ArrayList;
import java.util.List;

/**
 * How wide a text is and where it wraps, without asking the machine for its fonts: row heights come out alike everywhere. Widths are
 * those of the sans serif that the workbook names, in thousandths of the font size.
 */
final class TextMeasure {

    /** Advance widths from the space to the tilde. */
    private static final short[] REGULAR = {
        278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556, 556, 556, 556, 556, 556,
        278, 278, 584, 584, 584, 556, 1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556, 833, 722, 778, 667, 778, 722, 667,
        611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556, 333, 556, 556, 500, 556, 556, 278, 556, 556, 222, 222, 500, 222, 833,
        556, 556, 556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584};
    private static final short[] BOLD = {
        278, 333, 474, 556, 556, 889, 722, 238, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556, 556, 556, 556, 556, 556,
        333, 333, 584, 584, 584, 611, 975, 722, 722, 722, 722, 667, 611, 778, 722, 278, 556, 722, 611, 833, 722, 778, 667, 778, 722, 667,
        611, 722, 667, 944, 667, 667, 611, 333, 278, 333, 584, 556, 333, 556, 611, 556, 611, 556, 333, 611, 611, 278, 278, 556, 278, 889,
        611, 611, 611, 611, 389, 556, 333, 611, 556, 778, 556, 556, 500, 389, 280, 389, 584};
    /** Letters with accents, Greek and the like: as wide as most. */
    private static final int SMALL = 556;
    private static final int CAPITAL = 722;
    private static final int NARROW = 400;
    private static final String NARROW_SIGNS = "\u00b7\u00b0\u00b9\u00b2\u00b3\u2018\u2019\u201a\u2039\u203a\u00a0";
    private static final int FULL_WIDTH = 1000;
    private static final int FULL_WIDTH_FROM = 0x1100;
    /** Signs such as the tick come from another font. */
    private static final int SIGNS_FROM = 0x2010;
    private static final int SIGN = 850;
    /** Programs hint letters to whole pixels and break a little earlier than the figures say. */
    private static final double SAFETY = 1.04;

    private TextMeasure() {
    }

    /** {@return the width in points} */
    static double width(String text, double sizePt, boolean bold) {
        long thousandths = 0;
        for (int index = 0; index < text.length(); index++) {
            thousandths += advance(text.charAt(index), bold);
        }
        return thousandths * sizePt * SAFETY / 1000;
    }

    private static int advance(char c, boolean bold) {
        if (c >= ' ' && c <= '~') {
            return (bold ? BOLD : REGULAR)[c - ' '];
        }
        if (NARROW_SIGNS.indexOf(c) >= 0) {
            return NARROW;
        }
        if (c >= SIGNS_FROM && c < 0x3000) {
            return SIGN;
        }
        return c >= FULL_WIDTH_FROM ? FULL_WIDTH : Character.isUpperCase(c) ? CAPITAL : SMALL;
    }

    /**
     * {@return the lines that a text takes in a cell; joined, they are the text again} Breaks behind spaces and hyphens, and anywhere in
     * a word that is wider than the cell.
     *
     * @param widthPt inner width of the cell
     */
    static List<String> wrap(String text, double widthPt, double sizePt, boolean bold) {
        var lines = new ArrayList<String>();
        String[] paragraphs = text.split("\n", -1);
        for (int index = 0; index < paragraphs.length; index++) {
            wrapParagraph(paragraphs[index], widthPt, sizePt, bold, lines);
            if (index < paragraphs.length - 1) {
                lines.add(lines.removeLast() + "\n");
            }
        }
        return lines;
    }

    private static void wrapParagraph(String text, double widthPt, double sizePt, boolean bold, List<String> into) {
        double perThousandth = sizePt * SAFETY / 1000;
        int start = 0;
        int breakAfter = -1;
        double used = 0;
        double usedAtBreak = 0;
        for (int index = 0; index < text.length(); index++) {
            char c = text.charAt(index);
            used += advance(c, bold) * perThousandth;
            while (used > widthPt && c != ' ' && index > start) {
                int end = breakAfter >= start ? breakAfter + 1 : index;
                into.add(text.substring(start, end));
                used -= breakAfter >= start ? usedAtBreak : used - advance(c, bold) * perThousandth;
                start = end;
                breakAfter = -1;
            }
            if (c == ' ' || c == '-' && index > start && index + 1 < text.length()) {
                breakAfter = index;
                usedAtBreak = used;
            }
        }
        into.add(text.substring(start));
    }
}
