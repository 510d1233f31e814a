// SPDX-License-Identifier: EPL-2.0
package garboard.trial.nmea2000;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import garboard.trial.log.LogOptions;
import garboard.trial.log.LogStamps;
import garboard.trial.log.Measurand;
import garboard.trial.log.Mishap;
import garboard.trial.testing.Collected;

/**
 * Frames made up here. The forms are those of can-utils (candump -l, -L, -x, -ta, -tA, -tz; lib.h describes the log form). The message is
 * 127488 of engine 1 from source 36: 6002 x 0.25 r/min = 1500.5 r/min, boost 1200 x 100 Pa.
 */
class CandumpLogTest {

    private static final String DATA = "017217B0047FFFFF";
    private static final double SPEED = 1500.5 * 2 * Math.PI / 60;

    private static Collected read(String... lines) {
        return Collected.from(FrameLogReader.candump(LogOptions.NONE), lines);
    }

    private static long ns(String instant) {
        return LogStamps.ns(Instant.parse(instant));
    }

    @ParameterizedTest
    @ValueSource(strings = {"(1772706615.250000) can0 09F20024#017217B0047FFFFF", "(1772706615.250000)  can0 09F20024#017217B0047FFFFF",
        "(1772706615.250000000) slcan0 09F20024#017217B0047FFFFF R", "(1772706615.250000) can0 09f20024#01.72.17.b0.04.7f.ff.ff",
            "(1772706615.25) can0 09F20024#017217B0047FFFFF T",
        " (1772706615.250000)  can0  09F20024   [8]  01 72 17 B0 04 7F FF FF",
            " (1772706615.250000)  can0  09F20024   [8]  01 72 17 B0 04 7F FF FF   '.r......'",
        "(1772706615.250000)  can0  RX - -  09F20024   [8]  01 72 17 B0 04 7F FF FF",
            " (2026-03-05 10:30:15.250000)  can0  09F20024   [8]  01 72 17 B0 04 7F FF FF",
        "(1772706615.250000) can0 09F20024#017217B0047FFFFF_9"})
    void readsEveryFormOfALine(String line) {
        Collected log = read(line);
        assertThat(log.tally().sentences()).as(line).isEmpty();
        assertThat(log.values(Measurand.ENGINE_SPEED)).hasSize(1);
        assertThat(log.values(Measurand.ENGINE_SPEED).get(0)).isCloseTo(SPEED, within(1e-9));
        assertThat(log.values(Measurand.BOOST_PRESSURE)).containsExactly(120_000.0);
        assertThat(log.readings().get(0).timeNs()).isEqualTo(ns("2026-03-05T10:30:15.250Z"));
        assertThat(log.readings().get(0).channel().origin().sender()).isEqualTo("36");
        assertThat(log.readings().get(0).channel().instance()).isEqualTo("1");
    }

    @ParameterizedTest
    @ValueSource(strings = {"(1772706615.250000) can0 20000004#0004000000000000", "(1772706615.250000) can0 7DF#0201050000000000",
        "(1772706615.250000) can0 09F20024#R8",
        "(1772706615.250000) can0 09F20024#R", "(1772706615.250000) can0 09F20024##1112233", "(1772706615.250000) can0 123#",
            "  can0  09F20024   [8]  remote request",
        "(1772706615.250000)  can0  09F20024  [12]  01 72 17 B0 04 7F FF FF 00 00 00 00", "(1772706615.250000) can0 00000123#81:00:12345678#112233"})
    void countsFramesOfOtherKinds(String line) {
        Collected log = read(line, "(1772706615.250000) can0 09F20024#" + DATA, line);
        assertThat(log.values(Measurand.ENGINE_SPEED)).hasSize(1);
        assertThat(log.tally().mishaps()).as(line).containsOnlyKeys(Mishap.FOREIGN_FRAME);
        assertThat(log.tally().of(Mishap.FOREIGN_FRAME)).isEqualTo(2);
        assertThat(log.tally().frames()).isEqualTo(3);
    }

    @ParameterizedTest
    @ValueSource(strings = {"(1772706615.250000) can0 09F20024#017217B0047FFFF", "(1772706615.250000) can0 09F20024#017217B0047FFFFF00",
        "(1772706615.250000) can0 9F20024#01",
        "(1772706615.250000) can0 09F20024", "(1772706615.250000) can0", "(1772706615.250000)", "(1772706615.250000) can0 09F2002G#017217B0047FFFFF",
        "(1772706615.250000) can0 09F20024#01721ZB0047FFFFF", "(1772706615.250000) can0 09F20024#017217B0047FFFFF X",
            "(1772706615.250000)  can0  09F20024   [8]  01 72 17 B0 04 7F FF",
        "(1772706615.250000) can0 109F20024#017217B0047FFFFF", "(1772706615.250000) can0 09F20024#017217B0047FFFFF R extra"})
    void countsLinesThatAreNoFrames(String line) {
        Collected log = read(line);
        assertThat(log.readings()).isEmpty();
        assertThat(log.tally().mishaps()).as(line).containsOnlyKeys(Mishap.UNREADABLE_LINE);
    }

