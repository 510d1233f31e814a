// SPDX-License-Identifier: EPL-2.0
package garboard.checks;

import java.util.Objects;
import java.util.Optional;

import garboard.quantity.Quantity;

/**
 * The figure that a measured value is held against, and whose figure it is.
 *
 * @param value the limit
 * @param origin in words: "maker's limit (manual p. 12)", "common practice", "33 CFR 183.610"
 * @param fromMaker whether the maker's own limit took the place of a general figure
 */
public record Limit<Q extends Quantity<Q>>(Q value, String origin, boolean fromMaker) {

    public Limit {
        Objects.requireNonNull(value, "value");
        Objects.requireNonNull(origin, "origin");
    }

    /** A limit that stands by itself. */
    public static <Q extends Quantity<Q>> Limit<Q> of(Q value, String origin) {
        return new Limit<>(value, origin, false);
    }

    /**
     * The maker's own limit where it is entered, else the general figure. Not to be used by a check whose basis is a
     * regulation; the check refuses it.
     */
    public static <Q extends Quantity<Q>> Limit<Q> makerOr(Optional<Q> makersLimit, Q general, String origin) {
        return makersLimit.map(value -> new Limit<>(value, "maker's limit", true)).orElseGet(() -> of(general, origin));
    }
}
