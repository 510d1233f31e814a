// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.EXHAUST_CREST__INSIDE_BOTTOM;
import static garboard.model.GarboardPackage.Literals.POINT__Z;

import java.util.Optional;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.checks.SteppingBack;
import garboard.model.ExhaustCrest;
import garboard.practice.DesignAttitude;
import garboard.practice.Figures;
import garboard.quantity.Length;

/** The crest between muffler and outlet stands high above the loaded waterline: it is what the sea has to climb over from outside. */
final class ExhaustCrestHeight {

    /** 18 in; 450 mm is taken as the same figure on a metric tape. */
    static final Length LEAST = Length.of(450, "mm");

    private ExhaustCrestHeight() {
    }

    static Check<ExhaustCrest> check() {
        return Check.check("EXHAUST-CREST-HEIGHT", ExhaustCrest.class)
            .title("Crest of the exhaust stands high above the loaded waterline")
            .why("A following sea that runs up the outlet and over a low crest fills the muffler and then the engine.")
            .basis(Basis.commonPractice().othersSay("Gerr gives 18 in for a raised dry exhaust; for a hose loop it is common practice"))
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("inside bottom of the crest at least 450 mm (18 in) above the loaded waterline")
            .applies(SteppingBack.where(ExhaustSubmergedOutletCrest.check()))
            .needs(path(EXHAUST_CREST__INSIDE_BOTTOM, POINT__Z))
            .holds(s -> Comparison.atLeast("the inside bottom of the crest lies " + DesignAttitude.heightInWords(height(s)), height(s),
                Limit.of(LEAST, "common practice: 18 in")))
            .remedy("Raise the crest of the hose", ExhaustCrestHeight::raise)
            .build();
    }

    private static Length height(Situation<ExhaustCrest> s) {
        return s.subject().getInsideBottom().getZ();
    }

    private static Optional<Remedy> raise(Situation<ExhaustCrest> s) {
        return Optional.of(Remedy.of("Raise the inside bottom of the crest to " + Figures.both(LEAST)
            + " above the waterline, and look at lift and drain-back again").setting(s.subject().getInsideBottom(), POINT__Z, LEAST));
    }
}
