// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Expected half widths are worked by hand: unit factor times half width, or reading times per cent. */
class AccuracyTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        gauge pressure | 38 psi ±0.5 psi     | 3447.378646584  | 38 psi ±0.5 psi
        gauge pressure | 38 psi ± 0.5psi     | 3447.378646584  | 38 psi ±0.5 psi
        gauge pressure | 38 psi +/- 2 %      | 5240.015542807  | 38 psi ±2 %
        gauge pressure | 38 psi+-1 kPa       | 1000            | 38 psi ±1 kPa
        gauge pressure | -10 kPa ±2 %        | 200             | -10 kPa ±2 %
        voltage        | 12.74 V ±0.5 %      | 0.0637          | 12.74 V ±0.5 %
        length         | 1 1/2 in ±1/16 in   | 0.0015875       | 1 1/2 in ±1/16 in
        length         | 5 ft 3 in ±2 %      | 0.032004        | 5 ft 3 in ±2 %
        temperature    | 80 degC ±2 %        | 1.6             | 80 degC ±2 %
        temperature    | 176 °F ±9 °F        | 5               | 176 °F ±9 °F
        temperature    | 80 degC ±1 K        | 1               | 80 degC ±1 K
        ratio          | 0.8 ±0.02           | 0.02            | 0.8 ±0.02
        ratio          | 80 % ±2 %           | 0.016           | 80 % ±2 %
        ratio          | 80 % ±0.02 1        | 0.02            | 80 % ±0.02 1
        voltage        | 12 V ±0 V           | 0               | 12 V ±0 V
        """)
    void readsAnAccuracyInAUnitOrInPerCentOfTheReading(String kindName, String text, double halfWidth, String written) {
        Kind<?> kind = Kind.named(kindName).orElseThrow();

        Quantity<?> quantity = kind.parse(text);

        assertThat(quantity.accuracySi().orElseThrow()).isCloseTo(halfWidth, within(1e-9 * Math.max(1, halfWidth)));
        assertThat(quantity).hasToString(written).isEqualTo(kind.parse(written));
    }

    // tan 3 deg - tan 1 deg, halved: (0.0524078 - 0.0174551) / 2, four-figure tables carried to seven
    @Test
    void carriesAnAccuracyInDegreesOverToTheSlope() {
        assertThat(Slope.valueOf("2 deg ±1 deg").accuracySi().orElseThrow()).isCloseTo(0.01747635, within(1e-7));
    }

    @Test
    void hasNoAccuracyWhereNoneIsGiven() {
        assertThat(Length.valueOf("38 mm").accuracy()).isEmpty();
        assertThat(Length.valueOf("38 mm").accuracySi()).isEmpty();
        assertThat(Length.of(0.038).accuracySi()).isEmpty();
    }

    @Test
    void keepsNumberAndUnitOfTheAccuracyAsTyped() {
        Accuracy accuracy = Voltage.valueOf("12.74 V ± 0,50 %").accuracy().orElseThrow();

        assertThat(accuracy).isEqualTo(new Accuracy("0,50", "%")).hasToString("±0,50 %");
        assertThat(accuracy.isOfReading()).isTrue();
        assertThat(accuracy.halfWidth()).isEqualTo(0.5);
    }

    @Test
    void takesAnAccuracyFromAQuantity() {
        assertThat(GaugePressure.valueOf("38 psi").withAccuracy(GaugePressure.valueOf("1/2 psi"))).hasToString("38 psi ±1/2 psi");
        assertThat(GaugePressure.valueOf("38 psi").withAccuracy(PressureDifference.valueOf("0.5 psid"))).hasToString("38 psi ±0.5 psi");
        assertThat(Temperature.valueOf("80 °C").withAccuracy(TemperatureDifference.valueOf("9 °F")).accuracySi()).hasValue(5);
        assertThat(AbsolutePressure.valueOf("100 kPa").withAccuracy(PressureDifference.of(50)).accuracySi()).hasValue(50);
        assertThat(Length.of(1.5).withAccuracy(Length.valueOf("1 ft 1 in"))).hasToString("1.5 m ±13 in");
    }

    @Test
    void takesATemperatureAsHalfWidthWithoutItsOffset() {
        assertThat(Temperature.valueOf("80 degC").withAccuracy(Temperature.valueOf("0.5 degC")).accuracySi()).hasValue(0.5);
    }

    @Test
    void takesPerCentAsHalfWidthOfARatioForPointsNotForAShareOfTheReading() {
        Ratio ratio = Ratio.valueOf("80 %").withAccuracy(Ratio.valueOf("2 %"));

        assertThat(ratio.accuracySi()).hasValue(0.02);
        assertThat(Ratio.valueOf(ratio.toString())).isEqualTo(ratio);
    }

    @Test
    void replacesAnEarlierAccuracy() {
        assertThat(Voltage.valueOf("12.74 V ±0.5 %").withAccuracy(Accuracy.ofReading(0.25))).hasToString("12.74 V ±0.25 %");
        assertThat(Voltage.valueOf("12.74 V").withAccuracy(new Accuracy("20", "mV")).accuracySi()).hasValue(0.02);
    }

    @Test
    void keepsTheReadingAndItsSiNumber() {
        Length length = Length.valueOf("3/4 in").withAccuracy(Length.of(0.0001));

        assertThat(length.si()).isEqualTo(Length.valueOf("3/4 in").si());
        assertThat(length).hasToString("3/4 in ±0.0001 m");
    }

    @ParameterizedTest
    @ValueSource(strings = {"38 psi ±", "38 psi ±x", "38 psi ±1 V", "38 psi ±-1 psi", "38 psi ±1", "38 psi ±1 psi ±2 psi", "±1 psi",
        "38 psi ±1,500 Pa", "38 ±1 psi", "80 psi ±1 % ±3 digits"})
    void refusesWhatIsNoAccuracy(String text) {
        assertThatThrownBy(() -> GaugePressure.valueOf(text)).isInstanceOf(QuantityFormatException.class)
            .hasMessageStartingWith("gauge pressure: \"" + text + "\" - ");
    }

    @Test
    void asksForTheUnitOfAnAccuracy() {
        assertThatThrownBy(() -> GaugePressure.valueOf("38 psi ±1")).isInstanceOf(QuantityFormatException.class).hasMessage(
            "gauge pressure: \"38 psi ±1\" - the accuracy needs a unit or per cent of the reading; write for example ±1 psi or ±1 %");
        assertThatThrownBy(() -> Ratio.valueOf("80 % ±2")).isInstanceOf(QuantityFormatException.class);
    }

    @Test
    void refusesNegativeHalfWidths() {
        assertThatThrownBy(() -> Length.of(1).withAccuracy(Length.of(-0.1))).isInstanceOf(QuantityFormatException.class)
            .hasMessageContaining("half width");
        assertThatThrownBy(() -> new Accuracy("-2", "%")).isInstanceOf(QuantityFormatException.class);
        assertThatThrownBy(() -> new Accuracy("two", "%")).isInstanceOf(QuantityFormatException.class);
        assertThatThrownBy(() -> Length.of(1).withAccuracy(new Accuracy("2", "V"))).isInstanceOf(QuantityFormatException.class);
    }
}
