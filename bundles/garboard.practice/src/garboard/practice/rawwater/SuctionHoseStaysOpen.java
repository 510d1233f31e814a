// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.WATER_HOSE_RUN__COLLAPSE_PROOF;
import static garboard.model.GarboardPackage.Literals.WATER_HOSE_RUN__KIND;
import static garboard.model.GarboardPackage.Literals.WATER_HOSE_RUN__SECTION;

import java.util.Optional;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.Answer;
import garboard.model.WaterHoseKind;
import garboard.model.WaterHoseRun;

/** The suction hose has a smooth bore and does not collapse. */
final class SuctionHoseStaysOpen {

    private SuctionHoseStaysOpen() {
    }

    static Check<WaterHoseRun> check() {
        return Check.check("RAWWATER-SUCTION-HOSE", WaterHoseRun.class)
            .among(SuctionLine::isSuction, path(WATER_HOSE_RUN__SECTION))
            .title("Suction hose has a smooth bore and cannot collapse")
            .why("A soft hose flattens as soon as the strainer fouls; a corrugated bore costs several times the head of a smooth one.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("reinforced by wire or helix, smooth inside, open at a vacuum of 50 kPa (15 inHg)")
            .needs(WATER_HOSE_RUN__KIND)
            .needsWhen(SuctionHoseStaysOpen::mayCollapse, path(WATER_HOSE_RUN__COLLAPSE_PROOF))
            .holds(SuctionHoseStaysOpen::compare)
            .remedy("Fit wire-reinforced suction hose with a smooth bore", s -> Optional.of(
                Remedy.of("Fit wire-reinforced suction hose with a smooth bore, stated to stand 50 kPa (15 inHg) of vacuum")
                    .setting(s.subject(), WATER_HOSE_RUN__KIND, WaterHoseKind.WIRE_REINFORCED_SMOOTH_BORE)
                    .setting(s.subject(), WATER_HOSE_RUN__COLLAPSE_PROOF, Answer.YES)))
            .build();
    }

    private static boolean mayCollapse(Situation<WaterHoseRun> s) {
        return s.subject().getKind() == WaterHoseKind.WIRE_REINFORCED_SMOOTH_BORE;
    }

    private static Comparison compare(Situation<WaterHoseRun> s) {
        return switch (s.subject().getKind()) {
            case CORRUGATED_BORE -> Comparison.holds("the bore is corrugated", false);
            case SOFT_WALL -> Comparison.holds("the wall is soft and not reinforced", false);
            case RIGID_METAL_PIPE, RIGID_PLASTIC_PIPE -> Comparison.holds("the pipe is rigid", true);
            default -> s.subject().getCollapseProof() == Answer.YES ? Comparison.holds("the hose is reinforced and stands the vacuum", true)
                : Comparison.holds("the hose is not stated to stand a vacuum of 50 kPa", false);
        };
    }
}
