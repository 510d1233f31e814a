// SPDX-License-Identifier: EPL-2.0
package garboard.physics.cable;

import garboard.physics.OutOfRangeException;
import garboard.physics.reference.ReferenceTable;
import garboard.quantity.Force;

/** Pull that a crimped terminal holds for one minute ({@link CableSources#TERMINAL_PULL}). */
public final class TerminalPull {

    private static final ReferenceTable TABLE = ReferenceTable.load("terminal-pull-force.csv");
    private static final double POUND_FORCE_N = 4.4482216152605;

    private TerminalPull() {
    }

    /** Force by the size of the conductor; throws for anything but 18 AWG to 4/0 AWG. */
    public static Force force(ConductorSize gauge) {
        if (!ConductorSeries.AWG.contains(gauge)) {
            throw OutOfRangeException.of("conductor size", gauge, "18 AWG to 4/0 AWG");
        }
        return Force.of(TABLE.rowOf("awg", gauge.label()).flatMap(row -> TABLE.figure(row, "lbf")).orElseThrow() * POUND_FORCE_N);
    }
}
