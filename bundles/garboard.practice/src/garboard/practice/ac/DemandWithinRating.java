// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.model.AcOutput;
import garboard.practice.Figures;
import garboard.practice.Sources;
import garboard.quantity.Power;

/** The loads of the busiest condition stay within the set's rated power. */
final class DemandWithinRating {

    private DemandWithinRating() {
    }

    static Check<AcOutput> check() {
        return Demand.check("AC-DEMAND")
            .title("Set is large enough for its loads")
            .why("An overloaded engine smokes, runs hot and drops its frequency; an overloaded winding burns.")
            .basis(Sources.IMO_POWER_TABLE.othersSay("DDS 310-1 as quoted: connected load times demand factor, exclusive loads once"))
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("sum of power times demand factor in the busiest condition at most the rated power")
            .holds(s -> {
                LoadList.Running busiest = LoadList.busiest(s.subject());
                return Comparison.atMost(Demand.inWords(busiest, s), busiest.demand(), Limit.of(s.set().getRatedPower(), "rated power of the set"));
            })
            .remedy("Stagger or shed loads, or fit a larger set", s -> {
                Power demand = LoadList.busiest(s.subject()).demand();
                return Optional.of(Remedy.of("Keep " + Figures.both(Power.of(demand.si() - s.set().getRatedPower().si()))
                    + " of the loads from running together with the others, or fit a set of at least " + Figures.both(Demand.leastRating(demand, 0.8))));
            })
            .build();
    }
}
