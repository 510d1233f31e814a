// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import java.util.Comparator;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.model.AcOutput;
import garboard.practice.Figures;
import garboard.practice.Sources;

/** The apparent power of the busiest condition stays within that of the set; what is too much in active power is told there. */
final class DemandWithinApparentPower {

    private DemandWithinApparentPower() {
    }

    static Check<AcOutput> check() {
        return FullLoad.apparentNeeded(LoadList.apparentNeeded(Check.check("AC-DEMAND-KVA", AcOutput.class)))
            .title("Set is large enough for the apparent power of its loads")
            .why("Reactive current heats the winding without loading the engine, so nobody hears it.")
            .basis(Sources.IMO_POWER_TABLE)
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("sqrt(P2 + Q2) of the busiest condition at most the rated apparent power")
            .applies(Demand.withinTheRating())
            .holds(s -> {
                LoadList.Running busiest = busiest(s.subject());
                return Comparison.atMost(busiest.inWords() + "the loads ask for " + Figures.both(busiest.apparent()), busiest.apparent(),
                    Limit.of(FullLoad.apparent(s), "rated apparent power of the set"));
            })
            .remedy("Stagger loads of low power factor, correct their power factor, or fit a larger alternator")
            .build();
    }

    private static LoadList.Running busiest(AcOutput output) {
        return LoadList.conditions(output).stream().max(Comparator.comparing(LoadList.Running::apparent)).orElseThrow();
    }
}
