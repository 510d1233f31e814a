// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.EXHAUST_SECTION_RUN__INSTALLED_ON;
import static garboard.model.GarboardPackage.Literals.EXHAUST_SECTION_RUN__SECTION;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.ExhaustSectionRun;
import garboard.practice.Interval;

/** Exhaust hose is not older than rubber stays tight. */
final class ExhaustHoseAge {

    private static final int YEARS = 8;

    private ExhaustHoseAge() {
    }

    static Check<ExhaustSectionRun> check() {
        return Check.check("EXHAUST-HOSE-AGE", ExhaustSectionRun.class)
            .among(Sections.among(Sections.WET), path(EXHAUST_SECTION_RUN__SECTION))
            .title("Exhaust hose is not too old")
            .why("Old hose delaminates inside, where it chokes the gas before anything shows outside.")
            .basis(Basis.commonPractice().othersSay("5 to 8 years"))
            .gravity(Gravity.ADVICE)
            .limit("replaced after 8 years at the latest")
            .applies(ExhaustConditions.hose())
            .needs(EXHAUST_SECTION_RUN__SECTION, EXHAUST_SECTION_RUN__INSTALLED_ON)
            .holds(s -> Interval.ofYears(YEARS).since(s.subject().getInstalledOn(), Sections.inWords(s.subject()) + " was fitted").on(s.today()))
            .remedy("Replace the hose, and look at the elbow while it is off")
            .build();
    }
}
