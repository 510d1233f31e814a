// SPDX-License-Identifier: EPL-2.0
package garboard.trial.steps;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import garboard.quantity.Ratio;
import garboard.quantity.TimeSpan;
import garboard.trial.LogFile;
import garboard.trial.LogImport;
import garboard.trial.log.AcLine;
import garboard.trial.log.LogOptions;
import garboard.trial.log.LogProgress;
import garboard.trial.log.Measurand;
import garboard.trial.store.ReadingStore;
import garboard.trial.testing.SharedLogs;
import garboard.trial.testing.Stores;

/** The signals are made here, so that where their steps are is known; the shared log was made by a schedule, which stands below. */
class StepDetectorTest {

    private static final StepDetector DETECTOR = new StepDetector(StepSettings.USUAL);

    @TempDir
    private Path folder;

    /** One reading a second. */
    private static LoadSignal everySecond(double... values) {
        return new LoadSignal(IntStream.range(0, values.length).mapToLong(i -> i * 1_000_000_000L + 500_000_000L).toArray(), values, 1_000_000_000L);
    }

    /** Levels of so many seconds each, with noise. */
    private static double[] levels(double noise, double... levelAndSeconds) {
        Random random = new Random(5);
        List<Double> values = new ArrayList<>();
        for (int i = 0; i < levelAndSeconds.length; i += 2) {
            for (int k = 0; k < levelAndSeconds[i + 1]; k++) {
                values.add(levelAndSeconds[i] + noise * random.nextGaussian());
            }
        }
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static List<Double> seconds(List<StepProposal> steps) {
        return steps.stream().flatMap(step -> List.of(step.fromNs() / 1e9, step.toNs() / 1e9).stream()).toList();
    }

    @Test
    void findsTheStepsOfATrialToTheSecond() {
        List<StepProposal> steps = DETECTOR.detect(everySecond(levels(40, 0, 600, 2000, 900, 4000, 900, 6000, 900, 8000, 1800, 0, 300)));
        assertThat(seconds(steps)).containsExactly(0.0, 600.0, 600.0, 1500.0, 1500.0, 2400.0, 2400.0, 3300.0, 3300.0, 5100.0, 5100.0, 5400.0);
        assertThat(steps).extracting(step -> (double) Math.round(step.loadSi() / 100) * 100)
            .containsExactly(0.0, 2000.0, 4000.0, 6000.0, 8000.0, 0.0);
        assertThat(steps).allMatch(step -> step.steady().isPresent());
    }

    @Test
    void findsTheSameWithoutAnyNoise() {
        assertThat(seconds(DETECTOR.detect(everySecond(levels(0, 0, 100, 2000, 100, 1000, 100)))))
            .containsExactly(0.0, 100.0, 100.0, 200.0, 200.0, 300.0);
    }

    @Test
    void passesOverInrushAndShortInterruptions() {
        double[] load = levels(30, 0, 300, 4000, 600, 6000, 8, 4000, 600, 0, 20, 4000, 300);
        load[300] = 11_000; // inrush as the load comes on
        load[301] = 9_000;
        List<StepProposal> steps = DETECTOR.detect(everySecond(load));
        assertThat(seconds(steps)).containsExactly(0.0, 300.0, 300.0, 1828.0);
        assertThat(steps.get(1).loadSi()).isCloseTo(4000, within(20.0));
    }

    @Test
    void beginsTheSteadyWindowWhenTheLoadHasSettled() {
        double[] load = levels(20, 0, 200, 4000, 400);
        for (int i = 0; i < 60; i++) {
            load[200 + i] += 3000 * Math.exp(-i / 15.0); // within 3 % of the highest, 4000 W at rest and some 7000 W at first, after about 40 s
        }
        StepProposal step = DETECTOR.detect(everySecond(load)).get(1);
        assertThat(step.steady().orElseThrow().firstNs() / 1e9).isBetween(215.0, 245.0);
        assertThat(step.steady().orElseThrow().lastNs() / 1e9).isEqualTo(600.0);
    }

    @Test
    void toleratesASlowDrift() {
        double[] load = levels(20, 0, 300, 8000, 3600);
        for (int i = 0; i < 3600; i++) {
            load[300 + i] -= 150.0 * i / 3600; // less than 2 % as the load bank warms
        }
        assertThat(seconds(DETECTOR.detect(everySecond(load)))).containsExactly(0.0, 300.0, 300.0, 3900.0);
    }

    @Test
    void proposesNoSteadyWindowOnARamp() {
        double[] load = IntStream.range(0, 600).mapToDouble(i -> 10.0 * i).toArray();
        assertThat(DETECTOR.detect(everySecond(load))).allMatch(step -> step.steady().map(window -> window.lastNs() - window.firstNs() < 120e9)
            .orElse(true));
    }

    @Test
    void takesAConstantLoadForOneStepAndNothingForNone() {
        assertThat(DETECTOR.detect(everySecond(levels(15, 3000, 500)))).hasSize(1);
        assertThat(DETECTOR.detect(everySecond(new double[500]))).hasSize(1);
        assertThat(DETECTOR.detect(everySecond())).isEmpty();
        assertThat(DETECTOR.detect(everySecond(4000))).isEmpty();
        assertThat(DETECTOR.detect(everySecond(levels(15, 3000, 40)))).isEmpty();
    }

    @Test
    void followsItsSettings() {
        double[] load = levels(5, 1000, 120, 1040, 120, 1000, 40, 1040, 120);
        assertThat(DETECTOR.detect(everySecond(load))).hasSize(1);
        StepDetector finer = new StepDetector(new StepSettings(Ratio.of(0.02), TimeSpan.of(30), Ratio.of(0.01), TimeSpan.of(20)));
        assertThat(seconds(finer.detect(everySecond(load)))).containsExactly(0.0, 120.0, 120.0, 240.0, 240.0, 280.0, 280.0, 400.0);
        assertThatThrownBy(() -> new StepSettings(Ratio.of(0), TimeSpan.of(30), Ratio.of(0.01), TimeSpan.of(20)))
            .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void bridgesTimeWithoutReadings() {
        double[] load = levels(20, 0, 100, 4000, 200);
        long[] times = IntStream.range(0, load.length).mapToLong(i -> (i + (i > 150 ? 30 : 0)) * 1_000_000_000L + 500_000_000L).toArray();
        List<StepProposal> steps = DETECTOR.detect(new LoadSignal(times, load, 1_000_000_000L));
        assertThat(seconds(steps)).containsExactly(0.0, 100.0, 100.0, 330.0);
    }

    @Test
    void partsStepsAtALongPause() {
        double[] load = levels(20, 4000, 200);
        long[] times = IntStream.range(0, load.length).mapToLong(i -> (i + (i >= 120 ? 7200 : 0)) * 1_000_000_000L + 500_000_000L).toArray();
        assertThat(seconds(DETECTOR.detect(new LoadSignal(times, load, 1_000_000_000L)))).containsExactly(0.0, 120.0, 7320.0, 7400.0);
    }

    @Test
    void isNotLedAstrayByAClockThatWasSet() throws IOException {
        try (ReadingStore store = Stores.filled(folder, intake -> {
            int one = intake.channel(Stores.channel(Measurand.AC_POWER, AcLine.L1, "output", 41, 127504));
            int two = intake.channel(Stores.channel(Measurand.AC_POWER, AcLine.L2, "output", 41, 127504));
            for (int i = 0; i < 3000; i++) {
                long time = i * 500_000_000L + (i < 20 ? 0 : 1_772_706_615_000_000_000L); // ten seconds of 1970, then the clock was set
                intake.value(time, one, i < 1200 ? 1000 : 3000);
                intake.value(time, two, i < 1200 ? 500 : 2000);
            }
        })) {
            LoadSignal load = LoadSignal.of(store, List.of(0, 1));
            assertThat(load.intervalNs()).isEqualTo(1_000_000_000L);
            List<StepProposal> steps = DETECTOR.detect(load);
            assertThat(steps).extracting(StepProposal::loadSi).containsExactly(1500.0, 5000.0);
            assertThat(steps.get(1).durationS()).isCloseTo(900, within(2.0));
        }
    }

    @Test
    void leavesOutIntervalsInWhichALineIsSilent() throws IOException {
        try (ReadingStore store = Stores.filled(folder, intake -> {
            int one = intake.channel(Stores.channel(Measurand.AC_POWER, AcLine.L1, "output", 41, 127504));
            int two = intake.channel(Stores.channel(Measurand.AC_POWER, AcLine.L2, "output", 41, 127504));
            for (int i = 0; i < 100; i++) {
                intake.value(i * 1_000_000_000L, one, 1000);
                if (i < 60) {
                    intake.value(i * 1_000_000_000L, two, 500);
                }
            }
        })) {
            assertThat(LoadSignal.of(store, List.of(0, 1)).size()).isEqualTo(60);
            assertThat(LoadSignal.of(store, List.of(0, 1)).values()).containsOnly(1500);
            assertThat(LoadSignal.of(store, List.of()).size()).isZero();
        }
    }

    @Test
    void staysWithinBoundsForAWeekOfReadings() throws IOException {
        try (ReadingStore store = Stores.filled(folder, intake -> {
            int total = intake.channel(Stores.channel(Measurand.AC_POWER, AcLine.ALL, "generator", 43, 65029));
            for (int i = 0; i < 600_000; i++) {
                intake.value(i * 1_000_000_000L, total, i < 300_000 ? 1000 : 4000);
            }
        })) {
            LoadSignal load = LoadSignal.of(store, List.of(0));
            assertThat(load.size()).isBetween(10_000, 20_000);
            assertThat(DETECTOR.detect(load)).extracting(StepProposal::loadSi).containsExactly(1000.0, 4000.0);
        }
    }

    @Test
    void findsTheScheduleOfTheSharedTrial() throws IOException {
        // The log's schedule, as its values show: nothing for 60 s, then 2, 4, 6 kW for 120 s each, 8 kW for 360 s, 4 kW for 60 s, nothing
        for (String name : List.of("n2k-checkset.log", "n2k-checkset-interleaved.log")) {
            LogFile log = LogFile.of(SharedLogs.file(name));
            Path file = folder.resolve(name + ReadingStore.ENDING);
            LogImport.of(log, log.reader(LogOptions.NONE)).into(file, LogProgress.NONE);
            try (ReadingStore store = ReadingStore.open(file)) {
                int total = store.channels().stream().filter(stored -> stored.channel().measurand() == Measurand.AC_POWER && stored.channel()
                    .line() == AcLine.ALL)
                    .findFirst().orElseThrow().number();
                List<StepProposal> steps = DETECTOR.detect(LoadSignal.of(store, List.of(total)));
                assertThat(steps).extracting(step -> Math.round(step.loadSi() / 1000)).containsExactly(0L, 2L, 4L, 6L, 8L, 4L, 0L);
                long start = 1_790_060_400_000_000_000L;
                DoubleUnaryOperator sinceStart = ns -> (ns - start) / 1e9;
                assertThat(steps.stream().map(step -> sinceStart.applyAsDouble(step.fromNs())).toList())
                    .zipSatisfy(List.of(0.0, 60.0, 180.0, 300.0, 420.0, 780.0, 840.0),
                    (found, expected) -> assertThat(found).isCloseTo(expected, within(30.0)));
                assertThat(steps.get(4).steady()).isPresent();
                assertThat(steps.get(5).remark()).isEqualTo("The load was read only 2 times.");
            }
        }
    }
}
