// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__BATTERY_TEMPERATURE;
import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__CHARGING_VOLTAGE_RUNNING;

import java.util.Optional;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.model.StartingBattery;
import garboard.physics.battery.ChargeStage;
import garboard.practice.Figures;
import garboard.quantity.Voltage;

/** With the set running and warm, the voltage at the battery shows that it is being charged. */
final class ChargesWhileRunning {

    private static final Voltage LOW = Voltage.of(13.8, "V");
    private static final Voltage HIGH = Voltage.of(14.8, "V");

    private ChargesWhileRunning() {
    }

    static Check<StartingBattery> check() {
        return Check.check("BATTERY-CHARGING", StartingBattery.class)
            .title("Running set charges its battery")
            .why("A battery that is not charged is flat after the third start; one charged too hard boils dry.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DEFECT)
            .limit("13.8 V to 14.8 V at a 12 V block within 5 min; a cold battery may have the absorption voltage of EN 50272-2 "
                + "for its temperature")
            .applies(BatteryConditions.leadAcid())
            .needs(STARTING_BATTERY__CHARGING_VOLTAGE_RUNNING)
            .needs(Bank.size())
            .uses(STARTING_BATTERY__BATTERY_TEMPERATURE)
            .holds(s -> Comparison.between("the battery is charged with " + Figures.both(s.subject().getChargingVoltageRunning()),
                s.subject().getChargingVoltageRunning(), Limit.of(Bank.ofBlock(s.subject(), LOW), "common practice"), highest(s.subject())))
            .remedy("Measure at the alternator too: look for a drop in cables, diodes or switch, then set the regulator")
            .build();
    }

    private static Limit<Voltage> highest(StartingBattery battery) {
        Voltage usual = Bank.ofBlock(battery, HIGH);
        Optional<Voltage> compensated = Optional.ofNullable(battery.getBatteryTemperature())
            .map(temperature -> CompensatedCharging.at(ChargeStage.ABSORPTION, battery, temperature));
        return compensated.filter(cold -> cold.isMoreThan(usual)).map(cold -> Limit.of(cold, "EN 50272-2, for the battery's temperature"))
            .orElseGet(() -> Limit.of(usual, "common practice"));
    }
}
