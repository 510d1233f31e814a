// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.model.GarboardPackage.Literals.RAW_WATER_CIRCUIT__OWN_INTAKE;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.RawWaterCircuit;
import garboard.practice.Answers;
import garboard.practice.Conditions;

/** The set has an intake of its own. */
final class OwnIntake {

    private OwnIntake() {
    }

    static Check<RawWaterCircuit> check() {
        return Check.check("RAWWATER-OWN-INTAKE", RawWaterCircuit.class)
            .title("Set has its own water intake")
            .why("A main engine or another pump on the same intake draws the set's suction line empty.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("not shared with main engine, toilet or air conditioning")
            .applies(Conditions.asked(RAW_WATER_CIRCUIT__OWN_INTAKE))
            .needs(RAW_WATER_CIRCUIT__OWN_INTAKE)
            .holds(s -> Answers.yes(s.subject().getOwnIntake(), "the set has its own intake",
                "the set shares its intake"))
            .remedy("Fit an intake with its own seacock for the set")
            .build();
    }
}
