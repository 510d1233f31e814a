// SPDX-License-Identifier: EPL-2.0
package garboard.report.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import garboard.model.CommissioningRecord;
import garboard.model.Point;
import garboard.report.drawing.PlacedPart.Circuit;

/**
 * A path unrolled: the places on it, and how far along it they are, measured straight from place to place.
 *
 * @param circuit what runs through it
 * @param stops in the order of flow, those with a place
 */
record Way(Circuit circuit, List<Stop> stops) {

    /** A place on the way, distance along it and height above the loaded waterline in metres. */
    record Stop(PlacedPart part, double alongM, double heightM) {
    }

    static Way of(Circuit circuit, List<PlacedPart> parts) {
        return new Way(circuit, unroll(parts.stream().filter(part -> part.circuit() == circuit).toList()));
    }

    /** The exhaust along its measured path, where there is one, else over its parts. */
    static Way exhaust(CommissioningRecord record, List<PlacedPart> parts) {
        return exhaust(PlacedParts.exhaustPath(record), parts);
    }

    static Way exhaust(List<PlacedPart> path, List<PlacedPart> parts) {
        Way measured = of(Circuit.EXHAUST, path);
        return measured.canBeDrawn() ? measured : of(Circuit.EXHAUST, parts);
    }

    boolean canBeDrawn() {
        return stops.size() > 1;
    }

    private static List<Stop> unroll(List<PlacedPart> parts) {
        var stops = new ArrayList<Stop>();
        double along = 0;
        Optional<Point> before = Optional.empty();
        for (PlacedPart part : parts) {
            if (part.place().isPresent()) {
                Point here = part.point().orElseThrow();
                along += before.map(there -> distance(there, here)).orElse(0.0);
                stops.add(new Stop(part, along, here.getZ().si()));
                before = Optional.of(here);
            }
        }
        return stops;
    }

    private static double distance(Point one, Point other) {
        double across = Math.hypot(one.getX().si() - other.getX().si(), one.getY().si() - other.getY().si());
        return Math.hypot(across, one.getZ().si() - other.getZ().si());
    }
}
