// SPDX-License-Identifier: EPL-2.0
package garboard.physics.pipe;

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
    SEA_WATER(0, 40) {
        @Override
        Fluid fluid(Temperature at) {
            return SeaWater.at(at);
        }

        @Override
        SpecificHeat heat(Temperature at) {
            return SeaWater.specificHeat(at);
        }
    },

    /** Fresh water, 0 to 100 degC. */
    FRESH_WATER("fresh-water.csv"),

    /** Typical diesel, 0 to 40 degC. A real one may have a third less or a half more viscosity. */
    DIESEL("diesel.csv"),

    /** Typical gasoline, 0 to 40 degC. */
    GASOLINE("gasoline.csv"),

    /** Dry air at 1 atm, -20 to 60 degC. */
    AIR("air.csv"),

    /** Exhaust gas, taken as air at 1 atm, 20 to 800 degC. */
    EXHAUST_GAS(20, 800) {
        @Override
        Fluid fluid(Temperature at) {
            return AirLikeGas.at(at);
        }

        @Override
        SpecificHeat heat(Temperature at) {
            return AirLikeGas.exhaustSpecificHeat(at);
        }
    };

    private final double lowestC;
    private final double highestC;
    private final Curves curves;

    /** A fluid by formula. */
    Medium(double lowestC, double highestC) {
        this.lowestC = lowestC;
        this.highestC = highestC;
        this.curves = null;
    }

    /** A fluid by table. */
    Medium(String file) {
        this.curves = new Curves(ReferenceTable.load(file));
        this.lowestC = curves.density.lowest();
        this.highestC = curves.density.highest();
    }

    /** Density and viscosity at a temperature. */
    public Fluid at(Temperature temperature) {
        check(temperature);
        return fluid(temperature);
    }

    /** Specific heat at constant pressure. */
    public SpecificHeat specificHeat(Temperature temperature) {
        check(temperature);
        return heat(temperature);
    }

    Fluid fluid(Temperature at) {
        return new Fluid(Density.of(curves.density.at(at.in("degC"))), KinematicViscosity.of(curves.viscosity.at(at.in("degC")), "mm2/s"));
    }

    SpecificHeat heat(Temperature at) {
        return SpecificHeat.of(curves.specificHeat.at(at.in("degC")), "kJ/(kg.K)");
    }

    private void check(Temperature temperature) {
        Argument.between("temperature", temperature, lowestC + 273.15, highestC + 273.15, lowestC + " degC to " + highestC + " degC");
    }

    private static final class Curves {
        private final Interpolation density;
        private final Interpolation viscosity;
        private final Interpolation specificHeat;

        Curves(ReferenceTable table) {
            density = table.interpolation("temperature_C", "density_kg_m3");
            viscosity = table.interpolation("temperature_C", "viscosity_mm2_s");
            specificHeat = table.interpolation("temperature_C", "specific_heat_kJ_kgK");
        }
    }
}
