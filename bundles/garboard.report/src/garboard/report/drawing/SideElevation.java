// SPDX-License-Identifier: EPL-2.0
package garboard.report.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import garboard.checks.Evaluation;
import garboard.model.CommissioningRecord;
import garboard.physics.geometry.BoatPoint;
import garboard.quantity.Length;
import garboard.report.Figures;
import garboard.report.Picture;

/** The installation seen from starboard, the bow to the right, with the water level and at the design trim. */
public final class SideElevation {

    private final Elevation elevation;
    private final Heights heights;

    private SideElevation(Elevation elevation, Heights heights) {
        this.elevation = elevation;
        this.heights = heights;
    }

    public static SideElevation of(CommissioningRecord record, Evaluation evaluation, Figures figures) {
        Water water = Water.about(record);
        var heights = new Heights(figures, water);
        var surfaces = new ArrayList<Elevation.Surface>();
        surfaces.add(new Elevation.Surface(0, 0, "loaded waterline"));
        if (water.trim().si() > 0) {
            surfaces.add(surface(water, 1, heights.angle(water.trim()) + " bow up"));
            surfaces.add(surface(water, -1, heights.angle(water.trim()) + " bow down"));
        }
        return new SideElevation(new Elevation(PlacedParts.of(record, evaluation, Words.ENGLISH), PlacedPart::x, HullOutline.side(record), surfaces, "aft", "forward"),
            heights);
    }

    private static Elevation.Surface surface(Water water, int sign, String name) {
        double atZero = Water.surface(BoatPoint.atHeight(Length.of(0)), water.trimmed(sign));
        double atOne = Water.surface(BoatPoint.atHeight(Length.of(0)).withForward(Length.of(1)), water.trimmed(sign));
        return new Elevation.Surface(atZero, atOne - atZero, name);
    }

    /** The drawing; nothing when no part has a place that can be seen from this side. */
    public Optional<Picture> picture(double widthMm, double heightMm) {
        if (elevation.seen().isEmpty()) {
            return Optional.empty();
        }
        var painter = new ElevationPainter(elevation, heights, widthMm, heightMm);
        return Optional.of(new Picture("Side elevation", widthMm, heightMm, painter::paint,
            "Side elevation seen from starboard. " + elevation.inWords(heights)));
    }

    /** Parts that lack the coordinates to be seen from this side. */
    public List<String> notDrawn() {
        return elevation.notSeen();
    }
}
