// SPDX-License-Identifier: EPL-2.0
package garboard.console;

import java.util.ArrayList;
import java.util.List;

/** Breaks text into lines at spaces. */
final class Wrapping {

    private Wrapping() {
    }

    /** Lines of at most {@code width} characters, but for words that are longer. */
    static List<String> lines(String text, int width) {
        var lines = new ArrayList<String>();
        var line = new StringBuilder();
        for (String word : text.strip().split("\\s+")) {
            if (!line.isEmpty() && line.length() + 1 + word.length() > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }
}
