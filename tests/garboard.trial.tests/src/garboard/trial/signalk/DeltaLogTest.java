// SPDX-License-Identifier: EPL-2.0
package garboard.trial.signalk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;

import org.junit.jupiter.api.Test;

import garboard.trial.log.AcLine;
import garboard.trial.log.LogOptions;
import garboard.trial.log.LogStamps;
import garboard.trial.log.Measurand;
import garboard.trial.log.Mishap;
import garboard.trial.testing.Collected;

/** Deltas made up here by the Signal K specification 1.8: values always SI, revolutions in hertz, angles in radians, roll to starboard positive. */
class DeltaLogTest {

    private static final String TIME = "\"timestamp\":\"2026-03-05T10:30:15.250Z\"";

    private static Collected read(String... lines) {
        return Collected.from(new DeltaLogReader(LogOptions.NONE), lines);
    }

    private static String update(String source, String values) {
        return "{\"updates\":[{\"$source\":\"" + source + "\"," + TIME + ",\"values\":[" + values + "]}]}";
    }

    private static String value(String path, String value) {
        return "{\"path\":\"" + path + "\",\"value\":" + value + "}";
    }

    @Test
    void readsAnEngineAndItsSource() {
        Collected log = read(update("n2k.35", value("propulsion.gen.revolutions", "25.5") + "," + value("propulsion.gen.oilPressure", "412300")));
        assertThat(log.readings()).hasSize(2);
        assertThat(log.readings().get(0).channel().origin().sender()).isEqualTo("n2k.35");
        assertThat(log.readings().get(0).channel().instance()).isEqualTo("gen");
        assertThat(log.readings().get(0).timeNs()).isEqualTo(LogStamps.ns(Instant.parse("2026-03-05T10:30:15.250Z")));
        // 25.5 turns a second
        assertThat(log.values(Measurand.ENGINE_SPEED).get(0)).isCloseTo(160.22122533, within(1e-8));
        assertThat(log.values(Measurand.OIL_PRESSURE)).containsExactly(412300.0);
    }

    @Test
    void putsTheSourceObjectTogether() {
        Collected log = read("{\"updates\":[{\"source\":{\"label\":\"bus\",\"type\":\"NMEA2000\",\"pgn\":127508,\"src\":\"17\"}," + TIME
            + ",\"values\":[" + value("electrical.batteries.house.voltage", "25.61") + "]}]}");
        assertThat(log.readings().get(0).channel().origin().sender()).isEqualTo("bus.17");
    }

    @Test
    void tellsPhasesApart() {
        Collected log = read(update("a", value("electrical.ac.gen.phase.A.lineNeutralVoltage", "231.2") + ","
            + value("electrical.ac.gen.phase.C.lineNeutralVoltage", "229.9")));
        assertThat(log.readings()).extracting(reading -> reading.channel().line()).containsExactly(AcLine.L1, AcLine.L3);
    }

    @Test
    void takesObjectsApart() {
        Collected log = read(update("imu", value("navigation.attitude", "{\"roll\":-0.2182,\"pitch\":0.0401,\"yaw\":null}")));
        assertThat(log.values(Measurand.HEEL)).containsExactly(-0.2182);
        assertThat(log.values(Measurand.TRIM)).containsExactly(0.0401);
        assertThat(log.values(Measurand.YAW)).isEmpty();
        assertThat(log.tally().of(Mishap.NOT_AVAILABLE)).isEqualTo(1);
    }

    @Test
    void leavesTheTrafficAroundOut() {
        String other = "{\"context\":\"vessels.urn:mrn:imo:mmsi:200000001\"," + update("ais", value("navigation.speedOverGround", "7.5"))
            .substring(1);
        String own = "{\"context\":\"vessels.urn:mrn:imo:mmsi:200000002\"," + update("gps", value("navigation.speedOverGround", "3.1")).substring(1);
        Collected log = read("{\"name\":\"server\",\"version\":\"2.0.0\",\"self\":\"vessels.urn:mrn:imo:mmsi:200000002\"}", other, own);
        assertThat(log.values(Measurand.SPEED_OVER_GROUND)).containsExactly(3.1);
        assertThat(log.tally().foreignByKind()).containsKey("navigation.speedOverGround");
    }

    @Test
    void countsWhatIsCutOffAndKeepsNothingOfIt() {
        String whole = update("a", value("propulsion.gen.oilPressure", "412300"));
        Collected log = read(whole.substring(0, whole.length() - 2), "[1,2]", "nonsense", whole + "}", whole);
        assertThat(log.values(Measurand.OIL_PRESSURE)).hasSize(1);
        assertThat(log.tally().of(Mishap.UNREADABLE_LINE)).isEqualTo(4);
    }

    @Test
    void refusesOneNameForSeveralLines() {
        Collected log = read(update("n2k.41", value("electrical.inverters.0.A.voltage", "230.1") + ","
            + value("electrical.inverters.0.A.voltage", "229.9")));
        assertThat(log.readings()).isEmpty();
        assertThat(log.tally().of(Mishap.AMBIGUOUS_VALUE)).isEqualTo(2);
    }

    @Test
    void doesNotBelieveAFuelPressureBesideAnImpossibleCoolantPressure() {
        Collected log = read(update("n2k.35", value("propulsion.0.coolantPressure", "98700000") + ","
            + value("propulsion.0.fuel.pressure", "32000000")),
            update("n2k.36", value("propulsion.1.fuel.pressure", "320000")));
        assertThat(log.values(Measurand.COOLANT_PRESSURE)).isEmpty();
        assertThat(log.values(Measurand.FUEL_PRESSURE)).containsExactly(320000.0);
        assertThat(log.tally().of(Mishap.IMPOSSIBLE)).isEqualTo(2);
    }

    @Test
    void readsWhatAServerWroteByItself() {
        // 1772706615250 ms is 2026-03-05T10:30:15.250Z
        Collected log = read("1772706615250;nmea0183;$ERRPM,E,1,1798.0,,A*58",
            "1772706615251;n2k;2026-03-05T10:30:15.251Z,2,127488,35,255,8,01,72,17,b0,04,7f,ff,ff",
            "1772706615252;sk;" + update("a", value("propulsion.gen.temperature", "358.15")));
        assertThat(log.readings()).extracting(reading -> reading.channel().measurand())
            .containsExactly(Measurand.ENGINE_SPEED, Measurand.ENGINE_SPEED,
            Measurand.BOOST_PRESSURE, Measurand.COOLANT_TEMPERATURE);
        assertThat(log.readings().get(0).timeNs()).isEqualTo(LogStamps.ns(Instant.parse("2026-03-05T10:30:15.250Z")));
        assertThat(log.tally().messagesByKind()).containsOnlyKeys("RPM", "127488", "delta");
    }

    @Test
    void doesNotFillTheMemoryWithNames() {
        String[] lines = new String[5000];
        for (int i = 0; i < lines.length; i++) {
            lines[i] = update("a", value("propulsion." + "x".repeat(20_000) + i + ".oilPressure", "412300"));
        }
        Collected log = read(lines);
        assertThat(log.intake().channels()).allMatch(count -> count.channel().instance().length() <= 200).hasSize(1);
    }

    @Test
    void leavesOutUpdatesWithoutTime() {
        Collected log = read("{\"updates\":[{\"$source\":\"a\",\"values\":[" + value("propulsion.gen.temperature", "358.15") + "]}]}");
        assertThat(log.readings()).isEmpty();
        assertThat(log.tally().of(Mishap.NO_TIME)).isEqualTo(1);
    }
}
