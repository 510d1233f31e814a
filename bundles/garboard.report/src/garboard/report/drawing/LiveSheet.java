// SPDX-License-Identifier: EPL-2.0
package garboard.report.drawing;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import garboard.checks.Standing;
import garboard.report.drawing.LiveDrawing.Frame;
import garboard.report.drawing.PlacedPart.Circuit;
import garboard.report.drawing.Strip.Piece;

/**
 * What a window shows of an installation: one drawing, or two where there is room; over them how high the points that keep the sea out
 * stand above the water, under them what is still lacking and what the marks mean. Laid out for a size; made anew when anything changes.
 */
public final class LiveSheet {

    private static final double BESIDE = 150;
    private static final double NARROW = 110;
    private static final double ABOVE = 96;
    private static final double FOR_LEGEND = 38;
    /** A sheet that is smaller than this is seen in part. */
    private static final double LEAST_WIDTH = 40;
    private static final double LEAST_HEIGHT = 26;
    private static final double MARGIN = 1.5;
    private static final double GAP = 4;

    private final Showing showing;
    private final List<LiveDrawing> drawings = new ArrayList<>();
    private final List<Strip> strips = new ArrayList<>();
    private final Rectangle2D area;

    /**
     * @param hold whether what is seen of the world stays as it was: while a part is moved
     * @param earlier the sheet before this one, of the same record
     */
    private LiveSheet(Showing showing, View view, Rectangle2D area, Pen pen, Optional<LiveSheet> earlier, boolean hold) {
        this.showing = showing;
        this.area = area;
        Rectangle2D inner = new Rectangle2D.Double(area.getX() + MARGIN, area.getY() + 1, area.getWidth() - 2 * MARGIN, area.getHeight() - 2);
        List<View> views = views(view, inner);
        double top = inner.getY() + strip(clearances(), inner, inner.getY(), inner.getWidth() < NARROW ? 3 : 2, pen);
        double bottom = inner.getMaxY();
        if (inner.getHeight() > FOR_LEGEND) {
            List<Piece> legend = legend(views);
            bottom -= measured(legend, inner, 2, pen);
            strip(legend, inner, bottom, 2, pen);
        }
        List<Piece> lacks = lacks(views);
        if (!lacks.isEmpty()) {
            bottom -= measured(lacks, inner, 2, pen);
            strip(lacks, inner, bottom, 2, pen);
        }
        Rectangle2D middle = new Rectangle2D.Double(inner.getX(), top + 0.6, inner.getWidth(), Math.max(bottom - top - 1.2, 4));
        List<Rectangle2D> areas = divided(middle, views.size());
        for (int index = 0; index < views.size(); index++) {
            drawings.add(drawing(views.get(index), areas.get(index), pen, earlier, hold));
        }
    }

    /**
     * Lays out a sheet.
     *
     * @param view what must be on it
     * @param width in units of the board
     * @param height in units of the board
     * @param measure board on which the letters are measured
     */
    public static LiveSheet of(Showing showing, View view, double width, double height, Board measure, Optional<LiveSheet> earlier, boolean hold) {
        return new LiveSheet(showing, view, new Rectangle2D.Double(0, 0, Math.max(width, LEAST_WIDTH), Math.max(height, LEAST_HEIGHT)), new Pen(measure, Inks.PAPER), earlier, hold);
    }

    /** Beside each other where it is wide, above each other where it is high; the side before the cross elevation, elevations before the rest. */
    private static List<View> views(View view, Rectangle2D area) {
        boolean two = area.getWidth() >= BESIDE || area.getHeight() >= ABOVE;
        return two ? Stream.of(view, view.companion()).sorted().toList() : List.of(view);
    }

    private static List<Rectangle2D> divided(Rectangle2D area, int count) {
        if (count == 1) {
            return List.of(area);
        }
        if (area.getWidth() >= BESIDE - 2 * MARGIN) {
            double half = (area.getWidth() - GAP) / 2;
            return List.of(new Rectangle2D.Double(area.getX(), area.getY(), half, area.getHeight()),
                new Rectangle2D.Double(area.getX() + half + GAP, area.getY(), half, area.getHeight()));
        }
        double half = (area.getHeight() - GAP / 2) / 2;
        return List.of(new Rectangle2D.Double(area.getX(), area.getY(), area.getWidth(), half),
            new Rectangle2D.Double(area.getX(), area.getY() + half + GAP / 2, area.getWidth(), half));
    }

    private LiveDrawing drawing(View view, Rectangle2D place, Pen pen, Optional<LiveSheet> earlier, boolean hold) {
        Optional<LiveDrawing> before = earlier.flatMap(sheet -> sheet.drawings.stream()
            .filter(old -> old.view() == view && !(old instanceof LiveSketch)).findFirst())
            .filter(old -> earlier.get().showing.about().equals(showing.about()));
        Optional<Frame> kept = before.map(LiveDrawing::frame);
        Map<String, Integer> names = before.map(LiveDrawing::names).orElse(Map.of());
        Optional<LiveDrawing> drawn = switch (view) {
            case SIDE, CROSS -> seen(view) ? Optional.of(new LiveElevation(view, showing, place, kept, hold, names, pen)) : Optional.empty();
            case RUNS -> LiveRuns.of(showing, place, kept, hold, names, pen);
            case CLEARANCE -> LiveClearance.of(showing.arrangement().water().heelReach().si(), showing, place, kept, hold, names, pen);
        };
        return drawn.orElseGet(() -> new LiveSketch(view, showing, place, pen));
    }

