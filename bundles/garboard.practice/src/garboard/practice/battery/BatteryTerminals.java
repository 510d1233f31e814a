// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__TERMINALS;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.model.StartingBattery;
import garboard.model.TerminalKind;

/** Cables are bolted or clamped on; neither wing nuts nor spring clips hold a cranking current for long. */
final class BatteryTerminals {

    private BatteryTerminals() {
    }

    static Check<StartingBattery> check() {
        return Check.check("BATTERY-TERMINALS", StartingBattery.class)
            .title("Cables are bolted or clamped to the battery")
            .why("A wing nut or spring clip works loose; under the cranking current it burns the post away.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DEFECT)
            .limit("post clamps or bolted lugs; no spring clips, no wing nuts")
            .needs(STARTING_BATTERY__TERMINALS)
            .holds(s -> Comparison.holds("the cables are on " + inWords(s.subject().getTerminals()), permanent(s.subject().getTerminals())))
            .remedy("Fit post clamps or bolted lugs")
            .build();
    }

    static boolean permanent(TerminalKind terminals) {
        return terminals == TerminalKind.POST_CLAMP || terminals == TerminalKind.BOLTED_LUG;
    }

    static String inWords(TerminalKind terminals) {
        return switch (terminals) {
            case POST_CLAMP -> "post clamps";
            case BOLTED_LUG -> "bolted lugs";
            case SPRING_CLIP -> "spring clips";
            case WING_NUT -> "wing nuts";
            case NOT_ENTERED -> "unknown terminals";
        };
    }
}
