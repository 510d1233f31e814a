// SPDX-License-Identifier: EPL-2.0
package garboard.physics.pipe;

import garboard.physics.Argument;
import garboard.physics.Status;
import garboard.physics.reference.ReferenceTable;
import garboard.quantity.Length;
import garboard.quantity.Ratio;

/** Bends and tees as that length of straight run, in bores, which loses as much. Exhaust and water figures are kept apart. */
public enum EquivalentLength {

    EXHAUST_STANDARD_90, EXHAUST_LONG_90, EXHAUST_STANDARD_45, EXHAUST_SQUARE_90, WATER_ELBOW_90, WATER_ELBOW_45, WATER_TEE_RUN,
    WATER_TEE_BRANCH, WATER_SWEPT_90;

    private final TableRow row = new TableRow(Table.LENGTHS, "bend", name());

    /** Length over bore. */
    public Ratio inBores() {
        return Ratio.of(row.figure("bores"));
    }

    /** Length of straight run of this bore that loses as much. */
    public Length length(Length bore) {
        return Length.of(inBores().si() * Argument.positive("bore", bore));
    }

    public Status status() {
        return row.status();
    }

    private static final class Table {
        private static final ReferenceTable LENGTHS = ReferenceTable.load("equivalent-length.csv");
    }
}
