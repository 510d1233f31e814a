// SPDX-License-Identifier: EPL-2.0
package garboard.physics.cable;

import java.util.Map;

import garboard.physics.Argument;
import garboard.physics.OutOfRangeException;
import garboard.physics.reference.ReferenceTable;
import garboard.quantity.Current;
import garboard.quantity.Ratio;

/**
 * Permitted current by the annex of ISO 10133, now in ISO 13297 ({@link CableSources#AMPACITY_ISO}). Figures from memory: confirm them before a
 * verdict leans on them. Metric sizes 0.75 to 150 mm2; insulation 60, 70, 85, 90, 105, 125, 200 degC.
 */
public final class AmpacityIso {

    private static final ReferenceTable ANNEX = ReferenceTable.load("ampacity-iso13297.csv");
    private static final Map<InsulationRating, String> COLUMNS = Map.of(InsulationRating.C60, "60", InsulationRating.C70, "70", InsulationRating.C85,
            "85-90", InsulationRating.C90, "85-90", InsulationRating.C105, "105", InsulationRating.C125, "125", InsulationRating.C200, "200");
    private static final Map<InsulationRating, Double> ENGINE_SPACE = Map.of(InsulationRating.C70, .75, InsulationRating.C85, .82,
            InsulationRating.C90, .82, InsulationRating.C105, .86, InsulationRating.C125, .89);

    private AmpacityIso() {
    }

    /** Single conductor outside an engine space; throws for a size or a rating that the annex does not list. */
    public static Current annex(ConductorSize size, InsulationRating insulation) {
        if (!COLUMNS.containsKey(insulation)) {
            throw OutOfRangeException.of("insulation rating", insulation, "60, 70, 85, 90, 105, 125 or 200 degC");
        }
        return ANNEX.rowOf("mm2", size.toString().replace(" mm2", "")).flatMap(row -> ANNEX.figure(row, COLUMNS.get(insulation))).map(Current::of)
                .orElseThrow(() -> OutOfRangeException.of("conductor size", size, "a metric size from 0.75 to 150 mm2"));
    }

    /** Factor for an engine space; throws for 60 and 200 degC, for which none is at hand. */
    public static Ratio engineSpaceFactor(InsulationRating insulation) {
        if (!ENGINE_SPACE.containsKey(insulation)) {
            throw OutOfRangeException.of("insulation rating in an engine space", insulation, "70, 85, 90, 105 or 125 degC");
        }
        return Ratio.of(ENGINE_SPACE.get(insulation));
    }

    /** Factor for four or more conductors together: 4 to 6, 7 to 24, 25 and more. */
    public static Ratio bundleFactor(int carryingTogether) {
        int conductors = Argument.atLeastOne("current-carrying conductors", carryingTogether);
        if (conductors < 4) {
            return Ratio.of(1.0);
        }
        if (conductors <= 6) {
            return Ratio.of(.7);
        }
        return Ratio.of(conductors <= 24 ? .6 : .5);
    }

    /** Annex figure times the factors that apply. */
    public static Current allowed(ConductorRun run) {
        double engineSpace = run.inEngineSpace() ? engineSpaceFactor(run.insulation()).si() : 1;
        return Current.of(annex(run.size(), run.insulation()).si() * engineSpace * bundleFactor(run.carryingTogether()).si());
    }
}
