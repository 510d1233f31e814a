// SPDX-License-Identifier: EPL-2.0
package garboard.practice.siphon;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.MAKER_LIMITS__MINIMUM_SIPHON_BREAK_HEIGHT;
import static garboard.model.GarboardPackage.Literals.POINT__Z;
import static garboard.model.GarboardPackage.Literals.SIPHON_BREAK__VENT_SEAT;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.MakerLimits;
import garboard.model.SiphonBreak;
import garboard.practice.DesignAttitude;
import garboard.practice.Figures;
import garboard.practice.Rounding;
import garboard.practice.Sources;
import garboard.quantity.Length;

/** The vent seat of the siphon break stands well above the loaded waterline: under water it lets in no air and breaks no siphon. */
final class SiphonHeightUpright {

    private static final Length LEAST = Length.of(300, "mm");

    private SiphonHeightUpright() {
    }

    static Check<SiphonBreak> check() {
        return Check.check("SIPHON-HEIGHT-UPRIGHT", SiphonBreak.class)
            .title("Siphon break stands well above the loaded waterline")
            .why("A vent near or under the water cannot let air in, so the sea runs on into the exhaust after the set has stopped.")
            .basis(Sources.TRADE_PRESS_2017.othersSay("12 to 18 in are printed; Gerr, ch. 7, gives 18 in"))
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("vent seat at least 300 mm (12 in) above the loaded waterline, or the maker's height")
            .applies(SiphonConditions.breakFitted())
            .needs(path(SIPHON_BREAK__VENT_SEAT, POINT__Z))
            .uses(MAKER_LIMITS__MINIMUM_SIPHON_BREAK_HEIGHT)
            .holds(s -> Comparison.atLeast("the vent seat lies " + DesignAttitude.heightInWords(height(s)) + " with the boat upright",
                height(s), limit(s)))
            .remedy("Lengthen the hoses and raise the loop, up to the deck, the coachroof or a coaming", SiphonHeightUpright::raise)
            .build();
    }

    private static Length height(Situation<SiphonBreak> s) {
        return s.subject().getVentSeat().getZ();
    }

    private static Limit<Length> limit(Situation<SiphonBreak> s) {
        return Limit.makerOr(s.maker(MakerLimits::getMinimumSiphonBreakHeight), LEAST, "trade press: 12 in");
    }

    private static Optional<Remedy> raise(Situation<SiphonBreak> s) {
        Length enough = Rounding.up(limit(s).value(), 10, "mm");
        return Optional.of(Remedy.of("Lengthen the hoses and raise the vent seat to " + Figures.both(enough) + " above the waterline")
            .setting(s.subject().getVentSeat(), POINT__Z, enough));
    }
}
