// SPDX-License-Identifier: EPL-2.0
package garboard.practice.siphon;

import static garboard.model.GarboardPackage.Literals.SIPHON_BREAK__VALVE_TESTED;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.SiphonBreak;
import garboard.practice.Answers;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** The valve was seen to open and to close. */
final class SiphonValveTested {

    private SiphonValveTested() {
    }

    static Check<SiphonBreak> check() {
        return Check.check("SIPHON-VALVE-TESTED", SiphonBreak.class)
            .title("Valve of the siphon break was tested")
            .why("A new valve can be fitted upside down or be stuck from the store; both look the same from outside.")
            .basis(Sources.TRADE_PRESS.othersSay("Gerr asks for inspection from time to time"))
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("lets air in when sucked at, holds when blown at")
            .applies(SiphonConditions.valved())
            .applies(Conditions.asked(SIPHON_BREAK__VALVE_TESTED))
            .needs(SIPHON_BREAK__VALVE_TESTED)
            .holds(s -> Answers.yes(s.subject().getValveTested(), "the valve was tested",
                "the valve was not tested or did not pass"))
            .remedy("Take the valve off and suck and blow at it; replace one that is stiff")
            .build();
    }
}
