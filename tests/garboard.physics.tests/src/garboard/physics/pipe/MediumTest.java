// SPDX-License-Identifier: EPL-2.0
package garboard.physics.pipe;

import static garboard.physics.PrintedQuantity.assertPrinted;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.physics.OutOfRangeException;
import garboard.physics.Printed;
import garboard.quantity.Density;
import garboard.quantity.Length;
import garboard.quantity.PressureDifference;
import garboard.quantity.Temperature;

class MediumTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # medium    | at      | density      | viscosity   | specific heat | source
            SEA_WATER   | 5 degC  | 1027.6 kg/m3 | 1.576 mm2/s | 3.993 kJ/(kg.K) | Sharqawy et al. 2010, recomputed independently
            SEA_WATER   | 15 degC | 1026.0 kg/m3 | 1.189 mm2/s | 3.997 kJ/(kg.K) | Sharqawy et al. 2010, recomputed independently
            SEA_WATER   | 25 degC | 1023.6 kg/m3 | 0.937 mm2/s | 4.001 kJ/(kg.K) | Sharqawy et al. 2010, recomputed independently
            SEA_WATER   | 32 degC | 1021.3 kg/m3 | 0.809 mm2/s | 4.003 kJ/(kg.K) | Sharqawy et al. 2010, recomputed independently
            FRESH_WATER | 0 degC  | 999.8 kg/m3  | 1.785 mm2/s | 4.22 kJ/(kg.K)  | Vennard and Street 1975 in Crittenden et al., Table C-1
            FRESH_WATER | 20 degC | 998.2 kg/m3  | 1.003 mm2/s | 4.18 kJ/(kg.K)  | Vennard and Street 1975 in Crittenden et al., Table C-1
            FRESH_WATER | 50 degC | 988.0 kg/m3  | 0.553 mm2/s | 4.18 kJ/(kg.K)  | Vennard and Street 1975 in Crittenden et al., Table C-1
            DIESEL      | 15 degC | 840 kg/m3    | 6 mm2/s     | 2.0 kJ/(kg.K)   | typical EN 590, from memory
            DIESEL      | 40 degC | 820 kg/m3    | 3 mm2/s     | 2.0 kJ/(kg.K)   | typical EN 590, from memory
            GASOLINE    | 15 degC | 745 kg/m3    | 0.6 mm2/s   | 2.1 kJ/(kg.K)   | typical EN 228, from memory
            AIR         | 25 degC | 1.184 kg/m3  | 15.6 mm2/s  | 1.01 kJ/(kg.K)  | Cengel and Cimbala, Table A-9, from memory
            EXHAUST_GAS | 60 degC | 1.0567 kg/m3 | 19 mm2/s    | 1.05 kJ/(kg.K)  | ideal gas and Sutherland, recomputed independently
            EXHAUST_GAS | 450 degC | 0.4868 kg/m3 | 70 mm2/s   | 1.10 kJ/(kg.K)  | ideal gas and Sutherland, recomputed independently
            EXHAUST_GAS | 600 degC | 0.4032 kg/m3 | 95 mm2/s   | 1.14 kJ/(kg.K)  | Cengel and Cimbala, Table A-9, 95.15 mm2/s for air, from memory
            """)
    void knowsTheProperties(Medium medium, String at, String density, String viscosity, String heat, String source) {
        Temperature temperature = Temperature.valueOf(at);
        assertPrinted(density, medium.at(temperature).density());
        assertPrinted(viscosity, medium.at(temperature).viscosity());
        assertPrinted(heat, medium.specificHeat(temperature));
    }

    @Test
    void knowsTheDynamicViscosityOfSeaWater() {
        // 35 g/kg at 25 degC: 0.959 mPa.s, figure printed with the correlation of Sharqawy et al. 2010 in a published program library
        Fluid sea = SeaWater.at(Temperature.valueOf("25 degC"));
        Printed.assertPrinted("0.959", sea.viscosity().si() * sea.density().si() * 1000);
    }

    @Test
    void drawsStraightLinesBetweenRows() {
        assertThat(Medium.DIESEL.at(Temperature.valueOf("27.5 degC")).density().si()).isCloseTo(830, within(1e-9));
        assertThat(Medium.DIESEL.at(Temperature.valueOf("27.5 degC")).viscosity().in("mm2/s")).isCloseTo(4.5, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"SEA_WATER, -0.1 degC", "SEA_WATER, 40.1 degC", "FRESH_WATER, 101 degC", "DIESEL, -1 degC", "GASOLINE, 41 degC", "AIR, 61 degC",
        "EXHAUST_GAS, 801 degC"})
    void neverLeavesItsRange(Medium medium, String at) {
        assertThatThrownBy(() -> medium.at(Temperature.valueOf(at))).isInstanceOf(OutOfRangeException.class).hasMessageContaining("temperature");
        assertThatThrownBy(() -> medium.specificHeat(Temperature.valueOf(at))).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void turnsHeightsIntoPressuresAndBack() {
        // recomputed independently from rho g h: 42 in of fresh water at 1000 kg/m3 = 10.462 kPa
        assertPrinted("10.462 kPa", Hydrostatics.pressure(Density.of(1000), Length.valueOf("42 in")));
        assertPrinted("1.000 m", Hydrostatics.height(SeaWater.CUSTOMARY_DENSITY, PressureDifference.of(1025 * 9.80665)));
    }
}
