// SPDX-License-Identifier: EPL-2.0
package garboard.trial.signalk;

import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import com.google.gson.stream.JsonReader;
import com.google.gson.stream.JsonToken;

/**
 * One line of a Signal K log.
 *
 * @param context whom it is about, empty where that is not said
 * @param self    who the server itself is, which a greeting at the beginning tells; mostly empty
 * @param updates what is new; none in a greeting
 */
record Delta(String context, String self, List<Update> updates) {

    /** One source at one time. */
    record Update(String source, String timestamp, List<Value> values) {
    }

    /**
     * One value, those within an object each by itself.
     *
     * @param text empty for null and for what is no value, such as a list
     */
    record Value(String path, Type type, String text) {
    }

    /** What stood in the JSON. */
    enum Type {
        NUMBER, STRING, NULL, OTHER
    }

    /** {@return the delta, nothing where the text is not JSON, is cut off, or is built otherwise} */
    static Optional<Delta> read(Reader text) {
        try {
            JsonReader json = new JsonReader(text);
            Delta delta = delta(json);
            return json.peek() == JsonToken.END_DOCUMENT ? Optional.of(delta) : Optional.empty();
        } catch (IOException | IllegalStateException | NumberFormatException broken) { // all that JsonReader throws
            return Optional.empty();
        }
    }

    private static Delta delta(JsonReader json) throws IOException {
        String context = "";
        String self = "";
        List<Update> updates = new ArrayList<>();
        json.beginObject();
        while (json.hasNext()) {
            switch (json.nextName()) {
                case "context" -> context = json.nextString();
                case "self" -> self = json.nextString();
                case "updates" -> {
                    json.beginArray();
                    while (json.hasNext()) {
                        updates.add(update(json));
                    }
                    json.endArray();
                }
                default -> json.skipValue();
            }
        }
        json.endObject();
        return new Delta(context, self, updates);
    }

    private static Update update(JsonReader json) throws IOException {
        String source = "";
        String timestamp = "";
        List<Value> values = new ArrayList<>();
        json.beginObject();
        while (json.hasNext()) {
            switch (json.nextName()) {
                case "$source" -> source = json.nextString();
                case "source" -> source = source(json);
                case "timestamp" -> timestamp = json.nextString();
                case "values" -> {
                    json.beginArray();
                    while (json.hasNext()) {
                        pathAndValue(json, values);
                    }
                    json.endArray();
                }
                default -> json.skipValue();
            }
        }
        json.endObject();
        return new Update(source, timestamp, values);
    }

    /** Label, and address or talker. */
    private static String source(JsonReader json) throws IOException {
        String label = "";
        String address = "";
        json.beginObject();
        while (json.hasNext()) {
            String name = json.nextName();
            boolean text = json.peek() == JsonToken.STRING || json.peek() == JsonToken.NUMBER;
            if (text && name.equals("label")) {
                label = json.nextString();
            } else if (text && (name.equals("src") || name.equals("talker"))) {
                address = json.nextString();
            } else {
                json.skipValue();
            }
        }
        json.endObject();
        return Stream.of(label, address).filter(part -> !part.isEmpty()).collect(Collectors.joining("."));
    }

    private static void pathAndValue(JsonReader json, List<Value> values) throws IOException {
        String path = "";
        List<Value> found = new ArrayList<>();
        json.beginObject();
        while (json.hasNext()) {
            switch (json.nextName()) {
                case "path" -> path = json.nextString();
                case "value" -> value(json, "", found);
                default -> json.skipValue();
            }
        }
        json.endObject();
        for (Value one : found) {
            values.add(new Value(path + one.path, one.type, one.text));
        }
    }

    /** JsonReader itself refuses what is nested too deep. */
    private static void value(JsonReader json, String path, List<Value> values) throws IOException {
        switch (json.peek()) {
            case NUMBER -> values.add(new Value(path, Type.NUMBER, json.nextString()));
            case STRING -> values.add(new Value(path, Type.STRING, json.nextString()));
            case NULL -> {
                json.nextNull();
                values.add(new Value(path, Type.NULL, ""));
            }
            case BEGIN_OBJECT -> {
                json.beginObject();
                while (json.hasNext()) {
                    value(json, path + "." + json.nextName(), values);
                }
                json.endObject();
            }
            default -> {
                json.skipValue();
                values.add(new Value(path, Type.OTHER, ""));
            }
        }
    }
}
