// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.model.GarboardPackage.Literals.TRANSFER_SWITCH__RATED_CURRENT;

import java.util.Optional;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.model.TransferSwitch;
import garboard.practice.Figures;
import garboard.practice.Rounding;
import garboard.quantity.Current;

/** The selector carries what the set gives. */
final class SelectorRating {

    private SelectorRating() {
    }

    static Check<TransferSwitch> check() {
        return FullLoad.needed(Check.check("AC-SELECTOR-RATING", TransferSwitch.class))
            .title("Selector carries the set's full load")
            .why("Contacts too small for the current glow, weld and then join the two sources.")
            .basis(Basis.derived("full-load current from the rating: S / U, three-phase S / (sqrt(3) U)"))
            .gravity(Gravity.DEFECT)
            .limit("rated current at least the set's full-load current")
            .needs(TRANSFER_SWITCH__RATED_CURRENT)
            .holds(s -> Comparison.atLeast("the selector is rated for " + Figures.both(s.subject().getRatedCurrent()) + ", the set gives "
                + Figures.both(FullLoad.current(s)), s.subject().getRatedCurrent(), Limit.of(FullLoad.current(s), "full-load current of the set")))
            .remedy("Fit a larger selector", s -> {
                Current larger = Rounding.up(FullLoad.current(s), 5, "A");
                return Optional.of(Remedy.of("Fit a selector for at least " + Figures.both(larger))
                    .setting(s.subject(), TRANSFER_SWITCH__RATED_CURRENT, larger));
            })
            .build();
    }
}
