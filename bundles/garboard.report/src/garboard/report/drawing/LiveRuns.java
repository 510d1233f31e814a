// SPDX-License-Identifier: EPL-2.0
package garboard.report.drawing;

import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

import garboard.model.Point;
import garboard.report.drawing.NamePlacing.Around;
import garboard.report.drawing.PlacedPart.Circuit;
import garboard.report.drawing.Tags.Tagged;

/** The heights along one run in a window: of the circuit that the person works on, else of the exhaust. */
final class LiveRuns implements LiveDrawing {

    private static final double LEFT = 17;
    private static final double HEAD = 4.4;
    private static final double FOOT = 5;
    private static final double RIGHT = 6;
    private static final double RIM = 0.16;
    /** A point of the path and a part that are nearer than this are one place, in metres. */
    private static final double SAME_M = 0.0005;

    private final Showing showing;
    private final Rectangle2D area;
    private final Way way;
    private final Frame frame;
    private final Axes axes;
    private final List<Tagged> tagged = new ArrayList<>();
    private final Tags tags;

    private LiveRuns(Way way, Showing showing, Rectangle2D area, Optional<Frame> kept, boolean hold, Map<String, Integer> earlier, Pen pen) {
        this.showing = showing;
        this.area = area;
        this.way = way;
        this.frame = frame(way, kept, hold);
        Rectangle2D metres = frame.metres();
        var plot = new Rectangle2D.Double(area.getX() + LEFT, area.getY() + HEAD, area.getWidth() - LEFT - RIGHT, area.getHeight() - HEAD - FOOT);
        this.axes = Axes.live(plot, new double[] {metres.getX(), metres.getMaxX()}, new double[] {metres.getY(), metres.getMaxY()}, showing.words());
        way.stops().forEach(stop -> tagged.add(new Tagged(stop.part(), axes.x(stop.alongM()), axes.y(stop.heightM()))));
        var lines = new ArrayList<Line2D>();
        for (int index = 1; index < tagged.size(); index++) {
            lines.add(new Line2D.Double(tagged.get(index - 1).at(), tagged.get(index).at()));
        }
        var names = new Rectangle2D.Double(plot.x + 0.5, plot.y, plot.width + RIGHT - 1, plot.height);
        Line2D water = new Line2D.Double(plot.x, axes.y(0), plot.getMaxX(), axes.y(0));
        double said = pen.widthOf(showing.words().get("water.loaded"), Letters.SMALL_RIGHT);
        var name = new Rectangle2D.Double(plot.getMaxX() - said, axes.y(0) + 0.4, said, 3);
        this.tags = new Tags(showing, tagged, names, new Around(lines, List.of(water), List.of(name)), earlier, pen);
    }

    /** Nothing where no run has two places. */
    static Optional<LiveDrawing> of(Showing showing, Rectangle2D area, Optional<Frame> kept, boolean hold, Map<String, Integer> earlier, Pen pen) {
        return way(showing).map(found -> new LiveRuns(found, showing, area, kept, hold, earlier, pen));
    }

    static Optional<Way> way(Showing showing) {
        Arrangement arrangement = showing.arrangement();
        List<PlacedPart> path = arrangement.exhaustPath().stream().map(point -> called(point, arrangement)).toList();
        Way exhaust = Way.exhaust(path, arrangement.parts());
        List<Way> ways = List.of(exhaust, Way.of(Circuit.RAW_WATER, arrangement.parts()), Way.of(Circuit.FUEL, arrangement.parts()));
        return ways.stream().filter(Way::canBeDrawn).min(Comparator.comparing(way -> !showing.about().equals(Optional.of(way.circuit()))));
    }

    /** A point of the path where a part stands is that part: it has the verdicts. */
    private static PlacedPart called(PlacedPart point, Arrangement arrangement) {
        return arrangement.parts().stream().filter(part -> part.circuit() == Circuit.EXHAUST && same(part, point)).findFirst().orElse(point);
    }

    private static boolean same(PlacedPart one, PlacedPart other) {
        if (one.place().isEmpty() || other.place().isEmpty()) {
            return false;
        }
        Point here = one.point().orElseThrow();
        Point there = other.point().orElseThrow();
        return Math.abs(here.getX().si() - there.getX().si()) < SAME_M && Math.abs(here.getY().si() - there.getY().si()) < SAME_M
            && Math.abs(here.getZ().si() - there.getZ().si()) < SAME_M;
    }

    private static Frame frame(Way way, Optional<Frame> kept, boolean hold) {
        if (hold && kept.isPresent()) {
            return kept.get();
        }
        double longest = Math.max(way.stops().getLast().alongM(), 0.01);
        double low = Math.min(0, way.stops().stream().mapToDouble(Way.Stop::heightM).min().orElse(0));
        double high = Math.max(0, way.stops().stream().mapToDouble(Way.Stop::heightM).max().orElse(0));
        double rim = Math.max((high - low) * RIM, 0.05);
        var wanted = new Rectangle2D.Double(0, low - rim, longest * 1.02, high - low + 2 * rim);
        return kept.map(old -> old.or(new Rectangle2D.Double(0, low, longest, high - low), wanted)).orElseGet(() -> new Frame(wanted));
    }

    @Override
    public void paint(Pen pen, Emphasis emphasis) {
        Rectangle2D plot = axes.plot();
        pen.ink(Ink.SEA).fill(new Rectangle2D.Double(plot.getX(), axes.y(0), plot.getWidth(), Math.max(plot.getMaxY() - axes.y(0), 0)));
        axes.heights(pen, showing.heights());
        axes.distances(pen, showing.heights(), Optional.empty());
        pen.ink(Ink.WATER).width(Pen.FIRM).line(plot.getX(), axes.y(0), plot.getMaxX(), axes.y(0));
        pen.text(showing.words().get("water.loaded"), plot.getMaxX(), axes.y(0) + 2.8, Letters.SMALL_RIGHT);
        var line = new Path2D.Double();
        tagged.forEach(one -> {
            if (line.getCurrentPoint() == null) {
                line.moveTo(one.x(), one.y());
            } else {
                line.lineTo(one.x(), one.y());
            }
        });
        Runs.stroke(pen, way.circuit());
        pen.draw(line);
        for (Tagged one : tagged) {
            Marks.ring(pen, one.x(), one.y(), one.part().id(), emphasis);
            Marks.drawLive(pen, one.x(), one.y(), one.part().worst().map(verdict -> verdict.standing()));
        }
        tags.paint(pen, emphasis);
        pen.ink(Ink.INK).text(title(), area.getCenterX(), area.getY() + 3, Letters.SMALL_CENTRE);
    }

    private String title() {
        return showing.words().get("view.RUNS", showing.words().get(way.circuit().word()));
    }

    @Override
    public List<Spot> spots() {
        var spots = new HashMap<String, Spot>();
        return tagged.stream().map(one -> new Spot(one.part().id(), one.part().name(), one.part().key() + ".z", Optional.of(one.at()),
            tags.area(one.part().id()))).filter(spot -> spots.putIfAbsent(spot.id(), spot) == null).toList();
    }

    @Override
    public OptionalDouble metresUp() {
        return OptionalDouble.of(axes.upEach());
    }

    @Override
    public OptionalDouble metresAcross() {
        return OptionalDouble.empty();
    }

    @Override
    public View view() {
        return View.RUNS;
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
        return title() + ". " + tagged.stream().map(one -> words.sentence(one.part())).collect(Collectors.joining(" "));
    }
}
