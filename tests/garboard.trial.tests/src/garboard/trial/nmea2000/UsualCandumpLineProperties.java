// SPDX-License-Identifier: EPL-2.0
package garboard.trial.nmea2000;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Random;

import garboard.trial.log.LogOptions;
import garboard.trial.log.LogStamps;
import garboard.trial.log.LogTally;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;

/** The short way must find what the long way finds, whatever the line. */
class UsualCandumpLineProperties {

    private static final String USUAL = "(1772706615.250000) can0 09F20024#017217B0047FFFFF";
    private static final String CHARACTERS = "0123456789ABCDEFGabcdefg#.() RT_:can";

    /** What one way makes of a line, the first of its log or one after a usual line. */
    private static String found(String line, boolean afterAUsualOne) {
        LogTally tally = new LogTally();
        CanBuses buses = new CanBuses();
        CandumpLine reader = new CandumpLine(buses, new LogStamps(LogOptions.NONE, tally));
        CanFrame frame = new CanFrame();
        if (afterAUsualOne) {
            byte[] usual = USUAL.getBytes(StandardCharsets.US_ASCII);
            assertThat(reader.parse(usual, 0, usual.length, frame)).isEqualTo(FrameLine.Kind.FRAME);
        }
        byte[] bytes = line.getBytes(StandardCharsets.US_ASCII);
        FrameLine.Kind kind = reader.parse(bytes, 0, bytes.length, frame);
        return kind != FrameLine.Kind.FRAME ? kind.name()
            : String.join(" ", kind.name(), buses.name(frame.bus), Long.toString(frame.timeNs), Integer.toHexString(frame.id),
                Integer.toString(frame.length),
                Long.toHexString(frame.data), Boolean.toString(tally.isTimeRelative()));
    }

    @Property(tries = 3000, seed = "31", shrinking = ShrinkingMode.OFF)
    void findsTheSameAsTheLongWay(@ForAll long seed) {
        Random random = new Random(seed);
        StringBuilder line = new StringBuilder(USUAL);
        for (int i = random.nextInt(4); i > 0; i--) {
            int at = random.nextInt(line.length());
            switch (random.nextInt(4)) {
                case 0 -> line.deleteCharAt(at);
                case 1 -> line.insert(at, CHARACTERS.charAt(random.nextInt(CHARACTERS.length())));
                default -> line.setCharAt(at, CHARACTERS.charAt(random.nextInt(CHARACTERS.length())));
            }
        }
        if (random.nextInt(4) == 0) {
            line.setLength(random.nextInt(line.length() + 1));
        }
        assertThat(found(line.toString(), true)).as(line.toString()).isEqualTo(found(line.toString(), false));
    }
}