    private boolean seen(View view) {
        return showing.arrangement().parts().stream()
            .anyMatch(part -> part.z().isPresent() && Arrangement.across(part, view).isPresent());
    }

    private boolean sketched(View view) {
        return switch (view) {
            case SIDE, CROSS -> !seen(view);
            case RUNS -> LiveRuns.way(showing).isEmpty();
            case CLEARANCE -> showing.arrangement().clearances(showing.attitude()).isEmpty();
        };
    }

    private double measured(List<Piece> pieces, Rectangle2D inner, int lines, Pen pen) {
        return laid(pieces, inner, 0, lines, pen).height();
    }

    private double strip(List<Piece> pieces, Rectangle2D inner, double top, int lines, Pen pen) {
        Strip strip = laid(pieces, inner, top, lines, pen);
        strips.add(strip);
        return strip.height();
    }

    private Strip laid(List<Piece> pieces, Rectangle2D inner, double top, int lines, Pen pen) {
        return new Strip(pieces, new Point2D.Double(inner.getX(), top), inner.getWidth(), lines, left -> showing.words().get("strip.more", left), pen);
    }

    private List<Piece> clearances() {
        List<Clearance> clearances = showing.arrangement().clearances(showing.attitude());
        if (clearances.isEmpty()) {
            return List.of();
        }
        var words = new PartWords(showing);
        var pieces = new ArrayList<Piece>();
        double sunk = showing.attitude().sinkage().si();
        String attitude = words.attitude(showing.attitude());
        pieces.add(Piece.of(showing.words().get("strip.attitude",
            sunk > 0 ? showing.words().get("strip.sunk", attitude, showing.heights().length(sunk)) : attitude), Ink.FAINT, false));
        for (Clearance clearance : clearances) {
            PlacedPart part = clearance.part();
            String text = showing.words().get(clearance.metres() < 0 ? "strip.under" : "strip.clear",
                showing.arrangement().shortName(part), showing.heights().length(clearance.metres()));
            pieces.add(Piece.to(new Spot(part.id(), part.name(), part.key() + ".z", Optional.empty(), Optional.empty()), text,
                clearance.metres() < 0 ? Ink.WATER : Ink.INK, clearance == clearances.getFirst()));
        }
        return pieces;
    }

    /** A sketch says itself what is lacking. */
    private List<Piece> lacks(List<View> views) {
        if (views.stream().allMatch(this::sketched)) {
            return List.of();
        }
        var pieces = new LinkedHashMap<String, Piece>();
        for (View view : views) {
            if (!sketched(view)) {
                showing.arrangement().lacks(view).forEach(lack -> pieces.putIfAbsent(lack.id(), Piece.to(
                    new Spot(lack.id(), lack.name() + ": " + String.join(", ", lack.missing()), lack.field(), Optional.empty(), Optional.empty()),
                    lack.name() + " (" + String.join(", ", lack.missing()) + ")", Ink.CANNOT_TELL, false)));
            }
        }
        return pieces.isEmpty() ? List.of()
            : Stream.concat(Stream.of(Piece.of(showing.words().get("strip.lacks"), Ink.FAINT, false)), pieces.values().stream()).toList();
    }

    private List<Piece> legend(List<View> views) {
        var pieces = new ArrayList<Piece>();
        List<PlacedPart> parts = showing.arrangement().parts();
        for (Circuit circuit : Circuit.values()) {
            boolean drawn = views.stream().anyMatch(view -> view.elevation()
                || view == View.RUNS && LiveRuns.way(showing).filter(way -> way.circuit() == circuit).isPresent());
            if (drawn && parts.stream().anyMatch(part -> part.circuit() == circuit && part.z().isPresent())) {
                pieces.add(Piece.with(8, (pen, left, y) -> {
                    Runs.stroke(pen, circuit);
                    pen.line(left, y, left + 8, y);
                }, showing.words().get(circuit.word())));
            }
        }
        for (Standing standing : Standing.values()) {
            if (parts.stream().anyMatch(part -> part.z().isPresent() && part.worst().filter(verdict -> verdict.standing() == standing).isPresent())) {
                pieces.add(Piece.with(3.4, (pen, left, y) -> Marks.drawLive(pen, left + 1.7, y, Optional.of(standing)), showing.words().get(standing)));
            }
        }
        if (parts.stream().anyMatch(part -> part.z().isPresent() && part.worst().isEmpty())) {
            pieces.add(Piece.with(2.6, (pen, left, y) -> Marks.drawLive(pen, left + 1.3, y, Optional.empty()), showing.words().get("legend.nothing")));
        }
        return pieces;
    }

