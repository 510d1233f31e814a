// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.model.GarboardPackage.Literals.WATER_HOSE_RUN__KIND;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.model.WaterHoseKind;
import garboard.model.WaterHoseRun;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 46 CFR 182.720(a): no rigid plastic pipe in the cooling line of a set, which is part of a vital system. */
final class PipeOfPassengerVessel {

    private PipeOfPassengerVessel() {
    }

    static Check<WaterHoseRun> check() {
        return Check.check("RAWWATER-PIPE-182-720", WaterHoseRun.class)
            .title("No rigid plastic pipe in the cooling line (small passenger vessels)")
            .why("Plastic pipe melts in a fire and cracks in a collision; the sea follows it in.")
            .basis(Sources.cfr46("182.720(a) with 182.710"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("no rigid plastic pipe")
            .applies(Conditions.smallPassengerVessel())
            .needs(WATER_HOSE_RUN__KIND)
            .holds(s -> s.subject().getKind() == WaterHoseKind.RIGID_PLASTIC_PIPE
                ? Comparison.holds("the pipe is of rigid plastic", false) : Comparison.holds("no rigid plastic is used", true))
            .remedy("Replace by metal pipe, or by hose where 46 CFR 182.720(e) permits it")
            .build();
    }
}
