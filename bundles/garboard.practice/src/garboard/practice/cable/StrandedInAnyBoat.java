// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.model.GarboardPackage.Literals.CABLE_RUN__MULTI_STRAND_COPPER;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.CableRun;
import garboard.practice.Answers;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** Conductors are stranded copper. */
final class StrandedInAnyBoat {

    private StrandedInAnyBoat() {
    }

    static Check<CableRun> check() {
        return Check.check("CABLE-STRANDED", CableRun.class)
            .title("Conductor is stranded copper")
            .why("Solid wire and aluminium break or corrode at the lugs in a hull that vibrates.")
            .basis(Sources.yardstick("33 CFR 183.425"))
            .gravity(Gravity.DEFECT)
            .limit("insulated stranded copper")
            .applies(Conditions.boatWithoutGasolineEngine())
            .applies(Conditions.asked(CABLE_RUN__MULTI_STRAND_COPPER))
            .needs(CABLE_RUN__MULTI_STRAND_COPPER)
            .holds(s -> Answers.yes(s.subject().getMultiStrandCopper(), "the conductor is stranded copper", "the conductor is "
                + "not stranded copper"))
            .remedy("Replace the conductor by one of stranded copper, tinned for preference")
            .build();
    }
}
