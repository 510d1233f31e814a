// SPDX-License-Identifier: EPL-2.0
package garboard.report.excel;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.util.CellAddress;
import org.apache.poi.ss.util.CellReference;

import garboard.report.Cell;
import garboard.report.Table;
import garboard.report.excel.Line.Content;
import garboard.report.excel.Line.Placed;

/** Turns one table into rows of the sheet. */
final class TableLayout {

    private static final double ROW_PADDING_PT = 2.75;
    /** A third of a page. */
    private static final double KEPT_TOGETHER_PT = 240;

    private final Table table;
    private final SheetGrid grid;
    private final List<SheetGrid.Span> spans;
    private final List<Line> lines = new ArrayList<>();
    private final int firstLine;
    /** Row of the sheet in which each row of the table begins. */
    private final int[] lineOfRow;

    private TableLayout(Table table, SheetGrid grid, int firstLine) {
        this.table = table;
        this.grid = grid;
        this.firstLine = firstLine;
        this.spans = grid.spans(table.columns().stream().mapToDouble(Table.Column::widthMm).toArray());
        this.lineOfRow = new int[table.rows().size()];
    }

    /** @param firstLine row of the sheet that the heading will have */
    static TableLayout of(Table table, SheetGrid grid, int firstLine) {
        var layout = new TableLayout(table, grid, firstLine);
        if (table.columns().stream().anyMatch(column -> !column.title().isEmpty())) {
            layout.addHead();
        }
        for (int row = 0; row < table.rows().size(); row++) {
            layout.lineOfRow[row] = firstLine + layout.lines.size();
            layout.addRow(row);
        }
        layout.keepSmallTogether();
        return layout;
    }

    /** A small table, such as all that is said of one shortfall, does not go over two pages. */
    private void keepSmallTogether() {
        if (table.repeated() || lines.stream().mapToDouble(Line::heightPt).sum() > KEPT_TOGETHER_PT) {
            return;
        }
        for (int index = 0; index + 1 < lines.size(); index++) {
            Line line = lines.get(index);
            lines.set(index, new Line(line.heightPt(), true, line.breakBefore(), line.cells()));
        }
    }

    List<Line> lines() {
        return lines;
    }

    /** {@return the cell of the sheet that holds a row's cell of a column} */
    CellAddress address(int row, int column) {
        return new CellAddress(lineOfRow[row], spans.get(column).first());
    }

    Table table() {
        return table;
    }

    private void addHead() {
        var cells = new ArrayList<Placed>();
        for (int index = 0; index < spans.size(); index++) {
            Table.Column column = table.columns().get(index);
            cells.add(new Placed(spans.get(index), new Content.Words(column.title()), sized(CellLooks.head(column.kind(), afterNumber(index)))));
        }
        lines.add(Rows.line(cells, grid, ROW_PADDING_PT, true));
    }

    private void addRow(int row) {
        Table.Row content = table.rows().get(row);
        if (content.kind() == Table.RowKind.GROUP) {
            Content words = content(content.cells().getFirst(), row);
            lines.add(Rows.line(List.of(new Placed(tableSpan(), words, CellLooks.GROUP)), grid, ROW_PADDING_PT + 2, true));
            return;
        }
        var cells = new ArrayList<Placed>();
        for (int index = 0; index < spans.size(); index++) {
            Cell cell = content.cells().get(index);
            cells.add(new Placed(spans.get(index), content(cell, row),
                sized(CellLooks.cell(cell, table.columns().get(index).kind(), content.kind(), afterNumber(index)))));
        }
        boolean beforeTotal = row + 1 < table.rows().size() && table.rows().get(row + 1).kind() == Table.RowKind.TOTAL;
        lines.addAll(Rows.split(cells, grid, ROW_PADDING_PT, beforeTotal));
    }

    private boolean afterNumber(int column) {
        return column > 0 && table.columns().get(column - 1).kind() == Table.Kind.NUMBER;
    }

    private Look sized(Look look) {
        return switch (table.size()) {
            case USUAL -> look;
            case LARGE -> look.size(CellLooks.LARGE_PT);
            case SMALL -> look.size(CellLooks.SMALL_PT);
        };
    }

    private SheetGrid.Span tableSpan() {
        return new SheetGrid.Span(spans.getFirst().first(), spans.getLast().last());
    }

    private Content content(Cell cell, int row) {
        return switch (cell) {
            case Cell.Blank blank -> Line.NOTHING;
            case Cell.Text text -> new Content.Words(text.text());
            case Cell.Number number -> new Content.Figure(number.value());
            case Cell.Stands stands -> new Content.Words(CellLooks.standingText(stands.standing()));
            case Cell.Day day -> new Content.Date(day.day());
            case Cell.Computed computed -> formula(computed, row);
            case Cell.DayAfter after -> dayAfter(after, row);
        };
    }

    private Content formula(Cell.Computed computed, int row) {
        OptionalDouble value = table.columns().stream().filter(column -> at(row, column.key()) == computed).findFirst()
            .map(column -> table.number(row, column.key())).orElse(OptionalDouble.empty());
        if (value.isEmpty() || !Double.isFinite(value.getAsDouble())) {
            return new Content.Words("\u2013"); // a formula would show an error
        }
        String text = new FormulaText(key -> reference(key, row), key -> rangeAbove(key, row)).of(computed.expression());
        return new Content.Formula(text, value.getAsDouble());
    }

    private Content dayAfter(Cell.DayAfter after, int row) {
        Cell day = at(row, after.dayColumn());
        Optional<LocalDate> start = day instanceof Cell.Day from ? Optional.of(from.day()) : Optional.empty();
        OptionalDouble months = table.number(row, after.monthsColumn());
        if (start.isEmpty() || months.isEmpty()) {
            return Line.NOTHING;
        }
        LocalDate due = start.get().plusMonths((long) months.getAsDouble());
        return new Content.Formula("EDATE(" + reference(after.dayColumn(), row) + "," + reference(after.monthsColumn(), row) + ")",
            DateUtil.getExcelDate(due));
    }

    private Cell at(int row, String key) {
        return table.rows().get(row).cells().get(table.indexOf(key));
    }

    private String reference(String key, int row) {
        return columnLetters(key) + (lineOfRow[row] + 1);
    }

    /** The column's cells above, in as many ranges as totals in between make of them. */
    private String rangeAbove(String key, int row) {
        String letters = columnLetters(key);
        var ranges = new ArrayList<String>();
        int start = -1;
        for (int above = 0; above <= row; above++) {
            boolean body = above < row && table.rows().get(above).kind() == Table.RowKind.BODY;
            if (body && start < 0) {
                start = above;
            } else if (!body && start >= 0) {
                ranges.add(letters + (lineOfRow[start] + 1) + ":" + letters + (lineOfRow[above - 1] + 1));
                start = -1;
            }
        }
        return ranges.isEmpty() ? "0" : String.join(",", ranges);
    }

    private String columnLetters(String key) {
        return CellReference.convertNumToColString(spans.get(table.indexOf(key)).first());
    }
}
