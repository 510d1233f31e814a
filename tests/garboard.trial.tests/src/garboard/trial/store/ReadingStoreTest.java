// SPDX-License-Identifier: EPL-2.0
package garboard.trial.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import garboard.trial.log.AcLine;
import garboard.trial.log.Channel;
import garboard.trial.log.LogIntake;
import garboard.trial.log.LogTally;
import garboard.trial.log.Measurand;

class ReadingStoreTest {

    private static final Channel VOLTAGE = new Channel(Measurand.AC_VOLTAGE, AcLine.L1, "0", "output", new Channel.Origin("can0", "41", "127504"));
    private static final Channel LEVEL = new Channel(Measurand.TANK_LEVEL, AcLine.NONE, "1", "fuel", new Channel.Origin("can0", "18", "127505"));
    private static final Provenance FROM = new Provenance("trial.log", "CAN frames (candump)", 4711, "ab".repeat(32), false,
        List.of("1 message lacked a frame and was dropped whole; line 7."));

    @TempDir
    private Path folder;

    /** What a store shows of one channel. */
    private record Shown(List<Long> times, List<Double> values) {

        static Shown of(ReadingStore store, int channel, long from, long to) {
            Shown shown = new Shown(new ArrayList<>(), new ArrayList<>());
            try {
                store.read(channel, from, to, (time, value) -> {
                    shown.times.add(time);
                    shown.values.add(value);
                });
            } catch (IOException broken) {
                throw new UncheckedIOException(broken);
            }
            return shown;
        }
    }

    private interface Filling {
        void fill(LogIntake intake);
    }

    private Path store(Filling filling) throws IOException {
        Path file = folder.resolve("trial" + ReadingStore.ENDING);
        try (ReadingStoreWriter writer = ReadingStoreWriter.create(file)) {
            LogIntake intake = new LogIntake(writer, new LogTally());
            filling.fill(intake);
            writer.finish(FROM, intake.channels());
        }
        return file;
    }

    private static void tenThousand(LogIntake intake) {
        int voltage = intake.channel(VOLTAGE);
        int level = intake.channel(LEVEL);
        for (int i = 0; i < 10_000; i++) {
            intake.value(1_790_000_000_000_000_000L + i * 100_000_000L, voltage, 230 + i % 100 / 100.0);
            if (i % 1000 == 0) {
                intake.value(1_790_000_000_000_000_000L + i * 100_000_000L + 1, level, 0.5);
            }
        }
    }

    @Test
    void givesBackEveryReadingAndWhereItCameFrom() throws IOException {
        Path file = store(ReadingStoreTest::tenThousand);
        try (ReadingStore store = ReadingStore.open(file)) {
            assertThat(store.provenance()).isEqualTo(FROM);
            assertThat(store.channels()).extracting(StoredChannel::channel).containsExactly(VOLTAGE, LEVEL);
            assertThat(store.channels()).extracting(StoredChannel::readings).containsExactly(10_000L, 10L);
            Shown voltage = Shown.of(store, 0, Long.MIN_VALUE, Long.MAX_VALUE);
            assertThat(voltage.times()).hasSize(10_000).startsWith(1_790_000_000_000_000_000L).endsWith(1_790_000_999_900_000_000L);
            assertThat(voltage.values().get(1234)).isEqualTo(230.34);
            assertThat(store.range()).contains(new TimeRange(1_790_000_000_000_000_000L, 1_790_000_999_900_000_000L));
            assertThat(store.withKey(LEVEL.key()).orElseThrow().number()).isEqualTo(1);
            store.verify();
        }
    }

    @Test
    void showsOnlyTheTimeAskedFor() throws IOException {
        try (ReadingStore store = ReadingStore.open(store(ReadingStoreTest::tenThousand))) {
            long from = 1_790_000_500_000_000_000L;
            assertThat(Shown.of(store, 0, from, from + 500_000_000L).times()).containsExactly(from, from + 100_000_000L, from + 200_000_000L, from
                + 300_000_000L, from + 400_000_000L);
        }
    }

    @Test
    void packsTheReadingsOfAnInstrumentToAFewBytes() throws IOException {
        Path file = store(ReadingStoreTest::tenThousand);
        // 16 bytes each before
        assertThat(Files.size(file)).isLessThan(3 * 10_010);
    }

