// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.model.GarboardPackage.Literals.EXHAUST_RUN__OWN_SYSTEM;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.ExhaustRun;
import garboard.practice.Answers;
import garboard.practice.Conditions;

/** The set has an exhaust of its own, not joined to that of another engine. */
final class ExhaustOwnSystem {

    private ExhaustOwnSystem() {
    }

    static Check<ExhaustRun> check() {
        return Check.check("EXHAUST-OWN-SYSTEM", ExhaustRun.class)
            .title("Set has an exhaust of its own")
            .why("Through a common pipe one engine blows gas and water into the other while that is stopped.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("not joined to the exhaust of the main engine or of another set")
            .applies(Conditions.asked(EXHAUST_RUN__OWN_SYSTEM))
            .needs(EXHAUST_RUN__OWN_SYSTEM)
            .holds(s -> Answers.yes(s.subject().getOwnSystem(), "the set has an exhaust of its own",
                "the exhaust is joined to that of another engine"))
            .remedy("Lead the exhaust overboard by itself")
            .build();
    }
}
