// SPDX-License-Identifier: EPL-2.0
package garboard.physics.ac;

import static garboard.physics.Printed.assertPrinted;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;

import garboard.physics.OutOfRangeException;
import garboard.physics.statistics.Trace;
import garboard.quantity.Frequency;
import garboard.quantity.Ratio;
import garboard.quantity.TimeSpan;

class HuntingTest {

    private static final Hunting G3 = new Hunting(Ratio.valueOf("0.5 %"), Frequency.of(60));
    private static final Hunting G2 = new Hunting(Ratio.valueOf("1.5 %"), Frequency.of(60));

    /** 30 s at ten samples a second, each in the middle of its tenth. */
    private static Trace<Frequency> trace(DoubleUnaryOperator hertz) {
        return new Trace<>(IntStream.range(0, 300).mapToObj(i -> (i + 0.5) / 10)
                .map(time -> new Trace.Sample<>(TimeSpan.of(time), Frequency.of(hertz.applyAsDouble(time)))).toList());
    }

    private static double sine(double time) {
        return 60 + 0.25 * Math.sin(2 * Math.PI * 0.5 * time);
    }

    @Test
    void findsARegularSwing() {
        // 60 +/- 0.25 Hz at 0.5 Hz, recomputed independently: 29 crossings, 0.48 Hz, 0.82 % peak to peak
        Hunting.Finding finding = G3.judge(trace(HuntingTest::sine));
        assertThat(finding.behaviour()).isEqualTo(Hunting.Behaviour.HUNTING);
        assertThat(finding.crossings()).isEqualTo(29);
        assertPrinted("0.48", finding.rhythm().si());
        assertPrinted("0.82", finding.width().in("%"));
        assertPrinted("0.494", finding.width().si() * 60);
    }

    @Test
    void letsTheSameSwingPassInAWiderBand() {
        assertThat(G2.judge(trace(HuntingTest::sine)).behaviour()).isEqualTo(Hunting.Behaviour.STEADY);
    }

    @Test
    void tellsAMisfireFromHunting() {
        Random uneven = new Random(7);
        double[] steps = IntStream.range(0, 300).mapToDouble(i -> uneven.nextGaussian() * 0.4).toArray();
        assertThat(G3.judge(trace(time -> 60 + steps[(int) (time * 10)])).behaviour()).isEqualTo(Hunting.Behaviour.UNSTEADY);
        assertThat(G3.judge(trace(time -> time > 14 && time < 16 ? 59 : 60)).behaviour()).isEqualTo(Hunting.Behaviour.UNSTEADY);
    }

    @Test
    void tellsDriftFromSteadiness() {
        Hunting.Finding slow = G3.judge(trace(time -> 60 + 0.01 * time));
        assertThat(slow.behaviour()).isEqualTo(Hunting.Behaviour.DRIFT);
        assertPrinted("0.50", slow.trend().in("%")); // by hand: 0.3 Hz in 30 s of 60 Hz
        assertThat(G3.judge(trace(time -> 60 + 0.004 * time)).behaviour()).isEqualTo(Hunting.Behaviour.STEADY);
        assertThat(G3.judge(trace(time -> 60)).behaviour()).isEqualTo(Hunting.Behaviour.STEADY);
    }

    @Test
    void seesHuntingThroughADrift() {
        assertThat(G3.judge(trace(time -> sine(time) + 0.02 * time)).behaviour()).isEqualTo(Hunting.Behaviour.HUNTING);
    }

    @Test
    void refusesANonsensicalBand() {
        assertThatThrownBy(() -> new Hunting(Ratio.of(0), Frequency.of(60))).isInstanceOf(OutOfRangeException.class);
    }
}
