// SPDX-License-Identifier: EPL-2.0
package garboard.trial.csv;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import garboard.quantity.Kind;
import garboard.trial.log.AcLine;
import garboard.trial.log.Measurand;
import garboard.trial.log.SourcedTable;

/**
 * What a heading most likely means: words and a unit, such as {@code gen.voltage[V]}, {@code Coolant (°C)} or {@code speed_rpm}. Without a
 * unit nothing is proposed but for a pure number, because a number without unit is not a measurement.
 */
final class CsvHeading {

    private static final Pattern BRACKETED = Pattern.compile("(.*?)\\s*[\\[(]\\s*([^\\])]*?)\\s*[\\])]\\s*");
    private static final Pattern LAST_WORD = Pattern.compile("(.*?)[\\s_./]+(\\S+)");
    private static final Pattern LINE = Pattern.compile("(?:\\bl|line|phase|leiter|\\b[uip])[ _.-]?([123])\\b");
    /** What is left of the sign for degrees when a file is not in UTF-8. */
    private static final String UNREADABLE_SIGN = "\uFFFD";

    private CsvHeading() {
    }

    private record Row(Pattern word, Measurand measurand) {
    }

    /** The unit as it stands in the heading, and what is left. */
    private record Parts(String words, String unit) {
    }

    /** {@return what the column is, as far as its heading tells} */
    static Optional<CsvColumn> read(int index, String heading) {
        return parts(heading).stream().map(parts -> column(index, heading, parts)).flatMap(Optional::stream).findFirst();
    }

    private static List<Parts> parts(String heading) {
        String text = heading.strip().replace(UNREADABLE_SIGN, "°");
        Matcher bracketed = BRACKETED.matcher(text);
        if (bracketed.matches()) {
            return List.of(new Parts(bracketed.group(1), bracketed.group(2)));
        }
        Matcher last = LAST_WORD.matcher(text);
        return last.matches() ? List.of(new Parts(last.group(1), last.group(2)), new Parts(text, "")) : List.of(new Parts(text, ""));
    }

    private static Optional<CsvColumn> column(int index, String heading, Parts parts) {
        String words = parts.words().toLowerCase(Locale.ROOT).replace('_', ' ');
        return Words.ROWS.stream().filter(row -> row.word.matcher(words).find()).map(Row::measurand)
            .filter(measurand -> fits(measurand, parts.unit()))
            .findFirst().map(measurand -> new CsvColumn(index, heading, measurand, unit(measurand, parts.unit()), line(words)));
    }

    private static boolean fits(Measurand measurand, String unit) {
        Optional<Kind<?>> kind = measurand.kind();
        return kind.isPresent() && (kind.get().accepts(unit) || unit.isEmpty() && measurand == Measurand.POWER_FACTOR);
    }

    private static String unit(Measurand measurand, String unit) {
        return unit.isEmpty() ? measurand.kind().map(Kind::siUnit).orElse("") : unit;
    }

    private static AcLine line(String words) {
        Matcher matcher = LINE.matcher(words);
        return matcher.find() ? AcLine.valueOf("L" + matcher.group(1)) : AcLine.NONE;
    }

    /** Read when first asked for. */
    private static final class Words {

        static final List<Row> ROWS = SourcedTable.of(CsvHeading.class, "headings.csv").rows().stream()
            .map(row -> new Row(Pattern.compile(row[0]), Measurand.valueOf(row[1]))).toList();
    }
}
