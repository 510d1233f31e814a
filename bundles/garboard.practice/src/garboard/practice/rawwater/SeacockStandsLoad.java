// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.model.GarboardPackage.Literals.SEACOCK__STATIC_LOAD_MARKED;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.Seacock;
import garboard.practice.Answers;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** The seacock and its fastening are made to stand somebody stepping on the hose. */
final class SeacockStandsLoad {

    private SeacockStandsLoad() {
    }

    static Check<Seacock> check() {
        return Check.check("RAWWATER-SEACOCK-STRENGTH", Seacock.class)
            .title("Seacock is made to stand a load on its inboard end")
            .why("Somebody steps on the hose or a battery breaks loose: a weak valve breaks off at the hull.")
            .basis(Sources.ABYC_H_27)
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("stands 2.22 kN (500 lbf) for 30 s at its inboard end, as marked or stated by its maker")
            .applies(RawWaterConditions.seacockFitted())
            .applies(Conditions.asked(SEACOCK__STATIC_LOAD_MARKED))
            .needs(SEACOCK__STATIC_LOAD_MARKED)
            .holds(s -> Answers.yes(s.subject().getStaticLoadMarked(), "the valve is stated to stand 2.22 kN (500 lbf)",
                "no statement says that the valve stands 2.22 kN (500 lbf)"))
            .remedy("Fit a seacock that its maker states to stand 500 lbf (2.22 kN)")
            .build();
    }
}
