// SPDX-License-Identifier: EPL-2.0
package garboard.physics.pipe;

import garboard.physics.Status;
import garboard.physics.reference.ReferenceTable;
import garboard.quantity.Length;

/** Kinds of wall with the height of their roughness, for the Colebrook formula. */
public enum Wall {

    DRAWN_TUBE_OR_PLASTIC, RUBBER_HOSE_SMOOTH, RUBBER_HOSE_WIRE_REINFORCED_ROUGH_BORE, STAINLESS_STEEL, COMMERCIAL_STEEL, GALVANISED_IRON,
    CAST_IRON_NEW, WET_EXHAUST_HOSE_SOOTED;

    private final TableRow row = new TableRow(Table.ROUGHNESS, "wall", name());

    /** Typical roughness. */
    public Length roughness() {
        return Length.of(row.figure("typical_mm"), "mm");
    }

    /** Least roughness that is printed. */
    public Length leastRoughness() {
        return Length.of(row.figure("low_mm"), "mm");
    }

    /** Greatest roughness that is printed. */
    public Length greatestRoughness() {
        return Length.of(row.figure("high_mm"), "mm");
    }

    public Status status() {
        return row.status();
    }

    private static final class Table {
        private static final ReferenceTable ROUGHNESS = ReferenceTable.load("wall-roughness.csv");
    }
}
