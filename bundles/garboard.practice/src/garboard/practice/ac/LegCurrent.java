// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__LEG_ACURRENT;
import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__LEG_BCURRENT;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__RATED_VOLTAGE;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Situation;
import garboard.model.AcOutput;
import garboard.physics.ac.SplitPhaseLoad;
import garboard.practice.Figures;
import garboard.quantity.Current;
import garboard.quantity.Voltage;

/** The measured currents of the two legs of a split-phase set. */
final class LegCurrent {

    private LegCurrent() {
    }

    static Check<AcOutput> check() {
        return FullLoad.apparentNeeded(needed("AC-LEG-CURRENT"))
            .title("Neither leg carries more than half of the set")
            .why("One leg can burn its winding while the set as a whole is far from full.")
            .basis(Basis.derived("half of the set's apparent power at half of its voltage"))
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("on each leg at most S / (2 U leg)")
            .holds(s -> Comparison.atMost(inWords(s.subject()), load(s.subject()).heavierLeg(), Limit.of(limit(s), "half of the set")))
            .remedy("Move circuits from the loaded leg to the other")
            .build();
    }

    static Check.Builder<AcOutput> needed(String id) {
        return Check.check(id, AcOutput.class)
            .applies(AcConditions.splitPhase())
            .needs(AC_OUTPUT__LEG_ACURRENT, AC_OUTPUT__LEG_BCURRENT, GENERATOR_SET__RATED_VOLTAGE);
    }

    static SplitPhaseLoad load(AcOutput output) {
        return new SplitPhaseLoad(output.getLegACurrent(), output.getLegBCurrent());
    }

    /** The rated voltage of a split-phase set is that of both legs together. */
    static Current limit(Situation<? extends AcOutput> s) {
        return SplitPhaseLoad.legLimit(FullLoad.apparent(s), Voltage.of(s.set().getRatedVoltage().si() / 2));
    }

    static String inWords(AcOutput output) {
        return "leg A carries " + Figures.both(output.getLegACurrent()) + ", leg B " + Figures.both(output.getLegBCurrent()) + ", the neutral "
            + Figures.both(load(output).neutral());
    }
}
