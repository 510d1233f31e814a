// SPDX-License-Identifier: EPL-2.0
package garboard.physics.cable;

import static garboard.physics.Printed.assertPrinted;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import garboard.physics.OutOfRangeException;

class ConductorSizeTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            10 AWG     | 10 AWG
            AWG 10     | 10 AWG
            10awg      | 10 AWG
            2/0        | 2/0 AWG
            2/0 AWG    | 2/0 AWG
            AWG 4/0    | 4/0 AWG
            0          | 1/0 AWG
            00 AWG     | 2/0 AWG
            0000       | 4/0 AWG
            0 AWG      | 1/0 AWG
            70 mm2     | 70 mm2
            70mm²      | 70 mm2
            0.75 mm2   | 0.75 mm2
            16.0 mm2   | 16 mm2
            350 kcmil  | 350 kcmil
            350 MCM    | 350 kcmil
            """)
    void readsWhatIsPrintedOnTheJacket(String text, String canonical) {
        ConductorSize size = ConductorSize.valueOf(text);
        assertThat(size).hasToString(canonical);
        assertThat(ConductorSize.valueOf(size.toString())).isEqualTo(size);
    }

    @ParameterizedTest
    @ValueSource(strings = {"10", "", "5/0", "41 AWG", "70", "0 mm2", "-1 AWG", "1/2 AWG", "thick", "10 AWG 10"})
    void refusesABareNumberAndNonsense(String text) {
        assertThatThrownBy(() -> ConductorSize.valueOf(text)).isInstanceOf(OutOfRangeException.class).hasMessageContaining("2/0 AWG");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # gauge | diameter mm | mm2 | circular mils | mil
            18 AWG  | 1.024 | 0.823 | 1624   | 40.303 | NBS Circular 31 (mil, cmil) quoted by a third party; metric recomputed independently
            16 AWG  | 1.291 | 1.309 | 2583   | 50.82  | NBS Circular 31 (mil, cmil) quoted by a third party; metric recomputed independently
            14 AWG  | 1.628 | 2.081 | 4107   | 64.084 | NBS Circular 31 (mil, cmil) quoted by a third party; metric recomputed independently
            12 AWG  | 2.053 | 3.309 | 6530   | 80.808 | NBS Circular 31 (mil, cmil) quoted by a third party; metric recomputed independently
            10 AWG  | 2.588 | 5.261 | 10383  | 101.90 | ASTM B258 (from memory); metric recomputed independently
            8 AWG   | 3.264 | 8.366 | 16510  | 128.5  | ASTM B258 (from memory); metric recomputed independently
            6 AWG   | 4.115 | 13.30 | 26251  | 162.0  | ASTM B258 (from memory); metric recomputed independently
            4 AWG   | 5.189 | 21.15 | 41741  | 204.3  | ASTM B258 (from memory); metric recomputed independently
            3 AWG   | 5.827 | 26.67 | 52635  | 229.4  | ASTM B258 (from memory); metric recomputed independently
            2 AWG   | 6.544 | 33.63 | 66371  | 257.6  | ASTM B258 (from memory); metric recomputed independently
            1 AWG   | 7.348 | 42.41 | 83693  | 289.3  | ASTM B258 (from memory); metric recomputed independently
            1/0 AWG | 8.251 | 53.48 | 105535 | 324.9  | ASTM B258 (from memory); metric recomputed independently
            2/0 AWG | 9.266 | 67.43 | 133077 | 364.8  | ASTM B258 (from memory); metric recomputed independently
            3/0 AWG | 10.40 | 85.03 | 167806 | 409.6  | ASTM B258 (from memory); metric recomputed independently
            4/0 AWG | 11.68 | 107.2 | 211600 | 460.0  | ASTM B258: 0.4600 in by definition
            """)
    void knowsTheAreaOfAGauge(String gauge, String diameterMm, String mm2, String circularMils, String mil, String source) {
        ConductorSize size = ConductorSize.valueOf(gauge);
        double diameter = Math.sqrt(size.area().si() * 4 / Math.PI);
        assertPrinted(diameterMm, diameter * 1000);
        assertPrinted(mil, diameter / 25.4e-6);
        assertPrinted(mm2, size.area().in("mm2"));
        assertPrinted(circularMils, size.circularMils());
    }

    @Test
    void countsThousandsOfCircularMils() {
        assertPrinted("177", ConductorSize.valueOf("350 kcmil").area().in("mm2")); // 46 CFR Table 111.05-31(b): 350 MCM = 177 mm2
        assertPrinted("304", ConductorSize.valueOf("600 kcmil").area().in("mm2")); // 46 CFR Table 111.05-31(b)
        assertPrinted("557", ConductorSize.valueOf("1100 kcmil").area().in("mm2")); // 46 CFR Table 111.05-31(b)
    }

    @Test
    void ordersTheSeriesByArea() {
        for (var series : java.util.List.of(ConductorSeries.AWG, ConductorSeries.IEC)) {
            for (int i = 1; i < series.size(); i++) {
                assertThat(series.get(i).area()).isGreaterThan(series.get(i - 1).area());
                assertThat(ConductorSeries.smallest(series, series.get(i).area())).contains(series.get(i));
                assertThat(ConductorSeries.largest(series, series.get(i).area())).contains(series.get(i));
            }
        }
        assertThat(ConductorSeries.largest(ConductorSeries.AWG, ConductorSize.squareMillimetre(70).area()))
                .contains(ConductorSize.valueOf("2/0 AWG"));
        assertThat(ConductorSeries.largest(ConductorSeries.AWG, ConductorSize.squareMillimetre(0.5).area())).isEmpty();
        assertThat(ConductorSeries.smallest(ConductorSeries.AWG, ConductorSize.squareMillimetre(120).area())).isEmpty();
    }

    @Test
    void doublesTheDiameterAboutEverySixGauges() {
        double ratio = Math.sqrt(ConductorSize.awg(4).area().si() / ConductorSize.awg(10).area().si());
        assertThat(ratio).isCloseTo(2.0050, within(0.00005)); // ASTM B258: sixth power of 1.1229322
    }
}
