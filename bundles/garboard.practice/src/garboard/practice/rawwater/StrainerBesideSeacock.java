// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.model.GarboardPackage.Literals.WATER_STRAINER__BESIDE_SEACOCK;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.WaterStrainer;
import garboard.practice.Answers;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** The strainer stands just inboard of the seacock. */
final class StrainerBesideSeacock {

    private StrainerBesideSeacock() {
    }

    static Check<WaterStrainer> check() {
        return Check.check("RAWWATER-STRAINER-PLACE", WaterStrainer.class)
            .title("Strainer stands right beside the seacock")
            .why("Debris settles in the hose before a strainer that is far away, and whoever opens it cannot see "
                + "whether the valve is shut.")
            .basis(Sources.GERR_CH_17)
            .gravity(Gravity.DEFECT)
            .limit("just inboard of the seacock")
            .applies(Conditions.asked(WATER_STRAINER__BESIDE_SEACOCK))
            .needs(WATER_STRAINER__BESIDE_SEACOCK)
            .holds(s -> Answers.yes(s.subject().getBesideSeacock(), "the strainer stands beside the seacock",
                "the strainer stands away from the seacock"))
            .remedy("Move the strainer to the seacock")
            .build();
    }
}
