// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import garboard.checks.Check;
import garboard.model.CableRun;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 33 CFR 183.455(b) as law. */
final class DevicePlaceByLaw {

    private DevicePlaceByLaw() {
    }

    static Check<CableRun> check() {
        return DevicePlaceByPanel.check("CABLE-DEVICE-PLACE-33CFR")
            .title("Fuse or breaker sits close to the source (gasoline boats)")
            .basis(Sources.cfr33("183.455(b)"))
            .applies(Conditions.boatWithGasolineEngine())
            .build();
    }
}
