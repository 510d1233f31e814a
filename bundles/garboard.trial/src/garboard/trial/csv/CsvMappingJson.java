// SPDX-License-Identifier: EPL-2.0
package garboard.trial.csv;

import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParseException;
import com.google.gson.JsonParser;

import garboard.trial.log.AcLine;
import garboard.trial.log.LogStamps;
import garboard.trial.log.Measurand;

/** A mapping as JSON. */
final class CsvMappingJson {

    private CsvMappingJson() {
    }

    static String write(CsvMapping mapping) {
        JsonObject json = new JsonObject();
        json.addProperty("separator", mapping.separator());
        json.addProperty("decimalSign", mapping.decimalSign());
        JsonArray headings = new JsonArray();
        mapping.headings().forEach(headings::add);
        json.add("headings", headings);
        JsonObject time = new JsonObject();
        time.addProperty("form", mapping.time().form().name());
        time.addProperty("column", mapping.time().column());
        time.addProperty("second", mapping.time().second());
        time.addProperty("order", mapping.time().order().name());
        time.addProperty("zone", mapping.time().zone().getId());
        json.add("time", time);
        JsonArray columns = new JsonArray();
        mapping.columns().forEach(column -> columns.add(column(column)));
        json.add("columns", columns);
        return new GsonBuilder().setPrettyPrinting().create().toJson(json) + "\n";
    }

    private static JsonObject column(CsvColumn column) {
        JsonObject json = new JsonObject();
        json.addProperty("index", column.index());
        json.addProperty("heading", column.heading());
        json.addProperty("measurand", column.measurand().name());
        json.addProperty("unit", column.unit());
        json.addProperty("line", column.line().name());
        return json;
    }

    /** {@return the mapping, nothing where the text is none of ours} */
    static Optional<CsvMapping> read(String text) {
        try {
            JsonObject json = JsonParser.parseString(text).getAsJsonObject();
            JsonObject time = part(json, "time").getAsJsonObject();
            List<String> headings = part(json, "headings").getAsJsonArray().asList().stream().map(JsonElement::getAsString).toList();
            List<CsvColumn> columns = new ArrayList<>();
            for (JsonElement one : part(json, "columns").getAsJsonArray()) {
                columns.add(column(one.getAsJsonObject()));
            }
            return Optional.of(new CsvMapping(sign(json, "separator"), sign(json, "decimalSign"), headings,
                new CsvTime(CsvTime.Form.valueOf(text(time, "form")), part(time, "column").getAsInt(), part(time, "second").getAsInt(),
                    LogStamps.DateOrder.valueOf(text(time, "order")), ZoneId.of(text(time, "zone"))),
                columns));
        } catch (JsonParseException | IllegalStateException | IllegalArgumentException | DateTimeException | UnsupportedOperationException notOurs) {
            return Optional.empty(); // all that Gson, the enumerations and the records throw
        }
    }

    private static CsvColumn column(JsonObject json) {
        return new CsvColumn(part(json, "index").getAsInt(), text(json, "heading"), Measurand.valueOf(text(json, "measurand")), text(json, "unit"),
            AcLine.valueOf(text(json, "line")));
    }

    private static JsonElement part(JsonObject json, String name) {
        JsonElement part = json.get(name);
        if (part == null) {
            throw new IllegalStateException("no " + name);
        }
        return part;
    }

    private static String text(JsonObject json, String name) {
        return part(json, name).getAsString();
    }

    private static char sign(JsonObject json, String name) {
        String text = text(json, name);
        if (text.length() != 1) {
            throw new IllegalStateException(name + " is " + text);
        }
        return text.charAt(0);
    }
}
