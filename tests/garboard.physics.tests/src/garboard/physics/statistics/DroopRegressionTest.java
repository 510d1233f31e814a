// SPDX-License-Identifier: EPL-2.0
package garboard.physics.statistics;

import static garboard.physics.Printed.assertPrinted;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;

import garboard.physics.OutOfRangeException;
import garboard.quantity.Frequency;
import garboard.quantity.Power;

class DroopRegressionTest {

    private static final DroopRegression.Plate PLATE = new DroopRegression.Plate(Power.valueOf("20 kW"), Frequency.valueOf("60 Hz"));

    private static DroopRegression through(double... hertzFromNoLoadInStepsOf5Kilowatt) {
        return DroopRegression.through(IntStream.range(0, hertzFromNoLoadInStepsOf5Kilowatt.length)
                .mapToObj(i -> new DroopRegression.Step(Power.of(5000.0 * i), Frequency.of(hertzFromNoLoadInStepsOf5Kilowatt[i]))).toList(), PLATE);
    }

    @Test
    void drawsALineThroughTheSteps() {
        // Least squares, recomputed independently: slope -0.0900 Hz/kW, 61.92 Hz, 3.00 +/- 0.07 %, R2 0.9985, residual 0.03 Hz
        DroopRegression line = through(61.9, 61.5, 61.0, 60.6, 60.1);
        assertPrinted("61.92", line.noLoad().si());
        assertPrinted("3.00", line.droop().in("%"));
        assertPrinted("0.07", line.standardError().in("%"));
        assertPrinted("0.9985", line.determination().si());
        assertPrinted("0.03", line.largestResidual().si());
        assertPrinted("3.00", line.droopOfEndPoints().in("%"));
        assertPrinted("-0.0900", -line.droop().si() * 60 / 20);
        assertThat(line.isStraight(Frequency.valueOf("0.3 Hz"))).isTrue();
        assertThat(line.isIsochronous()).isFalse();
    }

    @Test
    void flagsABentLine() {
        assertThat(through(62, 61.9, 61.7, 61, 59).isStraight(Frequency.valueOf("0.3 Hz"))).isFalse();
        assertThat(through(61.9, 61.5, 61.0, 60.6, 60.1).isStraight(Frequency.valueOf("0.05 Hz"))).isFalse();
    }

    @Test
    void asksForAnExplainedShareOf95PerCent() {
        // R2 is the squared correlation of load and frequency, recomputed independently
        DroopRegression above = through(62.0, 61.65, 60.75, 60.4);
        assertPrinted("0.964", above.determination().si());
        assertThat(above.isStraight(Frequency.valueOf("1 Hz"))).isTrue();
        DroopRegression below = through(62.0, 61.7, 60.7, 60.4);
        assertPrinted("0.945", below.determination().si());
        assertThat(below.isStraight(Frequency.valueOf("5 Hz"))).isFalse();
    }

    @Test
    void recognisesAnIsochronousGovernor() {
        assertThat(through(60.01, 59.99, 60.00, 60.01, 59.99).isIsochronous()).isTrue();
    }

    @Test
    void refusesFewerThanFourSteps() {
        assertThatThrownBy(() -> through(61.9, 61.5, 61.0)).isInstanceOf(OutOfRangeException.class).hasMessageContaining("4 or more");
        var repeated = List.of(new DroopRegression.Step(Power.of(0), Frequency.of(61)), new DroopRegression.Step(Power.of(0), Frequency.of(61)),
                new DroopRegression.Step(Power.of(1), Frequency.of(61)), new DroopRegression.Step(Power.of(2), Frequency.of(61)));
        assertThatThrownBy(() -> DroopRegression.through(repeated, PLATE)).isInstanceOf(OutOfRangeException.class);
    }
}
