// SPDX-License-Identifier: EPL-2.0
package garboard.trial.nmea0183;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

import garboard.trial.log.Measurand;
import garboard.trial.log.SourcedTable;

/** What a transducer of an XDR sentence measures, by its type, unit and name. */
final class Transducers {

    private final List<Row> rows;

    private Transducers(List<Row> rows) {
        this.rows = rows;
    }

    /**
     * What is measured and the unit of its numbers.
     *
     * @param unit a unit of the measurand's kind
     */
    record Meaning(Measurand measurand, String unit) {

        double si(double number) {
            return measurand.kind().map(kind -> kind.of(number, unit).si()).orElse(number);
        }
    }

    private record Row(String type, String unit, Pattern name, Meaning meaning) {
    }

    static Transducers shared() {
        return Holder.SHARED;
    }

    /** {@return what it measures; nothing for a type or unit that is not known} */
    Optional<Meaning> meaning(String type, String unit, String name) {
        String lower = name.toLowerCase(Locale.ROOT).replace('#', ' ').replace('_', ' ');
        return rows.stream().filter(row -> row.type.equals(type) && row.unit.equals(unit) && row.name.matcher(lower).find())
            .map(Row::meaning).findFirst();
    }

    /** Read when first asked for. */
    private static final class Holder {

        static final Transducers SHARED = new Transducers(SourcedTable.of(Transducers.class, "transducers.csv").rows().stream()
            .map(row -> new Row(row[0], row[1], Pattern.compile(row[2]), new Meaning(Measurand.valueOf(row[3]), row[4]))).toList());
    }
}