    @ParameterizedTest
    @ValueSource(strings = {"(17727066x5.250000) can0 09F20024#017217B0047FFFFF", "(1772706615.) can0 09F20024#017217B0047FFFFF",
        "(1772706615.250000 can0 09F20024#017217B0047FFFFF",
        "() can0 09F20024#017217B0047FFFFF", "(-1772706615.250000) can0 09F20024#017217B0047FFFFF",
            "(99999999999999999999.250000) can0 09F20024#017217B0047FFFFF"})
    void countsStampsThatCannotBeRead(String line) {
        Collected log = read(line);
        assertThat(log.readings()).isEmpty();
        assertThat(log.tally().mishaps()).as(line).containsOnlyKeys(Mishap.UNREADABLE_TIME);
    }

    @Test
    void passesOverRemarks() {
        assertThat(read("# trial of the port set", "", "candump: started", "(1772706615.250000) can0 09F20024#" + DATA).tally().mishaps()).isEmpty();
    }

    @Test
    void leavesOutFramesWithoutTime() {
        Collected log = read("  can0  09F20024   [8]  01 72 17 B0 04 7F FF FF");
        assertThat(log.readings()).isEmpty();
        assertThat(log.tally().of(Mishap.NO_TIME)).isEqualTo(1);
    }

    @Test
    void takesLocalStampsFromTheirZoneAndLeavesOutThoseThatExistTwice() {
        // Clocks in central Europe go back on 2026-10-25 at 3 h (Directive 2000/84/EC)
        Collected log = Collected.from(FrameLogReader.candump(LogOptions.NONE.in(ZoneId.of("Europe/Berlin"))),
            "(2026-10-25 01:30:00.000000)  can0  09F20024   [8]  01 72 17 B0 04 7F FF FF",
                "(2026-10-25 02:30:00.000000)  can0  09F20024   [8]  01 72 17 B0 04 7F FF FF");
        assertThat(log.values(Measurand.ENGINE_SPEED)).hasSize(1);
        assertThat(log.readings().get(0).timeNs()).isEqualTo(ns("2026-10-24T23:30:00Z"));
        assertThat(log.tally().of(Mishap.AMBIGUOUS_TIME)).isEqualTo(1);
    }

    @Test
    void keepsTheOrderOfTheFileWhereTimeStepsBack() {
        Collected log = read("(1772706615.500000) can0 09F20024#" + DATA, "(1772706615.250000) can0 09F20024#" + DATA,
            "(1772706615.750000) can0 09F20024#" + DATA);
        assertThat(log.readings(channel -> channel.measurand() == Measurand.ENGINE_SPEED)).extracting(Collected.Reading::timeNs)
            .containsExactly(ns("2026-03-05T10:30:15.500Z"), ns("2026-03-05T10:30:15.250Z"), ns("2026-03-05T10:30:15.750Z"));
        assertThat(log.tally().of(Mishap.TIME_STEPS_BACK)).isEqualTo(1);
        assertThat(log.tally().firstLine(Mishap.TIME_STEPS_BACK)).isEqualTo(2);
        assertThat(log.tally().largestStepBackNs()).isEqualTo(250_000_000L);
    }

    @Test
    void tellsTimeThatJumpsAhead() {
        Collected log = read("(1772706615.250000) can0 09F20024#" + DATA, "(1772710215.250000) can0 09F20024#" + DATA,
            "(1772713815.250001) can0 09F20024#" + DATA);
        assertThat(log.tally().sentences()).containsExactly("1 time stamp was more than an hour after the one before; line 3.");
    }

    @Test
    void keepsBusesSendersAndInstancesApart() {
        Collected log = read("(1772706615.250000) can0 09F20024#" + DATA, "(1772706615.250000) can1 09F20024#" + DATA,
            "(1772706615.250000) can0 09F20025#" + DATA,
            "(1772706615.250000) can0 09F20024#00" + DATA.substring(2), "(1772706615.250000) can0 09F20024#" + DATA);
        assertThat(log.intake().channels()).filteredOn(count -> count.channel().measurand() == Measurand.ENGINE_SPEED)
            .extracting(count -> count.channel().toString() + " " + count.readings())
            .containsExactly("engine speed, 1 (can0, source 36, 127488) 2", "engine speed, 1 (can1, source 36, 127488) 1",
                "engine speed, 1 (can0, source 37, 127488) 1",
                "engine speed, 0 (can0, source 36, 127488) 1");
    }

