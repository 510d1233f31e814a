// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import garboard.checks.Check;
import garboard.model.StartingBattery;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 33 CFR 183.420(c): metal fuel parts within 12 in of the battery and above its top have a dielectric shield. */
final class FuelPartsShieldedByLaw {

    private FuelPartsShieldedByLaw() {
    }

    static Check<StartingBattery> check() {
        return FuelPartsShielded.check("BATTERY-FUEL-SHIELD-33CFR")
            .title("Metal fuel parts near the battery are shielded (gasoline boats)")
            .basis(Sources.cfr33("183.420(c)"))
            .limit("a dielectric shield where metal fuel parts are within 305 mm (12 in) of the battery and above its top")
            .applies(Conditions.boatWithGasolineEngine())
            .build();
    }
}
