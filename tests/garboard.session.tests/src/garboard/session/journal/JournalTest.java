// SPDX-License-Identifier: EPL-2.0
package garboard.session.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.stream.Stream;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import garboard.model.GarboardFactory;
import garboard.model.GarboardPackage.Literals;
import garboard.model.Photograph;
import garboard.model.Records;
import garboard.model.io.RecordFile;
import garboard.session.OpenRecord;
import garboard.session.files.FileStamp;
import garboard.session.files.OpenedRecords;
import garboard.session.journal.Leftover.Against;

/** What is on the disk while a record is edited. A crash is a copy of the folder at that moment: nobody holds its lock. */
class JournalTest {

    @TempDir
    private Path folder;
    private final ByHand clockwork = new ByHand();
    private final List<Exception> troubles = new CopyOnWriteArrayList<>();
    private final List<Journal> begun = new ArrayList<>();
    private final List<Leftover> held = new ArrayList<>();

    private Journal begin() {
        Journal journal = Journal.begin(folder.resolve("journal"), clockwork, OpenedRecords.CLOCK, troubles::add);
        begun.add(journal);
        return journal;
    }

    @AfterEach
    void letGo() {
        held.forEach(Leftover::close);
        begun.forEach(Journal::close);
    }

    /** What the next window would find if this one were killed now. */
    private List<Leftover> afterACrash() throws IOException {
        Path image = Files.createTempDirectory(folder, "image");
        if (Files.exists(folder.resolve("journal"))) {
            try (Stream<Path> all = Files.walk(folder.resolve("journal"))) {
                for (Path one : all.toList()) {
                    Path place = image.resolve(folder.resolve("journal").relativize(one).toString());
                    if (Files.isDirectory(one)) {
                        Files.createDirectories(place);
                    } else {
                        Files.copy(one, place);
                    }
                }
            }
        }
        List<Leftover> found = Leftover.in(image);
        held.addAll(found);
        return found;
    }

    private void pass(Journal journal) {
        clockwork.pass();
        assertThat(journal.flush()).isTrue();
    }

    private Path saved(String vessel) throws Exception {
        RecordFile content = OpenedRecords.example("motor-cruiser");
        content.record().getVessel().setName(vessel);
        Path file = folder.resolve("boat.garboard");
        content.save(file);
        return file;
    }

    private static OpenRecord opened(Path file) throws Exception {
        return OpenedRecords.of(RecordFile.open(file), Optional.of(file));
    }

    @Test
    void touchesNothingBeforeThereIsSomethingToKeep() throws Exception {
        Journal journal = begin();
        journal.follow(OpenedRecords.empty(), Optional::empty);
        pass(journal);

        assertThat(folder.resolve("journal")).doesNotExist();
        assertThat(afterACrash()).isEmpty();
    }

    @Test
    void keepsWhatWasTypedIntoARecordThatWasNeverSaved() throws Exception {
        Journal journal = begin();
        OpenRecord record = OpenedRecords.empty();
        journal.follow(record, Optional::empty);
        record.edits().typing(OpenedRecords.vesselName(record), "Name").enter("Wren");
        pass(journal);

        Leftover left = afterACrash().getFirst();
        assertThat(left.read().record().getVessel().getName()).isEqualTo("Wren");
        assertThat(left.file()).isEmpty();
        assertThat(left.name()).isEqualTo("Wren");
        assertThat(left.when()).isEqualTo(OpenedRecords.CLOCK.instant());
        assertThat(left.compare().against()).isEqualTo(Against.NOTHING);
        assertThat(left.compare().differences()).extracting(one -> one.feature().getName()).containsExactly("name");
    }

    @Test
    void keepsWhatCouldNotBeReadAsItWasTyped() throws Exception {
        Journal journal = begin();
        OpenRecord record = OpenedRecords.example("motor-cruiser", folder.resolve("boat.garboard"));
        journal.follow(record, Optional::empty);
        record.edits().typing(record.field("rawWater.siphonBreak.ventSeat.z").orElseThrow(), "Height").leaveUnread("about a foot");
        pass(journal);

        assertThat(afterACrash().getFirst().read().record().getUnreadEntries())
            .extracting(entry -> entry.getPlace() + "=" + entry.getText()).containsExactly("rawWater.siphonBreak.ventSeat.z=about a foot");
    }

