// SPDX-License-Identifier: EPL-2.0
package garboard.report.drawing;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;

/**
 * Where on a sheet a part can be pointed at.
 *
 * @param id of the part, or of what is lacking
 * @param name what it is called
 * @param field key of the field in the record that a press leads to
 * @param mark the middle of its mark, where it is drawn at its place
 * @param words the area of its name; nothing where it is not written
 */
public record Spot(String id, String name, String field, Optional<Point2D> mark, Optional<Rectangle2D> words) {

    /** How far off a mark a press still counts, in units of the sheet. */
    static final double REACH = 2.6;

    /** {@return how far a place is off the mark; without end where it has none} */
    double distance(double x, double y) {
        return mark.map(at -> at.distance(x, y)).orElse(Double.POSITIVE_INFINITY);
    }

    /** {@return the area that tells where it is} */
    public Rectangle2D area() {
        Optional<Rectangle2D> around = mark.map(at -> new Rectangle2D.Double(at.getX() - REACH, at.getY() - REACH, 2 * REACH, 2 * REACH));
        return around.or(() -> words).orElseGet(Rectangle2D.Double::new);
    }
}
