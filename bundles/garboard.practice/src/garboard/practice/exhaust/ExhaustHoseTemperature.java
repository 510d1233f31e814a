// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.EXHAUST_SECTION_RUN__GAS_TEMPERATURE;
import static garboard.model.GarboardPackage.Literals.EXHAUST_SECTION_RUN__SECTION;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Situation;
import garboard.model.ExhaustSectionRun;
import garboard.practice.Figures;
import garboard.quantity.Temperature;

/** What runs through the hose is cooled to what rubber stands. */
final class ExhaustHoseTemperature {

    private static final Temperature HOTTEST = Temperature.of(250, "degF");

    private ExhaustHoseTemperature() {
    }

    static Check<ExhaustSectionRun> check() {
        return Check.check("EXHAUST-HOSE-TEMPERATURE", ExhaustSectionRun.class)
            .among(Sections.among(Sections.WET), path(EXHAUST_SECTION_RUN__SECTION))
            .title("Exhaust hose is cool enough for rubber")
            .why("Hotter than this the hose hardens from the inside, cracks, and lets gas and water out.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("at most 121 degC (250 degF) in the hose")
            .applies(ExhaustConditions.hose())
            .needs(EXHAUST_SECTION_RUN__SECTION, EXHAUST_SECTION_RUN__GAS_TEMPERATURE)
            .holds(s -> Comparison.atMost("gas and water in " + Sections.inWords(s.subject()) + " have " + Figures.both(gas(s)), gas(s),
                Limit.of(HOTTEST, "common practice: 250 degF")))
            .remedy("Find out why so little water reaches the hose: flow, spray, split of the water; then look at the hose for burns")
            .build();
    }

    private static Temperature gas(Situation<ExhaustSectionRun> s) {
        return s.subject().getGasTemperature();
    }
}
