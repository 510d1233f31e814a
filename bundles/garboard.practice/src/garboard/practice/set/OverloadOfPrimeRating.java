// SPDX-License-Identifier: EPL-2.0
package garboard.practice.set;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__DUTY_RATING;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__OVERLOAD_DECLARED;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Condition;
import garboard.checks.Gravity;
import garboard.checks.Remedy;
import garboard.model.Answer;
import garboard.model.DutyRating;
import garboard.model.GeneratorSet;
import garboard.practice.Sources;

/** Overload belongs to prime power alone. */
final class OverloadOfPrimeRating {

    private OverloadOfPrimeRating() {
    }

    static Check<GeneratorSet> check() {
        return Check.check("SET-OVERLOAD", GeneratorSet.class)
            .title("Overload is claimed for a prime rating only")
            .why("A continuous, limited-time or standby rating is the most that the engine gives; 10 % more damages it.")
            .basis(Sources.ISO_8528_1.othersSay("some call the 110 % a custom of the industry"))
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("110 % for 1 h in 12 h with prime power where it is declared; none with any other rating")
            .applies(Condition.<GeneratorSet>when("sets for which overload is claimed").known(path(GENERATOR_SET__OVERLOAD_DECLARED))
                .test(s -> s.subject().getOverloadDeclared() == Answer.YES, "no overload is claimed"))
            .needs(GENERATOR_SET__DUTY_RATING)
            .holds(s -> Comparison.holds("overload is claimed with a " + Categories.inWords(s.subject()) + " rating",
                s.subject().getDutyRating() == DutyRating.PRIME))
            .remedy("Do not load the set beyond 100 %; ask the maker which rating the overload belongs to",
                s -> Optional.of(Remedy.of("Do not load the set beyond 100 %, in the trial either")
                    .setting(s.subject(), GENERATOR_SET__OVERLOAD_DECLARED, Answer.NO)))
            .build();
    }
}
