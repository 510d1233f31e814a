// SPDX-License-Identifier: EPL-2.0
package garboard.report.drawing;

import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import garboard.physics.geometry.Attitude;
import garboard.physics.geometry.BoatPoint;
import garboard.quantity.Length;
import garboard.report.drawing.Elevation.Seen;
import garboard.report.drawing.Elevation.Surface;
import garboard.report.drawing.NamePlacing.Around;
import garboard.report.drawing.PlacedPart.Circuit;
import garboard.report.drawing.Tags.Tagged;

/**
 * An elevation in a window: the boat stands still and the water leans. The surface is drawn where it cuts the centreline or the midship
 * section; each point that keeps the sea out is measured square to the surface at its own place, so that its height is true in any attitude.
 */
final class LiveElevation implements LiveDrawing {

    private static final double HEAD = 4.4;
    private static final double FOOT = 4;
    private static final double TICK = 1.8;
    private static final double SCALE_BAR = 26;
    /** How many things may be in the way of a waterline's name before it goes to the end where one would not look for it. */
    private static final int UNUSUAL = 3;

    private final View view;
    private final Showing showing;
    private final Rectangle2D area;
    private final Rectangle2D inner;
    private final Frame frame;
    private final AffineTransform toSheet;
    private final Elevation elevation;
    private final List<Tagged> tagged = new ArrayList<>();
    private final Map<Surface, SurfaceName> surfaceNames = new LinkedHashMap<>();
    private final Tags tags;

    LiveElevation(View view, Showing showing, Rectangle2D area, Optional<Frame> kept, boolean hold, Map<String, Integer> earlier, Pen pen) {
        this.view = view;
        this.showing = showing;
        this.area = area;
        this.inner = new Rectangle2D.Double(area.getX(), area.getY() + HEAD, area.getWidth(), area.getHeight() - HEAD);
        this.elevation = new Elevation(showing.arrangement().parts(), part -> Arrangement.across(part, view), showing.arrangement().hull(view),
            surfaces(), "", "");
        this.frame = hold && kept.isPresent() ? kept.get() : kept.map(old -> old.or(tight(), wanted())).orElseGet(() -> new Frame(wanted()));
        this.toSheet = Elevation.onto(frame.metres(), room());
        elevation.seen().forEach(seen -> {
            Point2D at = sheet(seen.across(), seen.up());
            tagged.add(new Tagged(seen.part(), at.getX(), at.getY()));
        });
        this.tags = new Tags(showing, tagged, new Rectangle2D.Double(inner.getX() + 1, inner.getY(), inner.getWidth() - 2, inner.getHeight() - FOOT),
            around(pen), earlier, pen);
    }

    private Around around(Pen pen) {
        double left = metresAcross(inner.getX());
        double right = metresAcross(inner.getMaxX());
        List<Surface> named = showing.inclined() ? List.of(shown()) : elevation.surfaces();
        var hairs = new ArrayList<Line2D>();
        var taken = new ArrayList<Rectangle2D>();
        for (Surface surface : named) {
            hairs.add(new Line2D.Double(sheet(left, surface.at(left)), sheet(right, surface.at(right))));
        }
        tagged.forEach(one -> foot(one).ifPresent(end -> hairs.add(new Line2D.Double(one.at(), end))));
        for (Surface surface : named) {
            nameOf(surface, left, right, taken, pen).ifPresent(place -> {
                surfaceNames.put(surface, place);
                taken.add(place.area(pen.widthOf(surface.name(), place.letters())));
            });
        }
        return new Around(runs(), hairs, taken);
    }

    /** At the end where fewer things are in the way; at the usual one where it is all the same. */
    private Optional<SurfaceName> nameOf(Surface surface, double left, double right, List<Rectangle2D> taken, Pen pen) {
        double width = pen.widthOf(surface.name(), Letters.SMALL_LEFT);
        List<SurfaceName> places = SurfaceName.within(surface, width, new double[] {left, right}, toSheet, inner);
        return places.stream().min(Comparator.comparingInt(place -> inTheWay(place.area(width), taken)
            + (place.letters().equals(places.getFirst().letters()) ? 0 : UNUSUAL)));
    }

    private int inTheWay(Rectangle2D box, List<Rectangle2D> taken) {
        var scaleBar = new Rectangle2D.Double(area.getX(), area.getMaxY() - FOOT, SCALE_BAR + 20, FOOT);
        int things = taken.stream().anyMatch(box::intersects) || scaleBar.intersects(box) ? 10 : 0;
        for (Tagged one : tagged) {
            var mark = new Rectangle2D.Double(one.x() - Spot.REACH, one.y() - Spot.REACH, 2 * Spot.REACH, 2 * Spot.REACH);
            things += mark.intersects(box) ? 3 : 0;
            things += foot(one).filter(end -> new Line2D.Double(one.at(), end).intersects(box)).isPresent() ? 2 : 0;
        }
        for (Line2D run : runs()) {
            things += run.intersects(box) ? 2 : 0;
        }
        for (Line2D water : waterLines()) {
            things += water.intersects(box) ? 2 : 0;
        }
        return things + (elevation.outline().filter(hull -> crosses(hull, box)).isPresent() ? 1 : 0);
    }

