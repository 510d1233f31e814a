// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.model.GarboardPackage.Literals.VENTILATION__IGNITION_PROTECTED_COMPONENTS;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.Ventilation;
import garboard.practice.Answers;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 46 CFR 182.410(a): electrical equipment in an enclosed gasoline space is explosion-proof, intrinsically safe or ignition-protected. */
final class IgnitionProtectionOfPassengerVessel {

    private IgnitionProtectionOfPassengerVessel() {
    }

    static Check<Ventilation> check() {
        return Check.check("VENT-IGNITION-PROTECTION-182-410", Ventilation.class)
            .title("Components in the gasoline space cannot ignite vapour (small passenger vessels)")
            .why("A brush or a contact lights what the blower has not carried away yet.")
            .basis(Sources.cfr46("182.410(a)"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("explosion-proof, intrinsically safe or ignition-protected")
            .applies(Conditions.smallPassengerVessel())
            .applies(Conditions.gasolineSet())
            .needs(VENTILATION__IGNITION_PROTECTED_COMPONENTS)
            .holds(s -> Answers.demanded(s.subject().getIgnitionProtectedComponents(), "what is electrical in the space is ignition-protected",
                "components in the space are not ignition-protected"))
            .remedy("Replace what is not marked as ignition-protected, or move it out of the space")
            .build();
    }
}
