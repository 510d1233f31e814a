// SPDX-License-Identifier: EPL-2.0
package garboard.report.drawing;

import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import garboard.report.drawing.NamePlacing.Around;
import garboard.report.drawing.NamePlacing.Name;
import garboard.report.drawing.NamePlacing.Place;
import garboard.report.drawing.PlacedPart.Circuit;

/**
 * What stands in a window while there is nothing to draw: an arrangement that is made up, so that a person sees which places are asked
 * for, each leading to its field.
 */
final class LiveSketch implements LiveDrawing {

    /** Made up: forward, to starboard, up, in metres. */
    private static final Map<String, double[]> PLACES = Map.ofEntries(
        Map.entry("fuelTank", new double[] {1.9, 1.1, -0.1}), Map.entry("fuelSeparator", new double[] {0.7, 0.95, -0.35}),
        Map.entry("fuelPump", new double[] {0.1, 0.65, -0.1}), Map.entry("pickUp", new double[] {0.2, -0.55, -0.75}),
        Map.entry("strainer", new double[] {-0.1, -0.8, -0.3}), Map.entry("waterPump", new double[] {-0.6, -0.45, -0.12}),
        Map.entry("siphonBreak", new double[] {-1.0, -0.1, 0.8}), Map.entry("injection", new double[] {-1.6, 0.1, 0.12}),
        Map.entry("dryCrest", new double[] {-1.35, 0.2, 0.35}), Map.entry("muffler", new double[] {-2.0, 0.05, -0.4}),
        Map.entry("crest", new double[] {-2.8, 0.5, 0.7}), Map.entry("outlet", new double[] {-3.7, 1.1, 0.2}),
        Map.entry("hull", new double[] {3.2, 1.35, 0.9}), Map.entry("heel", new double[] {2.9, -1.45, 0.0}));
    private static final Rectangle2D SIDE = new Rectangle2D.Double(-4.3, -1.15, 9, 2.5);
    private static final Rectangle2D CROSS = new Rectangle2D.Double(-1.8, -1.15, 3.6, 2.5);
    private static final double HEAD = 8.6;
    private static final double NAME_LINE = 3.5;

    private final View view;
    private final Showing showing;
    private final Rectangle2D area;
    private final AffineTransform toSheet;
    private final Map<String, Lack> lacks = new LinkedHashMap<>();
    private final Map<String, Point2D> marks = new LinkedHashMap<>();
    private final Map<String, Place> places;

    LiveSketch(View view, Showing showing, Rectangle2D area, Pen pen) {
        this.view = view;
        this.showing = showing;
        this.area = area;
        var inner = new Rectangle2D.Double(area.getX() + 6, area.getY() + HEAD + 2, area.getWidth() - 12, area.getHeight() - HEAD - 4);
        this.toSheet = filling(view == View.CROSS ? CROSS : SIDE, inner);
        showing.arrangement().lacks(view).forEach(lack -> lacks.put(lack.id(), lack));
        PLACES.keySet().stream().filter(lacks::containsKey).sorted().forEach(id -> marks.put(id, place(id)));
        var names = new ArrayList<Name>();
        lacks.values().forEach(lack -> Optional.ofNullable(marks.get(lack.id()))
            .ifPresent(at -> names.add(new Name(lack.id(), at, pen.widthOf(text(lack), letters(lack)), NAME_LINE, Double.POSITIVE_INFINITY))));
        this.places = new NamePlacing(new Rectangle2D.Double(area.getX() + 1, area.getY() + HEAD, area.getWidth() - 2, area.getHeight() - HEAD),
            List.copyOf(marks.values()), new Around(runs(), List.of(), List.of()), Map.of()).place(names);
    }

    /** No scale: as wide and as high as there is room, within reason. */
    private static AffineTransform filling(Rectangle2D metres, Rectangle2D inner) {
        double down = inner.getHeight() / metres.getHeight();
        double across = Math.clamp(inner.getWidth() / metres.getWidth(), down / 3, down * 3);
        var transform = new AffineTransform();
        transform.translate(inner.getCenterX(), inner.getCenterY());
        transform.scale(across, -down);
        transform.translate(-metres.getCenterX(), -metres.getCenterY());
        return transform;
    }

    private Point2D place(String id) {
        double[] place = PLACES.get(id);
        return toSheet.transform(new Point2D.Double(view == View.CROSS ? place[1] : place[0], place[2]), null);
    }

    private static String text(Lack lack) {
        return lack.name() + ": " + String.join(", ", lack.missing());
    }

