// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__POSITIVE_TERMINAL_COVERED;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.StartingBattery;
import garboard.practice.Answers;
import garboard.practice.Conditions;

/** A cap covers the live terminal. */
final class PositiveTerminalCovered {

    private PositiveTerminalCovered() {
    }

    static Check<StartingBattery> check() {
        return Check.check("BATTERY-TERMINAL-COVERED", StartingBattery.class)
            .title("Live terminal is covered")
            .why("A spanner that falls across the posts melts, burns and can burst the battery.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("a boot or cover on the ungrounded terminal")
            .applies(Conditions.unlessLawForGasoline("183.420(b)"))
            .applies(Conditions.asked(STARTING_BATTERY__POSITIVE_TERMINAL_COVERED))
            .needs(STARTING_BATTERY__POSITIVE_TERMINAL_COVERED)
            .holds(s -> Answers.yes(s.subject().getPositiveTerminalCovered(), "the ungrounded terminal is covered",
                "the ungrounded terminal is bare"))
            .remedy("Fit a boot over the terminal or a lid on the box")
            .build();
    }
}
