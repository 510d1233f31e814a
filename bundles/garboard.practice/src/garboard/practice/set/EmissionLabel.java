// SPDX-License-Identifier: EPL-2.0
package garboard.practice.set;

import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__EMISSION_LABEL_MARINE;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.GeneratorSet;
import garboard.practice.Answers;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 40 CFR 1054 and 1048: a gasoline set for use aboard is certified as a marine generator, which gives off little carbon monoxide. */
final class EmissionLabel {

    private EmissionLabel() {
    }

    static Check<GeneratorSet> check() {
        return Check.check("SET-EMISSION-LABEL", GeneratorSet.class)
            .title("Gasoline set carries the emission label of a marine generator")
            .why("A gasoline engine that is not certified for use aboard may give off a hundred times as much carbon monoxide.")
            .basis(Sources.cfr40("1054.105 and 1048.101").othersSay("part 1048 was read in its text of 2007"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("label of part 1054 (up to 19 kW: carbon monoxide 5 g/kWh, 610 for other uses) or part 1048 (above: 4.4 g/kWh)")
            .applies(Conditions.gasolineSet())
            .needs(GENERATOR_SET__EMISSION_LABEL_MARINE)
            .holds(s -> Answers.demanded(s.subject().getEmissionLabelMarine(), "the label names marine auxiliary use",
                "no label names marine auxiliary use"))
            .remedy("Ask the maker for the certificate; a set without one does not belong aboard")
            .build();
    }
}
