// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import garboard.checks.Check;
import garboard.model.AcOutput;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 46 CFR 183.320(c): the instruments of a set of 50 V or more. */
final class MetersOnPassengerVessel {

    private MetersOnPassengerVessel() {
    }

    static Check<AcOutput> check() {
        return Meters.check("AC-METERS-183-320")
            .title("Set has its meters (small passenger vessels)")
            .basis(Sources.cfr46("183.320(c)"))
            .applies(Conditions.smallPassengerVessel())
            .build();
    }
}
