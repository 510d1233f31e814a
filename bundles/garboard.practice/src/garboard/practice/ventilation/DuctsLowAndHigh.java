// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__FUEL;
import static garboard.model.GarboardPackage.Literals.VENTILATION__DUCTS_LOW_AND_HIGH;
import static garboard.model.GarboardPackage.Literals.VESSEL__GASOLINE_ENGINE_ABOARD;

import org.eclipse.emf.ecore.EObject;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Condition;
import garboard.checks.Gravity;
import garboard.model.Ventilation;
import garboard.practice.Answers;
import garboard.practice.Conditions;

/** Air comes in low and leaves high. */
final class DuctsLowAndHigh {

    private DuctsLowAndHigh() {
    }

    static Check<Ventilation> check() {
        return Check.check("VENT-DUCTS-LOW-HIGH", Ventilation.class)
            .title("Air comes in low and leaves high")
            .why("Air that comes in beside where it leaves passes the set by.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DEFECT)
            .limit("supply ducts end low, exhaust ducts begin high, at opposite ends")
            .applies(Condition.<EObject>when("boats without a gasoline engine, outboards left out of account").known()
                .uses(path(VESSEL__GASOLINE_ENGINE_ABOARD), path(GENERATOR_SET__FUEL)).test(s -> !Conditions.gasolineLawBinds(s),
                    "gasoline vapour lies low: 33 CFR 183.630 has the exhaust begin in the lowest third"))
            .applies(Conditions.asked(VENTILATION__DUCTS_LOW_AND_HIGH))
            .needs(VENTILATION__DUCTS_LOW_AND_HIGH)
            .holds(s -> Answers.yes(s.subject().getDuctsLowAndHigh(), "supply ends low and exhaust begins high",
                "supply and exhaust are not apart in height"))
            .remedy("Lengthen the supply duct to the bottom and the exhaust duct to the top of the space")
            .build();
    }
}
