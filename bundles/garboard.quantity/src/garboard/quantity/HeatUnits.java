// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

import static garboard.quantity.TradeUnits.BTU;
import static garboard.quantity.TradeUnits.CELSIUS;
import static garboard.quantity.TradeUnits.FAHRENHEIT;
import static garboard.quantity.TradeUnits.FAHRENHEIT_DEGREE;
import static garboard.quantity.TradeUnits.GRAM;
import static garboard.quantity.TradeUnits.HORSEPOWER;
import static garboard.quantity.TradeUnits.HOUR;
import static garboard.quantity.TradeUnits.JOULE;
import static garboard.quantity.TradeUnits.KELVIN;
import static garboard.quantity.TradeUnits.KILOGRAM;
import static garboard.quantity.TradeUnits.KILOWATT_HOUR;
import static garboard.quantity.TradeUnits.METRIC_HORSEPOWER;
import static garboard.quantity.TradeUnits.ONE;
import static garboard.quantity.TradeUnits.POUND;
import static garboard.quantity.TradeUnits.WATT;
import static garboard.quantity.TradeUnits.times;

import javax.measure.Unit;

/** Units of temperature, energy, power, fuel and heat; and of the pure ratio. */
final class HeatUnits {

    private static final Unit<?> KILOGRAM_KELVIN = KILOGRAM.multiply(KELVIN);

    static final UnitTable TEMPERATURE = UnitTable.of("temperature", "K", KELVIN)
        .unit("degC", CELSIUS, "C")
        .unit("degF", FAHRENHEIT, "F")
        .unit("K", KELVIN)
        .shownIn("degC", "degF");

    static final UnitTable TEMPERATURE_DIFFERENCE = UnitTable.of("temperature difference", "K", KELVIN)
        .unit("K", KELVIN)
        .unit("degC", KELVIN, "C")
        .unit("degF", FAHRENHEIT_DEGREE, "F")
        .shownIn("K", "degF");

    static final UnitTable ENERGY = UnitTable.of("energy", "J", JOULE)
        .unit("kWh", KILOWATT_HOUR)
        .unit("Wh", times(KILOWATT_HOUR, "0.001"))
        .unit("MJ", times(JOULE, "1000000"))
        .unit("kJ", times(JOULE, "1000"))
        .unit("J", JOULE)
        .unit("BTU", BTU)
        .shownIn("kWh", "kWh");

    static final UnitTable POWER = UnitTable.of("power", "W", WATT)
        .unit("kW", times(WATT, "1000"))
        .unit("W", WATT)
        .unit("hp", HORSEPOWER, "bhp")
        .unit("PS", METRIC_HORSEPOWER)
        .unit("MW", times(WATT, "1000000"))
        .unit("mW", times(WATT, "0.001"))
        .unit("BTU/h", BTU.divide(HOUR))
        .shownIn("kW", "kW");

    static final UnitTable HEATING_VALUE = UnitTable.of("heating value", "J/kg", JOULE.divide(KILOGRAM))
        .unit("MJ/kg", times(JOULE.divide(KILOGRAM), "1000000"))
        .unit("kJ/kg", times(JOULE.divide(KILOGRAM), "1000"))
        .unit("J/kg", JOULE.divide(KILOGRAM))
        .unit("kWh/kg", KILOWATT_HOUR.divide(KILOGRAM))
        .unit("BTU/lb", BTU.divide(POUND))
        .shownIn("MJ/kg", "BTU/lb");

    static final UnitTable SPECIFIC_HEAT = UnitTable.of("specific heat", "J/(kg.K)", JOULE.divide(KILOGRAM_KELVIN))
        .unit("kJ/(kg.K)", times(JOULE, "1000").divide(KILOGRAM_KELVIN), "kJ/kgK", "kJ/kg/K", "kJ/(kg degC)", "kJ/kg degC")
        .unit("J/(kg.K)", JOULE.divide(KILOGRAM_KELVIN), "J/kgK", "J/kg/K", "J/(kg degC)", "J/kg degC")
        .unit("BTU/(lb.degF)", BTU.divide(POUND.multiply(FAHRENHEIT_DEGREE)), "BTU/lb.degF", "BTU/lb/degF", "BTU/(lb F)")
        .shownIn("kJ/(kg.K)", "BTU/(lb.degF)");

    static final UnitTable SPECIFIC_CONSUMPTION = UnitTable.of("specific consumption", "kg/J", KILOGRAM.divide(JOULE))
        .unit("g/kWh", GRAM.divide(KILOWATT_HOUR), "g/(kW.h)", "g/kW/h")
        .unit("kg/kWh", KILOGRAM.divide(KILOWATT_HOUR), "kg/(kW.h)")
        .unit("lb/(hp.h)", POUND.divide(HORSEPOWER.multiply(HOUR)), "lb/hp.h", "lb/hp-h", "lb/hp/h", "lb/bhp.h", "lb/(bhp.h)")
        .unit("kg/J", KILOGRAM.divide(JOULE))
        .shownIn("g/kWh", "lb/(hp.h)");

    static final UnitTable RATIO = UnitTable.of("ratio", "1", ONE)
        .unit("%", times(ONE, "0.01"), "pct")
        .unit("1", ONE)
        .unit("ppm", times(ONE, "0.000001"))
        .unitMayBeLeftOut()
        .shownIn("%", "%");

    private HeatUnits() {
    }
}
