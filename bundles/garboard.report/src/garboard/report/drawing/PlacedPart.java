// SPDX-License-Identifier: EPL-2.0
package garboard.report.drawing;

import java.util.Optional;
import java.util.OptionalDouble;

import garboard.checks.Verdict;
import garboard.model.Point;
import garboard.physics.geometry.BoatPoint;
import garboard.quantity.Length;

/**
 * A part of the installation that has a place on the boat.
 *
 * @param id what it is, the same in every record and language: {@code siphonBreak}
 * @param name what it is called on the drawing
 * @param circuit what runs through it
 * @param key where its place stands in the record: {@code rawWater.siphonBreak.ventSeat}
 * @param whole where all that belongs to it stands in the record: {@code rawWater.siphonBreak}
 * @param point its place; coordinates may be missing
 * @param worst the worst verdict on it, where there is one that a reader must know of
 */
public record PlacedPart(String id, String name, Circuit circuit, String key, String whole, Optional<Point> point, Optional<Verdict> worst) {

    /** What runs through a part; the parts of one circuit are joined in their order. */
    public enum Circuit {
        FUEL, RAW_WATER, EXHAUST;

        /** Key of its name in {@link Words}. */
        String word() {
            return "circuit." + name();
        }
    }

    /** Distance forward in metres. */
    public OptionalDouble x() {
        return metres(point.map(Point::getX));
    }

    /** Distance to starboard in metres. */
    public OptionalDouble y() {
        return metres(point.map(Point::getY));
    }

    /** Height above the loaded waterline in metres. */
    public OptionalDouble z() {
        return metres(point.map(Point::getZ));
    }

    /** The place, when all three coordinates are entered. */
    public Optional<BoatPoint> place() {
        return point.filter(found -> found.getX() != null && found.getY() != null && found.getZ() != null)
            .map(found -> new BoatPoint(found.getX(), found.getY(), found.getZ()));
    }

    /** Whether a place in the record belongs to the part. */
    boolean has(String place) {
        return place.equals(whole) || place.startsWith(whole + ".") || place.startsWith(whole + "[");
    }

    private static OptionalDouble metres(Optional<Length> length) {
        return length.map(found -> OptionalDouble.of(found.si())).orElse(OptionalDouble.empty());
    }
}
