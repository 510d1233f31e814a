// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__GROUND_DETECTION;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.AcOutput;
import garboard.practice.Answers;

/** A lamp or a meter that shows the first fault of a system whose neutral is not grounded. */
final class GroundDetection {

    private GroundDetection() {
    }

    static Check.Builder<AcOutput> check(String id) {
        return Check.check(id, AcOutput.class)
            .why("The first fault of an ungrounded system trips nothing and is seen by nobody; the second one is a short through the hull.")
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("continuous ground detection")
            .needs(AC_OUTPUT__GROUND_DETECTION)
            .holds(s -> Answers.demanded(s.subject().getGroundDetection(), "a fault to ground is shown", "a fault to ground is not shown"))
            .remedy("Fit ground-detection lamps or an insulation monitor at the switchboard");
    }
}
