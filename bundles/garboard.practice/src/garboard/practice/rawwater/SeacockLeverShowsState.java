// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.model.GarboardPackage.Literals.SEACOCK__LEVER_SHOWS_STATE;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.Seacock;
import garboard.practice.Answers;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** The seacock's lever shows at a glance whether it is open or shut. */
final class SeacockLeverShowsState {

    private SeacockLeverShowsState() {
    }

    static Check<Seacock> check() {
        return Check.check("RAWWATER-SEACOCK-LEVER", Seacock.class)
            .title("Seacock's lever shows whether it is open")
            .why("A set is started against a shut seacock, or a boat is left with an open one, because nobody could see which.")
            .basis(Sources.ABYC_H_27)
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("a quarter-turn lever that lies along the pipe when open")
            .applies(RawWaterConditions.seacockFitted())
            .applies(Conditions.asked(SEACOCK__LEVER_SHOWS_STATE))
            .needs(SEACOCK__LEVER_SHOWS_STATE)
            .holds(s -> Answers.yes(s.subject().getLeverShowsState(), "the lever shows whether the valve is open",
                "nothing shows whether the valve is open"))
            .remedy("Fit the lever so that it lies along the pipe when open, or replace the valve")
            .build();
    }
}
