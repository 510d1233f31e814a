// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__TERMINALS;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.model.StartingBattery;
import garboard.model.TerminalKind;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 33 CFR 183.420(g): no terminal is held by spring tension. */
final class BatteryTerminalsByLaw {

    private BatteryTerminalsByLaw() {
    }

    static Check<StartingBattery> check() {
        return Check.check("BATTERY-TERMINALS-33CFR", StartingBattery.class)
            .title("No battery terminal depends on a spring (gasoline boats)")
            .why("A clip that jumps off sparks where gasoline vapour may lie.")
            .basis(Sources.cfr33("183.420(g)"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("no connector that depends on spring tension")
            .applies(Conditions.boatWithGasolineEngine())
            .needs(STARTING_BATTERY__TERMINALS)
            .holds(s -> Comparison.holds("the cables are on " + BatteryTerminals.inWords(s.subject().getTerminals()),
                s.subject().getTerminals() != TerminalKind.SPRING_CLIP))
            .remedy("Fit post clamps or bolted lugs")
            .build();
    }
}
