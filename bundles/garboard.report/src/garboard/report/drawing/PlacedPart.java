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
 * @param name what it is called on the drawing
 * @param circuit what runs through it
 * @param point its place; coordinates may be missing
 * @param worst the worst verdict on it, where there is one that a reader must know of
 */
record PlacedPart(String name, Circuit circuit, Optional<Point> point, Optional<Verdict> worst) {

    /** What runs through a part; the parts of one circuit are joined in their order. */
    enum Circuit {
        FUEL("Fuel"), RAW_WATER("Raw water"), EXHAUST("Exhaust");

        private final String label;

        Circuit(String label) {
            this.label = label;
        }

        String label() {
            return label;
        }
    }

    /** Distance forward in metres. */
    OptionalDouble x() {
        return metres(point.map(Point::getX));
    }

    /** Distance to starboard in metres. */
    OptionalDouble y() {
        return metres(point.map(Point::getY));
    }

    /** Height above the loaded waterline in metres. */
    OptionalDouble z() {
        return metres(point.map(Point::getZ));
    }

    /** The place, when all three coordinates are entered. */
    Optional<BoatPoint> place() {
        return point.filter(found -> found.getX() != null && found.getY() != null && found.getZ() != null)
            .map(found -> new BoatPoint(found.getX(), found.getY(), found.getZ()));
    }

    private static OptionalDouble metres(Optional<Length> length) {
        return length.map(found -> OptionalDouble.of(found.si())).orElse(OptionalDouble.empty());
    }
}
