// SPDX-License-Identifier: EPL-2.0
package garboard.practice.siphon;

import static garboard.model.GarboardPackage.Literals.SIPHON_BREAK__PLACE;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Situation;
import garboard.checks.SteppingBack;
import garboard.model.SiphonBreak;
import garboard.model.SiphonBreakPlace;

/** The siphon break is the last thing before the injection, where the hose has to come up from the heat exchanger anyway. */
final class SiphonAfterHeatExchanger {

    private SiphonAfterHeatExchanger() {
    }

    static Check<SiphonBreak> check() {
        return Check.check("SIPHON-AFTER-HEAT-EXCHANGER", SiphonBreak.class)
            .title("Siphon break sits between heat exchanger and injection")
            .why("There the hose climbs to the injection anyway, and the heat exchanger stays full when the vent lets air in.")
            .basis(Basis.commonPractice().othersSay("ABYC P-1 as quoted asks only for a place between pump outlet and injection elbow"))
            .gravity(Gravity.ADVICE)
            .limit("between the outlet of the heat exchanger and the injection")
            .applies(SiphonConditions.loopFitted())
            .applies(SiphonConditions.heatExchangerFitted())
            .applies(SteppingBack.where(SiphonOnPressureSide.check()))
            .needs(SIPHON_BREAK__PLACE)
            .holds(SiphonAfterHeatExchanger::compare)
            .remedy("Move the loop into the line between heat exchanger and injection")
            .build();
    }

    private static Comparison compare(Situation<SiphonBreak> s) {
        boolean holds = s.subject().getPlace() == SiphonBreakPlace.BETWEEN_HEAT_EXCHANGER_AND_INJECTION;
        return Comparison.holds(holds ? "the siphon break sits between heat exchanger and injection"
            : "the siphon break does not sit between heat exchanger and injection", holds);
    }
}
