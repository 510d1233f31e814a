// SPDX-License-Identifier: EPL-2.0
package garboard.report.drawing;

import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;

import garboard.checks.Standing;
import garboard.report.drawing.PlacedPart.Circuit;

/** Scale bar and key at the foot of a drawing. */
final class Foot {

    private static final double LONGEST_MM = 45;
    private static final double SAMPLE_MM = 9;

    private final Heights heights;
    private final double mmPerMetre;

    Foot(Heights heights, double mmPerMetre) {
        this.heights = heights;
        this.mmPerMetre = mmPerMetre;
    }

    void paint(Pen pen, Rectangle2D area, List<PlacedPart> shown) {
        pen.ink(Ink.PALE).width(Pen.HAIR).line(area.getX(), area.getY(), area.getMaxX(), area.getY());
        double x = scaleBar(pen, area.getX() + 1, area.getY() + 6.5) + 12;
        for (Circuit circuit : Circuit.values()) {
            if (shown.stream().anyMatch(part -> part.circuit() == circuit)) {
                Runs.stroke(pen, circuit);
                pen.line(x, area.getY() + 5, x + SAMPLE_MM, area.getY() + 5);
                x = name(pen, Words.ENGLISH.get(circuit.word()), x + SAMPLE_MM + 1.5, area.getY() + 5.8);
            }
        }
        for (Standing standing : Standing.values()) {
            if (shown.stream().flatMap(part -> part.worst().stream()).anyMatch(verdict -> verdict.standing() == standing)) {
                Marks.draw(pen, x, area.getY() + 5, Optional.of(standing));
                x = name(pen, standing.label(), x + 3, area.getY() + 5.8);
            }
        }
        Marks.draw(pen, x, area.getY() + 5, Optional.empty());
        name(pen, "nothing to say", x + 3, area.getY() + 5.8);
        pen.ink(Ink.FAINT).text("Drawn from the positions and main dimensions in the record. Straight lines join positions; they are not the true runs, "
            + "and the outline is not the true hull.", area.getX() + 1, area.getY() + 11.5, Letters.SMALL_LEFT);
    }

    private double name(Pen pen, String text, double x, double y) {
        pen.ink(Ink.INK).text(text, x, y, Letters.SMALL_LEFT);
        return x + pen.widthOf(text, Letters.SMALL_LEFT) + 5;
    }

    private double scaleBar(Pen pen, double x, double y) {
        double length = heights.longestRound(LONGEST_MM / mmPerMetre);
        double width = length * mmPerMetre;
        pen.ink(Ink.INK).fill(new Rectangle2D.Double(x, y - 1.2, width / 2, 1.2)).width(Pen.HAIR)
            .draw(new Rectangle2D.Double(x, y - 1.2, width, 1.2));
        pen.text("0", x, y - 2, Letters.SMALL_LEFT).text(heights.length(length), x + width, y - 2, Letters.SMALL_CENTRE);
        return x + width;
    }
}
