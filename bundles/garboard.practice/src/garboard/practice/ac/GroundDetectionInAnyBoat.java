// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import garboard.checks.Check;
import garboard.model.AcOutput;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** An ungrounded system shows its first fault, on any boat. */
final class GroundDetectionInAnyBoat {

    private GroundDetectionInAnyBoat() {
    }

    static Check<AcOutput> check() {
        return GroundDetection.check("AC-GROUND-DETECTION")
            .title("Ungrounded system shows a fault to ground")
            .basis(Sources.yardstick("46 CFR 183.378"))
            .applies(Conditions.unlessLawForPassengers("183.378"))
            .applies(AcConditions.ungrounded())
            .build();
    }
}
