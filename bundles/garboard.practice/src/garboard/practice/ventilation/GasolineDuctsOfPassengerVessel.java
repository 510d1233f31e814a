// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.model.DuctFunction;
import garboard.model.Ventilation;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 46 CFR 182.460(a): two supply ducts and two exhaust ducts for an enclosed gasoline space. */
final class GasolineDuctsOfPassengerVessel {

    private static final int EACH = 2;

    private GasolineDuctsOfPassengerVessel() {
    }

    static Check<Ventilation> check() {
        return Check.check("VENT-DUCTS-182-460", Ventilation.class)
            .title("Gasoline space has two ducts in and two out (small passenger vessels)")
            .why("With a single duct the air takes the short way and leaves vapour in the corners.")
            .basis(Sources.cfr46("182.460(a)").othersSay("a partly enclosed space: one forward and one aft, with cowls"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("at least 2 supply ducts at one end and 2 exhaust ducts at the other, down to the lowest part on each side")
            .applies(Conditions.smallPassengerVessel())
            .applies(Conditions.gasolineSet())
            .applies(VentilationConditions.closedToAtmosphere())
            .needs(Ducts.function())
            .holds(s -> {
                int in = Ducts.of(s.subject(), DuctFunction.NATURAL_SUPPLY).size();
                int out = Ducts.of(s.subject(), DuctFunction.NATURAL_EXHAUST).size() + Ducts.of(s.subject(), DuctFunction.BLOWER_INTAKE).size();
                return Comparison.holds("supply ducts: " + in + "; exhaust ducts: " + out, in >= EACH && out >= EACH);
            })
            .remedy("Add ducts: two for supply at one end, two for exhaust at the other")
            .build();
    }
}
