// SPDX-License-Identifier: EPL-2.0
package garboard.physics.pipe;

import garboard.physics.Status;
import garboard.physics.reference.ReferenceTable;
import garboard.quantity.Ratio;

/** Fittings of a water line with their loss coefficient K: the head lost is K v^2 / (2 g), with the velocity in the bore of the run. */
public enum Fitting {

    ENTRANCE_SHARP, ENTRANCE_PROJECTING, ENTRANCE_ROUNDED, EXIT, ELBOW_90, ELBOW_90_LONG, ELBOW_90_FLANGED, ELBOW_45, SMOOTH_BEND_90,
    BEND_180, MITRE_90, TEE_RUN, TEE_BRANCH, BALL_VALVE_OPEN, BALL_VALVE_ONE_THIRD_CLOSED, GATE_VALVE_OPEN, GLOBE_VALVE_OPEN,
    SWING_CHECK_VALVE, FOOT_VALVE_WITH_STRAINER, STRAINER_CLEAN, HULL_GRATING, HOSE_BARB;

    private final TableRow row = new TableRow(Table.LOSSES, "fitting", name());

    /** Typical K. */
    public Ratio loss() {
        return Ratio.of(row.figure("typical"));
    }

    /** Least K that is printed. */
    public Ratio leastLoss() {
        return Ratio.of(row.figure("low"));
    }

    /** Greatest K that is printed. */
    public Ratio greatestLoss() {
        return Ratio.of(row.figure("high"));
    }

    public Status status() {
        return row.status();
    }

    private static final class Table {
        private static final ReferenceTable LOSSES = ReferenceTable.load("minor-loss.csv");
    }
}
