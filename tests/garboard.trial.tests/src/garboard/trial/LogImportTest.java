// SPDX-License-Identifier: EPL-2.0
package garboard.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.CancellationException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import garboard.trial.log.LogOptions;
import garboard.trial.log.LogProgress;
import garboard.trial.log.Mishap;
import garboard.trial.store.ReadingStore;
import garboard.trial.testing.SharedLogs;

class LogImportTest {

    @TempDir
    private Path folder;

    private Path log(String... lines) throws IOException {
        return Files.writeString(folder.resolve("trial.log"), String.join("\n", lines));
    }

    @Test
    void bringsALogIntoAStore() throws IOException {
        LogFile log = LogFile.of(log("(1772706615.250000) can0 09F20024#017217B0047FFFFF", "(1772706615.350000) can0 09F20024#017217B0047FFFFF",
            "(1772706615.300000) can0 7DF#00"));
        Path store = folder.resolve("trial.readings");
        LogImport.Outcome outcome = LogImport.of(log, log.reader(LogOptions.NONE)).into(store, LogProgress.NONE);
        assertThat(outcome.tally().readings()).isEqualTo(4);
        assertThat(outcome.tally().of(Mishap.FOREIGN_FRAME)).isEqualTo(1);
        try (ReadingStore open = ReadingStore.open(store)) {
            assertThat(open.provenance()).isEqualTo(outcome.provenance());
            assertThat(open.provenance().file()).isEqualTo("trial.log");
            assertThat(open.provenance().format()).isEqualTo("CAN frames (candump)");
            assertThat(open.provenance().bytes()).isEqualTo(Files.size(log.path()));
            assertThat(open.provenance().told())
                .containsExactly("1 frame was of another kind (error, 11-bit, remote request, CAN FD) and was left out; line 3.");
            assertThat(open.channels()).hasSize(2);
        }
    }

    @Test
    void keepsTheChecksumOfTheLog() throws IOException {
        // printf '$ERRPM,E,1,1798.0,,A*58' | sha256sum
        LogFile log = LogFile.of(log("$ERRPM,E,1,1798.0,,A*58"));
        LogImport.Outcome outcome = LogImport.of(log, log.reader(LogOptions.NONE)).into(folder.resolve("trial.readings"), LogProgress.NONE);
        assertThat(outcome.provenance().sha256()).isEqualTo("09d957309193c32748269455f79985814152ce0eba3203e2f5e197c40cdc7052");
    }

    @Test
    void leavesNothingBehindWhenItIsStopped() throws IOException {
        Path log = log("(1772706615.250000) can0 09F20024#017217B0047FFFFF\n".repeat(10_000));
        LogFile file = LogFile.of(log);
        assertThatThrownBy(() -> LogImport.of(file, file.reader(LogOptions.NONE)).into(folder.resolve("trial.readings"), bytes -> {
            throw new CancellationException();
        })).isInstanceOf(CancellationException.class);
        assertThat(folder.toFile().list()).containsExactly("trial.log");
    }

    @Test
    void saysWhereAStoreCannotBeWritten() throws IOException {
        LogFile file = LogFile.of(log("$ERRPM,E,1,1798.0,,A*58"));
        assertThatThrownBy(() -> LogImport.of(file, file.reader(LogOptions.NONE))
            .into(folder.resolve("no such folder").resolve("trial.readings"), LogProgress.NONE))
            .isInstanceOf(IOException.class);
    }

    @Test
    void bringsTheTrialInFromTwoFormats() throws IOException {
        for (String name : new String[] {"n2k-checkset.log", "signalk-checkset.jsonl"}) {
            LogFile log = LogFile.of(SharedLogs.file(name));
            Path store = folder.resolve(name + ReadingStore.ENDING);
            LogImport.Outcome outcome = LogImport.of(log, log.reader(LogOptions.NONE)).into(store, LogProgress.NONE);
            try (ReadingStore open = ReadingStore.open(store)) {
                open.verify();
                assertThat(open.channels().stream().mapToLong(channel -> channel.readings()).sum()).isEqualTo(outcome.tally().readings());
            }
        }
    }
}
