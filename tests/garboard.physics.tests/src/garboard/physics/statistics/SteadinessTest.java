// SPDX-License-Identifier: EPL-2.0
package garboard.physics.statistics;

import static garboard.physics.Printed.assertPrinted;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.DoubleStream;

import org.junit.jupiter.api.Test;

import garboard.physics.OutOfRangeException;
import garboard.quantity.Temperature;
import garboard.quantity.TemperatureDifference;
import garboard.quantity.TimeSpan;
import garboard.quantity.Voltage;

class SteadinessTest {

    private static final TimeSpan TEN_MINUTES = TimeSpan.valueOf("10 min");

    private static Trace<Temperature> everyFiveMinutes(double... celsius) {
        List<Temperature> values = DoubleStream.of(celsius).mapToObj(value -> Temperature.of(value, "degC")).toList();
        return Trace.every(TimeSpan.valueOf("5 min"), values);
    }

    @Test
    void findsACoolantSettled() {
        // Least-squares slope times window, recomputed independently: 81.8, 82.4, 82.6, 82.6 degC change by 0.2 K in the last 10 min
        Trace<Temperature> coolant = everyFiveMinutes(81.8, 82.4, 82.6, 82.6);
        assertPrinted("0.2", Steadiness.changeOverLast(TEN_MINUTES, coolant).si());
        assertThat(Steadiness.changeOverLast(TEN_MINUTES, coolant)).isInstanceOf(TemperatureDifference.class);
        assertThat(Steadiness.within(TemperatureDifference.of(2, "K"), TEN_MINUTES, coolant)).isTrue();
    }

    @Test
    void findsARisingTemperatureUnsettledUpToTheLimit() {
        Trace<Temperature> rising = everyFiveMinutes(70, 74, 75, 76);
        assertThat(Steadiness.within(TemperatureDifference.of(1.9, "K"), TEN_MINUTES, rising)).isFalse();
        assertThat(Steadiness.within(TemperatureDifference.of(2, "K"), TEN_MINUTES, rising)).isTrue();
        assertThat(Steadiness.within(TemperatureDifference.of(1.9, "K"), TEN_MINUTES, everyFiveMinutes(76, 75, 74))).isFalse();
    }

    @Test
    void cannotTellFromTooFewReadings() {
        assertThatThrownBy(() -> Steadiness.changeOverLast(TEN_MINUTES, everyFiveMinutes(80, 80))).isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("window");
        assertThatThrownBy(() -> Steadiness.changeOverLast(TimeSpan.valueOf("6 min"), everyFiveMinutes(80, 80, 80)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("3 or more");
        assertThatThrownBy(() -> Steadiness.within(Temperature.valueOf("2 degC"), TEN_MINUTES, everyFiveMinutes(80, 80, 80)))
                .isInstanceOf(OutOfRangeException.class);
    }

    private static Trace<Voltage> volts(String interval, double... volts) {
        return Trace.every(TimeSpan.valueOf(interval), DoubleStream.of(volts).mapToObj(Voltage::of).toList());
    }

    @Test
    void seesATrendInFourReadings() {
        // UFGS 16237N, 16263A, 16264A: four consecutive readings without continuing trend
        assertThat(Steadiness.withoutTrend(volts("15 min", 230.0, 230.4, 230.2, 230.5))).isTrue();
        assertThat(Steadiness.withoutTrend(volts("15 min", 230.0, 230.2, 230.4, 230.5))).isFalse();
        assertThat(Steadiness.withoutTrend(volts("10 min", 231.0, 230.2, 230.1, 229.9))).isFalse();
        assertThat(Steadiness.withoutTrend(volts("10 min", 228.0, 229, 230.0, 230.0, 230.0))).isTrue();
        assertThatThrownBy(() -> Steadiness.withoutTrend(volts("10 min", 230, 230, 230))).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Steadiness.withoutTrend(volts("20 min", 230, 231, 230, 231))).isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("15 min");
    }
}
