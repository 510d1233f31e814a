// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.model.GarboardPackage.Literals.CABLE_RUN__MULTI_STRAND_COPPER;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.CableRun;
import garboard.practice.Answers;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 33 CFR 183.425: conductors are stranded copper. */
final class StrandedByLaw {

    private StrandedByLaw() {
    }

    static Check<CableRun> check() {
        return Check.check("CABLE-STRANDED-33CFR", CableRun.class)
            .title("Conductor is stranded copper (gasoline boats)")
            .why("Solid wire and aluminium break or corrode at the lugs in a hull that vibrates.")
            .basis(Sources.cfr33("183.425"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("insulated stranded copper")
            .applies(Conditions.boatWithGasolineEngine())
            .needs(CABLE_RUN__MULTI_STRAND_COPPER)
            .holds(s -> Answers.demanded(s.subject().getMultiStrandCopper(), "the conductor is stranded copper", "the conductor is "
                + "not stranded copper"))
            .remedy("Replace the conductor by one of stranded copper, tinned for preference")
            .build();
    }
}
