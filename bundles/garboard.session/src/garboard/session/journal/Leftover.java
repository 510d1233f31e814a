// SPDX-License-Identifier: EPL-2.0
package garboard.session.journal;

import java.io.IOException;
import java.lang.System.Logger.Level;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import java.util.stream.Stream;

import garboard.model.io.RecordFile;
import garboard.model.io.RecordReadException;
import garboard.session.files.FileStamp;

/** What a window that ended without closing its record left behind. As long as it is held, no other window offers it. */
public final class Leftover implements AutoCloseable {

    private static final System.Logger LOG = System.getLogger(Leftover.class.getName());

    private final Entry entry;
    private final Properties about;

    private Leftover(Entry entry, Properties about) {
        this.entry = entry;
        this.about = about;
    }

    /** With what a leftover is compared. */
    public enum Against {
        /** The record's file. */
        ITS_FILE,
        /** The record's file, which another program has changed since. */
        ITS_CHANGED_FILE,
        /** An empty record: it was never saved. */
        NOTHING,
        /** An empty record: its file is gone, or cannot be read. */
        LOST_FILE
    }

    /** How a leftover differs from what is saved. */
    public record Comparison(Against against, List<Difference> differences) {
    }

    /** Finds and holds what ended windows left in the folder of the journals, the latest first. What holds nothing is tidied away. */
    public static List<Leftover> in(Path folder) {
        var found = new ArrayList<Leftover>();
        for (Path one : folders(folder)) {
            try {
                Entry.claim(one).flatMap(Leftover::of).ifPresent(found::add);
            } catch (IOException unclear) {
                LOG.log(Level.WARNING, "The journal " + one + " cannot be looked at", unclear);
            }
        }
        found.sort((one, other) -> other.when().compareTo(one.when()));
        return List.copyOf(found);
    }

    private static List<Path> folders(Path folder) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> inside = Files.list(folder)) {
            return inside.filter(Files::isDirectory).sorted().toList();
        } catch (IOException unreadable) {
            LOG.log(Level.WARNING, "The journals in " + folder + " cannot be looked at", unreadable);
            return List.of();
        }
    }

    private static Optional<Leftover> of(Entry entry) {
        try {
            if (Files.exists(entry.record())) {
                return Optional.of(new Leftover(entry, about(entry)));
            }
            entry.delete();
        } catch (IOException untidy) {
            LOG.log(Level.WARNING, "The empty journal " + entry.folder() + " stays", untidy);
        }
        return Optional.empty();
    }

    /** The record is what counts; it is offered also when nothing is known about it. */
    private static Properties about(Entry entry) {
        try {
            return entry.about();
        } catch (IOException unknown) {
            LOG.log(Level.WARNING, "About the record in " + entry.folder() + " nothing is known", unknown);
            return new Properties();
        }
    }

    /** {@return the file where the record belongs; nothing when it was never saved} */
    public Optional<Path> file() {
        String file = about.getProperty("file", "");
        try {
            return file.isEmpty() ? Optional.empty() : Optional.of(Path.of(file));
        } catch (java.nio.file.InvalidPathException elsewhere) {
            return Optional.empty();
        }
    }

    public Optional<FileStamp> stamp() {
        return StampText.from(about);
    }

    /** {@return what the record was called, empty when it had no name} */
    public String name() {
        return about.getProperty("name", "");
    }

    /** {@return when the last edit was kept} */
    public Instant when() {
        try {
            return Instant.parse(about.getProperty("when", ""));
        } catch (DateTimeException unknown) {
            return modified();
        }
    }

    private Instant modified() {
        try {
            return Files.getLastModifiedTime(entry.record()).toInstant();
        } catch (IOException unknown) {
            return Instant.EPOCH;
        }
    }

    /** {@return the record with everything that was typed} */
    public RecordFile read() throws RecordReadException {
        RecordFile record = RecordFile.open(entry.record());
        Pictures.putBack(record.record(), about, entry.folder());
        return record;
    }

    /** {@return how it differs from what is saved} Reads both, so not for the thread that edits. */
    public Comparison compare() throws RecordReadException {
        RecordFile left = read();
        Optional<Path> file = file();
        if (file.isEmpty()) {
            return compared(Against.NOTHING, RecordFile.create(), left);
        }
        try {
            boolean changed = stamp().map(stamp -> stamp.since(file.get()) == FileStamp.Since.CHANGED).orElse(false);
            return compared(changed ? Against.ITS_CHANGED_FILE : Against.ITS_FILE, RecordFile.open(file.get()), left);
        } catch (RecordReadException gone) {
            return compared(Against.LOST_FILE, RecordFile.create(), left);
        }
    }

    private static Comparison compared(Against against, RecordFile saved, RecordFile left) {
        return new Comparison(against, Differences.between(saved.record(), left.record()));
    }

    /** Throws it away. */
    public void discard() {
        try {
            entry.delete();
        } catch (IOException stays) {
            LOG.log(Level.WARNING, "The journal " + entry.folder() + " stays", stays);
        }
    }

    /** Lets go of it, so that the next window offers it. */
    @Override
    public void close() {
        try {
            entry.close();
        } catch (IOException held) {
            LOG.log(Level.WARNING, "The journal " + entry.folder() + " is still held", held);
        }
    }
}
