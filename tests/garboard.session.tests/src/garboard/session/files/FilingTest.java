// SPDX-License-Identifier: EPL-2.0
package garboard.session.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import garboard.examples.Examples;
import garboard.model.io.RecordFile;
import garboard.session.OpenRecord;
import garboard.session.files.FilingQuestions.Clash;
import garboard.session.files.FilingQuestions.Leave;
import garboard.session.files.UnreadableException.Fault;

class FilingTest {

    private static final String CANCEL = "cancel";

    @TempDir
    private Path folder;
    private final Scripted person = new Scripted();
    private final Holder bench = new Holder();
    private RecordFile inWorkbook = RecordFile.create();

    private static final class Holder implements Bench {
        private Optional<OpenRecord> open = Optional.empty();

        @Override
        public Optional<OpenRecord> open() {
            return open;
        }

        @Override
        public void show(OpenRecord record) {
            open = Optional.of(record);
        }

        @Override
        public void close() {
            open = Optional.empty();
        }

        private OpenRecord record() {
            return open.orElseThrow();
        }
    }

    private Filing filing() {
        return new Filing(bench, person, new RecordReading(workbook -> inWorkbook), RecentRecords.in(folder.resolve("recent.properties")),
            OpenedRecords::noChecks, OpenedRecords.CLOCK);
    }

    private Path saved(String name, String vessel) throws Exception {
        RecordFile content = OpenedRecords.example("motor-cruiser");
        content.record().getVessel().setName(vessel);
        Path file = folder.resolve(name);
        content.save(file);
        return file;
    }

    private static String vessel(Path file) throws Exception {
        return RecordFile.open(file).record().getVessel().getName();
    }

    @Test
    void startsAnEmptyRecordOfToday() {
        assertThat(filing().create()).isTrue();

        assertThat(bench.record().record().getCreatedOn()).isEqualTo(LocalDate.parse("2026-06-01"));
        assertThat(bench.record().file()).isEmpty();
        assertThat(bench.record().unsaved()).isFalse();
    }

    @Test
    void startsFromAnExampleThatIsNotSavedOverByAccident() throws Exception {
        assertThat(filing().create(Examples.find("sailing-yacht").orElseThrow().open(), "sailing-yacht")).isTrue();

        assertThat(bench.record().file()).isEmpty();
        assertThat(bench.record().record().getVessel().getName()).isNotBlank();
    }

    @Test
    void opensAFileAndRemembersIt() throws Exception {
        Path file = saved("boat.garboard", "Wren");
        Filing filing = filing();

        assertThat(filing.open(file)).isTrue();

        assertThat(bench.record().file()).contains(file);
        assertThat(filing.recent().list()).extracting(RecentRecord::vessel).containsExactly("Wren");
        assertThat(filing.stamp()).isPresent();
    }

    @Test
    void doesNothingWhenThePersonThinksBetterOfOpening() {
        person.answers(CANCEL);
        assertThat(filing().open()).isFalse();
        assertThat(bench.open()).isEmpty();
    }

    @Test
    void takesARecordOutOfAWorkbookAsOneThatIsNotSaved() throws Exception {
        Path workbook = Files.write(folder.resolve("sent.xlsx"), new byte[] { 'P', 'K', 3, 4 });
        inWorkbook = OpenedRecords.example("motor-cruiser");
        Filing filing = filing();

        assertThat(filing.open(workbook)).isTrue();

        assertThat(bench.record().unsaved()).isTrue();
        assertThat(bench.record().file()).isEmpty();
        assertThat(filing.recent().list()).isEmpty();
    }

    @Test
    void knowsAWorkbookByItsContentNotByItsName() throws Exception {
        Path renamed = Files.write(folder.resolve("sent.garboard"), new byte[] { 'P', 'K', 3, 4 });
        assertThat(filing().open(renamed)).isTrue();
        assertThat(bench.record().file()).isEmpty();
    }

