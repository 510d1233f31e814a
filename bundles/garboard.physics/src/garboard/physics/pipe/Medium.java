// SPDX-License-Identifier: EPL-2.0
package garboard.physics.pipe;

import java.util.function.Function;

import garboard.physics.Argument;
import garboard.physics.reference.Interpolation;
import garboard.physics.reference.ReferenceTable;
import garboard.quantity.Density;
import garboard.quantity.KinematicViscosity;
import garboard.quantity.SpecificHeat;
import garboard.quantity.Temperature;

/**
 * The fluids of a generator set installation, by temperature. Fresh water, fuels and air come from tables, with straight lines in between; sea
 * water and exhaust gas from the formulas of {@link SeaWater} and {@link AirLikeGas}. Outside its range a medium throws.
 */
public enum Medium {

    /** Sea water of 35 g/kg, 0 to 40 degC. */
    SEA_WATER(0, 40, new Formula(SeaWater::at, SeaWater::specificHeat)),

    /** Fresh water, 0 to 100 degC. */
    FRESH_WATER(Table.read("fresh-water.csv")),

    /** Typical diesel, 0 to 40 degC. A real one may have a third less or a half more viscosity. */
    DIESEL(Table.read("diesel.csv")),

    /** Typical gasoline, 0 to 40 degC. */
    GASOLINE(Table.read("gasoline.csv")),

    /** Dry air at 1 atm, -20 to 60 degC. */
    AIR(Table.read("air.csv")),

    /** Exhaust gas, taken as air at 1 atm, 20 to 800 degC. */
    EXHAUST_GAS(20, 800, new Formula(AirLikeGas::at, AirLikeGas::exhaustSpecificHeat));

    private final double lowestC;
    private final double highestC;
    private final Properties properties;

    Medium(double lowestC, double highestC, Properties properties) {
        this.lowestC = lowestC;
        this.highestC = highestC;
        this.properties = properties;
    }

    Medium(Table table) {
        this(table.density().lowest(), table.density().highest(), table);
    }

    /** Density and viscosity at a temperature. */
    public Fluid at(Temperature temperature) {
        return properties.fluid(checked(temperature));
    }

    /** Specific heat at constant pressure. */
    public SpecificHeat specificHeat(Temperature temperature) {
        return properties.heat(checked(temperature));
    }

    private Temperature checked(Temperature temperature) {
        Argument.between("temperature", temperature, lowestC + 273.15, highestC + 273.15, lowestC + " degC to " + highestC + " degC");
        return temperature;
    }

    /** Where the properties come from. */
    private sealed interface Properties {

        Fluid fluid(Temperature at);

        SpecificHeat heat(Temperature at);
    }

    private record Formula(Function<Temperature, Fluid> flow, Function<Temperature, SpecificHeat> warmth) implements Properties {

        @Override
        public Fluid fluid(Temperature at) {
            return flow.apply(at);
        }

        @Override
        public SpecificHeat heat(Temperature at) {
            return warmth.apply(at);
        }
    }

    private record Table(Interpolation density, Interpolation viscosity, Interpolation specificHeat) implements Properties {

        static Table read(String file) {
            ReferenceTable table = ReferenceTable.load(file);
            return new Table(table.interpolation("temperature_C", "density_kg_m3"),
                table.interpolation("temperature_C", "viscosity_mm2_s"), table.interpolation("temperature_C", "specific_heat_kJ_kgK"));
        }

        @Override
        public Fluid fluid(Temperature at) {
            double celsius = at.in("degC");
            return new Fluid(Density.of(density.at(celsius)), KinematicViscosity.of(viscosity.at(celsius), "mm2/s"));
        }

        @Override
        public SpecificHeat heat(Temperature at) {
            return SpecificHeat.of(specificHeat.at(at.in("degC")), "kJ/(kg.K)");
        }
    }
}
