// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__RATED_POWER;

import garboard.checks.Check;
import garboard.checks.Condition;
import garboard.checks.Situation;
import garboard.model.AcOutput;
import garboard.physics.Argument;
import garboard.practice.Figures;
import garboard.practice.Rounding;
import garboard.quantity.Power;
import garboard.quantity.Ratio;

/** What the loads ask for against what the set gives. */
final class Demand {

    private Demand() {
    }

    /** Everything that checks of active power have in common. */
    static Check.Builder<AcOutput> check(String id) {
        return Check.check(id, AcOutput.class)
            .needs(LoadList.inputs())
            .uses(LoadList.options())
            .needs(GENERATOR_SET__RATED_POWER);
    }

    /** Where the demand is above the rating that is told, and nothing finer. */
    static Condition<AcOutput> withinTheRating() {
        return Condition.<AcOutput>when("loads within the set's rating").known(LoadList.inputs(GENERATOR_SET__RATED_POWER))
            .uses(LoadList.options()).test(s -> !LoadList.busiest(s.subject()).demand().isMoreThan(s.set().getRatedPower()),
                "the loads are above the set's rating already");
    }

    static String inWords(LoadList.Running running, Situation<AcOutput> s) {
        return running.inWords() + "the loads ask for " + Figures.both(running.demand()) + ", " + Figures.metric(share(running, s)) + " of the set's "
            + Figures.both(s.set().getRatedPower());
    }

    static Ratio share(LoadList.Running running, Situation<AcOutput> s) {
        return Ratio.of(running.demand().si() / Argument.positive("rated power", s.set().getRatedPower()));
    }

    /** The least rating, in steps of half a kilowatt, of which the demand is a share. */
    static Power leastRating(Power demand, double share) {
        return Rounding.up(Power.of(demand.si() / share), 0.5, "kW");
    }
}
