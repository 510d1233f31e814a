// SPDX-License-Identifier: EPL-2.0
package garboard.session.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import garboard.model.CommissioningRecord;
import garboard.model.GarboardFactory;
import garboard.quantity.Power;

class RecentRecordsTest {

    private static final Instant NOON = Instant.parse("2026-06-01T12:00:00Z");

    @TempDir
    private Path folder;
    private Path store;
    private RecentRecords recent;

    @BeforeEach
    void begin() {
        store = folder.resolve("user").resolve("recent.properties");
        recent = RecentRecords.in(store);
    }

    private static CommissioningRecord record(String vessel) {
        CommissioningRecord record = GarboardFactory.eINSTANCE.createCommissioningRecord();
        record.setVessel(GarboardFactory.eINSTANCE.createVessel());
        record.getVessel().setName(vessel);
        record.setGeneratorSet(GarboardFactory.eINSTANCE.createGeneratorSet());
        record.getGeneratorSet().setType("Mallard 7");
        record.getGeneratorSet().setRatedPower(Power.valueOf("7 kW"));
        return record;
    }

    private List<String> names() {
        return recent.list().stream().map(one -> one.file().getFileName().toString()).toList();
    }

    @Test
    void isEmptyAtFirst() {
        assertThat(recent.list()).isEmpty();
    }

    @Test
    void keepsTheLatestFirstWithVesselSetAndTime() {
        recent.note(folder.resolve("a.garboard"), record("Wren"), NOON);
        recent.note(folder.resolve("b.garboard"), record("Größe ☼"), NOON.plusSeconds(60));

        assertThat(RecentRecords.in(store).list()).containsExactly(
            new RecentRecord(folder.resolve("b.garboard"), "Größe ☼", "Mallard 7 7 kW", NOON.plusSeconds(60)),
            new RecentRecord(folder.resolve("a.garboard"), "Wren", "Mallard 7 7 kW", NOON));
    }

    @Test
    void holdsARecordOnce() {
        recent.note(folder.resolve("a.garboard"), record("Wren"), NOON);
        recent.note(folder.resolve("b.garboard"), record("Wren"), NOON.plusSeconds(1));
        recent.note(folder.resolve("x").resolve("..").resolve("a.garboard"), record("Robin"), NOON.plusSeconds(2));

        assertThat(names()).containsExactly("a.garboard", "b.garboard");
        assertThat(recent.list().getFirst().vessel()).isEqualTo("Robin");
    }

    @Test
    void forgetsTheOldestBeyondTwelve() {
        for (int number = 1; number <= 14; number++) {
            recent.note(folder.resolve(number + ".garboard"), record("Wren"), NOON.plusSeconds(number));
        }
        assertThat(names()).hasSize(12).startsWith("14.garboard").endsWith("3.garboard");
    }

    @Test
    void tellsWhetherAFileIsStillThere() throws Exception {
        Path file = Files.writeString(folder.resolve("a.garboard"), "x");
        recent.note(file, record("Wren"), NOON);
        assertThat(recent.list().getFirst().there()).isTrue();
        Files.delete(file);
        assertThat(recent.list().getFirst().there()).isFalse();
        Files.createDirectory(file);
        assertThat(recent.list().getFirst().there()).isFalse();
    }

    @Test
    void forgetsWhatIsRemovedAndTellsThoseWhoListen() {
        var told = new ArrayList<Integer>();
        recent.note(folder.resolve("a.garboard"), record("Wren"), NOON);
        recent.onChange(list -> told.add(list.size()));
        recent.remove(folder.resolve("other.garboard"));
        recent.remove(folder.resolve("a.garboard"));

        assertThat(told).containsExactly(0);
        assertThat(RecentRecords.in(store).list()).isEmpty();
    }

    @Test
    void keepsWhatAnotherWindowNotedMeanwhile() {
        RecentRecords other = RecentRecords.in(store);
        other.list();
        recent.note(folder.resolve("a.garboard"), record("Wren"), NOON);
        other.note(folder.resolve("b.garboard"), record("Robin"), NOON.plusSeconds(1));

        assertThat(names()).containsExactly("b.garboard", "a.garboard");
    }

    @Test
    void shortensWhatIsTooLongAndKeepsItOnOneLine() {
        recent.note(folder.resolve("a.garboard"), record("Wren\n2.file=/etc/passwd\n" + "x".repeat(5000)), NOON);

        assertThat(recent.list()).hasSize(1);
        assertThat(recent.list().getFirst().vessel()).hasSize(120).startsWith("Wren 2.file=").doesNotContain("\n");
    }

    @ParameterizedTest
    @ValueSource(strings = { "", "1.file=", "1.file=a\\u00zz", "1.file=/a.garboard", "1.file=/a.garboard\n1.when=yesterday", "\u0000\u0001\u0002", "1.file=a\u0000b\n1.when=2026-06-01T12:00:00Z",
        "<xml/>", "garbage without end \\" })
    void passesOverWhatIsDamagedAndGoesOn(String content) throws Exception {
        Files.createDirectories(store.getParent());
        Files.writeString(store, content);

        assertThat(recent.list()).isEmpty();
        recent.note(folder.resolve("a.garboard"), record("Wren"), NOON);
        assertThat(names()).containsExactly("a.garboard");
    }

    @Test
    void passesOverBytesThatAreNoText() throws Exception {
        Files.createDirectories(store.getParent());
        Files.write(store, new byte[] { (byte) 0xC3, (byte) 0x28, (byte) 0xFF });

        assertThat(recent.list()).isEmpty();
    }

    @Test
    void keepsTheGoodEntriesOfADamagedFile() throws Exception {
        recent.note(folder.resolve("a.garboard"), record("Wren"), NOON);
        recent.note(folder.resolve("b.garboard"), record("Robin"), NOON.plusSeconds(1));
        String stored = Files.readString(store, StandardCharsets.UTF_8);
        Files.writeString(store, stored.replace("1.when=2026", "1.when=20x26"));

        assertThat(names()).containsExactly("a.garboard");
    }

    @Test
    void doesNotReadAHugeFile() throws Exception {
        Files.createDirectories(store.getParent());
        Files.writeString(store, "1.file=/a.garboard\n1.when=2026-06-01T12:00:00Z\n" + "#".repeat(2 << 20));

        assertThat(recent.list()).isEmpty();
    }

    @Test
    void doesNotMindThatItCannotBeKept() throws Exception {
        Files.writeString(folder.resolve("user"), "a file where the folder should be");

        assertThatCode(() -> recent.note(folder.resolve("a.garboard"), record("Wren"), NOON)).doesNotThrowAnyException();
        assertThat(recent.list()).isEmpty();
    }
}
