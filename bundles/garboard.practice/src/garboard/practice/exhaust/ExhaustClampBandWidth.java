// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.EXHAUST_SECTION_RUN__CLAMP_BAND_WIDTH;
import static garboard.model.GarboardPackage.Literals.EXHAUST_SECTION_RUN__SECTION;

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
import garboard.quantity.Length;

/** The clamps of exhaust hose are broad: narrow ones cut into hose that is soft with heat. */
final class ExhaustClampBandWidth {

    private static final Length LEAST = Length.of(0.5, "in");

    private ExhaustClampBandWidth() {
    }

    static Check<ExhaustSectionRun> check() {
        return Check.check("EXHAUST-CLAMP-BAND", ExhaustSectionRun.class)
            .among(Sections.among(Sections.WET), path(EXHAUST_SECTION_RUN__SECTION))
            .title("Clamps of exhaust hose have a broad band")
            .why("A narrow band cuts into thick hose and leaves it loose after the first heat.")
            .basis(Basis.commonPractice().othersSay("the width is that of 33 CFR 183.564 for fuel fills, carried over"))
            .gravity(Gravity.DEFECT)
            .limit("band at least 12.7 mm (1/2 in) wide")
            .applies(ExhaustConditions.hose())
            .needs(EXHAUST_SECTION_RUN__SECTION, EXHAUST_SECTION_RUN__CLAMP_BAND_WIDTH)
            .holds(s -> Comparison.atLeast("the clamps of " + Sections.inWords(s.subject()) + " have a band of " + Figures.both(width(s)),
                width(s), Limit.of(LEAST, "common practice, as for fuel fills")))
            .remedy("Fit clamps with a broad band", s -> Optional.of(Remedy.of("Fit clamps with a band of " + Figures.both(LEAST) + " or more")
                .setting(s.subject(), EXHAUST_SECTION_RUN__CLAMP_BAND_WIDTH, LEAST)))
            .build();
    }

    private static Length width(Situation<ExhaustSectionRun> s) {
        return s.subject().getClampBandWidth();
    }
}
