// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.model.GarboardPackage.Literals.CABLE_RUN__PROTECTION_VOLTAGE_RATING;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__SYSTEM_VOLTAGE;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.model.CableRun;
import garboard.practice.Figures;

/** A fuse or breaker is made for at least the voltage of its circuit, or it does not put out its arc. */
final class DeviceVoltage {

    private DeviceVoltage() {
    }

    /** Everything but authority. The output cable's device is described with the switchboard. */
    static Check.Builder<CableRun> check(String id) {
        return Check.check(id, CableRun.class)
            .among(run -> !CableRuns.isOutputCable(run))
            .why("A device for a lower voltage does not put out its arc: it burns on instead of breaking the circuit.")
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("at least the nominal voltage of the circuit")
            .applies(CableConditions.workingCircuit())
            .applies(CableConditions.deviceFitted())
            .needs(CABLE_RUN__PROTECTION_VOLTAGE_RATING, CABLE_RUN__SYSTEM_VOLTAGE)
            .holds(s -> Comparison.atLeast("the device is for " + Figures.both(s.subject().getProtectionVoltageRating()),
                s.subject().getProtectionVoltageRating(), Limit.of(s.subject().getSystemVoltage(), "nominal voltage of the circuit")))
            .remedy("Fit a device for the voltage of the circuit", s -> Optional.of(Remedy.of(
                "Fit a device for " + Figures.both(s.subject().getSystemVoltage()) + " or more")
                .setting(s.subject(), CABLE_RUN__PROTECTION_VOLTAGE_RATING, s.subject().getSystemVoltage())));
    }
}
