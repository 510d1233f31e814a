// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.model.GarboardPackage.Literals.FUEL_LINE_RUN__BARBED_ENDS;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.FuelLineRun;
import garboard.practice.Answers;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** The hose sits on a ringed barb. */
final class HoseEnds {

    private HoseEnds() {
    }

    static Check<FuelLineRun> check() {
        return Check.check("FUEL-HOSE-ENDS", FuelLineRun.class)
            .title("Fuel hose sits on ringed barbs")
            .why("Threads and cross-cuts lead fuel along under the clamp in a spiral.")
            .basis(Sources.GERR)
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("ringed barbs, no threads; a screw clamp of stainless steel about a band's width from the end")
            .applies(FuelConditions.hose())
            .applies(Conditions.asked(FUEL_LINE_RUN__BARBED_ENDS))
            .needs(FUEL_LINE_RUN__BARBED_ENDS)
            .holds(s -> Answers.yes(s.subject().getBarbedEnds(), "the hose sits on ringed barbs", "the hose does not sit on ringed barbs"))
            .remedy("Fit hose barbs with rings, and new clamps")
            .build();
    }
}
