// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__FUNCTION;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.CableFunction;
import garboard.model.CableRun;
import garboard.physics.cable.ConductorSize;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 46 CFR 183.340(c): 14 AWG for power and lighting, 22 AWG for control and indication. */
final class LeastGaugeOnPassengerVessel {

    private LeastGaugeOnPassengerVessel() {
    }

    static Check<CableRun> check() {
        return Check.check("CABLE-GAUGE-46CFR", CableRun.class)
            .title("Conductor is not too thin to last (small passenger vessels)")
            .why("A thin conductor breaks at the first lug or clip that moves, whatever current it could carry.")
            .basis(Sources.cfr46("183.340(c)"))
            .gravity(Gravity.DEFECT)
            .limit("14 AWG for power and lighting, 22 AWG for control and indication")
            .applies(Conditions.smallPassengerVessel())
            .applies(CableConditions.readableSize())
            .needsWhen(s -> !CableRuns.isOutputCable(s.subject()), path(CABLE_RUN__FUNCTION))
            .holds(s -> LeastGauge.compare(s.subject(), least(s.subject()), ""))
            .remedy("Lay a thicker conductor", s -> LeastGauge.remedy(s.subject(), least(s.subject())))
            .build();
    }

    private static LeastGauge.Thinnest least(CableRun run) {
        boolean control = !CableRuns.isOutputCable(run) && run.getFunction() == CableFunction.CONTROL;
        return new LeastGauge.Thinnest(ConductorSize.awg(control ? 22 : 14), "46 CFR 183.340(c)");
    }
}
