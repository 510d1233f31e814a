// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.VENTILATION__BLOWER_IGNITION_PROTECTED;
import static garboard.model.GarboardPackage.Literals.VENTILATION__IGNITION_PROTECTED_COMPONENTS;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.model.Answer;
import garboard.model.Ventilation;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 33 CFR 183.410: nothing electrical in the gasoline space lights vapour. */
final class IgnitionProtection {

    private IgnitionProtection() {
    }

    static Check<Ventilation> check() {
        return Check.check("VENT-IGNITION-PROTECTION-183-410", Ventilation.class)
            .title("Blower and components in the gasoline space are ignition-protected")
            .why("A brush or a contact lights what the blower has not carried away yet.")
            .basis(Sources.cfr33("183.410"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("every electrical component ignition-protected, or isolated from the gasoline space")
            .applies(Conditions.gasolineSet())
            .needs(VENTILATION__IGNITION_PROTECTED_COMPONENTS)
            .needsWhen(s -> s.subject().getIgnitionProtectedComponents() == Answer.YES, path(VENTILATION__BLOWER_IGNITION_PROTECTED))
            .holds(s -> {
                boolean components = s.subject().getIgnitionProtectedComponents() != Answer.NO;
                boolean blower = s.subject().getBlowerIgnitionProtected() != Answer.NO;
                String found = !components ? "components in the space are not ignition-protected"
                    : blower ? "blower and components are ignition-protected" : "the blower is not ignition-protected";
                return Comparison.holds(found, components && blower);
            })
            .remedy("Replace what is not marked as ignition-protected, or move it out of the space")
            .build();
    }
}
