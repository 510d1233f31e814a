// SPDX-License-Identifier: EPL-2.0
package garboard.physics.cable;

import java.util.stream.IntStream;

import garboard.physics.Argument;
import garboard.physics.OutOfRangeException;
import garboard.physics.reference.ReferenceTable;
import garboard.quantity.Area;
import garboard.quantity.Current;

/** Least size of grounding conductors, copper. */
public final class GroundingConductor {

    private static final ReferenceTable EQUIPMENT = ReferenceTable.load("equipment-grounding-nec250122.csv");
    private static final ReferenceTable NEUTRAL = ReferenceTable.load("neutral-grounding-46cfr111.csv");
    private static final ConductorSize LEAST_DC = ConductorSize.awg(8);

    private GroundingConductor() {
    }

    /** Equipment grounding conductor by the rating of the overcurrent device ({@link CableSources#EQUIPMENT_GROUNDING}); throws above 800 A. */
    public static ConductorSize equipment(Current device) {
        double deviceA = Argument.positive("device rating", device);
        return IntStream.range(0, EQUIPMENT.rowCount()).filter(row -> EQUIPMENT.figure(row, "device_A").orElseThrow() >= deviceA)
                .mapToObj(row -> ConductorSize.valueOf(EQUIPMENT.text(row, "awg") + " AWG")).findFirst()
                .orElseThrow(() -> OutOfRangeException.of("device rating", device, "at most 800 A"));
    }

    /** Equipment grounding conductor where the phases were made larger than needed: it grows in the same proportion, to the next American gauge. */
    public static ConductorSize equipment(Current device, PhaseEnlargement phases) {
        double areaM2 = equipment(device).area().si() * phases.fitted().area().si() / phases.needed().area().si();
        return ConductorSeries.smallest(ConductorSeries.AWG, Area.of(areaM2))
                .orElseThrow(() -> OutOfRangeException.of("enlarged phase conductor", phases.fitted(),
                        "one whose grounding conductor is at most 4/0 AWG"));
    }

    /** Conductor that grounds the neutral of an a.c. system, by the size of the generator cable ({@link CableSources#NEUTRAL_GROUNDING}). */
    public static ConductorSize acNeutral(ConductorSize generatorCable) {
        int larger = NEUTRAL.rowCount() - 1;
        int row = IntStream.range(0, larger)
                .filter(i -> generatorCable.area().si() <= ConductorSize.valueOf(NEUTRAL.text(i, "generator_cable")).area().si() * (1 + 1e-9))
                .findFirst().orElse(larger);
        return ConductorSize.valueOf(NEUTRAL.text(row, "ground_awg") + " AWG");
    }

    /** Conductor that grounds a d.c. system: as large as its largest supply conductor, at least 8 AWG ({@link CableSources#DC_GROUNDING}). */
    public static ConductorSize dcSystem(ConductorSize largestSupply) {
        return largestSupply.area().si() > LEAST_DC.area().si() ? largestSupply : LEAST_DC;
    }

    /**
     * Phase conductors that were made larger, as for voltage drop.
     *
     * @param needed the size that the current asks for
     * @param fitted the size in place, not smaller
     */
    public record PhaseEnlargement(ConductorSize needed, ConductorSize fitted) {

        public PhaseEnlargement {
            if (fitted.area().si() < needed.area().si()) {
                throw OutOfRangeException.of("fitted phase conductor", fitted, "not smaller than the needed " + needed);
            }
        }
    }
}
