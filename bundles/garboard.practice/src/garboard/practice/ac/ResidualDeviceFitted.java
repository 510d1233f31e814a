// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__RESIDUAL_CURRENT_DEVICE;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.AcOutput;
import garboard.practice.Answers;
import garboard.practice.Conditions;

/** A residual-current device guards the circuits of the set. */
final class ResidualDeviceFitted {

    private ResidualDeviceFitted() {
    }

    static Check<AcOutput> check() {
        return Check.check("AC-RCD", AcOutput.class)
            .title("Set's circuits have a residual-current device")
            .why("A small set gives too little current in a fault to trip a breaker at once; only a residual-current device does.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("a residual-current device behind the neutral bond of the set")
            .applies(Conditions.asked(AC_OUTPUT__RESIDUAL_CURRENT_DEVICE))
            .needs(AC_OUTPUT__RESIDUAL_CURRENT_DEVICE)
            .holds(s -> Answers.yes(s.subject().getResidualCurrentDevice(), "a residual-current device is fitted",
                "no residual-current device is fitted"))
            .remedy("Fit a residual-current device of 30 mA in front of the circuits")
            .build();
    }
}
