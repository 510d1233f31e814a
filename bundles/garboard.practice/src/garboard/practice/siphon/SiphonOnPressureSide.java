// SPDX-License-Identifier: EPL-2.0
package garboard.practice.siphon;

import static garboard.model.GarboardPackage.Literals.SIPHON_BREAK__PLACE;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Situation;
import garboard.model.SiphonBreak;
import garboard.practice.Sources;

/** The siphon break sits between the pump's outlet and the injection: on the suction side it lets the pump draw air. */
final class SiphonOnPressureSide {

    private SiphonOnPressureSide() {
    }

    static Check<SiphonBreak> check() {
        return Check.check("SIPHON-PRESSURE-SIDE", SiphonBreak.class)
            .title("Siphon break sits between pump and injection")
            .why("On the suction side the vent lets the pump suck air and run dry; behind the injection it vents hot gas into the boat.")
            .basis(Sources.ABYC_P_1)
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("between the outlet of the raw-water pump and the injection, never on the suction side")
            .applies(SiphonConditions.loopFitted())
            .needs(SIPHON_BREAK__PLACE)
            .holds(SiphonOnPressureSide::compare)
            .remedy("Move the loop into the line between heat exchanger and injection")
            .build();
    }

    private static Comparison compare(Situation<SiphonBreak> s) {
        return switch (s.subject().getPlace()) {
            case PUMP_SUCTION -> Comparison.holds("the siphon break sits on the suction side of the pump", false);
            case AFTER_INJECTION -> Comparison.holds("the siphon break sits behind the injection", false);
            default -> Comparison.holds("the siphon break sits between pump and injection", true);
        };
    }
}
