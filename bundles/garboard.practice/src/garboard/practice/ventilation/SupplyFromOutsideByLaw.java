// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.model.GarboardPackage.Literals.VENTILATION__SUPPLY_FROM_OUTSIDE;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.Ventilation;
import garboard.practice.Answers;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 33 CFR 183.620: natural ventilation draws from the outside of the boat. */
final class SupplyFromOutsideByLaw {

    private SupplyFromOutsideByLaw() {
    }

    static Check<Ventilation> check() {
        return Check.check("VENT-SUPPLY-OUTSIDE-183-620", Ventilation.class)
            .title("Ventilation air comes from outside the boat")
            .why("Air from another space brings that space's vapour along, or none at all.")
            .basis(Sources.cfr33("183.620(b)"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("supply opening on the exterior of the boat")
            .applies(Conditions.gasolineSet())
            .applies(VentilationConditions.closedToAtmosphere())
            .needs(VENTILATION__SUPPLY_FROM_OUTSIDE)
            .holds(s -> Answers.demanded(s.subject().getSupplyFromOutside(), "the supply opens to the outside",
                "the supply does not open to the outside"))
            .remedy("Lead the supply to the outside")
            .build();
    }
}
