// SPDX-License-Identifier: EPL-2.0
package garboard.practice.mounting;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.MOUNTING__DC_NEGATIVE_ISOLATED;
import static garboard.model.GarboardPackage.Literals.VESSEL__HULL_MATERIAL;

import java.util.EnumSet;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Condition;
import garboard.checks.Gravity;
import garboard.model.HullMaterial;
import garboard.model.Mounting;
import garboard.practice.Answers;
import garboard.practice.Conditions;

/** In a metal hull starting and charging current has no way through hull and engine. */
final class ReturnInsulated {

    private static final Set<HullMaterial> METAL = EnumSet.of(HullMaterial.ALUMINIUM, HullMaterial.STEEL);

    private ReturnInsulated() {
    }

    static Check<Mounting> check() {
        return Check.check("MOUNTING-DC-INSULATED", Mounting.class)
            .title("Set in a metal hull has an insulated return")
            .why("Direct current that finds its way through the hull takes metal along where it leaves it.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.ADVICE)
            .limit("no connection between battery negative and engine block at rest")
            .applies(Condition.<EObject>when("hulls of aluminium or steel").known(path(VESSEL__HULL_MATERIAL))
                .test(s -> METAL.contains(s.vessel().getHullMaterial()), "the hull is not of metal"))
            .applies(Conditions.asked(MOUNTING__DC_NEGATIVE_ISOLATED))
            .needs(MOUNTING__DC_NEGATIVE_ISOLATED)
            .holds(s -> Answers.yes(s.subject().getDcNegativeIsolated(), "the engine is insulated from battery negative",
                "the engine is joined to battery negative"))
            .remedy("Take starter, alternator and senders with insulated return, or a solenoid that joins the negative for the start only")
            .build();
    }
}
