// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import garboard.checks.Check;
import garboard.model.AcOutput;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 46 CFR 183.378: an ungrounded system has continuous ground detection. */
final class GroundDetectionOnPassengerVessel {

    private GroundDetectionOnPassengerVessel() {
    }

    static Check<AcOutput> check() {
        return GroundDetection.check("AC-GROUND-DETECTION-183-378")
            .title("Ungrounded system shows a fault to ground (small passenger vessels)")
            .basis(Sources.cfr46("183.378"))
            .applies(Conditions.smallPassengerVessel())
            .applies(AcConditions.ungrounded())
            .build();
    }
}
