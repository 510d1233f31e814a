// SPDX-License-Identifier: EPL-2.0
package garboard.practice.set;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__ANNUAL_HOURS;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__DUTY_RATING;
import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__EMERGENCY_SOURCE;
import static garboard.model.GarboardPackage.Literals.UPKEEP__ANNUAL_HOURS;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Condition;
import garboard.checks.Gravity;
import garboard.model.Answer;
import garboard.model.GeneratorSet;
import garboard.practice.Sources;

/** A set that is used daily has a rating for that; a standby rating is for one that waits for an emergency. */
final class RatingForItsUse {

    private RatingForItsUse() {
    }

    static Check<GeneratorSet> check() {
        return Check.check("SET-DUTY", GeneratorSet.class)
            .title("Rating is one for daily use")
            .why("A standby figure is what the engine gives now and then; taken as the daily one the set is overloaded from the first day.")
            .basis(Sources.ISO_8528_1.othersSay("that a set on a pleasure craft counts as prime power is common practice"))
            .gravity(Gravity.ADVICE)
            .limit("continuous or prime power; limited-time and standby power only for the emergency source")
            .applies(withinItsHours())
            .needs(GENERATOR_SET__DUTY_RATING)
            .needsWhen(s -> Categories.isLimited(s.subject()), path(STARTING_BATTERY__EMERGENCY_SOURCE))
            .holds(s -> {
                boolean good = !Categories.isLimited(s.subject()) || s.record().getStartingBattery().getEmergencySource() == Answer.YES;
                return Comparison.holds("the set has a " + Categories.inWords(s.subject()) + " rating"
                    + (Categories.isLimited(s.subject()) ? good ? " and is the emergency source" : " and is not the emergency source" : ""), good);
            })
            .remedy("Reckon with the maker's prime-power figure, and keep the load within it")
            .build();
    }

    private static Condition<GeneratorSet> withinItsHours() {
        return Condition.<GeneratorSet>when("unless the hours are beyond the rating already").known().uses(path(GENERATOR_SET__DUTY_RATING),
            path(GENERATOR_SET__ANNUAL_HOURS), path(UPKEEP__ANNUAL_HOURS)).test(s -> !Categories.beyondHours(s), "the hours are beyond the rating already");
    }
}
