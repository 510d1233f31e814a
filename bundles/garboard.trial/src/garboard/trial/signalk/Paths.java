// SPDX-License-Identifier: EPL-2.0
package garboard.trial.signalk;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import garboard.trial.log.AcLine;
import garboard.trial.log.Measurand;
import garboard.trial.log.SourcedTable;

/** What the paths of Signal K mean, from {@code paths.csv}. */
final class Paths {

    private static final Map<String, AcLine> LINES = Map.of("single", AcLine.NONE, "A", AcLine.L1, "B", AcLine.L2, "C", AcLine.L3);
    private static final Map<String, Double> STATES = Map.of("stopped", 0.0, "started", 1.0, "unusable", 2.0, "leading", 0.0, "lagging", 1.0);

    private final List<Row> rows;

    private Paths(List<Row> rows) {
        this.rows = rows;
    }

    private record Row(Pattern pattern, Set<String> parts, Measurand measurand, String unit) {

        private static final Pattern PART = Pattern.compile("\\{(\\w+)}");

        static Row of(String[] cells) {
            String pattern = PART.matcher(cells[0].replace(".", "\\.")).replaceAll("(?<$1>[^.]+)");
            Set<String> parts = PART.matcher(cells[0]).results().map(part -> part.group(1)).collect(Collectors.toSet());
            return new Row(Pattern.compile(pattern), parts, Measurand.valueOf(cells[1]), cells[2]);
        }

        Optional<Meaning> meaning(String path) {
            Matcher matcher = pattern.matcher(path);
            if (!matcher.matches()) {
                return Optional.empty();
            }
            AcLine line = parts.contains("line") ? LINES.get(matcher.group("line")) : AcLine.NONE;
            return line == null ? Optional.empty()
                : Optional.of(new Meaning(measurand, unit, line, part(matcher, "instance"), part(matcher, "detail")));
        }

        private String part(Matcher matcher, String name) {
            return parts.contains(name) ? matcher.group(name) : "";
        }
    }

    /** What a path means, and the unit of its numbers, empty for texts. */
    record Meaning(Measurand measurand, String unit, AcLine line, String instance, String detail) {

        double si(double number) {
            return measurand.kind().map(kind -> kind.of(number, unit).si()).orElse(number);
        }

        /** {@return whether the values are words} */
        boolean isState() {
            return measurand.kind().isEmpty();
        }
    }

    static Paths shared() {
        return Holder.SHARED;
    }

    Optional<Meaning> meaning(String path) {
        return rows.stream().map(row -> row.meaning(path)).flatMap(Optional::stream).findFirst();
    }

    /** {@return the code of a state: of an engine 0 stopped, 1 started, 2 unusable; of a power factor 0 leading, 1 lagging} */
    static Optional<Double> state(String word) {
        return Optional.ofNullable(STATES.get(word));
    }

    /** Read when first asked for. */
    private static final class Holder {

        static final Paths SHARED = new Paths(SourcedTable.of(Paths.class, "paths.csv").rows().stream().map(Row::of).toList());
    }
}
