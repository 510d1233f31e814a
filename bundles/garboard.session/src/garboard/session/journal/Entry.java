// SPDX-License-Identifier: EPL-2.0
package garboard.session.journal;

import java.io.IOException;
import java.io.Reader;
import java.io.StringWriter;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.Properties;
import java.util.stream.Stream;

import garboard.model.io.RecordFile;
import garboard.model.io.RecordWriteException;
import garboard.session.files.WholeFile;

/**
 * The folder of one window in the journal, held by a lock as long as the window lives. In it: the record, its photographs, and what is to
 * be known about it. Not for several threads at once.
 */
final class Entry implements AutoCloseable {

    static final String RECORD = "record" + RecordFile.ENDING;
    private static final String ABOUT = "about.properties";
    private static final String LOCK = "lock";

    private final Path folder;
    private final FileChannel channel;
    private final Pictures pictures;

    private Entry(Path folder, FileChannel channel) {
        this.folder = folder;
        this.channel = channel;
        this.pictures = new Pictures(folder);
    }

    /** {@return a folder of our own, made and held} */
    static Entry create(Path folder) throws IOException {
        Files.createDirectories(folder);
        return held(folder).orElseThrow(() -> new IOException("The folder " + folder + " is held by another window"));
    }

    /** {@return a folder that is there, now held by us; nothing when a living window has it} */
    static Optional<Entry> claim(Path folder) throws IOException {
        return Files.exists(folder.resolve(LOCK)) ? held(folder) : Optional.empty();
    }

    private static Optional<Entry> held(Path folder) throws IOException {
        FileChannel channel = FileChannel.open(folder.resolve(LOCK), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        FileLock lock = null;
        try {
            lock = channel.tryLock();
            return lock == null ? Optional.empty() : Optional.of(new Entry(folder, channel));
        } catch (OverlappingFileLockException ours) {
            return Optional.empty();
        } finally {
            if (lock == null) {
                channel.close();
            }
        }
    }

    Path folder() {
        return folder;
    }

    Path record() {
        return folder.resolve(RECORD);
    }

    /** Writes a record in place of what is there. Whenever this is cut off, what was there before can still be read, or this can. */
    void write(Snapshot snapshot) throws IOException, RecordWriteException {
        var about = new Properties();
        snapshot.file().ifPresent(file -> about.setProperty("file", file.toString()));
        snapshot.stamp().ifPresent(stamp -> StampText.put(stamp, about));
        about.setProperty("name", snapshot.name());
        about.setProperty("when", snapshot.when().toString());
        pictures.takeOut(snapshot.content().record(), about);
        var text = new StringWriter();
        about.store(text, null);
        WholeFile.write(folder.resolve(ABOUT), text.toString().getBytes(StandardCharsets.UTF_8));
        snapshot.content().save(record());
    }

    Properties about() throws IOException {
        var about = new Properties();
        try (Reader in = Files.newBufferedReader(folder.resolve(ABOUT), StandardCharsets.UTF_8)) {
            about.load(in);
        } catch (IllegalArgumentException damaged) {
            throw new IOException(folder.resolve(ABOUT) + " is damaged", damaged);
        }
        return about;
    }

    /** Throws away what is in it, the record first: without that the rest means nothing. */
    void clear() throws IOException {
        Files.deleteIfExists(record());
        pictures.forget();
        for (Path file : files()) {
            if (!file.endsWith(LOCK)) {
                Files.deleteIfExists(file);
            }
        }
    }

    /** Lets go of the folder; what is in it stays. */
    @Override
    public void close() throws IOException {
        channel.close();
    }

    /** Throws everything away, and the folder. */
    void delete() throws IOException {
        clear();
        close();
        Files.deleteIfExists(folder.resolve(LOCK));
        Files.deleteIfExists(folder);
    }

    private Iterable<Path> files() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(Files::isRegularFile).toList();
        }
    }
}
