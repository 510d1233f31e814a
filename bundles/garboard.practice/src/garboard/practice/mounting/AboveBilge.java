// SPDX-License-Identifier: EPL-2.0
package garboard.practice.mounting;

import static garboard.model.GarboardPackage.Literals.MOUNTING__HEIGHT_ABOVE_BILGE;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.model.Mounting;
import garboard.practice.Figures;
import garboard.quantity.Length;

/** The alternator stands above bilge water: everything but authority. */
final class AboveBilge {

    private static final Length NONE = Length.of(0, "mm");

    private AboveBilge() {
    }

    static Check.Builder<Mounting> check(String id) {
        return Check.check(id, Mounting.class)
            .why("Salt water in the alternator is a short and a shock at once, and ruins it within a day.")
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("underside of the alternator above the highest bilge water and its splash; no figure is given")
            .needs(MOUNTING__HEIGHT_ABOVE_BILGE)
            .holds(s -> Comparison.moreThan(inWords(s.subject().getHeightAboveBilge()), s.subject().getHeightAboveBilge(),
                Limit.of(NONE, "46 CFR 183.320(a): above bilge water")))
            .remedy("Raise the set, or fit a bilge pump that keeps the water below it");
    }

    private static String inWords(Length height) {
        return "the alternator stands " + Figures.both(Length.of(Math.abs(height.si()))) + (height.si() < 0 ? " below" : " above")
            + " the highest bilge water";
    }
}
