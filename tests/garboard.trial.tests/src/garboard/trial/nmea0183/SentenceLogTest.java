// SPDX-License-Identifier: EPL-2.0
package garboard.trial.nmea0183;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.util.Map;

import org.junit.jupiter.api.Test;

import garboard.trial.log.LogOptions;
import garboard.trial.log.LogStamps;
import garboard.trial.log.Measurand;
import garboard.trial.log.Mishap;
import garboard.trial.testing.Collected;

/** Sentences made up here; their checksums (exclusive or of the characters between $ and *) were computed with another program. */
class SentenceLogTest {

    private static final String CLOCK = "$GPZDA,103015.25,05,03,2026,00,00*67";
    private static final String SPEED = "$ERRPM,E,1,1798.0,,A*58";

    private static Collected read(String... lines) {
        return Collected.from(new SentenceLogReader(LogOptions.NONE), lines);
    }

    private static long ns(String instant) {
        return LogStamps.ns(Instant.parse(instant));
    }

    @Test
    void takesTheTimeFromTheLastClockSentence() {
        Collected log = read(CLOCK, SPEED, "$IIXDR,A,7.5,D,Heel,A,-1.25,D,Pitch*35");
        assertThat(log.readings()).extracting(Collected.Reading::timeNs).containsOnly(ns("2026-03-05T10:30:15.250Z"));
        // 1798 r/min in rad/s: 2 pi / 60 each
        assertThat(log.values(Measurand.ENGINE_SPEED).get(0)).isCloseTo(188.28612, within(1e-5));
        assertThat(log.values(Measurand.HEEL).get(0)).isCloseTo(0.1308997, within(1e-7));
        assertThat(log.values(Measurand.TRIM).get(0)).isCloseTo(-0.0218166, within(1e-7));
    }

    @Test
    void leavesOutWhatComesBeforeAnyTime() {
        Collected log = read(SPEED, CLOCK, SPEED);
        assertThat(log.values(Measurand.ENGINE_SPEED)).hasSize(1);
        assertThat(log.tally().of(Mishap.NO_TIME)).isEqualTo(1);
        assertThat(log.tally().sentences()).containsExactly("1 reading came before any time was known and was left out; line 1.");
    }

    @Test
    void prefersTheLoggersTimeAndTellsHowFarTheBusIsAhead() {
        Collected log = read("2026-03-05T10:30:13.000Z " + CLOCK, "2026-03-05T10:30:14.500Z " + SPEED);
        assertThat(log.readings(channel -> channel.measurand() == Measurand.ENGINE_SPEED)).extracting(Collected.Reading::timeNs)
            .containsExactly(ns("2026-03-05T10:30:14.500Z"));
        assertThat(log.tally().clockAheadNs()).hasValue(2_250_000_000L);
    }

    @Test
    void takesSecondsAndMillisecondsSince1970BeforeASentenceAndInATagBlock() {
        // 1772706615 is 2026-03-05T10:30:15Z (date -u -d @1772706615)
        Collected log = read("1772706615.5 " + SPEED, "1772706616250;" + SPEED, "\\s:eng,c:1772706615250*67\\" + SPEED);
        assertThat(log.readings()).extracting(Collected.Reading::timeNs).containsExactly(ns("2026-03-05T10:30:15.500Z"),
            ns("2026-03-05T10:30:16.250Z"), ns("2026-03-05T10:30:15.250Z"));
        assertThat(log.tally().of(Mishap.TIME_STEPS_BACK)).isEqualTo(1);
    }

    @Test
    void countsWrongAndMissingChecksums() {
        Collected log = read(CLOCK, "$ERRPM,E,1,1799.0,,A*58", "$ERRPM,E,1,1798.0,,A", "$ERRPM,E,1,1798.0,,A*5", "\\c:1772706615*00\\" + SPEED);
        assertThat(log.values(Measurand.ENGINE_SPEED)).isEmpty();
        assertThat(log.tally().of(Mishap.CHECKSUM)).isEqualTo(4);
        assertThat(log.tally().firstLine(Mishap.CHECKSUM)).isEqualTo(2);
    }

    @Test
    void tellsMissingUnreadableImpossibleAndForeignApart() {
        // an unknown transducer; empty; "abc"; below absolute zero; and one left over that is no group of four
        Collected log = read(CLOCK, "$YXXDR,Q,1.0,X,Odd,C,,C,ENGINEROOM,C,abc,C,ENGINEROOM,C,-300,C,ENGINEROOM,P,2.9*3C");
        assertThat(log.readings(channel -> channel.measurand() != Measurand.CLOCK)).isEmpty();
        assertThat(log.tally().foreignByKind()).containsExactly(Map.entry("XDR Q X", 1L));
        assertThat(log.tally().of(Mishap.NOT_AVAILABLE)).isEqualTo(1);
        assertThat(log.tally().of(Mishap.UNREADABLE_VALUE)).isEqualTo(2);
        assertThat(log.tally().of(Mishap.IMPOSSIBLE)).isEqualTo(1);
    }

    @Test
    void tellsShaftFromEngineAndVoidFromZero() {
        Collected log = read(CLOCK, "$ERRPM,S,1,640.5,12,A*7D", "$ERRPM,E,1,1798.0,,V*4F");
        assertThat(log.values(Measurand.ENGINE_SPEED)).isEmpty();
        assertThat(log.values(Measurand.SPEED)).hasSize(1);
        assertThat(log.tally().of(Mishap.NOT_AVAILABLE)).isEqualTo(1);
    }

    @Test
    void givesPositionsOfTheSouthAndWestASign() {
        Collected log = read("$GPRMC,103016.00,A,4823.4140,S,01234.8000,W,6.20,271.5,050326,,,A*63");
        // 48 deg 23.4140 min, 12 deg 34.8000 min
        assertThat(Math.toDegrees(log.values(Measurand.LATITUDE).get(0))).isCloseTo(-48.3902333, within(1e-7));
        assertThat(Math.toDegrees(log.values(Measurand.LONGITUDE).get(0))).isCloseTo(-12.58, within(1e-7));
    }

    @Test
    void keepsTheTimeOfASentenceThatKnowsNoPosition() {
        Collected log = read("$GPRMC,103016.00,V,,,,,,,050326,,,N*7A", SPEED);
        assertThat(log.readings(channel -> channel.measurand() == Measurand.ENGINE_SPEED)).extracting(Collected.Reading::timeNs)
            .containsExactly(ns("2026-03-05T10:30:16Z"));
        assertThat(log.tally().of(Mishap.NOT_AVAILABLE)).isEqualTo(4);
    }

    @Test
    void knowsTransducersByTheirNamesIgnoringCase() {
        Collected log = read(CLOCK, "$ERXDR,P,3.75,B,EngineOil#1,U,27.4,V,Battery#0,I,41.5,A,Charge,F,60.05,H,AC#0*7E");
        assertThat(log.values(Measurand.OIL_PRESSURE).get(0)).isCloseTo(375_000, within(1e-6));
        assertThat(log.values(Measurand.DC_VOLTAGE)).containsExactly(27.4);
        assertThat(log.values(Measurand.CURRENT)).containsExactly(41.5);
        assertThat(log.values(Measurand.AC_FREQUENCY)).containsExactly(60.05);
    }
}
