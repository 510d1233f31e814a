// SPDX-License-Identifier: EPL-2.0
package garboard.physics.battery;

import static garboard.physics.Printed.assertPrinted;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.physics.OutOfRangeException;
import garboard.quantity.Charge;
import garboard.quantity.Current;
import garboard.quantity.Voltage;

class BatteryBankTest {

    private static final BatteryBlock BLOCK = new BatteryBlock(Voltage.valueOf("12 V"), Charge.valueOf("100 Ah"), Current.valueOf("800 A"));

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # series | parallel | V | Ah | CCA | kWh
            2 | 2 | 24 | 200 | 1600 | 4.8 | series and parallel sums, recomputed independently
            2 | 1 | 24 | 100 | 800  | 2.4 | series and parallel sums, recomputed independently
            1 | 2 | 12 | 200 | 1600 | 2.4 | series and parallel sums, recomputed independently
            """)
    void addsBlocksUp(int series, int parallel, String volts, String ampereHours, String coldCranking, String kilowattHours, String source) {
        BatteryBank bank = BatteryBank.of(BLOCK).withBlocksInSeries(series).withStringsInParallel(parallel);
        assertPrinted(volts, bank.nominal().si());
        assertPrinted(ampereHours, bank.capacity().in("Ah"));
        assertPrinted(coldCranking, bank.coldCranking().si());
        assertPrinted(kilowattHours, bank.energy().si() / 3.6e6);
    }

    @Test
    void refusesNothingInSeries() {
        assertThatThrownBy(() -> BatteryBank.of(BLOCK).withBlocksInSeries(0)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> new BatteryBlock(Voltage.of(0), Charge.of(1), Current.of(1))).isInstanceOf(OutOfRangeException.class);
    }
}
