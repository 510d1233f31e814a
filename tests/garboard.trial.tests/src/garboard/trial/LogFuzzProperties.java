// SPDX-License-Identifier: EPL-2.0
package garboard.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import garboard.trial.csv.CsvLogReader;
import garboard.trial.csv.CsvMapping;
import garboard.trial.csv.CsvProposal;
import garboard.trial.log.LogIntake;
import garboard.trial.log.LogOptions;
import garboard.trial.log.LogReader;
import garboard.trial.testing.Collected;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;

/**
 * Whatever a file holds, reading comes to an end, throws nothing, and what comes out are numbers. The seeds are fixed so that a build gives the
 * same answer twice.
 */
class LogFuzzProperties {

    private static final CsvMapping TABLE = CsvProposal.of(List.of("time;Spannung (V);Öldruck (bar)", "05.03.2026 11:30:15;231,4;4,1"),
        ZoneId.of("Europe/Berlin"))
        .orElseThrow().mapping();

    private static final String CHARACTERS = "0123456789ABCDEFabcdef,;:.#*$!\\\"{}[]()-+ \nRTZe\uFFFD";

    /** Good logs of every format, to be spoilt. */
    private static final List<String> GOOD = List.of(
        """
        (1772706615.250000) can0 09F20024#017217B0047FFFFF
        (1772706615.260000) can0 09F20124#A01A010A0F470E4B
        (1772706615.261000) can0 09F20124#A18CB90A1F002069
        (1772706615.262000) can0 09F20124#A247001A041D01FF
        (1772706615.263000) can0 09F20124#A3038081004 0F4FF
        (1772706615.264000) can1 19F21029#20260002FC02 2FFF
         (1772706615.350000)  can0  09F20024   [8]  01 72 17 B0 04 7F FF FF
        (1772706615.360000) can0 7DF#0201050000000000
        (1772706615.370000) can0 0DF01016#00F02550649B8A16
        """,
        "10:30:15.250 R 09F20024 01 72 17 B0 04 7F FF FF\n23:59:59.999 R 19F21421 02 01 0A 64 FE 4B 73 09\n",
        "2026-03-05T10:30:15.250Z,2,127488,36,255,8,01,72,17,b0,04,7f,ff,ff\n2026-03-05-10:30:15.250,6,127504,41,255,2,00,03\n",
        """
        {"name":"server","self":"vessels.urn:mrn:imo:mmsi:200000002"}
        {"context":"vessels.self","updates":[{"$source":"n2k.35","timestamp":"2026-03-05T10:30:15.250Z","values":[{"path":"propulsion.0.revolutions","value":25.5}]}]}
        {"updates":[{"source":{"label":"a","src":"1"},"timestamp":"2026-03-05T10:30:15Z","values":[{"path":"navigation.attitude","value":{"roll":0.1,"pitch":null}}]}]}
        1772706615250;nmea0183;$ERRPM,E,1,1798.0,,A*58
        """,
        """
        $GPZDA,103015.25,05,03,2026,00,00*67
        \\s:eng,c:1772706615250*67\\$ERRPM,E,1,1798.0,,A*58
        $ERXDR,P,3.75,B,EngineOil#1,U,27.4,V,Battery#0,I,41.5,A,Charge,F,60.05,H,AC#0*7E
        $GPRMC,103016.00,A,4823.4140,S,01234.8000,W,6.20,271.5,050326,,,A*63
        """,
        "# made up\ntime;Spannung (V);Öldruck (bar)\n05.03.2026 11:30:15;231,4;4,1\n25.10.2026 02:30:00;\"231,5\";\n");

    private static List<LogReader> readers() {
        LogOptions options = LogOptions.NONE.in(ZoneId.of("Europe/Berlin"));
        List<LogReader> readers = new ArrayList<>();
        for (LogFormat format : LogFormat.values()) {
            readers.add(format == LogFormat.CSV ? new CsvLogReader(options, TABLE) : format.reader(options));
        }
        return readers;
    }

    private static void assertReadByAll(byte[] log) {
        for (LogReader reader : readers()) {
            Collected found = Collected.from(reader, log);
            assertThat(found.readings()).allMatch(reading -> Double.isFinite(reading.si()) && reading.channel().measurand().isPossible(reading.si()));
            assertThat(found.intake().channels()).hasSizeLessThanOrEqualTo(LogIntake.MOST_CHANNELS);
            assertThat(found.tally().readings()).isEqualTo(found.readings().size());
            assertThat(found.tally().sentences()).hasSameSizeAs(found.tally().mishaps().keySet());
        }
        List<String> lines = new String(log, StandardCharsets.UTF_8).lines().toList();
        assertThat(LogFormat.of(lines)).isNotNull();
        assertThat(CsvProposal.of(lines, ZoneOffset.UTC)).isNotNull();
    }

    @Property(tries = 300, seed = "11", shrinking = ShrinkingMode.OFF)
    void readsAnyBytes(@ForAll byte[] log) {
        assertReadByAll(log);
    }

    /** A good log with bytes changed, left out, repeated or moved. */
    @Provide
    Arbitrary<byte[]> spoilt() {
        return Arbitraries.longs().map(seed -> {
            Random random = new Random(seed);
            StringBuilder text = new StringBuilder(GOOD.get(random.nextInt(GOOD.size())).repeat(1 + random.nextInt(4)));
            for (int i = random.nextInt(12); i > 0 && text.length() > 2; i--) {
                int at = random.nextInt(text.length());
                int to = Math.min(text.length(), at + 1 + random.nextInt(30));
                switch (random.nextInt(5)) {
                    case 0 -> text.setCharAt(at, CHARACTERS.charAt(random.nextInt(CHARACTERS.length())));
                    case 1 -> text.delete(at, to);
                    case 2 -> text.insert(random.nextInt(text.length()), text.substring(at, to));
                    case 3 -> text.setLength(at + 1);
                    default -> text.insert(at, Long.toString(random.nextLong()));
                }
            }
            return text.toString().getBytes(StandardCharsets.UTF_8);
        });
    }

    @Property(tries = 1500, seed = "12", shrinking = ShrinkingMode.OFF)
    void readsSpoiltLogs(@ForAll("spoilt") byte[] log) {
        assertReadByAll(log);
    }

    /** Frames with any identifier and data: nothing that any device can send stops the decoding. */
    @Property(tries = 60, seed = "13", shrinking = ShrinkingMode.OFF)
    void readsAnyFrames(@ForAll long seed) {
        Random random = new Random(seed);
        StringBuilder log = new StringBuilder();
        int[] known = {127488, 127489, 127497, 127503, 127504, 127505, 127506, 127508, 127512, 127514, 127744, 127751, 126992, 129025, 129033,
            130312, 130314, 130316, 65028, 65030, 61444};
        for (int i = 0; i < 2000; i++) {
            int pgn = known[random.nextInt(known.length)];
            long id = random.nextInt(10) == 0 ? random.nextInt(1 << 29) : (long) random.nextInt(8) << 26 | (long) pgn << 8 | random.nextInt(3);
            StringBuilder data = new StringBuilder(String.format("%02X%02X", random.nextInt(8) << 5 | random.nextInt(4), random.nextInt(60)));
            for (int k = random.nextInt(7); k > 0; k--) {
                data.append(String.format("%02X", random.nextInt(256)));
            }
            log.append(String.format("(%d.%06d) can%d %08X#%s%n", 1_772_706_615 + i, random.nextInt(1_000_000), random.nextInt(2), id, data));
        }
        assertReadByAll(log.toString().getBytes(StandardCharsets.US_ASCII));
    }
}
