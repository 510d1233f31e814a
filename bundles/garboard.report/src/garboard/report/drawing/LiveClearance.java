// SPDX-License-Identifier: EPL-2.0
package garboard.report.drawing;

import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

import garboard.physics.geometry.HeeledHeight;
import garboard.physics.geometry.HeeledHeight.HeightAt;
import garboard.quantity.Angle;
import garboard.report.drawing.NamePlacing.Around;
import garboard.report.drawing.Tags.Tagged;

/**
 * In a window, the heights above the water against heel at the trim that is shown, with the heel that is shown as a line through them and
 * the heels designed for as limits.
 */
final class LiveClearance implements LiveDrawing {

    private static final double LEFT = 17;
    private static final double HEAD = 4.4;
    private static final double FOOT = 5;
    private static final double RIGHT = 4;
    private static final int STEPS = 60;

    /** One curve: what it is of, and its heights from port to starboard. */
    private record Curve(PlacedPart part, List<HeightAt> points) {
    }

    private final Showing showing;
    private final Rectangle2D area;
    private final Axes axes;
    private final Frame frame;
    private final List<Curve> curves;
    private final List<Tagged> tagged = new ArrayList<>();
    private final Tags tags;
    private final double degrees;

    private LiveClearance(List<Curve> curves, double reach, Showing showing, Rectangle2D area, Optional<Frame> kept, boolean hold,
            Map<String, Integer> earlier, Pen pen) {
        this.showing = showing;
        this.area = area;
        this.curves = curves;
        this.degrees = Math.toDegrees(reach);
        this.frame = frame(curves, degrees, kept, hold);
        Rectangle2D shown = frame.metres();
        var plot = new Rectangle2D.Double(area.getX() + LEFT, area.getY() + HEAD, area.getWidth() - LEFT - RIGHT, area.getHeight() - HEAD - FOOT);
        this.axes = Axes.live(plot, new double[] {-degrees, degrees}, new double[] {shown.getY(), shown.getMaxY()}, showing.words());
        double here = Math.toDegrees(showing.attitude().heel().si());
        Line2D cursor = new Line2D.Double(axes.x(here), plot.y, axes.x(here), plot.getMaxY());
        var lines = new ArrayList<Line2D>();
        for (Curve curve : curves) {
            double height = HeeledHeight.of(curve.part.place().orElseThrow(), showing.attitude()).si();
            tagged.add(new Tagged(curve.part, axes.x(here), axes.y(height)));
            for (int index = 6; index < curve.points.size(); index += 6) {
                lines.add(new Line2D.Double(x(curve.points.get(index - 6)), y(curve.points.get(index - 6)), x(curve.points.get(index)), y(curve.points.get(index))));
            }
        }
        this.tags = new Tags(showing, tagged, new Rectangle2D.Double(plot.x + 0.5, plot.y, plot.width + RIGHT - 1, plot.height),
            new Around(lines, List.of(cursor), List.of()), earlier, pen);
    }

    /**
     * Nothing where no point that keeps the sea out has a place.
     *
     * @param reach heel to which the curves go, either way, in radians
     */
    static Optional<LiveDrawing> of(double reach, Showing showing, Rectangle2D area, Optional<Frame> kept, boolean hold, Map<String, Integer> earlier,
            Pen pen) {
        List<Curve> curves = showing.arrangement().keepers().stream().filter(part -> part.place().isPresent())
            .map(part -> new Curve(part, HeeledHeight.curve(part.place().orElseThrow(), showing.attitude(), Angle.of(reach), STEPS))).toList();
        return curves.isEmpty() ? Optional.empty() : Optional.of(new LiveClearance(curves, reach, showing, area, kept, hold, earlier, pen));
    }

    private static Frame frame(List<Curve> curves, double degrees, Optional<Frame> kept, boolean hold) {
        if (hold && kept.isPresent()) {
            return kept.get();
        }
        double low = Math.min(0, curves.stream().flatMap(curve -> curve.points.stream()).mapToDouble(at -> at.height().si()).min().orElse(0));
        double high = Math.max(0, curves.stream().flatMap(curve -> curve.points.stream()).mapToDouble(at -> at.height().si()).max().orElse(0));
        double rim = Math.max((high - low) * 0.08, 0.02);
        var wanted = new Rectangle2D.Double(-degrees, low - rim, 2 * degrees, high - low + 2 * rim);
        return kept.map(old -> old.or(new Rectangle2D.Double(-degrees, low, 2 * degrees, high - low), wanted)).orElseGet(() -> new Frame(wanted));
    }

