// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__FUNCTION;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__LENGTH;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__STRAND_CLASS;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__CRANKING_CURRENT;
import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__CABLES;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Limit;
import garboard.checks.Situation;
import garboard.model.StartingBattery;
import garboard.practice.Figures;
import garboard.quantity.Current;
import garboard.quantity.Resistance;
import garboard.quantity.Voltage;

/** The resistance of the cranking cables against SAE J541. */
final class CrankingResistance {

    private CrankingResistance() {
    }

    /** Everything that light and heavy duty have in common. */
    static Check.Builder<StartingBattery> check(String id) {
        return Check.check(id, StartingBattery.class)
            .why("What the cables eat the starter lacks: it turns slowly, draws more, and the engine does not fire in the cold.")
            .applies(CrankingCircuit.listedVoltage())
            .applies(CrankingCircuit.readableSizes())
            .needs(CrankingCircuit.positives().then(CABLE_RUN__LENGTH), CrankingCircuit.negatives().then(CABLE_RUN__LENGTH))
            .needsWhen(s -> CrankingCircuit.hasMetricConductors(s.subject()), CrankingCircuit.metricConductors().then(CABLE_RUN__STRAND_CLASS))
            .uses(path(STARTING_BATTERY__CABLES, CABLE_RUN__FUNCTION))
            .uses(GENERATOR_SET__CRANKING_CURRENT);
    }

    static Comparison compare(Situation<StartingBattery> s, Limit<Resistance> limit) {
        Resistance resistance = CrankingCircuit.of(s.subject()).resistance();
        String found = "the cranking cables have " + Figures.both(resistance) + " at 20 degC without their joints";
        Current cranking = s.set().getCrankingCurrent();
        return Comparison.atMost(cranking == null ? found
            : found + ", which takes " + Figures.both(Voltage.of(resistance.si() * cranking.si())) + " at " + Figures.both(cranking),
            resistance, limit);
    }
}
