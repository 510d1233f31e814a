// SPDX-License-Identifier: EPL-2.0
package garboard.session.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** By the convention of the record: heel to starboard and trim bow up are positive. */
class AngleTextTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"12 | 12", "-12|-12", "\u221212|-12", " 12.5\u00b0 |12.5", "12,5 deg|12.5", "12 port|-12", "12P|-12", "12 Bb|-12",
        "7 stbd|7", "7 Steuerbord|7", "7\u00b0 to starboard|7", "0|0", ".5|0.5"})
    void readsHeel(String text, double degrees) {
        assertThat(AngleText.HEEL.read(text)).hasValue(degrees);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"2|2", "2 up|2", "2 bow down|-2", "2 tief|-2", "3 hoch|3"})
    void readsTrim(String text, double degrees) {
        assertThat(AngleText.TRIM.read(text)).hasValue(degrees);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "abc", "12 mm", "12 12", "-12 port", "12 up", "port", "1e3", "12..5", "--4"})
    void refusesWhatIsNoHeel(String text) {
        assertThat(AngleText.HEEL.read(text)).isEmpty();
    }

    @Test
    void writesWithoutASignAndWithoutNeedlessDecimals() {
        assertThat(AngleText.written(-12)).isEqualTo("12");
        assertThat(AngleText.written(12.46)).isEqualTo("12.5");
        assertThat(AngleText.written(0)).isEqualTo("0");
    }
}
