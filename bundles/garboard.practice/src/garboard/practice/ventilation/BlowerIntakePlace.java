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

/** 33 CFR 183.610(d): the blower draws from the lowest third of the compartment, above bilge water. */
final class BlowerIntakePlace {

    private BlowerIntakePlace() {
    }

    static Check<Ventilation> check() {
        return Check.check("VENT-BLOWER-INTAKE-183-610", Ventilation.class)
            .title("Blower draws from the lowest third, above bilge water")
            .why("Gasoline vapour lies at the bottom; a duct that begins high leaves it there, one under water moves nothing.")
            .basis(Sources.cfr33("183.610(d)"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("duct begins above normal bilge water and no higher than a third of the compartment's height")
            .applies(Conditions.gasolineSet())
            .applies(VentilationConditions.crankingMotorFitted())
            .applies(VentilationConditions.closedToAtmosphere())
            .needs(LowerThird.inputs(DuctFunction.BLOWER_INTAKE))
            .uses(Ducts.function(), path(VENTILATION__DUCTS, AIR_DUCT__NAME))
            .holds(s -> LowerThird.compare(s.subject(), DuctFunction.BLOWER_INTAKE, "33 CFR 183.610(d)"))
            .remedy("Lead the blower's duct to the lowest third, above bilge water",
                s -> LowerThird.remedy(s.subject(), DuctFunction.BLOWER_INTAKE))
            .build();
    }
}
