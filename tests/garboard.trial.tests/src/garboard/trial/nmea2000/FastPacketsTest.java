// SPDX-License-Identifier: EPL-2.0
package garboard.trial.nmea2000;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;

import org.junit.jupiter.api.Test;

import garboard.trial.log.LogTally;
import garboard.trial.log.Mishap;

/**
 * Fast packets as open decoders describe them: the first byte is a counter of 3 bits and the number of the frame, frame 0 has the length and
 * 6 bytes, each following one 7.
 */
class FastPacketsTest {

    private static final int ENGINE = 0x09F20124; // 127489 from source 36

    private final LogTally tally = new LogTally();
    private final FastPackets packets = new FastPackets(tally);
    private final List<String> delivered = new ArrayList<>();
    private long line;

    private void send(int id, long timeMs, String bytes) {
        byte[] data = HexFormat.of().parseHex(bytes);
        CanFrame frame = new CanFrame();
        frame.id = id;
        frame.timeNs = timeMs * 1_000_000;
        frame.length = data.length;
        for (int i = 0; i < data.length; i++) {
            frame.data |= (data[i] & 0xFFL) << 8 * i;
        }
        FastPackets.Message message = packets.add(frame, ++line);
        if (message != null) {
            delivered.add(HexFormat.of().formatHex(message.payload, 0, message.length));
        }
    }

    private void send(String... frames) {
        Arrays.stream(frames).forEach(bytes -> send(ENGINE, 0, bytes));
    }

    private long cut() {
        packets.finish();
        return tally.of(Mishap.CUT_MESSAGE);
    }

    @Test
    void joinsFramesInOrder() {
        send("400f010203040506", "410708090a0b0c0d", "420e0fffffffffff");
        assertThat(delivered).containsExactly("0102030405060708090a0b0c0d0e0f");
        assertThat(cut()).isZero();
    }

    @Test
    void keepsCountersApartAndAllowsOneToBeUsedAgain() {
        send("4008010203040506", "6008111213141516", "410708ffffffffff", "611718ffffffffff", "4008212223242526", "412728ffffffffff");
        assertThat(delivered).containsExactly("0102030405060708", "1112131415161718", "2122232425262728");
    }

    @Test
    void dropsAMessageWhoseFrameIsMissingAndCountsItOnce() {
        send("400f010203040506", "420e0fffffffffff");
        send("4116171819ffffff");
        send("6014010203040506", "610708090a0b0c0d");
        assertThat(delivered).isEmpty();
        // the second frame lost; a frame without beginning, from another message; the end lost
        assertThat(cut()).isEqualTo(3);
        assertThat(tally.firstLine(Mishap.CUT_MESSAGE)).isEqualTo(1);
    }

    @Test
    void countsAMessageWithoutItsBeginningOnce() {
        send("410708090a0b0c0d", "420e0f1011121314", "43ffffffffffffff");
        assertThat(cut()).isEqualTo(1);
    }

    @Test
    void neverJoinsTheEndsOfTwoMessages() {
        // The first loses its last frame, the second, of the same counter, its first two; together they would look whole.
        send("400f010203040506", "410708090a0b0c0d");
        send(ENGINE, 800, "422e2fffffffffff");
        assertThat(delivered).isEmpty();
        assertThat(cut()).isEqualTo(1);
    }

    @Test
    void doesNotMindTimeThatStepsBack() {
        send(ENGINE, 5_000, "4008010203040506");
        send(ENGINE, 1_000, "410708ffffffffff");
        assertThat(delivered).containsExactly("0102030405060708");
    }

    @Test
    void takesALastFrameThatIsNotFilled() {
        send("4008010203040506", "410708");
        send("600602", "4003010203");
        assertThat(delivered).containsExactly("0102030405060708", "02", "010203");
    }

    @Test
    void dropsShortFramesInTheMiddleAndLengthsBeyondTheLongest() {
        send("400f0102", "6014010203040506", "6107", "620e0f1011121314", "80e0010203040506", "a0");
        assertThat(delivered).isEmpty();
        assertThat(cut()).isEqualTo(4);
    }

    @Test
    void carriesTheLongestMessage() {
        send("40df000000000000");
        for (int i = 1; i <= 31; i++) {
            send(String.format("%02x", 0x40 | i) + String.format("%02x", i).repeat(7));
        }
        assertThat(delivered).hasSize(1);
        assertThat(delivered.get(0)).hasSize(2 * 223).endsWith("1f".repeat(7));
    }

    @Test
    void staysBoundedWhateverTheIdentifiers() {
        for (int i = 0; i < 20_000; i++) {
            send(0x09000000 | i, 0, "4008010203040506");
        }
        assertThat(cut()).isEqualTo(20_000);
    }
}
