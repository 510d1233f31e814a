// SPDX-License-Identifier: EPL-2.0
package garboard.practice.mounting;

import garboard.checks.Check;
import garboard.model.Mounting;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 46 CFR 183.320(a): the generator is accessible. */
final class AccessOnPassengerVessel {

    private AccessOnPassengerVessel() {
    }

    static Check<Mounting> check() {
        return Access.check("MOUNTING-ACCESS-183-320")
            .title("Set is accessible (small passenger vessels)")
            .basis(Sources.cfr46("183.320(a)"))
            .applies(Conditions.smallPassengerVessel())
            .build();
    }
}
