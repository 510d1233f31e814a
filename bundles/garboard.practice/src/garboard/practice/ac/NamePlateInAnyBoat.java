// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import garboard.checks.Check;
import garboard.model.AcOutput;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 46 CFR 183.320(d) as a yardstick. */
final class NamePlateInAnyBoat {

    private NamePlateInAnyBoat() {
    }

    static Check<AcOutput> check() {
        return NamePlate.check("AC-PLATE")
            .title("Name plate can be read")
            .basis(Sources.yardstick("46 CFR 183.320(d)"))
            .applies(Conditions.unlessLawForPassengers("183.320(d)"))
            .build();
    }
}
