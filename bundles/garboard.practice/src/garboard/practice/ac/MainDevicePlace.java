// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__OUTPUT_CABLE;
import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__PROTECTION_DISTANCE;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__SHEATHED_TO_PROTECTION;

import garboard.checks.Check;
import garboard.checks.FeaturePath;
import garboard.checks.Gravity;
import garboard.checks.Remedy;
import garboard.model.AcOutput;
import garboard.model.Answer;
import garboard.practice.Figures;
import garboard.practice.Rounding;
import garboard.quantity.Length;

/** Where along the output cable the main device sits. */
final class MainDevicePlace {

    private MainDevicePlace() {
    }

    /** Everything but distances and authority. */
    static Check.Builder<AcOutput> check(String id) {
        return Check.check(id, AcOutput.class)
            .why("The cable between the set and its breaker is protected by nothing but the set's own weakness.")
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .applies(AcConditions.deviceFitted())
            .needs(AC_OUTPUT__PROTECTION_DISTANCE);
    }

    static FeaturePath sheathed() {
        return path(AC_OUTPUT__OUTPUT_CABLE, CABLE_RUN__SHEATHED_TO_PROTECTION);
    }

    static boolean isSheathed(AcOutput output) {
        return output.getOutputCable().getSheathedToProtection() == Answer.YES;
    }

    static String inWords(AcOutput output) {
        return "the device sits " + Figures.both(output.getProtectionDistance()) + " from the set";
    }

    static Remedy closer(AcOutput output, Length limit) {
        return Remedy.of("Move the device to within " + Figures.both(limit) + " of the set")
            .setting(output, AC_OUTPUT__PROTECTION_DISTANCE, Rounding.down(limit, 10, "mm"));
    }
}
