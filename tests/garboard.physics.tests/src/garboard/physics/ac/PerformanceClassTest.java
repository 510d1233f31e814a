// SPDX-License-Identifier: EPL-2.0
package garboard.physics.ac;

import static garboard.physics.Printed.assertPrinted;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.physics.OutOfRangeException;
import garboard.physics.Status;
import garboard.quantity.Ratio;
import garboard.quantity.TimeSpan;

class PerformanceClassTest {

    private static final SetTraits SET = SetTraits.ordinary();

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # criterion | G1 | G2 | G3
            FREQUENCY_DROOP          | 8 %   | 5 %   | 3 %   | ISO 8528-5 as in a textbook of 2004, Table 1.1
            STEADY_FREQUENCY_BAND    | 2.5 % | 1.5 % | 0.5 % | ISO 8528-5 as in a textbook of 2004, Table 1.1
            TRANSIENT_FREQUENCY_DROP | 15 %  | 10 %  | 7 %   | ISO 8528-5 as in a textbook of 2004, Table 1.1
            TRANSIENT_FREQUENCY_RISE | 18 %  | 12 %  | 10 %  | ISO 8528-5 as in a textbook of 2004, Table 1.1
            STEADY_VOLTAGE_DEVIATION | 5 %   | 2.5 % | 1 %   | ISO 8528-5 as in a textbook of 2004, Table 1.1
            VOLTAGE_UNBALANCE        | 1 %   | 1 %   | 1 %   | ISO 8528-5, quoted by a third party for G2
            TRANSIENT_VOLTAGE_DROP   | 25 %  | 20 %  | 15 %  | ISO 8528-5 as in a textbook of 2004, Table 1.1
            TRANSIENT_VOLTAGE_RISE   | 35 %  | 25 %  | 20 %  | ISO 8528-5 as in a textbook of 2004, Table 1.1
            """)
    void reachesAClassUpToItsLimitAndNotBeyond(ClassCriterion criterion, String g1, String g2, String g3, String source) {
        assertThat(ClassEvaluation.of(SET).with(criterion, Ratio.valueOf(g3)).reached()).contains(PerformanceClass.G3);
        if (!g2.equals(g3)) {
            assertThat(ClassEvaluation.of(SET).with(criterion, Ratio.valueOf(g2)).reached()).contains(PerformanceClass.G2);
            assertThat(ClassEvaluation.of(SET).with(criterion, Ratio.valueOf(g1)).reached()).contains(PerformanceClass.G1);
        }
        assertThat(ClassEvaluation.of(SET).with(criterion, Ratio.of(Ratio.valueOf(g1).si() + 1e-4)).reached()).isEmpty();
        assertThat(ClassEvaluation.of(SET).with(criterion, Ratio.of(-Ratio.valueOf(g3).si() - 1e-4)).reached()).isNotEqualTo(java.util.Optional
                .of(PerformanceClass.G3));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            FREQUENCY_RECOVERY_TIME | 10 s | 5 s | 3 s | ISO 8528-5 as in a textbook of 2004, Table 1.1
            VOLTAGE_RECOVERY_TIME   | 10 s | 6 s | 4 s | ISO 8528-5 as in a textbook of 2004, Table 1.1
            """)
    void limitsTheRecovery(ClassCriterion criterion, String g1, String g2, String g3, String source) {
        assertThat(ClassEvaluation.of(SET).with(criterion, TimeSpan.valueOf(g1)).reached()).contains(PerformanceClass.G1);
        assertThat(ClassEvaluation.of(SET).with(criterion, TimeSpan.valueOf(g2)).reached()).contains(PerformanceClass.G2);
        assertThat(ClassEvaluation.of(SET).with(criterion, TimeSpan.valueOf(g3)).reached()).contains(PerformanceClass.G3);
        assertThat(ClassEvaluation.of(SET).with(criterion, TimeSpan.of(10.01)).reached()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            FREQUENCY_DROOP          | 4.0 %   | G2 | definition and class table, recomputed independently
            FREQUENCY_DROOP          | 3.0 %   | G3 | definition and class table, recomputed independently
            TRANSIENT_FREQUENCY_DROP | -9.0 %  | G2 | definition and class table, recomputed independently
            TRANSIENT_FREQUENCY_DROP | -8.0 %  | G2 | definition and class table, recomputed independently
            TRANSIENT_FREQUENCY_RISE | 7.0 %   | G3 | definition and class table, recomputed independently
            STEADY_FREQUENCY_BAND    | 0.50 %  | G3 | definition and class table, recomputed independently
            STEADY_FREQUENCY_BAND    | 1.40 %  | G2 | definition and class table, recomputed independently
            TRANSIENT_VOLTAGE_DROP   | -19.1 % | G2 | definition and class table, recomputed independently
            TRANSIENT_VOLTAGE_DROP   | -15.2 % | G2 | definition and class table, recomputed independently
            TRANSIENT_VOLTAGE_RISE   | 22.2 %  | G2 | definition and class table, recomputed independently
            """)
    void classesSingleFigures(ClassCriterion criterion, String measured, PerformanceClass reached, String source) {
        assertThat(ClassEvaluation.of(SET).with(criterion, Ratio.valueOf(measured)).reached()).contains(reached);
    }

    @Test
    void namesWhatPreventsTheNextClass() {
        ClassEvaluation set = ClassEvaluation.of(SET).with(ClassCriterion.FREQUENCY_DROOP, Ratio.valueOf("3.0 %"))
                .with(ClassCriterion.TRANSIENT_VOLTAGE_DROP, Ratio.valueOf("-19.1 %"))
                .with(ClassCriterion.FREQUENCY_RECOVERY_TIME, TimeSpan.valueOf("2.7 s"));
        assertThat(set.reached()).contains(PerformanceClass.G2);
        assertThat(set.preventingNext()).singleElement().satisfies(obstacle -> {
            assertThat(obstacle.criterion()).isEqualTo(ClassCriterion.TRANSIENT_VOLTAGE_DROP);
            assertPrinted("-19.1", obstacle.measured().in("%"));
            assertPrinted("15", obstacle.limit().in("%"));
        });
        assertThat(set.notMeasured()).contains(ClassCriterion.STEADY_VOLTAGE_DEVIATION).doesNotContain(ClassCriterion.FREQUENCY_DROOP);
    }

    @Test
    void reachesNothingWithoutAFigureAndNeedsNothingMoreAtTheTop() {
        assertThat(ClassEvaluation.of(SET).reached()).isEmpty();
        assertThat(ClassEvaluation.of(SET).preventingNext()).isEmpty();
        assertThat(ClassEvaluation.of(SET).with(ClassCriterion.FREQUENCY_DROOP, Ratio.valueOf("1 %")).preventingNext()).isEmpty();
        assertThat(ClassEvaluation.of(SET).with(ClassCriterion.FREQUENCY_DROOP, Ratio.valueOf("9 %")).preventingNext()).hasSize(1);
    }

    @Test
    void allowsSparkIgnitionAndSmallSetsMore() {
        SetTraits gasoline = SET.withSparkIgnition();
        // ISO 8528-5 for spark ignition: 25/20/15 %, from memory
        assertThat(ClassEvaluation.of(gasoline).with(ClassCriterion.TRANSIENT_FREQUENCY_DROP, Ratio.valueOf("20 %")).reached())
                .contains(PerformanceClass.G2);
        assertThat(ClassCriterion.TRANSIENT_FREQUENCY_DROP.status(gasoline)).isEqualTo(Status.FROM_MEMORY);
        assertThat(ClassCriterion.TRANSIENT_FREQUENCY_DROP.status(SET)).isEqualTo(Status.RETRIEVED);
        // DGUV Information 203-032 annex 5: 10 % up to 10 kW in G1
        assertThat(ClassEvaluation.of(SET.withUpTo10Kilowatt()).with(ClassCriterion.STEADY_VOLTAGE_DEVIATION, Ratio.valueOf("10 %")).reached())
                .contains(PerformanceClass.G1);
        assertThat(ClassEvaluation.of(SET).with(ClassCriterion.STEADY_VOLTAGE_DEVIATION, Ratio.valueOf("10 %")).reached()).isEmpty();
    }

    @Test
    void leavesModulationOfG1ToAgreement() {
        assertThat(ClassCriterion.VOLTAGE_MODULATION.limit(PerformanceClass.G1, SET)).isEmpty();
        assertPrinted("0.3", ClassCriterion.VOLTAGE_MODULATION.limit(PerformanceClass.G2, SET).orElseThrow().in("%")); // ISO 8528-5, from memory
    }

    @Test
    void knowsBandsThatAreNoCriteria() {
        assertPrinted("3.5", ClassCriterion.frequencyToleranceBand(PerformanceClass.G1).in("%")); // ISO 8528-5, from memory
        assertPrinted("2", ClassCriterion.frequencyToleranceBand(PerformanceClass.G3).in("%")); // ISO 8528-5, from memory
        assertPrinted("5", ClassCriterion.voltageSettingRange(PerformanceClass.G2).in("%")); // ISO 8528-5, quoted by a third party
    }

    @Test
    void keepsTimesAndSharesApart() {
        assertThatThrownBy(() -> ClassEvaluation.of(SET).with(ClassCriterion.FREQUENCY_DROOP, TimeSpan.of(1)))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> ClassEvaluation.of(SET).with(ClassCriterion.VOLTAGE_RECOVERY_TIME, Ratio.of(1)))
                .isInstanceOf(OutOfRangeException.class);
    }
}
