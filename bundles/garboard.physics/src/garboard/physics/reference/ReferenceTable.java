// SPDX-License-Identifier: EPL-2.0
package garboard.physics.reference;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A table of published figures, read from a CSV file beside this class. Lines that start with {@code #} are remarks, the first of them
 * names the source and its status; the next line names the columns. Cells hold no commas; an empty cell means that the source has no figure.
 */
public final class ReferenceTable {

    private final String file;
    private final List<String> remarks;
    private final List<String> columns;
    private final List<List<String>> rows;

    private ReferenceTable(String file, List<String> lines) {
        this.file = file;
        remarks = lines.stream().filter(line -> line.startsWith("#")).map(line -> line.substring(1).strip()).toList();
        List<List<String>> cells = lines.stream().filter(line -> !line.isBlank() && !line.startsWith("#"))
                .map(line -> List.of(line.split(",", -1))).toList();
        columns = cells.get(0);
        rows = cells.subList(1, cells.size());
        if (remarks.isEmpty() || !remarks.get(0).startsWith("source:") || rows.stream().anyMatch(row -> row.size() != columns.size())) {
            throw new IllegalStateException(file + ": the first line names the source, and every row has " + columns.size() + " cells");
        }
    }

    /** Reads a table that belongs to this bundle; a missing or malformed file is a fault of the program and throws. */
    public static ReferenceTable load(String file) {
        try (InputStream in = ReferenceTable.class.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalStateException("no reference table " + file);
            }
            return new ReferenceTable(file, new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8)).lines().toList());
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** The line that names the source and its status, as it stands in the file. */
    public String source() {
        return remarks.get(0);
    }

    public int rowCount() {
        return rows.size();
    }

    /** The row whose cell in {@code column} reads {@code text}. */
    public Optional<Integer> rowOf(String column, String text) {
        return IntStream.range(0, rows.size()).filter(row -> text(row, column).equals(text)).boxed().findFirst();
    }

    public String text(int row, String column) {
        int at = columns.indexOf(column);
        if (at < 0) {
            throw new IllegalArgumentException(file + " has no column " + column + ", only " + columns);
        }
        return rows.get(row).get(at).strip();
    }

    /** The figure in a cell, or nothing where the source has none. */
    public Optional<Double> figure(int row, String column) {
        String text = text(row, column);
        return text.isEmpty() ? Optional.empty() : Optional.of(Double.valueOf(text));
    }

    /** All figures of a column that has no empty cell, in the order of the file. */
    public double[] figures(String column) {
        return IntStream.range(0, rows.size()).mapToDouble(row -> figure(row, column).orElseThrow()).toArray();
    }

    /** The straight-line interpolation of one column over another. */
    public Interpolation interpolation(String over, String of) {
        return new Interpolation(figures(over), figures(of));
    }
}
