// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.model.GarboardPackage.Literals.MUFFLER__MARKED;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.Muffler;
import garboard.practice.Answers;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** Muffler, tubes and resin parts are marked as made for wet exhaust: they outlast a short run without water. */
final class ExhaustMufflerMarked {

    private ExhaustMufflerMarked() {
    }

    static Check<Muffler> check() {
        return Check.check("EXHAUST-MUFFLER-MARKED", Muffler.class)
            .title("Muffler is marked for wet exhaust")
            .why("An unmarked canister softens within a minute without water, and lets gas and sea into the boat.")
            .basis(Sources.UL_1129)
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("marked to ABYC P-1 or UL 1129")
            .applies(ExhaustConditions.mufflerFitted())
            .applies(Conditions.asked(MUFFLER__MARKED))
            .needs(MUFFLER__MARKED)
            .holds(s -> Answers.yes(s.subject().getMarked(), "the muffler is marked",
                "the muffler carries no mark"))
            .remedy("Replace it by one that is marked for wet marine exhaust")
            .build();
    }
}
