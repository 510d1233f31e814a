// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__BATTERY_TEMPERATURE;
import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__CHARGER_VOLTAGE;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.model.BatteryChemistry;
import garboard.model.StartingBattery;
import garboard.physics.battery.ChargeStage;
import garboard.practice.Figures;
import garboard.practice.Rounding;
import garboard.practice.Sources;
import garboard.quantity.Voltage;

/** The shore charger's voltage lies between float and absorption for the battery's kind and temperature. */
final class ChargerFollowsTemperature {

    private ChargerFollowsTemperature() {
    }

    static Check<StartingBattery> check() {
        return Check.check("BATTERY-CHARGER-VOLTAGE", StartingBattery.class)
            .title("Charger's voltage suits the battery and its temperature")
            .why("Too much voltage dries the battery out, most of all a warm sealed one; too little never fills it.")
            .basis(Sources.EN_50272_2.othersSay("running sets charge with up to 14.8 V (common practice); the battery maker's sheet decides"))
            .gravity(Gravity.ADVICE)
            .limit("from float (2.23 V a cell vented, 2.27 V valve-regulated) to absorption (2.40 V a cell) at 25 degC, less 3 "
                + "mV for each kelvin above")
            .applies(BatteryConditions.leadAcid())
            .needs(STARTING_BATTERY__CHARGER_VOLTAGE, STARTING_BATTERY__BATTERY_TEMPERATURE)
            .needs(Bank.size())
            .holds(s -> Comparison.between("the charger gives " + Figures.both(s.subject().getChargerVoltage()) + " to a battery at "
                + Figures.both(s.subject().getBatteryTemperature()), s.subject().getChargerVoltage(),
                Limit.of(at(floating(s.subject()), s.subject()), "EN 50272-2, float"),
                Limit.of(at(ChargeStage.ABSORPTION, s.subject()), "EN 50272-2, absorption")))
            .remedy("Set the charger for the battery's kind and connect its temperature sensor", s -> {
                Voltage set = Rounding.down(at(ChargeStage.ABSORPTION, s.subject()), 0.05, "V");
                return Optional.of(Remedy.of("Set the charger to " + Figures.both(set) + " and connect its temperature sensor")
                    .setting(s.subject(), STARTING_BATTERY__CHARGER_VOLTAGE, set));
            })
            .build();
    }

    private static ChargeStage floating(StartingBattery battery) {
        return battery.getChemistry() == BatteryChemistry.FLOODED_LEAD_ACID ? ChargeStage.FLOAT_VENTED : ChargeStage.FLOAT_VALVE_REGULATED;
    }

    private static Voltage at(ChargeStage stage, StartingBattery battery) {
        return CompensatedCharging.at(stage, battery, battery.getBatteryTemperature());
    }
}
