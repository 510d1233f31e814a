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

/** 46 CFR 183.350: connectors are permanent. */
final class BatteryTerminalsOnPassengerVessel {

    private BatteryTerminalsOnPassengerVessel() {
    }

    static Check<StartingBattery> check() {
        return Check.check("BATTERY-TERMINALS-46CFR", StartingBattery.class)
            .title("Battery connectors are permanent (small passenger vessels)")
            .why("A clip that jumps off sparks beside the battery's gas and leaves the set dead.")
            .basis(Sources.cfr46("183.350"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("permanent connectors, no spring clips")
            .applies(Conditions.smallPassengerVessel())
            .needs(STARTING_BATTERY__TERMINALS)
            .holds(s -> Comparison.holds("the cables are on " + BatteryTerminals.inWords(s.subject().getTerminals()),
                s.subject().getTerminals() != TerminalKind.SPRING_CLIP))
            .remedy("Fit post clamps or bolted lugs")
            .build();
    }
}
