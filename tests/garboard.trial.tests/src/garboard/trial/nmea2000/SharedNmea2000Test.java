// SPDX-License-Identifier: EPL-2.0
package garboard.trial.nmea2000;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.DynamicTest;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;

import garboard.trial.log.LogOptions;
import garboard.trial.log.Mishap;
import garboard.trial.testing.Collected;
import garboard.trial.testing.SharedLogs;

/**
 * Expected values: the files in shared/logs, made with an independent open-source encoder and decoder (Apache-2.0), checked there with a
 * second decoder and a third table; where they are known to differ, {@code knownDifferences} in the files says who is right.
 */
class SharedNmea2000Test {

    private static Collected read(String file) {
        return Collected.from(FrameLogReader.candump(LogOptions.NONE), SharedLogs.bytes(file));
    }

    private static List<JsonObject> expected(String file) {
        return SharedLogs.jsonLines(file).stream().filter(line -> line.has("payload")).toList();
    }

    @Test
    void takesTheHandPackedMessagesApart() {
        int messages = 0;
        for (JsonElement vector : SharedLogs.json("n2k-vectors.json").getAsJsonArray("vectors")) {
            JsonObject v = vector.getAsJsonObject();
            ExpectedFields.assertDecoded(v.get("id").getAsString(), v.get("pgn").getAsInt(), v.get("payload").getAsString(),
                v.getAsJsonObject("fields"));
            List<Delivered> delivered = Delivered.from(lines(v));
            assertThat(delivered).as(v.get("id").getAsString()).extracting(Delivered::pgn).containsExactly(v.get("pgn").getAsInt());
            assertThat(delivered.get(0).payload()).as(v.get("id").getAsString()).isEqualTo(v.get("payload").getAsString());
            messages++;
        }
        assertThat(messages).isEqualTo(47);
    }

    @TestFactory
    List<DynamicTest> putsFastPacketsTogether() {
        List<DynamicTest> tests = new ArrayList<>();
        for (JsonElement one : SharedLogs.json("n2k-vectors.json").getAsJsonArray("reassembly")) {
            JsonObject r = one.getAsJsonObject();
            tests.add(DynamicTest.dynamicTest(r.get("id").getAsString() + " " + r.get("title").getAsString(), () -> {
                List<Delivered> delivered = Delivered.from(lines(r));
                // R7 is a free choice: out of order means that a frame was lost, see FastPackets
                int messages = r.get("expectedMessages").isJsonNull() ? 0 : r.get("expectedMessages").getAsInt();
                assertThat(delivered).hasSize(messages);
                for (int i = 0; i < messages; i++) {
                    // The other decoder keeps the filling of the last frame and adds zeros.
                    String theirs = r.getAsJsonArray("deliveredPayloads").get(i).getAsString();
                    assertThat(theirs).startsWith(delivered.get(i).payload());
                    assertThat(theirs.substring(delivered.get(i).payload().length())).matches("(FF)*0*");
                }
            }));
        }
        assertThat(tests).hasSize(12);
        return tests;
    }

    @Test
    void takesTheMessagesOfTheTrialApart() {
        int fields = 0;
        for (JsonObject message : expected("n2k-checkset-expected.jsonl")) {
            fields += ExpectedFields.assertDecoded("message " + message.get("n"), message.get("pgn").getAsInt(), message.get("payload").getAsString(),
                message.getAsJsonObject("fields"));
        }
        assertThat(fields).isGreaterThan(3000);
    }

    @Test
    void findsTheMessagesOfTheTrialInItsLog() {
        List<Delivered> delivered = Delivered.from(new String(SharedLogs.bytes("n2k-checkset.log"), StandardCharsets.US_ASCII));
        assertThat(delivered).extracting(Delivered::payload)
            .containsExactlyElementsOf(expected("n2k-checkset-expected.jsonl").stream().map(message -> message.get("payload").getAsString())
                .toList());
        Collected readings = read("n2k-checkset.log");
        assertThat(readings.tally().messages()).isEqualTo(590);
        assertThat(readings.tally().frames()).isEqualTo(856);
        assertThat(readings.tally().of(Mishap.CUT_MESSAGE)).isZero();
    }

