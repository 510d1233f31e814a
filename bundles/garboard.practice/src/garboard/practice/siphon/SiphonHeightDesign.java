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
import garboard.checks.SteppingBack;
import garboard.model.MakerLimits;
import garboard.model.SiphonBreak;
import garboard.practice.DesignAttitude;
import garboard.practice.Figures;
import garboard.practice.Sources;
import garboard.quantity.Length;

/** A new loop is built to the handbook's height, not to the least that passes. */
final class SiphonHeightDesign {

    /** 18 in in the handbook; 450 mm is taken as the same figure on a metric tape. */
    private static final Length DESIGN = Length.of(450, "mm");

    private SiphonHeightDesign() {
    }

    static Check<SiphonBreak> check() {
        return Check.check("SIPHON-HEIGHT-DESIGN", SiphonBreak.class)
            .title("Siphon break stands at the handbook's height")
            .why("The waterline rises with stores and years; height costs nothing while the hoses are still being cut.")
            .basis(Sources.GERR_CH_7.othersSay("12 to 18 in are printed in the trade press"))
            .gravity(Gravity.ADVICE)
            .limit("vent seat at least 450 mm (18 in) above the loaded waterline where the maker names no height")
            .applies(SiphonConditions.breakFitted())
            .applies(Makers.silent(MakerLimits::getMinimumSiphonBreakHeight, "the maker names a height for the siphon break"))
            .applies(SteppingBack.where(SiphonHeightUpright.check()))
            .needs(path(SIPHON_BREAK__VENT_SEAT, POINT__Z))
            .uses(MAKER_LIMITS__MINIMUM_SIPHON_BREAK_HEIGHT)
            .holds(s -> Comparison.atLeast("the vent seat lies " + DesignAttitude.heightInWords(height(s)) + " with the boat upright",
                height(s), Limit.of(DESIGN, "Gerr, ch. 7: 18 in")))
            .remedy("Raise the loop to the handbook's height", SiphonHeightDesign::raise)
            .build();
    }

    private static Length height(Situation<SiphonBreak> s) {
        return s.subject().getVentSeat().getZ();
    }

    private static Optional<Remedy> raise(Situation<SiphonBreak> s) {
        return Optional.of(Remedy.of("Raise the vent seat to " + Figures.both(DESIGN) + " above the waterline")
            .setting(s.subject().getVentSeat(), POINT__Z, DESIGN));
    }
}
