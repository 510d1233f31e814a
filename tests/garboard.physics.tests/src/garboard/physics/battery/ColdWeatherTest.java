// SPDX-License-Identifier: EPL-2.0
package garboard.physics.battery;

import static garboard.physics.Printed.assertPrinted;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.physics.OutOfRangeException;
import garboard.quantity.Current;
import garboard.quantity.Temperature;

class ColdWeatherTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # temperature | battery % | demand % | ratio
            0 degC   | 65  | 155 | 2.38 | common practice; ratio recomputed independently
            -18 degC | 40  | 210 | 5.25 | common practice; ratio recomputed independently
            -29 degC | 25  | 350 | 14.0 | common practice; ratio recomputed independently
            27 degC  | 100 | 100 | 1.00 | common practice; ratio recomputed independently
            """)
    void weighsDemandAgainstOutput(String temperature, String battery, String demand, String ratio, String source) {
        Temperature at = Temperature.valueOf(temperature);
        assertPrinted(battery, ColdWeather.batteryOutput(at).in("%"));
        assertPrinted(demand, ColdWeather.engineDemand(at).in("%"));
        assertPrinted(ratio, ColdWeather.demandOverOutput(at).si());
    }

    @Test
    void growsTheColderItIs() {
        double before = 0;
        for (int celsius = 27; celsius >= -29; celsius--) {
            double now = ColdWeather.demandOverOutput(Temperature.of(celsius, "degC")).si();
            assertThat(now).isGreaterThan(before);
            before = now;
        }
    }

    @Test
    void refusesTemperaturesTheTableDoesNotReach() {
        assertThatThrownBy(() -> ColdWeather.batteryOutput(Temperature.valueOf("-30 degC"))).isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("-29 to 27 degC");
        assertThatThrownBy(() -> ColdWeather.engineDemand(Temperature.valueOf("28 degC"))).isInstanceOf(OutOfRangeException.class);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            21 degC  | 1 | 9.6  | common practice
            30 degC  | 1 | 9.6  | common practice, warmer than the table
            10 degC  | 1 | 9.4  | common practice
            -1 degC  | 1 | 9.1  | common practice
            -18 degC | 1 | 8.5  | common practice
            21 degC  | 2 | 19.2 | common practice, two blocks
            70 degF  | 1 | 9.6  | common practice
            """)
    void holdsALoadTestToAFloor(String temperature, int blocks, String least, String source) {
        assertPrinted(least, LoadTest.leastVoltage(Temperature.valueOf(temperature), blocks).si());
    }

    @Test
    void loadsABatteryWithHalfItsColdCrankingCurrent() {
        assertThat(LoadTest.testCurrent(Current.valueOf("700 A")).si()).isEqualTo(350);
        assertThatThrownBy(() -> LoadTest.leastVoltage(Temperature.valueOf("-20 degC"), 1)).isInstanceOf(OutOfRangeException.class);
    }
}
