// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import java.util.Optional;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.model.AcOutput;
import garboard.practice.Conditions;
import garboard.practice.Figures;
import garboard.quantity.Power;
import garboard.quantity.Ratio;

/** The lightest condition still loads a diesel enough to keep it clean. */
final class DemandLoadsTheEngine {

    private static final Ratio LEAST = Ratio.of(30, "%");

    private DemandLoadsTheEngine() {
    }

    static Check<AcOutput> check() {
        return Demand.check("AC-DEMAND-LOW")
            .title("Diesel set is loaded enough in every condition")
            .why("A diesel that idles for hours soots up its exhaust, glazes its cylinders and thins its oil with fuel.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.ADVICE)
            .limit("at least 30 % of the rated power in the lightest condition that is listed")
            .applies(Conditions.dieselSet())
            .holds(s -> {
                LoadList.Running lightest = LoadList.lightest(s.subject());
                return Comparison.atLeast(Demand.inWords(lightest, s), Demand.share(lightest, s), Limit.of(LEAST, "common practice"));
            })
            .remedy("Run it for less time with more load together, or choose a smaller set", s -> Optional.of(
                Remedy.of("Run it together with at least " + Figures.both(Power.of(LEAST.si() * s.set().getRatedPower().si()))
                    + " of load (charging, heating water), or choose a smaller set for this condition")))
            .build();
    }
}