    private List<Line2D> waterLines() {
        double left = metresAcross(inner.getX());
        double right = metresAcross(inner.getMaxX());
        return Stream.concat(elevation.surfaces().stream(), Stream.of(shown()))
            .map(surface -> (Line2D) new Line2D.Double(sheet(left, surface.at(left)), sheet(right, surface.at(right)))).toList();
    }

    private boolean crosses(Path2D hull, Rectangle2D box) {
        var there = toSheet.createTransformedShape(hull);
        return there.intersects(box) && !there.contains(box);
    }

    /** Where the height of a point that keeps the sea out is measured to. */
    private Optional<Point2D> foot(Tagged one) {
        return one.part().place().filter(place -> PlacedParts.KEEPERS.contains(one.part().id())).map(place -> {
            PlumbFoot foot = PlumbFoot.of(place, showing.attitude());
            return sheet(view == View.CROSS ? foot.toStarboard() : foot.forward(), foot.height());
        });
    }

    private List<Surface> surfaces() {
        var surfaces = new ArrayList<Surface>();
        surfaces.add(new Surface(0, 0, showing.words().get("water.loaded")));
        Water water = showing.arrangement().water();
        double most = view == View.SIDE ? water.trim().si() : water.heel().si();
        if (most > 0) {
            var words = new PartWords(showing);
            for (int sign : new int[] {1, -1}) {
                Attitude designed = view == View.SIDE ? water.trimmed(sign) : water.heeled(sign);
                surfaces.add(surface(designed, showing.inclined() ? "" : words.attitude(designed)));
            }
        }
        return surfaces;
    }

    private Surface surface(Attitude attitude, String name) {
        BoatPoint middle = BoatPoint.atHeight(Length.of(0));
        double atZero = Water.surface(middle, attitude);
        BoatPoint aside = view == View.SIDE ? middle.withForward(Length.of(1)) : middle.withStarboard(Length.of(1));
        return new Surface(atZero, Water.surface(aside, attitude) - atZero, name);
    }

    private Surface shown() {
        return surface(showing.attitude(), new PartWords(showing).attitude(showing.attitude()));
    }

    /** All parts; where the person works on the vessel herself, the hull, too. */
    private Rectangle2D wanted() {
        Rectangle2D bounds = elevation.narrowBounds();
        return showing.about().isPresent() ? bounds
            : elevation.outline().map(hull -> bounds.createUnion(grown(hull.getBounds2D()))).orElse(bounds);
    }

    private static Rectangle2D grown(Rectangle2D box) {
        double rim = 0.04 * Math.max(box.getWidth(), box.getHeight());
        return new Rectangle2D.Double(box.getX() - rim, box.getY() - rim, box.getWidth() + 2 * rim, box.getHeight() + 2 * rim);
    }

    private Rectangle2D tight() {
        Rectangle2D tight = null;
        for (Seen seen : elevation.seen()) {
            var point = new Rectangle2D.Double(seen.across(), seen.up(), 1e-6, 1e-6);
            tight = tight == null ? point : tight.createUnion(point);
        }
        return tight;
    }

    /** Names need room beside or above and below: on whichever side costs the drawing less. */
    private Rectangle2D room() {
        double aside = Math.min(22, inner.getWidth() * 0.14);
        double above = Math.min(5.5, inner.getHeight() * 0.11);
        Rectangle2D narrow = new Rectangle2D.Double(inner.getX() + aside, inner.getY(), inner.getWidth() - 2 * aside, inner.getHeight() - FOOT);
        Rectangle2D low = new Rectangle2D.Double(inner.getX(), inner.getY() + above, inner.getWidth(), inner.getHeight() - 2 * above - FOOT);
        double one = Elevation.onto(frame.metres(), narrow).getScaleX();
        double other = Elevation.onto(frame.metres(), low).getScaleX();
        return one > other ? narrow : low;
    }

    private List<Line2D> runs() {
        var runs = new ArrayList<Line2D>();
        for (Circuit circuit : Circuit.values()) {
            List<Tagged> along = tagged.stream().filter(one -> one.part().circuit() == circuit).toList();
            for (int index = 1; index < along.size(); index++) {
                runs.add(new Line2D.Double(along.get(index - 1).at(), along.get(index).at()));
            }
        }
        return runs;
    }

    @Override
    public void paint(Pen pen, Emphasis emphasis) {
        pen.inside(inner);
        paintWater(pen);
        elevation.outline().ifPresent(outline -> pen.ink(Ink.PALE).width(Pen.FIRM).draw(toSheet.createTransformedShape(outline)));
        for (Circuit circuit : Circuit.values()) {
            Runs.stroke(pen, circuit);
            List<Tagged> along = tagged.stream().filter(one -> one.part().circuit() == circuit).toList();
            for (int index = 1; index < along.size(); index++) {
                pen.line(along.get(index - 1).x(), along.get(index - 1).y(), along.get(index).x(), along.get(index).y());
            }
        }
        tagged.forEach(one -> foot(one).ifPresent(end -> paintHeight(pen, one, end)));
        pen.everywhere();
        for (Tagged one : tagged) {
            Marks.ring(pen, one.x(), one.y(), one.part().id(), emphasis);
            Marks.drawLive(pen, one.x(), one.y(), one.part().worst().map(verdict -> verdict.standing()));
        }
        tags.paint(pen, emphasis);
        paintEdges(pen);
    }

