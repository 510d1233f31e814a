// SPDX-License-Identifier: EPL-2.0
package garboard.practice.mounting;

import garboard.checks.Check;
import garboard.model.Mounting;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 46 CFR 183.320(a): the generator stands clear of bilge water and its splash. */
final class AboveBilgeOnPassengerVessel {

    private AboveBilgeOnPassengerVessel() {
    }

    static Check<Mounting> check() {
        return AboveBilge.check("MOUNTING-BILGE-183-320")
            .title("Generator stands above bilge water (small passenger vessels)")
            .basis(Sources.cfr46("183.320(a)"))
            .applies(Conditions.smallPassengerVessel())
            .build();
    }
}
