// SPDX-License-Identifier: EPL-2.0
package garboard.trial.testing;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;

import garboard.trial.LogFile;
import garboard.trial.LogImport;
import garboard.trial.log.AcLine;
import garboard.trial.log.Channel;
import garboard.trial.log.LogIntake;
import garboard.trial.log.LogOptions;
import garboard.trial.log.LogProgress;
import garboard.trial.log.LogTally;
import garboard.trial.log.Measurand;
import garboard.trial.store.Provenance;
import garboard.trial.store.ReadingStore;
import garboard.trial.store.ReadingStoreWriter;

/** Stores to read from. */
public final class Stores {

    private Stores() {
    }

    /** {@return a store in a folder, filled by hand} */
    public static ReadingStore filled(Path folder, Consumer<LogIntake> filling) throws IOException {
        Path file = folder.resolve("trial" + ReadingStore.ENDING);
        try (ReadingStoreWriter writer = ReadingStoreWriter.create(file)) {
            LogIntake intake = new LogIntake(writer, new LogTally());
            filling.accept(intake);
            writer.finish(new Provenance("trial.log", "made here", 0, "", false, List.of()), intake.channels());
        }
        return ReadingStore.open(file);
    }

    /** {@return the store of a shared log} */
    public static ReadingStore shared(Path folder, String name) throws IOException {
        LogFile log = LogFile.of(SharedLogs.file(name));
        Path file = folder.resolve("shared" + ReadingStore.ENDING);
        LogImport.of(log, log.reader(LogOptions.NONE)).into(file, LogProgress.NONE);
        return ReadingStore.open(file);
    }

    /** {@return a channel of an NMEA 2000 bus} */
    public static Channel channel(Measurand measurand, AcLine line, String detail, int source, int pgn) {
        return new Channel(measurand, line, "0", detail, new Channel.Origin("can0", Integer.toString(source), Integer.toString(pgn)));
    }
}
