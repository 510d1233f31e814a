// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.EXHAUST_SECTION_RUN__SECTION;
import static garboard.model.GarboardPackage.Literals.EXHAUST_SECTION_RUN__STANDARD;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.model.ExhaustHoseStandard;
import garboard.model.ExhaustSectionRun;
import garboard.practice.Sources;

/** Exhaust hose is marked as made for wet exhaust. */
final class ExhaustHoseStandardMarked {

    private ExhaustHoseStandardMarked() {
    }

    static Check<ExhaustSectionRun> check() {
        return Check.check("EXHAUST-HOSE-STANDARD", ExhaustSectionRun.class)
            .among(Sections.among(Sections.WET), path(EXHAUST_SECTION_RUN__SECTION))
            .title("Exhaust hose is marked for wet exhaust")
            .why("Water hose softens, swells and splits with hot gas and oil; it looks the same until it lets go.")
            .basis(Sources.EXHAUST_HOSE_STANDARDS)
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("marked SAE J2006 or ISO 13363")
            .applies(ExhaustConditions.hose())
            .needs(EXHAUST_SECTION_RUN__SECTION, EXHAUST_SECTION_RUN__STANDARD)
            .holds(s -> {
                boolean marked = s.subject().getStandard() != ExhaustHoseStandard.UNMARKED;
                return Comparison.holds(Sections.inWords(s.subject()) + (marked ? " is marked for wet exhaust" : " carries no mark"), marked);
            })
            .remedy("Replace it by hose that is marked SAE J2006 or ISO 13363")
            .build();
    }
}
