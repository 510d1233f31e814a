// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__COLDEST_START;

import garboard.checks.Check;
import garboard.checks.Condition;
import garboard.checks.Gravity;
import garboard.model.StartingBattery;

/** Down to freezing the battery covers what the cold asks for. */
final class ColdStartAboveFreezing {

    private ColdStartAboveFreezing() {
    }

    static Check<StartingBattery> check() {
        return ColdStart.check("BATTERY-COLD")
            .title("Battery covers the coldest start, at freezing or above")
            .gravity(Gravity.ADVICE)
            .applies(Condition.when("starts at 0 degC (32 degF) or above").known(path(STARTING_BATTERY__COLDEST_START)).test(
                s -> !BatteryConditions.battery(s).getColdestStart().isLessThan(ColdStart.FREEZING), "the set is started in frost"))
            .build();
    }
}
