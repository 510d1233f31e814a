// SPDX-License-Identifier: EPL-2.0
package garboard.report.drawing;

import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import garboard.report.drawing.Elevation.Seen;
import garboard.report.drawing.Elevation.Surface;
import garboard.report.drawing.PlacedPart.Circuit;

/** Paints an elevation on a sheet of paper: the view in the middle, names at both sides, scale and key at the foot. */
final class ElevationPainter {

    private static final double COLUMN_MM = 52;
    private static final double FOOT_MM = 17;
    private static final double HEAD_MM = 5;

    private final Elevation elevation;
    private final Heights heights;
    private final double widthMm;
    private final double heightMm;
    private final Rectangle2D area;
    private final AffineTransform toPaper;

    ElevationPainter(Elevation elevation, Heights heights, double widthMm, double heightMm) {
        this.elevation = elevation;
        this.heights = heights;
        this.widthMm = widthMm;
        this.heightMm = heightMm;
        this.area = new Rectangle2D.Double(COLUMN_MM, HEAD_MM, widthMm - 2 * COLUMN_MM, heightMm - FOOT_MM - HEAD_MM);
        this.toPaper = Elevation.onto(elevation.bounds(), area);
    }

    void paint(Graphics2D graphics) {
        var pen = Pen.onPaper(graphics);
        paintWater(pen);
        paintHull(pen);
        paintRuns(pen);
        paintHeights(pen);
        for (Seen seen : elevation.seen()) {
            Point2D at = paper(seen.across(), seen.up());
            Marks.draw(pen, at.getX(), at.getY(), seen.part().worst().map(verdict -> verdict.standing()));
        }
        new Callouts(new double[] {COLUMN_MM - 2, widthMm - COLUMN_MM + 2, HEAD_MM, heightMm - FOOT_MM}, COLUMN_MM - 3).draw(pen, callouts());
        pen.ink(Ink.FAINT).text("\u25c4 " + elevation.leftWord(), area.getX(), HEAD_MM - 1.2, Letters.SMALL_LEFT)
            .text(elevation.rightWord() + " \u25ba", area.getMaxX(), HEAD_MM - 1.2, Letters.SMALL_RIGHT);
        new Foot(heights, toPaper.getScaleX()).paint(pen, new Rectangle2D.Double(0, heightMm - FOOT_MM + 4, widthMm, FOOT_MM - 4),
            elevation.seen().stream().map(seen -> seen.part()).toList());
    }

    private void paintWater(Pen pen) {
        pen.inside(area);
        double left = metresAcross(area.getX());
        double right = metresAcross(area.getMaxX());
        Surface upright = elevation.surfaces().getFirst();
        var sea = new Path2D.Double();
        Point2D start = paper(left, upright.at(left));
        sea.moveTo(start.getX(), start.getY());
        Point2D end = paper(right, upright.at(right));
        sea.lineTo(end.getX(), end.getY());
        sea.lineTo(area.getMaxX(), area.getMaxY());
        sea.lineTo(area.getX(), area.getMaxY());
        sea.closePath();
        pen.ink(Ink.SEA).fill(sea);
        for (Surface surface : elevation.surfaces()) {
            Point2D from = paper(left, surface.at(left));
            Point2D to = paper(right, surface.at(right));
            boolean level = surface == upright;
            pen.ink(Ink.WATER).stroke(level ? Pen.FIRM : Pen.FINE, level ? Pen.SOLID : Pen.DASHED).line(from.getX(), from.getY(), to.getX(), to.getY());
            SurfaceName.of(surface, upright, left, right, toPaper, area)
                .ifPresent(place -> pen.ink(Ink.WATER).text(surface.name(), place.x(), place.y(), place.letters()));
        }
        pen.everywhere();
    }

    private void paintHull(Pen pen) {
        elevation.outline().ifPresent(outline -> pen.inside(area).ink(Ink.PALE).width(Pen.FIRM)
            .draw(toPaper.createTransformedShape(outline)).everywhere());
    }

    private void paintRuns(Pen pen) {
        for (Circuit circuit : Circuit.values()) {
            Optional<Point2D> before = Optional.empty();
            Runs.stroke(pen, circuit);
            for (Seen seen : elevation.seen()) {
                if (seen.part().circuit() == circuit) {
                    Point2D here = paper(seen.across(), seen.up());
                    before.ifPresent(there -> pen.line(there.getX(), there.getY(), here.getX(), here.getY()));
                    before = Optional.of(here);
                }
            }
        }
    }

    /** Dimension lines from the loaded waterline for the points that keep the sea out. */
    private void paintHeights(Pen pen) {
        for (Seen seen : elevation.seen()) {
            if (PlacedParts.KEEPERS.contains(seen.part().id())) {
                Point2D top = paper(seen.across(), seen.up());
                Point2D foot = paper(seen.across(), elevation.surfaces().getFirst().at(seen.across()));
                pen.ink(Ink.FAINT).width(Pen.HAIR).line(top.getX(), top.getY(), foot.getX(), foot.getY());
                double down = Math.signum(foot.getY() - top.getY());
                if (down != 0 && Math.abs(foot.getY() - top.getY()) > 5) {
                    pen.arrow(foot.getX(), foot.getY(), 0, down).arrow(top.getX(), top.getY() + 1.5 * down, 0, -down);
                }
            }
        }
    }

    private List<Callouts.Callout> callouts() {
        var callouts = new ArrayList<Callouts.Callout>();
        for (Seen seen : elevation.seen()) {
            Point2D at = paper(seen.across(), seen.up());
            callouts.add(new Callouts.Callout(at.getX(), at.getY(), heights.lines(seen.part())));
        }
        return callouts;
    }

    private Point2D paper(double across, double up) {
        return toPaper.transform(new Point2D.Double(across, up), null);
    }

    private double metresAcross(double paperX) {
        return (paperX - toPaper.getTranslateX()) / toPaper.getScaleX();
    }
}
