// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import java.util.Optional;

import garboard.checks.Limit;
import garboard.checks.Situation;
import garboard.model.Aspiration;
import garboard.model.MakerLimits;
import garboard.practice.MakersLimit;
import garboard.quantity.GaugePressure;

/** The greatest back pressure of a set: the maker's, else the handbook's for the kind of aspiration. */
final class BackPressureLimit {

    /** Gerr, Boat Mechanical Systems Handbook. */
    private static final GaugePressure NATURALLY_ASPIRATED = GaugePressure.of(2.5, "inHg");
    private static final GaugePressure TURBOCHARGED = GaugePressure.of(2.0, "inHg");

    static final String IN_WORDS = "at most 2.5 inHg (8.47 kPa) naturally aspirated, 2.0 inHg (6.77 kPa) turbocharged, or the maker's limit";

    static final String OTHER_FIGURES = "naturally aspirated up to 3 inHg or 1.5 psi (10.3 kPa) in practice; turbocharged 1.5 to 2.0 inHg, some "
        + "engines 10 to 15 kPa; Gerr prints 40 mm beside 2.0 inHg, which is 1.57 inHg";

    private BackPressureLimit() {
    }

    /** Whether the aspiration has to be known; for {@code needsWhen}. */
    static boolean makerIsSilent(Situation<?> situation) {
        return maker(situation).isEmpty();
    }

    static Limit<GaugePressure> of(Situation<?> situation) {
        return MakersLimit.or(maker(situation), () -> situation.set().getAspiration() == Aspiration.NATURALLY_ASPIRATED
            ? Limit.of(NATURALLY_ASPIRATED, "Gerr: 2.5 inHg naturally aspirated")
            : Limit.of(TURBOCHARGED, "Gerr: 2.0 inHg turbocharged"));
    }

    private static Optional<GaugePressure> maker(Situation<?> situation) {
        return situation.maker(MakerLimits::getMaximumBackPressure);
    }
}
