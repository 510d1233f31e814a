// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__OUTPUT_CABLE;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__PROTECTION_VOLTAGE_RATING;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__RATED_VOLTAGE;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.AcOutput;
import garboard.practice.Figures;
import garboard.quantity.Voltage;

/** The main device is made for the set's voltage: everything but authority. */
final class MainDeviceVoltage {

    private MainDeviceVoltage() {
    }

    static Check.Builder<AcOutput> check(String id) {
        return Check.check(id, AcOutput.class)
            .why("A device for a lower voltage cannot break the arc: it burns instead of opening.")
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("rated for at least the voltage of the set")
            .applies(AcConditions.deviceFitted())
            .needs(path(AC_OUTPUT__OUTPUT_CABLE, CABLE_RUN__PROTECTION_VOLTAGE_RATING))
            .needs(GENERATOR_SET__RATED_VOLTAGE)
            .holds(s -> Comparison.atLeast("the main device is for " + Figures.both(rating(s)), rating(s),
                Limit.of(s.set().getRatedVoltage(), "voltage of the set")))
            .remedy("Fit a device for the voltage of the set", s -> Optional.of(
                Remedy.of("Fit a device for " + Figures.both(s.set().getRatedVoltage()) + " or more")
                    .setting(s.subject().getOutputCable(), CABLE_RUN__PROTECTION_VOLTAGE_RATING, s.set().getRatedVoltage())));
    }

    private static Voltage rating(Situation<AcOutput> s) {
        return s.subject().getOutputCable().getProtectionVoltageRating();
    }
}
