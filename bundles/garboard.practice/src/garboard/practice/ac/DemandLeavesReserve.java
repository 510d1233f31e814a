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
import garboard.practice.Figures;
import garboard.quantity.Ratio;

/** The busiest condition leaves a fifth of the rating for starts and for what comes later. */
final class DemandLeavesReserve {

    private static final Ratio MOST = Ratio.of(80, "%");

    private DemandLeavesReserve() {
    }

    static Check<AcOutput> check() {
        return Demand.check("AC-DEMAND-RESERVE")
            .title("Loads leave the set a reserve")
            .why("A set without a reserve has none for the start of a motor, a hot day or the next appliance.")
            .basis(Basis.commonPractice().othersSay("70 to 80 % of the rating are in use for the largest sustained demand"))
            .gravity(Gravity.ADVICE)
            .limit("at most 80 % of the rated power in the busiest condition")
            .applies(Demand.withinTheRating())
            .holds(s -> {
                LoadList.Running busiest = LoadList.busiest(s.subject());
                return Comparison.atMost(Demand.inWords(busiest, s), Demand.share(busiest, s), Limit.of(MOST, "common practice"));
            })
            .remedy("Stagger loads, or choose a larger set", s -> Optional.of(Remedy.of("Stagger loads, or choose a set of at least "
                + Figures.both(Demand.leastRating(LoadList.busiest(s.subject()).demand(), MOST.si())))))
            .build();
    }
}
