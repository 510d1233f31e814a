// SPDX-License-Identifier: EPL-2.0
package garboard.trial.steps;

import static garboard.trial.testing.Stores.channel;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import garboard.model.GarboardPackage;
import garboard.trial.log.AcLine;
import garboard.trial.log.Channel;
import garboard.trial.log.Measurand;
import garboard.trial.log.SourcedTable;
import garboard.trial.store.ReadingStore;
import garboard.trial.store.StoredChannel;
import garboard.trial.testing.Stores;

class AssignmentTest {

    private static final GarboardPackage MODEL = GarboardPackage.eINSTANCE;

    @TempDir
    private Path folder;

    private static List<StoredChannel> stored(Channel... channels) {
        return IntStream.range(0, channels.length).mapToObj(i -> new StoredChannel(i, channels[i], 100, 0, false)).toList();
    }

    @Test
    void prefersTheMessageThatResolvesMost() {
        Channel coarse = channel(Measurand.AC_VOLTAGE, AcLine.L1, "generator", 43, 65027);
        Channel tenth = channel(Measurand.AC_VOLTAGE, AcLine.L1, "", 44, 127747);
        Channel fine = channel(Measurand.AC_VOLTAGE, AcLine.L1, "output", 41, 127504);
        Channel hertz = channel(Measurand.AC_FREQUENCY, AcLine.L1, "output", 41, 127504);
        Channel finerHertz = channel(Measurand.AC_FREQUENCY, AcLine.ALL, "generator", 43, 65030);
        AssignmentProposal proposal = AssignmentProposal.of(stored(coarse, tenth, fine, hertz, finerHertz));
        assertThat(proposal.candidates().get(MODEL.getReading_Voltage1())).extracting(StoredChannel::channel).containsExactly(fine, tenth, coarse);
        assertThat(proposal.candidates().get(MODEL.getReading_Frequency())).extracting(StoredChannel::channel).containsExactly(finerHertz, hertz);
        assertThat(proposal.unclear()).isEmpty();
    }

    @Test
    void doesNotTakeShorePowerForTheGenerator() {
        AssignmentProposal proposal = AssignmentProposal.of(stored(channel(Measurand.AC_VOLTAGE, AcLine.L1, "input", 41, 127503),
            channel(Measurand.AC_POWER, AcLine.ALL, "utility", 43, 65016)));
        assertThat(proposal.candidates()).isEmpty();
        assertThat(AssignmentProposal.load(stored(channel(Measurand.AC_POWER, AcLine.ALL, "utility", 43, 65016)))).isEmpty();
    }

    @Test
    void leavesItToAPersonWhichOfTwoEnginesIsMeant() {
        AssignmentProposal proposal = AssignmentProposal.of(stored(channel(Measurand.OIL_PRESSURE, AcLine.NONE, "", 35, 127489),
            channel(Measurand.OIL_PRESSURE, AcLine.NONE, "", 36, 127489)));
        assertThat(proposal.unclear()).containsExactly(MODEL.getReading_OilPressure());
    }

    @Test
    void doesNotMixTheLinesOfTwoSources() {
        Channel single = channel(Measurand.AC_VOLTAGE, AcLine.L1, "output", 41, 127504);
        Channel ofThree = channel(Measurand.AC_VOLTAGE, AcLine.L2, "output", 42, 127504);
        Channel current = channel(Measurand.AC_CURRENT, AcLine.L1, "output", 41, 127504);
        Channel otherCurrent = channel(Measurand.AC_CURRENT, AcLine.L1, "output", 42, 127504);
        AssignmentProposal proposal = AssignmentProposal.of(stored(single, ofThree, otherCurrent, current));
        assertThat(proposal.candidates()).containsKey(MODEL.getReading_Voltage2());
        assertThat(proposal.best().channelKeys()).containsOnly(Map.entry("voltage1", single.key()), Map.entry("current1", current.key()));
    }

