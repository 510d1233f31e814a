// SPDX-License-Identifier: EPL-2.0
package garboard.trial.log;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * A table that lies beside a class: remarks behind {@code #}, of which the first names the source, then the names of the columns, then rows
 * of cells parted by semicolons.
 *
 * @param source the first remark
 * @param rows   as many cells in each as there are columns
 */
public record SourcedTable(String source, List<String[]> rows) {

    /** Reads a table of this bundle; a missing or malformed one is a fault of the program and throws. */
    public static SourcedTable of(Class<?> beside, String file) {
        try (InputStream in = beside.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalStateException("no table " + file);
            }
            List<String> lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8)).lines().toList();
            List<String[]> cells = lines.stream().filter(line -> !line.startsWith("#")).map(line -> line.split(";", -1)).toList();
            if (!lines.get(0).startsWith("# source:") || cells.stream().anyMatch(row -> row.length != cells.get(0).length)) {
                throw new IllegalStateException(file + ": the first line names the source, and every row has " + cells.get(0).length + " cells");
            }
            return new SourcedTable(lines.get(0).substring(1).strip(), cells.subList(1, cells.size()));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
