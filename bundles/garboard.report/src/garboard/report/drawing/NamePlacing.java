// SPDX-License-Identifier: EPL-2.0
package garboard.report.drawing;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Finds places for the names of points in a small area: near their points, on top of nothing. The names that matter most come first in
 * the list; one for which there is no place is left out.
 */
final class NamePlacing {

    /** A name looking for a place. @param bearable how bad a place it may have rather than none; see {@link NamePlacing#cost} */
    record Name(String id, Point2D at, double width, double height, double bearable) {
    }

    /** Where a name went: one of the places tried, and its area. */
    record Place(int tried, Rectangle2D box) {
        /** The place of the box that is nearest to a point, where a line to it ends. */
        Point2D nearest(Point2D point) {
            return new Point2D.Double(Math.clamp(point.getX(), box.getX(), box.getMaxX()), Math.clamp(point.getY(), box.getY(), box.getMaxY()));
        }
    }

    /**
     * What lies in the area besides the marks.
     *
     * @param runs heavy lines, which a name hardly ever lies on
     * @param hairs thin lines, which a name should not lie on
     * @param taken what is not free
     */
    record Around(List<Line2D> runs, List<Line2D> hairs, List<Rectangle2D> taken) {
    }

    private static final double[] AWAY = {2.4, 4.5, 7.5, 11, 15, 20, 26, 33};
    private static final int DIRECTIONS = 16;
    private static final double MARK = 1.8;
    private static final double ASIDE = 0.6;

    private final Rectangle2D area;
    private final List<Point2D> marks;
    private final List<Line2D> runs;
    private final List<Line2D> hairs;
    private final List<Rectangle2D> taken;
    private final Map<String, Integer> earlier;
    private final List<Line2D> leaders = new ArrayList<>();

    /**
     * @param area in which the names must lie
     * @param marks no name lies on a mark
     * @param around what else is there
     * @param earlier where names stood last, by their ids; they stay there when they can
     */
    NamePlacing(Rectangle2D area, List<Point2D> marks, Around around, Map<String, Integer> earlier) {
        this.area = area;
        this.marks = marks;
        this.runs = around.runs;
        this.hairs = around.hairs;
        this.taken = new ArrayList<>(around.taken);
        this.earlier = earlier;
    }

    Map<String, Place> place(List<Name> names) {
        var places = new HashMap<String, Place>();
        for (Name name : names) {
            best(name).ifPresent(place -> {
                places.put(name.id, place);
                taken.add(place.box);
                leaders.add(new Line2D.Double(name.at, place.nearest(name.at)));
            });
        }
        return places;
    }

    private Optional<Place> best(Name name) {
        Place best = null;
        double least = name.bearable;
        int stay = earlier.getOrDefault(name.id, -1);
        for (int tried = 0; tried < AWAY.length * DIRECTIONS; tried++) {
            double away = AWAY[tried / DIRECTIONS];
            double cost = away - (tried == stay ? 3 : 0);
            if (cost >= least) {
                continue;
            }
            Rectangle2D box = box(name, away, tried % DIRECTIONS);
            if (area.contains(box) && free(box)) {
                cost += cost(name, box);
                if (cost < least) {
                    least = cost;
                    best = new Place(tried, box);
                }
            }
        }
        return Optional.ofNullable(best);
    }

    private static Rectangle2D box(Name name, double away, int direction) {
        double angle = 2 * Math.PI * direction / DIRECTIONS;
        double x = name.at.getX() + Math.cos(angle) * (away + name.width / 2);
        double y = name.at.getY() + Math.sin(angle) * (away + name.height / 2);
        return new Rectangle2D.Double(x - name.width / 2, y - name.height / 2, name.width, name.height);
    }

    private boolean free(Rectangle2D box) {
        for (Rectangle2D other : taken) {
            if (box.getX() < other.getMaxX() + ASIDE && other.getX() < box.getMaxX() + ASIDE && box.getY() < other.getMaxY() && other.getY() < box.getMaxY()) {
                return false;
            }
        }
        for (Point2D mark : marks) {
            if (mark.getX() > box.getX() - MARK && mark.getX() < box.getMaxX() + MARK && mark.getY() > box.getY() - MARK && mark.getY() < box.getMaxY() + MARK) {
                return false;
            }
        }
        return true;
    }

    /** What is wrong with a place: lines under the letters, a leader that crosses something. */
    private double cost(Name name, Rectangle2D box) {
        double cost = 0;
        for (Line2D run : runs) {
            cost += run.intersects(box) ? 16 : 0;
        }
        for (Line2D hair : hairs) {
            cost += hair.intersects(box) ? 4 : 0;
        }
        var leader = new Line2D.Double(name.at, new Place(0, box).nearest(name.at));
        for (Line2D other : leaders) {
            cost += other.intersectsLine(leader) ? 6 : 0;
            cost += other.intersects(box) ? 6 : 0;
        }
        for (Rectangle2D other : taken) {
            cost += leader.intersects(other) ? 8 : 0;
        }
        for (Point2D mark : marks) {
            cost += !mark.equals(name.at) && leader.ptSegDist(mark) < 1 ? 3 : 0;
        }
        return cost;
    }
}