    @Test
    void isAskedForWellWithinATenthOfASecondAndOnceForManyEdits() throws Exception {
        Journal journal = begin();
        OpenRecord record = OpenedRecords.empty();
        journal.follow(record, Optional::empty);
        for (String text : List.of("W", "Wr", "Wre", "Wren")) {
            OpenedRecords.rename(record, text);
        }

        assertThat(clockwork.longest()).isLessThanOrEqualTo(Duration.ofMillis(50));
        assertThat(clockwork.pass()).isEqualTo(1);
        assertThat(journal.flush()).isTrue();
        assertThat(afterACrash().getFirst().read().record().getVessel().getName()).isEqualTo("Wren");
    }

    @Test
    void tellsHowItDiffersFromItsFile() throws Exception {
        Path file = saved("Wren");
        OpenRecord record = opened(file);
        FileStamp stamp = FileStamp.of(file);
        Journal journal = begin();
        journal.follow(record, () -> Optional.of(stamp));
        OpenedRecords.rename(record, "Robin");
        record.edits().clear(record.field("vessel.beam").orElseThrow(), "Beam");
        pass(journal);

        Leftover left = afterACrash().getFirst();
        assertThat(left.file()).contains(file);
        assertThat(left.stamp()).contains(stamp);
        assertThat(left.compare().against()).isEqualTo(Against.ITS_FILE);
        assertThat(left.compare().differences()).extracting(one -> one.feature().getName() + ": " + one.before().orElse("-") + " > " + one.now().orElse("-"))
            .containsExactly("name: Wren > Robin", "beam: " + RecordFile.open(file).record().getVessel().getBeam() + " > -");
    }

    @Test
    void tellsThatAnotherProgramChangedTheFileSince() throws Exception {
        Path file = saved("Wren");
        OpenRecord record = opened(file);
        FileStamp stamp = FileStamp.of(file);
        Journal journal = begin();
        journal.follow(record, () -> Optional.of(stamp));
        OpenedRecords.rename(record, "Robin");
        pass(journal);
        saved("From elsewhere, and longer");

        assertThat(afterACrash().getFirst().compare().against()).isEqualTo(Against.ITS_CHANGED_FILE);
        Files.delete(file);
        assertThat(afterACrash().getFirst().compare().against()).isEqualTo(Against.LOST_FILE);
        Files.writeString(file, "torn");
        assertThat(afterACrash().getFirst().compare().against()).isEqualTo(Against.LOST_FILE);
    }

    @Test
    void goesWhenTheRecordIsSaved() throws Exception {
        OpenRecord record = opened(saved("Wren"));
        Journal journal = begin();
        journal.follow(record, Optional::empty);
        OpenedRecords.rename(record, "Robin");
        pass(journal);
        assertThat(afterACrash()).hasSize(1);

        record.save(record.file().orElseThrow());
        pass(journal);
        assertThat(afterACrash()).isEmpty();

        OpenedRecords.rename(record, "Heron");
        pass(journal);
        assertThat(afterACrash().getFirst().compare().differences()).hasSize(1);
    }

    @Test
    void goesWhenEverythingIsTakenBack() throws Exception {
        OpenRecord record = opened(saved("Wren"));
        Journal journal = begin();
        journal.follow(record, Optional::empty);
        OpenedRecords.rename(record, "Robin");
        pass(journal);
        record.edits().undo();
        pass(journal);
        assertThat(afterACrash()).isEmpty();

        record.edits().redo();
        pass(journal);
        assertThat(afterACrash()).hasSize(1);
    }

    @Test
    void leavesNothingBehindAfterACleanEnd() throws Exception {
        OpenRecord record = OpenedRecords.empty();
        Journal journal = begin();
        journal.follow(record, Optional::empty);
        OpenedRecords.rename(record, "Robin");
        pass(journal);
        OpenedRecords.rename(record, "Heron");
        journal.close();

        try (Stream<Path> left = Files.list(folder.resolve("journal"))) {
            assertThat(left).isEmpty();
        }
    }

    @Test
    void followsTheNextRecordAndForgetsTheOneBefore() throws Exception {
        Journal journal = begin();
        OpenRecord first = OpenedRecords.empty();
        journal.follow(first, Optional::empty);
        OpenedRecords.rename(first, "Wren");
        pass(journal);
        OpenRecord second = OpenedRecords.empty();
        journal.follow(second, Optional::empty);
        OpenedRecords.rename(first, "Nobody follows this any more");
        pass(journal);
        assertThat(afterACrash()).isEmpty();

        OpenedRecords.rename(second, "Heron");
        pass(journal);
        assertThat(afterACrash()).extracting(Leftover::name).containsExactly("Heron");
        journal.rest();
        pass(journal);
        assertThat(afterACrash()).isEmpty();
    }

