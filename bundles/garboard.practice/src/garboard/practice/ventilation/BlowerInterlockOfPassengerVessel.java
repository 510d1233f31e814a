// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.model.GarboardPackage.Literals.VENTILATION__BLOWER_INTERLOCKED;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.Ventilation;
import garboard.practice.Answers;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 46 CFR 182.460(e): the blower's switch is interlocked with the start. */
final class BlowerInterlockOfPassengerVessel {

    private BlowerInterlockOfPassengerVessel() {
    }

    static Check<Ventilation> check() {
        return Check.check("VENT-BLOWER-INTERLOCK-182-460", Ventilation.class)
            .title("Blower is interlocked with the start (small passenger vessels)")
            .why("Whoever is in a hurry starts without blowing.")
            .basis(Sources.cfr46FromMemory("182.460(e)").othersSay("46 CFR 72.15-10(d), whose text was read, has the same"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("the set cannot be started unless the blower has been switched on")
            .applies(Conditions.smallPassengerVessel())
            .applies(Conditions.gasolineSet())
            .needs(VENTILATION__BLOWER_INTERLOCKED)
            .holds(s -> Answers.demanded(s.subject().getBlowerInterlocked(), "the blower is interlocked with the start",
                "the set starts without the blower"))
            .remedy("Wire the start through the blower's switch")
            .build();
    }
}
