// SPDX-License-Identifier: EPL-2.0
package garboard.physics.ac;

import static garboard.physics.Printed.assertPrinted;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.physics.OutOfRangeException;
import garboard.quantity.Frequency;
import garboard.quantity.Ratio;
import garboard.quantity.RotationalSpeed;
import garboard.quantity.Voltage;

class FrequencyTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            62.4 Hz | 60.0 Hz | 4.0 | ISO 8528-5 definition, recomputed independently
            61.8 Hz | 60.0 Hz | 3.0 | ISO 8528-5 definition, recomputed independently
            52.0 Hz | 50.0 Hz | 4.0 | ISO 8528-5 definition, recomputed independently
            """)
    void droopsFromNoLoad(String noLoad, String declared, String perCent, String source) {
        assertPrinted(perCent, SteadyFrequencies.noLoad(Frequency.valueOf(noLoad)).atDeclaredPower(Frequency.valueOf(declared)).droop().in("%"));
    }

    @Test
    void tellsARisingFrequencyByItsSign() {
        assertThat(SteadyFrequencies.noLoad(Frequency.valueOf("59 Hz")).atDeclaredPower(Frequency.valueOf("60 Hz")).droop().si()).isNegative();
        assertThatThrownBy(() -> SteadyFrequencies.noLoad(Frequency.of(0)).atDeclaredPower(Frequency.of(50))).isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("no load");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            59.85 Hz | 60.15 Hz | 60 Hz | 0.50 | ISO 8528-5 definition (from memory), recomputed independently
            49.7 Hz  | 50.4 Hz  | 50 Hz | 1.40 | ISO 8528-5 definition (from memory), recomputed independently
            """)
    void wandersWithinABand(String lowest, String highest, String rated, String perCent, String source) {
        List<Frequency> readings = Stream.of(rated, highest, rated, lowest).map(Frequency::valueOf).toList();
        assertPrinted(perCent, FrequencyBand.width(readings, Frequency.valueOf(rated)).in("%"));
        assertThatThrownBy(() -> FrequencyBand.width(readings.subList(0, 1), Frequency.of(50))).isInstanceOf(OutOfRangeException.class);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            54.6 Hz | 60 Hz | -9.0 | textbook definition (2004), recomputed independently
            55.2 Hz | 60 Hz | -8.0 | textbook definition (2004), recomputed independently
            """)
    void dropsBelowRatedWhenLoadIsTakenOn(String lowest, String rated, String perCent, String source) {
        assertPrinted(perCent, FrequencyTransient.reached(Frequency.valueOf(lowest)).againstRated(Frequency.valueOf(rated)).in("%"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            66.0 Hz | 61.8 Hz | 60 Hz | 7.0 | textbook definition (2004): the rise counts from the initial frequency; recomputed independently
            53.1 Hz | 50 Hz   | 50 Hz | 6.2 | textbook definition (2004): the rise counts from the initial frequency; recomputed independently
            """)
    void risesFromTheInitialFrequencyWhenLoadIsThrownOff(String highest, String initial, String rated, String perCent, String source) {
        assertPrinted(perCent, FrequencyTransient.reached(Frequency.valueOf(highest)).from(Frequency.valueOf(initial))
                .onRated(Frequency.valueOf(rated)).in("%"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            50 Hz | 4 | 1500 | n = 120 f / p
            60 Hz | 4 | 1800 | n = 120 f / p
            50 Hz | 2 | 3000 | n = 120 f / p
            60 Hz | 2 | 3600 | n = 120 f / p
            """)
    void turnsAtSynchronousSpeed(String frequency, int poles, String speed, String source) {
        assertPrinted(speed, SynchronousSpeed.speed(Frequency.valueOf(frequency), poles).in("r/min"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            1805 r/min | 60.17 | n = 120 f / p, recomputed independently
            1750 r/min | 58.33 | n = 120 f / p, recomputed independently
            """)
    void tellsTheFrequencyByTheSpeed(String speed, String frequency, String source) {
        assertPrinted(frequency, SynchronousSpeed.frequency(RotationalSpeed.valueOf(speed), 4).si());
    }

    @Test
    void refusesAnOddNumberOfPoles() {
        assertThatThrownBy(() -> SynchronousSpeed.speed(Frequency.of(50), 3)).isInstanceOf(OutOfRangeException.class).hasMessageContaining("poles");
        assertThatThrownBy(() -> SynchronousSpeed.speed(Frequency.of(50), 0)).isInstanceOf(OutOfRangeException.class);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # rated | class | up to 10 kW | volt
            230 V | G1 | true  | 253    | DGUV Information 203-032 annex 5
            230 V | G1 | false | 241.50 | DGUV Information 203-032 annex 5 prints 242
            230 V | G2 | false | 235.75 | DGUV Information 203-032 annex 5 prints 236
            230 V | G3 | false | 232.30 | DGUV Information 203-032 annex 5 prints 232
            120 V | G1 | false | 126.0  | class figure on 120 V, recomputed independently
            """)
    void limitsTheVoltageWithoutLoad(String rated, PerformanceClass wanted, boolean small, String volt, String source) {
        SetTraits set = small ? SetTraits.ordinary().withUpTo10Kilowatt() : SetTraits.ordinary();
        assertPrinted(volt, NoLoadCheck.highestVoltage(Voltage.valueOf(rated), wanted, set).si());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            50 Hz | G1 | 54.0 | DGUV Information 203-032 annex 5
            50 Hz | G2 | 52.5 | DGUV Information 203-032 annex 5
            50 Hz | G3 | 51.5 | DGUV Information 203-032 annex 5
            60 Hz | G1 | 64.8 | class figure on 60 Hz, recomputed independently
            """)
    void limitsTheFrequencyWithoutLoad(String rated, PerformanceClass wanted, String hertz, String source) {
        assertPrinted(hertz, NoLoadCheck.highestFrequency(Frequency.valueOf(rated), wanted).si());
    }

    @Test
    void countsWidthInHalvesToEachSide() {
        Band<Frequency> width = Band.around(Frequency.of(60)).ofWidth(Ratio.valueOf("2 %"), Frequency.of(60));
        assertPrinted("59.40", width.low().si()); // by hand: half of 2 % of 60 Hz is 0.6 Hz
        assertPrinted("60.60", width.high().si());
        Band<Frequency> sides = Band.around(Frequency.of(61)).plusMinus(Ratio.valueOf("2 %"), Frequency.of(60));
        assertPrinted("59.80", sides.low().si());
        assertThatThrownBy(() -> new Band<>(Frequency.of(61), Frequency.of(60))).isInstanceOf(OutOfRangeException.class);
    }
}
