// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import java.util.ArrayList;

import garboard.model.Point;
import garboard.quantity.Length;

/** A place on the boat in words. */
final class PointWords {

    private PointWords() {
    }

    /** {@return the coordinates as they were given} */
    static String given(Point point) {
        var words = new ArrayList<String>();
        add("forward", point.getX(), words);
        add("to starboard", point.getY(), words);
        add("up", point.getZ(), words);
        return words.isEmpty() ? "not entered" : String.join(", ", words);
    }

    private static void add(String direction, Length distance, ArrayList<String> into) {
        if (distance != null) {
            into.add(direction + " " + distance);
        }
    }
}