    @Test
    void keepsWhatWasTakenUpAtOnce() throws Exception {
        Journal journal = begin();
        OpenRecord record = OpenRecord.recovered(OpenedRecords.example("motor-cruiser"), Optional.empty(), OpenedRecords.noChecks(), OpenedRecords.CLOCK);
        journal.follow(record, Optional::empty);

        assertThat(journal.flush()).isTrue();
        assertThat(afterACrash()).hasSize(1);
    }

    @Test
    void keepsPhotographsAndWritesEachOnce() throws Exception {
        Journal journal = begin();
        OpenRecord record = OpenedRecords.empty();
        journal.follow(record, Optional::empty);
        byte[] picture = { 1, 2, 3, 4 };
        Photograph photograph = GarboardFactory.eINSTANCE.createPhotograph();
        photograph.setCaption("Siphon break");
        photograph.setData(picture);
        record.edits().add(record.record(), List.of(Literals.COMMISSIONING_RECORD__PHOTOGRAPHS), photograph, "Photograph");
        pass(journal);
        OpenedRecords.rename(record, "Wren");
        pass(journal);

        assertThat(pictures()).hasSize(1);
        assertThat(afterACrash().getFirst().read().record().getPhotographs().getFirst().getData()).isEqualTo(picture);
        assertThat(Records.firstDifference(record.record(), afterACrash().getFirst().read().record())).isEmpty();
        assertThat(photograph.getData()).isSameAs(picture);
    }

    private List<Path> pictures() throws IOException {
        try (Stream<Path> all = Files.walk(folder.resolve("journal"))) {
            return all.filter(file -> file.getFileName().toString().startsWith("picture-")).toList();
        }
    }

    @Test
    void losesOnlyThePhotographWhoseFileIsMissing() throws Exception {
        Journal journal = begin();
        OpenRecord record = OpenedRecords.empty();
        journal.follow(record, Optional::empty);
        Photograph photograph = GarboardFactory.eINSTANCE.createPhotograph();
        photograph.setData(new byte[] { 1 });
        record.edits().add(record.record(), List.of(Literals.COMMISSIONING_RECORD__PHOTOGRAPHS), photograph, "Photograph");
        pass(journal);
        Files.delete(pictures().getFirst());

        assertThat(afterACrash().getFirst().read().record().getPhotographs()).hasSize(1).allMatch(one -> one.getData() == null);
    }

    @Test
    void tellsOnceThatItCannotWriteAndTriesAgain() throws Exception {
        Path inTheWay = Files.writeString(folder.resolve("journal"), "a file where the folder should be");
        Journal journal = begin();
        OpenRecord record = OpenedRecords.empty();
        journal.follow(record, Optional::empty);
        for (String name : List.of("Wren", "Robin", "Heron")) {
            OpenedRecords.rename(record, name);
            clockwork.pass();
            assertThat(journal.flush()).isFalse();
        }
        assertThat(troubles).hasSize(1).first().isInstanceOf(IOException.class);

        Files.delete(inTheWay);
        OpenedRecords.rename(record, "Swan");
        pass(journal);
        assertThat(afterACrash()).extracting(Leftover::name).containsExactly("Swan");
        assertThat(troubles).hasSize(1);
    }

    @Test
    void tellsAgainWhenItWentWellInBetween() throws Exception {
        Journal journal = begin();
        OpenRecord record = OpenedRecords.empty();
        journal.follow(record, Optional::empty);
        OpenedRecords.rename(record, "W\u0001");
        clockwork.pass();
        assertThat(journal.flush()).isFalse();
        OpenedRecords.rename(record, "Wren");
        pass(journal);
        OpenedRecords.rename(record, "W\u0002");
        clockwork.pass();
        assertThat(journal.flush()).isFalse();

        assertThat(troubles).hasSize(2);
        assertThat(afterACrash().getFirst().read().record().getVessel().getName()).as("the last that could be kept").isEqualTo("Wren");
    }

    @Test
    void twoWindowsDoNotDisturbEachOther() throws Exception {
        Journal one = begin();
        Journal other = begin();
        OpenRecord first = OpenedRecords.empty();
        OpenRecord second = OpenedRecords.empty();
        one.follow(first, Optional::empty);
        other.follow(second, Optional::empty);
        OpenedRecords.rename(first, "Wren");
        OpenedRecords.rename(second, "Robin");
        clockwork.pass();
        assertThat(one.flush() && other.flush()).isTrue();

        assertThat(Leftover.in(folder.resolve("journal"))).as("both windows live").isEmpty();
        one.close();
        assertThat(afterACrash()).extracting(Leftover::name).containsExactly("Robin");
    }
}
