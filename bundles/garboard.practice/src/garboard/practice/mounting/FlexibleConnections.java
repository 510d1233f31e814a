// SPDX-License-Identifier: EPL-2.0
package garboard.practice.mounting;

import static garboard.model.GarboardPackage.Literals.MOUNTING__FLEXIBLE_CONNECTIONS;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.Mounting;
import garboard.practice.Answers;
import garboard.practice.Conditions;

/** Nothing rigid joins the moving set to the boat. */
final class FlexibleConnections {

    private FlexibleConnections() {
    }

    static Check<Mounting> check() {
        return Check.check("MOUNTING-FLEXIBLE", Mounting.class)
            .title("Exhaust, water, fuel and cables lead to the set with slack")
            .why("A rigid line between the shaking set and the hull breaks: fuel, water or exhaust gas runs into the boat.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("a flexible part or a slack loop in each line")
            .applies(Conditions.asked(MOUNTING__FLEXIBLE_CONNECTIONS))
            .needs(MOUNTING__FLEXIBLE_CONNECTIONS)
            .holds(s -> Answers.yes(s.subject().getFlexibleConnections(), "all lines lead to the set with slack", "a line joins the set rigidly"))
            .remedy("Put a flexible part into each line, close to the set")
            .build();
    }
}