    @Test
    void tellsNotAvailableOutOfRangeAndReservedApart() {
        // 127488: speed FFFE, FFFD, FFFF with boost FFFF, each not a number (NMEA 2000 reserves the three highest codes)
        Collected log = read("(1772706615.250000) can0 09F20024#01FEFFFFFF7FFFFF", "(1772706615.350000) can0 09F20024#01FDFFFFFF7FFFFF",
            "(1772706615.450000) can0 09F20024#01FFFFFFFF7FFFFF");
        assertThat(log.readings()).isEmpty();
        assertThat(log.tally().of(Mishap.OUT_OF_RANGE)).isEqualTo(1);
        assertThat(log.tally().of(Mishap.RESERVED)).isEqualTo(1);
        assertThat(log.tally().of(Mishap.NOT_AVAILABLE)).isEqualTo(4);
        assertThat(log.intake().channels()).extracting(count -> count.missing()).containsExactly(3L, 3L);
    }

    @Test
    void takesAMissingTailForNotAvailable() {
        Collected log = read("(1772706615.250000) can0 09F20024#017217");
        assertThat(log.values(Measurand.ENGINE_SPEED)).hasSize(1);
        assertThat(log.tally().of(Mishap.NOT_AVAILABLE)).isEqualTo(1);
    }

    @Test
    void tellsHowFarTheBusClockIsAhead() {
        // 126992: day 20517 is 2026-03-05, 378182500 x 0.1 ms is 10:30:18.25, the log says 10:30:15.25
        Collected log = read("(1772706615.250000) can0 0DF01016#00F02550649B8A16");
        assertThat(log.values(Measurand.CLOCK)).containsExactly(1772706618.25);
        assertThat(log.tally().clockAheadNs()).hasValue(3_000_000_000L);
    }

    @Test
    void countsWhatItDoesNotReadByItsNumber() {
        // 59904 ISO request, 60928 address claim (J1939-21, -81), 65280 a maker's own; 60416 announces packets
        Collected log = read("(1772706615.250000) can0 18EAFF16#00EE00", "(1772706615.250000) can0 18EEFF16#0102030405060708",
            "(1772706615.250000) can0 18FF0016#0102030405060708",
            "(1772706615.250000) can0 18FF0016#0102030405060708", "(1772706615.250000) can0 1CECFF16#20120003FFCAFE00");
        assertThat(log.tally().foreignByKind()).containsExactlyInAnyOrderEntriesOf(Map.of("59904", 1L, "60928", 1L, "65280", 2L));
        assertThat(log.tally().of(Mishap.FOREIGN_MESSAGE)).isEqualTo(4);
        assertThat(log.tally().of(Mishap.TRANSPORT_PACKET)).isEqualTo(1);
    }

    @Test
    void readsTheOtherFormsOfGatewaysAndPrograms() {
        LogOptions day = LogOptions.NONE.startingAt(Instant.parse("2026-03-05T10:00:00Z"));
        List<Collected> logs = List.of(Collected.from(FrameLogReader.gateway(day), "10:30:15.250 R 09F20024 01 72 17 B0 04 7F FF FF", "# remark"),
            Collected.from(new MessageLogReader(LogOptions.NONE), "2026-03-05T10:30:15.250Z,2,127488,36,255,8,01,72,17,b0,04,7f,ff,ff", "remark"));
        for (Collected log : logs) {
            assertThat(log.tally().mishaps()).isEmpty();
            assertThat(log.values(Measurand.ENGINE_SPEED).get(0)).isCloseTo(SPEED, within(1e-9));
            assertThat(log.readings().get(0).timeNs()).isEqualTo(ns("2026-03-05T10:30:15.250Z"));
        }
    }

    @Test
    void dropsAMessageLineThatIsShorterThanItSays() {
        Collected log = Collected.from(new MessageLogReader(LogOptions.NONE), "2026-03-05T10:30:15.250Z,2,127488,36,255,8,01,72,17,b0",
            "2026-03-05T10:30:15.250Z,2,127488,36,999,8,01",
            "2026-03-05T10:30:15.250Z,2,127488,300,255,8,01");
        assertThat(log.readings()).isEmpty();
        assertThat(log.tally().of(Mishap.CUT_MESSAGE)).isEqualTo(2);
        assertThat(log.tally().of(Mishap.UNREADABLE_LINE)).isEqualTo(1);
    }
}
