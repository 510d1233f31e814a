// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.EXHAUST_BEND__KIND;
import static garboard.model.GarboardPackage.Literals.EXHAUST_BEND__RADIUS;
import static garboard.model.GarboardPackage.Literals.EXHAUST_SECTION_RUN__BENDS;
import static garboard.model.GarboardPackage.Literals.EXHAUST_SECTION_RUN__BORE;
import static garboard.model.GarboardPackage.Literals.EXHAUST_SECTION_RUN__SECTION;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Condition;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.ExhaustBend;
import garboard.model.ExhaustBendKind;
import garboard.model.ExhaustSectionRun;
import garboard.practice.Figures;
import garboard.practice.Rounding;
import garboard.quantity.Length;

/** Bends are wide; only the U-bend on top of the lift may be tight. */
final class ExhaustBendRadius {

    private static final double BORES = 2;

    private ExhaustBendRadius() {
    }

    static Check<ExhaustSectionRun> check() {
        return Check.check("EXHAUST-BEND-RADIUS", ExhaustSectionRun.class)
            .title("Bends of the exhaust are wide")
            .why("Hose bent tighter flattens and kinks, and each tight bend costs as much pressure as metres of straight run.")
            .basis(Basis.commonPractice().othersSay("Gerr accepts a tight U-bend on top of the lift"))
            .gravity(Gravity.DEFECT)
            .limit("radius at least twice the bore; a U-bend on top of the lift may be tighter")
            .applies(bent())
            .uses(EXHAUST_SECTION_RUN__BENDS, EXHAUST_SECTION_RUN__SECTION)
            .needs(path(EXHAUST_SECTION_RUN__BENDS, EXHAUST_BEND__KIND))
            .needs(path(EXHAUST_SECTION_RUN__BORE))
            .needsWhen(s -> !judged(s.subject()).isEmpty(),
                path(EXHAUST_SECTION_RUN__BENDS).where(ExhaustBend.class, ExhaustBendRadius::isJudged).then(EXHAUST_BEND__RADIUS))
            .holds(ExhaustBendRadius::compare)
            .remedy("Lay the hose in wider bends, or fit a moulded elbow", ExhaustBendRadius::widen)
            .build();
    }

    private static Condition<ExhaustSectionRun> bent() {
        return Condition.<ExhaustSectionRun>when("runs with bends").known().test(s -> !s.subject().getBends().isEmpty(),
            "no bend is entered for this run");
    }

    private static boolean isJudged(ExhaustBend bend) {
        return bend.getKind() != ExhaustBendKind.UBEND_180;
    }

    private static List<ExhaustBend> judged(ExhaustSectionRun run) {
        return run.getBends().stream().filter(ExhaustBendRadius::isJudged).toList();
    }

    private static Length least(ExhaustSectionRun run) {
        return Length.of(BORES * run.getBore().si());
    }

    private static Comparison compare(Situation<ExhaustSectionRun> s) {
        return judged(s.subject()).stream().map(ExhaustBend::getRadius).min(Comparator.naturalOrder())
            .map(tightest -> Comparison.atLeast("the tightest bend has a radius of " + Figures.both(tightest) + " at a bore of "
                + Figures.both(s.subject().getBore()), tightest, Limit.of(least(s.subject()), "common practice: twice the bore")))
            .orElseGet(() -> Comparison.holds("the only bends are U-bends", true));
    }

    private static Optional<Remedy> widen(Situation<ExhaustSectionRun> s) {
        Length radius = Rounding.up(least(s.subject()), 5, "mm");
        Remedy remedy = Remedy.of("Lay each bend of " + Sections.inWords(s.subject()) + " with a radius of " + Figures.both(radius)
            + " or more, or fit a moulded elbow");
        for (ExhaustBend bend : judged(s.subject())) {
            if (bend.getRadius().isLessThan(least(s.subject()))) {
                remedy = remedy.setting(bend, EXHAUST_BEND__RADIUS, radius);
            }
        }
        return Optional.of(remedy);
    }
}
