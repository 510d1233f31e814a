// SPDX-License-Identifier: EPL-2.0
package garboard.trial.nmea2000;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;

/** Holds a payload, taken apart by our layouts, against fields that others took apart: raw number, value in its unit, and state. */
final class ExpectedFields {

    private static final Map<String, Coding.State> STATES = Map.of("na", Coding.State.NOT_AVAILABLE, "out-of-range", Coding.State.OUT_OF_RANGE,
        "reserved", Coding.State.RESERVED, "error", Coding.State.OUT_OF_RANGE);

    private ExpectedFields() {
    }

    /** How many fields were compared; all that are expected have to be there. */
    static int assertDecoded(String what, int pgn, String payload, JsonObject expected) {
        MessageLayout layout = Layouts.shared().of(pgn).orElseThrow(() -> new AssertionError(what + ": no layout of " + pgn));
        byte[] bytes = HexFormat.of().parseHex(payload);
        int compared = 0;
        for (Map.Entry<String, JsonElement> field : expected.entrySet()) {
            if (field.getValue() instanceof JsonArray lines) {
                for (int i = 0; i < lines.size(); i++) {
                    for (Map.Entry<String, JsonElement> ofLine : lines.get(i).getAsJsonObject().entrySet()) {
                        assertField(what + " line " + i, layout, ofLine.getKey(), bytes, 8 * MessageLayout.LINE_BYTES * i, ofLine.getValue()
                            .getAsJsonObject());
                        compared++;
                    }
                }
            } else {
                assertField(what, layout, field.getKey(), bytes, 0, field.getValue().getAsJsonObject());
                compared++;
            }
        }
        return compared;
    }

    private static void assertField(String what, MessageLayout layout, String name, byte[] payload, int moved, JsonObject expected) {
        String whole = what + ", " + layout.pgn() + " " + name;
        List<FieldLayout> named = layout.fields().stream().filter(field -> field.name().equals(name)).toList();
        assertThat(named).as(whole).hasSize(1);
        FieldLayout field = named.get(0);
        String state = expected.has("state") ? expected.get("state").getAsString() : "ok";
        assertThat(field.isWithin(payload.length, moved)).as(whole + " is within").isEqualTo(!state.equals("absent"));
        if (state.equals("absent")) {
            return;
        }
        byte[] roomy = Arrays.copyOf(payload, payload.length + Bits.ROOM);
        long raw = field.raw(roomy, moved);
        assertThat(raw).as(whole + " raw").isEqualTo(expected.get("raw").getAsLong());
        Coding.State found = field.state(raw);
        if (!state.equals("ok")) {
            assertThat(found).as(whole + " state").isEqualTo(STATES.get(state));
            return;
        }
        // -1 in a field whose senders write all ones for not available is a value by the book, which we give no further
        assertThat(found).as(whole + " state").isEqualTo(raw == -1 && found == Coding.State.ALL_ONES ? Coding.State.ALL_ONES : Coding.State.VALUE);
        double value = expected.get("value").getAsDouble();
        assertThat(field.inUnit(raw)).as(whole).isCloseTo(value, within(1e-9 * Math.abs(value) + 1e-12));
    }
}
