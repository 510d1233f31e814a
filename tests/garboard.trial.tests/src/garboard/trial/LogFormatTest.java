// SPDX-License-Identifier: EPL-2.0
package garboard.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.trial.testing.SharedLogs;

class LogFormatTest {

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource(delimiter = '!', quoteCharacter = '`', value = {"CANDUMP ! (1772706615.250000) can0 09F20024#017217B0047FFFFF",
        "CANDUMP ! (1772706615.250000)  can0  09F20024   [8]  01 72 17 B0 04 7F FF FF", "CANDUMP !   can0  09F20024   [8]  01 72 17 B0 04 7F FF FF",
        "CANDUMP ! (2026-03-05 10:30:15.250000)  can0  RX - -  09F20024   [8]  01 72", "GATEWAY ! 10:30:15.250 R 09F20024 01 72 17 B0 04 7F FF FF",
        "MESSAGES ! 2026-03-05T10:30:15.250Z,2,127488,36,255,8,01,72,17,b0,04,7f,ff,ff", "SIGNAL_K ! {`updates`:[]}",
            "SIGNAL_K ! 1772706615250;n2k;{}",
        "NMEA_0183 ! $ERRPM,E,1,1798.0,,A*58", "NMEA_0183 ! \\c:1772706615*00\\$ERRPM,E,1,1798.0,,A*58",
            "NMEA_0183 ! 2026-03-05T10:30:15Z $ERRPM,E,1,1798.0,,A*58",
        "NMEA_0183 ! 1772706615250;$ERRPM,E,1,1798.0,,A*58"})
    void knowsFormatsByTheirLines(LogFormat format, String line) {
        assertThat(LogFormat.of(List.of("# remark", "", line, line))).contains(format);
    }

    @Test
    void doesNotTakeATextOrATableForALog() {
        assertThat(LogFormat.of(List.of("Dear all,", "the trial went well."))).isEmpty();
        assertThat(LogFormat.of(List.of("time,voltage[V]", "2026-03-05T10:30:15Z,230.1"))).isEmpty();
        assertThat(LogFormat.of(List.of())).isEmpty();
    }

    @Test
    void forgivesACutBeginning() {
        assertThat(LogFormat.of(List.of("04D4037FFFFF", "(1772706615.250000) can0 09F20024#01", "(1772706615.350000) can0 09F20024#01")))
            .contains(LogFormat.CANDUMP);
    }

    private Path file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text, StandardCharsets.UTF_8);
    }

    @Test
    void saysWhatAFileIsNotAndWhatWouldBeRight() throws IOException {
        assertThatThrownBy(() -> LogFile.of(file("letter.txt", "Dear all,\nthe trial went well.\n"))).isInstanceOf(LogFormatException.class)
            .hasMessageStartingWith("letter.txt: its lines are of no format that is read, the first is \"Dear all,\". A candump log");
        assertThatThrownBy(() -> LogFile.of(file("empty.log", ""))).hasMessageStartingWith("empty.log: the file is empty");
        Path wide = folder.resolve("wide.csv");
        Files.write(wide, "time;U\n".getBytes(StandardCharsets.UTF_16));
        assertThatThrownBy(() -> LogFile.of(wide)).hasMessage("wide.csv is written in UTF-16. Save it in UTF-8.");
    }

    @Test
    void takesATableWithATimeForATable() throws IOException {
        LogFile table = LogFile.of(file("meter.csv", "time,voltage[V]\n2026-03-05T10:30:15Z,230.1\n"));
        assertThat(table.format()).isEqualTo(LogFormat.CSV);
        assertThat(table.proposal(ZoneOffset.UTC).orElseThrow().mapping().columns()).hasSize(1);
    }

    @Test
    void looksLittleAtALineWithoutEnd() {
        assertThatThrownBy(() -> LogFile.of(file("blank.bin", " 1".repeat(1_000_000)))).isInstanceOf(LogFormatException.class);
    }

    @Test
    void knowsTheSharedLogs() throws IOException {
        assertThat(LogFile.of(SharedLogs.file("n2k-checkset.log")).format()).isEqualTo(LogFormat.CANDUMP);
        assertThat(LogFile.of(SharedLogs.file("n2k-checkset-interleaved.log")).format()).isEqualTo(LogFormat.CANDUMP);
        assertThat(LogFile.of(SharedLogs.file("recorded/vessel-excerpt.log")).format()).isEqualTo(LogFormat.CANDUMP);
        assertThat(LogFile.of(SharedLogs.file("signalk-checkset.jsonl")).format()).isEqualTo(LogFormat.SIGNAL_K);
    }
}
