// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.model.GarboardPackage.Literals.VENTILATION__SEALED_FROM_ACCOMMODATION;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.Ventilation;
import garboard.practice.Answers;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** ISO 11105: the gasoline space is sealed from where people live. */
final class SealedFromAccommodation {

    private SealedFromAccommodation() {
    }

    static Check<Ventilation> check() {
        return Check.check("VENT-SEALED", Ventilation.class)
            .title("Gasoline space is sealed from the accommodation")
            .why("Vapour and carbon monoxide creep through cable holes and floor joints into the cabin.")
            .basis(Sources.ISO_11105)
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("no opening between the gasoline space and habitable spaces")
            .applies(Conditions.unlessLawForPassengers("177.405(c)"))
            .applies(Conditions.gasolineSet())
            .applies(Conditions.asked(VENTILATION__SEALED_FROM_ACCOMMODATION))
            .needs(VENTILATION__SEALED_FROM_ACCOMMODATION)
            .holds(s -> Answers.yes(s.subject().getSealedFromAccommodation(), "the space is sealed from the accommodation",
                "the space is open to the accommodation"))
            .remedy("Seal pipes, cables and joints in the bulkheads")
            .build();
    }
}
