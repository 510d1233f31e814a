// SPDX-License-Identifier: EPL-2.0
package garboard.physics.ac;

import garboard.physics.Argument;
import garboard.quantity.Length;
import garboard.quantity.Resistance;

/** Continuity of the protective conductor of circuits up to 16 A ({@link AcSources#PROTECTIVE_CONDUCTOR}). */
public final class ProtectiveConductor {

    private static final double FIRST_M = 5;
    private static final double FURTHER_M = 7.5;

    private ProtectiveConductor() {
    }

    /** Highest resistance: 0.3 ohm up to 5 m, 0.1 ohm more for each further 7.5 m begun, never more than 1 ohm. */
    public static Resistance highest(Length conductor) {
        double furtherM = Math.max(0, Argument.positive("conductor length", conductor) - FIRST_M);
        // 12.5 m are one further length, whatever the last bit of a conversion says.
        double lengths = Math.ceil(furtherM / FURTHER_M - 1e-9);
        return Resistance.of(Math.min(1.0, (3 + lengths) / 10));
    }
}
