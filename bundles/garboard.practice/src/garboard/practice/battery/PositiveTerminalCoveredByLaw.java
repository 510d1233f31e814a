// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__POSITIVE_TERMINAL_COVERED;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.StartingBattery;
import garboard.practice.Answers;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 33 CFR 183.420(b): metal cannot come in contact with the ungrounded terminal. */
final class PositiveTerminalCoveredByLaw {

    private PositiveTerminalCoveredByLaw() {
    }

    static Check<StartingBattery> check() {
        return Check.check("BATTERY-TERMINAL-COVERED-33CFR", StartingBattery.class)
            .title("Live terminal is covered (gasoline boats)")
            .why("A spark at the post lights gasoline vapour.")
            .basis(Sources.cfr33("183.420(b)"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("metal objects cannot touch the ungrounded terminals")
            .applies(Conditions.boatWithGasolineEngine())
            .needs(STARTING_BATTERY__POSITIVE_TERMINAL_COVERED)
            .holds(s -> Answers.demanded(s.subject().getPositiveTerminalCovered(), "no metal object can touch the ungrounded terminal",
                "a metal object can touch the ungrounded terminal"))
            .remedy("Fit a boot over the terminal or a lid on the box")
            .build();
    }
}
