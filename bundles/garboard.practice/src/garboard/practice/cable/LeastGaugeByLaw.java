// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.model.GarboardPackage.Literals.CABLE_RUN__LENGTH;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.CableRun;
import garboard.physics.cable.ConductorSize;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 33 CFR 183.425(d) to (f): 16 AWG alone, 18 AWG in a sheath with others. */
final class LeastGaugeByLaw {

    private LeastGaugeByLaw() {
    }

    static Check<CableRun> check() {
        return LeastGauge.check("CABLE-GAUGE-33CFR",
            LeastGauge.Pair.alone(ConductorSize.awg(16), "33 CFR 183.425(d) to (f)").inSheath(ConductorSize.awg(18)))
            .among(CableRuns::below50V, CableRuns.decidingVoltage())
            .title("Conductor is not too thin to last (gasoline boats)")
            .basis(Sources.cfr33("183.425(d) to (f)"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("16 AWG alone; 18 AWG in a sheath with others, out of which it may come by at most 762 mm (30 in)")
            .applies(Conditions.boatWithGasolineEngine())
            .applies(CableConditions.longerThanPigtail())
            .uses(CABLE_RUN__LENGTH)
            .build();
    }
}