    private void paintWater(Pen pen) {
        double left = metresAcross(inner.getX());
        double right = metresAcross(inner.getMaxX());
        Surface shown = shown();
        var sea = new Path2D.Double();
        Point2D from = sheet(left, shown.at(left));
        Point2D to = sheet(right, shown.at(right));
        sea.moveTo(from.getX(), from.getY());
        sea.lineTo(to.getX(), to.getY());
        sea.lineTo(inner.getMaxX(), Math.max(inner.getMaxY(), to.getY()));
        sea.lineTo(inner.getX(), Math.max(inner.getMaxY(), from.getY()));
        sea.closePath();
        pen.ink(Ink.SEA).fill(sea);
        for (Surface surface : elevation.surfaces()) {
            boolean level = surface == elevation.surfaces().getFirst();
            paint(pen.ink(Ink.WATER).stroke(level ? Pen.FINE : Pen.HAIR, level ? Pen.SOLID : Pen.DASHED), surface, left, right);
        }
        paint(pen.ink(Ink.WATER).width(Pen.FIRM), shown, left, right);
        surfaceNames.forEach((surface, place) -> pen.ink(Ink.WATER).text(surface.name(), place.x(), place.y(), place.letters()));
    }

    private void paint(Pen pen, Surface surface, double left, double right) {
        Point2D from = sheet(left, surface.at(left));
        Point2D to = sheet(right, surface.at(right));
        pen.line(from.getX(), from.getY(), to.getX(), to.getY());
    }

    /** From the point square down to the surface, or up to it, with a piece of the surface as it lies there. */
    private void paintHeight(Pen pen, Tagged one, Point2D end) {
        boolean dry = PlumbFoot.of(one.part().place().orElseThrow(), showing.attitude()).clearance() >= 0;
        pen.ink(dry ? Ink.FAINT : Ink.WATER).stroke(Pen.HAIR, dry ? Pen.SOLID : Pen.DOTTED).line(one.x(), one.y(), end.getX(), end.getY());
        double length = end.distance(one.at());
        if (length > 5) {
            double dx = (end.getX() - one.x()) / length;
            double dy = (end.getY() - one.y()) / length;
            pen.width(Pen.HAIR).arrow(end.getX(), end.getY(), dx, dy).arrow(one.x() + 1.8 * dx, one.y() + 1.8 * dy, -dx, -dy);
        }
        double slope = shown().slope();
        double run = TICK / Math.hypot(1, slope);
        pen.ink(Ink.WATER).width(Pen.FIRM).line(end.getX() - run, end.getY() + run * slope, end.getX() + run, end.getY() - run * slope);
    }

    private void paintEdges(Pen pen) {
        Words words = showing.words();
        pen.ink(Ink.INK).text(words.get("view." + view), area.getCenterX(), area.getY() + 3, Letters.SMALL_CENTRE);
        pen.ink(Ink.FAINT).text("\u25c4 " + words.get("edge." + view + ".left"), area.getX() + 1, area.getY() + 3, Letters.SMALL_LEFT)
            .text(words.get("edge." + view + ".right") + " \u25ba", area.getMaxX() - 1, area.getY() + 3, Letters.SMALL_RIGHT);
        double metres = showing.heights().longestRound(SCALE_BAR / toSheet.getScaleX());
        double width = metres * toSheet.getScaleX();
        double y = area.getMaxY() - 1;
        pen.ink(Ink.FAINT).width(Pen.FINE).line(area.getX() + 1, y, area.getX() + 1 + width, y).line(area.getX() + 1, y - 1, area.getX() + 1, y)
            .line(area.getX() + 1 + width, y - 1, area.getX() + 1 + width, y)
            .text(showing.heights().length(metres), area.getX() + 2.5 + width, y, Letters.SMALL_LEFT);
    }

    @Override
    public List<Spot> spots() {
        return tagged.stream().map(one -> new Spot(one.part().id(), one.part().name(), one.part().key() + ".z", Optional.of(one.at()),
            tags.area(one.part().id()))).toList();
    }

    @Override
    public OptionalDouble metresUp() {
        return OptionalDouble.of(1 / toSheet.getScaleX());
    }

    @Override
    public OptionalDouble metresAcross() {
        return metresUp();
    }

    @Override
    public View view() {
        return view;
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
        return showing.words().get("words." + view, words.attitude(showing.attitude())) + " "
            + tagged.stream().map(one -> words.sentence(one.part())).collect(Collectors.joining(" "));
    }

    private Point2D sheet(double across, double up) {
        return toSheet.transform(new Point2D.Double(across, up), null);
    }

    private double metresAcross(double x) {
        return (x - toSheet.getTranslateX()) / toSheet.getScaleX();
    }
}
