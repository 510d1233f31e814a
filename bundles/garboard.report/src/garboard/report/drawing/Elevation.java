// SPDX-License-Identifier: EPL-2.0
package garboard.report.drawing;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * One elevation: the parts seen from one side, the hull's outline, the waterlines.
 *
 * @param parts all parts, with or without a place
 * @param across the coordinate that runs across the paper, in metres
 * @param outline the hull in metres, across and up; nothing when its dimensions are not entered
 * @param surfaces the waterlines
 * @param leftWord what lies to the left
 * @param rightWord what lies to the right
 */
record Elevation(List<PlacedPart> parts, Function<PlacedPart, OptionalDouble> across, Optional<Path2D> outline, List<Surface> surfaces,
        String leftWord, String rightWord) {

    /**
     * A waterline: height on the boat at a distance across.
     *
     * @param atZero height where the distance is none, in metres
     * @param slope rise over distance
     * @param name what it is, or an empty text
     */
    record Surface(double atZero, double slope, String name) {
        double at(double across) {
            return atZero + slope * across;
        }
    }

    /** A part and where it is seen, in metres. */
    record Seen(PlacedPart part, double across, double up) {
    }

    private static final double LEAST_SPAN_M = 0.8;
    private static final double BORDER = 0.12;
    /** In a window there is less room, and names may lie at the border. */
    private static final double NARROW_BORDER = 0.05;

    List<Seen> seen() {
        var seen = new ArrayList<Seen>();
        for (PlacedPart part : parts) {
            OptionalDouble distance = across.apply(part);
            if (distance.isPresent() && part.z().isPresent()) {
                seen.add(new Seen(part, distance.getAsDouble(), part.z().getAsDouble()));
            }
        }
        return seen;
    }

    List<String> notSeen() {
        return parts.stream().filter(part -> across.apply(part).isEmpty() || part.z().isEmpty()).map(PlacedPart::name).toList();
    }

    /** What must be on the paper: all parts and the water beside them, in metres; y is up. */
    Rectangle2D bounds() {
        return bounds(BORDER);
    }

    /** The same in a window. */
    Rectangle2D narrowBounds() {
        return bounds(NARROW_BORDER);
    }

    private Rectangle2D bounds(double border) {
        Rectangle2D bounds = null;
        for (Seen seen : seen()) {
            var point = new Rectangle2D.Double(seen.across, seen.up, 0, 0);
            bounds = bounds == null ? point : bounds.createUnion(point);
        }
        bounds = bounds.createUnion(new Rectangle2D.Double(bounds.getX(), 0, 0, 0));
        double width = Math.max(bounds.getWidth(), LEAST_SPAN_M);
        double height = Math.max(bounds.getHeight(), LEAST_SPAN_M);
        double extraX = width * (1 + 2 * border) - bounds.getWidth();
        double extraY = height * (1 + 2 * border) - bounds.getHeight();
        return new Rectangle2D.Double(bounds.getX() - extraX / 2, bounds.getY() - extraY / 2, bounds.getWidth() + extraX,
            bounds.getHeight() + extraY);
    }

    /** From metres, up, to millimetres of the paper, down: the bounds in the middle of the area, one scale both ways. */
    static AffineTransform onto(Rectangle2D metres, Rectangle2D paper) {
        double scale = Math.min(paper.getWidth() / metres.getWidth(), paper.getHeight() / metres.getHeight());
        var transform = new AffineTransform();
        transform.translate(paper.getCenterX(), paper.getCenterY());
        transform.scale(scale, -scale);
        transform.translate(-metres.getCenterX(), -metres.getCenterY());
        return transform;
    }

    String inWords(Heights heights) {
        return String.join(" ", seen().stream().map(seen -> heights.sentence(seen.part())).toList());
    }
}
