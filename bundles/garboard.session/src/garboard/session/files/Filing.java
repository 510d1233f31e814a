// SPDX-License-Identifier: EPL-2.0
package garboard.session.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Supplier;

import garboard.checks.Catalogue;
import garboard.model.io.RecordFile;
import garboard.model.io.RecordReadException;
import garboard.model.io.RecordWriteException;
import garboard.session.OpenRecord;
import garboard.session.files.FilingQuestions.Clash;
import garboard.session.files.FilingQuestions.Leave;
import garboard.session.journal.Journal;
import garboard.session.journal.Leftover;

/** New, open, save, close: one record at a time, and nothing goes before the person was asked. Each tells whether it was done. */
public final class Filing {

    private final Bench bench;
    private final FilingQuestions questions;
    private final RecordReading reading;
    private final RecentRecords recent;
    private final Supplier<Catalogue> catalogue;
    private final Clock clock;
    private Optional<Stamped> stamped = Optional.empty();

    /** What the file of an open record was like when it was read or written last. */
    private record Stamped(OpenRecord record, FileStamp stamp) {
    }

    public Filing(Bench bench, FilingQuestions questions, RecordReading reading, RecentRecords recent, Supplier<Catalogue> catalogue,
            Clock clock) {
        this.bench = bench;
        this.questions = questions;
        this.reading = reading;
        this.recent = recent;
        this.catalogue = catalogue;
        this.clock = clock;
    }

    public RecentRecords recent() {
        return recent;
    }

    /** {@return what the file of the open record was like when it was read or written last} */
    public Optional<FileStamp> stamp() {
        return stamped.filter(one -> bench.open().filter(open -> open == one.record()).isPresent()).map(Stamped::stamp);
    }

    /** Starts an empty record. */
    public boolean create() {
        if (!mayLeave()) {
            return false;
        }
        RecordFile content = RecordFile.create();
        content.record().setCreatedOn(LocalDate.now(clock));
        return shown(OpenRecord.of(content, Optional.empty(), catalogue.get(), clock));
    }

    /** Starts from an example. @param example the bytes of its record, closed here */
    public boolean create(InputStream example, String name) throws IOException, RecordReadException {
        try (example) {
            return mayLeave() && shown(OpenRecord.of(RecordFile.read(example, name), Optional.empty(), catalogue.get(), clock));
        }
    }

    /** Opens the file that the person names. */
    public boolean open() {
        return questions.fileToOpen(folder()).map(this::open).orElse(false);
    }

    /** Opens a file: a record, or a workbook with one in it, which is then a record that is not saved yet. */
    public boolean open(Path file) {
        Path place = file.toAbsolutePath().normalize();
        if (!mayLeave()) {
            return false;
        }
        try {
            RecordReading.Read read = reading.read(place);
            if (!read.ownFile()) {
                shown(OpenRecord.recovered(read.content(), Optional.empty(), catalogue.get(), clock));
            } else {
                OpenRecord record = OpenRecord.of(read.content(), Optional.of(place), catalogue.get(), clock);
                stamped = stamp(place).map(stamp -> new Stamped(record, stamp));
                shown(record);
                recent.note(place, record.record(), clock.instant());
            }
            if (!read.content().notes().isEmpty()) {
                questions.notes(place, read.content().notes());
            }
            return true;
        } catch (UnreadableException why) {
            questions.unreadable(why);
            return false;
        }
    }

    /** Takes up what a crash left. It is in the journal of this window before it leaves that of the other. */
    public boolean takeUp(Leftover leftover, Journal journal) throws RecordReadException {
        RecordFile content = leftover.read();
        if (!mayLeave()) {
            return false;
        }
        OpenRecord record = OpenRecord.recovered(content, leftover.file(), catalogue.get(), clock);
        stamped = leftover.stamp().map(stamp -> new Stamped(record, stamp));
        shown(record);
        if (journal.flush()) {
            leftover.discard();
        }
        return true;
    }

    /** Saves the open record where it belongs; asks where that is, when it has no file yet. */
    public boolean save() {
        return bench.open().map(record -> record.file().map(file -> saveBack(record, file)).orElseGet(() -> saveAs(record))).orElse(false);
    }

    /** Saves the open record to a file that the person names. */
    public boolean saveAs() {
        return bench.open().map(this::saveAs).orElse(false);
    }

    /** Closes the open record. */
    public boolean close() {
        if (!mayLeave()) {
            return false;
        }
        bench.close();
        return true;
    }

    /** {@return whether the open record may go} Asks when something would be lost, and saves it when that is the answer. */
    public boolean mayLeave() {
        return bench.open().filter(OpenRecord::unsaved).map(record -> switch (questions.unsaved(record)) {
            case Leave.SAVE -> save();
            case Leave.DISCARD -> true;
            case Leave.STAY -> false;
        }).orElse(true);
    }

    private boolean shown(OpenRecord record) {
        bench.show(record);
        return true;
    }

    private boolean saveBack(OpenRecord record, Path file) {
        Clash answer = switch (stamp().map(stamp -> stamp.since(file)).orElse(FileStamp.Since.SAME)) {
            case SAME -> Clash.REPLACE;
            case CHANGED -> questions.changedMeanwhile(file);
            case GONE -> questions.goneMeanwhile(file);
        };
        return switch (answer) {
            case REPLACE -> write(record, file);
            case OTHER_NAME -> saveAs(record);
            case STAY -> false;
        };
    }

    private boolean saveAs(OpenRecord record) {
        Optional<Path> chosen = questions.fileToSave(record, folder());
        if (chosen.isEmpty()) {
            return false;
        }
        Path file = withEnding(chosen.get().toAbsolutePath().normalize());
        boolean namedInFull = file.equals(chosen.get().toAbsolutePath().normalize());
        if (!namedInFull && Files.exists(file) && !questions.mayReplace(file)) {
            return saveAs(record);
        }
        return write(record, file);
    }

    private boolean write(OpenRecord record, Path file) {
        try {
            record.save(file);
        } catch (RecordWriteException failed) {
            return questions.unwritable(UnwritableException.of(file, failed)) && saveAs(record);
        }
        stamped = stamp(file).map(stamp -> new Stamped(record, stamp));
        recent.note(file, record.record(), clock.instant());
        return true;
    }

    private static Path withEnding(Path file) {
        String name = String.valueOf(file.getFileName());
        return name.toLowerCase(java.util.Locale.ROOT).endsWith(RecordFile.ENDING) ? file : file.resolveSibling(name + RecordFile.ENDING);
    }

    private static Optional<FileStamp> stamp(Path file) {
        try {
            return Optional.of(FileStamp.of(file));
        } catch (IOException gone) {
            // It was there a moment ago. Without a stamp a later change of the file goes unnoticed, which is no reason to refuse it now.
            return Optional.empty();
        }
    }

    /** {@return the folder in which the person was last} */
    public Optional<Path> folder() {
        return bench.open().flatMap(OpenRecord::file).or(() -> recent.list().stream().filter(RecentRecord::there).findFirst().map(RecentRecord::file))
            .map(Path::getParent);
    }
}