    private Letters letters(Lack lack) {
        return Letters.SMALL_LEFT.bold(showing.chosen().filter(lack.id()::equals).isPresent());
    }

    @Override
    public void paint(Pen pen, Emphasis emphasis) {
        Words words = showing.words();
        pen.ink(Ink.INK).textWithin(area.getWidth() - 2, words.get("sketch.title"), area.getX() + 1, area.getY() + 3.2, Letters.BOLD_LEFT);
        pen.ink(Ink.FAINT).textWithin(area.getWidth() - 2, words.get("sketch.how"), area.getX() + 1, area.getY() + 6.8, Letters.SMALL_LEFT);
        Rectangle2D metres = view == View.CROSS ? CROSS : SIDE;
        double level = toSheet.transform(new Point2D.Double(0, 0), null).getY();
        pen.inside(new Rectangle2D.Double(area.getX(), area.getY() + HEAD, area.getWidth(), area.getHeight() - HEAD));
        pen.ink(Ink.SEA).fill(new Rectangle2D.Double(area.getX(), level, area.getWidth(), Math.max(0, area.getMaxY() - level)));
        pen.ink(Ink.WATER).width(Pen.FINE).line(area.getX(), level, area.getMaxX(), level);
        pen.ink(Ink.PALE).stroke(Pen.FIRM, Pen.DASHED).draw(toSheet.createTransformedShape(view == View.CROSS
            ? HullOutline.cross(metres.getWidth() * 0.84, 0.95, 0.85) : HullOutline.side(8.4, 7.4, 0.95, 0.85)));
        pen.everywhere();
        for (Circuit circuit : Circuit.values()) {
            Runs.stroke(pen, circuit);
            pen.ink(Ink.PALE);
            runs(circuit).forEach(pen::draw);
        }
        marks.forEach((id, at) -> paint(pen, lacks.get(id), at, emphasis));
    }

    private List<Line2D> runs() {
        return Stream.of(Circuit.values()).flatMap(circuit -> runs(circuit).stream()).toList();
    }

    private List<Line2D> runs(Circuit circuit) {
        List<Point2D> along = showing.arrangement().parts().stream().filter(part -> part.circuit() == circuit).map(part -> marks.get(part.id()))
            .filter(Objects::nonNull).toList();
        var runs = new ArrayList<Line2D>();
        for (int index = 1; index < along.size(); index++) {
            runs.add(new Line2D.Double(along.get(index - 1), along.get(index)));
        }
        return runs;
    }

    private void paint(Pen pen, Lack lack, Point2D at, Emphasis emphasis) {
        Optional.ofNullable(places.get(lack.id())).ifPresent(place -> {
            Point2D end = place.nearest(at);
            if (end.distance(at) > 3) {
                pen.ink(Ink.FAINT).width(Pen.HAIR).line(at.getX(), at.getY(), end.getX(), end.getY());
            }
        });
        Marks.ring(pen, at.getX(), at.getY(), lack.id(), emphasis);
        boolean stands = emphasis.isChosen(lack.id()) || emphasis.isPointedAt(lack.id());
        var ring = new Ellipse2D.Double(at.getX() - Marks.HALF, at.getY() - Marks.HALF, 2 * Marks.HALF, 2 * Marks.HALF);
        pen.ink(Ink.BLANK).fill(ring).ink(stands ? Ink.CHOSEN : Ink.FAINT).stroke(Pen.FINE, Pen.DOTTED).draw(ring);
        Optional.ofNullable(places.get(lack.id())).ifPresent(place -> pen.ink(stands ? Ink.CHOSEN : Ink.INK)
            .text(text(lack), place.box().getX(), place.box().getY() + NAME_LINE * 0.75, letters(lack)));
    }

    @Override
    public List<Spot> spots() {
        return lacks.values().stream().filter(lack -> marks.containsKey(lack.id()))
            .map(lack -> new Spot(lack.id(), text(lack), lack.field(), Optional.of(marks.get(lack.id())),
                Optional.ofNullable(places.get(lack.id())).map(Place::box))).toList();
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
    public OptionalDouble metresUp() {
        return OptionalDouble.empty();
    }

    @Override
    public OptionalDouble metresAcross() {
        return OptionalDouble.empty();
    }

    @Override
    public Frame frame() {
        return new Frame(new Rectangle2D.Double());
    }

    @Override
    public Map<String, Integer> names() {
        return Map.of();
    }

    @Override
    public String inWords() {
        return showing.words().get("sketch.title") + " " + lacks.values().stream().map(LiveSketch::text).collect(Collectors.joining("; ")) + ".";
    }
}
