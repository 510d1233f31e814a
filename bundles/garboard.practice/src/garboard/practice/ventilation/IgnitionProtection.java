// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__FUEL;
import static garboard.model.GarboardPackage.Literals.VENTILATION__BLOWER_IGNITION_PROTECTED;
import static garboard.model.GarboardPackage.Literals.VENTILATION__IGNITION_PROTECTED_COMPONENTS;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Situation;
import garboard.model.Answer;
import garboard.model.FuelKind;
import garboard.model.GeneratorSet;
import garboard.model.Ventilation;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/**
 * 33 CFR 183.410: nothing electrical in a gasoline space lights vapour. A diesel set that shares the space of a gasoline engine or its tanks
 * has to be protected too; one that stands apart is marked as not applicable.
 */
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
            .applies(Conditions.boatWithGasolineEngine())
            .needs(VENTILATION__IGNITION_PROTECTED_COMPONENTS)
            .needsWhen(s -> gasolineSet(s) && components(s) == Answer.YES, path(VENTILATION__BLOWER_IGNITION_PROTECTED))
            .uses(GENERATOR_SET__FUEL)
            .holds(IgnitionProtection::compare)
            .remedy("Replace what is not marked as ignition-protected, or move it out of the space")
            .build();
    }

    private static Comparison compare(Situation<Ventilation> s) {
        if (components(s) == Answer.NOT_APPLICABLE) {
            return gasolineSet(s) ? Comparison.holds("marked as not applicable, but the rule applies here", false)
                : Comparison.holds("marked as not applicable: the set stands apart from the gasoline engine and its tanks", true);
        }
        if (components(s) == Answer.NO) {
            return Comparison.holds("components in the space are not ignition-protected", false);
        }
        boolean blower = !gasolineSet(s) || s.subject().getBlowerIgnitionProtected() != Answer.NO;
        return Comparison.holds(blower ? "what is electrical in the space is ignition-protected" : "the blower is not ignition-protected", blower);
    }

    private static Answer components(Situation<Ventilation> s) {
        return s.subject().getIgnitionProtectedComponents();
    }

    private static boolean gasolineSet(Situation<Ventilation> s) {
        return s.optional(s.record().getGeneratorSet(), GeneratorSet::getFuel).filter(FuelKind.GASOLINE::equals).isPresent();
    }
}