    @Test
    void findsWhatIsWholeInAMixedLogAndCountsTheRest() {
        List<JsonObject> whole = expected("n2k-checkset-expected.jsonl").stream().filter(message -> !message.has("lost")).toList();
        List<Delivered> delivered = Delivered.from(new String(SharedLogs.bytes("n2k-checkset-interleaved.log"), StandardCharsets.US_ASCII));
        assertThat(delivered.stream().filter(message -> message.bus().equals("can0")).map(Delivered::payload))
            .containsExactlyInAnyOrderElementsOf(whole.stream().map(message -> message.get("payload").getAsString()).toList()).hasSize(581);
        Collected readings = read("n2k-checkset-interleaved.log");
        assertThat(readings.tally().of(Mishap.CUT_MESSAGE)).isEqualTo(9);
        // 36 foreign lines, of which four come from the second bus and are read
        assertThat(readings.tally().messages()).isEqualTo(581 + 4);
        assertThat(readings.tally().of(Mishap.FOREIGN_FRAME) + readings.tally().of(Mishap.FOREIGN_MESSAGE)).isEqualTo(36 - 4);
        assertThat(readings.tally().firstLine(Mishap.CUT_MESSAGE)).isEqualTo(70);
    }

    @Test
    void readsARealVesselWhoseTimeStepsBack() {
        List<JsonObject> messages = expected("recorded/vessel-excerpt-expected.jsonl");
        for (JsonObject message : messages) {
            ExpectedFields.assertDecoded("message " + message.get("n"), message.get("pgn").getAsInt(), message.get("payload").getAsString(),
                message.getAsJsonObject("fields"));
        }
        List<Delivered> delivered = Delivered.from(new String(SharedLogs.bytes("recorded/vessel-excerpt.log"), StandardCharsets.US_ASCII));
        assertThat(delivered).extracting(Delivered::payload).containsExactlyElementsOf(messages.stream().map(m -> m.get("payload").getAsString())
            .toList());
        Collected readings = read("recorded/vessel-excerpt.log");
        assertThat(readings.tally().messages()).isEqualTo(559);
        assertThat(readings.tally().frames()).isEqualTo(699);
        assertThat(readings.tally().of(Mishap.TIME_STEPS_BACK)).isEqualTo(59);
        // 40 times fuel rate, load and torque all ones, 12 times a battery at 0 K
        assertThat(readings.tally().of(Mishap.ALL_ONES)).isEqualTo(3 * 40);
        assertThat(readings.tally().of(Mishap.IMPOSSIBLE)).isEqualTo(12);
        // the stopped engines 11 and 12 say 0 all along
        assertThat(readings.intake().sentences()).filteredOn(sentence -> sentence.contains("stands for none")).isNotEmpty()
            .allMatch(sentence -> sentence.contains("oil pressure, 1"));
    }

    @Test
    void readsARealLogWhoseLastMessageIsCutOff() {
        List<Delivered> delivered = Delivered.from(new String(SharedLogs.bytes("recorded/candump-fast.log"), StandardCharsets.US_ASCII));
        var expected = SharedLogs.json("recorded/candump-fast-expected.json").getAsJsonArray("messages");
        assertThat(delivered).hasSize(expected.size());
        for (int i = 0; i < expected.size(); i++) {
            JsonObject fields = expected.get(i).getAsJsonObject().getAsJsonObject("fields");
            Map<String, Double> ours = delivered.get(i).values();
            for (String name : List.of("oilPressure", "oilTemperature", "temperature", "alternatorPotential", "fuelRate", "coolantPressure",
                "fuelPressure")) {
                // printed by the other decoder to the decimals of the resolution
                assertThat(ours.get(name)).as(name + " of message " + i).isEqualTo(fields.get(name).getAsDouble(), within(1e-6));
            }
            String[] hours = fields.get("totalEngineHours").getAsString().split(":");
            assertThat(ours.get("totalEngineHours"))
                .isEqualTo(3600.0 * Integer.parseInt(hours[0]) + 60 * Integer.parseInt(hours[1]) + Integer.parseInt(hours[2]));
            assertThat(ours).doesNotContainKeys("engineLoad", "engineTorque");
        }
        Collected readings = read("recorded/candump-fast.log");
        assertThat(readings.tally().of(Mishap.CUT_MESSAGE)).isEqualTo(1);
        assertThat(readings.tally().isTimeRelative()).isTrue();
    }

    @Test
    void takesTheSamplesOfTheOpenDatabaseApart() {
        int samples = 0;
        for (JsonElement one : SharedLogs.json(SharedLogs.ending("recorded", "-db-samples.json")).getAsJsonArray("samples")) {
            JsonObject sample = one.getAsJsonObject();
            ExpectedFields.assertDecoded("sample " + samples++, sample.get("pgn").getAsInt(), sample.get("payload").getAsString(),
                sample.getAsJsonObject("fields"));
        }
        assertThat(samples).isEqualTo(63);
    }

    private static String lines(JsonObject of) {
        return StreamSupport.stream(of.getAsJsonArray("lines").spliterator(), false).map(JsonElement::getAsString).collect(Collectors.joining("\n"));
    }
}
