// SPDX-License-Identifier: EPL-2.0
package garboard.session.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import garboard.model.io.RecordFile;
import garboard.model.io.RecordReadException;
import garboard.session.files.OpenedRecords;

/** What an ended window left, whole or damaged. */
class LeftoverTest {

    @TempDir
    private Path folder;

    private Path entry(String name, String about) throws Exception {
        Path entry = Files.createDirectories(folder.resolve(name));
        Files.createFile(entry.resolve("lock"));
        OpenedRecords.example("motor-cruiser").save(entry.resolve("record.garboard"));
        Files.writeString(entry.resolve("about.properties"), about);
        return entry;
    }

    private List<Leftover> found() {
        return Leftover.in(folder);
    }

    @Test
    void isNothingWhereThereIsNoJournal() {
        assertThat(Leftover.in(folder.resolve("none"))).isEmpty();
    }

    @Test
    void offersTheLatestFirst() throws Exception {
        entry("1", "name=Wren\nwhen=2026-06-01T08:00:00Z\n");
        entry("2", "name=Robin\nwhen=2026-06-02T08:00:00Z\n");
        List<Leftover> found = found();
        assertThat(found).extracting(Leftover::name).containsExactly("Robin", "Wren");
        found.forEach(Leftover::close);
    }

    @Test
    void isOfferedOnceAsLongAsItIsHeldAndAgainAfterwards() throws Exception {
        entry("1", "name=Wren\n");
        Leftover held = found().getFirst();
        assertThat(found()).isEmpty();
        held.close();
        Leftover again = found().getFirst();
        again.discard();
        assertThat(found()).isEmpty();
        assertThat(folder.resolve("1")).doesNotExist();
    }

    @Test
    void isOfferedWithoutKnowingAnythingAboutIt() throws Exception {
        Path entry = entry("1", "");
        Files.delete(entry.resolve("about.properties"));
        entry("2", "when=yesterday\nfile=a\\u0000b\nfile.size=many\npicture.photograph-1=../../etc/passwd\n");
        entry("3", "a\\u00zz");
        List<Leftover> found = found();

        assertThat(found).hasSize(3).allSatisfy(one -> {
            assertThat(one.name()).isEmpty();
            assertThat(one.file()).isEmpty();
            assertThat(one.stamp()).isEmpty();
            assertThat(one.when()).isAfter(Instant.EPOCH);
            assertThat(one.read().record().getVessel()).isNotNull();
        });
        found.forEach(Leftover::close);
    }

    @Test
    void saysThatItCannotBeReadAndStays() throws Exception {
        Path entry = entry("1", "name=Wren\n");
        byte[] bytes = Files.readAllBytes(entry.resolve("record.garboard"));
        Files.write(entry.resolve("record.garboard"), Arrays.copyOf(bytes, bytes.length / 2));
        Leftover left = found().getFirst();

        assertThatThrownBy(left::compare).isInstanceOf(RecordReadException.class).hasMessageContaining("cut off");
        left.close();
        assertThat(entry.resolve("record.garboard")).exists();
    }

    @Test
    void tidiesAwayWhatHoldsNothing() throws Exception {
        Path entry = entry("1", "name=Wren\n");
        Files.delete(entry.resolve("record.garboard"));
        Files.writeString(entry.resolve("picture-1"), "x");

        assertThat(found()).isEmpty();
        assertThat(entry).doesNotExist();
    }

    @Test
    void leavesAloneWhatIsNoJournal() throws Exception {
        Files.writeString(Files.createDirectory(folder.resolve("photos")).resolve("a.txt"), "mine");
        Files.writeString(folder.resolve("note.txt"), "mine");

        assertThat(found()).isEmpty();
        assertThat(folder.resolve("photos").resolve("a.txt")).exists();
    }

    @Test
    void comparesWithTheFileThatItBelongsTo() throws Exception {
        Path file = folder.resolve("boat.garboard");
        RecordFile saved = OpenedRecords.example("motor-cruiser");
        saved.record().getVessel().setName("Before");
        saved.save(file);
        entry("1", "file=" + file + "\n");
        Leftover left = found().getFirst();

        assertThat(left.compare().differences()).hasSize(1);
        assertThat(left.compare().differences().getFirst().before()).contains("Before");
        left.close();
    }
}
