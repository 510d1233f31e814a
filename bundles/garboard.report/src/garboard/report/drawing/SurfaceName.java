// SPDX-License-Identifier: EPL-2.0
package garboard.report.drawing;

import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import garboard.report.drawing.Elevation.Surface;

/** Where the name of a waterline stands. */
record SurfaceName(double x, double y, Letters letters) {

    /** So little a line may rise along its name for this to stand on either side of it. */
    private static final double FLAT = 0.7;

    /** The area of the name. @param width of its letters */
    Rectangle2D area(double width) {
        return new Rectangle2D.Double(letters.anchor() == Letters.Anchor.RIGHT ? x - width : x, y - 2.5, width, 3.1);
    }

    /**
     * At the end where it lies farthest from the level one, and on the side turned away from it; the level one below itself at the right.
     *
     * @param left where the drawing begins, in metres
     * @param right where it ends, in metres
     */
    static Optional<SurfaceName> of(Surface surface, Surface level, double left, double right, AffineTransform toPaper, Rectangle2D area) {
        if (surface.name().isEmpty()) {
            return Optional.empty();
        }
        if (surface.slope() == 0) {
            double y = toPaper.transform(new Point2D.Double(right, surface.at(right)), null).getY() + 3.4;
            return Optional.of(new SurfaceName(area.getMaxX() - 1, y, Letters.SMALL_RIGHT));
        }
        double offLeft = surface.at(left) - level.at(left);
        double offRight = surface.at(right) - level.at(right);
        boolean alike = Math.abs(Math.abs(offLeft) - Math.abs(offRight)) < 0.2 * Math.abs(offRight - offLeft);
        boolean atRight = alike ? surface.slope() >= 0 : Math.abs(offRight) > Math.abs(offLeft); // alike: where it lies higher
        boolean above = (atRight ? offRight : offLeft) >= 0;
        double span = right - left;
        double across = atRight ? right - span * 0.01 : left + span * 0.01;
        Point2D at = toPaper.transform(new Point2D.Double(across, surface.at(across)), null);
        double y = Math.min(Math.max(at.getY() + (above ? -0.9 : 3), area.getY() + 3), area.getMaxY() - 1);
        return Optional.of(new SurfaceName(at.getX(), y, atRight ? Letters.SMALL_RIGHT : Letters.SMALL_LEFT));
    }

    /**
     * In a window, where a steep line may leave at the top or the foot: there, by the line. First the end where the water stands higher.
     *
     * @param width of the name
     * @param leftRight where the drawing begins and ends, in metres
     */
    static List<SurfaceName> within(Surface surface, double width, double[] leftRight, AffineTransform toSheet, Rectangle2D area) {
        double left = leftRight[0];
        double right = leftRight[1];
        if (surface.name().isEmpty()) {
            return List.of();
        }
        if (surface.slope() == 0) {
            double y = toSheet.transform(new Point2D.Double(right, surface.at(right)), null).getY() + 3.2;
            return List.of(new SurfaceName(area.getMaxX() - 1, y, Letters.SMALL_RIGHT), new SurfaceName(area.getX() + 1, y, Letters.SMALL_LEFT));
        }
        double scale = toSheet.getScaleX();
        double highest = (toSheet.getTranslateY() - area.getY() - 4) / scale;
        double lowest = (toSheet.getTranslateY() - area.getMaxY() + 1) / scale;
        double atHighest = (highest - surface.atZero()) / surface.slope();
        double atLowest = (lowest - surface.atZero()) / surface.slope();
        double from = Math.max(left, Math.min(atHighest, atLowest));
        double to = Math.min(right, Math.max(atHighest, atLowest));
        if (from >= to) {
            return List.of();
        }
        boolean usuallyRight = surface.slope() > 0;
        var places = new ArrayList<SurfaceName>();
        for (boolean atRight : new boolean[] {usuallyRight, !usuallyRight}) {
            for (double inwards : new double[] {0, 0.12, 0.24}) {
                double across = atRight ? to - inwards * (to - from) : from + inwards * (to - from);
                Point2D end = toSheet.transform(new Point2D.Double(across, surface.at(across)), null);
                boolean turnsAwayAbove = atRight == surface.slope() > 0;
                places.add(beside(end, atRight, turnsAwayAbove, area));
                if (Math.abs(surface.slope()) * width < FLAT) {
                    places.add(beside(end, atRight, !turnsAwayAbove, area));
                }
            }
        }
        return places;
    }

    private static SurfaceName beside(Point2D end, boolean atRight, boolean above, Rectangle2D area) {
        double y = Math.clamp(end.getY() + (above ? -1 : 3.2), area.getY() + 3, area.getMaxY() - 1);
        return new SurfaceName(end.getX() + (atRight ? -1 : 1), y, atRight ? Letters.SMALL_RIGHT : Letters.SMALL_LEFT);
    }
}
