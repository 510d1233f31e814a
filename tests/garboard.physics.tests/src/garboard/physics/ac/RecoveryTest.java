// SPDX-License-Identifier: EPL-2.0
package garboard.physics.ac;

import static garboard.physics.Printed.assertPrinted;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;

import garboard.physics.OutOfRangeException;
import garboard.physics.statistics.Trace;
import garboard.quantity.Frequency;
import garboard.quantity.TimeSpan;
import garboard.quantity.Voltage;

class RecoveryTest {

    private static final Band<Frequency> STEADY = new Band<>(Frequency.of(59.9), Frequency.of(60.1));
    private static final Band<Frequency> TOLERANCE = new Band<>(Frequency.of(59.4), Frequency.of(60.6));

    private static Trace<Frequency> trace(double... timesAndHertz) {
        return new Trace<>(IntStream.range(0, timesAndHertz.length / 2)
                .mapToObj(i -> new Trace.Sample<>(TimeSpan.of(timesAndHertz[2 * i]), Frequency.of(timesAndHertz[2 * i + 1]))).toList());
    }

    @Test
    void countsFromLeavingToEnteringForGood() {
        // US Army method: leaves at 0.10 s, in at 1.90, out at 2.30, in to stay at 2.80: 2.70 s, not 1.80
        Trace<Frequency> swing = trace(0, 60, 0.10, 59.9, 0.5, 56, 1.90, 59.4, 2.1, 60, 2.30, 60.6, 2.5, 61.2, 2.80, 60.6, 3.5, 60, 10, 60);
        assertPrinted("2.70", Recovery.leaving(STEADY).enteringForGood(TOLERANCE).on(swing).orElseThrow().si());
    }

    @Test
    void interpolatesCrossings() {
        // Straight lines by hand: 60 to 58 Hz within 1 s leaves 59.9 at 0.05 s; 58 to 60 within 1 s enters 59.4 at 1.70 s
        assertPrinted("1.65", Recovery.leaving(STEADY).enteringForGood(TOLERANCE).on(trace(0, 60, 1, 58, 2, 60, 3, 60)).orElseThrow().si());
    }

    @Test
    void tellsWhenItNeverLeavesAndWhenItNeverComesBack() {
        assertThat(Recovery.leaving(STEADY).enteringForGood(TOLERANCE).on(trace(0, 60, 1, 60.05)).orElseThrow().si()).isZero();
        assertThat(Recovery.leaving(STEADY).enteringForGood(TOLERANCE).on(trace(0, 60, 1, 59.5, 2, 59.5)).orElseThrow().si()).isZero();
        assertThat(Recovery.leaving(STEADY).enteringForGood(TOLERANCE).on(trace(0, 60, 1, 58, 2, 59))).isEmpty();
    }

    @Test
    void startsWithTheTraceWhereItIsOutsideFromTheBeginning() {
        assertPrinted("0.50", Recovery.leaving(STEADY).enteringForGood(TOLERANCE).on(trace(0, 58.8, 1, 60, 2, 60)).orElseThrow().si());
    }

    @Test
    void worksOnVoltagesAlike() {
        Trace<Voltage> dip = Trace.every(TimeSpan.of(0.5), List.of(Voltage.of(230), Voltage.of(190), Voltage.of(210), Voltage.of(230),
                Voltage.of(231)));
        Band<Voltage> band = new Band<>(Voltage.of(225), Voltage.of(235));
        // Straight lines by hand: leaves 225 V at 0.0625 s, enters it at 1.375 s
        assertPrinted("1.3125", Recovery.leaving(band).enteringForGood(band).on(dip).orElseThrow().si());
    }

    @Test
    void refusesATraceThatIsNone() {
        assertThatThrownBy(() -> trace(0, 60)).isInstanceOf(OutOfRangeException.class).hasMessageContaining("2 or more");
        assertThatThrownBy(() -> trace(0, 60, 0, 61)).isInstanceOf(OutOfRangeException.class).hasMessageContaining("later");
        assertPrinted("7", trace(1, 60, 8, 60).duration().si());
    }
}
