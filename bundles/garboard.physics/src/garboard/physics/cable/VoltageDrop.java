// SPDX-License-Identifier: EPL-2.0
package garboard.physics.cable;

import garboard.physics.Argument;
import garboard.quantity.Area;
import garboard.quantity.Current;
import garboard.quantity.Length;
import garboard.quantity.Ratio;
import garboard.quantity.ResistancePerLength;
import garboard.quantity.Voltage;

/** Voltage that conductors lose. The loop of a pair is the length out plus the length back; a balanced three-phase load has no way back. */
public final class VoltageDrop {

    private static final double FOOT_M = 0.3048;
    /** ABYC E-11, ohm circular mil per foot. */
    private static final double CIRCULAR_MIL_CONSTANT = 10.75;

    private VoltageDrop() {
    }

    /** I R' L ({@link CableSources#ROUND_TRIP_DROP}). */
    public static Voltage roundTrip(Current current, ResistancePerLength conductor, Length loop) {
        return Voltage.of(Argument.notNegative("current", current) * Argument.positive("resistance per length", conductor)
                * Argument.notNegative("loop length", loop));
    }

    /** Between the lines of a balanced three-phase load: sqrt(3) I R' L, L the length of one conductor ({@link CableSources#THREE_PHASE_DROP}). */
    public static Voltage threePhase(Current line, ResistancePerLength conductor, Length run) {
        return Voltage.of(Math.sqrt(3) * roundTrip(line, conductor, run).si());
    }

    /** Drop as a share of the nominal voltage; throws when the drop is the larger. */
    public static Ratio share(Voltage drop, Voltage nominal) {
        double nominalV = Argument.positive("nominal voltage", nominal);
        return Ratio.of(Argument.between("voltage drop", drop, 0, nominalV, "0 up to the nominal voltage of " + nominal) / nominalV);
    }

    /** Area that the circular-mil method asks for: CM = 10.75 I L / E, L in ft, E in V ({@link CableSources#CIRCULAR_MIL_METHOD}). */
    public static Area circularMilArea(Current current, Length loop, Voltage allowedDrop) {
        double circularMils = CIRCULAR_MIL_CONSTANT * Argument.positive("current", current) * Argument.positive("loop length", loop) / FOOT_M
                / Argument.positive("allowed drop", allowedDrop);
        return Area.of(circularMils * ConductorSize.CIRCULAR_MIL_M2);
    }
}
