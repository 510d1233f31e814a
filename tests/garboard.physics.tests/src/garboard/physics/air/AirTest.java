// SPDX-License-Identifier: EPL-2.0
package garboard.physics.air;

import static garboard.physics.PrintedQuantity.assertPrinted;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.physics.OutOfRangeException;
import garboard.physics.fuel.Combustion;
import garboard.quantity.Area;
import garboard.quantity.Density;
import garboard.quantity.Power;
import garboard.quantity.PressureDifference;
import garboard.quantity.Ratio;
import garboard.quantity.SpecificConsumption;
import garboard.quantity.TemperatureDifference;
import garboard.quantity.VolumeFlow;

class AirTest {

    private static final Density AIR_25 = Density.of(1.184);
    private static final Power SHAFT = Power.of(20 / 0.89, "kW");

    // BSFC x AFR / 1.184 kg/m3, recomputed independently
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # consumption | AFR | shaft | air
            250 g/kWh | 22 | 1 kW | 4.645 m3/h
            250 g/kWh | 22 | 1 hp | 2.04 ft3/min
            250 g/kWh | 28 | 1 kW | 5.912 m3/h
            250 g/kWh | 28 | 1 hp | 2.59 ft3/min
            360 g/kWh | 14 | 1 kW | 4.257 m3/h
            360 g/kWh | 14 | 1 hp | 1.87 ft3/min
            """)
    void reckonsCombustionAir(String consumption, double ratio, String shaft, String air) {
        Combustion engine = new Combustion(Power.valueOf(shaft), SpecificConsumption.valueOf(consumption), Ratio.of(ratio));
        assertPrinted(air, CombustionAir.of(engine, AIR_25));
    }

    @Test
    void knowsRulesOfThumbForCombustionAir() {
        assertPrinted("170 m3/h", CombustionAir.byMarineDieselBasics(Power.valueOf("40 hp"))); // Marine Diesel Basics 1
        assertPrinted("5.70 m3/h", CombustionAir.byMarineDieselBasics(Power.valueOf("1 kW"))); // 170 / 29.83, recomputed independently
        assertPrinted("5.70 m3/h", CombustionAir.byHorsepower(Power.valueOf("1 kW"))); // 2.5 cfm/hp, trade practice, recomputed independently
    }

    @Test
    void addsTheHeatUp() {
        // recomputed independently: 0.07 x 66.64 + 20 (1/0.89 - 1) = 4.665 + 2.472 kW; gasoline 0.07 x 34.94 + 6.5 (1/0.80 - 1) = 2.45 + 1.63
        assertPrinted("2.47 kW", CompartmentHeat.ofAlternator(Power.valueOf("20 kW"), Ratio.of(0.89)));
        var diesel = new CompartmentHeat.Alternator(Power.valueOf("20 kW"), Ratio.of(0.89));
        assertPrinted("7.14 kW", CompartmentHeat.of(Power.valueOf("66.64 kW"), Ratio.of(0.07), diesel));
        assertPrinted("2.45 kW", CompartmentHeat.ofEngine(Power.valueOf("34.94 kW"), Ratio.of(0.07)));
        var gasoline = new CompartmentHeat.Alternator(Power.valueOf("6.5 kW"), Ratio.of(0.80));
        assertPrinted("4.07 kW", CompartmentHeat.of(Power.valueOf("34.94 kW"), Ratio.of(0.07), gasoline));
        assertThatThrownBy(() -> CompartmentHeat.ofAlternator(Power.of(1), Ratio.of(1.1))).isInstanceOf(OutOfRangeException.class)
            .hasMessageContaining("alternator efficiency");
    }

    // Phi / (1.13 x 1.01 x dT), recomputed independently
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # heat    | rise   | flow
            7.1366 kW | 10 K   | 37.5 m3/min
            7.1366 kW | 12.5 K | 30.0 m3/min
            7.1366 kW | 16 K   | 23.4 m3/min
            7.1366 kW | 16 K   | 828 ft3/min
            4.07 kW  | 16 K   | 13.4 m3/min
            """)
    void reckonsTheVentilationForARise(String heat, String rise, String flow) {
        VolumeFlow needed = VentilationFlow.forRise(Power.valueOf(heat), TemperatureDifference.valueOf(rise));
        assertPrinted(flow, needed);
        assertThat(VentilationFlow.rise(Power.valueOf(heat), needed).si()).isCloseTo(TemperatureDifference.valueOf(rise).si(), within(1e-12));
    }

    @Test
    void totalsInTheStyleOfIso8861() {
        // ISO 8861 from memory, recomputed independently: 0.396 x 22.47^0.7 = 3.50 kW
        assertPrinted("3.50 kW", Iso8861Style.generatorRadiation(SHAFT));
        Combustion engine = new Combustion(SHAFT, SpecificConsumption.valueOf("250 g/kWh"), Ratio.of(22));
        VolumeFlow combustion = CombustionAir.of(engine, VentilationFlow.WARM_AIR);
        // recomputed independently for 7.14 kW: V_c 0.0304, V_heat 0.5005: 0.519 m3/s
        assertPrinted("0.519 m3/s", Iso8861Style.total(combustion, Power.valueOf("7.14 kW")));
        assertPrinted("0.046 m3/s", Iso8861Style.total(combustion, Power.of(0))); // the floor of 1.5 V_c, recomputed independently
    }

    @Test
    void reckonsTheFlowThroughAnOpening() {
        // v = sqrt(2 dp / (K rho)), recomputed independently with K 2.5 and 1.13 kg/m3: 63 Pa draws 6.68 m/s,
        // which for 23.4 m3/min takes 584 cm2
        DuctOpening louvre = new DuctOpening(DuctOpening.USUAL_LOSS, VentilationFlow.WARM_AIR);
        PressureDifference depression = PressureDifference.valueOf("63 Pa");
        assertPrinted("6.68 m/s", louvre.velocity(depression));
        Area least = louvre.leastArea(VolumeFlow.valueOf("23.4 m3/min"), depression);
        assertPrinted("584 cm2", least);
        assertThat(louvre.flow(least, depression).in("m3/min")).isCloseTo(23.4, within(1e-9));
        assertThat(louvre.depression(VolumeFlow.valueOf("23.4 m3/min"), least).si()).isCloseTo(63, within(1e-9));
        assertThat(louvre.depression(VolumeFlow.valueOf("46.8 m3/min"), least).si()).isCloseTo(252, within(1e-9));
        assertThatThrownBy(() -> louvre.leastArea(VolumeFlow.of(1), PressureDifference.of(0))).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void knowsGerrsVentArea() {
        // Gerr, Boat Mechanical Systems Handbook, ch. 16: 650 hp, 197 in2 printed, 196.97 recomputed; 30 hp 9.1 in2; 22.47 kW 58.4 cm2
        assertPrinted("197 in2", VentAreaByGerr.inches(Power.valueOf("650 hp")));
        assertPrinted("196.97 in2", VentAreaByGerr.inches(Power.valueOf("650 hp")));
        assertPrinted("9.1 in2", VentAreaByGerr.inches(Power.valueOf("30 hp")));
        assertPrinted("58.4 cm2", VentAreaByGerr.metric(Power.valueOf("22.47 kW")));
        assertPrinted("70.1 cm2", VentAreaByGerr.forTortuousDucts(Area.valueOf("58.4 cm2")));
    }
}
