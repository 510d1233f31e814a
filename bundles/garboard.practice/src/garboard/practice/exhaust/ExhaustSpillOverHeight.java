// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.MUFFLER__KIND;
import static garboard.model.GarboardPackage.Literals.POINT__Z;
import static garboard.model.GarboardPackage.Literals.RISER__DRY_CREST_INSIDE;
import static garboard.model.GarboardPackage.Literals.SIPHON_BREAK__KIND;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.Riser;
import garboard.model.SiphonBreakKind;
import garboard.practice.DesignAttitude;
import garboard.practice.Figures;
import garboard.practice.Rounding;
import garboard.practice.Sources;
import garboard.quantity.Length;

/** The dry crest of the riser stands so high that water in the exhaust cannot run over it into the engine. */
final class ExhaustSpillOverHeight {

    private static final Length BY_ITSELF = Length.of(300, "mm");

    /** 6 to 8 in are seen. Common practice. */
    private static final Length BEHIND_A_LIFT_MUFFLER = Length.of(150, "mm");

    private ExhaustSpillOverHeight() {
    }

    static Check<Riser> check() {
        return Check.check("EXHAUST-SPILL-OVER-HEIGHT", Riser.class)
            .title("Dry crest of the riser stands above the loaded waterline")
            .why("The inside bottom of the crest is the sill between the sea and the exhaust valves.")
            .basis(Sources.TRADE_PRESS_2017.othersSay("12 in without a lift muffler; 6 to 8 in are seen with lift muffler and siphon break, "
                + "by common practice"))
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("inside bottom of the crest at least 300 mm (12 in) above the loaded waterline; 150 mm (6 in) with lift muffler and siphon break")
            .needs(path(RISER__DRY_CREST_INSIDE, POINT__Z), path(MUFFLER__KIND))
            .needsWhen(ExhaustConditions::lifts, path(SIPHON_BREAK__KIND))
            .holds(s -> Comparison.atLeast("the inside bottom of the dry crest lies " + DesignAttitude.heightInWords(height(s)), height(s),
                limit(s)))
            .remedy("Fit a high-rise elbow or an insulated dry riser", ExhaustSpillOverHeight::raise)
            .build();
    }

    private static Length height(Situation<Riser> s) {
        return s.subject().getDryCrestInside().getZ();
    }

    private static Limit<Length> limit(Situation<Riser> s) {
        return ExhaustConditions.lifts(s) && siphonBreakFitted(s)
            ? Limit.of(BEHIND_A_LIFT_MUFFLER, "common practice with lift muffler and siphon break")
            : Limit.of(BY_ITSELF, "trade press: 12 in without lift muffler and siphon break");
    }

    private static boolean siphonBreakFitted(Situation<Riser> s) {
        SiphonBreakKind kind = s.record().getRawWater().getSiphonBreak().getKind();
        return kind == SiphonBreakKind.VALVED_VENTED_LOOP || kind == SiphonBreakKind.BLEED_OVERBOARD;
    }

    private static Optional<Remedy> raise(Situation<Riser> s) {
        Length enough = Rounding.up(limit(s).value(), 10, "mm");
        return Optional.of(Remedy.of("Fit a high-rise elbow or an insulated dry riser that brings the inside bottom of the crest to "
            + Figures.both(enough) + " above the waterline").setting(s.subject().getDryCrestInside(), POINT__Z, enough));
    }
}
