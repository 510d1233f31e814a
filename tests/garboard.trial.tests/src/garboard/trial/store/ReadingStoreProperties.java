// SPDX-License-Identifier: EPL-2.0
package garboard.trial.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import garboard.trial.log.AcLine;
import garboard.trial.log.Channel;
import garboard.trial.log.LogIntake;
import garboard.trial.log.LogTally;
import garboard.trial.log.Measurand;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** The seeds are fixed so that a build gives the same answer twice. */
class ReadingStoreProperties {

    private static final Channel NUMBER = new Channel(Measurand.NUMBER, AcLine.NONE, "", "", new Channel.Origin("", "", "column"));

    private record Reading(long timeNs, double value) {
    }

    @Provide
    Arbitrary<List<Reading>> readings() {
        Arbitrary<Long> times = Arbitraries.oneOf(Arbitraries.longs(), Arbitraries.longs().between(0, 1_000).map(i -> 1_790_000_000_000_000_000L
            + i * 100_000_000L));
        Arbitrary<Double> values = Arbitraries.oneOf(Arbitraries.doubles(), Arbitraries.integers().between(0, 400).map(i -> i / 10.0),
            Arbitraries.of(0.0, -0.0, Double.MIN_VALUE));
        return Combinators.combine(times, values).as(Reading::new).list().ofMaxSize(6_000);
    }

    /** Whatever the times and values are, each comes back to the last bit, in order. */
    @Property(tries = 60, seed = "7")
    void givesBackWhateverWasPutIn(@ForAll("readings") List<Reading> readings) throws IOException {
        Path file = Files.createTempFile("store", ReadingStore.ENDING);
        try {
            try (ReadingStoreWriter writer = ReadingStoreWriter.create(file)) {
                LogIntake intake = new LogIntake(writer, new LogTally());
                int channel = intake.channel(NUMBER);
                readings.forEach(reading -> intake.value(reading.timeNs(), channel, reading.value()));
                writer.finish(new Provenance("", "", 0, "", false, List.of()), intake.channels());
            }
            List<Reading> back = new ArrayList<>();
            try (ReadingStore store = ReadingStore.open(file)) {
                store.read(0, (time, value) -> back.add(new Reading(time, value)));
            }
            assertThat(back).isEqualTo(readings.stream().filter(reading -> reading.timeNs() < Long.MAX_VALUE).toList());
        } finally {
            Files.delete(file);
        }
    }
}
