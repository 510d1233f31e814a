// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.model.GarboardPackage.Literals.SEACOCK__FULL_BORE;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.Seacock;
import garboard.practice.Answers;
import garboard.practice.Conditions;

/** The open seacock leaves the whole bore free. */
final class SeacockFullBore {

    private SeacockFullBore() {
    }

    static Check<Seacock> check() {
        return Check.check("RAWWATER-SEACOCK-FULL-BORE", Seacock.class)
            .title("Open seacock leaves the whole bore free")
            .why("A valve with a narrowed way acts as the narrowest part of the suction line, whatever is printed on it.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DEFECT)
            .limit("a full-way valve")
            .applies(RawWaterConditions.seacockFitted())
            .applies(Conditions.asked(SEACOCK__FULL_BORE))
            .needs(SEACOCK__FULL_BORE)
            .holds(s -> Answers.yes(s.subject().getFullBore(), "the valve leaves the whole bore free",
                "the valve narrows the bore when it is open"))
            .remedy("Fit a full-way valve")
            .build();
    }
}