    @Test
    void passesOverChannelsThatShowNothing() throws IOException {
        try (ReadingStore store = Stores.filled(folder, intake -> {
            int zero = intake.channel(channel(Measurand.OIL_PRESSURE, AcLine.NONE, "", 35, 127489));
            int real = intake.channel(channel(Measurand.OIL_PRESSURE, AcLine.NONE, "", 36, 127489));
            int unloaded = intake.channel(channel(Measurand.AC_POWER, AcLine.ALL, "generator", 43, 65029));
            for (int i = 0; i < 20; i++) {
                intake.value(i, zero, 0);
                intake.value(i, real, i < 10 ? 0 : 400_000);
                intake.value(i, unloaded, 0);
            }
            assertThat(intake.sentences())
                .containsExactly("All 20 readings of oil pressure, 0 (can0, source 35, 127489) are 0, which most likely stands for none.");
        })) {
            AssignmentProposal proposal = AssignmentProposal.of(store.channels());
            assertThat(proposal.candidates().get(MODEL.getReading_OilPressure())).extracting(stored -> stored.channel().origin().sender())
                .containsExactly("36");
            assertThat(proposal.candidates().get(MODEL.getReading_Power())).hasSize(1);
        }
    }

    @Test
    void sumsTheLinesOfOneSourceForTheLoad() {
        List<StoredChannel> channels = stored(channel(Measurand.AC_POWER, AcLine.L1, "", 44, 127744),
            channel(Measurand.AC_POWER, AcLine.L2, "", 44, 127745),
            channel(Measurand.AC_POWER, AcLine.L3, "", 44, 127746), channel(Measurand.AC_POWER, AcLine.L1, "output", 41, 127504));
        assertThat(AssignmentProposal.load(channels)).extracting(StoredChannel::number).containsExactly(0, 1, 2);
    }

    @Test
    void isKeptInAFileAndFindsItsChannelsAgain() throws IOException {
        Channel oil = channel(Measurand.OIL_PRESSURE, AcLine.NONE, "", 36, 127489);
        Assignment settled = Assignment.of(Map.of(MODEL.getReading_OilPressure(), oil, MODEL.getReading_Voltage1(),
            channel(Measurand.AC_VOLTAGE, AcLine.L1, "", 44, 127747)));
        Path file = folder.resolve("channels.txt");
        settled.write(file);
        Files.writeString(file, Files.readString(file) + "nonsense\nsmoke = x\nnoField = y\n");
        Assignment back = Assignment.read(file);
        assertThat(back).isEqualTo(settled);
        try (ReadingStore store = Stores.filled(folder, intake -> {
            intake.channel(channel(Measurand.OIL_PRESSURE, AcLine.NONE, "", 35, 127489));
            intake.channel(oil);
        })) {
            assertThat(back.in(store)).hasSize(1);
            assertThat(back.in(store).get(MODEL.getReading_OilPressure()).number()).isEqualTo(1);
        }
    }

    @Test
    void refusesWhatIsNoFieldOfAReading() {
        assertThatThrownBy(() -> new Assignment(Map.of("loudness", "x"))).hasMessage("loudness is no field of a reading");
        assertThatThrownBy(() -> new Assignment(Map.of("note", "x"))).hasMessage("note is no field of a reading");
    }

    @Test
    void namesFieldsThatTheModelHas() {
        assertThat(AssignmentProposal.fields()).extracting(field -> field.getName()).contains("voltage1", "powerFactor", "carbonMonoxide")
            .doesNotContain("at", "note", "smoke", "id");
        assertThat(SourcedTable.of(AssignmentProposal.class, "fields.csv").rows()).extracting(row -> row[0])
            .isSubsetOf(AssignmentProposal.fields().stream().map(field -> field.getName()).toList());
    }

    @Test
    void proposesTheChannelsOfTheSharedTrial() throws IOException {
        try (ReadingStore store = Stores.shared(folder, "n2k-checkset.log")) {
            AssignmentProposal proposal = AssignmentProposal.of(store.channels());
            Map<String, String> best = proposal.best().channelKeys();
            assertThat(best.get("oilPressure")).contains("127489");
            assertThat(best.get("frequency")).contains("65030");
            assertThat(best.get("power")).contains("65029");
            assertThat(best.get("exhaustDry")).contains("130316");
            assertThat(best.get("compartmentTemperature")).contains("130312");
        }
    }
}