    /** @param inks the colours */
    public void paint(Board board, Inks inks, Emphasis emphasis) {
        var pen = new Pen(board, inks);
        drawings.forEach(drawing -> drawing.paint(pen, emphasis));
        strips.forEach(strip -> strip.paint(pen, emphasis));
        if (drawings.size() > 1) {
            Rectangle2D other = drawings.getLast().area();
            boolean beside = other.getX() > drawings.getFirst().area().getX();
            pen.ink(Ink.PALE).width(Pen.HAIR);
            if (beside) {
                pen.line(other.getX() - GAP / 2, other.getY(), other.getX() - GAP / 2, other.getMaxY());
            } else {
                pen.line(other.getX(), other.getY() - GAP / 4, other.getMaxX(), other.getY() - GAP / 4);
            }
        }
    }

    /** Writes a value beside a place, over what lies there: while a part is moved. */
    public void paintValue(Board board, Inks inks, Point2D at, String value) {
        var pen = new Pen(board, inks);
        double width = pen.widthOf(value, Letters.BOLD_LEFT);
        double right = at.getX() + Tags.VALUE_ASIDE;
        double x = right + width + 2 < area.getMaxX() ? right : at.getX() - Tags.VALUE_ASIDE - width;
        double y = Math.clamp(at.getY() + 1, area.getY() + 4, area.getMaxY() - 2);
        var box = new Rectangle2D.Double(x - 1, y - 3.2, width + 2, 4.4);
        pen.ink(Ink.BLANK).fill(box).ink(Ink.CHOSEN).width(Pen.FINE).draw(box).text(value, x, y, Letters.BOLD_LEFT);
    }

    /** {@return the views that are on it} */
    public List<View> views() {
        return drawings.stream().map(LiveDrawing::view).toList();
    }

    /** {@return what can be pointed at, each once, in the order in which the keyboard goes through it} */
    public List<Spot> spots() {
        var spots = new LinkedHashMap<String, Spot>();
        Stream.concat(drawings.stream().flatMap(drawing -> drawing.spots().stream()), strips.stream().flatMap(strip -> strip.spots().stream()))
            .forEach(spot -> spots.putIfAbsent(spot.id(), spot));
        return List.copyOf(spots.values());
    }

    /** {@return what lies at a place: the nearest mark within reach, else a name} */
    public Optional<Spot> spotAt(double x, double y) {
        List<Spot> all = Stream.concat(drawings.stream().flatMap(drawing -> drawing.spots().stream()),
            strips.stream().flatMap(strip -> strip.spots().stream())).toList();
        return all.stream().filter(spot -> spot.distance(x, y) <= Spot.REACH)
            .min(java.util.Comparator.comparingDouble(spot -> spot.distance(x, y)))
            .or(() -> all.stream().filter(spot -> spot.words().filter(box -> box.contains(x, y)).isPresent()).findFirst());
    }

    /**
     * {@return the nearest thing to point at in a direction, from one of them}
     *
     * @param right 1 to the right, -1 to the left, else 0
     * @param down 1 downwards, -1 upwards, else 0
     */
    public Optional<Spot> beside(Spot from, int right, int down) {
        double x = from.area().getCenterX();
        double y = from.area().getCenterY();
        Spot best = null;
        double least = Double.POSITIVE_INFINITY;
        for (Spot spot : spots()) {
            double ahead = (spot.area().getCenterX() - x) * right + (spot.area().getCenterY() - y) * down;
            double aside = Math.abs((spot.area().getCenterX() - x) * down) + Math.abs((spot.area().getCenterY() - y) * right);
            // What lies more to the side than ahead is for another key.
            if (!spot.id().equals(from.id()) && ahead > 0 && aside <= 2 * ahead && ahead + 2 * aside < least) {
                least = ahead + 2 * aside;
                best = spot;
            }
        }
        return Optional.ofNullable(best);
    }

    /**
     * How a part is moved on the drawing at a place.
     *
     * @param view the drawing
     * @param metresUp metres to a unit of the sheet, upwards
     * @param metresAcross the same to the right, where it can be moved that way
     */
    public record Scale(View view, double metresUp, OptionalDouble metresAcross) {
    }

    /** {@return the scale at a place; nothing where parts cannot be moved} */
    public Optional<Scale> scaleAt(double x, double y) {
        return drawings.stream().filter(drawing -> drawing.area().contains(x, y)).filter(drawing -> drawing.metresUp().isPresent())
            .map(drawing -> new Scale(drawing.view(), drawing.metresUp().getAsDouble(), drawing.metresAcross())).findFirst();
    }

    /** {@return the heel in radians that stands at a place of the clearance plot} */
    public OptionalDouble heelAt(double x, double y) {
        return drawings.stream().filter(drawing -> drawing.area().contains(x, y)).map(drawing -> drawing.heelAt(x))
            .filter(OptionalDouble::isPresent).findFirst().orElse(OptionalDouble.empty());
    }

    /** {@return the same in words, for people who cannot see it} */
    public String inWords() {
        return drawings.stream().map(LiveDrawing::inWords).collect(Collectors.joining(" "));
    }

    public Showing showing() {
        return showing;
    }
}
