// SPDX-License-Identifier: EPL-2.0
package garboard.physics.rating;

import java.util.Optional;

import garboard.physics.Argument;
import garboard.quantity.Power;
import garboard.quantity.Ratio;
import garboard.quantity.TimeSpan;

/** Categories of rated power ({@link RatingSources#CATEGORIES}). */
public enum RatingCategory {
    /** Continuous operating power: constant load, unlimited hours. */
    COP(Double.POSITIVE_INFINITY, 1.00),
    /** Prime power: varying load, unlimited hours, 70 % on average. */
    PRP(Double.POSITIVE_INFINITY, 0.70),
    /** Limited-time power: constant load, 500 h a year. */
    LTP(500, 1.00),
    /** Emergency standby power: varying load, 200 h a year, 70 % on average. */
    ESP(200, 0.70);

    private static final double OVERLOAD = 1.10;

    private final double hoursAYear;
    private final double averageShare;

    RatingCategory(double hoursAYear, double averageShare) {
        this.hoursAYear = hoursAYear;
        this.averageShare = averageShare;
    }

    /** Permitted running time a year; nothing where it is unlimited. */
    public Optional<TimeSpan> hoursAYear() {
        return Double.isInfinite(hoursAYear) ? Optional.empty() : Optional.of(TimeSpan.of(hoursAYear * 3600));
    }

    /** Highest permitted average over 24 h as a share of the rating, unless agreed otherwise. */
    public Ratio averageShare() {
        return Ratio.of(averageShare);
    }

    /** Highest permitted average over 24 h. */
    public Power highestAverage(Power rated) {
        return Power.of(averageShare * Argument.positive("rated power", rated));
    }

    /** 110 % for one hour in twelve, of prime power only and only where the maker declares it; nothing for the others. */
    public Optional<Power> declaredOverload(Power rated) {
        return this == PRP ? Optional.of(Power.of(OVERLOAD * Argument.positive("rated power", rated))) : Optional.empty();
    }
}
