// SPDX-License-Identifier: EPL-2.0
package garboard.physics.battery;

import static garboard.physics.Printed.assertPrinted;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.physics.OutOfRangeException;
import garboard.quantity.Ratio;
import garboard.quantity.Temperature;
import garboard.quantity.Voltage;

class HydrometerTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            1.250 | 10 degC  | 1.238 | 0.004 per 10 degF from 80 degF, recomputed independently
            1.250 | 50 degF  | 1.238 | 0.004 per 10 degF from 80 degF: 3 steps down
            1.250 | 100 degF | 1.258 | 0.004 per 10 degF from 80 degF: 2 steps up
            1.280 | 80 degF  | 1.280 | US hydrometer reference, no correction
            """)
    void reducesAReadingTo80Fahrenheit(String reading, String electrolyte, String corrected, String source) {
        assertPrinted(corrected, Hydrometer.correctedTo80F(Ratio.valueOf(reading), Temperature.valueOf(electrolyte)).si());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            1.265 | 12.63 | textbook E = n (SG + 0.84), recomputed independently
            1.280 | 12.72 | textbook E = n (SG + 0.84), recomputed independently
            1.300 | 12.84 | textbook E = n (SG + 0.84), recomputed independently
            """)
    void givesTheVoltageOfSixFloodedCells(String gravity, String voltage, String source) {
        assertPrinted(voltage, Hydrometer.floodedVoltage(Ratio.valueOf(gravity), 6).si());
    }

    @Test
    void showsWhyAFloodedBatteryMissesTwelveEight() {
        // textbook E = n (SG + 0.84) solved for SG: 12.8 V needs 1.293
        assertPrinted("1.293", Hydrometer.gravityFor(Voltage.valueOf("12.8 V"), 6).si());
    }

    @Test
    void turnsTheVoltageBackIntoTheGravity() {
        for (double gravity = 1.1; gravity < 1.35; gravity += 0.01) {
            assertThat(Hydrometer.gravityFor(Hydrometer.floodedVoltage(Ratio.of(gravity), 12), 12).si()).isCloseTo(gravity, within(1e-12));
        }
    }

    @Test
    void measuresTheSpreadOfTheCells() {
        // US Army TM 9-6140-200-14: more than 0.025 is unserviceable; 1.270 and 1.240 differ by 0.030
        assertPrinted("0.030", Hydrometer.cellSpread(List.of(Ratio.valueOf("1.270"), Ratio.valueOf("1.240"))).si());
    }

    @Test
    void refusesWhatNoElectrolyteHas() {
        assertThatThrownBy(() -> Hydrometer.correctedTo80F(Ratio.of(0.9), Temperature.valueOf("20 degC"))).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Hydrometer.correctedTo80F(Ratio.of(1.25), Temperature.valueOf("90 degC"))).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Hydrometer.gravityFor(Voltage.valueOf("24 V"), 6)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Hydrometer.cellSpread(List.of())).isInstanceOf(OutOfRangeException.class);
    }
}
