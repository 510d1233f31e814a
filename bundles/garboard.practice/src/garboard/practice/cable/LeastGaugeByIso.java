// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__PHASES;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.CableRun;
import garboard.physics.cable.ConductorSize;
import garboard.practice.Sources;

/** ISO 13297: 1 mm2 alone, 0.75 mm2 in a sheath. */
final class LeastGaugeByIso {

    private LeastGaugeByIso() {
    }

    static Check<CableRun> check() {
        return LeastGauge.check("CABLE-GAUGE-ISO",
            LeastGauge.Pair.alone(ConductorSize.squareMillimetre(1), "ISO 13297").inSheath(ConductorSize.squareMillimetre(0.75)))
            .title("Conductor is not too thin to last")
            .basis(Sources.ISO_13297.othersSay("33 CFR 183.425: 16 AWG alone, 18 AWG in a sheath"))
            .gravity(Gravity.DEFECT)
            .limit("1 mm2 alone, 0.75 mm2 in a sheath")
            .applies(CableConditions.scopeOfIso13297())
            .needsWhen(CableConditions::alternates, path(GENERATOR_SET__PHASES))
            .build();
    }
}
