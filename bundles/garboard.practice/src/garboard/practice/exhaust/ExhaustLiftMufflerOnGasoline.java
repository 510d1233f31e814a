// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.model.GarboardPackage.Literals.MUFFLER__KIND;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.model.Muffler;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** A gasoline set does without a lift muffler, in which unburnt vapour can collect. */
final class ExhaustLiftMufflerOnGasoline {

    private ExhaustLiftMufflerOnGasoline() {
    }

    static Check<Muffler> check() {
        return Check.check("EXHAUST-LIFT-MUFFLER-GASOLINE", Muffler.class)
            .title("Gasoline set does without a lift muffler")
            .why("An engine that misfires or was cranked while flooded fills the canister with vapour, which the next spark lights.")
            .basis(Sources.GERR.othersSay("Gerr advises against them; they are widely fitted all the same"))
            .gravity(Gravity.ADVICE)
            .limit("no lift muffler behind a gasoline engine")
            .applies(Conditions.gasolineSet())
            .needs(MUFFLER__KIND)
            .holds(s -> {
                boolean lifts = ExhaustConditions.lifts(s);
                return Comparison.holds(lifts ? "a lift muffler stands behind a gasoline engine" : "no lift muffler is fitted", !lifts);
            })
            .remedy("Lay the exhaust out with a separator or a standpipe; where the lift muffler stays, never go on cranking a flooded engine")
            .build();
    }
}
