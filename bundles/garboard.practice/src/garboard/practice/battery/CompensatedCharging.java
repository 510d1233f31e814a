// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import garboard.model.StartingBattery;
import garboard.physics.battery.ChargeStage;
import garboard.physics.battery.ChargingVoltage;
import garboard.quantity.Temperature;
import garboard.quantity.Voltage;

/** Charging voltage of the whole bank for its temperature. */
final class CompensatedCharging {

    /** Beyond these temperatures chargers do not follow any further. */
    private static final Temperature COLDEST = Temperature.of(-20, "degC");
    private static final Temperature WARMEST = Temperature.of(50, "degC");

    private CompensatedCharging() {
    }

    static Voltage at(ChargeStage stage, StartingBattery battery, Temperature temperature) {
        Temperature followed = temperature.isLessThan(COLDEST) ? COLDEST : temperature.isMoreThan(WARMEST) ? WARMEST : temperature;
        return ChargingVoltage.at(stage, Bank.cells(battery), followed);
    }
}
