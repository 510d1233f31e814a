// SPDX-License-Identifier: EPL-2.0
package garboard.trial.steps;

import static garboard.trial.testing.Stores.channel;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import garboard.model.GarboardPackage;
import garboard.model.LoadStep;
import garboard.model.Reading;
import garboard.quantity.Frequency;
import garboard.quantity.Kind;
import garboard.quantity.UnitSystem;
import garboard.trial.log.AcLine;
import garboard.trial.log.Channel;
import garboard.trial.log.Measurand;
import garboard.trial.store.ReadingStore;
import garboard.trial.store.TimeRange;
import garboard.trial.testing.Stores;

/** Means are computed by hand from the readings put in. */
class TrialReadingsTest {

    private static final long S = 1_000_000_000L;
    private static final long START = 1_772_706_615L * S; // 2026-03-05T10:30:15Z
    private static final Channel OIL = channel(Measurand.OIL_PRESSURE, AcLine.NONE, "", 36, 127489);
    private static final Channel COOLANT = channel(Measurand.COOLANT_TEMPERATURE, AcLine.NONE, "", 36, 127489);
    private static final Channel HERTZ = channel(Measurand.AC_FREQUENCY, AcLine.ALL, "generator", 43, 65030);

    @TempDir
    private Path folder;

    private ReadingStore store() throws IOException {
        return Stores.filled(folder, intake -> {
            int oil = intake.channel(OIL);
            int coolant = intake.channel(COOLANT);
            int hertz = intake.channel(HERTZ);
            for (int i = 0; i < 120; i++) {
                intake.value(START + i * S, oil, i % 2 == 0 ? 400_000 : 410_000);
                if (i < 60) {
                    intake.value(START + i * S, coolant, 356.4);
                }
                intake.value(START + i * S, hertz, 50 + (i % 2 == 0 ? 0.01 : -0.01));
            }
        });
    }

    private static Assignment assignment() {
        GarboardPackage model = GarboardPackage.eINSTANCE;
        return Assignment.of(Map.of(model.getReading_OilPressure(), OIL, model.getReading_CoolantTemperature(), COOLANT,
            model.getReading_Frequency(), HERTZ));
    }

    @Test
    void entersMeansInCustomaryUnitsWithNoMoreDecimalsThanTheyBear() throws IOException {
        try (ReadingStore store = store()) {
            List<Reading> readings = new TrialReadings(store, assignment(), UnitSystem.SI).over(new TimeRange(START, START + 120 * S), 2);
            assertThat(readings).hasSize(2);
            Reading first = readings.get(0);
            // 30 times 400 kPa and 30 times 410 kPa: 405 kPa, give or take 0.65 kPa
            assertThat(first.getOilPressure()).hasToString("405 kPa");
            assertThat(first.getCoolantTemperature()).hasToString("83.25 degC");
            assertThat(first.getFrequency().si()).isCloseTo(50.0, within(1e-9));
            assertThat(first.getAt()).isEqualTo(OffsetDateTime.parse("2026-03-05T10:31:15Z"));
            assertThat(first.getInstruments()).isEqualTo("trial.log");
            assertThat(first.getNote()).isEqualTo("Mean over 60 s of the log.");
        }
    }

    @Test
    void leavesAFieldAloneWhoseChannelIsSilent() throws IOException {
        try (ReadingStore store = store()) {
            Reading second = new TrialReadings(store, assignment(), UnitSystem.US).over(new TimeRange(START, START + 120 * S), 2).get(1);
            assertThat(second.eIsSet(GarboardPackage.eINSTANCE.getReading_CoolantTemperature())).isFalse();
            // 405 kPa / 6.894757 kPa per psi, give or take 0.09 psi
            assertThat(second.getOilPressure()).hasToString("58.74 psi");
        }
    }

    @Test
    void makesALoadStep() throws IOException {
        try (ReadingStore store = store()) {
            TrialReadings readings = new TrialReadings(store, assignment(), UnitSystem.SI);
            LoadStep step = readings.step(new StepProposal(START, START + 120 * S, 7_480,
                Optional.of(new TimeRange(START + 20 * S, START + 120 * S)), ""), Optional.of(10_000.0), 3);
            assertThat(step.getLoad()).hasToString("75 %");
            assertThat(step.getDwell()).hasToString("2 min");
            assertThat(step.getReadings()).hasSize(3);
            LoadStep unsteady = readings.step(new StepProposal(START, START + 60 * S, 7_480, Optional.empty(),
                "The load is not steady for 30 s."), Optional.empty(), 3);
            assertThat(unsteady.getReadings()).isEmpty();
            assertThat(unsteady.getRemarks()).isEqualTo("The load is not steady for 30 s.");
            assertThat(unsteady.getLoad()).isNull();
        }
    }

    @Test
    void tellsWhatAChannelDoesInAWindow() throws IOException {
        try (ReadingStore store = store()) {
            WindowStatistics oil = WindowStatistics.of(store, 0, START, START + 4 * S).orElseThrow();
            // 400, 410, 400, 410 kPa: mean 405, deviation sqrt(4 * 25 / 3) = 5.7735
            assertThat(oil.count()).isEqualTo(4);
            assertThat(oil.mean()).isCloseTo(405_000, within(1e-6));
            assertThat(oil.deviation()).isCloseTo(5773.5027, within(1e-3));
            assertThat(oil.lowest()).isEqualTo(400_000);
            assertThat(oil.highest()).isEqualTo(410_000);
            assertThat(WindowStatistics.of(store, 1, START + 60 * S, START + 120 * S)).isEmpty();
        }
    }

    @Test
    void makesATraceForWhatJudgesIt() throws IOException {
        try (ReadingStore store = store()) {
            var trace = StoredTraces.of(store, 2, Kind.of(Frequency.class), START, START + 30 * S).orElseThrow();
            assertThat(trace.size()).isEqualTo(30);
            assertThat(trace.timeS(29)).isEqualTo(29.0);
            assertThat(trace.valueSi(0)).isEqualTo(50.01);
            assertThat(StoredTraces.of(store, 2, Kind.of(Frequency.class), START - 10 * S, START)).isEmpty();
        }
    }

    @Test
    void skipsStepsBackInATrace() throws IOException {
        try (ReadingStore store = Stores.filled(folder, intake -> {
            int hertz = intake.channel(HERTZ);
            for (int second : new int[] {0, 1, 3, 2, 3, 4}) {
                intake.value(START + second * S, hertz, 50 + second);
            }
        })) {
            var trace = StoredTraces.of(store, 0, Kind.of(Frequency.class), START, START + 30 * S).orElseThrow();
            assertThat(trace.samples()).extracting(sample -> sample.at().si()).containsExactly(0.0, 1.0, 3.0, 4.0);
        }
    }
}
