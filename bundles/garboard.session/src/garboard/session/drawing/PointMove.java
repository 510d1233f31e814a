// SPDX-License-Identifier: EPL-2.0
package garboard.session.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;

import garboard.model.GarboardPackage.Literals;
import garboard.model.Point;
import garboard.model.RecordPath;
import garboard.quantity.Length;
import garboard.quantity.UnitSystem;
import garboard.session.Field;
import garboard.session.JointTyping;
import garboard.session.OpenRecord;

/**
 * A point of the record being moved by hand on a drawing: its height, and what runs across the drawing when that is asked for. The record
 * follows live, and all of it is one step to undo. Points that stood at the very same place, such as the crest and the point of the
 * exhaust's path at the crest, go with it: they are one place on the boat.
 */
public final class PointMove {

    /** What runs across a drawing. */
    public enum Across {
        FORWARD(Literals.POINT__X), STARBOARD(Literals.POINT__Y), NOTHING(null);

        private final EAttribute coordinate;

        Across(EAttribute coordinate) {
            this.coordinate = coordinate;
        }

        private Optional<EAttribute> coordinate() {
            return Optional.ofNullable(coordinate);
        }
    }

    /** Points nearer to each other than this are one place, in metres. */
    private static final double SAME_M = 0.0005;

    private final OpenRecord open;
    private final Point point;
    private final List<Point> same;
    private final Across across;
    private final UnitSystem usual;
    private final Length heightBefore;
    private final Optional<Length> acrossBefore;
    private final JointTyping typing;

    private PointMove(OpenRecord open, Point point, Across across, UnitSystem usual, String label) {
        this.open = open;
        this.point = point;
        this.same = samePlace(open, point);
        this.across = across;
        this.usual = usual;
        this.heightBefore = point.getZ();
        this.acrossBefore = across.coordinate().map(coordinate -> (Length) point.eGet(coordinate));
        this.typing = open.edits().typingJointly(label);
    }

    /**
     * {@return a move that has not begun; nothing where there is no such point, or its height is not entered}
     *
     * @param key of the point in the record: {@code rawWater.siphonBreak.ventSeat}
     * @param usual the units for what was never given in any
     * @param label what the step is called in "Undo ..."
     */
    public static Optional<PointMove> of(OpenRecord open, String key, Across across, UnitSystem usual, String label) {
        return RecordPath.part(open.record(), key).filter(Point.class::isInstance).map(Point.class::cast)
            .filter(point -> point.getZ() != null).map(point -> new PointMove(open, point, across, usual, label));
    }

    private static List<Point> samePlace(OpenRecord open, Point point) {
        var same = new ArrayList<Point>();
        open.record().eAllContents().forEachRemaining(part -> {
            if (part instanceof Point other && other != point && near(other.getX(), point.getX()) && near(other.getY(), point.getY())
                    && near(other.getZ(), point.getZ())) {
                same.add(other);
            }
        });
        return same;
    }

    private static boolean near(Length one, Length other) {
        return one != null && other != null && Math.abs(one.si() - other.si()) < SAME_M;
    }

    /** {@return the points that go with it, by their keys} */
    public List<String> goingWithIt() {
        return same.stream().map(RecordPath::key).toList();
    }

    /**
     * Puts the point where a pointer is.
     *
     * @param upM how far above where it was when the move began, in metres
     * @param acrossM how far across from there; nothing to leave that as it was
     * @param metresPerPoint how fine the pointer is
     */
    public void drag(double upM, OptionalDouble acrossM, double metresPerPoint) {
        var values = new LinkedHashMap<Field, Length>();
        put(values, Literals.POINT__Z, new Target(heightBefore.si() + upM, Math.abs(upM) < metresPerPoint / 2), metresPerPoint);
        across.coordinate().flatMap(coordinate -> acrossBefore.map(before -> Map.entry(coordinate, before))).ifPresent(entry -> {
            double off = acrossM.orElse(0);
            put(values, entry.getKey(), new Target(entry.getValue().si() + off, Math.abs(off) < metresPerPoint / 2), metresPerPoint);
        });
        typing.enter(values);
    }

    /** Where a coordinate goes, or that it stays as it was given. */
    private record Target(double metres, boolean stays) {
    }

    private void put(Map<Field, Length> values, EAttribute coordinate, Target target, double metresPerPoint) {
        Length before = coordinate == Literals.POINT__Z ? heightBefore : acrossBefore.orElseThrow();
        var snap = new Snap(Optional.of(before), usual);
        Length now = target.stays ? before : snap.at(target.metres, snap.step(metresPerPoint));
        all().forEach(each -> values.put(Field.of(each, coordinate), given(each, coordinate, before, now)));
    }

    /**
     * Moves the point by steps of the keyboard.
     *
     * @param up steps up, negative down
     * @param aside steps to the right of the drawing, negative to the left
     * @param coarse ten millimetres or an inch instead of one millimetre or an eighth of an inch
     */
    public void nudge(int up, int aside, boolean coarse) {
        var values = new LinkedHashMap<Field, Length>();
        nudge(values, Literals.POINT__Z, up, coarse);
        across.coordinate().ifPresent(coordinate -> nudge(values, coordinate, aside, coarse));
        typing.enter(values);
    }

    private void nudge(Map<Field, Length> values, EAttribute coordinate, int steps, boolean coarse) {
        Length here = (Length) point.eGet(coordinate);
        if (steps != 0 && here != null) {
            Length before = coordinate == Literals.POINT__Z ? heightBefore : acrossBefore.orElse(here);
            var snap = new Snap(Optional.of(before), usual);
            double step = coarse ? snap.coarse() : snap.finest();
            // A coarse step keeps the millimetres: it is added, not rounded to.
            Length now = coarse ? snap.at(here.si() + steps * step, snap.finest()) : snap.next(here.si(), step, Integer.signum(steps));
            all().forEach(each -> values.put(Field.of(each, coordinate), given(each, coordinate, here, now)));
        }
    }

    private List<EObject> all() {
        var all = new ArrayList<EObject>(same);
        all.addFirst(point);
        return all;
    }

    /** The moved point keeps the unit in which it was given, and so does one that goes with it. */
    private Length given(EObject each, EAttribute coordinate, Length before, Length now) {
        if (each == point) {
            return now;
        }
        Length own = (Length) each.eGet(coordinate);
        return now.equals(before) && own != null && near(own, before) ? own : new Snap(Optional.ofNullable(own), usual).at(now.si(), 1e-5);
    }

    /** {@return the height as it stands now, in the unit in which the person gave it} */
    public Length height() {
        return point.getZ();
    }

    /** {@return what runs across as it stands now} */
    public Optional<Length> across() {
        return across.coordinate().map(coordinate -> (Length) point.eGet(coordinate));
    }

    /** {@return whether it is the move of this point along this direction} */
    public boolean isOf(String key, Across direction) {
        return across == direction && RecordPath.key(point).equals(key);
    }

    /** Takes all of it back. */
    public void giveUp() {
        typing.giveUp();
    }

    /** {@return whether the point is still in the record: an undo may have taken it away} */
    public boolean isHere() {
        return org.eclipse.emf.ecore.util.EcoreUtil.isAncestor(open.record(), point);
    }
}
