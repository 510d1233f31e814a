// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.verdicts;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GlyphMetrics;

/** A text put together piece by piece, with how each piece looks. */
final class Prose {

    /** Stands for something drawn. */
    private static final String DRAWN = "\uFFFC";

    private final StringBuilder text = new StringBuilder();
    private final List<StyleRange> ranges = new ArrayList<>();

    Prose add(String piece, Color colour, int style) {
        var range = new StyleRange(text.length(), piece.length(), colour, null, style);
        text.append(piece);
        if (!piece.isEmpty()) {
            ranges.add(range);
        }
        return this;
    }

    /** Adds room for something that is drawn by who shows the text. */
    Prose addDrawn(int width, int height) {
        var range = new StyleRange(text.length(), 1, null, null);
        range.metrics = new GlyphMetrics(height, 0, width);
        ranges.add(range);
        text.append(DRAWN);
        return this;
    }

    Prose line() {
        text.append('\n');
        return this;
    }

    /** {@return the lines that have a tab in them} */
    List<Integer> tabbed() {
        List<String> lines = text.toString().lines().toList();
        return IntStream.range(0, lines.size()).filter(line -> lines.get(line).indexOf('\t') >= 0).boxed().toList();
    }

    String text() {
        return text.toString();
    }

    StyleRange[] ranges() {
        return ranges.toArray(StyleRange[]::new);
    }
}
