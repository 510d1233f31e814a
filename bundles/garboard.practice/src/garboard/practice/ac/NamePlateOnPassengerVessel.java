// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import garboard.checks.Check;
import garboard.model.AcOutput;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 46 CFR 183.320(d): the set has a name plate. */
final class NamePlateOnPassengerVessel {

    private NamePlateOnPassengerVessel() {
    }

    static Check<AcOutput> check() {
        return NamePlate.check("AC-PLATE-183-320")
            .title("Set has a name plate (small passenger vessels)")
            .basis(Sources.cfr46("183.320(d)"))
            .applies(Conditions.smallPassengerVessel())
            .build();
    }
}
