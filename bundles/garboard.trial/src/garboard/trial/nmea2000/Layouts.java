// SPDX-License-Identifier: EPL-2.0
package garboard.trial.nmea2000;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import garboard.trial.log.AcLine;
import garboard.trial.log.Measurand;
import garboard.trial.log.SourcedTable;

/** The layouts of all messages that are read, from {@code layouts.csv} beside this class, and what their codes mean. */
final class Layouts {

    private final List<MessageLayout> all;
    private final Map<Long, CodeMeaning> codes = new LinkedHashMap<>();

    private Layouts(List<MessageLayout> all) {
        this.all = List.copyOf(all);
    }

    /** What a code says the readings of its message are about. */
    record CodeMeaning(String detail, Optional<Measurand> measurand) {
    }

    static Layouts shared() {
        return Holder.SHARED;
    }

    List<MessageLayout> all() {
        return all;
    }

    Optional<MessageLayout> of(int pgn) {
        return all.stream().filter(layout -> layout.pgn() == pgn).findFirst();
    }

    /** {@return what a code means; one that is not known is told as its number} */
    CodeMeaning code(int pgn, int code) {
        CodeMeaning known = codes.get((long) pgn << 32 | code);
        return known != null ? known : new CodeMeaning("code " + code, Optional.empty());
    }

    private static Layouts load() {
        Map<Integer, List<String[]>> messages = new LinkedHashMap<>();
        for (String[] row : SourcedTable.of(Layouts.class, "layouts.csv").rows()) {
            messages.computeIfAbsent(Integer.valueOf(row[0]), pgn -> new ArrayList<>()).add(row);
        }
        Layouts layouts = new Layouts(messages.values().stream().map(Layouts::message).toList());
        for (String[] row : SourcedTable.of(Layouts.class, "codes.csv").rows()) {
            layouts.codes.put(Long.parseLong(row[0]) << 32 | Long.parseLong(row[1]),
                new CodeMeaning(row[2], row[3].isEmpty() ? Optional.empty() : Optional.of(Measurand.valueOf(row[3]))));
        }
        return layouts;
    }

    private static MessageLayout message(List<String[]> rows) {
        List<FieldLayout> fields = new ArrayList<>();
        Map<MessageLayout.Key, FieldLayout> keys = new EnumMap<>(MessageLayout.Key.class);
        for (String[] row : rows) {
            String[] from = row[4].split("\\.");
            int fromBit = 8 * Integer.parseInt(from[0]) + (from.length == 2 ? Integer.parseInt(from[1]) : 0);
            FieldLayout field = new FieldLayout(row[3], fromBit, Integer.parseInt(row[5]), Coding.valueOf(row[6]), row[7],
                Double.parseDouble(row[8]), row[9], meaning(row[10]));
            fields.add(field);
            if (row[10].startsWith("@")) {
                keys.put(MessageLayout.Key.valueOf(row[10].substring(1).toUpperCase(Locale.ROOT)), field);
            }
        }
        String[] first = rows.get(0);
        return new MessageLayout(Integer.parseInt(first[0]), first[1], first[2].equals("fast"), fields, keys);
    }

    /** {@code [line:]measurand[/detail]}. */
    private static FieldLayout.Meaning meaning(String text) {
        if (text.equals("-") || text.startsWith("@")) {
            return FieldLayout.Meaning.NONE;
        }
        int colon = text.indexOf(':');
        int slash = text.indexOf('/');
        AcLine line = colon < 0 ? AcLine.NONE : AcLine.valueOf(text.substring(0, colon));
        String detail = slash < 0 ? "" : text.substring(slash + 1);
        return new FieldLayout.Meaning(Optional.of(Measurand.valueOf(text.substring(colon + 1, slash < 0 ? text.length() : slash))), line, detail);
    }

    /** Read when first asked for. */
    private static final class Holder {

        static final Layouts SHARED = load();
    }
}
