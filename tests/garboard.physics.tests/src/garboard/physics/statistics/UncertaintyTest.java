// SPDX-License-Identifier: EPL-2.0
package garboard.physics.statistics;

import static garboard.physics.Printed.assertPrinted;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.physics.OutOfRangeException;
import garboard.quantity.Frequency;
import garboard.quantity.Ratio;
import garboard.quantity.Temperature;
import garboard.quantity.TemperatureDifference;
import garboard.quantity.Voltage;

class UncertaintyTest {

    private static final InstrumentAccuracy<Voltage> VOLTMETER = new InstrumentAccuracy<>(Ratio.valueOf("1 %"), 3, Voltage.valueOf("0.1 V"));
    private static final InstrumentAccuracy<Frequency> FREQUENCY_METER = new InstrumentAccuracy<>(Ratio.valueOf("0.1 %"), 1,
            Frequency.valueOf("0.1 Hz"));

    @Test
    void combinesInstrumentAndScatter() {
        // GUM (from memory), recomputed independently: 236.0 V, 1 % + 3 digits of 0.1, s 0.6 V, n 4
        Voltage halfWidth = VOLTMETER.halfWidth(Voltage.valueOf("236.0 V"));
        assertPrinted("2.66", halfWidth.si());
        Uncertainty<Voltage> uncertainty = Uncertainty.ofHalfWidth(halfWidth).withScatter(Voltage.valueOf("0.6 V"), 4);
        assertPrinted("1.56", uncertainty.standard().si());
        assertPrinted("3.1", uncertainty.expanded().si());
        assertPrinted("1.4", uncertainty.expanded().si() / 230 * 100);
    }

    private static Uncertainty.FrequencyReading reading(String frequency) {
        Frequency value = Frequency.valueOf(frequency);
        return new Uncertainty.FrequencyReading(value, Uncertainty.ofHalfWidth(FREQUENCY_METER.halfWidth(value)));
    }

    @Test
    void carriesFrequenciesThroughToTheDroop() {
        // GUM (from memory), recomputed independently
        assertPrinted("0.19", reading("61.8 Hz").uncertainty().expanded().si());
        assertPrinted("0.44", Uncertainty.ofDroop(reading("61.8 Hz"), reading("60.0 Hz")).expanded().in("%"));
    }

    @Test
    void refusesScatterOfASingleReading() {
        assertThatThrownBy(() -> Uncertainty.ofHalfWidth(Voltage.of(1)).withScatter(Voltage.of(1), 1)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Uncertainty.ofHalfWidth(Voltage.of(-1))).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> new InstrumentAccuracy<>(Ratio.of(0), -1, Voltage.of(0.1))).isInstanceOf(OutOfRangeException.class);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # measured | limit | U | outcome
            236.0 V  | 235.75 V | 3.1 V | CONDITIONAL_FAIL | ILAC-G8:09/2019 rule, worked independently
            232.65 V | 235.75 V | 3.1 V | PASS             | ILAC-G8:09/2019: at most TL - U passes
            232.7 V  | 235.75 V | 3.1 V | CONDITIONAL_PASS | ILAC-G8:09/2019: above TL - U
            235.75 V | 235.75 V | 3.1 V | CONDITIONAL_PASS | ILAC-G8:09/2019: up to TL
            238.85 V | 235.75 V | 3.1 V | CONDITIONAL_FAIL | ILAC-G8:09/2019: up to TL + U
            238.9 V  | 235.75 V | 3.1 V | FAIL             | ILAC-G8:09/2019: above TL + U
            """)
    void decidesInFourOutcomes(String measured, String limit, String guard, Conformity outcome, String source) {
        GuardBandDecision<Voltage> decision = GuardBandDecision.measured(Voltage.valueOf(measured))
                .atMost(Voltage.valueOf(limit), Voltage.valueOf(guard));
        assertThat(decision.outcome()).isEqualTo(outcome);
        assertThat(decision.outcome().keepsSafetyLimit()).isEqualTo(outcome == Conformity.PASS);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            5.2 % | CONDITIONAL_FAIL | ILAC-G8:09/2019 rule, worked independently
            4.4 % | PASS             | ILAC-G8:09/2019 rule, worked independently: 4.4 <= 4.56
            """)
    void decidesOnADroop(String droop, Conformity outcome, String source) {
        assertThat(GuardBandDecision.measured(Ratio.valueOf(droop)).atMost(Ratio.valueOf("5 %"), Ratio.valueOf("0.44 %")).outcome())
                .isEqualTo(outcome);
    }

    @Test
    void mirrorsTheRuleForALeastValue() {
        // ILAC-G8:09/2019 mirrored: 9.9 V against at least 9.6 V
        Voltage floor = Voltage.valueOf("9.6 V");
        assertThat(GuardBandDecision.measured(Voltage.valueOf("9.9 V")).atLeast(floor, Voltage.valueOf("0.2 V")).outcome())
                .isEqualTo(Conformity.PASS);
        assertThat(GuardBandDecision.measured(Voltage.valueOf("9.7 V")).atLeast(floor, Voltage.valueOf("0.2 V")).outcome())
                .isEqualTo(Conformity.CONDITIONAL_PASS);
        assertThat(GuardBandDecision.measured(Voltage.valueOf("9.5 V")).atLeast(floor, Voltage.valueOf("0.2 V")).outcome())
                .isEqualTo(Conformity.CONDITIONAL_FAIL);
        assertThat(GuardBandDecision.measured(Voltage.valueOf("9.3 V")).atLeast(floor, Voltage.valueOf("0.2 V")).outcome())
                .isEqualTo(Conformity.FAIL);
    }

    @Test
    void becomesPlainWithoutUncertainty() {
        assertThat(GuardBandDecision.measured(Voltage.of(10)).atMost(Voltage.of(10), Voltage.of(0)).outcome()).isEqualTo(Conformity.PASS);
        assertThat(GuardBandDecision.measured(Voltage.of(10.001)).atMost(Voltage.of(10), Voltage.of(0)).outcome()).isEqualTo(Conformity.FAIL);
    }

    @Test
    void takesDifferencesOfTemperaturesOnly() {
        Temperature measured = Temperature.valueOf("84 degC");
        Temperature limit = Temperature.valueOf("85 degC");
        var decision = GuardBandDecision.measured(measured).atMost(limit, TemperatureDifference.of(2, "K"));
        assertThat(decision.outcome()).isEqualTo(Conformity.CONDITIONAL_PASS);
        assertPrinted("1.0", decision.margin().si());
        assertThatThrownBy(() -> GuardBandDecision.measured(measured).atMost(limit, Temperature.valueOf("2 degC")))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("TemperatureDifference");
    }
}
