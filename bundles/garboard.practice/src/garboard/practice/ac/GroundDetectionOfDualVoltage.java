// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import garboard.checks.Check;
import garboard.model.AcOutput;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 46 CFR 183.324: a dual-voltage set has ground detection. */
final class GroundDetectionOfDualVoltage {

    private GroundDetectionOfDualVoltage() {
    }

    static Check<AcOutput> check() {
        return GroundDetection.check("AC-GROUND-DETECTION-183-324")
            .title("Dual-voltage set shows a fault to ground (small passenger vessels)")
            .basis(Sources.cfr46("183.324"))
            .applies(Conditions.smallPassengerVessel())
            .applies(AcConditions.splitPhase())
            .applies(AcConditions.grounded())
            .build();
    }
}
