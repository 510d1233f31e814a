// SPDX-License-Identifier: EPL-2.0
package garboard.session.files;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.Reader;
import java.lang.System.Logger.Level;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import java.util.function.Consumer;

import garboard.model.CommissioningRecord;
import garboard.session.Listeners;

/**
 * The records that were open last, the latest first, kept in a properties file of the user's. Losing that file loses nothing but
 * convenience: what cannot be read of it is passed over, and what cannot be written is only logged.
 */
public final class RecentRecords {

    private static final System.Logger LOG = System.getLogger(RecentRecords.class.getName());
    private static final int MOST = 12;
    private static final int LONGEST = 120;
    private static final long LARGEST_FILE = 1 << 20;

    private final Path store;
    private final Listeners<List<RecentRecord>> listeners = new Listeners<>();

    private RecentRecords(Path store) {
        this.store = store;
    }

    /** @param store the file that keeps them; it need not exist */
    public static RecentRecords in(Path store) {
        return new RecentRecords(store);
    }

    /** {@return the records, the latest first} Read anew each time: another window may have opened some. */
    public List<RecentRecord> list() {
        Properties stored = read();
        var records = new ArrayList<RecentRecord>();
        for (int number = 1; number <= MOST; number++) {
            entry(stored, number).ifPresent(records::add);
        }
        records.sort(Comparator.comparing(RecentRecord::when).reversed());
        return List.copyOf(records);
    }

    /** Takes note that a record was opened or saved. */
    public void note(Path file, CommissioningRecord record, Instant now) {
        Path place = file.toAbsolutePath().normalize();
        var records = new ArrayList<>(list());
        records.removeIf(one -> one.file().equals(place));
        records.addFirst(new RecentRecord(place, RecordName.vessel(record).orElse(""), RecordName.set(record).orElse(""), now));
        write(records);
    }

    /** Forgets a record; its file stays. */
    public void remove(Path file) {
        var records = new ArrayList<>(list());
        if (records.removeIf(one -> one.file().equals(file))) {
            write(records);
        }
    }

    /** {@return the subscription of a listener that is told when this window changes the list} */
    public Listeners.Subscription onChange(Consumer<? super List<RecentRecord>> listener) {
        return listeners.add(listener);
    }

    private static Optional<RecentRecord> entry(Properties stored, int number) {
        String file = stored.getProperty(number + ".file", "");
        if (file.isBlank()) {
            return Optional.empty();
        }
        try {
            return Optional.of(new RecentRecord(Path.of(file), text(stored, number + ".vessel"), text(stored, number + ".set"),
                Instant.parse(stored.getProperty(number + ".when", ""))));
        } catch (InvalidPathException | DateTimeException damaged) {
            return Optional.empty();
        }
    }

    private static String text(Properties stored, String key) {
        return shortened(stored.getProperty(key, ""));
    }

    private static String shortened(String text) {
        String line = text.replaceAll("\\s+", " ").strip();
        return line.length() > LONGEST ? line.substring(0, LONGEST) : line;
    }

    private Properties read() {
        var stored = new Properties();
        try {
            if (Files.isRegularFile(store) && Files.size(store) <= LARGEST_FILE) {
                try (Reader in = Files.newBufferedReader(store, StandardCharsets.UTF_8)) {
                    stored.load(in);
                }
            }
        } catch (IOException | IllegalArgumentException damaged) {
            LOG.log(Level.WARNING, "The list of recent records in " + store + " cannot be read", damaged);
        }
        return stored;
    }

    private void write(List<RecentRecord> records) {
        var stored = new Properties();
        int number = 1;
        for (RecentRecord one : records.subList(0, Math.min(MOST, records.size()))) {
            stored.setProperty(number + ".file", one.file().toString());
            stored.setProperty(number + ".vessel", shortened(one.vessel()));
            stored.setProperty(number + ".set", shortened(one.set()));
            stored.setProperty(number + ".when", one.when().toString());
            number++;
        }
        try {
            var bytes = new ByteArrayOutputStream();
            try (var out = new java.io.OutputStreamWriter(bytes, StandardCharsets.UTF_8)) {
                stored.store(out, null);
            }
            WholeFile.write(store, bytes.toByteArray());
        } catch (IOException cannot) {
            LOG.log(Level.WARNING, "The list of recent records cannot be kept in " + store, cannot);
        }
        listeners.tell(list());
    }
}
