// SPDX-License-Identifier: EPL-2.0
package garboard.report.drawing;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import garboard.report.drawing.NamePlacing.Around;
import garboard.report.drawing.NamePlacing.Name;
import garboard.report.drawing.NamePlacing.Place;

/** The names beside the marks of a drawing in a window, with as much of what there is to say as the room allows. */
final class Tags {

    /** A part at its place on the sheet. */
    record Tagged(PlacedPart part, double x, double y) {
        Point2D at() {
            return new Point2D.Double(x, y);
        }
    }

    /** One line of what is said. */
    private record Line(String text, Ink ink, Letters letters) {
    }

    /** How much is said. */
    private enum Much {
        ALL, KEEPERS, NAMES,
        /** Names alone, that of the chosen part, too. */
        NOTHING_ELSE
    }

    private static final Letters NAME = new Letters(Letters.USUAL, false, Letters.Anchor.LEFT);
    private static final double NAME_LINE = 3.5;
    private static final double SMALL_LINE = 3.1;
    /** Widths go up in steps, so that a name does not jump aside for a digit more. */
    private static final double STEP = 3;
    /** A name is rather left out than put far away or over lines, the sooner the less it matters: by its rank. */
    private static final double[] BEARABLE = {60, 36, 24, 18, 14};
    /** How far beside its mark a value is written, and how much room it may take. */
    static final double VALUE_ASIDE = 4.2;
    private static final double VALUE_ROOM = 26;
    /** More than this share of the area is not filled with letters. */
    private static final double CALM = 0.26;

    private final Showing showing;
    private final PartWords words;
    private final List<Tagged> tagged;
    private final Map<String, List<Line>> said = new HashMap<>();
    private final Map<String, Place> places;
    private final Rectangle2D area;

    /**
     * @param around what lies in the area besides the marks
     * @param earlier where names stood last
     */
    Tags(Showing showing, List<Tagged> tagged, Rectangle2D area, Around around, Map<String, Integer> earlier, Pen pen) {
        this.showing = showing;
        this.words = new PartWords(showing);
        this.tagged = tagged;
        this.area = area;
        List<Point2D> marks = tagged.stream().map(Tagged::at).toList();
        var free = new Around(around.runs(), around.hairs(), withValue(around.taken()));
        Map<String, Place> found = Map.of();
        for (Much much : Much.values()) {
            List<Name> names = names(much, pen);
            double letters = names.stream().mapToDouble(name -> name.width() * name.height()).sum();
            if (much.compareTo(Much.NAMES) >= 0 || letters < CALM * area.getWidth() * area.getHeight()) {
                found = new NamePlacing(area, marks, free, earlier).place(names);
                boolean chosenNamed = showing.chosen().filter(said::containsKey).map(found::containsKey).orElse(true);
                if (found.size() == names.size() || much == Much.NAMES && chosenNamed) {
                    break;
                }
            }
        }
        this.places = found;
    }

    private List<Rectangle2D> withValue(List<Rectangle2D> taken) {
        var all = new ArrayList<>(taken);
        tagged.stream().filter(one -> showing.value() && showing.chosen().filter(one.part.id()::equals).isPresent())
            .forEach(one -> all.add(new Rectangle2D.Double(one.x + VALUE_ASIDE - 1, one.y - 2.6, VALUE_ROOM, 5.2)));
        return all;
    }

    private List<Name> names(Much much, Pen pen) {
        var names = new ArrayList<Name>();
        for (Tagged one : tagged.stream().sorted(Comparator.comparingInt(this::rank)).toList()) {
            List<Line> lines = lines(one.part, much);
            said.put(one.part.id(), lines);
            double width = lines.stream().mapToDouble(line -> pen.widthOf(line.text, line.letters)).max().orElse(0);
            double height = NAME_LINE + (lines.size() - 1) * SMALL_LINE;
            names.add(new Name(one.part.id(), one.at(), Math.ceil(width / STEP) * STEP, height, BEARABLE[rank(one)]));
        }
        return names;
    }

    /** What matters most is named first. */
    private int rank(Tagged one) {
        boolean chosen = showing.chosen().filter(one.part.id()::equals).isPresent();
        boolean marked = one.part.worst().isPresent();
        boolean concerned = showing.concerns(one.part);
        return chosen ? 0 : concerned && marked ? 1 : concerned ? 2 : marked || PlacedParts.KEEPERS.contains(one.part.id()) ? 3 : 4;
    }

