// SPDX-License-Identifier: EPL-2.0
package garboard.practice.set;

import java.util.Optional;

import garboard.checks.Situation;
import garboard.model.GeneratorSet;
import garboard.model.Upkeep;
import garboard.physics.rating.RatingCategory;
import garboard.quantity.TimeSpan;

/** Rating categories of ISO 8528-1 as the record names them. */
final class Categories {

    private Categories() {
    }

    static RatingCategory of(GeneratorSet set) {
        return switch (set.getDutyRating()) {
            case CONTINUOUS -> RatingCategory.COP;
            case PRIME, NOT_ENTERED -> RatingCategory.PRP;
            case LIMITED_TIME -> RatingCategory.LTP;
            case STANDBY -> RatingCategory.ESP;
        };
    }

    /** The category allows only so many hours a year. */
    static boolean isLimited(GeneratorSet set) {
        return of(set).hoursAYear().isPresent();
    }

    static String inWords(GeneratorSet set) {
        return switch (set.getDutyRating()) {
            case CONTINUOUS -> "continuous";
            case PRIME -> "prime";
            case LIMITED_TIME -> "limited-time";
            case STANDBY -> "standby";
            case NOT_ENTERED -> "unknown";
        };
    }

    /** The hours of the set's year, from the set or from the plan of upkeep; nothing where neither is entered. */
    static Optional<TimeSpan> hours(Situation<? extends GeneratorSet> s) {
        return Optional.ofNullable(s.subject().getAnnualHours()).or(() -> s.optional(s.record().getUpkeep(), Upkeep::getAnnualHours));
    }

    static boolean beyondHours(Situation<? extends GeneratorSet> s) {
        return hours(s).isPresent() && of(s.subject()).hoursAYear().filter(most -> hours(s).orElseThrow().si() > most.si() * (1 + 1e-9)).isPresent();
    }
}
