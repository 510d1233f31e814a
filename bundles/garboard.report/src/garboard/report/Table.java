// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * A table.
 *
 * @param columns from left to right
 * @param rows from top to bottom
 * @param repeated whether the heading comes again on every page and stays in sight; for at most one table of a sheet, its last block
 * @param size how large the letters are
 */
public record Table(List<Column> columns, List<Row> rows, boolean repeated, Size size) implements Block {

    /** How large the letters are. */
    public enum Size {
        USUAL,
        /** To be read at arm's length. */
        LARGE,
        /** Where many columns must go on one page. */
        SMALL
    }

    /** What a column holds. */
    public enum Kind {
        TEXT, NUMBER, UNIT, STANDING, DAY
    }

    /**
     * A column.
     *
     * @param key name for expressions, unique in the table
     * @param title in the heading
     * @param kind what it holds
     * @param widthMm width on a page whose content is {@link #PORTRAIT_MM} or {@link #LANDSCAPE_MM} wide; other papers stretch it
     */
    public record Column(String key, String title, Kind kind, double widthMm) {
    }

    /** What a row is. */
    public enum RowKind {
        /** An ordinary row. */
        BODY,
        /** A heading over the rows that follow, across the whole table; it has one cell and stays with the next row. */
        GROUP,
        /** A total. */
        TOTAL
    }

    /** A row: as many cells as the table has columns, or one in a group heading. */
    public record Row(RowKind kind, List<Cell> cells) {
        public Row {
            cells = List.copyOf(cells);
        }
    }

    /** Content width in millimetres that column widths of an upright sheet add up to. */
    public static final double PORTRAIT_MM = 182;
    /** Content width in millimetres that column widths of a lying sheet add up to. */
    public static final double LANDSCAPE_MM = 269;

    public Table {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
        for (Row row : rows) {
            int expected = row.kind == RowKind.GROUP ? 1 : columns.size();
            if (row.cells.size() != expected) {
                throw new IllegalArgumentException(
                    "A row of " + row.cells.size() + " cells in a table of " + expected + " columns: " + row.cells);
            }
        }
    }

    /** {@return the place of a column from the left, from 0} */
    public int indexOf(String key) {
        for (int index = 0; index < columns.size(); index++) {
            if (columns.get(index).key().equals(key)) {
                return index;
            }
        }
        throw new IllegalArgumentException("The table has no column " + key);
    }

    /** {@return the number that a cell shows, entered or worked out; nothing where it is no number} */
    public OptionalDouble number(int row, String key) {
        Row at = rows.get(row);
        if (at.kind == RowKind.GROUP) {
            return OptionalDouble.empty();
        }
        return switch (at.cells.get(indexOf(key))) {
            case Cell.Number number -> OptionalDouble.of(number.value());
            case Cell.Computed computed -> OptionalDouble.of(
                computed.expression().value(other -> number(row, other).orElse(0), other -> total(row, other)));
            default -> OptionalDouble.empty();
        };
    }

    private double total(int row, String key) {
        double sum = 0;
        for (int above = 0; above < row; above++) {
            if (rows.get(above).kind == RowKind.BODY) {
                sum += number(above, key).orElse(0);
            }
        }
        return sum;
    }

    public static Builder of(Column... columns) {
        return new Builder(List.of(columns));
    }

    public static Column text(String key, String title, double widthMm) {
        return new Column(key, title, Kind.TEXT, widthMm);
    }

    public static Column number(String key, String title, double widthMm) {
        return new Column(key, title, Kind.NUMBER, widthMm);
    }

    public static Column unit(String key, double widthMm) {
        return new Column(key, "Unit", Kind.UNIT, widthMm);
    }

    public static Column standing(double widthMm) {
        return new Column("standing", "Standing", Kind.STANDING, widthMm);
    }

    public static Column day(String key, String title, double widthMm) {
        return new Column(key, title, Kind.DAY, widthMm);
    }

    /** Collects rows. */
    public static final class Builder {
        private final List<Column> columns;
        private final List<Row> rows = new ArrayList<>();
        private boolean repeated;
        private Size size = Size.USUAL;

        private Builder(List<Column> columns) {
            this.columns = columns;
        }

        public Builder row(Cell... cells) {
            rows.add(new Row(RowKind.BODY, List.of(cells)));
            return this;
        }

        public Builder row(List<Cell> cells) {
            rows.add(new Row(RowKind.BODY, cells));
            return this;
        }

        public Builder group(String heading) {
            rows.add(new Row(RowKind.GROUP, List.of(Cell.strong(heading))));
            return this;
        }

        public Builder total(Cell... cells) {
            rows.add(new Row(RowKind.TOTAL, List.of(cells)));
            return this;
        }

        /** A total with something in some columns only. */
        public Builder total(Map<String, Cell> cells) {
            var byKey = new HashMap<>(cells);
            List<Cell> all = columns.stream().map(column -> byKey.getOrDefault(column.key(), Cell.BLANK)).toList();
            rows.add(new Row(RowKind.TOTAL, all));
            return this;
        }

        public Builder repeated() {
            repeated = true;
            return this;
        }

        public Builder size(Size letters) {
            size = letters;
            return this;
        }

        /** {@return how many rows there are so far} */
        public int size() {
            return rows.size();
        }

        public boolean isEmpty() {
            return rows.isEmpty();
        }

        public Table build() {
            return new Table(columns, rows, repeated, size);
        }
    }
}
