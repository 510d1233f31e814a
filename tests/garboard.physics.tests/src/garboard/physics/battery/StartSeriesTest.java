// SPDX-License-Identifier: EPL-2.0
package garboard.physics.battery;

import static garboard.physics.Printed.assertPrinted;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.physics.OutOfRangeException;
import garboard.quantity.Current;
import garboard.quantity.Ratio;
import garboard.quantity.TimeSpan;
import garboard.quantity.Voltage;

class StartSeriesTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            6 | 10 s | 300 A | 5.0 | 46 CFR 112.50-1(k) asks six starts; Q = n t I recomputed independently
            3 | 15 s | 250 A | 3.1 | Q = n t I recomputed independently
            """)
    void drawsCharge(int starts, String each, String current, String ampereHours, String source) {
        assertPrinted(ampereHours, new StartSeries(starts, TimeSpan.valueOf(each), Current.valueOf(current)).charge().in("Ah"));
    }

    @Test
    void asksForFiveTimesTheChargeWhereAFifthMayBeUsed() {
        StartSeries six = new StartSeries(6, TimeSpan.valueOf("10 s"), Current.valueOf("300 A"));
        assertPrinted("25", six.capacityNeeded(Ratio.valueOf("20 %")).in("Ah")); // common practice: at most 20 %
        assertThatThrownBy(() -> six.capacityNeeded(Ratio.of(0))).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void drawsEnergy() {
        StartSeries one = new StartSeries(1, TimeSpan.valueOf("10 s"), Current.valueOf("300 A"));
        assertPrinted("30.0", one.energyPerStart(Voltage.valueOf("10 V")).si() / 1000); // U I t by hand: 30 kJ
    }
}
