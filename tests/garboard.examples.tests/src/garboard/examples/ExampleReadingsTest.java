// SPDX-License-Identifier: EPL-2.0
package garboard.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.function.ToDoubleFunction;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import garboard.model.GeneratorSet;
import garboard.model.LoadStep;
import garboard.model.PerformanceClass;
import garboard.model.PhaseSystem;
import garboard.model.Reading;
import garboard.model.Trial;

/** The readings of the examples are such as a sound set gives. */
class ExampleReadingsTest {

    static List<Example> examples() {
        return Examples.all();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void goThroughFiveStepsOneAfterTheOther(Example example) throws Exception {
        Trial trial = ExampleRecordsTest.record(example).getTrial();
        assertThat(trial.getLoadSteps()).extracting(step -> step.getLoad().in("%")).containsExactly(0.0, 25.0, 50.0, 75.0, 100.0);
        assertThat(trial.getLoadSteps()).allSatisfy(step -> assertThat(step.getReadings()).hasSizeBetween(3, 5));
        assertThat(all(trial)).extracting(Reading::getAt).isSorted().doesNotHaveDuplicates();
        OffsetDateTime fired = trial.getAttempts().getLast().getAt();
        assertThat(all(trial).getFirst().getAt()).isAfter(fired);
    }

    /** P = U I pf, for three phases the square root of 3 times it; 3 % is what instruments and rounding may take (common practice). */
    @ParameterizedTest
    @MethodSource("examples")
    void powerIsVoltageTimesCurrentTimesPowerFactor(Example example) throws Exception {
        boolean three = ExampleRecordsTest.record(example).getGeneratorSet().getPhases() == PhaseSystem.THREE_PHASE;
        for (Reading reading : all(ExampleRecordsTest.record(example).getTrial())) {
            double watt = reading.getPowerFactor() == null ? 0
                : (three ? Math.sqrt(3) : 1) * reading.getVoltage1().si() * reading.getCurrent1().si() * reading.getPowerFactor().si();
            assertThat(watt).as("%s", reading.getId()).isCloseTo(reading.getPower().si(), Percentage.withPercentage(3));
        }
    }

    @ParameterizedTest
    @MethodSource("examples")
    void loadIsTheShareOfTheRatingThatTheStepNames(Example example) throws Exception {
        double rated = ExampleRecordsTest.record(example).getGeneratorSet().getRatedPower().si();
        for (LoadStep step : ExampleRecordsTest.record(example).getTrial().getLoadSteps()) {
            assertThat(mean(step, reading -> reading.getPower().si()) / rated).isCloseTo(step.getLoad().si(), within(0.02));
        }
    }

    /** Droop over rated frequency: 5 % for class G2, 3 % for G3 (ISO 8528-5 as printed in Uninterruptible Power Supplies, 2004, Table 1.1). */
    @ParameterizedTest
    @MethodSource("examples")
    void frequencyDroopsWithinTheClassOfTheSet(Example example) throws Exception {
        GeneratorSet set = ExampleRecordsTest.record(example).getGeneratorSet();
        List<LoadStep> steps = ExampleRecordsTest.record(example).getTrial().getLoadSteps();
        double[] hertz = steps.stream().mapToDouble(step -> mean(step, reading -> reading.getFrequency().si())).toArray();
        assertThat(hertz).isSortedAccordingTo((a, b) -> Double.compare(b, a));
        double limit = set.getPerformanceClass() == PerformanceClass.G3 ? 0.03 : 0.05;
        assertThat((hertz[0] - hertz[4]) / set.getRatedFrequency().si()).isBetween(0.01, limit);
        assertThat(hertz[4]).isCloseTo(set.getRatedFrequency().si(), Percentage.withPercentage(0.5));
    }

    @ParameterizedTest
    @MethodSource("examples")
    void heatAndBackPressureGrowWithLoad(Example example) throws Exception {
        List<LoadStep> steps = ExampleRecordsTest.record(example).getTrial().getLoadSteps();
        List<ToDoubleFunction<Reading>> growing = List.of(reading -> reading.getBackPressure().si(), reading -> reading.getExhaustDry().si(),
            reading -> reading.getRawWaterOut().si(), reading -> reading.getCoolantTemperature().si(),
            reading -> reading.getCompartmentTemperature().si());
        for (ToDoubleFunction<Reading> what : growing) {
            assertThat(steps.stream().mapToDouble(step -> mean(step, what)).toArray()).isSorted().doesNotHaveDuplicates();
        }
        assertThat(all(ExampleRecordsTest.record(example).getTrial()))
            .allSatisfy(reading -> assertThat(reading.getRawWaterOut()).isGreaterThan(reading.getRawWaterIn()));
    }

    /** Steady: coolant within 2 K, compartment within 1 K over the last ten minutes of the full load (common practice). */
    @ParameterizedTest
    @MethodSource("examples")
    void temperaturesHaveSettledAtTheEnd(Example example) throws Exception {
        List<Reading> full = ExampleRecordsTest.record(example).getTrial().getLoadSteps().getLast().getReadings();
        Reading last = full.getLast();
        Reading before = full.get(full.size() - 2);
        assertThat(before.getAt()).isBeforeOrEqualTo(last.getAt().minusMinutes(10));
        assertThat(last.getCoolantTemperature().si()).isCloseTo(before.getCoolantTemperature().si(), within(2.0));
        assertThat(last.getCompartmentTemperature().si()).isCloseTo(before.getCompartmentTemperature().si(), within(1.0));
    }

    private static List<Reading> all(Trial trial) {
        return trial.getLoadSteps().stream().flatMap(step -> step.getReadings().stream()).toList();
    }

    private static double mean(LoadStep step, ToDoubleFunction<Reading> what) {
        return step.getReadings().stream().mapToDouble(what).average().orElseThrow();
    }
}
