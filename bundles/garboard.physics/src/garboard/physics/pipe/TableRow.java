// SPDX-License-Identifier: EPL-2.0
package garboard.physics.pipe;

import java.util.Locale;

import garboard.physics.Status;
import garboard.physics.reference.ReferenceTable;

/** The row of a reference table that belongs to a constant; the constant's name in lower case with hyphens stands in its key column. */
record TableRow(ReferenceTable table, int row) {

    TableRow(ReferenceTable table, String keyColumn, String constant) {
        this(table, find(table, keyColumn, constant.toLowerCase(Locale.ROOT).replace('_', '-')));
    }

    double figure(String column) {
        return table.figure(row, column).orElseThrow();
    }

    Status status() {
        return Status.valueOf(table.text(row, "status"));
    }

    private static int find(ReferenceTable table, String keyColumn, String key) {
        return table.rowOf(keyColumn, key).orElseThrow(() -> new IllegalStateException("No row " + key + " in " + table.source()));
    }
}
