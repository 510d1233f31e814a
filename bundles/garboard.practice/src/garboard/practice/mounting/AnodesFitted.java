// SPDX-License-Identifier: EPL-2.0
package garboard.practice.mounting;

import static garboard.model.GarboardPackage.Literals.MOUNTING__ANODES_FITTED;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.Mounting;
import garboard.practice.Answers;
import garboard.practice.Conditions;

/** The anodes are there, with enough left of them. */
final class AnodesFitted {

    private AnodesFitted() {
    }

    static Check<Mounting> check() {
        return Check.check("MOUNTING-ANODES", Mounting.class)
            .title("Anodes are in place")
            .why("Without an anode the sea water takes the heat exchanger instead, and then the oil or the coolant.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DEFECT)
            .limit("the pencil anode of each part that has one, with enough left of it")
            .applies(Conditions.asked(MOUNTING__ANODES_FITTED))
            .needs(MOUNTING__ANODES_FITTED)
            .holds(s -> Answers.yes(s.subject().getAnodesFitted(), "the anodes are in place", "an anode is missing or used up"))
            .remedy("Fit new anodes")
            .build();
    }
}