    private List<Line> lines(PlacedPart part, Much much) {
        boolean chosen = showing.chosen().filter(part.id()::equals).isPresent();
        boolean full = chosen && much != Much.NOTHING_ELSE;
        boolean keeper = PlacedParts.KEEPERS.contains(part.id());
        boolean concerned = showing.concerns(part);
        var lines = new ArrayList<Line>();
        lines.add(new Line(showing.arrangement().shortName(part), concerned || chosen ? Ink.INK : Ink.FAINT,
            NAME.bold(chosen || concerned && part.worst().isPresent())));
        if (full || much == Much.ALL && concerned) {
            words.height(part).ifPresent(text -> lines.add(small(text, Ink.FAINT)));
        }
        if (full || keeper && much.compareTo(Much.NAMES) < 0) {
            words.above(part).filter(metres -> showing.inclined() || much != Much.ALL)
                .ifPresent(metres -> lines.add(small(words.clearance(metres), metres < 0 ? Ink.WATER : Ink.FAINT)));
        }
        if (full || much.compareTo(Much.NAMES) < 0 && concerned) {
            part.worst().ifPresent(verdict -> lines.add(small(showing.words().get(verdict.standing()), Ink.of(verdict.standing()))));
        }
        return lines;
    }

    private static Line small(String text, Ink ink) {
        return new Line(text, ink, Letters.SMALL_LEFT);
    }

    /** Leaders first, so that no line lies over letters. */
    void paint(Pen pen, Emphasis emphasis) {
        for (Tagged one : tagged) {
            Optional.ofNullable(places.get(one.part.id())).ifPresent(place -> {
                Point2D end = place.nearest(one.at());
                if (end.distance(one.at()) > 3) {
                    pen.ink(Ink.FAINT).width(Pen.HAIR).line(one.x, one.y, end.getX(), end.getY());
                }
            });
        }
        for (Tagged one : tagged) {
            Place place = places.get(one.part.id());
            if (place != null) {
                write(pen, one, place.box(), emphasis);
            } else if (emphasis.isChosen(one.part.id()) || emphasis.isPointedAt(one.part.id())) {
                pop(pen, one, emphasis);
            }
        }
    }

    private void write(Pen pen, Tagged one, Rectangle2D box, Emphasis emphasis) {
        // Letters stand at the side of the box that is turned to the mark.
        boolean right = box.getCenterX() < one.x - box.getWidth() / 4;
        boolean left = box.getCenterX() > one.x + box.getWidth() / 4;
        Letters.Anchor anchor = right ? Letters.Anchor.RIGHT : left ? Letters.Anchor.LEFT : Letters.Anchor.CENTRE;
        double x = right ? box.getMaxX() : left ? box.getX() : box.getCenterX();
        double y = box.getY() + NAME_LINE * 0.78;
        for (Line line : said.get(one.part.id())) {
            boolean name = line.letters.size() == Letters.USUAL;
            Letters letters = new Letters(line.letters.size(), line.letters.bold(), anchor);
            pen.ink(name && (emphasis.isChosen(one.part.id()) || emphasis.isPointedAt(one.part.id())) ? Ink.CHOSEN : line.ink)
                .text(line.text, x, y, letters);
            y += SMALL_LINE;
        }
    }

    /** A name for which there was no room, over what lies there. */
    private void pop(Pen pen, Tagged one, Emphasis emphasis) {
        List<Line> lines = said.get(one.part.id());
        double width = lines.stream().mapToDouble(line -> pen.widthOf(line.text, line.letters)).max().orElse(0);
        double height = NAME_LINE + (lines.size() - 1) * SMALL_LINE;
        double x = one.x + 3 + width < area.getMaxX() ? one.x + 3 : one.x - 3 - width;
        double y = Math.max(area.getY(), Math.min(one.y - height - 2, area.getMaxY() - height));
        var box = new Rectangle2D.Double(x, y, width, height);
        pen.ink(Ink.BLANK).fill(new Rectangle2D.Double(box.x - 0.8, box.y - 0.4, box.width + 1.6, box.height + 0.8));
        write(pen, one, box, emphasis);
    }

    Optional<Rectangle2D> area(String id) {
        return Optional.ofNullable(places.get(id)).map(Place::box);
    }

    Map<String, Integer> tried() {
        var tried = new LinkedHashMap<String, Integer>();
        places.forEach((id, place) -> tried.put(id, place.tried()));
        return tried;
    }
}
