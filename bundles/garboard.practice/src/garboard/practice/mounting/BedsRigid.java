// SPDX-License-Identifier: EPL-2.0
package garboard.practice.mounting;

import static garboard.model.GarboardPackage.Literals.MOUNTING__BEDS_RIGID;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.Mounting;
import garboard.practice.Answers;
import garboard.practice.Conditions;

/** The beds carry the set and do not give. */
final class BedsRigid {

    private BedsRigid() {
    }

    static Check<Mounting> check() {
        return Check.check("MOUNTING-BEDS", Mounting.class)
            .title("Beds of the set are rigid")
            .why("On a bed that gives the set shakes itself loose and takes exhaust, fuel and water lines with it.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DEFECT)
            .limit("bearers joined to the hull's structure, without crack or give")
            .applies(Conditions.asked(MOUNTING__BEDS_RIGID))
            .needs(MOUNTING__BEDS_RIGID)
            .holds(s -> Answers.yes(s.subject().getBedsRigid(), "the beds are rigid", "the beds give"))
            .remedy("Join the bearers to frames or stringers, and repair cracks before the set runs")
            .build();
    }
}