    @Override
    public void paint(Pen pen, Emphasis emphasis) {
        Rectangle2D plot = axes.plot();
        double surface = Math.clamp(axes.y(0), plot.getY(), plot.getMaxY());
        pen.ink(Ink.SEA).fill(new Rectangle2D.Double(plot.getX(), surface, plot.getWidth(), plot.getMaxY() - surface));
        axes.heights(pen, showing.heights());
        axes.angles(pen, degrees > 45 ? 15 : degrees > 20 ? 10 : 5);
        pen.ink(Ink.WATER).width(Pen.FIRM).line(plot.getX(), surface, plot.getMaxX(), surface);
        pen.inside(plot);
        paintLimits(pen);
        for (int index = 0; index < curves.size(); index++) {
            paint(pen, curves.get(index), index, emphasis);
        }
        pen.everywhere();
        double here = axes.x(Math.toDegrees(showing.attitude().heel().si()));
        pen.ink(Ink.CHOSEN).width(Pen.FINE).line(here, plot.getY(), here, plot.getMaxY());
        for (Tagged one : tagged) {
            Marks.ring(pen, one.x(), one.y(), one.part().id(), emphasis);
            Marks.drawLive(pen, one.x(), one.y(), one.part().worst().map(verdict -> verdict.standing()));
        }
        tags.paint(pen, emphasis);
        paintEdges(pen);
    }

    private void paintLimits(Pen pen) {
        double limit = Math.toDegrees(showing.arrangement().water().heel().si());
        if (limit > 0) {
            Rectangle2D plot = axes.plot();
            pen.ink(Ink.FAINT).stroke(Pen.FINE, Pen.DASHED);
            pen.line(axes.x(-limit), plot.getY(), axes.x(-limit), plot.getMaxY()).line(axes.x(limit), plot.getY(), axes.x(limit), plot.getMaxY());
            pen.text(showing.words().get("clearance.designed"), axes.x(limit) + 0.8, plot.getMaxY() - 1, Letters.SMALL_LEFT);
        }
    }

    private void paint(Pen pen, Curve curve, int index, Emphasis emphasis) {
        var path = new Path2D.Double();
        for (HeightAt point : curve.points) {
            if (path.getCurrentPoint() == null) {
                path.moveTo(x(point), y(point));
            } else {
                path.lineTo(x(point), y(point));
            }
        }
        ClearancePlot.style(pen, index);
        if (emphasis.isChosen(curve.part.id())) {
            pen.ink(Ink.CHOSEN);
        }
        pen.draw(path);
    }

    private double x(HeightAt point) {
        return axes.x(Math.toDegrees(point.attitude().heel().si()));
    }

    private double y(HeightAt point) {
        return axes.y(point.height().si());
    }

    private void paintEdges(Pen pen) {
        Words words = showing.words();
        pen.ink(Ink.INK).text(words.get("view.CLEARANCE"), area.getCenterX(), area.getY() + 3, Letters.SMALL_CENTRE);
        pen.ink(Ink.FAINT).text("\u25c4 " + words.get("edge.CROSS.left"), axes.plot().getX(), area.getY() + 3, Letters.SMALL_LEFT)
            .text(words.get("edge.CROSS.right") + " \u25ba", area.getMaxX() - 1, area.getY() + 3, Letters.SMALL_RIGHT);
    }

    @Override
    public List<Spot> spots() {
        return tagged.stream().map(one -> new Spot(one.part().id(), one.part().name(), one.part().key() + ".z", Optional.of(one.at()),
            tags.area(one.part().id()))).toList();
    }

    @Override
    public OptionalDouble heelAt(double x) {
        Rectangle2D plot = axes.plot();
        return x < plot.getX() || x > plot.getMaxX() ? OptionalDouble.empty() : OptionalDouble.of(Math.toRadians(axes.across(x)));
    }

    @Override
    public OptionalDouble metresUp() {
        return OptionalDouble.empty();
    }

    @Override
    public OptionalDouble metresAcross() {
        return OptionalDouble.empty();
    }

    @Override
    public View view() {
        return View.CLEARANCE;
    }

    @Override
    public Rectangle2D area() {
        return area;
    }

    @Override
    public Frame frame() {
        return frame;
    }

    @Override
    public Map<String, Integer> names() {
        return tags.tried();
    }

    @Override
    public String inWords() {
        var words = new PartWords(showing);
        return showing.words().get("words.CLEARANCE", words.attitude(showing.attitude())) + " "
            + tagged.stream().map(one -> words.sentence(one.part())).collect(Collectors.joining(" "));
    }
}
