// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.model.GarboardPackage.Literals.RAW_WATER_CIRCUIT__SHUT_WHEN_NOT_IN_USE;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.RawWaterCircuit;
import garboard.practice.Answers;
import garboard.practice.Conditions;

/** The seacock is shut under sail and in lay-up. */
final class SeacockShutWhenNotInUse {

    private SeacockShutWhenNotInUse() {
    }

    static Check<RawWaterCircuit> check() {
        return Check.check("RAWWATER-SEACOCK-SHUT", RawWaterCircuit.class)
            .title("Seacock is shut while the set is not in use")
            .why("Hours of heeling pump water through an open intake past the pump's vanes; in lay-up a failed "
                + "hose sinks the boat.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("shut when the set is not in use")
            .applies(Conditions.sailing())
            .applies(Conditions.asked(RAW_WATER_CIRCUIT__SHUT_WHEN_NOT_IN_USE))
            .needs(RAW_WATER_CIRCUIT__SHUT_WHEN_NOT_IN_USE)
            .holds(s -> Answers.yes(s.subject().getShutWhenNotInUse(), "the seacock is shut when the set is not in use",
                "the seacock stays open when the set is not in use"))
            .remedy("Shut the seacock under sail and in lay-up, and put the tag on the start panel")
            .build();
    }
}
