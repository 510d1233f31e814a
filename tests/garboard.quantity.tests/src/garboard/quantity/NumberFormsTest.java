// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NumberFormsTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        12 mm          | 12
        12.5 mm        | 12.5
        12,5 mm        | 12.5
        .5 mm          | 0.5
        ,25 mm         | 0.25
        38.0 mm        | 38
        1e-3 mm        | 0.001
        1E3 mm         | 1000
        1.5e+2 mm      | 150
        -3 mm          | -3
        +3 mm          | 3
        \u22123 mm     | -3
        1e\u22123 mm   | 0.001
        3/4 mm         | 0.75
        1 1/2 mm       | 1.5
        1-1/2 mm       | 1.5
        -1 1/2 mm      | -1.5
        -3/4 mm        | -0.75
        12mm           | 12
        3/4mm          | 0.75
        0,500 mm       | 0.5
        1500,125 mm    | 1500.125
        1,5000 mm      | 1.5
        1500 mm        | 1500
        """)
    void readsEveryFormOfNumber(String text, double millimetres) {
        Length length = Length.valueOf(text);

        assertThat(length.in("mm")).isEqualTo(millimetres);
        assertThat(length.si()).isEqualTo(millimetres / 1000);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
        5 ft 3 in      | 63
        5ft3in         | 63
        5 ft 3 1/2 in  | 63.5
        5 ft 3.25 in   | 63.25
        5' 3"          | 63
        5'3 1/2"       | 63.5
        0 ft 6 in      | 6
        -5 ft 3 in     | -63
        """)
    void readsFeetAndInchesAsALength(String text, double inches) {
        Length length = Length.valueOf(text);

        assertThat(length.in("in")).isEqualTo(inches);
        assertThat(length.si()).isEqualTo(inches * 127 / 5000);
        assertThat(Length.valueOf(length.toString())).isEqualTo(length);
    }

    @ParameterizedTest
    @ValueSource(strings = {"5 ft 12 in", "5 ft 1/0 in", "5 ft 1,500 in", "5 ft 3e9 in"})
    void refusesInchesOfAFootAndMore(String text) {
        assertThatThrownBy(() -> Length.valueOf(text)).isInstanceOf(QuantityFormatException.class)
            .hasMessage("length: \"" + text + "\" - the inches after feet are a number below 12; write for example 5 ft 3 in");
    }

    @Test
    void readsFeetAndInchesForLengthsOnly() {
        assertThatThrownBy(() -> Area.valueOf("5 ft 3 in")).isInstanceOf(QuantityFormatException.class);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        1,500 mm     | 1,500   | 1500   | 1.500
        -12,750 mm   | -12,750 | 12750  | 12.750
        999,999mm    | 999,999 | 999999 | 999.999
        """)
    void refusesACommaWithThreeDigitsBehindItAndSaysHowToWriteIt(String text, String found, String whole, String decimal) {
        assertThatThrownBy(() -> Length.valueOf(text)).isInstanceOf(QuantityFormatException.class)
            .hasMessage("length: \"" + text + "\" - the comma in " + found + " may be read in two ways; write " + whole + " or " + decimal);
    }

    @ParameterizedTest
    @ValueSource(strings = {"mm", "NaN mm", "Infinity mm", "-Infinity mm", "1e999 mm", "1/0 mm", "1.5.2 mm", "1,234.5 mm", "1.234,5 mm",
        "1,234,567 mm", "3/4/5 mm", "1.5/2 mm", "- 3 mm", "--3 mm", "5. mm", "1'500 mm", "1e mm", "0x10 mm", "½ in", "± 3 mm"})
    void refusesWhatIsNoNumber(String text) {
        assertThatThrownBy(() -> Length.valueOf(text)).isInstanceOf(QuantityFormatException.class)
            .hasMessageStartingWith("length: \"" + text + "\" - ");
    }

    @Test
    void saysWhichNumbersCanBeReadWhenThereIsNone() {
        assertThatThrownBy(() -> Voltage.valueOf("about 12 V")).isInstanceOf(QuantityFormatException.class).hasMessage(
            "voltage: \"about 12 V\" - it does not begin with a number that can be read; write for example 12, 12.5, 3/4, 1 1/2 or 1e-3, "
                + "without thousands separators");
    }

    @Test
    void saysThatThousandsHaveNoGap() {
        assertThatThrownBy(() -> Length.valueOf("1 500 mm")).isInstanceOf(QuantityFormatException.class)
            .hasMessage("length: \"1 500 mm\" - there is a second number, 500 mm; write thousands without a gap");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "\u00a0", "\t"})
    void saysWhatToWriteWhenNothingIsWritten(String text) {
        assertThatThrownBy(() -> Length.valueOf(text)).isInstanceOf(QuantityFormatException.class)
            .hasMessage("length: \"" + text + "\" - nothing is written; give a number and a unit, for example mm or in");
    }

    @Test
    void refusesNumbersThatNoUnitCanHold() {
        assertThatThrownBy(() -> Length.valueOf("1e308 km")).isInstanceOf(QuantityFormatException.class)
            .hasMessageStartingWith("length: \"1e308 km\" - ");
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void refusesNumbersThatAreNotFinite(double number) {
        assertThatThrownBy(() -> Length.of(number)).isInstanceOf(IllegalArgumentException.class).hasMessageContaining("Length");
        assertThatThrownBy(() -> Length.of(number, "mm")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Temperature.of(number)).isInstanceOf(IllegalArgumentException.class).hasMessageContaining("" + number);
        assertThatThrownBy(() -> Slope.of(number, "deg")).isInstanceOf(IllegalArgumentException.class);
    }
}
