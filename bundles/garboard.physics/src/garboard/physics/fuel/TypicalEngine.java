// SPDX-License-Identifier: EPL-2.0
package garboard.physics.fuel;

import java.util.Locale;

import garboard.physics.Source;
import garboard.physics.reference.ReferenceTable;
import garboard.quantity.Density;
import garboard.quantity.HeatingValue;
import garboard.quantity.Power;
import garboard.quantity.Ratio;
import garboard.quantity.SpecificConsumption;
import garboard.quantity.Temperature;

/** Typical full-load figures of small engines, for where the set's own are not known. From memory; the maker's figures are better. */
public enum TypicalEngine {

    DIESEL_NATURALLY_ASPIRATED, DIESEL_TURBOCHARGED, GASOLINE_INJECTED;

    /** What stands behind all of them. */
    public static final Source SOURCE = Source.fromMemory("typical small engines at full load").noting("the maker's figures are better");

    private final int row = Table.ENGINES.rowOf("engine", name().toLowerCase(Locale.ROOT).replace('_', '-')).orElseThrow();

    public SpecificConsumption consumption() {
        return SpecificConsumption.of(figure("consumption_g_kWh"), "g/kWh");
    }

    public SpecificConsumption leastConsumption() {
        return SpecificConsumption.of(figure("consumption_low_g_kWh"), "g/kWh");
    }

    public SpecificConsumption greatestConsumption() {
        return SpecificConsumption.of(figure("consumption_high_g_kWh"), "g/kWh");
    }

    /** Mass of air to mass of fuel. */
    public Ratio airFuelRatio() {
        return Ratio.of(figure("air_fuel_ratio"));
    }

    /** Exhaust gas before injection. */
    public Temperature exhaustTemperature() {
        return Temperature.of(figure("exhaust_C"), "degC");
    }

    /** Part of the fuel's power that goes to the coolant. */
    public Ratio coolantShare() {
        return Ratio.of(figure("coolant_share"));
    }

    /** Part of the fuel's power that the engine gives off to the space around it. */
    public Ratio radiatedShare() {
        return Ratio.of(figure("radiated_share"));
    }

    public HeatingValue heatingValue() {
        return HeatingValue.of(figure("heating_value_MJ_kg"), "MJ/kg");
    }

    public Density fuelDensity() {
        return Density.of(figure("density_kg_m3"));
    }

    /** The engine at a shaft power, with its typical consumption and air. */
    public Combustion at(Power shaft) {
        return new Combustion(shaft, consumption(), airFuelRatio());
    }

    private double figure(String column) {
        return Table.ENGINES.figure(row, column).orElseThrow();
    }

    private static final class Table {
        private static final ReferenceTable ENGINES = ReferenceTable.load("engine-typical.csv");
    }
}
