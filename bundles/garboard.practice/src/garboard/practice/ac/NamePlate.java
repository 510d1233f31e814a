// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__NAME_PLATE_READABLE;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.AcOutput;
import garboard.practice.Answers;

/** The name plate can be read where the set stands: everything but authority. */
final class NamePlate {

    private NamePlate() {
    }

    static Check.Builder<AcOutput> check(String id) {
        return Check.check(id, AcOutput.class)
            .why("Whoever sets the breaker, orders a part or fights a fire has to read what the set gives.")
            .gravity(Gravity.DEFECT)
            .limit("a plate that can be read without taking anything off")
            .needs(AC_OUTPUT__NAME_PLATE_READABLE)
            .holds(s -> Answers.demanded(s.subject().getNamePlateReadable(), "the name plate can be read", "the name plate cannot be read"))
            .remedy("Fit a copy of the plate where it can be read");
    }
}
