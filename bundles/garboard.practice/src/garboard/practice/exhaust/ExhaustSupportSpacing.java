// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.EXHAUST_SECTION_RUN__SECTION;
import static garboard.model.GarboardPackage.Literals.EXHAUST_SECTION_RUN__SUPPORT_SPACING;

import java.util.Optional;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.ExhaustSectionRun;
import garboard.practice.Figures;
import garboard.practice.Rounding;
import garboard.quantity.Length;

/** The run hangs on supports that stand close enough to keep it from sagging when it is hot and full. */
final class ExhaustSupportSpacing {

    private static final Length FARTHEST = Length.of(3, "ft");

    private ExhaustSupportSpacing() {
    }

    static Check<ExhaustSectionRun> check() {
        return Check.check("EXHAUST-SUPPORT-SPACING", ExhaustSectionRun.class)
            .among(Sections.among(Sections.WET), path(EXHAUST_SECTION_RUN__SECTION))
            .title("Exhaust is supported closely enough")
            .why("Warm hose full of water sags between distant supports, and the fall that was built in is gone.")
            .basis(Basis.commonPractice().othersSay("0.6 to 0.9 m (2 to 3 ft)"))
            .gravity(Gravity.DEFECT)
            .limit("supports at most 0.9 m (3 ft) apart")
            .needs(EXHAUST_SECTION_RUN__SECTION, EXHAUST_SECTION_RUN__SUPPORT_SPACING)
            .holds(s -> Comparison.atMost(Sections.inWords(s.subject()) + " is supported every " + Figures.both(spacing(s)), spacing(s),
                Limit.of(FARTHEST, "common practice")))
            .remedy("Add supports", ExhaustSupportSpacing::tighten)
            .build();
    }

    private static Length spacing(Situation<ExhaustSectionRun> s) {
        return s.subject().getSupportSpacing();
    }

    private static Optional<Remedy> tighten(Situation<ExhaustSectionRun> s) {
        Length close = Rounding.down(FARTHEST, 50, "mm");
        return Optional.of(Remedy.of("Support " + Sections.inWords(s.subject()) + " at least every " + Figures.both(close))
            .setting(s.subject(), EXHAUST_SECTION_RUN__SUPPORT_SPACING, close));
    }
}
