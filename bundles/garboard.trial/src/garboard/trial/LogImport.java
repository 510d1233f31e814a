// SPDX-License-Identifier: EPL-2.0
package garboard.trial;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;

import garboard.trial.log.LogIntake;
import garboard.trial.log.LogProgress;
import garboard.trial.log.LogReader;
import garboard.trial.log.LogTally;
import garboard.trial.store.Provenance;
import garboard.trial.store.ReadingStoreWriter;

/**
 * Brings a log into a store of readings beside the record:
 *
 * <pre>{@code
 * LogFile log = LogFile.of(path);                          // or a LogFormatException that says what is wrong
 * var done = LogImport.of(log, log.reader(options)).into(store, LogProgress.NONE);
 * done.provenance().told();                                // what a person must be told
 * }</pre>
 */
public final class LogImport {

    private final LogFile log;
    private final LogReader reader;

    private LogImport(LogFile log, LogReader reader) {
        this.log = log;
        this.reader = reader;
    }

    /** An import of a log by a reader for it. */
    public static LogImport of(LogFile log, LogReader reader) {
        return new LogImport(log, reader);
    }

    /**
     * What came of an import.
     *
     * @param provenance as it stands in the store
     * @param tally      what was found and what was wrong
     * @param channels   all channels, with how many readings they have
     */
    public record Outcome(Provenance provenance, LogTally tally, List<LogIntake.ChannelCount> channels) {

        public Outcome {
            channels = List.copyOf(channels);
        }
    }

    /**
     * Reads the log into a store, in place of one that is there. When it fails or is stopped, an earlier store stays as it was.
     *
     * @throws IOException when the log cannot be read or the store not be written
     */
    public Outcome into(Path store, LogProgress progress) throws IOException {
        MessageDigest sha256 = sha256();
        LogTally tally = new LogTally();
        try (ReadingStoreWriter writer = ReadingStoreWriter.create(store);
            InputStream in = new DigestInputStream(Files.newInputStream(log.path()), sha256)) {
            LogIntake intake = new LogIntake(writer, tally);
            long[] size = new long[1];
            reader.read(in, intake, bytes -> {
                size[0] = bytes;
                progress.read(bytes);
            });
            Provenance provenance = new Provenance(log.path().getFileName().toString(), log.format().label(), size[0],
                HexFormat.of().formatHex(sha256.digest()), tally.isTimeRelative(), intake.sentences());
            writer.finish(provenance, intake.channels());
            return new Outcome(provenance, tally, intake.channels());
        } catch (UncheckedIOException broken) {
            throw broken.getCause();
        }
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) { // every Java platform has it
            throw new IllegalStateException(impossible);
        }
    }
}
