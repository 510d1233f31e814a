// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__SHORE_INLET_RESIDUAL_DEVICE;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.AcOutput;
import garboard.practice.Answers;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** A residual-current device close to the shore inlet. */
final class ShoreInletResidualDevice {

    private ShoreInletResidualDevice() {
    }

    static Check<AcOutput> check() {
        return Check.check("AC-SHORE-RCD", AcOutput.class)
            .title("Residual-current device at the shore inlet")
            .why("A fault aboard sends current through the water to the dock; a swimmer near the boat is paralysed and drowns.")
            .basis(Sources.ABYC_E_11.othersSay("the break time of 100 ms is from memory"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("30 mA, within 3.05 m (10 ft) of the inlet")
            .applies(Conditions.asked(AC_OUTPUT__SHORE_INLET_RESIDUAL_DEVICE))
            .needs(AC_OUTPUT__SHORE_INLET_RESIDUAL_DEVICE)
            .holds(s -> Answers.yes(s.subject().getShoreInletResidualDevice(), "a residual-current device sits at the inlet",
                "no residual-current device sits at the inlet"))
            .remedy("Fit a device of 30 mA within 3 m (10 ft) of the inlet")
            .build();
    }
}