    @Test
    void saysWhyAFileCannotBeOpenedAndKeepsWhatIsOpen() throws Exception {
        Filing filing = filing();
        filing.create();
        OpenRecord before = bench.record();
        Path whole = saved("whole.garboard", "Wren");
        byte[] bytes = Files.readAllBytes(whole);

        assertThat(filing.open(folder)).isFalse();
        assertThat(filing.open(folder.resolve("none.garboard"))).isFalse();
        assertThat(filing.open(Files.createFile(folder.resolve("empty.garboard")))).isFalse();
        assertThat(filing.open(Files.writeString(folder.resolve("letter.garboard"), "Dear owner"))).isFalse();
        assertThat(filing.open(Files.write(folder.resolve("cut.garboard"), java.util.Arrays.copyOf(bytes, bytes.length / 2)))).isFalse();
        assertThat(filing.open(Files.writeString(folder.resolve("page.garboard"), "<html><body/></html>"))).isFalse();

        assertThat(person.unreadable).containsExactly(Fault.FOLDER, Fault.GONE, Fault.EMPTY, Fault.FOREIGN, Fault.DAMAGED, Fault.DAMAGED);
        assertThat(bench.record()).isSameAs(before);
        assertThat(filing.recent().list()).isEmpty();
    }

    @Test
    void tellsTheNotesOfAFile() throws Exception {
        Path file = saved("boat.garboard", "Wren");
        Files.writeString(file, Files.readString(file).replaceFirst("formatVersion=\"[0-9.]+\"", "formatVersion=\"99.0\""));
        filing().open(file);
        assertThat(person.notes).hasSize(1).first().asString().contains("99.0");
    }

    @Test
    void savesWhereTheRecordBelongs() throws Exception {
        Path file = saved("boat.garboard", "Wren");
        Filing filing = filing();
        filing.open(file);
        OpenedRecords.rename(bench.record(), "Robin");

        assertThat(filing.save()).isTrue();

        assertThat(vessel(file)).isEqualTo("Robin");
        assertThat(bench.record().unsaved()).isFalse();
        assertThat(filing.save()).isTrue();
        assertThat(person.asked).isEmpty();
    }

    @Test
    void asksWhereARecordWithoutAFileGoesAndAddsTheEnding() throws Exception {
        Filing filing = filing();
        filing.create();
        OpenedRecords.rename(bench.record(), "Robin");
        person.answers(folder.resolve("new"));

        assertThat(filing.save()).isTrue();

        assertThat(vessel(folder.resolve("new.garboard"))).isEqualTo("Robin");
        assertThat(bench.record().file()).contains(folder.resolve("new.garboard"));
        assertThat(filing.recent().list()).hasSize(1);
    }

    @Test
    void asksBeforeReplacingAFileThatWasNotNamedInFull() throws Exception {
        Path there = saved("there.garboard", "Wren");
        Filing filing = filing();
        filing.create();
        OpenedRecords.rename(bench.record(), "Robin");
        person.answers(folder.resolve("there"), false, CANCEL);

        assertThat(filing.save()).isFalse();

        assertThat(person.asked).containsExactly("saveAs", "replace", "saveAs");
        assertThat(vessel(there)).isEqualTo("Wren");
        assertThat(bench.record().unsaved()).isTrue();
    }

    @ParameterizedTest
    @EnumSource(Clash.class)
    void asksWhenAnotherProgramChangedTheFile(Clash answer) throws Exception {
        Path file = saved("boat.garboard", "Wren");
        Filing filing = filing();
        filing.open(file);
        OpenedRecords.rename(bench.record(), "Robin");
        saved("boat.garboard", "From elsewhere");
        person.answers(answer, folder.resolve("mine.garboard"));

        assertThat(filing.save()).isEqualTo(answer != Clash.STAY);

        assertThat(person.asked.getFirst()).isEqualTo("changed");
        assertThat(vessel(file)).isEqualTo(answer == Clash.REPLACE ? "Robin" : "From elsewhere");
        assertThat(Files.exists(folder.resolve("mine.garboard"))).isEqualTo(answer == Clash.OTHER_NAME);
        assertThat(bench.record().unsaved()).isEqualTo(answer == Clash.STAY);
    }

    @Test
    void saysThatTheFileIsGoneBeforeItMakesItAnew() throws Exception {
        Path file = saved("boat.garboard", "Wren");
        Filing filing = filing();
        filing.open(file);
        OpenedRecords.rename(bench.record(), "Robin");
        Files.delete(file);
        person.answers(Clash.REPLACE);

        assertThat(filing.save()).isTrue();
        assertThat(person.asked).containsExactly("gone");
        assertThat(vessel(file)).isEqualTo("Robin");
    }

