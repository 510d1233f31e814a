// SPDX-License-Identifier: EPL-2.0
package garboard.physics.exhaust;

import garboard.physics.Argument;
import garboard.physics.OutOfRangeException;
import garboard.quantity.Ratio;
import garboard.quantity.RotationalSpeed;
import garboard.quantity.TimeSpan;
import garboard.quantity.Volume;
import garboard.quantity.VolumeFlow;

/**
 * Cranking without firing: the raw-water pump goes on filling a muffler that no gas empties. The pump's flow is taken as proportional to its
 * speed, as of a positive displacement pump. Derived here.
 */
public final class CrankingFlood {

    /** Part of the time to flood that may be used. Common practice. */
    public static final Ratio SHARE_TO_USE = Ratio.of(0.5);

    /** Longest total cranking with the seacock open in any case. Common practice: 30, 45 or 60 s are printed. */
    public static final TimeSpan LONGEST_TOTAL = TimeSpan.of(30);

    private CrankingFlood() {
    }

    /** A flow at a speed of the set. */
    public record PumpRating(VolumeFlow flow, RotationalSpeed speed) {
        public PumpRating {
            Argument.positive("rated flow", flow);
            Argument.positive("rated speed", speed);
        }
    }

    /** Flow at cranking speed. @param cranking more than 0, at most the rated speed */
    public static VolumeFlow flow(PumpRating rating, RotationalSpeed cranking) {
        Argument.positive("cranking speed", cranking);
        if (cranking.isMoreThan(rating.speed())) {
            throw OutOfRangeException.of("cranking speed", cranking, "at most the rated speed, " + rating.speed());
        }
        return VolumeFlow.of(rating.flow().si() * cranking.si() / rating.speed().si());
    }

    /** Time until a free volume, 0 or more, is full. */
    public static TimeSpan timeToFlood(Volume free, VolumeFlow crankingFlow) {
        return TimeSpan.of(Argument.notNegative("free volume", free) / Argument.positive("flow", crankingFlow));
    }

    /** Part of the time to flood that may be used. */
    public static TimeSpan toUse(TimeSpan timeToFlood) {
        return TimeSpan.of(SHARE_TO_USE.si() * Argument.notNegative("time to flood", timeToFlood));
    }

    /** Total cranking before the seacock has to be closed: half the time to flood, 30 s at most. */
    public static TimeSpan greatestTotal(TimeSpan timeToFlood) {
        return TimeSpan.of(Math.min(LONGEST_TOTAL.si(), toUse(timeToFlood).si()));
    }

    /** Free volume that gives this much cranking: the flow of twice the time. */
    public static Volume leastFree(TimeSpan total, VolumeFlow crankingFlow) {
        return Volume.of(Argument.notNegative("total time", total) / SHARE_TO_USE.si() * Argument.positive("flow", crankingFlow));
    }
}
