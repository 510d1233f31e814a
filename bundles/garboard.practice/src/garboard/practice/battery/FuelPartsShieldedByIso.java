// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import garboard.checks.Check;
import garboard.model.StartingBattery;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** ISO 10133: metal fuel parts within 300 mm of the battery are insulated. */
final class FuelPartsShieldedByIso {

    private FuelPartsShieldedByIso() {
    }

    static Check<StartingBattery> check() {
        return FuelPartsShielded.check("BATTERY-FUEL-SHIELD-ISO")
            .title("Metal fuel parts near the battery are insulated")
            .basis(Sources.ISO_10133_BATTERIES.othersSay("33 CFR 183.420(c): within 305 mm (12 in) and above the battery's top"))
            .limit("metal fuel parts within 300 mm (12 in) are insulated or shielded")
            .applies(Conditions.unlessLawForGasoline("183.420(c)"))
            .build();
    }
}
