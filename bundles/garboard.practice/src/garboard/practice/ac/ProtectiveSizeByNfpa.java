// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import garboard.checks.Check;
import garboard.model.AcOutput;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** NFPA 70 Table 250.122: the protective conductor by the rating of the device in front of it. */
final class ProtectiveSizeByNfpa {

    private ProtectiveSizeByNfpa() {
    }

    static Check<AcOutput> check() {
        return ProtectiveSize.check("AC-PROTECTIVE-SIZE")
            .title("Protective conductor is large enough for the main device")
            .basis(Sources.NFPA_70_250_122.othersSay("ISO 13297, from memory: at least as large as the live conductor"))
            .applies(Conditions.unlessLawForPassengers("183.372(c)"))
            .build();
    }
}
