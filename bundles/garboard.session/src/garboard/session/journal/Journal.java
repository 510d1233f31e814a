// SPDX-License-Identifier: EPL-2.0
package garboard.session.journal;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.function.Supplier;

import garboard.session.Listeners.Subscription;
import garboard.session.OpenRecord;
import garboard.session.files.FileStamp;
import garboard.session.files.RecordName;

/**
 * Keeps the unsaved changes of the open record on disk, so that a crash costs no more than the last blink. The copy is taken on the thread
 * that edits and written on another; it goes when the record is saved, closed, or back as it was.
 */
public final class Journal implements AutoCloseable {

    /** Several edits in quick succession are one copy; well below the tenth of a second that may be lost. */
    private static final Duration PAUSE = Duration.ofMillis(40);

    private final JournalWriter writer;
    private final Later later;
    private final Clock clock;
    private List<Subscription> following = List.of();
    private Optional<Followed> followed = Optional.empty();
    private boolean due;

    private record Followed(OpenRecord record, Supplier<Optional<FileStamp>> stamp) {
    }

    private Journal(JournalWriter writer, Later later, Clock clock) {
        this.writer = writer;
        this.later = later;
        this.clock = clock;
    }

    /**
     * Begins the journal of this window. The disk is not touched before there is something to keep.
     *
     * @param folder the folder of the journals of all windows of this person
     * @param trouble is told, on a thread of the journal, that it cannot write; once until it can again
     */
    public static Journal begin(Path folder, Later later, Clock clock, Consumer<? super Exception> trouble) {
        String own = ProcessHandle.current().pid() + "-" + UUID.randomUUID().toString().substring(0, 8);
        return new Journal(new JournalWriter(folder.resolve(own), trouble), later, clock);
    }

    /** Follows a record in place of the one before. @param stamp what its file was like when it was read or written last */
    public void follow(OpenRecord record, Supplier<Optional<FileStamp>> stamp) {
        rest();
        followed = Optional.of(new Followed(record, stamp));
        following = List.of(record.edits().onChange(change -> edited()), record.onSaved(saved -> keep()));
        if (record.unsaved()) {
            keep();
        }
    }

    /** Follows nothing: no record is open. */
    public void rest() {
        following.forEach(Subscription::close);
        following = List.of();
        followed = Optional.empty();
        writer.clear();
    }

    private void edited() {
        if (!due) {
            due = true;
            later.after(PAUSE, this::keep);
        }
    }

    private void keep() {
        due = false;
        followed.ifPresent(one -> {
            if (one.record().unsaved()) {
                writer.write(new Snapshot(one.record().content().copy(), one.record().file(), one.stamp().get(),
                    RecordName.of(one.record()).orElse(""), clock.instant()));
            } else {
                writer.clear();
            }
        });
    }

    /** Waits until what was kept is on the disk. @return whether it is */
    public boolean flush() {
        return writer.flush();
    }

    /** Ends it: nothing is left behind. */
    @Override
    public void close() {
        rest();
        writer.close();
    }
}
