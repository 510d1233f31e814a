// SPDX-License-Identifier: EPL-2.0
package garboard.physics.ac;

import java.util.Optional;

import garboard.physics.Argument;
import garboard.quantity.Ratio;
import garboard.quantity.TimeSpan;

/** Break times of residual-current devices at 1, 2 and 5 times their rated residual current ({@link AcSources#RESIDUAL_CURRENT}). */
public enum ResidualCurrentDevice {
    /** Without delay. */
    GENERAL(0.300, 0.150, 0.040),
    /** Selective, type S. */
    DELAYED(0.500, 0.200, 0.150);

    /** Boat rules (ISO 13297, from memory): at the rated residual current. */
    public static final TimeSpan BOAT_LIMIT = TimeSpan.of(0.100);

    private final double atOnceS;
    private final double atTwiceS;
    private final double atFiveTimesS;

    ResidualCurrentDevice(double atOnceS, double atTwiceS, double atFiveTimesS) {
        this.atOnceS = atOnceS;
        this.atTwiceS = atTwiceS;
        this.atFiveTimesS = atFiveTimesS;
    }

    /**
     * Longest break time at a test current, given as a multiple of the rated residual current. Between the three points the time of the lower one
     * holds. Throws below 1, where the device need not break.
     */
    public TimeSpan longest(Ratio multiple) {
        double times = Argument.between("test current", multiple, 1, 1000, "1 or more times the rated residual current");
        if (times >= 5) {
            return TimeSpan.of(atFiveTimesS);
        }
        return TimeSpan.of(times >= 2 ? atTwiceS : atOnceS);
    }

    /** Time that a delayed device has to hold at least: 130 ms at once, 60 ms at twice, 50 ms at five times; nothing for a general one. */
    public Optional<TimeSpan> shortest(Ratio multiple) {
        double times = Argument.between("test current", multiple, 1, 1000, "1 or more times the rated residual current");
        if (this == GENERAL) {
            return Optional.empty();
        }
        if (times >= 5) {
            return Optional.of(TimeSpan.of(0.050));
        }
        return Optional.of(TimeSpan.of(times >= 2 ? 0.060 : 0.130));
    }
}
