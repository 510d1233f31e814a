// SPDX-License-Identifier: EPL-2.0
package garboard.trial.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;

import org.junit.jupiter.api.Test;

class LogLinesTest {

    private static List<String> lines(InputStream in) throws IOException {
        LogLines lines = new LogLines(in, LogProgress.NONE);
        List<String> all = new ArrayList<>();
        while (lines.next()) {
            all.add(lines.number() + (lines.isCut() ? " cut " + lines.text().length() : " " + lines.text()));
        }
        return all;
    }

    private static InputStream bytes(String text) {
        return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
    }

    /** Gives one byte at a time, as a slow pipe may. */
    private static InputStream dripping(String text) {
        InputStream whole = bytes(text);
        return new InputStream() {
            @Override
            public int read() throws IOException {
                return whole.read();
            }

            @Override
            public int read(byte[] into, int from, int most) throws IOException {
                return whole.read(into, from, Math.min(1, most));
            }
        };
    }

    @Test
    void takesLineEndsOfBothKindsAndNoneAtTheEnd() throws IOException {
        String text = "one\r\ntwo\n\nfour\r";
        assertThat(lines(bytes(text))).containsExactly("1 one", "2 two", "3 ", "4 four");
        assertThat(lines(dripping(text))).containsExactly("1 one", "2 two", "3 ", "4 four");
        assertThat(lines(bytes(""))).isEmpty();
        assertThat(lines(bytes("\n"))).containsExactly("1 ");
    }

    @Test
    void keepsOnlyTheBeginningOfALineWithoutEnd() throws IOException {
        String endless = "x".repeat(3 * LogLines.LONGEST);
        assertThat(lines(bytes("before\n" + endless + "\nafter\n"))).containsExactly("1 before", "2 cut " + LogLines.LONGEST, "3 after");
        assertThat(lines(bytes(endless))).containsExactly("1 cut " + LogLines.LONGEST);
        String longest = "y".repeat(LogLines.LONGEST);
        assertThat(lines(bytes(longest + "\nafter"))).containsExactly("1 " + longest, "2 after");
    }

    @Test
    void goesOnOverManyBuffers() throws IOException {
        StringBuilder text = new StringBuilder();
        for (int i = 1; i <= 20_000; i++) {
            text.append("line ").append(i).append('\n');
        }
        List<String> lines = lines(bytes(text.toString()));
        assertThat(lines).hasSize(20_000).contains("1 line 1", "12345 line 12345", "20000 line 20000");
    }

    @Test
    void tellsHowFarItIsAndCanBeStopped() {
        long[] told = new long[1];
        LogLines lines = new LogLines(bytes("a line\n".repeat(100_000)), bytes -> {
            told[0] = bytes;
            if (bytes > 200_000) {
                throw new CancellationException();
            }
        });
        assertThatThrownBy(() -> {
            while (lines.next()) {
                assertThat(lines.text()).isEqualTo("a line");
            }
        }).isInstanceOf(CancellationException.class);
        assertThat(told[0]).isBetween(200_000L, 300_000L);
    }
}
