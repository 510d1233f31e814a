// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import garboard.checks.Check;
import garboard.model.AcOutput;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 46 CFR 183.372(c): grounding conductors are sized by NFPA 70. */
final class ProtectiveSizeOnPassengerVessel {

    private ProtectiveSizeOnPassengerVessel() {
    }

    static Check<AcOutput> check() {
        return ProtectiveSize.check("AC-PROTECTIVE-SIZE-183-372")
            .title("Protective conductor is large enough (small passenger vessels)")
            .basis(Sources.cfr46("183.372(c)").othersSay("it refers to NFPA 70, whose Table 250.122 is quoted by others"))
            .applies(Conditions.smallPassengerVessel())
            .build();
    }
}
