// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__FUEL;
import static garboard.model.GarboardPackage.Literals.VENTILATION__DESIGN_AMBIENT;

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

/** The loads fit what heat and height leave of the engine's power. */
final class DemandWithinDerating {

    private DemandWithinDerating() {
    }

    static Check<AcOutput> check() {
        return Demand.check("AC-DERATING")
            .title("Loads fit what heat and height leave of the set")
            .why("Hot or thin air burns less fuel; the engine smokes and runs hot at a load that its plate allows.")
            .basis(Sources.AGRICULTURAL_TEXTBOOK.othersSay("US Army: 1.3 % for each 100 m above 1219 m, 3 % for each 10 K above 35 degC; alternator "
                + "by common practice 3 % for each 5 K above 40 degC; ISO 3046-1 from memory; the set's own curve goes before all of them"))
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("rated power less 3 % for each 305 m (1000 ft) above 152 m, by the barometer of the trial, and 1 % for each 2.8 K (diesel, naturally "
                + "aspirated) or 5.6 K (gasoline) above 29 degC, or above what the set is built for")
            .applies(Derating.takesSomething())
            .applies(Demand.withinTheRating())
            .needs(VENTILATION__DESIGN_AMBIENT, GENERATOR_SET__FUEL)
            .holds(s -> {
                LoadList.Running busiest = LoadList.busiest(s.subject());
                Power left = Power.of(Derating.share(s).si() * s.set().getRatedPower().si());
                return Comparison.atMost(Demand.inWords(busiest, s) + ", of which " + Derating.inWords(s) + " leave " + Figures.both(left),
                    busiest.demand(), Limit.of(left, "agricultural-engineering textbook"));
            })
            .remedy("Duct cooler air to the set, stagger loads, or fit a larger set", s -> Optional.of(Remedy.of("Duct cooler air to the set, stagger "
                + "loads, or fit a set of at least "
                + Figures.both(Demand.leastRating(LoadList.busiest(s.subject()).demand(), Derating.share(s).si())))))
            .build();
    }
}
