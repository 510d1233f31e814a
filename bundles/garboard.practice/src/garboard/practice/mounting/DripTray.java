// SPDX-License-Identifier: EPL-2.0
package garboard.practice.mounting;

import static garboard.model.GarboardPackage.Literals.MOUNTING__DRIP_TRAY;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.Mounting;
import garboard.practice.Answers;
import garboard.practice.Conditions;

/** What drips from the set stays under it. */
final class DripTray {

    private DripTray() {
    }

    static Check<Mounting> check() {
        return Check.check("MOUNTING-DRIP-TRAY", Mounting.class)
            .title("Drip tray lies under the engine")
            .why("Oil in the bilge hides the next leak, burns, and goes overboard with the bilge pump.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DEFECT)
            .limit("a tray that holds what drips and can be wiped out")
            .applies(Conditions.asked(MOUNTING__DRIP_TRAY))
            .needs(MOUNTING__DRIP_TRAY)
            .holds(s -> Answers.yes(s.subject().getDripTray(), "a drip tray lies under the engine", "no drip tray lies under the engine"))
            .remedy("Fit a tray under the engine that can be wiped out")
            .build();
    }
}
