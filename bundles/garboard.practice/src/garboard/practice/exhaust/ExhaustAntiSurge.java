// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.model.GarboardPackage.Literals.EXHAUST_OUTLET__ANTI_SURGE;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Situation;
import garboard.model.ExhaustOutlet;

/** Something breaks the force of a sea that runs into the outlet; a flap by itself does not. */
final class ExhaustAntiSurge {

    private ExhaustAntiSurge() {
    }

    static Check<ExhaustOutlet> check() {
        return Check.check("EXHAUST-ANTI-SURGE", ExhaustOutlet.class)
            .title("Outlet is guarded against surge")
            .why("A sea that strikes the outlet shoots up the hose; a flap alone jams open, tears off or leaks.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("a surge chamber, or a flap together with a high crest")
            .applies(ExhaustConditions.outletMeantToBeDry())
            .needs(EXHAUST_OUTLET__ANTI_SURGE)
            .holds(ExhaustAntiSurge::compare)
            .remedy("Build a high crest behind the outlet, with a flap or a surge chamber")
            .build();
    }

    private static Comparison compare(Situation<ExhaustOutlet> s) {
        return switch (s.subject().getAntiSurge()) {
            case SURGE_CHAMBER -> Comparison.holds("a surge chamber guards the outlet", true);
            case FLAP_AND_HIGH_CREST -> Comparison.holds("a flap and a high crest guard the outlet", true);
            case FLAP -> Comparison.holds("only a flap guards the outlet", false);
            default -> Comparison.holds("nothing guards the outlet", false);
        };
    }
}
