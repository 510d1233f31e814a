// SPDX-License-Identifier: EPL-2.0
package garboard.trial.nmea0183;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;

import garboard.trial.log.LogOptions;
import garboard.trial.log.LogStamps;
import garboard.trial.log.Measurand;
import garboard.trial.log.Mishap;
import garboard.trial.testing.Collected;
import garboard.trial.testing.SharedLogs;

/** Expected values: shared/logs, where an independent parser read the same sentences. */
class SharedNmea0183Test {

    private static final Instant START = Instant.parse("2026-09-22T07:00:00Z");

    /** Unit of a transducer: what one of it is in the SI unit, and what its zero is. */
    private static final Map<String, double[]> SI = Map.ofEntries(Map.entry("A D", new double[] {Math.PI / 180, 0}),
        Map.entry("C C", new double[] {1, 273.15}),
        Map.entry("P B", new double[] {1e5, 0}), Map.entry("P P", new double[] {1, 0}), Map.entry("T R", new double[] {2 * Math.PI / 60, 0}),
        Map.entry("U V", new double[] {1, 0}), Map.entry("I A", new double[] {1, 0}), Map.entry("F H", new double[] {1, 0}),
            Map.entry("R l", new double[] {1e-3, 0}),
        Map.entry("E P", new double[] {0.01, 0}), Map.entry("V M", new double[] {1, 0}));

    @TestFactory
    List<DynamicTest> readsTheSampleSentences() {
        List<DynamicTest> tests = new ArrayList<>();
        for (JsonElement one : SharedLogs.json("nmea0183-samples.json").getAsJsonArray("samples")) {
            JsonObject sample = one.getAsJsonObject();
            String line = sample.get("line").getAsString();
            tests.add(DynamicTest.dynamicTest(line, () -> assertRead(sample,
                Collected.from(new SentenceLogReader(LogOptions.NONE.startingAt(START)), line))));
        }
        assertThat(tests).hasSize(14);
        return tests;
    }

    private static void assertRead(JsonObject sample, Collected found) {
        if (sample.get("expect").isJsonNull()) {
            assertThat(found.readings()).isEmpty();
            assertThat(found.tally().of(Mishap.CHECKSUM)).isEqualTo(1);
            return;
        }
        JsonObject expected = sample.getAsJsonObject("expect");
        switch (expected.get("type").getAsString()) {
            case "RPM" -> assertSpeed(expected, found);
            case "XDR" -> assertTransducers(expected.getAsJsonArray("items"), found);
            case "MTW" -> assertThat(found.values(Measurand.SEA_TEMPERATURE)).containsExactly(expected.get("celsius").getAsDouble() + 273.15);
            case "ZDA" -> assertThat(found.values(Measurand.CLOCK)).containsExactly((double) Instant.parse(expected.get("utc").getAsString())
                .getEpochSecond());
            case "RMC" -> assertCourse(expected, found);
            default -> throw new AssertionError(expected);
        }
        assertThat(found.tally().of(Mishap.CHECKSUM)).isZero();
    }

    private static void assertSpeed(JsonObject expected, Collected found) {
        if (expected.get("rpm").isJsonNull()) {
            assertThat(found.readings()).isEmpty();
            assertThat(found.tally().of(Mishap.NOT_AVAILABLE)).isEqualTo(1);
            return;
        }
        assertThat(found.readings()).hasSize(1);
        Collected.Reading reading = found.readings().get(0);
        assertThat(reading.channel().measurand()).isEqualTo(Measurand.ENGINE_SPEED);
        assertThat(reading.channel().instance()).isEqualTo(expected.get("number").getAsString());
        assertThat(reading.si()).isCloseTo(expected.get("rpm").getAsDouble() * 2 * Math.PI / 60, within(1e-9));
        long time = expected.has("tagUnixTime") ? expected.get("tagUnixTime").getAsLong() * 1_000_000_000L : LogStamps.ns(START);
        assertThat(reading.timeNs()).isEqualTo(time);
    }

    private static void assertTransducers(JsonArray items, Collected found) {
        assertThat(found.readings()).hasSize(items.size());
        for (int i = 0; i < items.size(); i++) {
            JsonArray item = items.get(i).getAsJsonArray();
            double[] si = SI.get(item.get(0).getAsString() + " " + item.get(2).getAsString());
            Collected.Reading reading = found.readings().get(i);
            assertThat(reading.channel().instance()).isEqualTo(item.get(3).getAsString());
            assertThat(reading.si()).as(reading.channel().toString()).isCloseTo(item.get(1).getAsDouble() * si[0] + si[1], within(1e-9));
        }
    }

    private static void assertCourse(JsonObject expected, Collected found) {
        assertThat(found.values(Measurand.CLOCK)).containsExactly((double) Instant.parse(expected.get("utc").getAsString()).getEpochSecond());
        assertThat(Math.toDegrees(found.values(Measurand.LATITUDE).get(0))).isCloseTo(expected.get("latitude").getAsDouble(), within(1e-6));
        assertThat(Math.toDegrees(found.values(Measurand.LONGITUDE).get(0))).isCloseTo(expected.get("longitude").getAsDouble(), within(1e-6));
        assertThat(found.values(Measurand.SPEED_OVER_GROUND).get(0)).isCloseTo(expected.get("sogKnots").getAsDouble() * 1852 / 3600, within(1e-9));
        assertThat(Math.toDegrees(found.values(Measurand.COURSE_OVER_GROUND).get(0)))
            .isCloseTo(expected.get("cogDegrees").getAsDouble(), within(1e-9));
    }
}
