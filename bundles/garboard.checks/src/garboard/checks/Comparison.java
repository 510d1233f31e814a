// SPDX-License-Identifier: EPL-2.0
package garboard.checks;

import java.util.Objects;

import garboard.quantity.Quantity;

/**
 * What a check compares: a measured or computed value against a limit, or a plain answer. A comparison says nothing of
 * uncertainty or gravity; {@link Judge} does.
 */
public sealed interface Comparison {

    /** The sentence that says what was found, for example "the vent seat clears the heeled waterline by 49 mm". */
    String found();

    /** A measured value that must not be below the limit. */
    record AtLeast<Q extends Quantity<Q>>(String found, Q measured, Limit<Q> limit) implements Comparison {
        public AtLeast {
            Objects.requireNonNull(measured, "measured");
            Objects.requireNonNull(limit, "limit");
        }
    }

    /** A measured value that must not be above the limit. */
    record AtMost<Q extends Quantity<Q>>(String found, Q measured, Limit<Q> limit) implements Comparison {
        public AtMost {
            Objects.requireNonNull(measured, "measured");
            Objects.requireNonNull(limit, "limit");
        }
    }

    /** A measured value that must be strictly above the limit, as some regulations word it. */
    record MoreThan<Q extends Quantity<Q>>(String found, Q measured, Limit<Q> limit) implements Comparison {
        public MoreThan {
            Objects.requireNonNull(measured, "measured");
            Objects.requireNonNull(limit, "limit");
        }
    }

    /** A measured value that must lie between two limits, both included. */
    record Between<Q extends Quantity<Q>>(String found, Q measured, Limit<Q> low, Limit<Q> high) implements Comparison {
        public Between {
            if (low.value().isMoreThan(high.value())) {
                throw new ContradictoryLimitsException(low, high);
            }
        }
    }

    /** A question that no number decides: it holds or it does not. */
    record Holds(String found, boolean holds) implements Comparison {
    }

    /** What is entered cannot be held against the limit, although nothing is missing: two figures that must not be converted into each other. */
    record Undecided(String found) implements Comparison {
    }

    static <Q extends Quantity<Q>> Comparison atLeast(String found, Q measured, Limit<Q> limit) {
        return new AtLeast<>(found, measured, limit);
    }

    static <Q extends Quantity<Q>> Comparison atMost(String found, Q measured, Limit<Q> limit) {
        return new AtMost<>(found, measured, limit);
    }

    static <Q extends Quantity<Q>> Comparison moreThan(String found, Q measured, Limit<Q> limit) {
        return new MoreThan<>(found, measured, limit);
    }

    static <Q extends Quantity<Q>> Comparison between(String found, Q measured, Limit<Q> low, Limit<Q> high) {
        return new Between<>(found, measured, low, high);
    }

    /** @param why as a sentence: "the label gives the current by another test than the one asked for" */
    static Comparison undecided(String why) {
        return new Undecided(why);
    }

    static Comparison holds(String found, boolean holds) {
        return new Holds(found, holds);
    }
}
