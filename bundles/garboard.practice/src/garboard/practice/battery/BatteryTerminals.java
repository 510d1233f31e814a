// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__FUEL;
import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__TERMINALS;
import static garboard.model.GarboardPackage.Literals.VESSEL__GASOLINE_ENGINE_ABOARD;
import static garboard.model.GarboardPackage.Literals.VESSEL__SERVICE;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Condition;
import garboard.checks.Gravity;
import garboard.model.StartingBattery;
import garboard.model.TerminalKind;
import garboard.practice.Conditions;

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
            .applies(unlessAgainstTheLaw())
            .needs(STARTING_BATTERY__TERMINALS)
            .holds(s -> Comparison.holds("the cables are on " + inWords(s.subject().getTerminals()), permanent(s.subject().getTerminals())))
            .remedy("Fit post clamps or bolted lugs")
            .build();
    }

    /** Spring clips that a law forbids are told once, as law. */
    private static Condition<StartingBattery> unlessAgainstTheLaw() {
        return Condition.<StartingBattery>when("unless spring clips are against the law").known(path(STARTING_BATTERY__TERMINALS))
            .uses(path(VESSEL__GASOLINE_ENGINE_ABOARD), path(GENERATOR_SET__FUEL), path(VESSEL__SERVICE))
            .test(s -> s.subject().getTerminals() != TerminalKind.SPRING_CLIP || !Conditions.gasolineLawBinds(s) && !Conditions.carriesPassengers(s),
                "spring clips are against the law on this boat");
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