    @Test
    void keepsTimeThatStepsBackInTheOrderOfTheLog() throws IOException {
        Path file = store(intake -> {
            int channel = intake.channel(VOLTAGE);
            intake.value(2_000, channel, 230.1);
            intake.value(1_000, channel, 230.2);
            intake.value(3_000, channel, 230.3);
        });
        try (ReadingStore store = ReadingStore.open(file)) {
            assertThat(Shown.of(store, 0, 0, 10_000).times()).containsExactly(2_000L, 1_000L, 3_000L);
            assertThat(Shown.of(store, 0, 0, 2_000).values()).containsExactly(230.2);
        }
    }

    @Test
    void findsEveryChangeOfAByte() throws IOException {
        Path file = store(intake -> {
            int channel = intake.channel(VOLTAGE);
            Random random = new Random(1);
            for (int i = 0; i < 40; i++) {
                intake.value(i * 1_000_000_000L, channel, 230 + random.nextGaussian());
            }
        });
        byte[] whole = Files.readAllBytes(file);
        for (int i = 0; i < whole.length; i++) {
            byte[] changed = whole.clone();
            changed[i] ^= 0x10;
            Files.write(file, changed);
            assertThatThrownBy(() -> {
                try (ReadingStore store = ReadingStore.open(file)) {
                    store.verify();
                }
            }).as("byte %d of %d", i, whole.length).isInstanceOf(StoreDamagedException.class);
        }
    }

    @Test
    void findsEveryCut() throws IOException {
        Path file = store(ReadingStoreTest::tenThousand);
        byte[] whole = Files.readAllBytes(file);
        for (int length : new int[] {0, 1, 8, 20, 40, whole.length / 2, whole.length - 1}) {
            Files.write(file, Arrays.copyOf(whole, length));
            assertThatThrownBy(() -> ReadingStore.open(file)).as("%d bytes", length).isInstanceOf(StoreDamagedException.class);
        }
    }

    @Test
    void namesTheChannelWhoseReadingsWereChanged() throws IOException {
        Path file = store(ReadingStoreTest::tenThousand);
        byte[] changed = Files.readAllBytes(file);
        changed[100]++;
        Files.write(file, changed);
        try (ReadingStore store = ReadingStore.open(file)) {
            assertThatThrownBy(() -> Shown.of(store, 0, 0, Long.MAX_VALUE))
                .hasRootCauseMessage("readings of AC voltage, line 1, output, 0 (can0, source 41, 127504) were changed");
            assertThat(Shown.of(store, 1, 0, Long.MAX_VALUE).values()).hasSize(10);
        }
    }

    @Test
    void leavesAnEarlierStoreAsItIsUntilANewOneIsWhole() throws IOException {
        Path file = store(ReadingStoreTest::tenThousand);
        byte[] earlier = Files.readAllBytes(file);
        try (ReadingStoreWriter writer = ReadingStoreWriter.create(file)) {
            tenThousand(new LogIntake(writer, new LogTally()));
        }
        assertThat(file).hasBinaryContent(earlier);
        assertThat(folder.toFile().list()).containsExactly(file.getFileName().toString());
    }

    @Test
    void keepsTheExtremesInAPlot() throws IOException {
        Path file = store(intake -> {
            int channel = intake.channel(VOLTAGE);
            for (int i = 0; i < 100_000; i++) {
                intake.value(i * 100_000_000L, channel, i == 54_321 ? 251.5 : i == 77_777 ? 188.25 : 230 + i % 7 / 10.0);
            }
        });
        try (ReadingStore store = ReadingStore.open(file)) {
            Plot plot = store.plot(0, 0, 10_000_000_000_000L, 300);
            assertThat(plot.readings()).isEqualTo(100_000);
            assertThat(plot.size()).isBetween(600, 1200);
            assertThat(plot.values()).contains(251.5, 188.25);
            assertThat(plot.timesNs()).isSorted().contains(5_432_100_000_000L, 7_777_700_000_000L, 0L, 9_999_900_000_000L);
        }
    }

    @Test
    void plotsNothingWhereThereIsNothing() throws IOException {
        try (ReadingStore store = ReadingStore.open(store(intake -> intake.channel(VOLTAGE)))) {
            assertThat(store.plot(0, 0, 1_000, 10).size()).isZero();
            assertThat(store.range()).isEmpty();
        }
    }
}
