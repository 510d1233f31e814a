// SPDX-License-Identifier: EPL-2.0
package garboard.report.drawing;

import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** One drawing in a window, laid out for the room that there is, and where on it what lies. */
interface LiveDrawing {

    View view();

    Rectangle2D area();

    void paint(Pen pen, Emphasis emphasis);

    /** What can be pointed at, in the order in which the keyboard goes through it. */
    List<Spot> spots();

    /** How many metres a unit of the sheet stands for, upwards; nothing where nothing can be moved. */
    OptionalDouble metresUp();

    /** How many metres a unit of the sheet stands for, to the right; nothing where nothing can be moved that way. */
    OptionalDouble metresAcross();

    /** What part of the world it shows, to be kept while a part is moved. */
    Frame frame();

    /** Where the names stand, so that they can stay there. */
    Map<String, Integer> names();

    /** The same in words, for people who cannot see it. */
    String inWords();

    /** The heel that stands at a place across, in radians; nothing where the drawing has no such axis. */
    default OptionalDouble heelAt(double x) {
        return OptionalDouble.empty();
    }

    /**
     * The part of the world that a drawing shows, in metres, y up.
     *
     * @param metres what must be seen
     */
    record Frame(Rectangle2D metres) {

        private static final double ROOMY = 1.9;

        /** This one while all is in it and it is not much too large, else another: a drawing must not jump at each edit. */
        Frame or(Rectangle2D needed, Rectangle2D wanted) {
            boolean fits = metres.contains(needed);
            boolean tight = metres.getWidth() <= wanted.getWidth() * ROOMY && metres.getHeight() <= wanted.getHeight() * ROOMY;
            return fits && tight ? this : new Frame(wanted);
        }
    }
}
