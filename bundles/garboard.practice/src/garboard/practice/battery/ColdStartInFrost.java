// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__COLDEST_START;

import garboard.checks.Check;
import garboard.checks.Condition;
import garboard.checks.Gravity;
import garboard.model.StartingBattery;

/** Below freezing the battery covers what the cold asks for. */
final class ColdStartInFrost {

    private ColdStartInFrost() {
    }

    static Check<StartingBattery> check() {
        return ColdStart.check("BATTERY-COLD-FROST")
            .title("Battery covers the coldest start, below freezing")
            .gravity(Gravity.DEFECT)
            .applies(Condition.when("starts below 0 degC (32 degF)").known(path(STARTING_BATTERY__COLDEST_START)).test(
                s -> BatteryConditions.battery(s).getColdestStart().isLessThan(ColdStart.FREEZING), "the set is not started in frost"))
            .build();
    }
}
