// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.AIR_DUCT__NAME;
import static garboard.model.GarboardPackage.Literals.VENTILATION__DUCTS;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.DuctFunction;
import garboard.model.Ventilation;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 33 CFR 183.630: natural exhaust begins in the lowest third of the compartment, above bilge water. */
final class NaturalExhaustPlace {

    private NaturalExhaustPlace() {
    }

    static Check<Ventilation> check() {
        return Check.check("VENT-NATURAL-EXHAUST-LOW-183-630", Ventilation.class)
            .title("Natural exhaust begins in the lowest third, above bilge water")
            .why("Gasoline vapour lies at the bottom; an exhaust that begins high leaves it there.")
            .basis(Sources.cfr33("183.630(b) and (c)"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("duct begins above normal bilge water and no higher than a third of the compartment's height")
            .applies(Conditions.gasolineSet())
            .applies(VentilationConditions.closedToAtmosphere())
            .needs(LowerThird.inputs(DuctFunction.NATURAL_EXHAUST))
            .uses(Ducts.function(), path(VENTILATION__DUCTS, AIR_DUCT__NAME))
            .holds(s -> LowerThird.compare(s.subject(), DuctFunction.NATURAL_EXHAUST, "33 CFR 183.630(b)"))
            .remedy("Lead the exhaust duct to the lowest third, above bilge water",
                s -> LowerThird.remedy(s.subject(), DuctFunction.NATURAL_EXHAUST))
            .build();
    }
}