    @Test
    void offersAnotherNameWhereItCannotWrite() throws Exception {
        Path file = saved("boat.garboard", "Wren");
        Filing filing = filing();
        filing.open(file);
        OpenedRecords.rename(bench.record(), "Robin");
        Path nowhere = folder.resolve("no such folder").resolve("boat.garboard");
        Path folderOfThatName = Files.createDirectory(folder.resolve("folder.garboard"));
        person.answers(nowhere, true, folderOfThatName, true, CANCEL);

        assertThat(filing.saveAs()).isFalse();

        assertThat(person.unwritable).containsExactly(UnwritableException.Fault.NO_FOLDER, UnwritableException.Fault.FOLDER);
        assertThat(bench.record().file()).contains(file);
        assertThat(bench.record().unsaved()).isTrue();
        assertThat(vessel(file)).isEqualTo("Wren");
    }

    @Test
    void saysThatTheRecordHoldsWhatNoFileCan() throws Exception {
        Filing filing = filing();
        filing.create();
        OpenedRecords.rename(bench.record(), "Ro\u0001bin");
        person.answers(folder.resolve("a.garboard"), false);

        assertThat(filing.save()).isFalse();
        assertThat(person.unwritable).containsExactly(UnwritableException.Fault.CONTENT);
        assertThat(folder.resolve("a.garboard")).doesNotExist();
    }

    @Test
    void closesWhatIsSavedWithoutAsking() throws Exception {
        Filing filing = filing();
        filing.open(saved("boat.garboard", "Wren"));
        assertThat(filing.close()).isTrue();
        assertThat(bench.open()).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(Leave.class)
    void asksBeforeWhatIsNotSavedGoes(Leave answer) throws Exception {
        Path file = saved("boat.garboard", "Wren");
        Filing filing = filing();
        filing.open(file);
        OpenedRecords.rename(bench.record(), "Robin");
        person.answers(answer);

        assertThat(filing.close()).isEqualTo(answer != Leave.STAY);

        assertThat(bench.open().isPresent()).isEqualTo(answer == Leave.STAY);
        assertThat(vessel(file)).isEqualTo(answer == Leave.SAVE ? "Robin" : "Wren");
    }

    @Test
    void doesNotCloseWhenSavingFails() {
        Filing filing = filing();
        filing.create();
        OpenedRecords.rename(bench.record(), "Robin");
        person.answers(Leave.SAVE, CANCEL);

        assertThat(filing.close()).isFalse();
        assertThat(bench.open()).isPresent();
    }

    @Test
    void keepsWhatIsOpenWhenAnotherShouldBeAndThePersonStays() throws Exception {
        Path other = saved("other.garboard", "Heron");
        Filing filing = filing();
        filing.create();
        OpenedRecords.rename(bench.record(), "Robin");
        person.answers(Leave.STAY, Leave.STAY, Leave.STAY);

        assertThat(filing.open(other)).isFalse();
        assertThat(filing.create()).isFalse();
        assertThat(filing.mayLeave()).isFalse();
        assertThat(bench.record().record().getVessel().getName()).isEqualTo("Robin");
    }

    @Test
    void doesNotTakeAWayBackForAChange() throws Exception {
        Filing filing = filing();
        filing.open(saved("boat.garboard", "Wren"));
        OpenedRecords.rename(bench.record(), "Robin");
        bench.record().edits().undo();

        assertThat(filing.mayLeave()).isTrue();
    }

    @Test
    void proposesANameThatEverySystemTakes() {
        RecordFile content = RecordFile.create();
        assertThat(RecordName.proposed(content.record(), "New record")).isEqualTo("New record.garboard");
        content.record().setTitle("Refit: 7/2026 <draft>");
        assertThat(RecordName.proposed(content.record(), "New record")).isEqualTo("Refit 7 2026 draft.garboard");
        OpenRecord record = OpenedRecords.of(content, Optional.empty());
        OpenedRecords.rename(record, "  Größe \"..\" ");
        assertThat(RecordName.proposed(content.record(), "New record")).isEqualTo("Größe.garboard");
        OpenedRecords.rename(record, "x".repeat(300));
        assertThat(RecordName.proposed(content.record(), "New record")).hasSize(80 + ".garboard".length());
        OpenedRecords.rename(record, "///");
        assertThat(List.of(RecordName.proposed(content.record(), "New record"))).containsExactly("record.garboard");
    }
}
