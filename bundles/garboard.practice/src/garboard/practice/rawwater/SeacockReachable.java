// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.model.GarboardPackage.Literals.SEACOCK__REACHABLE_WITHOUT_TOOLS;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.Seacock;
import garboard.practice.Answers;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** A hand reaches the seacock at once, without tools. */
final class SeacockReachable {

    private SeacockReachable() {
    }

    static Check<Seacock> check() {
        return Check.check("RAWWATER-SEACOCK-REACH", Seacock.class)
            .title("Seacock can be reached at once without tools")
            .why("When a hose bursts there is no time to unscrew a floor.")
            .basis(Sources.ABYC_H_27)
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("reached quickly and without tools")
            .applies(RawWaterConditions.seacockFitted())
            .applies(Conditions.asked(SEACOCK__REACHABLE_WITHOUT_TOOLS))
            .needs(SEACOCK__REACHABLE_WITHOUT_TOOLS)
            .holds(s -> Answers.yes(s.subject().getReachableWithoutTools(), "the seacock is reached without tools",
                "the seacock cannot be reached without tools"))
            .remedy("Cut an opening in the floor, or lead the valve's handle to where a hand reaches it")
            .build();
    }
}
