// SPDX-License-Identifier: EPL-2.0
package garboard.practice.set;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__ANNUAL_HOURS;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__DUTY_RATING;
import static garboard.model.GarboardPackage.Literals.UPKEEP__ANNUAL_HOURS;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Condition;
import garboard.checks.Gravity;
import garboard.model.GeneratorSet;
import garboard.practice.Sources;
import garboard.quantity.Display;

/** The hours of a year stay within what the category of the rating allows. */
final class HoursWithinRating {

    private HoursWithinRating() {
    }

    static Check<GeneratorSet> check() {
        return Check.check("SET-HOURS", GeneratorSet.class)
            .title("Hours of the year are within the set's rating")
            .why("A set that is rated for a few hundred hours a year wears out in two seasons when it runs every day, and its warranty with it.")
            .basis(Sources.ISO_8528_1)
            .gravity(Gravity.DEFECT)
            .limit("limited-time power 500 h a year, emergency standby power 200 h a year")
            .applies(Condition.<GeneratorSet>when("sets with a limited-time or standby rating").known(path(GENERATOR_SET__DUTY_RATING))
                .test(s -> Categories.isLimited(s.subject()), "the rating sets no limit to the hours"))
            .uses(path(UPKEEP__ANNUAL_HOURS))
            .needsWhen(s -> Categories.hours(s).isEmpty(), path(GENERATOR_SET__ANNUAL_HOURS))
            .uses(GENERATOR_SET__ANNUAL_HOURS)
            .holds(s -> Comparison.holds("the set runs " + Display.formatIn(Categories.hours(s).orElseThrow(), "h") + " a year; its "
                + Categories.inWords(s.subject()) + " rating allows " + Display.formatIn(Categories.of(s.subject()).hoursAYear().orElseThrow(), "h"),
                !Categories.beyondHours(s)))
            .remedy("Limit the hours, or have the set rated for prime power by its maker")
            .build();
    }
}
