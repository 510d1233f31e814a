// SPDX-License-Identifier: EPL-2.0
package garboard.practice;

import java.util.Optional;
import java.util.function.Supplier;

import garboard.checks.Limit;
import garboard.quantity.Quantity;

/** The maker's own limit, with a general one that is only worked out where the maker gives none. */
public final class MakersLimit {

    private MakersLimit() {
    }

    /** The maker's limit, else the general one: for general limits whose inputs are not asked for when the maker has spoken. */
    public static <Q extends Quantity<Q>> Limit<Q> or(Optional<Q> makersLimit, Supplier<Limit<Q>> general) {
        return makersLimit.map(value -> Limit.makerOr(makersLimit, value, "")).orElseGet(general);
    }
}
