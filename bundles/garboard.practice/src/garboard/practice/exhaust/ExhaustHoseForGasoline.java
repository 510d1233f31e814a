// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.EXHAUST_SECTION_RUN__SECTION;
import static garboard.model.GarboardPackage.Literals.EXHAUST_SECTION_RUN__STANDARD;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Situation;
import garboard.model.ExhaustSectionRun;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** Behind a gasoline engine the hose is of the class that is made for its hotter gas. */
final class ExhaustHoseForGasoline {

    private ExhaustHoseForGasoline() {
    }

    static Check<ExhaustSectionRun> check() {
        return Check.check("EXHAUST-HOSE-GASOLINE", ExhaustSectionRun.class)
            .among(Sections.among(Sections.WET), path(EXHAUST_SECTION_RUN__SECTION))
            .title("Exhaust hose of a gasoline set is made for gasoline engines")
            .why("Gas of a gasoline engine is some hundred degrees hotter; hose for diesel chars where the water spares it.")
            .basis(Sources.EXHAUST_HOSE_STANDARDS.othersSay("the classes are those of ISO 13363; hose marked SAE J2006 is let pass"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("ISO 13363 class B or SAE J2006; class A is for diesel")
            .applies(Conditions.gasolineSet())
            .applies(ExhaustConditions.hose())
            .needs(EXHAUST_SECTION_RUN__SECTION, EXHAUST_SECTION_RUN__STANDARD)
            .holds(ExhaustHoseForGasoline::compare)
            .remedy("Replace it by hose of ISO 13363 class B")
            .build();
    }

    private static Comparison compare(Situation<ExhaustSectionRun> s) {
        String run = Sections.inWords(s.subject());
        return switch (s.subject().getStandard()) {
            case ISO_13363_CLASS_B -> Comparison.holds(run + " is hose of ISO 13363 class B", true);
            case SAE_J2006 -> Comparison.holds(run + " is hose of SAE J2006", true);
            case ISO_13363_CLASS_A -> Comparison.holds(run + " is hose of ISO 13363 class A, for diesel", false);
            default -> Comparison.holds(run + " is not marked for gasoline engines", false);
        };
    }
}
