// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.model.GarboardPackage.Literals.MAKER_LIMITS__MINIMUM_INJECTION_DROP;
import static garboard.model.GarboardPackage.Literals.RISER__INJECTION_DROP_TO_MUFFLER;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.MakerLimits;
import garboard.model.Riser;
import garboard.practice.Figures;
import garboard.practice.Rounding;
import garboard.practice.Sources;
import garboard.quantity.Length;

/** From the injection to the inlet of the muffler the water has a good drop, so that it does not slosh back. */
final class ExhaustInjectionDrop {

    private static final Length LEAST = Length.of(12, "in");

    private ExhaustInjectionDrop() {
    }

    static Check<Riser> check() {
        return Check.check("EXHAUST-INJECTION-DROP", Riser.class)
            .title("Water drops well from the injection to the muffler")
            .why("With little drop the water in the muffler sloshes up to the injection in a seaway and, after a stop, into the engine.")
            .basis(Sources.GERR.othersSay("9 in is used by some"))
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("at least 305 mm (12 in) from the injection down to the muffler's inlet, or the maker's drop")
            .applies(ExhaustConditions.mufflerFitted())
            .needs(RISER__INJECTION_DROP_TO_MUFFLER)
            .uses(MAKER_LIMITS__MINIMUM_INJECTION_DROP)
            .holds(s -> Comparison.atLeast("the muffler's inlet lies " + Figures.both(drop(s)) + " below the injection", drop(s), limit(s)))
            .remedy("Lower the muffler, or raise the elbow", ExhaustInjectionDrop::deepen)
            .build();
    }

    private static Length drop(Situation<Riser> s) {
        return s.subject().getInjectionDropToMuffler();
    }

    private static Limit<Length> limit(Situation<Riser> s) {
        return Limit.makerOr(s.maker(MakerLimits::getMinimumInjectionDrop), LEAST, "Gerr: 12 in");
    }

    private static Optional<Remedy> deepen(Situation<Riser> s) {
        Length enough = Rounding.up(limit(s).value(), 5, "mm");
        return Optional.of(Remedy.of("Lower the muffler or raise the elbow until the drop is " + Figures.both(enough))
            .setting(s.subject(), RISER__INJECTION_DROP_TO_MUFFLER, enough));
    }
}
