// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.model.GarboardPackage.Literals.SEACOCK__WORKS_FREELY;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.Seacock;
import garboard.practice.Answers;
import garboard.practice.Conditions;

/** The seacock can be turned through all its travel by hand. */
final class SeacockWorksFreely {

    private SeacockWorksFreely() {
    }

    static Check<Seacock> check() {
        return Check.check("RAWWATER-SEACOCK-WORKS", Seacock.class)
            .title("Seacock turns freely through all its travel")
            .why("A seized seacock cannot be shut when it has to be.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("turned open and shut by hand")
            .applies(RawWaterConditions.seacockFitted())
            .applies(Conditions.asked(SEACOCK__WORKS_FREELY))
            .needs(SEACOCK__WORKS_FREELY)
            .holds(s -> Answers.yes(s.subject().getWorksFreely(), "the seacock turns freely",
                "the seacock does not turn freely"))
            .remedy("Work the valve free, grease or replace it")
            .build();
    }
}
