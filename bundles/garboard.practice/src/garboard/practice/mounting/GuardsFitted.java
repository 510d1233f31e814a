// SPDX-License-Identifier: EPL-2.0
package garboard.practice.mounting;

import static garboard.model.GarboardPackage.Literals.MOUNTING__ROTATING_PARTS_GUARDED;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.Mounting;
import garboard.practice.Answers;
import garboard.practice.Conditions;

/** Nobody can reach into what turns. */
final class GuardsFitted {

    private GuardsFitted() {
    }

    static Check<Mounting> check() {
        return Check.check("MOUNTING-GUARDS", Mounting.class)
            .title("Turning parts are guarded")
            .why("A set starts by itself from the panel, while a hand or a sleeve is at the belt.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("a guard over each belt, pulley, coupling and fan that a hand or sleeve could meet")
            .applies(Conditions.asked(MOUNTING__ROTATING_PARTS_GUARDED))
            .needs(MOUNTING__ROTATING_PARTS_GUARDED)
            .holds(s -> Answers.yes(s.subject().getRotatingPartsGuarded(), "the turning parts are guarded", "a turning part can be touched"))
            .remedy("Fit the guard before the set runs again")
            .build();
    }
}
