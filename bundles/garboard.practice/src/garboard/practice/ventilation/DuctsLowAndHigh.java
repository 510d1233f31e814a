// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.model.GarboardPackage.Literals.VENTILATION__DUCTS_LOW_AND_HIGH;

import garboard.checks.Basis;
import garboard.checks.Check;
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
            .applies(Conditions.asked(VENTILATION__DUCTS_LOW_AND_HIGH))
            .needs(VENTILATION__DUCTS_LOW_AND_HIGH)
            .holds(s -> Answers.yes(s.subject().getDuctsLowAndHigh(), "supply ends low and exhaust begins high",
                "supply and exhaust are not apart in height"))
            .remedy("Lengthen the supply duct to the bottom and the exhaust duct to the top of the space")
            .build();
    }
}
