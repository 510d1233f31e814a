// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import garboard.model.CommissioningRecord;
import garboard.quantity.UnitSystem;

/** Finds things in reports by what a reader sees: names, headings and texts, never places. */
final class Sheets {

    private Sheets() {
    }

    static ReportOptions options(UnitSystem units) {
        return new ReportOptions(units, Paper.A4, ZonedDateTime.of(2031, 5, 4, 16, 20, 0, 0, ZoneOffset.UTC), "0.1.0");
    }

    static Report report(CommissioningRecord record) {
        return Reports.compose(record, SamplePractice.evaluate(record), options(UnitSystem.SI));
    }

    static Report sample() {
        return report(SampleRecord.make());
    }

    static List<Table> tables(Report report, String sheet) {
        return report.sheet(sheet).orElseThrow().blocks().stream().filter(Table.class::isInstance).map(Table.class::cast).toList();
    }

    /** The first table of a sheet in which a text stands in a cell of its own. */
    static Table tableWith(Report report, String sheet, String text) {
        return tables(report, sheet).stream().filter(table -> table.rows().stream().flatMap(row -> row.cells().stream())
            .anyMatch(cell -> text(cell).equals(text))).findFirst().orElseThrow(() -> new AssertionError("No table says \"" + text + "\""));
    }

    /** The number of the row in which a text stands. */
    static int row(Table table, String text) {
        for (int row = 0; row < table.rows().size(); row++) {
            if (table.rows().get(row).cells().stream().anyMatch(cell -> text(cell).equals(text))) {
                return row;
            }
        }
        throw new AssertionError("No row says \"" + text + "\" in " + table.rows());
    }

    static Cell cell(Table table, int row, String columnTitle) {
        for (int column = 0; column < table.columns().size(); column++) {
            if (table.columns().get(column).title().equals(columnTitle)) {
                return table.rows().get(row).cells().get(column);
            }
        }
        throw new AssertionError("No column is called " + columnTitle);
    }

    static double number(Table table, int row, String columnTitle) {
        String key = table.columns().stream().filter(column -> column.title().equals(columnTitle)).findFirst().orElseThrow().key();
        return table.number(row, key).orElseThrow();
    }

    static String text(Cell cell) {
        return switch (cell) {
            case Cell.Text text -> text.text();
            case Cell.Stands stands -> stands.standing().label();
            case Cell.Day day -> day.day().toString();
            default -> "";
        };
    }

    /** Everything that is written in words on a sheet. */
    static String words(Report report, String sheet) {
        return report.sheet(sheet).orElseThrow().blocks().stream().map(Sheets::words).collect(Collectors.joining("\n"));
    }

    private static String words(Block block) {
        return switch (block) {
            case Block.Heading heading -> heading.text();
            case Block.Paragraph paragraph -> paragraph.text();
            case Block.KeyValues pairs -> pairs.entries().stream().map(entry -> entry.label() + ": " + text(entry.value()))
                .collect(Collectors.joining("\n"));
            case Block.SignatureLines lines -> Stream.concat(Stream.of(lines.statement()), lines.signatories().stream().map(Object::toString))
                .collect(Collectors.joining("\n"));
            case Table table -> table.rows().stream().flatMap(row -> row.cells().stream()).map(Sheets::text).collect(Collectors.joining("\n"));
            case Picture picture -> picture.alternative();
            default -> "";
        };
    }
}
