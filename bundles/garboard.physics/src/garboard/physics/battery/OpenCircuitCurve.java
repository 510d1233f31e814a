// SPDX-License-Identifier: EPL-2.0
package garboard.physics.battery;

import garboard.physics.reference.Interpolation;
import garboard.physics.reference.ReferenceTable;

/** Kinds of lead-acid battery by their rested voltage. They differ: a good flooded battery never shows the 12.8 V of a full AGM. */
public enum OpenCircuitCurve {
    /** The table of US Army TM 5-3805-262-20, 12.6 V full. */
    FLOODED_US_ARMY("flooded_us_army_V"),
    /** Flooded, full at a specific gravity of 1.265, 12.65 V. */
    FLOODED_SG_1265("flooded_sg_1265_V"),
    /** Absorbed glass mat, 12.80 V full. */
    AGM("agm_V"),
    /** Gelled electrolyte, 12.85 V full. */
    GEL("gel_V");

    private final Interpolation percentOverVoltage;
    private final Interpolation voltageOverPercent;

    OpenCircuitCurve(String column) {
        ReferenceTable table = ReferenceTable.load("battery-open-circuit-voltage.csv");
        percentOverVoltage = table.interpolation(column, "soc_pct");
        voltageOverPercent = table.interpolation("soc_pct", column);
    }

    /** State of charge 0 to 1 of one 12 V block. Above the voltage of a full one it is full, below that of an empty one empty. */
    double stateOfCharge(double blockV) {
        return percentOverVoltage.at(Math.clamp(blockV, percentOverVoltage.lowest(), percentOverVoltage.highest())) / 100;
    }

    double blockVoltage(double stateOfCharge) {
        return voltageOverPercent.at(stateOfCharge * 100);
    }
}
