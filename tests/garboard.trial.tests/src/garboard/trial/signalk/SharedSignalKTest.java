// SPDX-License-Identifier: EPL-2.0
package garboard.trial.signalk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;

import garboard.trial.log.LogOptions;
import garboard.trial.log.Measurand;
import garboard.trial.log.Mishap;
import garboard.trial.testing.Collected;
import garboard.trial.testing.SharedLogs;

/** Expected: the values of shared/logs, made by an independent converter from the messages of the trial, with that converter's faults. */
class SharedSignalKTest {

    private static Collected trial() {
        return Collected.from(new DeltaLogReader(LogOptions.NONE), SharedLogs.bytes("signalk-checkset.jsonl"));
    }

    /** All numbers under a path in the file, also within objects, where null means none. */
    private static List<Double> numbers(String path, String key) {
        List<Double> numbers = new ArrayList<>();
        for (JsonObject delta : SharedLogs.jsonLines("signalk-checkset.jsonl")) {
            for (JsonElement update : delta.getAsJsonArray("updates")) {
                for (JsonElement one : update.getAsJsonObject().getAsJsonArray("values")) {
                    JsonObject value = one.getAsJsonObject();
                    if (value.get("path").getAsString().equals(path)) {
                        JsonElement number = key.isEmpty() ? value.get("value") : value.getAsJsonObject("value").get(key);
                        if (!number.isJsonNull()) {
                            numbers.add(number.getAsDouble());
                        }
                    }
                }
            }
        }
        return numbers;
    }

    @Test
    void readsEveryDeltaOfTheTrial() {
        Collected log = trial();
        assertThat(log.tally().messages()).isEqualTo(381);
        assertThat(log.tally().of(Mishap.UNREADABLE_LINE)).isZero();
        assertThat(log.tally().of(Mishap.TIME_STEPS_BACK)).isZero();
    }

    @Test
    void readsTheValuesInTheirSiUnits() {
        Collected log = trial();
        assertThat(log.values(Measurand.OIL_PRESSURE)).hasSize(31).containsExactlyElementsOf(numbers("propulsion.port.oilPressure", ""));
        assertThat(log.values(Measurand.COOLANT_TEMPERATURE)).containsExactlyElementsOf(numbers("propulsion.port.temperature", ""));
        assertThat(log.values(Measurand.EXHAUST_TEMPERATURE)).containsExactlyElementsOf(numbers("propulsion.0.exhaustTemperature", ""));
        assertThat(log.values(Measurand.HEEL)).hasSize(31).containsExactlyElementsOf(numbers("navigation.attitude", "roll"));
        assertThat(log.values(Measurand.TRIM)).containsExactlyElementsOf(numbers("navigation.attitude", "pitch"));
        List<Double> speeds = log.values(Measurand.ENGINE_SPEED);
        List<Double> hertz = numbers("propulsion.port.revolutions", "");
        assertThat(speeds).hasSameSizeAs(hertz);
        for (int i = 0; i < speeds.size(); i++) {
            assertThat(speeds.get(i)).isCloseTo(2 * Math.PI * hertz.get(i), within(1e-9));
        }
    }

    @Test
    void doesNotBelieveTheConvertersThousandfoldPressures() {
        Collected log = trial();
        assertThat(log.values(Measurand.COOLANT_PRESSURE)).isEmpty();
        assertThat(log.tally().of(Mishap.IMPOSSIBLE)).isGreaterThanOrEqualTo(30);
        // before the first coolant pressure nothing gives the converter away
        assertThat(log.values(Measurand.FUEL_PRESSURE)).hasSizeLessThanOrEqualTo(1);
    }

    @Test
    void doesNotGiveOneLineTheValuesOfThree() {
        Collected log = trial();
        // the set of three lines (inverter 1) sends the same name three times in each delta
        assertThat(log.readings(channel -> channel.origin().message().startsWith("electrical.inverters.1."))).isEmpty();
        assertThat(log.tally().of(Mishap.AMBIGUOUS_VALUE)).isGreaterThan(100);
        assertThat(log.readings(channel -> channel.origin().message().equals("electrical.inverters.0.A.voltage"))).hasSize(31);
    }
}
