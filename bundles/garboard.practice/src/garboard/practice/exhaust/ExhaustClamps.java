// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.EXHAUST_SECTION_RUN__CLAMPS_PER_END;
import static garboard.model.GarboardPackage.Literals.EXHAUST_SECTION_RUN__SECTION;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Remedy;
import garboard.model.ExhaustSectionRun;
import garboard.practice.Sources;

/** Each end of an exhaust hose has two clamps, side by side and not one on the other. */
final class ExhaustClamps {

    private static final int LEAST = 2;

    private ExhaustClamps() {
    }

    static Check<ExhaustSectionRun> check() {
        return Check.check("EXHAUST-CLAMPS", ExhaustSectionRun.class)
            .among(Sections.among(Sections.WET), path(EXHAUST_SECTION_RUN__SECTION))
            .title("Exhaust hose has two clamps on each end")
            .why("A hose that comes off pumps water and exhaust gas into the boat.")
            .basis(Sources.ABYC_P_1_CLAMPS)
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("at least two clamps on each end that do not overlap")
            .applies(ExhaustConditions.hose())
            .needs(EXHAUST_SECTION_RUN__SECTION, EXHAUST_SECTION_RUN__CLAMPS_PER_END)
            .holds(s -> Comparison.holds(Sections.inWords(s.subject()) + " has " + inWords(s.subject().getClampsPerEnd()) + " on each end",
                s.subject().getClampsPerEnd() >= LEAST))
            .remedy("Add clamps; lengthen the spigot where two do not fit side by side", s -> Optional.of(Remedy.of(
                "Put two clamps side by side on each end; lengthen the spigot where they do not fit")
                .setting(s.subject(), EXHAUST_SECTION_RUN__CLAMPS_PER_END, LEAST)))
            .build();
    }

    private static String inWords(int clamps) {
        return clamps == 1 ? "one clamp" : clamps + " clamps";
    }
}
