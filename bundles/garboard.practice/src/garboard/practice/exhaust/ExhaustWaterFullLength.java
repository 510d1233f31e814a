// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.model.GarboardPackage.Literals.EXHAUST_RUN__WATER_FULL_LENGTH;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.ExhaustRun;
import garboard.practice.Answers;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** The cooling water runs through the whole length of the exhaust behind the injection. */
final class ExhaustWaterFullLength {

    private ExhaustWaterFullLength() {
    }

    static Check<ExhaustRun> check() {
        return Check.check("EXHAUST-WATER-FULL-LENGTH", ExhaustRun.class)
            .title("Cooling water runs through the whole exhaust")
            .why("Behind a separator the gas runs dry in a pipe that is made for wet gas.")
            .basis(Sources.cfr46("182.425(b)(2)"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("water through the full length of the pipe; ask first where a separator is planned")
            .applies(Conditions.smallPassengerVessel())
            .needs(EXHAUST_RUN__WATER_FULL_LENGTH)
            .holds(s -> Answers.demanded(s.subject().getWaterFullLength(), "the water runs through the full length",
                "part of the run carries no water"))
            .remedy("Lead the water through the whole run, or have the dry part approved")
            .build();
    }
}
