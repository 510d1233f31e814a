// SPDX-License-Identifier: EPL-2.0
package garboard.physics.battery;

import garboard.physics.Argument;
import garboard.physics.reference.Interpolation;
import garboard.physics.reference.ReferenceTable;
import garboard.quantity.Ratio;
import garboard.quantity.Temperature;

/**
 * What the cold leaves of a battery and what it adds to the engine's demand, both against 27 degC ({@link BatterySources#COLD_WEATHER}).
 * Straight lines between -29 and 27 degC; throws outside. A cold-cranking current is a figure at -18 degC already: do not reduce it by this.
 */
public final class ColdWeather {

    private static final ReferenceTable TABLE = ReferenceTable.load("battery-cold-weather.csv");
    private static final Interpolation BATTERY = TABLE.interpolation("t_C", "battery_pct");
    private static final Interpolation ENGINE = TABLE.interpolation("t_C", "engine_demand_pct");

    private ColdWeather() {
    }

    /** Output of the battery as a share of its output at 27 degC. */
    public static Ratio batteryOutput(Temperature temperature) {
        return Ratio.of(BATTERY.at(celsius(temperature)) / 100);
    }

    /** Demand of the engine as a share of its demand at 27 degC. */
    public static Ratio engineDemand(Temperature temperature) {
        return Ratio.of(ENGINE.at(celsius(temperature)) / 100);
    }

    /** Demand over output: how much larger the battery has to be than for a start at 27 degC. */
    public static Ratio demandOverOutput(Temperature temperature) {
        return Ratio.of(engineDemand(temperature).si() / batteryOutput(temperature).si());
    }

    private static double celsius(Temperature temperature) {
        return Argument.between("temperature", temperature, 244.15, 300.15, "-29 to 27 degC") - 273.15;
    }
}
