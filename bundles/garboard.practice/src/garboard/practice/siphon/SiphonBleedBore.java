// SPDX-License-Identifier: EPL-2.0
package garboard.practice.siphon;

import static garboard.model.GarboardPackage.Literals.SIPHON_BREAK__BLEED_BORE;

import java.util.Optional;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.SiphonBreak;
import garboard.practice.Figures;
import garboard.quantity.Length;

/** The bleed of a valveless siphon break is wide enough not to clog and narrow enough to leave the water to the engine. */
final class SiphonBleedBore {

    private static final Length NARROWEST = Length.of(6, "mm");
    private static final Length WIDEST = Length.of(10, "mm");

    private SiphonBleedBore() {
    }

    static Check<SiphonBreak> check() {
        return Check.check("SIPHON-BLEED-BORE", SiphonBreak.class)
            .title("Bleed of a valveless siphon break has a bore that suits")
            .why("A narrow bleed is closed by salt and weed; a wide one takes cooling water away from the exhaust.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.ADVICE)
            .limit("6 to 10 mm (1/4 to 3/8 in)")
            .applies(SiphonConditions.bleed())
            .needs(SIPHON_BREAK__BLEED_BORE)
            .holds(s -> Comparison.between("the bleed has a bore of " + Figures.both(bore(s)), bore(s),
                Limit.of(NARROWEST, "common practice"), Limit.of(WIDEST, "common practice")))
            .remedy("Fit a bleed of 6 to 10 mm", SiphonBleedBore::refit)
            .build();
    }

    private static Length bore(Situation<SiphonBreak> s) {
        return s.subject().getBleedBore();
    }

    private static Optional<Remedy> refit(Situation<SiphonBreak> s) {
        Length nearest = bore(s).isLessThan(NARROWEST) ? NARROWEST : WIDEST;
        return Optional.of(Remedy.of("Fit a bleed of " + Figures.both(nearest)).setting(s.subject(), SIPHON_BREAK__BLEED_BORE, nearest));
    }
}
