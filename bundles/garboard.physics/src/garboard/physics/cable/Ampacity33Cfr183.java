// SPDX-License-Identifier: EPL-2.0
package garboard.physics.cable;

import java.util.Map;

import garboard.physics.Argument;
import garboard.physics.OutOfRangeException;
import garboard.physics.reference.ReferenceTable;
import garboard.quantity.Current;
import garboard.quantity.Ratio;

/**
 * Permitted current by 33 CFR 183.425: Table 5 at 30 degC, note 1 for engine spaces, note 2 for bundles. American gauges 18 AWG to 4/0 AWG; for a
 * metric size take the largest gauge that it contains ({@link ConductorSeries#largest}). Cranking conductors and pigtails shorter than 7 in are
 * outside the rule.
 */
public final class Ampacity33Cfr183 {

    private static final ReferenceTable TABLE_5 = ReferenceTable.load("ampacity-33cfr183.csv");
    private static final Map<InsulationRating, Double> NOTE_1 = Map.of(InsulationRating.C60, .58, InsulationRating.C75, .75, InsulationRating.C80,
            .78, InsulationRating.C90, .82, InsulationRating.C105, .85, InsulationRating.C125, .89, InsulationRating.C200, 1.00);

    private Ampacity33Cfr183() {
    }

    /** Table 5 as printed ({@link CableSources#AMPACITY_33_CFR}); throws for a size or a rating that it does not list. */
    public static Current table5(ConductorSize gauge, InsulationRating insulation) {
        String column = Integer.toString(listed(insulation).celsius);
        return ConductorSeries.AWG.contains(gauge)
                ? Current.of(TABLE_5.rowOf("awg", gauge.label()).flatMap(row -> TABLE_5.figure(row, column)).orElseThrow())
                : throwSize(gauge);
    }

    /** Note 1: factor for a conductor in an engine space, 50 degC ({@link CableSources#ENGINE_SPACE_33_CFR}). */
    public static Ratio engineSpaceFactor(InsulationRating insulation) {
        return Ratio.of(NOTE_1.get(listed(insulation)));
    }

    /** Note 2: factor for three or more current-carrying conductors of circuits of 50 V or more together ({@link CableSources#BUNDLE_33_CFR}). */
    public static Ratio bundleFactor(int carryingTogether) {
        int conductors = Argument.atLeastOne("current-carrying conductors", carryingTogether);
        if (conductors < 3) {
            return Ratio.of(1.00);
        }
        if (conductors == 3) {
            return Ratio.of(.70);
        }
        if (conductors <= 6) {
            return Ratio.of(.60);
        }
        return Ratio.of(conductors <= 24 ? .50 : .40);
    }

    /** Permitted current of a circuit below 50 V: Table 5 and note 1. */
    public static Current allowedBelow50V(ConductorRun run) {
        double engineSpace = run.inEngineSpace() ? engineSpaceFactor(run.insulation()).si() : 1;
        return Current.of(table5(run.size(), run.insulation()).si() * engineSpace);
    }

    /** Permitted current of a circuit of 50 V or more: Table 5, note 1 and note 2. */
    public static Current allowedFrom50V(ConductorRun run) {
        return Current.of(allowedBelow50V(run).si() * bundleFactor(run.carryingTogether()).si());
    }

    private static InsulationRating listed(InsulationRating insulation) {
        if (!NOTE_1.containsKey(insulation)) {
            throw OutOfRangeException.of("insulation rating", insulation, "60, 75, 80, 90, 105, 125 or 200 degC");
        }
        return insulation;
    }

    private static Current throwSize(ConductorSize size) {
        throw OutOfRangeException.of("conductor size", size, "18 AWG to 4/0 AWG");
    }
}
