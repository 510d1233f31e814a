// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__PROTECTIVE_CONDUCTOR_RESISTANCE;
import static garboard.model.GarboardPackage.Literals.VESSEL__LENGTH_OVERALL;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.model.AcOutput;
import garboard.physics.ac.ProtectiveConductor;
import garboard.practice.Figures;
import garboard.practice.Sources;

/** The way from the frame of the set to the farthest outlet's ground pin has a low resistance. */
final class ProtectiveResistance {

    private ProtectiveResistance() {
    }

    static Check<AcOutput> check() {
        return Check.check("AC-PROTECTIVE-RESISTANCE", AcOutput.class)
            .title("Protective conductor is continuous to the farthest outlet")
            .why("A bad joint keeps the current of a fault so low that nothing trips, and leaves the case of an appliance live.")
            .basis(Sources.DGUV_203_071)
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("circuits up to 16 A: 0.3 ohm up to 5 m and 0.1 ohm for each further 7.5 m, at most 1 ohm; the boat's length counts as that of "
                + "the conductor")
            .needs(AC_OUTPUT__PROTECTIVE_CONDUCTOR_RESISTANCE, VESSEL__LENGTH_OVERALL)
            .holds(s -> Comparison.atMost("the protective conductor has " + Figures.both(s.subject().getProtectiveConductorResistance())
                + " to the farthest outlet", s.subject().getProtectiveConductorResistance(),
                Limit.of(ProtectiveConductor.highest(s.vessel().getLengthOverall()), "DGUV Information 203-071 for a conductor as long as the boat")))
            .remedy("Measure joint by joint; clean and retighten the bad one")
            .build();
    }
}
