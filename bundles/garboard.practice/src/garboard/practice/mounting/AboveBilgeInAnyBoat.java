// SPDX-License-Identifier: EPL-2.0
package garboard.practice.mounting;

import garboard.checks.Check;
import garboard.model.Mounting;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 46 CFR 183.320(a) as a yardstick. */
final class AboveBilgeInAnyBoat {

    private AboveBilgeInAnyBoat() {
    }

    static Check<Mounting> check() {
        return AboveBilge.check("MOUNTING-BILGE")
            .title("Alternator stands above bilge water")
            .basis(Sources.yardstick("46 CFR 183.320(a)"))
            .applies(Conditions.unlessLawForPassengers("183.320(a)"))
            .build();
    }
}
