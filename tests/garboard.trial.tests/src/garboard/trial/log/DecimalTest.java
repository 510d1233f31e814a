// SPDX-License-Identifier: EPL-2.0
package garboard.trial.log;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DecimalTest {

    @ParameterizedTest
    @CsvSource({"12,12", "-12.5,-12.5", "+.5,0.5", "5.,5", "1.5e3,1500", "1E-2,0.01", "' 7 ',7", "0012,12"})
    void readsNumbers(String text, double expected) {
        assertThat(Decimal.parse(text)).hasValue(expected);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", ".", "-", "NaN", "Infinity", "1e999", "0x10", "1d", "1f", "1,5", "1 000", "12V", "1e", "e5", "--1", "1.2.3", "١٢"})
    void refusesWhatIsNone(String text) {
        assertThat(Decimal.parse(text)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(value = {"1,5;1.5", "-0,25;-0.25", "7;7"}, delimiter = ';')
    void readsDecimalCommasWhereTheyAreUsed(String text, double expected) {
        assertThat(Decimal.parse(text, ',')).hasValue(expected);
    }
}
