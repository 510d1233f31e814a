// SPDX-License-Identifier: EPL-2.0
package garboard.report.drawing;

import java.util.ArrayList;
import java.util.List;

import garboard.checks.Standing;
import garboard.quantity.Angle;
import garboard.quantity.Length;
import garboard.quantity.UnitSystem;
import garboard.report.Figures;

/** Heights and angles in the words of a drawing. */
final class Heights {

    private final Figures figures;
    private final Water water;

    Heights(Figures figures, Water water) {
        this.figures = figures;
        this.water = water;
    }

    String length(double metres) {
        return figures.text(Length.of(rounded(Math.abs(metres))), figures.system() == UnitSystem.SI ? "mm" : "in");
    }

    /** A drawing is not read closer than this: a millimetre, a tenth of an inch. */
    private double rounded(double metres) {
        double step = figures.system() == UnitSystem.SI ? 0.001 : 0.00254;
        return Math.rint(metres / step) * step;
    }

    /** {@return the round number of millimetres or inches that comes next to a length, in metres} */
    double roundStep(double metres) {
        double unit = figures.system() == UnitSystem.SI ? 0.001 : 0.0254;
        double inUnits = Math.max(metres, unit / 10) / unit;
        double power = Math.pow(10, Math.floor(Math.log10(inUnits)));
        double leading = inUnits / power;
        return (leading <= 1 ? 1 : leading <= 2 ? 2 : leading <= 5 ? 5 : 10) * power * unit;
    }

    /** {@return the longest round length that is no longer than this one, in metres, for a scale bar} */
    double longestRound(double metres) {
        double[] inches = {1, 2, 4, 6, 12, 24, 48, 120, 240};
        double[] millimetres = {20, 50, 100, 200, 500, 1000, 2000, 5000, 10000};
        boolean metric = figures.system() == UnitSystem.SI;
        double unit = metric ? 0.001 : 0.0254;
        double longest = unit;
        for (double candidate : metric ? millimetres : inches) {
            longest = candidate * unit <= metres ? candidate * unit : longest;
        }
        return longest;
    }

    String angle(Angle angle) {
        return figures.text(angle, "deg");
    }

    /** Name, height at rest, lowest height inclined, and what a check says, a line each. */
    List<String> lines(PlacedPart part) {
        var lines = new ArrayList<String>();
        lines.add(part.name());
        part.z().ifPresent(z -> lines.add(length(z) + (z < 0 ? " below" : " above") + " the loaded waterline"));
        if (water.inclines()) {
            part.place().map(water::lowest)
                .ifPresent(low -> lines.add("inclined: " + length(low.si()) + (low.si() < 0 ? " below the water" : " above the water")));
        }
        part.worst().ifPresent(verdict -> lines.add(word(verdict.standing()) + ": " + verdict.check().id()));
        return lines;
    }

    private static String word(Standing standing) {
        String label = standing.label();
        return Character.toUpperCase(label.charAt(0)) + label.substring(1);
    }

    /** The same as one sentence, for people who cannot see the drawing. */
    String sentence(PlacedPart part) {
        return String.join(", ", lines(part)) + ".";
    }
}
