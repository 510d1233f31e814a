// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.VESSEL__GASOLINE_ENGINES;

import garboard.checks.Check;
import garboard.checks.Condition;
import garboard.model.StartingBattery;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 33 CFR 183.415: grounded cranking circuits of several gasoline engines are joined by a conductor that can carry any one starting current. */
final class CommonNegative {

    private CommonNegative() {
    }

    static Check<StartingBattery> check() {
        return NegativeLink.check("CABLE-COMMON-NEGATIVE-33CFR")
            .title("Negatives of several gasoline engines are joined")
            .basis(Sources.cfr33("183.415"))
            .applies(Conditions.boatWithGasolineEngine())
            .applies(Condition.when("boats with more than one gasoline engine").known(path(VESSEL__GASOLINE_ENGINES))
                .test(s -> s.vessel().getGasolineEngines() > 1, "there are not two gasoline engines to join"))
            .build();
    }
}
