// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.model.GarboardPackage.Literals.RAW_WATER_CIRCUIT__DISCHARGE_AHEAD_OF_INTAKE;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.RawWaterCircuit;
import garboard.practice.Answers;
import garboard.practice.Conditions;

/** Nothing discharges ahead of the intake. */
final class NoDischargeAheadOfIntake {

    private NoDischargeAheadOfIntake() {
    }

    static Check<RawWaterCircuit> check() {
        return Check.check("RAWWATER-DISCHARGE-AHEAD", RawWaterCircuit.class)
            .title("Nothing discharges ahead of the intake")
            .why("Warm, soapy or aerated water from a discharge ahead goes straight into the intake.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("no discharge and no fitting just ahead of the intake, clear of aerated flow")
            .applies(Conditions.asked(RAW_WATER_CIRCUIT__DISCHARGE_AHEAD_OF_INTAKE))
            .needs(RAW_WATER_CIRCUIT__DISCHARGE_AHEAD_OF_INTAKE)
            .holds(s -> Answers.no(s.subject().getDischargeAheadOfIntake(), "nothing discharges ahead of the intake",
                "something discharges ahead of the intake"))
            .remedy("Move the intake or the discharge ahead of it")
            .build();
    }
}
