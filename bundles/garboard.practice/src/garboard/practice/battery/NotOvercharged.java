// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__BATTERY_TEMPERATURE;
import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__CHARGING_VOLTAGE_RUNNING;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Condition;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.model.StartingBattery;
import garboard.practice.Figures;
import garboard.quantity.Temperature;
import garboard.quantity.Voltage;

/** A warm battery is not charged above 15 V: it gasses hard. */
final class NotOvercharged {

    private static final Voltage BLOCK = Voltage.of(15.0, "V");
    private static final Temperature WARM = Temperature.of(20, "degC");

    private NotOvercharged() {
    }

    static Check<StartingBattery> check() {
        return Check.check("BATTERY-OVERCHARGE", StartingBattery.class)
            .title("Warm battery is not overcharged")
            .why("Above 15 V a warm battery boils off its water as an explosive gas and is ruined within days.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("at most 15.0 V at a 12 V block from 20 degC (68 degF) up")
            .applies(BatteryConditions.leadAcid())
            .applies(Condition.when("batteries at 20 degC (68 degF) or warmer").known(path(STARTING_BATTERY__BATTERY_TEMPERATURE)).test(
                s -> !BatteryConditions.battery(s).getBatteryTemperature().isLessThan(WARM),
                "the battery is colder than 20 degC (68 degF) and may be charged with more"))
            .needs(STARTING_BATTERY__CHARGING_VOLTAGE_RUNNING)
            .needs(Bank.size())
            .holds(s -> Comparison.atMost("the battery is charged with " + Figures.both(s.subject().getChargingVoltageRunning()),
                s.subject().getChargingVoltageRunning(), Limit.of(Bank.ofBlock(s.subject(), BLOCK), "common practice")))
            .remedy("Stop charging; replace or set the regulator, and check its sensing wire")
            .build();
    }
}
