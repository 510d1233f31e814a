// SPDX-License-Identifier: EPL-2.0
package garboard.trial.csv;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import garboard.trial.log.Decimal;

/**
 * What the first lines of a table suggest about how to read it.
 *
 * @param mapping the proposal
 * @param doubts  what a person should look at, one sentence each
 */
public record CsvProposal(CsvMapping mapping, List<String> doubts) {

    private static final List<Character> SEPARATORS = List.of(',', ';', '\t', '|');
    /** As many lines as are looked at. */
    static final int MOST_LINES = 200;

    public CsvProposal {
        doubts = List.copyOf(doubts);
    }

    /** Rows as they look with one separator. */
    private record Sight(char separator, List<List<String>> rows, int width, long ofThatWidth) {

        static Sight through(char separator, List<String> lines) {
            CsvCells cells = new CsvCells(separator);
            List<List<String>> rows = lines.stream().map(cells::of).flatMap(Optional::stream).toList();
            Map<Integer, Long> widths = rows.stream().collect(Collectors.groupingBy(List::size, Collectors.counting()));
            return widths.entrySet().stream().filter(width -> width.getKey() > 1).max(Comparator.comparingLong(width -> width.getValue()))
                .map(width -> new Sight(separator, rows, width.getKey(), width.getValue())).orElse(new Sight(separator, rows, 1, 0));
        }

        /** The first row of the usual width that holds words, and those below it. */
        List<List<String>> table() {
            List<List<String>> usual = rows.stream().filter(row -> row.size() == width).toList();
            int headings = IntStream.range(0, usual.size()).filter(i -> isHeadings(usual.get(i))).findFirst().orElse(usual.size());
            return usual.subList(headings, usual.size());
        }

        private static boolean isHeadings(List<String> row) {
            return row.stream().noneMatch(cell -> Decimal.parse(cell).isPresent() || Decimal.parse(cell, ',').isPresent())
                && row.stream().filter(cell -> !cell.isEmpty()).count() > row.size() / 2;
        }
    }

    /**
     * {@return how to read a table that begins with these lines} Nothing where they are no table, have no headings or tell no time.
     *
     * @param zone where local times would be from
     */
    public static Optional<CsvProposal> of(List<String> firstLines, ZoneId zone) {
        List<String> lines = firstLines.stream().filter(line -> !line.isBlank() && !line.startsWith("#")).limit(MOST_LINES).toList();
        Sight best = SEPARATORS.stream().map(separator -> Sight.through(separator, lines))
            .max(Comparator.comparingLong(sight -> sight.ofThatWidth() * (sight.width() - 1))).orElseThrow();
        List<List<String>> table = best.table();
        if (table.size() < 2) {
            return Optional.empty();
        }
        List<List<String>> rows = table.subList(1, table.size());
        char decimalSign = best.separator() != ',' && hasCommas(rows) ? ',' : '.';
        return CsvTimeGuess.of(table.get(0), rows, decimalSign, zone).map(time -> of(best.separator(), decimalSign, table.get(0), time));
    }

    private static CsvProposal of(char separator, char decimalSign, List<String> headings, CsvTimeGuess time) {
        List<CsvColumn> columns = new ArrayList<>();
        for (int i = 0; i < headings.size(); i++) {
            if (i != time.time().column() && i != time.time().second()) {
                CsvHeading.read(i, headings.get(i)).ifPresent(columns::add);
            }
        }
        CsvMapping mapping = new CsvMapping(separator, decimalSign, headings, time.time(), columns);
        List<String> doubts = new ArrayList<>(time.doubts());
        if (!mapping.unread().isEmpty()) {
            doubts.add("What these columns hold, or in which unit, is not clear: " + String.join(", ", mapping.unread()) + ".");
        }
        columns.stream().collect(Collectors.groupingBy(column -> column.measurand().label() + " " + column.line().label())).values().stream()
            .filter(same -> same.size() > 1).forEach(same -> doubts.add("These columns seem to hold the same: "
                + same.stream().map(CsvColumn::heading).collect(Collectors.joining(", ")) + "."));
        return new CsvProposal(mapping, doubts);
    }

    /** {@return whether more cells are numbers with a comma than with a point} */
    private static boolean hasCommas(List<List<String>> rows) {
        Function<Character, Long> numbers = sign -> rows.stream().flatMap(List::stream)
            .filter(cell -> cell.indexOf(sign) >= 0 && Decimal.parse(cell, sign).isPresent()).count();
        return numbers.apply(',') > numbers.apply('.');
    }
}
