// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import garboard.report.drawing.ClearancePlot;
import garboard.report.drawing.CrossElevation;
import garboard.report.drawing.RunProfile;
import garboard.report.drawing.SideElevation;

/** The installation drawn from the record: both elevations, the runs unrolled, the clearances against heel. */
final class DrawingsSheet {

    private static final double MOST_WIDTH_MM = 262;
    /** The first shares its page with the heading of the sheet. */
    private static final double FIRST_MM = 126;
    private static final double HEIGHT_MM = 144;

    private DrawingsSheet() {
    }

    static Optional<Sheet> of(Material material) {
        double width = Math.min(MOST_WIDTH_MM, material.options().paper().contentWidthMm(Orientation.LANDSCAPE) * 0.985);
        var blocks = new ArrayList<Block>();
        SideElevation side = SideElevation.of(material.record(), material.evaluation(), material.figures());
        side.picture(width, FIRST_MM).ifPresent(picture -> add("Side elevation, from starboard", picture, side.notDrawn(), blocks));
        CrossElevation cross = CrossElevation.of(material.record(), material.evaluation(), material.figures());
        cross.picture(width, HEIGHT_MM).ifPresent(picture -> add("Cross elevation, from aft", picture, cross.notDrawn(), blocks));
        RunProfile.of(material.record(), material.evaluation(), material.figures()).picture(width, HEIGHT_MM)
            .ifPresent(picture -> add("Heights along the exhaust and the raw-water path", picture, List.of(), blocks));
        ClearancePlot.of(material.record(), material.evaluation(), material.figures()).picture(width, HEIGHT_MM)
            .ifPresent(picture -> add("Clearance of the openings to the sea when the boat inclines", picture, List.of(), blocks));
        return blocks.isEmpty() ? Optional.empty() : Optional.of(new Sheet("Drawings", "Drawings", Orientation.LANDSCAPE, blocks));
    }

    private static void add(String heading, Picture picture, List<String> notDrawn, List<Block> into) {
        if (!into.isEmpty()) {
            into.add(new Block.PageBreak());
        }
        into.add(new Block.Heading(heading));
        into.add(picture);
        if (!notDrawn.isEmpty()) {
            into.add(Block.note("Not drawn, because a coordinate is not entered: " + String.join(", ", notDrawn) + "."));
        }
    }
}
