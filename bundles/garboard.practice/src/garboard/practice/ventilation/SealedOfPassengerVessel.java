// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.model.GarboardPackage.Literals.VENTILATION__SEALED_FROM_ACCOMMODATION;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.Ventilation;
import garboard.practice.Answers;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 46 CFR 177.405(c): machinery and tank spaces are vapour-tight from the accommodation. */
final class SealedOfPassengerVessel {

    private SealedOfPassengerVessel() {
    }

    static Check<Ventilation> check() {
        return Check.check("VENT-SEALED-177-405", Ventilation.class)
            .title("Machinery space is vapour-tight (small passenger vessels)")
            .why("Fuel vapour and exhaust gas creep into the accommodation.")
            .basis(Sources.cfr46("177.405(c)"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("vapour-tight boundaries between machinery, tanks and accommodation")
            .applies(Conditions.smallPassengerVessel())
            .needs(VENTILATION__SEALED_FROM_ACCOMMODATION)
            .holds(s -> Answers.demanded(s.subject().getSealedFromAccommodation(), "the space is sealed from the accommodation",
                "the space is open to the accommodation"))
            .remedy("Seal pipes, cables and joints in the bulkheads")
            .build();
    }
}
